"""What cuts take off a flywheel, in mass and in moment of inertia, and what thickness they leave."""

from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.stations.flywheel.lighten.asked import In
from calc.stations.flywheel.lighten.cuts import cuts_of
from calc.stations.flywheel.lighten.drawing import half_section
from calc.stations.flywheel.lighten.remarks import remarks_on
from calc.stations.flywheel.lighten.sums import sums_of
from calc.stations.flywheel.lighten.table import cut_by_cut
from calc.stations.flywheel.lighten.told import Out
from calc.stations.flywheel.lighten.verdict import found_in, limits_of, verdict_on
from calc.stations.flywheel.lighten.zones import zones_of
from calc.stations.flywheel.section import rings_of


@calculator(
    "lighten",
    "Lightening a flywheel",
    In,
    Out,
    purpose="What do these cuts take off, in mass and in inertia, and is enough metal left?",
    finds=(
        "lighten the flywheel",
        "light flywheel",
        "moment of inertia",
        "rotating mass",
        "flywheel weight",
        "machine the flywheel",
        "least thickness of a flywheel",
    ),
    sources=(sources.SHELLS, sources.MATERIALS, sources.PRACTICE, sources.INVENTED),
    cautions=(cautions.FLYWHEEL_BURST, cautions.CUTTING, cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def lighten(i: In) -> Answer:
    """Rings about one axis: mass ∫2πr·t·dr, moment of inertia ∫2πr³·t·dr, of what is there and of what
    is cut,
    tapers exactly. What is left is the section less the cuts of both sides over the same diameter.

    Corner radii, bolt holes and the gaps between teeth are left out of the section, not out of what is
    weighed.
    """
    rings = rings_of(i.section)
    cuts = cuts_of(i, rings)
    sums = sums_of(i, rings, cuts)
    face, root, rim = zones_of(i, rings, cuts)
    found = found_in(i, cuts, face, root, rim)
    return answer(
        *sums.told,
        face.thickness,
        root.thickness,
        rim.thickness,
        sums.section_mass,
        sums.depth,
        verdict=verdict_on(i, cuts, sums, found),
        limits=limits_of(i, sums, found),
        remarks=remarks_on(i, cuts, sums, found),
        tables=lambda: (cut_by_cut(sums),),
        figures=lambda: (half_section(i, rings, cuts, sums, found),),
    )
