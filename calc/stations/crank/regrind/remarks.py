"""What is said beside the verdict of a worn crank."""

from calc.core.conformance import past
from calc.core.result import Remark, note, warning
from calc.core.working import Number
from calc.stations.crank.regrind.asked import ONE_SIDE, In
from calc.stations.crank.regrind.lot import STAY, Lot


def remarks_on(i: In, mains: Lot, pins: Lot, hard: Number | None) -> tuple[Remark | None, ...]:
    ground = [lot for lot in (mains, pins) if lot.ground]
    return (
        note(
            "Two readings do not see a three-cornered journal. Turn it in a V-block under the dial before it"
            " is ground, and after."
        ),
        (
            note(
                "A scratch that a fingernail feels counts as wear: it goes only when the journal is ground"
                " as deep as that."
            )
        ),
        _one_side(i, ground),
        *(
            note(
                "{lot} stay: the size to grind to, and the stock, that stand among the numbers are not for"
                " them.",
                lot=lot.words,
            )
            for lot in (mains, pins)
            if lot.state == STAY
        ),
        (
            note("The fillets were not read: gauge them before the wheel is dressed.")
            if ground and i.fillet is None
            else None
        ),
        (
            warning("No depth of the hardened layer is known: ask how this crank is hardened, and how deep.")
            if ground and hard is None
            else None
        ),
        (
            warning(
                "The bow of {b} counts in full: it costs that much of every main between the blocks. Find"
                " out first what bent the crank.",
                b=i.bow,
            )
            if mains.ground and i.bow_worn is not None and past(i.bow, i.bow_worn)
            else None
        ),
        (
            note("A case bored oversize needs shells larger outside by as much as well.")
            if mains.ground
            else None
        ),
    )


def _one_side(i: In, ground: list[Lot]) -> Remark | None:
    """Where the unworn ring was not read, that reading may save an undersize."""
    unread = [lot for lot in ground if (i.main_unworn if lot.field == "mains" else i.pin_unworn) is None]
    if i.wear != ONE_SIDE or not unread:
        return None
    return note(
        "Where nobody read the unworn ring beside a fillet, the largest size as made was taken for it. That"
        " reading may save an undersize."
    )
