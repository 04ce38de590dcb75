"""Threads in sheet: verdicts, refusals, and what must always be so."""

from math import pi

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.stations.threads.sheet_insert import sheet_insert
from calc.stations.threads.sheet_insert.sold import MACHINE, NUTS, SCREWS

CLINCH, COLLAR = dict(way="clinch-nut"), dict(way="collar")
SCREW = dict(way="screw", thread="ST4.8", torque="0.8 N·m", pull="300 N")


@pytest.mark.parametrize(
    "entries, state, words",
    [
        ({}, "pass", "Holds: 4.9 times the pull"),
        (dict(thickness="0.4 mm"), "fail", "Sheet too thin by 0.10 mm for the grip"),
        (dict(thickness="3.5 mm"), "fail", "Sheet too thick by 0.50 mm for the grip"),
        (dict(edge="8 mm"), "fail", "Too near the edge by 2.50 mm"),
        (dict(pull="5000 N"), "fail", "Pulls out: bears 3958 N of 5000 N"),
        (dict(torque="3 N·m"), "fail", "Spins or strips at 2.8 N·m"),
        (dict(pull="2500 N"), "attention", "Bears 1.6 times the pull only"),
        (dict(torque="2.5 N·m"), "attention", "Torque near the limit of 2.8 N·m"),
        (dict(edge="10.5 ± 1 mm"), "unsure", "distance to the edge"),
        (CLINCH | dict(pull="300 N"), "pass", "Holds: 2.4 times the pull"),
        (CLINCH | dict(thread="M6x1"), "fail", "Sheet too thin by 0.40 mm"),
        (COLLAR, "pass", "Holds: 3.1 times the pull"),
        (COLLAR | dict(thread="M8x1.25"), "fail", "Thread cuts through the collar's wall"),
        (COLLAR | dict(alloy="aluminium"), "fail", "Collar tears: hole grows by 55 %"),
        (COLLAR | dict(height="1.3"), "fail", "Only 1.1 turns hold: no thread"),
        (
            dict(thread="M3x0.5", thickness="3 mm", pull="4000 N", torque="1 N·m"),
            "fail",
            "Screw too weak: bears 2918 N of 4000 N",
        ),
        (
            dict(thread="M3x0.5", thickness="3 mm", pull="400 N", torque="3 N·m"),
            "fail",
            "Screw gives way at 1.8 N·m",
        ),
        (SCREW, "pass", "Holds: 4.1 times the pull"),
        (SCREW | dict(thickness="3 mm"), "fail", "Sheet too thick: the screw seizes"),
    ],
)
def test_verdicts(entries, state, words):
    verdict = sheet_insert(**entries).verdict
    assert verdict.state == state and words in verdict.headline.plain(), verdict.headline.plain()


