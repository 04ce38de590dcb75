"""What whoever bolts the engine together must check, for exactly the parts of a job, in the order in which an engine is closed."""

import math
import re
from dataclasses import dataclass, field

from calc.core.conformance import COVERAGE
from calc.core.result import Text, as_text, say
from calc.core.writing import to_unit
from calc.job.checking import sheet_of
from calc.job.contents import JobError
from calc.job.parts import groups
from calc.job.record import current, number
from calc.job.texts import read_size
from calc.job.verdicts import judge
from calc.reference.engine import Feature
from calc.reference.standards.threads import THREADS

_STAGES = ("assembly", "finished")  # what was read as received tells nothing of the part as it goes in
CYLINDERS = ("1", "2", "3", "4")
VALVES = tuple(f"{n} {kind}" for n in CYLINDERS for kind in ("intake", "exhaust"))


@dataclass(frozen=True)
class Check:
    """One check. `entries` fill its calculator with the job's readings and the sheet's limits, those of `place` where there are
    several: the one nearest to its limits. `open` names the inputs that are still to be read off the parts. `features` are the sizes
    that it is about; `state` and `said` what the job's own readings of them say ("" and None where there are none).
    """

    title: str
    why: str
    do: Text
    tool: str = ""
    calculator: str | None = None
    entries: dict = field(default_factory=dict)
    open: tuple = ()
    features: tuple = ()
    state: str = ""
    said: Text | None = None
    place: str = ""


def assembly_checks(job: dict, rows: list | None = None) -> list[Check]:
    """The checks that the job's parts call for, in order; `rows` are its verdicts, where they are at hand. An engine without a sheet here
    gets those that need no size."""
    view = _View(job, judge(job) if rows is None else rows)
    return [check for make in CHECKS for check in [make(view)] if check]


class _View:
    """What the checks ask of a job."""

    def __init__(self, job, rows):
        self.job, self.sheet, self.groups = job, sheet_of(job), groups(job)
        self.now, self.rows = current(job), {(row.feature, row.place): row for row in rows}

    def has(self, *wanted: str) -> bool:
        return all(group in self.groups for group in wanted)

    def any(self, *wanted: str) -> bool:
        return any(group in self.groups for group in wanted)

    def feature(self, id: str) -> Feature | None:
        return self.sheet.features.get(id) if self.sheet else None

    def text(self, id: str, place: str = "") -> str:
        """The reading that counts as an entry for a calculator, "" where there is none."""
        reading = next(
            (self.now[id, place, stage] for stage in _STAGES if (id, place, stage) in self.now), None
        )
        if reading is None:
            return ""
        try:
            value, u = number(self.job, reading)
        except JobError:
            return ""  # the sheet says what is wrong with it
        return (
            _entry(float(value), COVERAGE * u, value.form)
            if {"part", "gauge"} & set(reading)
            else reading["text"]
        )  # a warm one at 20 °C

    def limits(self, id: str) -> dict:
        """Lower and upper limit of a feature, as entries."""
        feature = self.feature(id)
        return _limits(feature.low, feature.high, feature)

    def judged(self, *ids: str) -> tuple:
        """What the job's readings of these features say: the gravest state, and how many are in order."""
        rows = [row for (feature, _), row in self.rows.items() if feature in ids and row.state and _told(row)]
        if not rows:
            return "", None
        states = [row.state for row in rows]
        gravest = next(state for state in ("fail", "unsure", "attention", "pass") if state in states)
        good = states.count("pass")
        return gravest, say("{good} of {all} in order", good=good, all=len(rows))

    def worst(self, *ids: str, places: tuple | None = None):
        """The row of these features that lies nearest to, or farthest outside, its limits, of these places where they are named;
        None where none is judged."""
        rows = [
            row
            for (id, place), row in self.rows.items()
            if id in ids
            and self.feature(id)
            and row.value is not None
            and _told(row)
            and (places is None or place in places)
        ]

        def margin(row):
            return min(
                float(row.value) - float(row.low) if row.low is not None else math.inf,
                float(row.high) - float(row.value) if row.high is not None else math.inf,
            )

        return min(rows, key=margin, default=None)

    def verdict(self, title: str, why: str, do: str, main: str, *features: str) -> Check | None:
        """A check of one size against its limits: the worst place is filled in, or the reading left to take."""
        feature = self.feature(main)
        if feature is None or (feature.low, feature.high) == (None, None):
            return None
        row = self.worst(main)
        entries = self.limits(main)
        if row is not None:  # its limits are those of the size that it was made to
            entries = _limits(row.low, row.high, feature) | {
                "reading": _entry(float(row.value), row.U, feature.form)
            }
        state, said = self.judged(
            main, *(id for id in features if id not in {part for _, part in feature.terms})
        )  # what it follows from is in it
        return Check(
            title,
            why,
            as_text(do),
            feature.tool,
            "reading-verdict",
            entries,
            ("reading",) if row is None else () if row.U else ("doubt",),
            (main, *features),
            state,
            said,
            row.place if row is not None else "",
        )

    def torque(self, title: str, why: str, do: str, id: str, clamped: str = "other") -> Check | None:
        """A nut to be tightened: its torque, and the thread that its name tells. Its bolt's class is on the bolt."""
        feature = self.feature(id)
        if feature is None:
            return None
        thread = _thread(feature.label)
        return Check(
            title,
            why,
            say(do, torque=_span(feature)),
            feature.tool,
            "torque-preload" if thread else None,
            {"torque": feature.text, "thread": thread, "clamped": clamped} if thread else {},
            ("strength",) if thread else (),
            (id,),
        )


