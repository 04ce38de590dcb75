"""Which gauge blocks make up a height, fewest and surest: the last digit first, as one wrings them.

Two common sets (ISO 3650 says what a block is; the sets are common practice):

    metric, 87 blocks   1.001…1.009   1.01…1.49    0.5…9.5 by 0.5     10…100 by 10 mm
    inch, 81 blocks     0.1001…0.1009 0.101…0.149  0.05…0.95 by 0.05  1…4 in

Both have the same shape, counted in their smallest step: 1 µm, or 0.0001 in.
"""

from dataclasses import dataclass

from calc.core.kinds import LENGTH, Unit

UNIT, HALF = 10000, 500  # steps in 10 mm or 1 in, and in 0.5 mm or 0.05 in


@dataclass(frozen=True)
class Blocks:
    """A set of gauge blocks: its name, its step in m, the unit it is marked in, decimals of it, and the
    largest block in steps."""

    name: str
    step: float
    unit: Unit
    decimals: int
    largest: int

    def nearest(self, height: float) -> int:
        """Height (m) as a whole number of the set's steps."""
        return round(float(height) / self.step)

    def pick(self, height: float) -> tuple[int, ...] | None:
        """Blocks, in steps, whose sum is the nearest to a height (m) that whole steps can make.

        No block is used twice. None where the set cannot do it: below about two small blocks, or above all
        its large ones.
        """
        steps = self.nearest(height)
        last = (UNIT // 10 + steps % 10,) if steps % 10 else ()
        over = (steps - sum(last)) % HALF
        small = (*last, UNIT // 10 + over) if over else last
        whole, half = divmod(steps - sum(small), UNIT)
        large = self._large(whole)
        if whole < 0 or large is None:
            return None
        return (*small, *((half,) if half else ()), *large) or None

    def _large(self, whole: int) -> tuple[int, ...] | None:
        """Whole units as different large blocks, the largest first; None where they do not reach."""
        found = []
        for block in range(self.largest, 0, -1):
            if block <= whole:
                found.append(block * UNIT)
                whole -= block
        return tuple(found) if whole == 0 else None

    def write(self, steps: int) -> str:
        """A block or a sum as it is marked, without its unit."""
        return f"{steps / UNIT * (10 if self.unit is LENGTH.metric else 1):.{self.decimals}f}".rstrip(
            "0"
        ).rstrip(".")


METRIC = Blocks("Metric set of 87", 1e-6, LENGTH.metric, 3, 10)
INCH = Blocks("Inch set of 81", 2.54e-6, LENGTH.inch, 4, 4)
