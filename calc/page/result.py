"""A result as HTML: first what to do, then the numbers, then why."""

from calc.core.drawing import Drawing
from calc.core.result import VERDICT_WORDS, Caution, Remark, Source, Table
from calc.core.working import Number
from calc.declare.deciding import comes_of
from calc.declare.outputs import Output
from calc.declare.own_limits import SEVERITY
from calc.declare.result import Result
from calc.page.figure import figure
from calc.page.formula import line_html
from calc.page.html import Html, children, el, quantity, symbol, value
from calc.reference import engine
from calc.reference.cautions import AIRCRAFT, MAKER_FIRST

# Of every work; pages head them so.
WHO_DECIDES = (MAKER_FIRST, AIRCRAFT)

SOURCE_KINDS = {
    "standard": "published standard",
    "handbook": "handbook",
    "analytic": "exact geometry or physics",
    "common practice": "common practice, no source",
    "maker": "maker's data",
    "invented": "invented for the example",
}


def origins(result: Result, system: str) -> dict:
    """Where each field's value comes from, by name: {"from": kind, "words": in five words at most, "shown":
    what stands in for an entry}.

    What is missed keeps the example as a hint, but not one of another engine's sizes.
    """
    held: dict = {}
    told = {}
    for own in result.own:
        held.setdefault(own.input.name.partition(".")[0], []).append(own)
    for t in result.taken:
        idle = t.origin.kind == "none" and len(t.input.when) > 1  # it counts only with another choice
        told[t.input.name] = {
            "from": "idle" if idle else t.origin.kind,
            "words": _where(t, result),
            "shown": _stands(t, result, system),
            **_worst(held.get(t.input.name, ()), system),
        }
    return told


def idle(result: Result) -> dict:
    """Of a worked example: the fields that count only with another choice than the one that stands, as
    `origins` tells them."""
    chosen = {t.input.name: t.value for t in result.taken if hasattr(t.input, "options")}
    return {
        t.input.name: {"from": "idle", "words": "", "shown": ""}
        for t in result.taken
        if len(t.input.when) > 1 and chosen.get(t.input.when[0], t.input.when[1]) not in t.input.when[1:]
    }


def _where(t, result) -> str:
    if t.span:
        return f"any of {t.origin.words}"
    return {
        "sheet": t.origin.words,
        "assumed": "assumed" if t.origin.words else "",
        "missed": (
            "not known"
            if getattr(t.input, "limit", "")
            else "to be chosen"
            if hasattr(t.input, "options")
            else "to be read"
        ),
        "job": "from the job",
    }.get(t.origin.kind, "")


def _stands(t, result, system) -> str:
    declared = t.input
    if t.entered or t.origin.kind in ("none", "read") and not hasattr(declared, "options"):
        return ""
    if hasattr(declared, "options"):
        return "" if t.origin.kind == "missed" else declared.options[t.value]
    if t.origin.kind == "missed":
        sheet = result.standing.sheet
        return (
            declared.default_text(system)
            if not declared.feature
            or sheet is not None
            and sheet.name == engine.DEMO
            and not getattr(declared, "limit", "")
            else ""
        )
    if t.span:
        return f"{declared.form.bare(t.span[0], system)} to {declared.form.bare(t.span[1], system)}"
    if isinstance(t.value, tuple):  # rows of the sheet stand in the cells
        return ""
    return declared.form.bare(float(t.value), system)


def _worst(held, system) -> dict:
    """The worst of what was read in a field by its own limits."""
    worst = max(held, key=lambda own: SEVERITY[own.held.state], default=None)
    if worst is None or not worst.held.state:
        return {}
    words = worst.held.words.plain(system)
    return {
        "state": worst.held.state,
        "held": (
            f"By its own limits: {words[:1].lower()}{words[1:]}"
            if worst.held.state == "pass"
            else f"{VERDICT_WORDS[worst.held.state]} by its own limits: {words}"
        ),
    }


