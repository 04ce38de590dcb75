"""Does the engine outrun the valve, and is there still anything to be had from more lift?"""

from calc.core.result import Judged, Limit, Remark, note, say, warning
from calc.core.working import constant
from calc.stations.heads.valve_flow_area.asked import INTAKE, In
from calc.stations.heads.valve_flow_area.flow import Flow
from calc.stations.shared.forms import TIMES


def verdict_on(i: In, found: Flow) -> Judged:
    """The Mach index is judged for the intake only."""
    fills = i.valve == INTAKE
    if fills and found.mach > i.most_mach:
        lift = "up to {x} helps." if i.lift < found.crossover else "past {x} does not."
        return (
            "fail",
            say("Outruns the valve: Mach index {z}, {m} allowed", z=found.mach, m=i.most_mach),
            say(
                "Above {n} the cylinder no longer fills. A larger valve or a better flow coefficient raises"
                " that; lift " + lift,
                n=found.speed_limit,
                x=found.crossover,
            ),
        )
    if i.lift < found.crossover:
        return (
            "attention",
            say("Opens to {a} of its throat", a=found.opened),
            say(
                "More lift still gives area, up to {x}. Check coil bind, guide seal and piston before you ask"
                " for it.",
                x=found.crossover,
            ),
        )
    return (
        "pass",
        say("Throat decides from {x}, index {z}", x=found.crossover, z=found.mach)
        if fills
        else say("Throat decides from {x}", x=found.crossover),
        "More lift than that buys little. If more flow is wanted, look at the throat and at the turn above"
        " it, and at the seat's cuts.",
    )


def limits_of(i: In, found: Flow) -> tuple[Limit, ...]:
    """What the verdict is decided by."""
    index = Limit("the Mach index", found.mach, high=i.most_mach)
    opening = Limit("the opening", i.lift, low=found.crossover, level="attention")
    return (index, opening) if i.valve == INTAKE else (opening,)


def remarks_on(i: In) -> tuple[Remark | None, ...]:
    """How large the throat is, and what the numbers leave out."""
    return (
        _of_the_throat(i),
        note(
            "Lift past the crossover still helps a little: the valve gets there sooner and stays longer, and"
            " its head stands clear of the flow."
        ),
        None
        if i.valve == INTAKE
        else note(
            "For the exhaust only areas and crossover count: what leaves the cylinder is hot and leaves under"
            " pressure. Leave index and engine speed aside."
        ),
    )


def _of_the_throat(i: In) -> Remark | None:
    share = constant("", "", TIMES, float(i.throat / i.valve_head))
    if float(i.throat) > 0.92 * float(i.valve_head):
        return warning(
            "The throat is {t} of the valve head. Past 0.92 no wall is left under the seat to turn the gas"
            " in; common practice, no source.",
            t=share,
        )
    if float(i.throat) < 0.80 * float(i.valve_head):
        return note(
            "The throat is {t} of the valve head; 0.85 to 0.90 is usual, common practice, no source.", t=share
        )
    return None
