"""Doubts: the law of propagation against draws with numpy, and the verdict that they leave standing."""

import numpy
import pytest
from hypothesis import given as tried
from hypothesis import strategies as st
from scipy.stats import norm

from calc.core.kinds import LENGTH
from calc.core.result import impossible, say
from calc.core.working import form, greatest, least, sqrt
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    column,
    evaluate,
    given,
    grid,
    measured,
)
from calc.stations.heads.seat_fit import seat_fit
from calc.stations.index import find

MM = form(LENGTH, 4)
# They say what the test wants, whatever their limits: what the doubt makes of it is looked at.
PROBE = dict(purpose="A calculator for these tests.", sources=(), about_doubt=True)
um = 1e-6


# the law of propagation against Monte Carlo

READINGS = {  # calculator → input: value and expanded doubt, in the unit that is typed
    "seat-fit": {
        "pocket_bore": (37.5, 0.006, "mm"),
        "ring_outside": (37.605, 0.004, "mm"),
        "ring_bore": (31, 0.05, "mm"),
        "depth": (6.5, 0.05, "mm"),
        "head_wall": (9, 0.3, "mm"),
    },
    "seat-shrink": {"pocket_bore": (37.5, 0.006, "mm"), "ring_outside": (37.605, 0.004, "mm")},
    "size-at-20": {"reading": (37.5, 0.004, "mm")},
    "leak-test": {"volume": (2.5, 0.1, "L"), "start": (60, 0.4, "kPa"), "end": (58.5, 0.4, "kPa")},
}
OFF = {"leak-test": dict(mode="pressure", time="60 s")}


@pytest.mark.parametrize("id", READINGS)
def test_first_order_is_what_drawn_readings_give(id):
    """GUM 5.1 against 1500 draws with numpy, each reading normal: within the draws' own scatter (1/√2n = 1.8 %, thrice) and curvature."""
    rng = numpy.random.default_rng(5)
    found = evaluate(
        find(id),
        OFF.get(id, {})
        | {name: f"{value} {unit} ± {U} {unit}" for name, (value, U, unit) in READINGS[id].items()},
    )
    drawn = [
        evaluate(
            find(id),
            OFF.get(id, {})
            | {
                name: f"{rng.normal(value, U / 2):.9f} {unit}"
                for name, (value, U, unit) in READINGS[id].items()
            },
        )
        for _ in range(1500)
    ]
    moved = 0
    for output in found.outputs:
        spread = numpy.std([one[output] for one in drawn])
        assert found.doubts[output] == pytest.approx(
            2 * spread, rel=0.08, abs=1e-12 + 1e-9 * abs(found[output])
        ), output
        moved += spread > 0
    assert moved >= 1


def test_independent_doubts_add_as_squares():
    """δ = D_r − D_p, so U² = U_r² + U_p²."""
    found = seat_fit(pocket_bore="37.5 ± 0.003 mm", ring_outside="37.605 ± 0.004 mm")
    assert found.doubts["interference"] == pytest.approx(5 * um, rel=1e-9)


def test_no_doubt_changes_nothing():
    plain, zero = seat_fit(), seat_fit(pocket_bore="37.5 ± 0 mm")
    assert plain.doubts == zero.doubts == {} and plain.verdict.state == zero.verdict.state == "pass"
    assert plain.verdict.headline.plain() == zero.verdict.headline.plain()


@tried(st.floats(0.02, 1.9), st.floats(1e-5, 1e-3))
def test_a_reading_that_falls_out_of_a_result_leaves_no_doubt_in_it(width, U):
    """Both castings have the same width, and the same streams of air to each of it: what one sheds over what the other does is a ratio of which it is no
    part (analytic)."""
    found = evaluate(find("fin-cooling"), {"width": f"{width:.9f} m ± {U:.9f} m", "path": "10 mm"})
    assert found.doubts["change"] == 0
    assert found.doubts["heat_this"] == pytest.approx(
        float(found.outputs["heat_this"]) * U / float(f"{width:.9f}"), rel=1e-3
    )


def test_a_small_doubt_leaves_the_verdict_as_it_is():
    doubtful = seat_fit(pocket_bore="37.5 ± 0.003 mm")
    assert (
        doubtful.verdict.headline.plain() == seat_fit().verdict.headline.plain()
        and doubtful["interference"] == seat_fit()["interference"]
    )