def _told(row) -> bool:
    """Was it read, or can it be worked out, as it goes in?"""
    return row.finished is not None or row.assembly is not None


def _entry(value: float, U: float | None, shape) -> str:
    """A size that was worked out, or a limit, as an entry: to nine decimals, without what floats leave behind."""
    unit = shape.metric
    text = f"{round(to_unit(value, unit), 9):.12g} {unit.symbol}".strip()
    return f"{text} ± {to_unit(U + float(unit.offset), unit):.3g} {unit.symbol}".strip() if U else text


def _limits(low, high, feature: Feature) -> dict:
    """Limits as entries, empty where there is none."""
    return {
        name: "" if limit is None else _entry(float(limit), 0, feature.form)
        for name, limit in (("low", low), ("high", high))
    }


def _span(feature: Feature) -> Text:
    if feature.low is None or feature.high is None:
        return say("{n}", n=feature.number("nominal"))
    return say("{low} to {high}", low=feature.number("low"), high=feature.number("high"))


def _thread(label: str) -> str:
    """The thread that a label names, as the calculators call it: "Rod nut, M9×1" → "M9x1", a bare "M10" its coarse one."""
    found = re.search(r"\bM(\d+(?:\.\d+)?)(?:\s?[x×]\s?(\d+(?:\.\d+)?))?", label)
    if not found:
        return ""
    named = (
        f"M{found[1]}x{found[2]}"
        if found[2]
        else next((name for name in THREADS if name.startswith(f"M{found[1]}x")), "")
    )
    return named if named in THREADS else ""


# --- The checks, in the order in which an engine is closed -----------------------------------------


def _clean(view):
    return Check(
        "Every passage clean",
        "Metal left by machining goes through the bearings first.",
        as_text(
            "Flush and blow through every oil hole and blind thread until a white rag stays white."
            " Goggles on."
        ),
    )


def _matched(view):
    if not view.any("rod", "valve", "head", "piston", "crankcase", "lifter"):
        return None
    return Check(
        "Each part to its own place",
        "They were sized to each other.",
        as_text(
            "Lay them out by their numbers; caps on their own rods, numbers together."
            if view.has("rod")
            else "Lay them out by their numbers."
        ),
    )


def _mains(view):
    if not view.has("crank", "crankcase"):
        return None
    return view.verdict(
        "Main bearing clearance",
        "Too little seizes, too much loses the oil pressure.",
        "Shells in dry, case bolted up to its torque, bores measured; less the journals.",
        "crankcase.main_clearance",
        "crankcase.main_housing",
        "crankcase.main_shell_wall",
        "crank.main_journal",
    )


