"""Fit by its classes: limits and clearances against pressfit, every branch of the verdict, refusals."""

from decimal import Decimal

import pressfit
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.reference.standards import iso_286
from calc.stations.measuring.iso_fit import iso_fit
from calc.stations.measuring.iso_fit.asked import HOLES, SHAFTS


def run(system="metric", /, **entries):
    return evaluate(iso_fit, entries, system)


def told(found):
    return found.verdict.state, found.verdict.headline.plain()


FITS = [
    f"H{hole}/{shaft}"
    for hole in range(6, 10)
    for shaft in SHAFTS
    if shaft.rstrip("0123456789") in pressfit.SHAFT_LETTERS
    and 5 <= int(shaft.lstrip("abcdefghijklmnopqrstu")) <= 9
]


@given(
    st.sampled_from(FITS),
    st.sampled_from([4, 14, 18, 18.5, 25, 30, 50, 60, 65, 85, 120.25, 180, 200, 315, 500]),
)
def test_fits_on_the_hole_basis_as_pressfit_has_them(fit, size):
    hole, shaft = fit.split("/")
    theirs, found = pressfit.fit(fit, size), run(size=f"{size} mm", hole=hole, shaft=shaft)
    least, most = theirs.clearance_um
    assert found["tightest"] * 1e6 == pytest.approx(least, abs=1e-6) and found[
        "loosest"
    ] * 1e6 == pytest.approx(most, abs=1e-6)
    assert (found["hole_low"] * 1e3, found["hole_high"] * 1e3) == pytest.approx(
        theirs.hole_limits_mm, abs=1e-9
    )
    assert found["shaft_low"] * 1e3 == pytest.approx(size + theirs.shaft_ei_um / 1000, abs=1e-9)
    assert found["shaft_high"] * 1e3 == pytest.approx(size + theirs.shaft_es_um / 1000, abs=1e-9)
    if least != 0:  # pressfit has no rule for a tightest of nothing; ISO 286-1 counts it as clearance
        assert told(found)[1].startswith(
            {"clearance": "Clearance", "transition": "Transition", "interference": "Interference"}[
                theirs.kind
            ]
        )


@given(st.floats(3.001, 500), st.sampled_from(HOLES), st.sampled_from(SHAFTS))
def test_clearances_are_those_of_the_extreme_parts(size, hole, shaft):
    size = round(size, 3)
    if size <= 24 and (hole[0] == "T" or shaft[0] == "t"):
        return
    found = run(size=f"{size} mm", hole=hole, shaft=shaft)
    assert found["tightest"] == pytest.approx(found["hole_low"] - found["shaft_high"], abs=1e-12)
    assert found["loosest"] - found["tightest"] == pytest.approx(
        sum(iso_286.standard_tolerance(iso_286.split(name)[1], size / 1000) for name in (hole, shaft)),
        abs=1e-12,
    )
    assert "Text(" not in str(found.verdict.headline.plain()) + str([r.text.plain() for r in found.remarks])


@pytest.mark.parametrize(
    "entries, headline",
    [
        ({"shaft": "g6"}, "Clearance fit: 0.007 mm to 0.041 mm play"),
        ({"shaft": "p6"}, "Interference fit: 0.001 mm to 0.035 mm grip"),
        ({"shaft": "k6"}, "Transition fit: 0.015 mm grip to 0.019 mm play"),
        ({"shaft": "h6"}, "Clearance fit: 0.000 mm to 0.034 mm play"),
        ({"shaft": "js7"}, "Transition fit: 0.0105 mm grip to 0.0315 mm play"),
        ({"hole": "P7", "shaft": "h6"}, "Interference fit: 0.001 mm to 0.035 mm grip"),
        ({"size": "14", "shaft": "p6"}, "Interference fit: 0.000 mm to 0.029 mm grip"),
    ],
)
def test_kinds_of_fit(entries, headline):
    """25 mm: H7 +21/0, g6 −7/−20, p6 +35/+22, k6 +15/+2, h6 0/−13, P7 −14/−35 (ISO 286-2, and pressfit)."""
    assert told(run(**entries)) == ("pass", headline)


# parts that were measured; H7/p6 at 25 mm: hole 25.000 to 25.021, shaft 25.022 to 25.035


