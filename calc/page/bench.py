"""The engine on the bench: its drawings, and below each the sizes of that part with their limits. All of it
reads without a script; with one, a size that is tapped opens its panel (docs/assets/js/bench.mjs)."""

import json
import re
from typing import NamedTuple

from calc.page.engine import NOTE, View, picture, views
from calc.page.html import Html, both, children, el
from calc.page.size import asks_stage, named
from calc.reference.engine import Engine, Feature
from calc.reference.materials import MATERIALS

NO_SHEET = "another engine (no sheet)"
NOTHING = (
    "This handbook has no data sheet of your engine, so a size has no limits here. Check a number asks for"
    " those that you know."
)
NONE = "Nothing here is called so. The search at the top looks through every page."


class Told(NamedTuple):
    """What many sizes have alike, told once: each names it by its number."""

    places: list[tuple[str, ...]]
    tool: list[str]


def bench(asked: dict) -> dict:
    """The reply to {"call": "bench", "engine": name}: the bench of another engine than that
    which the page was built with, with all its drawings."""
    try:
        return {"ok": True, "html": {"bench": bench_html(asked["engine"], {})}, "errors": []}
    except KeyError as error:
        told = {"field": None, "code": "no-sheet", "message": f"{str(error.args[0]).rstrip('.')}."}
        return {"ok": False, "html": {}, "errors": [told]}


def page(name: str, elsewhere: str, panel: Html) -> Html:
    """What stands around it: where a size is looked for, whose limits these are, what was looked at last, and
    the `panel` that a size opens. Parts are drawn on the page `elsewhere`; their drawings come from there
    when they are shown."""
    drawn = {view.name: elsewhere for view in views(named(name))[1:]}
    finding = el(
        "p",
        el("label", "Part, size or job", for_="find"),
        el("input", type="search", id="find", autocomplete="off", placeholder=" ", data_find=True),
        class_="find",
        hidden=True,
    )
    choice = el("select", data_engine_choice=True, data_none=NO_SHEET)
    # an engine that the reader chose never shows the limits of another one first
    ours = f'html[data-engine]:not([data-engine="{name}"]) .bench[data-bench="{name}"]{{display:none}}'
    first = el(
        "div",
        el("div", data_unread=True),
        el("section", el("h2", "Lately"), el("ul", class_="bench-chips"), data_lately=True, hidden=True),
        class_="bench-first",
    )
    return el(
        "size-bench",
        el("style", Html(ours)),
        el(
            "div",
            finding,
            el("p", el("label", "Limits of ", choice), class_="engine-choice"),
            class_="bench-tools",
        ),
        el("p", data_bench_status=True, role="status", class_="status"),
        first,
        bench_html(name, drawn),
        el("p", NONE, data_not_found=True, hidden=True),
        el("p", NOTHING, class_="bench-none"),
        panel,
        data_search_exclude=True,
    )


def bench_html(name: str, elsewhere: dict[str, str]) -> Html:
    """The whole engine and its parts, of which the page shows that of its address; `elsewhere` tells on which
    page a view is drawn that is not here. KeyError, one sentence, where this handbook has no such sheet."""
    engine = named(name)
    whole, *parts = views(engine)
    told = Told(
        *(list(dict.fromkeys(getattr(f, what) for f in engine.features.values())) for what in Told._fields)
    )
    return el(
        "div",
        el(
            "section",
            el("h2", name, id="engine", class_="visually-hidden"),
            _picture(whole, elsewhere),
            el(
                "ul",
                *(el("li", el("a", _short(view), href=f"#view-{view.name}")) for view in parts),
                class_="bench-parts",
            ),
            class_="bench-whole",
        ),
        *(_part(engine, view, told, elsewhere) for view in parts),
        el("p", NOTE, " ", engine.about, class_="bench-about"),
        class_="bench",
        data_bench=name,
        data_places=json.dumps(told.places),
        data_tools=json.dumps(told.tool),
    )


def _short(view: View) -> str:
    """A view in a word or two: Big end."""
    return view.name.replace("-", " ").capitalize()


