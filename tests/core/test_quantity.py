"""Kinds, units, reading and writing.

Outside references: pint (a library of units, for every factor and dimension), NIST SP 811
appendix B (numbers quoted from memory), and Python's own decimal arithmetic.
"""

import math
from decimal import Decimal
from fractions import Fraction

import pint
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from calc.core import kinds
from calc.core.kinds import (
    ANGLE,
    COUNT,
    DYNAMIC_VISCOSITY,
    ENERGY,
    EXPANSION,
    FEED,
    FLOW,
    FORCE,
    HEAT_TRANSFER,
    KINDS,
    LEAK,
    LENGTH,
    MASS,
    MODULUS,
    POWER,
    PRESSURE,
    RATIO,
    ROTATION,
    SLOPE,
    STRESS,
    TEMPERATURE,
    TEMPERATURE_DIFFERENCE,
    TORQUE,
    VOLUME,
)
from calc.core.reading import EntryError, in_si, read, readings
from calc.core.spelling import spellings_of, unit_spelled
from calc.core.writing import decimals_for, from_unit, stated, to_unit, write

steady = settings(deadline=None, derandomize=True, max_examples=300)  # never timed, the same cases every run

UNITS = [(kind, unit) for kind in KINDS.values() for unit in kind.units]
UNIT_IDS = [f"{kind.name}-{unit.symbol or 'plain'}" for kind, unit in UNITS]
every_unit = pytest.mark.parametrize("kind,unit", UNITS, ids=UNIT_IDS)
any_unit = st.sampled_from(UNITS)


def value(text, kind, unit=None):
    return read(text, kind, unit).value


def refusal(text, kind, unit=None):
    with pytest.raises(EntryError) as caught:
        read(text, kind, unit)
    return caught.value


# --- Factors against pint ----------------------------------------------------------

ureg = pint.UnitRegistry()
ureg.define("conventional_water_metre = 1000 kg/m^3 * standard_gravity * m")

# What pint calls each unit, where it does not understand the symbol itself.
IN_PINT = {
    "": "dimensionless",
    "%": "percent",
    "‰": "1e-3",
    "ppm": "ppm",
    "°": "degree",
    "′": "arcminute",
    "″": "arcsecond",
    "in": "inch",
    "µin": "microinch",
    "ft": "foot",
    "tenth": "1e-4 inch",
    "min": "minute",
    "h": "hour",
    "US gal": "gallon",
    "imp gal": "imperial_gallon",
    "L": "liter",
    "US qt": "quart",
    "imp qt": "imperial_quart",
    "US pt": "pint",
    "imp pt": "imperial_pint",
    "sccm": "atm*cm**3/minute",
    "daN·m": "decanewton*m",
    "mm²": "mm**2",
    "in²": "inch**2",
    "cm²": "cm**2",
    "m²": "m**2",
    "ft²": "foot**2",
    "cm³": "cm**3",
    "in³": "inch**3",
    "mm³": "mm**3",
    "m³": "m**3",
    "ft³": "foot**3",
    "mm⁴": "mm**4",
    "in⁴": "inch**4",
    "cm⁴": "cm**4",
    "mm/100 mm": "mm/(100 mm)",
    "thou/in": "thou/inch",
    "in/in": "inch/inch",
    "in/ft": "inch/foot",
    "µm/(m·K)": "µm/m/kelvin",
    "µin/(in·°F)": "microinch/inch/delta_degF",
    "1/K": "1/kelvin",
    "1/°F": "1/delta_degF",
    "kgf/cm²": "kgf/cm**2",
    "mmHg": "mmHg",
    "inHg": "inHg",
    "Torr": "torr",
    "mmH₂O": "1e-3 conventional_water_metre",
    "inH₂O": "0.0254 conventional_water_metre",
    "Mpsi": "1e6 psi",
    "kgf/mm²": "kgf/mm**2",
    "kPa/min": "kPa/minute",
    "psi/min": "psi/minute",
    "mbar/min": "mbar/minute",
    "bar/min": "bar/minute",
    "inHg/min": "inHg/minute",
    "mmHg/min": "mmHg/minute",
    "ozf": "ounce*standard_gravity",
    "ozf·in": "ounce*standard_gravity*inch",
    "lbf·ft": "lbf*foot",
    "lbf·in": "lbf*inch",
    "lbf/in": "lbf/inch",
    "ft·lbf": "lbf*foot",
    "kg/m³": "kg/m**3",
    "lb/in³": "lb/inch**3",
    "g/cm³": "g/cm**3",
    "lb/ft³": "lb/foot**3",
    "kg·m²": "kg*m**2",
    "lb·ft²": "lb*foot**2",
    "kg·cm²": "kg*cm**2",
    "kg·mm²": "kg*mm**2",
    "g·cm²": "g*cm**2",
    "lb·in²": "lb*inch**2",
    "oz·in": "oz*inch",
    "g·in": "gram*inch",
    "ft/min": "foot/minute",
    "m/min": "m/minute",
    "ft/s": "foot/s",
    "km/h": "km/hour",
    "mm/min": "mm/minute",
    "in/min": "inch/minute",
    "in/s": "inch/s",
    "m/s²": "m/s**2",
    "ft/s²": "foot/s**2",
    "in/s²": "inch/s**2",
    "mm/s²": "mm/s**2",
    "mm/rev": "mm",
    "in/rev": "inch",
    "thou/rev": "thou",
    "µm/rev": "µm",
    "1/mm": "1/mm",
    "TPI": "1/inch",
    "1/cm": "1/cm",
    "mm/°": "mm/degree",
    "in/°": "inch/degree",
    "thou/°": "thou/degree",
    "mm/rad": "mm/radian",
    "mm/°²": "mm/degree**2",
    "in/°²": "inch/degree**2",
    "thou/°²": "thou/degree**2",
    "mm/rad²": "mm/radian**2",
    "cm³/min": "cm**3/minute",
    "in³/min": "inch**3/minute",
    "cm³/s": "cm**3/s",
    "mm³/s": "mm**3/s",
    "in³/s": "inch**3/s",
    "L/min": "liter/minute",
    "L/s": "liter/s",
    "L/h": "liter/hour",
    "m³/h": "m**3/hour",
    "m³/min": "m**3/minute",
    "m³/s": "m**3/s",
    "ft³/min": "foot**3/minute",
    "US gal/min": "gallon/minute",
    "US gal/h": "gallon/hour",
    "imp gal/min": "imperial_gallon/minute",
    "imp gal/h": "imperial_gallon/hour",
    "lb/min": "lb/minute",
    "kg/min": "kg/minute",
    "kg/h": "kg/hour",
    "g/min": "g/minute",
    "g/h": "g/hour",
    "lb/h": "lb/hour",
    "hp": "horsepower",
    "PS": "metric_horsepower",
    "BTU": "international_british_thermal_unit",
    "BTU/h": "international_british_thermal_unit/hour",
    "kWh": "kW*hour",
    "Wh": "W*hour",
    "g/kWh": "g/kW/hour",
    "lb/(hp·h)": "lb/horsepower/hour",
    "mm²/s": "mm**2/s",
    "m²/s": "m**2/s",
    "St": "stokes",
    "in²/s": "inch**2/s",
    "P": "poise",
    "lbf·s/in²": "lbf*s/inch**2",
    "J/(kg·K)": "J/kg/kelvin",
    "kJ/(kg·K)": "kJ/kg/kelvin",
    "BTU/(lb·°F)": "international_british_thermal_unit/lb/delta_degF",
    "W/(m·K)": "W/m/kelvin",
    "W/(m²·K)": "W/m**2/kelvin",
    "W/K": "W/kelvin",
    "BTU/(h·ft·°F)": "international_british_thermal_unit/hour/foot/delta_degF",
    "BTU/(h·ft²·°F)": "international_british_thermal_unit/hour/foot**2/delta_degF",
    "BTU/(h·°F)": "international_british_thermal_unit/hour/delta_degF",
    "Pa·m³/s": "Pa*m**3/s",
    "psi·in³/s": "psi*inch**3/s",
    "mbar·L/s": "mbar*liter/s",
    "atm·cm³/s": "atm*cm**3/s",
    "kPa·L/min": "kPa*liter/minute",
    "K": "kelvin",
    "°C": "delta_degC",
    "°F": "delta_degF",
}
# The same symbol in another kind.
IN_PINT_BY_KIND = {
    ("acceleration", "g"): "standard_gravity",
    ("speed of rotation", "1/min"): "turn/minute",
    ("speed of rotation", "1/s"): "turn/s",
    ("frequency", "1/min"): "1/minute",
}


