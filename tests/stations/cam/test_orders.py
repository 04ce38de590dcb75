"""The cam's gear is ordered by steps of its code, worked by hand; rockers and pushrods past their wear are renewed."""

import math

import pytest

from calc.declare.calculator import evaluate
from calc.reference.engine import engine
from calc.stations.index import find
from tests.stations.jobs import needed, said

# by hand: a step of 0.010 in radius is 2 · 0.010 · tan 20° / cos 22° of play
EACH = 2 * 0.010 * math.tan(math.radians(20)) / math.cos(math.radians(22))


def played(text, stage="finished"):
    return needed(("cam.gear_backlash", "", stage, text))


@pytest.mark.parametrize(
    "play, size",
    [("0.060 mm", "4 steps larger"), ("0.004 mm", "3 steps smaller"), ("0.0516 mm", "3 steps larger")],
)
def test_a_gear_is_taken_by_the_play_that_is_wanted(play, size):
    (row,) = played(play)
    assert said(row) == ("Cam gear", size, (), "pass")
    steps = int(size[0]) * (1 if "larger" in size else -1)
    left = float(play.split()[0]) - steps * EACH
    assert abs(left - 0.030) <= EACH / 2 and f"Leaves {left:.3f} mm" in row.do.plain()


@pytest.mark.parametrize("play", ["0.060", "0.004", "0.058"])
def test_the_calculator_takes_the_same(play):
    found = evaluate(
        find("mesh-backlash"), dict(readings=" | ".join([play] * 3), dial_radius="69.0 mm", code="0")
    )
    (row,) = played(f"{play} mm")
    assert row.size.plain().startswith(f"{abs(round(found['take']))} step")
    assert ("larger" in row.size.plain()) == (found["take"] > 0)


@pytest.mark.parametrize("play", ["0.010 mm", "0.030 mm", "0.050 mm"])
def test_play_within_its_limits_orders_nothing(play):
    assert played(play) == []


def test_gears_that_have_run_are_held_to_their_wear():
    assert played("0.100 mm", "received") == []
    (row,) = played("0.104 mm", "received")
    assert row.state == "pass" and row.because.plain().endswith("0.104 mm, as received")


def test_what_no_code_brings_right_orders_nothing_yet():
    (row,) = played("0.300 mm")  # by hand: eight steps take 0.063
    assert (
        said(row)[1:] == ("no size code serves", (), "fail") and "distance of crank and cam" in row.do.plain()
    )


def test_gears_that_bind_do_not_show_by_how_much():
    (row,) = played("0.000 mm")
    assert said(row)[1:] == ("smaller, after a trial", (), "attention") and "does not show" in row.do.plain()


def test_a_doubt_orders_no_gear():
    (row,) = played("0.049 mm ± 0.010 mm")
    assert row.state == "unsure" and "less doubt" in row.do.plain()
    (row,) = played("0.090 mm ± 0.035 mm")  # surely too much, and no code is sure to serve
    assert row.state == "unsure" and row.size.plain().endswith("if it is read right")


def test_an_engine_whose_sheet_knows_no_codes_orders_no_gear():
    assert "cam.gear_step" not in engine("RC-40").features
    assert needed(("cam.gear_backlash", "", "finished", "0.300 mm"), engine="RC-40") == []


@pytest.mark.parametrize(
    "id, within, past, part",
    [
        ("rocker.shaft", "17.960 mm", "17.955 mm", "Rocker shafts"),
        ("rocker.bush", "18.040 mm", "18.045 mm", "Rocker bushes"),
        ("rocker.pushrod_bow", "0.25 mm", "0.30 mm", "Pushrods"),
    ],
)
def test_what_is_worn_out_is_renewed(id, within, past, part):
    assert needed((id, "2 exhaust", "received", within)) == []
    (row,) = needed((id, "2 exhaust", "received", past))
    assert said(row) == (part, "new", ("2 exhaust",), "pass")
