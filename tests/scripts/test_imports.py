"""Who may import what: the build reads the outside numbers, and nothing else of the tests."""

import ast

import pytest

from scripts.environment import ROOT

TESTING = ("scripts/nightly/", "scripts/test.py")  # are there to run tests


def imported(source: str) -> list[str]:
    """Full names of what a module imports, wherever in it; "from a import b" may name a module or what is in it: a.b."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found += [name.name for name in node.names]
        elif isinstance(node, ast.ImportFrom) and not node.level:
            found += [f"{node.module}.{name.name}" for name in node.names]
        elif isinstance(node, ast.ImportFrom):
            found.append("." * node.level + (node.module or ""))
    return found


def of_the_tests(source: str) -> list[str]:
    """What it imports of the tests, but for the outside numbers; what is relative is told too, as nothing here is."""
    return [
        name
        for name in imported(source)
        if name.startswith(".")
        or (f"{name}.".startswith("tests.") and not f"{name}.".startswith("tests.checks."))
    ]


@pytest.mark.parametrize("folder", ["scripts", "tests/checks", "calc"])
def test_nothing_imports_the_tests_but_their_outside_numbers(folder):
    found = {}
    for path in sorted((ROOT / folder).rglob("*.py")):
        name = path.relative_to(ROOT).as_posix()
        if not name.startswith(TESTING) and (wrong := of_the_tests(path.read_text(encoding="utf-8"))):
            found[name] = wrong
    assert not found


@pytest.mark.parametrize(
    ("source", "wrong"),
    [
        ("from tests import checks", []),
        ("from tests.checks import Check", []),
        ("import testsuite", []),
        ("def f():\n    from tests.entries import entries", ["tests.entries.entries"]),
        ("import tests", ["tests"]),
        ("from tests import entries, checks", ["tests.entries"]),
        ("import tests.checks_more", ["tests.checks_more"]),
    ],
)
def test_an_import_of_the_tests_is_seen(source, wrong):
    assert of_the_tests(source) == wrong
