"""Where formulas and limits come from, in one place. No copy of a standard was open when these were
written:
all are from memory."""

from calc.core.result import Source

LAME = Source(
    "lame",
    "Lamé's thick-walled cylinder, two materials, plane stress, as in the press-fit chapters of machine"
    " design handbooks.",
    "handbook",
    name="Lamé",
)
MISES = Source(
    "mises",
    "Yield by the distortion-energy (von Mises) rule at the bore, where both parts are loaded most.",
    "handbook",
    name="von Mises",
)
PAST_YIELD = Source(
    "past-yield",
    "Rings past first yield: Nadai's stresses of a yielding disc in plane stress, von Mises, no hardening;"
    " strains by Hencky.",
    "handbook",
    name="Nadai",
)
ROUGHNESS_LOSS = Source(
    "din-7190",
    "DIN 7190 (older issue): pressing flattens about 0.8 of the summed roughness heights Rz, taken off the"
    " interference.",
    "standard",
    name="DIN 7190",
)
THERMAL = Source(
    "thermal",
    "Free growth d·α·ΔT of each part with its own temperature, from the reference temperature of 20 °C"
    " (ISO 1).",
    "standard",
    name="free growth",
)
FRICTION_HOLD = Source(
    "hold", "Holding force = friction × pressure × area of the fit.", "analytic", name="friction"
)
SEAT_PLANES = Source(
    "seat-planes",
    "Plane geometry of three cones on one axis; angles from the plane square to the stem.",
    "analytic",
    name="geometry",
)
PRESSURE_CHANGE = Source(
    "en-13184",
    "EN 13184, pressure-change method: leak = volume × change of pressure ÷ time, in a closed volume.",
    "standard",
    name="EN 13184",
)
GAS_LAW = Source(
    "gas-law",
    "Ideal gas in a closed volume: p·V/T stays the same but for what leaks.",
    "analytic",
    name="gas law",
)
ORIFICE = Source(
    "orifice",
    "St Venant and Wantzel's flow of gas through an orifice, choked and not choked.",
    "handbook",
    name="St Venant–Wantzel",
)
STANDARD_FLOW = Source(
    "standard-flow",
    "Leak as volume at 101 325 Pa; the reference temperature is stated because 0 °C and 20 °C differ by 7 %.",
    "standard",
    name="standard flow",
)
PRACTICE = Source("practice", "Common practice of the trade.", "common practice")
INVENTED = Source("invented", "Limits of the invented demo engine; use your maker's.", "invented")
MATERIALS = Source(
    "materials",
    "Typical handbook values of the material; your casting may differ.",
    "handbook",
    name="typical values",
)
ISO_14253 = Source(
    "iso-14253-1",
    "ISO 14253-1:2017: conformity, and non-conformity, must be proven against the doubt of the reading,"
    " at 95"
    " % unless agreed otherwise.",
    "standard",
    name="ISO 14253-1",
)
JCGM_106 = Source(
    "jcgm-106",
    "JCGM 106:2012, clause 7: probability of conformity of a measured size, for a normal doubt.",
    "standard",
    name="JCGM 106",
)
GUM = Source(
    "gum",
    "GUM (JCGM 100:2008): standard uncertainties, their sum, effective degrees of freedom and coverage"
    " factor.",
    "standard",
    name="GUM",
)
ROCKING = Source(
    "rocking",
    "A straight stem that leans in a straight guide and touches it at both ends: reading = clearance ×"
    " (1 + 2"
    " × height beyond the end ÷ guide length).",
    "analytic",
    name="geometry",
)
STRAIGHT_CUT = Source(
    "straight-cut",
    "A layer of thickness t over a mouth of area A holds A·t, where the wall is straight.",
    "analytic",
    name="geometry",
)
COMPRESSION = Source(
    "compression-ratio",
    "Geometric compression ratio, as engine handbooks define it: volume over the piston at the bottom of"
    " its"
    " stroke ÷ that at the top.",
    "handbook",
    name="definition",
)
CRANK_ARM = Source(
    "crank-arm",
    "Crank and rod: a force F along the cylinder turns the crank with F·r·(sin θ + cos θ·tan β), sin β ="
    " r/l·sin θ.",
    "analytic",
    name="crank and rod",
)
LIQUIDS = Source(
    "liquids",
    "Growth of liquids from 20 to 30 °C: water 0.00026, paraffin about 0.00095, spirit 0.00109 of their"
    " volume per kelvin.",
    "handbook",
    name="growth of liquids",
)
STEM_MOVES = Source(
    "stem-moves",
    "A seat sunk by z, or a valve's face ground by z along the stem, raises tip and retainer by z; a tip"
    " ground by t lowers the tip alone.",
    "analytic",
    name="geometry",
)
SPRING = Source(
    "en-13906-1",
    "EN 13906-1: rate, shear stress and coil bind of a cylindrical compression spring of round wire.",
    "standard",
    name="EN 13906-1",
)
WAHL = Source(
    "wahl",
    "Wahl's factor for the curvature of the wire, (4C − 1)/(4C − 4) + 0.615/C. EN 13906-1 writes (C +"
    " 0.5)/(C"
    " − 0.75), up to 2 % less.",
    "handbook",
    name="Wahl",
)
ENDURANCE = Source(
    "zimmerli",
    "Zimmerli's endurance strength of spring wire, 398 MPa about 534 MPa shot-peened and 241 about 379 not,"
    " with Goodman's line to 0.67 of the tensile strength (Shigley, springs).",
    "handbook",
    name="Zimmerli, Goodman",
)
SURGE = Source(
    "surge",
    "Lowest natural frequency of a spring held at both ends, ½√(rate ÷ mass of its moving turns).",
    "handbook",
    name="surge",
)
GAUGE_STEEL = Source(
    "iso-3650",
    "ISO 3650: steel gauge blocks expand by (11.5 ± 1.0)·10⁻⁶ per kelvin.",
    "standard",
    name="ISO 3650",
)
SIZE_AT_20 = Source(
    "iso-1",
    "ISO 1:2022: sizes are stated at 20 °C; a part and a gauge off it each grow by 1 + α(t − 20 °C).",
    "standard",
    name="ISO 1",
)
STACK = Source(
    "stack",
    "Sum of independent sizes: limits add, variances add; the share within limits of a sum of evenly spread"
    " sizes is exact (Irwin and Hall's distribution, unequal widths).",
    "analytic",
    name="sum of sizes",
)
TRIANGLE = Source("triangle", "Right triangles and circles: plane geometry.", "analytic", name="geometry")
ISO_286 = Source(
    "iso-286",
    "ISO 286-1:2010 and ISO 286-2:2010: standard tolerances, fundamental deviations, the Δ rule for holes.",
    "standard",
    name="ISO 286",
)
SP_811 = Source(
    "nist-sp-811",
    "NIST SP 811, appendix B: definitions of the units, from which every factor is exact.",
    "standard",
    name="NIST SP 811",
)
TWO_POINT = Source(
    "two-point",
    "Differences of two-point diameters (local sizes of ISO 14405-1); a form of odd lobes is not seen by"
    " them.",
    "standard",
    name="two-point sizes",
)
ISO_965 = Source(
    "iso-965-1",
    "ISO 68-1, ISO 261 and ISO 724: basic sizes of metric threads; ISO 965-1: their tolerances and"
    " deviations, normal engagement.",
    "standard",
    name="ISO 965-1",
)
ASME_B1_1 = Source(
    "asme-b1-1",
    "ASME B1.1: unified threads, tolerances worked by its formulas for an engagement of one diameter and"
    " rounded as ASME B1.30 and its tables have it.",
    "standard",
    name="ASME B1.1",
)
THREAD_SHARE = Source(
    "thread-share",
    "Share of thread as in American handbooks: 100 % where the hole is smaller than the thread by 1.5·H ="
    " 1.299·P; forming taps by Machinery's Handbook, 0.68·P.",
    "handbook",
    name="Machinery's Handbook",
)
DRILLS = Source(
    "drills",
    "ANSI/ASME B94.11M: drills by number, letter and 64ths of an inch; metric ones in steps of 0.1 mm.",
    "standard",
    name="drill sizes",
)
H28 = Source(
    "fed-std-h28",
    "FED-STD-H28/2B, formulas 2a and 4a: shear areas of a hole's and a bolt's thread at their least"
    " material;"
    " shear strength taken as half of the tensile.",
    "standard",
    name="FED-STD-H28",
)
STRESS_AREA = Source(
    "stress-area",
    "Tensile stress area: ISO 898-1, from the mean of pitch and root diameter; ASME B1.1, from d − 0.9743·P.",
    "standard",
    name="stress area",
)
BOLT_CLASSES = Source(
    "iso-898-1",
    "ISO 898-1 and SAE J429: least tensile strength of a bolt's class, and its yield as a share of it.",
    "standard",
    name="ISO 898-1",
)
THREE_WIRES = Source(
    "asme-b1-2",
    "ASME B1.2: pitch diameter from a reading over three wires, with the lead angle and without the wires'"
    " flattening; best wire touches at the pitch line.",
    "standard",
    name="ASME B1.2",
)
STI = Source(
    "sti",
    "Tapped hole of a wire thread insert, as ASME B18.29.2M and DIN 8140-2 have it: the stud's thread"
    " form at"
    " a nominal diameter of d + 1.299·P.",
    "standard",
    name="insert's thread",
)
ISO_16047 = Source(
    "iso-16047",
    "ISO 16047: torque = preload × (P/2π + 0.577·d2·µ in the thread + ½·mean bearing diameter·µ under the"
    " head).",
    "standard",
    name="ISO 16047",
)
VDI_2230 = Source(
    "vdi-2230",
    "VDI 2230-1: bolt pulled and twisted while it is tightened, stress by von Mises in the stress area,"
    " yield"
    " over the whole section (shear modulus πd³/12); classes of friction A, B, C.",
    "standard",
    name="VDI 2230",
)
AISI_S100 = Source(
    "aisi-s100",
    "AISI S100, screws in thin sheet: pull-out = 0.85 × thickness × screw's diameter × tensile strength of"
    " the sheet; centre to edge at least 1.5 diameters.",
    "standard",
    name="AISI S100",
)
COLLAR = Source(
    "collar",
    "A collar drawn up from sheet keeps its volume: the metal between pilot hole and collar's outside is"
    " what"
    " stands in it.",
    "analytic",
    name="constant volume",
)
SHEET_SHEAR = Source(
    "sheet-shear",
    "Shear of the sheet round the nut at 0.6 of its tensile strength; the share of it that a squeezed nut"
    " bears is common practice.",
    "common practice",
    name="shear of the sheet",
)
ISO_1478 = Source(
    "iso-1478", "ISO 1478: threads of sheet-metal screws ST2.9 to ST6.3.", "standard", name="ISO 1478"
)
PORT_PLANE = Source(
    "port-plane",
    "Plane geometry of circle, slot and half circle on a rectangle; hydraulic diameter = 4 × area ÷ edge; a"
    " step is the distance from edge to edge.",
    "analytic",
    name="geometry",
)
CONTINUITY = Source(
    "continuity",
    "Continuity: mean gas speed × area of the port = mean piston speed × area of the piston (Heywood,"
    " Internal Combustion Engine Fundamentals, ch. 6).",
    "handbook",
    name="continuity",
)
CURTAIN = Source(
    "curtain",
    "Least area between valve and seat in three stages of lift: frustum square to the seat, frustum from"
    " edge"
    " to edge, throat less stem (Heywood, ch. 6).",
    "handbook",
    name="Heywood",
)
MACH_INDEX = Source(
    "mach-index",
    "Inlet Mach index (b/D)²·S_p/(C_i·a); filling falls off above about 0.6 (Taylor, The"
    " Internal-Combustion"
    " Engine in Theory and Practice, vol. 1).",
    "handbook",
    name="Taylor",
)
NEAREST = Source(
    "valve-nearest",
    "Way left along the valve = way at top dead centre + piston's way down by slider-crank ÷ cosine of the"
    " lean − lift; least over the crank's angle by search.",
    "analytic",
    name="slider-crank and lobe",
)
LOBE_LAWS = Source(
    "lobe-laws",
    "Lift of a lobe by cycloid and polynomials 3-4-5 and 4-5-6-7 (Norton, Cam Design and Manufacturing"
    " Handbook).",
    "handbook",
    name="lobe's law",
)
PARABOLA = Source(
    "parabola",
    "Lowest point of the parabola through three readings (Newton's divided differences).",
    "analytic",
    name="parabola",
)
ROCKER = Source(
    "rocker",
    "Plane geometry of a rocker's two arms and a pushrod of fixed length, the loop closed exactly.",
    "analytic",
    name="linkage",
)
CHAIN_ALONG_PUSHROD = Source(
    "chain-along-pushrod",
    "Lengths along the pushrod added with their signs; what the stem's tip rises turns the rocker, and"
    " comes"
    " back by its ratio.",
    "analytic",
    name="chain of lengths",
)
SMALLER_LOBE = Source(
    "smaller-lobe",
    "Lift is heel to nose less the base circle's diameter; under a flat foot a lobe of the same lifts on a"
    " smaller circle is a curve parallel to the old one.",
    "analytic",
    name="parallel curve",
)
FLAT_FOOT = Source(
    "flat-foot",
    "Under a flat foot a lobe's radius of curvature is base circle + lift + its second derivative, and the"
    " contact lies off the axis by the first (Norton, Cam Design and Manufacturing Handbook).",
    "handbook",
    name="lobe under a flat foot",
)
LEAVES_LOBE = Source(
    "leaves-lobe",
    "The follower stays on its lobe while the spring's force is at least mass × deceleration, both taken at"
    " the valve (Norton, Cam Design and Manufacturing Handbook).",
    "handbook",
    name="force balance",
)
SOUND = Source(
    "sound", "Speed of sound in an ideal gas, √(κ·R·T), air with κ = 1.4.", "analytic", name="speed of sound"
)
FINS = Source(
    "fins",
    "Straight fin of even thickness: efficiency tanh(m·L_c) ÷ (m·L_c), m = √(2h/(k·t)), length corrected by"
    " half the thickness; array with its bare base (Incropera, extended surfaces).",
    "handbook",
    name="straight fin",
)
COOLING_AIR = Source(
    "cooling-air",
    "Heat balance of air along a wall of even heat: what it takes up is its flow × specific heat × rise, so"
    " that it nears the wall as 1 − e^(−NTU) (Incropera, internal flow).",
    "handbook",
    name="warming air",
)
SAME_PRESSURE = Source(
    "same-pressure",
    "Turbulent channels under one pressure: speed grows with the hydraulic diameter to the power 5/7"
    " (Blasius"
    " friction).",
    "handbook",
    name="Blasius",
)
WALTHER = Source(
    "astm-d341",
    "ASTM D341: viscosity over temperature as a straight line of log log(ν + 0.7) over log T (Walther),"
    " from"
    " 2 mm²/s up.",
    "standard",
    name="ASTM D341",
)
OIL_GRADES = Source(
    "oil-grades",
    "Typical viscosities of oils of these grades at 40 and 100 °C; the maker's data sheet of the oil goes"
    " first.",
    "handbook",
    name="typical oil",
)
OIL_GROWTH = Source(
    "oil-growth",
    "Mineral oil grows by about 0.0007 of its volume per kelvin; its density is stated at 15 °C.",
    "handbook",
    name="growth of oil",
)
ANNULAR_GAP = Source(
    "annular-gap",
    "Laminar flow along a narrow ring-shaped gap, plunger off the middle (Reynolds; Merritt, Hydraulic"
    " Control Systems).",
    "handbook",
    name="narrow gap",
)
HAGEN_POISEUILLE = Source(
    "hagen-poiseuille",
    "Laminar flow in a round hole, Δp = 128·µ·L·Q/(π·d⁴) (Hagen and Poiseuille).",
    "analytic",
    name="Hagen–Poiseuille",
)
HOLE_LOSS = Source(
    "hole-loss",
    "Loss at a sharp-edged hole, Δp = ½·ρ·(Q/(C·A))², in series with the friction of its wall.",
    "handbook",
    name="orifice",
)
SNAP_RING = Source(
    "snap-ring",
    "Retaining rings as in design handbooks: shear of the ring π·D·s·τ ÷ 3 and bearing of the groove's wall"
    " at its yield ÷ 2; lip at least three groove depths long (DIN 472).",
    "handbook",
    name="snap ring",
)
VALVE_TRAIN_GROWTH = Source(
    "train-growth",
    "Each part grows along the valve train by its own length, alloy and heat; a rocker passes on what stem"
    " and shaft move apart by its ratio.",
    "analytic",
    name="chain of growths",
)
OLD_AXIS = Source(
    "old-axis",
    "Plane geometry: the largest circle about the old axis is twice the shortest radius from it; an axis"
    " that"
    " moved by e costs 2e.",
    "analytic",
    name="geometry",
)
FILLET_RISE = Source(
    "fillet-rise",
    "Plane geometry: a fillet of r between cheek and journal leaves room for one of r + h where the journal"
    " goes down by h.",
    "analytic",
    name="geometry",
)
TWO_THROWS = Source(
    "two-throws",
    "Vector sum of the old throw and the offset in the plane across the crank; the new circle lies"
    " within the"
    " old one as far as half the difference of their diameters.",
    "analytic",
    name="geometry",
)
OVERLAP = Source(
    "overlap",
    "Overlap of journals: half the sum of main and rod journal less the throw.",
    "handbook",
    name="overlap",
)
SWEPT = Source(
    "swept",
    "Compression: swept volume and what is left above the piston, over what is left.",
    "handbook",
    name="compression",
)
TIMING = Source(
    "timing",
    "Angles of one turn: a lobe's centre lies midway between its events, half its duration from each.",
    "analytic",
    name="angles of a turn",
)
LIFT_CURVE = Source(
    "lift-curve",
    "Local least squares on a table of lifts: polynomials of the fourth degree, near readings counting most"
    " (local regression after Cleveland, from memory); the readings' doubt goes through the sums exactly.",
    "analytic",
    name="local regression",
)
HARMONICS = Source(
    "harmonics",
    "Least squares on dial readings at even angles: mean, once-round and twice-round part (Fourier); the"
    " first is the axis, the second the oval.",
    "analytic",
    name="least squares",
)
SINE_OF_HEIGHT = Source(
    "sine-of-height",
    "A pin's height over the crank's axis is throw × sine of its angle; half the difference of top and"
    " bottom"
    " is the throw.",
    "analytic",
    name="geometry",
)
SHELL_CRUSH = Source(
    "shell-crush",
    "Two half-shells that each stand a proud of one joint are 2a too long round their outside: an"
    " interference of 2a/π on the diameter.",
    "analytic",
    name="crush",
)
STRIP_SECTION = Source(
    "strip-section",
    "A crushed strip keeps its section: gap times width stays the same; between the marks of its own"
    " printed"
    " scale 1/gap goes straight with the width.",
    "analytic",
    name="constant section",
)
CLEARANCE_SUM = Source(
    "clearance-sum",
    "Clearance = housing − twice the wall − journal; hot, each part grown by its own heat.",
    "analytic",
    name="sum of sizes",
)
SPLIT_BORE = Source(
    "split-bore",
    "Plane geometry of a parted bore: two arcs of the old radius whose centres lie a and b off the new"
    " joint;"
    " 2R − a − b along the rod, √(R² − a²) to each side at the joint.",
    "analytic",
    name="two arcs",
)
PIN_CLEARANCE = Source(
    "pin-clearance",
    "Pin in a pressed-in bush: the bush's free growth, the change of its bore with the grip, and the pin's"
    " growth.",
    "analytic",
    name="free growth and Lamé",
)
TWO_AXES = Source(
    "two-axes",
    "Angle of two axes whose slopes against each other are u and v in two planes square to one another:"
    " tan φ"
    " = √(u² + v²).",
    "analytic",
    name="geometry",
)
REVERSAL = Source(
    "reversal",
    "Reading by reversal: turned end for end, a part shows its own error with the other sign and the"
    " gauge's"
    " with the same.",
    "handbook",
    name="reversal",
)
TWO_SUPPORTS = Source(
    "two-supports",
    "A level rod held at its two bores: forces and moments in balance.",
    "analytic",
    name="balance of moments",
)
BOLT_SPRINGS = Source(
    "bolt-springs",
    "Shank and free thread as springs in series: stretch = force × Σ length ÷ (stiffness × area), the"
    " thread"
    " with its stress area; over the ends, half a diameter more for the head and half one of the core"
    " for the"
    " thread in the nut (VDI 2230).",
    "handbook",
    name="springs in series",
)
SLIDER_CRANK = Source(
    "slider-crank",
    "Slider-crank at top dead centre, exact: piston r·ω²·(1 + r/l), crankpin r·ω²; the rod's mass on its"
    " two"
    " bores as weighed.",
    "analytic",
    name="slider-crank",
)
HARMONIC_STROKE = Source(
    "harmonic-stroke",
    "A crank with a long rod moves the stones as a sine: fastest in the middle at π/2 times the mean, and"
    " at a"
    " share x of the half stroke from there √(1 − x²) times that.",
    "analytic",
    name="sine of the stroke",
)
EVERY_WAY = Source(
    "every-way",
    "All pairings and all choices are tried and compared: no other is better.",
    "analytic",
    name="trying all",
)
FARTHEST = Source(
    "farthest-place",
    "Plane geometry: a bore cleans up about a bar at twice the distance of its farthest place from the bar.",
    "analytic",
    name="farthest place",
)
LEAST_DEVIATION = Source(
    "least-deviation",
    "Line or plane of the least largest deviation (Chebyshev): the narrowest zone that holds all"
    " points, as the"
    " minimum zone of ISO 1101 does.",
    "standard",
    name="least deviation",
)
LEAST_CUT = Source(
    "least-cut",
    "The bar about which several bores clean up smallest: a linear programme over their places, as the bar"
    " is off by little against their radius.",
    "analytic",
    name="linear programme",
)
GEAR_DISTANCE = Source(
    "gear-distance",
    "Involute gears at another distance of their axes (ISO 21771): a'·cos α' = a·cos α, tan α_t ="
    " tan α_n/cos β;"
    " backlash more by 2a'·(inv α' − inv α), nearly 2·Δa·tan α_t.",
    "standard",
    name="involute geometry",
)
SPIGOT_WALL = Source(
    "spigot-wall",
    "Plane geometry: from the middle of a bore to a hole's edge is √(x² + y²) − d/2; less the bore's"
    " radius, the"
    " wall.",
    "analytic",
    name="geometry",
)
DECK_CUT = Source(
    "deck-cut",
    "Volumes of a cylinder: ratio = 1 + swept ÷ (chamber + bore's area × deck).",
    "analytic",
    name="volumes",
)
TRIED = Source(
    "all-tried",
    "Every set of three is tried and the nearest kept: counting, no approximation.",
    "analytic",
    name="all tried",
)
TURNING = Source("turning", "Speed at the skin of what turns: v = π·d·n.", "analytic", name="definition")
WHEEL_MARK = Source(
    "en-12413",
    "EN 12413 and ISO 525: bonded wheels bear a mark of their highest speed, in m/s at the rim and in"
    " turns a"
    " minute for their size as new; ISO 16089: guards and speeds of grinding machines.",
    "standard",
    name="EN 12413",
)
FEED_MARKS = Source(
    "feed-marks",
    "Plane geometry of a round-nosed edge fed along: its arc and its end edge, copied once a turn; for"
    " small"
    " feeds Rt = f²/(8·r), as handbooks of machining have it.",
    "analytic",
    name="geometry",
)
CANTILEVER = Source(
    "cantilever",
    "Beam held at one end: bends by F·L³/(3·E·I) at the other, as strength-of-materials handbooks have it.",
    "handbook",
    name="cantilever",
)
SHELLS = Source(
    "shells",
    "Mass and moment of inertia as the sum of thin shells of the radius r, ∫2πr·t·dr and ∫2πr³·t·dr;"
    " holes by"
    " Steiner's theorem.",
    "analytic",
    name="shells",
)
STEPPED_DISC = Source(
    "stepped-disc",
    "Spinning disc of rings of even thickness, plane stress, displacement and radial force alike where"
    " they meet"
    " (Timoshenko, Strength of Materials, part II).",
    "handbook",
    name="Timoshenko",
)
FLAT_DISC = Source(
    "flat-disc",
    "Spinning flat disc with a bore: hoop stress there ρω²/4·((3 + ν)R² + (1 − ν)r²); without one half"
    " of what the"
    " smallest bore has (Timoshenko).",
    "handbook",
    name="flat disc",
)
HALVES = Source(
    "halves",
    "Balance of half a disc: what pulls the halves apart over the section that holds them, ρω²·∫h·r²dr ÷"
    " ∫h·dr.",
    "analytic",
    name="balance of halves",
)
MEAN_HOOP = Source(
    "mean-hoop",
    "A disc bursts when its mean hoop stress reaches the tensile strength (Robinson's rule, factor 1);"
    " brittle and"
    " cracked ones burst below it.",
    "handbook",
    name="Robinson",
)
KIRSCH = Source(
    "kirsch",
    "Edge of a small round hole in a plate that is pulled two ways: 3·σ₁ − σ₂ (Kirsch).",
    "handbook",
    name="Kirsch",
)
CONED_DISC = Source(
    "coned-disc",
    "Coned disc spring by Almen and László, as DIN EN 16984 has it.",
    "standard",
    name="DIN EN 16984",
)
COILS_OPEN = Source(
    "coils-open", "Springs that open by x lose rate × x each.", "analytic", name="spring rate"
)
EVEN_WEAR = Source(
    "even-wear",
    "Clutch that is worn in, pressure × radius the same all over: mean radius (D + d)/4; torque = faces"
    " × µ × force"
    " × that radius (Shigley, clutches).",
    "handbook",
    name="even wear",
)
BALANCE_GRADE = Source(
    "balance-grade",
    "ISO 21940-11: permissible residual unbalance = grade e·ω × mass ÷ angular speed, shared by two planes in"
    " inverse proportion to their distance from the centre of mass; from memory.",
    "standard",
    name="ISO 21940-11",
)
INDEXING = Source(
    "indexing",
    "ISO 21940-14, index balancing: a part turned by 180° on its arbor keeps its own unbalance against its"
    " mark, the arbor's changes its sign; from memory.",
    "standard",
    name="ISO 21940-14",
)
DRILLED = Source(
    "drilled",
    "Drilled hole as cylinder and cone; in a rim each slice at its own radius, ∫ρA(R − x)dx.",
    "analytic",
    name="geometry",
)
INFLUENCE = Source(
    "influence",
    "Influence coefficients: vibration is linear in the unbalance, so that a known trial mass tells how much"
    " and how late the machine answers (ISO 21940-13, balancing in situ; from memory).",
    "standard",
    name="ISO 21940-13",
)
FOUR_RUNS = Source(
    "four-runs",
    "Amplitudes alone, one run without and three with a trial mass at 0, 120 and 240°: the squares' mean and"
    " their differences give size and place.",
    "analytic",
    name="squares of amplitudes",
)
