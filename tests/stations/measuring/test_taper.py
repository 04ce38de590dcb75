"""Taper: from any of its names to all of them, verdicts on readings over rollers, refusals."""

from math import atan, degrees, radians, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.stations.measuring.taper import taper


def run(system="metric", /, **entries):
    return evaluate(taper, entries, system)


def test_one_in_ten():
    """1:10 from 30 mm over 60 mm: 24 mm, sides at half of ISO 1119's 5°43′29.3″ (from memory)."""
    for by in ("24 mm", "24", "1:10", "0.1 mm/mm", "10 %", "1.2 in/ft", "2.862405226°"):
        found = run(by=by)
        assert found["small"] * 1000 == pytest.approx(24, abs=1e-6), by
        assert degrees(found["side"]) == pytest.approx((5 + 43 / 60 + 29.3 / 3600) / 2, abs=0.03 / 3600), by
        assert found["one_in"] == pytest.approx(10, rel=1e-7), by
    assert run()["per_foot"] == pytest.approx(0.1)
    assert run().verdict.headline.plain().replace("\u00a0", " ") == "Set the slide to 2° 51′ 44.7″"


def test_a_bare_number_is_a_small_end_in_the_readers_unit():
    assert run("inch", large="1.2", length="2.4", by="0.96")["small"] == pytest.approx(0.96 * 0.0254)


@given(st.floats(5, 200), st.floats(0.05, 0.98), st.floats(5, 500))
def test_from_any_name_to_all_others_and_back(large, share, length):
    large, length = round(large, 3), round(length, 3)
    small = round(large * share, 3)
    if not 0 < (large - small) / length < 3:
        return
    found = run(large=f"{large}", length=f"{length}", by=f"{small} mm")
    ratio = (large - small) / length
    assert found["per_foot"] == pytest.approx(ratio) and found["side"] == pytest.approx(atan(ratio / 2))
    for by in (
        f"{found['one_in']:.12f}".join(("1:", "")),
        f"{found['per_foot'] * 12:.12f} in/ft",
        f"{degrees(found['side']):.12f}°",
    ):
        assert run(large=f"{large}", length=f"{length}", by=by)["small"] == pytest.approx(
            small / 1000, abs=1e-9
        )


def test_readings_over_rollers_prove_the_taper():
    example = run()
    low, high = example["over_low"] * 1000, example["over_high"] * 1000
    found = run(read_low=f"{low:.6f}", read_high=f"{high:.6f}")
    assert found.verdict.state == "pass" and "Taper right" in found.verdict.headline.plain()
    steep, slow = (
        run(read_low=f"{low:.6f}", read_high=f"{high + 0.1:.6f}"),
        run(read_low=f"{low:.6f}", read_high=f"{high - 0.1:.6f}"),
    )
    # 0.1 mm over 2 × 30 mm is 5.7 minutes
    assert (steep.verdict.state, slow.verdict.state) == ("fail", "fail")
    assert (
        steep.verdict.headline.plain() == "Taper too steep by 5.71′"
        and slow.verdict.headline.plain() == "Taper too slow by 5.72′"
    )
    assert degrees(atan(tan(example["side"]) + 0.1 / 60) - example["side"]) * 60 == pytest.approx(
        5.71, abs=0.005
    )


def test_a_doubt_of_the_readings_can_leave_it_open():
    assert run(read_low="44.512 ± 0.05 mm", read_high="47.512 ± 0.05 mm").verdict.state == "unsure"


def test_rollers_above_the_cone_are_remarked_on():
    found = run(length="25 mm", by="27.5 mm")
    assert any("rollers" in r.text.plain() and "25.00 mm long" in r.text.plain() for r in found.remarks)
    assert not any("take smaller rollers" in r.text.plain() for r in run().remarks)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"by": "30 mm"}, "by", "give more than 0 and less than the large end, 30.000 mm"),
        ({"by": "35 mm"}, "by", "no small end of this cone"),
        ({"by": "0 mm"}, "by", "no small end"),
        ({"by": "-1 mm"}, "by", "no small end"),
        ({"by": "90°"}, "by", "over 0° up to 60°"),
        ({"by": "-2°"}, "by", "over 0° up to 60°"),
        ({"by": "5:1"}, "by", "over 0 up to 3:1"),
        ({"by": "0 %"}, "by", "over 0 up to 3:1"),
        ({"by": "1:1"}, "length", "comes to a point after 30.00 mm; give less than 30.00 mm"),
        ({"by": "30°"}, "length", "comes to a point"),
        ({"by": "3 bar"}, "by", "give a length, ratio, slope or angle"),
        ({"by": ""}, "by", "nothing was given"),
        ({"by": "1:0"}, "by", "divides by zero"),
        ({"large": "0"}, "large", "below 0.5"),
        ({"length": "-60"}, "length", "below 0.5"),
        ({"read_low": "44.5"}, "read_low", "give the one over rollers on the blocks too"),
        ({"read_high": "47.5"}, "read_high", "give the one over rollers on the plate too"),
        ({"read_low": "47.5", "read_high": "44.5"}, "read_high", "give more than 47.500 mm"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


@given(st.floats(0.5, 55), st.floats(3, 20), st.floats(5, 60))
def test_readings_give_back_the_taper_that_they_were_told_for(side, roller, blocks):
    entries = dict(
        large="200", length="50", by=f"{side:.6f}°", roller=f"{roller:.4f}", blocks=f"{blocks:.4f}"
    )
    found = run(**entries)
    again = run(
        **entries, read_low=f"{found['over_low'] * 1000:.9f}", read_high=f"{found['over_high'] * 1000:.9f}"
    )
    assert again.verdict.state == "pass"
    assert radians(0) <= found["side"] == pytest.approx(radians(float(f"{side:.6f}")), abs=1e-9)


@pytest.mark.parametrize("by", ["1:0", "1/0 %"])
def test_a_ratio_that_is_advised_is_read_as_one(by):
    """A bare 0.25 is a small end of a quarter of a millimetre: what the sentence names must make the cone that it means, 1 in 4."""
    with pytest.raises(Refused) as refused:
        taper(by=by)
    advised = str(refused.value.errors[0]).split("such as ")[1].rstrip(".").split(" or ")
    assert advised == ["25 %", "1:4"] and all(
        taper(by=text)["per_foot"] == pytest.approx(0.25) for text in advised
    )


def test_readings_over_rollers_are_not_judged_on_blocks_that_nobody_told():
    told = dict(large="30", length="60", by="1:10", read_low="30 mm", read_high="40 mm")
    waits = evaluate(taper, told, standing=Standing()).verdict
    assert (waits.state, waits.headline.plain()) == ("awaited", "blocks under the upper rollers")
    with pytest.raises(Refused) as refused:
        taper(**told, blocks="")
    assert "is empty, and the taper that was read depends on it" in str(refused.value.errors[0])
    assert evaluate(taper, told | {"blocks": "30 mm"}, standing=Standing()).verdict.state == "fail"
    set_up = evaluate(taper, {k: told[k] for k in ("large", "length", "by")}, standing=Standing()).verdict
    assert (
        set_up.state == "pass"
        and "over rollers of 10.000 mm" in set_up.do.plain()
        and "30.000 mm of blocks" in set_up.do.plain()
    )
