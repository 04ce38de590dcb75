"""The size at 20 °C: verdicts, refusals, doubts behind the temperatures, and the same through a warm reading elsewhere."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.stations.heads.seat_fit import seat_fit
from calc.stations.measuring.size_at_20 import size_at_20

VERDICTS = {
    "small doubt": ("pass", "37.495 mm at 20 °C", {}),
    "doubtful temperatures": ("attention", "Known to ± 0.0078 mm only", dict(part_doubt="10 K")),
    "doubtful expansion": ("attention", "only", dict(part_temperature="80 °C", alpha_doubt="20 %")),
}


@pytest.mark.parametrize("case", VERDICTS)
def test_verdicts(case):
    state, words, entries = VERDICTS[case]
    found = size_at_20(**entries).verdict
    assert found.state == state and words in found.headline.plain(), found.headline.plain()


def test_what_is_to_be_done_goes_with_the_larger_doubt():
    assert "Read both temperatures better" in size_at_20(part_doubt="10 K").verdict.do.plain()
    assert "near 20 °C" in size_at_20(part_temperature="80 °C", alpha_doubt="20 %").verdict.do.plain()


def test_the_doubt_behind_a_temperature_is_its_doubt():
    behind, own = (
        size_at_20(part_temperature="27 ± 4", gauge_temperature="22 ± 2"),
        size_at_20(part_doubt="4 K", gauge_doubt="2 K"),
    )
    assert behind["doubt"] == pytest.approx(own["doubt"], rel=1e-12) and behind["size"] == own["size"]
    assert behind.doubts == {}


def test_the_doubt_of_the_reading_goes_on_to_the_size():
    found = size_at_20(reading="37.500 ± 0.004 mm")
    assert found.doubts["size"] == pytest.approx(0.004e-3, rel=1e-3)
    assert found["doubt"] == pytest.approx(size_at_20()["doubt"], rel=1e-12)


def test_a_warm_reading_of_another_calculator_is_brought_to_the_same_size():
    here = size_at_20(reading="37.5 mm", part_temperature="31 °C", gauge_temperature="24 °C")
    there = seat_fit(**{"pocket_bore": "37.5 mm", "pocket_bore.part": "31", "pocket_bore.gauge": "24"})
    assert float(next(t for t in there.taken if t.input.name == "pocket_bore").value) == pytest.approx(
        here["size"], rel=1e-12
    )


def test_remarks():
    def said(**entries):
        return " ".join(r.text.plain() for r in size_at_20(**entries).remarks)

    assert (
        "neither is at one temperature" in said(part_temperature="40") and "neither is at one" not in said()
    )
    assert "grow differently" in said() and "grow differently" not in said(material="forged-steel")


REFUSALS = {
    "molten": (dict(part_temperature="700 °C"), "part_temperature", "700.0 °C is above 150.0 °C"),
    "a length for a temperature": (
        dict(part_temperature="20 mm"),
        "part_temperature",
        "mm is a length, and a temperature belongs here",
    ),
    "doubt twice": (
        dict(part_temperature="27 ± 1", part_doubt="2"),
        "part_doubt",
        "is given here and behind the ± of Temperature of the part",
    ),
    "unknown material": (dict(material="cheese"), "material", '"cheese" is not a choice'),
    "no size": (dict(reading="0 mm"), "reading", "below 0.010 mm"),
}


@pytest.mark.parametrize("case", REFUSALS)
def test_refusals(case):
    wrong, field, words = REFUSALS[case]
    with pytest.raises(Refused) as refused:
        size_at_20(**wrong)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error), str(error)


celsius = st.integers(-40, 150)


@given(celsius, celsius, st.sampled_from(["al-si-t6", "mg-az91", "forged-steel", "bronze"]))
def test_warmer_parts_are_smaller_at_20_and_warmer_gauges_make_them_larger(part, gauge, material):
    def size(p, g):
        return size_at_20(part_temperature=f"{p} °C", gauge_temperature=f"{g} °C", material=material)["size"]

    assert size(min(part + 1, 150), gauge) <= size(part, gauge) <= size(part, min(gauge + 1, 150))
    alone = size(part, 20)
    assert (alone < 0.0375) == (part > 20) and (alone > 0.0375) == (part < 20)


def test_each_part_of_the_doubt_is_a_length_times_expansion_times_what_is_not_known():
    """GUM 5.1, first order: steel by steel gauges, expansion differing by what is not known of it."""
    found = size_at_20(
        reading="100 mm",
        part_temperature="30 °C",
        gauge_temperature="20 °C",
        material="forged-steel",
        part_doubt="2 K",
        gauge_doubt="0 K",
        alpha_doubt="10 %",
    )
    alpha = found["per_kelvin"] / 0.1
    assert alpha == pytest.approx(11.5e-6, rel=0.05)  # of steel, from memory
    assert (found["from_temperature"], found["from_expansion"]) == (
        pytest.approx(0.1 * alpha * 2, rel=1e-3),
        pytest.approx(0.1 * alpha * 0.1 * 10, rel=1e-3),
    )
    gauge = size_at_20(
        reading="100 mm",
        part_temperature="30 °C",
        gauge_temperature="20 °C",
        material="forged-steel",
        part_doubt="0 K",
        gauge_doubt="2 K",
        alpha_doubt="0 %",
    )
    assert (
        gauge["from_temperature"] == pytest.approx(0.1 * 11.5e-6 * 2, rel=1e-3)
        and gauge["from_expansion"] == 0
    )


def test_a_doubt_told_as_none_is_none():
    """It never gives way to the example's: 27 ± 0 leaves what the gauge's temperature leaves, by hand 37.5 mm × 11.5e-6 × 1 K."""
    found = size_at_20(part_temperature="27 ± 0", gauge_doubt="1 K")
    assert (
        found["from_temperature"] == pytest.approx(0.0375 * 11.5e-6 * 1, rel=0.02)
        and found["from_temperature"] < size_at_20(part_temperature="27")["from_temperature"]
    )
