"""Kinds of quantity and their units, with exact factors.

Everything inside the calculators is in SI base units as a float: metres, kilograms,
seconds, kelvin, radians, and turns per second for rotation.  Here stands what another
unit is turned into those with and back: see `calc.core.reading` and `calc.core.writing`.

Factors are exact fractions built from the definitions in NIST SP 811, appendix B: inch 0.0254 m, pound
0.45359237 kg, standard gravity 9.80665 m/s², conventional mercury 13 595.1 kg/m³, US gallon 231 in³ (a quart
is its fourth, a pint its eighth part), imperial gallon 4.54609 L, the horsepower of 550 ft·lbf/s and the
International Table BTU of 1055.05585262 J.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any


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

    def __hash__(self) -> int:  # hashing the fractions would cost more than everything else here
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

    def __hash__(self) -> int:
        return hash(self.name)

    def unit(self, system: str) -> Unit:
        """The unit of display in a system, "metric" or "inch"."""
        if system not in ("metric", "inch"):
            raise ValueError(f'"{system}" is not a system of units; give metric or inch.')
        return self.metric if system == "metric" else self.inch


KINDS: dict[str, Kind] = {}


def _kind(
    name: str, dims: tuple[int, int, int, int], metric: str, inch: str, example: str, *rows: tuple[Any, ...]
) -> Kind:
    """Make a kind from rows of (symbol, factor, other spellings, offset)."""
    units = tuple(
        Unit(
            row[0],
            Fraction(row[1]),
            Fraction(row[3]) if len(row) > 3 else Fraction(0),
            tuple(row[2].split()) if len(row) > 2 else (),
        )
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
    "length",
    (1, 0, 0, 0),
    "mm",
    "in",
    "37.48 mm, 1.4756 in or 1 31/64 in",
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
    "roughness",
    (1, 0, 0, 0),
    "µm",
    "µin",
    "0.8 µm or 32 µin",
    ("µm", _MICRO, "um micron microns micrometre micrometres micrometer micrometers"),
    ("µin", _IN / 1000000, "uin microinch microinches"),
)
AREA = _kind(
    "area",
    (2, 0, 0, 0),
    "mm²",
    "in²",
    "450 mm² or 0.7 in²",
    ("mm²", _MILLI**2, "sq·mm"),
    ("in²", _IN**2, "sq·in sq·inch sq·inches"),
    ("cm²", Fraction(1, 10000), "sq·cm"),
    ("m²", 1, "sq·m"),
    ("ft²", _FT**2, "sq·ft"),
)
VOLUME = _kind(
    "volume",
    (3, 0, 0, 0),
    "cm³",
    "in³",
    "52.5 cm³, 52.5 ml or 3.2 in³",
    ("cm³", _MICRO, "cc ccm ml mL cu·cm millilitre millilitres milliliter milliliters"),
    ("in³", _IN**3, "cu·in ci cu·inch cu·inches"),
    ("mm³", _MILLI**3, "cu·mm"),
    ("L", _LITRE, "l litre litres liter liters dm³"),
    ("m³", 1, "cu·m"),
    ("ft³", _FT**3, "cu·ft"),
    ("US gal", _US_GAL, "US·gallon US·gallons gal·US gal·(US)"),
    (
        "imp gal",
        _IMP_GAL,
        (
            "imp·gallon imp·gallons imperial·gal imperial·gallon imperial·gallons "
            "UK·gal UK·gallon UK·gallons gal·UK gal·imp"
        ),
    ),
    ("US qt", _US_GAL / 4, "US·quart US·quarts qt·US qt·(US)"),
    (
        "imp qt",
        _IMP_GAL / 4,
        (
            "imp·quart imp·quarts imperial·qt imperial·quart imperial·quarts UK·qt UK·quart UK·quarts qt·UK"
            " qt·imp"
        ),
    ),
    ("US pt", _US_GAL / 8, "US·pint US·pints pt·US pt·(US)"),
    (
        "imp pt",
        _IMP_GAL / 8,
        "imp·pint imp·pints imperial·pt imperial·pint imperial·pints UK·pt UK·pint UK·pints pt·UK pt·imp",
    ),
)
SECOND_MOMENT = _kind(
    "second moment of area",
    (4, 0, 0, 0),
    "mm⁴",
    "in⁴",
    "1200 mm⁴ or 0.003 in⁴",
    ("mm⁴", _MILLI**4),
    ("in⁴", _IN**4),
    ("cm⁴", Fraction(1, 10**8)),
)
ANGLE = _kind(
    "angle",
    (0, 0, 0, 0),
    "°",
    "°",
    "45.5° or 45° 30' 36\"",
    ("°", _DEG, "deg degs degree degrees d"),
    ("′", _DEG / 60, "' min minute minutes arcmin arcminute arcminutes"),
    ("″", _DEG / 3600, '" sec second seconds arcsec arcsecond arcseconds'),
    ("rad", 1, "radian radians"),
    ("mrad", _MILLI, "milliradian milliradians"),
)
RATIO = _kind(
    "ratio",
    (0, 0, 0, 0),
    "",
    "",
    "0.25, 25 % or 1/4",
    ("", 1, ":1"),
    ("%", Fraction(1, 100), "percent per·cent pct"),
    ("‰", _MILLI, "permille per·mille"),
    ("ppm", _MICRO),
)
SLOPE = _kind(
    "slope",
    (0, 0, 0, 0),
    "mm/100 mm",
    "thou/in",
    "0.02 mm/100 mm, 0.2 mm/m or 0.2 thou/in",
    ("mm/100 mm", Fraction(1, 100), "mm·per·100·mm"),
    ("thou/in", _MILLI, 'thou/inch thou/" thou·per·in thou·per·inch'),
    ("mm/m", _MILLI, "mm·per·m"),
    ("µm/mm", _MILLI, "um/mm"),
    ("mm/mm", 1),
    ("in/in", 1, "in·per·in inch/inch"),
    ("in/ft", Fraction(1, 12), "in·per·ft inch/ft inch/foot"),
)
COUNT = _kind("count", (0, 0, 0, 0), "", "", "4", ("", 1, "off pcs pieces"))
TEMPERATURE = _kind(
    "temperature",
    (0, 0, 0, 1),
    "°C",
    "°F",
    "20 °C or 68 °F",
    ("°C", 1, "C degC deg·C celsius", "273.15"),
    ("°F", _F, "F degF deg·F fahrenheit", Fraction("459.67") * _F),
    ("K", 1, "kelvin"),
)
TEMPERATURE_DIFFERENCE = _kind(
    "temperature difference",
    (0, 0, 0, 1),
    "K",
    "°F",
    "15 K, 15 °C or 27 °F",
    ("K", 1, "kelvin °C C C° degC deg·C celsius"),
    ("°F", _F, "F F° degF deg·F fahrenheit"),
)
EXPANSION = _kind(
    "thermal expansion",
    (0, 0, 0, -1),
    "µm/(m·K)",
    "µin/(in·°F)",
    "22.5 µm/(m·K), 22.5e-6 1/K or 12.5 µin/(in·°F)",
    (
        "µm/(m·K)",
        _MICRO,
        "um/m·K µm/m/K um/m/K µm/m·°C um/m·°C µm/m/°C um/m/°C µm/m·C um/m·C 10⁻⁶/K 10⁻⁶/°C ppm/K ppm/°C",
    ),
    ("µin/(in·°F)", _MICRO / _F, "uin/in·°F µin/in/°F uin/in/°F µin/in·F uin/in·F 10⁻⁶/°F ppm/°F"),
    ("1/K", 1, "/K K⁻¹ 1/°C /°C m/m·K mm/mm·K"),
    ("1/°F", 1 / _F, "/°F in/in·°F in/in·F"),
)
PRESSURE = _kind(
    "pressure",
    (-1, 1, -2, 0),
    "kPa",
    "psi",
    "250 kPa, 2.5 bar or 36.3 psi",
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
    "stress",
    (-1, 1, -2, 0),
    "MPa",
    "ksi",
    "180 MPa, 180 N/mm² or 26.1 ksi",
    ("MPa", 10**6, "N/mm²"),
    ("ksi", 1000 * _PSI, "kpsi"),
    ("psi", _PSI, "lbf/in² lb/in² lbf/sq·in"),
    ("Pa", 1, "N/m²"),
    ("kPa", 1000),
    ("GPa", 10**9, "kN/mm²"),
    ("kgf/mm²", _G * 10**6, "kp/mm² kg/mm²"),
)
MODULUS = _kind(
    "elastic modulus",
    (-1, 1, -2, 0),
    "GPa",
    "Mpsi",
    "72 GPa, 72000 N/mm² or 10.4 Mpsi",
    ("GPa", 10**9, "kN/mm²"),
    ("Mpsi", 10**6 * _PSI, "Msi"),
    ("MPa", 10**6, "N/mm²"),
    ("psi", _PSI, "lbf/in² lb/in²"),
    ("ksi", 1000 * _PSI),
    ("Pa", 1, "N/m²"),
)
PRESSURE_RATE = _kind(
    "pressure change rate",
    (-1, 1, -3, 0),
    "kPa/min",
    "psi/min",
    "2 kPa/min or 0.3 psi/min",
    ("kPa/min", Fraction(1000, 60)),
    ("psi/min", _PSI / 60),
    ("Pa/s", 1),
    ("mbar/min", Fraction(100, 60)),
    ("bar/min", Fraction(10**5, 60)),
    ("inHg/min", _HG * _IN / 60),
    ("mmHg/min", _HG / 60000),
)
FORCE = _kind(
    "force",
    (1, 1, -2, 0),
    "N",
    "lbf",
    "450 N, 46 kgf or 101 lbf",
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
    "torque",
    (2, 1, -2, 0),
    "N·m",
    "lbf·ft",
    "35 N·m, 26 lbf·ft or 310 lbf·in",
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
    "stiffness",
    (0, 1, -2, 0),
    "N/mm",
    "lbf/in",
    "32 N/mm or 183 lbf/in",
    ("N/mm", 1000),
    ("lbf/in", _LBF / _IN, "lb/in lbs/in lbf/inch lb/inch lbs/inch"),
    ("N/m", 1),
    ("kN/mm", 10**6),
    ("N/µm", 10**6, "N/um"),
    ("MN/m", 10**6),
    ("kgf/mm", _G * 1000, "kp/mm kg/mm"),
)
COMPLIANCE = _kind(
    "compliance",
    (0, -1, 2, 0),
    "µm/kN",
    "µin/lbf",
    "2.5 µm/kN or 0.44 µin/lbf",
    ("µm/kN", _MICRO / 1000, "um/kN"),
    ("µin/lbf", _MICRO * _IN / _LBF, "uin/lbf µin/lb uin/lb"),
    ("mm/N", _MILLI),
    ("mm/kN", _MICRO),
    ("in/lbf", _IN / _LBF, "in/lb"),
)
MASS = _kind(
    "mass",
    (0, 1, 0, 0),
    "g",
    "oz",
    "412.5 g, 0.4125 kg or 14.55 oz",
    ("g", _MILLI, "gm gram grams gramme grammes"),
    ("oz", _OZ, "ounce ounces"),
    ("kg", 1, "kilogram kilograms kilo kilos"),
    ("lb", _LB, "lbs lbm pound pounds"),
    ("mg", _MICRO),
)
DENSITY = _kind(
    "density",
    (-3, 1, 0, 0),
    "kg/m³",
    "lb/in³",
    "2700 kg/m³, 2.7 g/cm³ or 0.0975 lb/in³",
    ("kg/m³", 1),
    ("lb/in³", _LB / _IN**3, "lb/cu·in lbm/in³"),
    ("g/cm³", 1000, "g/cc g/ml g/mL kg/dm³ kg/L kg/l"),
    ("lb/ft³", _LB / _FT**3, "lb/cu·ft lbm/ft³"),
)
INERTIA = _kind(
    "moment of inertia",
    (2, 1, 0, 0),
    "kg·m²",
    "lb·ft²",
    "0.12 kg·m² or 2.85 lb·ft²",
    ("kg·m²", 1),
    ("lb·ft²", _LB * _FT**2, "lbm·ft²"),
    ("kg·cm²", Fraction(1, 10000)),
    ("kg·mm²", _MICRO),
    ("g·cm²", Fraction(1, 10**7)),
    ("lb·in²", _LB * _IN**2, "lbm·in²"),
)
UNBALANCE = _kind(
    "unbalance",
    (1, 1, 0, 0),
    "g·mm",
    "oz·in",
    "60 g·mm or 0.083 oz·in",
    ("g·mm", _MICRO, "gmm"),
    ("oz·in", _OZ * _IN, "in·oz"),
    ("g·cm", Fraction(1, 10**5)),
    ("kg·mm", _MILLI),
    ("kg·m", 1),
    ("g·in", _MILLI * _IN),
)
TIME = _kind(
    "time",
    (0, 0, 1, 0),
    "s",
    "s",
    "30 s or 2 min",
    ("s", 1, "sec secs second seconds"),
    ("min", 60, "mins minute minutes"),
    ("h", 3600, "hr hrs hour hours"),
    ("ms", _MILLI, "millisecond milliseconds"),
)
SPEED = _kind(
    "speed",
    (1, 0, -1, 0),
    "m/s",
    "ft/min",
    "12 m/s, 720 m/min or 2360 ft/min",
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
BALANCE_GRADE = _kind("balance quality grade", (1, 0, -1, 0), "mm/s", "mm/s", "6.3 mm/s", ("mm/s", _MILLI))
ACCELERATION = _kind(
    "acceleration",
    (1, 0, -2, 0),
    "m/s²",
    "ft/s²",
    "9.81 m/s², 1 g or 32.2 ft/s²",
    ("m/s²", 1, "m/s/s"),
    ("ft/s²", _FT, "ft/s/s"),
    ("g", _G, "gn g_n"),
    ("in/s²", _IN),
    ("mm/s²", _MILLI),
)
ROTATION = _kind(
    "speed of rotation",
    (0, 0, -1, 0),
    "1/min",
    "1/min",
    "3600 1/min or 60 1/s",
    ("1/min", Fraction(1, 60), "/min min⁻¹ rpm r·p·m rev/min revs/min r/min U/min turns/min turn/min"),
    ("1/s", 1, "/s s⁻¹ rps rev/s revs/s r/s Hz"),
    ("rad/s", 1 / (2 * _PI)),
)
FREQUENCY = _kind(
    "frequency",
    (0, 0, -1, 0),
    "Hz",
    "Hz",
    "400 Hz",
    ("Hz", 1, "hertz 1/s /s s⁻¹ cycles/s"),
    ("kHz", 1000),
    ("1/min", Fraction(1, 60), "/min min⁻¹ cpm cycles/min"),
)
FEED = _kind(
    "feed",
    (1, 0, 0, 0),
    "mm/rev",
    "in/rev",
    "0.08 mm/rev or 0.003 in/rev",
    ("mm/rev", _MILLI, "mm mm/r mm/U mm/turn"),
    ("in/rev", _IN, 'in " inch inches in/r ipr in/turn'),
    ("thou/rev", _IN / 1000, "thou thou/r"),
    ("µm/rev", _MICRO, "µm um um/rev"),
)
THREADS = _kind(
    "thread count",
    (-1, 0, 0, 0),
    "1/mm",
    "TPI",
    "0.8 1/mm or 20 TPI",
    ("1/mm", 1000, "/mm mm⁻¹ threads/mm"),
    ("TPI", 1 / _IN, "t·p·i 1/in /in threads/in threads/inch threads·per·inch turns/in"),
    ("1/cm", 100, "/cm cm⁻¹ threads/cm"),
)
LIFT_VELOCITY = _kind(
    "lift per angle",
    (1, 0, 0, 0),
    "mm/°",
    "in/°",
    "0.15 mm/° or 0.006 in/°",
    ("mm/°", _MILLI / _DEG, "mm/deg mm/degree"),
    ("in/°", _IN / _DEG, "in/deg in/degree inch/deg"),
    ("thou/°", _IN / 1000 / _DEG, "thou/deg"),
    ("mm/rad", _MILLI),
)
LIFT_ACCELERATION = _kind(
    "lift per angle squared",
    (1, 0, 0, 0),
    "mm/°²",
    "in/°²",
    "0.006 mm/°² or 0.00024 in/°²",
    ("mm/°²", _MILLI / _DEG**2, "mm/deg²"),
    ("in/°²", _IN / _DEG**2, "in/deg²"),
    ("thou/°²", _IN / 1000 / _DEG**2, "thou/deg²"),
    ("mm/rad²", _MILLI),
)
FLOW = _kind(
    "flow rate",
    (3, 0, -1, 0),
    "cm³/min",
    "in³/min",
    "20 cm³/min, 0.02 L/min or 1.2 in³/min",
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
    "mass flow rate",
    (0, 1, -1, 0),
    "g/s",
    "lb/min",
    "250 g/s or 33 lb/min",
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
    "power",
    (2, 1, -3, 0),
    "kW",
    "hp",
    "45 kW, 60 hp or 61 PS",
    ("kW", 1000),
    ("hp", _HP, "bhp HP horsepower"),
    ("W", 1, "watt watts"),
    ("PS", _PS, "cv ch pk"),
)
ENERGY = _kind(
    "energy",
    (2, 1, -2, 0),
    "J",
    "ft·lbf",
    "120 J or 88.5 ft·lbf",
    ("J", 1, "joule joules W·s"),
    ("ft·lbf", _LBF * _FT, "lbf·ft ft·lb foot·pound foot·pounds"),
    ("kJ", 1000),
    ("BTU", _BTU, "Btu"),
    ("kWh", 3600000, "kW·h"),
    ("Wh", 3600, "W·h"),
)
SPECIFIC_FUEL = _kind(
    "specific fuel consumption",
    (-2, 0, 2, 0),
    "g/kWh",
    "lb/(hp·h)",
    "320 g/kWh or 0.53 lb/(hp·h)",
    ("g/kWh", _MILLI / 3600000, "g/kW·h g/kW/h"),
    ("lb/(hp·h)", _LB / (_HP * 3600), "lb/hp/h lb/hp·hr lbs/hp·h lbs/hp·hr lb/bhp·h lb/bhp·hr"),
    ("kg/J", 1),
)
KINEMATIC_VISCOSITY = _kind(
    "kinematic viscosity",
    (2, 0, -1, 0),
    "mm²/s",
    "mm²/s",
    "100 mm²/s or 100 cSt",
    ("mm²/s", _MICRO, "cSt centistokes"),
    ("m²/s", 1),
    ("St", Fraction(1, 10000), "stokes cm²/s"),
    ("in²/s", _IN**2),
)
DYNAMIC_VISCOSITY = _kind(
    "dynamic viscosity",
    (-1, 1, -1, 0),
    "mPa·s",
    "mPa·s",
    "85 mPa·s or 85 cP",
    ("mPa·s", _MILLI, "cP centipoise mN·s/m²"),
    ("Pa·s", 1, "N·s/m²"),
    ("P", Fraction(1, 10), "poise"),
    ("lbf·s/in²", _PSI, "reyn psi·s"),
)
SPECIFIC_HEAT = _kind(
    "specific heat",
    (2, 0, -2, -1),
    "J/(kg·K)",
    "BTU/(lb·°F)",
    "900 J/(kg·K) or 0.215 BTU/(lb·°F)",
    ("J/(kg·K)", 1, "J/kg/K J/kg·°C"),
    ("BTU/(lb·°F)", _BTU / (_LB * _F), "BTU/lb/°F BTU/lb·F"),
    ("kJ/(kg·K)", 1000, "kJ/kg/K J/g·K kJ/kg·°C"),
)
CONDUCTIVITY = _kind(
    "thermal conductivity",
    (1, 1, -3, -1),
    "W/(m·K)",
    "BTU/(h·ft·°F)",
    "150 W/(m·K) or 87 BTU/(h·ft·°F)",
    ("W/(m·K)", 1, "W/m/K W/m·°C"),
    ("BTU/(h·ft·°F)", _BTU / (3600 * _FT * _F), "BTU/hr·ft·°F BTU/h·ft·F BTU/hr·ft·F BTU/h/ft/°F"),
)
HEAT_TRANSFER = _kind(
    "heat transfer coefficient",
    (0, 1, -3, -1),
    "W/(m²·K)",
    "BTU/(h·ft²·°F)",
    "60 W/(m²·K) or 10.6 BTU/(h·ft²·°F)",
    ("W/(m²·K)", 1, "W/m²/K W/m²·°C"),
    ("BTU/(h·ft²·°F)", _BTU / (3600 * _FT**2 * _F), "BTU/hr·ft²·°F BTU/h·ft²·F BTU/hr·ft²·F BTU/h/ft²/°F"),
)
CONDUCTANCE = _kind(
    "heat per degree",
    (2, 1, -3, -1),
    "W/K",
    "BTU/(h·°F)",
    "12 W/K or 23 BTU/(h·°F)",
    ("W/K", 1, "W/°C"),
    ("BTU/(h·°F)", _BTU / (3600 * _F), "BTU/hr·°F BTU/h·F BTU/h/°F"),
)
HEAT = _kind(
    "heat flow rate",
    (2, 1, -3, 0),
    "W",
    "BTU/h",
    "900 W, 0.9 kW or 3070 BTU/h",
    ("W", 1, "watt watts J/s"),
    ("BTU/h", _BTU / 3600, "BTU/hr"),
    ("kW", 1000),
)
LEAK = _kind(
    "leak rate",
    (2, 1, -3, 0),
    "Pa·m³/s",
    "psi·in³/s",
    "0.02 Pa·m³/s, 0.2 mbar·L/s or 0.18 psi·in³/s",
    ("Pa·m³/s", 1),
    ("psi·in³/s", _PSI * _IN**3),
    ("mbar·L/s", Fraction(1, 10), "mbar·l/s"),
    ("atm·cm³/s", Fraction("0.101325"), "atm·cc/s"),
    ("kPa·L/min", Fraction(1, 60), "kPa·l/min"),
    ("sccm", Fraction("0.101325") / 60),
)

# Spellings that shops use for the unit but that can mean something else: accepted, and said.
