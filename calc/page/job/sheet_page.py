"""The pages on which a job leaves the shop: its size sheet, and what it is to the one who bolts the engine together."""

import json
import re

from calc.declare.standing import Standing
from calc.job import codes, contents, record, share
from calc.job.checking import feature_of, sheet_of
from calc.job.verdicts import judge
from calc.page import calculator_html
from calc.page.html import Html, children, el
from calc.page.job import fields as job_fields
from calc.page.job import returned as job_returned
from calc.page.job.pieces import SHORT, about_sheet, chip, count, day, hour, job_of, made, reading, tally
from calc.page.job.sheet import css, sheet
from calc.stations import index as stations

ANCHOR = "check"  # of the calculators on the page of checks
GENERAL = "reading-verdict"  # the calculator for a size of any kind
MOST_HELD = 40  # sizes that are shown with a check


def shown(asked: dict) -> dict:
    """The size sheet with its codes, below what prints and sends it."""
    job = job_of(asked["job"])
    links, here = (
        (codes.links(job, address), "")
        if codes.reachable(address := _address(asked))
        else (None, codes.here(address))
    )
    return {
        "html": {
            "view": children(
                el("style", Html(css())),
                _ways(job, asked),
                el(
                    "div",
                    sheet(job, links, codes.draw, here),
                    class_="sheet-place",
                    tabindex="0",
                    role="group",
                    aria_label="Size sheet",
                ),
            )
        },
        "name": job["name"],
    }


def _address(asked: dict) -> str:
    """Where others open the handbook: the shop's own address where one is set (`site_url` in mkdocs.yml), else the one that it was opened at."""
    return asked.get("address") or asked["root"]


def _ways(job: dict, asked: dict) -> Html:
    return el(
        "div",
        el(
            "div",
            el("button", "Print", type="button", data_job_do="print", class_="go"),
            *_sending(job, asked),
            class_="job-buttons",
        ),
        _link(job, _address(asked)),
        class_="md-typeset job-ways",
    )


def _sending(job: dict, asked: dict):
    return (
        el(
            "button",
            "Send the link",
            type="button",
            data_job_do="send",
            data_of="job-link",
            data_title=f"Size sheet: {job['name']}",
            hidden=True,
        ),
        el("button", "Copy the link", type="button", data_job_do="copy", data_of="job-link"),
        el("button", "Export as a file", type="button", data_job_do="export", data_key=asked["key"] or None),
    )


def _link(job: dict, root: str) -> Html:
    """The link with the whole job in it, however long: a message carries more than a code does."""
    try:
        link = f"{root.rstrip('/')}/{codes.PAGE}#{codes.FORM}{share.encode(job)}"
    except contents.JobError as error:
        return el("p", str(error), class_="job-note")
    only_here = (
        None
        if codes.reachable(root)
        else el(
            "p",
            f"{codes.here(root)} opens on no other device, so the sheet carries no code, and this link serves"
            " here only. Send the file; or open the handbook at the shop's own address.",
            class_="job-note",
        )
    )
    return el(
        "div",
        el("label", "The link: it holds the sizes themselves, and no server sees them", for_="job-link"),
        el("div", el("input", type="text", id="job-link", value=link, readonly=True), class_="entry"),
        only_here,
        class_="field job-link",
    )


def opened(asked: dict) -> dict:
    """The job of a link's code; where the sheet has several codes, that of this one with those that were read before (`others`).
    `code` in the reply carries the whole of it, for the address."""
    if not asked["code"].startswith(codes.FORM):
        raise contents.JobError(
            "This link was made by a newer edition of this handbook. Reload this page to get that edition; if"
            " it still does not open, ask the shop for the sheet's file."
        )
    code = asked["code"].removeprefix(codes.FORM)
    part = share.part(code)
    if part is None:
        return made(share.decode(code)) | {"used": [], "code": asked["code"]}
    mates = {
        other: its
        for other in asked["others"]
        if (its := share.part(other.removeprefix(codes.FORM)))
        and its.whole == part.whole
        and other != asked["code"]
    }
    found = {part.number, *(its.number for its in mates.values())}
    if missing := [str(n) for n in range(1, part.count + 1) if n not in found]:
        return {
            "html": {
                "view": children(
                    el("h2", f"{len(found)} of {part.count} codes read"),
                    el(
                        "p",
                        "This sheet is too large for one code. Scan ",
                        el("strong", "code ", " and ".join(missing)),
                        " as well, in any order: what was read is kept until all are there.",
                        class_="job-note",
                    ),
                )
            }
        }
    whole = share.join([code, *(mate.removeprefix(codes.FORM) for mate in mates)])
    return made(share.decode(whole)) | {"used": [asked["code"], *mates], "code": codes.FORM + whole}


