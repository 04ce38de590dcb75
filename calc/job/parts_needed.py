"""What to order by size: shells, rings, guides, shims, inserts, from the sizes that a job holds.

A size is named only where the readings say it. Where their doubt straddles two sizes, or none fits, the row says so instead.
"""

import math
import re
from dataclasses import dataclass

from calc.core.conformance import COVERAGE, decide, margins, standard
from calc.core.result import Text, say
from calc.core.working import constant
from calc.job.checking import sheet_of
from calc.job.contents import JobError
from calc.job.record import current, done, number
from calc.reference.engine import STANDARD, Feature
from calc.reference.size import cleaned_up, made_to, usable, wears_upwards

_STAGES = ("finished", "assembly", "received")  # which reading counts


@dataclass(frozen=True)
class Part:
    """One thing to order. `state`: pass (the sizes say so), unsure (their doubt leaves it open), attention or fail (see `do`)."""

    part: str
    size: Text
    places: tuple
    because: Text
    state: str
    do: Text


@dataclass(frozen=True)
class _Fit:
    """A part that is sold to the size of what it goes on or into. `always`: renewed with every overhaul, so standard ones are ordered
    too; `together`: all places are machined to one size."""

    part: str
    by: str
    ordered: str
    housing: str = ""
    always: bool = False
    together: bool = False


FITS = (
    _Fit(
        "Main bearing shells",
        "crank.main_journal",
        "crankcase.main_shell_wall",
        "crankcase.main_housing",
        True,
        True,
    ),
    _Fit("Rod bearing shells", "crank.rod_journal", "rod.shell_wall", "rod.big_end_bore", True, True),
    _Fit("Pistons with rings", "cylinder.bore", "piston.diameter", together=True),
    _Fit("Small-end bushes", "rod.small_end_bore", "rod.bush_outside"),
    _Fit("Seat rings, intake", "head.seat_pocket_intake", "head.seat_ring_outside_intake"),
    _Fit("Seat rings, exhaust", "head.seat_pocket_exhaust", "head.seat_ring_outside_exhaust"),
    _Fit("Valve guides", "head.guide_hole", "guide.outside"),
    _Fit("Valves, intake", "guide.bore", "valve.stem_intake"),
    _Fit("Valves, exhaust", "guide.bore", "valve.stem_exhaust"),
    _Fit("Lifters", "crankcase.lifter_bore", "lifter.body"),
)

# part, the size that it sets, the shim, and whether more of it makes that size larger (1) or smaller (−1)
SHIMS = (
    ("Shims under the cylinders", "crankcase.deck_height", "cylinder.shim", 1),
    ("End-float shims", "crank.end_float", "crank.end_float_shim", -1),
    ("Shims under the springs", "spring.installed_height", "spring.shim", -1),
)

# What is renewed, not re-machined, once it is past its wear limit.
RENEWED = {
    "head.valve_margin_intake": "Valves, intake",
    "head.valve_margin_exhaust": "Valves, exhaust",
    "valve.stem_intake": "Valves, intake",
    "valve.stem_exhaust": "Valves, exhaust",
    "guide.bore": "Valve guides",
    "spring.free_length": "Valve springs",
    "spring.seat_load": "Valve springs",
    "spring.open_load": "Valve springs",
    "piston.diameter": "Pistons with rings",
    "piston.pin": "Piston pins",
    "piston.ring_gap": "Piston rings",
    "rod.bush_bore": "Small-end bushes",
    "cam.journal": "Camshaft",
    "cam.lobe_lift": "Camshaft",
    "lifter.body": "Lifters",
}

_THREAD = re.compile(r"\bM\d+(?:\.\d+)?(?:\s?[x×]\s?\d+(?:\.\d+)?)?|\b(?:\d+/\d+|\d+)-\d+\b")


def parts_needed(job: dict) -> list[Part]:
    """What the job's sizes say is to be ordered, in the order in which an engine is built. Empty where there is nothing to say."""
    sheet = sheet_of(job)
    sizes = _Sizes(job, sheet) if sheet else None
    rows = []
    if sheet:
        for fit in FITS:
            if fit.by in sheet.features and fit.ordered in sheet.features:
                rows += _fitted(sizes, fit)
        for shim in SHIMS:
            if shim[1] in sheet.features and shim[2] in sheet.features:
                rows += _shims(sizes, *shim)
        rows += _renewed(
            sizes, {(row.part, place) for row in rows if row.state == "pass" for place in row.places}
        )
    return rows + _inserts(job)


