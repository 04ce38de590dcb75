"""The page of jobs: the one that is worked on, all others of the device, and how to start one."""

from datetime import datetime

from calc.job import record
from calc.job.contents import JobError
from calc.page.html import Html, children, el
from calc.page.job.current import current_job, remove, summary
from calc.page.job.forms import start_form
from calc.page.job.pieces import count, hour, job_of


def view(asked: dict) -> dict:
    """Everything on the page of jobs: `jobs` are {key, kind, text, kept, exported, changed} of the device,
    `key` the current one."""
    read: list[tuple[dict, dict]] = []
    unread: list[tuple[dict, str]] = []
    for held in asked["jobs"]:
        try:
            read.append((held, job_of(held["text"])))
        except JobError as error:
            unread.append((held, str(error)))
    now = next((pair for pair in read if pair[0]["key"] == asked["key"]), None)
    own = [pair for pair in read if pair[0]["kind"] == "job" and pair != now]
    sheets = [pair for pair in read if pair[0]["kind"] == "sheet" and pair != now]
    newest = max(read, key=_when)[1] if read else {"engine": "", "by": ""}
    start = start_form(asked["engines"], asked["by"], newest["engine"], newest["by"])
    back = [(held, job) for held, job in read if now and held is not now[0]]
    parts = [
        current_job(*now, back, asked) if now else None,
        _listed("Other jobs" if now else "Jobs on this device", own, asked),
        _listed("Sheets received", sheets, asked),
        _unread(unread),
        (
            el("details", el("summary", "Start another job"), start, data_keep="start", class_="job-fold")
            if read or unread
            else start
        ),
    ]
    return {"html": {"view": children(*parts)}, "name": now[1]["name"] if now else ""}


def _listed(title: str, pairs: list[tuple[dict, dict]], asked: dict) -> Html | None:
    if not pairs:
        return None
    return el(
        "section",
        el("h2", title),
        el(
            "ul",
            *(_line(held, job, asked) for held, job in sorted(pairs, key=_when, reverse=True)),
            class_="job-list",
        ),
    )


def _when(pair: tuple[dict, dict]) -> datetime:
    """When it came to this device: the moment, not what the clock showed, which goes back an hour in
    autumn."""
    return datetime.fromisoformat(pair[0]["kept"])


def _line(held: dict, job: dict, asked: dict) -> Html:
    n = len(record.current(job))
    twins = [h for h in asked["jobs"] if h["key"] != held["key"] and f'"{job["id"]}"' in h["text"]]
    facts = f"{summary(job, asked['now'])}; {count(n, 'size')}" + (
        f"; came here {hour(held['kept'], asked['now'])}" if twins or held["kind"] == "sheet" else ""
    )
    open_it = (
        el("button", "Work on this", type="button", data_job_do="current", data_key=held["key"])
        if held["kind"] == "job"
        else el("a", "Open", href=f"{asked['root']}job/received/#{held['key']}", class_="way")
    )
    return el(
        "li",
        el("p", el("strong", job["name"]), el("span", facts, class_="job-facts")),
        el(
            "div",
            open_it,
            el("button", "Export", type="button", data_job_do="export", data_key=held["key"]),
            class_="job-buttons",
        ),
        remove(held),
    )


def _unread(pairs: list[tuple[dict, str]]) -> Html | None:
    """What cannot be opened, each with the reason."""
    if not pairs:
        return None
    return el(
        "section",
        el("h2", "Cannot be opened"),
        el("ul", *(_left_as_it_is(held, reason) for held, reason in pairs), class_="job-list"),
    )


def _left_as_it_is(held: dict, reason: str) -> Html:
    export = el("button", "Export as it is", type="button", data_job_do="export", data_key=held["key"])
    return el(
        "li", el("p", reason, " It is left as it is."), el("div", export, class_="job-buttons"), remove(held)
    )
