"""Does a reading conform to its limits, does it not, or can nobody tell?"""

from calc.core.conformance import PROOF, accepted, decide, deciding_share, percent, phi, probability, quantile
from calc.core.drawing import Area, Drawing, Label, Line, box
from calc.core.kinds import RATIO
from calc.core.result import Table, impossible, note, say, warning
from calc.core.working import constant, form, least, step
from calc.declare.calculator import (
    Answer,
    Inputs,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    given,
    measured,
)
from calc.reference import cautions, sources
from calc.stations.shared.forms import FINE, FINE_SHARE, SIZE, TIMES

APART = SIZE.apart_from(0)  # a distance from a limit is none only where it is none
ISO = "iso"
RULES = {
    ISO: "ISO 14253-1: proven at 95 %",
    "simple": "The reading alone, doubt not counted",
    "other": "Proven at another probability",
}
WIDE = 1 / 4  # common practice: the expanded doubt should be no more than a quarter of the tolerance


class Out(Outputs):
    probability = Output("Probability that it is within", "P", FINE_SHARE, main=True)
    margin = Output("Inside the nearer limit by", "m", SIZE, main=True)
    in_doubts = Output("The same, counted in doubts U", "m_U", TIMES)
    guard = Output("A proven reading stays inside a single limit by", "g", FINE)
    deciding = Output("Doubt that would prove it, at most", "U_d", FINE)


class In(Inputs):
    reading: Number = measured(
        "Reading",
        "y",
        SIZE,
        tool="the gauge that the size asks for",
        hard="-2000 to 2000 mm",
        must=True,
        example="54.993 mm",
    )
    low: Number | None = given(
        "Lower limit",
        "L",
        SIZE,
        hard="-2000 to 2000 mm",
        hint="One of the two is enough.",
        example="54.985 mm",
    )
    high: Number | None = given("Upper limit", "H", SIZE, hard="-2000 to 2000 mm", example="55.000 mm")
    doubt: Number = given(
        "Doubt of the reading, ±",
        "U",
        FINE,
        hard=("0.00001 to 10 mm", "no reading is without doubt"),
        doubt_of="reading",
        hint=(
            "Expanded, as calibration papers state it, or written behind the reading: 54.993 ± 0.004."
            " Unknown? Find it with “How good is this reading?”."
        ),
        example="0.003 mm",
    )
    rule: str = choice(
        "Decided by",
        RULES,
        fold=True,
        assumed=(ISO, "agreed where nothing else is"),
        hint="Agree on it before anybody measures.",
    )
    proof: Number = given(
        "Other probability",
        "P_w",
        FINE_SHARE,
        hard="60 to 99.99 %",
        usual="80 to 99.9 %",
        fold=True,
        when=("rule", "other"),
        hint="Counts only where the rule is another probability.",
        example="99 %",
    )
    coverage: Number = given(
        "Coverage factor of the doubt",
        "k",
        TIMES,
        hard="1 to 5",
        usual="1.9 to 3.4",
        fold=True,
        assumed=("2", "as calibration papers state it"),
        hint="2 unless the paper says another; 1 where it states a standard uncertainty.",
    )