class _Sizes:
    """The readings that count, by feature and place."""

    def __init__(self, job, sheet):
        self.sheet, self.read = sheet, {}
        for (feature, place, stage), reading in current(job).items():
            if feature in sheet.features:
                try:
                    self.read[feature, place, stage] = number(job, reading)
                except JobError:
                    continue  # the sheet says what is wrong with it

    def best(self, feature: str, place: str, stages=_STAGES):
        """(Number, standard uncertainty, stage) of the reading that counts, or None."""
        for stage in stages:
            if (feature, place, stage) in self.read:
                return *self.read[feature, place, stage], stage
        return None

    def places(self, feature: str, stages=_STAGES) -> list:
        return [
            place
            for place in self.sheet.features[feature].places or ("",)
            if self.best(feature, place, stages)
        ]

    def worked(self, feature: Feature, place: str, stages=_STAGES):
        """What follows from other sizes, where all of them are read: (value, standard uncertainty), or None."""
        value, square = 0.0, 0.0
        for times, id in feature.terms:
            found = self.best(id, place if self.sheet.features[id].places else "", stages)
            if found is None:
                return None
            value, square = value + times * float(found[0]), square + (times * found[1]) ** 2
        return value, math.sqrt(square)


def _decision(value: float, u: float, low, high) -> str:
    return decide(*(standard(margin, u) for margin in margins(value, low, high)))


# --- Parts sold to the size of what they go on or into -----------------------------------------


def _fitted(sizes: _Sizes, fit: _Fit) -> list[Part]:
    by, ordered = sizes.sheet.features[fit.by], sizes.sheet.features[fit.ordered]
    shaft = any(step.offset < 0 for step in by.steps)
    found = {}
    for place in sizes.places(fit.by):
        if (ordered.places and place not in ordered.places) or sizes.best(
            fit.ordered, place, ("finished", "assembly")
        ):
            continue  # not of this kind (an exhaust guide takes no intake valve), or at hand and measured
        value, u, stage = sizes.best(fit.by, place)
        fits = [
            (step, decision)
            for step in (STANDARD, *by.steps)
            if (decision := _decision(float(value), u, *_limits(by.at(step), stage))) != "out"
        ]
        sure = next((step for step, decision in fits if decision == "in"), None)
        state = "pass" if sure else "unsure" if fits else "fail"
        step = sure or (fits[0][0] if len(fits) == 1 else tuple(step for step, _ in fits))
        found[place] = (
            step,
            state,
            (
                value
                if fits
                else value.held_to(*_limits(by.at(made_to(by, float(value), stage, COVERAGE * u)), stage))
            ),
            u,
            stage,
        )
    rows = []
    machined = [
        place for place, (step, state, *_, stage) in found.items() if state == "fail" and stage == "received"
    ]
    if machined:  # worn: the size that it still cleans up to
        past = [place for place in found if found[place][4] == "received"] if fit.together else machined
        rows += _after_machining(by, fit, past, found, shaft)
        found = {place: row for place, row in found.items() if place not in past}
    outer = _housings(sizes, fit, found)
    for step, state, outside in dict.fromkeys((*row[:2], outer[place]) for place, row in found.items()):
        alike = [place for place, row in found.items() if (*row[:2], outer[place]) == (step, state, outside)]
        if state != "pass" or step.offset or fit.always:
            rows.append(_row(sizes, fit, by, ordered, step, state, outside, alike, found))
    return rows


def _limits(feature: Feature, stage: str) -> tuple:
    """What a size must lie within: as made, or, as received, no worse than worn."""
    return usable(feature) if stage == "received" else (feature.low, feature.high)