def _rods_straight(view):
    bend, twist = view.feature("rod.bend"), view.feature("rod.twist")
    if not view.has("rod") or bend is None or twist is None:
        return None
    read = tuple(
        place
        for place in bend.places or ("",)
        if view.text("rod.bend", place) and view.text("rod.twist", place)
    )
    row = view.worst("rod.bend", "rod.twist", places=read)
    filled = (view.text("rod.bend", row.place), view.text("rod.twist", row.place), row.place) if row else None
    limits = {
        name: _entry(limit, 0, f.form)
        for f, short in ((bend, "bend"), (twist, "twist"))
        for name, limit in ((f"{short}_new", f.high), (f"{short}_worn", f.wear))
        if limit is not None
    }
    entries = limits | (
        {
            "bend_left": "0 mm",
            "bend_right": filled[0],
            "twist_left": "0 mm",
            "twist_right": filled[1],
            "span": "100 mm",
        }
        if filled
        else {}
    )
    state, said = view.judged("rod.bend", "rod.twist")
    return Check(
        "Rods straight",
        "A bent rod tips its piston and wears one end of each shell.",
        as_text("On a rod gauge, upright for bend and laid over for twist; without one, ask the shop."),
        bend.tool,
        "rod-align",
        entries,
        () if filled else ("bend_left", "bend_right", "twist_left", "twist_right", "span"),
        ("rod.bend", "rod.twist"),
        state,
        said,
        filled[2] if filled else "",
    )


def _rod_weights(view):
    big, small = view.feature("rod.big_end_mass"), view.feature("rod.small_end_mass")
    if not view.has("rod") or big is None or small is None:
        return None
    cells = [
        [view.text(f"rod.{name}", place) for name in ("big_end_mass", "small_end_mass", "mass")]
        for place in CYLINDERS
    ]
    if sum(bool(row[0] and row[1]) for row in cells) < 2:
        return None  # weighed by the shop, or not at all: nobody weighs rods at home
    state, said = view.judged("rod.big_end_mass", "rod.small_end_mass", "rod.mass")
    return Check(
        "Rods of one weight",
        "Rods that differ shake the engine.",
        as_text("Compare with the tags; end weights of all four alike."),
        big.tool,
        "rod-weights",
        {"weights": _grid([row if row[0] and row[1] else [] for row in cells])},
        (),
        ("rod.big_end_mass", "rod.small_end_mass", "rod.mass"),
        state,
        said,
    )


def _rod_bearings(view):
    if not view.has("rod", "crank"):
        return None
    return view.verdict(
        "Rod bearing clearance",
        "Too little seizes, too much hammers.",
        "Rod bolted up with its shells, bore measured; less the journal. Or a gauging strip in each cap.",
        "rod.bearing_clearance",
        "rod.big_end_bore",
        "rod.shell_wall",
        "crank.rod_journal",
    )


def _rod_nuts(view):
    if not view.has("rod", "crank"):
        return None
    return view.torque(
        "Rod nuts",
        "A bolt that slackens breaks, and the rod goes through the case.",
        "New bolts and nuts, oiled as the maker says, in steps to {torque}. Each rod then falls by its own"
        " weight.",
        "torque.rod_nut",
    )


def _rod_sides(view):
    if not view.has("rod", "crank"):
        return None
    return view.verdict(
        "Rod side clearance",
        "Too little binds, too much throws oil.",
        "Feelers between rod and cheek.",
        "rod.side_clearance",
        "crank.rod_journal_length",
        "rod.width",
    )


def _end_float(view):
    if not view.has("crank") or not view.any("crankcase", "flywheel"):
        return None
    return view.verdict(
        "Crank end float",
        "Too little burns the thrust face, too much knocks.",
        "Case bolted up, flywheel or its gauge plate at full torque; push and pull the crank.",
        "crank.end_float",
    )


def _cam(view):
    if not view.has("cam", "crankcase"):
        return None
    return view.verdict(
        "Cam bearing clearance and end float",
        "The cam bearings feed the lifters.",
        "Case bolted up without the crank; then cam in, its marks on the crank's.",
        "cam.clearance",
        "crankcase.cam_bore",
        "cam.journal",
        "cam.end_float",
    )


