"""What to do with a reading, and how far it is from each limit."""

from calc.core.conformance import percent
from calc.core.result import Judged, Table, say
from calc.core.working import constant
from calc.stations.measuring.reading_verdict.asked import SIMPLE, In
from calc.stations.measuring.reading_verdict.weighed import APART, IN, OUT, Weighed
from calc.stations.shared.forms import FINE, TIMES


def verdict_on(i: In, found: Weighed) -> Judged:
    size = constant("", "", APART, abs(float(found.margin)))
    if found.decision == IN:
        if i.rule == SIMPLE and found.within < 0.95:
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
    if found.decision == OUT:
        under = i.low is not None and i.reading < i.low
        return (
            "fail",
            say(
                f"Does not conform: {{m}} {'under the lower limit' if under else 'over the upper limit'}",
                m=size,
            ),
            "Do not use it as it is. Measure once more to rule out a slip, then rework, oversize or scrap as"
            " its page says.",
        )
    where = say("{p} likely to be within", p=percent(float(found.within)))
    if float(found.deciding) < 1e-7:
        return "unsure", where, "It lies on the limit itself, where no gauge can tell. Treat it as not right."
    return (
        "unsure",
        where,
        say(
            "Measure again with a doubt of {u} or less: that would decide. Until then treat it as not right.",
            u=found.deciding,
        ),
    )


def limit_by_limit(i: In, found: Weighed) -> Table:
    """Each limit: how far the reading is from it, and which readings would prove something."""
    rows, states = [], []
    for side, (words, limit, inward) in enumerate((("Lower", i.low, 1), ("Upper", i.high, -1))):
        if limit is None:
            continue
        distance, guard = inward * float(i.reading - limit), float(found.guard)
        inwards, outwards = ("from", "to") if inward > 0 else ("to", "from")
        proven = None if found.accepted is None else found.accepted[side]
        inside = say(
            "{d}, {n} U",
            d=constant("", "", APART, distance),
            n=constant("", "", TIMES, distance / float(i.doubt)),
        )
        rows.append(
            (
                say(words + " {x}", x=limit),
                inside,
                "no reading" if proven is None else say(inwards + " {x}", x=constant("", "", FINE, proven)),
                say(outwards + " {x}", x=constant("", "", FINE, float(limit) - inward * guard)),
            )
        )
        short = proven is None or inward * (float(i.reading) - proven) < 0
        states.append("fail" if distance <= -guard else "unsure" if short else "pass")
    return Table(
        "Reading and limits",
        ("Limit", "Reading inside by", "Proven in", "Proven out"),
        tuple(rows),
        tuple(states),
    )
