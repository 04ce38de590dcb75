"""What is said of ring and pocket, in the order in which it matters, and what is worth a remark."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Remark, Text, note, say, warning
from calc.core.working import Number, constant
from calc.reference.materials import Material
from calc.stations.heads.seat_fit.asked import In
from calc.stations.heads.seat_fit.grip import Grip
from calc.stations.heads.temper import loses_temper
from calc.stations.shared.forms import COARSE, ROUGH
from calc.stations.shared.ring_in_wall import short_by

THIN = constant("", "", ROUGH, 1.5e-3)  # rings are two to six millimetres thick; common practice, no source


def verdict_on(i: In, head: Material, grip: Grip) -> Judged:
    return _fails(i, head, grip) or _yields(grip) or _holds(grip)


def limits_of(i: In, head: Material, grip: Grip) -> tuple[Limit, ...]:
    """What the verdict is decided by."""
    cracks = "fail" if head.brittle else "attention"
    return (
        Limit("the least grip left", grip.left, low=i.least_grip),
        Limit("the strength of ring and head", grip.spare, low=0),
        Limit("first yield of the head", grip.head_used, high=1, level=cracks),
        Limit("first yield of the ring", grip.ring_used, high=1, level="attention"),
    )


def _fails(i: In, head: Material, grip: Grip) -> Judged | None:
    do_not = _advice("Do not fit this ring.", grip)
    bearing = grip.cold.bears
    if grip.interference <= 0:
        return "fail", say("Falls in: ring {d} under the pocket", d=short_by(grip.interference)), do_not
    if bearing <= 0:
        return "fail", say("No grip: roughness takes up all {d}", d=grip.interference), do_not
    if head.brittle and grip.head_used > 1:
        return "fail", say("Head may crack: {s} of its strength", s=grip.head_used), do_not
    if grip.spare <= 0:
        hardest = grip.hardest
        return (
            "fail",
            say(f"{hardest.weaker.capitalize()} gives way {hardest.heat.when}"),
            _advice("Do not fit this ring: it yields right through, and the grip goes with it.", grip),
        )
    if grip.left <= 0:
        return "fail", say("Comes loose: {d} left " + grip.when, d=grip.left), do_not
    if past(i.least_grip, grip.left):
        return "fail", say("Too little grip: {d} left " + grip.when, d=grip.left), do_not
    return None


def _advice(words: str, grip: Grip) -> Text | str:
    """What to do, and which ring would serve: the window within which the verdict is in order."""
    if grip.serving.serves:
        return grip.serving.told(words + " By its grip this pocket takes a ring of {w} to {m}.")
    return (
        words
        + " No ring holds in this pocket as it runs without something yielding. Look for a ring that grows"
        " more, a thicker wall, or less heat; or type rings in between and see what grip they keep."
    )


def _yields(grip: Grip) -> Judged | None:
    part, share = ("Head", grip.head_used) if grip.head_used > grip.ring_used else ("Ring", grip.ring_used)
    if not share > 1:
        return None
    other = (
        grip.serving.told("A ring of {w} to {m} would not yield.")
        if grip.serving.serves
        else "Every ring that holds here yields a little."
    )
    return (
        "attention",
        say(part + " yields a little: {l} lost", l=grip.lost.shown(4)),
        say(
            "Enough grip is left: {left} "
            + grip.when
            + ". Measure both again; within the maker's limits it may be fitted. {other}",
            left=grip.left,
            other=other,
        ),
    )


def _holds(grip: Grip) -> Judged:
    return (
        "pass",
        say("Holds: {d} left " + grip.when, d=grip.left),
        "Fit it. “Heat to fit a seat ring” tells how hot the head must be; have everything at hand first.",
    )


def remarks_on(i: In, head: Material, grip: Grip, hold_hot: Number) -> tuple[Remark | None, ...]:
    """What else the reader should know of this ring and this pocket."""
    return (
        warning(
            "Interference of {d} is more than one part in 150 of the bore: were pocket and ring read at the"
            " same place, and from the same engine?",
            d=grip.interference,
        )
        if grip.interference > i.pocket_bore / 150
        else None,
        warning(
            "The ring's wall is {w}, and rings have {thin} at least; common practice, no source. When running"
            " it grips with {F} only: was its bore read right?",
            w=constant("", "", COARSE, float(i.ring_outside - i.ring_bore) / 2),
            thin=THIN,
            F=hold_hot,
        )
        if past(2 * THIN, i.ring_outside - i.ring_bore)
        else None,
        note(
            "What yields in one heat is gone in all of them: {l} are taken off cold, running and stopped hot."
            " The pressures count it.",
            l=grip.lost,
        )
        if grip.lost > 0
        else None,
        note(
            "A cold start straight into full load presses the pocket hardest: a hot ring in a cool head. Warm"
            " the engine up gently, and let it cool gently."
        )
        if grip.warming_presses_hardest
        else None,
        loses_temper(head, i.head_temperature),
        note(
            "The wall round a pocket is not even. The thinnest was taken: pressure and grip come out on the"
            " low side, the stress in that wall about right."
        ),
    )
