"""Outside numbers for a boring bar, asked of the calculator. Those marked library are worked anew in test_bar_deflection.py."""
from tests.checks import Check, Trend, asked

# 60 N: half of 1500 MPa on 0.8 mm × 0.1 mm; 80 N: half of 800 MPa on 1 mm × 0.2 mm
SOLID = dict(bar="steel", diameter="40 mm", overhang="160 mm", cut="iron", depth="0.80 mm", feed="0.10 mm", aside="50 %", bearable="0.01 mm")
HOLLOW = dict(bar="steel", diameter="50 mm", hollow="25 mm", overhang="200 mm", cut="aluminium", depth="1 mm", feed="0.20 mm", aside="50 %", bearable="0.01 mm")
BENDING = "scipy 1.17.1 solve_bvp of the bending line"
CHECKS = [
    Check("bar-deflection", "force of 50 % of 1500 MPa on 0.8 mm × 0.1 mm, N", SOLID, 60.0, 1e-9, asked("bar-deflection", "force", "N"), "product by hand", "limit"),
    Check("bar-deflection", "60 N on 160 mm of a steel bar of 40 mm, gives, µm", SOLID, 3.104, 5e-4, asked("bar-deflection", "gives", "µm"), BENDING, "library"),
    Check("bar-deflection", "the bore smaller by, µm", SOLID, 6.209, 5e-4, asked("bar-deflection", "smaller", "µm"), BENDING, "library"),
    Check("bar-deflection", "a bar half as long again, µm", SOLID | dict(overhang="240 mm"), 10.477, 1e-3, asked("bar-deflection", "gives", "µm"), BENDING, "library"),
    Check("bar-deflection", "80 N on 200 mm of a bar of 50 mm, bored through 25 mm, µm", HOLLOW, 3.532, 5e-4, asked("bar-deflection", "gives", "µm"), BENDING, "library"),
    Check("bar-deflection", "overhang over diameter", HOLLOW, 4.0, 1e-9, asked("bar-deflection", "slender"), "200 ÷ 50", "limit"),
]

TRENDS = {
    "smaller": Trend(rises="overhang depth feed aside hollow", falls="diameter"),
    "gives": Trend(rises="overhang depth feed aside hollow", falls="diameter"),
    "force": Trend(rises="depth feed aside"),
    "slender": Trend(rises="overhang", falls="diameter"),
}
