"""What is said beside the verdict of big ends that were cut."""

from calc.core.result import Remark, note, warning
from calc.core.working import Number, constant
from calc.stations.rods import RODS
from calc.stations.rods.big_end_resize.asked import In
from calc.stations.rods.big_end_resize.rods import Rods
from calc.stations.shared.forms import SIZE
from calc.stations.shared.honing import bored_first, plan

OFF_JOINT = 0.01e-3  # m: centre off the joint by more is remarked on; common practice, no source
STRETCHED = 0.05e-3  # m out of round; common practice, no source


def remarks_on(i: In, rods: Rods) -> tuple[Remark | None, ...]:
    return (
        note(
            "A cut narrows the bore along the rod only. At the parting line the bore stays as wide as it"
            " was, and there the hone finds least."
        ),
        note(
            "A gauge that touches at two points does not see a three-cornered bore: turn it in the last"
            " rod and feel for a place where it rocks."
        ),
        _off_the_joint(rods.off),
        (
            warning("{s} a side is much for a hone. {plan}", s=rods.most_stock, plan=plan(i.wanted, SIZE))
            if bored_first(2 * rods.most_stock)
            else None
        ),
        _stretched(rods.round),
        _left_out(i),
    )


def _off_the_joint(off: Number) -> Remark | None:
    if abs(float(off)) <= OFF_JOINT:
        return None
    return warning(
        "The new centre lies {c} off the parting line, and the two shells no longer meet on a"
        " diameter: cut rod and cap alike.",
        c=constant("", "", SIZE, abs(float(off))),
    )


def _stretched(out_of_round: Number) -> Remark | None:
    if float(out_of_round) <= STRETCHED:
        return None
    return warning(
        "{e} out of round: a rod stretched so far was overloaded, or its shells turned. Look for"
        " cracks before any work goes into it.",
        e=out_of_round,
    )


def _left_out(i: In) -> Remark | None:
    missed = [name for name, bore, cut in zip(RODS, i.bores, i.cuts) if bore is None and cut is not None]
    if not missed:
        return None
    return note("Rod {n} has a cut and no bores, and is left out.", n=" and ".join(missed))
