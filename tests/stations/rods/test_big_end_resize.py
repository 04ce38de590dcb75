"""Resized big ends: the checks worked anew by rays from the new centre, verdicts, refusals, and what a cut must always do."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.formulas import split_bore
from calc.reference.engine import engine
from calc.stations.rods.big_end_resize import big_end_resize
from tests.checks.stations.rods.big_end_resize import CASES, FOUND, rod
from tests.formulas.test_split_bore import by_rays, cut, readings

MM = 1e-3


@pytest.mark.parametrize("case", CASES)
def test_checks_are_what_the_rays_find(case):
    assert by_rays(*CASES[case]) == pytest.approx(FOUND[case], abs=2e-6)


@given(readings, st.sampled_from(["plane", "midway"]))
def test_nothing_cut_moves_nothing(mm, centred):
    found = big_end_resize(**rod(*mm, 0, 0, centred))
    mean, stretch, lean = split_bore.oval(*mm)
    assert found["lost"] == found["offset"] == found["spread"] == 0 and found[
        "shortest"
    ] / MM == pytest.approx(137)
    # the oval's own longest diameter, met by trying a direction each half degree: a quarter off at most
    swing = math.hypot(stretch, lean)
    missed = swing * (1 - math.cos(2 * math.radians(0.25)))
    assert mean + swing - missed - 1e-9 <= found["clean"] / MM <= mean + swing + 1e-9


@given(readings, cut, cut)
def test_equal_cuts_are_alike_however_they_are_centred_and_the_cap_costs_no_length(mm, a, b):
    assert big_end_resize(**rod(*mm, a, a, "plane"))["shortest"] == pytest.approx(
        big_end_resize(**rod(*mm, a, a, "midway"))["shortest"]
    )
    on_plane, midway = (big_end_resize(**rod(*mm, a, b, how)) for how in ("plane", "midway"))
    assert on_plane["lost"] / MM == pytest.approx(a, abs=1e-12) and midway["lost"] / MM == pytest.approx(
        (a + b) / 2, abs=1e-12
    )
    assert midway["offset"] / MM == pytest.approx(abs(b - a) / 2, abs=1e-12) and on_plane["offset"] == 0


@given(readings, cut, st.integers(0, 50).map(lambda n: n / 1000))
def test_more_cut_never_needs_a_larger_circle_and_leaves_the_width(mm, a, more):
    less, deeper = (big_end_resize(**rod(*mm, x, x, "plane")) for x in (a, a + more))
    assert deeper["clean"] <= less["clean"] + 1e-9 and abs(deeper["stock_side"] - less["stock_side"]) < 0.4e-6
    assert deeper["stock_rod"] - less["stock_rod"] == pytest.approx(more * MM, abs=1e-9)


GOOD = "56.012; 56.010; 56.008"
VERDICTS = {
    "cleans up": ("pass", "Cleans up at 56.007 mm, centres 0.010 mm apart", {}),
    "left alone": (
        "pass",
        "In limits as they are: 0.005 mm out of round",
        dict(bores="56.012; 56.008; 56.009 | 56.010; 56.008; 56.006", cuts="0; 0; 137 | 0; 0; 137.02"),
    ),
    "too long": (
        "fail",
        "Rod 2 does not clean up: 56.035 mm",
        dict(bores=f"{GOOD} | 56.035; 56.014; 56.014", cuts="0.03; 0.03; 137 | 0; 0; 137"),
    ),
    "too wide": (
        "fail",
        "Rod 1 does not clean up: 56.032 mm",
        rod(56.010, 56.026, 56.027, 0.05, 0.05, "plane"),
    ),
    "too short": (
        "fail",
        "Rod 2 too short: 136.930 mm",
        dict(bores=f"{GOOD} | {GOOD}", cuts="0.05; 0.05; 137.0 | 0.05; 0.05; 136.98"),
    ),
    "uneven": (
        "attention",
        "Centres 0.080 mm apart, 0.050 mm allowed",
        dict(bores=f"{GOOD} | {GOOD}", cuts="0.03; 0.03; 137.08 | 0.03; 0.03; 137.0"),
    ),
    "only just": (
        "attention",
        "Cleans up only at 56.014 mm",
        rod(56.020, 56.015, 56.016, 0.03, 0.03, "plane"),
    ),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = big_end_resize(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words)


def test_what_to_do_about_a_bore_that_does_not_clean_up():
    long = big_end_resize(**rod(56.040, 56.014, 56.014, 0, 0, "plane")).verdict.do.plain()
    more = float(long.split("Cut ")[1].split(" mm")[0])
    assert big_end_resize(**rod(56.040, 56.014, 56.014, more, more, "plane"))["clean"] / MM <= 56.010 + 1e-9
    assert (
        "no cut of the faces narrows it"
        in big_end_resize(**rod(56.010, 56.026, 56.027, 0.05, 0.05, "plane")).verdict.do.plain()
    )
    leaning = big_end_resize(**rod(56.000, 56.019, 55.982, 0.0, 0.0, "plane"))
    assert leaning["clean"] / MM == pytest.approx(56.0217, abs=1e-3) and "Cut" in leaning.verdict.do.plain()
    # sides at 56.012, over the 56.010 wanted and under the limit: no cut is told to narrow them, nor is the rod given up
    sides = big_end_resize(**rod(56.030, 56.0165, 56.0165, 0, 0, "plane")).verdict.do.plain()
    assert "Cut 0.009 mm more off each face" in sides  # (56.030 − 56.012) ÷ 2
    for mm in ((56.030, 56.0165, 56.0165), (56.039, 56.0165, 56.0265), (56.030, 56.020, 56.020)):
        more = float(
            big_end_resize(**rod(*mm, 0, 0, "plane")).verdict.do.plain().split("Cut ")[1].split(" mm")[0]
        )
        assert more < 0.15 and by_rays(*mm, more, more, "plane") <= 56.019 + 2e-6, mm
    beside = big_end_resize(
        **rod(56.010, 56.050, 55.970, 0.0, 0.0, "plane"), low="55.990 mm", wanted="56.010 mm"
    ).verdict
    assert beside.state == "fail" and (
        "Cut" in beside.do.plain()
        or "wider place beside" in beside.do.plain()
        or "look for another rod" in beside.do.plain()
    )


def test_no_face_is_cut_in_vain_for_a_bore_that_does_not_clean_up():
    """Centred on the parting line a half is round once its own face is cut (plane geometry): a bore 0.025 mm long, of whose rod 0.030 mm
    went, wants 0.0075 mm off its cap and no more off the rod, which would cost centre distance; midway both cuts cost half of themselves."""
    cap = big_end_resize(**rod(56.025, 56.010, 56.010, 0.030, 0, "plane")).verdict
    assert (cap.state, cap.do.plain()) == (
        "fail",
        "It is too long along the rod. Cut 0.008 mm more off the cap. That leaves 136.970 mm of centre distance.",
    )
    assert by_rays(56.025, 56.010, 56.010, 0.030, 0.008, "plane") <= 56.010 + 2e-6
    body = big_end_resize(**rod(56.025, 56.010, 56.010, 0, 0.030, "plane")).verdict.do.plain()
    assert "Cut 0.008 mm more off the rod. That leaves 136.992 mm" in body
    both = big_end_resize(**rod(56.035, 56.014, 56.014, 0.010, 0, "plane")).verdict.do.plain()
    r, c = (float(part.split(" mm more")[0].split()[-1]) for part in both.split(" and "))
    assert r < c and by_rays(56.035, 56.014, 56.014, 0.010 + r, c, "plane") <= 56.010 + 2e-6
    midway = big_end_resize(**rod(56.040, 56.014, 56.014, 0, 0, "midway")).verdict.do.plain()
    assert "more off each face" in midway


def test_a_rod_that_would_be_too_short_once_it_cleans_up_is_not_told_to_be_cut():
    verdict = big_end_resize(
        **rod(56.050, 56.010, 56.010, 0, 0, "plane") | dict(cuts="0; 0; 136.960")
    ).verdict
    assert (
        verdict.state == "fail"
        and "leaves 136.944 mm of centre distance, less than the 136.95 mm allowed" in verdict.do.plain()
        and "Cut " not in verdict.do.plain()
    )


@pytest.mark.parametrize("i", range(40))
def test_a_set_right_on_its_limits_is_allowed(i):
    """The limit itself belongs to what is allowed (ISO 14253-1): centres 0.05 mm apart, a rod of the least length, a bore that cleans up at the upper limit."""
    apart = big_end_resize(
        bores=f"{GOOD} | {GOOD}",
        cuts=f"0.02; 0.02; {137.05 + i / 100:.2f} | 0.02; 0.02; {137 + i / 100:.2f}",
        wanted="56.015 mm",
    ).verdict
    short = big_end_resize(
        bores=GOOD, cuts=f"{i / 1000}; 0.02; {136.95 + i / 1000:.3f}", wanted="56.015 mm"
    ).verdict
    D = f"{56.010 + i / 1000:.3f}"
    wide = big_end_resize(
        bores=f"{D}; {D}; {D}", cuts="0.001; 0; 137", high=f"{D} mm", wanted=f"{D} mm"
    ).verdict
    assert apart.state == short.state == wide.state == "pass", (
        apart.headline.plain(),
        short.headline.plain(),
        wide.headline.plain(),
    )


def test_a_rod_that_was_too_short_before_is_not_told_to_be_cut_otherwise():
    before, cut = (
        big_end_resize(bores=GOOD, cuts=cuts).verdict.do.plain() for cuts in ("0; 0; 136.94", "0.06; 0; 137")
    )
    assert "too short before any cut" in before and "mm went" not in before
    assert cut.startswith("0.060 mm went. Cut less off the rod")


def test_set_is_judged_rod_by_rod():
    found = big_end_resize(
        bores=f"{GOOD} | 56.040; 56.014; 56.014 | | 56.020; 56.015; 56.016",
        cuts="0.03; 0.03; 137 | 0; 0; 137 | | 0.03; 0.03; 137",
    )
    (table,) = found.tables
    assert [row[0] for row in table.rows] == ["1", "2", "4"] and table.states == ("pass", "fail", "attention")
    assert table.rows[1][3] == "rod, along it" and table.rows[2][3] == "parting line"
    assert found.figures[0].title.startswith("Rod 2")


def test_remarks_on_what_else_the_numbers_show():
    def warned(**entries):
        return [r.text.plain() for r in big_end_resize(**entries).remarks if r.level == "warning"]

    assert not warned()
    assert any(
        "no longer meet on a diameter" in w
        for w in warned(**rod(56.012, 56.010, 56.008, 0.08, 0.02, "midway"))
    )
    assert not warned(**rod(56.012, 56.010, 56.008, 0.05, 0.02, "plane"))
    for taken, bored in (
        (0.048, False),
        (0.053, True),
        (0.14, True),
    ):  # with 56.012 along the rod, a tenth on the diameter comes off from 0.051 on
        assert (
            any(
                "Bore to between 55.910 mm and 55.990 mm, then hone to 56.010 mm" in w
                for w in warned(**rod(56.012, 56.010, 56.008, taken, taken, "plane"))
            )
            == bored
        ), taken
    assert any("Look for cracks" in w for w in warned(**rod(56.060, 56.005, 56.005, 0.05, 0.05, "plane")))
    missed = big_end_resize(bores=GOOD, cuts="0.03; 0.03; 137 | 0.03; 0.03; 137").remarks
    assert any("Rod 2 has a cut and no bores" in r.text.plain() for r in missed)


def test_a_rod_without_a_cut_or_a_length_takes_none_and_the_usual():
    found = big_end_resize(bores=f"{GOOD} | {GOOD}", cuts="0.03; 0.03")
    assert (found["shortest"] / MM, found["longest"] / MM) == pytest.approx((136.97, 137.0))


REFUSALS = [
    (
        "high",
        dict(high="55.9 mm"),
        "Finished bore, most: is 55.900 mm, not more than the least finished bore, 56.000 mm; give more than 56.000 mm.",
    ),
    (
        "wanted",
        dict(wanted="56.030 mm"),
        "Hone to: is 56.030 mm, not within the finished limits; give 56.000 mm to 56.019 mm.",
    ),
    (
        "bores.2.1",
        {"bores.2.1": "57.5 mm"},
        "Bores before the cut, bolted up: rod 2 reads 56.011 mm to 57.500 mm, more than a millimetre apart; give three readings of one bore.",
    ),
    (
        "bores.1.1",
        dict(bores="58; 58; 58"),
        "Bores before the cut, bolted up: rod 1 reads 58.000 mm, more than a millimetre from the size wanted, 56.010 mm; give readings of this big end.",
    ),
    ("cuts.1.1", {"cuts.1.1": "-0.1 mm"}, None),
    ("cuts.1.2", {"cuts.1.2": "0.7 mm"}, None),
    ("bores.1.2", {"bores.1.2": ""}, None),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        big_end_resize(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (sentence is None or error.sentence() == sentence), error.sentence()


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    assert (
        big_end_resize(**{"bores.1.2": "56.017 ± 0.002 mm", "bores.1.3": "56.017 mm"}).verdict.state
        != "unsure"
    )
    found = big_end_resize(
        wanted="56.019 mm", bores="56.012; 56.017 ± 0.008 mm; 56.017 ± 0.008 mm", cuts="0.04; 0.04; 137"
    )
    assert found.verdict.state == "unsure" and "cleaning up" in found.verdict.headline.plain()


def test_inches_give_the_same():
    metric = evaluate(big_end_resize, rod(56.0070, 55.9943, 55.9968, 0.0254, 0.0508, "midway", 137.16))
    inch = evaluate(
        big_end_resize,
        dict(bores="2.2050; 2.2045; 2.2046", cuts="0.001; 0.002; 5.4", centred="midway"),
        "inch",
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-6, abs=2e-7), output


def test_drawing_shows_the_cut_bore_inside_the_new_circle():
    (drawing,) = big_end_resize().figures
    assert "times as thick" in drawing.exaggerated.plain()
    inner = [
        p
        for s in drawing.shapes
        if getattr(s, "hatch", None) in ("a", "b")
        for p in s.points
        if math.hypot(*p) < 30 * MM
    ]
    assert max(math.hypot(*p) for p in inner) <= 28.005 * MM and min(
        math.hypot(*p) for p in inner
    ) == pytest.approx(28.005 * MM * 0.84, rel=0.03)


def test_a_size_to_hone_to_that_lies_within_the_doubt_of_the_readings_is_not_told_as_sure():
    """56.009 along the rod, read to 4 µm: it may stand at 56.013 already, and no hone leaves 56.010 there."""
    sure, doubtful = (
        big_end_resize(bores=f"56.009{doubt}; 56.001; 56.001", cuts="0; 0.001; 137")
        for doubt in ("", " ± 0.004")
    )
    assert sure.verdict.state == "pass" and "hone to 56.010 mm" in sure.verdict.do.plain()
    assert (
        doubtful.verdict.state == "unsure"
        and "the stock left for the hone" in doubtful.verdict.headline.plain()
    )
    left_alone = big_end_resize(bores="56.012; 56.001 ± 0.004; 56.008", cuts="0; 0; 137")
    assert (
        left_alone.verdict.state == "unsure"
        and "the bores as they are" in left_alone.verdict.headline.plain()
    )


def test_a_rod_of_another_engine_is_judged_by_its_own_sheet():
    """RC-40, in inches: bores of 2.1254 with limits of 2.1250 to 2.1258, rods of 5.498 at least."""
    standing = Standing(engine("RC-40"))
    rods = {"bores": "2.1256; 2.1252; 2.1253", "cuts": "0.001; 0.001; 5.5"}
    assert evaluate(big_end_resize, rods, "inch", standing).verdict.state == "pass"
    assert "too short: 5.49700 in" in evaluate(
        big_end_resize, rods | {"cuts": "0.003; 0.003; 5.5"}, "inch", standing
    ).verdict.headline.plain("inch")
    assert "does not clean up" in evaluate(
        big_end_resize, rods | {"bores": "2.1262; 2.1262; 2.1262"}, "inch", standing
    ).verdict.headline.plain("inch")
    assert (
        evaluate(big_end_resize, {"bores": "2.1256; 2.1252; 2.1253"}, "inch", standing).verdict.state
        == "awaited"
    )
    unknown = evaluate(
        big_end_resize, rods | {"wanted": "2.1254 in", "nominal_length": "5.5 in"}, "inch", Standing(None)
    ).verdict
    assert unknown.state == "unjudged" and "finished bore, least" in unknown.headline.plain()
