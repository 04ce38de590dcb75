"""What is checked of crank, camshaft, case and flywheel before an engine is closed, and after."""

from dataclasses import replace

from calc.core.result import as_text
from calc.job.view import View, written
from calc.reference.engine import Feature
from calc.stations.shared.checks import Check, sheet_limits, size_check, torque_check


def main_bearings(view: View) -> Check | None:
    if not view.has("crank", "crankcase"):
        return None
    return size_check(
        view,
        "Main bearing clearance",
        "Too little seizes, too much loses the oil pressure.",
        "Shells in dry, case bolted up to its torque, bores measured; less the journals.",
        "crankcase.main_clearance",
        "crankcase.main_housing",
        "crankcase.main_shell_wall",
        "crank.main_journal",
        shop="A bore gauge in the case, bolted up with its shells, and a micrometer on the journals.",
        home="Plastic gauging strip along each dry journal, away from the joint, the halves bolted up to"
        " full torque, nothing turned, and opened again: out by up to a hundredth of a millimetre. Feel alone"
        " finds only the worst: shells oiled and case bolted up, two fingers turn the crank all the way"
        " round.",
    )


def shells_seated(view: View) -> Check | None:
    if not view.has("crankcase"):
        return None
    return Check(
        "Main shells on their dowels",
        "A shell beside its dowel is bent by the nuts, and its oil hole is shut.",
        as_text(
            "Saddles and shells' backs dry. Each oil hole over its gallery, each dowel in its hole: then no"
            " shell rocks or turns."
        ),
        home="Press each shell with both thumbs: it lies down all over, its ends level with the joint or"
        " just proud of it, and does not click. Look through its oil hole with a lamp: the gallery's hole is"
        " in sight, whole. A pencil line on shell and case over the dowel, drawn before the crank"
        " goes in, shows that none turned.",
    )


def camshaft(view: View) -> Check | None:
    if not view.has("cam", "crankcase"):
        return None
    return size_check(
        view,
        "Cam bearing clearance and end float",
        "The cam bearings feed the lifters.",
        "Case bolted up without the crank; then cam in, its marks on the crank's.",
        "cam.clearance",
        "crankcase.cam_bore",
        "cam.journal",
        "cam.end_float",
        shop="A bore gauge in the bolted case, for the clearance.",
        home="The end float: cam laid in one half of the case and pushed to one end, feeler gauges at its"
        " thrust face.",
    )


def cam_gear(view: View) -> Check | None:
    if not view.has("cam"):
        return None
    return size_check(
        view,
        "Cam gear: marks and backlash",
        "A tooth off, and valves meet pistons; without backlash the gears whine and break.",
        "The mark of the small gear between both marks of the large one. Backlash at three places, a third"
        " of a"
        " turn apart: the least counts.",
        "cam.gear_backlash",
        home="Turn the crank till the marks meet, and look straight along the shafts. Hold the crank, rock"
        " the large"
        " gear with two fingers: it clicks, only just, at every third of its turn. No click at all is too"
        " tight. For the number, the shop's dial gauge.",
    )


def stud_seals(view: View) -> Check | None:
    if not view.has("crankcase"):
        return None
    return Check(
        "Seals of the through studs",
        "One that was left out or pinched leaks at the bottom of the engine, and it is opened for it.",
        as_text(
            "A new seal on each stud that passes through the joint or an oil space, before the halves meet;"
            " the faces"
            " of nuts that seal with their washers clean and flat."
        ),
        home="Count: as many old seals on the bench as new ones on the studs. Each is oiled, untwisted and"
        " in its"
        " recess. Sealant thin on the outer joint only, none within a finger's breadth of an oil hole.",
    )


def case_nuts(view: View) -> Check | None:
    if not view.has("crankcase"):
        return None
    return torque_check(
        view,
        "Close the case",
        "It is opened again for everything found later.",
        "Inside once more: clips, plugs, marks, no rag. Nuts in steps to {torque}, from the middle out; the"
        " crank turns by hand after each step.",
        "torque.case_nut",
    )


def turning_torque(view: View) -> Check | None:
    if not view.has("crank", "crankcase"):
        return None
    check = size_check(
        view,
        "Crank turns, case bolted up",
        "A shell that is pinched now seizes on the first run.",
        "Before the rods' pistons and the seal go on: oiled, nuts at their torque. By hand all the way"
        " round after"
        " each step of the nuts, then the pull once it moves.",
        "crank.turning_torque",
        home="A spanner on the crank's nut and a spring balance hooked square to it, a measured arm out from"
        " the crank's middle: pull times arm, so 10 N at 0.25 m are 2.5 N·m. Read while it turns slowly, the"
        " greatest in one turn. It counts only against this engine's own sheet.",
    )
    # held to its limit by the job; no calculator takes a torque's limits
    return check and replace(check, calculator=None, entries={}, open=())


def end_float(view: View) -> Check | None:
    if not view.has("crank") or not view.any("crankcase", "flywheel"):
        return None
    check = size_check(
        view,
        "Crank end float",
        "Too little burns the thrust face, too much knocks.",
        "Case bolted up, three shims in, flywheel or its gauge plate at full torque; push and pull the"
        " crank.",
        "crank.end_float",
        home="Feeler gauges between flywheel and thrust bearing, where they reach: lever the crank to one"
        " end, read, lever it back. Where they do not reach, the shop's dial gauge does. Always three shims,"
        " each measured: borrow a micrometer, a printed size is not one.",
    )
    shims, limits = view.feature("crank.end_float_shim"), view.feature("crank.end_float")
    if check is None or shims is None or limits is None or len(shims.steps) < 2:
        return check
    reading = check.entries.get("reading", "")
    fitted = [text for place in shims.places if (text := view.text(shims.id, place))]
    known = {"float_read": reading, "trial": " | ".join(fitted)} if reading and len(fitted) > 1 else {}
    if not known or check.state == "pass":  # read with the right ones in: that reading decides
        known = known | {"after": reading}
    left = tuple(name for name in ("float_read", "trial") if name not in known)
    return replace(
        check, calculator="end-float", entries=_sizes_sold(shims) | sheet_limits(limits) | known, open=left
    )


def _sizes_sold(shims: Feature) -> dict[str, str]:
    """Entries of the calculator that chooses three: the sizes in which shims are sold."""
    sizes = sorted({shims.nominal, *(shims.nominal + step.offset for step in shims.steps)})
    return {"stock": "sold", "shims": " | ".join(written(size, 0, shims.form) for size in sizes)}


def flywheel(view: View) -> Check | None:
    if not view.has("flywheel"):
        return None
    return size_check(
        view,
        "Flywheel runout",
        "It shakes the clutch and loosens its nut.",
        "Dial gauge on the face, crank pushed to one end; then the end float once more.",
        "flywheel.runout",
        home="A nail clamped beside the face and feeler gauges: the greatest gap in one turn less the"
        " smallest, the crank pushed to one end all the while.",
    )
