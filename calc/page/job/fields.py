"""Where the fields of a calculator and a job meet: what the job fills in, and the ways to keep what is typed.

A field that measures a feature of the job's engine stands for one place of it: a grid's rows name theirs, all others take the place
that is chosen once for the calculator. A result that is itself a size of the part (a rod's bend) is kept likewise, once all that it is
worked out from is the reader's own; its name here is that of the output behind "=".
"""

from dataclasses import dataclass
from math import floor, log10

from calc.core.kinds import TEMPERATURE
from calc.core.working import Number, form, origins
from calc.core.writing import to_unit, write
from calc.declare.calculator import Output, evaluate
from calc.declare.choice import WHICH, Choice, for_chosen
from calc.declare.grid import Grid
from calc.declare.quantity import Quantity
from calc.declare.standing import Standing
from calc.declare.taken import MISSED
from calc.declare.warm import WARM
from calc.job import record
from calc.job.checking import sheet_of
from calc.job.contents import STAGES, JobError
from calc.job.verdicts import judge
from calc.page.html import Html, children, el
from calc.page.job.pieces import REASONS, SHORT, at_field, chip, count, day, job_of, made, reading, with_unit
from calc.reference.engine import Feature
from calc.stations.index import find

DEGREES = form(TEMPERATURE, 0)


@dataclass(frozen=True)
class Spot:
    """A field, a cell of a grid, or a result, that measures a feature, and which place of it it stands for (None: the reader has not said)."""

    entry: str
    declared: Quantity | Output
    feature: Feature
    place: str | None

    @property
    def field(self) -> str:
        """The name of the field, or of the grid that it is a cell of."""
        return self.entry.partition(".")[0]

    def __hash__(self):
        return hash(self.entry)


def _spots(calculator, sheet, chosen: str, features: dict) -> list[Spot]:
    """`features` names what a field measures where its calculator does not say it, as on a check of one certain size."""
    if sheet is None:
        return []
    spots = []
    for declared in calculator.inputs:
        if isinstance(declared, Grid):
            for (r, c), cell in declared.cells.items():
                feature = sheet.features.get(declared.columns[c].feature)
                if feature and declared.rows[r] in feature.places and feature.form.kind == cell.form.kind:
                    spots.append(Spot(cell.name, cell, feature, declared.rows[r]))
        elif declared.measured and (named := features.get(declared.name, declared.feature)):
            known = [f for f in _twins(sheet, named) if f.form.kind == declared.form.kind]
            found = next((f for f in known if _place(f, chosen) is not None), known[0] if known else None)
            if found:
                spots.append(Spot(declared.name, declared, found, _place(found, chosen)))
    return spots


def _results(calculator, sheet, chosen: str) -> list[Spot]:
    """The results of a calculator that are sizes of the part."""
    known = (
        [
            (output, sheet.features[output.feature])
            for output in calculator.outputs
            if output.feature in sheet.features
        ]
        if sheet
        else []
    )
    return [
        Spot(f"={output.key}", output, feature, _place(feature, chosen))
        for output, feature in known
        if feature.form.kind == output.form.kind
    ]


def _behind(calculator, result: Number) -> list[str]:
    """The measured inputs that a result was worked out from, in the order of the form."""
    names = {number.key for number in origins([result])}
    return [i.name for i in calculator.inputs if i.name in names and isinstance(i, Quantity) and i.measured]


def measured(calculator, sheet, features: dict) -> set[str]:
    """The features that a calculator's fields measure, at whatever place."""
    return {f.id for spot in _spots(calculator, sheet, "", features) for f in _twins(sheet, spot.feature.id)}


def _twins(sheet, id: str) -> list[Feature]:
    """A calculator for any valve names both sizes, stem_{valve}; a check of one of them names the intake's."""
    named = (
        [for_chosen(id, {"valve": kind}) for kind in WHICH["valve"]]
        if "{" in id
        else [id, id.replace("_intake", "_exhaust")]
    )
    return [sheet.features[name] for name in dict.fromkeys(named) if name in sheet.features]


