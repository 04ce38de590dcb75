"""Which sizes of a job are right: each reading against its limits on the engine's data sheet, with its doubt (ISO 14253-1).

As received, a size is held against its wear limit: may the part be used again? As finished and at assembly, against the limits as
made, at the undersize or oversize that lies nearest. What follows from other sizes (a clearance) is worked out place by place where
all of them are measured, its doubt from theirs (GUM, first order), with readings taken as independent.
"""
from dataclasses import dataclass

from calc.conformance import COVERAGE, DUST, decide, deciding_share, margins as margins_of, percent, probability, standard
from calc.engine import STANDARD, Feature, Step
from calc.job.record import STAGES, JobError, current, number, sheet_of
from calc.result import Text, Verdict, as_text, say
from calc.working import Number, given

CHANGED = "The data sheet's limits were changed since the last reading: the verdicts here are by the new ones."  # where record.sheet_changed

CLEAN_UP = 0.03e-3  # m: what grinding or boring must find to take off, on the diameter; common practice, no source
_DUST = 1e-13  # of the sizes that went in: what floats may leave of two equal sizes
_BEFORE = {"received": ("received",), "finished": ("finished", "received"), "assembly": ("assembly", "finished", "received")}


@dataclass(frozen=True)
class Judged:
    """A size at one stage and what it is worth. `reading` is None where it was worked out; `readings` are then what it was worked
    out from. `value` is None where it cannot be read. `U` is the expanded doubt (k = 2, SI), None where none is told; `untold`
    says that at least one reading tells none. `state`: pass, fail, attention, unsure, or "" where there is nothing to judge by.
    `worn`: received past its wear limit.
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
    """A feature at one place. Limits are those as made and the wear limit, at the size (`step`) that the part has now; `limit` says
    the former in words. What counts is the last stage that has a size: its `value`, `U`, `state`, `words`, `do`.
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
        return self.assembly or self.finished or self.received

    value = property(lambda self: self.last.value)
    U = property(lambda self: self.last.U)
    step = property(lambda self: self.last.step)
    state = property(lambda self: self.last.state)
    words = property(lambda self: self.last.words)
    do = property(lambda self: self.last.do)

    @property
    def was_worn(self) -> bool:
        """Was it past its wear limit as received, and has another size since? The part was re-machined then, or is another one."""
        return bool(self.received and self.received.worn and self.last is not self.received)

    @property
    def derived(self) -> bool:
        return self.last.reading is None


def judge(job: dict) -> list[Row]:
    """A row for every feature and place that was read or can be worked out, in the order of the sheet."""
    sheet, read = sheet_of(job), current(job)
    features = sheet.features if sheet else {}
    places = {id: dict.fromkeys(feature.places or ("",)) if feature.terms else {} for id, feature in features.items()}
    for feature, place, _ in read:  # in the sheet's order already; places that the sheet does not know come last
        places.setdefault(feature, {})[place] = None
    rows = (_row(job, read, features, id, place) for id in places for place in places[id])
    return [row for row in rows if row]


def _row(job, read, features, id, place) -> Row | None:
    feature, sizes = features.get(id), {}
    for stage in STAGES:
        if reading := read.get((id, place, stage)):
            sizes[stage] = _judge_reading(job, feature, stage, reading)
        elif feature and feature.terms:
            sizes[stage] = _work_out(job, read, features, feature, place, stage)
    sizes = {stage: size for stage, size in sizes.items() if size}
    if not sizes:
        return None
    if feature is None:
        return Row(id, place, id, None, None, None, as_text(""), *(sizes.get(stage) for stage in STAGES))
    if "finished" in sizes and "assembly" in sizes:
        sizes["assembly"] = _against(sizes["finished"], sizes["assembly"])
    there = feature.at(list(sizes.values())[-1].step)
    return Row(id, place, feature.label, *(_limit(there, what) for what in ("low", "high", "wear")), limits_in_words(there, there.low, there.high), *(sizes.get(stage) for stage in STAGES))


def _judge_reading(job, feature, stage, reading) -> Judged:
    def unjudged(words, value=None, U=None, untold=True):
        return Judged(stage, reading, (reading,), value, U, untold, STANDARD, "", as_text(words), as_text(""))
    try:
        value, u = number(job, reading)
    except JobError as error:
        return unjudged(str(error).rstrip("."))
    told = (value, COVERAGE * u or None, not u)
    if feature is None:
        return unjudged(f"{job['engine']} has no data sheet in this handbook" if sheet_of(job) is None else f"Not on the data sheet of {job['engine']}", *told)
    return _judged(feature, stage, reading, (reading,), *told, abs(float(value)))


