"""Numbers from outside the project that the formulas must agree with, kept as data.

The same rows are tested and printed on the page of sources and checks. A table stands in `<module>_checks.py` beside the tests
of what it checks, as a list `CHECKS`, and is named in `TABLES`. It imports nothing but the project, so that a build can read it.
"""
from collections.abc import Callable
from dataclasses import dataclass
from importlib import import_module

TABLES = (
    "tests.reference.materials_checks",
    "tests.reference.standards.iso_286_checks",
    "tests.reference.standards.threads_checks",
    "tests.formulas.trigonometry_checks",
    "tests.stations.measuring.units_checks",
    "tests.formulas.press_fit_checks",
    "tests.formulas.seat_geometry_checks",
    "tests.formulas.leak_checks",
    "tests.stations.heads.seat_fit_checks",
    "tests.stations.heads.seat_shrink_checks",
    "tests.stations.heads.seat_cut_checks",
    "tests.stations.heads.head_leak_checks",
    "tests.formulas.spring_checks",
    "tests.stations.heads.guide_fit_checks",
    "tests.stations.heads.stem_height_checks",
    "tests.stations.heads.valve_spring_checks",
    "tests.stations.heads.chamber_volume_checks",
    "tests.stations.heads.port_section_checks",
    "tests.stations.heads.valve_flow_area_checks",
    "tests.stations.heads.fin_cooling_checks",
    "tests.formulas.oil_checks",
    "tests.formulas.annular_gap_checks",
    "tests.stations.lifters.lifter_bore_checks",
    "tests.stations.lifters.plunger_leak_checks",
    "tests.stations.lifters.oil_hole_checks",
    "tests.stations.lifters.ring_groove_checks",
    "tests.stations.lifters.plunger_travel_checks",
    "tests.core.conformance_checks",
    "tests.formulas.uncertainty_checks",
    "tests.formulas.warm_reading_checks",
    "tests.formulas.stack_checks",
    "tests.stations.measuring.reading_verdict_checks",
    "tests.stations.measuring.gauge_uncertainty_checks",
    "tests.stations.measuring.size_at_20_checks",
    "tests.stations.measuring.round_and_taper_checks",
    "tests.stations.measuring.stack_up_checks",
    "tests.formulas.screw_threads_checks",
    "tests.stations.threads.thread_limits_checks",
    "tests.stations.threads.tap_drill_checks",
    "tests.stations.threads.engagement_checks",
    "tests.stations.threads.three_wire_checks",
    "tests.stations.threads.insert_install_checks",
    "tests.stations.threads.torque_preload_checks",
    "tests.stations.threads.sheet_insert_checks",
    "tests.stations.rods.big_end_resize_checks",
    "tests.stations.rods.small_end_bush_checks",
    "tests.stations.rods.rod_align_checks",
    "tests.stations.rods.rod_weights_checks",
    "tests.stations.rods.rod_bolt_checks",
)

KINDS = {
    "library": "worked by a general-purpose library, by another method than ours",
    "standard": "value of a published standard",
    "handbook": "value or worked example of a handbook",
    "limit": "analytic limit or identity",
}


@dataclass(frozen=True)
class Check:
    """One number to agree with.

    subject    what is computed, as a heading: "Press fit"
    what       which number of it, with its unit: "pressure in the joint, MPa"
    inputs     name → number; the names say the unit ("joint_mm"); or name → text, as entered in a calculator. `got` is called with them
    expected   the outside number, in the unit of `what`
    tolerance  largest difference allowed, same unit; half the last digit that the source gives, or the source's own scatter
    got        computes the number with the project's formulas
    source     where `expected` comes from, as a reader would look it up; "from memory" where no copy was open
    kind       one of KINDS
    """
    subject: str
    what: str
    inputs: dict[str, float | str]
    expected: float
    tolerance: float
    got: Callable[..., float]
    source: str
    kind: str

    def __post_init__(self):
        if self.kind not in KINDS:
            raise ValueError(f"{self.subject}: kind is {self.kind!r}; use one of {', '.join(KINDS)}")
        if not self.tolerance > 0 or not self.source:
            raise ValueError(f"{self.subject}, {self.what}: needs a tolerance above 0 and a source")


def every() -> list[Check]:
    """Every row of every table, in the order of TABLES."""
    return [check for table in TABLES for check in import_module(table).CHECKS]
