"""Which way results go; numbers from outside stand with the formulas."""
from tests.checks import Trend

TRENDS = {
    "chord": Trend(rises="pitch_circle", falls="holes"),
    "web": Trend(rises="pitch_circle", falls="holes hole"),
    "over_pins": Trend(rises="pitch_circle hole", falls="holes"),
    "pitch": Trend(falls="holes"),
}
