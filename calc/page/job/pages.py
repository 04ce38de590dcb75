"""The pages of jobs as they are built: what they show while a device holds nothing, and the places that it
fills."""

import os

from calc.page.html import Html, children, el
from calc.page.job.forms import message, start_form
from calc.reference import engine


def page(view: str) -> Html:
    root = "../" if view == "jobs" else "../../"
    scripts = [
        el("link", rel="modulepreload", href=f"{root}assets/js/{name}.mjs") for name in ("job", "jobs", "idb")
    ]
    return el(
        "job-view",
        el("link", rel="stylesheet", href=f"{root}assets/css/job.css"),
        *scripts,
        el(
            "div",
            el("p", data_job_message=True, class_="message", role="alert", hidden=True),
            el("p", data_job_status=True, class_="status", role="status"),
            class_="md-typeset",
        ),
        el("div", PAGES[view](), data_job_view=True),
        _file("job" if view == "jobs" else "sheet") if view != "sheet" else None,
        data_view=view,
        class_="job",
        data_search_exclude=True,
    )


def _engines() -> list[str]:
    """The names of all data sheets, the demo engine's first."""
    folder = os.path.join(os.path.dirname(engine.__file__), "engines")
    names = [
        engine.engine(name.removesuffix(".toml")).name
        for name in sorted(os.listdir(folder))
        if name.endswith(".toml")
    ]
    return sorted(names, key=lambda name: name != engine.DEMO)


def _jobs() -> Html:
    return children(el("h2", "Start a job"), start_form(_engines(), asleep=True))


def _sheet() -> Html:
    return el(
        "div",
        el("p", "No job is worked on here, so there is no size sheet to show.", class_="job-note"),
        el("div", el("a", "Start a job, or choose one", href="../", class_="go"), class_="job-buttons"),
        class_="md-typeset",
    )


def _received() -> Html:
    return el(
        "p",
        "Scan the code on your size sheet with the phone's camera, or tap the link that the shop sent you:"
        " this page opens with your parts. Or open the file here.",
        class_="job-note",
    )


def _file(what: str) -> Html:
    words, hint = {
        "job": (
            "Bring in a job from its file",
            "It is set beside the jobs that are here; none of them is changed.",
        ),
        "sheet": ("Open a sheet from its file", "It is set beside what is here; nothing is changed by it."),
    }[what]
    return el(
        "form",
        el(
            "div",
            el("label", words, for_="job-file"),
            el(
                "input",
                type="file",
                id="job-file",
                name="file",
                accept=".json,application/json",
                aria_describedby="job-file-all-message job-file-hint",
            ),
            message("job-file", ""),
            el("p", hint, id="job-file-hint", class_="hint"),
            class_="field",
        ),
        class_="job-form job-file",
        novalidate=True,
    )


PAGES = {"jobs": _jobs, "sheet": _sheet, "received": _received}
