"""Limits of a screw thread in its class, bolt or tapped hole, and whether a measured one keeps to them."""

from calc.core.drawing import Area, Drawing, Label, Line
from calc.core.result import Table, impossible, note, say
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    choice,
    measured,
)
from calc.reference import sources
from calc.reference.standards.threads import HEIGHT
from calc.stations.shared.thread_sizes import FITS, NOTHING, SIZE, SIZES, known, length, pair, standard

BOLT, HOLE = "bolt", "hole"
ENLARGED = 2  # more, and the widest tolerances would eat up the thread
PARTS = {BOLT: "Bolt, stud or screw", HOLE: "Tapped hole or nut"}


class Out(Outputs):
    pitch_low = Output("Pitch diameter, least", "p_min", SIZE, main=True)
    pitch_high = Output("Pitch diameter, most", "p_max", SIZE, main=True)
    crest_low = Output("Bolt's outside or hole's bore, least", "c_min", SIZE)
    crest_high = Output("Bolt's outside or hole's bore, most", "c_max", SIZE)
    tightest = Output("Play at the pitch diameter, tightest", "a_min", SIZE)
    loosest = Output("Play at the pitch diameter, loosest", "a_max", SIZE)


class In(Inputs):
    size: str = choice("Thread", SIZES, must=True, example="M8x1.25")
    part: str = choice("Bolt or hole", PARTS, must=True, example=BOLT)
    crest_read: Number | None = measured(
        "Your bolt's outside, or hole's bore",
        "c",
        SIZE,
        tool="a micrometer; in a hole, pin gauges",
        hard="2 to 26 mm",
    )
    pitch_read: Number | None = measured(
        "Your pitch diameter", "p", SIZE, tool="three wires or a thread micrometer", hard="2 to 26 mm"
    )
    fit: str = choice("Class", FITS, fold=True, assumed=("usual", "what is sold unless another is asked for"))


