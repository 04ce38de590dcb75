"""One rod of the set: what comes off its pads to match the lightest, and what its ends weigh then."""

from typing import NamedTuple

from calc.core.working import Number, least, step
from calc.reference import sources
from calc.stations.rods.rod_weights.pads import off_pads, reading_after
from calc.stations.rods.rod_weights.told import GRAMS


class Rod(NamedTuple):
    name: str
    big: Number
    small: Number
    weighed: Number | None
    off_big: Number
    off_small: Number
    big_after: Number
    small_after: Number

    @property
    def whole(self) -> Number:
        return self.big + self.small

    @property
    def whole_after(self) -> Number:
        return self.big_after + self.small_after


class Pads(NamedTuple):
    """How far they lie beyond their bores' centres, as shares of the centre distance, and the most that they
    may lose."""

    beyond_big: Number
    beyond_small: Number
    most_big: Number
    most_small: Number


def rod_of(name: str, weights: tuple[Number, ...], lightest: tuple[Number, Number], pads: Pads) -> Rod:
    """`weights` are those of big end, small end and the whole, which may be None; `lightest` the lightest
    ends of the set. A pad that has not enough loses what it has."""
    big, small, weighed = weights
    over_big = step(f"x_b,{name}", f"Big end of rod {name} over the lightest", GRAMS, big - lightest[0])
    over_small = step(f"x_s,{name}", f"Small end of rod {name} over the lightest", GRAMS, small - lightest[1])
    wanted_big, wanted_small = off_pads(over_big, over_small, pads.beyond_big, pads.beyond_small)
    off_big = _to_come_off("n_b", "big end's", name, wanted_big)
    off_small = _to_come_off("n_s", "small end's", name, wanted_small)
    from_big, from_small = least(off_big, pads.most_big), least(off_small, pads.most_small)
    return Rod(
        name,
        big,
        small,
        weighed,
        off_big,
        off_small,
        step(
            f"B'_{name}",
            f"Big end of rod {name}, then",
            GRAMS,
            reading_after(big, from_big, pads.beyond_big, from_small, pads.beyond_small),
            sources.TWO_SUPPORTS,
        ),
        step(
            f"S'_{name}",
            f"Small end of rod {name}, then",
            GRAMS,
            reading_after(small, from_small, pads.beyond_small, from_big, pads.beyond_big),
            sources.TWO_SUPPORTS,
        ),
    )


def _to_come_off(symbol: str, whose: str, name: str, metal: Number) -> Number:
    return step(
        f"{symbol},{name}", f"To come off the {whose} pad of rod {name}", GRAMS, metal, sources.TWO_SUPPORTS
    )
