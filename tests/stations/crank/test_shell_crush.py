"""Crush of the shells: the equation of the thick cylinder, verdicts, refusals, ends of the sheets."""

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.reference.materials import MATERIALS
from calc.stations.crank.shell_crush import shell_crush
from tests.checks.stations.crank.shell_crush import CHECKS, STEEL_EYE
from tests.formulas.test_press_fit import two_rings

MM = 1e-3
ROD = dict(bearing="rod")


def test_the_grip_is_what_the_boundary_value_solver_finds():
    steel = MATERIALS["forged-steel"]
    inner, _ = two_rings(
        54.06 * MM, 58 * MM, 80 * MM, 0.06 / math.pi * MM, steel.E, steel.nu, steel.E, steel.nu
    )  # fmt: skip
    (row,) = [check for check in CHECKS if check.source.startswith("scipy")]
    assert -inner(58 * MM)[1] / 1e6 == pytest.approx(row.expected, abs=row.tolerance)
    assert shell_crush(**STEEL_EYE)["grip"] / 1e6 == pytest.approx(row.expected, abs=row.tolerance)


VERDICTS = {
    "holds": ("pass", "Shells hold: 0.022 mm cold, 0.024 mm running", {}),
    "rods hold": ("pass", "Shells hold: 0.019 mm cold, 0.016 mm running", ROD),
    "not proud": ("fail", "Shell not proud: −0.010 mm", dict(other_proud="-0.010 mm")),
    "flush": ("fail", "Shell not proud: 0.000 mm", dict(main_proud="0 mm")),
    "too little": ("fail", "Too little crush: 0.024 mm, at least 0.025 mm", dict(other_proud="0.024 mm")),
    "too much": ("fail", "Too much crush: 0.046 mm, at most 0.045 mm", dict(main_proud="0.046 mm")),
    "steel shells in a hot soft case": ("fail", "Turns when hot: −0.031 mm of interference left", dict(main_shell_metal="forged-steel")),
    "shell yields": ("attention", "Shell yields: ", dict(main_proud="0.29 mm", main_high="0.3 mm", main_wall="1.2 mm", main_wall_round="60 mm", main_metal="grey-iron", main_shell_metal="al-si-t6", shell_temperature="150 °C", main_temperature="20 °C")),
    "housing strained": ("attention", "Housing strained: ", dict(main_proud="0.25 mm", main_high="0.3 mm", main_wall_round="6 mm", main_wall="8 mm")),
}  # fmt: skip


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = shell_crush(**entries).verdict
    assert verdict.state == state and verdict.headline.plain().startswith(words), verdict.headline.plain()


def test_loose_shells_press_with_nothing_and_never_pull():
    found = shell_crush(main_shell_metal="forged-steel")
    assert found["left_hot"] < 0 and found["grip_hot"] == 0


def test_a_halfs_excess_counts_once_for_each_half():
    both, uneven = (
        shell_crush(main_proud="0.035 mm"),
        shell_crush(main_proud="0.030 mm", other_proud="0.040 mm"),
    )
    assert both["interference"] == pytest.approx(2 * 0.035 * MM / math.pi)
    assert uneven["interference"] == pytest.approx(both["interference"])


REFUSALS = [
    ("main_high", dict(main_low="0.05 mm", main_high="0.04 mm"), "give 0.050 mm or more."),
    ("rod_wall", ROD | dict(rod_wall="14.5 mm"), "give the wall of one shell."),
    ("main_temperature", dict(main_temperature="300 °C"), None),
    ("main_proud", dict(main_proud="3 mm"), None),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        shell_crush(**entries)
    (error,) = refused.value.errors
    assert error.field == field and (words is None or error.sentence().endswith(words)), error.sentence()


@pytest.mark.parametrize(
    "kind, ids",
    [
        ("main", ("main_shell_proud", "main_housing", "main_shell_wall", "main_housing_wall")),
        ("rod", ("shell_proud", "big_end_bore", "shell_wall", "big_end_wall")),
    ],
)
def test_all_corners_of_the_sheet_hold(kind, ids):
    group = "crankcase" if kind == "main" else "rod"
    sizes = [engine("TS-16").features[f"{group}.{id}"] for id in ids]
    names = (f"{kind}_proud", f"{kind}_housing", f"{kind}_wall", f"{kind}_wall_round")
    for corner in itertools.product(*((size.low, size.high) for size in sizes)):
        entries = dict(zip(names, (f"{x!r} m" for x in corner)))
        found = evaluate(
            shell_crush,
            entries | dict(bearing=kind, other_proud=entries[names[0]]),
            standing=Standing(engine("TS-16")),
        )
        assert found.verdict.state == "pass", (found.verdict.headline.plain(), entries)
    for proud, state in ((sizes[0].low - 1e-6, "fail"), (sizes[0].high + 1e-6, "fail")):
        assert shell_crush(bearing=kind, **{names[0]: f"{proud!r} m"}).verdict.state == state


def test_a_sheet_without_limits_of_the_crush_judges_nothing():
    read = dict(main_proud="0.0015 in", main_wall_round="0.9 in")
    found = evaluate(shell_crush, read, standing=Standing(engine("RC-40")))
    assert found.verdict.state == "unjudged"


def test_a_doubt_that_reaches_the_limit_leaves_it_open():
    found = shell_crush(main_proud="0.027 ± 0.004 mm").verdict
    assert found.state == "unsure" and "lesser half" in found.headline.plain()


def test_inches_give_the_same():
    metric = evaluate(shell_crush, dict(main_proud="0.0381 mm", main_wall_round="22.86 mm"))
    inch = evaluate(shell_crush, dict(main_proud="0.0015", main_wall_round="0.9"), "inch")
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


@given(st.floats(0.001, 0.04), st.floats(0.001, 0.04))
def test_more_crush_grips_harder_and_opens_more(a, b):
    less, more = (shell_crush(main_proud=f"{x!r} mm") for x in sorted((a, b)))
    for output in ("interference", "grip", "grip_hot", "opened", "housing_hoop", "shell_used"):
        assert more[output] >= less[output], output
    cold = shell_crush(main_proud=f"{a!r} mm", main_temperature="20 °C", shell_temperature="20 °C")
    assert abs(cold["hoop"]) < abs(cold["rigid"])  # what gives takes some of it