def body(result: Result, anchor: str) -> Html:
    """Everything below the entries that changes with them: in sight what these very numbers warn of, all else
    in a fold each."""
    leading = [] if result.decides else main_outputs(result)
    rest = [o for o in result.calculator.outputs if o.key in result.outputs and o not in leading]
    warnings, notes = (
        [r for r in result.remarks if (r.level == "warning") is warns] for warns in (True, False)
    )
    numbers = el("dl", *(output_html(o, result) for o in rest), class_="outputs") if rest else None
    do = el("p", "What to do, were these your own: ", result.verdict.do) if result.example else None
    raised = care(result.raised, "raised") if result.example else cautions(result.raised)
    return children(
        raised,
        remarks(warnings),
        fold("numbers", "Numbers", do, numbers, remarks(notes)) if do or numbers or notes else None,
        *(fold(f"table-{i}", t.title, table(t)) for i, t in enumerate(result.tables)),
        (
            fold(
                "figures",
                "Drawing" if isinstance(result.figures[0], Drawing) else "Plot",
                *(figure(f, f"{anchor}-f{i}") for i, f in enumerate(result.figures)),
            )
            if result.figures
            else None
        ),
    )


def fold(name: str, words: "str | Html", *nodes, class_: str = "", open: bool = False) -> Html:
    """What stands behind one line until it is asked for. Whether it was open is remembered by its name."""
    kind = f"fold {class_}".rstrip()
    return el("details", el("summary", words), *nodes, class_=kind, data_keep=name, open=open)


def remarks(listed: list[Remark]) -> Html | None:
    if not listed:
        return None
    return el("ul", *(el("li", r.text, class_=f"remark-{r.level}") for r in listed), class_="remarks")


def _source(source: Source) -> tuple:
    memory = source.from_memory and source.kind in ("standard", "handbook")
    kind = SOURCE_KINDS[source.kind] + ", quoted from memory" * memory
    return source.text, " ", el("span", kind, class_="source-kind")


def working(result: Result) -> Html:
    """How the numbers came about, line by line; before it what they came from, behind it the sources."""
    return children(
        el(
            "ul",
            *(
                el("li", t.input.label, ": ", _value(t), el("span", _came(t.origin), class_="line-source"))
                for t in result.taken
                if _value(t) is not None
            ),
            class_="working-from",
        ),
        el("ol", *(_line(n) for n in result.working), class_="working"),
        el("p", "Sources", class_="sources-head"),
        el("ul", *(el("li", *_source(s)) for s in result.sources), class_="sources"),
    )


def shown(t) -> "Number | str":
    if isinstance(t.value, Number):
        return t.value
    words = t.input.options.get(t.value, "")
    return words[:1].lower() + words[1:] if words[1:2].islower() else words


def _value(t):
    """An input's value as it is told, None of what was left out, is still to be read, or stands in a grid of
    its own."""
    if t.value is None or t.origin.kind in ("none", "missed") or isinstance(t.value, tuple):
        return None
    return (
        children(value(t.input.form, t.span[0]), " to ", value(t.input.form, t.span[1]))
        if t.span
        else shown(t)
    )


def _came(origin) -> str:
    """Where a value comes from, with which, by whom or why."""
    said = {"job": "from the job", "sheet": "from"}.get(origin.kind, origin.kind)
    return said + (
        "" if not origin.words else f" {origin.words}" if origin.kind == "sheet" else f": {origin.words}"
    )


def care(listed: "tuple[Caution, ...]", name: str = "care", open: bool = False) -> Html | None:
    """The hazards of the work itself, in a line that opens: a page says them in full where the step is
    (tests/page/test_cautions.py). So are those that an example's numbers call for, which are nobody's."""
    if not listed:
        return None
    hurts = ", ".join(c.id.replace("-", " ") for c in listed if c not in WHO_DECIDES)
    told = el("ul", *(el("li", c.text) for c in listed))
    return fold(name, f"Take care: {hurts}" if hurts else "Who decides", told, class_="care", open=open)


def cautions(listed: "tuple[Caution, ...]") -> Html | None:
    """Hazards that a reader's very numbers call for: in full, wherever else they are said."""
    if not listed:
        return None
    return el(
        "div",
        el("p", "Take care", class_="cautions-head"),
        el("ul", *(el("li", c.text) for c in listed)),
        class_="cautions",
        role="note",
        aria_label="Take care",
    )


