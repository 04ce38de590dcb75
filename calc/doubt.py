"""What the doubt of the readings is worth in a result.

Each reading is moved by its standard uncertainty, both ways, and the same function is worked again (the law of propagation of
uncertainty, GUM 5.1, with numerical sensitivities); no calculator knows about it. Readings are taken as independent.
"""
import math

from calc.conformance import COVERAGE, GUARD, decide, probability_within
from calc.quantity import RATIO
from calc.result import Refused, Verdict, say
from calc.working import form, given


def weigh(work, values, taken, found):
    """Expanded uncertainty of each output, and the verdict that the doubt leaves standing.

    `work(values)` evaluates; `found` is its answer for `values` themselves. Returns ({output: U}, Verdict).
    """
    outputs = {n.key: 0.0 for n in found.numbers}
    margins = [0.0 for limit in found.limits for _ in limit.margins()]
    for t in taken:
        for path, u in t.doubts:
            up, down = (_moved(work, values, t.input.name, path, way * u) for way in (1, -1))
            up, down = up or found, down or found  # at the edge of what goes together: one-sided
            span = 2 if up is not found and down is not found else 1
            for a, b in zip(up.numbers, down.numbers):
                outputs[a.key] += ((float(a) - float(b)) / span) ** 2
            for i, (a, b) in enumerate(zip(*([m for limit in answer.limits for m in limit.margins()] for answer in (up, down)))):
                margins[i] += ((a - b) / span) ** 2
    return {key: COVERAGE * math.sqrt(square) for key, square in outputs.items()}, _verdict(found, [math.sqrt(m) for m in margins])


def _moved(work, values, name, path, by):
    try:
        return work({**values, name: _shift(values[name], path, by)})
    except Refused:
        return None


def _shift(value, path, by):
    if not path:
        return given(value.symbol, value.label, value.form, float(value) + by, key=value.key)
    return tuple(_shift(part, path[1:], by) if i == path[0] else part for i, part in enumerate(value))


def _verdict(found, doubts) -> Verdict:
    """The calculator's own verdict where the doubt cannot turn it, 'cannot tell' where it can (ISO 14253-1)."""
    undecided, worst, i = None, 1.0, 0
    for limit in found.limits:
        for margin in limit.margins():
            p = probability_within(margin, doubts[i], 0.0, None)
            decision = decide(p)
            if decision == "out":
                return found.verdict
            if decision == "cannot tell" and p < worst:
                undecided, worst = (limit, margin, doubts[i]), p
            i += 1
    if undecided is None:
        return found.verdict
    limit, margin, u = undecided
    chance = given("", "", form(RATIO, 0, "%", "%"), worst)
    # the same readings decide when their doubt is this share of what it is now
    share = given("", "", form(RATIO, 0, "%", "%"), max(0.01, abs(margin) / (GUARD * u)))
    return Verdict("unsure", say("Cannot tell: {p} that {words} is right", p=chance, words=limit.words),
                   say("Measure again with less doubt: {share} of the present one would decide. Until then treat it as not right.", share=share))
