"""Both tolerance zones beside the line of the nominal size."""

from calc.core.drawing import Area, Drawing, Label, Line, box
from calc.core.result import Text, say
from calc.core.working import Number, constant
from calc.stations.measuring.iso_fit.limits import DEVIATION, Fit, as_fine_as
from calc.stations.measuring.iso_fit.parts import Part


def zones_drawn(fit: Fit, size: Number, parts: list[Part]) -> Drawing:
    """As high as the figure allows; figure units, not metres."""
    zones = fit.hole.zone, fit.shaft.zone
    reads = {part.name: float(part.read) - float(size) for part in parts}
    marks = [0.0, *(deviation for zone in zones for deviation in (zone.upper, zone.lower)), *reads.values()]
    scale, bottom = 0.6 / (max(marks) - min(marks)), min(marks)
    shapes: list[Area | Line | Label] = [
        Line(((0, 0), (1, 0)), "outline"),
        Label((1, 0.015), say("nominal {D}", D=size), "end"),
    ]
    signed: dict[str, Text] = {}
    for zone, name, x, hatch in ((zones[0], "Hole", 0.14, "a"), (zones[1], "Shaft", 0.44, "b")):
        shape = as_fine_as(DEVIATION, zone)
        signed |= {
            f"{name}_{way}": say("+{d}" if value > 0 else "{d}", d=constant("", "", shape, value))
            for way, value in (("low", zone.lower), ("high", zone.upper))
        }
        shapes += [
            Area(box(x, zone.lower * scale, x + 0.2, zone.upper * scale), hatch),
            Label((x + 0.1, zone.upper * scale + 0.02), signed[f"{name}_high"]),
            Label((x + 0.1, zone.lower * scale - 0.055), signed[f"{name}_low"]),
            Label((x + 0.1, bottom * scale - 0.14), f"{name.lower()} {zone.name}"),
        ]
        if name in reads:
            y = reads[name] * scale
            shapes += [
                Line(((x - 0.03, y), (x + 0.23, y)), "band"),
                Label((x - 0.04, y - 0.015), "yours", "end"),
            ]
    return Drawing(
        "Tolerance zones",
        say(
            "Zones of hole {h} and shaft {s} from the nominal size {D}: hole {Hole_low} to {Hole_high}, shaft"
            " {Shaft_low} to {Shaft_high}.",
            h=zones[0].name,
            s=zones[1].name,
            D=size,
            **signed,
        ),
        tuple(shapes),
        "zones only, drawn some hundreds of times larger than the parts",
    )