@every_unit
def test_factor_and_dimensions_are_those_of_pint(kind, unit):
    expression = (
        IN_PINT_BY_KIND.get((kind.name, unit.symbol))
        or IN_PINT.get(unit.symbol)
        or unit.symbol.replace("·", "*")
    )
    theirs = ureg.Quantity(1.0, "") * ureg(expression)
    base = (
        theirs.to("turn/s") if kind is ROTATION else theirs.to_base_units()
    )  # turns per second here, radians there
    assert float(unit.factor) == pytest.approx(base.magnitude, rel=1e-12)
    names = ("[length]", "[mass]", "[time]", "[temperature]")
    assert kind.dims == tuple(theirs.dimensionality.get(name, 0) for name in names)


@pytest.mark.parametrize("symbol,theirs", [("°C", "degC"), ("°F", "degF"), ("K", "kelvin")])
@pytest.mark.parametrize("number", [-40, 0, 20, 68, 212.5])
def test_temperature_scales_are_those_of_pint(symbol, theirs, number):
    if symbol == "K":
        number = abs(number)
    assert value(f"{number} {symbol}", TEMPERATURE) == pytest.approx(
        ureg.Quantity(number, theirs).to("kelvin").magnitude, rel=1e-14
    )


@pytest.mark.parametrize(
    "text,kind,expected,rel",
    [
        # NIST SP 811 appendix B, from memory; exact ones to the last bit.
        ("1 in", LENGTH, 0.0254, 0),
        ("1 thou", LENGTH, 2.54e-5, 0),
        ("1 in³", VOLUME, 16.387064e-6, 0),
        ("1 lb", MASS, 0.45359237, 0),
        ("1 lbf", FORCE, 4.4482216152605, 0),
        ("1 kgf", FORCE, 9.80665, 0),
        ("1 kgf·m", TORQUE, 9.80665, 0),
        ("1 psi", PRESSURE, 6894.757293168, 1e-12),
        ("1 lbf·ft", TORQUE, 1.3558179483314004, 0),
        ("1 lbf·in", TORQUE, 0.1129848290276167, 1e-15),
        ("1 bar", PRESSURE, 100000.0, 0),
        ("1 mmHg", PRESSURE, 133.322387415, 0),
        ("1 inHg", PRESSURE, 3386.388640341, 1e-12),
        ("1 hp", POWER, 745.69987158227, 1e-14),
        ("1 PS", POWER, 735.49875, 0),
        ("1 US gal", VOLUME, 3.785411784e-3, 0),
        ("1 imp gal", VOLUME, 4.54609e-3, 0),
        ("1 L", VOLUME, 1000e-6, 0),
        ("1 US qt", VOLUME, 9.463529e-4, 1e-7),
        ("1 US pint", VOLUME, 4.731765e-4, 1e-7),
        ("1 imp quart", VOLUME, 4.54609e-3 / 4, 0),
        ("1 UK pint", VOLUME, 4.54609e-3 / 8, 1e-15),
        ("3.5 daN·m", TORQUE, 35.0, 0),
        ("3.5 daNm", TORQUE, 35.0, 0),
        ("592 sccm", LEAK, 1.0, 1e-3),  # vacuum handbooks: 1 Pa·m³/s is 592 sccm (from memory)
        ("60 sccm", FLOW, 1e-6, 1e-15),
        ("1 BTU", ENERGY, 1055.05585262, 0),
    ],
)
def test_numbers_of_the_standard(text, kind, expected, rel):
    assert value(text, kind) == pytest.approx(expected, rel=rel, abs=0)


# --- The table of units ------------------------------------------------------------


@every_unit
def test_every_symbol_and_spelling_finds_its_own_unit(kind, unit):
    for spelling in (unit.symbol, *unit.spellings):
        if spelling:
            assert unit_spelled(kind, spelling) is unit
            if "·" in spelling:
                for join in ("", " ", "-", ".", "*", "⋅"):
                    assert unit_spelled(kind, spelling.replace("·", join)) is unit


@every_unit
def test_every_unit_written_with_its_symbol_is_read_back(kind, unit):
    entry = read(stated(float(unit.factor * 12 + unit.offset), unit, 3), kind)
    assert entry.unit is (unit if unit.symbol else kind.metric)
    assert entry.value == pytest.approx(float(unit.factor * 12 + unit.offset), rel=1e-15)
    said = {"tenth": "ten-thousandth of an inch", "sccm": "of gas at 0 °C and 1 atm"} | (
        {"K": "above absolute zero"} if kind is TEMPERATURE else {}
    )
    assert said[unit.symbol] in entry.note if unit.symbol in said else entry.note == ""


@pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)
def test_every_kind(kind):
    assert KINDS[kind.name] is kind
    assert kind.unit("metric") is kind.metric and kind.metric in kind.units
    assert kind.unit("inch") is kind.inch and kind.inch in kind.units
    assert hash(kind) and {unit: 1 for unit in kind.units}
    with pytest.raises(ValueError, match="metric or inch"):
        kind.unit("cubits")
    for text in kind.example.replace(" or ", ", ").split(", "):  # what a refusal offers is accepted
        assert read(text, kind).note == ""


def test_no_spelling_of_one_kind_is_another_kinds_in_other_capitals():
    """ "5 Nm" in a length field must not be nanometres: what one kind spells, no other takes by disregarding capitals."""
    for home in KINDS.values():
        for spelling in spellings_of(home)[0]:
            for kind in KINDS.values():
                assert unit_spelled(kind, spelling) is None or spelling in spellings_of(kind)[0], (
                    spelling,
                    home.name,
                    kind.name,
                )


@steady
@given(any_unit, st.data())
def test_capitals_never_turn_one_unit_into_another(pair, data):
    kind, unit = pair
    spelling = data.draw(st.sampled_from((unit.symbol, *unit.spellings)))
    flips = data.draw(st.lists(st.booleans(), min_size=len(spelling), max_size=len(spelling)))
    typed = "".join(c.swapcase() if flip and c.isascii() else c for c, flip in zip(spelling, flips))
    found = unit_spelled(kind, typed)
    assert (
        found is None
        or found is unit
        or typed in [s.replace("·", "") for s in (found.symbol, *found.spellings)]
    )


@pytest.mark.parametrize(
    "spelling,kind,symbol",
    [
        ("mN", FORCE, "mN"),
        ("MN", FORCE, "MN"),
        ("mn", FORCE, None),
        ("Mn", FORCE, None),
        ("kn", FORCE, "kN"),
        ("MPa", PRESSURE, "MPa"),
        ("mPa", PRESSURE, None),
        ("mpa", PRESSURE, None),
        ("MPA", PRESSURE, "MPa"),
        ("MM", LENGTH, "mm"),
        ("Mm", LENGTH, None),
        ("M", LENGTH, None),
        ("IN", LENGTH, "in"),
        ("Inch", LENGTH, "in"),
        ("mN", TORQUE, None),
        ("Nm", TORQUE, "N·m"),
        ("NM", TORQUE, "N·m"),
        ("nm", TORQUE, "N·m"),
        ("m·N", FORCE, None),
        ("Nm", LENGTH, None),
        ("mPa·s", DYNAMIC_VISCOSITY, "mPa·s"),
        ("MPa·s", DYNAMIC_VISCOSITY, None),
        ("mpsi", MODULUS, None),
        ("Mpsi", MODULUS, "Mpsi"),
        ("PS", POWER, "PS"),
        ("HP", POWER, "hp"),
        ("mbar", PRESSURE, "mbar"),
        ("Mbar", PRESSURE, None),
        ("MBAR", PRESSURE, "mbar"),
        ("RPM", ROTATION, "1/min"),
    ],
)
def test_capitals(spelling, kind, symbol):
    found = unit_spelled(kind, spelling)
    assert (found and found.symbol) == symbol


# --- Reading -----------------------------------------------------------------------


@pytest.mark.parametrize(
    "text,kind,expected",
    [
        # Fractions of an inch are exact: 1 31/64 in = 37.703125 mm (arithmetic).
        ("1 31/64 in", LENGTH, 0.037703125),
        ("1-31/64 in", LENGTH, 0.037703125),
        ('1-31/64"', LENGTH, 0.037703125),
        ("1 31⁄64″", LENGTH, 0.037703125),
        ("1 ³¹⁄₆₄ inches", LENGTH, 0.037703125),
        ("31/64 in", LENGTH, 0.012303125),
        ("1 3/8 in", LENGTH, 0.034925),
        ("1-3/8 in", LENGTH, 0.034925),
        ("1⅜ in", LENGTH, 0.034925),
        ("½ inch", LENGTH, 0.0127),
        ("¾”", LENGTH, 0.01905),
        ("-1 1/2 in", LENGTH, -0.0381),
        ("1/2 mm", LENGTH, 0.0005),
        ("12''", LENGTH, 0.3048),
        ("1.5 thou", LENGTH, 3.81e-5),
        ("1 ft", LENGTH, 0.3048),
        ("1'", LENGTH, 0.3048),
        ("1′", LENGTH, 0.3048),
        # Marks, signs, spaces, exponents.
        ("37.9", LENGTH, 0.0379),
        ("37,9", LENGTH, 0.0379),
        (" 37.90mm ", LENGTH, 0.0379),
        ("37.9\u00a0mm", LENGTH, 0.0379),
        ("+37.9", LENGTH, 0.0379),
        ("−0.05", LENGTH, -5e-5),
        ("- 5", LENGTH, -0.005),
        ("37.", LENGTH, 0.037),
        (".5", LENGTH, 0.0005),
        (",5", LENGTH, 0.0005),
        ("0,123", LENGTH, 0.000123),
        ("1e-3", LENGTH, 1e-6),
        ("1.2E2 mm", LENGTH, 0.12),
        ("1.2×10⁻³ m", LENGTH, 0.0012),
        ("1.2 x 10^-3 m", LENGTH, 0.0012),
        ("37.9 mm.", LENGTH, 0.0379),
        ("-0", LENGTH, 0.0),
        ("8 µm", LENGTH, 8e-6),
        ("8 μm", LENGTH, 8e-6),
        ("8 um", LENGTH, 8e-6),
        ("8 microns", LENGTH, 8e-6),
        # Usual spellings.
        ("26 ft-lbs", TORQUE, 26 * 1.3558179483314004),
        ("26 lb.-ft.", TORQUE, 26 * 1.3558179483314004),
        ("26 ft. lb.", TORQUE, 26 * 1.3558179483314004),
        ("26 lbf·ft", TORQUE, 26 * 1.3558179483314004),
        ("35Nm", TORQUE, 35.0),
        ("35 N-m", TORQUE, 35.0),
        ("35 N m", TORQUE, 35.0),
        ("450 N/mm2", STRESS, 450e6),
        ("450 N/mm^2", STRESS, 450e6),
        ("5 cu. in.", VOLUME, 5 * 16.387064e-6),
        ("52.5cc", VOLUME, 52.5e-6),
        ("0.005 in./rev", FEED, 0.000127),
        ("3000 1/min", ROTATION, 50.0),
        ("3000 min⁻¹", ROTATION, 50.0),
        ("3000 r.p.m.", ROTATION, 50.0),
        ("3000 U/min", ROTATION, 50.0),
        ("50 Hz", ROTATION, 50.0),
        ("23.1×10⁻⁶/K", EXPANSION, 23.1e-6),
        ("23.1 10^-6/K", EXPANSION, 23.1e-6),
        ("23.1 µm/m·K", EXPANSION, 23.1e-6),
        ("23.1 µm/m/°C", EXPANSION, 23.1e-6),
        ("23.1e-6 1/K", EXPANSION, 23.1e-6),
        ("60 W/m²K", HEAT_TRANSFER, 60.0),
        ("60 W/(m² K)", HEAT_TRANSFER, 60.0),
        ("0.02 mm/100mm", SLOPE, 2e-4),
        ("25%", RATIO, 0.25),
        ("8.5:1", RATIO, 8.5),
        ("1:10", RATIO, 0.1),
        ("1 : 3,5", RATIO, 1 / 3.5),
        ("1/4", RATIO, 0.25),
        ("12 off", COUNT, 12.0),
        ("1013.25 hPa", PRESSURE, 101325.0),
        ("20 °C", TEMPERATURE, 293.15),
        ("20 ℃", TEMPERATURE, 293.15),
        ("68F", TEMPERATURE, 293.15),
        ("20 c", TEMPERATURE, 293.15),
        ("-40", TEMPERATURE, 233.15),
        ("27 °F", TEMPERATURE_DIFFERENCE, 15.0),
        ("15 °C", TEMPERATURE_DIFFERENCE, 15.0),
    ],
)
def test_what_is_read_without_remark(text, kind, expected):
    entry = read(text, kind)
    assert entry.value == pytest.approx(expected, rel=4e-16, abs=0)
    assert entry.note == "" and entry.doubt is None and entry.text == text


