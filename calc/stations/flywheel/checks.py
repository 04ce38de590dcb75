"""What is checked of a flywheel before the gearbox hides it."""

from calc.job.view import View
from calc.stations.shared.checks import Check, size_check


def clutch_step(view: View) -> Check | None:
    if not view.has("flywheel"):
        return None
    return size_check(
        view,
        "Clutch step",
        "A step that is off slips or drags the clutch.",
        "A straight edge over the cover's face, its depth to the friction face at three places.",
        "flywheel.step",
        "flywheel.face_thickness",
        home="A steel rule on edge over the cover's face, feeler gauges on a packing of known thickness.",
    )