def _row(sizes, fit, by, ordered, step, state, outer, places, found) -> Part:
    because = _because(by, [(place, found[place][2], found[place][4]) for place in places])
    if state == "fail":
        return Part(
            fit.part,
            say("no size fits"),
            tuple(places),
            because,
            "fail",
            say(
                "It lies between the sizes that are made. Measure again; if it is so, machine to the next"
                " size before anything is ordered."
            ),
        )
    if isinstance(step, tuple):
        return Part(
            fit.part,
            say(" or ".join(s.name for s in step)),
            tuple(places),
            because,
            "unsure",
            say("Cannot tell which: measure again with less doubt before ordering."),
        )
    if state == "unsure":
        return Part(
            fit.part,
            say("{name}, if it is in limits", name=step.name),
            tuple(places),
            because,
            "unsure",
            say(
                "Cannot tell whether it is within the limits of that size: measure again with less doubt"
                " before ordering."
            ),
        )
    name, offset = step.name, step.offset
    if fit.housing:  # a shell's wall is half of what journal and housing leave
        name += f", outside {outer.name}" if outer.offset else ""
        offset = (outer.offset - step.offset) / 2
    size = constant("", ordered.label, ordered.form, ordered.nominal + offset)
    do = say("{what} {size}.", what=ordered.label, size=size)
    if not fit.housing:
        return Part(fit.part, say("{name}", name=name), tuple(places), because, "pass", do)
    leaves = _leaves(sizes, fit, by, float(size), places)
    if leaves is None:
        return Part(fit.part, say("{name}", name=name), tuple(places), because, "pass", do)
    worst, words = leaves
    return Part(
        fit.part,
        say("{name}", name=name),
        tuple(places),
        because,
        worst,
        say("{do} {words}", do=do, words=words),
    )


def _housings(sizes, fit, places) -> dict:
    """{place: the size that its housing was bored to}, perhaps in an earlier life. One that was not read is as the others are, standard
    where those differ."""
    housing = sizes.sheet.features.get(fit.housing)
    if housing is None:
        return dict.fromkeys(places, STANDARD)
    steps = {
        place: made_to(housing, float(found[0]), found[2], COVERAGE * found[1])
        for place in places
        if (found := sizes.best(fit.housing, place))
    }
    usual = set(steps.values()).pop() if len(set(steps.values())) == 1 else STANDARD
    return {place: steps.get(place, usual) for place in places}


def _leaves(sizes, fit, by, wall: float, places):
    """Which clearances shells of the nominal wall leave, as (state, words), where journal and housing are both read."""
    clearance = next(
        (
            f
            for f in sizes.sheet.features.values()
            if {id for _, id in f.terms} == {fit.by, fit.ordered, fit.housing}
        ),
        None,
    )
    if clearance is None:
        return None
    values, decisions = [], []
    for place in places:
        housing, journal = (sizes.best(id, place, ("finished", "assembly")) for id in (fit.housing, fit.by))
        if housing and journal:
            values.append(float(housing[0]) - 2 * wall - float(journal[0]))
            decisions.append(
                _decision(values[-1], math.hypot(housing[1], journal[1]), clearance.low, clearance.high)
            )
    if not values:
        return None
    least, most = (constant("", clearance.label, clearance.form, end) for end in (min(values), max(values)))
    if "out" in decisions:
        least, most = (end.held_to(clearance.low, clearance.high) for end in (least, most))
    words = (
        say("Leaves {least} clearance", least=least)
        if least.text() == most.text()
        else say("Leaves {least} to {most} clearance", least=least, most=most)
    )
    if "out" in decisions:
        return "attention", say(
            "{words}: outside the limits with walls of that size, so measure the walls before closing.",
            words=words,
        )
    if "cannot tell" in decisions:
        return "attention", say("{words}: near a limit, so measure the walls before closing.", words=words)
    return "pass", say("{words}.", words=words)


def _after_machining(by, fit, places, found, shaft) -> list[Part]:
    """What fits once worn parts are machined: to the nearest size that the most worn of them still cleans up to."""
    rows = []
    for group in [places] if fit.together else [[place] for place in places]:
        value, U = (min if shaft else max)(
            ((float(found[place][2]), COVERAGE * found[place][3]) for place in group),
            key=lambda told: told[0] + (-1 if shaft else 1) * told[1],
        )
        step = cleaned_up(by, value, U, not shaft)
        because = _because(by, [(place, found[place][2], "received") for place in group])
        if step:
            low, high = (constant("", by.label, by.form, end) for end in (by.at(step).low, by.at(step).high))
            rows.append(
                Part(
                    fit.part,
                    say("{name}, once machined to it", name=step.name),
                    tuple(group),
                    because,
                    "attention",
                    say(
                        "Worn past its limit. The nearest size that still cleans up: {low} to {high}. Order"
                        " after it is machined and measured.",
                        low=low,
                        high=high,
                    ),
                )
            )
        else:
            rows.append(
                Part(
                    fit.part,
                    say("no size fits"),
                    tuple(group),
                    because,
                    "fail",
                    say(
                        "Worn past its limit, and past every size that is made: it is done, or is built up by"
                        " a specialist."
                    ),
                )
            )
    return rows


