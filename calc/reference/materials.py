"""Materials of the engine's parts: how stiff, how far they grow with heat, how much stress they bear, and how
hot they may get.

The numbers are typical values of generic grades, written down from memory of the usual handbooks and rounded.
A casting in the hand may differ: expansion by a few per cent, stiffness by five, yield strength by a fifth or
more. Where the maker or the supplier of a part gives a value, that value goes before these.

Every temperature is absolute (K), every stress in Pa. Expansion is counted from the 20 °C at which sizes are
stated (ISO 1).
"""

from bisect import bisect_right
from dataclasses import dataclass

REFERENCE = 293.15  # K: 20 °C, the temperature of stated sizes (ISO 1)
COLDEST = 73.15  # K: −200 °C, just below boiling nitrogen; no expansion is offered below
_CELSIUS = 273.15

# Below 20 °C metals shrink less and less per kelvin. The mean coefficient from 20 °C down to ΔT, over the
# coefficient at 20 °C, is 1 + a·ΔT + b·ΔT². One pair serves all: it goes through the middle of the NIST
# cryogenic fits for aluminium alloy, nickel steel, copper–beryllium and austenitic steel (0.92…0.97 at −78
# °C, 0.77…0.85 at −196 °C).
_COLD_A = 5.0e-4  # 1/K
_COLD_B = -2.19e-6  # 1/K²


class OutsideTable(ValueError):
    """A property was asked for at a temperature for which none is held."""


@dataclass(frozen=True)
class Material:
    """One generic grade.

    E            modulus of elasticity at 20 °C, Pa; `modulus_fall` its relative loss per kelvin of warming
    nu           Poisson's ratio
    alpha        mean coefficient of linear expansion from 20 to 100 °C, 1/K, as handbooks print it
    alpha_growth relative growth of the mean coefficient per kelvin of warming above 20 °C
    density      kg/m³
    ultimate     tensile strength at 20 °C, Pa
    yields       0.2 % proof stress in tension (0.1 % for grey iron) against temperature: ((K, Pa), ...),
                 rising in temperature,
                 after long stay at that temperature where the alloy softens with time
    compression  proof stress in compression over that in tension
    conductivity thermal, W/(m·K), between 20 and 200 °C
    limit_temperature  above it the heat treatment is lost, or the part creeps or relaxes, K; None where
                       neither matters here
    brittle      breaks in tension with little or no yielding: judge tension by `ultimate` and a large factor
    """

    id: str
    name: str
    kind: str
    E: float
    modulus_fall: float
    nu: float
    alpha: float
    alpha_growth: float
    density: float
    ultimate: float
    yields: tuple[tuple[float, float], ...]
    conductivity: float
    source: str
    compression: float
    limit_temperature: float | None
    brittle: bool

    @property
    def yield_20(self) -> float:
        """Proof stress in tension at 20 °C, Pa."""
        return self.yields[0][1]

    @property
    def hottest(self) -> float:
        """Highest temperature for which properties are held, K."""
        return self.yields[-1][0]

    @property
    def shear_modulus(self) -> float:
        """G = E / (2(1 + ν)), Pa, at 20 °C (isotropic elasticity)."""
        return self.E / (2 * (1 + self.nu))

    @property
    def alpha_20(self) -> float:
        """Coefficient of expansion at 20 °C itself, 1/K."""
        return self.alpha / (1 + 80 * self.alpha_growth)

    def mean_alpha(self, temperature) -> float:
        """Mean coefficient of linear expansion between 20 °C and `temperature` (K), 1/K.

        Grows with heat and falls in the cold. −200 °C to `hottest`; OutsideTable beyond. Traced numbers give
        a plain float.
        """
        rise = self._inside(temperature) - REFERENCE
        if rise < 0:
            return self.alpha_20 * (1 + _COLD_A * rise + _COLD_B * rise**2)
        return self.alpha_20 * (1 + self.alpha_growth * rise)

    def strain_at(self, temperature) -> float:
        """Free thermal strain ΔL/L on going from 20 °C to `temperature` (K). Range and errors as
        `mean_alpha`."""
        return self.mean_alpha(temperature) * (float(temperature) - REFERENCE)

    def temperature_for(self, strain) -> float:
        """Temperature (K) at which the free thermal strain from 20 °C is `strain`: the reverse of
        `strain_at`.

        OutsideTable where that temperature would lie outside −200 °C … `hottest`.
        """
        strain, low, high = float(strain), COLDEST, self.hottest
        if not self.strain_at(low) <= strain <= self.strain_at(high):
            raise OutsideTable(
                f"{self.name} would have to be colder than {_degrees(low)} or hotter than {_degrees(high)} "
                f"to change its size by {strain * 100:.3g} %; ask for less."
            )
        while high - low > 1e-9:
            middle = (low + high) / 2
            if self.strain_at(middle) < strain:
                low = middle
            else:
                high = middle
        return (low + high) / 2

    def modulus_at(self, temperature) -> float:
        """Modulus of elasticity at `temperature` (K), Pa: straight line from 20 °C. Range and errors as
        `mean_alpha`."""
        return self.E * (1 - self.modulus_fall * (self._inside(temperature) - REFERENCE))

    def yield_at(self, temperature) -> float:
        """Proof stress in tension at `temperature` (K), Pa: straight lines between the values of the table.

        Below 20 °C the value of 20 °C is kept, which is on the safe side (metals gain strength in the cold)
        but says nothing about brittleness. OutsideTable above `hottest`.
        """
        temperature = max(self._inside(temperature), self.yields[0][0])
        after = bisect_right(self.yields, temperature, key=lambda row: row[0])
        if after == len(self.yields):
            return self.yields[-1][1]
        (t0, y0), (t1, y1) = self.yields[after - 1], self.yields[after]
        return y0 + (y1 - y0) * (temperature - t0) / (t1 - t0)

    def compressive_yield_at(self, temperature) -> float:
        """Proof stress in compression at `temperature` (K), Pa. Range and errors as `yield_at`."""
        return self.compression * self.yield_at(temperature)

    def _inside(self, temperature) -> float:
        temperature = float(temperature)
        if not COLDEST <= temperature <= self.hottest:
            raise OutsideTable(
                f"No properties of {self.name} are held at {_degrees(temperature)}; "
                f"give a temperature from {_degrees(COLDEST)} to {_degrees(self.hottest)}."
            )
        return temperature


