"""The job that is worked on: how its sizes stand, where to go, what was read and done, and its own name and
parts."""

from calc.job.checking import sheet_of
from calc.job.verdicts import judge
from calc.page.html import Html, el
from calc.page.job.forms import QUIET, field, message, received_field
from calc.page.job.pieces import about_sheet, day, hour, tally
from calc.page.job.readings import readings
from calc.page.job.returned import offer
from calc.page.job.what_was_done import what_was_done
from calc.page.job.write_down import write_down


def current_job(held: dict, job: dict, others: list[tuple[dict, dict]], asked: dict) -> Html:
    """The job that is worked on; `others` are those among which a sheet of it may have come back."""
    now, rows = asked["now"], judge(job)
    return el(
        "section",
        el(
            "header",
            el("h2", job["name"], id="job-now", tabindex="-1"),
            el("p", summary(job, now), class_="job-facts"),
            class_="job-head",
        ),
        about_sheet(job),
        tally(rows),
        _ways(held, asked["root"]),
        *(
            offer(job, held["key"], other, its["key"], its["kept"], now, on_sheet=False)
            for its, other in others
        ),
        _reminder(held, asked),
        readings(job, rows, now) if job["readings"] else _NO_READING,
        _fold_to_write(job, asked.get("writing", {})) if sheet_of(job) else None,
        what_was_done(job, now),
        _change_form(job, held),
        class_="job-now",
        aria_labelledby="job-now",
    )


_NO_READING = el(
    "p",
    "No reading yet. Open the calculator for what is in your hand, type what you read, and keep"
    " it with one tap.",
    class_="job-note",
)


def _ways(held: dict, root: str) -> Html:
    return el(
        "div",
        el("a", "Size sheet", href=f"{root}job/sheet/", class_="go"),
        el("a", "Measure: check a number", href=f"{root}check-a-number/", class_="way"),
        el("button", "Export", type="button", data_job_do="export", data_key=held["key"]),
        class_="job-buttons",
    )


def _fold_to_write(job: dict, writing: dict) -> Html:
    return el(
        "details",
        el("summary", "Write down a size here"),
        write_down(job, writing, ("received", "finished")),
        data_keep="write",
        class_="job-fold",
    )


def _reminder(held: dict, asked: dict) -> Html | None:
    """Where the browser may clear what is kept here, and there is something to lose."""
    exported, changed = held["exported"], held["changed"]
    when = (
        f"Exported {hour(exported, asked['now'])}"
        + (", and changed since." if changed else "; nothing has changed since.")
        if exported
        else "Not exported yet."
    )
    risk = {
        "persistent": "The browser keeps this job until you remove it, but a lost device loses it too.",
        "may-be-cleared": (
            "The browser may clear this job when the handbook was not opened for a while (some after seven"
            " days) or when the device is short of room."
        ),
    }.get(asked["safety"], "The browser does not say how long it keeps this job.")
    return el(
        "p",
        risk,
        " ",
        (
            "A device is no backup: export the job when a day's work is done. "
            if changed or not exported
            else None
        ),
        when,
        class_="job-safety",
        data_urgent=asked["safety"] != "persistent" and (changed or not exported),
    )


def _change_form(job: dict, held: dict) -> Html:
    return el(
        "details",
        el("summary", "Name, parts, remove"),
        el(
            "form",
            el(
                "div",
                field("change", "What you call it", "name", value=job["name"], maxlength=120),
                received_field("change", list(filter(None, [sheet_of(job)])), job["engine"], job["received"]),
                field("change", "Shop, as it stands on the sheet", "shop", value=job["by"], maxlength=60),
                field("change", "Your initials", "initials", maxlength=12, data_job_initials=True),
                class_="fields",
            ),
            el("div", el("button", "Change", type="submit", class_="go"), class_="job-buttons"),
            message("change", ""),
            data_job_call="change",
            data_job_form="change",
            **QUIET,
            class_="job-form",
        ),
        remove(held),
        data_keep="change",
        class_="job-fold",
    )


def remove(held: dict) -> Html:
    """The way to remove a job or a sheet from the device, which says first what is lost with it."""
    what = "job" if held["kind"] == "job" else "sheet"
    safe = held["exported"] and not held["changed"]
    return el(
        "details",
        el("summary", f"Remove this {what} from the device"),
        el(
            "p",
            (
                "Its file was exported and holds everything."
                if safe
                else "It was not exported since it last changed: what is removed now is gone for good."
            ),
        ),
        el(
            "div",
            el("button", "Remove it", type="button", data_job_do="remove", data_key=held["key"]),
            class_="job-buttons",
        ),
        data_keep=f"remove {held['key']}",
        class_="job-correct",
    )


def summary(job: dict, now: str) -> str:
    """A job in one line: its engine, parts, the day that it was started, and the shop."""
    return ", ".join(
        filter(None, (job["engine"], job["received"], f"started {day(job['started'], now)}", job["by"]))
    )
