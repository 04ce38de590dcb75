"""What is to be known beside the verdict."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.stations.heads.valve_spring.asked import SIZES, In
from calc.stations.heads.valve_spring.life import Life
from calc.stations.heads.valve_spring.loads import Loads
from calc.stations.shared.forms import COARSE, NEWTON

# So much of the tensile strength may be the stress, without a factor for curvature, when pressed solid:
# EN 13906-1, from memory.
SOLID_SHARE = 0.56
# Rate by sizes and rate by loads further apart than this are not of one spring; common practice, no source.
UNLIKE = 0.1
ONE = constant("", "", COARSE, 1e-3)


def remarks_on(i: In, loads: Loads, life: Life) -> tuple[Remark | None, ...]:
    return (
        note(
            "All this is at the one height typed. Loads are least at the tallest fitted height of the"
            " head; room to coil bind, stress and the highest load are worst at the shortest: work out"
            " both."
        ),
        note(
            "{one} of shims adds {F} to the weakest spring's load, shut and open, and takes {one} off the"
            " room to coil bind.",
            one=ONE,
            F=constant("", "", NEWTON, float(loads.weak.rate) * float(ONE)),
        ),
        *(
            warning(
                "Spring {name} has {F} at {h}, under the {least} wanted there: replace it too.",
                name=s.name,
                F=s.load,
                h=i.height_1,
                least=i.least_seat,
            )
            for s in loads.springs
            if past(i.least_seat, s.load) and s is not loads.worn
        ),
        *_doubtful_sizes(loads),
        (
            note(
                "Pressed solid its stress, without Wahl's factor, is {s}, more than 0.56 of the wire's"
                " strength: never press it solid, not even on the tester.",
                s=life.plain_solid,
            )
            if life.plain_solid > SOLID_SHARE * i.tensile
            else None
        ),
        note("The loads read are not counted.") if i.method == SIZES else None,
        note(
            "A spring wound closer at one end gets stiffer as it closes: two loads give its mean rate"
            " between the two heights, and less above them than shown."
        ),
    )


def _doubtful_sizes(loads: Loads) -> tuple[Remark | None, ...]:
    """Where the sizes do not go with the loads, or with each other."""
    return (
        (
            warning(
                "Wire and turns give {d}, the loads of spring {name} {k}: turns miscounted, outside taken"
                " for mean diameter, or a coil that lies closed and does not move.",
                d=loads.rate_by_sizes,
                name=loads.weak.name,
                k=loads.rate,
            )
            if abs(float(loads.rate / loads.rate_by_sizes) - 1) > UNLIKE
            else None
        ),
        (
            warning(
                "Coil is {c} times the wire, outside the usual 4 to 12: look at wire and mean diameter"
                " again.",
                c=loads.coil,
            )
            if not 4 <= loads.coil <= 12
            else None
        ),
    )