@pytest.mark.parametrize(
    "text,degrees",
    [
        ("45°30'36\"", 45.51),
        ("45° 30' 36\"", 45.51),
        ("45°30′36″", 45.51),
        ("45d30m36s", 45.51),
        ("45 deg 30 min 36 sec", 45.51),
        ("45° 30'", 45.5),
        ("45°30,5'", 45 + 30.5 / 60),
        ("-0°30'", -0.5),
        ("−0°30′", -0.5),
        ("-45°30'36\"", -45.51),
        ("30'", 0.5),
        ("30' 36\"", 0.51),
        ('36"', 0.01),
        ("45.51", 45.51),
        ("45.51°", 45.51),
        ("45,51 degrees", 45.51),
    ],
)
def test_degrees_minutes_seconds(text, degrees):  # D + M/60 + S/3600
    assert value(text, ANGLE) == pytest.approx(math.radians(degrees), rel=4e-16)


@pytest.mark.parametrize(
    "text,kind,expected,note",
    [
        (
            "1 31/64",
            LENGTH,
            0.037703125,
            'Took 1 31/64 as inches (37.703 mm); write "1 31/64 mm" if millimetres were meant.',
        ),
        ("½", LENGTH, 0.0127, 'Took 1/2 as inches (12.700 mm); write "1/2 mm" if millimetres were meant.'),
        (
            "-1/4",
            LENGTH,
            -0.00635,
            'Took -1/4 as inches (−6.350 mm); write "-1/4 mm" if millimetres were meant.',
        ),
        ("1,234.5", LENGTH, 1.2345, "Took 1,234.5 as 1234.5."),
        ("1.234,5", LENGTH, 1.2345, "Took 1.234,5 as 1234.5."),
        ("1.234.567,5 mm", LENGTH, 1234.5675, "Took 1.234.567,5 as 1234567.5."),
        ("1,234,567 mm", LENGTH, 1234.567, "Took 1,234,567 as 1234567."),
        ("12 500", LENGTH, 12.5, "Took 12 500 as 12500."),
        ("12\u202f500,5 mm", LENGTH, 12.5005, "Took 12 500,5 as 12500.5."),
        ("2 tenths", LENGTH, 5.08e-6, "Took tenths as ten-thousandths of an inch (0.0001 in)."),
        ("2 mil", LENGTH, 5.08e-5, "Took a mil as a thousandth of an inch (0.001 in)."),
        ("100 lb", FORCE, 444.82216152605, "Took lb as pounds-force (lbf)."),
        ("10 kg", FORCE, 98.0665, "Took kg as kilograms-force (kgf)."),
        ("3 kg cm", TORQUE, 0.2941995, "Took kg·cm as kgf·cm."),
        ("2 kg/cm²", PRESSURE, 196133.0, "Took kg/cm² as kgf/cm²."),
    ],
)
def test_what_is_read_with_a_remark(text, kind, expected, note):
    entry = read(text, kind)
    assert entry.value == pytest.approx(expected, rel=4e-16)
    assert entry.note == note


TWO_WAYS = [
    ("1,250", LENGTH, "1250 or 1.250"),
    ("54,987 mm", LENGTH, "54987 or 54.987"),
    ("-123,456", LENGTH, "123456 or 123.456"),
    ("1,250 cm³", VOLUME, "1250 or 1.250"),
    ("4,500 rpm", ROTATION, "4500 or 4.500"),
    ("1,250e3", FORCE, "1250 or 1.250"),
    ("1,250 %", RATIO, "1250 or 1.250"),
    ("1:1,250", RATIO, "1250 or 1.250"),
    ("1,250 °C", TEMPERATURE, "1250 or 1.250"),
    ("1,250 ± 0.5", LENGTH, "1250 or 1.250"),
    ("54.987 mm ± 1,250 µm", LENGTH, "1250 or 1.250"),
]


@pytest.mark.parametrize("text,kind,words", TWO_WAYS)
def test_a_comma_that_may_part_thousands_or_decimals_is_refused(text, kind, words):
    """In English the comma parts thousands, in most of Europe it is the decimal mark; ISO 80000-1 (7.3.1, from memory) allows the comma as
    decimal mark and parts thousands by spaces alone. Both readings differ a thousandfold."""
    for unit in (kind.metric, kind.inch):
        error = refusal(text, kind, unit)
        assert error.code == "two-ways" and str(error).endswith(f"can be read in two ways; write {words}.")
        plain, decimal = words.split(" or ")
        for said in (plain, decimal):  # what is offered can be read in one way
            assert read(text.replace(decimal.replace(".", ","), said), kind, unit).note == ""


