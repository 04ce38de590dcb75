"""What warmth adds to a reading, over the temperature of the part."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.core.working import Number
from calc.formulas import warm_reading
from calc.reference.materials import MATERIALS, REFERENCE
from calc.stations.measuring.size_at_20.asked import GAUGES, In
from calc.stations.shared.forms import DEGREES_C, SIZE


def correction_over_warmth(i: In, correction: Number) -> Plot:
    """Over the part's temperature: with the gauge as it is, and with a gauge as warm as the part."""
    part, gauge_alpha = MATERIALS[i.material], GAUGES[i.gauge][1]
    reading, here, gauge_here = float(i.reading), float(i.part_temperature), float(i.gauge_temperature)
    low, high = (min(283.15, here - 5, gauge_here), min(max(313.15, here + 5, gauge_here), part.hottest))
    temperatures = [low + (high - low) * n / 12 for n in range(13)]

    def by(t: float, gauge: float) -> float:
        mean = part.mean_alpha(t)
        return float(warm_reading.at_reference(reading, mean, gauge_alpha, t, gauge, REFERENCE)) - reading

    return Plot(
        "What warmth adds to the reading, to be taken off again",
        say("The correction is {c} here.", c=correction),
        Axis("Temperature of the part", DEGREES_C),
        Axis("Correction", SIZE),
        (
            Series("gauge as it is", tuple((t, by(t, gauge_here)) for t in temperatures)),
            Series("gauge as warm", tuple((t, by(t, t)) for t in temperatures), "dashed"),
        ),
        ((here, float(correction), "here"),),
    )
