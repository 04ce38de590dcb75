"""Where formulas and limits come from, in one place. No copy of a standard was open when these were written: all are from memory."""
from calc.result import Source

LAME = Source("lame", "Lamé's thick-walled cylinder, two materials, plane stress, as in the press-fit chapters of machine design handbooks.", "handbook", name="Lamé")
MISES = Source("mises", "Yield by the distortion-energy (von Mises) rule at the bore, where both parts are loaded most.", "handbook", name="von Mises")
ROUGHNESS_LOSS = Source("din-7190", "DIN 7190 (older issue): pressing flattens about 0.8 of the summed roughness heights Rz, taken off the interference.", "standard", name="DIN 7190")
THERMAL = Source("thermal", "Free growth d·α·ΔT of each part with its own temperature, from the reference temperature of 20 °C (ISO 1).", "standard", name="free growth")
FRICTION_HOLD = Source("hold", "Holding force = friction × pressure × area of the fit.", "analytic", name="friction")
SEAT_PLANES = Source("seat-planes", "Plane geometry of three cones on one axis; angles from the plane square to the stem.", "analytic", name="geometry")
PRESSURE_CHANGE = Source("en-13184", "EN 13184, pressure-change method: leak = volume × change of pressure ÷ time, in a closed volume.", "standard", name="EN 13184")
GAS_LAW = Source("gas-law", "Ideal gas in a closed volume: p·V/T stays the same but for what leaks.", "analytic", name="gas law")
ORIFICE = Source("orifice", "St Venant and Wantzel's flow of gas through an orifice, choked and not choked.", "handbook", name="St Venant–Wantzel")
STANDARD_FLOW = Source("standard-flow", "Leak as volume at 101 325 Pa; the reference temperature is stated because 0 °C and 20 °C differ by 7 %.", "standard", name="standard flow")
PRACTICE = Source("practice", "Common practice of the trade.", "common practice")
INVENTED = Source("invented", "Limits of the invented demo engine; use your maker's.", "invented")
MATERIALS = Source("materials", "Typical handbook values of the material; your casting may differ.", "handbook", name="typical values")
