"""Fins of two castings compared: how well each fin works, what area is really at work, and the heat that it sheds."""

import math

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Plot, Series
from calc.core.kinds import (
    AREA,
    CONDUCTANCE,
    CONDUCTIVITY,
    COUNT,
    DENSITY,
    HEAT,
    HEAT_TRANSFER,
    LENGTH,
    RATIO,
    SPECIFIC_HEAT,
    SPEED,
    TEMPERATURE_DIFFERENCE,
)
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import constant, exp, form, least, sqrt, step, tanh
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    Rows,
    answer,
    calculator,
    choice,
    column,
    given,
    grid,
    measured,
)
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS

SIZE, SMALL, FACE, AIR, WATTS, PERK = (
    form(LENGTH, 1),
    form(LENGTH, 2),
    form(AREA, 0, "cm²", "in²"),
    form(HEAT_TRANSFER, 1),
    form(HEAT, 0),
    form(CONDUCTANCE, 2),
)
KELVIN = form(TEMPERATURE_DIFFERENCE, 0)
SHARE, CHANGE = form(RATIO, 1, "%", "%"), form(RATIO, 1, "%", "%")
CASTINGS = ("This one", "The other")
ALLOYS = ("al-si-t6", "al-si-cu-t6", "mg-az91", "grey-iron", "ductile-iron")
NARROW, DEEP = (
    constant("", "", SIZE, 3.5e-3),
    10.0,
)  # a gap narrower than this, or a channel deeper than so many gaps, starves; common practice, no source
AIR_DENSITY = constant(
    "ρ", "Density of air, 50 °C at sea level", form(DENSITY, 3), 1.093, sources.COOLING_AIR
)
AIR_HEAT = constant("c_p", "Specific heat of air", form(SPECIFIC_HEAT, 0), 1007.0, sources.COOLING_AIR)
WARMEST = 0.999  # of the wall's heat over the air: nearer to it no coefficient brings the air
HIGH = 0.20  # the trade sees a tenth to a fifth more; common practice, no source


class Out(Outputs):
    change = Output("Heat shed by the other, more than this one", "Δ", CHANGE, main=True)
    change_least = Output("The same with a fan that gives no more pressure", "Δ_f", CHANGE, main=True)
    heat_this = Output("This one sheds", "Q_1", WATTS)
    heat_other = Output("The other sheds", "Q_2", WATTS, main=True)
    warmer_this = Output("Air leaves this one warmer by", "ΔT_1", KELVIN)
    warmer_other = Output("Air leaves the other warmer by", "ΔT_2", KELVIN)
    speed_other = Output("Air between the other's fins then, fan as before", "v_f", form(SPEED, 1))
    efficiency_this = Output("Efficiency of a fin, this one", "η_1", SHARE)
    efficiency_other = Output("Efficiency of a fin, the other", "η_2", SHARE)
    overall_this = Output("Efficiency of fins and bare wall, this one", "η_o1", SHARE)
    overall_other = Output("Efficiency of fins and bare wall, the other", "η_o2", SHARE)
    area_this = Output("Area, this one", "A_1", FACE)
    area_other = Output("Area, the other", "A_2", FACE)
    effective_this = Output("Area at work, this one", "A_e1", FACE)
    effective_other = Output("Area at work, the other", "A_e2", FACE)
    even = Output("Coefficient at which the other sheds no more than this one", "h_e", AIR)
    may_fall = Output("Its coefficient may be less than this one's by", "h_f", SHARE)


def fin_number(coefficient, conductivity, thickness, length):
    """m·L_c, the one pure number that a straight fin's efficiency hangs on: m = √(2h/(k·t)) for a fin much wider than thick;
    L_c = L + t/2 counts the tip as area, for a tip that sheds heat as the sides do."""
    return sqrt(2 * coefficient / (conductivity * thickness)) * (length + thickness / 2)


def fin_efficiency(x):
    """Heat that a straight fin sheds over what it would if it were as hot as its root all over: tanh(x)/x with x = m·L_c above 0."""
    return tanh(x) / x


