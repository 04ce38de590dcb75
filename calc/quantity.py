"""Quantities: kinds, units with exact factors, reading what people type, writing what they read.

Everything inside the calculators is in SI base units as a float: metres, kilograms,
seconds, kelvin, radians, and turns per second for rotation.  This module is the one
place where another unit is turned into those and back.

Factors are exact fractions built from the definitions in NIST SP 811, appendix B:
inch 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s², conventional mercury
13 595.1 kg/m³, US gallon 231 in³ (a quart is its fourth, a pint its eighth part), imperial gallon 4.54609 L, the horsepower of
550 ft·lbf/s and the International Table BTU of 1055.05585262 J.  Text is read as a
fraction and becomes a float once, at the very end, so "1 31/64 in" is the float nearest
to 0.037703125 m.

    read("1 31/64 in", LENGTH).value       0.037703125
    read("54.987 mm ± 4 µm", LENGTH).doubt 4e-06
    write(0.0379, LENGTH.inch, 4)          '1.4921'
    stated(0.0379, LENGTH.metric, 2)       '37.90 mm'
"""

import re
from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction
from functools import lru_cache
from math import isfinite


# --- Units and kinds ---------------------------------------------------------------

@dataclass(frozen=True)
class Unit:
    """A unit of one kind: value in SI = number × factor + offset.

    `spellings` are the other ways in which it is written, with "·" for any way of joining
    two units; the symbol itself is always understood.
    """

    symbol: str
    factor: Fraction
    offset: Fraction = Fraction(0)
    spellings: tuple[str, ...] = ()

    def __hash__(self):  # hashing the fractions would cost more than everything else here
        return hash(self.symbol)


@dataclass(frozen=True)
class Kind:
    """A kind of quantity: its dimensions and the units it is written in.

    `dims` are the exponents of metre, kilogram, second and kelvin; angles, ratios and
    counts have none.  `metric` and `inch` are the units of display, both in `units`.
    `example` is what a refusal offers, such as "37.48 mm or 1.4756 in".
    """

    name: str
    dims: tuple[int, int, int, int]
    units: tuple[Unit, ...]
    metric: Unit
    inch: Unit
    example: str = ""

    def __hash__(self):
        return hash(self.name)

    def unit(self, system: str) -> Unit:
        """The unit of display in a system, "metric" or "inch"."""
        if system not in ("metric", "inch"):
            raise ValueError(f'"{system}" is not a system of units; give metric or inch.')
        return self.metric if system == "metric" else self.inch

    def find(self, spelling: str) -> Unit | None:
        """The unit of this kind that is spelled so, or None.

        Capitals are taken as written first.  Failing that they are disregarded, but
        only where one unit alone fits and never so that a milli becomes a mega or the
        other way round.
        """
        return _find(self, _canonical(_plain(spelling)))


KINDS: dict[str, Kind] = {}


def _kind(name, dims, metric, inch, example, *rows):
    """Make a kind from rows of (symbol, factor, other spellings, offset)."""
    units = tuple(
        Unit(row[0], Fraction(row[1]), Fraction(row[3]) if len(row) > 3 else Fraction(0),
             tuple(row[2].split()) if len(row) > 2 else ())
        for row in rows
    )
    by_symbol = {unit.symbol: unit for unit in units}
    made = Kind(name, dims, units, by_symbol[metric], by_symbol[inch], example)
    KINDS[name] = made
    return made


# The definitions that the rest follow from, NIST SP 811 appendix B.
_MILLI, _MICRO = Fraction(1, 1000), Fraction(1, 1000000)
_IN = Fraction("0.0254")
_FT = 12 * _IN
_MILE = 5280 * _FT
_LB = Fraction("0.45359237")
_OZ = _LB / 16
_G = Fraction("9.80665")
_LBF = _LB * _G
_PSI = _LBF / _IN**2
_HG = Fraction("13595.1") * _G  # a metre of conventional mercury, Pa
_WATER = 1000 * _G  # a metre of conventional water, Pa
_HP = 550 * _FT * _LBF
_PS = 75 * _G  # the metric horsepower
_BTU = Fraction("1055.05585262")
_US_GAL = 231 * _IN**3
_IMP_GAL = Fraction("0.00454609")
_LITRE = Fraction(1, 1000)
_F = Fraction(5, 9)  # a Fahrenheit degree, K
_PI = Fraction("3.14159265358979323846264338327950288419716939937510582097494459")
_DEG = _PI / 180

# In the rows below "·" stands for any of the usual ways of joining two units (space,
# dot, hyphen, star) and for none; superscripts may be typed as plain digits or with ^.

