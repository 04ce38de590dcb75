"""The colours: contrast by the definition of WCAG 2.2 (relative luminance and contrast ratio), in both schemes."""

import re
from itertools import product

import pytest

from scripts.environment import ROOT

CSS = (ROOT / "docs/assets/css/sizebook.css").read_text()
STATES = ("pass", "fail", "unsure", "attention")
TEXT, NUMBERS, EDGES = 4.5, 7.0, 3.0  # WCAG 1.4.3 AA, 1.4.6 AAA, 1.4.11


def colours(rule: str) -> dict[str, str]:
    return dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6});", rule))


LIGHT, DARK, DARK_EARLY = (colours(rule) for rule in re.findall(r"\{([^{}]*color-scheme:[^{}]*)\}", CSS))
SCHEMES = {"light": LIGHT, "dark": DARK}


def luminance(colour: str) -> float:
    def linear(part: int) -> float:
        c = part / 255
        return c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4

    red, green, blue = (linear(int(colour[i : i + 2], 16)) for i in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    bright, dim = sorted((luminance(one), luminance(other)), reverse=True)
    return (bright + 0.05) / (dim + 0.05)


def test_formula_on_known_pairs():
    assert contrast("#ffffff", "#000000") == pytest.approx(21.0)  # the definition's greatest
    assert contrast("#777777", "#ffffff") == pytest.approx(
        4.48, abs=0.005
    )  # W3C's often quoted grey that just fails


def test_both_schemes_name_the_same_colours():
    assert LIGHT.keys() == DARK.keys() and len(LIGHT) > 10
    assert DARK == DARK_EARLY


PAIRS = [
    *(
        ("ink", ground, NUMBERS)
        for ground in ("paper", "bench", "entry", "blue-tint", *(f"{s}-tint" for s in STATES))
    ),
    *(("ink-soft", ground, TEXT) for ground in ("paper", "bench", *(f"{s}-tint" for s in STATES))),
    ("ink-soft", "entry", TEXT),
    ("blue", "paper", TEXT),
    ("blue", "bench", TEXT),
    ("blue", "blue-tint", TEXT),
    ("on-blue", "blue", TEXT),
    *((state, f"{state}-tint", EDGES) for state in STATES),
    *(("paper", state, TEXT) for state in STATES),
    ("edge", "paper", EDGES),
    ("edge", "entry", EDGES),
    ("edge", "bench", EDGES),
]


@pytest.mark.parametrize(
    ("scheme", "pair"),
    list(product(SCHEMES, PAIRS)),
    ids=lambda x: x if isinstance(x, str) else f"{x[0]} on {x[1]}",
)
def test_contrast(scheme, pair):
    front, ground, least = pair
    found = contrast(SCHEMES[scheme][front], SCHEMES[scheme][ground])
    assert found >= least, f"{front} on {ground}: {found:.2f}"
