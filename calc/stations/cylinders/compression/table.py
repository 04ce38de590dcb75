"""What each reading is worth in the ratio."""

from calc.core.kinds import LENGTH, VOLUME
from calc.core.result import Table
from calc.core.working import Form, constant, form
from calc.formulas import compression
from calc.stations.cylinders.compression.asked import In
from calc.stations.cylinders.compression.volumes import Volumes
from calc.stations.shared.forms import FRICTION

_HALF_CC, _TENTH, _HUNDREDTH = 0.5e-6, 0.1e-3, 0.01e-3


def worth_of_readings(i: In, v: Volumes) -> Table:
    area, swept, left = float(v.area), float(v.swept), float(v.left)
    now = compression.ratio(swept, left)
    wider = ((float(i.bore) + _TENTH) / float(i.bore)) ** 2
    deck = float(v.deck)

    def row(words: str, step: float, shape: Form, more: float, over: float) -> tuple:
        change = compression.ratio(more, over) - now
        return words, constant("", "", shape, step), constant("", "", FRICTION, change)

    return Table(
        "What a reading is worth",
        ("Where this is read larger", "by", "ratio changes by"),
        (
            row("Chamber", _HALF_CC, form(VOLUME, 1), swept, left + _HALF_CC),
            row("Crown", _HALF_CC, form(VOLUME, 1), swept, left - _HALF_CC),
            row("Deck height", _TENTH, form(LENGTH, 2), swept, left + area * _TENTH),
            row("Bore", _TENTH, form(LENGTH, 2), swept * wider, left + deck * (wider - 1)),
            row("Stroke", _TENTH, form(LENGTH, 2), swept + area * _TENTH, left),
        ),
    )
