"""Shop drawings of an engine, made from its data sheet: the whole engine, and each part larger, to scale.

    for view in views(engine("TS-16")): picture(view, view.name)  -> one svg
    place_of(engine, "crank.rod_journal").name                    -> "crank"
    picture(view, id, written={"crank.rod_journal": number})      -> the size written at its place

Every size of the sheet, and what each part is made of, is a place of exactly one view: a link to
`#size-<id>`
with `data-feature`, and the size's label for a name. Parts are links to the view that shows them larger
(`#view-<name>`). The page that shows a view gives it the id `view-<name>`, and each size's panel
`size-<id>`.
A view of which the sheet has no size is left out. `NOTE` stands with every view.
"""

from dataclasses import replace
from functools import lru_cache

from calc.page.engine import (
    cam,
    case,
    crank,
    cylinder,
    end,
    flywheel,
    head,
    journal,
    lifter,
    piston,
    plan,
    rocker,
    rod,
    saddles,
    seats,
    side,
    spring,
    stud,
    valve,
)
from calc.page.engine.picture import picture as picture
from calc.page.engine.rest import with_the_rest
from calc.page.engine.sizes import Sizes
from calc.page.engine.view import NOTE as NOTE
from calc.page.engine.view import Place as Place
from calc.page.engine.view import View as View
from calc.reference.engine import Engine


def views(engine: Engine) -> tuple[View, ...]:
    """The whole engine first, then its parts in the order of the work."""
    return _views(_Same(engine))


class _Same:
    """An engine, the same as itself only: a sheet read again is drawn again."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine

    def __hash__(self) -> int:
        return id(self.engine)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.engine is self.engine


@lru_cache(maxsize=4)
def _views(of: _Same) -> tuple[View, ...]:
    s = Sizes(of.engine)
    drawn = with_the_rest([_known(view, s) for view in _all(s)], of.engine)
    kept = {view.name for view in drawn if view.sizes or not _details(view)}
    return tuple(_named(view, kept, drawn, s) for view in drawn if view.name in kept)


def _all(s: Sizes) -> tuple[View, ...]:
    return (
        end.view(s),
        plan.view(s),
        side.view(s),
        head.view(s),
        valve.seat_view(s, "intake"),
        valve.seat_view(s, "exhaust"),
        valve.cut_view(s),
        valve.guide_view(s),
        valve.view(s),
        spring.stem_view(s),
        spring.view(s),
        rocker.view(s),
        head.ports_view(s),
        cylinder.view(s),
        stud.view(s),
        piston.view(s),
        piston.rings_view(s),
        rod.view(s),
        rod.big_end_view(s),
        rod.small_end_view(s),
        crank.view(s),
        journal.view(s),
        journal.throws_view(s),
        case.view(s),
        saddles.view(s),
        seats.view(s),
        cam.view(s),
        lifter.view(s),
        lifter.plunger_view(s),
        lifter.ring_view(s),
        lifter.way_view(s),
        flywheel.view(s),
        flywheel.gear_view(s),
    )


def _details(view: View) -> bool:
    return view.name not in ("end", "plan", "side")


def _known(view: View, s: Sizes) -> View:
    """Without the places of sizes that the sheet has not."""
    return replace(view, places=tuple(p for p in view.places if not p.size or s.has(p.of)))


def _named(view: View, kept: set[str], drawn: list[View], s: Sizes) -> View:
    """With each place's name; a part that is shown nowhere larger is no place, but stays drawn."""
    titles = {v.name: v.title for v in drawn}
    places = (
        replace(p, name=_label(p, titles, s)) if p.size or p.of in kept else replace(p, of="", words="")
        for p in view.places
    )
    return replace(view, places=tuple(p for p in places if p.of or p.part))


def _label(place: Place, titles: dict[str, str], s: Sizes) -> str:
    if not place.size:
        return titles[place.of]
    feature = s.engine.features.get(place.of)
    return feature.label if feature else place.words.replace("\n", " ")


def place_of(engine: Engine, id: str) -> View:
    """The view on which a size is a place. KeyError where there is none."""
    for view in views(engine):
        if id in view.sizes:
            return view
    raise KeyError(f"{id!r} has no place on a drawing of {engine.name}")