@calculator(
    "thread-limits",
    "Limits of a thread",
    In,
    Out,
    purpose="What may this thread measure in its class, and does mine keep to it?",
    finds=(
        "ISO 965",
        "6g",
        "6H",
        "2A",
        "2B",
        "pitch diameter",
        "major diameter",
        "minor diameter",
        "UNC",
        "UNF",
        "metric thread",
        "worn thread",
        "thread tolerance",
    ),
    sources=(sources.ISO_965, sources.ASME_B1_1),
)
def thread_limits(i: In) -> Answer:
    """Limits by the tables of ISO 965-1, or the formulas of ASME B1.1, at 20 °C and before plating; normal engagement.

    Crest is what a plain micrometer or pin touches: a bolt's major diameter, a hole's minor. Form, pitch and angle of the flanks
    are not judged: thread gauges do that.
    """
    thread, hole, bolt = pair(i.size, i.fit)
    own = bolt if i.part == BOLT else hole
    zones = {"c": own.major if i.part == BOLT else own.minor, "p": own.pitch}
    source = standard(thread)
    sign = -1 if i.part == BOLT else 1
    deviation = known(
        "es" if i.part == BOLT else "EI", "Deviation of the class", zones["p"].deviation, source
    )

    def limits(letter, label, low, high):
        """Both limits, worked as the standard does: the basic size, off by the deviation, and a tolerance beyond."""
        zone = zones[letter]
        basic, tolerance = (
            known(f"{letter}_0", f"Basic {label}", zone.basic, source),
            known(f"T_{letter}", f"Tolerance of the {label}", zone.tolerance, source),
        )
        if sign < 0:
            top = high(basic - deviation, source)
            return low(top - tolerance, source), top
        bottom = low(basic + deviation, source)
        return bottom, high(bottom + tolerance, source)

    pitch_low, pitch_high = limits("p", "pitch diameter", Out.pitch_low, Out.pitch_high)
    crest_low, crest_high = limits(
        "c", "outside" if i.part == BOLT else "bore", Out.crest_low, Out.crest_high
    )
    other = hole.pitch if i.part == BOLT else bolt.pitch
    mate_low, mate_high = (
        known(f"q_{end}", f"Mate's pitch diameter, {words}", value, source)
        for end, words, value in (("min", "least", other.low), ("max", "most", other.high))
    )
    tightest = Out.tightest(mate_low - pitch_high if i.part == BOLT else pitch_low - mate_high)
    loosest = Out.loosest(mate_high - pitch_low if i.part == BOLT else pitch_high - mate_low)
    for field, read, basic in (
        ("crest_read", i.crest_read, zones["c"].basic),
        ("pitch_read", i.pitch_read, zones["p"].basic),
    ):
        if read is not None and abs(float(read) - basic) > 0.4 * thread.P:
            raise impossible(
                field,
                "is {read}, far from the {basic} of {thread}; measure again, or choose the thread that it"
                " belongs to",
                read=read,
                basic=length(basic),
                thread=thread.words,
            )
    words = ("Outside", "Pitch diameter") if i.part == BOLT else ("Bore", "Pitch diameter")
    reads = [
        Reading(*row)
        for row in (
            (words[0], i.crest_read, crest_low, crest_high, i.part),
            (words[1], i.pitch_read, pitch_low, pitch_high, i.part),
        )
        if row[1] is not None
    ]
    return answer(
        pitch_low,
        pitch_high,
        crest_low,
        crest_high,
        tightest,
        loosest,
        verdict=_verdict(reads, own.name, i.part, pitch_low, pitch_high, crest_low, crest_high),
        limits=tuple(
            Limit(f"the {r.words.lower()}", r.read, low=float(r.low), high=float(r.high)) for r in reads
        ),
        remarks=(
            (
                note(
                    "These limits hold before plating. A plating counts four times on the pitch diameter,"
                    " twice on each of two flanks."
                )
                if i.part == BOLT
                else None
            ),
            (
                note("A pitch diameter in limits is no proof of pitch and flank: a go and a no-go gauge are.")
                if reads
                else None
            ),
        ),
        tables=(_table(hole, bolt), *((_judged(reads),) if reads else ())),
        figures=(profile(thread, hole, bolt),),
    )


class Reading:
    """A measured diameter against its limits."""

    def __init__(self, words, read, low, high, part):
        self.words, self.read, self.low, self.high = words, read, low, high
        under, over = float(low) - float(read), float(read) - float(high)
        self.out = max(under, over) > NOTHING
        self.by = max(under, over)
        self.way = "small" if under > over else "large"
        self.can_be_cut = (part, self.way) in ((BOLT, "large"), (HOLE, "small"))


def _verdict(reads, name, part, pitch_low, pitch_high, crest_low, crest_high):
    out = sorted((r for r in reads if r.out), key=lambda r: (r.can_be_cut, -r.by))
    if not reads:
        return (
            "pass",
            say(name + ": pitch diameter {a} to {b}", a=pitch_low, b=pitch_high),
            say(
                ("Outside" if part == BOLT else "Bore")
                + " {a} to {b}. Type what you measured to have it judged.",
                a=crest_low,
                b=crest_high,
            ),
        )
    if not out:
        if len(reads) == 2:
            return (
                "pass",
                say("Both diameters within {name}", name=name),
                "Try the go gauge over its whole length, then use it.",
            )
        return (
            "pass",
            say("{words} within {name}: {read}", words=reads[0].words, name=name, read=reads[0].read),
            "The other diameter is not judged yet: type it too.",
        )
    worst = out[0]
    if worst.can_be_cut:
        do = (
            "Clean it and measure again. If it stays, run a die or roll over it; do not force it in."
            if part == BOLT
            else "Clean it and measure again. If it stays, tap or drill it to size."
        )
    elif part == BOLT:
        do = "Do not use it: what is worn or stretched away does not come back. Fit a new one."
    else:
        do = (
            "Do not build on it: it holds less than it should. See how far with the length of engagement, or"
            " fit a wire thread insert."
        )
    return "fail", say("{words} too {way} by {by}", words=worst.words, way=worst.way, by=length(worst.by)), do


