"""Reads working lines back: a small parser of its own for formulas as they are written for people, worked with mpmath.

It knows nothing of how the project writes formulas. It is stricter than a reader would be: a sign may not follow a sign, and
what stands under a power must be one letter, one number or bracketed, so that a bracket left out is found.
"""

import re
from fractions import Fraction
from functools import cache

import mpmath

_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻", "0123456789-")
_FUNCTIONS = ("min", "max", "sin", "cos", "tan", "asin", "acos", "atan", "exp", "ln", "log", "tanh", "Φ")


class Unreadable(ValueError):
    """The line cannot be read without guessing."""


@cache
def _token(units, symbols):
    """Pattern of one token of a line, longest names first."""
    unit = "|".join(re.escape(u) for u in sorted(units, key=len, reverse=True)) or "(?!)"
    name = "|".join(re.escape(s) for s in sorted([*symbols, *_FUNCTIONS], key=len, reverse=True))
    return re.compile(
        rf"(?P<number>\d+(?:\.\d+)?(?:×10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)?)|(?P<unit>(?<=[\w)/(])[ ]?(?:{unit})(?![^\W\d_]))"
        rf"|(?P<sign> [+−] )|(?P<name>(?:{name}|π)(?![^\W\d_]))|(?P<mark>[·/^()|;√−])|(?P<space> )"
    )


class Reader:
    """`units` maps symbol to (factor, offset) of SI, `symbols` maps letters to values.

    With `half`, each number with a unit, and each bare one that is in `rounded`, is an interval of half its last digit either
    way: what is then worked out is the band in which the true value must lie, whatever was rounded for showing.
    """

    def __init__(self, units=(), symbols=(), half=False, rounded=()):
        self.units, self.symbols, self.half, self.rounded = dict(units), dict(symbols), half, set(rounded)
        self._token = _token(frozenset(self.units), frozenset(self.symbols))

    def read(self, text: str):
        self.tokens = list(self._split(text.replace("\u00a0", " ")))
        self.at = 0
        value = self._sum()
        if self.at != len(self.tokens):
            raise Unreadable(f"{text!r} goes on after {self.tokens[: self.at]}")
        return value

    def _split(self, text):
        at = 0
        while at < len(text):
            match = self._token.match(text, at)
            if not match:
                raise Unreadable(f"{text!r} from {text[at:]!r}")
            at = match.end()
            if match.lastgroup != "space":
                yield match.lastgroup, match[0].strip()
            elif not text[: at - 1].endswith(";"):
                raise Unreadable(f"a stray space in {text!r} before {text[at:]!r}")

    def _next(self, *wanted):
        """Take the next token if it is one of these."""
        if self.at < len(self.tokens) and (
            self.tokens[self.at][1] in wanted or self.tokens[self.at][0] in wanted
        ):
            self.at += 1
            return self.tokens[self.at - 1][1]
        return None

    def _need(self, *wanted):
        found = self._next(*wanted)
        if found is None:
            raise Unreadable(f"{wanted} expected at {self.tokens[self.at :]} of {self.tokens}")
        return found

    def _sum(self):
        value = self._product(leading=True)
        while sign := self._next("sign"):
            term = self._product()
            value = value + term if sign == "+" else value - term
        return value

    def _product(self, leading=False):
        if leading and self._next("−"):
            value = self._signed()
        else:
            value = self._power()
        while sign := self._next("·", "/"):
            if sign == "/" and (unit := self._bare_unit()):
                value = (value - self._exact(unit[1])) / self._exact(unit[0])
                continue
            factor = self._power()
            value = value * factor if sign == "·" else value / factor
        return value

    def _bare_unit(self):
        """The unit in d/mm or n/(1/min), the number that a quantity counts in it."""
        before, bracket = self.at, self._next("(")
        symbol = self._next("unit")
        if symbol is None or bracket and not self._next(")"):
            self.at = before
            return None
        return self.units[symbol]

    def _signed(self):
        """What follows a leading minus: −10 °C is a temperature of its own, not the opposite of 10 °C."""
        kind, text = self.tokens[self.at]
        if kind == "number" and self.at + 1 < len(self.tokens) and self.tokens[self.at + 1][0] == "unit":
            self.at += 1
            return self._unit(-self._number(text))
        return -self._power()

    def _power(self):
        before = self.at
        base = self._atom()
        unit = self._unit(base)
        if not self._next("^"):
            return unit
        if unit is not base:
            raise Unreadable(f"a number with its unit under a power, unbracketed: {self.tokens[before:]}")
        opposite = self._next("−")
        exponent = self._atom()
        return self.power(base, -exponent if opposite else exponent)

    def _unit(self, value):
        symbol = self._next("unit")
        if symbol is None:
            return value
        factor, offset = self.units[symbol]
        return value * self._exact(factor) + self._exact(offset)

    def _atom(self):
        if text := self._next("number"):
            return self._number(text)
        if name := self._next("name"):
            if name == "π":
                return (mpmath.iv if self.half else mpmath.mp).pi
            if name in self.symbols:
                return self.symbols[name]
            self._need("(")
            arguments = [self._sum()]
            while self._next(";"):
                arguments.append(self._sum())
            self._need(")")
            return self.call(name, *arguments)
        mark = self._need("(", "|", "√")
        if mark == "√":
            self._need("(")
        value = self._sum()
        self._need("|" if mark == "|" else ")")
        return value if mark == "(" else self.call("abs" if mark == "|" else "sqrt", value)

    # worked with mpmath

    def _exact(self, x):
        x = Fraction(x)
        if self.half:
            return mpmath.iv.mpf(x.numerator) / mpmath.iv.mpf(x.denominator)
        return mpmath.mpf(x.numerator) / x.denominator

    def _number(self, text):
        digits, _, raised = text.partition("×10")
        scale = Fraction(10) ** int(raised.translate(_RAISED) or 0)
        value = Fraction(digits) * scale
        if not self.half:
            return self._exact(value)
        shown = len(digits.partition(".")[2])
        unit_follows = self.at < len(self.tokens) and self.tokens[self.at][0] == "unit"
        half = Fraction(1, 2 * 10**shown) * scale if unit_follows or text in self.rounded else Fraction(0)
        low, high = self._exact(value - half), self._exact(value + half)
        return mpmath.iv.mpf([low.a, high.b])

    def power(self, base, exponent):
        if self.half and exponent.a == exponent.b and exponent.a == int(exponent.a):
            return base ** int(exponent.a)
        return base**exponent

    def call(self, name, *xs):
        if not self.half:
            plain = {
                "min": min,
                "max": max,
                "ln": mpmath.log,
                "log": mpmath.log10,
                "abs": abs,
                "Φ": mpmath.ncdf,
            }
            return plain.get(name, getattr(mpmath, name, None))(*xs)
        iv = mpmath.iv
        if name in ("min", "max"):
            pick = min if name == "min" else max
            return iv.mpf([pick(x.a for x in map(iv.mpf, xs)), pick(x.b for x in map(iv.mpf, xs))])
        (x,) = xs
        if name == "sqrt":
            return iv.sqrt(iv.mpf([max(x.a, 0), max(x.b, 0)]))  # below 0 only by what was rounded
        if name in ("sin", "cos", "tan", "exp"):
            return getattr(iv, name)(x)
        if name == "abs":
            return abs(x)
        if name in ("ln", "log"):
            return iv.log(x) / (iv.log(10) if name == "log" else 1)
        rising = {
            "atan": mpmath.atan,
            "tanh": mpmath.tanh,
            "asin": mpmath.asin,
            "Φ": mpmath.ncdf,
        }  # by their ends
        if name == "acos":
            return iv.pi / 2 - self.call("asin", x)
        low, high = (mpmath.mpf(end) for end in (x.a, x.b))
        if name == "asin":
            low, high = max(low, mpmath.mpf(-1)), min(high, mpmath.mpf(1))
        ends = [rising[name](end) for end in (low, high)]
        slack = mpmath.mpf(10) ** (3 - mpmath.mp.dps)
        return iv.mpf([ends[0] - slack, ends[1] + slack])