def _place(feature: Feature, chosen: str) -> str | None:
    """The place of a feature for what was chosen on the calculator: valve "2 intake" belongs to cylinder "2"."""
    if not feature.places:
        return ""
    return next((place for place in (chosen, chosen.partition(" ")[0]) if place in feature.places), None)


def _choices(calculator, sheet, features: dict) -> list[str]:
    """The places to choose from on a calculator, outside its grids: of the feature that has most, and what others have beside."""
    found = {
        f.places
        for spot in _spots(calculator, sheet, "", features) + _results(calculator, sheet, "")
        if "." not in spot.entry
        for f in _twins(sheet, spot.feature.id)
        if f.places
    }
    choices: list[str] = []
    for places in sorted(found, key=len, reverse=True):
        # cylinders 1 to 4 are chosen with their valves
        choices += [p for p in places if p not in choices and p not in {c.partition(" ")[0] for c in choices}]
    return (
        sorted(choices, key=lambda c: c.partition(" ")[0])
        if all(c[:1].isdigit() for c in choices)
        else choices
    )


def fields(asked: dict) -> dict:
    """What a job says to a calculator: a strip above its form; what stands below each field; and the texts to fill in, by entry.

    {"html": {"strip": …, name of the field, grid or result: …}, "fill": {name of the field or grid: {"texts": {entry: text}, "at_once": …}},
    "results": {name of the result: [names of the fields that must hold the reader's own]}, "place": chosen, "engine": the job's,
    "said": {entry: {"words", "stage"}} of what it fills in, "placed": [names of the fields that are read at the place that was chosen]}
    """
    job, calculator = job_of(asked["job"]), find(asked["calculator"])
    features = asked.get("features", {})
    choices = _choices(calculator, sheet_of(job), features)
    chosen = choices[0] if len(choices) == 1 else asked["place"] if asked["place"] in choices else ""
    spots = _spots(calculator, sheet_of(job), chosen, features)
    results = _results(calculator, sheet_of(job), chosen)
    current = record.current(job)
    held = {
        spot: {
            stage: current[key]
            for stage in STAGES
            if (key := (spot.feature.id, spot.place, stage)) in current
        }
        for spot in spots + results
    }
    rows = {(row.feature, row.place): row for row in judge(job)} if any(held.values()) else {}
    by_field: dict = {}
    for spot in spots:
        by_field.setdefault(spot.field, []).append(spot)
    html = {"strip": _strip(job, asked, choices, chosen) if spots or results else ""}
    fill, said = {}, {}
    for name, found in by_field.items():
        filled = {spot: _last(held[spot]) for spot in found if held[spot]}
        if filled:
            texts = {
                entry: text for spot, one in filled.items() for entry, text in _entries(spot, one).items()
            }
            said |= {
                spot.entry: {
                    "words": ", ".join(
                        filter(None, (SHORT[one["stage"]], day(one["at"], asked["now"]), one["by"]))
                    ),
                    "stage": one["stage"],
                }
                for spot, one in filled.items()
            }
            declared = calculator.input[name]
            fill[name] = (
                {"texts": texts, "at_once": True}
                if not isinstance(declared, Grid)
                else _grid(declared, texts)
            )
        judged = [(spot, rows[key]) for spot in filled if (key := (spot.feature.id, spot.place)) in rows]
        which = choices if found[0].place is None else []
        html[name] = children(
            _origin(job, filled, judged, asked["now"]) if filled else None,
            *_keeping(job, found, held, which, chosen, asked["stages"]),
        )
    example, behind = evaluate(calculator) if results else None, {}
    for spot in results:
        behind[spot.entry] = _behind(calculator, example.outputs[spot.declared.key])
        html[spot.entry] = children(
            (
                _there(job, held[spot], rows.get((spot.feature.id, spot.place)), asked["now"])
                if held[spot]
                else None
            ),
            el(
                "p",
                f"{spot.feature.label} can be kept for the job once all of it is read:"
                f" {', '.join(calculator.input[name].label for name in behind[spot.entry])}. ",
                class_="job-when-partly job-keep-words",
            ),
            *_keeping(job, [spot], held, choices if spot.place is None else [], chosen, asked["stages"]),
        )
    return {
        "html": html,
        "fill": fill,
        "results": behind,
        "place": chosen,
        "engine": job["engine"],
        "said": said,
        "placed": _placed(spots, results, behind),
    }


