"""What is to be known beside the leak."""

from calc.core.result import Remark, note, warning
from calc.core.working import constant
from calc.formulas import leak as gas
from calc.stations.cylinders.cylinder_leak_down.asked import In
from calc.stations.cylinders.cylinder_leak_down.leak import Leak

# of the supply: what is left where a valve stands open, or the fitting; common practice, no source
NEARLY_ALL = 0.25


def remarks_on(i: In, found: Leak) -> tuple[Remark | None, ...]:
    own = float(i.supply) != float(i.sheet_supply) or float(i.orifice) != float(i.sheet_orifice)
    whole = float(i.supply) / float(i.left)
    choked = float(found.choking) <= gas.critical_ratio()
    return (
        warning(
            "Where the leak shuts itself, the whole supply pushes on this piston with {f}. Ten degrees off"
            " the top it turns the crank with {m}, and with more the farther it goes.",
            f=constant("", "", found.force.sure_form, float(found.force) * whole),
            m=constant("", "", found.torque.sure_form, float(found.torque) * whole),
        ),
        warning(
            "So much is lost only where something stands open. See that this is the compression stroke, that"
            " both rockers have play, and that the fitting is tight, before anything is taken for worn."
        )
        if float(i.left) < NEARLY_ALL * float(i.supply)
        else None,
        note(
            "Your tester left {p} of {s}. The limits are for {d} and {t}: with that tester the same leak"
            " leaves {q}.",
            p=i.left,
            s=i.supply,
            d=i.sheet_orifice,
            t=i.sheet_supply,
            q=found.standard,
        )
        if own
        else None,
        note(
            "The hole is a measure only: rings leak at their gaps and valves along a line, longer and"
            " narrower. The flow through it is "
            + ("choked." if choked else "not choked: it depends on the pressure outside too.")
        ),
    )
