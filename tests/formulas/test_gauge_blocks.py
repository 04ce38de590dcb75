"""Blocks that are picked are in the set, different, and make up the height; where they cannot, no other pick could."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.formulas.gauge_blocks import INCH, METRIC

# The sets as they are sold, counted in their smallest step: common practice, no source.
METRIC_87 = {
    *range(1001, 1010),
    *range(1010, 1500, 10),
    *range(500, 10000, 500),
    *range(10000, 100001, 10000),
}
INCH_81 = {*range(1001, 1010), *range(1010, 1500, 10), *range(500, 10000, 500), *range(10000, 40001, 10000)}


def test_the_sets_have_as_many_blocks_as_their_names_say():
    assert len(METRIC_87) == 87 and len(INCH_81) == 81
    assert "87" in METRIC.name and "81" in INCH.name


@pytest.mark.parametrize("blocks, members, most", [(METRIC, METRIC_87, 559), (INCH, INCH_81, 10.9)])
@given(st.data())
def test_what_is_picked_is_in_the_set_and_sums_up(blocks, members, most, data):
    height = data.draw(st.floats(0.0001, most)) * (1e-3 if blocks is METRIC else 0.0254)
    picked = blocks.pick(height)
    if picked is None:
        return
    assert (
        len(set(picked)) == len(picked)
        and set(picked) <= members
        and all(type(block) is int for block in picked)
    )
    assert sum(picked) == blocks.nearest(height)
    assert abs(sum(picked) * blocks.step - height) <= blocks.step / 2 * (1 + 1e-9)


def reachable(members, most, up_to):
    """Every height up to a limit that a few different blocks make, by trying."""
    small = sorted(b for b in members if b <= up_to)
    return {sum(c) for k in range(1, most + 1) for c in combinations(small, k) if sum(c) <= up_to}


def test_none_only_where_no_pick_of_up_to_three_blocks_reaches():
    """Small heights of the metric set, exhaustively."""
    possible = reachable(METRIC_87, 3, 3100)
    for steps in range(1, 3100):
        picked = METRIC.pick(steps * 1e-6)
        assert (picked is not None) >= (steps in possible), steps
        assert picked is None or steps in possible or len(picked) > 3, steps


@pytest.mark.parametrize(
    "blocks, height, words",
    [
        (METRIC, 0.009585, ["1.005", "1.08", "7.5"]),
        (METRIC, 0.1, ["100"]),
        (METRIC, 0.0005, ["0.5"]),
        (METRIC, 0.021644, ["1.004", "1.14", "9.5", "10"]),
        (INCH, 0.3773 * 0.0254, ["0.1003", "0.127", "0.15"]),
        (INCH, 2.5 * 0.0254, ["0.5", "2"]),
    ],
)
def test_picks_as_one_would_by_hand(blocks, height, words):
    assert [blocks.write(block) for block in blocks.pick(height)] == words


@pytest.mark.parametrize(
    "blocks, height", [(METRIC, 0.0), (METRIC, 0.0007), (METRIC, 0.7), (INCH, 0.001), (INCH, 0.3)]
)
def test_what_cannot_be_wrung_up(blocks, height):
    assert blocks.pick(height) is None
