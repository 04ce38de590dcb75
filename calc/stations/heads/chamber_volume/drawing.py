"""The smallest chamber under its plate, and the volumes over the depth of the cut."""

import math

from calc.core.drawing import Area, Axis, Dimension, Drawing, Label, Line, Plot, Series, box
from calc.core.result import say
from calc.core.working import Number, constant
from calc.formulas.round_cap import cap_depth
from calc.stations.heads.chamber_volume.asked import In
from calc.stations.heads.chamber_volume.chambers import Chambers
from calc.stations.heads.chamber_volume.told import CC
from calc.stations.shared.drawings import Points, cap, on_both_sides
from calc.stations.shared.forms import COARSE, ROUGH


def under_its_plate(i: In, chambers: Chambers) -> Drawing:
    """As a round cap of the same volume; the layer to be cut on top."""
    mouth, volume, t = float(chambers.mouth), chambers.smallest, float(i.cut)
    a, h = math.sqrt(mouth / math.pi), cap_depth(float(volume), mouth)
    edge, deep, plate = a * 1.25, h + a * 0.25, a * 0.08
    head = ((-edge, 0.0), *cap(a, -h), (edge, 0.0), (edge, -deep), (-edge, -deep))
    return Drawing(
        "Smallest chamber under its plate",
        say(
            "Section through chamber {n}, drawn as a round cap of {V}: mouth {d} across, {h} deep.",
            n=chambers.small.name,
            V=volume,
            d=constant("", "", COARSE, 2 * a),
            h=constant("", "", COARSE, h),
        ),
        (
            Area(head, "a"),
            *(on_both_sides((box(a, 0.0, edge, t), "c")) if t else ()),
            Area(box(-edge, t, -a * 0.06, t + plate), ""),
            Area(box(a * 0.06, t, edge, t + plate), ""),
            Line(((0, t + 3 * plate), (0, -deep - plate)), "centre"),
            Dimension((-a, 0.0), (a, 0.0), constant("", "", ROUGH, 2 * a), t + 3.2 * plate, "D_m"),
            Line(((0.0, -h), (edge, -h)), "thin"),
            Dimension((edge, -h), (edge, 0.0), constant("", "", ROUGH, h), -1.5 * plate, "h"),
            *(
                (Label((-0.95 * a, -0.8 * deep), say("cut {t}", t=i.cut), target=(-1.1 * a, t / 2)),)
                if t
                else ()
            ),
        ),
        say("to scale, drawn as a round cap of {V}", V=volume),
    )


def volume_over_cut(i: In, chambers: Chambers) -> Plot:
    """Of the smallest and of the largest chamber."""
    small, large = chambers.small.name, chambers.large.name
    mouth = float(chambers.mouth)
    end = 1.2 * max(float(i.cut), float(i.most_cut), 1e-4)

    def line(after: Number) -> Points:
        uncut = float(after + chambers.taken)
        return tuple((end * n, max(uncut - mouth * end * n, 0.0)) for n in (0, 1))

    def level(volume: Number) -> Points:
        return ((0.0, float(volume)), (end, float(volume)))

    return Plot(
        "Volume over the cut",
        say(
            "A cut of {t} leaves {V} in the smallest chamber; {low} to {high} are allowed.",
            t=i.cut,
            V=chambers.smallest,
            low=i.low,
            high=i.high,
        ),
        Axis("Cut off the sealing step", COARSE),
        Axis("Volume", CC),
        (
            Series("" if small == large else "smallest", line(chambers.smallest)),
            *((Series("largest", line(chambers.largest), "dashed"),) if small != large else ()),
            Series("least", level(i.low), "limit"),
            Series("most", level(i.high), "limit"),
        ),
        ((float(i.cut), float(chambers.smallest), "now" if not i.cut else "this cut"),),
    )
