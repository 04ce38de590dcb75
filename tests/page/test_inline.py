"""What stands in a sentence: quantities that a page gives itself, and cautions."""

import re

import pytest

from calc.page import caution_html, quantity_html
from calc.reference import cautions


def both(html):
    """The metric and the inch text."""
    return re.findall(r'<span class="u-(?:metric|inch)">(.*?)</span>', html)


@pytest.mark.parametrize(
    ("number", "unit", "metric", "inch"),
    [
        (
            "0.05",
            "mm",
            "0.05 mm",
            "0.0020 in",
        ),  # 1 in = 25.4 mm, 1 °F = 5/9 K, 1 psi = 6894.757 Pa: NIST SP 811, appendix B
        ("25.4", "mm", "25.4 mm", "1.000 in"),
        ("0.8", "µm", "0.8 µm", "0.00003 in"),
        ("200", "°C", "200 °C", "392 °F"),
        ("-40", "°C", "−40 °C", "−40 °F"),
        ("10", "K", "10 K", "18 °F"),  # a difference, so no 459.67 in it
        ("50", "kPa", "50 kPa", "7.3 psi"),
        ("3", "kg", "3 kg", "106 oz"),  # a mass, though a force may be typed in kg
    ],
)
def test_quantity_in_both_systems(number, unit, metric, inch):
    found = both(quantity_html(number, unit))
    assert found[0] == metric
    want, got = inch.split(), found[1].split()
    assert got[1] == want[1]
    assert float(got[0].replace("−", "-")) == pytest.approx(
        float(want[0].replace("−", "-")), abs=0.5 * 10 ** -len(want[0].partition(".")[2])
    )


def test_decimals_are_those_typed():
    assert both(quantity_html("0.10", "mm"))[0] == "0.10 mm"


@pytest.mark.parametrize(
    ("number", "unit", "words"),
    [
        ("0.03", "in", "give mm"),
        ("300", "°F", "give °C"),
        ("3", "furlong", "not the symbol"),
        ("one", "mm", "not a number"),
        ("1,234", "mm", "two ways"),
    ],
)
def test_quantity_refused(number, unit, words):
    with pytest.raises((KeyError, ValueError)) as refused:
        quantity_html(number, unit)
    assert words in str(refused.value)


def test_caution_in_the_words_of_the_calculators():
    assert "looks cold" in caution_html("hot-head")
    assert cautions.HOT_HEAD.text.replace("&", "&amp;") == caution_html("hot-head")


def test_unknown_caution_names_those_there_are():
    with pytest.raises(KeyError, match="hot-head"):
        caution_html("hot-had")
