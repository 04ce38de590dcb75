"""What is to be ordered, from sizes whose answer is worked by hand from the invented sheet's own numbers."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.job.verdicts import judge
from calc.reference.engine import STANDARD, engine
from calc.reference.size import CLEAN_UP
from calc.stations import index as stations
from calc.stations.shared.orders.fit import Fit
from tests.job.jobs import job, reading
from tests.stations.jobs import finished, needed, said

FITS = [made for made in map(stations.named, stations.ORDERS) if isinstance(made, Fit)]


def test_shells_that_are_at_hand_and_measured_are_not_ordered():
    assert (
        needed(
            *finished("crank.main_journal", p1="54.743 mm"),
            *finished("crankcase.main_shell_wall", p1="5.097 mm"),
        )
        == []
    )


def test_a_doubt_that_straddles_two_sizes_is_no_size():
    (row,) = needed(*finished("crank.main_journal", p1="54.868 mm ± 0.3 mm"))
    assert said(row) == ("Main bearing shells", "standard or 0.25 mm undersize", ("1",), "unsure")
    assert row.do.plain().startswith("Cannot tell which")
    (row,) = needed(*finished("crank.main_journal", p1="54.749 mm ± 0.004 mm"))
    assert said(row) == ("Main bearing shells", "0.25 mm undersize, if it is in limits", ("1",), "unsure")


def test_a_journal_between_two_sizes_takes_no_shell():
    (row,) = needed(*finished("crank.main_journal", p1="54.868 mm"))
    assert said(row) == ("Main bearing shells", "no size fits", ("1",), "fail")


def test_journals_of_two_sizes_make_two_rows():
    rows = needed(*finished("crank.main_journal", p1="54.743 mm", p2="54.993 mm", p3="54.741 mm"))
    assert [said(row)[1:3] for row in rows] == [("0.25 mm undersize", ("1", "3")), ("standard", ("2",))]


def test_a_worn_journal_fits_nothing_before_it_is_ground():
    rows = needed(
        *(
            ("crank.main_journal", place, "received", text)
            for place, text in zip("123", ("54.952 mm", "54.990 mm", "54.949 mm"))
        )
    )
    assert [said(row) for row in rows] == [
        ("Main bearing shells", "0.25 mm undersize, once machined to it", ("1", "2", "3"), "attention")
    ]
    assert (
        "54.735 mm to 54.750 mm" in rows[0].do.plain()
        and rows[0].because.plain() == "Main journal 54.949 mm to 54.990 mm, as received"
    )
    (fit,) = needed(
        ("crank.main_journal", "1", "received", "54.970 mm")
    )  # below the limit as made, above the wear limit: fit for use
    assert said(fit) == ("Main bearing shells", "standard", ("1",), "pass")


@given(st.integers(53900, 54955), st.integers(0, 20))
def test_what_a_worn_journal_is_ground_to_cleans_it_up(micrometres, doubt):
    (row,) = needed(
        ("crank.main_journal", "1", "received", f"{micrometres} µm" + (f" ± {doubt} µm" if doubt else ""))
    )
    journal = engine("TS-16").features["crank.main_journal"]
    if row.state == "attention":
        ground = journal.at(next(step for step in journal.steps if row.size.plain().startswith(step.name)))
        smaller = [journal.at(step).high for step in journal.steps if journal.at(step).high > ground.high]
        least = (micrometres - doubt) * 1e-6 - CLEAN_UP
        assert ground.high <= least + 1e-12 and all(high > least - 1e-12 for high in smaller), (
            "the nearest size that still cleans up"
        )
    elif row.state == "pass":  # worn, but no worse than the wear limit of a size that it had been ground to
        assert any(
            journal.at(step).wear - 1e-9 <= micrometres * 1e-6 <= journal.at(step).high + 1e-9
            for step in journal.steps
        )
    elif row.state == "fail":
        assert micrometres * 1e-6 < journal.at(journal.steps[-1]).high + CLEAN_UP + doubt * 1e-6 + 1e-9
    else:
        assert doubt


def test_bores_guides_and_rings_are_ordered_over_size_only():
    assert (
        needed(
            *finished("cylinder.bore", p1="88.010 mm"),
            *finished("head.guide_hole", **{"p1_intake": "13.009 mm"}),
        )
        == []
    )
    rows = needed(
        *finished("cylinder.bore", p1="88.512 mm", p2="88.510 mm"),
        *finished("head.guide_hole", **{"p1_intake": "13.110 mm"}),
        *finished("head.seat_pocket_exhaust", **{"p3_exhaust": "33.755 mm"}),
        *finished("guide.bore", **{"p2_exhaust": "8.155 mm"}),
    )
    assert [said(row) for row in rows] == [
        ("Pistons with rings", "0.50 mm oversize", ("1", "2"), "pass"),
        ("Seat rings, exhaust", "0.25 mm oversize", ("3 exhaust",), "pass"),
        ("Valve guides", "0.10 mm oversize", ("1 intake",), "pass"),
        ("Valves, exhaust", "0.15 mm oversize", ("2 exhaust",), "pass"),
    ]
    # by hand: 87.960 + 0.5, 33.610 + 0.25, 13.046 + 0.1, 7.930 + 0.15
    assert [row.do.plain() for row in rows] == [
        "Piston, across the skirt 88.460 mm.",
        "Seat ring outside, exhaust 33.860 mm.",
        "Guide outside 13.146 mm.",
        "Valve stem, exhaust 8.080 mm.",
    ]
    holes = needed(
        ("head.guide_hole", "1 intake", "received", "13.060 mm"),
        ("head.guide_hole", "2 intake", "received", "13.150 mm"),
    )
    assert [said(row)[1:3] for row in holes] == [
        ("0.10 mm oversize, once machined to it", ("1 intake",)),
        ("0.20 mm oversize, once machined to it", ("2 intake",)),
    ], "each by itself"
    (worn,) = needed(("cylinder.bore", "1", "received", "88.300 mm"))
    assert (
        said(worn) == ("Pistons with rings", "0.50 mm oversize, once machined to it", ("1",), "attention")
        and "88.500 mm to 88.518 mm" in worn.do.plain()
    )


def test_inch_engines_have_inch_sizes():
    (row,) = needed(("crank.main_journal", "1", "finished", "2.2397 in"), engine="RC-40")
    assert (
        row.size.plain() == "0.010 in undersize" and row.do.plain("inch") == "Main shell wall 0.19140 in."
    )  # by hand: 0.1864 + 0.005


@pytest.mark.parametrize("name", ["TS-16", "RC-40"])
def test_a_size_right_on_any_limit_is_ordered_for_as_it_is_judged(name):
    """A limit belongs to what it allows (ISO 14253-1 without a doubt), whatever the last bit of a float says of a limit less an undersize."""
    sheet = engine(name)
    for fit in (fit for fit in FITS if fit.by in sheet.features and fit.ordered in sheet.features):
        feature = sheet.feature(fit.by)
        for step in (STANDARD, *feature.steps):
            for limit in (feature.at(step).low, feature.at(step).high):
                text = f"{limit / 0.0254:.4f} in" if name == "RC-40" else f"{limit * 1000:.3f} mm"
                made = job(
                    engine=name, readings=[reading(fit.by, (feature.places or ("",))[0], "finished", text)]
                )
                (row,) = judge(made)
                assert (row.state, row.step) == ("pass", step), text
                assert all(
                    part.state == "pass" and part.size.plain() in (step.name, "standard")
                    for part in stations.orders(made)
                ), text


@pytest.mark.parametrize(
    "text, size",
    [
        ("51.781 mm", "0.25 mm undersize"),
        ("51.780 mm", "0.25 mm undersize"),
        ("51.779 mm", "0.50 mm undersize"),
        ("51.782 mm ± 0.004 mm", "0.50 mm undersize"),
    ],
)
def test_the_verdict_and_the_order_name_the_same_next_size(text, size):
    made = job(
        readings=[reading("crank.rod_journal", "1", "received", text)]
    )  # by hand: 51.750 + 0.03, and the doubt
    (row,) = stations.orders(made)
    assert (
        row.size.plain() == f"{size}, once machined to it"
        and judge(made)[0].do.plain() == f"Re-machine it to {size}, or replace it."
    )
