"""What is said beside the verdict of a reground lobe."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import Number
from calc.stations.cam.cam_regrind.asked import HYDRAULIC, JOURNAL, PLAN, SAME, In
from calc.stations.cam.cam_regrind.ground import Ground
from calc.stations.cam.cam_regrind.verdict import ends


def remarks_on(i: In, found: Ground) -> tuple[Remark | None, ...]:
    return (
        _unknown(i, found),
        note(
            "The lift that was read, {h}, is within the sheet's: grind this lobe only for what is seen"
            " on it.",
            h=found.read,
        )
        if i.how == PLAN and not past(i.lift_low, found.read)
        else None,
        note(
            "Lift as made is {old}: a lobe of another lift is no smaller copy of the old one. Choose its law,"
            " or ask the grinder for its least radius.",
            old=i.lift_made,
        )
        if i.law == SAME and abs(float(found.lift - i.lift_made)) > 0.02 * float(i.lift_made)
        else None,
        note("A measuring edge does not see hardness: have it tested on the lobe after grinding, not before.")
        if found.hard is not None
        else None,
        note("The base circle is larger than as made. Was the lobe built up, or is it another cam?")
        if float(found.make_up) < -0.1e-3
        else None,
        note(
            "The heel must run with the journals. Turn the cam in vee blocks with a dial on each heel: what"
            " it shows comes and goes as lash."
        ),
    )


def _unknown(i: In, found: Ground) -> Remark | None:
    missing = [
        words
        for words, known in (
            ("hardness", found.hard is not None and i.hard_left is not None),
            ("what stands beside the lobe", _beside_known(i)),
            ("the nose's radius", found.curve is not None and (i.law != SAME or i.nose_least is not None)),
            ("the lobe's taper", i.how == PLAN or i.taper_low is not None),
            ("the adjuster's or the plunger's travel", ends(i) != (None, None)),
            ("the valve's lift", i.lifters == HYDRAULIC or i.valve_lift_high is not None),
        )
        if not known
    ]
    if not missing:
        return None
    return warning("Not judged, for want of a limit or a reading: {list}.", list="; ".join(missing))


def _beside_known(i: In) -> bool:
    needed: list[Number | None] = [i.core]
    if i.reach == JOURNAL:
        needed.append(i.journal)
    return None not in needed
