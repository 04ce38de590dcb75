"""What a job says to a calculator: what it fills in, what stands below each field, and the ways to keep what
is typed.

A result that is itself a size of the part (a rod's bend) is kept like a reading, once all that it is worked
out from is the reader's own.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import TypeVar

from calc.declare.calculator import Calculator
from calc.declare.evaluation import evaluate
from calc.declare.grid import Grid
from calc.declare.warm import WARM
from calc.job import record
from calc.job.checking import sheet_of
from calc.job.contents import STAGES
from calc.job.verdicts import Row, judge
from calc.page.html import Html, children, el
from calc.page.job.pieces import SHORT, chip, count, day, job_of, reading, when_read
from calc.page.job.spots import Spot, Typed, WorkedOut, behind, choices, results, spots
from calc.page.job.ways_to_keep import initials, ways_to_keep, which_one
from calc.stations.index import find

AnySpot = TypeVar("AnySpot", bound=Spot)


@dataclass(frozen=True)
class _Known:
    """What a job knows of the places that a calculator measures: `held` its readings by stage, `rows` its
    verdicts by feature and place."""

    job: dict
    held: dict[Spot, dict[str, dict]]
    rows: dict[tuple[str, str], Row]
    now: str

    def last(self, found: Sequence[AnySpot]) -> dict[AnySpot, dict]:
        """The reading of the latest stage, where there is one: what the part is now."""
        return {
            spot: next(self.held[spot][stage] for stage in reversed(STAGES) if stage in self.held[spot])
            for spot in found
            if self.held[spot]
        }

    def row(self, spot: Spot) -> Row | None:
        return self.rows.get((spot.feature.id, spot.place)) if spot.place is not None else None


def _known(job: dict, found: Sequence[Spot], now: str) -> _Known:
    current = record.current(job)
    held = {
        spot: {
            stage: current[key]
            for stage in STAGES
            if (key := (spot.feature.id, spot.place, stage)) in current
        }
        for spot in found
    }
    judged = judge(job) if any(held.values()) else []
    return _Known(job, held, {(row.feature, row.place): row for row in judged}, now)


def fields(asked: dict) -> dict:
    """What a job says to a calculator: a strip above its form; what stands below each field; and the texts to
    fill in, by entry.

    {"html": {"strip": …, name of the field, grid or result: …}, "fill": {name of the field or grid: {"texts":
    {entry: text}, "at_once": …}}, "results": {name of the result: [names of the fields that must hold the
    reader's own]}, "place": chosen, "engine": the job's, "said": {entry: {"words", "stage"}} of what it fills
    in, "placed": [names of the fields that are read at the place that was chosen]}
    """
    job, calculator, features = job_of(asked["job"]), find(asked["calculator"]), asked.get("features", {})
    sheet, now = sheet_of(job), asked["now"]
    places = choices(calculator, sheet, features)
    chosen = places[0] if len(places) == 1 else asked["place"] if asked["place"] in places else ""
    read, worked_out = spots(calculator, sheet, chosen, features), results(calculator, sheet, chosen)
    known = _known(job, [*read, *worked_out], now)
    needs = _needs(calculator, worked_out)
    html: dict[str, str] = {"strip": _strip(job, asked, places, chosen) if read or worked_out else ""}
    fill: dict[str, dict] = {}
    said: dict[str, dict] = {}
    for name, found in _by_field(read).items():
        ways = ways_to_keep(job, found, known.held, places, chosen, asked["stages"])
        filled = known.last(found)
        html[name] = children(_origin(known, filled) if filled else None, *ways)
        if filled:
            fill[name] = _filled(calculator, name, filled)
            said |= {
                spot.entry: {"words": when_read(one, now), "stage": one["stage"]}
                for spot, one in filled.items()
            }
    for spot in worked_out:
        ways = ways_to_keep(job, [spot], known.held, places, chosen, asked["stages"])
        labels = [calculator.input[name].label for name in needs[spot.entry]]
        html[spot.entry] = children(*_of_result(known, spot, labels), *ways)
    return {
        "html": html,
        "fill": fill,
        "results": needs,
        "place": chosen,
        "engine": job["engine"],
        "said": said,
        "placed": _placed(read, worked_out, needs),
    }


def _by_field(found: list[Typed]) -> dict[str, list[Typed]]:
    by_field: dict[str, list[Typed]] = {}
    for spot in found:
        by_field.setdefault(spot.field, []).append(spot)
    return by_field


def _needs(calculator: Calculator, worked_out: list[WorkedOut]) -> dict[str, list[str]]:
    """The fields that each result is worked out from."""
    if not worked_out:
        return {}
    example = evaluate(calculator).outputs
    return {spot.entry: behind(calculator, example[spot.declared.key]) for spot in worked_out}


def _placed(read: list[Typed], worked_out: list[WorkedOut], needs: dict[str, list[str]]) -> list[str]:
    """The fields whose readings are of one place: what was read at another one does not belong there. A
    grid's rows name theirs."""
    own = [spot.field for spot in read if spot.feature.places and not spot.in_grid]
    return list(
        dict.fromkeys(
            own + [name for spot in worked_out if spot.feature.places for name in needs[spot.entry]]
        )
    )


# --- What is filled in ------------------------------------------------------------------------


def _filled(calculator: Calculator, name: str, filled: dict[Typed, dict]) -> dict:
    texts = {entry: text for spot, one in filled.items() for entry, text in _entries(spot, one).items()}
    declared = calculator.input[name]
    return _grid(declared, texts) if isinstance(declared, Grid) else {"texts": texts, "at_once": True}


def _entries(spot: Typed, reading: dict) -> dict[str, str]:
    """A reading's texts by entry: what was told of it warm as well, where the field asks for that."""
    return {
        spot.entry: reading["text"],
        **{
            f"{spot.entry}.{part}": reading[part]
            for part in WARM
            if part in reading and part in spot.declared.parts
        },
    }


def _grid(declared: Grid, texts: dict[str, str]) -> dict:
    """A grid is filled at once where the job's readings make whole rows: rows of which it knows nothing are
    then left empty, so that no number of the example stands among sizes of the job."""
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


# --- HTML ---------------------------------------------------------------------------------------


def _strip(job: dict, asked: dict, places: list[str], chosen: str) -> Html:
    """Above the form: which job, which place, whose initials."""
    job_page = (
        el("a", job["name"], href=f"{asked['root']}job/")
        if asked["kind"] == "job"
        else el("strong", job["name"])
    )
    return el(
        "div",
        el("p", "Job: " if asked["kind"] == "job" else "Sheet: ", job_page, class_="job-strip-name"),
        which_one(places, chosen) if len(places) > 1 else None,
        None if asked["by"] else initials(),
        class_="job-strip",
    )


def _of_result(known: _Known, spot: Spot, needs: list[str]) -> Iterator[Html]:
    """What the job has of a result, and all that has to be read before it can be kept."""
    for one in known.last([spot]).values():
        row = known.row(spot)
        yield el(
            "p",
            "The job has ",
            reading(known.job, one),
            f" ({when_read(one, known.now)}). ",
            chip(row.state) if row and row.state else None,
            class_="job-from",
        )
    yield el(
        "p",
        f"{spot.feature.label} can be kept for the job once all of it is read: {', '.join(needs)}. ",
        class_="job-when-partly job-keep-words",
    )


def _origin(known: _Known, filled: dict[Typed, dict]) -> Html:
    """Where what stands in the field comes from, and whether it is right; where something else was typed, the
    way back to it."""
    job, readings = known.job, list(filled.values())
    one = readings[0] if len(readings) == 1 else None
    many, who = count(len(readings), "reading"), _read_by(known, readings)
    judged = [(spot, row) for spot in filled if (row := known.row(spot))]
    return children(
        el(
            "div",
            el(
                "p",
                "From the job ",
                el("strong", job["name"]),
                ": ",
                None if one else f"{many}, ",
                who,
                ".",
                class_="job-from",
            ),
            *(
                _judged(row, "" if one else f"{spot.place}: ")
                for spot, row in judged
                if row.state and (one or row.state != "pass")
            ),
            class_="job-when-filled",
        ),
        el(
            "div",
            el("p", "The job has ", el("span", one["text"], class_="num") if one else many, f" ({who}). "),
            el("button", "Fill it in" if one else "Fill them in", type="button", data_job_fill=True),
            class_="job-when-other",
        ),
    )


def _read_by(known: _Known, readings: list[dict]) -> str:
    """At what stages, when last by the record (clocks are set back), and by whom."""
    last = [r for r in known.job["readings"] if any(r is one for one in readings)][-1]
    stages = " and ".join(dict.fromkeys(SHORT[r["stage"]] for r in readings))
    hands = " and ".join(list(dict.fromkeys(r["by"] for r in readings if r["by"]))[:3])
    return ", ".join(filter(None, (stages, day(last["at"], known.now), hands)))


def _judged(row: Row, place: str) -> Html:
    return el(
        "p",
        chip(row.state),
        " ",
        place or None,
        row.words,
        ". ",
        row.do,
        class_=f"job-judged job-is-{row.state}",
    )
