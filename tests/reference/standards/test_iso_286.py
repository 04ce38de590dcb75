"""ISO 286 against two libraries over whole tables, and against the formulas that the standard's tables came from."""

import re
from math import sqrt

import data as isofits_tables  # the library isofits 1.0 keeps its tables in a module of this name
import pressfit
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.reference.standards import iso_286 as iso

EDGES = [(low, high) for low, high in zip((0, *iso.SPLIT_BANDS), iso.SPLIT_BANDS)]
SIZES = sorted(
    {*iso.SPLIT_BANDS, *(low + 0.001 for low, _ in EDGES), *((low + high) / 2 for low, high in EDGES)}
)  # mm
# What isofits has wrong: each breaks the width that the same table gives for the other classes of that grade and band.
ISOFITS_WRONG = {("K6", 10), ("E7", 355), ("E7", 400), ("f6", 140), ("f6", 160), ("f6", 180)}


def microns(name, size_mm):
    zone = iso.zone(name, size_mm / 1000)
    return round(zone.upper * 1e6, 6), round(zone.lower * 1e6, 6)


# --- whole tables, as others have them ---


def test_every_shaft_and_h_hole_as_pressfit_has_it():
    compared = 0
    for name in iso.classes(hole=False):
        letter, grade = iso.split(name)
        if (
            grade < 5 or letter not in pressfit.SHAFT_LETTERS
        ):  # it holds IT5 to IT11, and neither j nor r nor t
            continue
        for size in SIZES:
            theirs = pressfit.fit(f"H{grade}/{name}", size)
            assert microns(name, size) == (theirs.shaft_es_um, theirs.shaft_ei_um), (name, size)
            assert microns(f"H{grade}", size) == (theirs.hole_es_um, theirs.hole_ei_um), (grade, size)
            compared += 1
    assert compared > 5000


def isofits_rows(hole):
    """Class, upper edge of the band (mm) and limits (µm) of every row that isofits holds and we offer."""
    table = isofits_tables.hole_data if hole else isofits_tables.shaft_data
    for name in set(table) & set(iso.classes(hole)):
        for low, high, limits in zip(table["over"], table["inc."], table[name]):
            yield name, int(low), int(high), tuple(map(float, limits.split()))


@pytest.mark.parametrize("hole", [True, False])
def test_every_class_as_isofits_has_it_but_for_its_known_errors(hole):
    rows = list(isofits_rows(hole))
    assert len(rows) > 600
    differ = {(name, high) for name, _, high, limits in rows if microns(name, high) != limits}
    assert differ == {row for row in ISOFITS_WRONG if row[0][0].isupper() == hole}
    assert all(microns(name, low + 0.001) == microns(name, high) for name, low, high, _ in rows)


def test_what_isofits_has_wrong_contradicts_its_own_table():
    """Its H and h rows give the width of each grade; the six rows do not keep to it, and ours do."""
    for name, edge in ISOFITS_WRONG:
        rows = {(n, high): limits for hole in (True, False) for n, _, high, limits in isofits_rows(hole)}
        upper, lower = rows[name, edge]
        width = rows[("H" if name[0].isupper() else "h") + name[1:], edge]
        assert upper - lower != width[0] - width[1]
        ours = microns(name, edge)
        assert ours[0] - ours[1] == width[0] - width[1]


# --- the standard's own formulas (ISO 286-1:1988 annex A, from memory); D is the geometric mean of the band's edges in mm ---


def mean(low, high):
    return sqrt((low or 1) * high)


def near(table, formula):
    """Within the standard's rounding: a micrometre or so, a few in a hundred where it rounds to 5 or 10 µm."""
    return abs(table - formula) <= max(1.2, 0.03 * abs(formula))


@pytest.mark.parametrize("grade, units", {5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100}.items())
def test_standard_tolerances_come_from_the_tolerance_unit(grade, units):
    for low, high in zip(iso.BANDS, iso.BANDS[1:]):
        D = mean(low, high)
        assert near(iso.GRADES[grade][iso.BANDS.index(high)], units * (0.45 * D ** (1 / 3) + 0.001 * D)), (
            grade,
            high,
        )