def _degrees(kelvin: float) -> str:
    return f"{round(kelvin - _CELSIUS, 1):g} °C".replace("-", "−")


def _kelvin(celsius: float | None) -> float | None:
    return None if celsius is None else celsius + _CELSIUS


def _grade(
    id,
    name,
    kind,
    *,
    E,
    fall,
    nu,
    alpha,
    growth,
    density,
    ultimate,
    yields,
    conductivity,
    note,
    compression=1.0,
    limit=None,
    brittle=False,
) -> Material:
    """A row as handbooks print it: GPa, 1e-6/K, MPa, °C; everything else in SI."""
    return Material(
        id=id,
        name=name,
        kind=kind,
        E=E * 1e9,
        modulus_fall=fall * 1e-4,
        nu=nu,
        alpha=alpha * 1e-6,
        alpha_growth=growth * 1e-4,
        density=density,
        ultimate=ultimate * 1e6,
        yields=tuple((t + _CELSIUS, y * 1e6) for t, y in yields),
        conductivity=conductivity,
        source=f"{note} Typical handbook values, from memory.",
        compression=compression,
        limit_temperature=_kelvin(limit),
        brittle=brittle,
    )


_ALL = (
    _grade(
        "al-si-t6",
        "Al–Si casting alloy, T6",
        "heat-treated aluminium casting: heads, cylinders",
        E=72,
        fall=4.6,
        nu=0.33,
        alpha=21.5,
        growth=5.0,
        density=2680,
        ultimate=270,
        conductivity=150,
        limit=200,
        yields=((20, 200), (100, 190), (150, 140), (205, 60), (260, 34), (300, 24)),
        note=(
            "About 7 % Si with magnesium, aged. From 150 °C up the strength is that left after very long"
            " heating (10 000 hours; 356.0-T6, from memory): a new casting bears more for the first hours,"
            " and one that has run hot bears less than 200 MPa when cold again."
        ),
    ),
    _grade(
        "al-si-cu-t6",
        "Al–Si–Cu casting alloy, T6",
        "heat-treated aluminium casting that keeps strength longer in heat: heads",
        E=73,
        fall=4.6,
        nu=0.33,
        alpha=21.5,
        growth=5.0,
        density=2710,
        ultimate=320,
        conductivity=140,
        limit=200,
        yields=((20, 240), (100, 230), (150, 215), (200, 150), (250, 80), (300, 38)),
        note=(
            "About 7 % Si with magnesium and 0.5 % or more copper, aged. From 200 °C up the strength is that"
            " left after long heating: 2 to 11 % under A356 + 0.5 % Cu, T6, conditioned (Modern Casting, July"
            " 2018, p. 39: 269, 235, 163, 84 and 39 MPa at 20, 150, 200, 250 and 300 °C)."
        ),
    ),
    _grade(
        "mg-az91",
        "Magnesium AZ91 casting",
        "magnesium casting: crankcases, gear cases",
        E=45,
        fall=8.0,
        nu=0.35,
        alpha=26.0,
        growth=4.0,
        density=1810,
        ultimate=200,
        conductivity=65,
        limit=100,
        yields=((20, 120), (100, 105), (150, 85), (200, 60)),
        note=(
            "Cast, heavy section, no heat treatment. Under a load that stays it creeps from 100 to 130 °C up"
            " (Metallurgical and Materials Transactions A, 2015, doi 10.1007/s11661-015-2946-9): stressed"
            " fits and bolts lose their grip."
        ),
    ),
    _grade(
        "grey-iron",
        "Grey cast iron, 250 grade",
        "grey iron: flywheels, older seats and guides, cylinders",
        E=110,
        fall=3.0,
        nu=0.26,
        alpha=11.0,
        growth=6.2,
        density=7200,
        ultimate=250,
        conductivity=48,
        yields=((20, 165), (200, 160), (300, 155), (400, 140)),
        compression=1.97,
        brittle=True,
        note="EN 1561 GJL-250 type; 0.1 % proof stress, least value; about 325 MPa in compression.",
    ),
    _grade(
        "ductile-iron",
        "Ductile cast iron, 500-7 grade",
        "ductile iron: crankshafts, cases, carriers",
        E=169,
        fall=3.0,
        nu=0.275,
        alpha=11.3,
        growth=3.6,
        density=7100,
        ultimate=500,
        conductivity=35,
        yields=((20, 320), (200, 300), (300, 285), (400, 240)),
        compression=1.05,
        note="EN 1563 GJS-500-7 type.",
    ),
    _grade(
        "sintered-iron",
        "Sintered iron seat ring",
        "sintered iron alloy: valve seat rings",
        E=125,
        fall=3.0,
        nu=0.26,
        alpha=11.5,
        growth=4.0,
        density=7000,
        ultimate=450,
        conductivity=28,
        yields=((20, 380), (200, 360), (300, 335), (400, 290), (500, 230)),
        compression=1.3,
        brittle=True,
        note=(
            "Pressed and sintered alloy steel of about 7 g/cm³, not or little infiltrated; makers' grades"
            " differ widely: E 100–160 GPa, expansion 10–13, full copper infiltration up to 16."
        ),
    ),
    _grade(
        "high-chrome-iron",
        "High-chrome iron seat ring",
        "cast high-chromium iron: exhaust seat rings",
        E=205,
        fall=3.0,
        nu=0.29,
        alpha=10.8,
        growth=4.0,
        density=7600,
        ultimate=650,
        conductivity=20,
        yields=((20, 600), (300, 560), (400, 520), (500, 450)),
        compression=1.3,
        brittle=True,
        note="Cast, hardened, 13–20 % Cr.",
    ),
    _grade(
        "cobalt-alloy",
        "Cobalt hard-facing alloy",
        "cobalt–chromium–tungsten: exhaust seat rings and valve faces",
        E=210,
        fall=2.5,
        nu=0.30,
        alpha=11.4,
        growth=7.9,
        density=8400,
        ultimate=800,
        conductivity=15,
        yields=((20, 540), (200, 480), (400, 430), (600, 370)),
        compression=1.2,
        brittle=True,
        note="About 28 % Cr, 4–5 % W, 1 % C.",
    ),
    _grade(
        "bronze",
        "Tin bronze, guide stock",
        "phosphor bronze: valve guides, small-end bushes",
        E=110,
        fall=4.0,
        nu=0.34,
        alpha=17.6,
        growth=3.0,
        density=8800,
        ultimate=450,
        conductivity=55,
        yields=((20, 300), (100, 290), (200, 260), (250, 230), (300, 170)),
        note="Drawn CuSn8 type; cast tin bronze bears half as much.",
    ),
    _grade(
        "aluminium-bronze",
        "Aluminium bronze",
        "nickel–aluminium bronze: guides, seat rings",
        E=120,
        fall=4.0,
        nu=0.33,
        alpha=16.5,
        growth=3.0,
        density=7600,
        ultimate=640,
        conductivity=42,
        yields=((20, 280), (100, 275), (200, 265), (300, 240)),
        note="CuAl10Ni5Fe4 type, the weaker of cast and wrought.",
    ),
    _grade(
        "copper-nickel-silicon",
        "Copper–nickel–silicon, no beryllium",
        "age-hardened copper alloy: seat rings, guides",
        E=138,
        fall=3.5,
        nu=0.34,
        alpha=17.0,
        growth=3.0,
        density=8850,
        ultimate=620,
        conductivity=200,
        limit=400,
        yields=((20, 500), (200, 460), (300, 410), (400, 300)),
        note="CuNi2Si(Cr) type, hardened by ageing near 450 °C.",
    ),
    _grade(
        "forged-steel",
        "Forged steel, quenched and tempered",
        "crankshafts, connecting rods, studs",
        E=207,
        fall=2.7,
        nu=0.29,
        alpha=11.7,
        growth=4.5,
        density=7850,
        ultimate=850,
        conductivity=43,
        limit=450,
        yields=((20, 650), (200, 590), (300, 540), (400, 480)),
        note="Low-alloy steel of about 0.4 % carbon.",
    ),
    _grade(
        "spring-steel",
        "Valve-spring steel",
        "oil-tempered chromium–vanadium or chromium–silicon wire",
        E=206,
        fall=2.7,
        nu=0.30,
        alpha=11.6,
        growth=4.5,
        density=7850,
        ultimate=1800,
        conductivity=40,
        limit=200,
        yields=((20, 1500), (100, 1450), (200, 1300)),
        note="Wire of 3–5 mm. Above the limit a loaded spring takes a set.",
    ),
    _grade(
        "valve-steel",
        "Valve steel, martensitic",
        "chromium–silicon steel: intake valves, stems of two-piece valves",
        E=210,
        fall=2.7,
        nu=0.29,
        alpha=10.9,
        growth=1.4,
        density=7700,
        ultimate=900,
        conductivity=21,
        yields=((20, 700), (300, 600), (500, 400), (600, 240)),
        note="EN 10090 X45CrSi9-3 type.",
    ),
    _grade(
        "austenitic-valve-steel",
        "Valve steel, austenitic",
        "chromium–manganese–nickel steel with nitrogen: exhaust valves",
        E=215,
        fall=2.6,
        nu=0.29,
        alpha=14.5,
        growth=6.3,
        density=7700,
        ultimate=950,
        conductivity=14.5,
        yields=((20, 580), (300, 440), (500, 350), (700, 290)),
        note="EN 10090 X53CrMnNiN21-9 type.",
    ),
    _grade(
        "bearing-steel",
        "Bearing steel, hardened",
        "through-hardened chromium steel: pins, races, lifter parts",
        E=208,
        fall=2.7,
        nu=0.30,
        alpha=11.8,
        growth=4.5,
        density=7830,
        ultimate=2200,
        conductivity=45,
        limit=150,
        yields=((20, 1700), (100, 1650), (150, 1600)),
        brittle=True,
        note="100Cr6 type, 60–64 HRC. Above the limit it softens and changes size.",
    ),
    _grade(
        "brass",
        "Brass, free-cutting",
        "copper–zinc–lead: fittings, sheet inserts",
        E=100,
        fall=4.0,
        nu=0.34,
        alpha=20.3,
        growth=3.0,
        density=8450,
        ultimate=400,
        conductivity=120,
        yields=((20, 250), (100, 240), (200, 190), (250, 140)),
        note="CuZn39Pb3 type, half hard.",
    ),
)

MATERIALS: dict[str, Material] = {m.id: m for m in _ALL}


def material(id: str) -> Material:
    """The material of that id. ValueError naming those offered, where there is none."""
    try:
        return MATERIALS[id]
    except KeyError:
        raise ValueError(f"No material is called {id!r}; choose one of {', '.join(MATERIALS)}.") from None
