"""Tolerance classes for sizes up to 500 mm: ISO 286-1:2010, written down from memory.

    zone("H7", 0.025)    Zone: upper +21 µm, lower 0
    zone("p6", 0.025)    Zone: upper +35 µm, lower +22 µm

A class is a letter and a grade: capital letters are holes, small letters shafts. The letter gives the
fundamental deviation, that of the limit nearer to the nominal size; the grade gives the standard tolerance,
the width of the zone.

The tables are the standard, not the formulas that they came from: its rounding cannot be worked out anew. A
band of sizes is *over* its lower edge *up to and including* its upper one. Offered are IT4 to IT11 for the
letters D to H, J, JS, K to U.

Sizes and deviations in m; raises `NotOffered` (a ValueError of one sentence) for sizes and classes outside of
that.
"""

import re
from bisect import bisect_left
from dataclasses import dataclass

_MICRON = 1e-6

BANDS = (3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500)  # mm, upper edges
# for r to u
SPLIT_BANDS = (
    3,
    6,
    10,
    18,
    24,
    30,
    40,
    50,
    65,
    80,
    100,
    120,
    140,
    160,
    180,
    200,
    225,
    250,
    280,
    315,
    355,
    400,
    450,
    500,
)

GRADES = {  # standard tolerances, µm, a number for each of BANDS
    4: (3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20),
    5: (4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27),
    6: (6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40),
    7: (10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63),
    8: (14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97),
    9: (25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155),
    10: (40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250),
    11: (60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400),
}
_IT3 = (2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10, 12, 13, 15)  # for Δ of IT4 alone

# Fundamental deviations of shafts, µm: es of d to h, ei of the others. Holes are derived from them.
_DEVIATIONS = {
    "d": (-20, -30, -40, -50, -65, -80, -100, -120, -145, -170, -190, -210, -230),
    "e": (-14, -20, -25, -32, -40, -50, -60, -72, -85, -100, -110, -125, -135),
    "f": (-6, -10, -13, -16, -20, -25, -30, -36, -43, -50, -56, -62, -68),
    "g": (-2, -4, -5, -6, -7, -9, -10, -12, -14, -15, -17, -18, -20),
    "h": (0,) * 13,
    "k": (0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5),  # IT4 to IT7; 0 in others
    "m": (2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23),
    "n": (4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40),
    "p": (6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68),
    "r": (10, 15, 19, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132),
    "s": (
        14,
        19,
        23,
        28,
        35,
        35,
        43,
        43,
        53,
        59,
        71,
        79,
        92,
        100,
        108,
        122,
        130,
        140,
        158,
        170,
        190,
        208,
        232,
        252,
    ),
    "t": (
        None,
        None,
        None,
        None,
        None,
        41,
        48,
        54,
        66,
        75,
        91,
        104,
        122,
        134,
        146,
        166,
        180,
        196,
        218,
        240,
        268,
        294,
        330,
        360,
    ),
    "u": (
        18,
        23,
        28,
        33,
        41,
        48,
        60,
        70,
        87,
        102,
        124,
        144,
        170,
        190,
        210,
        236,
        258,
        284,
        315,
        350,
        390,
        435,
        490,
        540,
    ),
}
# j and J follow no rule: ei of j5 and j6 and of j7, ES of J6, J7 and J8, µm.
_J_SHAFT = {
    5: (-2, -2, -2, -3, -4, -5, -7, -9, -11, -13, -16, -18, -20),
    6: (-2, -2, -2, -3, -4, -5, -7, -9, -11, -13, -16, -18, -20),
    7: (-4, -4, -5, -6, -8, -10, -12, -15, -18, -21, -26, -28, -32),
}
_J_HOLE = {
    6: (2, 5, 5, 6, 8, 10, 13, 16, 18, 22, 25, 29, 33),
    7: (4, 6, 8, 10, 12, 14, 18, 22, 26, 30, 36, 39, 43),
    8: (6, 10, 12, 15, 20, 24, 28, 34, 41, 47, 55, 60, 66),
}

# The standard's letters in their order, from loose to tight; those not offered serve to name the nearest that
# is.
_ORDER = (
    "a",
    "b",
    "c",
    "cd",
    "d",
    "e",
    "ef",
    "f",
    "fg",
    "g",
    "h",
    "js",
    "j",
    "k",
    "m",
    "n",
    "p",
    "r",
    "s",
    "t",
    "u",
    "v",
    "x",
    "y",
    "z",
    "za",
    "zb",
    "zc",
)
LETTERS = ("d", "e", "f", "g", "h", "js", "j", "k", "m", "n", "p", "r", "s", "t", "u")
LARGEST = 0.5  # m


class NotOffered(ValueError):
    """A size or class that is outside the standard, or outside what is held of it here; says what is offered
    instead."""


@dataclass(frozen=True)
class Zone:
    """A class at a size: where its limits lie, counted from the nominal size, m.

    `fundamental` is the deviation of the standard's table, `delta` what its rule adds to it for a hole
    (mostly 0), and `gives` the limit that they make, "upper" or "lower"; the other lies `tolerance` away. JS
    "splits" the tolerance: no deviation.
    """

    name: str
    gives: str
    tolerance: float
    fundamental: float
    delta: float
    upper: float
    lower: float


