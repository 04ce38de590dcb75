"""A stud's hot preload against bars assembled node by node; verdicts, the window that serves, refusals."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference import engine
from calc.reference.materials import MATERIALS
from calc.stations.crankcase.stud_preload_hot import stud_preload_hot
from tests.checks.stations.crankcase.stud_preload_hot import CASE_STUD
from tests.formulas.test_hot_stud import by_assembly

MM, KN = 1e-3, 1e3


def assembled(cold, stud_t, cylinder_t, head_t, case_t, shank=8.0):
    """The example's joint, its parts as the materials' table says."""

    def part(length, section, id, t):
        m = MATERIALS[id]
        return length * MM, section * 1e-6, m.E, m.mean_alpha(t + 273.15), t - 20

    stud = (
        part(20, 57.98960, "forged-steel", stud_t),
        part(165, 3.141592653589793 / 4 * shank**2, "forged-steel", stud_t),
    )
    clamped = (
        part(110, 900, "grey-iron", cylinder_t),
        part(60, 700, "al-si-cu-t6", head_t),
        part(15, 1200, "mg-az91", case_t),
    )
    return max(by_assembly(cold, stud, clamped), 0.0)


@settings(max_examples=40)
@given(
    st.floats(5, 30), st.integers(40, 130), st.integers(80, 220), st.integers(80, 200), st.integers(30, 140)
)
def test_assembled_bars_agree(cold, stud, cylinder, head, case):
    found = stud_preload_hot(
        preload=f"{cold!r} kN",
        stud_temperature=f"{stud} °C",
        cylinder_temperature=f"{cylinder} °C",
        head_temperature=f"{head} °C",
        case_temperature=f"{case} °C",
        frost="-30 °C",
    )
    assert found["running"] == pytest.approx(assembled(cold * KN, stud, cylinder, head, case), rel=1e-6)
    assert found["warming"] == pytest.approx(assembled(cold * KN, 80, cylinder, head, case), rel=1e-6)
    assert found["frozen"] == pytest.approx(assembled(cold * KN, -30, -30, -30, -30), rel=1e-6, abs=1e-3)


VERDICTS = {
    "example": ("pass", "13.0 kN cold is 21.9 kN running", {}),
    "yields": ("fail", "Stud may yield hot: 126 % of yield", dict(strength="5.6", preload="5 kN")),
    "near yield": ("attention", "Near yield hot: 91 %", dict(strength="8.8")),
    "pulls out": ("fail", "Pulls its thread out hot: 29.1 kN, 29.0 kN borne", dict(pull="29 kN")),
    "thread near its end": (
        "attention",
        "Thread in the case near its end: 1.72 times the pull",
        dict(pull="50 kN"),
    ),
    "lets go": ("fail", "Lets go: 2.8 kN left, gas pulls 5.5 kN", dict(preload="5 kN")),
    "little left": ("attention", "Little left: 1.25 times the gas's pull", dict(preload="10 kN")),
    "slack": ("fail", "Slack: nothing is left of the preload", dict(CASE_STUD, preload="0.5 kN", gas="")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = stud_preload_hot(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize(
    "entries",
    [
        dict(preload="25 kN"),
        dict(preload="25 kN", pull="80 kN"),
        dict(preload="9 kN"),
        dict(preload="9 kN", pull="90 kN", band="60 %"),
    ],
)
def test_both_ends_of_the_window_serve_as_they_are_read(system, entries):
    advised = stud_preload_hot(**entries).verdict.do.plain(system)
    ends = re.search(r"cold preload of ([\d.,]+ \w+) to ([\d.,]+ \w+) serves", advised).groups()
    for end in ends:
        verdict = stud_preload_hot(**entries | dict(preload=end)).verdict
        assert verdict.state == "pass", (end, verdict.headline.plain())


def test_no_window_is_told_where_none_is():
    verdict = stud_preload_hot(strength="5.6", preload="8 kN").verdict
    assert verdict.state == "fail" and "No cold preload serves" in verdict.do.plain()


REFUSALS = [
    ("frost", dict(frost="-300 °C"), None),
    (
        "cylinder",
        dict(cylinder="0", head="0", case="0", thread_length="0"),
        "Cylinder: length that is clamped: is nothing, and so are head and case; give what the stud clamps.",
    ),
    (
        "thread_length",
        dict(thread_length="190 mm"),
        "Free thread within the clamp: is 190.0 mm, more than all that is clamped, 185.0 mm; give less.",
    ),
    ("bearing", dict(bearing="9 mm"), None),
    ("preload", dict(preload="-1 kN"), None),
]


@pytest.mark.parametrize("field, entries, sentence", REFUSALS)
def test_refusal(field, entries, sentence):
    with pytest.raises(Refused) as refused:
        stud_preload_hot(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (sentence is None or error.sentence() == sentence), error.sentence()


READ = dict(preload="13", thread="M10x1.5", strength="10.9", shank="8.00")


def in_hand(**entries):
    return evaluate(stud_preload_hot, entries, standing=Standing(engine.demo()))


def test_both_ends_of_the_sheet_are_in_order():
    sizes = engine.demo().features
    for end in ("low", "high"):
        told = {
            name: f"{getattr(sizes[id], end)!r} m"
            for name, id in (
                ("shank", "stud.shank"),
                ("thread_length", "stud.free_thread"),
                ("head", "head.clamped_length"),
                ("case", "crankcase.clamped_length"),
                ("cylinder", "cylinder.length"),
            )
        }
        verdict = in_hand(**READ | told).verdict
        assert verdict.state == "pass", verdict.headline.plain()


def test_nothing_is_said_of_a_stud_that_nobody_read():
    for missing in READ:
        entries = {name: text for name, text in READ.items() if name != missing}
        assert in_hand(**entries).verdict.state == "awaited"
    assert in_hand(**READ).verdict.state == "pass"


def test_a_sheet_without_gas_or_lengths_does_not_borrow_the_example_s():
    found = evaluate(stud_preload_hot, READ, standing=Standing(engine.engine("RC-40")))
    assert found.verdict.state == "awaited"


def test_a_doubt_that_can_pull_the_thread_leaves_it_open():
    assert stud_preload_hot(pull="58.5 kN").verdict.state == "pass"
    assert stud_preload_hot(pull="58.5 ± 2 kN").verdict.state == "unsure"


def test_magnesium_is_warned_of_and_no_number_is_told_of_its_creep():
    def said(**entries):
        return " ".join(r.text.plain() for r in stud_preload_hot(**entries).remarks if r.level == "warning")

    assert "does not come back" in said(case_temperature="100 °C") and not said(case_temperature="99 °C")
    assert not said(case_temperature="120 °C", case_material="al-si-t6")


@given(st.floats(1, 40), st.floats(1, 40))
def test_more_preload_is_more_hot_and_more_in_frost(a, b):
    less, more = (stud_preload_hot(preload=f"{f!r} kN") for f in sorted((a, b)))
    for output in ("running", "worst", "slackest", "warming", "frozen", "stress"):
        assert more[output] >= less[output], output
    assert more["change"] == less["change"]


def test_inches_give_the_same():
    metric = evaluate(stud_preload_hot, dict(preload="13.344666 kN", shank="8.001 mm", head="60.96 mm"))
    inch = evaluate(stud_preload_hot, dict(preload="3000 lbf", shank="0.315", head="2.4"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-6, abs=1e-9), output
