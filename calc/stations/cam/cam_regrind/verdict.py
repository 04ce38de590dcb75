"""Does this cam bear being ground, and what must be made up?"""

from calc.core.advice import at_most
from calc.core.conformance import past
from calc.core.result import Judged, Text, say
from calc.core.working import Number, constant, step
from calc.declare.calculator import Limit
from calc.stations.cam.cam_regrind.asked import HYDRAULIC, PLAN, SOLID, In
from calc.stations.cam.cam_regrind.ground import Ground
from calc.stations.shared.forms import COARSE

OTHER_CAM = "Take another cam; this one is not ground."


def verdict_on(i: In, found: Ground) -> Judged:
    return (
        _too_small(i, found)
        or _hollow(i, found)
        or _skin_gone(i, found)
        or _lift_wrong(i, found)
        or _taper_wrong(i, found)
        or _sharp(i, found)
        or _valve_too_far(i, found)
        or _much(i, found)
        or _out_of_travel(i, found)
        or _serves(i, found)
    )


def _no_good(i: In) -> str:
    return OTHER_CAM if i.how == PLAN else "Do not fit it: it goes back, and another cam is taken."


def _too_small(i: In, found: Ground) -> Judged | None:
    if found.base_least is None or not past(found.base_least, found.base):
        return None
    return (
        "fail",
        say("Base circle too small: {d}", d=found.base),
        say(
            "Below {least} the lifter's foot touches what stands beside the lobe. {do}",
            least=found.base_least,
            do=_no_good(i),
        ),
    )


def _hollow(i: In, found: Ground) -> Judged | None:
    if found.curve is not None and past(0.0, found.curve):
        return (
            "fail",
            say("This lobe cannot be ground so small"),
            say(
                "Under a flat foot its radius would be {r}: a point, or hollow, and the lift is lost. Ask the"
                " grinder for a lobe that slows the lifter more gently.",
                r=found.curve,
            ),
        )
    if found.face is not None and i.foot is not None and past(found.face, i.foot):
        return (
            "fail",
            say("Lifter's foot too small: {f}", f=i.foot),
            say(
                "This lobe runs off any foot narrower than {least} and cuts with its edge. Choose a lobe that"
                " rises less steeply.",
                least=found.face,
            ),
        )
    return None


def _skin_gone(i: In, found: Ground) -> Judged | None:
    if found.hard is None or i.hard_left is None or not past(i.hard_left, found.hard):
        return None
    gone = past(0.0, found.hard)
    return (
        "fail",
        say("Hardened layer gone") if gone else say("Hardened layer left: {h}", h=found.hard),
        say(
            "{least} are to be left; on softer metal a lobe goes flat in hours. {do} A shop that hardens cams"
            " may say otherwise.",
            least=i.hard_left,
            do=_no_good(i),
        ),
    )


def _lift_wrong(i: In, found: Ground) -> Judged | None:
    if past(i.lift_low, found.lift):
        return (
            "fail",
            say("Lift too small: {h}", h=found.lift),
            say(
                "At least {least}. {do}",
                least=i.lift_low,
                do="Grind it to the lift on the sheet."
                if i.how == PLAN
                else "Measure both again, square to the nose; if it stays, it goes back to the grinder.",
            ),
        )
    if past(found.lift, i.lift_high):
        return (
            "attention",
            say("More lift than this engine's cam: {h}", h=found.lift),
            say(
                "{most} at most are on its sheet. It is another cam: prove springs, rockers and the room to"
                " the piston, as the table says, before it turns.",
                most=i.lift_high,
            ),
        )
    return None


def _taper_wrong(i: In, found: Ground) -> Judged | None:
    if found.taper is None:
        return None
    if i.taper_low is not None and past(i.taper_low, found.taper):
        return (
            "fail",
            say("Lobe has too little taper: {t}", t=found.taper),
            say(
                "At least {least}, or the lifter does not turn and wears a groove. Back to the grinder, who"
                " dresses the wheel for it.",
                least=i.taper_low,
            ),
        )
    if i.taper_high is not None and past(found.taper, i.taper_high):
        return (
            "fail",
            say("Lobe has too much taper: {t}", t=found.taper),
            say(
                "{most} at most: the foot would run on one edge. Measure both edges again; if it stays, back"
                " to the grinder.",
                most=i.taper_high,
            ),
        )
    return None


def _sharp(i: In, found: Ground) -> Judged | None:
    if found.curve is None or i.nose_least is None or not past(i.nose_least, found.curve):
        return None
    return (
        "attention",
        say("Nose sharp: {r}", r=found.curve),
        say(
            "{least} wanted: a sharp nose presses harder on the foot. Ask the maker of the lifters whether"
            " they bear it with your springs; else another cam.",
            least=i.nose_least,
        ),
    )


