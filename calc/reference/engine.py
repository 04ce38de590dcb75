"""Engine data sheets: one text file (TOML) for an engine family, that a machinist can read and edit.

    [engine]
    name = "TS-16"
    about = "..."
    from = "invented"

    [crank]
    main_journal = { label = "Main journal", nominal = "54.993 mm", low = "54.985 mm", wear = "54.960 mm" }

    [crankcase]
    main_bore = { label = "Main bearing bore", nominal = "55.065 mm", low = "55.050 mm", high = "55.080 mm" }
    main_clearance = { label = "Main clearance", follows = "crankcase.main_bore - crank.main_journal" }

A feature may also say its `kind` (length if not said), `decimals` shown in the metric unit, and `from` where
its values come from. One that an engine has several of says its `places`: a list such as ["1", "2", "3"], or
the name of a list that stands under [places]:

    [places]
    mains = ["1", "2", "3"]

What follows from features with places has those that all of them share.

Sizes beside the standard one, to which a part is re-machined or in which it is sold, stand in a list; all
limits move with them:

    main_journal = { ..., undersizes = ["0.25 mm", "0.50 mm"] }     smaller by so much: journals
    main_housing = { ..., oversizes = ["0.50 mm"] }                 larger by so much: bores, shell walls
    end_float_shim = { ..., sizes = ["0.24 mm", "0.32 mm"] }        shims and the like, each by its own size

What a part is made of is no size, and stands beside them by its id in calc/reference/materials.py:

    alloy = { label = "Head, alloy", material = "al-si-t6" }
"""

import os
import re
from dataclasses import dataclass, field, replace
from difflib import get_close_matches
from fractions import Fraction
from functools import cache
from zlib import crc32

from calc.core.kinds import KINDS
from calc.core.reading import EntryError, quantity
from calc.core.working import Form, Number, constant, form
from calc.core.writing import to_unit
from calc.reference.materials import MATERIALS

DEMO = "TS-16"
WHAT = ("nominal", "low", "high", "wear")
# what each list's sizes are called
STEPS = {"undersizes": " undersize", "oversizes": " oversize", "sizes": ""}
_WORDS = {"label", "kind", "decimals", "follows", "tool", "from", "places", *WHAT, *STEPS}
FEATURE = re.compile(r"[a-z_][a-z0-9_]*\.[a-z0-9_]+")  # what may name one: group.name
LONGEST_NAME, LONGEST_PLACE, MOST_PLACES = 80, 40, 64


class SheetError(ValueError):
    """A data sheet that cannot be used: file, line and reason in one sentence."""


@dataclass(frozen=True)
class Step:
    """A size beside the standard one: what it is called ("0.25 mm undersize", "0.32 mm"), and how far from
    it, in SI."""

    name: str
    offset: float


STANDARD = Step("standard", 0.0)


@dataclass(frozen=True)
class Feature:
    """A size of an engine: SI values, `None` where the sheet gives none. `steps` are its other sizes, the
    nearest first."""

    id: str
    label: str
    form: Form
    nominal: float
    low: float | None
    high: float | None
    wear: float | None
    tool: str
    source: str
    follows: str = ""
    steps: tuple[Step, ...] = ()
    places: tuple[str, ...] = ()  # where an engine has several of it
    terms: tuple[tuple[float, str], ...] = ()  # what it follows from: (times, id of a feature)

    def at(self, step: Step) -> "Feature":
        """The same feature at another of its sizes: nominal size, limits and wear limit all moved."""

        def moved(value):
            return None if value is None else value + step.offset

        return replace(
            self,
            nominal=moved(self.nominal),
            low=moved(self.low),
            high=moved(self.high),
            wear=moved(self.wear),
        )

    def nearest(self, value: float) -> Step:
        """Which of its sizes a reading is meant for: the one whose nominal size lies nearest."""
        return min((STANDARD, *self.steps), key=lambda step: abs(value - self.nominal - step.offset))

    @property
    def text(self) -> str:
        """The nominal size as an entry, exactly."""
        return self.entry("nominal")

    def entry(self, what: str) -> str:
        """nominal, low, high or wear as an entry, exactly; empty where the sheet has none."""
        value = getattr(self, what)
        return (
            "" if value is None else f"{to_unit(value, self.form.metric)!r} {self.form.metric.symbol}".strip()
        )

    def number(self, what: str) -> Number:
        """nominal, low, high or wear as a Number that can be written."""
        value = getattr(self, what)
        if value is None:
            raise KeyError(f"{self.id} has no {what} on the sheet")
        return constant("", self.label, self.form, value)


