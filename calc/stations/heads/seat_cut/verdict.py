"""May this seat be cut so? Judges ring, band, valve and stem height, then what is only to be looked at."""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, say
from calc.core.working import constant, least
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.cuts import Cuts
from calc.stations.heads.seat_cut.seated import Seated
from calc.stations.shared.forms import COARSE

# Common practice, no source: a band nearer to the valve's edge lies on the hottest and thinnest part of it,
# and a thinner lip of the ring outside the upper cut chips and glows.
EDGE, LAND = constant("", "", COARSE, 0.2e-3), constant("", "", COARSE, 0.3e-3)


def verdict_on(i: In, cuts: Cuts, valve: Seated) -> Judged:
    """State, headline, and what to do; the worst first."""
    return (
        _ring(i, cuts)
        or _band(i, valve)
        or _valve(i, valve)
        or _contact(i, valve)
        or _thin_places(cuts)
        or _sinks(i, cuts, valve)
        or (
            "pass",
            say("Cut the band from {o} to {i}", o=cuts.outer, i=cuts.inner),
            (
                "Seat cutter first, then upper, then throat, as in the table. Blue the valve, press it"
                " straight down without turning: one unbroken band must show."
            ),
        )
    )


def _ring(i: In, cuts: Cuts) -> Judged | None:
    if cuts.land <= 0:
        return (
            "fail",
            say("Upper cut leaves the ring at {d}", d=i.ring_outside),
            (
                "Do not cut. The seat would lie too deep for this ring: fit a new one, or take an upper angle"
                " nearer to the seat's."
            ),
        )
    if cuts.inner_depth >= i.ring_height:
        return (
            "fail",
            say("Band would lie below the ring"),
            say(
                "Do not cut. The band's inner edge would be {t} down, and the ring is {h} high: fit a new"
                " ring.",
                t=cuts.inner_depth,
                h=i.ring_height,
            ),
        )
    return None


def _band(i: In, valve: Seated) -> Judged | None:
    if i.from_edge < EDGE:
        return (
            "fail",
            say("Band runs to the valve's edge: {e} left", e=i.from_edge),
            (
                "Place it further in, with the upper cutter. The edge is the thinnest and hottest part of the"
                " valve."
            ),
        )
    if valve.room_inside < 0:
        return (
            "fail",
            say("Band runs off the valve's face inside"),
            say(
                "It reaches {e} past the ground face. Take a narrower band, or one nearer to the valve's"
                " edge.",
                e=constant("", "", COARSE, -float(valve.room_inside)),
            ),
        )
    return None


def _valve(i: In, valve: Seated) -> Judged | None:
    if past(i.least_margin, valve.margin_left):
        return (
            "fail",
            say("Valve's edge too thin: {m}", m=valve.margin_left),
            say(
                "Do not use this valve: less than {least} glows and burns. Fit another and start again.",
                least=i.least_margin,
            ),
        )
    if valve.judged and past(valve.rise_total, i.most_rise):
        return (
            "fail",
            say("Stem too high: {s} since new", s=valve.rise_total),
            say("More than {most} is not to be made up at tip and spring. Fit a new ring.", most=i.most_rise),
        )
    return None


def _contact(i: In, valve: Seated) -> Judged | None:
    if i.valve_angle > i.seat_angle:
        return (
            "attention",
            say("Valve touches at the inner edge"),
            say(
                "The valve's face is steeper than the seat, so that the gas gets between them. Grind the"
                " valve to {a} or a little less.",
                a=i.seat_angle,
            ),
        )
    room = min(valve.room_inside, i.from_edge)
    if past(i.least_room, room):
        return (
            "attention",
            say("Little room beside the band: {e}", e=room),
            say(
                "{least} were wanted clear on both sides. Take a narrower band, or move it.",
                least=i.least_room,
            ),
        )
    return None


def _thin_places(cuts: Cuts) -> Judged | None:
    if cuts.land < LAND:
        return (
            "attention",
            say("Thin lip outside the upper cut: {l}", l=cuts.land),
            "Cut the upper angle last and lightly, and look at the lip: it must not be feathered.",
        )
    if cuts.below < 0:
        return (
            "attention",
            say("Throat cut runs out below the ring"),
            (
                "Stop it at the ring's end and blend the step into the port by hand, or take a flatter"
                " throat angle."
            ),
        )
    return None


def _sinks(i: In, cuts: Cuts, valve: Seated) -> Judged | None:
    if cuts.seat_feed <= i.clean_up or valve.new_ring:
        return None
    return (
        "attention",
        say("Seat must sink {a} to reach", a=cuts.seat_feed),
        (
            "More than cleaning up takes. See whether the other seats of the head need as much, and"
            " whether this is the right valve."
        ),
    )


def limits_of(i: In, cuts: Cuts, valve: Seated) -> tuple[Limit, ...]:
    room = least(valve.room_inside, i.from_edge)
    clean_up = None if valve.new_ring else i.clean_up
    return (
        Limit("the ring left outside the upper cut", cuts.land, low=0.0),
        Limit("the ring left below the band", i.ring_height - cuts.inner_depth, low=0.0),
        Limit("the valve's edge", valve.margin_left, low=i.least_margin),
        Limit("the band's distance from it", i.from_edge, low=EDGE),
        Limit("the valve face left inside the band", valve.room_inside, low=0.0),
        Limit("the height of the stem", valve.rise_total, high=i.most_rise if valve.judged else None),
        Limit("the room beside the band", room, low=i.least_room, level="attention"),
        Limit("the ring's lip outside the upper cut", cuts.land, low=LAND, level="attention"),
        Limit("the ring below the throat cut", cuts.below, low=0.0, level="attention"),
        Limit("the feed of the seat cutter", cuts.to_reach, high=clean_up, level="attention"),
    )
