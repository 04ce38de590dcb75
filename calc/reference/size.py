"""One size of a part against the limits of its feature: as received, against wear; as finished and at
assembly, against the limits as made, at the undersize or oversize that lies nearest; with its doubt (ISO
14253-1)."""

from dataclasses import dataclass

from calc.core.conformance import (
    COVERAGE,
    DUST,
    ROUNDING,
    decide,
    deciding_share,
    percent,
    probability,
    standard,
)
from calc.core.conformance import margins as margins_of
from calc.core.result import Text, as_text, say
from calc.core.working import Number, constant
from calc.reference.engine import STANDARD, Feature, Step

CLEAN_UP = (
    0.03e-3  # m: what grinding or boring must find to take off, on the diameter; common practice, no source
)
Limits = tuple[float | None, float | None]  # lower and upper, None where there is none


@dataclass(frozen=True)
class Held:
    """A size and what it is worth. `value` is written so that it does not read as the limit that it has
    passed; `step` is the size that the part was made to. `state`: pass, fail, attention, unsure, or "" where
    the sheet has no limits. `worn`: past its wear limit. `limits`: those that it was held against (SI).
    """

    value: Number
    step: Step
    state: str
    words: Text
    do: Text
    worn: bool = False
    limits: Limits = (None, None)


def hold(
    feature: Feature,
    stage: str,
    value: Number,
    U: float | None = None,
    scale: float | None = None,
    parts: tuple[str, ...] | None = None,
) -> Held:
    """Hold a size against the limits of its feature that count at its stage (received, finished, assembly).

    `U` is its expanded doubt (k = 2, SI), None where none is told. Of a size that was worked out from others,
    `parts` are the stages that those were read at, and `scale` says how large they are (SI); None of one that
    was read itself.
    """
    scale = abs(float(value)) if scale is None else scale
    step = made_to(feature, float(value), stage, U)
    return _Size(feature, stage, value, U, scale, parts, step).held()


@dataclass(frozen=True)
class _Size:
    """A size on its way to be held; as `hold` takes it, with the size that the part was made to."""

    feature: Feature
    stage: str
    value: Number
    U: float | None
    scale: float
    parts: tuple[str, ...] | None
    step: Step

    def held(self) -> Held:
        limits = self._limits()
        if limits == (None, None):
            return self._told("", "No limits on the data sheet", "")
        decision, margin, side, unsure = _decide(float(self.value), self.U, limits, self.scale)
        if decision == "in":
            return self._right(self.value.held_to(*limits), margin)
        if self._fit_for_use(limits):
            return self._told(
                "attention",
                "Past its limit as made, within the wear limit",
                "A used part is in it. It may run; tell whoever owns the engine that little is left.",
                self.value if unsure else self.value.held_to(*limits),
            )
        if unsure:
            return self._unsure(*unsure)
        return self._past(self.value.held_to(*limits), margin, side)

    @property
    def _there(self) -> Feature:
        return self.feature.at(self.step)

    @property
    def _used(self) -> bool:
        """Is it worked out from parts, one of them only read as it was received?"""
        return self.parts is not None and "received" in self.parts

    def _limits(self) -> Limits:
        return limits_at(self._there, self.stage)

    def _fit_for_use(self, limits: Limits) -> bool:
        """Does a used part in it let it run, though it is past its limits as made?"""
        worn = usable(self._there)
        if self.stage == "received" or limits == worn or not self._used:
            return False
        return _decide(float(self.value), self.U, worn, self.scale)[0] == "in"

    def _told(
        self, state: str, words: str | Text, do: str | Text, value: Number | None = None, worn: bool = False
    ) -> Held:
        told = self.value if value is None else value
        return Held(told, self.step, state, as_text(words), as_text(do), worn, self._limits())

    def _difference(self, size: float) -> Number:
        return constant("", "", self.feature.form.difference.apart_from(0.0), size)

    def _right(self, value: Number, margin: float) -> Held:
        if self.stage == "received":
            do = "Use it again." if self.parts is None else "They may run together again."
            return self._told("pass", self._left(value, margin), do, value)
        within = "Within limits" + ("" if self.step == STANDARD else f" for {self.step.name}")
        words = (
            say(within + ", by {m}", m=self._difference(abs(margin)))
            if margin
            else within + ", on the limit itself"
        )
        if self.stage == "assembly":
            do = "Carry on."
        elif self.parts is None:
            do = "Ready to fit."
        else:
            do = "They go together, one of them as it was received." if self._used else "They go together."
        return self._told("pass", words, do, value)

    def _left(self, value: Number, margin: float) -> str | Text:
        """How much is left of a part as received, to its wear limit where it has one."""
        wear = self._there.wear
        left = abs(margin if wear is None else float(value) - wear)
        if left <= ROUNDING * self.scale:
            return "Fit for use, on its limit"
        limit = "limit" if wear is None else "wear limit"
        return say("Fit for use, {m} from its " + limit, m=self._difference(left))

    def _unsure(self, sure: float, share: float) -> Held:
        again = (
            "It lies on the limit, where no doubt is small enough to tell. Treat it as not right."
            if share < 0.01
            else say(
                "Measure again with less doubt: {share} of the present one would tell. Until then treat it as"
                " not right.",
                share=percent(share),
            )
        )
        right = "fit for use" if self.stage == "received" else "within its limits"
        return self._told("unsure", say("Only {sure} sure that it is " + right, sure=percent(sure)), again)

    def _past(self, value: Number, margin: float, side: int) -> Held:
        upwards = wears_upwards(self._there)
        worn_out = self.stage == "received" and self._there.wear is not None and side == upwards
        words = (
            "Worn past its limit by {m}"
            if worn_out
            else "{m} over the upper limit"
            if side
            else "{m} under the lower limit"
        )
        return self._told(
            "fail",
            say(words, m=self._difference(abs(margin))),
            _remedy(self.feature, self.stage, float(value), self.U, upwards, worn_out, self.parts or ()),
            value,
            worn_out,
        )