def valve_most(i: In) -> Number | None:
    """A sheet's valve lift is that with its lash: where hydraulic lifters run without, it says nothing of the
    lobe, and the lobe's own lift is judged alone."""
    return i.valve_lift_high if i.lifters == SOLID else None


def _valve_too_far(i: In, found: Ground) -> Judged | None:
    most = valve_most(i)
    if most is None or not past(found.valve_lift, most):
        return None
    return (
        "attention",
        say("Valve opens {l}", l=found.valve_lift),
        say(
            "{most} at most are on the sheet: prove the springs' coil bind, the rocker and the room to the"
            " piston before it turns.",
            most=most,
        ),
    )


def _much(i: In, found: Ground) -> Judged | None:
    if not past(found.make_up, i.lost_most):
        return None
    return (
        "attention",
        say("{d} off the base circle's radius", d=found.make_up),
        say(
            "More than {most}: ask the grinder how deep this cam is hard, and have the lifter proved in its"
            " bore: it must keep its oil hole and both its ends covered. {up}",
            most=i.lost_most,
            up=_make_up(found),
        ),
    )


def ends(i: In) -> tuple[Number | None, Number | None]:
    """Between which the adjuster, or the plunger, is to stand; None where the sheet does not say."""
    if i.lifters == HYDRAULIC:
        return i.preload_low, i.preload_high
    if i.travel is None:
        return None, None
    third = step("S_3", "Middle third of the travel, either side", COARSE, i.travel / 6)
    return constant("", "", COARSE, -float(third)), third


def _out_of_travel(i: In, found: Ground) -> Judged | None:
    low, high = ends(i)
    short, long = low is not None and past(low, found.stands), high is not None and past(found.stands, high)
    if not (short or long):
        return None
    if i.lifters == HYDRAULIC:
        return (
            "attention",
            say("Plunger then pressed in {v}", v=found.stands),
            say(
                "{low} to {high} wanted. The cam serves with {other} pushrods: find their length before you"
                " order.",
                low=low,
                high=high,
                other="longer" if short else "shorter",
            ),
        )
    return (
        "attention",
        say("Adjuster then {e} off its middle", e=found.stands),
        say(
            "Its middle third ends at {third}. The cam serves with {other} pushrods: find their length before"
            " you order.",
            third=high,
            other="longer" if long else "shorter",
        ),
    )


def _make_up(found: Ground) -> Text:
    if float(found.make_up) <= 0:
        return say("Nothing is to be made up.")
    return say("{d} are made up between lobe and rocker.", d=found.make_up)


def _serves(i: In, found: Ground) -> Judged:
    takes = "The plungers take it" if i.lifters == HYDRAULIC else "The adjusters take it"
    if ends(i) == (None, None):
        takes = "See in the table by what"
    if i.how == PLAN:
        return (
            "pass",
            say("Grind to {d}, lift {h}", d=at_most(found.base, COARSE), h=found.lift),
            say(
                "Crack test first, and all lobes of a kind alike. {up} {takes}. New or refaced feet on every"
                " lobe.",
                up=_make_up(found),
                takes=takes,
            ),
        )
    return (
        "pass",
        say("This lobe serves: {h} on {d}", h=found.lift, d=found.base),
        say("{up} {takes}. New or refaced feet on every lobe.", up=_make_up(found), takes=takes),
    )


def limits_of(i: In, found: Ground) -> tuple[Limit, ...]:
    low, high = ends(i)
    limits = [
        Limit("the lobe's lift", found.lift, low=i.lift_low),
        Limit("the lobe's lift", found.lift, high=i.lift_high, level="attention"),
        Limit("what is made up", found.make_up, high=i.lost_most, level="attention"),
    ]
    if found.base_least is not None:
        limits.append(Limit("the base circle", found.base, low=found.base_least))
    if found.curve is not None:
        limits.append(Limit("the radius of the nose", found.curve, low=0.0))
        if i.nose_least is not None:
            limits.append(Limit("the radius of the nose", found.curve, low=i.nose_least, level="attention"))
    if found.face is not None and i.foot is not None:
        limits.append(Limit("the lifter's foot", i.foot, low=found.face))
    if found.hard is not None and i.hard_left is not None:
        limits.append(Limit("the hardened layer left", found.hard, low=i.hard_left))
    if found.taper is not None and (i.taper_low is not None or i.taper_high is not None):
        limits.append(Limit("the lobe's taper", found.taper, low=i.taper_low, high=i.taper_high))
    if valve_most(i) is not None:
        limits.append(Limit("the valve's lift", found.valve_lift, high=valve_most(i), level="attention"))
    if (low, high) != (None, None):
        what = "the plunger's place" if i.lifters == HYDRAULIC else "the adjuster's place"
        limits.append(Limit(what, found.stands, low=low, high=high, level="attention"))
    return tuple(limits)
