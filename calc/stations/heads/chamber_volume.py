"""Combustion chambers measured with a burette: their volumes, what a cut off the sealing step takes, and how to make them alike."""

import math

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.kinds import AREA, EXPANSION, LENGTH, TEMPERATURE_DIFFERENCE, VOLUME
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import PI, constant, form, greatest, step
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
    limit,
    measured,
)
from calc.reference import cautions, sources

CC, FINE, SIZE, FACE = form(VOLUME, 1), form(VOLUME, 2), form(LENGTH, 2), form(AREA, 0)
CHAMBERS = ("1", "2", "3", "4")
MATCH, WANTED = "match", "wanted"
LIQUIDS = {"water": "water with a drop of soap", "paraffin": "paraffin, or thin oil", "spirit": "spirit"}
GROWTH = {
    "water": 0.26e-3,
    "paraffin": 0.95e-3,
    "spirit": 1.09e-3,
}  # 1/K of volume, 20 to 30 °C; handbook values, from memory
TENTH, FILM, KELVIN = (
    constant("t_0.1", "A tenth of a millimetre", SIZE, 0.1e-3),
    constant("t_f", "Grease under the plate", SIZE, 0.05e-3),
    constant("ΔT_1", "One kelvin", form(TEMPERATURE_DIFFERENCE, 0), 1.0),
)
NOTHING = 0.5e-8  # m³: less than this is not to be measured with a burette


class Out(Outputs):
    smallest = Output("Smallest, after the cut", "V_min", CC, main=True)
    largest = Output("Largest, after the cut", "V_max", CC, main=True)
    spread = Output("Largest less smallest", "ΔV", CC, main=True)
    mean = Output("Mean of the chambers, after the cut", "V_m", CC)
    taken = Output("Volume that the cut takes", "V_t", FINE)
    tenth = Output("Volume that 0.1 mm of cut takes", "V_0.1", FINE)
    grind = Output("Most to grind out of a chamber", "G", FINE)
    cut_wanted = Output("Cut at which the largest chamber has the volume wanted", "t_w", SIZE)
    cut_most = Output("Cut at which the smallest chamber comes to its limit", "t_l", SIZE)
    kelvin = Output("Volume that 1 K of warming in the liquid fakes", "V_K", FINE)
    film = Output("Volume that 0.05 mm of grease under the plate fakes", "V_f", FINE)


class In(Inputs):
    readings: Rows = grid(
        "Burette readings",
        rows=CHAMBERS,
        columns=(
            column(
                "Filled with", "V", CC, hard="5 to 400 cm³", usual="25 to 120 cm³", feature="chamber.volume"
            ),
        ),
        least=1,
        tool="a burette, under a clear plate with a hole",
        hint="To the tenth. Plug and valves fitted, head level, no bubble left.",
        example="55.9 | 56.2 | 55.8 | 56.1",
    )
    low: Number = limit(
        "Volume allowed, least",
        "V_low",
        CC,
        feature="chamber.volume",
        which="low",
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
        fold=False,
    )
    high: Number = limit(
        "Volume allowed, most",
        "V_high",
        CC,
        feature="chamber.volume",
        which="high",
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
        fold=False,
    )
    most_spread: Number = given(
        "May differ from each other by",
        "ΔV_max",
        CC,
        hard="0 to 20 cm³",
        usual="0.1 to 3 cm³",
        assumed=("0.5 cm³", "about a hundredth; common practice, no source"),
    )
    cut: Number = given(
        "Cut off the sealing step",
        "t",
        SIZE,
        hard="0 to 5 mm",
        usual="0 to 1 mm",
        hint="That is planned.",
        assumed=("0 mm", "no cut is planned"),
    )
    aim: str = choice(
        "Grind out", {MATCH: "to match the largest", WANTED: "to the volume wanted"}, default=MATCH
    )
    wanted: Number = given(
        "Volume wanted",
        "V_w",
        CC,
        hard="5 to 400 cm³",
        usual="25 to 120 cm³",
        feature="chamber.volume",
        fold=True,
    )
    mouth: Number = measured(
        "Chamber's mouth, across",
        "D_m",
        form(LENGTH, 1),
        tool="a calliper, at the sealing step",
        hard="20 to 200 mm",
        usual="60 to 120 mm",
        feature="chamber.mouth",
        fold=True,
    )
    mouth_area: Number | None = measured(
        "Area of the mouth",
        "A_m",
        FACE,
        tool="squared paper under a print of its edge",
        hard="300 to 31000 mm²",
        usual="2500 to 11000 mm²",
        fold=True,
        hint="For a mouth that is not round. Empty: that of a circle.",
    )
    most_cut: Number = limit(
        "Sealing step may be cut by, at most",
        "t_max",
        SIZE,
        feature="chamber.step_cut",
        which="wear",
        hard="0 to 5 mm",
        usual="0 to 1.5 mm",
        hint="Since new: take off what is gone already.",
    )
    liquid: str = choice("Liquid", LIQUIDS, fold=True, assumed=("water", "counts only where it warmed"))
    warming: Number = measured(
        "Liquid warmed in the chamber by",
        "ΔT",
        form(TEMPERATURE_DIFFERENCE, 0),
        tool="a thermometer in burette and chamber",
        hard="-40 to 40 K",
        usual="-5 to 5 K",
        fold=True,
        hint="Minus where it cooled.",
        assumed=("0 K", "as warm as the head"),
    )