def fin_area(thickness, length, width):
    """Both sides and the tip of one fin, m²; its end faces left out."""
    return 2 * width * (length + thickness / 2)


def overall_efficiency(efficiency, fins, total):
    """Efficiency of fins and bare wall together: 1 − A_f/A_t·(1 − η)."""
    return 1 - fins / total * (1 - efficiency)


def shed(fins, thickness, length, gap, width, coefficient, conductivity) -> float:
    """Heat shed per kelvin, W/K. Plain floats."""
    each = fins * fin_area(thickness, length, width)
    return coefficient * (
        fins * gap * width + each * fin_efficiency(fin_number(coefficient, conductivity, thickness, length))
    )


def warmed(conductance, capacity):
    """Heat per kelvin of wall over *entering* air, W/K: air that takes up `capacity` W per kelvin of its own rise gets warmer along the fins."""
    return capacity * (1 - exp(-conductance / capacity))


def unwarmed(heat, capacity) -> float:
    """The conductance that, with the air's own warming, sheds so much per kelvin: the reverse of `warmed`. Plain floats."""
    return -capacity * math.log(1 - min(heat / capacity, WARMEST))


def hydraulic_diameter(gap, length):
    """Four times area over girth of a channel between two fins, closed by the baffle."""
    return 2 * gap * length / (gap + length)


def coefficient_for(conductance, sizes, conductivity) -> float:
    """Coefficient at which fins of those sizes shed so much per kelvin, W/(m²·K): the reverse of `shed`, by halving.

    Between the fins the wall itself sheds coefficient · area, whatever the fins do, so it is not above conductance / that area.
    """
    fins, _, _, gap, width = sizes
    low, high = 0.0, conductance / (fins * gap * width)
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if shed(*sizes, middle, conductivity) < conductance else (low, middle)
    return (low + high) / 2


class In(Inputs):
    fins: Rows = grid(
        "Fins",
        rows=CASTINGS,
        columns=(
            column("Count", "N", form(COUNT, 0), hard="1 to 200", usual="5 to 40"),
            column("Thick", "t", SMALL, hard="0.3 to 20 mm", usual="1 to 4 mm"),
            column("Long", "L", SIZE, hard="1 to 150 mm", usual="8 to 50 mm"),
            column("Gap", "g", SMALL, hard="0.3 to 100 mm", usual="2 to 10 mm"),
        ),
        least=2,
        tool="a calliper, half way up the fin",
        hint="Thickness and gap at half length, where a fin tapers. Long: from root to tip.",
        example="14; 2.00; 22.0; 4.50 | 15; 2.00; 24.0; 4.00",
    )
    air: Number = given(
        "Air's coefficient, this one",
        "h_1",
        AIR,
        hard="5 to 500 W/(m²·K)",
        usual="20 to 150 W/(m²·K)",
        assumed=("60 W/(m²·K)", "with a fan; common practice, no source"),
        hint="40 to 80 W/(m²·K) with a fan.",
    )
    air_other: Number | None = given(
        "Air's coefficient, the other",
        "h_2",
        AIR,
        hard="5 to 500 W/(m²·K)",
        usual="20 to 150 W/(m²·K)",
        hint="Empty: the same. With closer fins it is less.",
        example="57 W/(m²·K)",
    )
    alloy: str = choice(
        "Alloy, this one", {id: MATERIALS[id].name for id in ALLOYS}, must=True, example="al-si-t6"
    )
    alloy_other: str = choice(
        "Alloy, the other", {id: MATERIALS[id].name for id in ALLOYS}, must=True, example="al-si-t6"
    )
    width: Number = measured(
        "Fins run along the wall for",
        "W",
        SIZE,
        tool="a rule, all round the finned part",
        hard="10 to 2000 mm",
        usual="80 to 600 mm",
        example="200 mm",
    )
    path: Number | None = given(
        "Air flows along them for",
        "W_a",
        SIZE,
        hard="5 to 2000 mm",
        usual="40 to 400 mm",
        fold=True,
        hint="Half of the way round, where the air parts round a cylinder. Empty: all of it.",
    )
    speed: Number = given(
        "Air between this one's fins",
        "v",
        form(SPEED, 1),
        hard="0.5 to 80 m/s",
        usual="3 to 25 m/s",
        fold=True,
        assumed=("10 m/s", "with a fan; common practice, no source"),
    )
    hotter: Number = given(
        "Wall at the roots hotter than the entering air by",
        "ΔT",
        form(TEMPERATURE_DIFFERENCE, 0),
        hard="1 to 500 K",
        usual="50 to 250 K",
        fold=True,
        assumed=("150 K", "common practice, no source; only for the watts"),
    )
    least_gain: Number = given(
        "Gain wanted, at least",
        "Δ_min",
        SHARE,
        hard="0 to 500 %",
        usual="2 to 50 %",
        fold=True,
        assumed=("5 %", "less is not worth a casting; common practice, no source"),
    )


