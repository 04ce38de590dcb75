"""What is said beside the verdict of a thread in sheet."""

from calc.core.result import Remark, note, warning
from calc.stations.threads.sheet_insert.asked import CLINCH, RIVET, In


def remarks_on(i: In) -> tuple[Remark | None, ...]:
    return (
        note(
            "Pull and torque are estimates from the shear of the sheet. Set one in a scrap of the same"
            " sheet, and twist and pull it until it gives."
        ),
        (
            note(
                "The nut's own data sheet comes before hole, grip and least sheet: makers' nuts of one"
                " thread differ."
            )
            if i.way in (RIVET, CLINCH)
            else None
        ),
        (
            warning(
                "A round rivet nut spins in its hole when the screw rusts or is over-tightened, and then"
                " nothing holds it: in a shroud that comes off often, take one with a hexagon body in a"
                " hexagon hole."
            )
            if i.way == RIVET
            else None
        ),
        (
            note(
                "The pull shown is what pushes it back out. Put it on the side away from the screw's"
                " head: then the screw pulls it into the sheet, and it bears several times that."
            )
            if i.way == CLINCH
            else None
        ),
        (
            warning("A clinch nut must be harder than the sheet: in stainless only a hardened one bites.")
            if i.way == CLINCH and i.alloy == "stainless"
            else None
        ),
        (
            warning("A zinc-plated steel part in aluminium rots when wet: seal it.")
            if i.alloy == "aluminium"
            else None
        ),
    )
