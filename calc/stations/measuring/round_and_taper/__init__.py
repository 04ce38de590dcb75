"""Is a bore or a journal round and straight? Diameters at stations along it, in directions round it."""

from calc.core.result import Remark, impossible, note, warning
from calc.core.working import constant
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.measuring.round_and_taper.asked import JOURNAL, In
from calc.stations.measuring.round_and_taper.drawing import profile
from calc.stations.measuring.round_and_taper.shape import Shape, shape_of
from calc.stations.measuring.round_and_taper.told import Out
from calc.stations.measuring.round_and_taper.verdict import limits_of, station_by_station, verdict_on
from calc.stations.shared.forms import SIZE

SEEN = 2e-6  # m: what a shop's gauge can tell of a barrel or a waist; common practice


@calculator(
    "round-and-taper",
    "Round and straight",
    In,
    Out,
    purpose="Is this bore or journal round and straight enough, and within its limits everywhere?",
    finds=(
        "out of round",
        "ovality",
        "taper",
        "cylindricity",
        "journal wear",
        "bore wear",
        "cylinder bore gauge",
        "barrel shape",
        "bell mouth",
    ),
    sources=(sources.TWO_POINT, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def round_and_taper(i: In) -> Answer:
    """Differences of two-point diameters.

    Out of round: largest less smallest at one station. Taper: largest less smallest along one direction, so
    that an oval that stays the same along the part is no taper; told for 100 mm it is that over the stations'
    length.
    """
    _refuse_limits_that_cross(i)
    shape = shape_of(i)
    return answer(
        shape.out_of_round,
        shape.taper,
        shape.taper_100,
        shape.mean,
        shape.largest,
        shape.smallest,
        verdict=verdict_on(i, shape),
        limits=limits_of(i, shape),
        remarks=_remarks_on(shape),
        tables=lambda: (station_by_station(i, shape),),
        figures=lambda: (profile(shape, i.low, i.high),),
    )


def _refuse_limits_that_cross(i: In) -> None:
    if i.low is not None and i.high is not None and i.low >= i.high:
        raise impossible(
            "low", "is {low}, not below the upper limit {high}; give less than {high}", low=i.low, high=i.high
        )
    made = i.low if i.what == JOURNAL else i.high
    if i.worn is not None and made is not None and (i.worn > made if i.what == JOURNAL else i.worn < made):
        raise impossible(
            "worn",
            f"is {{w}}, and a {i.what} that is as made, {{m}}, would be worn out; give {{m}} or "
            + ("less" if i.what == JOURNAL else "more"),
            w=i.worn,
            m=made,
        )


def _remarks_on(shape: Shape) -> tuple[Remark | None, ...]:
    spread = float(shape.largest - shape.smallest)
    return (
        note(
            "Two-point gauges do not see a three-cornered form, in however many directions: it measures"
            " the same across everywhere. Ground and honed parts often have one. Turn the part in a"
            " V-block under a dial gauge, or use a three-point bore gauge."
        ),
        _barrel_or_waist([station.mean for station in shape.stations]),
        warning(
            "{spread} between the readings is much for one bore or journal: is one of them a slip?",
            spread=constant("", "", SIZE, spread),
        )
        if spread > 0.01 * float(shape.mean)
        else None,
    )


def _barrel_or_waist(means: list[float]) -> Remark | None:
    """What the run of the stations' means (m) looks like."""
    if len(means) < 3:
        return None
    ends, middle = (means[0], means[-1]), means[1:-1]
    if max(middle) - max(ends) > SEEN:
        return note(
            "Largest in the middle, a barrel: a journal worn at both ends, or a bore honed with too short a"
            " stroke."
        )
    if min(ends) - min(middle) > SEEN:
        return note(
            "Smallest in the middle, a waist: a journal worn in the middle, or a bore honed with too long a"
            " stroke."
        )
    return None
