"""Limits of a hole and a shaft by their ISO classes, what play or grip that makes, and whether two measured parts keep to it."""

from calc.core.drawing import Area, Drawing, Label, Line, box
from calc.core.kinds import LENGTH
from calc.core.result import Table, impossible, note, say
from calc.core.working import constant, form, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
    measured,
)
from calc.reference import sources
from calc.reference.standards import iso_286 as iso
from calc.stations.shared.forms import COARSE, SIZE

DEVIATION = form(LENGTH, 0, "µm", "thou")
# What drawings of engines call for; every other class of the standard's main letters is in calc/reference/standards/iso_286.py.
HOLES = (
    "D9 D10 E7 E8 E9 F6 F7 F8 G6 G7 H5 H6 H7 H8 H9 H10 H11 JS6 JS7 JS8 J6 J7 J8 K6 K7 K8 M6 M7 M8 N6 N7 N8 N9"
    " P6 P7 P8 P9 R6 R7 S6 S7 T7 U7"
).split()
SHAFTS = (
    "d8 d9 d10 e7 e8 e9 f6 f7 f8 g5 g6 g7 h5 h6 h7 h8 h9 h10 h11 js5 js6 js7 j5 j6 j7 k5 k6 k7 m5 m6 m7 n5 n6"
    " n7 p5 p6 p7 r5 r6 r7 s5 s6 s7 t6 t7 u6 u7"
).split()
NOTHING = 1e-10  # m: what is left of a sum of floats is neither play nor grip
NEAR = 0.05  # a measured size farther than this share (and 1 mm) from the nominal one belongs to another part


class Out(Outputs):
    tightest = Output("Clearance at the tightest (− is grip)", "c_min", SIZE, main=True)
    loosest = Output("Clearance at the loosest (− is grip)", "c_max", SIZE, main=True)
    hole_low = Output("Hole, smallest", "D_min", SIZE)
    hole_high = Output("Hole, largest", "D_max", SIZE)
    shaft_low = Output("Shaft, smallest", "d_min", SIZE)
    shaft_high = Output("Shaft, largest", "d_max", SIZE)


class In(Inputs):
    size: Number = given(
        "Nominal size", "D", COARSE, hard="0.5 to 500 mm", usual="3 to 500 mm", example="25 mm"
    )
    hole: str = choice("Hole, its class", {name: name for name in HOLES}, exact=True, must=True, example="H7")
    shaft: str = choice(
        "Shaft, its class", {name: name for name in SHAFTS}, exact=True, must=True, example="p6"
    )
    hole_read: Number | None = measured(
        "Your hole", "D_a", SIZE, tool="a bore gauge set in a ring", hard="0.4 to 530 mm"
    )
    shaft_read: Number | None = measured("Your shaft", "d_a", SIZE, tool="a micrometer", hard="0.4 to 530 mm")


@calculator(
    "iso-fit",
    "Fit by its ISO classes",
    In,
    Out,
    purpose="What sizes may hole and shaft have under this fit, and do mine keep to it?",
    finds=(
        "ISO 286",
        "H7 g6",
        "tolerance class",
        "limits and fits",
        "clearance fit",
        "interference fit",
        "transition fit",
        "tolerance zone",
    ),
    sources=(sources.ISO_286,),
)
def iso_fit(i: In) -> Answer:
    """Limits from the tables of ISO 286-1:2010 and the Δ rule; sizes over 0 up to and including 500 mm, at 20 °C.

    A pair out of its limits may still have the clearance that the classes mean: that is told apart from a wrong fit.
    """
    zones = [_zone(name, i.size, field) for name, field in ((i.hole, "hole"), (i.shaft, "shaft"))]
    hole_low, hole_high = _limits(zones[0], i.size, (Out.hole_low, Out.hole_high), ("EI", "ES"))
    shaft_low, shaft_high = _limits(zones[1], i.size, (Out.shaft_low, Out.shaft_high), ("ei", "es"))
    span = _fine(SIZE, *zones)
    tightest, loosest = (
        Out.tightest(hole_low - shaft_high, form=span),
        Out.loosest(hole_high - shaft_low, form=span),
    )
    for field, read in (("hole_read", i.hole_read), ("shaft_read", i.shaft_read)):
        if read is not None and abs(float(read) - float(i.size)) > max(1e-3, NEAR * float(i.size)):
            raise impossible(
                field,
                "is {read}, far from the nominal {size}; measure again, or give the nominal size that it"
                " belongs to",
                read=read,
                size=i.size,
            )
    parts = [
        Part(*part)
        for part in (
            ("Hole", i.hole_read, hole_low, hole_high),
            ("Shaft", i.shaft_read, shaft_low, shaft_high),
        )
        if part[1] is not None
    ]
    gap = float(i.hole_read) - float(i.shaft_read) if len(parts) == 2 else None
    return answer(
        tightest,
        loosest,
        hole_low,
        hole_high,
        shaft_low,
        shaft_high,
        verdict=_verdict(
            f"{i.hole}/{i.shaft}", parts, gap, tightest, loosest, hole_low, hole_high, shaft_low, shaft_high
        ),
        limits=tuple(
            Limit(f"the {part.name.lower()}", part.read, low=float(part.low), high=float(part.high))
            for part in parts
        ),
        remarks=(
            (
                note(
                    "{hole}/{shaft} at {size} is {kind} fit.",
                    hole=i.hole,
                    shaft=i.shaft,
                    size=i.size,
                    kind=_A[_kind(tightest, loosest)],
                )
                if parts
                else None
            ),
            note("Your pair has {g}.", g=_play(gap)) if gap is not None else None,
            (
                note(
                    "Limits hold at 20 °C, for round and straight parts: judge by the largest and by the"
                    " smallest reading."
                )
                if parts
                else None
            ),
        ),
        tables=(_judged(parts),) if parts else (),
        figures=(_drawing(zones, i.size, parts),),
    )