def _placed(spots: list, results: list, behind: dict) -> list[str]:
    """The fields whose readings are of one place: what was read at another one does not belong there. A grid's rows name theirs."""
    own = [spot.field for spot in spots if spot.feature.places and "." not in spot.entry]
    return list(
        dict.fromkeys(own + [name for spot in results if spot.feature.places for name in behind[spot.entry]])
    )


def _keeping(job: dict, found: list, held: dict, which: list, chosen: str, stages) -> tuple:
    """The ways to keep what is typed, which show once it is; and the place for what speaks against it."""
    return (
        el(
            "div",
            el(
                "p",
                "Keep for ",
                el("strong", job["name"]),
                ": ",
                ", ".join(dict.fromkeys(spot.feature.label for spot in found)),
                class_="job-keep-words",
            ),
            (
                _which(which, chosen)
                if which
                else el("div", *_offers(found, held, stages), class_="job-buttons")
            ),
            class_="job-when-typed",
        ),
        el("p", class_="message", data_job_message=True, role="alert", hidden=True),
    )


def _there(job: dict, held: dict, row, now: str) -> Html:
    """What the job has of a result."""
    one = _last(held)
    return el(
        "p",
        "The job has ",
        reading(job, one),
        f" ({', '.join(filter(None, (SHORT[one['stage']], day(one['at'], now), one['by'])))}). ",
        chip(row.state) if row and row.state else None,
        class_="job-from",
    )


def _last(held: dict) -> dict:
    """The reading of the latest stage: what the part is now."""
    return held[next(stage for stage in reversed(STAGES) if stage in held)]


def _entries(spot: Spot, reading: dict) -> dict:
    return {
        spot.entry: reading["text"],
        **{
            f"{spot.entry}.{part}": reading[part]
            for part in WARM
            if part in reading and part in spot.declared.parts
        },
    }


def _grid(declared: Grid, texts: dict) -> dict:
    """A grid is filled at once where the job's readings make whole rows: rows of which it knows nothing are then left empty, so that
    no number of the example stands among sizes of the job."""
    rows = {
        r: [declared.cells[r, c] for c in range(len(declared.columns))] for r in range(len(declared.rows))
    }
    known = [r for r, cells in rows.items() if any(cell.name in texts for cell in cells)]
    whole = len(known) >= declared.least and all(
        cell.name in texts or cell.optional for r in known for cell in rows[r]
    )
    return {
        "texts": {cell.name: "" for cells in rows.values() for cell in cells} | texts if whole else texts,
        "at_once": whole,
    }


def _strip(job: dict, asked: dict, choices: list, chosen: str) -> Html:
    """Above the form: which job, which place, whose initials."""
    job_page = (
        el("a", job["name"], href=f"{asked['root']}job/")
        if asked["kind"] == "job"
        else el("strong", job["name"])
    )
    initials = el(
        "label",
        "Your initials ",
        el(
            "input",
            type="text",
            data_job_initials=True,
            maxlength=12,
            autocomplete="off",
            autocapitalize="characters",
        ),
        class_="job-initials",
    )
    return el(
        "div",
        el("p", "Job: " if asked["kind"] == "job" else "Sheet: ", job_page, class_="job-strip-name"),
        _which(choices, chosen) if len(choices) > 1 else None,
        None if asked["by"] else initials,
        class_="job-strip",
    )


