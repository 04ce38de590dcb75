"""What is checked of crank, camshaft, case and flywheel before an engine is closed, and after."""

from calc.job.view import View
from calc.stations.shared.checks import Check, size_check, torque_check


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


def end_float(view: View) -> Check | None:
    if not view.has("crank") or not view.any("crankcase", "flywheel"):
        return None
    return size_check(
        view,
        "Crank end float",
        "Too little burns the thrust face, too much knocks.",
        "Case bolted up, flywheel or its gauge plate at full torque; push and pull the crank.",
        "crank.end_float",
        home="Feeler gauges between flywheel and thrust bearing, where they reach: lever the crank to one"
        " end, read, lever it back. Where they do not reach, the shop's dial gauge does.",
    )


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
