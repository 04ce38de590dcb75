"""Where entries are typed: every field of a calculator with its symbol, unit, how to measure it, and a place
for one sentence."""

from calc.core.kinds import ANGLE, FORCE, LENGTH, PRESSURE, TEMPERATURE
from calc.core.working import Form, form
from calc.core.writing import to_unit
from calc.declare.calculator import Calculator
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.open_input import Open
from calc.declare.quantity import Quantity, with_unit
from calc.declare.taken import Taken
from calc.declare.warm import WARM
from calc.page.html import Html, both, children, el, symbol
from calc.page.result import fold


def entry_fields(calculator: Calculator, taken: tuple[Taken, ...], anchor: str, presets: dict) -> Html:
    """Fields in declared order; those that rarely change stand folded below, and the temperatures of warm
    readings last. They are empty, with the example's values as hints; `presets` are filled in as if they had
    been read."""
    chosen = {t.input.name: t.value for t in taken if isinstance(t.input, Choice)}

    def field(t: Taken) -> Html:
        choice, *kinds = t.input.when or ("",)
        return _field(t, anchor, presets, bool(kinds) and chosen.get(choice, kinds[0]) not in kinds)

    first = [field(t) for t in taken if not t.input.fold]
    folded = [field(t) for t in taken if t.input.fold]
    warm = [
        _warm_row(t.input, anchor, presets) for t in taken if isinstance(t.input, Quantity) and t.input.parts
    ]
    whose = (
        el(
            "label",
            "Limits of ",
            el("select", data_engine_choice=True, data_none="another engine (no sheet)"),
            class_="engine-choice",
        )
        if any(t.input.feature for t in taken)
        else None
    )
    return el(
        "form",
        el("div", *first, class_="fields"),
        el(
            "div",
            fold(
                "more",
                el(
                    "span", f"{len(folded)} more", el("span", " that rarely change", class_="visually-hidden")
                ),
                el("div", *folded, class_="fields"),
                class_="more",
            )
            if folded
            else None,
            fold("warm", "Read warm?", *warm, class_="more warm") if warm else None,
            whose,
            el("button", "Share", type="button", data_share=True, class_="share"),
            el("button", "Empty all fields", type="reset", data_reset=True, class_="reset"),
            class_="form-foot",
        ),
        data_form=True,
        novalidate=True,
        autocomplete="off",
        class_="calc-form",
    )


def _field(taken: Taken, anchor: str, presets: dict, idle: bool = False) -> Html:
    """A field; one that is `idle` counts only with another choice than the one that stands."""
    if isinstance(taken.input, Grid):
        return _grid(taken, anchor, presets, idle)
    declared, id = taken.input, f"{anchor}-{taken.input.name}"
    label = el("label", _label(declared), for_=id)
    hint = _hint(declared)
    described = f"{id}-message {id}-origin" + (f" {id}-hint" if hint else "")
    preset, keys = presets.get(declared.name), None
    if isinstance(declared, Choice):
        entry = _select(taken, id, preset, described)
    elif isinstance(declared, Open):
        entry = _any_quantity(declared, id, preset, described)
    else:
        entry = _entry(declared.name, id, declared.form, taken.value, preset, described)
        keys = _keys(declared.label, [declared.form], _signed(declared), declared.measured)
    return el(
        "div",
        label,
        el("div", entry, class_="entry"),
        keys,
        _origin(id, declared.name),
        _message(id, declared.name),
        el("p", hint, id=f"{id}-hint", class_="hint") if hint else None,
        class_="field wide" if _wordy(declared) else "field",
        data_field=True,
        data_from="idle" if idle else None,
    )


def _wordy(declared) -> bool:
    """Is a choice, or the unit beside a number, too wide for half a phone's screen?"""
    if isinstance(declared, Choice):
        return max(map(len, declared.options.values())) > HALF
    return isinstance(declared, Quantity) and any(
        len(declared.form.unit(system).symbol) > HALF for system in ("metric", "inch")
    )


def _select(taken: Taken, id: str, preset: str | None, described: str) -> Html:
    """A choice: its first answer stands where it is a question, else the example's as a hint."""
    declared, question, empty = taken.input, is_question(taken.input), None
    if not question:
        words = declared.options[taken.value]
        empty = el("option", "Example: ", words, value="", data_hint=True, selected=True)
    options = (
        el("option", words, value=key, selected=question and key == taken.value)
        for key, words in declared.options.items()
    )
    return el(
        "select",
        empty,
        *options,
        id=id,
        name=declared.name,
        data_entry=True,
        aria_describedby=described,
        data_preset=preset,
        data_question=taken.value if question else None,
        data_which=declared.which,
    )


