"""A size read warm, brought to the 20 °C at which sizes are stated (ISO 1). Lengths m, expansions 1/K,
temperatures K."""

from typing import cast

from calc.core.working import Value, sqrt

GAUGE_ALPHA = 11.5e-6  # 1/K, steel gauges and gauge blocks: ISO 3650 has (11.5 ± 1.0)·10⁻⁶, from memory

# of the part's coefficient, expanded: a few per cent between castings of one alloy; common practice, no
# source
ALPHA_DOUBT = 0.05


def at_reference(
    reading: Value,
    part_alpha: Value,
    gauge_alpha: Value,
    part_temperature: Value,
    gauge_temperature: Value,
    reference: Value,
) -> Value:
    """Size of the part at the reference temperature, m: reading·(1 + α_g(t_g − t_0))/(1 + α_p(t_p − t_0)).

    A warm part reads large, a warm gauge reads small. Holds for mean coefficients between the reference and
    each temperature.
    """
    return (
        reading
        * (1 + gauge_alpha * (gauge_temperature - reference))
        / (1 + part_alpha * (part_temperature - reference))
    )


def temperature_doubt(
    size: Value, part_alpha: Value, gauge_alpha: Value, part_doubt: Value, gauge_doubt: Value
) -> Value:
    """What the doubts of both temperatures (K, of one kind: both standard or both expanded) are worth in the
    size, m."""
    return size * sqrt((part_alpha * part_doubt) ** 2 + (gauge_alpha * gauge_doubt) ** 2)


def expansion_doubt(
    size: Value, part_alpha: Value, part_doubt: Value, part_temperature: Value, reference: Value
) -> Value:
    """What it is worth that the part's coefficient is known to a share of itself only, m; nothing at the
    reference temperature."""
    return size * part_alpha * part_doubt * cast(Value, abs(part_temperature - reference))
