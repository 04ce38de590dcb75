"""What a strip can tell, which ends where its own doubt reaches a limit."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Remark, note, say, warning
from calc.core.working import Number
from calc.stations.crank.shells import ROD
from calc.stations.crank.strip_clearance.asked import Held, In


class Found(NamedTuple):
    """Clearances by the sizes, at the widest and narrowest place of the strip, and the taper between them."""

    held: Held
    tight: Number
    loose: Number
    taper: Number


def verdict_on(i: In, f: Found) -> Judged:
    return _out(i, f) or _cannot_tell(i, f) or _worth_a_look(i, f) or _right(i, f)


def limits_of(i: In, f: Found) -> tuple[Limit, ...]:
    return (
        Limit("the clearance less its doubt", f.tight - i.doubt, low=f.held.low),
        Limit("the clearance and its doubt", f.loose + i.doubt, high=f.held.worn),
    )


def _out(i: In, f: Found) -> Judged | None:
    h = f.held
    if past(h.low, f.tight + i.doubt):
        return (
            "fail",
            say("Too tight: {c}, at least {low}", c=f.tight, low=h.low),
            "Do not turn it. Take it apart, wipe the backs of the shells and their seats, and try a new"
            " piece of strip. If it stays: journal, shells and housing have to be measured, and one of them"
            " is wrong.",
        )
    if past(f.loose - i.doubt, h.worn):
        return (
            "fail",
            say("Too loose: {c}, {w} allowed", c=f.loose, w=h.worn),
            "Look that the torque is right and nothing lies in the joint, and try a new piece. If it stays:"
            " shells, journal and housing have to be measured; a ground journal in standard shells shows"
            " exactly this.",
        )
    return None


def _cannot_tell(i: In, f: Found) -> Judged | None:
    h = f.held
    for clearance, limit, near in (
        (f.tight, h.low, past(h.low, f.tight - i.doubt)),
        (f.loose, h.worn, past(f.loose + i.doubt, h.worn)),
    ):
        if near:
            return (
                "unsure",
                say("A strip cannot tell: {c}, limit {l}", c=clearance, l=limit),
                say(
                    "A strip is out by up to {U}. Have bore, shells and journal measured before it is closed,"
                    " with a bore gauge, a ball micrometer and a micrometer.",
                    U=i.doubt,
                ),
            )
    return None


def _worth_a_look(i: In, f: Found) -> Judged | None:
    h = f.held
    if i.most_taper is not None and past(f.taper, i.most_taper):
        return (
            "attention",
            say("Tapered: {k} from end to end, {m} at most", k=f.taper, m=i.most_taper),
            "Try a second piece a quarter turn further. If it stays, measure the journal at both ends, and"
            " look whether the cap sits square.",
        )
    if past(f.loose + i.doubt, h.high):
        return (
            "attention",
            say("Perhaps loose for fresh parts: {c}, {h} at most", c=f.loose, h=h.high),
            say("Parts that have run may stay up to {w}. With new shells have the sizes measured.", w=h.worn),
        )
    return None


def _right(i: In, f: Found) -> Judged:
    after = "each rod falls by its own weight" if i.bearing == ROD else "the crank turns with two fingers"
    return (
        "pass",
        say("Clearance right by the strip: {c}", c=f.tight),
        "Scrape the strip off with a fingernail, wash, oil the faces, bolt up again; then " + after + ".",
    )


def remarks_on(i: In, f: Found) -> tuple[Remark | None, ...]:
    return (
        (
            note(
                "The strip lies in fitted shells, whose crush opens the housing by {u}; the sheet's limits"
                " are those of the sizes, and it is taken off.",
                u=f.held.opens,
            )
            if f.held.opens is not None
            else warning(
                "The crush of the shells opens the housing by some thousandths to two hundredths of a"
                " millimetre. It is not known here, and counts as clearance."
            )
        ),
        (
            note("Read the strip at both ends: a tapered journal shows nowhere else.")
            if i.narrowest is None
            else None
        ),
        note(
            "It reads one place of the bearing. Turned, oily, or laid at the joint, where shells are thinner,"
            " it tells nothing."
        ),
    )
