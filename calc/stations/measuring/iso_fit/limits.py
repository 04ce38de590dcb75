"""Limits of size out of the standard's classes, as lines of the working, and the fit that they make."""

from typing import NamedTuple

from calc.core.kinds import LENGTH
from calc.core.result import impossible
from calc.core.working import Form, Number, constant, form, step
from calc.declare.calculator import Output
from calc.reference import sources
from calc.reference.standards import iso_286 as iso
from calc.stations.measuring.iso_fit.asked import In
from calc.stations.measuring.iso_fit.told import Out
from calc.stations.shared.forms import SIZE

DEVIATION = form(LENGTH, 0, "µm", "thou")
NOTHING = 1e-10  # m: what is left of a sum of floats is neither play nor grip
CLEARANCE, TRANSITION, INTERFERENCE = "clearance", "transition", "interference"


class Limits(NamedTuple):
    """Of a hole or a shaft: its zone in the standard, and both limits of size."""

    zone: iso.Zone
    low: Number
    high: Number


class Fit(NamedTuple):
    """A hole and a shaft together; clearances at both ends are negative where they grip."""

    hole: Limits
    shaft: Limits
    tightest: Number
    loosest: Number

    @property
    def name(self) -> str:
        return f"{self.hole.zone.name}/{self.shaft.zone.name}"

    @property
    def kind(self) -> str:
        """ISO 286-1: clearance where it never grips, interference where it never plays (0 is both)."""
        if float(self.tightest) >= -NOTHING:
            return CLEARANCE
        return INTERFERENCE if float(self.loosest) <= NOTHING else TRANSITION


def fit_of(i: In) -> Fit:
    hole_zone, shaft_zone = _zone(i.hole, i.size, "hole"), _zone(i.shaft, i.size, "shaft")
    hole = _limits(hole_zone, i.size, (Out.hole_low, Out.hole_high), ("EI", "ES"))
    shaft = _limits(shaft_zone, i.size, (Out.shaft_low, Out.shaft_high), ("ei", "es"))
    shape = as_fine_as(SIZE, hole_zone, shaft_zone)
    return Fit(
        hole,
        shaft,
        Out.tightest(hole.low - shaft.high, form=shape),
        Out.loosest(hole.high - shaft.low, form=shape),
    )


def length(value: float, decimals: int | None = None) -> Number:
    """A length in mm with three decimals; with four where it is no whole number of micrometres."""
    if decimals is None:
        decimals = 3 if abs(value * 1e6 - round(value * 1e6)) < 0.05 else 4
    return constant("", "", SIZE.with_decimals(decimals), value)


def as_fine_as(shape: Form, *zones: iso.Zone) -> Form:
    """One decimal more where a zone is split at half a micrometre."""
    halved = any(zone.gives == "splits" and round(zone.tolerance * 1e6) % 2 for zone in zones)
    return shape.with_decimals(shape.decimals + halved)


def _zone(name: str, size: Number, field: str) -> iso.Zone:
    try:
        return iso.zone(name, float(size))
    except iso.NotOffered:
        # T and t begin above 24 mm; every other class that is offered here is defined at every size
        raise impossible(
            field,
            "is {name}, which is not defined up to {edge}; give {near}, or a larger nominal size",
            name=name,
            edge=length(0.024, 0),
            near=("U" if name[0].isupper() else "u") + name[1:],
        ) from None


def _limits(zone: iso.Zone, size: Number, outs: tuple[Output, Output], symbols: tuple[str, str]) -> Limits:
    """As the standard works them: the deviation that the letter gives, and the other a tolerance away."""
    shape, (_, grade) = as_fine_as(DEVIATION, zone), iso.split(zone.name)
    tolerance, fundamental, delta = (
        constant(symbol, label, shape, value, sources.ISO_286)
        for symbol, label, value in (
            (f"IT_{grade}", f"Standard tolerance of {zone.name}", zone.tolerance),
            (f"δ_{zone.name}", f"Fundamental deviation of {zone.name}", zone.fundamental),
            (f"Δ_{grade}", f"Δ of {zone.name}", zone.delta),
        )
    )

    def lower(expression: Number) -> Number:
        return step(symbols[0], f"Lower deviation of {zone.name}", shape, expression, sources.ISO_286)

    def upper(expression: Number) -> Number:
        return step(symbols[1], f"Upper deviation of {zone.name}", shape, expression, sources.ISO_286)

    if zone.gives == "splits":
        low, high = lower(-tolerance / 2), upper(tolerance / 2)
    elif zone.gives == "upper":
        high = upper(fundamental + delta if zone.delta else fundamental)
        low = lower(high - tolerance)
    else:
        low = lower(fundamental)
        high = upper(low + tolerance)
    shape = as_fine_as(SIZE, zone)
    return Limits(zone, outs[0](size + low, form=shape), outs[1](size + high, form=shape))
