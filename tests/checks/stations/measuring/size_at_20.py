"""Outside numbers for the size at 20 °C, asked of the calculator."""
from tests.checks import Check, Trend, asked

ALUMINIUM = dict(reading="50 mm", part_temperature="35 °C", gauge_temperature="20 °C", material="al-si-t6")
# α of the table at 20 °C itself (21.5·10⁻⁶/K is its mean to 100 °C) and its growth with heat
MEAN = 21.5e-6 / (1 + 80 * 5e-4) * (1 + 15 * 5e-4)

CHECKS = [
    Check("size-at-20", "correction of 50 mm of aluminium at 35 °C read with steel at 20 °C, µm", ALUMINIUM, -16, 0.5, asked("size-at-20", "correction", "µm"),
          "50 mm · 15 K · 21 to 22·10⁻⁶/K, handbook range, from memory", "handbook"),
    Check("size-at-20", "the same with the table's own expansion, mm", ALUMINIUM, 50 / (1 + 15 * MEAN), 1e-9, asked("size-at-20", "size", "mm"), "L/(1 + α·ΔT), ISO 1", "limit"),
    Check("size-at-20", "read in °F at 68 °F, no correction, µm", ALUMINIUM | dict(part_temperature="68 °F", gauge_temperature="68 °F"), 0, 1e-9,
          asked("size-at-20", "correction", "µm"), "68 °F is 20 °C (NIST SP 811, exact)", "standard"),
    Check("size-at-20", "doubt of 1 K in the part alone, µm", ALUMINIUM | dict(part_doubt="1 K", gauge_doubt="0 K", alpha_doubt="0 %"), 50e3 * MEAN, 1e-6,
          asked("size-at-20", "doubt", "µm"), "L·α·1 K", "limit"),
]

TRENDS = {
    "size": Trend(rises="reading gauge_temperature", falls="part_temperature"),
    "correction": Trend(rises="gauge_temperature", falls="part_temperature"),
    "doubt": Trend(rises="reading part_doubt gauge_doubt alpha_doubt"),
    "from_temperature": Trend(rises="reading part_doubt gauge_doubt"),
    "from_expansion": Trend(rises="reading alpha_doubt"),
    "per_kelvin": Trend(rises="reading"),
}
