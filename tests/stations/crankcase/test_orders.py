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
        ("crank.end_float", "", "assembly", "0.18 mm"), ("crank.end_float_shim", "", "assembly", "0.30 mm")
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
        ("crank.end_float_shim", "", "assembly", "0.30 mm"),
    )
    assert said(row) == ("End-float shims", "0.32 mm in place of 0.30 mm", (), "unsure")
    assert needed(("crank.end_float", "", "assembly", "0.10 mm")) == []
    assert needed(("crank.end_float", "", "received", "0.18 mm")) == [], (
        "before the work it says nothing of the shims after it"
    )
