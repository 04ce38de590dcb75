"""What is asked of a flywheel that is to spin: its iron ring by ring, its speeds, its strength, its
soundness."""

from calc.core.kinds import DENSITY
from calc.core.working import form
from calc.declare.calculator import Inputs, Number, Rows, choice, given, limit
from calc.stations.flywheel.lighten.asked import IRONS
from calc.stations.flywheel.section import section_of
from calc.stations.shared.asked import material_of
from calc.stations.shared.forms import MPA, ROUGH, ROUGH_TIMES, TURNS

SOUND, CHECKED, CRACKED, NOT_TRIED = "sound", "heat-checks", "cracked", "not-tried"


class In(Inputs):
    section: Rows = section_of(
        "As it is after the cuts, thickness where it is least, without the ring gear.",
        "40; 120; 18 | 120; 212; 18 | 212; 256; 20 | 256; 262; 16; 12",
    )
    speed: Number = given(
        "Highest speed at which it will run",
        "n",
        TURNS,
        hard="100 1/ to 20000 1/min",
        usual="1000 1/ to 9000 1/min",
        feature="crank.top_speed",
        hint="With a missed gear and on the way downhill, not the one meant.",
    )
    maker: Number = limit(
        "Its maker's highest speed",
        "n_max",
        TURNS,
        feature="flywheel.top_speed",
        which="nominal",
        hard="100 1/ to 20000 1/min",
        usual="3000 1/ to 9000 1/min",
        fold=False,
        hint="Of this flywheel as new, from its maker. What is worked out here never takes its place.",
    )
    looked: str = choice(
        "Looked over for cracks, with dye",
        {
            SOUND: "no crack, at holes, bore and corners neither",
            CHECKED: "fine heat cracks in the friction face only",
            CRACKED: "a crack elsewhere, or one that a fingernail feels",
            NOT_TRIED: "not tried",
        },
        must=True,
        example=SOUND,
    )
    material: str = material_of("Flywheel, material", IRONS, feature="flywheel.alloy", example="grey-iron")
    circle: Number | None = given(
        "Pitch circle of its innermost holes",
        "D_h",
        ROUGH,
        hard="10 to 800 mm",
        usual="50 to 150 mm",
        fold=True,
        example="80 mm",
        hint="Dowels, crank bolts, cover bolts: the innermost are pulled hardest. Empty: as if one stood"
        " in the worst place.",
    )
    strength: Number | None = given(
        "Tensile strength, where known", "σ_u", MPA, hard="80 to 2000 MPa", usual="150 to 900 MPa", fold=True
    )
    density: Number | None = given(
        "Density, where known",
        "ρ",
        form(DENSITY, 0),
        hard="1500 to 9000 kg/m³",
        usual="2600 to 7900 kg/m³",
        fold=True,
    )
    least_margin: Number = given(
        "Bursting over highest speed, least",
        "k_n",
        ROUGH_TIMES,
        hard="1.5 to 6",
        usual="2 to 4",
        fold=True,
        assumed=("2.0", "mean stress a quarter of the strength; common practice, no source"),
    )
    least_factor: Number = given(
        "Strength over the greatest stress, least",
        "k_σ",
        ROUGH_TIMES,
        hard="1.5 to 10",
        usual="2 to 5",
        fold=True,
        assumed=("2.0", "iron does not yield, it breaks; holes counted; common practice, no source"),
    )