DEVIATION_FORMULAS = {
    "d": lambda D, it: -16 * D**0.44,
    "e": lambda D, it: -11 * D**0.41,
    "f": lambda D, it: -5.5 * D**0.41,
    "g": lambda D, it: -2.5 * D**0.34,
    "k": lambda D, it: 0.6 * D ** (1 / 3),
    "m": lambda D, it: it(7) - it(6),
    "n": lambda D, it: 5 * D**0.34,
    "s": lambda D, it: it(8) + 2.5 if D < 50 else it(7) + 0.4 * D,  # up to 50 mm IT8 + 1…4
    "t": lambda D, it: it(7) + 0.63 * D,
    "u": lambda D, it: it(7) + D,
}


@pytest.mark.parametrize("letter", DEVIATION_FORMULAS)
def test_fundamental_deviations_come_from_their_formulas(letter):
    for low, high in EDGES[1:]:
        if high <= {"s": 50, "t": 30, "u": 24}.get(letter, 0):
            continue  # t does not exist up to 24 mm; below these sizes the table has more than the formula
        low, high = (low, high) if letter in "stu" else iso.band(high / 1000)
        zone = iso.zone(f"{letter}6", high / 1000)
        got = (zone.upper if letter < "h" else zone.lower) * 1e6
        assert near(
            got,
            DEVIATION_FORMULAS[letter](
                mean(low, high), lambda grade: iso.standard_tolerance(grade, high / 1000) * 1e6
            ),
        ), high


def test_s_p_and_r_follow_their_rules():
    """p lies 0 to 5 µm above IT7, s up to 50 mm 1 to 4 µm above IT8, r at the geometric mean of p and s."""
    for low, high in EDGES[1:]:
        ei = {letter: iso.zone(f"{letter}6", high / 1000).lower * 1e6 for letter in "prs"}
        assert 0 <= round(ei["p"] - iso.standard_tolerance(7, high / 1000) * 1e6, 6) <= 5
        assert high > 50 or 1 <= round(ei["s"] - iso.standard_tolerance(8, high / 1000) * 1e6, 6) <= 4
        assert near(ei["r"], sqrt(ei["p"] * ei["s"]))


# --- rules of the standard ---


@pytest.mark.parametrize("letter", ["k", "m", "n", "p", "r", "s", "t", "u"])
def test_delta_makes_hole_basis_and_shaft_basis_the_same_fit(letter):
    """What Δ is for: H7/p6 and P7/h6 have the same tightest and loosest. M6 from 250 to 315 mm is the standard's exception."""
    for size in [s for s in SIZES if s > 3]:
        if letter == "t" and size <= 24:
            continue
        for grade in range(5, 9 if letter in "kmn" else 8):
            if (letter, grade) == ("m", 6) and 250 < size <= 315:
                continue
            basis = (microns(f"H{grade}", size), microns(f"{letter}{grade - 1}", size))
            other = (microns(f"{letter.upper()}{grade}", size), microns(f"h{grade - 1}", size))
            for one, two in ((0, 1), (1, 0)):
                assert basis[0][one] - basis[1][two] == other[0][one] - other[1][two], (letter, grade, size)


@pytest.mark.parametrize("letter", ["d", "e", "f", "g", "h"])
def test_holes_with_clearance_mirror_their_shafts(letter):
    for size in SIZES:
        for grade in iso.GRADES:
            upper, lower = microns(f"{letter}{grade}", size)
            assert microns(f"{letter.upper()}{grade}", size) == (-lower, -upper)


@pytest.mark.parametrize("name", [*iso.classes(True), *iso.classes(False)])
def test_every_zone_is_as_wide_as_its_grade(name):
    for size in SIZES:
        if name[0] in "tT" and size <= 24:
            continue
        zone = iso.zone(name, size / 1000)
        assert zone.upper - zone.lower == pytest.approx(
            iso.standard_tolerance(iso.split(name)[1], size / 1000), abs=1e-12
        )
        made = {"upper": zone.upper, "lower": zone.lower, "splits": zone.upper - zone.tolerance / 2}[
            zone.gives
        ]
        assert made == pytest.approx(zone.fundamental + zone.delta, abs=1e-12)


