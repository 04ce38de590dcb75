"""One line of an engine's data sheet, checked: a feature, or what a part is made of."""

import re
from collections.abc import Callable
from difflib import get_close_matches
from fractions import Fraction
from typing import Any

from calc.core.conformance import DUST
from calc.core.kinds import KINDS, Kind
from calc.core.reading import EntryError, in_si
from calc.core.working import Form, form
from calc.reference.feature import WHAT, Feature, Step
from calc.reference.materials import MATERIALS

# what each list's sizes are called
STEPS = {"undersizes": " undersize", "oversizes": " oversize", "sizes": ""}
_WORDS = {"label", "kind", "decimals", "follows", "tool", "from", "places", *WHAT, *STEPS}
LONGEST_PLACE, MOST_PLACES = 40, 64

Row = dict[str, Any]  # as it stands in the sheet
Sizes = dict[str, float]  # nominal, low, high, wear as far as they are known, SI
Wrong = Callable[[str], Exception]  # the error to raise, from a reason
Other = Callable[[str], Feature | None]  # a feature that another follows from, by id


def material(row: Row, wrong: Wrong) -> str:
    """What a part is made of, checked."""
    if strange := [key for key in row if key not in ("label", "material", "from")]:
        raise wrong(
            f"says {strange[0]!r} beside its material; a material has a label, and from where it is known"
            " (from)"
        )
    if not is_words(row.get("label")):
        raise wrong("has no label; give the words that a reader knows it by")
    if row["material"] not in MATERIALS:
        near = get_close_matches(str(row["material"]), MATERIALS, 1)
        raise wrong(
            f"has the material {row['material']!r}, which there is not; "
            + (f"{near[0]} is the nearest" if near else f"there are {', '.join(MATERIALS)}")
        )
    return row["material"]


def feature(id: str, row: Row, source: str, lists: dict[str, Any], other: Other, wrong: Wrong) -> Feature:
    """One feature, checked; `lists` are the named lists of places, `other(id)` gives a feature that it
    follows from, `wrong(reason)` the error to raise."""
    _check_words(row, wrong)
    kind = _kind(row, wrong)
    shape = form(kind, row.get("decimals", 3))
    places, sizes = _places(row.get("places"), lists, wrong), _sizes(row, kind, wrong)
    terms: tuple[tuple[float, str], ...] = ()
    if "follows" in row:
        terms = _terms(row["follows"], shape, other, wrong)
        parts = [(times, part) for times, id in terms if (part := other(id))]
        places = _shared(places, [part for _, part in parts], wrong)
        sizes = _following(sizes, _worked(parts), shape, wrong)
    steps = _steps(row, kind, sizes, wrong)
    _check_sizes(row, sizes, wrong)
    return Feature(
        id,
        row["label"],
        shape,
        sizes["nominal"],
        sizes.get("low"),
        sizes.get("high"),
        sizes.get("wear"),
        row.get("tool", ""),
        row.get("from", source),
        row.get("follows", ""),
        steps,
        places,
        terms,
    )


def _check_words(row: Row, wrong: Wrong) -> None:
    """Raises where a line says what no sheet knows, or not in words."""
    for key in row:
        if key not in _WORDS:
            near = get_close_matches(key, _WORDS, 1)
            raise wrong(
                f"says {key!r}, which no sheet knows; "
                + (f"{near[0]} is the nearest" if near else f"it may say {', '.join(sorted(_WORDS))}")
            )
    _kind(row, wrong)
    if not is_words(row.get("label")):
        raise wrong("has no label; give the words that a reader knows it by")
    if type(row.get("decimals", 3)) is not int or not 0 <= row.get("decimals", 3) <= 9:
        raise wrong("has decimals that are not a whole number from 0 to 9")
    for key in ("tool", "from", "follows"):
        if not is_words(row.get(key, "-")):
            raise wrong(f"has {key} that is not a text; give words, or leave {key} out")


def _kind(row: Row, wrong: Wrong) -> Kind:
    kind = KINDS.get(str(row.get("kind", "length")))
    if kind is None:
        near = get_close_matches(str(row["kind"]), KINDS, 1)
        raise wrong(
            f"has the kind {row['kind']!r}, which there is not; "
            + (f"{near[0]} is the nearest" if near else "it may be length, force, torque, volume and so on")
        )
    return kind