def _because(feature: Feature, read: list) -> Text:
    """'Main journal 54.741 mm to 54.744 mm' of the places that the row names, as received where that is all there is."""
    values = sorted((value.shown(feature.form.decimals) for _, value, _ in read), key=float)
    received = ", as received" if {stage for *_, stage in read} == {"received"} else ""
    if values[0].text() == values[-1].text():
        return say("{label} {value}" + received, label=feature.label, value=values[0])
    return say("{label} {least} to {most}" + received, label=feature.label, least=values[0], most=values[-1])


# --- Shims ---------------------------------------------------------------------------------------


def _shims(sizes: _Sizes, part: str, set_by: str, shim: str, way: int) -> list[Part]:
    target, made = sizes.sheet.features[set_by], sizes.sheet.features[shim]
    if target.low is None or target.high is None:
        return []
    there = sorted({made.nominal, *(made.nominal + step.offset for step in made.steps)})
    rows = []
    for place in target.places or ("",):
        stages = ("assembly", "finished")  # what was before the work says nothing of the shims after it
        read = sizes.best(set_by, place, stages)
        if read:
            value, u = float(read[0]), read[1]
        elif target.terms and (found := sizes.worked(target, place, stages)):
            value, u = found
        else:
            continue
        now = _decision(value, u, target.low, target.high)
        if now == "in":
            continue
        told = constant("", target.label, target.form, value)
        because = _because(
            target,
            [(place, told if now == "cannot tell" else told.held_to(target.low, target.high), "finished")],
        )
        short = way * (target.nominal - value)  # how much thicker the shims must be in all
        own = (place,) if place in made.places else () if target.places else made.places or ("",)
        fitted = (
            [float(found[0]) for where in own if (found := sizes.best(shim, where, stages))]
            if read and way < 0
            else []
        )
        rows.append(
            _shim(
                part,
                target,
                made,
                there,
                fitted,
                (place,) if place else (),
                because,
                value,
                u,
                way,
                short,
                now,
            )
        )
    return _together(rows)


def _shim(part, target, made, there, fitted, places, because, value, u, way, short, now) -> Part:
    def size(x):
        return constant("", made.label, made.form, x)

    if fitted:  # measured with shims that are known: one of them is exchanged
        choices = [
            (abs(short - (new - old)), old, new)
            for old in fitted
            for new in there
            if _decision(value + way * (new - old), u, target.low, target.high) == "in"
        ]
        if choices:
            _, old, new = min(choices)
            return Part(
                part,
                say("{new} in place of {old}", new=size(new), old=size(old)),
                places,
                because,
                "unsure" if now == "cannot tell" else "pass",
                say("Measure again once it is in."),
            )
    elif target.id == "crank.end_float":
        ends = sorted(
            (way * (target.high - value), way * (target.low - value))
        )  # how much thicker they may be
        least, most = (0.0, max(map(abs, ends))) if ends[0] < 0 < ends[1] else sorted(map(abs, ends))
        words = "thicker" if short > 0 else "thinner"
        return Part(
            part,
            say("{by} " + words + " in all", by=size(abs(short))),
            places,
            because,
            "unsure" if now == "cannot tell" else "pass",
            say(
                "By {least} to {most}. There are {list}: measure those fitted, and exchange.",
                least=size(least),
                most=size(most),
                list=_list(there, size),
            ),
        )
    else:
        choices = [
            (abs(short - new), new)
            for new in there
            if _decision(value + way * new, u, target.low, target.high) == "in"
        ]
        if choices:
            _, new = min(choices)
            if now == "cannot tell":
                return Part(
                    part,
                    say("{new} or none", new=size(new)),
                    places,
                    because,
                    "unsure",
                    say("Cannot tell whether one is needed: measure again with less doubt before ordering."),
                )
            return Part(
                part,
                say("{new}", new=size(new)),
                places,
                because,
                "pass",
                say("Brings it to {then}.", then=constant("", target.label, target.form, value + way * new)),
            )
    if short <= 0:
        return Part(
            part,
            say("none helps"),
            places,
            because,
            "fail",
            say(
                "It would have to be thinner than nothing: {by} too much. Machine or exchange what makes"
                " it so.",
                by=size(abs(short)),
            ),
        )
    between = [
        new for new in there if _decision(value + way * new, u, target.low, target.high) == "cannot tell"
    ]
    if between:
        return Part(
            part,
            say("{list}", list=_list(between, size, " or ")),
            places,
            because,
            "unsure",
            say(
                "Cannot tell whether that brings it into its limits: measure again with less doubt before"
                " ordering."
            ),
        )
    return Part(
        part,
        say("{by}, which there is not", by=size(short)),
        places,
        because,
        "fail",
        say("There are {list}: have one made, or exchange what makes it so.", list=_list(there, size)),
    )


