"""A calculator's form: every field with its symbol, unit, how to measure it, and a place for one sentence."""
from calc.calculator import Calculator
from calc.inputs import WARM, Choice, Grid, Quantity, Taken
from calc.page.html import Html, both, children, el, symbol
from calc.quantity import TEMPERATURE
from calc.working import form as form_of


def form(calculator: Calculator, taken: tuple[Taken, ...], anchor: str, presets: dict) -> Html:
    """Fields in declared order; those that rarely change stand folded below, and the temperatures of warm readings last."""
    first = [_field(t, anchor, presets) for t in taken if not t.input.fold]
    folded = [_field(t, anchor, presets) for t in taken if t.input.fold]
    warm = [_warm_row(t.input, anchor) for t in taken if isinstance(t.input, Quantity) and t.input.parts]
    foot = el("div", el("button", "Back to the example", type="reset", data_reset=True, class_="reset"), class_="form-foot")
    return el("form", el("div", *first, class_="fields"),
              _fold("more", f"{len(folded)} more that rarely change", el("div", *folded, class_="fields")) if folded else None,
              _fold("warm", "Read warm? Part and gauge temperatures", *warm) if warm else None,
              foot, data_form=True, novalidate=True, autocomplete="off", class_="calc-form")


def _fold(name: str, words: str, *nodes) -> Html:
    return el("details", el("summary", words), *nodes, class_=f"more {name}", data_keep=name)


def _field(taken: Taken, anchor: str, presets: dict) -> Html:
    if isinstance(taken.input, Grid):
        return _grid(taken, anchor, presets)
    declared, id = taken.input, f"{anchor}-{taken.input.name}"
    label = el("label", _label(declared), for_=id)
    hint = _hint(declared)
    described = f"{id}-message" + (f" {id}-hint" if hint else "")
    preset = presets.get(declared.name)
    if isinstance(declared, Choice):
        entry = el("select", *(el("option", words, value=key, selected=key == taken.value) for key, words in declared.options.items()),
                   id=id, name=declared.name, data_entry=True, aria_describedby=described, data_preset=preset, data_metric=taken.value, data_inch=taken.value)
        keys = None
    else:
        entry = _entry(declared.name, id, declared.form, float(taken.value), preset, described)
        keys = _keys(declared.label, declared.form, declared.hard_range[0] < 0, declared.measured)
    return el("div", label, el("div", entry, class_="entry"), keys, _message(id, declared.name),
              el("p", hint, id=f"{id}-hint", class_="hint") if hint else None, class_="field", data_field=True)


def _label(declared) -> Html:
    return children(declared.label, children(" ", el("span", symbol(declared.symbol), class_="sym")) if declared.symbol else None)


def _message(id: str, name: str) -> Html:
    return el("p", id=f"{id}-message", class_="message", data_message_for=name, hidden=True)


def _entry(name, id, shape, value, preset, described, label=None) -> Html:
    """A field for a number, with the example's text in both systems; `value` None leaves it empty."""
    metric, inch = ("" if value is None else shape.bare(value, s) for s in ("metric", "inch"))
    units = shape.metric.symbol, shape.inch.symbol
    return children(
        el("input", type="text", inputmode="decimal", enterkeyhint="next", spellcheck="false", value=metric,
           placeholder=" " if value is None else None,  # lets print.css leave out what is empty
           id=id, name=name, data_entry=True,
           aria_describedby=described, aria_label=label, data_preset=preset, data_metric=metric, data_inch=inch, data_unit_metric=units[0], data_unit_inch=units[1]),
        el("span", both(*units), class_="unit") if any(units) else None)


def _grid(taken: Taken, anchor: str, presets: dict) -> Html:
    """A field of several rows. A column pasted into a cell fills the cells below it."""
    declared, id = taken.input, f"{anchor}-{taken.input.name}"
    hint = " ".join(filter(None, (_hint(declared), "A pasted column fills downwards.")))
    given = {part: text for part, text in ((name.partition(".")[2], text) for name, text in presets.items() if name.startswith(declared.name)) if part}
    rows = []
    for r, row in enumerate(declared.rows):
        cells = []
        for c, column in enumerate(declared.columns):
            cell, value = declared.cells[r, c], taken.value[r]
            cells.append(el("td", el("div", _entry(cell.name, f"{id}-{r + 1}-{c + 1}", column.form, None if value is None else float(value[c]),
                                                   given.get(f"{r + 1}.{c + 1}"), f"{id}-message {id}-hint", cell.label), class_="entry")))
        rows.append(el("tr", el("th", row, scope="row"), *cells))
    heads = [el("th", column.label, " ", el("span", symbol(column.symbol), class_="sym") if column.symbol else None, scope="col") for column in declared.columns]
    table = el("table", el("thead", el("tr", el("td"), *heads)), el("tbody", *rows), data_grid=True)
    first = declared.columns[0]
    return el("fieldset", el("legend", declared.label), table, _keys(declared.label, first.form, False, declared.measured),
              _message(id, declared.name), el("p", hint, id=f"{id}-hint", class_="hint"), class_="field grid", data_field=True)


def _warm_row(declared: Quantity, anchor: str) -> Html:
    """Temperatures of part and gauge at the reading: left empty, both are 20 °C."""
    fields = []
    for part in declared.parts:
        id, name = f"{anchor}-{declared.name}-{part}", f"{declared.name}.{part}"
        fields.append(el("div", el("label", WARM[part].capitalize(), for_=id), el("div", _entry(name, id, form_of(TEMPERATURE, 0), None, None, f"{id}-message"), class_="entry"),
                         _message(id, name), class_="field", data_field=True))
    return el("fieldset", el("legend", declared.label), el("div", *fields, class_="fields"), class_="warm-row")


def _hint(declared) -> str:
    """How to come by the number, in a sentence."""
    tool = f"Measure with {declared.tool}." if declared.measured else ""
    return " ".join(filter(None, (tool, declared.hint)))


def _keys(label: str, shape, signed: bool, doubtful: bool) -> Html:
    """Signs that a phone's number pad lacks."""
    fractions = shape.kind.name == "length"
    units = list(dict.fromkeys([shape.metric.symbol, shape.inch.symbol, *(u.symbol for u in shape.kind.units)]))
    inserted = [*((("−", "−"),) * signed), *((("/", "/"), ("space", " ")) * fractions), *((("±", " ± "),) * doubtful), *[(u, f" {u}") for u in units if u][:5]]
    return el("div", *(el("button", shown, type="button", tabindex="-1", data_key=text, aria_label=shown if not text.strip() else None) for shown, text in inserted),
              class_="keys", role="group", aria_label=f"Signs for {label}")