LENGTH = _kind(
    "length", (1, 0, 0, 0), "mm", "in", "37.48 mm, 1.4756 in or 1 31/64 in",
    ("mm", _MILLI, "millimetre millimetres millimeter millimeters"),
    ("in", _IN, '" inch inches'),
    ("µm", _MICRO, "um micron microns micrometre micrometres micrometer micrometers"),
    ("cm", Fraction(1, 100), "centimetre centimetres centimeter centimeters"),
    ("m", 1, "metre metres meter meters"),
    ("km", 1000, "kilometre kilometres kilometer kilometers"),
    ("thou", _IN / 1000, "thous thousandth thousandths mil mils"),
    ("tenth", _IN / 10000, "tenths"),
    ("µin", _IN / 1000000, "uin microinch microinches"),
    ("ft", _FT, "' foot feet"),
)
ROUGHNESS = _kind(
    "roughness", (1, 0, 0, 0), "µm", "µin", "0.8 µm or 32 µin",
    ("µm", _MICRO, "um micron microns micrometre micrometres micrometer micrometers"),
    ("µin", _IN / 1000000, "uin microinch microinches"),
)
AREA = _kind(
    "area", (2, 0, 0, 0), "mm²", "in²", "450 mm² or 0.7 in²",
    ("mm²", _MILLI**2, "sq·mm"),
    ("in²", _IN**2, "sq·in sq·inch sq·inches"),
    ("cm²", Fraction(1, 10000), "sq·cm"),
    ("m²", 1, "sq·m"),
    ("ft²", _FT**2, "sq·ft"),
)
VOLUME = _kind(
    "volume", (3, 0, 0, 0), "cm³", "in³", "52.5 cm³, 52.5 ml or 3.2 in³",
    ("cm³", _MICRO, "cc ccm ml mL cu·cm millilitre millilitres milliliter milliliters"),
    ("in³", _IN**3, "cu·in ci cu·inch cu·inches"),
    ("mm³", _MILLI**3, "cu·mm"),
    ("L", _LITRE, "l litre litres liter liters dm³"),
    ("m³", 1, "cu·m"),
    ("ft³", _FT**3, "cu·ft"),
    ("US gal", _US_GAL, "US·gallon US·gallons gal·US gal·(US)"),
    ("imp gal", _IMP_GAL, "imp·gallon imp·gallons imperial·gal imperial·gallon imperial·gallons "
                          "UK·gal UK·gallon UK·gallons gal·UK gal·imp"),
    ("US qt", _US_GAL / 4, "US·quart US·quarts qt·US qt·(US)"),
    ("imp qt", _IMP_GAL / 4, "imp·quart imp·quarts imperial·qt imperial·quart imperial·quarts UK·qt UK·quart UK·quarts qt·UK qt·imp"),
    ("US pt", _US_GAL / 8, "US·pint US·pints pt·US pt·(US)"),
    ("imp pt", _IMP_GAL / 8, "imp·pint imp·pints imperial·pt imperial·pint imperial·pints UK·pt UK·pint UK·pints pt·UK pt·imp"),
)
SECOND_MOMENT = _kind(
    "second moment of area", (4, 0, 0, 0), "mm⁴", "in⁴", "1200 mm⁴ or 0.003 in⁴",
    ("mm⁴", _MILLI**4),
    ("in⁴", _IN**4),
    ("cm⁴", Fraction(1, 10**8)),
)
ANGLE = _kind(
    "angle", (0, 0, 0, 0), "°", "°", "45.5° or 45° 30' 36\"",
    ("°", _DEG, "deg degs degree degrees d"),
    ("′", _DEG / 60, "' min minute minutes arcmin arcminute arcminutes"),
    ("″", _DEG / 3600, '" sec second seconds arcsec arcsecond arcseconds'),
    ("rad", 1, "radian radians"),
    ("mrad", _MILLI, "milliradian milliradians"),
)
RATIO = _kind(
    "ratio", (0, 0, 0, 0), "", "", "0.25, 25 % or 1/4",
    ("", 1, ":1"),
    ("%", Fraction(1, 100), "percent per·cent pct"),
    ("‰", _MILLI, "permille per·mille"),
    ("ppm", _MICRO),
)
SLOPE = _kind(
    "slope", (0, 0, 0, 0), "mm/100 mm", "thou/in", "0.02 mm/100 mm, 0.2 mm/m or 0.2 thou/in",
    ("mm/100 mm", Fraction(1, 100), "mm·per·100·mm"),
    ("thou/in", _MILLI, 'thou/inch thou/" thou·per·in thou·per·inch'),
    ("mm/m", _MILLI, "mm·per·m"),
    ("µm/mm", _MILLI, "um/mm"),
    ("mm/mm", 1),
    ("in/in", 1, "in·per·in inch/inch"),
    ("in/ft", Fraction(1, 12), "in·per·ft inch/ft inch/foot"),
)
COUNT = _kind(
    "count", (0, 0, 0, 0), "", "", "4",
    ("", 1, "off pcs pieces"),
)
TEMPERATURE = _kind(
    "temperature", (0, 0, 0, 1), "°C", "°F", "20 °C or 68 °F",
    ("°C", 1, "C degC deg·C celsius", "273.15"),
    ("°F", _F, "F degF deg·F fahrenheit", Fraction("459.67") * _F),
    ("K", 1, "kelvin"),
)
TEMPERATURE_DIFFERENCE = _kind(
    "temperature difference", (0, 0, 0, 1), "K", "°F", "15 K, 15 °C or 27 °F",
    ("K", 1, "kelvin °C C C° degC deg·C celsius"),
    ("°F", _F, "F F° degF deg·F fahrenheit"),
)
EXPANSION = _kind(
    "thermal expansion", (0, 0, 0, -1), "µm/(m·K)", "µin/(in·°F)",
    "22.5 µm/(m·K), 22.5e-6 1/K or 12.5 µin/(in·°F)",
    ("µm/(m·K)", _MICRO, "um/m·K µm/m/K um/m/K µm/m·°C um/m·°C µm/m/°C um/m/°C µm/m·C um/m·C "
                         "10⁻⁶/K 10⁻⁶/°C ppm/K ppm/°C"),
    ("µin/(in·°F)", _MICRO / _F, "uin/in·°F µin/in/°F uin/in/°F µin/in·F uin/in·F 10⁻⁶/°F ppm/°F"),
    ("1/K", 1, "/K K⁻¹ 1/°C /°C m/m·K mm/mm·K"),
    ("1/°F", 1 / _F, "/°F in/in·°F in/in·F"),
)
PRESSURE = _kind(
    "pressure", (-1, 1, -2, 0), "kPa", "psi", "250 kPa, 2.5 bar or 36.3 psi",
    ("kPa", 1000),
    ("psi", _PSI, "lbf/in² lb/in² lbf/sq·in"),
    ("Pa", 1, "N/m² pascal pascals"),
    ("hPa", 100),
    ("MPa", 10**6, "N/mm²"),
    ("bar", 10**5, "bars"),
    ("mbar", 100, "millibar millibars"),
    ("kgf/cm²", _G * 10000, "kp/cm² kg/cm²"),
    ("mmHg", _HG / 1000, "mm·Hg"),
    ("inHg", _HG * _IN, 'in·Hg "·Hg "Hg'),
    ("mmH₂O", _WATER / 1000, "mm·H2O"),
    ("inH₂O", _WATER * _IN, 'in·H2O "·H2O "H2O'),
    ("Torr", Fraction(101325, 760)),
    ("atm", 101325),
    ("ksi", 1000 * _PSI),
)
STRESS = _kind(
    "stress", (-1, 1, -2, 0), "MPa", "ksi", "180 MPa, 180 N/mm² or 26.1 ksi",
    ("MPa", 10**6, "N/mm²"),
    ("ksi", 1000 * _PSI, "kpsi"),
    ("psi", _PSI, "lbf/in² lb/in² lbf/sq·in"),
    ("Pa", 1, "N/m²"),
    ("kPa", 1000),
    ("GPa", 10**9, "kN/mm²"),
    ("kgf/mm²", _G * 10**6, "kp/mm² kg/mm²"),
)
MODULUS = _kind(
    "elastic modulus", (-1, 1, -2, 0), "GPa", "Mpsi", "72 GPa, 72000 N/mm² or 10.4 Mpsi",
    ("GPa", 10**9, "kN/mm²"),
    ("Mpsi", 10**6 * _PSI, "Msi"),
    ("MPa", 10**6, "N/mm²"),
    ("psi", _PSI, "lbf/in² lb/in²"),
    ("ksi", 1000 * _PSI),
    ("Pa", 1, "N/m²"),
)
PRESSURE_RATE = _kind(
    "pressure change rate", (-1, 1, -3, 0), "kPa/min", "psi/min", "2 kPa/min or 0.3 psi/min",
    ("kPa/min", Fraction(1000, 60)),
    ("psi/min", _PSI / 60),
    ("Pa/s", 1),
    ("mbar/min", Fraction(100, 60)),
    ("bar/min", Fraction(10**5, 60)),
    ("inHg/min", _HG * _IN / 60),
    ("mmHg/min", _HG / 60000),
)
FORCE = _kind(
    "force", (1, 1, -2, 0), "N", "lbf", "450 N, 46 kgf or 101 lbf",
    ("N", 1, "newton newtons"),
    ("lbf", _LBF, "lbsf lb lbs pound pounds"),
    ("kN", 1000),
    ("MN", 10**6),
    ("mN", _MILLI),
    ("daN", 10),
    ("kgf", _G, "kp kg"),
    ("ozf", _LBF / 16),
)
TORQUE = _kind(
    "torque", (2, 1, -2, 0), "N·m", "lbf·ft", "35 N·m, 26 lbf·ft or 310 lbf·in",
    ("N·m", 1, "newton·metre newton·metres newton·meter newton·meters"),
    ("lbf·ft", _LBF * _FT, "ft·lbf lb·ft ft·lb lbs·ft ft·lbs pound·foot pound·feet foot·pound foot·pounds"),
    ("lbf·in", _LBF * _IN, "in·lbf lb·in in·lb lbs·in in·lbs pound·inch pound·inches inch·pound inch·pounds"),
    ("kgf·m", _G, "m·kgf kp·m m·kp kg·m m·kg"),
    ("kgf·cm", _G / 100, "cm·kgf kp·cm cm·kp kg·cm cm·kg"),
    ("N·cm", Fraction(1, 100)),
    ("N·mm", _MILLI),
    ("kN·m", 1000),
    ("daN·m", 10),
    ("ozf·in", _LBF * _IN / 16, "in·ozf"),
)
STIFFNESS = _kind(
    "stiffness", (0, 1, -2, 0), "N/mm", "lbf/in", "32 N/mm or 183 lbf/in",
    ("N/mm", 1000),
    ("lbf/in", _LBF / _IN, "lb/in lbs/in lbf/inch lb/inch lbs/inch"),
    ("N/m", 1),
    ("kN/mm", 10**6),
    ("N/µm", 10**6, "N/um"),
    ("MN/m", 10**6),
    ("kgf/mm", _G * 1000, "kp/mm kg/mm"),
)
COMPLIANCE = _kind(
    "compliance", (0, -1, 2, 0), "µm/kN", "µin/lbf", "2.5 µm/kN or 0.44 µin/lbf",
    ("µm/kN", _MICRO / 1000, "um/kN"),
    ("µin/lbf", _MICRO * _IN / _LBF, "uin/lbf µin/lb uin/lb"),
    ("mm/N", _MILLI),
    ("mm/kN", _MICRO),
    ("in/lbf", _IN / _LBF, "in/lb"),
)
MASS = _kind(
    "mass", (0, 1, 0, 0), "g", "oz", "412.5 g, 0.4125 kg or 14.55 oz",
    ("g", _MILLI, "gm gram grams gramme grammes"),
    ("oz", _OZ, "ounce ounces"),
    ("kg", 1, "kilogram kilograms kilo kilos"),
    ("lb", _LB, "lbs lbm pound pounds"),
    ("mg", _MICRO),
)
DENSITY = _kind(
    "density", (-3, 1, 0, 0), "kg/m³", "lb/in³", "2700 kg/m³, 2.7 g/cm³ or 0.0975 lb/in³",
    ("kg/m³", 1),
    ("lb/in³", _LB / _IN**3, "lb/cu·in lbm/in³"),
    ("g/cm³", 1000, "g/cc g/ml g/mL kg/dm³ kg/L kg/l"),
    ("lb/ft³", _LB / _FT**3, "lb/cu·ft lbm/ft³"),
)
INERTIA = _kind(
    "moment of inertia", (2, 1, 0, 0), "kg·m²", "lb·ft²", "0.12 kg·m² or 2.85 lb·ft²",
    ("kg·m²", 1),
    ("lb·ft²", _LB * _FT**2, "lbm·ft²"),
    ("kg·cm²", Fraction(1, 10000)),
    ("kg·mm²", _MICRO),
    ("g·cm²", Fraction(1, 10**7)),
    ("lb·in²", _LB * _IN**2, "lbm·in²"),
)
UNBALANCE = _kind(
    "unbalance", (1, 1, 0, 0), "g·mm", "oz·in", "60 g·mm or 0.083 oz·in",
    ("g·mm", _MICRO, "gmm"),
    ("oz·in", _OZ * _IN, "in·oz"),
    ("g·cm", Fraction(1, 10**5)),
    ("kg·mm", _MILLI),
    ("kg·m", 1),
    ("g·in", _MILLI * _IN),
)
TIME = _kind(
    "time", (0, 0, 1, 0), "s", "s", "30 s or 2 min",
    ("s", 1, "sec secs second seconds"),
    ("min", 60, "mins minute minutes"),
    ("h", 3600, "hr hrs hour hours"),
    ("ms", _MILLI, "millisecond milliseconds"),
)
SPEED = _kind(
    "speed", (1, 0, -1, 0), "m/s", "ft/min", "12 m/s, 720 m/min or 2360 ft/min",
    ("m/s", 1),
    ("ft/min", _FT / 60, "fpm sfm sfpm"),
    ("m/min", Fraction(1, 60)),
    ("ft/s", _FT, "fps ft/sec"),
    ("km/h", Fraction(1000, 3600), "kph kmh km/hr"),
    ("mph", _MILE / 3600, "mi/h mile/h miles/h"),
    ("mm/s", _MILLI),
    ("mm/min", _MILLI / 60),
    ("in/min", _IN / 60, "ipm"),
    ("in/s", _IN),
)
ACCELERATION = _kind(
    "acceleration", (1, 0, -2, 0), "m/s²", "ft/s²", "9.81 m/s², 1 g or 32.2 ft/s²",
    ("m/s²", 1, "m/s/s"),
    ("ft/s²", _FT, "ft/s/s"),
    ("g", _G, "gn g_n"),
    ("in/s²", _IN),
    ("mm/s²", _MILLI),
)
ROTATION = _kind(
    "speed of rotation", (0, 0, -1, 0), "1/min", "1/min", "3600 1/min or 60 1/s",
    ("1/min", Fraction(1, 60), "/min min⁻¹ rpm r·p·m rev/min revs/min r/min U/min turns/min turn/min"),
    ("1/s", 1, "/s s⁻¹ rps rev/s revs/s r/s Hz"),
    ("rad/s", 1 / (2 * _PI)),
)
FREQUENCY = _kind(
    "frequency", (0, 0, -1, 0), "Hz", "Hz", "400 Hz",
    ("Hz", 1, "hertz 1/s /s s⁻¹ cycles/s"),
    ("kHz", 1000),
    ("1/min", Fraction(1, 60), "/min min⁻¹ cpm cycles/min"),
)
FEED = _kind(
    "feed", (1, 0, 0, 0), "mm/rev", "in/rev", "0.08 mm/rev or 0.003 in/rev",
    ("mm/rev", _MILLI, "mm mm/r mm/U mm/turn"),
    ("in/rev", _IN, 'in " inch inches in/r ipr in/turn'),
    ("thou/rev", _IN / 1000, "thou thou/r"),
    ("µm/rev", _MICRO, "µm um um/rev"),
)
THREADS = _kind(
    "thread count", (-1, 0, 0, 0), "1/mm", "TPI", "0.8 1/mm or 20 TPI",
    ("1/mm", 1000, "/mm mm⁻¹ threads/mm"),
    ("TPI", 1 / _IN, 't·p·i 1/in /in threads/in threads/inch threads·per·inch turns/in'),
    ("1/cm", 100, "/cm cm⁻¹ threads/cm"),
)
LIFT_VELOCITY = _kind(
    "lift per angle", (1, 0, 0, 0), "mm/°", "in/°", "0.15 mm/° or 0.006 in/°",
    ("mm/°", _MILLI / _DEG, "mm/deg mm/degree"),
    ("in/°", _IN / _DEG, "in/deg in/degree inch/deg"),
    ("thou/°", _IN / 1000 / _DEG, "thou/deg"),
    ("mm/rad", _MILLI),
)
LIFT_ACCELERATION = _kind(
    "lift per angle squared", (1, 0, 0, 0), "mm/°²", "in/°²", "0.006 mm/°² or 0.00024 in/°²",
    ("mm/°²", _MILLI / _DEG**2, "mm/deg²"),
    ("in/°²", _IN / _DEG**2, "in/deg²"),
    ("thou/°²", _IN / 1000 / _DEG**2, "thou/deg²"),
    ("mm/rad²", _MILLI),
)
FLOW = _kind(
    "flow rate", (3, 0, -1, 0), "cm³/min", "in³/min", "20 cm³/min, 0.02 L/min or 1.2 in³/min",
    ("cm³/min", _MICRO / 60, "cc/min ml/min mL/min ccm/min sccm"),
    ("in³/min", _IN**3 / 60, "cu·in/min ci/min"),
    ("cm³/s", _MICRO, "cc/s ml/s mL/s"),
    ("mm³/s", _MILLI**3),
    ("in³/s", _IN**3, "cu·in/s"),
    ("L/min", _LITRE / 60, "l/min lpm dm³/min"),
    ("L/s", _LITRE, "l/s"),
    ("L/h", _LITRE / 3600, "l/h"),
    ("m³/h", Fraction(1, 3600)),
    ("m³/min", Fraction(1, 60)),
    ("m³/s", 1),
    ("ft³/min", _FT**3 / 60, "cu·ft/min cfm"),
    ("US gal/min", _US_GAL / 60, "US·gpm"),
    ("US gal/h", _US_GAL / 3600, "US·gph"),
    ("imp gal/min", _IMP_GAL / 60, "imp·gpm UK·gal/min UK·gpm"),
    ("imp gal/h", _IMP_GAL / 3600, "imp·gph UK·gal/h UK·gph"),
)
MASS_FLOW = _kind(
    "mass flow rate", (0, 1, -1, 0), "g/s", "lb/min", "250 g/s or 33 lb/min",
    ("g/s", _MILLI),
    ("lb/min", _LB / 60, "lbs/min lbm/min"),
    ("kg/s", 1),
    ("kg/min", Fraction(1, 60)),
    ("kg/h", Fraction(1, 3600), "kg/hr"),
    ("g/min", _MILLI / 60),
    ("g/h", _MILLI / 3600),
    ("lb/h", _LB / 3600, "lbs/h lb/hr lbm/h"),
    ("lb/s", _LB),
)
POWER = _kind(
    "power", (2, 1, -3, 0), "kW", "hp", "45 kW, 60 hp or 61 PS",
    ("kW", 1000),
    ("hp", _HP, "bhp HP horsepower"),
    ("W", 1, "watt watts"),
    ("PS", _PS, "cv ch pk"),
)
ENERGY = _kind(
    "energy", (2, 1, -2, 0), "J", "ft·lbf", "120 J or 88.5 ft·lbf",
    ("J", 1, "joule joules W·s"),
    ("ft·lbf", _LBF * _FT, "lbf·ft ft·lb foot·pound foot·pounds"),
    ("kJ", 1000),
    ("BTU", _BTU, "Btu"),
    ("kWh", 3600000, "kW·h"),
    ("Wh", 3600, "W·h"),
)
SPECIFIC_FUEL = _kind(
    "specific fuel consumption", (-2, 0, 2, 0), "g/kWh", "lb/(hp·h)",
    "320 g/kWh or 0.53 lb/(hp·h)",
    ("g/kWh", _MILLI / 3600000, "g/kW·h g/kW/h"),
    ("lb/(hp·h)", _LB / (_HP * 3600), "lb/hp/h lb/hp·hr lbs/hp·h lbs/hp·hr lb/bhp·h lb/bhp·hr"),
    ("kg/J", 1),
)
KINEMATIC_VISCOSITY = _kind(
    "kinematic viscosity", (2, 0, -1, 0), "mm²/s", "mm²/s", "100 mm²/s or 100 cSt",
    ("mm²/s", _MICRO, "cSt centistokes"),
    ("m²/s", 1),
    ("St", Fraction(1, 10000), "stokes cm²/s"),
    ("in²/s", _IN**2),
)
DYNAMIC_VISCOSITY = _kind(
    "dynamic viscosity", (-1, 1, -1, 0), "mPa·s", "mPa·s", "85 mPa·s or 85 cP",
    ("mPa·s", _MILLI, "cP centipoise mN·s/m²"),
    ("Pa·s", 1, "N·s/m²"),
    ("P", Fraction(1, 10), "poise"),
    ("lbf·s/in²", _PSI, "reyn psi·s"),
)
SPECIFIC_HEAT = _kind(
    "specific heat", (2, 0, -2, -1), "J/(kg·K)", "BTU/(lb·°F)", "900 J/(kg·K) or 0.215 BTU/(lb·°F)",
    ("J/(kg·K)", 1, "J/kg/K J/kg·°C"),
    ("BTU/(lb·°F)", _BTU / (_LB * _F), "BTU/lb/°F BTU/lb·F"),
    ("kJ/(kg·K)", 1000, "kJ/kg/K J/g·K kJ/kg·°C"),
)
CONDUCTIVITY = _kind(
    "thermal conductivity", (1, 1, -3, -1), "W/(m·K)", "BTU/(h·ft·°F)",
    "150 W/(m·K) or 87 BTU/(h·ft·°F)",
    ("W/(m·K)", 1, "W/m/K W/m·°C"),
    ("BTU/(h·ft·°F)", _BTU / (3600 * _FT * _F), "BTU/hr·ft·°F BTU/h·ft·F BTU/hr·ft·F BTU/h/ft/°F"),
)
HEAT_TRANSFER = _kind(
    "heat transfer coefficient", (0, 1, -3, -1), "W/(m²·K)", "BTU/(h·ft²·°F)",
    "60 W/(m²·K) or 10.6 BTU/(h·ft²·°F)",
    ("W/(m²·K)", 1, "W/m²/K W/m²·°C"),
    ("BTU/(h·ft²·°F)", _BTU / (3600 * _FT**2 * _F), "BTU/hr·ft²·°F BTU/h·ft²·F BTU/hr·ft²·F BTU/h/ft²/°F"),
)
CONDUCTANCE = _kind(
    "heat per degree", (2, 1, -3, -1), "W/K", "BTU/(h·°F)", "12 W/K or 23 BTU/(h·°F)",
    ("W/K", 1, "W/°C"),
    ("BTU/(h·°F)", _BTU / (3600 * _F), "BTU/hr·°F BTU/h·F BTU/h/°F"),
)
HEAT = _kind(
    "heat flow rate", (2, 1, -3, 0), "W", "BTU/h", "900 W, 0.9 kW or 3070 BTU/h",
    ("W", 1, "watt watts J/s"),
    ("BTU/h", _BTU / 3600, "BTU/hr"),
    ("kW", 1000),
)
LEAK = _kind(
    "leak rate", (2, 1, -3, 0), "Pa·m³/s", "psi·in³/s", "0.02 Pa·m³/s, 0.2 mbar·L/s or 0.18 psi·in³/s",
    ("Pa·m³/s", 1),
    ("psi·in³/s", _PSI * _IN**3),
    ("mbar·L/s", Fraction(1, 10), "mbar·l/s"),
    ("atm·cm³/s", Fraction("0.101325"), "atm·cc/s"),
    ("kPa·L/min", Fraction(1, 60), "kPa·l/min"),
    ("sccm", Fraction("0.101325") / 60),
)

