"""Working lines, read back from the numbers that were really used: MathML for the page, one line of text for the terminal."""
from calc.page.html import Html, both, children, el
from calc.working import Number

_LEVEL = {"+": 1, "-": 1, "neg": 1.5, "*": 2, "/": 2, "**": 3}
_NAMES = {"least": "min", "greatest": "max", "log10": "log"}


def line_html(n: Number) -> Html:
    """A named result as MathML: symbol = formula = numbers put in = value."""
    expression = n.args[0]
    rows = [_row(_symbol(n.symbol), el("mo", "=", form="infix"), _ml(expression, False))]
    if expression.op not in ("given", "step"):
        rows.append(_row(el("mo", "=", form="infix"), _ml(expression, True)))
    rows.append(_row(el("mo", "=", form="infix"), _value(n)))
    return el("div", *(el("math", row, display="block") for row in rows), class_="formula")


def line_text(n: Number, system: str) -> str:
    """The same as one line of plain text."""
    expression = n.args[0]
    parts = [n.symbol, _plain(expression, None)]
    if expression.op not in ("given", "step"):
        parts.append(_plain(expression, system))
    return " = ".join((*parts, n.text(system)))


def _row(*nodes) -> Html:
    return el("mrow", *nodes)


def _symbol(text: str) -> Html:
    base, _, sub = text.partition("_")
    letter = el("mi", base)
    return el("msub", letter, el("mtext" if len(sub) > 1 else "mi", sub)) if sub else letter


def _value(n: Number) -> Html:
    return _row(both(*(_mtext(n.text(s)) for s in ("metric", "inch")), tag="mrow"))


def _mtext(text: str) -> Html:
    return el("mtext", text.replace(" ", "\u00a0"))


def _level(n: Number, numbers: bool) -> float:
    if n.op in _LEVEL:
        return _LEVEL[n.op]
    if numbers and n.op in ("given", "step", "const", "in") and n.value < 0:
        return 1.5
    return 3.5 if numbers and n.op in ("given", "step") and n.form and n.form.metric.symbol else 9  # (37.5 mm)²


def _const(n: Number) -> str:
    return f"{n.value:.10g}".replace("-", "−")


def _ml(n: Number, numbers: bool) -> Html:
    if n.op == "const":
        return el("mn", _const(n))
    if n.op in ("given", "step"):
        return _value(n) if numbers and n.form else _symbol(n.symbol)
    if n.op in ("in", "of"):
        inner = n.args[0]
        if n.op == "of":
            return _ml(inner, numbers)
        return el("mn", f"{n.value:.5g}") if numbers else _row(_ml(inner, False), el("mo", "/"), el("mtext", n.form.symbol))
    if n.op == "/":
        return el("mfrac", _ml(n.args[0], numbers), _ml(n.args[1], numbers))
    if n.op == "sqrt":
        return el("msqrt", _ml(n.args[0], numbers))
    if n.op == "abs":
        return _row(el("mo", "|"), _ml(n.args[0], numbers), el("mo", "|"))
    if n.op == "neg":
        return _row(el("mo", "−"), _ml_in(n.args[0], 2, numbers))
    if n.op == "**":
        return el("msup", _ml_in(n.args[0], 4, numbers), _ml(n.args[1], numbers))
    if n.op in ("+", "-", "*"):
        sign = {"+": "+", "-": "−", "*": "·"}[n.op]
        level = _LEVEL[n.op]
        right = level + 0.6 if n.op != "+" else level + 0.4  # a negative number on the right is bracketed, a − (b − c) too
        return _row(_ml_in(n.args[0], level, numbers), el("mo", sign), _ml_in(n.args[1], right, numbers))
    arguments = [_ml(a, numbers) for a in n.args]
    listed = [arguments[0]]
    for a in arguments[1:]:
        listed += [el("mo", ";"), a]
    return _row(el("mi", _NAMES.get(n.op, n.op)), _brackets(_row(*listed)))


def _ml_in(n: Number, least: float, numbers: bool) -> Html:
    inner = _ml(n, numbers)
    return _brackets(inner) if _level(n, numbers) < least and (n.op != "/" or least > 3) else inner


def _brackets(inner: Html) -> Html:
    return _row(el("mo", "("), inner, el("mo", ")"))


def _plain(n: Number, system: str | None) -> str:
    """Plain text; symbols where `system` is None, numbers in that system else."""
    numbers = system is not None
    if n.op == "const":
        return _const(n)
    if n.op in ("given", "step"):
        return n.text(system) if numbers and n.form else n.symbol
    if n.op == "of":
        return _plain(n.args[0], system)
    if n.op == "in":
        return f"{n.value:.5g}" if numbers else f"{_plain(n.args[0], None)}[{n.form.symbol}]"
    if n.op == "sqrt":
        return f"√({_plain(n.args[0], system)})"
    if n.op == "abs":
        return f"|{_plain(n.args[0], system)}|"

    def inside(a, least):
        text = _plain(a, system)
        return f"({text})" if _level(a, numbers) < least else text
    if n.op == "neg":
        return "−" + inside(n.args[0], 2)
    if n.op == "**":
        return f"{inside(n.args[0], 4)}^{inside(n.args[1], 4)}"
    if n.op in ("+", "-", "*", "/"):
        sign = {"+": " + ", "-": " − ", "*": "·", "/": "/"}[n.op]
        level = _LEVEL[n.op]
        return inside(n.args[0], level) + sign + inside(n.args[1], level + (0.4 if n.op == "+" else 0.6))
    return f"{_NAMES.get(n.op, n.op)}({'; '.join(_plain(a, system) for a in n.args)})"
