"""What is checked of the bottom end at home: shells, seals, gears, the pull that turns the crank, three shims."""

import pytest

from calc.declare.calculator import evaluate
from calc.stations import index as stations
from calc.stations.index import find
from tests.job.orchard import orchard
from tests.stations.jobs import by_title, checks, titles


def test_end_float_brings_the_sizes_in_which_shims_are_sold_and_the_sheets_limits():
    found = by_title(
        checks(("crank.end_float", "", "assembly", "0.18 mm"), received="crank, case"), "Crank end float"
    )
    assert (found.calculator, found.open, found.state) == ("end-float", ("float_read", "trial"), "fail")
    assert found.entries["shims"].count("mm") == 8 and (found.entries["low"], found.entries["high"]) == (
        "0.07 mm",
        "0.13 mm",
    )
    told = found.entries | dict(after="", float_read="0.46 mm", trial="0.24; 0.24")
    assert evaluate(find("end-float"), told).verdict.headline.plain() == "Fit 0.240 mm, 0.240 mm and 0.360 mm"
    assert evaluate(find("end-float"), found.entries).verdict.state == "fail"  # 0.18 mm, read with them in


@pytest.mark.parametrize("pull, state", [("1.5 N·m", "pass"), ("3.0 N·m", "pass"), ("3.2 N·m", "fail")])
def test_the_pull_that_turns_the_crank_is_held_to_its_own_sheet(pull, state):
    found = by_title(
        checks(("crank.turning_torque", "", "assembly", pull), received="crank, case"),
        "Crank turns, case bolted up",
    )
    assert found.state == state and found.calculator is None


def test_no_pull_is_asked_for_where_the_sheet_knows_none():
    assert "Crank turns, case bolted up" not in titles(received="crank, case", engine="RC-40")
    assert "Crank turns, case bolted up" in titles(received="crank, case")


def test_shells_and_seals_need_no_size_and_are_told_with_what_is_at_home():
    for title in ("Main shells on their dowels", "Seals of the through studs"):
        found = by_title(stations.checks(orchard()), title)
        assert found.home and not found.shop and found.asks == ()


def test_gears_of_a_cam_are_checked_by_their_marks_and_backlash():
    found = by_title(
        checks(("cam.gear_backlash", "", "finished", "0.060 mm"), received="cam, case"),
        "Cam gear: marks and backlash",
    )
    assert found.state == "fail" and found.home


def test_three_shims_that_were_read_are_the_trial_shims_of_a_float_that_is_not_right():
    three = [("crank.end_float_shim", place, "assembly", "0.24 mm") for place in "123"]
    wrong, good = (
        by_title(
            checks(("crank.end_float", "", "assembly", read), *three, received="crank, case"),
            "Crank end float",
        )
        for read in ("0.40 mm", "0.10 mm")
    )
    found = evaluate(find("end-float"), wrong.entries)
    assert wrong.open == () and found.verdict.state == "pass"
    assert [round(found[k] * 1e3, 6) for k in ("first", "second", "third")] == [
        0.34
    ] * 3  # 0.72 + 0.40 − 0.10 = 1.02
    assert evaluate(find("end-float"), good.entries).verdict.headline.plain() == "End float right: 0.100 mm"
