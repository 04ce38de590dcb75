"""What of a job's parts was not read, by name, or by groups where that is most of it."""

from collections import Counter
from collections.abc import Sequence

from calc.job.parts import counts, not_checked
from calc.page.html import Html, el
from calc.reference.engine import Engine, Feature

MOST_NAMED = (
    60  # sizes without a reading that are named one by one: more leave no room for the rest of the page
)


GROUP_WORDS = {
    "chamber": "the chambers",
    "crank": "the crank",
    "crankcase": "the case",
    "cylinder": "the cylinders",
    "flywheel": "the flywheel",
    "cam": "the cam",
    "guide": "the guides",
    "head": "the heads",
    "lifter": "the lifters",
    "piston": "the pistons",
    "port": "the ports",
    "rod": "the rods",
    "spring": "the springs",
    "valve": "the valves",
}

Unread = list[tuple[Feature, tuple[str, ...]]]
"""Sizes, each with the places at which it was not read."""


def missing(job: dict, engine: Engine | None) -> Html:
    if engine is None:
        return _section("Not checked", "Which sizes these parts have is not known here.")
    unread, every = not_checked(job)
    left = sum(len(places) for _, places in unread)
    if left:
        return _section(
            f"Not checked: {left} of {every} sizes",
            f"Without a reading as finished, at all places where none is named: {_named(unread, engine)}.",
        )
    if every:
        return _section("Not checked", f"Nothing: all {every} sizes of these parts were read.")
    return _section("Not checked", "No size of these parts has limits here.")


def _section(title: str, words: str) -> Html:
    return el("section", el("h2", title), el("p", words))


def _named(missing: Unread, engine: Engine) -> str:
    """The sizes by name, with their places where some of them were read; intake and exhaust of the same as
    one. Where there are too many for a page, most by their group."""
    grouped = _by_group(missing, engine) if len(missing) > MOST_NAMED else {}
    named = [
        (feature, places)
        for feature, places in missing
        if _group(feature) not in grouped or not _is_whole(feature, places)
    ]
    whole = {feature.label for feature, left in named if _is_whole(feature, left)}
    names = []
    for feature, left in named:
        base, _, kind = feature.label.rpartition(", ")
        if feature.label not in whole:
            names.append(f"{feature.label} ({', '.join(left)})")
        elif kind == "intake" and f"{base}, exhaust" in whole:
            names.append(f"{feature.label} and exhaust")
        elif kind != "exhaust" or f"{base}, intake" not in whole:
            names.append(feature.label)
    return "; ".join([*grouped.values(), *names])


def _by_group(missing: Unread, engine: Engine) -> dict[str, str]:
    """{group: words} of the groups of the engine's sheet of which most was not read: "every size of the rods
    but Big-end bore, bolted up"."""
    unread = dict.fromkeys(feature.id for feature, places in missing if _is_whole(feature, places))
    left = Counter(id.partition(".")[0] for id in unread)
    read: dict[str, list[str]] = {}
    for feature in engine.features.values():
        if counts(feature) and feature.id not in unread:
            read.setdefault(_group(feature), []).append(feature.label)
    return {
        group: f"every size of {GROUP_WORDS.get(group, group)}"
        + (f" but {', '.join(read[group])}" if group in read else "")
        for group, n in left.items()
        if n > 2 * len(read.get(group, ()))
    }


def _group(feature: Feature) -> str:
    return feature.id.partition(".")[0]


def _is_whole(feature: Feature, left: Sequence[str]) -> bool:
    """Was it read at none of its places?"""
    return len(left) == len(feature.places or ("",))
