"""What was typed into a calculator, or follows from it, kept as readings of a job."""

from math import floor, log10

from calc.core.kinds import TEMPERATURE
from calc.core.working import Form, form
from calc.core.writing import to_unit, write
from calc.declare.calculator import Calculator
from calc.declare.choice import Choice
from calc.declare.evaluation import evaluate
from calc.declare.standing import Standing
from calc.declare.taken import MISSED
from calc.declare.warm import WARM
from calc.job import record
from calc.job.checking import sheet_of
from calc.job.contents import JobError
from calc.page.job.pieces import AtField, job_of, made, with_unit
from calc.page.job.spots import Spot, Typed, WorkedOut, behind, results, spots
from calc.reference.engine import Feature
from calc.stations.index import find

DEGREES = form(TEMPERATURE, 0)


def keep(asked: dict) -> dict:
    """What was typed into a calculator's field, or into the cells of a grid (`typed`), kept as readings of
    its features; and results, where all that they are worked out from is the reader's own."""
    job, calculator, place = job_of(asked["job"]), find(asked["calculator"]), asked["place"]
    sheet = sheet_of(job)
    typed = [
        spot
        for spot in spots(calculator, sheet, place, asked.get("features", {}))
        if spot.entry in asked["typed"]
    ]
    worked_out = [spot for spot in results(calculator, sheet, place) if spot.entry in asked["typed"]]
    if not typed and not worked_out:
        raise AtField(
            asked["typed"][0],
            "nothing",
            f"What is typed here is no size on the data sheet of {job['engine']}; it cannot be kept for this"
            " job.",
        )
    for one in typed:
        job = _typed(job, calculator, one, asked)
    for result in worked_out:
        job = _worked_out(job, calculator, result, asked)
    return made(job)


def _added(job: dict, spot: Spot, asked: dict, text: str, **warm: str) -> dict:
    """Why is asked only where there is a reading already."""
    where = spot.feature.id, _place(spot), asked["stage"]
    why = asked["why"] if where in record.counting(job) else ""
    try:
        return record.add_reading(job, *where, text, asked["now"], asked["by"], why, **warm)
    except JobError as error:
        raise AtField(spot.entry, "kept", str(error)) from None


def _place(spot: Spot) -> str:
    if spot.place is None:
        places = ", ".join(spot.feature.places)
        raise AtField(spot.entry, "place", f"{spot.declared.label}: say first which one it is: {places}.")
    return spot.place


# --- What was typed -----------------------------------------------------------------------------


def _typed(job: dict, calculator: Calculator, spot: Typed, asked: dict) -> dict:
    """What the calculator refuses is refused here."""
    declared, entries, system = spot.declared, asked["entries"], asked["system"]
    text = entries.get(spot.entry, "")
    if not text.strip():
        raise AtField(
            spot.entry, "empty", f"{declared.label}: is empty; type what you read before you keep it."
        )
    standing = Standing(sheet_of(job), _place(spot))
    beside = {
        part: told for part in declared.parts if (told := entries.get(f"{spot.entry}.{part}", "")).strip()
    }
    chosen, left_open = _chosen(calculator, standing, entries)
    declared.take({"": text, **beside}, system, chosen)
    warm = {
        part: with_unit(told, DEGREES, system, WARM[part], f"{spot.entry}.{part}")
        for part, told in beside.items()
    }
    if warm and declared.of in left_open:
        raise AtField(
            spot.entry,
            "empty",
            f"{declared.label}: say first what it is made of ({calculator.input[declared.of].label}); without"
            " that a warm reading cannot be brought to 20 °C.",
        )
    if warm:
        warm["of"] = chosen.get(declared.of, declared.of)
    whole = with_unit(text, declared.form, system, declared.label, spot.entry)
    return _added(job, spot, asked, whole, **warm)


def _chosen(calculator: Calculator, standing: Standing, entries: dict) -> tuple[dict[str, str], set[str]]:
    """What counts as chosen, by choice: what the job's own sheet says where the reader says nothing; and the
    choices that neither says."""
    chosen: dict[str, str] = {}
    left_open = set()
    for choice in (i for i in calculator.inputs if isinstance(i, Choice)):
        told = standing.unread(choice, chosen)
        chosen[choice.name] = entries.get(choice.name) or told.value
        if not entries.get(choice.name) and told.origin is MISSED:
            left_open.add(choice.name)
    return chosen, left_open


# --- What was worked out ------------------------------------------------------------------------


def _worked_out(job: dict, calculator: Calculator, spot: WorkedOut, asked: dict) -> dict:
    """A result as it is shown, with the doubt that follows from those of the readings."""
    declared, entries, system = spot.declared, asked["entries"], asked["system"]
    standing = Standing(sheet_of(job), _place(spot))
    needs = behind(calculator, evaluate(calculator).outputs[declared.key])
    typed = {entry.partition(".")[0] for entry, text in entries.items() if text.strip()}
    left = [calculator.input[name].label for name in needs if name not in typed]
    if left:
        raise _unread(spot, " and ".join(left), len(left))
    found = evaluate(calculator, entries, system, standing)
    if declared.key not in found.outputs:
        raise _unread(spot, found.verdict.headline.plain(system), len(found.next))
    shape = found.outputs[declared.key].form or spot.feature.form
    doubt = found.doubts.get(declared.key, 0.0)
    text = _apart_from_limits(shape, found[declared.key], spot.feature, system)
    if doubt:
        unit = shape.difference.unit(system)
        text += f" ± {write(doubt, unit, max(0, 1 - floor(log10(to_unit(doubt, unit)))))}"
    return _added(job, spot, asked, with_unit(text, shape, system, declared.label, spot.entry))


def _unread(spot: Spot, left: str, many: int) -> AtField:
    return AtField(
        spot.entry,
        "empty",
        f"{spot.declared.label}: {left} {'is' if many == 1 else 'are'} still to be read;"
        " enter what you read before you keep it.",
    )


def _apart_from_limits(shape: Form, value: float, feature: Feature, system: str) -> str:
    """A size as it is shown, never rounded onto a limit that it does not lie on."""
    sized = feature.at(feature.nearest(value))
    for limit in (sized.low, sized.high, sized.wear):
        if limit is not None and limit != value and shape.write(limit, system) == shape.write(value, system):
            shape = shape.apart_from(limit)
    return shape.write(value, system)
