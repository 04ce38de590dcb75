"""What a job holds of each feature, for a table of limits and for a sentence, wherever the handbook speaks of
that size."""

from collections.abc import Iterator

from calc.declare.warm import WARM
from calc.job.checking import feature_of
from calc.job.verdicts import Row, judge
from calc.page.html import Html, both, children, el
from calc.page.job.pieces import SHORT, chip, job_of, reading


def sizes(asked: dict) -> dict:
    """What the job holds of each feature: `html` a line for each place, for a table of limits; `said` in a
    few words, for a sentence."""
    job = job_of(asked["job"])
    by_feature: dict[str, list[Row]] = {}
    for row in judge(job):
        by_feature.setdefault(row.feature, []).append(row)
    return {
        "html": {id: _listed(job, rows) for id, rows in by_feature.items()},
        "said": {id: said for id, rows in by_feature.items() if (said := _said(job, rows))},
        "engine": job["engine"],
    }


def _listed(job: dict, rows: list[Row]) -> Html:
    stages = " and ".join(dict.fromkeys(SHORT[row.last.stage] for row in rows))
    return el(
        "span",
        el("span", el("strong", job["name"]), ", ", stages),
        *(
            el(
                "span",
                el("b", row.place, " ") if row.place else None,
                reading(job, row.last.reading) if row.last.reading else row.value,
                " ",
                _not_in_order(row.state),
            )
            for row in rows
        ),
        class_="job-sizes",
    )


def _not_in_order(state: str) -> Html | None:
    return chip(state) if state not in ("", "pass") else None


def _said(job: dict, rows: list[Row]) -> Html | None:
    """A feature's sizes within a sentence: which places, from where to where, at which stage; and what is not
    in order."""
    alike: dict[str, list[Row]] = {}
    for row in rows:
        if row.value is not None:
            stage = SHORT[row.last.stage] + ("" if row.last.reading else ", worked out")
            alike.setdefault(stage, []).append(row)
    if not alike:
        return None
    feature = feature_of(job, rows[0].feature)
    told: list = []
    for stage, found in alike.items():
        names = _places(found, len(feature.places) if feature else 0)
        told += ["; " if told else None, _span(job, found), ", ", stage, ", " if names else None, names]
    return el(
        "span",
        " [",
        el("span", job["name"], ": ", class_="job-said-name"),
        *told,
        *_wrong(rows),
        "]",
        class_="job-said",
    )


def _span(job: dict, rows: list[Row]) -> Html:
    """From the least to the greatest; one that was read alone is told as it was written."""
    one = rows[0].last.reading if len(rows) == 1 else None
    if one and not any(part in one for part in WARM):
        return reading(job, one)
    values = [row.value for row in rows if row.value is not None]
    shape, low, high = values[0].form, min(map(float, values)), max(map(float, values))

    def text(system: str) -> str:
        most = shape.write(high, system)
        return most if shape.write(low, system) == most else f"{shape.bare(low, system)} to {most}"

    return both(text("metric"), text("inch"))


def _places(rows: list[Row], every: int) -> str:
    """The places by name; where these are too many for a sentence, how many of how many."""
    if 2 < len(rows) == every:
        return f"all {every}"
    names = ", ".join(row.place for row in rows)
    return names if len(names) <= 20 else f"{len(rows)} of {every}"


def _wrong(rows: list[Row]) -> Iterator[Html]:
    places: dict[str, list[str]] = {}
    for row in rows:
        places.setdefault(row.state, []).append(row.place)
    for state, its in places.items():
        if mark := _not_in_order(state):
            yield children(" ", mark, ": " + ", ".join(filter(None, its)) if len(rows) > 1 else None)
