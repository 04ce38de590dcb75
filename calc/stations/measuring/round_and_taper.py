"""Is a bore or a journal round and straight? Diameters at stations along it, in directions round it."""

from calc.core.conformance import past
from calc.core.drawing import Area, Dimension, Drawing, Label, Line
from calc.core.kinds import COUNT, LENGTH
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import constant, form, greatest, least, step
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
from calc.stations.shared.forms import ROUGH, SIZE

DIRECTIONS = ("A", "B", "C", "D")
SIZES = "0.5 to 2000 mm"


SEEN = 2e-6  # m: what a shop's gauge can tell of a barrel or a waist; common practice
CURE = {
    ("journal", "small"): (
        "Measure that place once more. If it stays, grind to the next undersize and take shells to match, or"
        " scrap it."
    ),
    ("journal", "large"): "Measure that place once more. If it stays, grind or polish it to size.",
    ("bore", "small"): "Measure that place once more. If it stays, hone or bore it to size.",
    (
        "bore",
        "large",
    ): "Measure that place once more. If it stays, it is worn: next oversize, sleeve, or scrap.",
}


WHOLE, PER_100 = "whole", "per-100"


class Out(Outputs):
    out_of_round = Output("Out of round, at the worst station", "Δ_r", SIZE, main=True)
    taper = Output("Taper, in the worst direction", "Δ_t", SIZE, main=True)
    taper_100 = Output("Taper for each 100 mm", "Δ_100", SIZE)
    mean = Output("Mean of all readings", "d", SIZE)
    largest = Output("Largest", "d_max", SIZE)
    smallest = Output("Smallest", "d_min", SIZE)


class In(Inputs):
    diameters: Rows = grid(
        "Diameters at stations",
        rows=tuple(map(str, range(1, 6))),
        columns=tuple(
            column(f"Across {d}", f"d_{d}", SIZE, hard=SIZES, optional=i > 1)
            for i, d in enumerate(DIRECTIONS)
        ),
        least=2,
        tool="a micrometer or a bore gauge",
        hint=(
            "Stations from one end to the other, clear of fillets and edges; A and B square to each other. C"
            " and D, and whole stations, may stay empty."
        ),
        example="51.994; 51.990 | 51.993; 51.990 | 51.992; 51.989",
    )
    what: str = choice(
        "Kind of part",
        {"journal": "A journal, measured outside", "bore": "A bore"},
        must=True,
        example="journal",
    )
    low: Number | None = given(
        "Lower limit", "L", SIZE, hard=SIZES, hint="Of a part as made or re-machined.", example="51.985 mm"
    )
    high: Number | None = given("Upper limit", "H", SIZE, hard=SIZES, example="52.000 mm")
    worn: Number | None = given(
        "Wear limit",
        "d_w",
        SIZE,
        hard=SIZES,
        hint="A journal may not be smaller anywhere, a bore not larger.",
    )
    round_limit: Number | None = given(
        "Out of round, at most",
        "Δ_r,max",
        SIZE,
        hard="0 to 5 mm",
        hint="Difference of diameters, not of radii.",
        example="0.008 mm",
    )
    taper_limit: Number | None = given(
        "Taper, at most", "Δ_t,max", SIZE, hard="0 to 5 mm", example="0.008 mm"
    )
    taper_over: str = choice(
        "Taper limit is",
        {WHOLE: "over all the stations", PER_100: "for each 100 mm along the part"},
        hint="As the maker writes it.",
        default=WHOLE,
    )
    length: Number = measured(
        "From the first station to the last",
        "l",
        ROUGH,
        tool="a rule",
        hard="1 to 2000 mm",
        usual="5 to 400 mm",
        when=("taper_over", PER_100),
        hint="Counts where the taper is told for a length.",
        example="20 mm",
    )


