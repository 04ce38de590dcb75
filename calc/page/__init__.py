"""Calculators, results and sizes as HTML: the one renderer, used when the site is built and in the
browser."""

from calc.core import working
from calc.core.kinds import KINDS
from calc.core.reading import EntryError, in_si
from calc.core.result import Caution
from calc.declare.calculator import Calculator, evaluate
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.quantity import Quantity, with_unit
from calc.declare.result import Result
from calc.declare.standing import Standing
from calc.page import result as result_page
from calc.page.entries import entry_fields
from calc.page.html import Html, both, children, el, quantity, value
from calc.page.verdict import verdict as verdict_html
from calc.reference import cautions
from calc.reference import engine as engines
from calc.stations.index import find

STALE = "The entry above cannot be used. What stands here is the last good result, for other numbers."


def calculator_html(
    id: str,
    presets: dict[str, str] | None = None,
    anchor: str = "",
    sheet: str = "",
    filled: Standing | None = None,
) -> Html:
    """A calculator with its form and a worked result: the example, with `presets` in place of its own values;
    `sheet` names the engine whose sizes stand in for the demo engine's. With a standing to be `filled` in,
    the presets are entries, and the rest is unread.

    Raises KeyError for an unknown id or engine, calc.result.Refused for a bad preset.
    """
    calculator, anchor = find(id), anchor or id
    presets = {
        **(_presets(calculator, engines.engine(sheet)) if sheet else {}),
        **{name: _named(calculator, name, text) for name, text in (presets or {}).items()},
    }
    found = evaluate(calculator, presets, standing=filled)
    fields = entry_fields(
        calculator, evaluate(calculator).taken if filled else found.taken, anchor, presets if filled else {}
    )
    verdict = el("div", verdict_html(found, anchor), data_part="verdict", class_="part-verdict")
    return el(
        "live-calculator",
        _header(calculator, anchor),
        el("calc-top", verdict, fields, class_="calc-top", data_search_exclude=True),
        _below(found, anchor, alone=filled is not None),
        el("p", data_part="announce", class_="visually-hidden", aria_live="polite"),
        class_="calculator",
        id=anchor,
        data_calculator=id,
        role="group",
        aria_labelledby=f"{anchor}-title",
    )


def _header(calculator: Calculator, anchor: str) -> Html:
    """Title, and in a fold what it works out. Search finds a calculator by what stands here, not by the
    numbers of its example: the theme's indexer leaves an element out up to the first end tag of the same
    name, hence names that occur once in a calculator."""
    finds = None
    if calculator.finds:
        finds = el("p", "Also looked for as: ", ", ".join(calculator.finds), ".", class_="finds")
    purpose = el("p", calculator.purpose, class_="purpose")
    return el(
        "header",
        el("h3", calculator.title, id=f"{anchor}-title"),
        result_page.fold("about", "About", purpose, finds, class_="about"),
        class_="calc-head",
    )


def _below(found: Result, anchor: str, alone: bool) -> Html:
    """What stands below the entries, each thing in a fold; the hazards unfolded where no page around it says
    them (`alone`)."""
    working = el(
        "div",
        result_page.working(found),
        data_part="working",
        tabindex="0",
        role="group",
        aria_label="Working",
    )
    return el(
        "calc-below",
        el("p", STALE, data_part="stale", class_="stale", hidden=True),
        el("p", data_part="status", class_="status", role="status"),
        result_page.care(found.calculator.cautions, open=alone),
        el("div", result_page.body(found, anchor), data_part="result"),
        result_page.fold("working", "Working", working),
        class_="part-result",
        data_search_exclude=True,
    )


def _named(calculator: Calculator, name: str, text: str) -> str:
    """What a page enters, with its unit named: it is no reader's, whom one would ask what was meant."""
    declared = calculator.input.get(name.partition(".")[0])
    cell = (
        next((cell for cell in declared.cells.values() if cell.name == name), None)
        if isinstance(declared, Grid)
        else declared
    )
    try:
        return with_unit(text, cell.form) if isinstance(cell, Quantity) and name == cell.name else text
    except EntryError:
        return text  # refused with all else that is wrong


def _presets(calculator: Calculator, sheet: engines.Engine) -> dict[str, str]:
    """What an engine's sheet says of a calculator's inputs, as entries: nominal sizes, limits, materials."""
    known = {i.name: sheet.features.get(i.feature_for({})) for i in calculator.inputs if i.feature}
    sizes = {
        name: feature.entry(calculator.input[name].limit or "nominal")
        for name, feature in known.items()
        if feature and isinstance(calculator.input[name], Quantity)
    }
    materials = {
        i.name: sheet.materials[i.feature_for({})]
        for i in calculator.inputs
        if isinstance(i, Choice) and i.feature and i.feature_for({}) in sheet.materials
    }
    return {name: text for name, text in sizes.items() if text} | materials


