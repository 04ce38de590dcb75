"""Outside numbers for the valve's flow area, asked of the calculator. Those marked library are worked anew in test_valve_flow_area.py."""
from tests.checks import Check, Trend, asked

STEEP = dict(valve_head="35 mm", seat_inner="31.9 mm", throat="30 mm", stem="7.96 mm", seat_angle="45°")
FLAT = dict(valve_head="40 mm", seat_inner="36 mm", throat="34 mm", stem="8 mm", seat_angle="30°")
NARROW = STEEP | dict(throat="14 mm", stem="8 mm")
MACH = dict(bore="70 mm", stroke="60 mm", engine_speed="5000 1/min", temperature="20 °C", seat_inner="32 mm", most_mach="1") | dict(valve_head="35 mm")
SHORTEST = "shortest way from the valve's edge to the seat by scipy minimize_scalar, area by Pappus"
SMALLEST = "smallest frustum between the two faces by scipy minimize; it leans less than a square one, up to 0.4 % smaller"

CHECKS = [
    *(Check("valve-flow-area", f"curtain at a lift of {lift} mm, valve of {case['valve_head']}, seat of {case['seat_angle']}, mm²", case | dict(lift=f"{lift} mm"), area, 0.0005, asked("valve-flow-area", "curtain", "mm²"), SHORTEST, "library")
      for case, lift, area in ((STEEP, 1, 71.9747), (STEEP, 3.09, 229.5750), (STEEP, 4, 304.6596), (STEEP, 8.87, 786.2876), (FLAT, 2, 200.6027), (FLAT, 4, 410.6302), (FLAT, 8.87, 951.4998))),
    *(Check("valve-flow-area", f"smallest frustum at {lift} mm, seat of {case['seat_angle']}, mm²", case | dict(lift=f"{lift} mm"), area, 0.004 * area, asked("valve-flow-area", "curtain", "mm²"), SMALLEST, "library")
      for case, lift, area in ((STEEP, 2, 146.1032), (FLAT, 4, 409.3219))),
    Check("valve-flow-area", "crossover of a 45° seat, throat of 30 mm, mm", STEEP, 7.60775, 0.00001, asked("valve-flow-area", "crossover", "mm"), "scipy brentq on that shortest way", "library"),
    Check("valve-flow-area", "crossover of a 30° seat, throat of 34 mm, mm", FLAT, 8.05491, 0.00001, asked("valve-flow-area", "crossover", "mm"), "scipy brentq on that shortest way", "library"),
    Check("valve-flow-area", "crossover of a throat of 14 mm, in the first stage, mm", NARROW, 1.43089, 0.00001, asked("valve-flow-area", "crossover", "mm"), "scipy brentq on that shortest way", "library"),
    Check("valve-flow-area", "Mach index of a bore twice the valve, pistons at 10 m/s, air at 20 °C, %", MACH, 400 * 10 / (0.35 * 343.2), 0.01, asked("valve-flow-area", "mach", "%"), "speed of sound at 20 °C 343.2 m/s (CRC Handbook, from memory)", "handbook"),
]

TRENDS = {
    "free": Trend(rises="lift seat_inner throat", falls="stem"),
    "crossover": Trend(rises="throat", falls="seat_inner stem"),
    "mach": Trend(rises="engine_speed bore stroke", falls="valve_head flow_coefficient temperature"),
    "curtain": Trend(rises="lift seat_inner"),
    "throat_area": Trend(rises="throat", falls="stem"),
    "opened": Trend(rises="lift seat_inner stem", falls="throat"),
    "past": Trend(rises="lift seat_inner stem", falls="throat"),
    "first_stage": Trend(rises="valve_head", falls="seat_inner"),
    "lift_ratio": Trend(rises="lift", falls="valve_head"),
    "throat_ratio": Trend(rises="throat", falls="valve_head"),
    "piston_speed": Trend(rises="engine_speed stroke"),
    "speed_limit": Trend(rises="valve_head flow_coefficient temperature most_mach", falls="bore stroke"),
}