def _work_out(job, read, features, feature, place, stage) -> Judged | None:
    """What follows from other sizes, as it stood at that stage: of each part the reading of the stage, else that of the one before."""
    weights = {}

    def gather(feature, place, times):
        for weight, id in feature.terms:
            part = features[id]
            where = place if part.places else ""
            found = next((read[id, where, before] for before in _BEFORE[stage] if (id, where, before) in read), None)
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
        value, square, scale = value + weight * float(size), square + (weight * u) ** 2, scale + abs(weight * float(size))
        untold = untold or not u
    return _judged(feature, stage, None, tuple(reading for reading, _ in weights.values()), given("", feature.label, feature.form, value), COVERAGE * square ** 0.5 or None, untold, scale)


def _judged(feature: Feature, stage, reading, readings, value, U, untold, scale) -> Judged:
    """A value against the limits that count at its stage; `scale` is how large the sizes are that it was worked out from."""
    step = made_to(feature, float(value), stage, U)
    there = feature.at(step)
    upwards = wears_upwards(there)
    made, worn = (there.low, there.high), usable(there)
    if stage == "received" or made == (None, None):
        made = worn

    alone = reading is not None  # else parts that run together
    used = not alone and any(r["stage"] == "received" for r in readings)

    def told(state, words, do, worn=False):
        return Judged(stage, reading, readings, value, U, untold, step, state, as_text(words), as_text(do), worn)
    if made == (None, None):
        return told("", "No limits on the data sheet", "")
    decision, margin, side, unsure = _decide(float(value), U, made, scale)
    value, size = value if decision == "cannot tell" else value.held_to(*made), given("", "", feature.form.difference.apart_from(0.0), abs(margin))
    if decision == "in":
        if stage == "received":
            left = abs(margin if there.wear is None else float(value) - there.wear)
            return told("pass", "Fit for use, on its limit" if left <= _DUST * scale else
                        say("Fit for use, {m} from its " + ("limit" if there.wear is None else "wear limit"), m=given("", "", feature.form.difference.apart_from(0.0), left)),
                        "Use it again." if alone else "They may run together again.")
        words = "Within limits" + ("" if step == STANDARD else f" for {step.name}")
        return told("pass", say(words + ", by {m}", m=size) if margin else words + ", on the limit itself",
                    "Carry on." if stage == "assembly" else "Ready to fit." if alone else "They go together, one of them as it was received." if used else "They go together.")
    if stage != "received" and made != worn and used and _decide(float(value), U, worn, scale)[0] == "in":
        return told("attention", "Past its limit as made, within the wear limit", "A used part is in it. It may run; tell whoever owns the engine that little is left.")
    if decision == "cannot tell":
        sure, share = unsure
        again = "It lies on the limit, where no doubt is small enough to tell. Treat it as not right." if share < 0.01 else say(
            "Measure again with less doubt: {share} of the present one would tell. Until then treat it as not right.", share=percent(share))
        return told("unsure", say("Only {sure} sure that it is " + ("fit for use" if stage == "received" else "within its limits"), sure=percent(sure)), again)
    worn_out = stage == "received" and there.wear is not None and side == upwards
    return told("fail", say("Worn past its limit by {m}" if worn_out else "{m} over the upper limit" if side else "{m} under the lower limit", m=size),
                _remedy(feature, stage, float(value), U, upwards, worn_out, readings if reading is None else ()), worn_out)


def _remedy(feature: Feature, stage: str, value: float, U: float | None, upwards: bool, worn_out: bool, parts: tuple) -> str:
    """What to do about a size past its limit; `parts` are the readings that it was worked out from."""
    if not parts and _far_off(feature, value):
        return "No such part is so far off: look at the decimal point, the unit and the place, and measure again."
    if stage == "assembly":
        return "Do not bolt it up. Clean it and measure once more; if it stays so, ask the shop."
    if parts and stage == "finished" and any(r["stage"] == "received" for r in parts):
        return "A part in it was only read as received: read the one that will be fitted, or change one of them."
    if parts:
        return "Measure the parts once more to rule out a slip, then change one of them."
    if stage == "finished":
        return "Do not fit it. Measure once more to rule out a slip, then rework it, or make it to the next size."
    if worn_out:
        after = cleaned_up(feature, value, U, upwards)
        return f"Re-machine it to {after.name}, or replace it." if after else "Replace it, or re-machine it as its page says."
    if feature.wear is not None:
        return "Wear alone does not do this: measure once more, and find out what was done to it."
    return "Measure once more to rule out a slip, then re-machine or replace it."


