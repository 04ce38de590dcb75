"""What is asked of a pair of shells: how far each half stands proud, and what it is pressed into."""

from typing import Any, NamedTuple

from calc.core.result import impossible
from calc.core.working import Number
from calc.declare.calculator import Inputs, given, limit, measured
from calc.stations.crank import shells
from calc.stations.crank.shells import MAIN, ROD
from calc.stations.shared.forms import MPA, SIZE

IF_MAIN, IF_ROD = ("bearing", MAIN), ("bearing", ROD)
_PROUD = {MAIN: "crankcase.main_shell_proud", ROD: "rod.shell_proud"}


def _first(kind: str, when: tuple[str, str]) -> Any:
    return measured(
        f"One {kind} shell stands proud by",
        f"a_{kind[0]}",
        SIZE,
        tool="a depth gauge at one joint, the other end held flush",
        hard="-0.5 to 0.5 mm",
        usual="0.01 to 0.08 mm",
        feature=_PROUD[kind],
        stage="",
        when=when,
        hint="At one joint only, not the sum of both.",
    )


def _limit(kind: str, which: str, when: tuple[str, str]) -> Any:
    words, symbol = ("least", "a_min") if which == "low" else ("most", "a_max")
    return limit(
        f"A {kind} shell stands proud, {words}",
        f"{symbol},{kind[0]}",
        SIZE,
        feature=_PROUD[kind],
        which=which,
        hard="0 to 0.3 mm",
        usual="0.01 to 0.08 mm",
        when=when,
    )


class In(Inputs):
    bearing: str = shells.which_bearing()
    main_proud: Number = _first(MAIN, IF_MAIN)
    rod_proud: Number = _first(ROD, IF_ROD)
    other_proud: Number | None = measured(
        "The other half of the pair, likewise",
        "a_2",
        SIZE,
        tool="a depth gauge at one joint, the other end held flush",
        hard="-0.5 to 0.5 mm",
        usual="0.01 to 0.08 mm",
    )
    main_low: Number = _limit(MAIN, "low", IF_MAIN)
    main_high: Number = _limit(MAIN, "high", IF_MAIN)
    rod_low: Number = _limit(ROD, "low", IF_ROD)
    rod_high: Number = _limit(ROD, "high", IF_ROD)
    main_housing: Number = shells.housing(MAIN, IF_MAIN, fold=True)
    main_wall: Number = shells.wall(MAIN, IF_MAIN, fold=True)
    main_wall_round: Number = shells.wall_round(MAIN, IF_MAIN)
    rod_housing: Number = shells.housing(ROD, IF_ROD, fold=True)
    rod_wall: Number = shells.wall(ROD, IF_ROD, fold=True)
    rod_wall_round: Number = shells.wall_round(ROD, IF_ROD)
    main_metal: str = shells.metal(MAIN, IF_MAIN)
    rod_metal: str = shells.metal(ROD, IF_ROD)
    main_shell_metal: str = shells.shell_metal(MAIN, IF_MAIN)
    rod_shell_metal: str = shells.shell_metal(ROD, IF_ROD)
    soft: Number = given(
        "Backing of a steel shell yields at, least",
        "R_s",
        MPA,
        hard="50 to 1000 MPa",
        usual="150 to 500 MPa",
        fold=True,
        assumed=("250 MPa", "soft steel strip, from memory"),
    )
    main_temperature: Number = shells.heat(MAIN, IF_MAIN)
    rod_temperature: Number = shells.heat(ROD, IF_ROD)
    shell_temperature: Number = shells.running(
        "Shells, running", "T_s", "crankcase.shell_running_temperature"
    )


class Pair(NamedTuple):
    """The entries of the bearing that was chosen."""

    kind: str
    one: Number
    other: Number
    low: Number
    high: Number
    housing: Number
    wall: Number
    wall_round: Number
    metal: str
    shell_metal: str
    temperature: Number

    @property
    def words(self) -> str:
        return "big end" if self.kind == ROD else "case"

    def field(self, name: str) -> str:
        return f"{self.kind}_{name}"


def pair_of(i: In) -> Pair:
    """Raises Impossible where sizes or limits do not go together."""

    def of(name: str):
        return getattr(i, f"{i.bearing}_{name}")

    one = of("proud")
    found = Pair(
        i.bearing,
        one,
        one if i.other_proud is None else i.other_proud,
        *(
            of(name)
            for name in (
                "low",
                "high",
                "housing",
                "wall",
                "wall_round",
                "metal",
                "shell_metal",
                "temperature",
            )
        ),
    )
    if found.high < found.low:
        raise impossible(
            found.field("high"),
            "is {h}, less than the least, {l}; give {l} or more",
            h=found.high,
            l=found.low,
        )
    if 4 * found.wall > found.housing:
        raise impossible(
            found.field("wall"),
            "is {w}, which is no shell in a bore of {D}; give the wall of one shell",
            w=found.wall,
            D=found.housing,
        )
    return found
