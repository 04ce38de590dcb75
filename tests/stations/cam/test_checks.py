"""What is checked between lobe and piston: clay against each kind's own limit, play of rockers, pushrods, tips."""

import pytest

from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.index import find
from tests.stations.jobs import by_title, checks, titles

CLEAR, ROCKERS = "Valves clear the pistons", "Rockers and pushrods"


@pytest.mark.parametrize(
    "received, found",
    [
        ("two heads", {CLEAR}),
        ("cylinders", {CLEAR}),
        ("cam, case", {CLEAR, ROCKERS}),
        ("lifters", {ROCKERS}),
        ("rockers", {CLEAR, ROCKERS}),
        ("crank, four rods", set()),
    ],
)
def test_asked_for_by_what_was_worked_on(received, found):
    assert {CLEAR, ROCKERS} & set(titles(received=received)) == found
    assert not {CLEAR, ROCKERS} & set(titles(received=received, engine="RC-40")), "its sheet knows no room"


def test_it_is_tried_before_the_heads_go_on_for_good():
    order = titles(received="heads, cam, lifters, cylinders, case")
    assert order.index("Stem heights") < order.index(ROCKERS) < order.index(CLEAR) < order.index("Head nuts")


def test_clay_is_left_to_cut_with_both_limits_told():
    clear = by_title(checks(received="cam"), CLEAR)
    assert (clear.calculator, clear.entries, clear.open) == (
        "valve-to-piston",
        {"how": "clay"},
        ("valve", "clay"),
    )
    assert "intake 1.50 mm at least, exhaust 2.00 mm" in clear.do.plain()
    found = evaluate(
        find("valve-to-piston"),
        clear.entries | dict(valve="exhaust", clay="2.5 mm", edge=""),
        standing=Standing(engine("TS-16"), "1 exhaust"),
    )
    # by hand: these valves stand along the cylinder; 2.50 less 0.15 of lash and 0.25 of float
    assert found["running"] * 1e3 == pytest.approx(2.10) and found.verdict.state == "pass"


@pytest.mark.parametrize(
    "intake, exhaust, state, kept",
    [("1.55", "2.10", "pass", "1.55"), ("1.60", "1.80", "fail", "1.8"), ("1.40", "2.60", "fail", "1.4")],
)
def test_of_both_kinds_the_one_nearest_to_its_own_limit_is_filled_in(intake, exhaust, state, kept):
    clear = by_title(
        checks(
            ("valve.room_intake", "", "assembly", f"{intake} mm"),
            ("valve.room_exhaust", "", "assembly", f"{exhaust} mm"),
            received="cam",
        ),
        CLEAR,
    )
    assert clear.state == state and clear.entries["reading"] == f"{kept} mm"
    assert evaluate(find(clear.calculator), clear.entries | dict(doubt="0.01 mm")).verdict.state == state


def test_beside_the_play_a_bent_pushrod_and_a_mark_off_the_middle_are_asked_for():
    sizes = [
        ("rocker.bush", "1 intake", "finished", "18.010 mm"),
        ("rocker.shaft", "1 intake", "finished", "17.985 mm"),
    ]
    good = by_title(checks(*sizes, received="rockers"), ROCKERS)
    # by hand: 18.010 − 17.985
    assert (good.entries["reading"], good.state, good.place) == ("0.025 mm", "pass", "1 intake")
    assert good.asks == ("rocker.clearance", "rocker.pushrod_bow", "rocker.contact_run")
    assert good.home and good.shop, "the play takes tools that no household has"
    for told in (
        ("rocker.pushrod_bow", "2 exhaust", "finished", "0.30 mm"),
        ("rocker.contact_run", "2 exhaust", "assembly", "1.60 mm"),
        ("rocker.bush", "1 intake", "assembly", "18.060 mm"),
    ):
        assert by_title(checks(*sizes, told, received="rockers"), ROCKERS).state == "fail", told