@calculator(
    "chamber-volume",
    "Chamber volume",
    In,
    Out,
    purpose=(
        "Are the chambers alike and within limits, what does a cut take off them, and how much must be ground"
        " out of which?"
    ),
    finds=(
        "cc the heads",
        "combustion chamber volume",
        "burette",
        "chamber matching",
        "fly cut",
        "head skimming",
        "compression ratio of heads",
        "equal chambers",
    ),
    sources=(sources.STRAIGHT_CUT, sources.LIQUIDS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.SOLVENT, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def chamber_volume(i: In) -> Answer:
    """Volumes as the burette gave them, brought to the warmth of the head; straight walls at the sealing step, so a cut takes area × depth.

    The burette counts what left it at its own temperature: liquid that warms in the chamber fills it with less. Where the wall
    leans, the area changes with the cut: good to a few per cent of what is taken.
    """
    if i.high <= i.low:
        raise impossible(
            "high",
            "is {high}, not more than the least volume, {low}; give more than {low}",
            high=i.high,
            low=i.low,
        )
    if not i.low <= i.wanted <= i.high:
        raise impossible(
            "wanted",
            "is {w}, not within the volumes allowed; give {low} to {high}",
            w=i.wanted,
            low=i.low,
            high=i.high,
        )
    area = (
        step("A", "Mouth of the chamber", FACE, PI * i.mouth**2 / 4)
        if i.mouth_area is None
        else step("A", "Mouth of the chamber", FACE, i.mouth_area)
    )
    growth = constant(
        "β",
        f"Growth of {LIQUIDS[i.liquid]}, per kelvin",
        form(EXPANSION, 5, "1/K", "1/K"),
        GROWTH[i.liquid],
        sources.LIQUIDS,
    )
    taken = Out.taken(area * i.cut, sources.STRAIGHT_CUT)
    warm = bool(i.warming)
    before = [
        (
            name,
            row[0],
            (
                step(
                    f"V'_{name}",
                    f"Chamber {name}, liquid as warm as the head",
                    CC,
                    row[0] * (1 + growth * i.warming),
                    sources.LIQUIDS,
                )
                if warm
                else row[0]
            ),
        )
        for name, row in zip(CHAMBERS, i.readings)
        if row
    ]
    tightest = min(before, key=lambda each: float(each[2]))
    if taken >= tightest[2]:
        most = math.floor(float(tightest[2]) / float(area) * 1e5) / 1e5
        raise impossible(
            "cut",
            "is {t} and takes {v}, all of chamber {name}, which holds {V}; give less than {most}",
            t=i.cut,
            v=taken,
            name=tightest[0],
            V=tightest[2],
            most=constant("", "", SIZE, most),
        )
    chambers = [(name, read, volume - taken) for name, read, volume in before]
    small, large = (pick(chambers, key=lambda each: float(each[2])) for pick in (min, max))
    smallest, largest = (
        Out.smallest(small[2], sources.STRAIGHT_CUT),
        Out.largest(large[2], sources.STRAIGHT_CUT),
    )
    spread = Out.spread(largest - smallest)
    target = largest if i.aim == MATCH else i.wanted
    grind = Out.grind(greatest(target - smallest, 0.0))
    cut_wanted = Out.cut_wanted(greatest((largest + taken - i.wanted) / area, 0.0), sources.STRAIGHT_CUT)
    cut_most = Out.cut_most(greatest((smallest + taken - i.low) / area, 0.0), sources.STRAIGHT_CUT)

    deeper = (
        math.ceil((float(largest) - float(i.high)) / float(area) * 1e5 - 1e-6) / 1e5
    )  # what brings the largest down to its limit, in hundredths of a millimetre
    unlike_still = past(
        largest - max(smallest, target), i.most_spread
    )  # once the small ones are ground out: the largest stays as it is
    if i.cut > i.most_cut:
        verdict = (
            "fail",
            say("Cut too deep: {t}, {most} allowed", t=i.cut, most=i.most_cut),
            (
                "Do not cut. Past that the step is too thin, and the cylinder's top comes too near to the"
                " chamber."
            ),
        )
    elif past(largest, i.high) and past(i.low, smallest):
        verdict = (
            "fail",
            say("From {a} to {b}: out at both ends", a=smallest, b=largest),
            (
                "Measure all again, with fresh grease and no bubble. If it stands, grind the small ones out"
                " first, then cut."
            ),
        )
    elif past(largest, i.high):
        verdict = (
            "fail",
            say("Too large: {V}, chamber {n}", V=largest, n=large[0]),
            (
                say(
                    "Measure it again, and see whether its valves lie deep. Cutting the step {t} deeper would"
                    " bring it to {high} or less.",
                    t=at_least(deeper, SIZE),
                    high=i.high,
                )
                if float(i.cut) + deeper <= float(i.most_cut)
                and float(smallest) - deeper * float(area) >= float(i.low)
                else (
                    "Measure it again, and see whether its valves lie deep or the plug is another. No cut"
                    " that is allowed brings all of them into their limits."
                )
            ),
        )
    elif past(i.low, smallest) and i.cut > 0 and not past(i.low, tightest[2]):
        verdict = (
            "fail",
            say("Too small after the cut: {V}, chamber {n}", V=smallest, n=small[0]),
            say(
                "Cut no deeper than {t}, or grind this chamber out by {v} first.",
                t=at_most(cut_most, SIZE),
                v=constant("", "", FINE, float(i.low - smallest)),
            ),
        )
    elif past(i.low, smallest):
        verdict = (
            "fail",
            say("Too small: {V}, chamber {n}", V=smallest, n=small[0]),
            say(
                "Measure it again. If it stands, grind it out by {v}: carbon and sharp edges first, nothing"
                " off the wall round plug and seats.",
                v=constant("", "", FINE, float(i.low - smallest)),
            ),
        )
    elif past(spread, i.most_spread):
        verdict = (
            "attention",
            say("Unlike: {s} apart", s=spread),
            (
                say(
                    "Ground out to {w} they would still be unlike, for the largest stays as it is. Choose to"
                    " match the largest, or cut the step first.",
                    w=i.wanted,
                )
                if unlike_still
                else say(
                    "Grind out the small ones as in the table, {v} at most, a little at a time, and measure"
                    " again.",
                    v=grind,
                )
            ),
        )
    elif len(chambers) == 1:
        verdict = (
            "attention",
            say("One chamber alone: {V}, within its limits", V=smallest),
            "Read the others: what counts besides is that they are alike.",
        )
    else:
        verdict = (
            "pass",
            say("Alike: {s} apart, all in limits", s=spread),
            (
                "Write the volumes down: the compression is worked out from them."
                if len(chambers) == len(CHAMBERS)
                else "Write the volumes down, and read the others of the engine: they must be like these."
            ),
        )
    return answer(
        smallest,
        largest,
        spread,
        Out.mean(sum(volume for *_, volume in chambers) / len(chambers)),
        taken,
        Out.tenth(area * TENTH, sources.STRAIGHT_CUT),
        grind,
        cut_wanted,
        cut_most,
        Out.kelvin(growth * KELVIN * largest, sources.LIQUIDS),
        Out.film(area * FILM, sources.STRAIGHT_CUT),
        verdict=verdict,
        limits=(
            Limit("the depth of the cut", i.cut, high=i.most_cut),
            Limit("the smallest chamber", smallest, low=i.low),
            Limit("the largest chamber", largest, high=i.high),
            Limit("the likeness", spread, high=i.most_spread, level="attention"),
        ),
        remarks=(
            note(
                "Read the burette at the bottom of its curve, eye level with it, before and after. Fill"
                " without a pause: spirit dries away meanwhile."
            ),
            (
                warning("One chamber alone says nothing of likeness: fill the others too.")
                if len(chambers) == 1
                else None
            ),
            (
                warning(
                    "The liquid warmed by {t}, which was taken out. Better let head and liquid lie side by"
                    " side until they are equally warm.",
                    t=i.warming,
                )
                if abs(float(i.warming)) > 2
                else None
            ),
            (
                note(
                    "A cut brings the cylinder and all the valve gear nearer: look at deck height, pushrods"
                    " and manifold afterwards, and cut both heads alike."
                )
                if i.cut > 0
                else None
            ),
            (
                note(
                    "Chambers larger than the volume wanted cannot be ground to it: the step would have to be"
                    " cut by {t} for the largest.",
                    t=cut_wanted,
                )
                if i.aim == WANTED and float(largest - i.wanted) > NOTHING
                else None
            ),
        ),
        tables=(_table(chambers, target, i.wanted, i.low, i.high, i.most_spread, largest),),
        cautions=(cautions.CUTTING, cautions.MAGNESIUM) if i.cut > 0 or verdict[0] != "pass" else (),
        figures=(
            section(small[0], smallest, float(area), i.cut),
            _plot(
                smallest + taken,
                largest + taken,
                float(area),
                i.cut,
                i.most_cut,
                i.low,
                i.high,
                smallest,
                small[0],
                large[0],
            ),
        ),
    )


def _table(chambers, target, wanted, low, high, most_spread, largest) -> Table:
    rows, states = [], []
    for name, read, volume in chambers:
        short = float(target - volume)
        rows.append(
            (
                name,
                constant("", "", CC, float(volume)),
                constant("", "", FINE, short) if short > NOTHING else "–",
                constant("", "", CC, float(volume - wanted)),
                read,
            )
        )
        states.append(
            "fail"
            if past(low, volume) or past(volume, high)
            else "attention"
            if past(largest - volume, most_spread)
            else "pass"
        )
    return Table(
        "Chamber by chamber",
        ("Chamber", "After the cut", "Grind out", "Off the volume wanted", "As read"),
        tuple(rows),
        tuple(states),
    )


def cap_depth(volume: float, area: float) -> float:
    """Depth of the round cap (a slice off a ball) with that volume over a mouth of that area, m. V = π·h·(3a² + h²)/6."""
    a2 = area / math.pi
    h = 2 * volume / area  # of a flat one; more than the true depth, so that Newton's steps come down to it
    for _ in range(60):
        h -= (math.pi * h * (3 * a2 + h * h) / 6 - volume) / (math.pi * (a2 + h * h) / 2)
    return h


def section(name, volume, area: float, cut) -> Drawing:
    """The smallest chamber under its plate, as a round cap of the same volume; the layer to be cut on top."""
    a, t = math.sqrt(area / math.pi), float(cut)
    h = cap_depth(float(volume), area)
    radius = (a * a + h * h) / (2 * h)
    middle = radius - h  # height of the ball's middle over the mouth
    half = math.acos(max(-1.0, min(1.0, middle / radius)))
    bowl = tuple(
        (radius * math.sin(phi), middle - radius * math.cos(phi))
        for phi in (half * (i / 24 - 1) for i in range(49))
    )
    edge, deep, plate = a * 1.25, h + a * 0.25, a * 0.08
    head = ((-edge, 0.0), *bowl, (edge, 0.0), (edge, -deep), (-edge, -deep))
    layer = (
        tuple(Area(tuple((side * x, y) for x, y in box(a, 0.0, edge, t)), "c") for side in (-1, 1))
        if t
        else ()
    )
    return Drawing(
        "Smallest chamber under its plate",
        say(
            "Section through chamber {n}, drawn as a round cap of {V}: mouth {d} across, {h} deep.",
            n=name,
            V=volume,
            d=constant("", "", SIZE, 2 * a),
            h=constant("", "", SIZE, h),
        ),
        (
            Area(head, "a"),
            *layer,
            Area(box(-edge, t, -a * 0.06, t + plate), ""),
            Area(box(a * 0.06, t, edge, t + plate), ""),
            Line(((0, t + 3 * plate), (0, -deep - plate)), "centre"),
            Dimension((-a, 0.0), (a, 0.0), constant("", "", form(LENGTH, 1), 2 * a), t + 3.2 * plate, "D_m"),
            Line(((0.0, -h), (edge, -h)), "thin"),
            Dimension((edge, -h), (edge, 0.0), constant("", "", form(LENGTH, 1), h), -1.5 * plate, "h"),
            *(
                (Label((-0.95 * a, -0.8 * deep), say("cut {t}", t=cut), target=(-1.1 * a, t / 2)),)
                if t
                else ()
            ),
        ),
        say("to scale, drawn as a round cap of {V}", V=volume),
    )


def _plot(smallest, largest, area: float, cut, most_cut, low, high, now, small_name, large_name) -> Plot:
    """Volume over the depth of the cut, for the smallest and the largest chamber."""
    end = 1.2 * max(float(cut), float(most_cut), 1e-4)

    def line(volume):
        return tuple((end * i, max(float(volume) - area * end * i, 0.0)) for i in (0, 1))

    def level(volume):
        return ((0.0, float(volume)), (end, float(volume)))

    return Plot(
        "Volume over the cut",
        say(
            "A cut of {t} leaves {V} in the smallest chamber; {low} to {high} are allowed.",
            t=cut,
            V=now,
            low=low,
            high=high,
        ),
        Axis("Cut off the sealing step", SIZE),
        Axis("Volume", CC),
        (
            Series("" if small_name == large_name else "smallest", line(smallest)),
            *((Series("largest", line(largest), "dashed"),) if small_name != large_name else ()),
            Series("least", level(low), "limit"),
            Series("most", level(high), "limit"),
        ),
        ((float(cut), float(now), "now" if not cut else "this cut"),),
    )
