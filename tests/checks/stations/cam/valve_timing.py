"""Outside numbers for a cam's timing. Those marked library are worked anew in test_valve_timing.py."""
from tests.checks import Check, Trend, asked

SETS = "numpy: degrees at which each valve is open, counted on a circle of 72 000 steps"
MILD = dict(known="lobes", intake_duration="244°", exhaust_duration="240°", intake_centre="106°", exhaust_centre="112°")
WILD = dict(known="lobes", intake_duration="284°", exhaust_duration="276°", intake_centre="104°", exhaust_centre="108°")
FOUND = {
    "a mild cam": (MILD, dict(in_opens=16, in_closes=48, ex_opens=52, ex_closes=8, overlap=24, separation=109, advance=3)),
    "a wild cam": (WILD, dict(in_opens=38, in_closes=66, ex_opens=66, ex_closes=30, overlap=68, separation=106, advance=2)),
}
CHECKS = [
    *(
        Check("valve-timing", f"{output.replace('_', ' ')} of {name}, °", entries, value, 0.02, asked("valve-timing", output, "°"), SETS, "library")
        for name, (entries, found) in FOUND.items()
        for output, value in found.items()
    ),
    *(
        Check("valve-timing", f"{output.replace('_', ' ')} back from the events of a mild cam, °",
              dict(known="events", intake_opens="16°", intake_closes="48°", exhaust_opens="52°", exhaust_closes="8°"),
              value, 1e-9, asked("valve-timing", output, "°"), "the four events put back: identity", "limit")
        for output, value in dict(in_duration=244, ex_duration=240, in_centre=106, ex_centre=112).items()
    ),
]

TRENDS = {
    "overlap": Trend(rises="intake_opens exhaust_closes intake_duration exhaust_duration", falls="intake_centre exhaust_centre"),
    "separation": Trend(rises="intake_centre exhaust_centre"),
    "advance": Trend(rises="exhaust_centre", falls="intake_centre"),
    "in_closes": Trend(rises="intake_closes intake_centre intake_duration"),
}