def _which(choices: list, chosen: str) -> Html:
    return el(
        "div",
        el("span", "Which one?", class_="job-which-words"),
        *(
            el(
                "button",
                place,
                type="button",
                data_job_place=place,
                aria_pressed="true" if place == chosen else "false",
            )
            for place in choices
        ),
        class_="job-which",
        role="group",
        aria_label="Which one is measured",
    )


def _origin(job: dict, filled: dict, judged: list, now: str) -> Html:
    """Where what stands in the field comes from, and whether it is right; where something else was typed, the way back to it."""
    readings = list(filled.values())
    last = [r for r in job["readings"] if any(r is one for one in readings)][
        -1
    ]  # the order of the record: clocks are set back
    one = readings[0] if len(filled) == 1 else None
    stages = " and ".join(dict.fromkeys(SHORT[r["stage"]] for r in readings))
    who = ", ".join(
        filter(
            None,
            (
                stages,
                day(last["at"], now),
                " and ".join(list(dict.fromkeys(r["by"] for r in readings if r["by"]))[:3]),
            ),
        )
    )
    told = [(spot, row) for spot, row in judged if row.state and (one or row.state != "pass")]
    return children(
        el(
            "div",
            el(
                "p",
                "From the job ",
                el("strong", job["name"]),
                ": ",
                None if one else f"{count(len(filled), 'reading')}, ",
                who,
                ".",
                class_="job-from",
            ),
            *(
                el(
                    "p",
                    chip(row.state),
                    " ",
                    None if one else f"{spot.place}: ",
                    row.words,
                    ". ",
                    row.do,
                    class_=f"job-judged job-is-{row.state}",
                )
                for spot, row in told
            ),
            class_="job-when-filled",
        ),
        el(
            "div",
            el(
                "p",
                "The job has ",
                el("span", one["text"], class_="num") if one else count(len(filled), "reading"),
                f" ({who}). ",
            ),
            el("button", "Fill it in" if one else "Fill them in", type="button", data_job_fill=True),
            class_="job-when-other",
        ),
    )


def _offers(found: list, held: dict, stages: list):
    """The ways to keep what is typed: at a tap where it is the first, with a reason where there is one already."""
    place = f", {found[0].place}" if len(found) == 1 and found[0].place else ""
    for stage in stages:
        there = [spot for spot in found if stage in held[spot]]
        if len(there) < len(found):
            yield el("button", f"Keep {STAGES[stage]}{place}", type="button", data_job_keep=stage)
        if there:
            yield el(
                "details",
                el("summary", f"Correct {STAGES[stage]}{place}"),
                el("p", "Why is it another size now? The one before stays in the history."),
                el(
                    "div",
                    *(
                        el("button", reason, type="button", data_job_keep=stage, data_job_why=reason)
                        for reason in REASONS
                    ),
                    class_="job-buttons",
                ),
                data_keep=f"correct-{stage}",
                class_="job-correct",
            )


def keep(asked: dict) -> dict:
    """What was typed into a calculator's field, or into the cells of a grid (`typed`), kept as readings of its features."""
    job, calculator = job_of(asked["job"]), find(asked["calculator"])
    known = _spots(calculator, sheet_of(job), asked["place"], asked.get("features", {})) + _results(
        calculator, sheet_of(job), asked["place"]
    )
    spots = [s for s in known if s.entry in asked["typed"]]
    if not spots:
        raise at_field(
            asked["typed"][0],
            "nothing",
            f"What is typed here is no size on the data sheet of {job['engine']}; it cannot be kept for this"
            " job.",
        )
    before = record.current(job)
    for spot in spots:
        why = asked["why"] if (spot.feature.id, spot.place, asked["stage"]) in before else ""
        job = (_kept_result if isinstance(spot.declared, Output) else _kept)(
            job, calculator, spot, asked, why
        )
    return made(job)


