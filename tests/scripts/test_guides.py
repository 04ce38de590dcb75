"""What is written for contributors: short where it must be, and leading somewhere."""

import re
from pathlib import Path

import pytest

from scripts import environment

ROOT = environment.ROOT
GUIDES = sorted(
    path
    for path in (*ROOT.glob("*.md"), *(path for top in ("calc", "scripts", "overrides") for path in (ROOT / top).rglob("*.md")))
    if "node_modules" not in path.parts
)  # fmt: skip


def name(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def test_the_contributors_guide_is_read_in_one_sitting():
    assert len((ROOT / "DEVELOPERS.md").read_bytes()) <= 10_000


@pytest.mark.parametrize("guide", GUIDES, ids=name)
def test_links_and_paths_lead_somewhere(guide):
    text = re.sub(r"```.*?```", "", guide.read_text(encoding="utf-8"), flags=re.DOTALL)
    links = [link.partition("#")[0] for link in re.findall(r"\]\(([^)\s]+)\)", text)]
    nowhere = [link for link in links if link and "://" not in link and not (guide.parent / link).exists()]
    # `calc/…`, `tests/…` and the like, as far as they say one file or folder
    told = re.findall(r"`((?:calc|docs|overrides|scripts|tests)/[\w./-]*)`", text)
    nowhere += [path for path in told if not any((ROOT / path).parent.glob(f"{Path(path).name}*"))]
    assert not nowhere


def test_nothing_that_travels_with_a_page_is_a_guide():
    """The site's folder holds pages only: what is written for contributors stands beside the code."""
    assert not [path for path in (ROOT / "docs").rglob("README.md")]