def _part(engine: Engine, view: View, told: Told, elsewhere: dict[str, str]) -> Html:
    rows = (
        _size(engine, feature, told)
        if (feature := engine.features.get(place.of))
        else _material(place.of, place.name, engine.materials[place.of])
        for place in view.places
        if place.size
    )
    return el(
        "section",
        el("p", el("a", "The whole engine", href="#engine"), class_="bench-back"),
        el("h2", _short(view), id=f"view-{view.name}"),
        _picture(view, elsewhere),
        el("ul", *rows, class_="sizes"),
        class_="bench-part",
    )


def _picture(view: View, elsewhere: dict[str, str]) -> Html:
    """A view, or the room for it and where it is drawn."""
    if view.name not in elsewhere:
        return el("div", picture(view, view.name), class_="bench-picture")
    to = f"{elsewhere[view.name]}#view-{view.name}"
    link = el("a", "Drawing", href=to)
    return el("div", link, class_="bench-picture", data_drawn=to, style=f"aspect-ratio:{_room(view)}")


def _room(view: View) -> str:
    """Width over height, as it will be drawn."""
    found = re.match(r'<svg viewBox="0 0 (\S+) (\S+)"', picture(view, view.name))
    assert found, "a picture says how large it is"
    return "/".join(found.groups())


def views_html(names: tuple[str, ...], engine: str, bench_at: str) -> Html:
    """Views of an engine by their names, all that show sizes where none is named; a size leads to its place
    on the bench, which stands `bench_at`. KeyError naming those that there are."""
    known = {view.name: view for view in views(named(engine))}
    if missing := [name for name in names if name not in known]:
        raise KeyError(f"there is no view {missing[0]!r} of {engine}; there are {', '.join(known)}")
    shown = [known[name] for name in names] or known.values()
    return children(*(_figure(view, bench_at, bool(names)) for view in shown))


def _figure(view: View, bench_at: str, away: bool) -> Html:
    """A view with its title; one that stands alone has no other view beside it that it could lead to."""
    drawn = picture(view, view.name).replace('href="#size-', f'href="{bench_at}#size-')
    if away:
        drawn = drawn.replace('href="#view-', f'href="{bench_at}#view-')
    shown = el("figure", Html(drawn), el("figcaption", view.title, "."))
    return el("div", shown, id=f"view-{view.name}", class_="picture")


def _size(engine: Engine, feature: Feature, told: Told) -> Html:
    """A size with its limits. What its panel needs stands with it: its places, its tool, its units where they
    are not mm and in, whether a used part has limits of its own, and what it makes or is made of."""
    shape = feature.form
    units = f"{shape.metric.symbol} {shape.inch.symbol}"
    others = [id for _, id in feature.terms]
    others += [f.id for f in engine.features.values() if feature.id in (id for _, id in f.terms)]
    return el(
        "li",
        el("a", feature.label, " ", el("small", limits_said(feature)), href=f"#size-{feature.id}"),
        id=f"size-{feature.id}",
        data_places=told.places.index(feature.places),
        data_tool=told.tool.index(feature.tool) if feature.tool else None,
        data_units=None if units == "mm in" else units,
        data_worn=asks_stage(feature),
        data_others=" ".join(others) or None,
    )


def _material(id: str, label: str, material: str) -> Html:
    """What a part is made of: nothing that a gauge reads."""
    return el("li", el("p", label, " ", el("small", MATERIALS[material].name)), id=f"size-{id}")


def limits_said(feature: Feature) -> Html:
    """The limits in the fewest words: 51.985 to 52.000 mm, worn 51.960 mm."""
    return both(*(_said(feature, system) for system in ("metric", "inch")))


def _said(feature: Feature, system: str) -> str:
    shape, low, high, worn = feature.form, feature.low, feature.high, feature.wear
    if low is not None and high is not None:
        made = f"{shape.bare(low, system)} to {shape.write(high, system)}"
    elif high is not None:
        made = f"up to {shape.write(high, system)}"
    elif low is not None:
        made = f"from {shape.write(low, system)}"
    else:
        made = "" if worn is not None else f"{shape.write(feature.nominal, system)}, no limits"
    return ", ".join(filter(None, (made, "" if worn is None else f"worn {shape.write(worn, system)}")))