# the verdict, on calculators made to have it exactly


class Size(Outputs):
    size = Output("Size", "y", MM)


def judged(low=None, high=None, state=None):
    """A calculator that says of a size whether it lies within limits."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        size = Size.size(i.x + 0)
        right = (low is None or float(size) >= low) and (high is None or float(size) <= high)
        return answer(
            size,
            verdict=(state or ("pass" if right else "fail"), "Right" if right else "Wrong", "Go on."),
            limits=(Limit("the size", size, low=low, high=high),),
        )

    return probe


# reading and U in mm, limits in mm; the numbers are scipy's
@pytest.mark.parametrize(
    "y, U, low, high, state, sure",
    [
        (9.6, 0.5, 9.0, 10.0, "unsure", 0.937003),
        (54.987, 0.004, 54.970, 54.990, "unsure", 0.933193),
        (54.986, 0.004, 54.970, 54.990, "pass", 0.977250),
        (54.992, 0.006, 54.980, 55.000, "pass", 0.996138),
        (85.498, 0.008, 85.490, 85.505, "unsure", 0.937191),
        (54.993, 0.004, 54.970, 54.990, "unsure", 0.066807),
        (54.994, 0.004, 54.970, 54.990, "fail", 0.022750),
        (54.990, 0.004, None, 54.990, "unsure", 0.5),
        (54.990, 0.004, 54.990, None, "unsure", 0.5),
        (10.0, 40.0, 9.0, 11.0, "unsure", 0.039878),
    ],
)
def test_verdict_by_the_numbers_of_jcgm_106(y, U, low, high, state, sure):
    u = U / 2
    p = (1 if high is None else norm.cdf(high, y, u)) - (0 if low is None else norm.cdf(low, y, u))
    assert p == pytest.approx(sure, abs=5e-7)
    found = judged(*(None if limit is None else limit / 1000 for limit in (low, high)))(x=f"{y} ± {U} mm")
    assert found.verdict.state == state
    if state == "unsure":
        assert f"Only {int(p * 100 + 1e-6)} % sure that the size is right" == found.verdict.headline.plain()


def named_share(found):
    """The share of the doubt that the verdict asks for, None on a limit."""
    value = found.verdict.do.values.get("share")
    return None if value is None else float(value)


@tried(
    st.integers(-300, 300),
    st.integers(20, 1000),
    st.sampled_from([(9.9, None), (None, 10.1), (9.9, 10.1), (9.99, 10.01)]),
)
def test_the_doubt_that_is_asked_for_decides(offset_um, U_um, limits):
    probe = judged(*(None if limit is None else limit / 1000 for limit in limits))

    def asked(share):
        return probe(x=f"{10 + offset_um / 1000:.4f} ± {U_um * share / 1000:.9f} mm")

    found = asked(1)
    if found.verdict.state != "unsure":
        return
    share = named_share(found)
    if share is None:
        assert "lies on the limit" in found.verdict.do.plain()
        return
    assert asked(share).verdict.state in ("pass", "fail")
    assert asked(min(share + 0.011, 1)).verdict.state == "unsure"  # told in whole per cent, rounded down


def test_on_a_limit_no_better_gauge_is_asked_for():
    found = judged(low=0.010)(x="10 ± 0.05 mm").verdict
    assert (found.state, found.headline.plain()) == (
        "unsure",
        "Only 50 % sure that the size is right",
    ) and "lies on the limit" in found.do.plain()


def test_proven_wrong_keeps_the_calculators_own_words():
    found = judged(low=0.010)(x="9.9 ± 0.05 mm")
    assert (found.verdict.state, found.verdict.headline.plain(), found.verdict.do.plain()) == (
        "fail",
        "Wrong",
        "Go on.",
    )


def test_failing_by_something_else_is_not_put_in_doubt():
    """The number is inside its limit by less than the doubt, but the calculator fails for a reason of its own."""
    assert judged(low=0.010, state="fail")(x="10.001 ± 0.05 mm").verdict.state == "fail"
    assert (
        judged(low=0.010, state="fail")(x="10 ± 0.05 mm").verdict.state == "fail"
    )  # a limit belongs to what it allows


def test_attention_gives_way_to_cannot_tell():
    assert judged(low=0.010, state="attention")(x="10.001 ± 0.05 mm").verdict.state == "unsure"
    assert judged(low=0.010, state="attention")(x="10.1 ± 0.05 mm").verdict.state == "attention"


def looked_at(low, wanted, high=None, state=None):
    """A calculator that fails under `low` and asks for another look under `wanted` or over `high`."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        size = Size.size(i.x + 0)
        found = (
            "fail"
            if float(size) < low
            else "attention"
            if float(size) < wanted or high is not None and float(size) > high
            else "pass"
        )
        return answer(
            size,
            verdict=(
                state or found,
                {"fail": "Wrong", "attention": "Little", "pass": "Right"}[state or found],
                "Go on.",
            ),
            limits=(
                Limit("the size", size, low=low),
                Limit("the size wanted", size, low=wanted, level="attention"),
                *(
                    ()
                    if high is None
                    else (Limit("the size that serves", size, high=high, level="attention"),)
                ),
            ),
        )

    return probe


