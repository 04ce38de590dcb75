"""Outside numbers for a lightened flywheel, asked of the calculator. Those marked library are worked anew in test_lighten.py."""
from tests.checks import Check, Trend, asked

QUAD = "scipy 1.17.1: quad of shells"
HOLES = "scipy 1.17.1: dblquad over each hole"
BRENT = "scipy 1.17.1: brentq on quad"
PLATE = dict(section="20; 280; 30", material="grey-iron", inertia="0.085 kg·m²", engine_cuts="", face_least="8 mm", root_least="8 mm", mass="8600 g")
TAPER = PLATE | dict(engine_cuts="200; 270; 4; 10")
SIX = PLATE | dict(section="20; 280; 18", holes="6", hole="22 mm", circle="230 mm")
WANTED = PLATE | dict(engine_cuts="210; 272; 5", wanted="0.068 kg·m²")
REACHED = PLATE | dict(engine_cuts="210; 272; 6.8153")
CHECKS = [
    Check("lighten", "mass off a cut of 4 mm at radius 100 to 10 mm at radius 135 mm, g", TAPER, 1330.0, 0.5, asked("lighten", "mass_off", "g"), QUAD, "library"),
    Check("lighten", "moment of inertia off, the same, kg·m²", TAPER, 0.019532, 5e-7, asked("lighten", "inertia_off", "kg·m²"), QUAD, "library"),
    Check("lighten", "mass off a flat cut of its mean depth, 7 mm, g", PLATE | dict(engine_cuts="200; 270; 7"), 1302.3, 0.05, asked("lighten", "mass_off", "g"), QUAD, "library"),
    Check("lighten", "mass off six holes of 22 mm through 18 mm, g", SIX, 295.59, 0.005, asked("lighten", "mass_off", "g"), HOLES, "library"),
    Check("lighten", "moment of inertia off, the same on a radius of 115 mm, kg·m²", SIX, 0.0039271, 5e-8, asked("lighten", "inertia_off", "kg·m²"), HOLES, "library"),
    Check("lighten", "depth of a ring from radius 105 to 136 mm that brings 0.085 to 0.068 kg·m², mm", WANTED, 6.8153, 5e-5, asked("lighten", "depth_wanted", "mm"), BRENT, "library"),
    Check("lighten", "mass left with that depth, g", REACHED, 7448.3, 0.05, asked("lighten", "mass_left", "g"), BRENT, "library"),
    Check("lighten", "share of the mass, the same, %", REACHED, 13.4, 0.05, asked("lighten", "mass_share", "%"), BRENT, "library"),
    Check("lighten", "share of the moment of inertia, the same, %", REACHED, 20.0, 0.05, asked("lighten", "inertia_share", "%"), BRENT, "library"),
    Check("lighten", "mass off a ring 270/180 mm, 6 mm deep, g", PLATE | dict(engine_cuts="180; 270; 6"), 1374.1, 0.05, asked("lighten", "mass_off", "g"), "ρ·π·(R² − r²)·t", "limit"),
    Check("lighten", "moment of inertia off, the same, kg·m²", PLATE | dict(engine_cuts="180; 270; 6"), 0.018087, 5e-7, asked("lighten", "inertia_off", "kg·m²"), "½·ρ·π·t·(R⁴ − r⁴)", "limit"),
]

TRENDS = {
    "mass_left": Trend(rises="mass", falls="engine_cuts.3 engine_cuts.4 clutch_cuts.3 clutch_cuts.4"),
    "inertia_left": Trend(falls="engine_cuts.3 engine_cuts.4"),
    "mass_off": Trend(rises="engine_cuts.3 engine_cuts.4"),
    "inertia_off": Trend(rises="engine_cuts.3 engine_cuts.4"),
    "mass_share": Trend(rises="engine_cuts.3 engine_cuts.4", falls="mass"),
    "inertia_share": Trend(rises="engine_cuts.3 engine_cuts.4"),
    "inertia_before": Trend(rises="inertia"),
    "face_left": Trend(falls="engine_cuts.3 engine_cuts.4"),
    "root_left": Trend(falls="engine_cuts.3"),
    "rim_left": Trend(falls="engine_cuts.3 engine_cuts.4"),
    "section_mass": Trend(rises="section.3"),
    "depth_wanted": Trend(rises="engine_cuts.3"),
}
