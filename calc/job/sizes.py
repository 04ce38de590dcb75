"""The sizes that a job holds, as numbers: the readings that count, and what follows from them."""

import math
from typing import NamedTuple

from calc.core.conformance import decide, margins, standard
from calc.core.working import Number
from calc.job.checking import sheet_of
from calc.job.contents import JobError
from calc.job.record import current
from calc.job.value import number
from calc.reference.engine import Feature

STAGES = ("finished", "assembly", "received")  # which reading counts


class Read(NamedTuple):
    """A reading that counts: its value, its standard uncertainty (SI), and the stage that it was taken at."""

    value: Number
    u: float
    stage: str


class Sizes:
    """The readings that count, by feature and place."""

    def __init__(self, job: dict):
        self.job, self.sheet, self.read = job, sheet_of(job), {}
        for (feature, place, stage), reading in current(job).items():
            if self.feature(feature):
                try:
                    self.read[feature, place, stage] = Read(*number(job, reading), stage)
                except JobError:
                    continue  # the sheet says what is wrong with it

    def feature(self, id: str) -> Feature | None:
        return self.sheet.features.get(id) if self.sheet else None

    def best(self, feature: str, place: str, stages: tuple[str, ...] = STAGES) -> Read | None:
        """The reading that counts, or None."""
        return next(
            (self.read[feature, place, stage] for stage in stages if (feature, place, stage) in self.read),
            None,
        )

    def places(self, feature: Feature, stages: tuple[str, ...] = STAGES) -> list[str]:
        return [place for place in feature.places or ("",) if self.best(feature.id, place, stages)]

    def worked(
        self, feature: Feature, place: str, stages: tuple[str, ...] = STAGES
    ) -> tuple[float, float] | None:
        """What follows from other sizes, where all are read: (value, standard uncertainty), or None."""
        value, square = 0.0, 0.0
        for times, id in feature.terms:
            term = self.feature(id)
            found = self.best(id, place if term and term.places else "", stages)
            if found is None:
                return None
            value, square = value + times * float(found.value), square + (times * found.u) ** 2
        return value, math.sqrt(square)


def decision(value: float, u: float, low: float | None, high: float | None) -> str:
    """'in', 'out' or 'cannot tell' (ISO 14253-1)."""
    return decide(*(standard(margin, u) for margin in margins(value, low, high)))