def _sizes(row: Row, kind: Kind, wrong: Wrong) -> Sizes:
    """The sizes that stand in the line itself."""
    sizes = {}
    for what in WHAT:
        if what in row:
            try:
                sizes[what] = in_si(str(row[what]), kind)
            except EntryError as error:
                raise wrong(f"has a {what} that cannot be read: {error.problem}; {error.accepted}") from None
    return sizes


def _following(own: Sizes, worked: Sizes, shape: Form, wrong: Wrong) -> Sizes:
    """The sizes of what follows from others, its own where it says them; raises where these do not agree."""
    sizes = worked | own
    half = float(shape.metric.factor) * 0.5 * 10**-shape.decimals  # what is written is rounded
    if abs(sizes["nominal"] - worked["nominal"]) > half or any(
        what in worked and sign * (sizes[what] - worked[what]) < -half
        for what, sign in (("low", 1), ("high", -1))
    ):
        told = ", ".join(f"{what} {shape.write(value, 'metric')}" for what, value in worked.items())
        raise wrong(f"does not follow from the sizes that it names: those give {told}")
    return sizes


def _check_sizes(row: Row, sizes: Sizes, wrong: Wrong) -> None:
    """Raises where there is no nominal size, or the limits do not go together with it and each other."""
    if "nominal" not in sizes:
        raise wrong('has no nominal size; give one with its unit, such as nominal = "37.900 mm"')
    nominal, low, high = sizes["nominal"], sizes.get("low"), sizes.get("high")
    if low is not None and high is not None and low > high:
        raise wrong(
            f"has its limits upside down: low {row.get('low', '')} lies above high {row.get('high', '')};"
            " give the smaller as low"
        )
    if low is not None and nominal < low - DUST or high is not None and nominal > high + DUST:
        raise wrong(
            "has a nominal size outside its own limits; give one within "
            + " and ".join(str(row[what]) for what in ("low", "high") if what in row)
        )
    wear = sizes.get("wear")
    if wear is None or (low, high) == (None, None):
        return
    if (low is None or wear > low + DUST) and wear < (nominal if high is None else high) - DUST:
        raise wrong(
            f"has its wear limit {row['wear']} within the limits as made, so that a new part could be worn"
            " out already; give one outside of them"
        )


def _steps(row: Row, kind: Kind, sizes: Sizes, wrong: Wrong) -> tuple[Step, ...]:
    """The sizes beside the standard one, nearest first."""
    found: dict[float, Step] = {}
    for key, called in STEPS.items():
        if key not in row:
            continue
        if "follows" in row:
            raise wrong(f"follows from other sizes and says {key}; give them to those sizes")
        if not isinstance(row[key], list) or not all(map(is_words, row[key])):
            raise wrong(f'has {key} that are not a list of texts; write {key} = ["0.25 mm", "0.50 mm"]')
        for text in row[key]:
            try:
                size = in_si(text, kind)
            except EntryError as error:
                raise wrong(f"has {key} that cannot be read: {error.problem}; {error.accepted}") from None
            if size <= 0:
                raise wrong(f"has {text} among its {key}; give each as more than nothing")
            offset = {"undersizes": -size, "oversizes": size, "sizes": size - sizes.get("nominal", 0)}[key]
            if abs(offset) > 1e-9:  # the nominal size itself may stand in the list
                found[round(offset, 12)] = Step(text + called, offset)
    return tuple(sorted(found.values(), key=lambda step: (abs(step.offset), step.offset)))


def _places(said: Any, lists: dict[str, Any], wrong: Wrong) -> tuple[str, ...]:
    """The places that a feature says, as a list or by the name of one."""
    if said is None:
        return ()
    if isinstance(said, str):
        if said not in lists:
            near = get_close_matches(said, lists, 1)
            raise wrong(
                f"has the places {said!r}, a list that [places] does not have; "
                + (
                    f"{near[0]} is the nearest"
                    if near
                    else 'write a line for it there, or give a list such as ["1", "2", "3"]'
                )
            )
        return tuple(lists[said])
    check_places(said, wrong)
    return tuple(said)


