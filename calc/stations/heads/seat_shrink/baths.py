"""What a ring is chilled in, what each bath is worth, and how near to its limit a head may come."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import Table, say
from calc.core.working import Number, constant
from calc.reference.materials import REFERENCE
from calc.stations.heads.seat_shrink.drop import Fitting
from calc.stations.shared.forms import DEGREES_C, WHOLE_KELVINS

# common practice, no source: what a contact thermometer on a hot casting may be off
READING = constant("", "", WHOLE_KELVINS, 10.0)
# Below the heat at which an alloy loses its temper: an hour at that heat is its edge (A356's strength falls
# fast above about 200 °C: Modern Casting, June 2023), so that ovens are set 25 to 40 K lower; common
# practice, no source.
EASY = constant("", "", WHOLE_KELVINS, 25.0)


def at(kelvin: float) -> Number:
    """A temperature in a sentence."""
    return constant("", "", DEGREES_C, kelvin)


BATHS = (
    ("the room", at(293.15)),
    ("a freezer", at(255.15)),
    ("dry ice", at(195.15)),
    ("liquid nitrogen", at(77.15)),
)  # warmest first
FREEZING = at(273.15)


def worth_of_chilling(fitting: Fitting, head_limit: Number, easy: Number | None) -> Table:
    """Head temperature needed with the ring out of each bath."""
    rows = [(words, bath, at(fitting.head_for(bath))) for words, bath in BATHS]

    def state(needed: Number) -> str:
        if needed > head_limit:
            return "fail"
        near = head_limit - needed < READING or easy is not None and needed > easy
        return "attention" if near else "pass"

    return Table(
        "What chilling the ring is worth",
        ("Ring out of", "at", "Head needs", "Left below the limit"),
        tuple(
            (words, bath, needed, constant("", "", WHOLE_KELVINS, float(head_limit) - float(needed)))
            for words, bath, needed in rows
        ),
        tuple(state(needed) for _, _, needed in rows),
    )


def plot(fitting: Fitting, ring_at: float, needed: Number, head_limit: Number) -> Plot:
    """Head temperature needed over the ring's, with the head's limit."""
    low, high = float(BATHS[-1][1]), max(REFERENCE, ring_at)
    curve = tuple((t, fitting.head_for(t)) for t in (low + (high - low) * i / 24 for i in range(25)))
    return Plot(
        "Head temperature needed, by the ring's",
        say(
            "Falls as the ring gets colder: {t} for this ring, {limit} is the limit of the head.",
            t=needed,
            limit=head_limit,
        ),
        Axis("Ring, when it goes in", DEGREES_C),
        Axis("Head", DEGREES_C),
        (
            Series("", curve),
            Series("limit of the head", ((low, float(head_limit)), (high, float(head_limit))), "limit"),
        ),
        ((ring_at, float(needed), "this ring"),),
    )
