"""One thing to order, and because of which readings."""

from dataclasses import dataclass
from typing import NamedTuple, Protocol

from calc.core.result import Text, say
from calc.core.working import Number
from calc.job.sizes import Sizes
from calc.reference.engine import Feature


@dataclass(frozen=True)
class Order:
    """`state`: pass (the sizes say so), unsure (their doubt leaves it open), attention or fail (see `do`).

    `worn`: it is renewed because it is worn, not bought to another part's size.
    """

    part: str
    size: Text
    places: tuple
    because: Text
    state: str
    do: Text
    worn: bool = False


class Ordered(Protocol):
    """What a station may have to order."""

    def rows(self, sizes: Sizes, before: tuple[Order, ...]) -> list[Order]:
        """What the job's sizes say of it; `before` is what is ordered already."""


class Because(NamedTuple):
    """A size that an order stands on, and the stage that it was read at."""

    value: Number
    stage: str


def because(feature: Feature, read: list[Because]) -> Text:
    """'Main journal 54.741 mm to 54.744 mm' of the places that the row names.

    As received, where that is all there is.
    """
    values = sorted((each.value.shown(feature.form.decimals) for each in read), key=float)
    received = ", as received" if {each.stage for each in read} == {"received"} else ""
    if values[0].text() == values[-1].text():
        return say("{label} {value}" + received, label=feature.label, value=values[0])
    return say("{label} {least} to {most}" + received, label=feature.label, least=values[0], most=values[-1])
