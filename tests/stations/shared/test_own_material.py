"""A maker's own values in place of a generic grade's."""

import pytest

from calc.core.kinds import MODULUS
from calc.core.result import Refused
from calc.core.working import constant, form
from calc.declare.calculator import Answer, Inputs, Output, Outputs, Rows, answer, calculator, evaluate
from calc.declare.standing import Standing
from calc.reference.engine import demo
from calc.reference.materials import MATERIALS
from calc.stations.shared.own_material import own_grade, own_values

GRADE = MATERIALS["sintered-iron"]


class Out(Outputs):
    E = Output("Stiffness", "E", form(MODULUS, 0), main=True)


def told(standing=None, **entries):
    """The materials that a calculator's function is given for the entries."""
    found = []

    class In(Inputs):
        own: Rows = own_values("ring", "head")

    @calculator("trial", "Trial", In, Out, purpose="?")
    def trial(i: In) -> Answer:
        found.extend(own_grade(MATERIALS[id], row) for id, row in zip(("sintered-iron", "al-si-t6"), i.own))
        return answer(
            Out.E(constant("E", "E", form(MODULUS, 0), found[0].E) * 1), verdict=("pass", "Ok", "Ok.")
        )

    assert evaluate(trial, entries, standing=standing).verdict.state == "pass"
    return found


def test_nothing_typed_leaves_the_grades_as_they_are():
    assert told() == [GRADE, MATERIALS["al-si-t6"]]


def test_a_reader_who_types_none_misses_nothing():
    assert told(Standing(demo())) == [GRADE, MATERIALS["al-si-t6"]]
    assert told(Standing(demo()), **{"own.1.1": "140 GPa"})[0].E == 140e9


def test_what_is_typed_goes_before_and_the_rest_stays():
    ring, head = told(own="140 GPa; ; 12.5 µm/(m·K)")
    assert (ring.E, ring.nu, ring.yield_20) == (
        140e9,
        GRADE.nu,
        GRADE.yield_20,
    ) and ring.alpha == pytest.approx(12.5e-6)
    assert head == MATERIALS["al-si-t6"]
    _, head = told(**{"own.2.4": "150 MPa", "own.2.2": "0.31"})
    assert head.nu == 0.31 and head.yield_20 == pytest.approx(150e6)


def test_strength_falls_with_heat_as_the_grades_does():
    (strong,) = told(own="; ; ; 760 MPa")[:1]
    for celsius in (20, 150, 300, 500):
        assert strong.compressive_yield_at(celsius + 273.15) == pytest.approx(
            2 * GRADE.compressive_yield_at(celsius + 273.15)
        )


def test_what_cannot_be_is_refused():
    with pytest.raises(Refused) as refused:
        told(own="140; 0.6")
    assert "Poisson's ratio: 0.60 is above 0.45" in refused.value.errors[0].sentence()