def _lifters(view):
    if not view.has("lifter", "crankcase"):
        return None
    return view.verdict(
        "Lifters free in the case",
        "One that sticks holds its valve open.",
        "Each oiled, in its own bore: it must sink by its own weight and turn.",
        "lifter.clearance",
        "crankcase.lifter_bore",
        "lifter.body",
    )


def _case_nuts(view):
    if not view.has("crankcase"):
        return None
    return view.torque(
        "Close the case",
        "It is opened again for everything found later.",
        "Inside once more: clips, plugs, marks, no rag. Nuts in steps to {torque}, from the middle out; the"
        " crank turns by hand after each step.",
        "torque.case_nut",
    )


def _pistons(view):
    if not view.has("piston", "cylinder"):
        return None
    return view.verdict(
        "Piston clearance",
        "Too little seizes when hot.",
        "Across the skirt, against the bore of its own cylinder.",
        "piston.clearance",
        "cylinder.bore",
        "piston.diameter",
    )


def _ring_gaps(view):
    if not view.has("piston", "cylinder"):
        return None
    return view.verdict(
        "Ring gaps",
        "A ring whose ends meet when hot breaks its land.",
        "Each ring in its own cylinder, pushed down square with a piston.",
        "piston.ring_gap",
    )


_CHAIN = (
    ("crankcase.seat_height", "1"),
    ("cylinder.length", "1"),
    ("crank.throw", "−1"),
    ("rod.centre_distance", "−1"),
    ("piston.compression_height", "−1"),
)


def _deck(view):
    deck = view.feature("crankcase.deck_height")
    if deck is None or not view.has("crankcase") or not view.any("rod", "cylinder", "piston"):
        return None

    def chain(place):
        return [(view.text(id, place if view.feature(id).places else ""), way) for id, way in _CHAIN]

    title, why = "Deck height", "It sets the compression, and keeps piston and head apart."
    do = (
        "Each cylinder with its shims held down, piston at the top: crown below the cylinder's face. Both of"
        " a pair alike."
    )
    features, row = tuple(id for id, _ in _CHAIN), view.worst(deck.id)
    place = row.place if row else ""
    chain = [
        (view.text(id, place if feature.places else ""), feature, way)
        for id, way in _CHAIN
        if (feature := view.feature(id))
    ]
    if row is None or len(chain) < len(_CHAIN) or not all(text for text, *_ in chain):
        return view.verdict(title, why, do, deck.id, *features)
    rows = []
    for text, feature, way in chain:
        entry = read_size(text, feature.form.kind)
        doubt = _entry(entry.doubt or 0, 0, feature.form)
        rows.append([_entry(entry.value, 0, feature.form), doubt, doubt, way])
    state, said = view.judged(deck.id)
    return Check(
        title,
        why,
        as_text(do),
        deck.tool or "a depth gauge",
        "stack-up",
        {"chain": _grid(rows)} | view.limits(deck.id),
        (),
        (deck.id, *features),
        state,
        said,
        place,
    )


def _leak(view):
    if not view.has("head"):
        return None
    return Check(
        "Valves tight",
        "A leak burns its seat within hours.",
        as_text(
            "Plug in, valves and springs on, chamber level: no drip into the port in two minutes, or a"
            " pressure test."
        ),
        "a little thin solvent, a lamp",
        "leak-test",
        {},
        ("start", "end", "time"),
    )


def _stems(view):
    feature = view.feature("head.stem_height")
    if not view.has("head") or feature is None:
        return None
    texts = [view.text(feature.id, place) for place in VALVES]
    state, said = view.judged(feature.id)
    return Check(
        "Stem heights",
        "They set the springs and the rockers' angle.",
        as_text("From the spring's bed to each tip: as on this sheet, and all alike."),
        feature.tool,
        "stem-height",
        view.limits(feature.id)
        | {"wanted": feature.text}
        | ({"heights": _grid([[text] for text in texts])} if any(texts) else {}),
        () if any(texts) else ("heights",),
        (feature.id,),
        state,
        said,
    )


