"""Any shaft in any bore: the expansion integrated by scipy, ISO 286 fits, verdicts, refusals."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.reference.materials import MATERIALS
from calc.stations.crankcase.pair_clearance import pair_clearance
from tests.checks.stations.crankcase.pair_clearance import CHECKS

MM = 1e-3
READ = dict(bore="25.028 mm", shaft="24.988 mm", bore_metal="mg-az91", shaft_metal="forged-steel")


def test_the_running_clearance_is_the_integral_of_local_expansion():
    """The table has the mean coefficient α₂₀(1 + g·ΔT); the local one is its strain's slope, α₂₀(1 + 2g·ΔT)."""

    def grown(size, id):
        m = MATERIALS[id]
        return size * (1 + quad(lambda rise: m.alpha_20 * (1 + 2 * m.alpha_growth * rise), 0, 80)[0])

    (row,) = [check for check in CHECKS if check.kind == "library"]
    assert grown(25.028, "mg-az91") - grown(24.988, "forged-steel") == pytest.approx(
        row.expected, abs=row.tolerance
    )


VERDICTS = {
    "right": ("pass", "Clearance right: 0.040 mm cold, 0.069 mm running", {}),
    "on its least": ("pass", "Clearance right: 0.027 mm cold", dict(bore="25.015 mm")),
    "on its most": ("pass", "Clearance right: 0.061 mm cold", dict(bore="25.049 mm")),
    "too tight": ("fail", "Too tight: 0.026 mm, at least 0.027 mm", dict(bore="25.014 mm")),
    "too loose": ("fail", "Too loose: 0.062 mm, at most 0.061 mm", dict(bore="25.050 mm")),
    "too loose at one place": ("fail", "Too loose: 0.065 mm, at most 0.061 mm", dict(bore_most="25.040 mm", shaft_least="24.975 mm")),
    "seizes running": ("fail", "Seizes running: −0.0", dict(bore_temperature="20 °C", shaft_temperature="180 °C")),
    "tight running": ("fail", "Too tight running: 0.0", dict(bore_temperature="20 °C", low_running="0.020 mm")),
    "frost": ("fail", "Too tight running: 0.0", dict(bore_temperature="-30 °C", shaft_temperature="-30 °C", low_running="0.025 mm")),
    "press fit": ("pass", "Press fit right: 0.020 mm of interference", dict(shaft="25.048 mm", low="-0.030 mm", high="-0.010 mm")),
    "press fit too loose": ("fail", "Too loose: 0.040 mm, at most −0.010 mm", dict(low="-0.030 mm", high="-0.010 mm")),
}  # fmt: skip


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = pair_clearance(**entries).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


@pytest.mark.parametrize(
    "told, words",
    [({}, "no limit told"), (dict(high="0.061 mm"), "no least clearance told"), (dict(low="0.027 mm"), "no most clearance told")],
)  # fmt: skip
def test_without_both_limits_nothing_is_passed(told, words):
    found = evaluate(pair_clearance, READ | told, standing=Standing(None))
    assert found.verdict.state == "unjudged" and words in found.verdict.headline.plain()
    assert (
        evaluate(
            pair_clearance, READ | told | dict(bore="25.2 mm", high="0.061 mm"), standing=Standing(None)
        ).verdict.state
        == "fail"
    )


REFUSALS = [
    ("bore_most", dict(bore_most="25.000 mm"), "give 25.028 mm or more."),
    ("shaft_least", dict(shaft_least="25.000 mm"), "give 24.988 mm or less."),
    ("high", dict(low="0.05 mm", high="0.03 mm"), "give 0.050 mm or more."),
    ("shaft", dict(shaft="12.5 mm"), "give sizes of one pair."),
    ("bore_most", dict(bore_most="52 mm"), "give sizes of one pair."),
    ("shaft_temperature", dict(shaft_temperature="450 °C", shaft_metal="bearing-steel"), "give less, or another material."),
    ("bore", dict(bore="0"), None),
]  # fmt: skip


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        pair_clearance(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (words is None or error.sentence().endswith(words)), error.sentence()


@pytest.mark.parametrize(
    "bore, shaft, clearance",
    [
        ("crankcase.cam_bore", "cam.journal", "cam.clearance"),
        ("crankcase.lifter_bore", "lifter.body", "lifter.clearance"),
        ("rod.bush_bore", "piston.pin", "rod.pin_clearance"),
    ],
)
def test_pairs_of_the_sheets_are_in_order_at_both_ends_of_their_limits(bore, shaft, clearance):
    for sheet in ("TS-16", "RC-40"):
        sizes = engine(sheet).features
        if not {bore, shaft, clearance} <= set(sizes):
            continue
        limits = sizes[clearance]
        for D, d in itertools.product(*((sizes[id].low, sizes[id].high) for id in (bore, shaft))):
            found = pair_clearance(
                bore=f"{D!r} m", shaft=f"{d!r} m", low=f"{limits.low!r} m", high=f"{limits.high!r} m",
                bore_metal="forged-steel", shaft_metal="forged-steel",
            )  # fmt: skip
            assert found.verdict.state == "pass", (sheet, found.verdict.headline.plain())


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    assert pair_clearance(bore="25.016 ± 0.003 mm").verdict.state == "unsure"


def test_a_warm_bore_is_brought_to_20_degrees():
    assert pair_clearance(**{"bore": "25.028 mm", "bore.part": "35 °C"})["tight"] < pair_clearance()["tight"]


def test_the_makers_own_expansion_goes_before_the_tables():
    own = pair_clearance(own=";;18;|;;18;", bore_metal="forged-steel")
    assert own["change"] == pytest.approx(
        own["tight"] * 18e-6 * 80 * (1 + 4.5e-4 * 80) / (1 + 4.5e-4 * 80), rel=1e-6
    )


def test_inches_give_the_same():
    metric = evaluate(pair_clearance, dict(bore="25.0317 mm", shaft="24.9936 mm"))
    inch = evaluate(pair_clearance, dict(bore="0.9855", shaft="0.984"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-6, abs=1e-9), output


@given(st.floats(-40, 190))
def test_a_bore_that_grows_more_opens_with_heat_and_closes_in_frost(t):
    at = pair_clearance(bore_temperature=f"{t!r}", shaft_temperature=f"{t!r}")
    assert (at["running"] - at["tight"]) * (t - 20) >= 0
