"""What is asked of a lobe that is to be ground, or was, and what it is held to."""

from typing import Any

from calc.declare.calculator import Inputs, Number, choice, given, limit, measured
from calc.formulas.lobe import HARMONIC, LAWS
from calc.stations.shared.forms import COARSE, DEGREES, ROUGH, SIZE, TIMES

PLAN, GROUND = "plan", "ground"
SAME = "same"
SOLID, HYDRAULIC = "solid", "hydraulic"
CORE, JOURNAL = "core", "journal"


def _across(label: str, symbol: str, example: str, hint: str, **more: Any) -> Any:
    return measured(
        label,
        symbol,
        SIZE,
        tool="a micrometer",
        hard="10 to 150 mm",
        usual="20 to 60 mm",
        example=example,
        hint=hint,
        **more,
    )


def _lift(label: str, symbol: str, which: str) -> Any:
    return limit(
        label, symbol, COARSE, feature="cam.lobe_lift", which=which, hard="1 to 25 mm", usual="4 to 14 mm"
    )


def _taper(label: str, symbol: str, which: str) -> Any:
    return limit(
        label, symbol, SIZE, feature="cam.lobe_taper", which=which, hard="0 to 1 mm", usual="0 to 0.1 mm"
    )


def _beside(label: str, symbol: str, feature: str) -> Any:
    return limit(label, symbol, SIZE, feature=feature, which="high", hard="5 to 100 mm", usual="15 to 50 mm")


def _skin(label: str, symbol: str, feature: str, which: str) -> Any:
    return limit(label, symbol, COARSE, feature=feature, which=which, hard="0 to 10 mm", usual="0.2 to 5 mm")