def test_exceptions_of_the_standard():
    assert microns("k8", 25) == (33, 0) and microns("k7", 25) == (
        23,
        2,
    )  # k: only IT4 to IT7 begin above the nominal size
    assert (
        microns("M6", 280) == (-9, -41)
        and microns("M6", 320) == (-10, -46)
        and microns("M7", 280) == (0, -52)
    )
    assert microns("N9", 25) == (0, -52) and microns("N8", 25) == (-3, -36)
    assert microns("N9", 3) == (-4, -29) and microns("P7", 3) == (-6, -16)  # up to 3 mm there is no Δ
    assert microns("P8", 25) == (-22, -55)  # P to U have Δ only to IT7
    assert microns("JS7", 25) == (10.5, -10.5)  # not rounded down, as older issues do


def test_classes_that_have_grades_of_their_own():
    """ISO 286-1: j5 to j7, J6 to J8, K only to K8 over 3 mm; a zone says its own name."""
    holes, shafts = iso.classes(True), iso.classes(False)
    assert [c for c in holes if c[0] in "JK" and c[1] != "S"] == [
        "J6",
        "J7",
        "J8",
        "K4",
        "K5",
        "K6",
        "K7",
        "K8",
    ]
    assert [c for c in shafts if c[0] == "j" and c[1] != "s"] == ["j5", "j6", "j7"] and {"k9", "k11"} < set(
        shafts
    )
    assert all(iso.zone(name, 0.05).name == name for name in holes + shafts)


def test_an_edge_belongs_to_the_band_that_ends_there():
    for low, high in EDGES:
        assert iso.band(high / 1000, iso.SPLIT_BANDS) == (low, high)
        assert iso.band((high + 0.001) / 1000, iso.SPLIT_BANDS)[0] == high if high < 500 else True
    assert microns("H7", 18) == (18, 0) and microns("H7", 18.001) == (21, 0)
    assert iso.zone("H7", 0.1 * 3 * 0.1) == iso.zone("H7", 0.03)  # 0.030000000000000006 m is 30 mm
    assert microns("s6", 65) == (72, 53) and microns("s6", 65.01) == (78, 59)


@given(st.floats(0.001, 500), st.sampled_from(iso.classes(True)))
def test_a_larger_size_never_has_a_narrower_zone(size, name):
    wider = iso.standard_tolerance(iso.split(name)[1], min(500, size * 1.3) / 1000)
    assert wider >= iso.standard_tolerance(iso.split(name)[1], size / 1000)


def test_letters_run_from_loose_to_tight():
    for size in [s for s in SIZES if s > 24]:
        lowers = [microns(f"{letter}6", size)[1] for letter in "defghkmnprstu"]
        assert lowers == sorted(lowers) and len(set(lowers)) == len(lowers)


# --- refusals ---


@pytest.mark.parametrize(
    "name, words",
    [
        ("H7/p6", "is not a tolerance class"),
        ("7H", "is not a tolerance class"),
        ("", "is not a tolerance class"),
        ("Js6", "is not a tolerance class"),
        ("hH7", "is not a tolerance class"),
        ("q6", "is not a tolerance class"),
        ("H12", "nearest that is is H11"),
        ("h3", "nearest that is is h4"),
        ("z6", "nearest that is is u6"),
        ("A9", "nearest that is is D9"),
        ("c11", "nearest that is is d11"),
        ("K9", "nearest that is is K8"),
        ("j8", "nearest that is is j7"),
        ("J5", "nearest that is is J6"),
        ("fg6", "nearest that is is f6"),
    ],
)
def test_unknown_classes_are_refused_with_the_nearest(name, words):
    with pytest.raises(iso.NotOffered, match=re.escape(words)):
        iso.zone(name, 0.025)


@pytest.mark.parametrize("size", [0, -0.01, 0.5001, 0.501, float("nan"), float("inf")])
def test_sizes_outside_the_tables_are_refused(size):
    with pytest.raises(iso.NotOffered, match="over 0 up to 500 mm"):
        iso.zone("H7", size)


def test_t_begins_above_24_mm():
    with pytest.raises(iso.NotOffered, match="t6 is not defined up to 24 mm; give u6, or a size over 24 mm"):
        iso.zone("t6", 0.024)
    assert microns("t6", 24.5) == (54, 41)
    with pytest.raises(iso.NotOffered, match="give U7"):
        iso.zone("T7", 0.01)


def test_grades_that_are_not_offered_are_refused():
    with pytest.raises(iso.NotOffered, match="IT12 is not offered here; the nearest that is is IT11"):
        iso.standard_tolerance(12, 0.05)
