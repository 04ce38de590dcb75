"""Which way results go; numbers from outside stand with the formulas."""
from tests.checks import Trend

TRENDS = {
    "small": Trend(rises="large", falls="length"),
    "side": Trend(rises="large", falls="length"),
    "one_in": Trend(rises="length", falls="large"),
    "per_foot": Trend(rises="large", falls="length"),
    "over_low": Trend(rises="large roller", falls="length"),
    "over_high": Trend(rises="large roller blocks", falls="length"),
}
