"""Ring and pocket drawn, and what is left of the grip as the head warms up."""

from calc.core.drawing import Axis, Dimension, Drawing, Line, Plot, Series, box
from calc.core.result import say
from calc.formulas import press_fit as fit
from calc.reference.materials import REFERENCE, Material
from calc.stations.heads.seat_fit.asked import In
from calc.stations.heads.seat_fit.grip import Grip
from calc.stations.shared.drawings import on_both_sides
from calc.stations.shared.forms import DEGREES_C, SIZE


def section(i: In) -> Drawing:
    """Ring in its pocket, cut through the axis."""
    bore, inside, deep = float(i.pocket_bore) / 2, float(i.ring_bore) / 2, float(i.depth)
    outer, floor = bore + float(i.head_wall), deep * 0.9
    port = inside * 0.94
    head = (
        (bore, 0),
        (outer, 0),
        (outer, -deep - floor),
        (port, -deep - floor),
        (port, -deep),
        (bore, -deep),
    )
    return Drawing(
        "Ring in its pocket",
        say(
            "Section through head and ring: pocket {p}, ring outside {o}, ring bore {i}, depth {h}, wall"
            " {w}.",
            p=i.pocket_bore,
            o=i.ring_outside,
            i=i.ring_bore,
            h=i.depth,
            w=i.head_wall,
        ),
        (
            *on_both_sides((head, "a"), (box(inside, -deep, bore, 0), "b")),
            Line(((0, deep * 0.5), (0, -deep - floor * 1.3)), "centre"),
            Dimension((-inside, -deep * 0.5), (inside, -deep * 0.5), i.ring_bore, 0, "d_r"),
            Dimension((-bore, 0), (bore, 0), i.ring_outside, deep * 0.75, "D_r"),
            Dimension((-bore, 0), (bore, 0), i.pocket_bore, deep * 1.7, "D_p"),
            Dimension((outer, -deep), (outer, 0), i.depth, -deep * 0.6, "h"),
        ),
    )


def grip_plot(i: In, ring: Material, head: Material, grip: Grip) -> Plot | None:
    """Interference left over the head's temperature: the ring hotter in proportion, as when running, and as
    warm as the head."""
    ring_hot, head_hot = float(i.ring_temperature), float(i.head_temperature)
    if abs(head_hot - REFERENCE) < 1:
        return None  # a head that stays cold has nothing to show
    bearing, joint = float(grip.cold.bears - grip.lost), float(i.pocket_bore)

    def left(t_ring: float, t_head: float) -> tuple[float, float]:
        strains = ring.strain_at(t_ring), head.strain_at(t_head)
        return t_head, float(fit.interference_at(bearing, joint, *strains))

    rings, heads = ([REFERENCE + n / 20 * (t - REFERENCE) for n in range(21)] for t in (ring_hot, head_hot))
    running, level = tuple(map(left, rings, heads)), tuple(map(left, heads, heads))
    ends = (running[0][0], running[-1][0])
    return Plot(
        "Interference left as the head warms up",
        say("{d} is left at running heat, {s} when stopped hot.", d=grip.hot, s=grip.stop),
        Axis("Head at the pocket", DEGREES_C),
        Axis("Interference", SIZE),
        (
            Series("", running),
            Series("stopped hot", level, "dashed"),
            Series("wanted", tuple((t, float(i.least_grip)) for t in ends), "limit"),
            Series("loose below", tuple((t, 0.0) for t in ends), "limit"),
        ),
        ((head_hot, float(grip.hot), "running"),),
    )