class In(Inputs):
    how: str = choice(
        "The cam", {PLAN: "is used, and may be ground", GROUND: "was ground, and is inspected"}, default=PLAN
    )
    nose: Number = _across(
        "From heel to nose",
        "H",
        "37.940 mm",
        "Of the worst lobe, at the edge where it is larger: all lobes of a kind are ground to it.",
    )
    heel: Number = _across(
        "Across the heel, square to the nose",
        "D",
        "29.980 mm",
        "The base circle's diameter. Lean off square and the faces stand on a flank.",
    )
    other: Number = _across(
        "From heel to nose, at the other edge",
        "H_2",
        "37.920 mm",
        "The lobe is ground with a small taper, so that the lifter turns.",
        when=("how", GROUND),
    )
    pit: Number = given(
        "Deepest pit or score",
        "p",
        COARSE,
        hard="0 to 5 mm",
        usual="0 to 0.5 mm",
        hint="From the face beside it.",
        assumed=("0.00 mm", "a lobe worn smooth, without pits"),
        when=("how", PLAN),
    )
    new_lift: Number = given(
        "Lobe lift to be ground",
        "h",
        COARSE,
        hard="1 to 25 mm",
        usual="4 to 14 mm",
        feature="cam.lobe_lift",
        when=("how", PLAN),
    )
    stock: Number = given(
        "The wheel takes all round at least",
        "s",
        COARSE,
        hard="0 to 2 mm",
        usual="0.03 to 0.3 mm",
        fold=True,
        assumed=("0.10 mm", "to clean up all round and set the lobe in step; common practice, no source"),
        when=("how", PLAN),
    )
    base_made: Number = measured(
        "Base circle as the cam was made",
        "D_0",
        SIZE,
        tool="a micrometer, on an unworn lobe",
        hard="10 to 150 mm",
        usual="20 to 60 mm",
        feature="cam.base_circle",
        stage="",
        fold=True,
        hint="What lifters, pushrods and adjusters fitted until now.",
    )
    lift_made: Number = given(
        "Lobe lift as made",
        "h_0",
        COARSE,
        hard="1 to 25 mm",
        usual="4 to 14 mm",
        feature="cam.lobe_lift",
        fold=True,
    )
    law: str = choice(
        "The new lobe",
        {SAME: "the old one, smaller all round", **LAWS, HARMONIC: "harmonic, as old lobes were laid out"},
        default=SAME,
        fold=True,
        hint="Another lift or another duration is another lobe: ask the grinder for its law.",
    )
    nose_radius: Number | None = measured(
        "Radius of the nose, as made",
        "r_0",
        ROUGH,
        tool="radius gauges",
        hard="0.3 to 40 mm",
        usual="2 to 15 mm",
        feature="cam.nose_radius",
        stage="",
        fold=True,
        when=("law", SAME),
    )
    flank: Number = given(
        "Lobe, base circle to nose, at the cam",
        "β",
        DEGREES,
        hard="30 to 120°",
        usual="50 to 90°",
        feature="cam.flank_angle",
        fold=True,
    )
    foot: Number | None = measured(
        "Lifter's flat foot, across",
        "d_f",
        COARSE,
        tool="a calliper",
        hard="5 to 80 mm",
        usual="15 to 40 mm",
        fold=True,
        hint="Without its bevel. Judged where the new lobe's law is known.",
    )
    ratio: Number = given(
        "Rocker's ratio",
        "i",
        TIMES,
        hard="0.5 to 3",
        usual="0.9 to 1.8",
        feature="valve.rocker_ratio",
        fold=True,
    )
    lifters: str = choice(
        "Lifters",
        {SOLID: "solid, lash set by the adjuster", HYDRAULIC: "hydraulic, nothing to adjust"},
        default=SOLID,
    )
    lash: Number = given(
        "Lash, cold",
        "s_l",
        COARSE,
        hard="0 to 2 mm",
        usual="0.05 to 0.3 mm",
        feature="lifter.lash",
        fold=True,
        when=("lifters", SOLID),
    )
    screwed: Number = given(
        "Adjuster off its middle now, towards the pushrod",
        "e",
        COARSE,
        hard="-15 to 15 mm",
        usual="-3 to 3 mm",
        assumed=("0.00 mm", "in the middle of its travel"),
        hint="Minus where it is screwed back.",
        when=("lifters", SOLID),
        fold=True,
    )
    preload: Number = measured(
        "Plunger pressed in until now",
        "v",
        COARSE,
        tool="a dial gauge, plunger bled down",
        hard="0 to 15 mm",
        usual="0.3 to 3 mm",
        feature="lifter.preload",
        stage="",
        when=("lifters", HYDRAULIC),
        fold=True,
    )
    reach: str = choice(
        "The lifter's foot reaches over",
        {JOURNAL: "the cam beside the lobe, and a journal", CORE: "the cam beside the lobe, no journal"},
        default=JOURNAL,
        fold=True,
    )
    room: Number = given(
        "Room that the foot needs over what stands beside",
        "c",
        COARSE,
        hard="0 to 3 mm",
        usual="0.1 to 1 mm",
        fold=True,
        assumed=("0.25 mm", "taper, end float and oil; common practice, no source"),
    )
    lost_most: Number = given(
        "Base circle's radius, may lose without another look",
        "Δ_m",
        COARSE,
        hard="0 to 10 mm",
        usual="0.3 to 2 mm",
        fold=True,
        assumed=("1.00 mm", "common practice, no source"),
    )
    lift_low: Number = _lift("Lobe lift, least", "h_min", "low")
    lift_high: Number = _lift("Lobe lift, most", "h_max", "high")
    taper_low: Number | None = _taper("Lobe taper, least", "t_min", "low")
    taper_high: Number | None = _taper("Lobe taper, most", "t_max", "high")
    nose_least: Number | None = limit(
        "Radius of the nose, least",
        "r_min",
        ROUGH,
        feature="cam.nose_radius",
        which="wear",
        hard="0.3 to 40 mm",
        usual="1 to 10 mm",
    )
    hard_depth: Number | None = _skin("Hardened layer as made, least", "k", "cam.hard_depth", "low")
    hard_left: Number | None = _skin("Hardened layer to be left, least", "k_min", "cam.hard_left", "nominal")
    core: Number | None = _beside("Cam beside its lobes, largest", "d_c", "cam.core")
    journal: Number | None = _beside("Cam journal, largest", "d_j", "cam.journal")
    travel: Number | None = limit(
        "Adjuster's travel, stop to stop",
        "S",
        ROUGH,
        feature="rocker.adjuster",
        which="nominal",
        hard="0.5 to 25 mm",
        usual="2 to 12 mm",
    )
    preload_low: Number | None = limit(
        "Plunger pressed in, least",
        "v_min",
        COARSE,
        feature="lifter.preload",
        which="low",
        hard="0 to 10 mm",
        usual="0.3 to 3 mm",
    )
    preload_high: Number | None = limit(
        "Plunger pressed in, most",
        "v_max",
        COARSE,
        feature="lifter.preload",
        which="high",
        hard="0 to 12 mm",
        usual="0.5 to 4 mm",
    )
    valve_lift_high: Number | None = limit(
        "Valve lift, most",
        "L_max",
        COARSE,
        feature="valve.lift",
        which="high",
        hard="1 to 30 mm",
        usual="5 to 15 mm",
        hint="With solid lifters and their lash; of hydraulic ones it is not judged.",
    )
