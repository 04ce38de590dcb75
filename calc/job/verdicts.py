"""Which sizes of a job are right: each reading against its limits on the engine's data sheet, with its doubt
(ISO 14253-1).

As received, a size is held against its wear limit: may the part be used again? As finished and at assembly,
against the limits as made, at the undersize or oversize that lies nearest. What follows from other sizes (a
clearance) is worked out place by place where all of them are measured, its doubt from theirs (GUM, first
order), with readings taken as independent.
"""

from dataclasses import dataclass

from calc.core.conformance import COVERAGE, ROUNDING
from calc.core.result import Text, Verdict, as_text, say
from calc.core.working import Number, constant
from calc.job.checking import sheet_of
from calc.job.contents import STAGES, JobError
from calc.job.record import counting, current
from calc.job.value import number
from calc.reference.engine import STANDARD, Feature, Step
from calc.reference.size import hold, limits_in_words

CHANGED = (  # where record.sheet_changed
    "The data sheet's limits were changed since the last reading: the verdicts here are by the new ones."
)

_BEFORE = {
    "received": ("received",),
    "finished": ("finished", "received"),
    "assembly": ("assembly", "finished", "received"),
}


@dataclass(frozen=True)
class Judged:
    """A size at one stage and what it is worth. `reading` is None where it was worked out; `readings` are
    then what it was worked out from. `value` is None where it cannot be read. `U` is the expanded doubt (k =
    2, SI), None where none is told; `untold` says that at least one reading tells none. `state`: pass, fail,
    attention, unsure, or "" where there is nothing to judge by. `worn`: received past its wear limit.
    """

    stage: str
    reading: dict | None
    readings: tuple
    value: Number | None
    U: float | None
    untold: bool
    step: Step
    state: str
    words: Text
    do: Text
    worn: bool = False

    @property
    def verdict(self) -> Verdict | None:
        return Verdict(self.state, self.words, self.do) if self.state else None


@dataclass(frozen=True)
class Row:
    """A feature at one place. Limits are those as made and the wear limit, at the size (`step`) that the part
    has now; `limit` says the former in words. What counts is the last stage that has a size: its `value`,
    `U`, `state`, `words`, `do`.
    """

    feature: str
    place: str
    label: str
    low: Number | None
    high: Number | None
    wear: Number | None
    limit: Text
    received: Judged | None
    finished: Judged | None
    assembly: Judged | None

    @property
    def last(self) -> Judged:
        last = self.assembly or self.finished or self.received
        assert last, "a row has a size"
        return last

    value = property(lambda self: self.last.value)
    U = property(lambda self: self.last.U)
    step = property(lambda self: self.last.step)
    state = property(lambda self: self.last.state)
    words = property(lambda self: self.last.words)
    do = property(lambda self: self.last.do)

    @property
    def was_worn(self) -> bool:
        """Was it past its wear limit as received, and has another size since? The part was re-machined then,
        or is another one."""
        return bool(self.received and self.received.worn and self.last is not self.received)

    @property
    def derived(self) -> bool:
        return self.last.reading is None


def judge(job: dict) -> list[Row]:
    """A row for every feature and place that was read or can be worked out, in the order of the sheet."""
    sheet, read = sheet_of(job), current(job)
    features = sheet.features if sheet else {}
    places = {
        id: dict.fromkeys(feature.places or ("",)) if feature.terms else {}
        for id, feature in features.items()
    }
    for (
        feature,
        place,
        _,
    ) in read:  # in the sheet's order already; places that the sheet does not know come last
        places.setdefault(feature, {})[place] = None
    rows = (_row(job, read, features, id, place) for id in places for place in places[id])
    return [row for row in rows if row]


def judge_one(job: dict, id: str, place: str) -> Row | None:
    """The row of one feature and place, None where it has no size."""
    sheet = sheet_of(job)
    return _row(job, counting(job), sheet.features if sheet else {}, id, place)


