"""The panel of one size: its limits, which one it is, as what it counts, and a field for the reading. It is
a template, filled in on the page (docs/assets/js/bench.mjs), so that the field is there before Python is."""

from calc.page.html import Html, el

PICKS = {"": "Either", "received": "Used", "finished": "New"}
KEYS = {"−": "−", "/": "/", "±": " ± "}  # what a phone's number pad lacks


def panel_html() -> Html:
    """The template; what it has to say of a size comes from that size's row (calc.page.bench), verdict and
    job from the calls "size" and "job-size"."""
    head = el(
        "header",
        el("h3", id="size-title", tabindex="-1", data_label=True),
        el("a", "Close", data_close=True),
        class_="size-head",
    )
    asked = el(
        "form",
        el("div", _which(), _stage(), class_="size-which"),
        _reading(),
        data_form=True,
        novalidate=True,
    )
    panel = el(
        "section",
        head,
        el("p", class_="size-limits", data_limits=True),
        asked,
        el("div", data_part="verdict"),
        el("p", data_part="status", class_="status", role="status"),
        el("p", data_part="announce", class_="visually-hidden", aria_live="polite"),
        el("div", data_part="job", class_="job-field"),
        el("div", el("h4", "Where this size is used"), el("ul", data_uses=True), data_used=True, hidden=True),
        class_="size-panel",
        aria_labelledby="size-title",
    )
    return el("template", panel, data_panel=True)


def _which() -> Html:
    return el(
        "div",
        el("label", "Which", for_="size-place"),
        el("div", el("select", id="size-place", data_place=True), class_="entry"),
        class_="field",
        data_which_one=True,
    )


def _stage() -> Html:
    """Until it is said what the part is, it is judged as either."""
    return el(
        "fieldset",
        el("legend", "The part is"),
        *(
            el("label", el("input", type="radio", name="stage", value=stage, checked=not stage), words)
            for stage, words in PICKS.items()
        ),
        class_="size-stages",
        data_stages=True,
    )


def _reading() -> Html:
    keys = (el("button", sign, type="button", tabindex="-1", data_key=text) for sign, text in KEYS.items())
    entry = el(
        "input",
        type="text",
        inputmode="decimal",
        id="size-text",
        name="text",
        placeholder=" ",
        autocomplete="off",
        maxlength=100,
        data_entry=True,
        aria_describedby="size-message",
    )
    return el(
        "div",
        el("label", "What you read", el("span", data_tool=True), for_="size-text"),
        el("div", entry, el("span", class_="unit", data_unit=True), class_="entry"),
        el("div", *keys, class_="keys", role="group", aria_label="Signs for the reading"),
        el("p", id="size-message", class_="message", data_message_for="text", hidden=True),
        class_="field",
        data_field=True,
    )
