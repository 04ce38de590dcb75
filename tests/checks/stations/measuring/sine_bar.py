"""Which way results go; numbers from outside stand with the formulas."""
from tests.checks import Trend

TRENDS = {
    "height": Trend(rises="length angle"),
    "angle_set": Trend(rises="angle blocks"),
    "off": Trend(rises="blocks"),
    "per_second": Trend(rises="length", falls="angle"),
}
