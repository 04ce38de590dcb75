"""What spoils the reading of an end float."""

from calc.core.result import Remark, note, warning
from calc.stations.crankcase.end_float.asked import DRAWER, MAGNESIUM, In
from calc.stations.crankcase.end_float.fitting import Fitting
from calc.stations.crankcase.end_float.verdict import size


def remarks_on(i: In, found: Fitting) -> tuple[Remark | None, ...]:
    fitted = sum(row is not None for row in i.trial)
    return (
        note(
            "A flywheel that is not at its full torque reads too much float, and so does a thrust face that"
            " is worn hollow or runs out: turn the crank to three places, read at each, take the least."
        ),
        note("Three are always fitted: of {n} trial shims one more goes in.", n=fitted)
        if fitted == 2
        else None,
        note("In the drawer a shim's printed size is not its thickness: each was measured by itself?")
        if i.stock == DRAWER
        else None,
        note(
            "Warm, the thrust faces of a magnesium saddle move apart further than the crank's shoulders:"
            " {d} of the cold float goes.",
            d=size(found.change),
        )
        if i.body == MAGNESIUM and found.change < 0
        else None,
        warning("One shim of the three is over a millimetre: is it one, or two stuck together by oil?")
        if float(found.three[2]) > 1e-3
        else None,
    )
