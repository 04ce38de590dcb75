"""What helps a big end that does not clean up: how much more comes off which face, or that nothing does."""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.result import Text, say
from calc.core.working import Number, constant
from calc.formulas import split_bore
from calc.stations.rods.big_end_resize.asked import MIDWAY, In
from calc.stations.rods.big_end_resize.rod import Rod
from calc.stations.shared.forms import SIZE

MOST_CUT = 0.5e-3  # m off one face
ALIKE = 0.5e-6  # m: cuts nearer to each other than this are told as one
# m off one face: more, and bolts bottom and the notch gets shallow; common practice, no source
MUCH_CUT = 0.15e-3

Cuts = tuple[float, float]  # off rod and cap, m


def remedy(rod: Rod, i: In) -> Text:
    if past(i.wanted - 2 * rod.stocks[2], i.high):
        return say(
            "It is too wide at the parting line, where no cut of the faces narrows it. Scrap it, unless the"
            " maker has shells of a larger outside."
        )
    enough = _enough(rod, i)
    if not enough:
        return say(
            "A wider place beside the parting line stays, however much the faces are cut. Measure again; if"
            " it is so, scrap it."
        )
    long_enough = [cuts for cuts in enough if not past(i.least_length, _length(rod, cuts, i.centred))]
    if not long_enough:
        return say(
            "It is too long along the rod, and the cut that cleans it up leaves {L} of centre distance, less"
            " than the {least} allowed. Measure it again; if it is so, look for another rod.",
            L=at_most(_length(rod, enough[-1], i.centred), SIZE),
            least=i.least_length,
        )
    a, b = map(float, rod.cuts)
    cuts = next(((x, y) for x, y in long_enough if max(a + x, b + y) <= MUCH_CUT), long_enough[-1])
    return _told(cuts, _length(rod, cuts, i.centred))


def _enough(rod: Rod, i: In) -> list[Cuts]:
    """Cuts with which it cleans up: at the size wanted, or where the sides are wider, at theirs, as no cut
    that a rod bears narrows those; and at the upper limit."""
    aims = max(float(i.wanted), float(i.wanted - 2 * rod.stocks[2])), float(i.high)
    return [more for aim in aims if (more := _more(rod, aim / 2, i.centred)) is not None]


def _more(rod: Rod, radius: float, centred: str) -> Cuts | None:
    """What must further come off rod and cap so that a circle of that radius cleans up. Centred on the
    parting line no face is cut in vain: only the rod's costs length; midway between the two cuts both cost
    the same, so they go together."""
    a, b = map(float, rod.cuts)
    if centred == MIDWAY:
        more = split_bore.more_cut(rod.bore, a, b, radius, MOST_CUT, float(rod.centre))
        return None if more is None else (more, more)
    off_rod = split_bore.more_cut(rod.bore, a, b + MOST_CUT, radius, MOST_CUT, cap=0)
    off_cap = split_bore.more_cut(rod.bore, a + MOST_CUT, b, radius, MOST_CUT, rod=0)
    return None if off_rod is None or off_cap is None else (off_rod, off_cap)


def _length(rod: Rod, cuts: Cuts, centred: str) -> Number:
    """Centre distance that these further cuts leave."""
    off_rod, off_cap = cuts
    lost = (off_rod + off_cap) / 2 if centred == MIDWAY else off_rod
    return rod.length - constant("", "", SIZE, lost)


def _told(cuts: Cuts, length: Number) -> Text:
    off_rod, off_cap = cuts
    left = say("That leaves {L} of centre distance.", L=at_most(length, SIZE))
    if abs(off_rod - off_cap) < ALIKE:
        return say(
            "It is too long along the rod. Cut {m} more off each face. {left}",
            m=at_least(max(off_rod, off_cap), SIZE),
            left=left,
        )
    faces = (("{r} more off the rod", off_rod), ("{c} more off the cap", off_cap))
    named = say(
        " and ".join(words for words, more in faces if more),
        r=at_least(off_rod, SIZE),
        c=at_least(off_cap, SIZE),
    )
    return say("It is too long along the rod. Cut {cuts}. {left}", cuts=named, left=left)
