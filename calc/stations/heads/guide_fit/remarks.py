"""What is to be known beside the verdict."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.clearance import Clearance
from calc.stations.heads.guide_fit.grip import GuideGrip
from calc.stations.heads.temper import loses_temper

# Common practice, no source, m: more than this to ream is another guide's bore; a guide that keeps less grip
# than this may slide when seats are driven in beside it.
MUCH, SLIDES = 0.5e-3, 0.005e-3


def remarks_on_new(i: In, grip: GuideGrip, stem: Clearance) -> tuple[Remark | None, ...]:
    return (
        note("The bore closes by {c}: ream after pressing, never before.", c=stem.closing),
        (
            warning(
                "{a} is much for a reamer: is this the guide for this stem? Guides come to size, or a few"
                " tenths under; common practice, no source.",
                a=stem.to_ream,
            )
            if past(stem.to_ream, MUCH)
            else None
        ),
        _in_the_oven(i, grip),
        (
            warning("Past yield the real pressure, and the closing of the bore, are less than shown.")
            if grip.gives and not grip.cracks
            else None
        ),
        loses_temper(grip.joint.wall.material, i.head_temperature),
        _first_close(i, stem),
    )


def remarks_on_fitted(i: In, grip: GuideGrip, stem: Clearance) -> tuple[Remark | None, ...]:
    return (
        note(
            "The largest bore and the smallest stem were asked for, because they decide whether it is"
            " worn. For the tightest place, type the smallest bore and the largest stem."
        ),
        note(
            "Its grip in the head is worked out from hole and outside as made: the guide is in, and"
            " neither can be measured."
        ),
        _in_the_oven(i, grip),
        loses_temper(grip.joint.wall.material, i.head_temperature),
        _first_close(i, stem),
    )


def _in_the_oven(i: In, grip: GuideGrip) -> Remark | None:
    if 0 < float(grip.oven) < SLIDES:
        return warning(
            "In an oven at {t} only {d} of grip is left: it may slide while seats are fitted. Note"
            " how far it stands out before, and measure that again after.",
            t=i.oven_temperature,
            d=grip.oven,
        )
    if grip.oven <= 0 < grip.cold.interference:
        return warning(
            "In an oven at {t} no grip is left: it may slide while seats are fitted. Note how far"
            " it stands out before, and measure that again after.",
            t=i.oven_temperature,
        )
    return None


def _first_close(i: In, stem: Clearance) -> Remark | None:
    if not 0 < stem.first < i.least_hot:
        return None
    return note(
        "While the stem alone is hot, {c} are left at most that close: warm the engine up before"
        " it is loaded.",
        c=stem.first,
    )
