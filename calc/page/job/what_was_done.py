"""The lines of what was done, each with the way to strike it and to put it back."""

from calc.job.record import Line, done
from calc.page.html import Html, el
from calc.page.job.forms import QUIET, field, message
from calc.page.job.pieces import who


def what_was_done(job: dict, now: str) -> Html:
    """Each line bears its own name, so that no tap strikes another one."""
    found = done(job)
    standing = sum(not line.struck for line in found)
    return el(
        "details",
        el("summary", "What was done", f" ({standing})" if standing else None),
        el("ul", *(_line(line, now) for line in found), class_="job-done") if found else None,
        _form(),
        data_keep="done",
        class_="job-fold",
    )


def _line(line: Line, now: str) -> Html:
    return el(
        "li",
        el("s", line.text) if line.struck else line.text,
        " ",
        el("span", who(line.at, line.by, now), class_="job-who"),
        " ",
        _put_back(line, line.struck, now) if line.struck else _strike(line),
        class_="job-line",
        data_line=line.line,
    )


def _strike(line: Line) -> Html:
    return el(
        "button",
        "Strike",
        type="button",
        data_job_call="strike",
        data_line=line.line,
        aria_label=f"Strike: {line.text}",
    )


def _put_back(line: Line, struck: dict, now: str) -> Html:
    """A struck line keeps its place, and the way back lies in a fold: a second tap on the same spot takes
    nothing more."""
    return el(
        "details",
        el("summary", "Struck ", who(struck["at"], struck["by"], now)),
        el(
            "button",
            "Put it back",
            type="button",
            data_job_call="unstrike",
            data_line=line.line,
            aria_label=f"Put back: {line.text}",
        ),
        data_keep=f"line {line.line}",
        class_="job-correct",
    )


def _form() -> Html:
    hint = "Such as: mains ground to the first undersize."
    return el(
        "form",
        field("done", "One line", "text", hint=hint, maxlength=400),
        el("div", el("button", "Add", type="submit", class_="go"), class_="job-buttons"),
        message("done", ""),
        data_job_call="done",
        data_job_form="done",
        **QUIET,
        class_="job-form",
    )