def live_first(found: Result, anchor: str, system: str) -> dict[str, str]:
    """What a reader waits for: the verdict with the leading numbers, and its words for a screen reader."""
    return {"verdict": verdict_html(found, anchor), "announce": found.verdict.headline.plain(system)}


def live_rest(found: Result, anchor: str, working: bool) -> dict[str, str]:
    """All else on the page that changes with the entries. The working is half of all markup, so it is written
    only where it stands open."""
    parts: dict[str, str] = {"result": result_page.body(found, anchor)}
    if working:
        parts["working"] = result_page.working(found)
    return parts


def result_html(id: str, output: str) -> Html:
    """One number of a calculator's worked example, for the prose."""
    calculator = find(id)
    if output not in calculator.output:
        raise KeyError(f"{id} has no output {output!r}; it has {', '.join(calculator.output)}")
    return quantity(evaluate(calculator).outputs[output])


def size_html(feature: str, what: str = "nominal", sheet: str = engines.DEMO) -> Html:
    """A size from an engine's data sheet: nominal, low, high, wear, or limits (low to high, or the one that
    there is)."""
    found = engines.engine(sheet).feature(feature)
    if what == "limits":
        if found.low is None or found.high is None:
            one = "high" if found.low is None else "low"
            return children({"high": "up to ", "low": "from "}[one], quantity(found.number(one)))
        return both(
            *(
                f"{found.form.bare(found.low, system)} to {found.form.write(found.high, system)}"
                for system in ("metric", "inch")
            )
        )
    if what not in engines.WHAT:
        raise KeyError(f"a size has {', '.join(engines.WHAT)} and limits, not {what!r}")
    return quantity(found.number(what))


def quantity_html(number: str, unit: str) -> Html:
    """A number that a page gives itself, such as a rule of thumb: `number` in a metric `unit`, written in
    both systems.

    Keeps the decimals that were typed. The unit is given by its symbol; K is a difference of temperatures.
    Raises KeyError for a unit that is not metric, ValueError for what is not a number.
    """
    kind = (
        KINDS["temperature difference"]
        if unit == "K"
        else next((k for k in KINDS.values() if any(unit == u.symbol for u in k.units)), None)
    )
    if kind is None:
        raise KeyError(
            f"{unit!r} is not the symbol of a unit; give mm, °C, kPa, N or another that the calculators write"
        )
    if unit == kind.inch.symbol != kind.metric.symbol:
        raise KeyError(f"{unit!r} is of the inch system, which is worked out here; give {kind.metric.symbol}")
    return value(working.form(kind, len(number.partition(".")[2]), unit), in_si(f"{number} {unit}", kind))


def caution_html(id: str) -> Html:
    """A hazard in the words that calculators use for it."""
    known = {c.id: c for c in vars(cautions).values() if isinstance(c, Caution)}
    if id not in known:
        raise KeyError(f"there is no caution {id!r}; there are {', '.join(known)}")
    return children(known[id].text)


def table_html(name: str, anchor: str) -> Html:
    """A table for looking numbers up, by its name in `calc.page.tables`; KeyError naming those that there
    are."""
    from calc.page import tables  # only pages need it, and it is not loaded in the browser

    if name not in tables.TABLES:
        raise KeyError(f"there is no table {name!r}; there are {', '.join(tables.TABLES)}")
    return el("div", result_page.table(tables.TABLES[name](), by_row=False), class_="reference", id=anchor)


def bench_page(name: str, elsewhere: str) -> Html:
    """The bench with an engine on it, and what it is looked through with; its parts are drawn on the page
    `elsewhere`. KeyError where there is no such sheet."""
    from calc.page import bench, size_panel  # only pages need them, and a reader who has another engine

    return bench.page(name, elsewhere, size_panel.panel_html())


def views_html(names: tuple[str, ...], sheet: str, bench_at: str) -> Html:
    """Drawings of an engine, all that show sizes where none is named; `bench_at` is where its sizes are
    checked."""
    from calc.page import bench

    return bench.views_html(names, sheet, bench_at)


def job_html(view: str) -> Html:
    """A page of jobs as it stands before a device has filled it; KeyError naming those that there are."""
    from calc.page.job import pages as job_pages  # only pages need it, and it is not loaded in the browser

    if view not in job_pages.PAGES:
        raise KeyError(f"there is no page of jobs {view!r}; there are {', '.join(job_pages.PAGES)}")
    return job_pages.page(view)


__all__ = [
    "Html",
    "bench_page",
    "calculator_html",
    "caution_html",
    "job_html",
    "live_first",
    "live_rest",
    "quantity_html",
    "result_html",
    "size_html",
    "table_html",
    "value",
    "views_html",
]
