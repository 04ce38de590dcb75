"""What is ordered for crank, camshaft and case, by their sizes."""

from calc.stations.shared.orders.fit import Fit
from calc.stations.shared.orders.shim import Shim
from calc.stations.shared.orders.worn import Worn

MAIN_SHELLS = Fit(
    "Main bearing shells",
    "crank.main_journal",
    "crankcase.main_shell_wall",
    "crankcase.main_housing",
    always=True,
    together=True,
)
END_FLOAT_SHIMS = Shim("End-float shims", "crank.end_float", "crank.end_float_shim", -1, in_all=True)
WORN = Worn({"cam.journal": "Camshaft", "cam.lobe_lift": "Camshaft"})