def _row(job, read, features, id, place) -> Row | None:
    feature = features.get(id)
    found: dict[str, Judged | None] = {}
    for stage in STAGES:
        if reading := read.get((id, place, stage)):
            found[stage] = _judge_reading(job, feature, stage, reading)
        elif feature and feature.terms:
            found[stage] = _work_out(job, read, features, feature, place, stage)
    sizes = {stage: size for stage, size in found.items() if size}
    if not sizes:
        return None
    if feature is None:
        return Row(
            id, place, id, None, None, None, as_text(""), **{stage: sizes.get(stage) for stage in STAGES}
        )
    if "finished" in sizes and "assembly" in sizes:
        sizes["assembly"] = _against(sizes["finished"], sizes["assembly"])
    there = feature.at(list(sizes.values())[-1].step)
    return Row(
        id,
        place,
        feature.label,
        _limit(there, "low"),
        _limit(there, "high"),
        _limit(there, "wear"),
        limits_in_words(there, there.low, there.high),
        **{stage: sizes.get(stage) for stage in STAGES},
    )


def _judge_reading(job, feature, stage, reading) -> Judged:
    def unjudged(words, value=None, U=None, untold=True):
        return Judged(stage, reading, (reading,), value, U, untold, STANDARD, "", as_text(words), as_text(""))

    try:
        value, u = number(job, reading)
    except JobError as error:
        return unjudged(str(error).rstrip("."))
    told = (value, COVERAGE * u or None, not u)
    if feature is None:
        return unjudged(
            (
                f"{job['engine']} has no data sheet in this handbook"
                if sheet_of(job) is None
                else f"Not on the data sheet of {job['engine']}"
            ),
            *told,
        )
    return _judged(feature, stage, reading, (reading,), *told, abs(float(value)))


def _work_out(job, read, features, feature, place, stage) -> Judged | None:
    """What follows from other sizes, as it stood at that stage: of each part the reading of the stage, else
    that of the one before."""
    weights: dict = {}

    def gather(feature, place, times):
        for weight, id in feature.terms:
            part = features[id]
            where = place if part.places else ""
            found = next(
                (read[id, where, before] for before in _BEFORE[stage] if (id, where, before) in read), None
            )
            if found:
                weights.setdefault(id, [found, 0.0])[1] += times * weight
            elif not part.terms or not gather(part, where, times * weight):
                return False
        return True

    if not gather(feature, place, 1.0) or all(reading["stage"] != stage for reading, _ in weights.values()):
        return None
    value = square = scale = 0.0
    untold = False
    for reading, weight in weights.values():
        try:
            size, u = number(job, reading)
        except JobError:
            return None
        value, square, scale = (
            value + weight * float(size),
            square + (weight * u) ** 2,
            scale + abs(weight * float(size)),
        )
        untold = untold or not u
    return _judged(
        feature,
        stage,
        None,
        tuple(reading for reading, _ in weights.values()),
        constant("", feature.label, feature.form, value),
        COVERAGE * square**0.5 or None,
        untold,
        scale,
    )


def _judged(feature: Feature, stage, reading, readings, value, U, untold, scale) -> Judged:
    """A value against the limits that count at its stage; `scale` is how large the sizes are that it was
    worked out from."""
    held = hold(
        feature, stage, value, U, scale, None if reading is not None else tuple(r["stage"] for r in readings)
    )
    return Judged(
        stage, reading, readings, held.value, U, untold, held.step, held.state, held.words, held.do, held.worn
    )


def _against(shop: Judged, there: Judged) -> Judged:
    """The assembler's size, with a word where it does not go together with the shop's: apart by more than
    both doubts make."""
    if (
        there.state != "pass"
        or shop.value is None
        or there.value is None
        or there.value.form is None
        or not (shop.U or there.U)
        or shop.readings == there.readings
    ):
        return there
    apart = abs(float(shop.value) - float(there.value))
    if apart <= ((shop.U or 0) ** 2 + (there.U or 0) ** 2) ** 0.5 + ROUNDING * abs(float(shop.value)):
        return there
    return Judged(
        there.stage,
        there.reading,
        there.readings,
        there.value,
        there.U,
        there.untold,
        there.step,
        "attention",
        say(
            "{d} from what the shop read, more than both doubts make",
            d=constant("", "", there.value.form.difference.apart_from(0.0), apart),
        ),
        as_text(
            "Within limits by this reading, but one of the two is wrong: measure again, part and gauge at the"
            " same temperature."
        ),
    )


def _limit(feature: Feature, what: str) -> Number | None:
    return None if getattr(feature, what) is None else feature.number(what)
