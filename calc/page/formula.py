"""Working lines, read back from the numbers that were really used: MathML for the page, one line of text for
the terminal.

Both are written by one walk through the expression, so that brackets stand in the one where they stand in the
other, but for fractions, which MathML stacks.
"""

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from calc.core.working import Number
from calc.core.writing import figures
from calc.page.html import Html, both, el

SUM, PRODUCT, POWER, ATOM = 1, 2, 3, 4  # how firmly a piece of a formula holds together
_NAMES = {"least": "min", "greatest": "max", "log10": "log"}


def line_html(n: Number) -> Html:
    """A named result as MathML: symbol = formula = numbers put in = value."""
    expression = n.args[0]
    rows = [_MathML.symbol(n.symbol), _MathML.sign("="), _write(expression, _MathML, False).out]
    sides = [_write(expression, _MathML, True).out] if expression.op not in ("given", "step") else []
    sides.append(_MathML.quantity([n.text(s) for s in _MathML.systems]))
    lines = [rows, *([_MathML.sign("="), side] for side in sides)]
    return el("div", *(el("math", _MathML.row(*line), display="block") for line in lines), class_="formula")


def line_text(n: Number, system: str) -> str:
    """The same as one line of plain text."""
    expression, style = n.args[0], _Plain(system)
    parts = [n.symbol, _write(expression, style, False).out]
    if expression.op not in ("given", "step"):
        parts.append(_write(expression, style, True).out)
    return " = ".join((*parts, n.text(system)))


@dataclass
class _Piece:
    """A written part of a formula: how firmly it holds together, and whether a minus sign stands in front of
    it."""

    out: str
    holds: int = ATOM
    minus: bool = False


def _write(n: Number, style, numbers: bool) -> _Piece:
    """The expression behind `n`: in symbols, or with the numbers put in."""

    def part(i, least, leading=False) -> _Piece:
        """An operand, bracketed where it holds less firmly than needed, or has a minus that would follow
        another sign."""
        piece = _write(n.args[i], style, numbers)
        return (
            _Piece(style.bracketed(piece.out))
            if piece.holds < least or piece.minus and not leading
            else piece
        )

    op, sign = n.op, style.sign
    if op == "const" or op == "in" and numbers:
        text = _with_pi(n.value) if op == "const" else figures(n.value, 5)
        return _Piece(style.number(text), PRODUCT if set(text) & set("×·/") else ATOM, text.startswith("−"))
    if op in ("given", "step"):
        if n.symbol and not (numbers and n.form):
            return _Piece(style.symbol(n.symbol))
        texts = [n.text(system) for system in style.systems]
        named = any(n.form.unit(system).symbol for system in style.systems) if n.form else False
        holds = PRODUCT if any("×" in text for text in texts) else POWER if named else ATOM  # (37.5 mm)²
        return _Piece(style.quantity(texts), holds, any(text.startswith("−") for text in texts))
    if op in ("in", "of") and n.unit:
        unit = n.unit.symbol
        if not unit:
            return _write(n.args[0], style, numbers)
        if op == "of":
            inner = part(0, ATOM, leading=True)
            return _Piece(style.row(inner.out, style.unit("\u00a0" + unit)), POWER, inner.minus)
        inner = part(0, PRODUCT, leading=True)
        unit = style.bracketed(style.unit(unit)) if "/" in unit or "·" in unit else style.unit(unit)
        return _Piece(style.row(inner.out, sign("/"), unit), PRODUCT, inner.minus)
    if op == "/":
        if style.stacks:
            return _Piece(style.stacked(*(_write(a, style, numbers).out for a in n.args)), POWER)
        over, under = part(0, PRODUCT, leading=True), part(1, POWER)
        return _Piece(style.row(over.out, sign("/"), under.out), PRODUCT, over.minus)
    if op in ("+", "-", "*"):
        left, right = (
            part(0, PRODUCT if op == "*" else SUM, leading=True),
            part(1, SUM if op == "+" else PRODUCT),
        )
        return _Piece(style.row(left.out, sign(op), right.out), PRODUCT if op == "*" else SUM, left.minus)
    if op == "neg":
        return _Piece(style.row(style.minus, part(0, PRODUCT).out), PRODUCT, True)
    if op == "**":
        exponent = _in_thirds(n.args[1], style) or (
            _write(n.args[1], style, numbers)
            if style.stacks
            else part(1, ATOM, leading=n.args[1].op == "const")
        )
        return _Piece(style.raised(part(0, ATOM).out, exponent.out), POWER)
    if op == "sqrt":
        return _Piece(style.root(_write(n.args[0], style, numbers).out))
    if op == "abs":
        return _Piece(style.bars(_write(n.args[0], style, numbers).out))
    listed = [_write(a, style, numbers).out for a in n.args]
    return _Piece(style.called(_NAMES.get(op, op), listed))


