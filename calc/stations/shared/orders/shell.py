"""A bearing shell between journal and housing: which housing it finds, and what clearance it leaves."""

import math
from collections.abc import Iterable

from calc.core.conformance import COVERAGE
from calc.core.result import Text, say
from calc.core.working import constant
from calc.job.sizes import Sizes, decision
from calc.reference.engine import STANDARD, Feature, Step
from calc.reference.size import made_to


def housings(sizes: Sizes, housing: str, places: Iterable[str]) -> dict[str, Step]:
    """The size that the housing at each place was bored to, perhaps in an earlier life.

    One that was not read is as the others are, standard where those differ.
    """
    feature = sizes.feature(housing)
    if feature is None:
        return dict.fromkeys(places, STANDARD)
    steps = {
        place: made_to(feature, float(found.value), found.stage, COVERAGE * found.u)
        for place in places
        if (found := sizes.best(housing, place))
    }
    usual = set(steps.values()).pop() if len(set(steps.values())) == 1 else STANDARD
    return {place: steps.get(place, usual) for place in places}


def clearance_left(
    sizes: Sizes, journal: str, wall: str, housing: str, thick: float, places: list[str]
) -> tuple[str, Text] | None:
    """Which clearances shells of a wall so `thick` (m) leave, as (state, words).

    None where journal and housing are not both read.
    """
    clearance = _clearance_of(sizes, {journal, wall, housing})
    if clearance is None:
        return None
    values, decisions = [], []
    for place in places:
        outside, inside = (sizes.best(id, place, ("finished", "assembly")) for id in (housing, journal))
        if outside and inside:
            value = float(outside.value) - 2 * thick - float(inside.value)
            values.append(value)
            decisions.append(decision(value, math.hypot(outside.u, inside.u), clearance.low, clearance.high))
    if not values:
        return None
    ends = [constant("", clearance.label, clearance.form, end) for end in (min(values), max(values))]
    if "out" in decisions:
        ends = [end.held_to(clearance.low, clearance.high) for end in ends]
    least, most = ends
    words = (
        say("Leaves {least} clearance", least=least)
        if least.text() == most.text()
        else say("Leaves {least} to {most} clearance", least=least, most=most)
    )
    if "out" in decisions:
        return "attention", say(
            "{words}: outside the limits with walls of that size, so measure the walls before closing.",
            words=words,
        )
    if "cannot tell" in decisions:
        return "attention", say("{words}: near a limit, so measure the walls before closing.", words=words)
    return "pass", say("{words}.", words=words)


def _clearance_of(sizes: Sizes, parts: set[str]) -> Feature | None:
    """The size of the sheet that follows from just these."""
    features = sizes.sheet.features.values() if sizes.sheet else ()
    return next((feature for feature in features if {id for _, id in feature.terms} == parts), None)