def _any_quantity(declared: Open, id: str, preset: str | None, described: str) -> Html:
    """A field for a quantity of any kind: letters are typed here, so the whole keyboard is up."""
    metric, inch = (declared.default_text(system) for system in ("metric", "inch"))
    return el(
        "input",
        type="text",
        enterkeyhint="next",
        spellcheck="false",
        autocapitalize="off",
        placeholder=metric or " ",
        id=id,
        name=declared.name,
        data_entry=True,
        aria_describedby=described,
        data_preset=preset,
        data_metric=metric,
        data_inch=inch,
    )


def is_question(declared) -> bool:
    """Is a choice a question put to the calculator, whose first answer stands until another is chosen? Others
    are facts of the part."""
    return isinstance(declared, Choice) and not (
        declared.must or declared.feature or declared.assumed or declared.which
    )


def _origin(id: str, name: str) -> Html:
    """The place for where a field's value comes from, once it is no example."""
    return el("p", id=f"{id}-origin", class_="origin", data_origin=name)


def _label(declared) -> Html:
    return children(declared.label, children(" ", _symbol(declared.symbol)) if declared.symbol else None)


def _message(id: str, name: str) -> Html:
    return el("p", id=f"{id}-message", class_="message", data_message_for=name, hidden=True)


def _entry(name, id, shape, value, preset, described, label=None) -> Html:
    """A field for a number, with the example's text in both systems; `value` None leaves it empty. In a grid,
    where `label` names the cell, the unit stands above the column."""
    metric, inch = ("" if value is None else shape.bare(float(value), s) for s in ("metric", "inch"))
    units = shape.metric.symbol, shape.inch.symbol
    preset = None if preset is None else with_unit(preset, shape)
    return children(
        el(
            "input",
            type="text",
            inputmode="decimal",
            enterkeyhint="next",
            spellcheck="false",
            placeholder=metric or " ",  # so that print.css knows what was left empty
            id=id,
            name=name,
            data_entry=True,
            aria_describedby=described,
            aria_label=label,
            data_preset=preset,
            data_metric=metric,
            data_inch=inch,
            data_unit_metric=units[0],
            data_unit_inch=units[1],
        ),
        el("span", both(*units), class_="unit") if any(units) else None,
    )


def _grid(taken: Taken, anchor: str, presets: dict, idle: bool = False) -> Html:
    """A field of several rows. A column pasted into a cell fills the cells below it."""
    declared, id = taken.input, f"{anchor}-{taken.input.name}"
    hint = " ".join(filter(None, (_hint(declared), "A pasted column fills downwards.")))
    rows = _rows(taken, id, declared.preset(presets))
    heads = [
        el("th", column.label, " ", _symbol(column.symbol), _unit(column.form), scope="col")
        for column in declared.columns
    ]
    table = el(
        "table",
        el("thead", el("tr", el("td"), *heads)),
        el("tbody", *rows),
        data_grid=True,
        class_=f"cells cells-{min(len(declared.columns), 4)}"
        + " named" * any(len(row) > 3 for row in declared.rows),
    )
    shapes = list(dict.fromkeys(column.form for column in declared.columns))
    signed = any(_signed(declared.cells[0, c]) for c in range(len(declared.columns)))
    return el(
        "fieldset",
        el("legend", declared.label),
        _all_rows(declared),
        table,
        _keys(declared.label, shapes, signed, declared.measured),
        _origin(id, declared.name),
        _message(id, declared.name),
        el("p", hint, id=f"{id}-hint", class_="hint"),
        class_="field grid",
        data_field=True,
        data_from="idle" if idle else None,
    )


