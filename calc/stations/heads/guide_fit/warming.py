"""The clearance as the engine warms up, drawn."""

from calc.core.drawing import Axis, Plot, Series
from calc.core.result import say
from calc.formulas import press_fit as fit
from calc.reference.materials import REFERENCE, Material
from calc.stations.heads.guide_fit.asked import In
from calc.stations.heads.guide_fit.clearance import Clearance
from calc.stations.heads.guide_fit.sizes import Sizes
from calc.stations.shared.forms import DEGREES_C, SIZE
from calc.stations.shared.sleeve import Grip


def clearance_warming_up(i: In, sizes: Sizes, grip: Grip, stem: Clearance, steel: Material) -> Plot | None:
    """Over the stem's temperature: guide and head warming in proportion, and still cold; nothing of a stem
    that stays cold."""
    hottest = float(i.stem_temperature)
    if abs(hottest - REFERENCE) < 1:
        return None
    d, bore = float(i.stem), float(sizes.bore)
    shares = [n / 20 for n in range(21)]
    stems = [REFERENCE + share * (hottest - REFERENCE) for share in shares]
    pressed = (
        _bore_at(0.0, i, bore, grip, stem) - bore
    )  # what pressing in took: the bore was measured after it
    together = tuple(
        (t, _bore_at(share, i, bore, grip, stem) - pressed - d * (1 + steel.strain_at(t)))
        for share, t in zip(shares, stems)
    )
    alone = tuple((t, bore - d * (1 + steel.strain_at(t))) for t in stems)
    return Plot(
        "Clearance as the engine warms up",
        say(
            "{c} are left when running, {f} if the stem were hot and the guide still cold.",
            c=stem.running,
            f=stem.first,
        ),
        Axis("Stem", DEGREES_C),
        Axis("Clearance", SIZE),
        (
            Series("", together),
            Series("guide still cold", alone, "dashed"),
            Series("seizes below", ((stems[0], 0.0), (stems[-1], 0.0)), "limit"),
        ),
        ((hottest, float(stem.running), "running"),),
    )


def _bore_at(share: float, i: In, bore: float, grip: Grip, stem: Clearance) -> float:
    """Bore of the reamed guide, m, with guide and head at that share of their way from cold to running."""
    guide, head, joint = grip.joint.ring.material, grip.joint.wall.material, float(grip.joint.size)
    at_guide, at_head = (
        REFERENCE + share * (float(t) - REFERENCE) for t in (i.guide_temperature, i.head_temperature)
    )
    modulus = guide.modulus_at(at_guide)
    give = fit.compliance(
        float(stem.thin), float(grip.joint.shapes[1]), modulus, guide.nu, head.modulus_at(at_head), head.nu
    )
    left = fit.interference_at(
        float(grip.cold.interference), joint, guide.strain_at(at_guide), head.strain_at(at_head)
    )
    pressure = fit.contact_pressure(left, joint, give)
    moved = fit.inner_bore_change(pressure, bore, joint, modulus)
    return float(bore * (1 + guide.strain_at(at_guide)) + moved)