def _guides(view):
    if not view.has("guide", "valve"):
        return None
    row = view.worst("guide.clearance_intake", "guide.clearance_exhaust")
    if row is None:
        return None
    kind = row.feature.removeprefix("guide.clearance_")
    state, said = view.judged("guide.clearance_intake", "guide.clearance_exhaust")
    return Check(
        "Valves free in their guides",
        "A stem that binds hot holds its valve open.",
        as_text("Each lifted a little and rocked: all alike."),
        "a small bore gauge and a micrometer",
        "guide-fit",
        {
            "valve": kind,
            "stem": view.text(f"valve.stem_{kind}", row.place),
            "guide_bore": view.text("guide.bore", row.place),
        },
        (),
        ("guide.bore", f"valve.stem_{kind}"),
        state,
        said,
        row.place,
    )


def _chambers(view):
    feature = view.feature("chamber.volume")
    if not view.has("chamber") or feature is None:
        return None
    texts = [view.text(feature.id, place) for place in CYLINDERS]
    if not any(texts):
        return None
    state, said = view.judged(feature.id)
    return Check(
        "Chambers alike",
        "Unlike chambers pull unlike.",
        as_text("Heads by their numbers: each cylinder has the chamber of this sheet."),
        feature.tool,
        "chamber-volume",
        view.limits(feature.id) | {"wanted": feature.text, "readings": _grid([[text] for text in texts])},
        (),
        (feature.id,),
        state,
        said,
    )


def _head_nuts(view):
    if not view.has("head"):
        return None
    return view.torque(
        "Head nuts",
        "Uneven nuts bend the head, and it leaks.",
        "Studs clean, washers on, in steps and crosswise to {torque}.",
        "torque.head_nut",
        clamped="cylinder",
    )


def _lash(view):
    if not view.has("lifter") or not view.any("head", "valve"):
        return None
    preload = view.feature("lifter.preload")
    if preload is None or not any(
        feature in ("lifter.preload", "lifter.travel", "lifter.unit_outside") for feature, *_ in view.now
    ):  # no plunger units here
        return view.verdict(
            "Valve lash",
            "Too little burns the valve, too much wears the cam.",
            "Cold, each cylinder at the top of its compression.",
            "lifter.lash",
        )
    row = view.worst(preload.id)
    place = row.place if row else ""
    entries = {name: view.text(f"lifter.{name}", place) for name in ("preload", "travel", "pushrod")}
    state, said = view.judged("lifter.preload", "lifter.travel")
    return Check(
        "Plungers off both stops",
        "A plunger on its stop holds the valve open or rattles.",
        as_text("Each lifter on its base circle, bled down: how far its plunger is pressed in."),
        preload.tool,
        "plunger-travel",
        {name: text for name, text in entries.items() if text},
        () if row else ("preload",),
        ("lifter.preload", "lifter.travel", "lifter.pushrod"),
        state,
        said,
        place,
    )


def _flywheel(view):
    if not view.has("flywheel"):
        return None
    return view.verdict(
        "Flywheel runout",
        "It shakes the clutch and loosens its nut.",
        "Dial gauge on the face, crank pushed to one end; then the end float once more.",
        "flywheel.runout",
    )


def _through(view):
    oil = (
        "oil pressure made by a hand pump: new or refaced lifter feet are not cranked"
        if view.any("lifter", "cam")
        else "turned by the starter without ignition until there is oil pressure"
    )
    return Check(
        "Turned through by hand",
        "A tight spot that you feel now is a seized part later.",
        as_text(f"Two whole turns, plugs out. Then oil in, and {oil}."),
    )


CHECKS = (
    _clean,
    _matched,
    _mains,
    _cam,
    _rods_straight,
    _rod_weights,
    _rod_bearings,
    _rod_nuts,
    _rod_sides,
    _lifters,
    _case_nuts,
    _end_float,
    _ring_gaps,
    _pistons,
    _deck,
    _leak,
    _guides,
    _stems,
    _chambers,
    _head_nuts,
    _lash,
    _flywheel,
    _through,
)


def _grid(rows: list) -> str:
    """Rows of cells as one entry."""
    return " | ".join("; ".join(row) for row in rows)
