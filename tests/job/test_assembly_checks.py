"""What is checked before an engine is closed: for exactly the parts of a job, in order, each calculator filled in with entries that it takes."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.declare.calculator import evaluate
from calc.job.assembly_checks import assembly_checks
from calc.job.parts import groups, not_checked
from calc.reference.engine import engine
from calc.stations.index import find
from tests.job.jobs import any_job, job, reading
from tests.job.orchard import orchard


def checks(*readings, **fields) -> list:
    return assembly_checks(
        job(**{"received": "", "readings": [reading(*told) for told in readings], **fields})
    )


def titles(*readings, **fields) -> list:
    return [check.title for check in checks(*readings, **fields)]


def nominal(*groups, sheet="TS-16", doubt=""):
    """Every size of these groups read at its nominal size; lengths with a doubt."""
    return [
        (f.id, place, "finished", f.text + (doubt if f.text.endswith(" mm") else ""))
        for f in engine(sheet).features.values()
        if not f.follows and f.id.partition(".")[0] in groups
        for place in f.places or ("",)
    ]


def by_title(found, title):
    return next(check for check in found if check.title == title)


def test_the_orchard_job_is_closed_in_this_order():
    assert [check.title for check in assembly_checks(orchard())] == [
        "Every passage clean",
        "Each part to its own place",
        "Main bearing clearance",
        "Rods straight",
        "Rod bearing clearance",
        "Rod nuts",
        "Rod side clearance",
        "Close the case",
        "Crank end float",
        "Deck height",
        "Valves tight",
        "Stem heights",
        "Chambers alike",
        "Head nuts",
        "Turned through by hand",
    ]


def test_only_the_parts_of_the_job_are_checked():
    assert titles(received="two heads") == [
        "Every passage clean",
        "Each part to its own place",
        "Valves tight",
        "Stem heights",
        "Head nuts",
        "Turned through by hand",
    ]
    assert titles(received="a crankshaft") == ["Every passage clean", "Turned through by hand"]
    assert "Flywheel runout" in titles(received="Flywheel") and "Rod nuts" not in titles(received="the rods")
    assert "Rod nuts" in titles(received="four conrods and the crank")
    assert titles() == ["Every passage clean", "Turned through by hand"]
    assert "Valve lash" in titles(received="heads, lifters") and "Plungers off both stops" not in titles(
        received="heads, lifters"
    )
    assert "Plungers off both stops" in titles(
        ("lifter.preload", "1 intake", "finished", "1.80 mm"), received="heads, lifters"
    )


def test_a_word_is_a_part_only_where_it_stands_alone():
    assert groups(job(received="crankcase")) == {"crankcase"} and groups(job(received="CRANK, camshaft")) == {
        "crank",
        "cam",
    }
    assert groups(job(received="a broadhead in a suitcase")) == set()
    assert groups(job(received="", readings=[reading("cylinder.bore", "1")])) == {"cylinder"}


def test_the_jobs_readings_are_filled_in_as_they_were_written():
    stems = by_title(assembly_checks(orchard()), "Stem heights")
    assert stems.entries["heights"].split(" | ")[5] == "45.08 mm ± 0.02 mm", "the correction counts"
    assert (stems.state, stems.said.plain(), stems.open) == ("pass", "8 of 8 in order", ())
    result = evaluate(find("stem-height"), stems.entries)
    assert (
        result["spread"] * 1000 == pytest.approx(0.14) and result.verdict.state == "pass"
    )  # by hand: 45.10 − 44.96


def test_limits_are_the_sheets_and_what_is_not_read_is_left_open():
    mains = by_title(assembly_checks(orchard()), "Main bearing clearance")
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


def test_rods_are_weighed_by_whoever_can():
    def weights(**grams):
        return [
            (f"rod.{name}", place, "finished", f"{g} g")
            for name, all in grams.items()
            for place, g in zip("1234", all)
        ]

    rods = by_title(
        checks(*weights(big_end_mass=(400, 401, 399), small_end_mass=(160, 161, 160, 160), mass=(560,))),
        "Rods of one weight",
    )
    assert rods.entries == {
        "weights": "400 g; 160 g; 560 g | 401 g; 161 g;  | 399 g; 160 g;  | "
    }  # the fourth's big end was not weighed
    result = evaluate(find("rod-weights"), rods.entries)
    assert "Rods of one weight" not in [
        check.title for check in checks(*weights(big_end_mass=(400,), small_end_mass=(160, 160)))
    ]
    assert result.verdict.state and (rods.state, rods.said.plain()) == ("pass", "8 of 8 in order")


def test_a_rod_of_which_half_is_read_is_left_to_read():
    rods = by_title(checks(("rod.bend", "3", "finished", "0.02 mm")), "Rods straight")
    assert (
        rods.entries
        == {"bend_new": "0.03 mm", "bend_worn": "0.05 mm", "twist_new": "0.05 mm", "twist_worn": "0.08 mm"}
        and "bend_left" in rods.open
        and rods.place == ""
    )


def test_rods_straight_takes_the_readings_over_100_mm():
    rods = by_title(
        checks(("rod.bend", "3", "finished", "0.02 mm"), ("rod.twist", "3", "finished", "0.03 mm")),
        "Rods straight",
    )
    result = evaluate(find("rod-align"), rods.entries)
    assert (rods.place, rods.open) == ("3", ()) and [
        result[name] * 1000 for name in ("bend", "twist")
    ] == pytest.approx([0.02, 0.03])


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


def test_deck_height_is_the_chain_of_the_parts():
    found = by_title(checks(*nominal("crankcase", "cylinder", "crank", "rod", "piston")), "Deck height")
    result = evaluate(find("stack-up"), found.entries)
    assert found.place == "1" and result["gap"] * 1000 == pytest.approx(101.70 + 110 - 34.5 - 137 - 39)
    assert by_title(checks(received="case, rods"), "Deck height").calculator == "reading-verdict"
    assert "Deck height" not in titles(received="case") and "Deck height" not in titles(
        received="rods, pistons"
    )
    doubtful = [
        told if told[0] != "crankcase.seat_height" else (*told[:3], "101.70 mm ± 20 µm")
        for told in nominal("crankcase", "cylinder", "crank", "rod", "piston")
    ]
    result = evaluate(find("stack-up"), by_title(checks(*doubtful), "Deck height").entries)
    assert [result[name] * 1000 for name in ("least_gap", "greatest_gap")] == pytest.approx([1.18, 1.22])


def test_a_warm_reading_is_filled_in_at_20_degrees():
    found = checks(
        ("flywheel.runout", "", "finished", "0.05 mm"),
        readings=[
            reading("rod.bend", "1", "finished", "0.02 mm"),
            reading("rod.twist", "1", "finished", "0.03 mm", part="40 °C", of="forged-steel"),
        ],
    )
    # by hand: 0.03 mm shrink by 20 K of about 12 millionths, 7 nm
    assert float(
        by_title(found, "Rods straight").entries["twist_right"].removesuffix(" mm")
    ) == pytest.approx(0.03, abs=2e-5)


def test_an_engine_without_a_sheet_gets_the_checks_that_need_no_size():
    assert titles(
        ("crank.main_journal", "1", "finished", "54.743 mm"), received="heads, case, crank", engine="XX-9"
    ) == ["Every passage clean", "Each part to its own place", "Valves tight", "Turned through by hand"]


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


@given(any_job())
def test_no_job_is_too_odd(strange):
    for check in assembly_checks(strange):
        assert check.title and check.why and check.do.plain("inch")
        if check.calculator:
            find(check.calculator)


def test_what_was_not_checked_is_counted_place_by_place():
    missing, every = not_checked(job(received="flywheel", readings=[]))
    assert [(feature.id, places) for feature, places in missing] == [
        ("flywheel.mass", ("",)),
        ("flywheel.runout", ("",)),
    ] and every == 2
    sizes = [
        reading("crank.main_journal", "1"),
        reading("crank.main_journal", "2", "received"),
        reading("crank.rod_journal", "4", "assembly"),
    ]
    missing, every = not_checked(job(received="", readings=sizes))
    crank = [
        f
        for f in engine("TS-16").features.values()
        if f.id.startswith("crank.") and not f.follows and (f.low, f.high, f.wear) != (None, None, None)
    ]  # nobody is asked for what has no limit
    assert every == sum(len(f.places or "1") for f in crank)
    assert dict((feature.id, places) for feature, places in missing)["crank.main_journal"] == ("2", "3"), (
        "as received is not as finished"
    )
    assert sum(len(places) for _, places in missing) == every - 2
    assert not_checked(job(received="flywheel", engine="XX-9")) == ([], 0)
    assert not_checked(job(received="", readings=[reading(*told) for told in nominal("flywheel")])) == ([], 2)


def test_the_worst_rod_and_the_worst_guide_are_filled_in():
    rods = by_title(
        checks(
            *(
                (f"rod.{name}", p, "finished", t)
                for p, bend, twist in (
                    ("1", "0.00 mm", "0.00 mm"),
                    ("2", "0.01 mm", "0.07 mm"),
                    ("3", "0.02 mm", "0.01 mm"),
                )
                for name, t in (("bend", bend), ("twist", twist))
            )
        ),
        "Rods straight",
    )
    assert (rods.place, rods.entries["twist_right"], rods.state) == ("2", "0.07 mm", "fail")
    guides = by_title(
        checks(
            *(
                (f, p, "finished", t)
                for f, p, t in (
                    ("guide.bore", "1 intake", "8.008 mm"),
                    ("valve.stem_intake", "1 intake", "7.960 mm"),
                    ("guide.bore", "2 exhaust", "8.015 mm"),
                    ("valve.stem_exhaust", "2 exhaust", "7.900 mm"),
                )
            )
        ),
        "Valves free in their guides",
    )
    # by hand: 0.048 of 0.030 to 0.065, and 0.115 of at most 0.095
    assert (guides.place, guides.entries["valve"], guides.entries["stem"], guides.state) == (
        "2 exhaust",
        "exhaust",
        "7.900 mm",
        "fail",
    )


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