# U 0.05 mm, so u 0.025 mm; proof at 95 % is 1.645 u = 0.041 mm (scipy)
@pytest.mark.parametrize(
    "y, state, about",
    [
        (10.200, "pass", ""),
        (10.142, "pass", ""),
        (10.140, "unsure", "the size wanted"),
        (10.101, "unsure", "the size wanted"),
        (10.060, "unsure", "the size wanted"),
        (10.058, "attention", ""),
        (10.042, "attention", ""),
        (10.040, "unsure", "the size"),
        (10.000, "unsure", "the size"),
        (9.960, "unsure", "the size"),
        (9.958, "fail", ""),
    ],
)
def test_a_doubt_that_can_turn_attention_leaves_it_open_too(y, state, about):
    assert norm.ppf(0.95) * 0.025 == pytest.approx(0.0411, abs=1e-4)
    found = looked_at(0.010, 0.0101)(x=f"{y} ± 0.05 mm").verdict
    assert found.state == state
    assert not about or found.headline.plain().endswith(f"that {about} is right")


def test_what_calls_for_a_look_in_any_case_is_no_matter_of_doubt():
    """Another limit for a look is passed for sure, or the look is for a reason of its own; but a fail that is possible is told."""
    assert looked_at(0.010, 0.0101, 0.01005)(x="10.1 ± 0.01 mm").verdict.headline.plain() == "Little"
    assert (
        looked_at(0.010, 0.0101, state="attention")(x="10.11 ± 0.05 mm").verdict.headline.plain() == "Little"
    )
    assert looked_at(0.010, 0.0101, 0.0099)(x="10.01 ± 0.05 mm").verdict.state == "unsure"
    assert looked_at(0.010, 0.0101, state="fail")(x="10.05 ± 0.2 mm").verdict.state == "fail"


def test_a_limit_has_a_level_that_there_is():
    with pytest.raises(ValueError, match="perhaps"):
        Limit("the size", 1.0, low=2.0, level="perhaps")


def test_of_two_limits_the_worse_speaks_and_both_must_decide():
    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        size = Size.size(i.x + 0)
        return answer(
            size,
            verdict=("pass", "Right", "Go on."),
            limits=(Limit("the first", size, low=0.0099), Limit("the second", size, high=0.0102)),
        )

    found = probe(x="10 ± 0.3 mm")  # u 0.15: 0.667 and 1.333 standard uncertainties
    assert (
        found.verdict.headline.plain()
        == f"Only {int(norm.cdf(0.1 / 0.15) * 100)} % sure that the first is right"
    )
    assert named_share(found) == pytest.approx(int(100 * 0.1 / 0.15 / norm.ppf(0.95)) / 100)


def test_one_way_is_enough_at_the_edge_of_what_goes_together():
    """Above 10 mm the reading is refused: the change downwards stands for both."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        if float(i.x) > 0.010:
            raise impossible("x", "is {x}; give less", x=i.x)
        return answer(
            Size.size(3 * i.x), verdict=("pass", "Right", "Go on."), limits=(Limit("it", 3 * i.x, low=0.029),)
        )

    found = probe(x="10 ± 0.02 mm")
    assert found.doubts["size"] == pytest.approx(3 * 20 * um)
    assert found.verdict.state == "pass" and probe(x="10 ± 0.9 mm").verdict.state == "unsure"


def test_between_two_edges_the_step_is_made_smaller():
    """Only a hundredth of the doubt either way goes together with the rest; the sensitivity is found within it."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        if abs(float(i.x) - 0.010) > 1e-7:
            raise impossible("x", "is {x}; give 10 mm", x=i.x)
        return answer(Size.size(-2 * i.x), verdict=("pass", "Right", "Go on."))

    assert probe(x="10 ± 0.02 mm").doubts["size"] == pytest.approx(2 * 20 * um, rel=1e-6)