def check_places(said: Any, wrong: Wrong) -> None:
    """Raises where a list of places cannot be used."""
    if not isinstance(said, list) or not said or not all(isinstance(place, str) for place in said):
        raise wrong(
            'has places that are not a list of texts; give a list such as ["1", "2", "3"], or leave'
            " places out"
        )
    if len(said) > MOST_PLACES:
        raise wrong(f"has {len(said)} places; give at most {MOST_PLACES}")
    for place in said:
        if (
            not place.strip()
            or place != place.strip()
            or len(place) > LONGEST_PLACE
            or not place.isprintable()
        ):
            raise wrong(
                f"has a place {place[:LONGEST_PLACE]!r} that cannot be used; give 1 to {LONGEST_PLACE}"
                " characters, none of them a space at either end"
            )
    twice = next((place for i, place in enumerate(said) if place in said[:i]), None)
    if twice is not None:
        raise wrong(f"has the place {twice!r} twice; give each place once")


def _shared(own: tuple[str, ...], parts: list[Feature], wrong: Wrong) -> tuple[str, ...]:
    """Places of what follows: those of all parts that have any; its own must be among them."""
    parted = [part for part in parts if part.places]
    shared = (
        [place for place in parted[0].places if all(place in part.places for part in parted)]
        if parted
        else []
    )
    if parted and not shared:
        raise wrong(
            "follows from "
            + " and ".join(part.id for part in parted)
            + ", which have no place in common; name the same places in each"
        )
    strange = next((place for place in own if place not in shared), None) if parted else None
    if strange is not None:
        raise wrong(
            f"has the place {strange!r}, where not all that it follows from is measured; leave places out,"
            f" and it takes {', '.join(shared)}"
        )
    return own or tuple(shared)


def _terms(follows: str, shape: Form, other: Other, wrong: Wrong) -> tuple[tuple[float, str], ...]:
    """What a sum of other features, "+ a - 2 b", is made of: (times, id) each."""
    terms = re.findall(r"\s*([+-]?)\s*(?:(\d+(?:\.\d+)?)\s+)?([a-z_][a-z0-9_]*\.[a-z0-9_]+)\s*", follows)
    if (
        not terms
        or any(not sign for sign, _, _ in terms[1:])
        or re.sub(r"\s", "", "".join("".join(t) for t in terms)) != re.sub(r"\s", "", follows)
    ):
        raise wrong(
            f"follows {follows!r}, which cannot be read; write features with + and - between them, such as"
            ' "case.bore - 2 case.shell_wall - crank.journal"'
        )
    for _, _, id in terms:
        feature = other(id)
        if feature is None:
            raise wrong(f"follows from {id}, which the sheet does not have; name a feature that it has")
        if feature.form.kind != shape.kind:
            raise wrong(
                f"follows from {id}, which is a {feature.form.kind.name} and not a {shape.kind.name}; name"
                " sizes of one kind"
            )
    return tuple(((-1 if sign == "-" else 1) * float(factor or 1), id) for sign, factor, id in terms)


def _worked(parts: list[tuple[float, Feature]]) -> Sizes:
    """nominal, low and high of such a sum of (times, feature), as far as they are known; the limits at the
    worst of theirs. In decimals, as they are written: 8.015 less 7.950 mm is 0.065 mm."""
    worked: dict[str, Fraction | None] = {"nominal": Fraction(0), "low": Fraction(0), "high": Fraction(0)}
    for times, part in parts:
        ends = (part.low, part.high) if times > 0 else (part.high, part.low)
        for what, size in zip(worked, (part.nominal, *ends)):
            before = worked[what]
            if size is None or before is None:
                worked[what] = None
            else:
                worked[what] = before + Fraction(repr(times)) * Fraction(repr(size))
    return {what: float(value) for what, value in worked.items() if value is not None}


def is_words(x: Any) -> bool:
    """Is it a text that says something?"""
    return isinstance(x, str) and bool(x.strip())
