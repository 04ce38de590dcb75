"""What is asked for the length of pushrods: a checking pushrod at each valve, or what was changed."""

from typing import Any

from calc.declare.calculator import Inputs, Number, Rows, choice, column, given, grid, limit, measured
from calc.stations.shared.forms import COARSE, ROUGH, TIMES

CHECKED, CHANGED = "checked", "changed"
VALVES = tuple(f"{n} {kind}" for n in range(1, 5) for kind in ("intake", "exhaust"))


def _changed(label: str, symbol: str, hint: str = "") -> Any:
    return given(
        label,
        symbol,
        COARSE,
        hard="-5 to 5 mm",
        usual="-2 to 2 mm",
        hint=hint,
        assumed=("0.00 mm", "as it was"),
        when=("how", CHANGED),
    )


class In(Inputs):
    how: str = choice(
        "Found by",
        {
            CHECKED: "a checking pushrod, read at each valve",
            CHANGED: "what was changed since the old ones fitted",
        },
        default=CHECKED,
    )
    rods: Rows = grid(
        "Checking pushrod",
        rows=VALVES,
        columns=(
            column("Length at no lash", "L_c", COARSE, hard="20 to 600 mm", usual="80 to 350 mm"),
            column("Contact, shut", "c_0", COARSE, hard="-5 to 30 mm", usual="0 to 12 mm", optional=True),
            column(
                "Contact, full lift", "c_1", COARSE, hard="-5 to 30 mm", usual="0 to 12 mm", optional=True
            ),
        ),
        least=1,
        tool="an adjustable checking pushrod and a solid checking lifter; marking blue on the tip",
        hint=(
            "On the base circle, adjuster in the middle of its travel: let the rod out until it just has no"
            " lash, then read it as your pushrods are read. Contact: the mark's middle, from the stem's"
            " edge on the shaft's side."
        ),
        example=(
            "270.05; 4.00; 4.05 | 269.90; 4.02; 4.00 | 270.10; 3.95; 4.00 | 270.00; 4.00; 3.90 |"
            " 269.95; 4.05; 4.10 | 270.05; 3.98; 4.00 | 270.10; 4.00; 4.06 | 269.90; 4.03; 4.00"
        ),
        when=("how", CHECKED),
    )
    fitted: Number = measured(
        "Pushrod at hand",
        "L",
        COARSE,
        tool="a height gauge",
        hard="20 to 600 mm",
        usual="80 to 350 mm",
        feature="lifter.pushrod",
        stage="",
        hint="The old one, or the one that the engine is sold with; read over the same places.",
    )
    case_cut: Number = _changed("Case faced at the cylinder seats by", "a_c")
    shims: Number = _changed("Shims under the cylinder, thicker by", "a_s", "Minus for thinner ones.")
    head_cut: Number = _changed("Head cut at its sealing face by", "a_h")
    base: Number = _changed(
        "Base circle smaller in radius by", "a_b", "A reground cam: half of what its diameter lost."
    )
    stand: Number = _changed(
        "Rocker stands raised by",
        "a_r",
        "By shims under them, the valves as they were: the rocker turns too.",
    )
    tip: Number = _changed(
        "Stem's tip higher by", "a_t", "After a seat was sunk; minus where the tip was ground."
    )
    press: Number = given(
        "Plunger pressed in from the checking lifter's seat by",
        "p",
        COARSE,
        hard="-5 to 5 mm",
        usual="-3 to 3 mm",
        fold=True,
        assumed=(
            "0.00 mm",
            "solid lifters, or a checking lifter whose seat stands where the plunger's shall",
        ),
        hint="Hydraulic lifters: how much lower the plunger is to stand than the checking lifter's seat.",
        when=("how", CHECKED),
    )
    lift: Number = measured(
        "Valve lift",
        "L_v",
        COARSE,
        tool="a dial gauge on the retainer",
        hard="1 to 30 mm",
        usual="5 to 15 mm",
        feature="valve.lift",
        fold=True,
    )
    arm: Number = measured(
        "Arm to the valve",
        "l_v",
        ROUGH,
        tool="a height gauge, the rocker on a pin",
        hard="8 to 120 mm",
        usual="20 to 60 mm",
        feature="rocker.arm_valve",
        fold=True,
    )
    ratio: Number = given(
        "Rocker's ratio",
        "i",
        TIMES,
        hard="0.5 to 3",
        usual="0.9 to 1.8",
        feature="valve.rocker_ratio",
        fold=True,
    )
    travel: Number = limit(
        "Adjuster's travel, stop to stop",
        "S",
        ROUGH,
        feature="rocker.adjuster",
        which="nominal",
        hard="0.5 to 25 mm",
        usual="2 to 12 mm",
        hint="At the pushrod; where hydraulic lifters have no adjuster, their plunger's travel.",
    )
    run_good: Number | None = limit(
        "Contact's run, shut to full lift, good",
        "c_n",
        COARSE,
        feature="rocker.contact_run",
        which="high",
        hard="0.05 to 10 mm",
        usual="0.3 to 3 mm",
    )
    run_most: Number | None = limit(
        "Contact's run, shut to full lift, limit",
        "c_w",
        COARSE,
        feature="rocker.contact_run",
        which="wear",
        hard="0.05 to 10 mm",
        usual="0.5 to 4 mm",
    )