@pytest.mark.parametrize("entry", ["5 mm ± 100 m", "1 mm ± 9 mm", "150 mm ± 1 mm"])
def test_no_reading_is_moved_out_of_its_accepted_range(entry):
    """A fin of negative length once had the calculator search for ever for the air that cools it as well."""
    long = evaluate(find("fin-cooling"), {"fins.1.3": entry})
    assert long.doubts["heat_this"] > 0 and long.doubts["heat_other"] == 0


def test_a_doubt_that_leads_past_the_range_on_one_side_is_worth_what_the_other_side_says():
    """The interference is a plain difference: half a millimetre of doubt is half a millimetre, at the end of the range too."""
    found = seat_fit(pocket_bore="90 mm ± 0.5 mm", ring_outside="89 mm")
    assert found.doubts["interference"] == pytest.approx(0.5e-3, rel=1e-6)


def test_neither_a_turning_point_nor_a_kink_hides_a_doubt():
    """At the least of a parabola both ways give the same change, whose half difference is nothing; so does the larger of two readings."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")
        z: Number = measured("Other", "z", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        return answer(Size.size(sqrt((i.x - i.z) ** 2)), verdict=("pass", "Right", "Go on."))

    assert probe(x="10 ± 0.02 mm").doubts["size"] == pytest.approx(20 * um)
    assert probe(x="10 ± 0.03 mm", z="10 ± 0.04 mm").doubts["size"] == pytest.approx(50 * um)


def test_a_reading_is_moved_by_one_standard_uncertainty():
    """On a curve the length of the step shows: at the foot of (x − z)²/z a step of 0.1 mm either way gives 0.1²/10 mm, so U is 2 µm."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")
        z: Number = measured("Other", "z", MM, tool="a gauge", hard="1 mm to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        return answer(Size.size((i.x - i.z) ** 2 / i.z), verdict=("pass", "Right", "Go on."))

    assert probe(x="10 ± 0.2 mm").doubts["size"] == pytest.approx(2 * um)


def test_a_limit_counts_the_way_that_hurts_an_output_both():
    """x²/z at 10 ± 8 mm, z 10 mm: a step of 4 mm adds 9.6 mm or takes 6.4 mm. The limit, 10 mm off, is sure by Φ(10/9.6), scipy."""

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")
        z: Number = measured("Other", "z", MM, tool="a gauge", hard="1 mm to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        size = Size.size(i.x**2 / i.z)
        return answer(
            size, verdict=("pass", "Right", "Go on."), limits=(Limit("the size", size, high=0.020),)
        )

    found = probe(x="10 ± 8 mm")
    assert found.doubts["size"] == pytest.approx(2e-3 * numpy.sqrt((9.6**2 + 6.4**2) / 2))
    assert (
        found.verdict.headline.plain()
        == f"Only {int(norm.cdf(10 / 9.6) * 100)} % sure that the size is right"
    )


def test_no_step_is_worked_outside_the_range_and_without_any_nothing_is_counted():
    seen = []

    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="0 m to 10 mm", example="10 mm")
        y: Number = measured("Other", "y", MM, tool="a gauge", hard="0 to 1 m", example="10 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        seen.append(float(i.x))
        if float(i.y) != 0.010:
            raise impossible("y", "is {y}; give 10 mm", y=i.y)
        return answer(Size.size(i.x + i.y), verdict=("pass", "Right", "Go on."))

    assert probe(x="10 ± 0.02 mm").doubts["size"] == pytest.approx(20 * um)
    assert min(seen) == pytest.approx(0.00999) and max(seen) <= 0.010
    assert probe(y="10 ± 0.02 mm").doubts["size"] == 0


def test_cells_of_a_grid_carry_doubts():
    class ProbeIn(Inputs):
        sizes: Rows = grid(
            "Sizes",
            rows=("1", "2", "3"),
            columns=(column("Size", "x", MM, hard="0 to 1 m"),),
            least=2,
            example="10 | 20 | 30",
        )

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        x = [row[0] for row in i.sizes if row]
        return answer(Size.size(greatest(*x) - least(*x)), verdict=("pass", "Right", "Go on."))

    assert probe(sizes="10 ± 0.03 | 20 ± 0.5 | 30 ± 0.04").doubts["size"] == pytest.approx(50 * um)
    assert probe(**{"sizes.1.1": "10 ± 0.03"}).doubts["size"] == pytest.approx(30 * um)
    assert probe(sizes="10 ± 0.03 | 20").doubts["size"] == pytest.approx(30 * um)


def test_a_limit_that_is_measured_too_counts_its_own_doubt():
    """Clearance of a measured pin in a measured hole: margin = hole − pin, both doubts count."""

    class ProbeIn(Inputs):
        pin: Number = measured("Pin", "d", MM, tool="a gauge", hard="0 to 1 m", example="21.990 mm")
        hole: Number = measured("Hole", "D", MM, tool="a gauge", hard="0 to 1 m", example="22.000 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        return answer(
            Size.size(i.hole - i.pin),
            verdict=("pass", "Right", "Go on."),
            limits=(Limit("the pin", i.pin, high=i.hole),),
        )

    assert probe(pin="21.990 ± 0.01 mm").verdict.state == "pass"  # 10 µm is 2 standard uncertainties
    both = probe(pin="21.990 ± 0.01 mm", hole="22.000 ± 0.01 mm")
    assert (
        both.verdict.headline.plain()
        == f"Only {int(norm.cdf(10 / (5 * 2**0.5)) * 100)} % sure that the pin is right"
    )


def test_the_doubt_of_a_temperature_is_worth_what_expansion_makes_of_it():
    """37.5 mm of Al–Si at 31 ± 2 °C with a steel gauge at 22 ± 1 °C: U = D·√((α·2)² + (11.5·10⁻⁶·1)² + (α·11·5 %)²): the
    GUM's end gauge (H.1, from memory) counts the coefficient's doubt beside the temperatures'. So does the calculator that is asked for nothing else."""
    found = seat_fit(
        **{"pocket_bore": "37.5 mm", "pocket_bore.part": "31 ± 2", "pocket_bore.gauge": "22 ± 1"}
    )
    alpha = 21.5e-6 / 1.04 * (1 + 5e-4 * 11)
    assert found.doubts["interference"] == pytest.approx(
        0.0375 * numpy.sqrt((alpha * 2) ** 2 + 11.5e-6**2 + (alpha * 11 * 0.05) ** 2), rel=1e-3
    )
    alone = evaluate(
        find("size-at-20"),
        {
            "reading": "37.5 mm",
            "part_temperature": "31 ± 2",
            "gauge_temperature": "22 ± 1",
            "alpha_doubt": "5 %",
        },
    )
    assert found.doubts["interference"] == pytest.approx(alone["doubt"], rel=1e-6)
    alone = seat_fit(
        **{"pocket_bore": "37.5 ± 0.003 mm", "pocket_bore.part": "31 ± 2", "pocket_bore.gauge": "22 ± 1"}
    )
    assert alone.doubts["interference"] == pytest.approx(
        numpy.hypot(0.003e-3, found.doubts["interference"]), rel=1e-3
    )


def test_a_doubt_asked_for_by_name_is_used_and_carried_no_further():
    class ProbeIn(Inputs):
        x: Number = measured("Reading", "x", MM, tool="a gauge", hard="-1 to 1 m", example="10 mm")
        doubt: Number = given("Doubt", "U", MM, hard="0.001 to 1 mm", doubt_of="x", example="0.1 mm")

    @calculator("probe", "Probe", ProbeIn, Size, **PROBE)
    def probe(i: ProbeIn) -> Answer:
        return answer(Size.size(i.doubt + 0 * i.x), verdict=("pass", say("{u}", u=i.doubt), "Go on."))

    assert probe(x="10 ± 0.02 mm")["size"] == pytest.approx(20 * um) and probe(x="10 ± 0.02 mm").doubts == {}
    assert probe(doubt="0.05 mm")["size"] == pytest.approx(50 * um) and probe()["size"] == pytest.approx(
        100 * um
    )