@calculator(
    "reading-verdict",
    "Is this reading within its limits?",
    In,
    Out,
    purpose="Does a size conform to its limits, does it not, or can the reading not tell?",
    finds=(
        "in tolerance",
        "out of limits",
        "wear limit",
        "decision rule",
        "guard band",
        "probability of conformity",
        "pass or fail",
    ),
    sources=(sources.ISO_14253, sources.JCGM_106, sources.GUM, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def reading_verdict(i: In) -> Answer:
    """A reading with a normal doubt against one or two limits; nothing is held to be known of the size but the reading.

    In: a probability of the proof wanted that the size lies within. Out: the same that it lies beyond one of the limits.
    """
    if i.low is None and i.high is None:
        raise impossible("low", "is empty, and so is the upper limit; give at least one of them")
    if i.low is not None and i.high is not None and i.low >= i.high:
        raise impossible(
            "low", "is {low}, not below the upper limit {high}; give less than {high}", low=i.low, high=i.high
        )
    u = step("u", "Standard uncertainty", FINE, i.doubt / i.coverage, sources.GUM)
    a = (
        None
        if i.low is None
        else step("a", "Above the lower limit, in standard uncertainties", TIMES, (i.reading - i.low) / u)
    )
    b = (
        None
        if i.high is None
        else step("b", "Below the upper limit, in standard uncertainties", TIMES, (i.high - i.reading) / u)
    )
    p = Out.probability(phi(a) if b is None else phi(b) if a is None else probability(a, b), sources.JCGM_106)
    below, above = (float("inf") if x is None else float(x) for x in (a, b))
    margins = [
        m
        for m in (
            None if i.low is None else i.reading - i.low,
            None if i.high is None else i.high - i.reading,
        )
        if m is not None
    ]
    margin = Out.margin(least(*margins) if len(margins) == 2 else margins[0], form=APART)
    wanted = float(i.proof) if i.rule == "other" else PROOF
    single = constant(
        "z",
        "Standard uncertainties to the probability wanted, on one side",
        form(RATIO, 3),
        quantile(wanted),
        sources.JCGM_106,
    )
    guard = Out.guard(single * u, sources.ISO_14253)
    # where both limits count, the margin must make up a little more than on one side
    needed = (
        single
        if not margin
        else constant(
            "z_d",
            "Standard uncertainties that the margin must make up",
            form(RATIO, 3),
            abs(float(margin)) / float(u) / deciding_share(below, above, wanted),
            sources.JCGM_106,
        )
    )
    deciding = Out.deciding(i.coverage * abs(margin) / needed, sources.JCGM_106)
    decision = decide(below, above, wanted) if i.rule != "simple" else "in" if margin >= 0 else "out"
    zone = accepted(float(u), *(None if limit is None else float(limit) for limit in (i.low, i.high)), wanted)
    tolerance = None if i.low is None or i.high is None else float(i.high - i.low)
    return answer(
        p,
        margin,
        Out.in_doubts(margin / i.doubt),
        guard,
        deciding,
        verdict=_verdict(decision, i.rule, p, margin, deciding, i.reading, i.low, i.high),
        remarks=(
            (
                warning(
                    "The limits lie {t} apart: with this doubt no reading at all could be accepted.",
                    t=constant("", "", SIZE, tolerance),
                )
                if zone is None
                else (
                    note(
                        "The doubt is more than a quarter of what lies between the limits: good parts will"
                        " often have to be called undecided."
                    )
                    if tolerance is not None and float(i.doubt) > WIDE * tolerance
                    else None
                )
            ),
            (
                warning(
                    "The doubt is not counted, as agreed: {p} of such sizes are not what the reading says.",
                    p=constant("", "", FINE_SHARE, float(1 - p) if decision == "in" else float(p)),
                )
                if i.rule == "simple" and 0.05 < p < 0.95
                else None
            ),
            (
                note(
                    "Who must prove, bears the doubt: the shop that the size is within, the customer that it"
                    " is not (ISO 14253-1)."
                )
                if decision == "cannot tell"
                else None
            ),
        ),
        tables=(_table(i.reading, i.low, i.high, i.doubt, float(guard), zone),),
        figures=(
            scale(
                i.reading.held_to(*(None if limit is None else float(limit) for limit in (i.low, i.high))),
                i.doubt,
                i.low,
                i.high,
                *((0.0, (i.low, i.high)) if i.rule == "simple" else (float(guard), zone)),
                decision,
            ),
        ),
    )


def _verdict(decision, rule, p, margin, deciding, reading, low, high):
    past = "under the lower limit" if low is not None and reading < low else "over the upper limit"
    size = constant("", "", APART, abs(float(margin)))
    if decision == "in":
        if rule == "simple" and p < 0.95:
            return (
                "attention",
                say("Within on the reading alone, by {m}", m=size),
                "Accepted as agreed. Where it matters, measure again with less doubt.",
            )
        return (
            "pass",
            say("Within its limits, by {m}", m=size),
            "Write down reading, doubt and limits. Use it.",
        )
    if decision == "out":
        return (
            "fail",
            say("Does not conform: {m} " + past, m=size),
            (
                "Do not use it as it is. Measure once more to rule out a slip, then rework, oversize or scrap"
                " as its page says."
            ),
        )
    where = say("{p} likely to be within", p=percent(float(p)))
    if float(deciding) < 1e-7:
        return "unsure", where, "It lies on the limit itself, where no gauge can tell. Treat it as not right."
    return (
        "unsure",
        where,
        say(
            "Measure again with a doubt of {u} or less: that would decide. Until then treat it as not right.",
            u=deciding,
        ),
    )


def _table(reading, low, high, doubt, guard, zone) -> Table:
    """Each limit: how far the reading is from it, and which readings would prove something."""
    rows, states = [], []
    for i, (words, limit, inward) in enumerate((("Lower", low, 1), ("Upper", high, -1))):
        if limit is None:
            continue
        distance = inward * float(reading - limit)
        way = "from" if inward > 0 else "to"
        proven = "no reading" if zone is None else say(way + " {x}", x=constant("", "", FINE, zone[i]))
        out = say(
            ("to" if inward > 0 else "from") + " {x}", x=constant("", "", FINE, float(limit) - inward * guard)
        )
        inside = say(
            "{d}, {n} U",
            d=constant("", "", APART, distance),
            n=constant("", "", TIMES, distance / float(doubt)),
        )
        rows.append((say(words + " {x}", x=limit), inside, proven, out))
        states.append(
            "fail"
            if distance <= -guard
            else "unsure"
            if zone is None or inward * (float(reading) - zone[i]) < 0
            else "pass"
        )
    return Table(
        "Reading and limits",
        ("Limit", "Reading inside by", "Proven in", "Proven out"),
        tuple(rows),
        tuple(states),
    )


def scale(reading, doubt, low, high, guard: float, zone, decision: str) -> Drawing:
    """The limits on a scale, with the zones of the decision in words, and the reading with its doubt."""
    y, U = float(reading), float(doubt)
    limits = [None if limit is None else float(limit) for limit in (low, high)]
    reach = [y - U, y + U, *(x + way * guard for x in limits if x is not None for way in (-1, 1))]
    spare = 0.25 * (max(reach) - min(reach))
    left, right = min(reach) - spare, max(reach) + spare
    h = (
        right - left
    ) * 0.09  # the height goes with the length, so that the picture always has the same shape
    out = [
        left if limits[0] is None else limits[0] - guard,
        right if limits[1] is None else limits[1] + guard,
    ]
    inner = [out[side] if zone is None or zone[side] is None else float(zone[side]) for side in (0, 1)]
    zones = [
        ("out", left, out[0], "a"),
        *(
            [("cannot tell", *out, "c")]
            if zone is None
            else [
                ("cannot tell", out[0], inner[0], "c"),
                ("in", *inner, ""),
                ("cannot tell", inner[1], out[1], "c"),
            ]
        ),
        ("out", out[1], right, "a"),
    ]
    shapes = []
    near = None not in limits and limits[1] - limits[0] < 0.35 * (
        right - left
    )  # then words above both zones would run into each other
    for words, start, end, hatch in zones:
        if end > start:
            middle, lifted = (start + end) / 2, words == "cannot tell"
            shapes += [
                Area(box(start, 0, end, h), hatch),
                Line((*box(start, 0, end, h), (start, 0)), "thin"),
                Label(
                    (middle, h * (2.3 if lifted else 1.55)),
                    words,
                    (
                        "middle"
                        if not near or not lifted or zone is None
                        else "end"
                        if middle < sum(limits) / 2
                        else "start"
                    ),
                    target=(middle, h * 0.6) if lifted else (),
                ),
            ]
    for limit, words, way in ((low, "L {x}", -1), (high, "H {x}", 1)):
        if limit is not None:
            x = float(limit)
            shapes += [
                Line(((x, -h * 0.9), (x, h * 1.25)), "band"),
                Label((x + way * h * 0.2, -h * 0.95), say(words, x=limit), "start" if way > 0 else "end"),
            ]
    level, tick = -h * 2.2, h * 0.3
    shapes += [
        Line(((y - U, level), (y + U, level))),
        Line(((y, level - tick), (y, level + tick))),
        Line(((y, level + tick), (y, h)), "centre"),
        *(Line(((end, level - tick), (end, level + tick))) for end in (y - U, y + U)),
        Label((y, level - h * 0.95), say("y {y} ± {U}", y=reading, U=doubt)),
    ]
    named = "".join(
        words
        for words, limit in ((", lower limit {L}", low), (", upper limit {H}", high))
        if limit is not None
    )
    return Drawing(
        "Reading with its doubt on the scale of the limits",
        say(
            "Reading {y}, ± {U}" + named + ": {decision}.",
            y=reading,
            U=doubt,
            L=low,
            H=high,
            decision=decision,
        ),
        tuple(shapes),
    )
