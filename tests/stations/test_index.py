"""What is checked before an engine is closed and what is ordered: for just the parts of a job, in order."""

from importlib import import_module
from pathlib import Path
from typing import get_type_hints

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.declare.calculator import evaluate
from calc.job.files import dump, load
from calc.stations import index as stations
from calc.stations.index import find
from calc.stations.shared.checks import Check
from tests.job.jobs import any_job
from tests.job.orchard import orchard
from tests.stations.jobs import by_title, checks, needed, nominal, said, titles


def test_the_orchard_job_is_closed_in_this_order():
    assert [check.title for check in stations.checks(orchard())] == [
        "Every passage clean",
        "Each part to its own place",
        "Crank straight, journals round",
        "Main bearing clearance",
        "Main shells on their dowels",
        "Rods straight",
        "Rod bearing clearance",
        "Rod nuts",
        "Rod side clearance",
        "Seals of the through studs",
        "Close the case",
        "Crank turns, case bolted up",
        "Crank end float",
        "Deck height",
        "Valves tight",
        "Stem heights",
        "Chambers alike",
        "Valves clear the pistons",
        "Head nuts",
        "Turned through by hand",
    ]


def test_only_the_parts_of_the_job_are_checked():
    assert titles(received="two heads") == [
        "Every passage clean",
        "Each part to its own place",
        "Valves tight",
        "Stem heights",
        "Valves clear the pistons",
        "Head nuts",
        "Turned through by hand",
    ]
    assert titles(received="a crankshaft") == [
        "Every passage clean",
        "Crank straight, journals round",
        "Turned through by hand",
    ]
    assert "Flywheel runout" in titles(received="Flywheel") and "Rod nuts" not in titles(received="the rods")
    assert "Rod nuts" in titles(received="four conrods and the crank")
    assert titles() == ["Every passage clean", "Turned through by hand"]
    assert "Valve lash" in titles(received="heads, lifters") and "Plungers off both stops" not in titles(
        received="heads, lifters"
    )
    assert "Plungers off both stops" in titles(
        ("lifter.preload", "1 intake", "finished", "1.80 mm"), received="heads, lifters"
    )


def test_an_engine_without_a_sheet_gets_the_checks_that_need_no_size():
    assert titles(
        ("crank.main_journal", "1", "finished", "54.743 mm"), received="heads, case, crank", engine="XX-9"
    ) == [
        "Every passage clean",
        "Each part to its own place",
        "Main shells on their dowels",
        "Seals of the through studs",
        "Valves tight",
        "Turned through by hand",
    ]


EVERY = (
    "head",
    "guide",
    "valve",
    "spring",
    "chamber",
    "port",
    "cylinder",
    "piston",
    "rod",
    "crank",
    "crankcase",
    "cam",
    "lifter",
    "flywheel",
)


@settings(deadline=None, max_examples=40)
@given(
    st.sampled_from(["TS-16", "RC-40"]),
    st.sets(st.sampled_from(EVERY), min_size=1),
    st.sampled_from(["", " ± 0.01 mm"]),
    st.data(),
)
def test_every_check_that_is_filled_in_is_an_entry_that_its_calculator_takes(sheet, theirs, doubt, data):
    sizes = nominal(*sorted(theirs), sheet=sheet, doubt=doubt)
    left = data.draw(st.sets(st.sampled_from(range(len(sizes))), max_size=12)) if sizes else ()
    for check in checks(*(told for n, told in enumerate(sizes) if n not in left), engine=sheet):
        if check.calculator is None:
            assert not check.entries and not check.open
            continue
        calculator = find(check.calculator)
        assert {name.partition(".")[0] for name in (*check.entries, *check.open)} <= set(calculator.input), (
            check
        )
        assert not set(check.open) & set(check.entries)
        evaluate(calculator, check.entries)  # refuses nothing


@pytest.mark.parametrize("sheet", ["TS-16", "RC-40"])
def test_every_check_tells_a_way_at_home_or_that_it_takes_the_shop(sheet):
    read = checks(*nominal(*EVERY, sheet=sheet), engine=sheet)
    unread = checks(
        received="heads, valves, rods, crank, case, cylinders, pistons, cam, lifters", engine=sheet
    )
    found = {check.id: check for check in (*read, *unread)}
    assert len(found) > 10
    for check in found.values():
        assert check.home or check.shop, check.id
        for words in filter(None, (check.home, check.shop)):
            assert words[0].isupper() and words.endswith("."), check.id


