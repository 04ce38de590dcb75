"""The volumes over the piston at the top of its stroke, the ratio, and what another ratio asks for."""

from typing import NamedTuple

from calc.core.kinds import AREA
from calc.core.result import impossible
from calc.core.working import PI, Number, constant, form, step
from calc.formulas import compression
from calc.reference import sources
from calc.stations.cylinders.compression.asked import FILLED, In
from calc.stations.cylinders.compression.told import CC, Out
from calc.stations.shared.forms import COARSE, SIZE

FACE = form(AREA, 0)
NO_STEP = constant("h_s", "No step", COARSE, 0.0)


class Volumes(NamedTuple):
    """`area` is that of the bore; `fixed` is what is left without chamber and deck."""

    area: Number
    swept: Number
    displacement: Number
    crown: Number
    deck: Number
    step: Number
    fixed: Number
    left: Number
    ratio: Number
    land: Number
    ratio_land: Number


class Wanted(NamedTuple):
    """What gives the ratio that is wanted, each by itself."""

    chamber: Number
    deck: Number
    shim: Number


def volumes_of(i: In) -> Volumes:
    area = step("A", "Area of the bore", FACE, PI * i.bore**2 / 4)
    swept = Out.swept(area * i.stroke, sources.COMPRESSION)
    crown = Out.crown(
        compression.crown_from_fill(i.bore, i.lowered, i.filled) if i.crown_by == FILLED else i.dome
    )
    deck = Out.deck_volume(area * i.deck)
    stepped = Out.step_volume(
        area * NO_STEP if i.step_depth is None else compression.disc(i.step_across, i.step_depth)
    )
    fixed = step("V_0", "Step, less the crown", CC, stepped - crown)
    left = Out.left(i.chamber + deck + fixed, sources.COMPRESSION)
    if left <= 0:
        raise impossible(
            "filled" if i.crown_by == FILLED else "chamber",
            "leaves {v} over the piston, which is no room at all; look at the signs of deck and crown, and"
            " give a larger chamber",
            v=left,
        )
    land = Out.land(_round_the_land(i))
    return Volumes(
        area,
        swept,
        Out.displacement(swept * i.cylinders),
        crown,
        deck,
        stepped,
        fixed,
        left,
        Out.ratio(compression.ratio(swept, left), sources.COMPRESSION),
        land,
        Out.ratio_land(compression.ratio(swept, left + land), sources.COMPRESSION),
    )


def _round_the_land(i: In) -> Number:
    """A ring of the clearance between bore and land."""
    across = step("D_l", "Top land, across", SIZE, i.bore - i.land_clearance)
    return PI * (i.bore**2 - across**2) / 4 * i.land_height


def wanted_of(i: In, v: Volumes) -> Wanted:
    """Chamber or deck alone, everything else as it is."""
    left = step(
        "V_cw",
        "Volume to be left for the ratio wanted",
        CC,
        compression.left_for(v.swept, i.wanted),
        sources.COMPRESSION,
    )
    deck = Out.deck_wanted((left - i.chamber - v.fixed) / v.area)
    return Wanted(Out.chamber_wanted(left - v.deck - v.fixed), deck, Out.shim(deck - i.deck))


def deck_for(i: In, v: Volumes, ratio: Number) -> float:
    """Deck height with which the ratio is `ratio`, m; plain."""
    left = float(compression.left_for(float(v.swept), float(ratio)))
    return (left - float(i.chamber) - float(v.fixed)) / float(v.area)
