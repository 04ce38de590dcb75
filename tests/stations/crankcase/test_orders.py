"""End float is set by its shims."""

from tests.stations.jobs import needed, said


def test_end_float_is_set_by_thicker_or_thinner_shims():
    (row,) = needed(
        ("crank.end_float", "", "assembly", "0.18 mm")
    )  # by hand: 0.18 − 0.10; 0.18 − 0.13 to 0.18 − 0.07
    assert said(row) == (
        "End-float shims",
        "0.08 mm thicker in all",
        (),
        "pass",
    ) and row.do.plain().startswith("By 0.05 mm to 0.11 mm.")
    (row,) = needed(("crank.end_float", "", "assembly", "0.03 mm"))
    assert row.size.plain() == "0.07 mm thinner in all" and row.do.plain().startswith(
        "By 0.04 mm to 0.10 mm."
    )
    (row,) = needed(
        ("crank.end_float", "", "assembly", "0.18 mm"), ("crank.end_float_shim", "1", "assembly", "0.30 mm")
    )
    assert row.size.plain() == "0.38 mm in place of 0.30 mm"
    (row,) = needed(
        ("crank.end_float", "", "assembly", "0.12 mm ± 0.02 mm")
    )  # it may be right as it is: 0.13 is allowed
    assert said(row) == (
        "End-float shims",
        "0.02 mm thicker in all",
        (),
        "unsure",
    ) and row.do.plain().startswith("By 0.00 mm to 0.05 mm.")
    (row,) = needed(
        ("crank.end_float", "", "assembly", "0.12 mm ± 0.02 mm"),
        ("crank.end_float_shim", "1", "assembly", "0.30 mm"),
    )
    assert said(row) == ("End-float shims", "0.32 mm in place of 0.30 mm", (), "unsure")
    assert needed(("crank.end_float", "", "assembly", "0.10 mm")) == []
    assert needed(("crank.end_float", "", "received", "0.18 mm")) == [], (
        "before the work it says nothing of the shims after it"
    )


def test_as_few_of_the_three_shims_are_exchanged_as_it_takes_and_each_by_its_size():
    """By hand: 0.40 − 0.10 = 0.30 thicker in all. One of 0.24 gives 0.14 at most, two of them 0.28: within 0.27 to 0.33."""
    three = [("crank.end_float_shim", place, "assembly", "0.24 mm") for place in "123"]
    (row,) = needed(("crank.end_float", "", "assembly", "0.40 mm"), *three)
    assert said(row) == ("End-float shims", "0.38 mm and 0.38 mm in place of 0.24 mm and 0.24 mm", (), "pass")
    assert row.do.plain() == "Measure again once they are in."
    (row,) = needed(("crank.end_float", "", "assembly", "0.50 mm"), *three)
    assert row.size.plain() == "0.36 mm, 0.38 mm and 0.38 mm in place of 0.24 mm, 0.24 mm and 0.24 mm"
    (row,) = needed(("crank.end_float", "", "assembly", "0.60 mm"), *three)
    assert row.state == "fail" and row.size.plain() == "0.50 mm, which is not made"
