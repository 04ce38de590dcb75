"""Leak-down of a hydraulic lifter: how fast the plunger goes down under load as its oil leaks past it."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import cautions, sources
from calc.stations.lifters.plunger_leak.asked import TEST_FLUIDS, In
from calc.stations.lifters.plunger_leak.drawing import section, time_over_clearance
from calc.stations.lifters.plunger_leak.leak import Leak, leak_of, refuse_no_gap
from calc.stations.lifters.plunger_leak.told import Out
from calc.stations.lifters.plunger_leak.verdict import verdict_on
from calc.stations.shared.forms import FINE

TURBULENT = 2000.0  # Reynolds number above which a gap's flow need not stay laminar


@calculator(
    "plunger-leak",
    "Leak-down of a plunger",
    In,
    Out,
    purpose="Does this plunger go down in the time accepted, neither collapsing nor failing to bleed?",
    finds=(
        "leak-down test",
        "bleed down",
        "collapsed lifter",
        "noisy lifter",
        "plunger clearance",
        "hydraulic tappet leak",
        "lifter tick",
        "pump-up",
    ),
    sources=(
        sources.ANNULAR_GAP,
        sources.WALTHER,
        sources.OIL_GRADES,
        sources.OIL_GROWTH,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.HOT_OIL, cautions.SNAP_RING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def plunger_leak(i: In) -> Answer:
    """Laminar flow in a narrow gap whose plunger stands parallel to its bore; one oil temperature.

    The check valve is taken as tight. Its own leak, air in the oil and a tapered bore all make it faster than
    shown.
    """
    refuse_no_gap(i)
    leak = leak_of(i)
    return answer(
        leak.time,
        leak.clearance,
        leak.leakage,
        leak.pressure,
        leak.viscosity,
        leak.centred,
        leak.touching,
        leak.clearance_least,
        leak.clearance_most,
        leak.sink,
        leak.reynolds,
        verdict=verdict_on(i, leak),
        limits=(
            (
                Limit("the leak-down time", leak.time, low=i.least_time),
                Limit("the leak-down time", leak.time, high=i.most_time, level="attention"),
            )
            if i.oil in TEST_FLUIDS
            else ()
        ),
        remarks=_remarks_on(i, leak),
        figures=lambda: (section(i, leak.pressure), time_over_clearance(i, leak)),
    )


def _remarks_on(i: In, leak: Leak) -> tuple[Remark | None, ...]:
    return (
        note(
            "Where the plunger stands in its bore is not known: anything from {a} to {b} may be read on"
            " one and the same lifter.",
            a=leak.touching,
            b=leak.centred,
        ),
        note(
            "Time goes as one over the cube of the clearance: {m} more on the diameter halves it.",
            m=constant("", "", FINE, float(leak.clearance) * (2 ** (1 / 3) - 1)),
        ),
        None
        if i.oil in TEST_FLUIDS
        else warning(
            "The times accepted hold for the tester's own thin fluid at room temperature: a time in"
            " engine oil, cold or hot, cannot be compared with them."
        ),
        warning(
            "Flow in the gap need not stay laminar at this Reynolds number: the real leak is less than shown."
        )
        if float(leak.reynolds) > TURBULENT
        else None,
    )