def _kept_result(job: dict, calculator, spot: Spot, asked: dict, why: str) -> dict:
    """A result as it is shown, with the doubt that follows from those of the readings; never rounded onto a limit that it does not lie on."""
    declared, entries, system = spot.declared, asked["entries"], asked["system"]
    if spot.place is None:
        raise at_field(
            spot.entry,
            "place",
            f"{declared.label}: say first which one it is: {', '.join(spot.feature.places)}.",
        )
    behind = _behind(calculator, evaluate(calculator).outputs[declared.key])
    if left := [calculator.input[name].label for name in behind if not entries.get(name, "").strip()]:
        raise at_field(
            spot.entry,
            "empty",
            f"{declared.label}: {' and '.join(left)} {'is' if len(left) == 1 else 'are'} still to be read;"
            " enter what you read before you keep it.",
        )
    found = evaluate(calculator, entries, system, Standing(sheet_of(job), spot.place))
    if declared.key not in found.outputs:
        raise at_field(
            spot.entry,
            "empty",
            f"{declared.label}: {found.verdict.headline.plain(system)}"
            f" {'is' if len(found.next) == 1 else 'are'} still to be read; enter what you read before you"
            " keep it.",
        )
    value, shape, sized = (
        found[declared.key],
        found.outputs[declared.key].form,
        spot.feature.at(spot.feature.nearest(found[declared.key])),
    )
    for limit in (sized.low, sized.high, sized.wear):
        if limit is not None and limit != value and shape.write(limit, system) == shape.write(value, system):
            shape = shape.apart_from(limit)
    text = shape.write(value, system)
    if U := found.doubts.get(declared.key, 0.0):
        unit = declared.form.difference.unit(system)
        text += f" ± {write(U, unit, max(0, 1 - floor(log10(to_unit(U, unit)))))}"
    return _added(job, spot, asked, with_unit(text, declared.form, system, declared.label, spot.entry), why)


def _kept(job: dict, calculator, spot: Spot, asked: dict, why: str) -> dict:
    declared, entries = spot.declared, asked["entries"]
    text = entries.get(spot.entry, "")
    if not text.strip():
        raise at_field(
            spot.entry, "empty", f"{declared.label}: is empty; type what you read before you keep it."
        )
    if spot.place is None:
        raise at_field(
            spot.entry,
            "place",
            f"{declared.label}: say first which one it is: {', '.join(spot.feature.places)}.",
        )
    beside = {
        part: told for part in declared.parts if (told := entries.get(f"{spot.entry}.{part}", "")).strip()
    }
    standing, chosen, open_ = Standing(sheet_of(job), spot.place), {}, set()
    for choice in (i for i in calculator.inputs if isinstance(i, Choice)):
        told = standing.unread(choice, chosen)  # what the job's own sheet says, where the reader says nothing
        chosen[choice.name] = entries.get(choice.name) or told.value
        if not entries.get(choice.name) and told.origin is MISSED:
            open_.add(choice.name)
    declared.take(
        {"": text, **beside}, asked["system"], chosen
    )  # what the calculator refuses is refused here
    warm = {
        part: with_unit(told, DEGREES, asked["system"], WARM[part], f"{spot.entry}.{part}")
        for part, told in beside.items()
    }
    if warm and declared.of in open_:
        raise at_field(
            spot.entry,
            "empty",
            f"{declared.label}: say first what it is made of ({calculator.input[declared.of].label}); without"
            " that a warm reading cannot be brought to 20 °C.",
        )
    if warm:
        warm["of"] = chosen.get(declared.of, declared.of)
    return _added(
        job,
        spot,
        asked,
        with_unit(text, declared.form, asked["system"], declared.label, spot.entry),
        why,
        **warm,
    )


def _added(job: dict, spot: Spot, asked: dict, text: str, why: str, **warm) -> dict:
    try:
        return record.add_reading(
            job, spot.feature.id, spot.place, asked["stage"], text, asked["now"], asked["by"], why, **warm
        )
    except JobError as error:
        raise at_field(spot.entry, "kept", str(error)) from None