@pytest.mark.parametrize(
    "text,kind,words",
    [
        ("0005", LENGTH, "5"),
        ("0375 in", LENGTH, "375"),
        ("-05", TEMPERATURE, "5"),
        ("37.48 ± 001", LENGTH, "1"),
    ],
)
def test_a_number_that_may_have_lost_its_point_is_refused(text, kind, words):
    """A thumb that misses the point of 0.375 types 0375 (common practice: sizes below one are read out without their nought)."""
    error = refusal(text, kind)
    assert error.code == "two-ways" and str(error).endswith(
        f"may have lost its decimal point; write it with its point, or {words}."
    )
    assert (
        value("0", LENGTH) == value("00", LENGTH) == 0
        and value("04", COUNT) == 4
        and value("05° 30'", ANGLE) == math.radians(5.5)
    )


@pytest.mark.parametrize(
    "text,kind,possible,expected",
    [
        # one of both readings cannot be: 54 987 mm is no size of a part of 5 to 120 mm
        ("54,987", LENGTH, (0.005, 0.12), 0.054987),
        ("54,987 ± 0,004 mm", LENGTH, (0.005, 0.12), 0.054987),
        ("-1,250 mm", LENGTH, (-1.0, 1.0), -0.00125),
        ("1,250 °C", TEMPERATURE, (213.15, 423.15), 274.4),
    ],
)
def test_it_is_a_decimal_comma_where_thousands_cannot_be_meant(text, kind, possible, expected):
    entry = read(text, kind, None, possible)
    assert entry.value == pytest.approx(expected, rel=4e-16) and "with a decimal comma" in entry.note
    with pytest.raises(EntryError, match="two ways"):
        read(text, kind, None, (-1e9, 1e9))


@pytest.mark.parametrize(
    "text,expected",
    [
        ("1,25", 1.25),
        ("37,48", 37.48),
        ("12,5", 12.5),
        ("0,123", 0.123),
        ("0,250", 0.25),
        ("1,2345", 1.2345),
        ("1234,500", 1234.5),
        ("1.250", 1.25),
        (",250", 0.25),
    ],
)
def test_no_other_comma_and_no_point_can_part_thousands(text, expected):
    for unit in (LENGTH.metric, LENGTH.inch):
        entry = read(text, LENGTH, unit)
        assert entry.note == "" and to_unit(entry.value, unit) == expected


def possible(kind, unit, number):
    """The number, or its opposite where there is no such temperature."""
    return -number if kind is TEMPERATURE and Fraction(number) * unit.factor + unit.offset < 0 else number


@pytest.mark.parametrize(
    "text,unit", [("-273.15 °C", "metric"), ("-459.67 °F", "metric"), ("0 K", "inch"), ("-459.67", "inch")]
)
def test_absolute_zero_is_the_least_temperature(text, unit):
    """0 K is −273.15 °C (definition of the Celsius scale, SI brochure) and −459.67 °F."""
    assert value(text, TEMPERATURE, TEMPERATURE.unit(unit)) == 0.0
    assert str(
        refusal(
            text.replace("7 ", "8 ").replace("15 ", "16 ").replace("0 K", "-0.01 K").replace("67", "68"),
            TEMPERATURE,
            TEMPERATURE.unit(unit),
        )
    ).endswith("is below absolute zero; give −273.15 °C, −459.67 °F, 0 K or more.")
    assert read("-460 °F", TEMPERATURE_DIFFERENCE).value < 0  # a difference may be any
    with pytest.raises(
        EntryError, match="absolute zero"
    ):  # and no temperature is taken for one because it cannot be
        readings("-460 °F", (TEMPERATURE, TEMPERATURE_DIFFERENCE))


def test_kelvin_in_a_field_for_a_temperature_is_no_difference_and_that_is_said():
    entry = read("27 K", TEMPERATURE)
    assert (entry.value, entry.unit.symbol, entry.note) == (
        27.0,
        "K",
        'Took "27 K" as a temperature above absolute zero (−246.15 °C), not as a difference.',
    )
    assert (
        "(−411.07 °F)" in read("27 K", TEMPERATURE, TEMPERATURE.inch).note
        and read("20 °C ± 1 K", TEMPERATURE).note == ""
    )


def test_the_unit_where_the_text_names_none():
    assert value("1.5", LENGTH, LENGTH.inch) == 0.0381
    assert value("1.5 mm", LENGTH, LENGTH.inch) == 0.0015
    entry = read("1 31/64", LENGTH, LENGTH.inch)
    assert (entry.value, entry.note, entry.unit) == (0.037703125, "", LENGTH.inch)
    assert (
        read("1/2", LENGTH, unit_spelled(LENGTH, "cm")).note
        == 'Took 1/2 as inches (1.270 cm); write "1/2 cm" if cm was meant.'
    )
    assert value("212", TEMPERATURE, TEMPERATURE.inch) == pytest.approx(373.15, rel=1e-15)


@pytest.mark.parametrize(
    "text,kind,unit,expected,doubt",
    [
        ("54.987 ± 0.004", LENGTH, "mm", 0.054987, 4e-6),
        ("54.987 +/- 0.004 mm", LENGTH, "mm", 0.054987, 4e-6),
        ("54.987 mm ± 4 µm", LENGTH, "mm", 0.054987, 4e-6),
        ("(54.987 ± 0.004) mm", LENGTH, "mm", 0.054987, 4e-6),
        ("54.987mm+-0.004", LENGTH, "mm", 0.054987, 4e-6),
        ("1 31/64 in ± 1 thou", LENGTH, "mm", 0.037703125, 2.54e-5),
        ("1 31/64 in ± 1/64", LENGTH, "mm", 0.037703125, 0.0254 / 64),
        ("2.1648 ± 0.0002", LENGTH, "in", 2.1648 * 0.0254, 5.08e-6),
        ("54,98 ± 0", LENGTH, "mm", 0.05498, 0.0),
        ("20 °C ± 1 K", TEMPERATURE, "°C", 293.15, 1.0),
        ("68 °F ± 1.8", TEMPERATURE, "°C", 293.15, 1.0),
        ("20 ± 0.5", TEMPERATURE, "°C", 293.15, 0.5),
        ("20 ± 0.5 °C", TEMPERATURE, "°C", 293.15, 0.5),
        ("45° ± 10'", ANGLE, "°", math.pi / 4, math.radians(10 / 60)),
        ("45°30' ± 0°10'", ANGLE, "°", math.radians(45.5), math.radians(10 / 60)),
    ],
)
def test_doubt(text, kind, unit, expected, doubt):
    entry = read(text, kind, unit_spelled(kind, unit))
    assert entry.value == pytest.approx(expected, rel=1e-15)
    assert entry.doubt == pytest.approx(doubt, rel=1e-15, abs=0)
    assert entry.note == ""


