"""A copy of the handbook, to lay something new into."""

import shutil
from pathlib import Path

import pytest

from scripts import environment


def copy_into(folder: Path) -> Path:
    """The folder, with what a station's pages are built from and what its calculators are tested with."""
    for name in ("calc", "docs", "overrides", "scripts", "tests"):
        shutil.copytree(
            environment.ROOT / name,
            folder / name,
            ignore=shutil.ignore_patterns("__pycache__", "node_modules", "browser"),
        )
    for name in ("pyproject.toml", "mkdocs.yml"):
        shutil.copy(environment.ROOT / name, folder)
    return folder


@pytest.fixture
def tree(tmp_path) -> Path:
    return copy_into(tmp_path)


@pytest.fixture(scope="module")
def shared_tree(tmp_path_factory) -> Path:
    """One copy for all tests of a module."""
    return copy_into(tmp_path_factory.mktemp("tree"))
