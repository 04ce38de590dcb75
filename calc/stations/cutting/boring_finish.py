"""How smooth a bore or a face can get at a feed, by the shape of the edge alone."""

from calc.core.advice import at_most
from calc.core.conformance import past
from calc.core.drawing import Axis, Plot, Series
from calc.core.kinds import ANGLE, FEED, ROUGHNESS
from calc.core.result import Judged, Remark, impossible, note, say
from calc.core.working import Form, constant, form
from calc.declare.calculator import Answer, Inputs, Limit, Number, Output, Outputs, answer, calculator, given
from calc.formulas import turned_profile
from calc.reference import cautions, sources
from calc.stations.shared.forms import COARSE, RZ

PER_TURN, RA = form(FEED, 3), form(ROUGHNESS, 2)
SPARE = 0.5  # of what is wanted: edge wear and the machine want as much again, common practice, no source


class In(Inputs):
    feed: Number = given(
        "Feed", "f", PER_TURN, hard="0.001 to 3 mm/rev", usual="0.02 to 0.4 mm/rev", example="0.080 mm/rev"
    )
    nose: Number = given(
        "Radius of the tool's nose",
        "r",
        COARSE,
        hard="0.02 to 10 mm",
        usual="0.1 to 1.6 mm",
        example="0.40 mm",
        hint="It stands in the insert's code; of a ground tool, hold it against a radius gauge.",
    )
    end_edge: Number = given(
        "End edge to the finished face",
        "κ′",
        form(ANGLE, 0),
        hard="1° to 80°",
        usual="3° to 30°",
        fold=True,
        assumed=("10°", "usual in a boring bar; common practice, no source"),
        hint="The edge behind the nose, where it leaves the face.",
    )
    wanted: Number = given(
        "Roughness wanted, Ra at most",
        "Ra_w",
        RA,
        hard="0.01 to 50 µm",
        usual="0.2 to 6.3 µm",
        example="1.60 µm",
        hint="The drawing's or the page's, of the face as the tool leaves it.",
    )


class Out(Outputs):
    mean = Output("Ra that the feed leaves by itself", "Ra", RA, main=True)
    height = Output("From peak to valley", "Rt", RZ)
    most = Output("Feed for the Ra wanted, at most", "f_max", PER_TURN, main=True)


@calculator(
    "boring-finish",
    "Finish that a feed leaves",
    In,
    Out,
    purpose="Can this feed and this nose leave the roughness that is wanted?",
    finds=(
        "surface finish",
        "roughness",
        "Ra",
        "nose radius",
        "feed marks",
        "boring finish",
        "turning finish",
        "insert radius",
    ),
    sources=(sources.FEED_MARKS, sources.PRACTICE),
    cautions=(cautions.CUTTING,),
)
def boring_finish(i: In) -> Answer:
    """Heights of the profile that the edge copies into the face, arc and end edge; while only the arc cuts,
    about f²/(8·r) and f²/(31.2·r). A feed over twice the nose leaves a thread, and is refused."""
    if i.feed > 2 * i.nose:
        raise impossible(
            "feed",
            "is {f}, more than twice the nose's radius, {r}; give less: it would cut a thread",
            f=i.feed,
            r=i.nose,
        )
    found = turned_profile.profile(float(i.feed), float(i.nose), float(i.end_edge))
    mean = Out.mean(_geometry(RA, found.mean))
    height = Out.height(_geometry(RZ, found.height))
    largest = turned_profile.feed_for(float(i.wanted), float(i.nose), float(i.end_edge))
    most = Out.most(_geometry(PER_TURN, largest))
    return answer(
        mean,
        height,
        most,
        verdict=_verdict_on(i, mean, most),
        limits=(
            Limit("the roughness", mean, high=i.wanted),
            Limit("the roughness", mean, high=i.wanted * SPARE, level="attention"),
        ),
        remarks=_remarks_on(found.end_edge),
        figures=lambda: (profile_drawn(i, mean),),
    )


def _geometry(shape: Form, value: float) -> Number:
    """A number of the profile."""
    return constant("", "", shape, value, sources.FEED_MARKS)


def _verdict_on(i: In, mean: Number, most: Number) -> Judged:
    if past(mean, i.wanted):
        return (
            "fail",
            say("Cannot be: the feed leaves Ra {a}", a=mean),
            say(
                "Feed {f} at most, or a larger nose where the bar does not chatter with it.",
                f=at_most(most, PER_TURN),
            ),
        )
    if past(mean, i.wanted * SPARE):
        return (
            "attention",
            say("Just: the feed alone leaves Ra {a}", a=mean),
            "A worn edge and the machine want about as much again (common practice). Feed slower, then hold"
            " the face against a roughness sample.",
        )
    return (
        "pass",
        say("Can be: the feed leaves Ra {a}", a=mean),
        "Fresh edge, short overhang. Then hold the face against a roughness sample, or measure it: the sum"
        " knows the edge's shape only.",
    )


def _remarks_on(end_edge: bool) -> tuple[Remark | None, ...]:
    return (
        note("At this feed the end edge cuts too: the rule f²/(8·r) would tell too rough a face.")
        if end_edge
        else None,
        note("Chatter, a built-up edge and a nick in the edge are not in this number, and make it worse."),
        note("A bore that is honed afterwards wants feed marks shallower than the stock that is honed off."),
    )


def profile_drawn(i: In, mean: Number) -> Plot:
    """Two feeds of the profile."""
    feed, nose, angle = float(i.feed), float(i.nose), float(i.end_edge)

    def at(x: float) -> float:
        from_left, to_right = x % feed, feed - x % feed
        return min(turned_profile.height_at(from_left, nose), turned_profile.height_at(to_right, nose, angle))

    points = tuple((feed * n / 40, at(feed * n / 40)) for n in range(81))
    return Plot(
        "What the edge leaves, along the bore",
        say("Ridges one feed apart, with a mean roughness of {a}.", a=mean),
        Axis("Along the bore", COARSE),
        Axis("Height", RZ),
        (Series("face", points),),
        (),
    )