def received(asked: dict) -> dict:
    """What whoever bolts the engine together sees: the parts, what comes next, the checks, the sizes. A sheet that this device
    does not keep has no `key`, and is shown all the same."""
    others = [(held, job_of(held["text"])) for held in asked["sheets"] if held["key"] != asked["key"]]
    if asked["job"] is None:
        return {"html": {"view": _others(others, asked)}}
    job, mine = job_of(asked["job"]), list(_readable(asked["mine"]))
    rows = judge(job)
    checks, held = stations.checks(job, rows), record.current(job)
    wrong = [row for row in rows if row.state in ("fail", "unsure", "attention")]
    view = children(
        el(
            "section",
            el(
                "header",
                el("h2", job["name"], id="job-now", tabindex="-1"),
                el("p", _greeting(job, mine, asked), class_="job-facts"),
                class_="job-head",
            ),
            about_sheet(job),
            tally(rows),
            (
                el(
                    "div",
                    el("p", el("strong", "Before you go on, ask the shop about:")),
                    el(
                        "ul",
                        *(
                            el("li", row.label, " ", row.place, ": ", chip(row.state), " ", row.words, ".")
                            for row in wrong[:12]
                        ),
                        el("li", f"and {len(wrong) - 12} more, below") if len(wrong) > 12 else None,
                    ),
                    class_="job-ask",
                )
                if wrong
                else None
            ),
            class_="job-now",
            aria_labelledby="job-now",
        ),
        *(
            job_returned.offer(
                its_job, own["key"], job, asked["key"], asked["kept"], asked["now"], on_sheet=True
            )
            for own, its_job in mine
        ),
        el(
            "section",
            el("h2", "What comes next"),
            el(
                "p",
                f"{count(len(checks), 'check')}, in the order in which the engine is closed. Unfold one,"
                " measure, and keep what you read.",
            ),
            el("ol", *(_check(job, held, check, asked["now"]) for check in checks), class_="job-checks"),
        ),
        el("section", el("h2", "All sizes"), asked["readings"](job, rows, asked["now"], ("assembly",))),
        el(
            "section",
            el("h2", "Print it, or send it back"),
            el("p", "Sent back, the shop sees what you measured beside what it measured itself."),
            el(
                "div",
                (
                    el(
                        "a",
                        "Print the size sheet",
                        href=f"{asked['root']}job/sheet/#{asked['key']}",
                        class_="go",
                    )
                    if asked["key"]
                    else None
                ),
                *_sending(job, asked),
                class_="job-buttons",
            ),
            _link(job, _address(asked)),
            class_="job-ways",
        ),
        _others(others, asked),
    )
    return {"html": {"view": view}, "name": job["name"]}


def _readable(held: list):
    """The jobs on the device, each with how it is held; what cannot be opened is told on the page of jobs."""
    for one in held:
        try:
            yield one, job_of(one["text"])
        except contents.JobError:
            pass


def _greeting(job: dict, mine: list, asked: dict) -> str:
    counts = {id(one) for one in record.current(job).values()}
    read = [
        one for one in job["readings"] if one["stage"] != "assembly" and id(one) in counts
    ]  # in the order in which they were read, whatever the clocks said
    hands = " and ".join(list(dict.fromkeys(one["by"] for one in read if one["by"]))[:3])
    when = f", the last on {day(read[-1]['at'], asked['now'])}" if read else ""
    own = any(other["id"] == job["id"] for _, other in mine)
    return " ".join(
        filter(
            None,
            (
                f"{job['engine']}: {job['received'] or 'parts as listed below'}.",
                (
                    f"{count(len(read), 'size')} measured by"
                    f" {job['by'] or 'the shop'}{f' ({hands})' if hands else ''}{when}."
                ),
                (
                    "This sheet stands beside the job of the same name that you have here, and changes"
                    " nothing in it by itself."
                    if own
                    else ""
                ),
            ),
        )
    )