# Spellings that shops use for the unit but that can mean something else: accepted, and said.
_SAID = {
    ("length", "tenth"): "Took a tenth as a ten-thousandth of an inch (0.0001 in).",
    ("length", "tenths"): "Took tenths as ten-thousandths of an inch (0.0001 in).",
    ("length", "mil"): "Took a mil as a thousandth of an inch (0.001 in).",
    ("length", "mils"): "Took mils as thousandths of an inch (0.001 in).",
    **{("force", word): f"Took {word} as pounds-force (lbf)." for word in ("lb", "lbs", "pound", "pounds")},
    ("force", "kg"): "Took kg as kilograms-force (kgf).",
    **{("torque", f"kg·{arm}"): f"Took kg·{arm} as kgf·{arm}." for arm in ("m", "cm")},
    **{("torque", f"{arm}·kg"): f"Took {arm}·kg as kgf·{arm}." for arm in ("m", "cm")},
    ("stiffness", "kg/mm"): "Took kg/mm as kgf/mm.",
    ("pressure", "kg/cm2"): "Took kg/cm² as kgf/cm².",
    ("stress", "kg/mm2"): "Took kg/mm² as kgf/mm².",
    ("flow rate", "sccm"): "Took sccm as cm³/min of gas at 0 °C and 1 atm.",
    ("leak rate", "sccm"): "Took sccm as cm³/min of gas at 0 °C and 1 atm; at 20 °C it is 7 % more throughput.",
}

