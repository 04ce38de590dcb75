"""Three cuts that put a contact band of the wanted width at the wanted place on the valve's face."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.heads.seat_cut.asked import In
from calc.stations.heads.seat_cut.cuts import cuts_of
from calc.stations.heads.seat_cut.drawing import three_cuts, valve_on_seat
from calc.stations.heads.seat_cut.goes_together import check_angles, check_ring
from calc.stations.heads.seat_cut.remarks import remarks_on
from calc.stations.heads.seat_cut.seated import inside_of_valve_face, seated
from calc.stations.heads.seat_cut.section import section_of
from calc.stations.heads.seat_cut.table import cut_by_cut
from calc.stations.heads.seat_cut.told import Out
from calc.stations.heads.seat_cut.verdict import limits_of, verdict_on


@calculator(
    "seat-cut",
    "Cutting a valve seat",
    In,
    Out,
    purpose=(
        "To which diameters must the three cuts go for the band to lie right on the valve, and what does it"
        " cost in stem height?"
    ),
    finds=(
        "valve seat cutting",
        "three angle valve job",
        "seat width",
        "seat angle",
        "contact band",
        "valve margin",
        "interference angle",
        "stem height after seat cutting",
    ),
    sources=(sources.SEAT_PLANES, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.CUTTING, cautions.SODIUM, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def seat_cut(i: In) -> Answer:
    """Plane geometry of three cones on the guide's axis and of the valve's face that rests on them.

    The present upper and throat cuts are taken to have the same angles as the new ones. Feeds run along the
    stem, each from where its cutter touches after the cut before it.
    """
    check_ring(i)
    check_angles(i)
    valve_inner = inside_of_valve_face(i)
    cuts = cuts_of(i)
    valve = seated(i, cuts, valve_inner)
    section = section_of(i, cuts, valve, valve_inner)
    return answer(
        cuts.outer,
        cuts.inner,
        valve.rise,
        cuts.seat_feed,
        cuts.upper_feed,
        cuts.throat_feed,
        cuts.present_width,
        valve.room_inside,
        cuts.upper_top,
        cuts.land,
        cuts.below,
        valve.valve_depth,
        valve.touch,
        valve.gap,
        valve.margin_left,
        valve.rise_total,
        verdict=verdict_on(i, cuts, valve),
        limits=limits_of(i, cuts, valve),
        remarks=remarks_on(valve),
        tables=lambda: (cut_by_cut(i, cuts),),
        cautions=(cautions.SPINNING,) if i.face_ground > 0 else (),
        figures=lambda: (
            valve_on_seat(section, cuts.outer, cuts.inner),
            three_cuts(section, i, valve.room_inside),
        ),
    )