def _known_by(check) -> str:
    """By what a check is known again while others come and go: its place in the list changes with what was read."""
    return re.sub("[^a-z0-9]+", "-", check.title.lower()).strip("-")


def _check(job: dict, held: dict, check, now: str) -> Html:
    """`held` is what counts of the job (record.current)."""
    read = [
        (f, place, stage, one)
        for (f, place, stage), one in held.items()
        if f in check.features and stage != "received"
    ]
    own = any(stage == "assembly" for _, _, stage, _ in read)
    state = check.state and el("span", chip(check.state), class_="job-check-state")
    body = [
        el("p", check.do, class_="job-do"),
        el("p", check.why, class_="job-why"),
        el("p", "Tool: ", check.tool, ".", class_="job-tool") if check.tool else None,
        (
            el(
                "ul",
                *(
                    el(
                        "li",
                        feature_of(job, f).label if feature_of(job, f) else f,
                        " ",
                        place,
                        ": ",
                        reading(job, one),
                        " ",
                        el(
                            "span",
                            ", ".join(filter(None, (SHORT[stage], day(one["at"], now), one["by"]))),
                            class_="job-who",
                        ),
                    )
                    for f, place, stage, one in read[:MOST_HELD]
                ),
                el("li", f"and {len(read) - MOST_HELD} more, below") if len(read) > MOST_HELD else None,
                class_="job-held",
            )
            if read
            else None
        ),
        el("div", data_job_calculator=True) if check.calculator or check.features else None,
    ]
    return el(
        "li",
        el(
            "details",
            el(
                "summary",
                el("span", check.title, class_="job-label"),
                el("span", "read by you" if own else "", class_="job-stage"),
                state or None,
            ),
            *body,
            data_keep=f"check-{_known_by(check)}",
            data_job_check=_known_by(check),
        ),
        class_=f"job-check job-is-{check.state or 'none'}",
    )


def check(asked: dict) -> dict:
    """The calculator of one check, filled in, and a form for those of its sizes that the calculator does not ask for."""
    job, id = job_of(asked["job"]), asked["check"]
    one = next((one for one in stations.checks(job) if _known_by(one) == id), None)
    if one is None:
        raise contents.JobError("This check is no longer asked for with what has been read since.")
    features = {"reading": one.features[0]} if one.calculator == GENERAL else {}
    asked_for = (
        job_fields.measured(stations.find(one.calculator), sheet_of(job), features)
        if one.calculator
        else set()
    )
    rest = tuple(id for id in one.features if id not in asked_for and feature_of(job, id))
    form = (
        asked["write_down"](job, asked.get("writing", {}), ("assembly",), rest, f"own-{id}") if rest else None
    )
    return {
        "html": {
            "check": children(
                (
                    el(
                        "div",
                        calculator_html(
                            one.calculator,
                            one.entries,
                            f"{ANCHOR}-{id}",
                            filled=Standing(sheet_of(job), one.place),
                        ),
                        data_job_features=json.dumps(features),
                        data_entries_key=f"{id} {one.calculator}",
                    )
                    if one.calculator
                    else None
                ),
                (
                    el(
                        "details",
                        el(
                            "summary",
                            "Write down another size" if one.calculator else "Write down what you read",
                        ),
                        form,
                        data_keep=f"own-{id}",
                        class_="job-correct",
                    )
                    if form
                    else None
                ),
            )
        }
    }


def _others(others: list, asked: dict) -> Html | None:
    if not others:
        return None
    return el(
        "section",
        el("h2", "Other sheets here"),
        el(
            "ul",
            *(
                el(
                    "li",
                    el(
                        "p",
                        el("strong", job["name"]),
                        el(
                            "span",
                            f"{job['engine']}, {job['received']}; came here"
                            f" {hour(held['kept'], asked['now'])}",
                            class_="job-facts",
                        ),
                    ),
                    el("div", el("a", "Open", href=f"#{held['key']}", class_="way"), class_="job-buttons"),
                )
                for held, job in others
            ),
            class_="job-list",
        ),
    )