# Spellings that cannot be decided: refused, with what to write instead.
_GALLON = "may be a US or an imperial gallon", "write US gal or imp gal"
_QUART = "may be a US or an imperial quart", "write US qt or imp qt"
_PINT = "may be a US or an imperial pint", "write US pt or imp pt"
_GALLON_RATE = "may be in US or in imperial gallons", "write US gal/min, imp gal/min or L/min"
_OUNCE = "may be a US or an imperial fluid ounce", "write ml"
_GAUGE = "says gauge or absolute, which is for the name of the field to say", "give the plain unit, such as 36.3 psi or 250 kPa"
_UNDECIDED = {
    "volume": {**dict.fromkeys(("gal", "gallon", "gallons"), _GALLON),
               **dict.fromkeys(("qt", "qts", "quart", "quarts"), _QUART), **dict.fromkeys(("pt", "pts", "pint", "pints"), _PINT),
               **dict.fromkeys(("fl·oz", "floz"), _OUNCE)},
    "flow rate": dict.fromkeys(("gpm", "gph", "gal/min", "gal/h"), _GALLON_RATE),
    "pressure": dict.fromkeys(("psig", "psia", "barg", "bara", "bar·g", "bar·a", "bar·abs"), _GAUGE),
}


# --- Finding a unit by its spelling ------------------------------------------------

