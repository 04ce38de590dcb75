"""What is asked of a set of valve springs."""

from calc.core.kinds import MODULUS, RATIO
from calc.core.working import Number, form
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, limit, measured
from calc.stations.heads import VALVES
from calc.stations.shared.forms import COARSE, MPA, NEWTON, TIMES, TURNS

LOADS, SIZES = "loads", "sizes"
GROUND, PEENED = "ground", "peened"


class In(Inputs):
    method: str = choice(
        "Work from",
        {LOADS: "two loads read on a tester", SIZES: "wire, coil and turns"},
        hint="For sizes, open the fields that rarely change.",
        default=LOADS,
    )
    loads: Rows = grid(
        "Loads read",
        rows=VALVES,
        columns=(
            column(
                "At the first height",
                "F_1",
                NEWTON,
                hard="1 to 5000 N",
                usual="80 to 1500 N",
                feature="spring.seat_load",
            ),
            column(
                "At the second height",
                "F_2",
                NEWTON,
                hard="1 to 9000 N",
                usual="150 to 3000 N",
                feature="spring.open_load",
            ),
        ),
        least=1,
        tool="a spring tester",
        when=("method", LOADS),
        hint="At the two heights of the maker's sheet, below. A spring left empty is not judged.",
        example="250; 650 | 248; 647 | 253; 653 | 249; 649 | 251; 651 | 247; 646 | 252; 654 | 250; 650",
    )
    fitted_height: Number = measured(
        "Fitted height, valve shut",
        "h",
        COARSE,
        tool="a telescopic gauge between spring bed and retainer",
        hard="10 to 100 mm",
        usual="25 to 60 mm",
        feature="spring.installed_height",
        stage="",
        hint=(
            "The tallest of the head for the loads, then the shortest for the room to coil bind; without the"
            " shims of the next field."
        ),
    )
    shim: Number = given(
        "Shims to be added under the spring",
        "t",
        COARSE,
        hard="0 to 5 mm",
        usual="0 to 1.5 mm",
        assumed=("0 mm", "no shims"),
    )
    lift: Number = measured(
        "Valve lift",
        "s",
        COARSE,
        tool="a dial gauge on the retainer",
        hard="1 to 25 mm",
        usual="5 to 15 mm",
        feature="valve.lift",
        stage="",
    )
    wire: Number = measured(
        "Wire", "d", COARSE, tool="a micrometer", hard="1 to 10 mm", usual="2 to 6 mm", feature="spring.wire"
    )
    total_turns: Number = given(
        "All turns",
        "n_t",
        TIMES,
        hard="2.5 to 25",
        usual="4 to 12",
        feature="spring.total_turns",
        must=True,
        hint="Counted on the spring, from tip to tip of the wire.",
    )
    ends: str = choice(
        "Ends of the spring",
        {GROUND: "closed and ground flat", "wound": "closed, not ground"},
        assumed=(GROUND, "ground flat, as those of valve springs are"),
        hint="Ends that are not ground take up one and a half turns more when it binds.",
    )
    mean_diameter: Number = measured(
        "Mean coil diameter",
        "D",
        COARSE,
        tool="a calliper, outside less one wire",
        hard="5 to 100 mm",
        usual="15 to 45 mm",
        feature="spring.mean_diameter",
        fold=True,
    )
    active_turns: Number = given(
        "Turns that move",
        "n",
        TIMES,
        hard="1 to 24",
        usual="2.5 to 10",
        feature="spring.active_turns",
        fold=True,
        hint="All but those that lie closed at both ends: two fewer with closed and ground ends.",
    )
    free_length: Number = measured(
        "Free length",
        "L_0,read",
        COARSE,
        tool="a calliper",
        hard="11 to 200 mm",
        usual="30 to 80 mm",
        feature="spring.free_length",
        fold=True,
        when=("method", SIZES),
    )
    height_1: Number = given(
        "First height of the readings",
        "h_1",
        COARSE,
        hard="10 to 100 mm",
        usual="25 to 60 mm",
        feature="spring.installed_height",
        fold=True,
        hint=(
            "The maker's, valve shut. The least seat load is judged here first: a shim hides a spring that"
            " has set."
        ),
    )
    height_2: Number = given(
        "Second height of the readings",
        "h_2",
        COARSE,
        hard="5 to 95 mm",
        usual="15 to 50 mm",
        feature="spring.open_height",
        fold=True,
    )
    least_seat: Number = limit(
        "Seat load, least",
        "F_s,min",
        NEWTON,
        feature="spring.seat_load",
        which="wear",
        hard="0 to 5000 N",
        usual="80 to 1500 N",
    )
    wanted_seat: Number = given(
        "Seat load wanted",
        "F_s,w",
        NEWTON,
        hard="1 to 5000 N",
        usual="80 to 1500 N",
        feature="spring.seat_load",
        fold=True,
    )
    most_seat: Number = limit(
        "Seat load, most",
        "F_s,max",
        NEWTON,
        feature="spring.most_seat_load",
        which="nominal",
        hard="1 to 5000 N",
        usual="80 to 1500 N",
        hint="More wears cam and lifters.",
    )
    least_open: Number = limit(
        "Load at full lift, least",
        "F_o,min",
        NEWTON,
        feature="spring.open_load",
        which="wear",
        hard="0 to 9000 N",
        usual="150 to 3000 N",
    )
    most_spread: Number = given(
        "Seat loads may differ by",
        "ΔF_max",
        NEWTON,
        hard="0 to 2000 N",
        usual="5 to 100 N",
        fold=True,
        assumed=("25 N", "a tenth of the seat load; common practice, no source"),
    )
    least_margin: Number = given(
        "Room to coil bind wanted, least",
        "m_min",
        COARSE,
        hard="0 to 10 mm",
        usual="0.5 to 3 mm",
        fold=True,
        assumed=("1 mm", "common practice, no source"),
        hint="At full lift.",
    )
    modulus: Number = given(
        "Shear modulus of the wire",
        "G",
        form(MODULUS, 1),
        hard="20 to 120 GPa",
        usual="77 to 83 GPa",
        fold=True,
        assumed=("79.3 GPa", "steel wire"),
        hint="Steel wire 78.5 to 81.5 GPa.",
    )
    tensile: Number = given(
        "Tensile strength of the wire",
        "R_m",
        MPA,
        hard="900 to 3000 MPa",
        usual="1500 to 2200 MPa",
        fold=True,
        assumed=("1800 MPa", "oil-tempered wire of this thickness, from memory"),
    )
    peened: str = choice(
        "Surface of the wire",
        {"plain": "not peened, or not known", PEENED: "shot-peened, as its maker says"},
        fold=True,
        assumed=("plain", "not known to be shot-peened"),
        hint="A matt look proves nothing: rust and blasting look so too. An old spring counts as not peened.",
    )
    top_speed: Number = given(
        "Top engine speed",
        "n_max",
        TURNS,
        hard="500 1/ to 12000 1/min",
        usual="2500 1/ to 7000 1/min",
        feature="crank.top_speed",
        fold=True,
        hint="The camshaft turns half as fast.",
    )
    least_order: Number = given(
        "Harmonic that may meet the spring, lowest",
        "j_min",
        form(RATIO, 1),
        hard="1 to 40",
        usual="9 to 20",
        fold=True,
        assumed=(
            "13",
            "natural frequency at least 13 times the camshaft's; spring makers' rule, from memory",
        ),
    )
