"""Shells go with the size of their journal and of their housing, and say what clearance they leave."""

import pytest

from tests.stations.jobs import finished, needed, said


@pytest.mark.parametrize(
    "journal, size, wall",
    [  # each undersize takes half of itself on each side: common practice, no source
        ("54.993 mm", "standard", "4.972 mm"),
        ("54.743 mm", "0.25 mm undersize", "5.097 mm"),
        ("54.493 mm", "0.50 mm undersize", "5.222 mm"),
        ("54.243 mm", "0.75 mm undersize", "5.347 mm"),
        ("53.993 mm", "1.00 mm undersize", "5.472 mm"),
    ],
)
def test_shells_go_with_the_size_that_the_journal_was_ground_to(journal, size, wall):
    (row,) = needed(*finished("crank.main_journal", p2=journal))
    assert (
        said(row) == ("Main bearing shells", size, ("2",), "pass")
        and row.do.plain() == f"Main shell wall {wall}."
    )


def test_a_housing_bored_over_takes_shells_that_are_larger_outside():
    (row,) = needed(
        *finished("crank.main_journal", p1="54.743 mm"), *finished("crankcase.main_housing", p1="65.510 mm")
    )
    # by hand: (65.51 − 54.743) / 2 less half of the standard clearance: 4.972 + 0.125 + 0.25
    assert (
        row.size.plain() == "0.25 mm undersize, outside 0.50 mm oversize"
        and row.do.plain() == "Main shell wall 5.347 mm. Leaves 0.073 mm clearance."
    )


def test_shells_of_the_right_size_that_leave_too_much_are_said_to():
    (row,) = needed(
        *finished("crank.rod_journal", p1="51.735 mm"), *finished("rod.big_end_bore", p1="56.030 mm")
    )
    # by hand: 56.030 − 2 · (1.983 + 0.125) − 51.735 = 0.079, past the 0.074 that the sheet's own limits leave
    assert (
        row.state == "attention"
        and row.do.plain()
        == "Rod shell wall 2.108 mm. Leaves 0.079 mm clearance: outside the limits with walls of that size, so measure the walls before closing."
    )
    (row,) = needed(
        *finished("crank.rod_journal", p1="51.742 mm ± 0.003 mm"),
        *finished("rod.big_end_bore", p1="56.031 mm"),
    )
    assert row.state == "attention" and "near a limit" in row.do.plain()  # 0.073 ± 0.003 of 0.074


def test_shells_fit_a_housing_that_was_bored_over_before_it_came_here():
    (row,) = needed(
        *finished("crank.main_journal", p1="54.743 mm", p2="54.742 mm"),
        ("crankcase.main_housing", "1", "received", "65.510 mm"),
    )
    assert (row.size.plain(), row.places, row.do.plain()) == (
        "0.25 mm undersize, outside 0.50 mm oversize",
        ("1", "2"),
        "Main shell wall 5.347 mm.",
    )  # by hand: 4.972 + 0.125 + 0.25


def test_housings_of_two_sizes_take_shells_of_two_sizes():
    rows = needed(
        *finished("crank.main_journal", p1="54.743 mm", p2="54.743 mm"),
        *finished("crankcase.main_housing", p1="65.510 mm", p2="65.010 mm"),
    )
    assert [
        (row.size.plain(), row.places, row.state, row.do.plain()) for row in rows
    ] == [  # by hand: 65.510 − 2 · 5.347 − 54.743, 65.010 − 2 · 5.097 − 54.743
        (
            "0.25 mm undersize, outside 0.50 mm oversize",
            ("1",),
            "pass",
            "Main shell wall 5.347 mm. Leaves 0.073 mm clearance.",
        ),
        ("0.25 mm undersize", ("2",), "pass", "Main shell wall 5.097 mm. Leaves 0.073 mm clearance."),
    ]
