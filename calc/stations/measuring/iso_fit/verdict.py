"""What sizes may the parts have, and do those at hand keep to it?"""

from calc.core.result import Judged, say
from calc.stations.measuring.iso_fit.limits import CLEARANCE, INTERFERENCE, NOTHING, TRANSITION, Fit, length
from calc.stations.measuring.iso_fit.parts import Part, play

_ADVICE = {
    CLEARANCE: "They go together by hand.",
    TRANSITION: "One pair slides, the next wants a press: measure both before you put them together.",
    INTERFERENCE: "They want a press, or heat and cold. Check beforehand what stress the grip makes.",
}
_SPANS = {CLEARANCE: "{t} to {l} play", TRANSITION: "{t} grip to {l} play", INTERFERENCE: "{l} to {t} grip"}


def verdict_on(fit: Fit, parts: list[Part], gap: float | None) -> Judged:
    """`gap` is the clearance of the pair at hand, None where one of its parts was not measured."""
    if not parts:
        return _sizes_to_make(fit)
    # what cannot be cut to its limits says what the other must be
    out = sorted((part for part in parts if part.out), key=lambda part: (part.can_be_cut, -float(part.by)))
    if out and gap is not None and float(fit.tightest) - NOTHING <= gap <= float(fit.loosest) + NOTHING:
        return (
            "attention",
            say("{part} too {way} by {by}; the pair fits", part=out[0].name, way=out[0].way, by=out[0].by),
            say(
                "Together they have {g}, which {fit} allows. Keep and mark the two as a pair: with a part"
                " from the shelf it may not fit.",
                g=play(gap),
                fit=fit.name,
            ),
        )
    if out:
        return (
            "fail",
            say("{part} too {way} by {by}", part=out[0].name, way=out[0].way, by=out[0].by),
            out[0].remedy(fit),
        )
    if gap is not None:
        return (
            "pass",
            say("Both in limits: {g}", g=play(gap)),
            _ADVICE[CLEARANCE if gap >= 0 else INTERFERENCE],
        )
    return _size_of_the_mate(fit, parts[0])


def _sizes_to_make(fit: Fit) -> Judged:
    span = say(_SPANS[fit.kind], t=length(abs(float(fit.tightest))), l=length(abs(float(fit.loosest))))
    return (
        "pass",
        say(fit.kind.capitalize() + " fit: {span}", span=span),
        say(
            "Make the hole {a} to {b}, the shaft {c} to {d}. " + _ADVICE[fit.kind],
            a=fit.hole.low,
            b=fit.hole.high,
            c=fit.shaft.low,
            d=fit.shaft.high,
        ),
    )


def _size_of_the_mate(fit: Fit, part: Part) -> Judged:
    mate, limits = ("shaft", fit.shaft) if part.name == "Hole" else ("hole", fit.hole)
    return (
        "pass",
        say("{part} in limits: {read}", part=part.name, read=part.read),
        say("Its {mate} may be {a} to {b}.", mate=mate, a=limits.low, b=limits.high),
    )
