"""What the forms of a job are put together from: fields, the places for what speaks against an entry, choices
to tick."""

from collections.abc import Sequence

from calc.job.parts import PARTS, parts_of
from calc.page.html import Html, el
from calc.reference.engine import Engine
from calc.reference.engine import engine as engine_named

QUIET = {"novalidate": True, "autocomplete": "off"}  # of a form: the browser neither checks nor fills it in
REASONS = ("Measured again", "Misread before", "Machined since", "Another part")


def message(form: str, name: str) -> Html:
    """The place of one sentence below a field; that of the form itself has no name."""
    return el(
        "p",
        id=f"{form}-{name or 'all'}-message",
        class_="message",
        data_message_for=name,
        role=None if name else "alert",
        hidden=True,
    )


def field(form: str, words: str, name: str, *, hint: str = "", label: str = "", **attributes: object) -> Html:
    id = f"{form}-{name}"
    entry = el(
        "input",
        type="text",
        id=id,
        name=name,
        autocomplete="off",
        aria_label=label or None,
        aria_describedby=f"{id}-message" + (f" {id}-hint" if hint else ""),
        **attributes,
    )
    return el(
        "div",
        el("label", words, for_=id),
        el("div", entry, class_="entry"),
        message(form, name),
        el("p", hint, id=f"{id}-hint", class_="hint") if hint else None,
        class_="field",
    )


def reasons(key: str) -> tuple:
    """Why a reading replaces another one."""
    return (
        el(
            "div",
            el("span", "Why?", class_="job-which-words"),
            *(
                el("label", el("input", type="radio", name="why", value=reason), reason, class_="job-pick")
                for reason in REASONS
            ),
            message(key, "why"),
            class_="job-which",
            role="group",
            aria_label="Why is it another size now",
            aria_describedby=f"{key}-why-message",
        ),
        field(key, "Or in your own words", "reason", maxlength=200),
    )


def picks(key: str, name: str, words: str, options: list[tuple[str, str]], chosen: str) -> Html:
    return el(
        "fieldset",
        el("legend", words),
        *(
            el(
                "label",
                el(
                    "input",
                    type="radio",
                    id=f"{key}-{name}-{n}",
                    name=name,
                    value=value,
                    checked=value == chosen,
                ),
                said,
                class_="job-pick",
            )
            for n, (value, said) in enumerate(options)
        ),
        message(key, name),
        class_="job-which",
    )


def received_field(form: str, sheets: list[Engine], engine: str, value: str = "") -> Html:
    """The parts received: words, and the parts of the engines' data sheets to tick, which write theirs into
    those words (job.mjs).

    `engine` is the one that is chosen. A part that not every one of the sheets has names those that have it.
    """
    ticks = []
    for part in PARTS:
        having = [sheet.name for sheet in sheets if part in parts_of(sheet)]
        if having:
            ticks.append(
                el(
                    "label",
                    el(
                        "input",
                        type="checkbox",
                        data_job_part=part.word,
                        data_called=part.called,
                        data_engines=" ".join(having) if len(having) < len(sheets) else None,
                        checked=part.named_in(value),
                    ),
                    part.word,
                    class_="job-pick",
                    hidden=engine not in having,
                )
            )
    return el(
        "div",
        field(
            form,
            "Parts received",
            "received",
            hint="Such as: two heads, crank, four rods.",
            maxlength=600,
            value=value or None,
        ),
        (
            el(
                "fieldset",
                el("legend", "Tick what came, or write it above"),
                *ticks,
                class_="job-which job-parts",
            )
            if ticks
            else None
        ),
        class_="job-received",
    )


def start_form(
    names: Sequence[str], by: str = "", engine: str = "", shop: str = "", asleep: bool = False
) -> Html:
    """Two taps from nothing to a job: its name, and Start. Engine and shop are those of the job before;
    `asleep` until a script wakes it."""
    return el(
        "form",
        el("input", type="hidden", name="shop", value=shop),
        el(
            "div",
            field(
                "start",
                "What you call it",
                "name",
                hint="The customer or the machine, such as: orchard frost fan.",
                maxlength=120,
            ),
            _choose_engine(names, engine),
            received_field(
                "start",
                [engine_named(name) for name in names],
                engine if engine in names else next(iter(names), ""),
            ),
            field(
                "start",
                "Your initials",
                "initials",
                hint="They stand beside every reading that you keep.",
                maxlength=12,
                value=by or None,
            ),
            class_="fields",
        ),
        el(
            "div",
            el("button", "Start this job", type="submit", disabled=asleep, class_="go"),
            class_="job-buttons",
        ),
        message("start", ""),
        data_job_call="new",
        data_job_form="start",
        **QUIET,
        class_="job-form",
    )


def _choose_engine(names: Sequence[str], chosen: str) -> Html:
    entry = el(
        "select",
        *(el("option", name, value=name, selected=name == chosen) for name in names),
        id="start-engine",
        name="engine",
        aria_describedby="start-engine-message",
    )
    return el(
        "div",
        el("label", "Engine", for_="start-engine"),
        el("div", entry, class_="entry"),
        message("start", "engine"),
        class_="field",
    )
