"""What drawings and plots are put together from: an image with its words, paths, text with its halo; no
colour carries meaning alone."""

import math
import re
from functools import lru_cache

from calc.core.result import Text
from calc.core.working import Number
from calc.page.html import Html, both, children, el

WIDTH = 360  # user units; text of 12 units is then legible at 390 px
TEXT = 12


def trimmed(x) -> str:
    return f"{x:.2f}".rstrip("0").rstrip(".")


def path_through(points, closed) -> Html:
    return Html("M" + "L".join([f"{trimmed(x)} {trimmed(y)}" for x, y in points]) + ("Z" if closed else ""))


def path_by_steps(points, closed) -> Html:
    """The same line to a tenth of a unit, each point told by its way from the one before: half as long."""
    tenths = [(round(10 * x), round(10 * y)) for x, y in points]
    (x, y), told = tenths[0], [f"M{_tenths(tenths[0][0])} {_tenths(tenths[0][1])}"]
    for to_x, to_y in tenths[1:]:
        across, down = to_x - x, to_y - y
        if across and down:
            told.append(f"l{_tenths(across)}{'' if down < 0 else ' '}{_tenths(down)}")
        elif across or down:
            told.append(f"h{_tenths(across)}" if across else f"v{_tenths(down)}")
        x, y = to_x, to_y
    return Html("".join(told) + ("z" if closed else ""))


@lru_cache(maxsize=8192)
def _tenths(n: int) -> str:
    return f"{n / 10:g}".replace("0.", ".", 1) if abs(n) < 10 else f"{n / 10:g}"


def image(width, height, alt, *nodes) -> Html:
    """An image with its words: in both unit systems, the hidden one hidden from the reader's ear as well."""
    words = both(alt.plain("metric"), alt.plain("inch"))
    return children(
        el(
            "svg",
            *nodes,
            viewBox=f"0 0 {trimmed(width)} {trimmed(height)}",
            aria_hidden="true",
            focusable="false",
            width=trimmed(width),
            height=trimmed(height),
        ),
        el("span", words, class_="visually-hidden"),
    )


def words_at(x, y, words, anchor="middle", turned=None) -> Html:
    """Text at a point, haloed so that it stays legible over hatching; quantities in both systems. It is moved
    aside where it would leave the paper."""
    if isinstance(words, (Number, Text)):
        plain = words.text if isinstance(words, Number) else words.plain
        metric, inch = plain("metric"), plain("inch")
        if metric != inch:
            return children(
                text_at(x, y, metric, anchor, turned, "text u-metric"),
                text_at(x, y, inch, anchor, turned, "text u-inch"),
            )
        words = metric
    return text_at(x, y, words, anchor, turned, "text")


def text_at(x, y, words, anchor, turned, class_) -> Html:
    across = length_of(words) * abs(math.cos(math.radians(turned or 0)))
    before = {"start": 0.0, "middle": across / 2, "end": across}[anchor]
    x = min(max(x, before + 2), WIDTH - 2 - across + before)
    return el(
        "text",
        _subscripts(words),
        x=trimmed(x),
        y=trimmed(y),
        text_anchor=anchor,
        transform=f"rotate({trimmed(turned)} {trimmed(x)} {trimmed(y)})" if turned else None,
        class_=class_,
    )


def _subscripts(words: str) -> Html:
    """A name such as D_p with its subscript set low; other words as they are."""
    parts = re.split(r"(?<=\w)_(\w+)", words)
    return children(
        *(
            (
                el("tspan", part, class_="sub", dy="3")
                if i % 2
                else el("tspan", part, dy="-3")
                if i and part
                else part
            )
            for i, part in enumerate(parts)
        )
    )


def length_of(words: str) -> float:
    """About how long words are on the paper."""
    return 0.56 * TEXT * len(words)
