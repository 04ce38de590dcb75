"""What is asked of a crank whose rod journals are ground off their old axis, for a longer stroke."""

from calc.core.kinds import ANGLE, VOLUME
from calc.core.result import impossible
from calc.core.working import constant, form
from calc.declare.calculator import Inputs, Number, given, limit, measured
from calc.stations.shared.forms import COARSE, ROUGH, SIZE, TENTHS_OF_DEGREE

CUBIC = form(VOLUME, 1)
INDEX = form(ANGLE, 2)


class In(Inputs):
    pin: Number = measured(
        "Rod journal where it is not worn",
        "d_1",
        SIZE,
        tool="a micrometer",
        hard="20 to 120 mm",
        usual="35 to 80 mm",
        example="51.993 mm",
    )
    along: Number = measured(
        "The same along the throw, smallest",
        "d_a",
        SIZE,
        tool="a micrometer",
        hard="20 to 120 mm",
        usual="35 to 80 mm",
        hint=(
            "Across the pin, towards and away from the crank's axis. Its whole wear is taken to lie outside."
        ),
        example="51.975 mm",
    )
    new_pin: Number = given(
        "Rod journal wanted",
        "d_2",
        SIZE,
        hard="15 to 119 mm",
        usual="35 to 75 mm",
        example="50.000 mm",
        hint="Of the rods and shells that will run on it, in the middle of its limits.",
    )
    stroke: Number = given(
        "Stroke wanted", "S", COARSE, hard="20 to 200 mm", usual="50 to 110 mm", example="70.50 mm"
    )
    throw: Number = measured(
        "Throw as it is",
        "r_1",
        SIZE,
        tool="a height gauge over the journals",
        hard="10 to 100 mm",
        usual="25 to 50 mm",
        feature="crank.throw",
        stage="",
        fold=True,
    )
    clean_up: Number = given(
        "To clean up on the outer side, at least",
        "k",
        SIZE,
        hard="0 to 1 mm",
        usual="0.02 to 0.3 mm",
        fold=True,
        assumed=("0.10 mm", "a side; common practice, no source"),
    )
    off_plane: Number = given(
        "Offset set off the plane of the throw by",
        "ψ",
        TENTHS_OF_DEGREE,
        hard="-60 to 60°",
        usual="-5 to 5°",
        fold=True,
        assumed=("0°", "set up in the plane of the throw"),
    )
    main: Number = given(
        "Main journal, finished",
        "d_m",
        SIZE,
        hard="20 to 120 mm",
        usual="35 to 80 mm",
        feature="crank.main_journal",
        fold=True,
    )
    overlap_least: Number = given(
        "Overlap of main and rod journal, least",
        "u_min",
        ROUGH,
        hard="0 to 60 mm",
        usual="5 to 25 mm",
        fold=True,
        assumed=("10 mm", "common practice, no source"),
    )
    index_most: Number | None = limit(
        "Pin out of its angle, at most",
        "δ_max",
        INDEX,
        feature="crank.index_error",
        which="wear",
        hard="0 to 10°",
        usual="0.05 to 1°",
    )
    deck: Number = measured(
        "Deck height as it is",
        "t_1",
        COARSE,
        tool="a depth gauge, cylinders held down",
        hard="-10 to 30 mm",
        usual="0 to 5 mm",
        feature="crankcase.deck_height",
        stage="",
        fold=True,
        hint=(
            "From the cylinder's face down to the crown at top dead centre; less than nothing where it"
            " stands out."
        ),
    )
    room: Number | None = measured(
        "Rods to case and cam, least room now",
        "q",
        ROUGH,
        tool="modelling clay, cut through and measured",
        hard="0 to 60 mm",
        usual="0.5 to 15 mm",
        feature="crank.rod_room",
        stage="",
        hint="With the rods that will run in it. Bolts, nuts and shoulders, all the way round.",
    )
    room_least: Number | None = limit(
        "Rods to case and cam, least room allowed",
        "q_min",
        ROUGH,
        feature="crank.rod_room",
        which="wear",
        hard="0 to 20 mm",
        usual="0.5 to 3 mm",
    )
    bore: Number = given(
        "Cylinder bore",
        "B",
        SIZE,
        hard="30 to 200 mm",
        usual="60 to 120 mm",
        feature="cylinder.bore",
        fold=True,
        assumed=("88 mm", "a usual cylinder; only for the compression"),
    )
    chamber: Number = given(
        "Combustion chamber volume",
        "V_c",
        CUBIC,
        hard="5 to 500 cm³",
        usual="20 to 120 cm³",
        feature="chamber.volume",
        fold=True,
        assumed=("56 cm³", "a usual chamber; only for the compression"),
    )


def refuse_impossible(i: In) -> None:
    """Raises where no grinding leads from what is there to what is wanted."""
    if i.along > i.pin:
        raise impossible(
            "along", "is {a}, more than where it is not worn, {pin}; give {pin} or less", a=i.along, pin=i.pin
        )
    if i.new_pin >= i.pin:
        raise impossible(
            "new_pin",
            "is {new}, not smaller than the journal that is there, {pin}; give less",
            new=i.new_pin,
            pin=i.pin,
        )
    if i.stroke <= 2 * i.throw:
        raise impossible(
            "stroke",
            "is {S}, no longer than what the crank has; give more than {now}",
            S=i.stroke,
            now=constant("", "", COARSE, 2 * i.throw),
        )