def _judged(reads) -> Table:
    return Table(
        "Your thread",
        ("Diameter", "May be", "Is", ""),
        tuple(
            (
                r.words,
                say("{a} to {b}", a=r.low, b=r.high),
                r.read,
                say("too {way} by {by}", way=r.way, by=length(r.by)) if r.out else "in limits",
            )
            for r in reads
        ),
        tuple("fail" if r.out else "pass" for r in reads),
    )


def _table(hole, bolt) -> Table:
    def span(zone):
        if zone.tolerance is None:
            return say("{a} at most" if zone.inward < 0 else "{a} at least", a=length(zone.near))
        return say("{a} to {b}", a=length(zone.low), b=length(zone.high))

    return Table(
        "Both parts",
        ("Diameter", f"Bolt {bolt.name}", f"Hole {hole.name}"),
        tuple(
            (words, span(getattr(bolt, which)), span(getattr(hole, which)))
            for words, which in (("Major", "major"), ("Pitch", "pitch"), ("Minor", "minor"))
        ),
    )


def profile(thread, hole, bolt) -> Drawing:
    """Both threads cut along the axis over two pitches; deviations drawn larger than they are, by as much as makes them plain."""
    P, H = thread.P, HEIGHT * thread.P
    k = ENLARGED
    across = [2 * P * i / 64 for i in range(65)]

    def wave(x):
        """Height of the sharp triangle over the pitch line."""
        return H / 2 - H * abs((x / P) % 1 - 0.5) * 2

    def outline(flank, crest, bottom, top):
        return tuple((x, min(max(wave(x) + flank, bottom + crest[0]), top + crest[1])) for x in across)

    def bolt_at(pitch, major):
        return outline(-k * pitch / 2, (-k * pitch / 2, -k * major / 2), -H / 4, 3 * H / 8)

    def hole_at(pitch, minor):
        return outline(k * pitch / 2, (k * minor / 2, k * pitch / 2), -H / 4, 3 * H / 8)

    es, ei = bolt.pitch.deviation, hole.pitch.deviation
    bolt_near, bolt_far = bolt_at(es, es), bolt_at(es + bolt.pitch.tolerance, es + bolt.major.tolerance)
    hole_near, hole_far = hole_at(ei, ei), hole_at(ei + hole.pitch.tolerance, ei + hole.minor.tolerance)
    low, high = -0.95 * H, 1.05 * H
    shapes = (
        Area((*bolt_far, (2 * P, low), (0, low)), "a"),
        Area((*bolt_near, *reversed(bolt_far)), "c"),
        Area((*hole_far, (2 * P, high), (0, high)), "b"),
        Area((*hole_near, *reversed(hole_far)), "c"),
        Line(bolt_near),
        Line(hole_near),
        Line(((-0.1 * P, 0), (2.1 * P, 0)), "centre"),
        Label((-0.12 * P, high - 0.15 * H), f"hole {hole.name}", "end"),
        Label((-0.12 * P, low + 0.05 * H), f"bolt {bolt.name}", "end"),
        Label((-0.12 * P, -0.04 * H), "pitch line", "end"),
    )
    return Drawing(
        "Threads and their tolerances",
        say(
            "Hole {h} above, bolt {b} below, cut along the axis; the closely hatched bands are the"
            " tolerances: {tb} on the bolt's pitch diameter, {th} on the hole's.",
            h=hole.name,
            b=bolt.name,
            tb=length(bolt.pitch.tolerance),
            th=length(hole.pitch.tolerance),
        ),
        shapes,
        f"play and tolerances drawn {ENLARGED} times as large as they are",
    )