@calculator(
    "round-and-taper",
    "Round and straight",
    In,
    Out,
    purpose="Is this bore or journal round and straight enough, and within its limits everywhere?",
    finds=(
        "out of round",
        "ovality",
        "taper",
        "cylindricity",
        "journal wear",
        "bore wear",
        "cylinder bore gauge",
        "barrel shape",
        "bell mouth",
    ),
    sources=(sources.TWO_POINT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def round_and_taper(i: In) -> Answer:
    """Differences of two-point diameters. Out of round: largest less smallest at one station. Taper: largest less smallest along
    one direction, so that an oval that stays the same along the part is no taper; told for 100 mm it is that over the stations' length.
    """
    if i.low is not None and i.high is not None and i.low >= i.high:
        raise impossible(
            "low", "is {low}, not below the upper limit {high}; give less than {high}", low=i.low, high=i.high
        )
    made = i.low if i.what == "journal" else i.high
    if i.worn is not None and made is not None and (i.worn > made if i.what == "journal" else i.worn < made):
        raise impossible(
            "worn",
            "is {w}, and a "
            + i.what
            + " that is as made, {m}, would be worn out; give {m} or "
            + ("less" if i.what == "journal" else "more"),
            w=i.worn,
            m=made,
        )
    stations = [
        (n, [d for d in row if d is not None], row) for n, row in enumerate(i.diameters) if row is not None
    ]
    every = [d for _, given_here, _ in stations for d in given_here]
    smallest, largest = Out.smallest(least(*every)), Out.largest(greatest(*every))
    mean = Out.mean(sum(every) / constant("n", "Readings", form(COUNT, 0), len(every)))
    ovals = [
        step(f"Δ_{n + 1}", f"Out of round at station {n + 1}", SIZE, greatest(*here) - least(*here))
        for n, here, _ in stations
    ]
    along = {d: [row[c] for _, _, row in stations if row[c] is not None] for c, d in enumerate(DIRECTIONS)}
    tapers = [
        step(f"Δ_{d}", f"Taper across {d}", SIZE, greatest(*here) - least(*here))
        for d, here in along.items()
        if here
    ]
    out_of_round, taper = Out.out_of_round(greatest(*ovals)), Out.taper(greatest(*tapers))
    taper_100 = Out.taper_100(
        taper * constant("l_0", "Length that it is told for", form(LENGTH, 0), 0.1) / i.length
    )
    judged = taper if i.taper_over == WHOLE else taper_100
    means = [sum(map(float, here)) / len(here) for _, here, _ in stations]
    worst = f"station {stations[max(range(len(ovals)), key=lambda k: float(ovals[k]))][0] + 1}"
    used = (largest, smallest, i.low, i.high, i.worn)
    wear_low, wear_high = (i.worn, None) if i.what == "journal" else (None, i.worn)
    level = (
        "attention" if i.worn is not None else "fail"
    )  # of a size past what it was made to, on the side to which it wears
    return answer(
        out_of_round,
        taper,
        taper_100,
        mean,
        largest,
        smallest,
        verdict=_verdict(out_of_round, judged, *used, i.round_limit, i.taper_limit, worst, i.what),
        limits=(
            Limit("the smallest size", smallest, low=i.low, level=level if i.what == "journal" else "fail"),
            Limit("the largest size", largest, high=i.high, level=level if i.what == "bore" else "fail"),
            Limit("the wear", smallest, low=wear_low),
            Limit("the wear", largest, high=wear_high),
            Limit("the roundness", out_of_round, high=i.round_limit),
            Limit("the taper", judged, high=i.taper_limit),
        ),
        remarks=(
            note(
                "Two-point gauges do not see a three-cornered form, in however many directions: it measures"
                " the same across everywhere. Ground and honed parts often have one. Turn the part in a"
                " V-block under a dial gauge, or use a three-point bore gauge."
            ),
            _shape(means),
            (
                warning(
                    "{spread} between the readings is much for one bore or journal: is one of them a slip?",
                    spread=constant("", "", SIZE, float(largest - smallest)),
                )
                if float(largest - smallest) > 0.01 * float(mean)
                else None
            ),
        ),
        tables=(_table(stations, ovals, means, i.low, i.high, i.worn, i.round_limit, i.what),),
        figures=(profile(stations, mean, i.low, i.high),),
    )


def _verdict(out_of_round, taper, largest, smallest, low, high, worn, round_limit, taper_limit, worst, what):
    journal = what == "journal"
    small, large = low is not None and past(low, smallest), high is not None and past(largest, high)
    wears = worn is not None and (past(worn, smallest) if journal else past(largest, worn))
    size = smallest if journal else largest
    if wears:
        return (
            "fail",
            say(
                "Worn out: {d}, {w} is its limit",
                d=size.held_to(*((float(worn), None) if journal else (None, float(worn)))),
                w=worn,
            ),
            CURE[what, "small" if journal else "large"],
        )
    within = worn is not None and (
        small if journal else large
    )  # past what it was made to, not past what it may wear to
    if (
        small and not (large and what == "bore") and not (journal and within)
    ):  # of two faults the one that no cut takes away comes first
        return "fail", say("Too small: {d}", d=smallest), CURE[what, "small"]
    if large and (journal or not within):
        return "fail", say("Too large: {d}", d=largest), CURE[what, "large"]
    if small and not journal:
        return "fail", say("Too small: {d}", d=smallest), CURE[what, "small"]
    if round_limit is not None and past(out_of_round, round_limit):
        return (
            "fail",
            say("Out of round: {r}", r=out_of_round),
            say(
                "At {station}. Measure there once more, bolted up as it runs; if it stays, machine it.",
                station=worst,
            ),
        )
    if taper_limit is not None and past(taper, taper_limit):
        return (
            "fail",
            say("Tapered: {t}", t=taper),
            "Measure the ends once more, at the same distance from the edges; if it stays, machine it.",
        )
    if within:
        return (
            "attention",
            say("Worn, within its limit: {d}", d=size),
            say(
                (
                    "It may run again down to {w}, and a part that was re-machined may not: that one must be"
                    " as made."
                    if journal
                    else (
                        "It may run again up to {w}, and a part that was re-machined may not: that one must"
                        " be as made."
                    )
                ),
                w=worn,
            ),
        )
    if all(limit is None for limit in (low, high, worn, round_limit, taper_limit)):
        return (
            "attention",
            say("{r} out of round, {t} taper", r=out_of_round, t=taper),
            "No limit was given, so nothing was judged. Type the maker's limits.",
        )
    return (
        "pass",
        say("Round within {r}, straight within {t}", r=out_of_round, t=taper),
        "Write down the largest and the smallest, not the mean: they are what the fit is worked with.",
    )


def _shape(means):
    """What the run of the stations' means looks like."""
    if len(means) < 3:
        return None
    ends, middle = (means[0], means[-1]), means[1:-1]
    if max(middle) - max(ends) > SEEN:
        return note(
            "Largest in the middle, a barrel: a journal worn at both ends, or a bore honed with too short a"
            " stroke."
        )
    if min(ends) - min(middle) > SEEN:
        return note(
            "Smallest in the middle, a waist: a journal worn in the middle, or a bore honed with too long a"
            " stroke."
        )
    return None


def _table(stations, ovals, means, low, high, worn, round_limit, what) -> Table:
    rows, states = [], []
    for (i, here, _), oval, mean in zip(stations, ovals, means):
        values = list(map(float, here))
        small, large = (
            low is not None and past(low, min(values)),
            high is not None and past(max(values), high),
        )
        used_up = worn is not None and (
            past(worn, min(values)) if what == "journal" else past(max(values), worn)
        )
        wears, other = (small, large) if what == "journal" else (large, small)
        bad = (
            used_up or other or wears and worn is None or round_limit is not None and past(oval, round_limit)
        )
        rows.append(
            (
                str(i + 1),
                oval,
                constant("", "", SIZE, min(values)),
                constant("", "", SIZE, max(values)),
                constant("", "", SIZE, mean),
            )
        )
        states.append("fail" if bad else "attention" if wears else "pass")
    return Table(
        "Station by station",
        ("Station", "Out of round", "Smallest", "Largest", "Mean"),
        tuple(rows),
        tuple(states),
    )


def profile(stations, mean, low, high) -> Drawing:
    """The part along its axis, with what it differs from its mean drawn many times too large."""
    middle = float(mean)
    deviations = [float(d) - middle for _, here, _ in stations for d in here]
    limits = [
        (float(limit) - middle, words)
        for limit, words in ((low, "L"), (high, "H"))
        if limit is not None and abs(float(limit) - middle) < middle / 20
    ]
    reach = max(map(abs, deviations + [x for x, _ in limits]))
    radius, pitch = middle / 2, middle * 0.45
    scale = 0.25 * radius / reach if reach else 1.0  # the worst deviation shows as a quarter of the radius
    xs = [i * pitch for i, _, _ in stations]
    first, last = xs[0] - pitch * 0.4, xs[-1] + pitch * 0.4

    def outline(values, side):
        points = [(x, side * (radius + v * scale)) for x, v in zip(xs, values)]
        return ((first, points[0][1]), *points, (last, points[-1][1]))

    big = [max(map(float, here)) - middle for _, here, _ in stations]
    small = [min(map(float, here)) - middle for _, here, _ in stations]
    shapes = [
        Area((*outline(big, 1), *reversed(outline(big, -1))), "a"),
        Line(((first - pitch * 0.2, 0), (last + pitch * 0.2, 0)), "centre"),
    ]
    for side in (1, -1):
        shapes += [Line(outline(big, side)), Line(outline(small, side), "hidden")]
        shapes += [
            Line(((first, side * (radius + x * scale)), (last, side * (radius + x * scale))), "band")
            for x, _ in limits
        ]
    shapes += [Label((last + pitch * 0.1, radius + x * scale), words, "start") for x, words in limits]
    for (i, here, _), x, top, bottom in zip(stations, xs, big, small):
        shapes += [
            Dimension((x, -(radius + top * scale)), (x, radius + top * scale), max(here, key=float)),
            Label((x, -(radius + reach * scale) - radius * 0.3), str(i + 1)),
        ]
    times = f"{float(f'{scale:.1g}'):.0f}"
    return Drawing(
        "Largest (full line) and smallest (dashed) diameters, station by station",
        say("Outline of the part along its axis; mean {d}.", d=mean),
        tuple(shapes),
        f"deviations drawn about {times} times too large" if reach else "",
    )
