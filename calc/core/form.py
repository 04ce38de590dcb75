"""How a quantity is written: its kind, its decimals, and the units that it is shown in."""

from dataclasses import dataclass, replace
from functools import lru_cache

from calc.core.kinds import TEMPERATURE_DIFFERENCE, Kind, Unit
from calc.core.spelling import unit_named
from calc.core.writing import decimals_for, stated, write

# A page writes the same few hundred values again on each keystroke, and exact conversion is what takes its
# time.
_stated = lru_cache(maxsize=4096)(stated)
_write = lru_cache(maxsize=4096)(write)
_decimals_for = lru_cache(maxsize=1024)(decimals_for)


@dataclass(frozen=True)
class Form:
    """How a quantity is written: kind, decimals in the metric unit, and the two display units where not the
    kind's own. What lies `beside` a limit that it failed (SI) gets as many further decimals as it takes to
    differ from that limit, and no more.
    """

    kind: Kind
    decimals: int
    metric: Unit
    inch: Unit
    beside: float | None = None

    def unit(self, system: str) -> Unit:
        return self.inch if system == "inch" else self.metric

    def places(self, system: str) -> int:
        """Decimals in that system: as many as show a size no coarser than the metric ones do."""
        if system == "metric" or self.inch == self.metric:
            return self.decimals
        return _decimals_for(self.inch, self.decimals, self.metric)

    def write(self, value: float, system: str) -> str:
        """Value with its unit, as a person writes it: 37.90 mm, 45°, 12.5 %."""
        return _stated(value, self.unit(system), self._enough(value, system))

    def bare(self, value: float, system: str) -> str:
        """Value in that system's unit, without the unit."""
        return _write(value, self.unit(system), self._enough(value, system))

    def _enough(self, value: float, system: str) -> int:
        """Decimals that show the value as another one than the limit beside it, as that is written usually
        and as it would be then."""
        unit, usual = self.unit(system), self.places(system)
        if self.beside is None or f"{value:.12g}" == f"{self.beside:.12g}":
            return usual  # what floats leave of two equal numbers tells nothing
        limit = without_zeros(_write(self.beside, unit, usual))
        return next(
            (
                places
                for places in range(usual, usual + 12)
                if without_zeros(_write(value, unit, places))
                not in (limit, without_zeros(_write(self.beside, unit, places)))
            ),
            usual,
        )

    def apart_from(self, limit: float) -> "Form":
        return replace(self, beside=float(limit))

    @property
    def difference(self) -> "Form":
        """The form of a difference of two such quantities: a temperature's zero point falls out."""
        if self.beside is not None:
            return replace(self, beside=None).difference
        if not self.metric.offset and not self.inch.offset:
            return self
        kind = TEMPERATURE_DIFFERENCE
        return Form(kind, self.decimals, kind.metric, kind.inch)

    def with_decimals(self, decimals: int) -> "Form":
        return replace(self, decimals=decimals)


def without_zeros(text: str) -> str:
    """Digits without those that say nothing: 0.050 is 0.05."""
    return text.rstrip("0").rstrip(".") if "." in text else text


def form(kind: Kind, decimals: int, metric: str | None = None, inch: str | None = None) -> Form:
    """Form of a kind, with other display units where named (units named by any spelling that the kind
    reads)."""

    def unit(name: str | None, usual: Unit) -> Unit:
        return usual if name is None else unit_named(kind, name)

    chosen = unit(metric, kind.metric)
    return Form(
        kind,
        decimals,
        chosen,
        chosen if metric and inch is None and kind.inch == kind.metric else unit(inch, kind.inch),
    )