def zone(name: str, size: float) -> Zone:
    """The zone of a class such as "H7" or "js6" at a nominal size in m, over 0 up to and including 0.5 m."""
    letter, grade = split(name)
    hole, letter = letter.isupper(), letter.lower()
    tolerance = _microns(size, GRADES[grade])
    if letter == "js":
        # exactly half on each side, as in the tables of 2010; older issues round the half micrometre of IT7
        # to IT11 down
        gives, fundamental, delta = "splits", 0, 0
    elif letter == "j":
        gives, fundamental, delta = (
            "upper" if hole else "lower",
            _microns(size, (_J_HOLE if hole else _J_SHAFT)[grade]),
            0,
        )
    else:
        gives, fundamental, delta = (_hole if hole else _shaft)(letter, grade, size, name)
    upper = {"upper": fundamental + delta, "lower": fundamental + tolerance, "splits": tolerance / 2}[gives]
    return Zone(
        name, gives, *(x * _MICRON for x in (tolerance, fundamental, delta, upper, upper - tolerance))
    )


def split(name: str) -> tuple[str, int]:
    """Letter and grade of a class; raises `NotOffered` naming the nearest class that is offered."""
    found = re.fullmatch(r"([A-Za-z]{1,2})([0-9]{1,2})", name.strip())
    letter, grade = (found[1], int(found[2])) if found else ("", 0)
    if not found or not (letter.isupper() or letter.islower()) or letter.lower() not in _ORDER:
        raise NotOffered(
            f"“{name[:20]}” is not a tolerance class; give a letter and a grade, capital for a hole such as"
            " H7, small for a shaft such as g6."
        )
    grades = grades_of(letter.lower(), letter.isupper())
    if not grades or grade not in grades:
        near = min(LETTERS, key=lambda other: abs(_ORDER.index(other) - _ORDER.index(letter.lower())))
        grade = min(grades_of(near, letter.isupper()), key=lambda other: abs(other - grade))
        raise NotOffered(
            f"{name} is not offered here; the nearest that is is"
            f" {near.upper() if letter.isupper() else near}{grade}."
        )
    return letter, grade


def grades_of(letter: str, hole: bool) -> tuple[int, ...]:
    """Grades that are offered for a letter (small), none where the letter is not."""
    if letter == "j":
        return tuple(_J_HOLE if hole else _J_SHAFT)
    if letter == "k" and hole:
        return (4, 5, 6, 7, 8)  # the standard has no K from IT9 on over 3 mm
    return tuple(GRADES) if letter in LETTERS else ()


def classes(hole: bool) -> list[str]:
    """Every class that is offered, from loose to tight."""
    return [
        f"{letter.upper() if hole else letter}{grade}"
        for letter in LETTERS
        for grade in grades_of(letter, hole)
    ]


def standard_tolerance(grade: int, size: float) -> float:
    """Standard tolerance of a grade (IT4 to IT11) at a nominal size in m, m."""
    if grade not in GRADES:
        raise NotOffered(
            f"IT{grade} is not offered here; the nearest that is is"
            f" IT{min(GRADES, key=lambda other: abs(other - grade))}."
        )
    return _microns(size, GRADES[grade]) * _MICRON


def band(size: float, edges: tuple[int, ...] = BANDS) -> tuple[int, int]:
    """The band that a nominal size (m) lies in: over the first edge up to and including the second, mm."""
    i = _row(size, edges)
    return (edges[i - 1] if i else 0), edges[i]


def _row(size, edges) -> int:
    millimetres = round(float(size) * 1000, 6)  # an edge that was computed stays an edge
    if not 0 < millimetres <= LARGEST * 1000:
        raise NotOffered(
            f"A nominal size of {millimetres:g} mm is not offered here; give one over 0 up to"
            f" {LARGEST * 1000:g} mm."
        )
    return bisect_left(edges, millimetres)


def _microns(size, column):
    return column[_row(size, BANDS if len(column) == len(BANDS) else SPLIT_BANDS)]


def _deviation(letter, size, name):
    found = _microns(size, _DEVIATIONS[letter])
    if found is None:
        near = f"{'U' if name[0].isupper() else 'u'}{name[1:]}"
        raise NotOffered(f"{name} is not defined up to 24 mm; give {near}, or a size over 24 mm.")
    return found


def _shaft(letter, grade, size, name):
    """Which limit of a shaft its letter gives, its fundamental deviation, and no Δ; µm."""
    if letter == "k" and grade > 7:
        return "lower", 0, 0
    return "upper" if letter <= "h" else "lower", _deviation(letter, size, name), 0


def _hole(letter, grade, size, name):
    """Which limit of a hole its letter gives, its fundamental deviation, and Δ; µm.

    A hole is its shaft mirrored at the nominal size. Δ = IT(n) − IT(n−1) makes H7/p6 and P7/h6 the same fit.
    """
    mirrored = -_deviation(letter, size, name)
    if letter <= "h":
        return "lower", mirrored, 0
    _, edge = band(size)
    if edge <= 3 or grade > (8 if letter in "kmn" else 7):
        # N from IT9 on begins at the nominal size
        return ("upper", 0 if letter == "n" and edge > 3 else mirrored, 0)
    delta = _microns(size, GRADES[grade]) - _microns(size, GRADES.get(grade - 1, _IT3))
    if letter == "m" and grade == 6 and edge == 315:
        delta += 2  # the one exception that the standard makes: ES of M6 is −9 µm, not −11
    return "upper", mirrored, delta