@pytest.mark.parametrize(
    "entries, state, headline, do",
    [
        (
            {"hole_read": "25.010"},
            "pass",
            "Hole in limits: 25.010 mm",
            "Its shaft may be 25.022 mm to 25.035 mm.",
        ),
        (
            {"shaft_read": "25.030"},
            "pass",
            "Shaft in limits: 25.030 mm",
            "Its hole may be 25.000 mm to 25.021 mm.",
        ),
        (
            {"hole_read": "25.010", "shaft_read": "25.028"},
            "pass",
            "Both in limits: 0.018 mm grip",
            "They want a press",
        ),
        (
            {"hole": "H7", "shaft": "g6", "hole_read": "25.010", "shaft_read": "24.990"},
            "pass",
            "Both in limits: 0.020 mm play",
            "together by hand",
        ),
        (
            {"hole_read": "25.0225", "shaft_read": "25.025"},
            "attention",
            "Hole too large by 0.0015 mm; the pair fits",
            "Together they have 0.0025 mm grip, which H7/p6 allows.",
        ),
        (
            {"hole_read": "25.005", "shaft_read": "25.038"},
            "attention",
            "Shaft too large by 0.003 mm; the pair fits",
            "Together they have 0.033 mm grip",
        ),
        ({"hole_read": "24.998"}, "fail", "Hole too small by 0.002 mm", "Open it by 0.002 mm to 0.023 mm."),
        (
            {"hole_read": "25.030"},
            "fail",
            "Hole too large by 0.009 mm",
            "A shaft of 25.031 mm to 25.065 mm would give H7/p6 with it",
        ),
        (
            {"shaft_read": "25.040"},
            "fail",
            "Shaft too large by 0.005 mm",
            "Take 0.005 mm to 0.018 mm off its diameter.",
        ),
        (
            {"shaft_read": "25.020"},
            "fail",
            "Shaft too small by 0.002 mm",
            "A hole of 24.985 mm to 25.019 mm would give H7/p6 with it",
        ),
        ({"hole_read": "25.030", "shaft_read": "25.020"}, "fail", "Hole too large by 0.009 mm", "A shaft of"),
        # both out: a shaft at its own limits would be loose in so large a hole (25.022 in 25.030), so the hole says what the shaft must be
        (
            {"hole_read": "25.030", "shaft_read": "25.080"},
            "fail",
            "Hole too large by 0.009 mm",
            "A shaft of 25.031 mm to 25.065 mm would give H7/p6 with it",
        ),
        (
            {"hole_read": "24.950", "shaft_read": "25.020"},
            "fail",
            "Shaft too small by 0.002 mm",
            "A hole of 24.985 mm to 25.019 mm would give H7/p6 with it",
        ),
        ({"hole_read": "25.020 ± 0.004"}, "unsure", "the hole is right", "Measure again"),
        ({"hole_read": "25.010 ± 0.004"}, "pass", "Hole in limits", ""),
    ],
)
def test_measured_parts(entries, state, headline, do):
    found = run(**entries)
    assert (
        found.verdict.state == state
        and headline in found.verdict.headline.plain()
        and do in found.verdict.do.plain()
    )
    assert len(found.tables[0].rows) == sum("read" in name for name in entries)


@pytest.mark.parametrize("size", ["3.7 mm", "25 mm", "37.4 mm", "63.3 mm", "499.9 mm"])
@pytest.mark.parametrize(
    "hole, shaft", [("H7", "p6"), ("K7", "h6"), ("JS7", "js6"), ("N9", "g6"), ("U7", "u6")]
)
def test_a_part_right_on_its_limit_is_in(size, hole, shaft):
    """Exact decimal limits, worked without floats from whole micrometres."""
    names, nominal = {"hole_read": hole, "shaft_read": shaft}, Decimal(size.split()[0])
    for field, name in names.items():
        zone = iso_286.zone(name, float(nominal) / 1000)
        for deviation in (zone.upper, zone.lower):
            exact = nominal + Decimal(round(deviation * 1e7)) / 10000
            assert told(run(size=size, hole=hole, shaft=shaft, **{field: f"{exact} mm"}))[0] == "pass", (
                name,
                exact,
            )
            beyond = exact + Decimal("0.0001") * (1 if deviation == zone.upper else -1)
            assert told(run(size=size, hole=hole, shaft=shaft, **{field: f"{beyond} mm"}))[0] == "fail", (
                name,
                beyond,
            )


def test_the_rest_of_the_hole_that_would_save_a_small_shaft_gives_the_same_fit():
    """The mate that is offered makes the classes' own clearances."""
    found = run(shaft_read="25.020")
    low, high = (found.verdict.do.values[k] for k in "ab")
    assert float(low) - 0.025020 == pytest.approx(found["tightest"], abs=1e-12)
    assert float(high) - 0.025020 == pytest.approx(found["loosest"], abs=1e-12)


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"hole": "h7"}, "hole", '"h7" is not a choice; choose one of 43, such as H7'),
        ({"shaft": "P6"}, "shaft", "such as p6"),
        ({"shaft": "q6"}, "shaft", "is not a choice"),
        ({"hole": "H12"}, "hole", "such as H11"),
        ({"hole": ""}, "hole", "is empty"),
        (
            {"size": "20", "shaft": "t6"},
            "shaft",
            "not defined up to 24 mm; give u6, or a larger nominal size",
        ),
        ({"size": "24", "hole": "T7"}, "hole", "give U7"),
        ({"size": "0"}, "size", "below 0.5"),
        ({"size": "501"}, "size", "above 500"),
        ({"size": "nan"}, "size", "not a size"),
        ({"hole_read": "27"}, "hole_read", "far from the nominal 25.00 mm"),
        ({"shaft_read": "0.5 in"}, "shaft_read", "far from the nominal"),
        ({"size": "3 bar"}, "size", "a length belongs here"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        run(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


def test_every_offered_class_is_of_the_standard_and_in_order():
    for names, hole in ((HOLES, True), (SHAFTS, False)):
        assert len(set(names)) == len(names) and set(names) <= set(iso_286.classes(hole))
        letters = [name.rstrip("0123456789").lower() for name in names]
        assert [iso_286.LETTERS.index(letter) for letter in letters] == sorted(
            iso_286.LETTERS.index(letter) for letter in letters
        )


def test_the_drawing_says_that_it_is_exaggerated_and_marks_the_parts():
    found = run(hole_read="25.010", shaft_read="25.028")
    figure = found.figures[0]
    assert "larger than the parts" in figure.exaggerated
    assert [shape.words for shape in figure.shapes if getattr(shape, "words", None) == "yours"] == [
        "yours"
    ] * 2
    assert (
        figure.alt.plain()
        == "Zones of hole H7 and shaft p6 from the nominal size 25.00 mm: hole 0 µm to +21 µm, shaft +22 µm to +35 µm."
    )
    assert "thou" in figure.alt.plain("inch")
