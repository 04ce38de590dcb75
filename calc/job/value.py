"""What a reading of a job says, as a number."""

from calc.core.conformance import COVERAGE
from calc.core.reading import EntryError, quoted
from calc.core.result import Refused
from calc.core.working import Number, constant, form
from calc.declare.warm import WARM
from calc.job.checking import feature_of
from calc.job.contents import JobError
from calc.job.texts import cooled, decimals_in, entry_of, kind_of
from calc.reference.materials import MATERIALS


def number(job: dict, reading: dict) -> tuple[Number, float]:
    """What a reading says: its value (SI, at 20 °C where it was warm) and its standard uncertainty (0 where
    no doubt is told).

    Raises JobError where the text is not of the feature's kind, and where a warm reading cannot be brought to
    20 °C.
    """
    feature, where = feature_of(job, reading["feature"]), name_in(job, reading["feature"], reading["place"])
    if feature:
        kind, shape, label = feature.form.kind, feature.form, feature.label
    else:
        likely = kind_of(reading["text"])
        if likely is None:
            raise JobError(f"{where}: {quoted(reading['text'])} cannot be read.")
        kind = likely
        shape, label = form(kind, decimals_in(reading["text"], kind)), reading["feature"]
    beside = {part: reading[part] for part in WARM if part in reading}
    if not beside:
        try:
            entry = entry_of(reading["text"], kind)
        except EntryError as error:
            raise JobError(f"{where}: {error.problem}; {error.accepted}.") from None
        return constant("", label, shape, entry.value), (entry.doubt or 0.0) / COVERAGE
    of = reading.get("of", "")
    if of not in MATERIALS:
        raise JobError(
            f"{where} was read warm, and {quoted(of)} is no material of this handbook; give one of"
            f" {', '.join(MATERIALS)}."
        )
    if kind.dims != (1, 0, 0, 0):
        raise JobError(
            f"{where} tells a temperature, which only a length is brought to 20 °C from; leave it out."
        )
    try:
        return cooled(label, shape, of, reading["text"], tuple(beside.items()))
    except Refused as refused:
        raise JobError(str(refused.errors[0]).replace(label, where, 1)) from None


def name_in(job: dict, feature: str, place: str) -> str:
    known = feature_of(job, feature)
    return f"{known.label if known else feature} {place}".strip()