def mathml_text(math, system: str) -> str:
    """A <math> element (parsed) as one line of text in one unit system, for the reader."""

    def write(node):
        tag, parts = node.tag.rpartition("}")[2], list(node)
        if system_of(node) not in (None, system):
            return ""
        if tag in ("mi", "mn", "mtext"):
            if parts:
                raise Unreadable(f"markup inside {tag}")
            return node.text or ""
        if tag == "mo":
            form = node.get("form")
            return (
                f" {node.text} "
                if node.text in "+−=" and form != "prefix"
                else "; "
                if node.text == ";"
                else node.text
            )
        inside = [write(part) for part in parts]
        if tag == "mfrac":
            return "(({})/({}))".format(*inside)
        if tag == "msub":
            return "{}_{}".format(*inside)
        if tag == "msup":
            base, exponent = inside
            if not one_piece(parts[0], base):
                raise Unreadable(f"{base!r} stands under a power without brackets")
            return f"{base}^({exponent})"
        if tag == "msqrt":
            return f"√({''.join(inside)})"
        if tag in ("mrow", "math"):
            return "".join(inside)
        raise Unreadable(f"<{tag}> in a formula")

    def system_of(node):
        return {"u-metric": "metric", "u-inch": "inch"}.get(node.get("class"))

    def one_piece(node, text):
        tag = node.tag.rpartition("}")[2]
        if tag in ("mi", "msub", "msqrt"):
            return True
        if tag in ("mn", "mtext"):
            return re.fullmatch(r"\d+(\.\d+)?|π", text) is not None
        if tag == "mrow" and len(node) == 1:
            return one_piece(node[0], text)
        names = [child.text for child in node if child.tag.rpartition("}")[2] in ("mi", "mo")]
        return (
            tag == "mrow"
            and len(node) > 1
            and (names[:1] in (["("], ["|"]) and names[-1:] in ([")"], ["|"]) or names[0] in _FUNCTIONS)
        )

    return write(math)
