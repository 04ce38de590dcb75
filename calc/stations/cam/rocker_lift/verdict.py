"""Does this rocker give the valve its lift, and keep to the middle of the tip?"""

from calc.core.conformance import past
from calc.core.result import Judged, Remark, Text, note, say, warning
from calc.core.working import Number, constant
from calc.declare.calculator import Limit
from calc.stations.cam.rocker_lift.arc import Arc
from calc.stations.cam.rocker_lift.asked import In
from calc.stations.shared.forms import COARSE, SHARE

WORTH_A_SHIM = 0.0002  # m: less than the thinnest shim under a stand; common practice, no source


def good(i: In) -> Number:
    """The limit of a good sweep; no more than that of the worst allowed."""
    return i.sweep_most if i.sweep_good > i.sweep_most else i.sweep_good


def verdict_on(i: In, arc: Arc) -> Judged:
    if past(arc.sweep, i.sweep_most):
        return (
            "fail",
            say("Sweeps {w} across the tip, {m} allowed", w=arc.sweep, m=i.sweep_most),
            say("It wears guide and tip on one side. {cure}", cure=_cure(arc)),
        )
    if past(i.lift_low, arc.lift):
        return (
            "fail",
            say("Valve opens only {l}, {m} told", l=arc.lift, m=i.lift_low),
            "Measure lobe, arms and lash again: a worn lobe, a rocker of another engine, or the tip too far"
            " from its height. Renew what is wrong.",
        )
    if past(arc.lift, i.lift_high):
        return (
            "attention",
            say("Valve opens {l}, {m} told", l=arc.lift, m=i.lift_high),
            "Before it runs so, see that the spring is not bound, the retainer clear of the guide's end,"
            " and the valve clear of the piston.",
        )
    if past(arc.sweep, good(i)):
        return (
            "attention",
            say("Sweeps {w} across the tip, {n} wanted", w=arc.sweep, n=good(i)),
            say("It may run. {cure}", cure=_cure(arc)),
        )
    return (
        "pass",
        say("Opens {l}, sweeps {w}", l=arc.lift, w=arc.sweep),
        "Blue the tip, turn the engine over twice, and see that the mark lies in its middle.",
    )


def _cure(arc: Arc) -> Text:
    shim = constant("", "", COARSE, abs(float(arc.up)))
    if abs(float(arc.up)) < WORTH_A_SHIM:
        return say("It already stands square at half lift: the arm is too short for this lift.")
    if float(arc.up) > 0:
        return say(
            "Shims of {t} under the stand bring it square at half lift; then the pushrod anew.", t=shim
        )
    return say(
        "The shaft stands {t} too high for square at half lift: take shims out, or see why the tip lies low;"
        " then the pushrod anew.",
        t=shim,
    )


def limits_of(i: In, arc: Arc) -> tuple[Limit, ...]:
    return (
        Limit("the sweep", arc.sweep, high=i.sweep_most),
        Limit("the valve's lift", arc.lift, low=i.lift_low),
        Limit("the valve's lift", arc.lift, high=i.lift_high, level="attention"),
        Limit("the sweep", arc.sweep, high=good(i), level="attention"),
    )


def remarks_on(i: In, arc: Arc) -> tuple[Remark | None, ...]:
    whole, first, last = arc.ratios
    told = i.ratio_told
    off = 0.0 if told is None else abs(float(whole) / float(told) - 1)
    return (
        note(
            "The ratio is no constant: {a} as the valve starts, {b} at full lift. Work with the lift that you"
            " read at the valve.",
            a=first,
            b=last,
        ),
        note(
            "Half lift is that of the valve, {h}, and not of the lobe: there the arm stands {t} off square in"
            " height.",
            h=constant("", "", COARSE, float(arc.pad_lift) / 2),
            t=constant("", "", COARSE, abs(float(arc.up))),
        ),
        warning(
            "The engine's data tell a ratio of {r}; these arms give {p} more or less. Are they this"
            " engine's?",
            r=told,
            p=constant("", "", SHARE, off),
        )
        if told is not None and off > 0.03
        else None,
    )
