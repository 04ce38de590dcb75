"""On the bench: which sizes of the job are still to be read, and of one size what the job has and how to keep
what is typed."""

from collections.abc import Iterator

from calc.declare.outputs import Output
from calc.job import record
from calc.job.checking import sheet_of
from calc.job.contents import STAGES
from calc.job.parts import not_checked
from calc.job.verdicts import Row, judge
from calc.page.html import Html, children, el
from calc.page.job.pieces import chip, count, job_of, reading, when_read
from calc.page.job.spots import Spot
from calc.page.job.ways_to_keep import initials, ways_to_keep
from calc.reference.engine import Feature

FIRST = 6  # of what is still to be read: what is next, and how much is left


def bench(asked: dict) -> dict:
    """{"call": "job-bench", "job"} -> {"html": {"unread": what is still to be read}, "name", "engine": the
    job's}."""
    job = job_of(asked["job"])
    left, _ = not_checked(job)
    return {"html": {"unread": _unread(left) if left else ""}, "name": job["name"], "engine": job["engine"]}


def _unread(left: list[tuple[Feature, tuple[str, ...]]]) -> Html:
    lines = [
        el("li", el("a", feature.label, _how_many(places), href=f"#size-{feature.id}"))
        for feature, places in left
    ]
    more = lines[FIRST:]
    return children(
        el("h2", "Still to be read"),
        el("ul", *lines[:FIRST], class_="bench-chips"),
        (
            el(
                "details",
                el("summary", f"and {count(len(more), 'size')} more"),
                el("ul", *more, class_="bench-chips"),
                data_keep="unread",
            )
            if more
            else None
        ),
    )


def _how_many(places: tuple[str, ...]) -> Html | None:
    return el("small", f" {len(places)}×") if len(places) > 1 else None


def of_one(asked: dict) -> dict:
    """{"call": "job-size", "job", "kind", "feature", "place": in hand, "stages": at which it may be kept} ->
    {"html": {"job": what the job has of it and the ways to keep what is typed}, "name"}. Nothing where the
    job's engine has no such size."""
    job = job_of(asked["job"])
    sheet = sheet_of(job)
    feature = sheet.features.get(asked["feature"]) if sheet else None
    if feature is None:
        return {"html": {"job": ""}, "name": job["name"]}
    place = asked["place"] if asked["place"] in feature.places else None if feature.places else ""
    spot = Spot("text", Output(feature.label, "", feature.form), feature, place, feature.id)
    now = record.current(job)
    there = {stage: now[key] for stage in STAGES if (key := (feature.id, place, stage)) in now}
    rows = [row for row in judge(job) if row.feature == feature.id]
    return {
        "html": {
            "job": children(
                el("ul", *_held(job, rows, asked["now"]), class_="job-held") if rows else None,
                None if asked["by"] else initials(),
                *ways_to_keep(job, [spot], {spot: there}, list(feature.places), place or "", asked["stages"]),
            )
        },
        "name": job["name"],
    }


def _held(job: dict, rows: list[Row], now: str) -> Iterator[Html]:
    for row in rows:
        one = row.last.reading
        yield el(
            "li",
            el("strong", f"{row.place} ") if row.place else None,
            reading(job, one) if one else row.value,
            " ",
            chip(row.state) if row.state else None,
            " ",
            el("span", when_read(one, now) if one else "worked out", class_="job-who"),
        )
