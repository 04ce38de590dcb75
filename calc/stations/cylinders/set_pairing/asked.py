"""What is asked of parts that are to be paired, or of which some are to be chosen that belong together."""

from typing import Any

from calc.core.kinds import FORCE, MASS, RATIO, VOLUME
from calc.core.working import Form, Number, form
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, limit
from calc.stations.shared.forms import SIZE

PAIR, MASSES, VOLUMES, FORCES = "pair", "masses", "volumes", "forces"
BORES, PARTS = ("1", "2", "3", "4"), ("A", "B", "C", "D", "E", "F", "G", "H")
GRAMS, CC, LOAD = form(MASS, 1), form(VOLUME, 1), form(FORCE, 0)


def _offered(
    label: str, first: str, second: str, shape: Form, hard: str, of: str, tool: str, example: str
) -> Any:
    """Parts of which some are chosen: one reading of each, or two."""
    columns = (
        column(first, f"{of}_1", shape, hard=hard),
        column(second, f"{of}_2", shape, hard=hard, optional=True),
    )
    return grid(
        label,
        rows=PARTS,
        columns=columns,
        least=2,
        tool=tool,
        when=("what", {"m": MASSES, "V": VOLUMES, "F": FORCES}[of]),
        hint="All that are at hand, more than are needed too. The second reading may stay empty for all.",
        example=example,
    )


def _apart(label: str, shape: Form, symbol: str, hard: str, assumed: str, what: str) -> Any:
    return given(
        f"{label} may differ by",
        symbol,
        shape,
        hard=hard,
        assumed=(assumed, "common practice, no source"),
        when=("what", what),
    )


def _clearance(words: str, symbol: str, which: str) -> Any:
    return limit(
        words,
        symbol,
        SIZE,
        feature="piston.clearance",
        which=which,
        hard="-0.5 to 1 mm",
        usual="0 to 0.2 mm",
        when=("what", PAIR),
        hint="The piston's; for other parts type theirs.",
    )


class In(Inputs):
    what: str = choice(
        "Asked is",
        {
            PAIR: "which part goes into which bore",
            MASSES: "which belong together by weight: rods, pistons",
            VOLUMES: "which belong together by volume: chambers",
            FORCES: "which belong together by load: springs",
        },
        default=PAIR,
    )
    bores: Rows = grid(
        "Bores",
        rows=BORES,
        columns=(column("Bore", "D", SIZE, hard="1 to 300 mm"),),
        least=2,
        tool="a bore gauge set in a ring",
        when=("what", PAIR),
        hint="Each where it is smallest.",
        example="88.012 | 88.004 | 88.016 | 88.008",
    )
    parts: Rows = grid(
        "Parts that go in",
        rows=PARTS,
        columns=(column("Outside", "d", SIZE, hard="1 to 300 mm"),),
        least=2,
        tool="a micrometer",
        when=("what", PAIR),
        hint="At least as many as bores; more may be offered.",
        example="87.955 | 87.963 | 87.958 | 87.965 | 87.959",
    )
    masses: Rows = _offered(
        "Weights",
        "Whole, or big end",
        "Small end",
        GRAMS,
        "1 to 8000 g",
        "m",
        "a balance",
        "430.2 | 433.9 | 431.0 | 428.1 | 430.6 | 430.9",
    )
    volumes: Rows = _offered(
        "Volumes",
        "Volume",
        "Second volume",
        CC,
        "1 to 500 cm³",
        "V",
        "a burette and plate",
        "56.0 | 55.8 | 56.9 | 56.1 | 56.2",
    )
    forces: Rows = _offered(
        "Loads",
        "Load at the fitted height",
        "Load at full lift",
        LOAD,
        "10 to 5000 N",
        "F",
        "a spring tester",
        "250; 650 | 262; 668 | 248; 646 | 251; 655 | 253; 652",
    )
    count: Number = given(
        "Parts wanted",
        "n",
        form(RATIO, 0),
        hard="2 to 8",
        assumed=("4", "one for each cylinder"),
        when=("what", MASSES, VOLUMES, FORCES),
    )
    masses_apart: Number = _apart("Weights", GRAMS, "Δ_m", "0 to 100 g", "1.0 g", MASSES)
    volumes_apart: Number = _apart("Volumes", CC, "Δ_V", "0 to 20 cm³", "0.5 cm³", VOLUMES)
    forces_apart: Number = _apart("Loads", LOAD, "Δ_F", "0 to 500 N", "15 N", FORCES)
    low: Number = _clearance("Clearance, least", "c_min", "low")
    high: Number = _clearance("Clearance, most", "c_max", "high")
