"""A collar that is drawn up from the sheet and tapped: the metal of the hole stands up as its wall."""

from calc.core.kinds import RATIO
from calc.core.result import Judged, impossible, say
from calc.core.working import Number, constant, form, greatest, sqrt, step
from calc.declare.calculator import Limit
from calc.formulas.screw_threads import hole_shear_area
from calc.reference import sources
from calc.reference.standards.threads import THREADS, Thread, external, internal
from calc.stations.shared import thread_sizes as sizes
from calc.stations.shared.forms import COARSE, NEWTON, SHARE
from calc.stations.threads.sheet_insert.asked import In
from calc.stations.threads.sheet_insert.made import NUT_FACTOR, Made, borne_by_both
from calc.stations.threads.sheet_insert.sheet import Sheet
from calc.stations.threads.sheet_insert.told import Out

# Common practice, no source.
WALL = 0.65  # a collar's wall over the sheet's thickness
STRETCH = {"steel": 0.8, "aluminium": 0.5, "stainless": 0.8}  # growth of the pilot hole at which it tears
TURNS = 1.5  # fewer than that, and it is no thread


def collar(i: In, sheet: Sheet) -> Made:
    thread = THREADS[i.thread]
    P, d = sizes.pitch(thread), sizes.nominal(thread)
    bore = sizes.known("D_1", "Bore to be tapped", thread.minor, sources.ISO_965)
    across = Out.across(bore + 2 * (WALL * i.thickness), sources.PRACTICE)
    hole = _pilot_hole(i, thread, bore, across)
    tall = step("h", "Height of the collar", COARSE, i.height * i.thickness)
    length = step(
        "L_e", "Thread that is whole in it", COARSE, greatest(tall - P / 2, 0.0 * P), sources.PRACTICE
    )
    turns = Out.turns(length / P)
    strips = _strips(thread, P, length, sheet)
    borne = borne_by_both(thread, strips, NUT_FACTOR * d * strips, sources.H28, sources.PRACTICE)
    grown = constant("", "", SHARE, float(bore) / float(hole) - 1)
    return Made(
        hole,
        across,
        bore,
        turns,
        borne.pull,
        borne.turn,
        (
            Limit("the collar's outside", across, low=d),
            Limit("what the hole grows by", grown, high=STRETCH[i.alloy]),
            Limit("the turns that hold", turns, low=TURNS),
        ),
        _fault(across, d, grown, STRETCH[i.alloy], turns),
        borne.screw,
    )


def _pilot_hole(i: In, thread: Thread, bore: Number, across: Number) -> Number:
    """The hole whose metal makes a collar of that bore, outside and height; refuses one that it has not metal
    for."""
    ring = step(
        "Q",
        "Collar's outside over its bore, squared",
        form(RATIO, 3),
        (across * across - bore * bore) / (across * across),
    )
    if ring * i.height >= 1:
        raise impossible(
            "thickness",
            "is {t}, and a collar of {z} times that for {d} takes more metal than the hole has; give thinner"
            " sheet, a lower collar or a larger thread",
            t=i.thickness,
            z=i.height,
            d=thread.words,
        )
    return Out.hole(across * sqrt(1 - ring * i.height), sources.COLLAR)


def _strips(thread: Thread, pitch: Number, length: Number, sheet: Sheet) -> Number:
    """Pull that strips that length of thread, both parts at least material."""
    outside_least, _ = sizes.least_and_most(external(thread, "6g").major)
    _, pitch_most = sizes.least_and_most(internal(thread, "6H").pitch)
    outside = sizes.known("d_min", "Screw's outside, least", outside_least, sources.ISO_965)
    wide = sizes.known("D_2,max", "Thread's pitch diameter, most", pitch_most, sources.ISO_965)
    return step(
        "F_t",
        "Pull that strips the collar's thread",
        NEWTON,
        hole_shear_area(pitch, length, outside, wide) * sheet.shear,
        sources.H28,
    )


def _fault(across: Number, d: Number, grown: Number, stretch: float, turns: Number) -> Judged | None:
    if across <= d:
        return (
            "fail",
            say("Thread cuts through the collar's wall"),
            say(
                "The collar is {a} outside, the thread {d}. Take a smaller thread or thicker sheet.",
                a=across,
                d=d,
            ),
        )
    if grown > stretch:
        return (
            "fail",
            say("Collar tears: hole grows by {g}", g=grown),
            say(
                "{m} is about what such sheet bears. Draw a lower collar.", m=constant("", "", SHARE, stretch)
            ),
        )
    if turns < TURNS:
        return (
            "fail",
            say("Only {n} turns hold: no thread", n=turns),
            "One turn and a half is the least that holds. A taller collar, a finer thread, or a nut.",
        )
    return None
