"""What every calculator of a shell bearing asks alike: which bearing it is, and of main and rod bearing the
sizes, limits, metals and temperatures that its engine's sheet knows."""

from typing import Any

from calc.declare.calculator import choice, given, limit, measured
from calc.reference.materials import MATERIALS
from calc.stations.shared.forms import DEGREES_C, ROUGH, SIZE

MAIN, ROD = "main", "rod"
BEARINGS = {MAIN: "A main bearing", ROD: "A rod bearing"}
CASES = ("mg-az91", "al-si-t6", "al-si-cu-t6", "grey-iron")
RODS = ("forged-steel", "ductile-iron", "al-si-t6")
MAIN_SHELLS = ("al-si-t6", "forged-steel", "bronze", "aluminium-bronze")
ROD_SHELLS = ("forged-steel", "bronze", "aluminium-bronze", "al-si-t6")
CRANKS = ("forged-steel", "ductile-iron")

_OF = {MAIN: "main bearing", ROD: "big end"}
_CLEARANCE = {MAIN: "crankcase.main_clearance", ROD: "rod.bearing_clearance"}
_WALL = {MAIN: "crankcase.main_shell_wall", ROD: "rod.shell_wall"}
_JOURNAL = {MAIN: "crank.main_journal", ROD: "crank.rod_journal"}
_HOUSING = {MAIN: "crankcase.main_housing", ROD: "rod.big_end_bore"}
_ROUND = {MAIN: "crankcase.main_housing_wall", ROD: "rod.big_end_wall"}
_PROUD = {MAIN: "crankcase.main_shell_proud", ROD: "rod.shell_proud"}
_HEAT = {MAIN: "crankcase.running_temperature", ROD: "rod.big_end_running_temperature"}
_METAL = {
    MAIN: ("crankcase.alloy", CASES, "a magnesium case; common practice, no source"),
    ROD: ("rod.alloy", RODS, "a forged rod; common practice, no source"),
}
_SHELL = {
    MAIN: (
        "crankcase.main_shell_alloy",
        MAIN_SHELLS,
        "thick shells of aluminium; common practice, no source",
    ),
    ROD: ("rod.shell_alloy", ROD_SHELLS, "thin shells on steel; common practice, no source"),
}
_LIMITS = {"low": ("Clearance, least", "c_min"), "high": ("Clearance of fresh parts, most", "c_max")}


def which_bearing(first: str = MAIN) -> Any:
    """Input: main or rod bearing; `first` stands in sight."""
    return choice("Bearing", BEARINGS, default=first)


def housing(kind: str, when: tuple[str, ...], **more: Any) -> Any:
    """Input: the housing's bore, bolted up without its shells."""
    return measured(
        f"Bore of the {_OF[kind]}, no shells, least",
        f"D_{kind[0]}",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="20 to 200 mm",
        usual="40 to 90 mm",
        feature=_HOUSING[kind],
        of=f"{kind}_metal",
        when=when,
        **more,
    )


def wall(kind: str, when: tuple[str, ...], **more: Any) -> Any:
    """Input: the wall of one shell at its crown."""
    return measured(
        f"Wall of one {kind} shell at the crown, thickest",
        f"w_{kind[0]}",
        SIZE,
        tool="a ball micrometer",
        hard="0.5 to 15 mm",
        usual="1.2 to 6 mm",
        feature=_WALL[kind],
        when=when,
        **more,
    )


def journal(kind: str, when: tuple[str, ...], **more: Any) -> Any:
    """Input: the journal where it is thickest."""
    return measured(
        f"{kind.capitalize()} journal, largest",
        f"d_{kind[0]}",
        SIZE,
        tool="a micrometer",
        hard="15 to 180 mm",
        usual="35 to 80 mm",
        feature=_JOURNAL[kind],
        of="journal_metal",
        when=when,
        **more,
    )


def clearance_limit(kind: str, which: str, when: tuple[str, ...]) -> Any:
    """Input: least (low) or most (high) clearance of fresh parts, or the clearance at which it is worn
    (wear)."""
    label, symbol = _LIMITS.get(which, ("Clearance at which it is worn", "c_worn"))
    return limit(
        f"{label}, {kind}",
        f"{symbol},{kind[0]}",
        SIZE,
        feature=_CLEARANCE[kind],
        which=which,
        hard="0 to 0.5 mm",
        usual="0.015 to 0.2 mm",
        when=when,
    )


def proud(kind: str, when: tuple[str, ...]) -> Any:
    """Input: how far a shell stands proud, where that is known."""
    return given(
        f"One {kind} shell stands proud of one joint",
        f"a_{kind[0]}",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.01 to 0.08 mm",
        feature=_PROUD[kind],
        fold=True,
        hint="Its other end flush. Empty: what the crush opens the housing by is left out.",
        when=when,
    )


def opens(kind: str, when: tuple[str, ...]) -> Any:
    """Input: by how much the shells' crush opens the housing, where that is known."""
    return given(
        f"Crush of the {kind} shells opens the housing by",
        f"u_{kind[0]}",
        SIZE,
        hard="0 to 0.1 mm",
        usual="0.001 to 0.03 mm",
        feature={MAIN: "crankcase.main_crush_opens", ROD: "rod.crush_opens"}[kind],
        fold=True,
        hint="As “Bearing clearance” tells it. Empty: it is left out.",
        when=when,
    )


def wall_round(kind: str, when: tuple[str, ...]) -> Any:
    """Input: the thinnest wall of the housing, where it is known."""
    return given(
        f"Least wall round the {_OF[kind]}",
        f"h_{kind[0]}",
        ROUGH,
        hard="2 to 150 mm",
        usual="6 to 50 mm",
        feature=_ROUND[kind],
        fold=True,
        when=when,
    )


def metal(kind: str, when: tuple[str, ...]) -> Any:
    """Input: what the housing is made of."""
    feature, ids, why = _METAL[kind]
    label = f"{'Crankcase' if kind == MAIN else 'Rod'}, material"
    return _known_metal(label, ids, feature, why, when)


def heat(kind: str, when: tuple[str, ...]) -> Any:
    """Input: the housing's temperature, running."""
    return given(
        f"{'Case at the main bearings' if kind == MAIN else 'Big end'}, running",
        f"T_{kind[0]}",
        DEGREES_C,
        hard="-60 to 200 °C",
        usual="60 to 140 °C",
        feature=_HEAT[kind],
        fold=True,
        assumed="common practice, no source",
        when=when,
    )


def shell_metal(kind: str, when: tuple[str, ...]) -> Any:
    """Input: what the shells are made of, or their backing."""
    feature, ids, why = _SHELL[kind]
    return _known_metal(f"{kind.capitalize()} shells, material or backing", ids, feature, why, when)


def journal_metal() -> Any:
    """Input: what the crank is made of."""
    return _known_metal(
        "Crank, material", CRANKS, "crank.alloy", "a forged crank; common practice, no source"
    )


def _known_metal(label: str, ids: tuple[str, ...], feature: str, why: str, when: tuple[str, ...] = ()) -> Any:
    """Input: a material that the sheet knows, or else the first, for that reason."""
    options = {id: MATERIALS[id].name for id in ids}
    return choice(label, options, feature=feature, assumed=(ids[0], why), fold=True, when=when)


def running(label: str, symbol: str, feature: str) -> Any:
    """Input: a temperature while the engine runs."""
    return given(
        label,
        symbol,
        DEGREES_C,
        hard="-60 to 150 °C",
        usual="60 to 140 °C",
        feature=feature,
        fold=True,
        assumed="common practice, no source",
    )
