"""One journal as read: its smallest and largest size, its form, and the largest circle that can still be
ground on it."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, greatest, least, step
from calc.reference import sources
from calc.stations.crank.regrind.asked import APART, EVEN
from calc.stations.shared.forms import SIZE


class Journal(NamedTuple):
    """`full` is its size where it is not worn; `clean` the largest at which it cleans up about its old
    axis."""

    name: str
    smallest: Number
    largest: Number
    full: Number
    round: Number
    taper: Number
    clean: Number


def journal_of(
    kind: str, name: str, readings: tuple[Number, ...], unworn: Number, bow: Number | None, wear: str
) -> Journal:
    """A circle round the old axis is no larger than twice the shortest radius. Worn by w on one side, a
    micrometer reads w less and that radius is w less, so the circle 2w; worn alike all round, the reading is
    the circle. A bow of b on the dial has moved the axis by b/2 and costs b on the diameter."""
    a, b, c, e = readings
    mark = f"{kind}{name}"
    words = f"{'main' if kind == 'm' else 'rod journal'} {name}"
    smallest = step(f"d_{mark}", f"Smallest reading, {words}", SIZE, least(*readings))
    largest = step(f"D_{mark}", f"Largest reading, {words}", SIZE, greatest(*readings))
    if float(largest - smallest) > APART:
        raise impossible(
            f"{'mains' if kind == 'm' else 'pins'}.{int(name)}.1",
            "{words} reads {a} to {b}, more than a millimetre apart; give four readings of one journal",
            words=words,
            a=smallest,
            b=largest,
        )
    full = largest if wear == EVEN else greatest(unworn, largest)
    circle = smallest if wear == EVEN else 2 * smallest - full
    return Journal(
        name,
        smallest,
        largest,
        full,
        step(
            f"o_{mark}", f"Out of round, {words}", SIZE, greatest(abs(a - b), abs(c - e)), sources.TWO_POINT
        ),
        step(f"k_{mark}", f"Taper, {words}", SIZE, greatest(abs(a - c), abs(b - e)), sources.TWO_POINT),
        step(
            f"c_{mark}",
            f"Cleans up at, {words}",
            SIZE,
            circle if bow is None else circle - bow,
            sources.OLD_AXIS,
        ),
    )
