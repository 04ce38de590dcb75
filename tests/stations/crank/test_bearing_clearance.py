"""Clearance of a shell bearing: the equation of the thick cylinder, corners of the sheets, verdicts, refusals."""

import itertools
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.reference.materials import MATERIALS
from calc.stations.crank.bearing_clearance import bearing_clearance
from tests.checks.stations.crank.bearing_clearance import CHECKS, COLD
from tests.formulas.test_press_fit import two_rings

MM = 1e-3
SHEETS = ("TS-16", "RC-40")
ROD = dict(read="rod-apart")
MAIN_FITTED, ROD_FITTED = dict(read="main-fitted"), dict(read="rod-fitted")


def on(sheet, **entries):
    return evaluate(bearing_clearance, entries, standing=Standing(engine(sheet)))


def test_what_the_crush_opens_the_case_by_is_what_the_boundary_value_solver_finds():
    case, shell = MATERIALS["mg-az91"], MATERIALS["al-si-t6"]
    housing, wall, outside, grip = 65.010, 4.972, 110.010, 2 * 0.035 / 3.141592653589793
    bore = (housing - 2 * wall) * MM
    inner, _ = two_rings(
        bore, housing * MM, outside * MM, grip * MM, shell.E, shell.nu, case.E, case.nu
    )  # fmt: skip
    fitted = (bore + grip * MM) * (1 + inner(bore)[0] / shell.E)
    found = bearing_clearance(**COLD)
    (row,) = [check for check in CHECKS if check.kind == "library"]
    assert (fitted - bore) / MM == pytest.approx(row.expected, abs=row.tolerance)
    assert found["fitted"] == pytest.approx(fitted - 54.993 * MM, abs=3e-8)
    assert found["running"] == pytest.approx(found["fitted"], abs=1e-12)


VERDICTS = {
    "right": ("pass", "Clearance right: 0.073 mm, running ", {}),
    "tight to loose": ("pass", "Clearance right: 0.073 mm to 0.085 mm, running ", dict(bore_most="65.015", journal_least="54.986")),
    "too tight": ("fail", "Too tight: 0.038 mm, at least 0.048 mm", dict(main_wall="4.9895")),
    "no room": ("fail", "No room: −0.177 mm, at least 0.048 mm", dict(main_wall="5.097")),
    "worn": ("fail", "Too loose: 0.173 mm, 0.150 mm allowed", dict(main_wall="4.922")),
    "ground journal in standard shells": ("fail", "Too loose: 0.323 mm, 0.150 mm allowed", dict(main_journal="54.743")),
    "loose for fresh parts": ("attention", "Loose for fresh parts: 0.113 mm, 0.098 mm at most", dict(journal_least="54.953")),
    "seizes running": ("fail", "Seizes running: −0.0", dict(journal_temperature="150", main_temperature="-20", shell_temperature="60")),
    "tight running": ("attention", "Tight running: 0.0", dict(journal_temperature="140", main_temperature="20", shell_temperature="20")),
    "shells loose when hot": ("attention", "Shells lose their grip when hot: −0.0", dict(main_shell_metal="forged-steel")),
    "rod": ("pass", "Clearance right: 0.051 mm, running ", ROD),
    "rod too tight": ("fail", "Too tight: 0.018 mm, at least 0.028 mm", ROD | dict(rod_wall="1.9995")),
    "fitted": ("pass", "Clearance right: 0.082 mm, running ", MAIN_FITTED),
    "fitted rod": ("pass", "Clearance right: 0.06", ROD_FITTED),
    "fitted, too tight": ("fail", "Too tight: 0.03", MAIN_FITTED | dict(main_fitted="55.040 mm")),
}  # fmt: skip


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = bearing_clearance(**entries).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


REFUSALS = [
    ("main_wall", dict(main_wall="9.944 mm"), "give the wall of one shell, not of the pair, and sizes of one bearing."),
    ("main_fitted", MAIN_FITTED | dict(main_fitted="65.010 mm"), "give the bore in the fitted shells."),
    ("bore_most", dict(bore_most="65.000 mm"), "Main"),
    ("bore_most", dict(bore_most="65.000 mm"), "give 65.010 mm or more."),
    ("wall_least", dict(wall_least="4.980 mm"), "give 4.972 mm or less."),
    ("journal_least", dict(journal_least="55.000 mm"), "give 54.993 mm or less."),
    ("main_high", dict(main_low="0.09 mm", main_high="0.08 mm"), "give 0.090 mm or more."),
    ("rod_wall", ROD | dict(rod_wall="3.966 mm"), "give the wall of one shell"),
    ("main_journal", dict(main_journal="0"), None),
    ("main_temperature", dict(main_temperature="300 °C"), None),
]  # fmt: skip


