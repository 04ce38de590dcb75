"""The smallest thing that writes HTML safely: text is escaped here, at the writer, and nowhere else."""

import re
from functools import cache, lru_cache
from html import escape

from calc.core.result import Text
from calc.core.working import Form, Number

VOID = {"input", "br", "hr", "link", "meta"}
# of SVG, where an element left open takes in what follows
SHAPES = {"line", "path", "polygon", "polyline", "rect", "circle"}


# Marks that turn the direction of what follows them: a name that bears one would show another name, or the
# size behind it backwards.
_TURNS = re.compile("[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]")


def _shown(mark) -> str:
    return f"\u27e8U+{ord(mark[0]):04X}\u27e9"


# A key changes few words of a page: most of what is escaped was so at the key before.
_text = lru_cache(maxsize=4096)(lambda text: escape(_TURNS.sub(_shown, text), quote=False))
_quoted = lru_cache(maxsize=4096)(escape)


class Html(str):
    """Text that is markup already."""


def children(*nodes) -> Html:
    """Nodes in a row: markup as it is, strings escaped, Texts and Numbers in both unit systems, None and
    False dropped."""
    return Html("".join([node if type(node) is Html else _node(node) for node in nodes]))


def _node(node) -> str:
    if node is None or node is False:
        return ""
    if isinstance(node, Html):
        return node
    if isinstance(node, Number):
        return quantity(node)
    if isinstance(node, Text):
        return children(*node.parts())
    if isinstance(node, (list, tuple)) or hasattr(node, "__next__"):
        return children(*node)
    return _text(str(node))


def el(name: str, /, *nodes, **attributes) -> Html:
    """An element. Attributes: `class_` for class, `_` becomes `-`; True writes the bare name, None and False
    leave it out."""
    written = (
        "".join(
            [
                (
                    f" {_attribute(key)}"
                    if value is True
                    else f' {_attribute(key)}="{value if type(value) is Html else _quoted(str(value))}"'
                )
                for key, value in attributes.items()
                if value is not None and value is not False
            ]
        )
        if attributes
        else ""
    )
    if name in SHAPES:
        return Html(f"<{name}{written}/>")
    return Html(f"<{name}{written}>" if name in VOID else f"<{name}{written}>{children(*nodes)}</{name}>")


@cache
def _attribute(key: str) -> str:
    return key.rstrip("_").replace("_", "-")


def both(metric, inch, tag: str = "span") -> Html:
    """A text in both unit systems; CSS shows the reader's."""
    if metric == inch:
        return children(metric)
    return children(el(tag, metric, class_="u-metric"), el(tag, inch, class_="u-inch"))


def quantity(n: Number, tag: str = "span") -> Html:
    """A number with its unit, in both systems."""
    return both(n.text("metric"), n.text("inch"), tag)


def value(shape: Form, si: float) -> Html:
    """A value in a form, with its unit, in both systems."""
    return both(shape.write(si, "metric"), shape.write(si, "inch"))


def symbol(text: str) -> Html:
    """A symbol such as D_p or δ with its subscript set low."""
    base, _, sub = text.partition("_")
    return children(base, el("sub", sub) if sub else None)
