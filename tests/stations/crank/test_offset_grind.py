"""A longer stroke: circles within circles, vectors, the crown over a turn, verdicts, refusals, both sheets and none."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.crank.offset_grind import offset_grind
from tests.checks.stations.crank.offset_grind import OLD, TURNED

MM = 1e-3


def farthest(old, new, wear, clean_up):
    """Largest offset at which the new circle keeps that much from the worn profile, on the outer side (t = 0)."""
    t = np.linspace(-np.pi / 2, np.pi / 2, 7201)
    r = old / 2 - wear * np.maximum(0, np.cos(t)) ** 2

    def room(e):
        return (np.hypot(r * np.cos(t) - e, r * np.sin(t)) - new / 2).min() - clean_up

    return brentq(room, 0, (old - new) / 2)


@pytest.mark.parametrize("wear, expected", [(0.0, 2.4), (0.05, 2.35)])
def test_checks_are_the_farthest_circle_within_the_old_profile(wear, expected):
    assert farthest(55, 50, wear, 0.10) == pytest.approx(expected, abs=1e-4)


def test_checks_are_the_sum_of_two_vectors():
    sum_ = np.array([34.5, 0]) + 1.5 * np.array([np.cos(np.radians(4)), np.sin(np.radians(4))])
    assert np.hypot(*sum_) == pytest.approx(35.9965, abs=5e-5)
    assert np.degrees(np.arctan2(sum_[1], sum_[0])) == pytest.approx(0.166548, abs=5e-7)


@pytest.mark.parametrize("throw", [34.5, 36.9])
def test_half_of_the_longer_stroke_shows_at_the_crown(throw):
    t = np.linspace(0, 2 * np.pi, 7201)
    height = throw * np.cos(t) + np.sqrt(137**2 - (throw * np.sin(t)) ** 2)
    assert height.max() - (34.5 + 137) == pytest.approx(throw - 34.5, abs=1e-9)
    assert (34.5 - 137) * -1 - height.min() == pytest.approx(throw - 34.5, abs=1e-9)


VERDICTS = {
    "example": ("pass", "Stroke 70.50 mm: 0.750 mm off the old axis", {}),
    "the largest told": ("pass", "Stroke 70.75 mm: 0.875 mm off the old axis", dict(stroke="70.75 mm")),
    "too long": ("fail", "71.00 mm does not come out: 70.75 mm at most", dict(stroke="71 mm")),
    "nothing left": ("fail", "Nothing left to grind off centre", dict(new_pin="51.9 mm", stroke="69.01 mm")),
    "rods strike": ("fail", "Rods come too near: 0.8 mm left", dict(room="1.5 mm")),
    "rods just clear": ("pass", "Stroke 70.50 mm: 0.750 mm off the old axis", dict(room="1.75 mm")),
    "off the plane": ("fail", "Pin 0.315° out of its angle, 0.25° allowed", dict(off_plane="14.5°")),
    "off it by little": ("pass", "Stroke 70.50 mm: 0.754 mm off the old axis", dict(off_plane="6°")),
    "no overlap": ("attention", "Overlap only 9.2 mm, 10.0 mm wanted", dict(main="39 mm")),
}


@pytest.mark.parametrize("name", VERDICTS)
def test_verdict(name):
    state, words, entries = VERDICTS[name]
    verdict = offset_grind(**entries).verdict
    assert (verdict.state, verdict.headline.plain()) == (state, words), verdict.do.plain()


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("new_pin", [49.9 + n / 97 for n in range(20)])
def test_the_stroke_and_the_smaller_journal_that_are_advised_serve(new_pin, system):
    too_long = offset_grind(new_pin=f"{new_pin!r} mm", stroke="72 mm")
    stroke = too_long.verdict.headline.plain(system).split(": ")[1].removesuffix(" at most")
    assert offset_grind(new_pin=f"{new_pin!r} mm", stroke=stroke).verdict.state == "pass"
    less = too_long.verdict.do.plain().split("smaller by ")[1].split(" mm")[0]
    assert offset_grind(new_pin=f"{new_pin - float(less)!r} mm", stroke="72 mm").verdict.state == "pass"


REFUSALS = [
    ("along", dict(along="52.1 mm"), "more than where it is not worn"),
    ("new_pin", dict(new_pin="52.5 mm"), "not smaller than the journal that is there"),
    ("stroke", dict(stroke="69 mm"), "no longer than what the crank has"),
    ("deck", dict(deck="-9.5 mm"), "fills the whole chamber"),
    ("stroke", dict(stroke="3 kg"), "a mass"),
    ("off_plane", dict(off_plane="80°"), "above 60"),
]


@pytest.mark.parametrize("field, entries, words", REFUSALS)
def test_refusal(field, entries, words):
    with pytest.raises(Refused) as refused:
        offset_grind(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in error.sentence(), error.sentence()


@given(st.floats(69.2, 80), st.integers(-300, 300).map(lambda n: n / 10))
def test_throw_and_offset_close_the_triangle(stroke, turned):
    found = offset_grind(stroke=f"{stroke!r} mm", off_plane=f"{turned!r}°")
    e, psi, r = found["offset"], math.radians(turned), 34.5 * MM
    x, y = r + e * math.cos(psi), e * math.sin(psi)
    assert math.hypot(x, y) == pytest.approx(stroke / 2 * MM, rel=1e-12)
    assert math.atan2(y, x) == pytest.approx(found["index"], abs=1e-12)
    assert found["inner_stock"] + found["outer_stock"] == pytest.approx(1.993 * MM, abs=1e-12)


def test_a_longer_stroke_gives_more_compression_though_the_deck_is_kept():
    found = offset_grind()
    assert found["ratio"] < found["ratio_then"]
    assert found["deck_then"] == pytest.approx(1.2 * MM - found["shim"])


def test_what_was_not_read_is_told():
    def warned(**entries):
        return [r.text.plain() for r in offset_grind(**entries).remarks if r.level == "warning"]

    assert not warned(room="3 mm") and "was not read" in warned(room="")[0]
    assert "strikes the head" in warned(room="3 mm", deck="0.5 mm")[0]


@pytest.mark.parametrize(
    "entries, what",
    [(dict(stroke="70.75 mm", along="51.975 ± 0.02 mm"), "offset"), (dict(room="1.76 ± 0.1 mm"), "room")],
)
def test_a_doubt_that_reaches_a_limit_leaves_it_open(entries, what):
    verdict = offset_grind(**entries).verdict
    assert verdict.state == "unsure" and what in verdict.headline.plain(), verdict.headline.plain()


def test_inches_give_the_same():
    metric = evaluate(offset_grind, {name: text for name, text in TURNED.items()} | dict(stroke="71.12 mm"))
    inch = evaluate(
        offset_grind,
        {name: text if "°" in text else f"{float(text.split()[0]) / 25.4!r}" for name, text in TURNED.items()}
        | dict(stroke="2.8"),
        "inch",
    )
    for output in metric.outputs:
        assert inch[output] == pytest.approx(metric[output], rel=1e-9, abs=1e-12), output


def test_sizes_and_limits_come_from_the_reader_s_own_sheet():
    read = dict(pin="1.9997", along="1.9990", new_pin="1.9000", stroke="2.940", room="0.1")
    found = {
        name: evaluate(offset_grind, read, "inch", standing=Standing(engine(name) if name else None))
        for name in ("RC-40", "")
    }
    assert found["RC-40"].verdict.state == "pass", found["RC-40"].verdict.headline.plain("inch")
    assert any("not judged" in r.text.plain() for r in found["RC-40"].remarks if r.level == "warning")
    assert found[""].verdict.state == "awaited"
    read = dict(pin="51.99", along="51.97", new_pin="50", stroke="70.4", room="3")
    assert evaluate(offset_grind, read, standing=Standing(engine("TS-16"))).verdict.state == "pass"
    assert evaluate(offset_grind, {}, standing=Standing(engine("TS-16"))).verdict.state == "awaited"


def test_the_drawing_is_to_scale():
    (drawing,) = offset_grind(**OLD).figures
    old, new = (s for s in drawing.shapes if getattr(s, "radius", 0) in (0.0275, 0.025) and s.centre[1] > 0)
    assert not drawing.exaggerated and math.dist(old.centre, new.centre) == pytest.approx(2.4 * MM)


def test_a_crank_of_another_stroke_is_no_fault():
    """What is ground already is as it is: its throw and its deck are not held to the sheet's limits."""
    read = dict(pin="51.99", along="51.97", new_pin="50", stroke="71", room="3", throw="35.0", deck="0.7")
    found = evaluate(offset_grind, read, standing=Standing(engine("TS-16")))
    assert found.verdict.state == "pass", found.verdict.headline.plain()
    assert found["gain"] == pytest.approx(0.5 * MM)


@pytest.mark.parametrize("throw", ["low", "high"])
@pytest.mark.parametrize("deck", ["low", "high"])
@pytest.mark.parametrize("pin", ["low", "high"])
def test_both_ends_of_the_sheet_are_in_order(throw, deck, pin):
    sheet = engine("TS-16")
    ends = {
        "throw": ("crank.throw", throw),
        "deck": ("crankcase.deck_height", deck),
        "pin": ("crank.rod_journal", pin),
    }
    entries = {name: f"{getattr(sheet.feature(id), end)!r} m" for name, (id, end) in ends.items()}
    read = dict(new_pin="50 mm", stroke="70.4 mm", room="2.5 mm", along=entries["pin"])
    found = evaluate(offset_grind, read | entries, standing=Standing(sheet))
    assert found.verdict.state == "pass", found.verdict.headline.plain()
