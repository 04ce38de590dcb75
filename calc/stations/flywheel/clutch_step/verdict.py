"""Is the step right, and if not, which face is cut, and is there metal for it?"""

from calc.core.conformance import past
from calc.core.result import Judged, say
from calc.declare.calculator import Limit
from calc.stations.flywheel.clutch_step.asked import In
from calc.stations.flywheel.clutch_step.clamp import Clutch


def verdict_on(i: In, clutch: Clutch) -> Judged:
    return _thin(i, clutch) or _wrong_step(i, clutch) or _look_again(i, clutch) or _right(clutch)


def limits_of(i: In, clutch: Clutch) -> tuple[Limit, ...]:
    return (
        Limit("the thickness behind the friction face", i.thickness, low=i.thinnest),
        Limit("the clutch step", clutch.step, low=i.low, high=i.high),
        Limit("the three readings' likeness", clutch.apart, high=i.spread, level="attention"),
        Limit("the change of the clamp load", abs(clutch.change), high=i.most_change, level="attention"),
    )


def _thin(i: In, clutch: Clutch) -> Judged | None:
    if not past(i.thinnest, i.thickness):
        return None
    return (
        "fail",
        say("Too thin: {t} behind the face, {m} wanted", t=i.thickness, m=i.thinnest),
        "Scrap it, whatever its step: a thin face warps with the clutch's heat and cracks.",
    )


def _wrong_step(i: In, clutch: Clutch) -> Judged | None:
    wrong = past(i.low, clutch.step) or past(clutch.step, i.high)
    if not wrong:
        return None
    headline = say("Step {h}: {l} to {m} allowed", h=clutch.step, l=i.low, m=i.high)
    if float(clutch.off) > 0:
        return (
            "fail",
            headline,
            say(
                "Cut {a} off the cover's face, all round, in the same setting. The friction face lies"
                " too deep for"
                " the cover; cutting that further only makes it worse.",
                a=clutch.cut_cover,
            ),
        )
    if past(i.thinnest, clutch.left):
        return (
            "fail",
            headline,
            say(
                "It would take {a} off the friction face, and that leaves only {t}. Scrap it, or find"
                " out what was cut"
                " off the cover's face.",
                a=clutch.cut_face,
                t=clutch.left,
            ),
        )
    return (
        "fail",
        headline,
        say(
            "Cut {a} off the friction face, and leave the cover's face alone: that one was cut too far.",
            a=clutch.cut_face,
        ),
    )


def _look_again(i: In, clutch: Clutch) -> Judged | None:
    if past(clutch.apart, i.spread):
        return (
            "attention",
            say("Step differs by {d} round it, {s} allowed", d=clutch.apart, s=i.spread),
            "Clean both faces and read again. If it stays, one face runs out: set the flywheel up by its"
            " register and"
            " cut the one that does.",
        )
    if past(abs(clutch.change), i.most_change):
        return (
            "attention",
            say("Clamp load off by {q}, {m} allowed", q=clutch.change, m=i.most_change),
            "The step is within its limits, but this cover minds it. Bring the step to the middle, or"
            " ask the cover's"
            " maker for its curve.",
        )
    return None


def _right(clutch: Clutch) -> Judged:
    return (
        "pass",
        say("Step right: {h}", h=clutch.step),
        "Whatever is cut off the friction face from now on comes off the cover's face as well, in one"
        " setting. Write"
        " both cuts on the tag.",
    )
