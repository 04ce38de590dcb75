"""What is asked of a bearing: housing, shells and journal, or the bore of the shells as they are fitted."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import Number, constant
from calc.declare.calculator import Inputs, choice, given, measured
from calc.stations.crank import shells
from calc.stations.crank.shells import MAIN, ROD
from calc.stations.shared.forms import SIZE

APART, FITTED = "apart", "fitted"
READ = {
    f"{MAIN}-{APART}": "Main bearing: housing and shell",
    f"{MAIN}-{FITTED}": "Main bearing: bore of the fitted shells",
    f"{ROD}-{APART}": "Rod bearing: big end and shell",
    f"{ROD}-{FITTED}": "Rod bearing: bore of the fitted shells",
}
MAINS, RODS = tuple(READ)[:2], tuple(READ)[2:]
ANY_MAIN, ANY_ROD = ("read", *MAINS), ("read", *RODS)
# of the journal: sizes further apart are not of one bearing
STRANGE = 0.02


def _fitted(kind: str, example: str):
    return measured(
        f"Bore of the fitted {kind} shells, least",
        f"B_{kind[0]}",
        SIZE,
        tool="a bore gauge set in a ring, square to the joint",
        hard="15 to 190 mm",
        usual="35 to 85 mm",
        hint="Bolted up at full torque. Shells are thinner beside the joint: not there.",
        when=("read", f"{kind}-{FITTED}"),
        example=example,
    )


class In(Inputs):
    read: str = choice("Bearing, and what was read", READ, default=f"{MAIN}-{APART}")
    main_housing: Number = shells.housing(
        MAIN, ("read", f"{MAIN}-{APART}"), hint="Bolted up at full torque, in three directions."
    )
    main_fitted: Number = _fitted(MAIN, "55.083 mm")
    main_wall: Number = shells.wall(MAIN, ANY_MAIN, hint="One shell, not the pair.", stands_in=True)
    main_journal: Number = shells.journal(MAIN, ANY_MAIN)
    rod_housing: Number = shells.housing(
        ROD, ("read", f"{ROD}-{APART}"), hint="Bolted up at full torque, in three directions."
    )
    rod_fitted: Number = _fitted(ROD, "52.058 mm")
    rod_wall: Number = shells.wall(ROD, ANY_ROD, hint="One shell, not the pair.", stands_in=True)
    rod_journal: Number = shells.journal(ROD, ANY_ROD)
    bore_most: Number | None = measured(
        "The same bore, largest reading",
        "D_most",
        SIZE,
        tool="a bore gauge set in a ring",
        hard="15 to 200 mm",
        usual="35 to 90 mm",
        hint="For the loosest place.",
    )
    wall_least: Number | None = measured(
        "Thinnest shell of the pair, at the crown",
        "w_least",
        SIZE,
        tool="a ball micrometer",
        hard="0.5 to 15 mm",
        usual="1.2 to 6 mm",
        fold=True,
    )
    journal_least: Number | None = measured(
        "Journal, smallest reading",
        "d_least",
        SIZE,
        tool="a micrometer",
        hard="15 to 180 mm",
        usual="35 to 80 mm",
    )
    main_low: Number = shells.clearance_limit(MAIN, "low", ANY_MAIN)
    main_high: Number = shells.clearance_limit(MAIN, "high", ANY_MAIN)
    main_worn: Number = shells.clearance_limit(MAIN, "wear", ANY_MAIN)
    rod_low: Number = shells.clearance_limit(ROD, "low", ANY_ROD)
    rod_high: Number = shells.clearance_limit(ROD, "high", ANY_ROD)
    rod_worn: Number = shells.clearance_limit(ROD, "wear", ANY_ROD)
    least_running: Number = given(
        "Clearance running, least",
        "c_run",
        SIZE,
        hard="0 to 0.2 mm",
        usual="0.01 to 0.05 mm",
        fold=True,
        assumed=("0.015 mm", "room for oil; common practice, no source"),
    )
    main_proud: Number | None = shells.proud(MAIN, ANY_MAIN)
    main_wall_round: Number | None = shells.wall_round(MAIN, ANY_MAIN)
    rod_proud: Number | None = shells.proud(ROD, ANY_ROD)
    rod_wall_round: Number | None = shells.wall_round(ROD, ANY_ROD)
    main_metal: str = shells.metal(MAIN, ANY_MAIN)
    rod_metal: str = shells.metal(ROD, ANY_ROD)
    main_shell_metal: str = shells.shell_metal(MAIN, ANY_MAIN)
    rod_shell_metal: str = shells.shell_metal(ROD, ANY_ROD)
    journal_metal: str = shells.journal_metal()
    main_temperature: Number = shells.heat(MAIN, ANY_MAIN)
    rod_temperature: Number = shells.heat(ROD, ANY_ROD)
    shell_temperature: Number = shells.running(
        "Shells, running", "T_s", "crankcase.shell_running_temperature"
    )
    journal_temperature: Number = shells.running("Journal, running", "T_j", "crank.running_temperature")


class Bearing(NamedTuple):
    """The entries of the bearing that was chosen, by names that it shares with the other one; `field` names
    the input of one of them."""

    kind: str
    fitted: bool
    bore: Number
    bore_most: Number
    wall: Number
    wall_least: Number
    journal: Number
    journal_least: Number
    low: Number
    high: Number
    worn: Number
    proud: Number | None
    wall_round: Number | None
    metal: str
    shell_metal: str
    temperature: Number

    def field(self, name: str) -> str:
        return f"{self.kind}_{name}"

    @property
    def words(self) -> str:
        return "big end" if self.kind == ROD else "case"


def bearing_of(i: In) -> Bearing:
    """The chosen bearing. Raises Impossible where sizes do not belong together."""
    kind, _, how = i.read.partition("-")

    def of(name: str):
        return getattr(i, f"{kind}_{name}")

    bore, wall, journal = of("fitted" if how == FITTED else "housing"), of("wall"), of("journal")
    found = Bearing(
        kind,
        how == FITTED,
        bore,
        bore if i.bore_most is None else i.bore_most,
        wall,
        wall if i.wall_least is None else i.wall_least,
        journal,
        journal if i.journal_least is None else i.journal_least,
        *(
            of(name)
            for name in ("low", "high", "worn", "proud", "wall_round", "metal", "shell_metal", "temperature")
        ),
    )
    _refuse_turned(i, found)
    _refuse_strange(found)
    return found


def _refuse_turned(i: In, b: Bearing) -> None:
    """Raises where a largest reading is under the least, or a smallest over the largest."""
    if b.bore_most < b.bore:
        raise impossible(
            "bore_most",
            "is {m}, less than the least reading of that bore, {l}; give {l} or more",
            m=b.bore_most,
            l=b.bore,
        )
    for name, small, large in (
        ("wall_least", b.wall_least, b.wall),
        ("journal_least", b.journal_least, b.journal),
    ):
        if small > large:
            raise impossible(name, "is {s}, more than the largest, {l}; give {l} or less", s=small, l=large)
    if b.high < b.low:
        raise impossible(
            b.field("high"), "is {h}, less than the least, {l}; give {l} or more", h=b.high, l=b.low
        )


def _refuse_strange(b: Bearing) -> None:
    """Raises where bore, shells and journal are so far apart that they cannot be of one bearing."""
    inside = b.bore if b.fitted else b.bore - 2 * b.wall
    off = float(inside - b.journal)
    if abs(off) <= STRANGE * float(b.journal):
        return
    if b.fitted:
        raise impossible(
            b.field("fitted"),
            "is {b}, and the journal {d}: they are not of one bearing; give the bore in the fitted shells",
            b=b.bore,
            d=b.journal,
        )
    raise impossible(
        b.field("wall"),
        "is {w}, which leaves {i} inside the shells for a journal of {d}; give the wall of one shell, not of"
        " the pair, and sizes of one bearing",
        w=b.wall,
        i=constant("", "", SIZE, float(inside)),
        d=b.journal,
    )