def test_what_a_check_still_needs_is_told_place_by_place():
    """A size that follows from others is read where all of them are; another of the same part is none."""
    mains = [("crank.main_journal", place, "finished", "54.993 mm") for place in "123"]
    rest = [
        (id, "1", "finished", text)
        for id, text in (("crankcase.main_housing", "65.010 mm"), ("crankcase.main_shell_wall", "4.972 mm"))
    ]
    for sizes, left in ((mains, "123"), (mains + rest, "23")):
        check = by_title(checks(*sizes, received="crank, case"), "Main bearing clearance")
        assert check.asks == ("crankcase.main_clearance",) and check.places == 3
        assert check.unread == tuple(("crankcase.main_clearance", place) for place in left)
    worn = [("crank.end_float", "", "received", "0.10 mm")]
    float_of = by_title(checks(*worn, received="crank, case"), "Crank end float")
    assert float_of.unread == (("crank.end_float", ""),), "as received tells nothing of how it goes in"
    cam = by_title(
        checks(("cam.end_float", "", "finished", "0.08 mm"), received="cam, case"),
        "Cam bearing clearance and end float",
    )
    assert cam.asks == ("cam.clearance", "cam.end_float") and cam.places - len(cam.unread) == 1
    nuts = by_title(checks(received="rods, crank"), "Rod nuts")
    assert (nuts.asks, nuts.unread, nuts.places) == ((), (), 0), "no reading answers what is done"
    assert nuts.setting and nuts.setting.plain() == "31 N·m to 35 N·m"


@given(any_job())
def test_no_job_is_too_odd_to_be_checked(strange):
    for check in stations.checks(strange):
        assert check.title and check.why and check.do.plain("inch")
        if check.calculator:
            find(check.calculator)


def test_the_orchard_job_needs_shells_for_its_reground_crank():
    rows = stations.orders(orchard())
    assert [said(row) for row in rows] == [
        ("Main bearing shells", "0.25 mm undersize", ("1", "2", "3"), "pass"),
        ("Rod bearing shells", "0.25 mm undersize", ("1", "2", "3", "4"), "pass"),
        ("Thread insert", "M10x1.5", (), "attention"),
    ]
    assert rows[0].because.plain() == "Main journal 54.741 mm to 54.744 mm"
    # by hand: 4.972 + 0.125; housing 65.009, 65.011, 65.008 less 2 · 5.097 and the journals 54.743, 54.741, 54.744
    assert rows[0].do.plain() == "Main shell wall 5.097 mm. Leaves 0.070 mm to 0.076 mm clearance."
    assert (
        rows[0].do.plain("inch") == "Main shell wall 0.20067 in. Leaves 0.00276 in to 0.00299 in clearance."
    )
    assert "wire thread insert M10x1.5 fitted" in rows[2].because.plain()


def test_an_engine_that_is_not_known_here_needs_only_what_words_name():
    assert [
        row.part
        for row in needed(
            ("crank.main_journal", "1", "finished", "54.743 mm"), engine="XX-9", done=["M8 insert"]
        )
    ] == ["Thread insert"]


@given(any_job())
def test_no_job_is_too_odd_to_be_ordered_for(strange):
    for row in stations.orders(load(dump(strange))):
        assert (
            row.part
            and row.size.plain()
            and row.because.plain()
            and row.state in ("pass", "unsure", "attention", "fail")
            and row.do.plain("inch")
        )


def made_in(path: str, wanted) -> set[str]:
    """The paths of what a module of the stations holds."""
    names = vars(import_module(f"calc.stations.{path}"))
    return {f"{path}.{name}" for name, made in names.items() if wanted(made, f"calc.stations.{path}")}


def is_check(made, module) -> bool:
    return (
        callable(made)
        and getattr(made, "__module__", "") == module
        and get_type_hints(made).get("return") in (Check, Check | None)
    )


def is_order(made, module) -> bool:
    return not isinstance(made, type) and hasattr(made, "rows")


@pytest.mark.parametrize(
    "listed, module, wanted", [(stations.CHECKS, "checks", is_check), (stations.ORDERS, "orders", is_order)]
)
def test_no_check_and_no_order_of_a_station_is_forgotten(listed, module, wanted):
    """What stands in a station's folder is in the order of all of them, and nothing twice."""
    folder = Path(stations.__file__).parent
    theirs = [f"{file.parent.name}.{module}" for file in folder.glob(f"*/{module}.py")]
    found = [made_in(path, wanted) for path in theirs if not path.startswith("shared.")]
    if module == "checks":
        found.append(made_in("shared.every_engine", wanted))
    assert len(found) > 4 and all(found)
    assert sorted(listed) == sorted(set().union(*found))


def test_every_folder_is_a_station_and_is_listed():
    folder = Path(stations.__file__).parent
    assert {path.parent.name for path in folder.glob("*/__init__.py")} == {*stations.STATIONS, "shared"}