def test_a_unit_at_the_end_is_for_both_and_that_is_said():
    entry = read("54.987 ± 0.004 mm", LENGTH, LENGTH.inch)
    assert (entry.value, entry.doubt, entry.unit) == (0.054987, 4e-6, LENGTH.metric)
    assert entry.note == "Took mm for both 54.987 and its doubt."


@pytest.mark.parametrize(
    "code,kind,texts",
    [
        ("empty", LENGTH, ["", "   ", "\t\n", "\u00a0", "\ufeff"]),
        (
            "not-a-number",
            LENGTH,
            [
                "37.4x",
                "mm",
                "about 37",
                "--5",
                "1.2.3",
                "1,23.4",
                "37,4,5",
                "<b>37</b>",
                "37<b>",
                "37 😀",
                "37\x00",
                "\ud800",
                "٣ mm",
                "37.4 --- mm",
                "=1+1",
                "10 <",
                "'",
                "/",
                "e3",
                "37.4e",
            ],
        ),
        (
            "several-numbers",
            LENGTH,
            [
                "37.4 37.5",
                "37.4, 37.5",
                "37.4,37.5",
                "37.4;37.5",
                "37.4-37.5",
                "37.4 - 37.5",
                "37.4 mm 37.5 mm",
                "37.4 to 37.5",
                "1 - 3/8",
                "0 500",
                "37 5000",
                "3 x 4",
                "5' 3\"",
                "0.123 456",
            ],
        ),
        ("several-numbers", ANGLE, ["45 30 36", "45°30"]),
        ("several-numbers", ROTATION, ["12 5001/min"]),
        ("unknown-unit", LENGTH, ["37.4 furlong", "37.4 M", "37.4 Mm", "37.4 please help"]),
        ("unknown-unit", VOLUME, ["5 gal", "5 Gallons", "1 fl oz", "5 quarts", "5 qt", "1 pint", "1 pt."]),
        ("unknown-unit", FLOW, ["5 gpm", "5 gal/min"]),
        ("unknown-unit", PRESSURE, ["36 psig", "36 psia", "2.5 bar g", "5 mPa"]),
        ("unknown-unit", FORCE, ["5 mn", "5 m·N"]),
        ("wrong-kind", LENGTH, ["3 bar", "5 Nm", "5°", "20 °C", "4 mm²", "3000 rpm", "5 %"]),
        ("wrong-kind", PRESSURE, ["37.4 mm", '3"', "20 C"]),
        ("wrong-kind", TORQUE, ["5 mN", "5 N", "5 N/mm"]),
        ("wrong-kind", TEMPERATURE, ["20°", "20 mm"]),
        ("wrong-kind", COUNT, ["4 mm", "4 %"]),
        ("not-a-number", COUNT, ["3.5", "1/2"]),
        (
            "not-finite",
            LENGTH,
            [
                "nan",
                "NaN",
                "inf",
                "-Infinity",
                "∞",
                "-inf mm",
                "1e999",
                "1e31 m",
                "1e-999",
                "1e99999999",
                "1" * 80,
            ],
        ),
        (
            "too-long",
            LENGTH,
            ["1" * 101, "x" * 10_000, "<p>" * 4000, " " * 10_000 + "5", "1 " * 5000, "1/" * 5000],
        ),
        (
            "bad-fraction",
            LENGTH,
            [
                "1/0",
                "1 3/0 in",
                "0/0",
                "1 65/64 in",
                "1 64/64 in",
                "12 500/3",
                "1.5/2",
                "3/8/2",
                "37.4/37.5",
                "1.5 3/8",
                "3 / 8",
                "1 234 1/2",
            ],
        ),
        ("bad-angle", ANGLE, ["45° 60'", "45°30'60\"", "45.5° 30'", '45° 36"', "45° 30.5' 6\"", "30' 75\""]),
        (
            "bad-doubt",
            LENGTH,
            ["± 0.004", "5 ±", "5 ± x", "5 ± -1", "5 ± 1 ± 2", "+-5", "54.987 ± 4 µm", "5 ± 1 2"],
        ),
        ("bad-doubt", TEMPERATURE, ["20 ± 1 K"]),
        ("bad-doubt", ANGLE, ["45 ± 10'"]),
        ("wrong-kind", LENGTH, ["54.9 mm ± 1 bar"]),
        ("out-of-range", TEMPERATURE, ["-460 °F", "-273.16 °C", "−1 K", "-459.68 F", "-300", "-300 ± 5"]),
    ],
)
def test_refusals(code, kind, texts):
    for text in texts:
        error = refusal(text, kind)
        assert error.code == code, text
        assert str(error) == f"{error.problem}; {error.accepted}."
        assert "\n" not in str(error) and len(str(error)) < 250


def test_the_words_of_a_refusal():
    accepted = "give a length such as 37.48 mm, 1.4756 in or 1 31/64 in"
    error = refusal("37.4x", LENGTH)
    assert (error.problem, error.accepted) == ('"37.4x" is not a number', accepted)
    assert refusal("3 bar", LENGTH).problem == "bar is a pressure, and a length belongs here"
    assert refusal("12 mm", ANGLE).problem == "mm is a length, and an angle belongs here"
    assert refusal("5 lb", LENGTH).problem == "lb is a mass, and a length belongs here"
    assert str(refusal("5 gal", VOLUME)) == "gal may be a US or an imperial gallon; write US gal or imp gal."
    assert refusal("20 ± 1 K", TEMPERATURE).accepted == "name both, such as 20 °C ± 1 K"
    assert refusal("z" * 90, LENGTH).problem == f'"{"z" * 39}…" is not a number'
    assert isinstance(error, ValueError)


ODD = [
    "<script>alert(1)</script>",
    "&amp;",
    "\x00",
    "\u202e",
    "😀",
    "\ud800",
    "±",
    "+/-",
    "1/0",
    "31/64",
    "½",
    "⁄",
    "°",
    "'",
    '"',
    "mm",
    "in",
    "N·m",
    "e",
    "E+",
    "×10",
    "^",
    "10⁻⁶",
    ".",
    ",",
    " ",
    "-",
    "−",
    "(",
    ")",
    "/",
    ":",
    "12 500",
    "1,234",
    "9" * 30,
    "nan",
    "gal",
]