@dataclass(frozen=True)
class Engine:
    """An engine family's sheet: its sizes, and of what its parts are made (`materials`: an id of
    calc/reference/materials.py, by the part's own). `source` says whose numbers these are."""

    name: str
    about: str
    features: dict[str, Feature]
    materials: dict[str, str] = field(default_factory=dict)
    source: str = ""

    @property
    def invented(self) -> bool:
        return self.source == "invented"

    def mark(self, ids: set) -> str:
        """Eight hexadecimal digits (CRC-32) that change with any size, limit or place of these features and
        of what follows from them alone; not with words, nor with what else stands on the sheet."""
        known, more = set(ids), True
        while more:  # what follows may itself be followed from
            more = {
                f.id
                for f in self.features.values()
                if f.id not in known and f.terms and known.issuperset(id for _, id in f.terms)
            }
            known |= more
        told = [
            (
                f.id,
                f.form.kind.name,
                f.nominal,
                f.low,
                f.high,
                f.wear,
                [step.offset for step in f.steps],
                f.places,
                f.terms,
            )
            for f in self.features.values()
            if f.id in known
        ]
        return f"{crc32(repr(told).encode()):08x}"

    def feature(self, id: str) -> Feature:
        try:
            return self.features[id]
        except KeyError:
            near = get_close_matches(id, self.features, 3)
            raise KeyError(
                f"{self.name} has no feature {id!r}; "
                + (f"nearest are {', '.join(near)}" if near else "see its data sheet")
            ) from None


@cache
def engine(name: str) -> Engine:
    """The engine family of that name: "TS-16" stands in engines/ts16.toml. KeyError where there is no such
    sheet."""
    file = re.sub(r"[^a-z0-9]", "", name.lower()) + ".toml"
    try:
        # from a folder and from a zip alike
        data = __spec__.loader.get_data(os.path.join(os.path.dirname(__file__), "engines", file))
    except OSError:
        archive = getattr(__spec__.loader, "archive", "")
        # a Python that woke without its files: whoever asked brings them, and asks again
        if archive and not os.path.exists(archive):
            raise ImportError(f"{archive} is not there yet") from None
        raise KeyError(
            f"there is no data sheet for {name!r}: calc/reference/engines/{file} does not exist"
        ) from None
    return load(data.decode(), f"calc/reference/engines/{file}")


def demo() -> Engine:
    """The invented engine that examples are worked on."""
    return engine(DEMO)


def load(text: str, file: str = "sheet") -> Engine:
    """An engine from the text of its sheet. Raises SheetError with file, line and reason."""

    def wrong(group, name, reason):
        return SheetError(
            f"{file}, line {_line(text, group, name)}: {group}.{name} {reason}."
            if name
            else f"{file}, line {_line(text, group)}: {reason}."
        )

    import tomllib  # takes a tenth of what a start takes, and many a start reads no sheet

    try:
        sheet = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        problem, _, where = str(error).removesuffix(")").rpartition(" (at ")
        raise SheetError(
            f'{file}, {where}: not a line of a sheet ({problem}); write name = {{ label = "...", nominal ='
            ' "..." }.'
        ) from None
    head = sheet.pop("engine", None)
    if not isinstance(head, dict) or not all(_is_words(head.get(key)) for key in ("name", "about", "from")):
        raise SheetError(
            f"{file}, line {_line(text, 'engine')}: [engine] must say name, about and from (whose numbers"
            " these are), as texts."
        )
    places = sheet.pop("places", {})
    if not isinstance(places, dict):
        raise wrong(
            "places",
            "",
            'places is not a group of lists; write [places] above lines such as mains = ["1", "2", "3"]',
        )
    for name, listed in places.items():
        _check_places(listed, lambda reason: wrong("places", name, reason))
    rows, materials = {}, {}
    for group, entries in sheet.items():
        if not isinstance(entries, dict):
            raise wrong(group, "", f"{group} is not a group of features; write [{group}] above its features")
        for name, row in entries.items():
            if not isinstance(row, dict):
                raise wrong(group, name, 'is not a feature; write name = { label = "...", nominal = "..." }')
            if not FEATURE.fullmatch(f"{group}.{name}") or len(f"{group}.{name}") > LONGEST_NAME:
                raise wrong(
                    group,
                    name,
                    f"has a name that cannot be used; give small letters, digits and _, up to {LONGEST_NAME}"
                    " with its group's",
                )
            if "material" in row:
                materials[f"{group}.{name}"] = _material(row, lambda reason: wrong(group, name, reason))
            else:
                rows[f"{group}.{name}"] = row
    features, open_ids = {}, []

    def made(id, group, name):
        if id in features:
            return features[id]
        if id in open_ids:
            raise wrong(
                group,
                name,
                "follows from itself by way of "
                + ", ".join(open_ids)
                + "; give one of them a size of its own",
            )
        open_ids.append(id)
        features[id] = _feature(
            id,
            rows[id],
            head.get("from", ""),
            places,
            lambda other: made(other, *other.split(".", 1)) if other in rows else None,
            lambda reason: wrong(group, name, reason),
        )
        open_ids.pop()
        return features[id]

    for id in rows:
        made(id, *id.split(".", 1))
    return Engine(head["name"], head["about"], {id: features[id] for id in rows}, materials, head["from"])


