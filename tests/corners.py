"""Every combination of what an engine's sheet allows of some sizes: what is made so must be in order together."""

from itertools import product

from calc.core.writing import to_unit
from calc.reference import engine


def corners(*features, sheet="TS-16"):
    """The limits as made of these features, as entries, in every combination: 2 to the power of their number."""
    found = [engine.engine(sheet).feature(id) for id in features]
    for which in product(("low", "high"), repeat=len(found)):
        yield tuple(
            f"{to_unit(getattr(f, end), f.form.metric)!r} {f.form.metric.symbol}"
            for f, end in zip(found, which)
        )