_SUPERSCRIPT = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻", "0123456789+-")
_SUBSCRIPT = str.maketrans("₀₁₂₃₄₅₆₇₈₉", "0123456789")
_VULGAR = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5",
    "⅙": "1/6", "⅚": "5/6", "⅐": "1/7", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅑": "1/9", "⅒": "1/10",
}
_PLAIN = str.maketrans({
    **{mark: " " + fraction for mark, fraction in _VULGAR.items()},
    **dict.fromkeys("\t\n\r\u00a0\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000", " "),
    **dict.fromkeys("−‐‑–", "-"),
    **dict.fromkeys("⁄∕", "/"),
    **dict.fromkeys("⋅∙•", "·"),
    **dict.fromkeys("′’‘ʹ´", "'"),
    **dict.fromkeys("″”“ʺ", '"'),
    **dict.fromkeys("º˚", "°"),
    "μ": "µ", "℃": "°C", "℉": "°F", "\u212a": "K",
})
_RAISED_FRACTION = re.compile("([⁰¹²³⁴-⁹]+)[⁄/]([₀-₉]+)")
_RAISED = re.compile("[⁰¹²³⁴-⁹⁺⁻]+")


def _plain(text):
    """One character for each meaning: marks, dashes, spaces and raised digits evened out."""
    text = _RAISED_FRACTION.sub(
        lambda m: f" {m[1].translate(_SUPERSCRIPT)}/{m[2].translate(_SUBSCRIPT)}", text)
    text = _RAISED.sub(lambda m: "^" + m[0].translate(_SUPERSCRIPT), text)
    text = text.translate(_SUBSCRIPT).translate(_PLAIN).replace("''", '"').replace("**", "^")
    return re.sub(" +", " ", text).strip(" \ufeff\u200b\u200e\u200f")  # what a copied text brings along unseen


_JOIN = re.compile(r"\.? ?[-·*×._] ?| ")


def _canonical(plain):
    """A unit as it is looked up: "·" for every join, no brackets, no raised mark, no last full stop."""
    if plain.count("(") == plain.count(")"):
        plain = plain.replace("(", "").replace(")", "")
    plain = re.sub(" ?([/:]) ?", r"\1", plain.replace("^", "").replace("./", "/"))
    plain = plain.removesuffix(".").removeprefix("-")
    return _JOIN.sub("·", plain)


@lru_cache(maxsize=None)
def _spellings(kind):
    """Two tables for a kind: spelling -> unit, and spelling in small letters -> [(spelling, unit)]."""
    exact = {}
    for unit in kind.units:
        for spelling in (unit.symbol, *unit.spellings):
            spelling = _canonical(_plain(spelling))
            for variant in (spelling, spelling.replace("·", "")):
                if variant and exact.setdefault(variant, unit) is not unit:
                    raise ValueError(f"{variant} stands for two units of {kind.name}")
    folded = {}
    for spelling, unit in exact.items():
        folded.setdefault(spelling.lower(), []).append((spelling, unit))
    return exact, folded


@lru_cache(maxsize=None)
def _every_spelling():
    """Every spelling, exactly as written -> the kind it is most at home in: the first
    that has it as a symbol, else the first that has it at all."""
    table = {}
    for kind in KINDS.values():
        for unit in kind.units:
            table.setdefault(_canonical(_plain(unit.symbol)), kind)
    for kind in KINDS.values():
        for spelling in _spellings(kind)[0]:
            table.setdefault(spelling, kind)
    return table


_SHORT_WORD = re.compile(r"(?<![^\W\d_])[mM][^\W\d_]{0,3}(?![^\W\d_])")


def _same_prefix(typed, spelling):
    """Whether folding the case keeps milli and mega apart.

    A short word that begins with m or M keeps its first letter as typed, unless the
    whole is in capitals (MM, MBAR): then it can only be the capital form of the small one.
    """
    if typed.isupper() and sum(map(str.isalpha, typed)) > 1:
        return True
    return all(typed[m.start()] == spelling[m.start()] for m in _SHORT_WORD.finditer(spelling))


def _find(kind, canonical):
    exact, folded = _spellings(kind)
    if canonical in exact:
        return exact[canonical]
    near = folded.get(canonical.lower(), ())
    if len({unit.symbol for _, unit in near}) != 1:
        return None
    return next((unit for spelling, unit in near if _same_prefix(canonical, spelling)), None)


# --- Reading -----------------------------------------------------------------------

@dataclass(frozen=True)
class Entry:
    """What was read: SI value, the unit it was given in, what was taken where the text
    left a choice ("" if nothing), the stated doubt in SI (None if none), the text, and
    whether it named its unit."""

    value: float
    unit: Unit
    note: str
    doubt: float | None
    text: str
    named: bool = True


