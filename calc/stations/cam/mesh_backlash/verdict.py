"""Is the play of the cam's gears right, and which gear is taken if not?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, Text, note, say
from calc.declare.calculator import Limit
from calc.stations.cam.mesh_backlash.asked import DIAL, In
from calc.stations.cam.mesh_backlash.mesh import Mesh


def verdict_on(i: In, mesh: Mesh) -> Judged:
    if past(i.low, mesh.least):
        bind = not past(mesh.least, 0.0)
        return (
            "fail",
            "Gears bind: no play" if bind else say("Too tight: {j} of {l}", j=mesh.least, l=i.low),
            say(
                "They whine, and grow tighter while oil and case are still cold. {cure}", cure=_cure(i, mesh)
            ),
        )
    if past(mesh.most, i.worn):
        return (
            "fail",
            say("Worn: {j} of play, {w} allowed", j=mesh.most, w=i.worn),
            say(
                "Look at both gears' teeth first: pitted or stepped ones are renewed as a pair. {cure}",
                cure=_cure(i, mesh),
            ),
        )
    if past(mesh.most, i.high):
        return (
            "attention",
            say("Play {j}, {h} at most when new", j=mesh.most, h=i.high),
            say("It may run, and it ticks at idle. {cure}", cure=_cure(i, mesh)),
        )
    if past(mesh.differs, i.unlike):
        return (
            "attention",
            say("Play differs by {v} round it", v=mesh.differs),
            "Mark the tightest tooth. Set the gear true on the cam, see that its seat is clean and its bolts"
            " or rivets tight, and read again; if it stays, the gear or the journal runs out.",
        )
    return (
        "pass",
        say("Play right: {a} to {b}", a=mesh.least, b=mesh.most),
        "Keep this gear. See that the timing marks stand together, and turn the crank two turns by hand: no"
        " place may be felt.",
    )


def _cure(i: In, mesh: Mesh) -> Text:
    if past(i.low, mesh.least_then) or past(mesh.most_then, i.worn):
        return say(
            "No gear up to code {n} serves: the crank and the cam stand too far from their distance, or the"
            " gear runs out. Measure both before you order.",
            n=i.last,
        )
    if mesh.kept and abs(float(i.code)) >= float(i.last):
        return say(
            "Code {n} is the last that is sold: measure how far crank and cam stand apart, and both gears.",
            n=i.code,
        )
    if mesh.kept:
        return say("No other code brings it nearer: it is its unevenness, {v}.", v=mesh.differs)
    return say(
        "Take a cam gear of code {n}: play is then {a} to {b}. Read it again with that gear.",
        n=mesh.take,
        a=mesh.least_then,
        b=mesh.most_then,
    )


def limits_of(i: In, mesh: Mesh) -> tuple[Limit, ...]:
    return (
        Limit("the backlash", mesh.least, low=i.low),
        Limit("the backlash", mesh.most, high=i.worn),
        Limit("the backlash", mesh.most, high=i.high, level="attention"),
        Limit("how the backlash differs", mesh.differs, high=i.unlike, level="attention"),
    )


def remarks_on(i: In, mesh: Mesh) -> tuple[Remark | None, ...]:
    return (
        note(
            "Each step of the code changes the play by {d}. A minus code is a smaller gear and gives"
            " more play.",
            d=mesh.each,
        ),
        note("The case grows more than its gears when hot, and the play with it: it is set and judged cold."),
        note(
            "By the distance alone neither wear nor runout of the gears is seen: read it with a dial once"
            " closed."
        )
        if i.how != DIAL
        else None,
        note("Helical gears push the cam along as you rock it: hold it against its thrust bearing.")
        if i.how == DIAL and float(i.helix)
        else None,
    )
