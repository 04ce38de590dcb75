"""A check of one size takes its worst place and its own limits; a nut brings its thread."""

import pytest

from calc.declare.calculator import evaluate
from calc.stations import index as stations
from calc.stations.index import find
from tests.job.orchard import orchard
from tests.stations.jobs import by_title, checks


def test_limits_are_the_sheets_and_what_is_not_read_is_left_open():
    mains = by_title(stations.checks(orchard()), "Main bearing clearance")
    # by hand: 65.000 − 2 · 4.976 − 55.000 and 65.019 − 2 · 4.968 − 54.985
    assert (mains.calculator, mains.entries, mains.open) == (
        "reading-verdict",
        {"low": "0.048 mm", "high": "0.098 mm"},
        ("reading",),
    )
    assert mains.features == (
        "crankcase.main_clearance",
        "crankcase.main_housing",
        "crankcase.main_shell_wall",
        "crank.main_journal",
    ) and (mains.state, mains.said) == ("", None)


def test_of_several_places_the_one_nearest_to_its_limits_is_filled_in():
    sizes = [
        ("crankcase.main_housing", p, "finished", f"{t} mm ± 0.004 mm")
        for p, t in zip("123", ("65.009", "65.018", "65.008"))
    ]
    sizes += [("crankcase.main_shell_wall", p, "finished", "4.972 mm ± 0.001 mm") for p in "123"] + [
        ("crank.main_journal", p, "finished", f"{t} mm ± 0.003 mm")
        for p, t in zip("123", ("54.990", "54.988", "54.995"))
    ]
    mains = by_title(checks(*sizes), "Main bearing clearance")
    # by hand: 65.018 − 9.944 − 54.988 = 0.086 of at most 0.098; 65.008 − 9.944 − 54.995 = 0.069 of at least 0.048; doubt √(4² + 2² + 3²) µm
    assert (mains.place, mains.entries["reading"], mains.state) == ("2", "0.086 mm ± 0.00539 mm", "pass")
    assert evaluate(find("reading-verdict"), mains.entries).verdict.state == "pass"


def test_a_limit_on_one_side_stays_on_one_side():
    runout = by_title(checks(("flywheel.runout", "", "finished", "0.05 mm ± 0.02 mm")), "Flywheel runout")
    assert runout.entries == {"low": "", "high": "0.15 mm", "reading": "0.05 mm ± 0.02 mm"}
    assert evaluate(find("reading-verdict"), runout.entries)["margin"] * 1000 == pytest.approx(0.10)


def test_the_nearest_limit_may_be_the_lower_one():
    sizes = [("crankcase.main_housing", p, "finished", "65.010 mm") for p in "12"] + [
        ("crankcase.main_shell_wall", p, "finished", "4.972 mm") for p in "12"
    ]
    mains = by_title(
        checks(
            *sizes,
            ("crank.main_journal", "1", "finished", "54.990 mm"),
            ("crank.main_journal", "2", "finished", "55.000 mm"),
        ),
        "Main bearing clearance",
    )
    assert (mains.place, mains.entries["reading"], mains.open) == (
        "2",
        "0.066 mm",
        ("doubt",),
    )  # by hand: 0.066 and 0.076 of 0.048 to 0.098


def test_a_nut_brings_its_thread_and_torque():
    found = checks(received="heads, crank, rods, case")
    assert [
        (check.entries["thread"], check.entries["torque"])
        for check in found
        if check.calculator == "torque-preload"
    ] == [("M9x1", "33.0 N·m"), ("M12x1.75", "35.0 N·m"), ("M10x1.5", "22.0 N·m")]
    assert "31 N·m to 35 N·m" in by_title(found, "Rod nuts").do.plain()
    nuts = {check.title: check for check in found if check.calculator == "torque-preload"}
    assert all(check.open == ("strength",) for check in nuts.values())  # it is on the bolt, and on no sheet
    assert [nuts[title].entries["clamped"] for title in ("Rod nuts", "Close the case", "Head nuts")] == [
        "other",
        "other",
        "cylinder",
    ]


def test_a_check_of_two_sizes_tells_of_both():
    cam = by_title(
        checks(
            ("crankcase.cam_bore", "1", "finished", "25.030 mm"),
            ("cam.journal", "1", "finished", "24.987 mm"),
            ("cam.end_float", "", "finished", "0.30 mm"),
        ),
        "Cam bearing clearance and end float",
    )
    assert (cam.entries["reading"], cam.state, cam.said.plain()) == ("0.043 mm", "fail", "1 of 2 in order")