def _in_thirds(n: Number, style) -> _Piece | None:
    """A constant exponent such as 2/3, which decimals would only come near; None where decimals say it
    exactly."""
    share = Fraction(n.value).limit_denominator(12)
    if n.op != "const" or abs(float(share) - n.value) > 1e-15 or share.denominator % 3:
        return None
    text = style.number(f"{'−' if share < 0 else ''}{abs(share.numerator)}/{share.denominator}")
    return _Piece(text if style.stacks else style.bracketed(text))


def _with_pi(value: float) -> str:
    """A constant with ten digits; what plain floats made of π, such as 2π or π/180, with its letter again."""
    share = Fraction(value / math.pi).limit_denominator(360)
    if not share or abs(float(share) * math.pi - value) > 1e-15 * abs(value):
        return figures(value, 10)
    over, under = abs(share.numerator), share.denominator
    return (
        ("−" if share < 0 else "") + (f"{over}·π" if over > 1 else "π") + (f"/{under}" if under > 1 else "")
    )


class _Plain:
    """Plain text, in one unit system."""

    stacks, minus = False, "−"
    _signs: ClassVar = {"+": " + ", "-": " − ", "*": "·", "/": "/"}

    def __init__(self, system):
        self.systems = (system,)

    number = symbol = staticmethod(lambda text: text)
    unit = staticmethod(lambda text: text.replace("\u00a0", " "))
    quantity = staticmethod(lambda texts: texts[0])
    row = staticmethod(lambda *parts: "".join(parts))
    bracketed = staticmethod(lambda inner: f"({inner})")
    raised = staticmethod(lambda base, exponent: f"{base}^{exponent}")
    root = staticmethod(lambda inner: f"√({inner})")
    bars = staticmethod(lambda inner: f"|{inner}|")
    called = staticmethod(lambda name, arguments: f"{name}({'; '.join(arguments)})")

    def sign(self, op):
        return self._signs[op]


class _MathML:
    """Presentation MathML, quantities in both unit systems."""

    stacks, minus, systems = True, el("mo", "−", form="prefix"), ("metric", "inch")
    _signs: ClassVar = {"+": "+", "-": "−", "*": "·", "/": "/", "=": "=", ";": ";"}

    @staticmethod
    def row(*parts) -> Html:
        return el("mrow", *parts)

    @classmethod
    def sign(cls, op) -> Html:
        return el("mo", cls._signs[op], form="infix")

    @staticmethod
    def number(text) -> Html:
        return el("mn", text)

    @staticmethod
    def unit(text) -> Html:
        return el("mtext", text)

    @staticmethod
    def symbol(text) -> Html:
        base, _, sub = text.partition("_")
        letter = el("mi", base)
        return el("msub", letter, el("mtext" if len(sub) > 1 else "mi", sub)) if sub else letter

    @classmethod
    def quantity(cls, texts) -> Html:
        metric, inch = (el("mtext", text.replace(" ", "\u00a0")) for text in texts)
        return cls.row(both(metric, inch, tag="mrow"))

    @classmethod
    def bracketed(cls, inner) -> Html:
        return cls.row(el("mo", "("), inner, el("mo", ")"))

    @staticmethod
    def stacked(over, under) -> Html:
        return el("mfrac", over, under)

    @staticmethod
    def raised(base, exponent) -> Html:
        return el("msup", base, exponent)

    @staticmethod
    def root(inner) -> Html:
        return el("msqrt", inner)

    @classmethod
    def bars(cls, inner) -> Html:
        return cls.row(el("mo", "|"), inner, el("mo", "|"))

    @classmethod
    def called(cls, name, arguments) -> Html:
        listed = [arguments[0], *(part for a in arguments[1:] for part in (cls.sign(";"), a))]
        return cls.row(el("mi", name), cls.bracketed(cls.row(*listed)))
