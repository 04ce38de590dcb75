"""The sizes that the sums are made with: of a guide that is in the head those as made and the bore as read,
of a new one those read before it goes in and the bore that it is to be reamed to."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.stations.heads.guide_fit.asked import NEW, In
from calc.stations.heads.guide_fit.told import Out


class Sizes(NamedTuple):
    new: bool
    pressed_in: Number  # bore of the guide as it presses: of a new one, as it comes
    hole: Number
    around: Number  # outside of the guide
    ream: Number  # bore for the clearance wanted
    bore: Number  # bore in which the stem runs


def sizes_of(i: In) -> Sizes:
    """Refuses sizes that do not go into each other."""
    new = i.stage == NEW
    pressed_in, name, hole, around = (
        (i.supplied_bore, "supplied_bore", i.guide_hole, i.guide_outside)
        if new
        else (i.guide_bore, "guide_bore", i.hole_fitted, i.outside_fitted)
    )
    for other, words in ((around, "the guide's outside"), (hole, "the hole in the head")):
        if pressed_in >= other:
            raise impossible(
                name, "is {d}, not smaller than " + words + ", {o}; give less than {o}", d=pressed_in, o=other
            )
    if not new and i.stem >= i.guide_bore:
        raise impossible(
            "stem",
            "is {d}, not smaller than the guide's bore, {D}, so that it would not go in; give less than {D}",
            d=i.stem,
            D=i.guide_bore,
        )
    ream = Out.ream(i.stem + i.wanted_clearance)
    for other, words in ((around, "its outside of"), (hole, "the hole of")):
        if new and ream >= other:
            raise impossible(
                "stem",
                "is {d}, so that the guide would be reamed to {D}, right through "
                + words
                + " {o}; give less",
                d=i.stem,
                D=ream,
                o=other,
            )
    return Sizes(new, pressed_in, hole, around, ream, ream if new else i.guide_bore)