class EntryError(ValueError):
    """An entry that cannot be read.

    code: empty, not-a-number, several-numbers, two-ways, unknown-unit, wrong-kind, not-finite,
    out-of-range (below absolute zero), too-long, bad-fraction, bad-angle or bad-doubt.  `problem` says what is wrong and
    `accepted` what to give instead, each a clause of plain text without a full stop.
    """

    def __init__(self, code: str, problem: str, accepted: str):
        super().__init__(f"{problem}; {accepted}.")
        self.code = code
        self.problem = problem
        self.accepted = accepted


LONGEST = 100
"""An entry longer than this many characters is refused unread."""


def read(text: str, kind: Kind, unit: Unit | None = None, possible: tuple[float, float] | None = None) -> Entry:
    """Read what a person typed for a quantity of this kind.

    `unit` is taken where the text names none (default: the metric unit of the kind).
    Understood are decimals with point or comma, exponents, spaces between groups of
    three digits, fractions, degrees with minutes and seconds, any usual spelling of a
    unit, and a doubt after ± or +/-.  The doubt takes the value's unit unless it names
    its own; the doubt of a temperature is a difference.

    A choice made for the reader is told in `note`: a fraction without a unit in a
    metric length field is inches.  What cannot be decided raises EntryError, and so does
    everything that is not one number.

    A point is always the decimal mark.  One comma is it too ("37,48"), but before exactly
    three digits it may as well part thousands, and the two differ by a thousand: "1,250" is
    refused unless what it would be in thousands lies outside of what is `possible` (least
    and most, SI).  Two unlike marks ("1,250.5"), or one mark twice ("12,345,678"), can be
    meant in one way only, and are read so; that is told in the note.
    """
    return _read(text, kind, unit or kind.metric, possible)


def quantity(text: str, kind: Kind) -> float:
    """The SI value of a quantity in a declaration or data file, such as "37.9 mm".

    Stricter than `read`, as nobody is there to see a note: the unit must be named
    (unless the kind needs none, or the value is 0) and nothing may be left to choose.
    """
    entry = _read(text, kind, kind.metric)
    if entry.note:
        raise EntryError("not-a-number", f"{quoted(text)} can be read in two ways", _accepted(kind))
    if not entry.named and kind.metric.symbol and (entry.value or kind is TEMPERATURE):  # 0 is 0 in every unit but a temperature's
        raise EntryError("unknown-unit", f"{quoted(text)} names no unit", _accepted(kind))
    return entry.value


def readings(text: str, kinds) -> list[tuple[Kind, Entry]]:
    """Every kind among `kinds` that the text can be meant as, by the unit that it names; the likeliest first.

    A unit written as its own symbol goes before one that is only another spelling (35 lb is a mass before it is a force), then
    the order of `kinds` decides. Where nothing fits, the EntryError says what is wrong with the text itself, if anything is.
    """
    unknown = EntryError("unknown-unit", f"{quoted(text)} names no unit that is known here", f"give a number with its unit, such as {kinds[0].example}")
    found, errors = [], [(3, unknown)]
    for kind in kinds:
        try:
            entry = _read(text, kind, kind.metric)
        except EntryError as error:
            if error.code == "out-of-range":  # −460 °F is not taken for a difference because it cannot be a temperature
                raise
            undecided = error.accepted != _accepted(kind)
            errors.append((0 if undecided else _TELLING.get(error.code, 4), error))
        else:
            found += [(kind, entry)] * entry.named
    if not found:
        raise min(errors, key=lambda ranked: ranked[0])[1]
    return sorted(found, key=lambda pair: not text.rstrip().endswith(pair[1].unit.symbol or " "))


# What says most about a text that no kind can read, first.
_TELLING = {"empty": 0, "too-long": 0, "two-ways": 0, "not-finite": 1, "bad-fraction": 1, "bad-angle": 1, "bad-doubt": 1, "several-numbers": 2, "not-a-number": 2}


_DOUBT = re.compile(r"±|\+ ?/ ?-|\+-")


def _read(text, kind, default, possible=None):
    if not isinstance(text, str):
        raise EntryError("not-a-number", f"{quoted(repr(text))} is not text", _accepted(kind))
    if len(text) > LONGEST:
        raise EntryError("too-long", f"{quoted(text)} is {len(text)} characters long", _accepted(kind))
    plain = _plain(text)
    if not plain:
        raise EntryError("empty", "nothing was given", _accepted(kind))
    parts = _DOUBT.split(plain)
    if len(parts) > 2:
        raise EntryError("bad-doubt", f"{quoted(text)} has more than one ±", _accepted_doubt(kind))
    if len(parts) == 2:
        first, last = parts
        if first.startswith("(") and last.count(")") == 1 and ")" not in first:  # (54.987 ± 0.004) mm
            first, last = first[1:], last.replace(")", " ")
        value, doubt, notes = _with_doubt(text, first.strip(), last.strip(), kind, default, possible)
    else:
        value, doubt = _number(plain, kind, default, possible), None
        notes = value.notes
    number = _to_float(value.number * value.unit.factor + value.unit.offset, text, kind)
    if kind is TEMPERATURE and number < 0:
        raise EntryError("out-of-range", f"{quoted(text)} is below absolute zero", "give −273.15 °C, −459.67 °F, 0 K or more")
    if kind is TEMPERATURE and value.unit.symbol == "K":
        notes = [*notes, f"Took {quoted(text)} as a temperature above absolute zero ({stated(number, default, 2)}), not as a difference."]
    if kind is COUNT and value.number.denominator != 1:
        raise EntryError("not-a-number", f"{quoted(text)} is not a whole number", _accepted(kind))
    return Entry(number, value.unit, " ".join(notes), doubt, text, value.named)


def _with_doubt(text, first, last, kind, default, possible):
    """Value, SI doubt and notes of an entry with a ± in it."""
    if not first or not last:
        raise EntryError("bad-doubt", f"{quoted(text)} needs a number on both sides of the ±", _accepted_doubt(kind))
    value = _number(first, kind, default, possible)
    try:
        doubt = _number(last, kind, value.unit)
    except EntryError as error:
        if error.code in ("not-a-number", "several-numbers"):
            raise EntryError("bad-doubt", f"{quoted(last)} is not a doubt", _accepted_doubt(kind)) from None
        raise
    notes = value.notes + doubt.notes
    if doubt.named and not value.named and doubt.unit != value.unit:
        # "54.987 ± 0.004 mm" on an inch page: the unit at the end is for both.  But in
        # "54.987 ± 4 µm" or "20 ± 1 K" it may well be for the doubt alone.
        if doubt.unit not in (kind.metric, kind.inch):
            raise EntryError(
                "bad-doubt", f"{quoted(text)} does not say which unit {first} is in",
                f"name both, such as {first}{_gap(default)}{default.symbol} ± {last}")
        value = _number(first, kind, doubt.unit, possible)
        notes = value.notes + doubt.notes + [f"Took {doubt.unit.symbol} for both {first} and its doubt."]
    if doubt.number < 0:
        raise EntryError("bad-doubt", f"{quoted(text)} has a doubt below zero", _accepted_doubt(kind))
    return value, _to_float(doubt.number * doubt.unit.factor, text, kind), notes


@dataclass
class _Number:
    number: Fraction  # in the unit
    unit: Unit
    named: bool  # whether the text named the unit
    notes: list[str]