@pytest.mark.parametrize("field, entries, words", [row for row in REFUSALS if row[2] != "Main"])
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        bearing_clearance(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (words is None or words in error.sentence()), error.sentence()


@pytest.mark.parametrize("sheet", SHEETS)
@pytest.mark.parametrize(
    "kind, ids",
    [
        ("main", ("crankcase.main_housing", "crankcase.main_shell_wall", "crank.main_journal")),
        ("rod", ("rod.big_end_bore", "rod.shell_wall", "crank.rod_journal")),
    ],
)
def test_all_corners_of_the_sheet_are_in_order_apart_and_fitted(sheet, kind, ids):
    sizes = [engine(sheet).features[id] for id in ids]
    middle = sizes[0].nominal - 2 * sizes[1].nominal - sizes[2].nominal
    for D, w, d in itertools.product(*((size.low, size.high) for size in sizes)):
        entries = {f"{kind}_wall": f"{w!r} m", f"{kind}_journal": f"{d!r} m"}
        apart = on(sheet, read=f"{kind}-apart", **entries, **{f"{kind}_housing": f"{D!r} m"})
        assert apart.verdict.state == "pass", (apart.verdict.headline.plain(), D, w, d)
        # a nanometre from the limit: the housing round shells that are fitted is known only so well
        inwards = 1e-9 if apart["tight"] < middle else -1e-9
        bore = f"{d + apart['fitted'] + inwards!r} m"
        fitted = on(sheet, read=f"{kind}-fitted", **entries, **{f"{kind}_fitted": bore})
        assert fitted.verdict.state == "pass", (fitted.verdict.headline.plain(), D, w, d)
        assert fitted["tight"] == pytest.approx(apart["tight"], abs=2e-8)


def test_past_the_sheets_limits_it_is_not_in_order():
    for wall, state in (("4.9845", "pass"), ("4.9846", "fail"), ("4.9595", "pass"), ("4.9594", "attention")):
        assert bearing_clearance(main_wall=wall).verdict.state == state, wall
    for least, state in (("54.916", "attention"), ("54.9159", "fail")):
        assert bearing_clearance(journal_least=least).verdict.state == state, least


def test_without_a_limit_on_the_sheet_nothing_is_judged():
    read = dict(main_housing="65.010 mm", main_wall="4.972 mm", main_journal="54.993 mm")
    found = evaluate(bearing_clearance, read, standing=Standing(None))
    assert found.verdict.state == "unjudged"


def test_a_sheet_without_the_crush_leaves_it_out_and_says_so():
    found = on("RC-40", main_housing="2.6254 in", main_wall="0.1864 in", main_journal="2.2497 in")
    assert found["opened"] == 0 and found["fitted"] == found["tight"]
    assert any("is left out" in remark.text.plain() for remark in found.remarks)


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    found = bearing_clearance(main_wall="4.984 ± 0.002 mm").verdict
    assert found.state == "unsure" and "tightest clearance" in found.headline.plain()


@pytest.mark.parametrize("entries", [dict(main_wall="4.9895"), dict(main_wall="5.097")])
def test_the_journal_and_the_shell_that_are_advised_serve(entries):
    do = bearing_clearance(**entries).verdict.do.plain()
    journal, wall = do.split("a journal of ")[1].split(" ")[0], do.split("or shells of ")[1].split(" ")[0]
    assert bearing_clearance(**entries, main_journal=f"{journal} mm").verdict.state == "pass"
    assert bearing_clearance(**entries | dict(main_wall=f"{wall} mm")).verdict.state == "pass"


def test_what_is_advised_for_a_loose_one_serves():
    do = bearing_clearance(main_wall="4.922").verdict.do.plain()
    wall = do.split("shells of ")[-1].split(" ")[0]
    assert bearing_clearance(main_wall=f"{wall} mm").verdict.state == "pass"


def test_inches_give_the_same():
    metric = evaluate(
        bearing_clearance, dict(main_housing="65.0113 mm", main_wall="4.9657 mm", main_journal="54.991 mm")
    )
    inch = evaluate(
        bearing_clearance, dict(main_housing="2.5595", main_wall="0.1955", main_journal="2.165"), "inch"
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-6, abs=1e-9), output


@given(st.floats(-40, 140))
def test_a_soft_case_opens_with_heat_as_a_whole_engine_of_one_heat(t):
    """All at one heat: what is gained is the case's growth less that of all that stands in it, and the grip follows."""
    at = dict(main_temperature=f"{t!r}", shell_temperature=f"{t!r}", journal_temperature=f"{t!r}")
    gained = bearing_clearance(**at)["running"] - bearing_clearance(**COLD)["running"]
    assert gained >= -1e-12 if t >= 20 else gained <= 1e-12


def test_one_metal_throughout_keeps_its_share_of_the_size():
    """Journal, shells and housing of one metal at one heat: every size grows alike, and so does the clearance."""
    same = dict(
        read="rod-apart",
        rod_proud="0 mm",
        rod_temperature="120",
        shell_temperature="120",
        journal_temperature="120",
    )
    found, grown = bearing_clearance(**same), 1 + MATERIALS["forged-steel"].strain_at(393.15)
    assert found["running"] == pytest.approx(found["tight"] * grown, rel=1e-9)


def test_a_tapered_journal_is_not_cured_by_shells():
    """The journal's own 0.073 mm make it loose: neither new nor thicker shells bring both ends within."""
    verdict = bearing_clearance(main_journal="54.993 mm", journal_least="54.920 mm").verdict
    assert verdict.state == "attention" and "journal's own readings differ" in verdict.do.plain()
    assert "change the shells" not in verdict.do.plain()
    worse = bearing_clearance(main_journal="54.993 mm", journal_least="54.910 mm").verdict
    assert worse.state == "fail" and "which undersize" in worse.do.plain(), worse.do.plain()


def test_both_ends_of_what_is_said_to_serve_are_in_order():
    for start in ("54.750 mm", "55.100 mm"):
        do = bearing_clearance(main_journal=start).verdict.do.plain()
        found = re.search(r"journal of (\S+) mm to (\S+) mm, or shells of (\S+) mm to (\S+) mm each", do)
        for journal in found.groups()[:2]:
            assert bearing_clearance(main_journal=f"{journal} mm").verdict.state == "pass", journal
        for wall in found.groups()[2:]:
            told = dict(main_journal=start, main_wall=f"{wall} mm")
            assert bearing_clearance(**told).verdict.state == "pass", wall
