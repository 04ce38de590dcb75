"""Any shaft in any bore: how much room it has cold, and how much running."""

from calc.core.working import step
from calc.declare.calculator import Answer, answer, calculator
from calc.reference import cautions, sources
from calc.reference.materials import MATERIALS
from calc.stations.crankcase.pair_clearance.asked import In, refuse_what_does_not_go_together
from calc.stations.crankcase.pair_clearance.drawing import section
from calc.stations.crankcase.pair_clearance.told import Out
from calc.stations.crankcase.pair_clearance.verdict import Found, limits_of, remarks_on, verdict_on
from calc.stations.shared.forms import SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade


@calculator(
    "pair-clearance",
    "Any shaft in any bore",
    In,
    Out,
    purpose="Has this shaft the room in its bore that it needs, cold and running?",
    finds=(
        "clearance",
        "running clearance",
        "hot clearance",
        "shaft in bore",
        "cam bearing clearance",
        "bush and shaft",
        "distributor drive",
        "oil pump shaft",
        "play",
    ),
    sources=(sources.CLEARANCE_SUM, sources.THERMAL, sources.MATERIALS, sources.PRACTICE),
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),
)
def pair_clearance(i: In) -> Answer:
    """Bore − shaft, each at 20 °C and each grown to its own temperature.

    Round and straight parts, free to grow: a bush that is held by a housing of another metal does not grow by
    its own alone.
    """
    refuse_what_does_not_go_together(i)
    bore_metal, shaft_metal = (
        own_grade(MATERIALS[id], row) for id, row in zip((i.bore_metal, i.shaft_metal), i.own)
    )
    reference = reference_temperature()
    bore_grows = growth(bore_metal, i.bore_temperature, reference, "D", "bore", "bore_temperature")
    shaft_grows = growth(shaft_metal, i.shaft_temperature, reference, "d", "shaft", "shaft_temperature")
    most = i.bore if i.bore_most is None else i.bore_most
    least = i.shaft if i.shaft_least is None else i.shaft_least
    tight, loose = Out.tight(i.bore - i.shaft), Out.loose(most - least)
    change = Out.change(i.bore * bore_grows - i.shaft * shaft_grows, sources.THERMAL)
    running = Out.running(tight + change)
    gained = step("Δc_l", "The same at the loosest place", SIZE, most * bore_grows - least * shaft_grows)
    found = Found(tight, loose, running)
    return answer(
        tight,
        loose,
        running,
        Out.running_loose(loose + gained),
        change,
        Out.share(tight / i.bore),
        verdict=verdict_on(i, found),
        limits=limits_of(i, found),
        remarks=remarks_on(i, found),
        figures=lambda: (section(i.bore, i.shaft, tight),),
    )
