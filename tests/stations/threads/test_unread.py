"""What nobody told is asked for: no thread, class or metal of the example decides for a reader's part."""

import pytest

from calc.declare.calculator import evaluate
from calc.declare.choice import Choice
from calc.declare.quantity import Quantity
from calc.declare.standing import Standing
from calc.declare.taken import MISSED
from calc.reference.engine import engine
from calc.reference.standards.threads import THREADS
from calc.stations import index as stations

OURS = [id for id in stations.ids() if stations.find(id).station in ("threads", "rods", "measuring")]
SHEETS = [Standing(), Standing(engine("TS-16")), Standing(engine("RC-40"))]


@pytest.mark.parametrize("id", OURS)
def test_nothing_is_judged_before_anything_is_told(id):
    for standing in SHEETS:
        assert evaluate(stations.find(id), {}, standing=standing).verdict.state == "awaited"


@pytest.mark.parametrize("id", OURS)
def test_a_thread_a_class_and_a_metal_are_facts_of_the_part(id):
    for declared in stations.find(id).inputs:
        if isinstance(declared, Choice) and (
            set(declared.options) & set(THREADS)
            or declared.name
            in ("strength", "bolt_class", "material", "parent", "alloy", "what", "part", "way", "kind")
        ):
            assert (
                declared.must
                or declared.feature
                or declared.name == "kind"
                and id == "units"
                or declared.name == "way"
                and id == "insert-install"
            ), declared.name


@pytest.mark.parametrize("id", OURS)
def test_without_an_engine_nothing_comes_from_one(id):
    """What is taken for granted says why; any other number that nobody told is missed, counts for nothing, or is left out."""
    for t in evaluate(stations.find(id), {}, standing=Standing()).taken:
        if isinstance(t.input, Quantity):
            assert (
                t.origin is MISSED
                or t.origin.kind == "none"
                or (t.origin.kind, bool(t.origin.words)) == ("assumed", True)
            ), t.input.name
