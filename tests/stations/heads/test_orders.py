"""Shims under the springs follow from stem and tip."""

from tests.stations.jobs import needed


def test_a_shim_under_one_spring_is_not_exchanged_under_another():
    height = [
        ("head.stem_height", "1 intake", "finished", "45.80 mm"),
        ("valve.tip_to_retainer", "1 intake", "finished", "8.50 mm"),
    ]
    for other in (
        "2 intake",
        "1 intake",
    ):  # what is worked out from stem and tip has no shim in it, even where one is at hand
        (row,) = needed(*height, ("spring.shim", other, "finished", "0.50 mm"))
        assert (
            row.size.plain() == "1.00 mm" and row.do.plain() == "Brings it to 36.3 mm."
        )  # by hand: 45.80 − 8.50 − 1.00, nearest to 36.5
