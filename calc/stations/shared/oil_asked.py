"""What every calculator with an oil asks of its data sheet: two points of its viscosity, and its density."""

from calc.core.kinds import DENSITY
from calc.core.working import form
from calc.declare.calculator import given
from calc.stations.shared.forms import DEGREES_C
from calc.stations.shared.oil_at import NU, POINTS

_OF_THE_POINTS = ("oil", POINTS)

COOL_TEMPERATURE = given(
    "Data sheet, cooler point",
    "T_1",
    DEGREES_C,
    hard="-30 to 150 °C",
    usual="20 to 60 °C",
    fold=True,
    when=_OF_THE_POINTS,
    example="40 °C",
)
COOL_VISCOSITY = given(
    "Viscosity at the cooler point",
    "ν_1",
    NU,
    hard="1 to 20000 mm²/s",
    usual="5 to 1000 mm²/s",
    fold=True,
    when=_OF_THE_POINTS,
    example="100 mm²/s",
)
WARM_TEMPERATURE = given(
    "Data sheet, warmer point",
    "T_2",
    DEGREES_C,
    hard="-20 to 180 °C",
    usual="70 to 150 °C",
    fold=True,
    when=_OF_THE_POINTS,
    example="100 °C",
)
WARM_VISCOSITY = given(
    "Viscosity at the warmer point",
    "ν_2",
    NU,
    hard="1 to 2000 mm²/s",
    usual="2 to 50 mm²/s",
    fold=True,
    when=_OF_THE_POINTS,
    example="11.5 mm²/s",
)
DENSITY_AT_15 = given(
    "Density of the oil at 15 °C",
    "ρ_15",
    form(DENSITY, 0),
    hard="700 to 1100 kg/m³",
    usual="820 to 920 kg/m³",
    fold=True,
    assumed=("880 kg/m³", "typical of mineral oil"),
)
