"""The crowns under their cylinders' faces, as read and with the shims, heights drawn larger."""

from calc.core.drawing import Area, Drawing, Label, Line, box
from calc.core.result import say
from calc.stations.cylinders.deck_height.asked import In
from calc.stations.cylinders.deck_height.barrels import Barrel, Head


def crowns(i: In, heads: list[Head]) -> Drawing:
    """Each piston below the line of the faces; dashed, its crown with the shims."""
    wide, gap = float(i.span), 0.55 * float(i.span)
    with_shims = [
        (barrel, deck, head) for head in heads for barrel, deck in zip(head.barrels, head.decks, strict=True)
    ]
    deepest = max(
        abs(float(x)) for barrel, deck, _ in with_shims for x in (*barrel.ends, deck, i.high, i.low)
    )
    times = max(1, int(0.9 * wide / deepest))
    foot = -1.5 * wide
    end = len(with_shims) * (wide + gap) - gap

    def crown(at: float, barrel: Barrel) -> Area:
        left, right = (-float(x) * times for x in barrel.ends)
        return Area(((at, left), (at + wide, right), (at + wide, foot), (at, foot)), "c")

    shapes: list = [
        Line(((-0.3 * wide, 0.0), (end + 0.3 * wide, 0.0))),
        *(
            Line(((-0.3 * wide, -float(x) * times), (end + 0.3 * wide, -float(x) * times)), "hidden")
            for x in (i.low, i.high)
        ),
    ]
    for n, (barrel, deck, _) in enumerate(with_shims):
        at = n * (wide + gap)
        wall = 0.1 * wide
        shapes += [
            crown(at, barrel),
            Area(box(at - wall, foot, at, 0.0), "a"),
            Area(box(at + wide, foot, at + wide + wall, 0.0), "a"),
            Line(((at, -float(deck) * times), (at + wide, -float(deck) * times)), "band"),
            Label((at + wide / 2, 0.14 * wide), barrel.name),
            Label((at + wide / 2, foot - 0.32 * wide), barrel.now),
        ]
    return Drawing(
        "Crowns below their cylinders' faces",
        say(
            "Each piston's crown as it was read under the line of the cylinders' faces, {decks}; the strong"
            " line is where it stands with the shims, the dashed lines are {low} and {high}.",
            decks=say(
                ", ".join(f"{{d{n}}}" for n in range(len(with_shims))),
                **{f"d{n}": barrel.now for n, (barrel, _, _) in enumerate(with_shims)},
            ),
            low=i.low,
            high=i.high,
        ),
        tuple(shapes),
        say("heights drawn {n} times as large", n=str(times)),
    )
