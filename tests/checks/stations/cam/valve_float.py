"""Outside numbers for valve float. Those marked library are worked anew in test_valve_float.py."""
from tests.checks import Check, Trend, asked

TIME = "lift curve in steps of time, numpy second differences; speed at which the spring first falls short, scipy brentq"
TRAIN = dict(valve="intake", seat_load="250 N", open_load="650 N", valve_mass="75 g", retainer="22 g", spring="45 g", rocker="20 g", pushrod="45 g",
             lifter="60 g", ratio="1.1", lobe_lift="8.2 mm", flank="75°", top_speed="4500 1/min")
SPEEDS = {"4567": 5059.81, "345": 5833.66, "cycloid": 5544.89}  # turns a minute of the crank
MASS = 132 + 105 / 1.21

CHECKS = [
    *(Check("valve-float", "crank's speed at which the follower leaves, 1/min", TRAIN | dict(law=law), speed, 0.5, asked("valve-float", "speed", "1/min"), TIME, "library") for law, speed in SPEEDS.items()),
    Check("valve-float", "mass felt at the valve, g", TRAIN, MASS, 1e-6, asked("valve-float", "mass", "g"), "kinetic energy: 75 + 22 + 45/3 + 20 + (45 + 60)/1.1²", "limit"),
    Check("valve-float", "cycloid, a spring of nearly even force 500 N, 1/min", TRAIN | dict(law="cycloid", seat_load="499.999 N", open_load="500.001 N"), 5020.317, 0.05, asked("valve-float", "speed", "1/min"), "its largest deceleration 2π·L/β² at three quarters of the flank", "limit"),
]

TRENDS = {
    "speed": Trend(rises="seat_load open_load flank", falls="valve_mass retainer spring rocker pushrod lifter lobe_lift"),
    "margin": Trend(rises="seat_load open_load flank", falls="valve_mass retainer spring rocker pushrod lifter lobe_lift top_speed"),
    "mass": Trend(rises="valve_mass retainer spring rocker pushrod lifter", falls="ratio"),
    "inertia": Trend(rises="top_speed"),
}