@given(
    st.one_of(
        st.text(max_size=200),
        st.lists(st.one_of(st.sampled_from(ODD), st.from_regex("[0-9]{1,4}")), max_size=12).map("".join),
    ),
    st.sampled_from(list(KINDS.values())),
    st.sampled_from(["metric", "inch"]),
)
@example("1" * 99 + "/", LENGTH, "metric")
@example("0," * 50, LENGTH, "metric")
@settings(steady, max_examples=3000)
def test_whatever_is_typed_is_read_or_refused(text, kind, system):
    try:
        entry = read(text, kind, kind.unit(system))
    except EntryError as error:
        assert error.code and error.problem and error.accepted
        str(error).encode()  # no lone surrogates on their way to a page
        assert len(str(error)) < 300
    else:
        assert math.isfinite(entry.value) and entry.unit in kind.units
        assert entry.doubt is None or (math.isfinite(entry.doubt) and entry.doubt >= 0)
        assert stated(entry.value, kind.unit(system), 3)


@steady
@given(
    st.decimals(min_value=-(10**6), max_value=10**6, places=6),
    st.sampled_from(".,"),
    st.sampled_from(["-", "−"]),
)
def test_decimals_are_read_exactly(number, mark, minus):
    text = f"{number:f}".replace(".", mark).replace("-", minus)
    assert value(text + " mm", LENGTH) == float(
        number / 1000
    )  # Python's decimal arithmetic, correctly rounded


@steady
@given(st.integers(0, 40), st.integers(1, 63), st.sampled_from([64, 128]), st.sampled_from(" -"))
def test_fractions_of_an_inch_come_back_exactly(whole, top, under, join):
    entry = read(f"{whole}{join}{top}/{under} in", LENGTH)
    assert entry.value == float((whole + Fraction(top, under)) * Fraction(254, 10000))
    assert to_unit(entry.value, LENGTH.inch) == whole + top / under  # a dyadic fraction is an exact float


@steady
@given(st.integers(-359, 359), st.integers(0, 59), st.integers(0, 5999))
def test_degrees_minutes_seconds_agree_with_decimal_degrees(degrees, minutes, hundredths):
    sign = -1 if degrees < 0 else 1
    exact = sign * (abs(degrees) + Fraction(minutes, 60) + Fraction(hundredths, 360000))
    assert value(f"{degrees}° {minutes}' {hundredths / 100}\"", ANGLE) == pytest.approx(
        math.radians(exact), rel=1e-15
    )


# --- Declarations ------------------------------------------------------------------


def test_quantity_reads_a_declaration():
    assert in_si("37.9 mm", LENGTH) == 0.0379
    assert in_si("1 31/64 in", LENGTH) == 0.037703125
    assert in_si("4", COUNT) == 4.0 and in_si("0.12", RATIO) == 0.12 and in_si("0", LENGTH) == 0.0


@pytest.mark.parametrize(
    "text,kind",
    [
        ("37.9", LENGTH),
        ("1 31/64", LENGTH),
        ("54,987 mm", LENGTH),
        ("0", TEMPERATURE),
        ("x", LENGTH),
        ("3 bar", LENGTH),
    ],
)
def test_quantity_leaves_nothing_to_choose(text, kind):
    with pytest.raises(EntryError):
        in_si(text, kind)


# --- Writing -----------------------------------------------------------------------


@pytest.mark.parametrize(
    "number,unit,decimals,expected",
    [
        (0.0379, LENGTH.metric, 2, "37.90"),
        (0.0379, LENGTH.inch, 4, "1.4921"),
        (-5e-5, LENGTH.metric, 2, "−0.05"),
        (12.5, LENGTH.metric, 0, "12500"),
        (293.15, TEMPERATURE.metric, 0, "20"),
        (293.15, TEMPERATURE.inch, 1, "68.0"),
        # Half to even, on the decimal: the examples of ISO 80000-1 rule A (from memory), 12.25 -> 12.2, 12.35 -> 12.4.
        (0.01225, LENGTH.metric, 1, "12.2"),
        (0.01235, LENGTH.metric, 1, "12.4"),
        (0.012251, LENGTH.metric, 1, "12.3"),
        # Zero has no sign; what would be all zeros gets one decimal more, and is zero if that does not help.
        (0.0, LENGTH.metric, 2, "0.00"),
        (-0.0, LENGTH.metric, 2, "0.00"),
        (-4e-6, LENGTH.metric, 2, "−0.004"),
        (4e-6, LENGTH.metric, 2, "0.004"),
        (4e-7, LENGTH.metric, 2, "0.00"),
        (-1e-20, LENGTH.metric, 2, "0.00"),
        (0.0004, LENGTH.metric, 0, "0.4"),
        # From 10⁹ on, powers of ten; and of what is small, where very many decimals are asked for.
        (2.54e-24, unit_spelled(LENGTH, "m"), 26, "2.54×10⁻²⁴"),
        (2.54e-11, unit_spelled(LENGTH, "m"), 13, "0.0000000000254"),
        (1.5e9, unit_spelled(LENGTH, "m"), 2, "1.50000×10⁹"),
        (-1.234567e12, unit_spelled(LENGTH, "m"), 0, "−1.23457×10¹²"),
        (999999999.0, unit_spelled(LENGTH, "m"), 0, "999999999"),
    ],
)
def test_write(number, unit, decimals, expected):
    assert write(number, unit, decimals) == expected


@given(
    st.integers(-(10**6), 10**6),
    st.integers(0, 4),
    st.integers(-3, 3),
    st.sampled_from(["mm", "in", "µm", "m"]),
)
def test_a_half_that_arithmetic_missed_by_its_last_bits_is_still_a_half(n, decimals, steps, symbol):
    """So that computers whose mathematical libraries differ in the last bit write the same."""
    unit = unit_spelled(LENGTH, symbol)
    exact = (Decimal(n) + Decimal("0.5")).scaleb(-decimals)
    value = from_unit(float(exact), unit)
    missed = value
    for _ in range(abs(steps)):
        missed = math.nextafter(missed, math.copysign(math.inf, steps))
    assert write(missed, unit, decimals) == write(value, unit, decimals)
    if n not in (0, -1):  # what would be written with zeros alone gets a decimal more
        assert Decimal(write(value, unit, decimals).replace("−", "-")) == exact.quantize(
            Decimal(1).scaleb(-decimals)
        )


def test_write_refuses_what_is_no_size():
    for number in (math.nan, math.inf, -math.inf):
        with pytest.raises(ValueError):
            write(number, LENGTH.metric, 2)