def _remedy(
    feature: Feature, stage: str, value: float, U: float | None, upwards: bool, worn_out: bool, parts: tuple
) -> str:
    """What to do about a size past its limit; `parts` are the stages of those that it was worked out from."""
    if not parts and _far_off(feature, value):
        return (
            "No such part is so far off: look at the engine, the place, the decimal point and the unit, and"
            " measure again."
        )
    if stage == "assembly":
        return "Do not bolt it up. Clean it and measure once more; if it stays so, ask the shop."
    if parts and stage == "finished" and "received" in parts:
        return (
            "A part in it was only read as received: read the one that will be fitted, or change one of them."
        )
    if parts:
        return "Measure the parts once more to rule out a slip, then change one of them."
    if stage == "finished":
        return (
            "Do not fit it. Measure once more to rule out a slip, then rework it, make it to the next size,"
            " or take another."
        )
    if worn_out:
        after = cleaned_up(feature, value, U, upwards)
        return (
            f"Re-machine it to {after.name}, or replace it."
            if after
            else "Replace it, or re-machine it as its page says."
        )
    if feature.wear is not None:
        return "Wear alone does not do this: measure once more, and find out what was done to it."
    return "Measure once more to rule out a slip, then re-machine or replace it."


def _decide(
    value: float, U: float | None, limits: Limits, scale: float
) -> tuple[str, float, int, tuple[float, float] | None]:
    """in, out or cannot tell; how far inside of the limit that decides (negative outside), which side that is
    (1 the upper one), and for what cannot be told the probability of lying within and the share of the doubt
    that would tell."""
    low, high = limits
    dust = ROUNDING * max(scale, *(abs(x) for x in limits if x is not None))
    margins = margins_of(value, low, high, dust)
    margin, side = min((margin, i) for i, margin in enumerate(margins) if margin is not None)
    below, above = (standard(margin, (U or 0.0) / COVERAGE) for margin in margins)
    decision = decide(below, above)
    return (
        decision,
        margin,
        side,
        (probability(below, above), deciding_share(below, above)) if decision == "cannot tell" else None,
    )


