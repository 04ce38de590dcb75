"""What whoever bolts the engine together sees of a job: the parts, what comes next, the checks, the sizes."""

from collections.abc import Iterator
from contextlib import suppress

from calc.job import record
from calc.job.contents import JobError
from calc.job.ticks import ticks
from calc.job.verdicts import Row, judge
from calc.page.html import Html, children, el
from calc.page.job.checks import shown_check
from calc.page.job.forms import field
from calc.page.job.missing import by_name
from calc.page.job.pieces import about_sheet, chip, count, day, hour, job_of, tally
from calc.page.job.readings import readings
from calc.page.job.returned import offer
from calc.page.job.sharing import address, link, sending
from calc.stations import index as stations
from calc.stations.shared.checks import Check

MOST_ASKED = 12  # sizes to ask the shop about that are named one by one


def received(asked: dict) -> dict:
    """The page of a sheet that was received. One that this device does not keep has no `key`, and is shown
    all the same."""
    others = [(held, job_of(held["text"])) for held in asked["sheets"] if held["key"] != asked["key"]]
    if asked["job"] is None:
        return {"html": {"view": _others(others, asked)}}
    job, mine, now = job_of(asked["job"]), list(_readable(asked["mine"])), asked["now"]
    rows = judge(job)
    checks = stations.checks(job, rows)
    view = children(
        el(
            "section",
            el(
                "header",
                el("h2", job["name"], id="job-now", tabindex="-1"),
                el("p", _greeting(job, mine, asked), class_="job-facts"),
                class_="job-head",
            ),
            _not_checked(job, checks),
            _ask_the_shop(rows),
            about_sheet(job),
            tally(rows),
            class_="job-now",
            aria_labelledby="job-now",
        ),
        *(
            offer(its, held["key"], job, asked["key"], asked["kept"], now, on_sheet=True)
            for held, its in mine
        ),
        _what_comes_next(job, checks, asked),
        el("section", el("h2", "All sizes"), by_name(job), readings(job, rows, now, ("assembly",))),
        _send_back(job, asked),
        _others(others, asked),
    )
    return {"html": {"view": view}, "name": job["name"]}


def _ask_the_shop(rows: list[Row]) -> Html | None:
    wrong = [row for row in rows if row.state in ("fail", "unsure", "attention")]
    if not wrong:
        return None
    left = len(wrong) - MOST_ASKED
    return el(
        "div",
        el("p", el("strong", "Before you go on, ask the shop about:")),
        el(
            "ul",
            *(
                el("li", row.label, " ", row.place, ": ", chip(row.state), " ", row.words, ".")
                for row in wrong[:MOST_ASKED]
            ),
            el("li", f"and {left} more, below") if left > 0 else None,
        ),
        class_="job-ask",
    )


def _not_checked(job: dict, checks: list[Check]) -> Html:
    """The checks that nobody's reading answers and nobody has ticked off, by who can make them."""
    ticked = ticks(job)
    left = [check for check in checks if check.id not in ticked and (check.unread or not check.asks)]
    if not left:
        return el(
            "p", el("strong", f"All {len(checks)} checks are read or ticked off."), class_="job-all-checked"
        )
    by_whom = (
        ("The shop has the tools for these. Ask for the sizes:", [one for one in left if one.shop]),
        ("You can measure these at home:", [one for one in left if one.asks and not one.shop]),
        ("Do these, and tick them off:", [one for one in left if not one.asks and not one.shop]),
    )
    return el(
        "div",
        el("p", el("strong", f"Not checked yet: {len(left)} of {count(len(checks), 'check')}")),
        *(
            children(el("p", words), el("ul", *(el("li", _leads_to(check)) for check in theirs)))
            for words, theirs in by_whom
            if theirs
        ),
        class_="job-open",
    )


def _leads_to(check: Check) -> Html:
    some = check.places - len(check.unread)
    read = f" ({some} of {check.places} read)" if some else ""
    return el("button", f"{check.title}{read}", type="button", data_job_do="unfold", data_of=check.id)


def _what_comes_next(job: dict, checks: list[Check], asked: dict) -> Html:
    held, ticked, kept = record.current(job), ticks(job), asked["key"] is not None
    initials = field(
        "checks",
        "Your initials",
        "initials",
        hint="They stand beside all that you keep and tick off.",
        maxlength=12,
        data_job_initials=True,
    )
    return el(
        "section",
        el("h2", "What comes next"),
        el(
            "p",
            f"{count(len(checks), 'check')}, in the order in which the engine is closed. Unfold one,"
            " measure, and keep what you read; tick off what is done.",
        ),
        el("div", initials, class_="job-checks-by") if kept and not asked["by"] else None,
        el(
            "ol",
            *(shown_check(job, held, check, ticked.get(check.id), asked["now"], kept) for check in checks),
            class_="job-checks",
        ),
    )


def _send_back(job: dict, asked: dict) -> Html:
    sheet = f"{asked['root']}job/sheet/#{asked['key']}"
    return el(
        "section",
        el("h2", "Print it, or send it back"),
        el("p", "Sent back, the shop sees what you measured beside what it measured itself."),
        el(
            "div",
            el("a", "Print the size sheet", href=sheet, class_="go") if asked["key"] else None,
            *sending(job, asked),
            class_="job-buttons",
        ),
        link(job, address(asked)),
        class_="job-ways",
    )


def _readable(held: list[dict]) -> Iterator[tuple[dict, dict]]:
    """The jobs on the device, each with how it is held; what cannot be opened is told on the page of jobs."""
    for one in held:
        with suppress(JobError):
            yield one, job_of(one["text"])


def _greeting(job: dict, mine: list[tuple[dict, dict]], asked: dict) -> str:
    own = any(other["id"] == job["id"] for _, other in mine)
    said = (
        f"{job['engine']}: {job['received'] or 'parts as listed below'}.",
        _measured(job, asked["now"]),
        (
            "This sheet stands beside the job of the same name that you have here, and changes nothing in it"
            " by itself."
            if own
            else ""
        ),
    )
    return " ".join(filter(None, said))


def _measured(job: dict, now: str) -> str:
    """How many sizes the shop measured, by whose hands and when last, in the order in which they were read,
    whatever the clocks said."""
    counts = {id(one) for one in record.current(job).values()}
    read = [one for one in job["readings"] if one["stage"] != "assembly" and id(one) in counts]
    hands = " and ".join(list(dict.fromkeys(one["by"] for one in read if one["by"]))[:3])
    shop = (job["by"] or "the shop") + (f" ({hands})" if hands else "")
    when = f", the last on {day(read[-1]['at'], now)}" if read else ""
    return f"{count(len(read), 'size')} measured by {shop}{when}."


def _others(others: list[tuple[dict, dict]], asked: dict) -> Html | None:
    if not others:
        return None
    return el(
        "section",
        el("h2", "Other sheets here"),
        el("ul", *(_other(held, job, asked["now"]) for held, job in others), class_="job-list"),
    )


def _other(held: dict, job: dict, now: str) -> Html:
    facts = f"{job['engine']}, {job['received']}; came here {hour(held['kept'], now)}"
    return el(
        "li",
        el("p", el("strong", job["name"]), el("span", facts, class_="job-facts")),
        el("div", el("a", "Open", href=f"#{held['key']}", class_="way"), class_="job-buttons"),
    )