class Part:
    """A measured part against its limits."""

    def __init__(self, name, read, low, high):
        self.name, self.read, self.low, self.high = name, read, low, high
        under, over = float(low) - float(read), float(read) - float(high)
        self.out = max(under, over) > NOTHING
        self.way, by = ("small", under) if under > over else ("large", over)
        self.by = _size(by)
        self.can_be_cut = (name, self.way) in (("Hole", "small"), ("Shaft", "large"))

    def remedy(self, tightest, loosest, fit):
        """What can be done: metal comes off, it does not come back."""
        to_limits = sorted(abs(float(self.read) - float(limit)) for limit in (self.low, self.high))
        if self.can_be_cut:
            return say(
                "Open it by {a} to {b}." if self.name == "Hole" else "Take {a} to {b} off its diameter.",
                a=_size(to_limits[0]),
                b=_size(to_limits[1]),
            )
        mate, sign = ("shaft", -1) if self.name == "Hole" else ("hole", 1)
        a, b = sorted(float(self.read) + sign * float(clearance) for clearance in (tightest, loosest))
        return say(
            "What is gone is gone. A {mate} of {a} to {b} would give {fit} with it; ask whether that may be"
            " fitted.",
            mate=mate,
            a=_size(a),
            b=_size(b),
            fit=fit,
        )


def _verdict(fit, parts, gap, tightest, loosest, hole_low, hole_high, shaft_low, shaft_high):
    out = sorted(
        (part for part in parts if part.out), key=lambda part: (part.can_be_cut, -float(part.by))
    )  # what cannot be cut to its limits says what the other must be
    if not parts:
        kind = _kind(tightest, loosest)
        return (
            "pass",
            say(kind.capitalize() + " fit: {span}", span=_span(tightest, loosest)),
            say(
                "Make the hole {a} to {b}, the shaft {c} to {d}. " + _ADVICE[kind],
                a=hole_low,
                b=hole_high,
                c=shaft_low,
                d=shaft_high,
            ),
        )
    if out and gap is not None and float(tightest) - NOTHING <= gap <= float(loosest) + NOTHING:
        return (
            "attention",
            say("{part} too {way} by {by}; the pair fits", part=out[0].name, way=out[0].way, by=out[0].by),
            say(
                "Together they have {g}, which {fit} allows. Keep and mark the two as a pair: with a part"
                " from the shelf it may not fit.",
                g=_play(gap),
                fit=fit,
            ),
        )
    if out:
        return (
            "fail",
            say("{part} too {way} by {by}", part=out[0].name, way=out[0].way, by=out[0].by),
            out[0].remedy(tightest, loosest, fit),
        )
    if gap is not None:
        return (
            "pass",
            say("Both in limits: {g}", g=_play(gap)),
            _ADVICE["clearance" if gap >= 0 else "interference"],
        )
    part, (mate, low, high) = (
        parts[0],
        (("shaft", shaft_low, shaft_high) if parts[0].name == "Hole" else ("hole", hole_low, hole_high)),
    )
    return (
        "pass",
        say("{part} in limits: {read}", part=part.name, read=part.read),
        say("Its {mate} may be {a} to {b}.", mate=mate, a=low, b=high),
    )


_A = {"clearance": "a clearance", "transition": "a transition", "interference": "an interference"}
_ADVICE = {
    "clearance": "They go together by hand.",
    "transition": "One pair slides, the next wants a press: measure both before you put them together.",
    "interference": "They want a press, or heat and cold. Check beforehand what stress the grip makes.",
}


def _kind(tightest, loosest) -> str:
    """ISO 286-1: clearance where it never grips, interference where it never plays (0 belongs to both ends), else transition."""
    return (
        "clearance"
        if float(tightest) >= -NOTHING
        else "interference"
        if float(loosest) <= NOTHING
        else "transition"
    )


def _span(tightest, loosest):
    words = {
        "clearance": "{t} to {l} play",
        "interference": "{l} to {t} grip",
        "transition": "{t} grip to {l} play",
    }[_kind(tightest, loosest)]
    return say(words, t=_size(abs(float(tightest))), l=_size(abs(float(loosest))))