def _material(row, wrong) -> str:
    """What a part is made of, checked."""
    if strange := [key for key in row if key not in ("label", "material", "from")]:
        raise wrong(
            f"says {strange[0]!r} beside its material; a material has a label, and from where it is known"
            " (from)"
        )
    if not _is_words(row.get("label")):
        raise wrong("has no label; give the words that a reader knows it by")
    if row["material"] not in MATERIALS:
        near = get_close_matches(str(row["material"]), MATERIALS, 1)
        raise wrong(
            f"has the material {row['material']!r}, which there is not; "
            + (f"{near[0]} is the nearest" if near else f"there are {', '.join(MATERIALS)}")
        )
    return row["material"]


def _feature(id, row, source, lists, other, wrong) -> Feature:
    """One feature, checked; `lists` are the named lists of places, `other(id)` gives a feature that it
    follows from, `wrong(reason)` the error to raise."""
    for key in row:
        if key not in _WORDS:
            near = get_close_matches(key, _WORDS, 1)
            raise wrong(
                f"says {key!r}, which no sheet knows; "
                + (f"{near[0]} is the nearest" if near else f"it may say {', '.join(sorted(_WORDS))}")
            )
    kind = KINDS.get(str(row.get("kind", "length")))
    if kind is None:
        near = get_close_matches(str(row["kind"]), KINDS, 1)
        raise wrong(
            f"has the kind {row['kind']!r}, which there is not; "
            + (f"{near[0]} is the nearest" if near else "it may be length, force, torque, volume and so on")
        )
    if not _is_words(row.get("label")):
        raise wrong("has no label; give the words that a reader knows it by")
    if type(row.get("decimals", 3)) is not int or not 0 <= row.get("decimals", 3) <= 9:
        raise wrong("has decimals that are not a whole number from 0 to 9")
    for key in ("tool", "from", "follows"):
        if not _is_words(row.get(key, "-")):
            raise wrong(f"has {key} that is not a text; give words, or leave {key} out")
    shape = form(kind, row.get("decimals", 3))
    places, terms, sizes = _places(row.get("places"), lists, wrong), (), {}
    for what in WHAT:
        if what in row:
            try:
                sizes[what] = quantity(str(row[what]), kind)
            except EntryError as error:
                raise wrong(f"has a {what} that cannot be read: {error.problem}; {error.accepted}") from None
    if "follows" in row:
        terms = _terms(row["follows"], shape, other, wrong)
        places = _shared(places, [other(id) for _, id in terms], wrong)
        worked = _worked(terms, other)
        for what, value in worked.items():
            if value is not None:
                sizes.setdefault(what, value)
        half = float(shape.metric.factor) * 0.5 * 10**-shape.decimals  # what is written is rounded
        if abs(sizes["nominal"] - worked["nominal"]) > half or any(
            worked[what] is not None and sign * (sizes[what] - worked[what]) < -half
            for what, sign in (("low", 1), ("high", -1))
        ):
            raise wrong(
                "does not follow from the sizes that it names: those give "
                + ", ".join(
                    f"{what} {shape.write(value, 'metric')}"
                    for what, value in worked.items()
                    if value is not None
                )
            )
    steps = _steps(row, kind, sizes, wrong)
    if "nominal" not in sizes:
        raise wrong('has no nominal size; give one with its unit, such as nominal = "37.900 mm"')
    low, high = sizes.get("low"), sizes.get("high")
    if low is not None and high is not None and low > high:
        raise wrong(
            f"has its limits upside down: low {row.get('low', '')} lies above high {row.get('high', '')};"
            " give the smaller as low"
        )
    if (
        low is not None
        and sizes["nominal"] < low - 1e-12
        or high is not None
        and sizes["nominal"] > high + 1e-12
    ):
        raise wrong(
            "has a nominal size outside its own limits; give one within "
            + " and ".join(str(row[what]) for what in ("low", "high") if what in row)
        )
    if (
        (wear := sizes.get("wear")) is not None
        and (low, high) != (None, None)
        and (low is None or wear > low + 1e-12)
        and wear < (sizes["nominal"] if high is None else high) - 1e-12
    ):
        raise wrong(
            f"has its wear limit {row['wear']} within the limits as made, so that a new part could be worn"
            " out already; give one outside of them"
        )
    return Feature(
        id,
        row["label"],
        shape,
        sizes["nominal"],
        low,
        high,
        sizes.get("wear"),
        row.get("tool", ""),
        row.get("from", source),
        row.get("follows", ""),
        steps,
        places,
        terms,
    )