def _list(sizes, size, last=", ") -> Text:
    return say(
        last.join(f"{{s{i}}}" for i in range(len(sizes))), **{f"s{i}": size(x) for i, x in enumerate(sizes)}
    )


def _together(rows: list[Part]) -> list[Part]:
    """Rows of the same part and size as one."""
    made = {}
    for row in rows:
        made.setdefault((row.part, row.size.plain(), row.state), []).append(row)
    return [
        (
            alike[0]
            if len(alike) == 1
            else Part(
                alike[0].part,
                alike[0].size,
                tuple(place for row in alike for place in row.places),
                say(
                    "; ".join(f"{{r{i}}}" for i in range(len(alike))),
                    **{f"r{i}": row.because for i, row in enumerate(alike)},
                ),
                alike[0].state,
                alike[0].do,
            )
        )
        for alike in made.values()
    ]


# --- What is worn out, and what the words say ---------------------------------------------------


def _renewed(sizes: _Sizes, ordered: set) -> list[Part]:
    """Parts past their wear limit, but for those of `ordered`, {(part, place)}, which are bought new to another part's size already."""
    found = {}
    for id, part in RENEWED.items():
        feature = sizes.sheet.features.get(id)
        if feature is None or feature.wear is None:
            continue
        for place in sizes.places(id, ("received",)):
            if (part, place) in ordered or sizes.best(id, place, ("finished", "assembly")):
                continue
            value, u, _ = sizes.best(id, place, ("received",))
            step = made_to(feature, float(value), "received", COVERAGE * u)
            wear = feature.at(step).wear
            decision = _decision(float(value), u, *((None, wear) if wears_upwards(feature) else (wear, None)))
            if decision != "in":
                found.setdefault((part, id, decision, step), []).append(
                    (place, value.held_to(*usable(feature.at(step))) if decision == "out" else value)
                )
    rows = []
    for (part, id, decision, step), read in found.items():
        feature = sizes.sheet.features[id].at(step)
        rows.append(
            Part(
                part,
                say("new, {name}", name=step.name) if step.offset else say("new"),
                tuple(place for place, _ in read if place),
                _because(feature, [(place, value, "received") for place, value in read]),
                "pass" if decision == "out" else "unsure",
                (
                    say("Past the wear limit of {wear}.", wear=feature.number("wear"))
                    if decision == "out"
                    else say(
                        "Cannot tell whether it is past the wear limit of {wear}: measure again with less"
                        " doubt.",
                        wear=feature.number("wear"),
                    )
                ),
            )
        )
    return rows


def _inserts(job: dict) -> list[Part]:
    """Thread inserts, where the words of what was done name a thread with them."""
    standing = [line.text for line in done(job) if not line.struck]
    return [
        Part(
            "Thread insert",
            say("{thread}", thread=thread),
            (),
            say("As done: {line}", line=line),
            "attention",
            say("Order it unless it is in already."),
        )
        for line in standing
        if re.search(r"\binserts?\b", line, re.IGNORECASE)
        for thread in dict.fromkeys(_THREAD.findall(line))
    ]
