"""Rods: the worst is checked for bend and twist, and weights only of rods that were weighed."""

import pytest

from calc.declare.calculator import evaluate
from calc.stations.index import find
from tests.job.jobs import reading
from tests.stations.jobs import by_title, checks


def test_rods_are_weighed_by_whoever_can():
    def weights(**grams):
        return [
            (f"rod.{name}", place, "finished", f"{g} g")
            for name, all in grams.items()
            for place, g in zip("1234", all)
        ]

    rods = by_title(
        checks(*weights(big_end_mass=(400, 401, 399), small_end_mass=(160, 161, 160, 160), mass=(560,))),
        "Rods of one weight",
    )
    assert rods.entries == {
        "weights": "400 g; 160 g; 560 g | 401 g; 161 g;  | 399 g; 160 g;  | "
    }  # the fourth's big end was not weighed
    result = evaluate(find("rod-weights"), rods.entries)
    assert "Rods of one weight" not in [
        check.title for check in checks(*weights(big_end_mass=(400,), small_end_mass=(160, 160)))
    ]
    assert result.verdict.state and (rods.state, rods.said.plain()) == ("pass", "8 of 8 in order")


def test_a_rod_of_which_half_is_read_is_left_to_read():
    rods = by_title(checks(("rod.bend", "3", "finished", "0.02 mm")), "Rods straight")
    assert (
        rods.entries
        == {"bend_new": "0.03 mm", "bend_worn": "0.05 mm", "twist_new": "0.05 mm", "twist_worn": "0.08 mm"}
        and "bend_left" in rods.open
        and rods.place == ""
    )


def test_rods_straight_takes_the_readings_over_100_mm():
    rods = by_title(
        checks(("rod.bend", "3", "finished", "0.02 mm"), ("rod.twist", "3", "finished", "0.03 mm")),
        "Rods straight",
    )
    result = evaluate(find("rod-align"), rods.entries)
    assert (rods.place, rods.open) == ("3", ()) and [
        result[name] * 1000 for name in ("bend", "twist")
    ] == pytest.approx([0.02, 0.03])


def test_a_warm_reading_is_filled_in_at_20_degrees():
    found = checks(
        ("flywheel.runout", "", "finished", "0.05 mm"),
        readings=[
            reading("rod.bend", "1", "finished", "0.02 mm"),
            reading("rod.twist", "1", "finished", "0.03 mm", part="40 °C", of="forged-steel"),
        ],
    )
    # by hand: 0.03 mm shrink by 20 K of about 12 millionths, 7 nm
    assert float(
        by_title(found, "Rods straight").entries["twist_right"].removesuffix(" mm")
    ) == pytest.approx(0.03, abs=2e-5)


def test_the_worst_rod_is_filled_in():
    rods = by_title(
        checks(
            *(
                (f"rod.{name}", p, "finished", t)
                for p, bend, twist in (
                    ("1", "0.00 mm", "0.00 mm"),
                    ("2", "0.01 mm", "0.07 mm"),
                    ("3", "0.02 mm", "0.01 mm"),
                )
                for name, t in (("bend", bend), ("twist", twist))
            )
        ),
        "Rods straight",
    )
    assert (rods.place, rods.entries["twist_right"], rods.state) == ("2", "0.07 mm", "fail")
