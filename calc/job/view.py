"""A job as whoever checks its parts asks it: readings as entries of calculators, the worst of each size."""

import math

from calc.core.conformance import COVERAGE
from calc.core.result import Text, say
from calc.core.working import Form, Number
from calc.core.writing import to_unit
from calc.job.checking import sheet_of
from calc.job.contents import JobError
from calc.job.parts import groups
from calc.job.record import current
from calc.job.value import number
from calc.job.verdicts import Row
from calc.reference.engine import Feature

_STAGES = ("assembly", "finished")  # what was read as received tells nothing of the part as it goes in


class View:
    """A job with its verdicts (`rows`), asked by group ("rod"), feature ("rod.bend") and place ("3")."""

    def __init__(self, job: dict, rows: list[Row]):
        self.job, self.sheet, self.groups = job, sheet_of(job), groups(job)
        self.now, self.rows = current(job), {(row.feature, row.place): row for row in rows}

    def has(self, *wanted: str) -> bool:
        return all(group in self.groups for group in wanted)

    def any(self, *wanted: str) -> bool:
        return any(group in self.groups for group in wanted)

    def feature(self, id: str) -> Feature | None:
        return self.sheet.features.get(id) if self.sheet else None

    def text(self, id: str, place: str = "") -> str:
        """The reading that counts as an entry for a calculator, "" where there is none."""
        reading = next(
            (self.now[id, place, stage] for stage in _STAGES if (id, place, stage) in self.now), None
        )
        if reading is None:
            return ""
        try:
            value, u = number(self.job, reading)
        except JobError:
            return ""  # the sheet says what is wrong with it
        if value.form and {"part", "gauge"} & set(reading):  # a warm one at 20 °C
            return written(float(value), COVERAGE * u, value.form)
        return reading["text"]

    def judged(self, *ids: str) -> tuple[str, Text | None]:
        """What the job's readings of these features say: the gravest state, and how many are in order."""
        rows = [row for (feature, _), row in self.rows.items() if feature in ids and row.state and _told(row)]
        if not rows:
            return "", None
        states = [row.state for row in rows]
        gravest = next(state for state in ("fail", "unsure", "attention", "pass") if state in states)
        return gravest, say("{good} of {all} in order", good=states.count("pass"), all=len(rows))

    def unread(self, *ids: str) -> tuple[tuple[tuple[str, str], ...], int]:
        """The (feature, place) of these features at which no size is told and judged as it goes in, and how
        many places they have in all."""
        every = [(f.id, place) for f in map(self.feature, ids) if f for place in f.places or ("",)]
        rows = {spot: self.rows.get(spot) for spot in every}
        return tuple(spot for spot, row in rows.items() if not (row and row.state and _told(row))), len(every)

    def worst(self, *ids: str, places: tuple | None = None) -> Row | None:
        """The row of these features that lies nearest to, or farthest outside, its limits.

        Of these places where they are named; None where none is judged.
        """
        rows = [
            row
            for (id, place), row in self.rows.items()
            if id in ids
            and self.feature(id)
            and row.value is not None
            and _told(row)
            and (places is None or place in places)
        ]
        return min(rows, key=_margin, default=None)


def written(value: float, U: float | None, shape: Form) -> str:
    """A size that was worked out, or a limit, as an entry: nine decimals, nothing that floats leave."""
    unit = shape.metric
    text = f"{round(to_unit(value, unit), 9):.12g} {unit.symbol}".strip()
    return f"{text} ± {to_unit(U + float(unit.offset), unit):.3g} {unit.symbol}".strip() if U else text


def limits_written(low: Number | float | None, high: Number | float | None, shape: Form) -> dict[str, str]:
    """Limits as the entries `low` and `high`, empty where there is none."""
    return {
        name: "" if limit is None else written(float(limit), 0, shape)
        for name, limit in (("low", low), ("high", high))
    }


def _told(row: Row) -> bool:
    """Was it read, or can it be worked out, as it goes in?"""
    return row.finished is not None or row.assembly is not None


def _margin(row: Row) -> float:
    return min(
        float(row.value) - float(row.low) if row.low is not None else math.inf,
        float(row.high) - float(row.value) if row.high is not None else math.inf,
    )