def limits_at(feature: Feature, stage: str) -> Limits:
    """Lower and upper limit that count at a stage: of a part as received, those of one that has run."""
    made = (feature.low, feature.high)
    return usable(feature) if stage == "received" or made == (None, None) else made


def usable(feature: Feature) -> Limits:
    """Lower and upper limit of a part that has run: on the side of wear, its wear limit."""
    if feature.wear is None:
        return feature.low, feature.high
    return (feature.low, feature.wear) if wears_upwards(feature) else (feature.wear, feature.high)


def cleaned_up(feature: Feature, value: float, U: float | None, upwards: bool) -> Step | None:
    """The nearest size to which a worn part can be machined and still finds something to take off everywhere;
    None where there is none."""
    worst = value + ((U or 0.0) + CLEAN_UP) * (1 if upwards else -1)
    for step in feature.steps:
        limit = feature.at(step).low if upwards else feature.at(step).high
        if (
            limit is not None
            and (step.offset > 0) == upwards
            and (limit - worst) * (1 if upwards else -1) >= -DUST
        ):
            return step
    return None


def made_to(feature: Feature, value: float, stage: str, U: float | None = None) -> Step:
    """Which of its sizes a part was made to: the nearest; of one that may be worn, the nearest that wear can
    have brought there. One that the reading's doubt leaves open goes before one that the reading has left
    behind, and so does one that the reading misses by less than a part as made may differ: a stem a hair too
    thick is no worn oversize."""
    upwards = wears_upwards(feature)
    limit = feature.low if upwards else feature.high
    if stage != "received" or feature.wear is None or limit is None:
        return feature.nearest(value)
    past = [(limit + step.offset - value) * (1 if upwards else -1) for step in (STANDARD, *feature.steps)]
    worn = [
        (far, step) for far, step in zip(past, (STANDARD, *feature.steps)) if far <= ROUNDING * abs(value)
    ]
    near = feature.nearest(value)
    chosen = max(worn, key=lambda pair: pair[0])[1] if worn else near
    if feature.low is not None and feature.high is not None:
        made_within = feature.high - feature.low
        if _outside(feature.at(near), value) <= made_within < _outside(feature.at(chosen), value):
            chosen = near

    def decision(step: Step) -> str:
        return _decide(value, U, usable(feature.at(step)), abs(value))[0]

    if not U or decision(chosen) != "out":
        return chosen
    open_ = [step for step in (STANDARD, *feature.steps) if decision(step) == "cannot tell"]
    return min(open_, key=lambda step: abs(value - feature.nominal - step.offset), default=chosen)


def _outside(feature: Feature, value: float) -> float:
    """How far a size lies outside of what may be used, 0 within."""
    low, high = usable(feature)
    return max(0.0 if low is None else low - value, 0.0 if high is None else value - high, 0.0)


def wears_upwards(feature: Feature) -> bool:
    """Does wear make it larger, as it does a bore or a clearance?"""
    return feature.wear is not None and feature.wear >= (
        feature.nominal if feature.high is None else feature.high
    )


def _far_off(feature: Feature, value: float) -> bool:
    """Is it a twentieth or more away from every size of a part whose own limits lie within a twentieth? Then
    it was hardly read there."""
    limits = [x for x in (feature.low, feature.high, feature.wear) if x is not None]
    near = abs(feature.nominal) / 20
    return all(abs(x - feature.nominal) < near for x in limits) and all(
        abs(value - feature.nominal - step.offset) > near for step in (STANDARD, *feature.steps)
    )


def limits_in_words(feature: Feature, low: float | None, high: float | None) -> Text:
    """The limits as a person says them: 54.985 mm to 55.000 mm, at most 0.03 mm."""

    def told(x: float) -> Number:
        return constant("", feature.label, feature.form, x)

    if low is None:
        return as_text("") if high is None else say("at most {high}", high=told(high))
    if high is None:
        return say("at least {low}", low=told(low))
    return say("{low} to {high}", low=told(low), high=told(high))
