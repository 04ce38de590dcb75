"""Each cylinder's deck without shims, and the shims that bring both of a head within their limits."""

from typing import NamedTuple

from calc.core.kinds import RATIO
from calc.core.result import impossible
from calc.core.working import Number, atan, constant, form, greatest, least, step
from calc.reference import sources
from calc.stations.cylinders.deck_height.asked import CYLINDERS, In
from calc.stations.cylinders.deck_height.told import Out
from calc.stations.shared import shim_choice
from calc.stations.shared.forms import COARSE, ROUGH, SIZE
from calc.stations.shared.shim_choice import Stack, Wanted

APART = 0.5e-3  # m: ends further apart were not both read over the pin's axis; common practice, no source
OVER = constant("l_0", "Length that the slope is told over", ROUGH, 0.1)


class Barrel(NamedTuple):
    """`now` is its deck with the shims that are in, `bare` that without any, `slope` that along its pin."""

    name: str
    ends: tuple[Number, Number]
    fitted: float
    now: Number
    bare: Number
    slope: Number


class Head(NamedTuple):
    """The cylinders under one head that were read: the stack that serves, or where none does the nearest,
    and how far inside its limits the worst deck lies with the best there is."""

    barrels: list[Barrel]
    stack: Stack
    serves: bool
    stays: bool  # what is in already serves
    room: Number
    thick: Number
    decks: list[Number]
    spread: Number

    @property
    def name(self) -> str:
        return " and ".join(barrel.name for barrel in self.barrels)


def barrels_of(i: In) -> list[Barrel]:
    found = []
    for name, row in zip(CYLINDERS, i.readings):
        if row is None:
            continue
        left, right, shims = row
        if abs(float(left - right)) > APART:
            raise impossible(
                "readings",
                "cylinder {n} has {a} and {b} at the two ends; one was read across the pin, where a piston"
                " rocks, or over carbon: give ends within {most} of each other",
                n=name,
                a=left,
                b=right,
                most=constant("", "", COARSE, APART),
            )
        now = step(f"t_{name}", f"Deck of cylinder {name}, mean of both ends", SIZE, (left + right) / 2)
        bare = now if not shims else step(f"t_{name},0", f"Without shims, {name}", SIZE, now - shims)
        slope = step(
            f"m_{name}",
            f"Slope along its pin, {name}",
            form(RATIO, 6),
            abs(right - left) / i.span,
            sources.TWO_AXES,
        )
        found.append(Barrel(name, (left, right), float(shims or 0.0), now, bare, slope))
    return found


def heads_of(i: In, barrels: list[Barrel]) -> list[Head]:
    """The first head and the second, as far as they were read."""
    first = ("1", i.pairs[1])
    sides = (
        [barrel for barrel in barrels if barrel.name in first],
        [barrel for barrel in barrels if barrel.name not in first],
    )
    return [_head(i, side) for side in sides if side]


def _head(i: In, barrels: list[Barrel]) -> Head:
    sold = [float(row[0]) for row in i.sold if row]
    bare = [float(barrel.bare) for barrel in barrels]
    wanted = Wanted(float(i.low), float(i.high), float(i.wanted))
    choices = shim_choice.stacks(sold, round(float(i.most_shims)))
    fitted = {round(barrel.fitted * 1e7) for barrel in barrels}
    now: Stack = (barrels[0].fitted,) if barrels[0].fitted else ()
    stays = len(fitted) == 1 and shim_choice.room(bare, now, wanted) >= 0
    serving = now if stays else shim_choice.chosen(bare, choices, wanted)
    stack = shim_choice.nearest(bare, choices, wanted) if serving is None else serving
    best = max(shim_choice.room(bare, each, wanted) for each in (*choices, *((now,) if stays else ())))
    thick = constant(f"s_{barrels[0].name}", "Shims chosen from those sold", COARSE, sum(stack))
    decks = [
        step(f"t_{barrel.name},1", f"Deck of cylinder {barrel.name} with them", SIZE, barrel.bare + thick)
        for barrel in barrels
    ]
    return Head(
        barrels,
        stack,
        serving is not None,
        stays,
        constant("r", "Room that the best shims leave", SIZE, best),
        thick,
        decks,
        step(
            f"Δ_{barrels[0].name}",
            "Decks of this head apart",
            SIZE,
            greatest(*decks) - least(*decks) if len(decks) > 1 else decks[0] - decks[0],
        ),
    )


def steepest(barrels: list[Barrel]) -> tuple[Barrel, Number, Number]:
    """The barrel whose crown leans most along its pin: over 100 mm, and as an angle."""
    worst = max(barrels, key=lambda barrel: float(barrel.slope))
    return (
        worst,
        Out.slope(worst.slope * OVER, sources.TWO_AXES),
        Out.angle(atan(worst.slope), sources.TWO_AXES),
    )
