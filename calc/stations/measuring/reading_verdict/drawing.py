"""A reading with its doubt on the scale of its limits."""

from typing import NamedTuple

from calc.core.drawing import Area, Drawing, Label, Line, box
from calc.core.result import say
from calc.core.working import Number
from calc.stations.measuring.reading_verdict.asked import SIMPLE, In
from calc.stations.measuring.reading_verdict.weighed import CANNOT_TELL, IN, OUT, Weighed


class _Zone(NamedTuple):
    """What a reading that lies in it says, from where to where (m)."""

    words: str
    start: float
    end: float
    hatch: str


def scale_of(i: In, found: Weighed) -> Drawing:
    """The limits on a scale, with the zones of the decision in words, and the reading with its doubt."""
    low, high = (None if limit is None else float(limit) for limit in (i.low, i.high))
    guard, proven = (0.0, (low, high)) if i.rule == SIMPLE else (float(found.guard), found.accepted)
    y, doubt = float(i.reading), float(i.doubt)
    reach = [
        y - doubt,
        y + doubt,
        *(x + way * guard for x in (low, high) if x is not None for way in (-1, 1)),
    ]
    spare = 0.25 * (max(reach) - min(reach))
    left, right = min(reach) - spare, max(reach) + spare
    height = (right - left) * 0.09  # goes with the length, so that the picture always has the same shape
    parting = None
    if low is not None and high is not None and proven is not None and high - low < 0.35 * (right - left):
        parting = (low + high) / 2  # words above both zones between them would run into each other
    reading = i.reading.held_to(low, high)
    named = "".join(
        words
        for words, limit in ((", lower limit {L}", i.low), (", upper limit {H}", i.high))
        if limit is not None
    )
    return Drawing(
        "Reading with its doubt on the scale of the limits",
        say(
            "Reading {y}, ± {U}" + named + ": {decision}.",
            y=reading,
            U=i.doubt,
            L=i.low,
            H=i.high,
            decision=found.decision,
        ),
        (
            *(
                shape
                for zone in _zones(left, right, low, high, guard, proven)
                if zone.end > zone.start
                for shape in _zone_drawn(zone, height, parting)
            ),
            *_limit_drawn(i.low, "L {x}", -height, height),
            *_limit_drawn(i.high, "H {x}", height, height),
            *_reading_drawn(reading, i.doubt, height),
        ),
    )


def _zones(
    left: float, right: float, low: float | None, high: float | None, guard: float, proven: tuple | None
) -> list[_Zone]:
    """From left to right; a size is proven within by readings between those of `proven`, by none without."""
    out_low, out_high = left if low is None else low - guard, right if high is None else high + guard
    between = [_Zone(CANNOT_TELL, out_low, out_high, "c")]
    if proven is not None:
        in_low, in_high = out_low if low is None else proven[0], out_high if high is None else proven[1]
        between = [
            _Zone(CANNOT_TELL, out_low, in_low, "c"),
            _Zone(IN, in_low, in_high, ""),
            _Zone(CANNOT_TELL, in_high, out_high, "c"),
        ]
    return [_Zone(OUT, left, out_low, "a"), *between, _Zone(OUT, out_high, right, "a")]


def _zone_drawn(zone: _Zone, height: float, parting: float | None) -> tuple:
    """A zone with its words over it; those of two narrow ones go apart from `parting`."""
    middle, lifted = (zone.start + zone.end) / 2, zone.words == CANNOT_TELL
    anchor = "middle"
    if lifted and parting is not None:
        anchor = "end" if middle < parting else "start"
    return (
        Area(box(zone.start, 0, zone.end, height), zone.hatch),
        Line((*box(zone.start, 0, zone.end, height), (zone.start, 0)), "thin"),
        Label(
            (middle, height * (2.3 if lifted else 1.55)),
            zone.words,
            anchor,
            target=(middle, height * 0.6) if lifted else (),
        ),
    )


def _limit_drawn(limit: Number | None, words: str, aside: float, height: float) -> tuple:
    """A limit as a line through the scale, its words to that side."""
    if limit is None:
        return ()
    x = float(limit)
    return (
        Line(((x, -height * 0.9), (x, height * 1.25)), "band"),
        Label((x + aside * 0.2, -height * 0.95), say(words, x=limit), "start" if aside > 0 else "end"),
    )


def _reading_drawn(reading: Number, doubt: Number, height: float) -> tuple:
    """The reading under the scale, its doubt to both sides."""
    y, U = float(reading), float(doubt)
    level, tick = -height * 2.2, height * 0.3
    return (
        Line(((y - U, level), (y + U, level))),
        Line(((y, level - tick), (y, level + tick))),
        Line(((y, level + tick), (y, height)), "centre"),
        *(Line(((end, level - tick), (end, level + tick))) for end in (y - U, y + U)),
        Label((y, level - height * 0.95), say("y {y} ± {U}", y=reading, U=doubt)),
    )