def _against(shop: Judged, there: Judged) -> Judged:
    """The assembler's size, with a word where it does not go together with the shop's: apart by more than both doubts make."""
    if there.state != "pass" or shop.value is None or not (shop.U or there.U) or shop.readings == there.readings:
        return there
    apart = abs(float(shop.value) - float(there.value))
    if apart <= ((shop.U or 0) ** 2 + (there.U or 0) ** 2) ** 0.5 + _DUST * abs(float(shop.value)):
        return there
    return Judged(there.stage, there.reading, there.readings, there.value, there.U, there.untold, there.step, "attention",
                  say("{d} from what the shop read, more than both doubts make", d=given("", "", there.value.form.difference.apart_from(0.0), apart)),
                  as_text("Within limits by this reading, but one of the two is wrong: measure again, part and gauge at the same temperature."))


def _decide(value, U, limits, scale) -> tuple:
    """in, out or cannot tell; how far inside of the limit that decides (negative outside), which side that is (1 the upper one), and
    for what cannot be told the probability of lying within and the share of the doubt that would tell."""
    low, high = limits
    dust = _DUST * max(scale, *(abs(x) for x in limits if x is not None))
    margins = margins_of(value, low, high, dust)
    side = min((i for i in (0, 1) if margins[i] is not None), key=lambda i: margins[i])
    below, above = (standard(margin, (U or 0.0) / COVERAGE) for margin in margins)
    decision = decide(below, above)
    return decision, margins[side], side, (probability(below, above), deciding_share(below, above)) if decision == "cannot tell" else None


def usable(feature: Feature) -> tuple:
    """Lower and upper limit of a part that has run: on the side of wear, its wear limit."""
    if feature.wear is None:
        return feature.low, feature.high
    return (feature.low, feature.wear) if wears_upwards(feature) else (feature.wear, feature.high)


def cleaned_up(feature: Feature, value: float, U: float | None, upwards: bool) -> Step | None:
    """The nearest size to which a worn part can be machined and still finds something to take off everywhere; None where there is none."""
    worst = value + ((U or 0.0) + CLEAN_UP) * (1 if upwards else -1)
    for step in feature.steps:
        limit = feature.at(step).low if upwards else feature.at(step).high
        if limit is not None and (step.offset > 0) == upwards and (limit - worst) * (1 if upwards else -1) >= -DUST:
            return step
    return None


def made_to(feature: Feature, value: float, stage: str, U: float | None = None) -> Step:
    """Which of its sizes a part was made to: the nearest; of one that may be worn, the nearest that wear can have brought there. One
    that the reading's doubt leaves open goes before one that the reading has left behind."""
    upwards = wears_upwards(feature)
    limit = feature.low if upwards else feature.high
    if stage != "received" or feature.wear is None or limit is None:
        return feature.nearest(value)
    past = [(limit + step.offset - value) * (1 if upwards else -1) for step in (STANDARD, *feature.steps)]
    worn = [(far, step) for far, step in zip(past, (STANDARD, *feature.steps)) if far <= _DUST * abs(value)]
    chosen = max(worn, key=lambda pair: pair[0])[1] if worn else feature.nearest(value)

    def decision(step):
        return _decide(value, U, usable(feature.at(step)), abs(value))[0]
    if not U or decision(chosen) != "out":
        return chosen
    open_ = [step for step in (STANDARD, *feature.steps) if decision(step) == "cannot tell"]
    return min(open_, key=lambda step: abs(value - feature.nominal - step.offset), default=chosen)


def wears_upwards(feature: Feature) -> bool:
    """Does wear make it larger, as it does a bore or a clearance?"""
    return feature.wear is not None and feature.wear >= (feature.nominal if feature.high is None else feature.high)


def _far_off(feature: Feature, value: float) -> bool:
    """Is it a tenth or more away from every size of a part whose own limits lie within a tenth? Then it was hardly read there."""
    limits = [x for x in (feature.low, feature.high, feature.wear) if x is not None]
    tenth = abs(feature.nominal) / 10
    return all(abs(x - feature.nominal) < tenth for x in limits) and all(abs(value - feature.nominal - step.offset) > tenth for step in (STANDARD, *feature.steps))


def limits_in_words(feature: Feature, low: float | None, high: float | None) -> Text:
    """The limits as a person says them: 54.985 mm to 55.000 mm, at most 0.03 mm."""
    low, high = (None if x is None else given("", feature.label, feature.form, x) for x in (low, high))
    if low is None:
        return as_text("") if high is None else say("at most {high}", high=high)
    return say("at least {low}", low=low) if high is None else say("{low} to {high}", low=low, high=high)


def _limit(feature: Feature, what: str) -> Number | None:
    return None if getattr(feature, what) is None else feature.number(what)
