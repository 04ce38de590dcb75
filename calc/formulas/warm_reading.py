"""A size read warm, brought to the 20 °C at which sizes are stated (ISO 1)."""
GAUGE_ALPHA = 11.5e-6  # 1/K, steel gauges and gauge blocks: ISO 3650 has (11.5 ± 1.0)·10⁻⁶, from memory


def at_reference(reading, part_alpha, gauge_alpha, part_temperature, gauge_temperature, reference):
    """Size of the part at the reference temperature, m: reading·[1 + α_g(t_g − t_0) − α_p(t_p − t_0)].

    A warm part reads large, a warm gauge reads small. First order: the product of the two strains, below 10⁻⁶ of the size
    within a workshop's temperatures, is left out. Lengths m, expansions 1/K, temperatures K.
    """
    return reading * (1 + gauge_alpha * (gauge_temperature - reference) - part_alpha * (part_temperature - reference))
