"""Heads: stem heights as they were written, and the worst guide."""

import pytest

from calc.declare.calculator import evaluate
from calc.stations import index as stations
from calc.stations.index import find
from tests.job.orchard import orchard
from tests.stations.jobs import by_title, checks


def test_the_jobs_readings_are_filled_in_as_they_were_written():
    stems = by_title(stations.checks(orchard()), "Stem heights")
    assert stems.entries["heights"].split(" | ")[5] == "45.08 mm ± 0.02 mm", "the correction counts"
    assert (stems.state, stems.said.plain(), stems.open) == ("pass", "8 of 8 in order", ())
    result = evaluate(find("stem-height"), stems.entries)
    assert (
        result["spread"] * 1000 == pytest.approx(0.14) and result.verdict.state == "pass"
    )  # by hand: 45.10 − 44.96


def test_the_worst_guide_is_filled_in():
    guides = by_title(
        checks(
            *(
                (f, p, "finished", t)
                for f, p, t in (
                    ("guide.bore", "1 intake", "8.008 mm"),
                    ("valve.stem_intake", "1 intake", "7.960 mm"),
                    ("guide.bore", "2 exhaust", "8.015 mm"),
                    ("valve.stem_exhaust", "2 exhaust", "7.900 mm"),
                )
            )
        ),
        "Valves free in their guides",
    )
    # by hand: 0.048 of 0.030 to 0.065, and 0.115 of at most 0.095
    assert (guides.place, guides.entries["valve"], guides.entries["stem"], guides.state) == (
        "2 exhaust",
        "exhaust",
        "7.900 mm",
        "fail",
    )