def _steps(row, kind, sizes, wrong) -> tuple[Step, ...]:
    """The sizes beside the standard one, nearest first."""
    found = {}
    for key, called in STEPS.items():
        if key not in row:
            continue
        if "follows" in row:
            raise wrong(f"follows from other sizes and says {key}; give them to those sizes")
        if not isinstance(row[key], list) or not all(map(_is_words, row[key])):
            raise wrong(f'has {key} that are not a list of texts; write {key} = ["0.25 mm", "0.50 mm"]')
        for text in row[key]:
            try:
                size = quantity(text, kind)
            except EntryError as error:
                raise wrong(f"has {key} that cannot be read: {error.problem}; {error.accepted}") from None
            if size <= 0:
                raise wrong(f"has {text} among its {key}; give each as more than nothing")
            offset = {"undersizes": -size, "oversizes": size, "sizes": size - sizes.get("nominal", 0)}[key]
            if abs(offset) > 1e-9:  # the nominal size itself may stand in the list
                found[round(offset, 12)] = Step(text + called, offset)
    return tuple(sorted(found.values(), key=lambda step: (abs(step.offset), step.offset)))


def _places(said, lists: dict, wrong) -> tuple:
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
    _check_places(said, wrong)
    return tuple(said)


def _check_places(said, wrong) -> None:
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


def _shared(own: tuple, parts: list, wrong) -> tuple:
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


def _terms(follows: str, shape: Form, other, wrong) -> tuple:
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


def _worked(terms: tuple, other) -> dict:
    """nominal, low and high of such a sum; the limits at the worst of theirs. In decimals, as they are
    written: 8.015 less 7.950 mm is 0.065 mm."""
    worked = {"nominal": Fraction(0), "low": Fraction(0), "high": Fraction(0)}
    for weight, id in terms:
        feature = other(id)
        ends = (feature.low, feature.high) if weight > 0 else (feature.high, feature.low)
        for what, size in zip(worked, (feature.nominal, *ends)):
            worked[what] = (
                None
                if size is None or worked[what] is None
                else worked[what] + Fraction(repr(weight)) * Fraction(repr(size))
            )
    return {what: None if value is None else float(value) for what, value in worked.items()}


def _is_words(x) -> bool:
    return isinstance(x, str) and bool(x.strip())


def _line(text: str, group: str, name: str = "") -> int:
    """Where a feature stands in the text, counted from 1; 1 where it is not found."""
    inside = False
    for number, line in enumerate(text.splitlines(), 1):
        head = re.match(r"\s*\[([^\]]+)\]", line)
        if head:
            inside = head[1].strip() == group
            if inside and not name or head[1].strip() == f"{group}.{name}":
                return number
        elif name and inside and re.match(rf"\s*{re.escape(name)}\s*=", line):
            return number
    return 1
