"""What is said beside the verdict of a set of cylinders."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import Number, constant
from calc.stations.cylinders.cylinder_bore.asked import CYLINDERS, In
from calc.stations.cylinders.cylinder_bore.lot import CUT, Lot
from calc.stations.cylinders.cylinder_bore.pair import Pairs
from calc.stations.shared.forms import SIZE

WARM = 5e-6  # m: what warmth adds to a reading before it is told; common practice


def _unlike(i: In, pairs: Pairs) -> bool:
    """Whether no bore of that size would suit one of the pistons in hand."""
    return past(pairs.loosest, i.most_clearance) or past(i.least_clearance, pairs.tightest)


def remarks_on(i: In, lot: Lot, pairs: Pairs, warm: Number) -> tuple[Remark | None, ...]:
    return (
        warning(
            "Warm, the bore read {d} too large; sizes here are those at 20 °C. Wait until it is cold before"
            " it"
            " is called finished.",
            d=warm,
        )
        if float(warm) > WARM
        else None,
        note(
            "Only {n} of {all} cylinders were read. All go to one size: read the others before pistons are"
            " ordered.",
            n=str(len(lot.each)),
            all=str(len(CYLINDERS)),
        )
        if len(lot.each) < len(CYLINDERS) and not lot.stays
        else None,
        note(
            "Hone each bore to its own piston: its size and {a} to {b} more, and within {low} to {high}.",
            a=i.least_clearance,
            b=i.most_clearance,
            low=lot.low,
            high=lot.high,
        )
        if pairs.new and not _unlike(i, pairs)
        else None,
        note("The clearances told are those of new pistons in bores as made, not of any in hand.")
        if not pairs.read and not pairs.new
        else None,
        note(
            "Diameters do not say to which side a bore is worn. About the old axis the worst is clean at"
            " {d} at"
            " the latest; worn alike all round, at {g}.",
            d=lot.clean,
            g=lot.largest,
        )
        if lot.state == CUT and float(lot.clean) > float(lot.largest)
        else None,
        note(
            "By plain expansion the tightest pair would close by {c} when hot, and it is still sound: a"
            " skirt is"
            " barrel-shaped, ground oval, slotted or held by steel strips, and runs cooler than its crown."
            " Go by"
            " the cold clearance that the piston's maker gives, never by this number.",
            c=constant("", "", SIZE, -float(pairs.hot)),
        )
        if float(pairs.hot) < 0
        else None,
    )
