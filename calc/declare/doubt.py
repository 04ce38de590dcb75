"""What the doubt of the readings is worth in a result.

Each reading is moved by its standard uncertainty, both ways, and the same function is worked again (the law
of propagation of uncertainty, GUM 5.1, with numerical sensitivities); no calculator knows about it. Readings
are taken as independent, and each limit is judged by itself.
"""

import math

from calc.core.conformance import COVERAGE, decide, deciding_share, percent, probability, standard
from calc.core.result import Refused, Verdict, say
from calc.core.working import constant

# relative: a change so small is the arithmetic's, where a reading falls out of a result or does not come into
# it
LOST = 1e-13


def weigh(work, values, taken, found):
    """Expanded uncertainty of each output, and the verdict that the doubt leaves standing.

    `work(values)` evaluates; `found` is its answer for `values` themselves. Returns ({output: U}, Verdict).
    """
    squares = dict.fromkeys(_told(found), 0.0)
    for t in taken:
        for path, u in t.doubts:
            for place, change in _changes(work, values, t.input, path, u, found).items():
                squares[place] += change**2
    doubts = {place: math.sqrt(square) for place, square in squares.items()}
    return {n.key: COVERAGE * doubts[n.key] for n in found.numbers}, _verdict(found, doubts)


def _told(answer) -> dict:
    """Outputs by key, and how far inside of each limit they lie by (which limit, which side)."""
    return {n.key: float(n) for n in answer.numbers} | {
        (i, side): margin
        for i, limit in enumerate(answer.limits)
        for side, margin in enumerate(limit.margins())
        if margin is not None
    }


def _changes(work, values, declared, path, u, found) -> dict:
    """What one standard uncertainty of one reading changes.

    For an output the root mean square of both ways, which is the GUM's half difference along a straight line,
    and does not vanish where a result turns or has a kink (the largest of several readings). For a limit the
    larger of both: it is the way that hurts. Where a reading so far off lies outside the accepted range, or
    does not go together with the others, one way is enough; where neither does, the step is made smaller.
    """
    share = 1.0
    while True:
        moved = [
            answer for way in (1, -1) if (answer := _moved(work, values, declared, path, way * share * u))
        ]
        if moved or share < 1e-9:
            break
        share /= 8
    here, there = _told(found), [_told(answer) for answer in moved]
    changes = {
        place: [_change(here[place], told[place]) / share for told in there if place in told] or [0.0]
        for place in here
    }
    return {
        place: (
            max(map(abs, both))
            if isinstance(place, tuple)
            else math.sqrt(sum(x * x for x in both) / len(both))
        )
        for place, both in changes.items()
    }


def _change(before, after) -> float:
    return 0.0 if abs(after - before) <= LOST * max(abs(before), abs(after)) else after - before


def _moved(work, values, declared, path, by):
    try:
        number, reading = (
            (declared.cells[path], values[declared.name][path[0]][path[1]])
            if path
            else (declared, values[declared.name])
        )
        number.check(float(reading) + by)
        return work({**values, declared.name: _shift(values[declared.name], path, by)})
    except Refused:
        return None


def _shift(value, path, by):
    if not path:
        return constant(value.symbol, value.label, value.form, float(value) + by, key=value.key)
    return tuple(_shift(part, path[1:], by) if i == path[0] else part for i, part in enumerate(value))


def _verdict(found, doubts) -> Verdict:
    """The calculator's own verdict where the doubt cannot turn it, 'cannot tell' where it can (ISO
    14253-1)."""
    margins = {place: margin for place, margin in _told(found).items() if isinstance(place, tuple)}
    # of each limit's level: what the doubt decides, whether the number lies outside, and how near in doubts
    levels = {"fail": [], "attention": []}
    for i, limit in enumerate(found.limits):
        below, above = (standard(margins.get((i, side)), doubts.get((i, side), 0.0)) for side in (0, 1))
        levels[limit.level].append(
            (
                decide(below, above),
                any(margins.get((i, side), 0.0) < 0 for side in (0, 1)),
                below,
                above,
                limit.words,
            )
        )
    out, outside = (
        {level: any(each[k] in ("out", True) for each in of) for level, of in levels.items()} for k in (0, 1)
    )
    if out["fail"]:
        return found.verdict
    if found.verdict.state == "fail":
        # else it fails by something that no doubt of these readings touches
        counted = levels["fail"] if outside["fail"] else []
    elif out["attention"] or found.verdict.state == "attention" and not outside["attention"]:
        counted = levels["fail"]  # another look is called for in any case
    else:
        counted = levels["fail"] + levels["attention"]
    undecided = [
        (probability(below, above), deciding_share(below, above), words)
        for decision, _, below, above, words in counted
        if decision == "cannot tell"
    ]
    if not undecided:
        return found.verdict
    sure, _, words = min(undecided)
    share = min(share for _, share, _ in undecided)
    if share < 0.01:
        again = say("It lies on the limit, where no doubt is small enough to tell. Treat it as not right.")
    else:
        again = say(
            "Measure again with less doubt: {share} of the present one would tell. Until then treat it as not"
            " right.",
            share=percent(share),
        )
    return Verdict(
        "unsure", say("Only {sure} sure that {words} is right", sure=percent(sure), words=words), again
    )
