"""A verdict as HTML: state and headline, the number it hangs on beside its limit, what to do."""

from calc.core.result import VERDICT_WORDS, Limit
from calc.declare.result import Result
from calc.page.html import Html, children, el, quantity
from calc.page.result import doubt_html, main_outputs, output_html, shown

MOST_AWAITED = 4  # names that fit on a phone above the field that is typed into


def verdict(result: Result, anchor: str) -> Html:
    """The verdict with what it hangs on, which stays in sight while entries change; below it what to do, and
    what it takes for granted. An example is marked as one, in words and shape."""
    v, state = result.verdict, "example" if result.example else result.verdict.state
    headline = _awaited(_next(result), anchor) if state == "awaited" and result.next else v.headline
    leading = _leading(result)
    return children(
        el(
            "div",
            el(
                "p",
                el("span", "Example" if result.example else VERDICT_WORDS[state], class_="verdict-state"),
                " ",
                children(VERDICT_WORDS[v.state], ". ") if result.example else None,
                headline,
                class_="verdict-head",
            ),
            el("dl", leading, class_="outputs main") if leading else None,
            class_=f"verdict verdict-{state}",
            role="group",
            aria_label="Verdict",
        ),
        el("p", "Type your own." if result.example else v.do, class_=f"verdict-do verdict-{state}"),
        granted(result, anchor),
    )


def _leading(result: Result) -> Html:
    """The number that the verdict hangs on, beside its limit; where it hangs on none, the leading numbers."""
    if result.decides:
        return _held(result.decides, result)
    return children(*(output_html(o, result) for o in main_outputs(result)))


def _held(limit: Limit, result: Result) -> Html:
    """A number and the limit that it is held against."""
    n = limit.number
    return el(
        "div",
        el("dt", n.label or limit.words[:1].upper() + limit.words[1:]),
        el("dd", quantity(n), doubt_html(n.key, n, result), class_="num"),
        el("dd", _bounds(limit), class_="held-to"),
        class_="decides",
    )


def _bounds(limit: Limit) -> Html:
    low, high = limit.low, limit.high
    if low is not None and high is not None:
        return children("limits ", low, " to ", high)
    return children("at least ", low) if high is None else children("at most ", high)


def granted(result: Result, anchor: str) -> Html | None:
    """What the verdict takes for granted: sizes that stand in, what is assumed, and whose limits these are;
    each leads to its field. Where there is no verdict yet, nothing."""
    if result.standing is None or result.verdict.state in ("awaited", "unjudged"):
        return None
    told, sheet = [], result.sheet
    if sheet and result.stand_ins:
        told.append(
            children(
                "Not read, so any size that ",
                f"{sheet.name}’s sheet allows was counted: ",
                _listed((_linked(t, anchor) for t in result.stand_ins), "; "),
                ". ",
            )
        )
    if result.assumed:
        told.append(
            children(
                "Taken: ", _listed((_linked(t, anchor, " ", shown(t)) for t in result.assumed), "; "), ". "
            )
        )
    if sheet:
        told.append(
            children(f"Limits: {sheet.name}’s sheet", ", which is invented." if sheet.invented else ".")
        )
    return el("p", *told, class_="granted") if told else None


def _awaited(next_ones: list, anchor: str) -> Html:
    """The first of what is still to be read by name, the others by count: each is marked at its field too."""
    few = next_ones if len(next_ones) <= MOST_AWAITED else next_ones[: MOST_AWAITED - 1]
    left = len(next_ones) - len(few)
    named = [_linked(t, anchor) for t in few]
    return _listed([*named, f"and {left} more"] if left else named, "; ")


def _next(result: Result) -> list:
    """What is to be read next, in the order of the form."""
    return [t for t in result.taken if t.input.name in result.next]


def _linked(t, anchor: str, *more) -> Html:
    """An input's name, a tap from its field."""
    return el("a", t.called, *more, href=f"#{anchor}-{t.input.name}", data_field_link=t.input.name)


def _listed(nodes, between: str = ", ") -> Html:
    return children(*(children(between if i else None, node) for i, node in enumerate(nodes)))
