"""The smallest thing that writes HTML safely: text is escaped here, at the writer, and nowhere else."""
from html import escape

from calc.result import Text
from calc.working import Form, Number

VOID = {"input", "br", "hr", "meta", "line", "path", "polygon", "polyline", "rect", "circle"}


class Html(str):
    """Text that is markup already."""


def children(*nodes) -> Html:
    """Nodes in a row: markup as it is, strings escaped, Texts and Numbers in both unit systems, None and False dropped."""
    return Html("".join(_node(n) for n in nodes))


def _node(node) -> str:
    if node is None or node is False:
        return ""
    if isinstance(node, Html):
        return node
    if isinstance(node, Number):
        return quantity(node)
    if isinstance(node, Text):
        return children(*node.parts())
    if isinstance(node, (list, tuple)):
        return children(*node)
    return escape(str(node), quote=False)


def el(name: str, /, *nodes, **attributes) -> Html:
    """An element. Attributes: `class_` for class, `_` becomes `-`; True writes the bare name, None and False leave it out."""
    written = "".join(
        f" {key.rstrip('_').replace('_', '-')}" + ("" if value is True else f'="{escape(str(value))}"')
        for key, value in attributes.items() if value is not None and value is not False)
    return Html(f"<{name}{written}>" if name in VOID else f"<{name}{written}>{children(*nodes)}</{name}>")


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