def _play(gap: float):
    """A clearance in words: play, or grip."""
    return say("{g} play" if gap >= 0 else "{g} grip", g=_size(abs(gap)))


def _size(value: float, decimals: int | None = None):
    """A length in mm with three decimals; with four where it is no whole number of micrometres."""
    if decimals is None:
        decimals = 3 if abs(value * 1e6 - round(value * 1e6)) < 0.05 else 4
    return constant("", "", SIZE.with_decimals(decimals), value)


def _zone(name, size, field) -> iso.Zone:
    try:
        return iso.zone(name, float(size))
    except (
        iso.NotOffered
    ):  # T and t begin above 24 mm; every other class that is offered here is defined at every size
        raise impossible(
            field,
            "is {name}, which is not defined up to {edge}; give {near}, or a larger nominal size",
            name=name,
            edge=_size(0.024, 0),
            near=("U" if name[0].isupper() else "u") + name[1:],
        ) from None


def _limits(zone, size, outs, symbols):
    """Both limits of size, worked as the standard does: the deviation that the letter gives, and the other one a tolerance away."""
    shape, (_, grade) = _fine(DEVIATION, zone), iso.split(zone.name)
    tolerance, fundamental, delta = (
        constant(symbol, label, shape, value, sources.ISO_286)
        for symbol, label, value in (
            (f"IT_{grade}", f"Standard tolerance of {zone.name}", zone.tolerance),
            (f"δ_{zone.name}", f"Fundamental deviation of {zone.name}", zone.fundamental),
            (f"Δ_{grade}", f"Δ of {zone.name}", zone.delta),
        )
    )

    def lower(expression):
        return step(symbols[0], f"Lower deviation of {zone.name}", shape, expression, sources.ISO_286)

    def upper(expression):
        return step(symbols[1], f"Upper deviation of {zone.name}", shape, expression, sources.ISO_286)

    if zone.gives == "splits":
        low, high = lower(-tolerance / 2), upper(tolerance / 2)
    elif zone.gives == "upper":
        high = upper(fundamental + delta if zone.delta else fundamental)
        low = lower(high - tolerance)
    else:
        low = lower(fundamental)
        high = upper(low + tolerance)
    return tuple(out(size + deviation, form=_fine(SIZE, zone)) for out, deviation in zip(outs, (low, high)))


def _fine(shape, *zones):
    """One decimal more where a zone is split at half a micrometre."""
    return shape.with_decimals(
        shape.decimals + any(zone.gives == "splits" and round(zone.tolerance * 1e6) % 2 for zone in zones)
    )


def _judged(parts) -> Table:
    return Table(
        "Your parts",
        ("Part", "May be", "Is", ""),
        tuple(
            (
                part.name,
                say("{a} to {b}", a=part.low, b=part.high),
                part.read,
                say("too {way} by {by}", way=part.way, by=part.by) if part.out else "in limits",
            )
            for part in parts
        ),
        tuple("fail" if part.out else "pass" for part in parts),
    )


def _drawing(zones, size, parts) -> Drawing:
    """Both zones beside the line of the nominal size, as high as the figure allows; figure units, not metres."""
    reads = {part.name: float(part.read) - float(size) for part in parts}
    marks = [0.0, *(deviation for zone in zones for deviation in (zone.upper, zone.lower)), *reads.values()]
    scale = 0.6 / (max(marks) - min(marks))
    shapes = [Line(((0, 0), (1, 0)), "outline"), Label((1, 0.015), say("nominal {D}", D=size), "end")]
    signed = {}
    for zone, name, x, hatch in ((zones[0], "Hole", 0.14, "a"), (zones[1], "Shaft", 0.44, "b")):
        shape = _fine(DEVIATION, zone)
        signed |= {
            f"{name}_{way}": say("+{d}" if value > 0 else "{d}", d=constant("", "", shape, value))
            for way, value in (("low", zone.lower), ("high", zone.upper))
        }
        shapes += [
            Area(box(x, zone.lower * scale, x + 0.2, zone.upper * scale), hatch),
            Label((x + 0.1, zone.upper * scale + 0.02), signed[f"{name}_high"]),
            Label((x + 0.1, zone.lower * scale - 0.055), signed[f"{name}_low"]),
            Label((x + 0.1, min(marks) * scale - 0.14), f"{name.lower()} {zone.name}"),
        ]
        if name in reads:
            y = reads[name] * scale
            shapes += [
                Line(((x - 0.03, y), (x + 0.23, y)), "band"),
                Label((x - 0.04, y - 0.015), "yours", "end"),
            ]
    return Drawing(
        "Tolerance zones",
        say(
            "Zones of hole {h} and shaft {s} from the nominal size {D}: hole {Hole_low} to {Hole_high}, shaft"
            " {Shaft_low} to {Shaft_high}.",
            h=zones[0].name,
            s=zones[1].name,
            D=size,
            **signed,
        ),
        tuple(shapes),
        "zones only, drawn some hundreds of times larger than the parts",
    )
