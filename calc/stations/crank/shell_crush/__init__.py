"""The crush of a pair of shells: do they hold in their housing, cold and running?"""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.crank.shell_crush.asked import In, pair_of
from calc.stations.crank.shell_crush.drawing import seat
from calc.stations.crank.shell_crush.grip import grip_of
from calc.stations.crank.shell_crush.told import Out
from calc.stations.crank.shell_crush.verdict import limits_of, remarks_on, verdict_on


@calculator(
    "shell-crush",
    "Crush of the shells",
    In,
    Out,
    purpose="Do these shells hold in their housing, cold and running, or will they turn?",
    finds=(
        "bearing crush",
        "shell stands proud",
        "spun bearing",
        "turned shell",
        "shell protrusion",
        "bearing nip",
    ),
    sources=(
        sources.SHELL_CRUSH,
        sources.LAME,
        sources.THERMAL,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def shell_crush(i: In) -> Answer:
    """Each half a proud of one joint makes 2a/π of interference on the diameter; shell and housing are two
    elastic rings (Lamé, plane stress), each of its own metal at its own heat.

    A housing is counted as a ring of its thinnest wall. No friction along the seat: near the joint a shell is
    pressed harder than at its crown, here alike all round. Elastic; past yield the grip is less.
    """
    pair = pair_of(i)
    grip = grip_of(i, pair)
    return answer(
        grip.held.cold.interference,
        grip.held.hot.interference,
        grip.held.cold.pressure,
        grip.held.hot.pressure,
        grip.held.cold.opened,
        grip.hoop,
        grip.rigid,
        grip.housing_hoop,
        grip.shell_used,
        grip.housing_used,
        verdict=verdict_on(grip),
        limits=limits_of(grip),
        remarks=remarks_on(i, grip),
        figures=lambda: (seat(pair.housing, pair.wall, pair.one, pair.wall_round),),
    )
