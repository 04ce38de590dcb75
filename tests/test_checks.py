"""Every number of the tables of outside checks is met."""

from importlib.util import find_spec

import pytest

from tests.checks import Check, every, rows_of, tables, trends_of


def label(check: Check) -> str:
    return f"{check.subject}: {check.what} {list(check.inputs.values())}"


@pytest.mark.parametrize("check", every(), ids=label)
def test_agrees_with_the_outside_number(check):
    assert check.got(**check.inputs) == pytest.approx(check.expected, rel=0, abs=check.tolerance), (
        check.source
    )


def test_no_table_is_empty_and_no_row_is_written_twice():
    rows = [(c.subject, c.what, tuple(c.inputs.items())) for c in every()]
    assert len(rows) == len(set(rows))
    assert len(rows) > 250


@pytest.mark.parametrize("module", tables())
def test_a_table_stands_where_what_it_checks_does_and_says_something(module):
    assert find_spec(module), "no such module: the table is named after what it checks"
    assert rows_of(module) or trends_of(module)


@pytest.mark.parametrize("change", [{"kind": "guess"}, {"tolerance": 0.0}, {"source": ""}])
def test_a_row_without_kind_tolerance_or_source_is_refused(change):
    row = dict(
        subject="s",
        what="w",
        inputs={},
        expected=1.0,
        tolerance=0.1,
        got=lambda: 1.0,
        source="a book",
        kind="handbook",
    )
    Check(**row)
    with pytest.raises(ValueError, match="s"):
        Check(**row | change)
