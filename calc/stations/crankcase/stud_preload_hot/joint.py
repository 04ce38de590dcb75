"""The two springs: the stud that is pulled, and what it clamps, and what heat and frost make of both."""

from typing import NamedTuple

from calc.core.result import impossible
from calc.core.working import PI, Number, constant, greatest, least, step
from calc.formulas import hot_stud
from calc.reference import sources
from calc.reference.materials import MATERIALS, Material
from calc.reference.standards.threads import THREADS, stress_area
from calc.stations.crankcase.stud_preload_hot.asked import STUD, In
from calc.stations.crankcase.stud_preload_hot.told import Out
from calc.stations.shared.forms import GPA, KILONEWTON, ROUGH, SECTION, SIZE
from calc.stations.shared.growth import growth, reference_temperature
from calc.stations.shared.own_material import own_grade


class Part(NamedTuple):
    """One part of the clamp: what its lines are marked with, and its temperature, running."""

    mark: str
    words: str
    material: Material
    length: Number
    section: Number
    field: str
    temperature: Number

    def strain(self, at: Number, reference: Number, mark: str = "", field: str = "") -> Number:
        """Its growth to that temperature."""
        return growth(self.material, at, reference, f"{self.mark}{mark}", self.words, field or self.field)


class Joint(NamedTuple):
    """`change` by heat, running, as it was told; `hottest` and `coldest` the most and the least that heat
    adds, what is clamped taken as stiff as it may be; `section` the stud's least."""

    grip: Number
    section: Number
    stud_rate: Number
    joint_rate: Number
    change: Number
    running: Number
    warming: Number
    frozen: Number
    hottest: Number
    coldest: Number


def joint_of(i: In) -> Joint:
    own = [None if row is None else (row[0], None, row[1], None) for row in i.own]
    stud = own_grade(MATERIALS[STUD], own[0])
    clamped = _clamped(i, own)
    grip = Out.grip(i.cylinder + i.head + i.case)
    thread = constant("A_s", "Stress area", SECTION, stress_area(THREADS[i.thread]), sources.STRESS_AREA)
    shank = step("A_d", "Section of the shank", SECTION, PI / 4 * i.shank**2)
    long = step("L_d", "Length of the shank", ROUGH, grip - i.thread_length)
    _refuse_impossible_lengths(i, grip, long)
    E = constant("E_b", "Stiffness of the stud's steel", GPA, stud.E, sources.MATERIALS)
    stud_gives = hot_stud.give(((i.thread_length, thread, E), (long, shank, E)))
    stud_rate = Out.stud_rate(1 / stud_gives, sources.BOLT_SPRINGS)
    joint_rate = Out.joint_rate(
        1 / hot_stud.give((p.length, p.section, _modulus(p)) for p in clamped if float(p.length) > 0),
        sources.BOLT_SPRINGS,
    )
    reference = reference_temperature()
    hot = sum(p.length * p.strain(p.temperature, reference) for p in clamped)
    cold = sum(p.length * p.strain(i.frost, reference, "f", "frost") for p in clamped)
    running, warming, frost = (
        step(
            f"x{mark}",
            f"Clamped parts would outgrow the stud by{words}",
            SIZE,
            grown - grip * growth(stud, at, reference, f"b{mark}", "stud", field),
            sources.THERMAL,
        )
        for mark, words, grown, at, field in (
            ("", ", running", hot, i.stud_temperature, "stud_temperature"),
            ("_1", ", first warm-up", hot, i.stud_warming, "stud_warming"),
            ("_f", ", frost", cold, i.frost, "frost"),
        )
    )
    as_told = 1 / stud_rate + 1 / joint_rate
    stiff = 1 / stud_rate + 1 / (joint_rate * (1 + i.band))
    change = Out.change(hot_stud.change(running, as_told), sources.BOLT_SPRINGS)
    most, fewest = greatest(running, warming, 0.0), least(running, frost, 0.0)
    return Joint(
        grip,
        step("A_0", "Stud's least section", SECTION, least(thread, shank)),
        stud_rate,
        joint_rate,
        change,
        Out.running(greatest(i.preload + change, 0.0)),
        Out.warming(greatest(i.preload + hot_stud.change(warming, as_told), 0.0), sources.BOLT_SPRINGS),
        Out.frozen(greatest(i.preload + hot_stud.change(frost, as_told), 0.0), sources.BOLT_SPRINGS),
        step("ΔF_w", "Heat adds, at most", KILONEWTON, hot_stud.change(most, stiff), sources.BOLT_SPRINGS),
        step(
            "ΔF_l",
            "Heat or frost adds, at least",
            KILONEWTON,
            hot_stud.change(fewest, stiff),
            sources.BOLT_SPRINGS,
        ),
    )


def _refuse_impossible_lengths(i: In, grip: Number, long: Number) -> None:
    if grip <= 0:
        raise impossible("cylinder", "is nothing, and so are head and case; give what the stud clamps")
    if long < 0:
        raise impossible(
            "thread_length",
            "is {t}, more than all that is clamped, {g}; give less",
            t=i.thread_length,
            g=grip,
        )


def _clamped(i: In, own: list) -> tuple[Part, ...]:
    told = (
        ("z", "cylinder", i.cylinder_material, i.cylinder, i.cylinder_section, i.cylinder_temperature),
        ("k", "head", i.head_material, i.head, i.head_section, i.head_temperature),
        ("g", "case", i.case_material, i.case, i.case_section, i.case_temperature),
    )
    return tuple(
        Part(mark, words, own_grade(MATERIALS[id], row), length, section, f"{words}_temperature", at)
        for (mark, words, id, length, section, at), row in zip(told, own[1:])
    )


def _modulus(part: Part) -> Number:
    return constant(
        f"E_{part.mark}", f"Stiffness of the {part.words}", GPA, part.material.E, sources.MATERIALS
    )
