"""Is the guide worn or too tight; and a new one: does it hold, and what must it be reamed to?"""

from calc.core.result import Judged, Limit
from calc.stations.heads.guide_fit import fitted_guide, new_guide
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.clearance import Clearance
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.shared.sleeve import Grip


def verdict_on(i: In, sizes: Sizes, grip: Grip, stem: Clearance) -> Judged:
    return new_guide.verdict_on(i, sizes, grip, stem) if sizes.new else fitted_guide.verdict_on(i, stem)


def limits_of(i: In, sizes: Sizes, grip: Grip, stem: Clearance) -> tuple[Limit, ...]:
    tight = (
        Limit("the clearance when running", stem.running, low=0),
        Limit("the room for oil when running", stem.running, low=i.least_hot, level="attention"),
        Limit("the clearance while warming up", stem.first, low=0, level="attention"),
    )
    return new_guide.limits_of(i, grip, stem, tight) if sizes.new else fitted_guide.limits_of(i, stem, tight)