WIDE = 4  # columns, from which on a table does not fit a phone


def table(t: Table, by_row: bool = True) -> Html:
    """A table; a wide one is laid out row by row on a narrow screen (`by_row`), or else stays a table and is
    moved sideways."""
    by_row = by_row and len(t.columns) >= WIDE
    states = t.states or ("",) * len(t.rows)
    rows = [
        row_of([children(row[0], _row_state(s)), *row[1:]], t.columns if by_row else None, state=s)
        for row, s in zip(t.rows, states)
    ]
    # A class keeps the theme's script from wrapping it, which it would not do again for a live result. The
    # search takes a table's cells for one endless word, on which it then fails: it is kept out of the index.
    made = el(
        "table",
        el("caption", t.title),
        head_of(t.columns, by_row),
        el("tbody", *rows, role="rowgroup" if by_row else None),
        class_="numbers by-row" if by_row else "numbers",
        role="table" if by_row else None,
        data_sortable=t.sortable,
        data_search_exclude=True,
    )
    if by_row:
        return el("div", made, class_="table-box")
    return el("div", made, class_="table-box", tabindex="0", role="group", aria_label=t.title)


def head_of(columns, by_row: bool) -> Html:
    """A table's head. Row by row its layout is no table's any more, so what it is must be said: some browsers
    go by the layout."""
    cells = (el("th", c, scope="col", role="columnheader" if by_row else None) for c in columns)
    return el("thead", el("tr", *cells, role="row" if by_row else None), role="rowgroup" if by_row else None)


def row_of(cells, columns=None, state: str = "") -> Html:
    """A row, headed by its first cell; given the columns' names, each other cell carries its own for the
    layout row by row."""
    if columns is None:
        first, *rest = el("th", cells[0], scope="row"), *(el("td", c) for c in cells[1:])
    else:
        bare = columns[0] if str(cells[0])[:1].isdigit() else None  # “2” alone says little, “Rod 2” does
        first, *rest = (
            el("th", cells[0], scope="row", role="rowheader", data_head=bare),
            *(el("td", c, role="cell", data_head=name) for c, name in zip(cells[1:], columns[1:])),
        )
    return el("tr", first, *rest, class_=f"row-{state}" if state else None, role="row" if columns else None)


def _row_state(state: str) -> Html | None:
    """What is said of a row that is not simply in order."""
    return (
        el("span", " ", VERDICT_WORDS[state], class_=f"row-state row-state-{state}")
        if state not in ("", "pass")
        else None
    )


def _readers(output: Output, result: Result) -> bool:
    """Does a number stand on anything that was read? What the sheet alone makes is no headline."""
    read = {t.input.name for t in result.taken if t.entered}
    return result.standing is None or comes_of(result.outputs[output.key], read)


def main_outputs(result: Result) -> list[Output]:
    return [
        o for o in result.calculator.outputs if o.main and o.key in result.outputs and _readers(o, result)
    ]


def output_html(output, result) -> Html:
    n = result.outputs[output.key]
    return el(
        "div",
        el(
            "dt",
            output.label,
            " ",
            el("span", symbol(output.symbol), class_="sym") if output.symbol else None,
        ),
        el("dd", quantity(n), doubt_html(output.key, n, result), class_="num"),
        class_="output",
        data_output=output.key,
    )


def doubt_html(key: str, n: Number, result) -> Html | None:
    """The expanded uncertainty behind an output, where the readings have one."""
    U, shape = result.doubts.get(key, 0.0), n.sure_form.difference
    if not any(digit in "123456789" for digit in shape.bare(U, "metric")):
        return None  # what stands in moves it by less than is shown
    return el("span", " ± ", value(shape, U), class_="doubt")


def _line(n) -> Html:
    return el(
        "li",
        el(
            "p",
            n.label,
            el("span", n.source.short, class_="line-source", title=n.source.text) if n.source else None,
            class_="line-label",
        ),
        line_html(n),
    )