# After the sign, whole numbers with a fraction, or digits with marks and perhaps an exponent.
_NUMBER = re.compile(r"""
    (?P<sign>[+-]?)\ ?
    (?: (?: (?P<whole>[0-9]+) [ -] )? (?P<top>[0-9]+) / (?P<under>[0-9]+) (?![0-9.,/])
      | (?P<digits> [1-9][0-9]{0,2} (?:\ [0-9]{3})+ (?![0-9]) (?:[.,][0-9]*)?
                  | [0-9][0-9.,]*
                  | [.,][0-9]+ )
        (?: [eE](?P<power>[+-]?[0-9]+)
          | \ ?[×x*·]\ ?10 (?: \^(?P<raised>[+-]?[0-9]+) | (?P<signed>[+-][0-9]+) ) )?
    )""", re.VERBOSE)
_GROUPED = re.compile(r"[0-9]{1,3}(?:([.,])[0-9]{3})(?:\1[0-9]{3})*")
_LIST = re.compile(r"[0-9]+\.[0-9]+(?:,[0-9]+\.[0-9]+)+|[0-9]+,[0-9]+(?:\.[0-9]+,[0-9]+)+")
_ENDLESS = re.compile(r"[+-]? ?(?:nan|inf|infinity|∞)(?![a-z])", re.IGNORECASE)
_MORE_NUMBERS = re.compile(r"(?:^|[ ;,/&+x×:|-]|to|and|or)[.,]?[0-9]|['\"°][0-9]|,[ ]|[a-zµ²³]\ [+-]?[0-9]")
_MORE_FRACTION = re.compile(r"[ 0-9]*/ ?[0-9]")
_UNIT_LIKE = re.compile(r"[A-Za-zµ°%‰\"'][A-Za-z0-9µ°%‰\"'/·^ .()*-]{0,23}")
_PROPORTION = re.compile(r"([0-9]+(?:[.,][0-9]+)?) ?: ?([0-9]+(?:[.,][0-9]+)?)")  # 1:10, 8.5 : 1
_INCH_MADE = {"in", "ft", "thou", "tenth", "µin"}


def _number(plain, kind, default, possible=None):
    """One number with or without a unit, from text that `_plain` has evened out."""
    if kind is ANGLE:
        parts = _degrees_minutes_seconds(plain)
        if parts is not None:
            return _Number(parts, kind.metric, True, [])
    if kind is RATIO and (parts := _PROPORTION.fullmatch(plain)):
        over, under = (_decimal(part, plain, kind)[0] for part in parts.groups())
        if under == 0:
            raise EntryError("bad-fraction", f"{quoted(plain)} divides by zero", _accepted(kind))
        return _Number(over / under, kind.metric, True, [])
    match = _NUMBER.match(plain)
    if not match:
        if _ENDLESS.match(plain):
            raise EntryError("not-finite", f"{quoted(plain)} is not a size", _accepted(kind))
        raise EntryError("not-a-number", f"{quoted(plain)} is not a number", _accepted(kind))
    rest = plain[match.end():].strip()
    unit, notes = (_named_unit(plain, rest, kind) if rest else (default, []))
    if match["top"]:
        number = _fraction(match, plain, kind)
        if kind is LENGTH and not rest and default.symbol not in _INCH_MADE:
            unit = kind.inch
            bare = match[0].strip()
            metric = write(float(number * unit.factor) * (-1 if match["sign"] == "-" else 1), default, 3)
            meant = "millimetres were" if default.symbol == "mm" else f"{default.symbol} was"
            notes = [f'Took {bare} as inches ({metric} {default.symbol}); '
                     f'write "{bare} {default.symbol}" if {meant} meant.']
    else:
        power = match["power"] or match["raised"] or match["signed"] or "0"
        if len(power.lstrip("+-").lstrip("0")) > 3:
            raise EntryError("not-finite", f"{quoted(plain)} is beyond all sizes", _accepted(kind))
        size = Fraction(10) ** int(power) * (-1 if match["sign"] == "-" else 1)
        number, said = _decimal(match["digits"], plain, kind, possible and (lambda whole: possible[0] <= whole * size * unit.factor + unit.offset <= possible[1]))
        number *= abs(size)
        notes = said + notes
    return _Number(-number if match["sign"] == "-" else number, unit, bool(rest), notes)


def _fraction(match, plain, kind):
    whole, top, under = (int(match[part] or 0) for part in ("whole", "top", "under"))
    if under == 0:
        raise EntryError("bad-fraction", f"{quoted(plain)} divides by zero", _accepted(kind))
    if match["whole"] and top >= under:
        raise EntryError("bad-fraction", f"{quoted(plain)} has a fraction of one or more behind a whole number",
                         _accepted(kind))
    return whole + Fraction(top, under)


def _decimal(digits, plain, kind, may_be=None):
    """The number and what was taken, from digits with marks; `may_be` tells of a number whether it can be meant (None: any can)."""
    body = digits.replace(" ", "")
    marks = [mark for mark in body if mark in ".,"]
    notes = []
    if " " in digits:
        notes.append(f"Took {digits} as {body.replace(',', '.')}.")
    if len(marks) > 1:  # groups of thousands; the last mark is the decimal one if it differs from the others
        mixed = len(set(marks)) == 2
        head, tail = body.rsplit(marks[-1], 1) if mixed else (body, "")
        if not _GROUPED.fullmatch(head):
            if _LIST.fullmatch(body):
                raise EntryError("several-numbers", f"{quoted(plain)} is more than one number", _accepted(kind))
            raise EntryError("not-a-number", f"{quoted(plain)} is not a number", _accepted(kind))
        body = re.sub("[.,]", "", head) + ("." + tail if mixed else "")
        notes.append(f"Took {digits} as {body}.")
    elif marks == [","] and " " not in digits and _GROUPED.fullmatch(body) and not body.startswith("0"):
        whole, body = body.replace(",", ""), body.replace(",", ".")
        if may_be is None or may_be(Fraction(whole)):
            raise EntryError("two-ways", f"{quoted(digits)} can be read in two ways", f"write {whole} or {body}")
        notes.append(f"Took {digits} as {body}, with a decimal comma.")
    elif not marks and re.fullmatch("0+[1-9][0-9]*", digits) and kind is not COUNT:  # nobody writes a nought before a size but for its point: 0005 for .0005
        raise EntryError("two-ways", f"{quoted(digits)} may have lost its decimal point", f"write it with its point, or {digits.lstrip('0')}")
    return Fraction(body.replace(",", ".").removesuffix(".")), notes


def _named_unit(plain, rest, kind):
    """The unit that the text behind the number names, and what was taken."""
    canonical = _canonical(rest)
    undecided = _UNDECIDED.get(kind.name, {}).get(canonical.lower())
    if undecided:
        raise EntryError("unknown-unit", f"{rest} {undecided[0]}", undecided[1])
    unit = _find(kind, canonical) if canonical else None
    if unit:
        said = _SAID.get((kind.name, canonical)) or _SAID.get((kind.name, canonical.lower()))
        return unit, [said] if said else []
    other = _every_spelling().get(canonical) or next(
        (other for other in KINDS.values() if canonical and _find(other, canonical)), None)
    if other:
        raise EntryError("wrong-kind", f"{rest} is {with_article(other.name)}, and {with_article(kind.name)} belongs here", _accepted(kind))
    if _MORE_FRACTION.match(rest):
        raise EntryError("bad-fraction", f"{quoted(plain)} is not a fraction of whole numbers", _accepted(kind))
    if _MORE_NUMBERS.search(rest):
        raise EntryError("several-numbers", f"{quoted(plain)} is more than one number", _accepted(kind))
    if _UNIT_LIKE.fullmatch(rest) and rest not in ("x", "e", "E"):
        problem = f"{quoted(rest)} is not a unit of {kind.name}"
        if canonical.lower() in _spellings(kind)[1]:
            problem += " as it is written, for capitals matter here"
        raise EntryError("unknown-unit", problem, _accepted(kind))
    raise EntryError("not-a-number", f"{quoted(plain)} is not a number", _accepted(kind))


