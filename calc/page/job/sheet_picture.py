"""The pictures of the size sheet: the views of the engine on which its sizes lie, each size written at its
place."""

from itertools import groupby

from calc.core.result import VERDICT_WORDS
from calc.job.verdicts import Judged, Row
from calc.page.engine import NOTE, picture, views
from calc.page.engine.picture import Words
from calc.page.html import Html, both, el
from calc.page.job.sheet_marks import SYSTEMS
from calc.reference.engine import Engine, Feature


def pictures(rows: list[Row], engine: Engine | None) -> Html | None:
    """Of what is told as it goes in, else as it came. None where no size of the job has a place."""
    if engine is None:
        return None
    written = _written(rows, engine)
    figures = []
    for view in views(engine):
        own = {id: written[id] for id in view.sizes if id in written}
        if own:
            drawn = picture(view, f"sheet-{view.name}", own, on_paper=True)
            figures.append(el("figure", drawn, el("figcaption", view.title)))
    if not figures:
        return None
    return el(
        "section",
        el("h2", "Where these sizes are"),
        el("div", *figures, class_="sheet-pictures"),
        el("p", NOTE, " Of several places the smallest and the greatest size."),
    )


def _written(rows: list[Row], engine: Engine) -> dict[str, tuple[Words, ...]]:
    """{feature: the lines at its place}: its size, or the smallest and the greatest of its places, and the
    gravest verdict where not all are in order."""
    found: dict[str, tuple[Words, ...]] = {}
    for id, alike in groupby(rows, key=lambda row: row.feature):
        its, feature = list(alike), engine.features.get(id)
        values = sorted(float(row.last.value) for row in its if row.last.value is not None)
        if feature is None or not values:
            continue
        states = {row.state for row in its}
        worst = next((VERDICT_WORDS[s] for s in ("fail", "unsure", "attention") if s in states), "")
        found[id] = (*_span(feature, its[0].last, values), *filter(None, (worst,)))
    return found


def _span(feature: Feature, judged: Judged, values: list[float]) -> tuple[Words, ...]:
    form = judged.value.form if judged.value is not None and judged.value.form else feature.form
    metric, inch = (form.write(values[-1], system) for system in SYSTEMS)
    greatest = both(metric, inch, "tspan")
    if all(form.write(values[0], s) == form.write(values[-1], s) for s in SYSTEMS):
        return (greatest,)
    metric, inch = (f"{form.bare(values[0], system)} to" for system in SYSTEMS)
    return both(metric, inch, "tspan"), greatest
