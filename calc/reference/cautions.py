"""Hazards of the work, in one place, so that the same danger is told in the same words everywhere."""

from calc.core.result import Caution

MAKER_FIRST = Caution(
    "maker-first",
    "The engine maker's data and your own gauge come first; a calculated number never overrules either.",
)
HOT_HEAD = Caution(
    "hot-head",
    "A head at fitting heat burns through gloves in seconds and looks cold. Say 'hot' aloud, wear gauntlets"
    " and a face shield, and lay it on something dry that cannot burn.",
)
OVEN = Caution(
    "oven",
    "Nothing wet with solvent goes into an oven, and no closed hollow: vapour explodes, a plugged passage"
    " bursts. Wash it off, let it dry in the open, and take out plugs and valves first.",
)
FROZEN_RING = Caution(
    "frozen-ring",
    "Dry ice and liquid nitrogen freeze skin and push the air out of a small room. Insulated gloves,"
    " goggles,"
    " an open door; never a closed container.",
)
BRITTLE_RING = Caution(
    "brittle-ring",
    "A hard ring can shatter when it is driven or chilled. Wear goggles, use a guided driver, never strike"
    " the ring itself.",
)
PRESS_TRAPPED = Caution(
    "press", "A part that stands under a press can fly. Keep out of its line and use the guard."
)
CUTTING = Caution(
    "cutting",
    "Chips are sharp and the cutter pulls. Goggles on, sleeves back, no gloves near a turning spindle,"
    " never"
    " clear chips by hand or with compressed air.",
)
FLUID = Caution(
    "cutting-fluid",
    "Cutting fluid on hot metal smokes and can flash. Ventilate, keep an extinguisher for metal and oil"
    " fires"
    " at hand.",
)
MAGNESIUM = Caution(
    "magnesium",
    "Magnesium-bearing chips and dust burn and water feeds the fire. Cut with sharp tools, sweep often,"
    " keep"
    " dry sand or a class D extinguisher within reach; never water.",
)
BERYLLIUM = Caution(
    "beryllium",
    "Some copper alloys hold beryllium, and its dust harms the lungs for good. Know the alloy before you"
    " cut;"
    " cut it wet, and never grind or sand it dry.",
)
SODIUM = Caution(
    "sodium",
    "A hollow exhaust valve may hold sodium, which burns skin and explodes in water. Grind only its face"
    " and"
    " tip; never drill, cut or crush one, and hand a broken one to a waste firm that takes it.",
)
COMPRESSED_AIR = Caution(
    "compressed-air",
    "Compressed air in a closed volume can blow out plugs and covers. Regulate it low, shield the work,"
    " wear"
    " goggles, and never aim it at skin.",
)
VACUUM = Caution(
    "vacuum",
    "A vessel under vacuum can implode and seals can be drawn in. Use fittings made for it and wear goggles.",
)
AIRCRAFT = Caution(
    "aircraft",
    "On an aircraft engine only the approved data and a licensed person may decide; a number from here"
    " is for"
    " study.",
)
SPRING = Caution(
    "spring",
    "A compressed valve spring holds enough to blind. Goggles, a compressor that cannot slip, and never"
    " your"
    " face over it.",
)
SPINNING = Caution(
    "spinning",
    "A wheel or disc that bursts kills. Never run one above its marked speed, and stand out of its plane.",
)
SOLVENT = Caution("solvent", "Solvent vapour burns and harms. Open the door, no flame or spark, gloves on.")
LEADED_CARBON = Caution(
    "leaded-carbon",
    "Carbon of an engine that ran on leaded fuel holds lead. Scrape and brush it wet, with gloves and a"
    " mask,"
    " never with a dry wheel or an air line, and wash before you eat.",
)
ONE_GRINDER = Caution(
    "one-grinder",
    "Steel sparks set fire to the dust of aluminium and magnesium. A grinder and its dust collector are for"
    " light metal alone or for steel alone.",
)
SHEET = Caution(
    "sheet",
    "Sheet that catches on a drill spins and cuts to the bone. Clamp it to wood, goggles on, no gloves near"
    " the drill, and take off the burr before you handle it.",
)
CRANK_HELD = Caution(
    "crank-held",
    "Air in a cylinder throws the crank round as soon as the piston is off top dead centre. Ignition off,"
    " gear out, the flywheel locked or held by a second person with a bar; keep clear of bar, fan and belt."
    " Let the air in slowly, and out again before anything is let go.",
)
HOT_OIL = Caution(
    "hot-oil",
    "Oil under pressure or at running heat burns and goes through skin. Goggles on, hands away from the"
    " jet;"
    " oil driven under the skin is a case for a hospital at once.",
)
SNAP_RING = Caution(
    "snap-ring",
    "A snap ring, and the plunger's spring behind it, fly when they slip. Goggles on, a rag round the part,"
    " and the plunger held down until the ring sits.",
)
ROD_SCRAP = Caution(
    "rod-scrap",
    "A rod that lets go wrecks the engine and what stands beside it. Scrap one that is cracked, bent"
    " past its"
    " limit, blued by heat, nicked across, or that lost a bolt while running.",
)
BREAK_IN = Caution(
    "break-in",
    "New or refaced flat lifter feet are never idled nor cranked for long: they are gone in minutes, and"
    " the"
    " lobes with them. Only on new or reground lobes, both smeared with running-in paste, oil pressure made"
    " by hand first. At the first start at once to 2000 to 3000 1/min for 20 to 30 minutes; if it does not"
    " start at once, find out why. Common practice.",
)
MAGNETIC = Caution(
    "magnetic",
    "A crack tester's current burns where it touches badly, and its field stops a pacemaker: nobody with"
    " one"
    " near it, watch off, cleaned contacts, goggles that keep ultraviolet out, and no solvent that is"
    " still wet.",
)
FLYWHEEL = Caution(
    "flywheel-held",
    "A flywheel nut takes a long bar: lock the ring gear, not the rods, and keep hands out of the bar's"
    " path."
    " The wheel is heavy and drops off its dowels: stand the engine firmly, lift with two hands.",
)
FLYWHEEL_BURST = Caution(
    "flywheel-burst",
    "A flywheel that bursts goes through the bell housing, the floor and whoever is in its plane. One"
    " that is"
    " cracked, or of which nobody knows the highest speed, does not run; lightened, it never runs faster"
    " than its"
    " maker allows it as new.",
)
HOT_RING = Caution(
    "hot-ring",
    "A ring gear at fitting heat looks cold and burns through gloves. Gauntlets, goggles, tongs that"
    " grip it at two"
    " places, a clear way from oven to flywheel, nothing that burns beside it. A chilled flywheel"
    " freezes skin.",
)
IN_ITS_PLANE = Caution(
    "in-its-plane",
    "A part that is spun to be balanced throws what is loose on it. Guard closed, nobody in its plane, trial"
    " masses held by screw or clamp and never by tape or putty alone, no hand near it until it stands still.",
)
