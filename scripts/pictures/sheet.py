"""What a picture takes from an engine's data sheet: sizes to draw by, and those that it shows."""

from __future__ import annotations

from calc.core.drawing import Dimension, Point
from calc.core.kinds import KINDS
from calc.core.reading import in_si
from calc.core.result import Text, say
from calc.core.working import Number, constant, form
from calc.reference.engine import Engine

LENGTH = KINDS["length"]


class Sheet:
    """An engine's sheet. It remembers which sizes it has `shown`, so that the caption can say whose they
    are."""

    def __init__(self, engine: Engine):
        self.engine = engine
        self.name = f"{engine.name} (invented)" if engine.invented else engine.name
        self.shown: list[str] = []

    def mm(self, id: str, otherwise: float, what: str = "nominal") -> float:
        """A size in millimetres to draw by; another where the sheet has none."""
        number = self.number(id, what)
        return otherwise if number is None else float(number) * 1000

    def number(self, id: str, what: str = "nominal") -> Number | None:
        """A size of the sheet, if it has it."""
        feature = self.engine.features.get(id)
        return None if feature is None or getattr(feature, what) is None else feature.number(what)

    def show(self, id: str, what: str = "nominal") -> Number | None:
        """A size that the picture tells."""
        number = self.number(id, what)
        if number is not None:
            self.shown.append(id)
        return number

    def tell(self, id: str, what: str, template: str) -> tuple[Text, ...]:
        """A line of words with a size of the sheet in it, `{size}`; none where the sheet has it not."""
        number = self.show(id, what)
        return () if number is None else (say(template, size=number),)

    def dimension(
        self, id: str, start: Point, end: Point, away: float = 0.0, name: str = "", what: str = "nominal"
    ) -> tuple[Dimension, ...]:
        """A dimension line with a size of the sheet; none where the sheet has it not."""
        number = self.show(id, what)
        return () if number is None else (Dimension(start, end, number, away, name),)


def practice(text: str) -> Number:
    """A length of common practice, such as `0.5 mm`, with the decimals that are typed."""
    number = text.split()[0]
    return constant("", text, form(LENGTH, len(number.partition(".")[2])), in_si(text, LENGTH))
