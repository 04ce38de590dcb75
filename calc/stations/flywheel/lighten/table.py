"""Cut by cut: what it takes off."""

from calc.core.result import Table
from calc.core.working import constant
from calc.stations.flywheel.lighten.sums import Sums
from calc.stations.shared.forms import FINE_SHARE


def cut_by_cut(sums: Sums) -> Table | None:
    if not sums.each:
        return None
    mass = sum(float(off.mass) for off in sums.each) or 1.0
    inertia = sum(float(off.inertia) for off in sums.each) or 1.0
    return Table(
        "Cut by cut",
        ("Cut", "Mass off", "Inertia off", "Share of the mass off", "Share of the inertia off"),
        tuple(
            (
                off.what,
                off.mass,
                off.inertia,
                constant("", "", FINE_SHARE, float(off.mass) / mass),
                constant("", "", FINE_SHARE, float(off.inertia) / inertia),
            )
            for off in sums.each
        ),
    )