@calculator(
    "fin-cooling",
    "Fins of two castings",
    In,
    Out,
    purpose=(
        "Does a casting with more or longer fins shed more heat, by how much, and what must the air do"
        " for it?"
    ),
    finds=(
        "cooling fins",
        "fin efficiency",
        "fin area",
        "more fin",
        "cylinder fins",
        "head fins",
        "cooling of a casting",
        "heat shed",
    ),
    sources=(
        sources.FINS,
        sources.COOLING_AIR,
        sources.SAME_PRESSURE,
        sources.MATERIALS,
        sources.PRACTICE,
        sources.INVENTED,
    ),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def fin_cooling(i: In) -> Answer:
    """One-dimensional conduction along straight fins of even thickness, one coefficient over the whole of each casting.

    The coefficient is the weak part: it hangs on fan, baffles and gap, and is known to a fifth at best, so compare two castings
    rather than believe the watts. Fin end faces and what the walls radiate are left out. The air warms along its way; how much of it
    comes hangs on the fan, between two bounds: as fast through the other's gaps, or under no more pressure than before.
    """
    path = i.path
    path = i.width if path is None else path
    if path > i.width:
        raise impossible("path", "is {p}, longer than the fins run, {w}; give {w} or less", p=path, w=i.width)
    streams = step("z", "Streams side by side", form(RATIO, 2), i.width / path)
    found = []
    for n, (row, coefficient, id, outs) in enumerate(
        zip(
            i.fins,
            (i.air, i.air if i.air_other is None else i.air_other),
            (i.alloy, i.alloy_other),
            (
                (
                    Out.efficiency_this,
                    Out.overall_this,
                    Out.area_this,
                    Out.effective_this,
                    Out.heat_this,
                    Out.warmer_this,
                ),
                (
                    Out.efficiency_other,
                    Out.overall_other,
                    Out.area_other,
                    Out.effective_other,
                    Out.heat_other,
                    Out.warmer_other,
                ),
            ),
        ),
        1,
    ):
        count, thickness, length, gap = row
        who = CASTINGS[n - 1].lower()
        k = constant(
            f"k_{n}",
            f"Conductivity, {who}",
            form(CONDUCTIVITY, 0),
            MATERIALS[id].conductivity,
            sources.MATERIALS,
        )
        each = step(
            f"A_f{n}", f"Area of one fin, {who}", FACE, fin_area(thickness, length, i.width), sources.FINS
        )
        total = outs[2](count * (each + gap * i.width), sources.FINS)
        x = step(
            f"x_{n}",
            f"m·L_c of a fin, {who}",
            form(RATIO, 3),
            fin_number(coefficient, k, thickness, length),
            sources.FINS,
        )
        efficiency = outs[0](fin_efficiency(x), sources.FINS)
        overall = outs[1](overall_efficiency(efficiency, count * each, total), sources.FINS)
        effective = outs[3](overall * total, sources.FINS)
        per_kelvin = step(
            f"G_{n}", f"Heat shed per kelvin, {who}", PERK, coefficient * effective, sources.FINS
        )
        takes = step(
            f"C_{n}",
            f"Heat that the air of {who} takes up per kelvin of its rise",
            PERK,
            _capacity(row, i.speed, streams),
            sources.COOLING_AIR,
        )
        shed_here = step(
            f"K_{n}",
            f"Heat shed per kelvin over the entering air, {who}",
            PERK,
            warmed(per_kelvin, takes),
            sources.COOLING_AIR,
        )
        heat = outs[4](shed_here * i.hotter)
        warmer = outs[5](heat / takes, sources.COOLING_AIR)
        found.append(
            (
                row,
                coefficient,
                k,
                efficiency,
                overall,
                total,
                effective,
                per_kelvin,
                heat,
                takes,
                shed_here,
                warmer,
            )
        )
    this, other = found
    change = Out.change(other[8] / this[8] - 1)
    slower = least(
        (hydraulic_diameter(other[0][3], other[0][2]) / hydraulic_diameter(this[0][3], this[0][2]))
        ** (5 / 7),
        1.0,
    )
    speed_other = Out.speed_other(i.speed * slower, sources.SAME_PRESSURE)
    takes_least = step(
        "C_f",
        "Heat that the other's air takes up per kelvin, fan as before",
        PERK,
        _capacity(other[0], speed_other, streams),
        sources.COOLING_AIR,
    )
    change_least = Out.change_least(warmed(other[7], takes_least) / this[10] - 1)
    even = Out.even(
        constant(
            "h_0",
            "Coefficient at which they shed alike, found by halving",
            AIR,
            coefficient_for(
                unwarmed(float(this[10]), float(other[9])),
                (*map(float, other[0]), float(i.width)),
                float(other[2]),
            ),
            sources.FINS,
        )
    )
    may_fall = Out.may_fall(1 - even / i.air)

    between = say("{a} to {d}", a=change_least, d=change) if slower < 1 else say("{d}", d=change)
    gap, length = other[0][3], other[0][2]
    starved = gap < NARROW or float(length) > DEEP * float(gap)
    assumed = i.air_other is None and gap < this[0][3]
    if change < 0:
        verdict = (
            "fail",
            say("Sheds less: {d}", d=change),
            say(
                "Keep this one, or look what is amiss with the other: fewer or shorter fins, a poorer alloy,"
                " or less air."
            ),
        )
    elif change_least < i.least_gain:
        verdict = (
            "attention",
            say("Hardly more: {d}, {m} wanted", d=between, m=i.least_gain),
            "Not worth a casting. Clean fins, tight baffles and a fan belt that does not slip give as much.",
        )
    elif starved:
        verdict = (
            "attention",
            say("{d} more, if air still enters {g}", d=change, g=gap),
            say(
                "Between fins so close the air slows down, and the gain is gone when its coefficient falls to"
                " {h}. Believe it when a thermometer in the head has shown it.",
                h=even,
            ),
        )
    else:
        verdict = (
            "pass",
            say("Sheds {d} more at the same heat", d=between),
            say(
                "Make sure that baffles and fan fit the new fins: the gain is gone when the air's coefficient"
                " falls to {h}.",
                h=even,
            ),
        )

    def tall(row):
        return float(row[0]) * float(row[1] + row[3])

    stack = tall(other[0]) / tall(this[0])
    return answer(
        change,
        change_least,
        this[8],
        other[8],
        this[11],
        other[11],
        speed_other,
        this[3],
        other[3],
        this[4],
        other[4],
        this[5],
        other[5],
        this[6],
        other[6],
        even,
        may_fall,
        verdict=verdict,
        limits=(
            Limit("the gain", change, low=0.0),
            Limit("the gain, fan as before", change_least, low=i.least_gain, level="attention"),
        ),
        remarks=(
            (
                warning(
                    "The other's gaps are closer, and the same coefficient was taken for both. It will be"
                    " less: closer fins pass less air at the same fan. Give what you expect."
                )
                if assumed
                else note("A coefficient holds for one gap and one fan only: closer fins do not keep it.")
            ),
            (
                warning(
                    "A gap of {g} under fins {l} long is a deep, narrow channel: less than about {n}, or"
                    " deeper than ten gaps, and the air goes round it. Common practice, no source.",
                    g=gap,
                    l=length,
                    n=NARROW,
                )
                if starved
                else None
            ),
            (
                warning(
                    "The trade's figure for a casting with more fin is a tenth to a fifth more heat; common"
                    " practice, no source. Look at the coefficients again."
                )
                if float(change) > HIGH
                else None
            ),
            (
                note(
                    "The two do not take the same height of wall: {a} and {b}.",
                    a=constant("", "", SIZE, tall(this[0])),
                    b=constant("", "", SIZE, tall(other[0])),
                )
                if not 0.95 <= stack <= 1.05
                else None
            ),
        ),
        tables=(
            Table(
                "Both castings",
                ("Casting", "Fin efficiency", "At work", "Per kelvin", "Air leaves warmer by"),
                tuple((name, f[3], f[6], f[10], f[11]) for name, f in zip(CASTINGS, found)),
            ),
        ),
        figures=(_drawing(this[0], other[0]), _plot(this, other, float(i.width), even)),
    )


def _capacity(row, speed, streams):
    """What the air between the fins takes up per kelvin of its own rise, W/K."""
    count, _, length, gap = row
    return AIR_DENSITY * AIR_HEAT * speed * (count * gap * length * streams)


def _comb(row, left: float) -> tuple:
    """Three fins on their wall, from `left` on: the areas, and where they end."""
    t, length, g = map(float, row[1:])
    wall = max(0.35 * length, 2 * t)
    places = [left + g / 2 + i * (t + g) for i in range(3)]
    right = left + 3 * (t + g)
    outline = [(left, -wall), (left, 0.0)]
    for x in places:
        outline += [(x, 0.0), (x, length), (x + t, length), (x + t, 0.0)]
    return (*outline, (right, 0.0), (right, -wall)), places, right


def _drawing(this, other) -> Drawing:
    first, a, end = _comb(this, 0.0)
    apart = max(0.35 * end, 0.6 * float(this[2]), 0.6 * float(other[2]))
    second, b, far = _comb(other, end + apart)
    shapes = []
    for row, outline, places, hatch, name in (
        (this, first, a, "a", CASTINGS[0]),
        (other, second, b, "b", CASTINGS[1]),
    ):
        t, length = float(row[1]), float(row[2])
        shapes += [
            Area(outline, hatch),
            Dimension((places[2] + t, 0.0), (places[2] + t, length), row[2], -0.25 * apart, "L"),
            Label(((outline[0][0] + outline[-1][0]) / 2, outline[0][1] - 0.3 * apart), name),
        ]
    return Drawing(
        "Three fins of each",
        say(
            "Section through three fins: this one {t} thick, {l} long, {g} apart; the other {a} thick, {b}"
            " long, {c} apart.",
            t=this[1],
            l=this[2],
            g=this[3],
            a=other[1],
            b=other[2],
            c=other[3],
        ),
        tuple(shapes),
        "to scale, side by side",
    )


def _plot(this, other, width, even) -> Plot:
    """Heat per kelvin over the air's coefficient, for both."""
    end = 1.3 * max(float(this[1]), float(other[1]))

    def line(f):
        return tuple(
            (h, warmed(shed(*map(float, f[0]), width, h, float(f[2])), float(f[9])))
            for h in (end * i / 40 for i in range(1, 41))
        )

    return Plot(
        "Heat per kelvin over the air's coefficient",
        say(
            "This one sheds {a} per kelvin, the other {b}; they shed alike when the other's coefficient is"
            " {h}.",
            a=this[10],
            b=other[10],
            h=even,
        ),
        Axis("Air's coefficient", form(HEAT_TRANSFER, 0)),
        Axis("Heat per kelvin", form(CONDUCTANCE, 1)),
        (Series("this one", line(this)), Series("the other", line(other), "dashed")),
        ((float(this[1]), float(this[10]), ""), (float(other[1]), float(other[10]), "")),
    )
