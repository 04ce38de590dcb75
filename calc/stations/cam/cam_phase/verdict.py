"""Does the cam stand right in its gears, and what brings it right?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, note, say
from calc.declare.calculator import Limit
from calc.stations.cam.cam_phase.asked import In
from calc.stations.cam.cam_phase.phase import Phase

CLEAR = "Then prove the valves clear of the pistons, by hand."


def verdict_on(i: In, p: Phase) -> Judged:
    if not past(p.centre, i.high) and not past(i.low, p.centre):
        return (
            "pass",
            say("Timed: centre {c}, {w} wanted", c=p.centre, w=i.wanted),
            f"Turn the engine twice by hand and read one side again. {CLEAR}",
        )
    way = "late" if float(p.late) > 0 else "early"
    if p.teeth:
        count = "One tooth" if abs(p.teeth) == 1 else f"{abs(p.teeth)} teeth"
        return (
            "fail",
            say(f"{count} {way}: centre {{c}}, {{w}} wanted", c=p.centre, w=i.wanted),
            f"Do not turn the engine by its starter. Open it, and mesh the gears by their marks. {CLEAR}",
        )
    key = (
        say(" An offset key or dowel of {x} does it.", x=p.shift)
        if p.shift is not None
        else say(" An offset key or dowel does it.")
    )
    return (
        "attention",
        say(f"Cam {way} by {{e}}: centre {{c}}", e=p.off, c=p.centre),
        say(
            "{l} to {h} is told. Read stop and lifts once more, from the same side. If it stays, {way}.{key} "
            + CLEAR,
            way=say(
                "turn the cam {t} " + ("on" if float(p.late) > 0 else "back") + " against its gear", t=p.cam
            ),
            key=key,
            l=i.low,
            h=i.high,
        ),
    )


def limits_of(i: In, p: Phase) -> tuple[Limit, ...]:
    level = "fail" if p.teeth else "attention"
    return (Limit("the centre", p.centre, i.low, i.high, level),)


def remarks_on(i: In, p: Phase) -> tuple[Remark | None, ...]:
    return (
        note(
            "The cam turns half as far as the crank: {e} on the wheel are {t} of the cam.", e=p.off, t=p.cam
        ),
        note("Without the number of the gear's teeth a whole tooth is not told from a moved key.")
        if p.teeth is None
        else note("One tooth shows as {z} on the wheel.", z=p.tooth),
        note(
            "The middle between equal lifts is the lobe's centre only where its flanks are alike; read both"
            " sides at the lift that the card names."
        ),
    )
