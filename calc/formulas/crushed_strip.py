"""A plastic strip that is crushed between two faces: it keeps its section, so gap times width stays the same.

Between two printed marks the reciprocal of the gap goes straight with the width, which is exact for a strip
that keeps its section; a straight line between the gaps themselves is out by a micrometre where marks are far
apart. Lengths in m; plain numbers and traced ones.
"""

from collections.abc import Sequence
from typing import TypeVar

from calc.core.working import Number

N = TypeVar("N", float, Number)


def gap(width: N, marks: Sequence[tuple[N, N]]) -> N:
    """The gap at a width, from two or more marks (gap, width) that go from the widest to the narrowest.
    ValueError beyond them."""
    if not float(marks[-1][1]) <= float(width) <= float(marks[0][1]):
        raise ValueError("the width lies beyond the scale; give one between its widest and narrowest mark")
    (c_1, w_1), (c_2, w_2) = next(pair for pair in zip(marks, marks[1:]) if float(pair[1][1]) <= float(width))
    return 1 / (1 / c_1 + (1 / c_2 - 1 / c_1) * (w_1 - width) / (w_1 - w_2))