def _rows(taken: Taken, id: str, presets: dict) -> list[Html]:
    """The rows of a grid. A cell names its column and unit, shown beside it where the screen is too narrow
    for a table."""
    declared, rows = taken.input, []
    for r, row in enumerate(declared.rows):
        cells = []
        for c, column in enumerate(declared.columns):
            cell, values = declared.cells[r, c], taken.value[r]
            entry = _entry(
                cell.name,
                f"{id}-{r + 1}-{c + 1}",
                column.form,
                values and values[c],
                presets.get((r, c)),
                f"{id}-message {id}-hint",
                cell.label,
            )
            cells.append(el("td", el("div", entry, class_="entry"), data_head=column.label))
        spare = "spare" if r >= _enough(declared) and not declared.fold else None
        rows.append(el("tr", el("th", row, scope="row"), *cells, class_=spare))
    return rows


def _enough(declared: Grid) -> int:
    """Rows without which nothing is told; a filled one brings the next to sight."""
    return max(declared.least, 1)


def _all_rows(declared: Grid) -> Html | None:
    """A fold that holds nothing: while it stands open, the rows below it do that are not needed."""
    if len(declared.rows) <= _enough(declared) or declared.fold:
        return None
    return fold(f"rows-{declared.name}", f"All {len(declared.rows)} rows", class_="rows")


def _symbol(written: str) -> Html | None:
    return el("span", symbol(written), class_="sym") if written else None


def _unit(shape) -> Html | None:
    """The unit below a column's heading."""
    return (
        el("span", both(shape.metric.symbol, shape.inch.symbol), class_="unit")
        if shape.metric.symbol or shape.inch.symbol
        else None
    )


def _warm_row(declared: Quantity, anchor: str, presets: dict) -> Html:
    """Temperatures of part and gauge at the reading: left empty, both are 20 °C."""
    fields = []
    for part in declared.parts:
        id, name = f"{anchor}-{declared.name}-{part}", f"{declared.name}.{part}"
        fields.append(
            el(
                "div",
                el("label", WARM[part].capitalize(), for_=id),
                el(
                    "div",
                    _entry(name, id, form(TEMPERATURE, 0), None, presets.get(name), f"{id}-message"),
                    class_="entry",
                ),
                _message(id, name),
                class_="field",
                data_field=True,
            )
        )
    return el(
        "fieldset", el("legend", declared.label), el("div", *fields, class_="fields"), class_="warm-row"
    )


def _hint(declared) -> str:
    """How to come by the number, in a sentence."""
    tool = f"Measure with {declared.tool}." if declared.measured else ""
    left = "May be left empty." if getattr(declared, "optional", False) else ""
    return " ".join(filter(None, (tool, declared.hint, left)))


def _signed(declared: Quantity) -> bool:
    """Whether a number below zero may be entered, in either unit: −20 °C lies above zero in kelvin."""
    return any(
        to_unit(declared.hard_range[0], declared.form.unit(system)) < 0 for system in ("metric", "inch")
    )


# Letters of a choice, after “Example: ”, that half of a narrow phone's screen shows.
HALF = 8
# Beside a field's own units: what a hand reads off a gauge or a scale.
ALSO_READ = {LENGTH: ("thou",), PRESSURE: ("bar",), FORCE: ("kgf",), ANGLE: ("°", "′", "″")}


def _keys(label: str, shapes: list[Form], signed: bool, doubtful: bool) -> Html | None:
    """Signs that a phone's number pad lacks: of units the other system's, since a bare number is in the
    reader's own, and what else the trade reads a quantity of this kind in."""
    fractions = any(shape.kind is LENGTH for shape in shapes)
    signs = [
        *((("−", "−"),) * signed),
        *((("/", "/"), ("space", " ")) * fractions),
        *((("±", " ± "),) * doubtful),
    ]
    kinds = dict.fromkeys(shape.kind for shape in shapes)
    also = [(unit, f" {unit}") for kind in kinds for unit in ALSO_READ.get(kind, ())]
    pairs = dict.fromkeys((shape.metric.symbol, shape.inch.symbol) for shape in shapes)
    turned = [
        _key(foreign, f" {foreign}", class_)
        for metric, inch in pairs
        if metric != inch
        for foreign, class_ in ((inch, "u-metric"), (metric, "u-inch"))
    ]
    keys = [*(_key(*sign) for sign in signs), *turned, *(_key(*unit) for unit in also)]
    return el("div", *keys, class_="keys", role="group", aria_label=f"Signs for {label}") if keys else None


def _key(shown: str, text: str, class_: str | None = None) -> Html:
    return el(
        "button",
        shown,
        type="button",
        tabindex="-1",
        data_key=text,
        aria_label=shown if not text.strip() else None,
        class_=class_,
    )
