"""What of a job's parts was not read: by part and count on paper, by name where it can be unfolded."""

from collections.abc import Sequence

from calc.job.checking import sheet_of
from calc.job.parts import not_checked
from calc.page.html import Html, children, el
from calc.page.job.pieces import count
from calc.reference.engine import Feature

PARTS = {
    "head": "Heads",
    "guide": "Guides",
    "valve": "Valves",
    "spring": "Springs",
    "chamber": "Chambers",
    "port": "Ports",
    "cylinder": "Cylinders",
    "piston": "Pistons",
    "rod": "Rods",
    "crank": "Crank",
    "crankcase": "Case",
    "cam": "Cam",
    "lifter": "Lifters",
    "rocker": "Rockers",
    "stud": "Studs",
    "flywheel": "Flywheel",
}  # by the groups of an engine's sheet

Unread = list[tuple[Feature, tuple[str, ...]]]
"""Sizes, each with the places at which it was not read."""


def by_count(job: dict) -> Html:
    """The section of the size sheet: "Heads: 6 sizes not checked"."""
    if sheet_of(job) is None:
        return _section("Not checked", "Which sizes these parts have is not known here.")
    unread, every = not_checked(job)
    if not every:
        return _section("Not checked", "No size of these parts has limits here.")
    if not unread:
        return _section("Not checked", f"Nothing: all {every} sizes of these parts were read.")
    groups = _by_group(unread)
    (first, its), *others = groups.items()
    words = [f"{first}: {count(_places(its), 'size')} not checked"]
    words += [f"{name.lower()}: {_places(sizes)}" for name, sizes in others]
    return _section(f"Not checked: {_places(unread)} of {every} sizes", "; ".join(words) + ".")


def by_name(job: dict) -> Html | None:
    """A fold that names every one of them, None where there is none."""
    unread, every = not_checked(job)
    if not unread:
        return None
    return el(
        "details",
        el("summary", f"Sizes not checked: {_places(unread)} of {every}"),
        *(
            children(el("h3", name), el("p", "; ".join(_named(*size) for size in sizes), "."))
            for name, sizes in _by_group(unread).items()
        ),
        data_keep="not-checked",
        class_="job-fold",
    )


def _section(title: str, words: str) -> Html:
    return el("section", el("h2", title), el("p", words))


def _by_group(unread: Unread) -> dict[str, Unread]:
    groups: dict[str, Unread] = {}
    for feature, places in unread:
        group = feature.id.partition(".")[0]
        groups.setdefault(PARTS.get(group, group), []).append((feature, places))
    return groups


def _places(unread: Unread) -> int:
    return sum(len(places) for _, places in unread)


def _named(feature: Feature, left: Sequence[str]) -> str:
    """The size, with its places where it was read at others."""
    return feature.label + (f" ({', '.join(left)})" if len(left) < len(feature.places or ("",)) else "")
