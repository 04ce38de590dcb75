"""Sizes that serve a calculator's sum and are no fault of the part by the engine's own sheet: by none of them is a good part condemned."""

import pytest

from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.reference.engine import engine
from calc.stations.index import find

SHEET = engine("TS-16")
F = {id: f for id, f in SHEET.features.items()}
MM = 1e-3

# what the invented sheet itself allows, and what is read of such a part
LIFTER = dict(runout="0.02", bore="17.48", unit_outside="17.5", body="20.967")
BOLT = dict(torque="33", thread="M9x1", strength="10.9")
BUSH = dict(pin="21.998", bush_outside="26.295", rod_bore="26.260", supplied_bore="21.85")
SPRING = {
    "fitted_height": "36.5",
    "wire": "4.6",
    "total_turns": "5.5",
    "loads.1.1": "250",
    "loads.1.2": "650",
}
CASES = {
    "a piston nearer to its valve than as drawn, the room still wanted left": (
        "valve-to-piston",
        "1 intake",
        dict(way="3.00", edge="2.00"),
    ),
    "a chamber cut at its step, the deck shimmed for it": (
        "compression",
        "1",
        dict(bore="88.010", chamber="54.9 cm³", deck="1.30", dome="-2 cm³"),
    ),
    "a piston with a deeper bowl": (
        "compression",
        "1",
        dict(bore="88.010", chamber="55.6 cm³", deck="1.20", dome="-3 cm³"),
    ),
    "a plunger worn, its clearance within 0.016 mm": (
        "lifter-bore",
        "",
        LIFTER | dict(plunger="15.8685", plunger_bore="15.8820"),
    ),
    "a plunger's bore worn likewise": (
        "lifter-bore",
        "",
        LIFTER | dict(plunger="15.8700", plunger_bore="15.8840"),
    ),
    "a worn plunger over its oil hole": (
        "oil-hole",
        "",
        dict(
            hole="1.2",
            pressure="1 bar",
            oil="sae-20w-50",
            oil_temperature="100",
            sink="0.05",
            plunger="15.8685",
        ),
    ),
    "a rod whose pads were ground by 4 g and 8 g": (
        "rod-bolt",
        "",
        BOLT | dict(small_end="154", big_end="386"),
    ),
    "an eye bored to the next size, half of that off its wall": (
        "small-end-bush",
        "",
        BUSH | dict(rod_wall="3.7"),
    ),
    "a pocket bored to the second oversize": (
        "seat-fit",
        "1 intake",
        dict(pocket_bore="38.0", ring_outside="38.105", head_wall="7.8"),
    ),
    "a guide's hole bored to the second oversize": (
        "guide-fit",
        "1 intake",
        dict(
            stage="new",
            guide_hole="13.209",
            guide_outside="13.246",
            stem="7.96",
            supplied_bore="7.95",
            head_wall="7.4",
        ),
    ),
    "a seat that was read where the valve lies, not at the valve's edge": (
        "leak-test",
        "1 intake",
        dict(start="60", end="59", time="60", volume="250", seat="33"),
    ),
    "the lift that a lobe on its wear limit leaves": ("valve-spring", "1 intake", SPRING | dict(lift="8.66")),
    "a head opened at the joint to its manifold, as its page says": (
        "port-section",
        "1 intake",
        dict(
            shape="oval",
            width="36.6",
            height="30",
            manifold_width="36.6",
            manifold_height="30",
            aside="0",
            above="0",
        ),
    ),
    "a throat opened for more flow": (
        "valve-flow-area",
        "1 intake",
        dict(lift="8.87", valve_head="35", seat_inner="31.9", throat="30.6", stem="7.96"),
    ),
    "a valve refaced, its face wider": (
        "seat-cut",
        "1 intake",
        dict(
            valve_head="35",
            seat_outer="34.4",
            seat_inner="31.4",
            seat_depth="0.35",
            valve_margin="1.2",
            stem_risen="0.1",
            valve_face="3.8",
        ),
    ),
}


@pytest.mark.parametrize("case", CASES)
def test_a_good_part_is_not_condemned_by_a_size_that_only_serves_the_sum(case):
    id, place, entries = CASES[case]
    verdict = evaluate(find(id), entries, standing=Standing(SHEET, place)).verdict
    assert verdict.state == "pass", (verdict.headline.plain(), verdict.do.plain())


def test_the_sheet_itself_allows_what_the_cases_read():
    def lift_of(lobe):
        return lobe * 1.10 - F["lifter.lash"].nominal

    assert (
        15.8820 - 15.8685 <= F["lifter.plunger_clearance"].wear / MM
        and 15.8840 - 15.8700 <= F["lifter.plunger_clearance"].wear / MM
    )
    assert (
        154 >= 1e3 * (F["rod.small_end_mass"].low - F["rod.pad_loss_small_end"].wear) - 1
        and 386 >= 1e3 * (F["rod.big_end_mass"].low - F["rod.pad_loss_big_end"].wear) - 1
    )
    assert (
        3.7 >= (F["rod.small_end_wall"].low - 0.125 * MM) / MM
        and 7.8 >= (F["head.seat_pocket_wall"].low - 0.25 * MM) / MM
        and 7.4 >= (F["head.guide_wall"].low - 0.1 * MM) / MM - 1e-9
    )
    assert lift_of(F["cam.lobe_lift"].wear) == pytest.approx(8.65 * MM) and lift_of(
        F["cam.lobe_lift"].nominal
    ) == pytest.approx(F["valve.lift"].nominal)
    assert F["head.seat_inner_intake"].nominal < 33 * MM < F["head.valve_head_intake"].nominal


@pytest.mark.parametrize(
    "big, small, state", [("390", "155", "pass"), ("385", "153", "pass"), ("390", "152", "fail")]
)
def test_a_rod_that_was_ground_as_its_page_allows_is_no_scrap_by_its_weight(big, small, state):
    weights = {
        f"weights.{r}.{c}": text
        for r in (1, 2, 3, 4)
        for c, text in ((1, big), (2, small), (3, str(int(big) + int(small))))
    }
    verdict = evaluate(find("rod-weights"), weights, standing=Standing(SHEET)).verdict
    assert verdict.state == state, (verdict.headline.plain(), verdict.do.plain())
    for end, loss in (("big_end_mass", "pad_loss_big_end"), ("small_end_mass", "pad_loss_small_end")):
        assert F[f"rod.{end}"].wear == pytest.approx(F[f"rod.{end}"].low - F[f"rod.{loss}"].wear)