def test_stated():
    assert stated(0.0379, LENGTH.metric, 2) == "37.90 mm"
    assert stated(math.pi / 4, ANGLE.metric, 1) == "45.0°"
    assert stated(0.125, unit_spelled(RATIO, "%"), 1) == "12.5 %"
    assert stated(0.125, RATIO.metric, 3) == "0.125"


@steady
@given(any_unit, st.floats(-1e6, 1e6), st.integers(0, 6))
def test_what_is_written_is_read_back_to_the_written_precision(pair, number, decimals):
    kind, unit = pair
    number = possible(kind, unit, number)
    if kind is COUNT:
        number, decimals = float(round(number)), 0
    si = from_unit(number, unit)
    text = write(si, unit, decimals)
    assert not (text.startswith("−") and not text.strip("−0."))
    back = read(text, kind, unit)
    slack = abs(si) * 1e-15 + (float(unit.offset) * 1e-15)
    assert abs(back.value - si) <= float(unit.factor) * 0.5 * 10.0**-decimals * (1 + 1e-9) + slack
    assert back.note == "" or (kind, unit.symbol) == (TEMPERATURE, "K")


@steady
@given(any_unit, st.floats(-1e9, 1e9))
def test_to_unit_and_back(pair, number):
    kind, unit = pair
    si = from_unit(number, unit)
    assert from_unit(to_unit(si, unit), unit) == pytest.approx(si, rel=3e-16, abs=1e-13 if unit.offset else 0)


@steady
@given(any_unit, st.decimals(min_value=-(10**5), max_value=10**5, places=4))
def test_a_typed_decimal_comes_back_as_typed(pair, number):
    kind, unit = pair
    if kind is COUNT:
        number = Decimal(round(number))
    number = Decimal(str(possible(kind, unit, number)))
    si = value(f"{number:f}", kind, unit)
    if (
        abs(number) >= 10 or not unit.offset
    ):  # a small number on a scale far from absolute zero has fewer digits
        assert to_unit(si, unit) == float(number)


@steady
@given(st.sampled_from([kind for kind in KINDS.values() if kind.metric.symbol]), st.integers(0, 5))
def test_the_inch_shows_no_less_than_the_metric_unit(kind, decimals):
    places = decimals_for(kind.inch, decimals, kind.metric)
    step_inch, step_metric = kind.inch.factor / 10**places, kind.metric.factor / Fraction(10) ** decimals
    assert step_inch <= step_metric or places == 0 and step_inch <= kind.inch.factor
    assert places == 0 or 10 * step_inch > step_metric


def test_decimals_for():
    assert (
        decimals_for(LENGTH.inch, 2, LENGTH.metric) == 4 and decimals_for(LENGTH.inch, 3, LENGTH.metric) == 5
    )
    assert (
        decimals_for(LENGTH.metric, 2, LENGTH.metric) == 2
        and decimals_for(LENGTH.metric, 4, LENGTH.inch) == 3
    )
    assert (
        decimals_for(unit_spelled(LENGTH, "m"), 2, LENGTH.metric) == 5
        and decimals_for(PRESSURE.inch, 0, PRESSURE.metric) == 1
    )
    assert decimals_for(TEMPERATURE.inch, 0, TEMPERATURE.metric) == 0


# --- Reading without knowing the kind ----------------------------------------------


@pytest.mark.parametrize(
    "text,names",
    [
        ("37.48 mm", ["length"]),
        ("35 lb", ["mass", "force"]),
        ("35 lbf", ["force"]),
        ("35 ft·lb", ["torque", "energy"]),
        ("20 °C", ["temperature", "temperature difference"]),
        ('5"', ["length", "angle"]),
        ("5″", ["angle", "length"]),
        ("2 g", ["mass", "acceleration"]),
        ("10 min", ["time", "angle"]),
        ("1:10", ["ratio"]),
        ("45° 30'", ["angle"]),
    ],
)
def test_kinds_that_a_text_can_be_meant_as(text, names):
    kinds = [kind for kind in KINDS.values() if kind is not FEED]
    found = readings(text, kinds)
    assert [kind.name for kind, _ in found] == names
    assert all(entry == read(text, kind) for kind, entry in found)


@every_unit
def test_every_unit_is_told_by_its_symbol(kind, unit):
    if unit.symbol:
        assert kind in [found for found, _ in readings(f"12 {unit.symbol}", tuple(KINDS.values()))]


@pytest.mark.parametrize(
    "text,code,words",
    [
        ("12", "unknown-unit", "names no unit"),
        ("3 furlong", "unknown-unit", "names no unit"),
        ("3 gal", "unknown-unit", "write US gal or imp gal"),
        ("", "empty", "nothing was given"),
        ("abc mm", "not-a-number", "is not a number"),
        ("1:0", "bad-fraction", "divides by zero"),
        ("45° 70'", "bad-angle", "60 or more"),
        ("nan mm", "not-finite", "is not a size"),
        ("37.4 mm 37.5 mm", "several-numbers", "more than one number"),
        ("mm" * 60, "too-long", "characters long"),
    ],
)
def test_what_no_kind_can_read(text, code, words):
    with pytest.raises(EntryError, match=words) as refused:
        readings(text, (LENGTH, *KINDS.values()))
    assert refused.value.code == code


def test_a_kind_is_made_of_its_rows():
    """Symbol, factor, other spellings, offset: 0 °F is 459.67 · 5/9 K (NIST SP 811)."""
    try:
        made = kinds._kind(
            "specimen",
            (0, 0, 0, 1),
            "K",
            "°F",
            "293 K",
            ("K", 1),
            ("mK", "0.001", "millikelvin millikelvins"),
            ("°F", Fraction(5, 9), "degF F", Fraction("459.67") * 5 / 9),
        )
        assert kinds.KINDS["specimen"] is made
    finally:
        kinds.KINDS.pop("specimen", None)
    kelvin, milli, fahrenheit = made.units
    assert (made.name, made.dims, made.metric, made.inch, made.example) == (
        "specimen",
        (0, 0, 0, 1),
        kelvin,
        fahrenheit,
        "293 K",
    )
    assert [(u.symbol, u.factor, u.offset, u.spellings) for u in made.units] == [
        ("K", 1, 0, ()),
        ("mK", Fraction(1, 1000), 0, ("millikelvin", "millikelvins")),
        ("°F", Fraction(5, 9), Fraction(45967, 180), ("degF", "F")),
    ]
    assert to_unit(0.0, fahrenheit) == pytest.approx(-459.67) and to_unit(
        273.15, fahrenheit
    ) == pytest.approx(32)