_SEXAGESIMAL = re.compile(r"""
    (?P<sign>[+-]?)\ ?
    (?: (?P<d>[0-9]+(?:[.,][0-9]+)?)\ ?(?:°|degrees?|degs?|d)\ ? )?
    (?: (?P<m>[0-9]+(?:[.,][0-9]+)?)\ ?(?:'|minutes?|mins?|m)\ ? )?
    (?: (?P<s>[0-9]+(?:[.,][0-9]+)?)\ ?(?:"|seconds?|secs?|s)\ ? )?
    """, re.VERBOSE | re.IGNORECASE)


def _degrees_minutes_seconds(plain):
    """Degrees from two or three of degrees, minutes and seconds; None if the text is not that."""
    match = _SEXAGESIMAL.fullmatch(plain)
    given = [match[part] for part in "dms" if match[part]] if match else []
    if len(given) < 2:
        return None
    wrong = None
    if any("." in part or "," in part for part in given[:-1]):
        wrong = "has decimals before its last part"
    elif match["d"] and match["s"] and not match["m"]:
        wrong = "has seconds but no minutes"
    values = {part: Fraction((match[part] or "0").replace(",", ".")) for part in "dms"}
    if values["s"] >= 60 or (match["d"] and values["m"] >= 60):
        wrong = "has minutes or seconds of 60 or more"
    if wrong:
        raise EntryError("bad-angle", f"{quoted(plain)} {wrong}", _accepted(ANGLE))
    degrees = values["d"] + values["m"] / 60 + values["s"] / 3600
    return -degrees if match["sign"] == "-" else degrees


_BEYOND = 10**30


def _to_float(exact, text, kind):
    # Nothing in a workshop is outside of this in SI units, and inside of it every conversion is safe.
    if exact and not Fraction(1, _BEYOND) < abs(exact) < _BEYOND:
        raise EntryError("not-finite", f"{quoted(text)} is beyond all sizes", _accepted(kind))
    return float(exact)


def with_article(name: str) -> str:
    """A kind's name as it stands in a sentence: a length, an angle."""
    return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"


def _accepted(kind):
    return f"give {with_article(kind.name)} such as {kind.example}"


def _accepted_doubt(kind):
    number = kind.example.split(",")[0].split(" or ")[0]
    return f"give a value and its doubt, such as {number} ± {'1 K' if kind is TEMPERATURE else '0.01'}"


def quoted(text):
    """The text in quotation marks for a message: printable, on one line, 40 characters at most."""
    text = "".join(c if c.isprintable() else " " if c.isspace() else "\ufffd" for c in text[:200]).strip()
    return f'"{text if len(text) <= 40 else text[:39] + "…"}"'


# --- Writing -----------------------------------------------------------------------

def from_unit(number: float, unit: Unit) -> float:
    """SI value of a number in a unit: the float nearest to number × factor + offset."""
    if not isfinite(number):
        return float(number)
    return float(_decimal_of(number) * unit.factor + unit.offset)


def _decimal_of(number):
    """The number that a float was written as: 0.1 is a tenth, not the nearest binary fraction."""
    return Fraction(repr(float(number)))


def to_unit(value: float, unit: Unit) -> float:
    """The number that an SI value is in a unit.

    Of the numbers that stand for the same SI float, a short one (15 digits or fewer) is
    given where there is one, so that 293.15 K is 20.0 °C and a fraction of an inch comes
    back as it was read.
    """
    if not isfinite(value):
        return float(value)
    value = float(value)
    number = float((Fraction(value) - unit.offset) / unit.factor)
    short = float(f"{number:.15g}")
    return short if from_unit(short, unit) == value else number


def write(value: float, unit: Unit, decimals: int) -> str:
    """An SI value as a number in a unit, without the unit's symbol (see `stated`).

    Rounded half to even (ISO 80000-1, rule A) from the decimal that `to_unit` gives, of
    which twelve digits count: a half that arithmetic missed by the last bits is still one,
    and computers whose sines differ there write the same.  The minus sign is "−", digits are not grouped, and zero has no sign.  A value that would
    be written with zeros alone gets one decimal more; if that is zeros again, it is
    below a twentieth of the last decimal asked for and is written as zero.  From 10⁹ on
    a number is written with six digits and a power of ten, "1.23457×10⁹", and so is a small
    one of which more than fifteen decimals are asked for, "2.54×10⁻²²".
    """
    if not isfinite(value):
        raise ValueError(f"{value} cannot be written as a size.")
    number = to_unit(value, unit)
    exact = Decimal(repr(number))
    digits = max(12, exact.adjusted() + decimals + 4)
    if digits < 16:
        exact = Decimal(f"{number:.{digits}g}")
    if abs(exact) >= 10**9 or exact and decimals > 15 and abs(exact) < Decimal("1e-9"):
        mantissa, power = f"{exact:.5e}".split("e")
        if exact.adjusted() < 0:
            mantissa = mantissa.rstrip("0").rstrip(".")
        raised = str(int(power)).translate(str.maketrans("0123456789-", "⁰¹²³⁴⁵⁶⁷⁸⁹⁻"))
        text = f"{mantissa}×10{raised}"
    else:
        decimals = max(0, decimals)
        text = _rounded(exact, decimals)
        if exact and not text.strip("-0."):
            longer = _rounded(exact, decimals + 1)
            text = longer if longer.strip("-0.") else text.lstrip("-")
    return text.replace("-", "−")


def _rounded(exact, decimals):
    return f"{exact.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_EVEN):f}"


def stated(value: float, unit: Unit, decimals: int) -> str:
    """An SI value with its unit, "37.90 mm": no space before ° ′ ″, none behind a bare number."""
    return f"{write(value, unit, decimals)}{_gap(unit)}{unit.symbol}"


def _gap(unit):
    return "" if unit.symbol in ("", "°", "′", "″") else " "


def decimals_of(value: float, unit: Unit, digits: int) -> int:
    """Decimals that show so many significant digits of an SI value in a unit, without needless zeros."""
    return max(0, -Decimal(f"{to_unit(value, unit):.{digits}g}").normalize().as_tuple().exponent)


def decimals_for(unit: Unit, decimals: int, reference: Unit) -> int:
    """Decimals in `unit` that show no less than `decimals` do in `reference`.

    decimals + ⌈log₁₀(unit / reference)⌉, not below 0: 0.01 mm goes with four decimals of
    an inch, 0.001 mm with five.
    """
    ratio = unit.factor / reference.factor
    more = 0
    while Fraction(10) ** more < ratio:
        more += 1
    while Fraction(10) ** (more - 1) >= ratio:
        more -= 1
    return max(0, decimals + more)
