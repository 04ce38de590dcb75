"""A calculator's form: every field with its symbol, unit, how to measure it, and a place for one sentence."""
from calc.calculator import Calculator, Choice
from calc.page.html import Html, both, children, el, symbol
from calc.result import Taken


def form(calculator: Calculator, taken: tuple[Taken, ...], anchor: str, presets: dict) -> Html:
    """Fields in declared order; those that rarely change stand folded below."""
    first = [_field(t, anchor, presets) for t in taken if not t.input.fold]
    folded = [t for t in taken if t.input.fold]
    more = el("details", el("summary", f"{len(folded)} more that rarely change"), el("div", *(_field(t, anchor, presets) for t in folded), class_="fields"),
              class_="more", data_keep="more") if folded else None
    foot = el("div", el("button", "Back to the example", type="reset", data_reset=True, class_="reset"), class_="form-foot")
    return el("form", el("div", *first, class_="fields"), more, foot, data_form=True, novalidate=True, autocomplete="off", class_="calc-form")


def _field(taken: Taken, anchor: str, presets: dict) -> Html:
    declared, id = taken.input, f"{anchor}-{taken.input.name}"
    label = el("label", declared.label, children(" ", el("span", symbol(declared.symbol), class_="sym")) if declared.symbol else None, for_=id)
    hint = _hint(declared)
    common = dict(id=id, name=declared.name, data_entry=True, aria_describedby=f"{id}-message" + (f" {id}-hint" if hint else ""),
                  data_preset=presets.get(declared.name))
    if isinstance(declared, Choice):
        chosen = taken.value
        entry = el("select", *(el("option", words, value=key, selected=key == chosen) for key, words in declared.options.items()),
                   **common, data_metric=chosen, data_inch=chosen)
        keys = None
    else:
        metric, inch = (declared.form.bare(float(taken.value), s) for s in ("metric", "inch"))
        units = declared.form.metric.symbol, declared.form.inch.symbol
        entry = children(
            el("input", type="text", inputmode="decimal", enterkeyhint="done", spellcheck="false", value=metric, **common,
               data_metric=metric, data_inch=inch, data_unit_metric=units[0], data_unit_inch=units[1]),
            el("span", both(*units), class_="unit") if any(units) else None)
        keys = _keys(declared)
    return el("div", label, el("div", entry, class_="entry"), keys, el("p", id=f"{id}-message", class_="message", data_message_for=declared.name, hidden=True),
              el("p", hint, id=f"{id}-hint", class_="hint") if hint else None, class_="field", data_field=True)


def _hint(declared) -> str:
    """How to come by the number, in a sentence."""
    tool = f"Measure with {declared.tool}." if declared.measured else ""
    return " ".join(filter(None, (tool, declared.hint)))


def _keys(declared) -> Html:
    """Signs that a phone's number pad lacks."""
    low, _ = declared.hard_range
    signs = (["−"] if low < 0 else []) + ["/"] * (declared.form.kind.name == "length")
    units = list(dict.fromkeys([declared.form.metric.symbol, declared.form.inch.symbol, *(u.symbol for u in declared.form.kind.units)]))
    inserted = [(s, "/" if s == "/" else s) for s in signs] + [("space", " ")] * ("/" in signs) + [(u, f" {u}") for u in units if u][:5]
    return el("div", *(el("button", shown, type="button", tabindex="-1", data_key=text, aria_label="space" if text == " " else None) for shown, text in inserted),
              class_="keys", role="group", aria_label=f"Signs for {declared.label}")
