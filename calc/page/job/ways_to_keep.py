"""The ways to keep what is typed: which part is in hand, at which stage, and why where a size was read
before."""

from collections.abc import Iterator, Sequence

from calc.job.contents import STAGES
from calc.page.html import Html, el
from calc.page.job.forms import REASONS
from calc.page.job.spots import Spot


def ways_to_keep(
    job: dict,
    found: Sequence[Spot],
    held: dict[Spot, dict[str, dict]],
    places: list[str],
    chosen: str,
    stages: Sequence[str],
) -> tuple[Html, Html]:
    """The ways to keep what is typed, which show once it is; and the place for what speaks against it. Where
    the place is not known yet, the choice of it comes first. `held` are the readings that the job has of
    each, by stage."""
    labels = ", ".join(dict.fromkeys(spot.feature.label for spot in found))
    ways = (
        which_one(places, chosen)
        if places and found[0].place is None
        else el("div", *_offers(found, held, stages), class_="job-buttons")
    )
    return (
        el(
            "div",
            el("p", "Keep for ", el("strong", job["name"]), ": ", labels, class_="job-keep-words"),
            ways,
            class_="job-when-typed",
        ),
        el("p", class_="message", data_job_message=True, role="alert", hidden=True),
    )


def _offers(
    found: Sequence[Spot], held: dict[Spot, dict[str, dict]], stages: Sequence[str]
) -> Iterator[Html]:
    """At a tap where it is the first reading, with a reason where there is one already."""
    place = f", {found[0].place}" if len(found) == 1 and found[0].place else ""
    for stage in stages:
        there = [spot for spot in found if stage in held[spot]]
        if len(there) < len(found):
            yield el("button", f"Keep {STAGES[stage]}{place}", type="button", data_job_keep=stage)
        if there:
            yield _correct(stage, place)


def _correct(stage: str, place: str) -> Html:
    reasons = (
        el("button", reason, type="button", data_job_keep=stage, data_job_why=reason) for reason in REASONS
    )
    return el(
        "details",
        el("summary", f"Correct {STAGES[stage]}{place}"),
        el("p", "Why is it another size now? The one before stays in the history."),
        el("div", *reasons, class_="job-buttons"),
        data_keep=f"correct-{stage}",
        class_="job-correct",
    )


def initials() -> Html:
    """Asked for where the device does not know them yet."""
    return el(
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


def which_one(places: list[str], chosen: str) -> Html:
    """The places of a part, one of them in hand."""
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
            for place in places
        ),
        class_="job-which",
        role="group",
        aria_label="Which one is measured",
    )
