"""Drills as they are sold: metric ones in steps of 0.1 mm, and numbers, letters and 64ths of an inch
(ANSI/ASME B94.11M), from memory.

near(0.0068, "metric")    the drills next to 6.8 mm, nearest first
"""

from dataclasses import dataclass
from fractions import Fraction

INCH = 0.0254
_NUMBERS = (  # thousandths of an inch, #1 to #60
    228,
    221,
    213,
    209,
    205.5,
    204,
    201,
    199,
    196,
    193.5,
    191,
    189,
    185,
    182,
    180,
    177,
    173,
    169.5,
    166,
    161,
    159,
    157,
    154,
    152,
    149.5,
    147,
    144,
    140.5,
    136,
    128.5,
    120,
    116,
    113,
    111,
    110,
    106.5,
    104,
    101.5,
    99.5,
    98,
    96,
    93.5,
    89,
    86,
    82,
    81,
    78.5,
    76,
    73,
    70,
    67,
    63.5,
    59.5,
    55,
    52,
    46.5,
    43,
    42,
    41,
    40,
)
_LETTERS = (
    234,
    238,
    242,
    246,
    250,
    257,
    261,
    266,
    272,
    277,
    281,
    290,
    295,
    302,
    316,
    323,
    332,
    339,
    348,
    358,
    368,
    377,
    386,
    397,
    404,
    413,
)


@dataclass(frozen=True)
class Drill:
    """A drill by the name that is stamped on it, and its size in m."""

    name: str
    size: float


METRIC: tuple[Drill, ...] = tuple(Drill(f"{n / 10:g} mm", n / 1e4) for n in range(10, 261))
INCHES: tuple[Drill, ...] = tuple(
    sorted(
        [Drill(f"#{i + 1}", thou / 1000 * INCH) for i, thou in enumerate(_NUMBERS)]
        + [
            Drill(chr(ord("A") + i), thou / 1000 * INCH) for i, thou in enumerate(_LETTERS) if thou != 250
        ]  # E is 1/4 in
        + [Drill(f"{Fraction(n, 64)} in", n / 64 * INCH) for n in range(3, 65)],
        key=lambda drill: drill.size,
    )
)
LISTS = {"metric": METRIC, "inch": INCHES}


def near(size: float, which: str, count: int = 5) -> list[Drill]:
    """The `count` drills of a list, "metric" or "inch", nearest to a size in m, nearest first."""
    return sorted(LISTS[which], key=lambda drill: (abs(drill.size - size), drill.size))[:count]


def choose(size: float, which: str, fits) -> Drill:
    """Of the drills near a size in m, the nearest that `fits`, a function of its size, accepts; the nearest
    of all where none does."""
    around = near(size, which, 7)
    return next((drill for drill in around if fits(drill.size)), around[0])