@pytest.mark.parametrize(
    "entries, field, words",
    [
        (dict(way="screw"), "thread", "is not a sheet-metal screw; choose one of ST2.9 to ST6.3"),
        (dict(thread="ST4.8"), "thread", "choose one of M3x0.5 to M10x1.5"),
        (dict(grip_least="4 mm"), "grip_least", "not less than the most"),
        (dict(edge="3 mm"), "edge", "what sits in the hole is 9.45 mm across"),
        (COLLAR | dict(thickness="3 mm"), "thickness", "takes more metal than the hole has"),
        (dict(thickness="0"), "thickness", "below 0.3"),
        (dict(thickness="20"), "thickness", "above 6"),
        (dict(alloy="wood"), "alloy", "choose one of steel"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        sheet_insert(**entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


@pytest.mark.parametrize(
    "thread, proof",
    [
        ("M3x0.5", 2920),
        ("M4x0.7", 5100),
        ("M5x0.8", 8230),
        ("M6x1", 11600),
        ("M8x1.25", 21200),
        ("M10x1.5", 33700),
    ],
)
def test_no_sheet_bears_more_than_the_screw_in_it(thread, proof):
    """ISO 898-1, table of proof loads, class 8.8, coarse threads, N, three figures; from memory. Six millimetres of stainless sheet bear more than any of them."""
    for entries in (dict(grip_most="7 mm"), CLINCH):
        found = sheet_insert(
            thread=thread,
            alloy="stainless",
            tensile="1500 MPa",
            **(entries | dict(thickness="6 mm", edge="60 mm")),
        )
        assert found["pull"] == pytest.approx(proof, rel=7e-3) and found["turn"] == pytest.approx(
            0.2 * proof * float(thread[1:].split("x")[0]) / 1000, rel=7e-3
        )


@given(st.floats(0.5, 2.0), st.floats(1.0, 2.2), st.sampled_from(MACHINE))
def test_a_collar_keeps_its_volume(t, z, thread):
    """The ring of sheet between pilot hole and outside is what stands in the collar."""
    try:
        found = sheet_insert(way="collar", thickness=f"{t!r} mm", height=repr(z), thread=thread, edge="60 mm")
    except Refused as refused:
        assert refused.errors[0].field == "thickness"
        return
    outside, hole = found["across"], found["hole"]
    bore = outside - 2 * 0.65 * t * 1e-3
    flat, drawn = pi / 4 * (outside**2 - hole**2) * t * 1e-3, pi / 4 * (outside**2 - bore**2) * z * t * 1e-3
    assert flat == pytest.approx(drawn, rel=1e-9) and 0 < hole <= bore * (1 + 1e-9)


@given(
    st.floats(0.5, 2.0), st.floats(0.5, 2.0), st.sampled_from([{}, CLINCH, SCREW])
)  # as long as the screw outlasts the sheet
def test_thicker_sheet_bears_more_in_proportion(a, b, entries):
    assume(abs(a - b) > 1e-3)
    thin, thick = (sheet_insert(thickness=f"{t!r} mm", **entries) for t in sorted((a, b)))
    assert thick["pull"] / thin["pull"] == pytest.approx(max(a, b) / min(a, b))
    assert thick["turn"] / thin["turn"] == pytest.approx(max(a, b) / min(a, b))


@given(st.floats(0.5, 2.0), st.sampled_from(sorted(SCREWS)))
def test_a_screw_s_hole_lies_between_its_core_and_its_outside(t, thread):
    core, outside = SCREWS[thread][1] * 1e-3, SCREWS[thread][0] * 1e-3
    assert core < sheet_insert(way="screw", thread=thread, thickness=f"{t!r} mm")["hole"] < outside


@pytest.mark.parametrize("thread", MACHINE)
def test_a_nut_s_hole_is_larger_than_its_thread(thread):
    for way in ("rivet-nut", "clinch-nut"):
        found = sheet_insert(way=way, thread=thread, edge="40 mm", thickness="2.5 mm")
        assert found["hole"] in (pytest.approx(NUTS[thread][0] * 1e-3), pytest.approx(NUTS[thread][1] * 1e-3))
        assert (
            found["hole"] > float(thread[1:].split("x")[0]) * 1e-3 and found["edge_least"] > found["hole"] / 2
        )


def test_remarks_speak_of_the_way():
    def words(**entries):
        return " ".join(r.text.plain() for r in sheet_insert(**entries).remarks)

    assert "spins in its hole" in words() and "spins in its hole" not in words(**COLLAR)
    assert "hardened one" in words(**CLINCH, alloy="stainless") and "hardened one" not in words(**CLINCH)
    assert "rots when wet" in words(alloy="aluminium") and "pushes it back out" in words(**CLINCH)


@pytest.mark.parametrize(
    "entries",
    [
        dict(thread="M4x0.7", edge="9 mm"),
        dict(thread="M6x1", edge="13.5 mm", thickness="1.5 mm"),
        CLINCH | dict(thread="M4x0.7", edge="7.02 mm"),
        SCREW | dict(thread="ST5.5", edge="8.19 mm", thickness="1.5 mm"),
    ],
)
def test_the_distance_to_the_edge_that_the_result_names_is_enough(entries):
    """1.5 and 1.3 holes, 1.5 screws (AISI S100 for the screw): right on it is not too near."""
    entries = entries | dict(pull="10 N", torque="0.1 N·m")
    found = sheet_insert(**entries)
    assert (
        found["edge_least"] * 1e3 == pytest.approx(float(entries["edge"].split()[0]))
        and found.verdict.state == "pass"
    ), found.verdict.headline.plain()
    assert (
        "Too near the edge"
        in sheet_insert(
            **entries | dict(edge=f"{found['edge_least'] * 1e3 - 0.02:.3f} mm")
        ).verdict.headline.plain()
    )
