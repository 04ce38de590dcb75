"""The checks before an engine is closed: one line for each, and the calculator of one of them, filled in."""

import json

from calc.declare.standing import Standing
from calc.job.checking import feature_of, sheet_of
from calc.job.contents import JobError
from calc.job.ticks import line_of
from calc.page import calculator_html
from calc.page.html import Html, children, el
from calc.page.job.pieces import chip, job_of, reading, when_read, who
from calc.page.job.spots import measured
from calc.page.job.write_down import write_down
from calc.stations import index as stations
from calc.stations.shared.checks import Check

ANCHOR = "check"  # of the calculators on the page of checks


GENERAL = "reading-verdict"  # the calculator for a size of any kind


MOST_HELD = 40  # sizes that are shown with a check


def shown_check(
    job: dict, held: dict[tuple[str, str, str], dict], check: Check, ticked: dict | None, now: str, kept: bool
) -> Html:
    """A check in one line; unfolded, what to do and why, with what, and what of it was read already. `held`
    is what counts of the job (record.current), `ticked` the entry that ticks the check off; only what is kept
    on this device can be."""
    read = {
        where: one for where, one in held.items() if where[0] in check.features and where[2] != "received"
    }
    own = any(stage == "assembly" for _, _, stage in read)
    return el(
        "li",
        _tick(check, ticked) if kept else None,
        el(
            "details",
            el(
                "summary",
                el("span", check.title, class_="job-label"),
                el("span", _how_it_stands(check, ticked, own, now), class_="job-stage"),
                el("span", chip(check.state), class_="job-check-state") if check.state else None,
            ),
            el("p", check.do, class_="job-do"),
            el("p", check.why, class_="job-why"),
            el("p", el("b", "At home: "), check.home, class_="job-way") if check.home else None,
            el("p", el("b", "Only the shop can: "), check.shop, class_="job-way") if check.shop else None,
            el("p", "The shop's tool: ", check.tool, ".", class_="job-tool") if check.tool else None,
            _read_already(job, read, now),
            el("div", data_job_calculator=True) if check.calculator or check.features else None,
            data_keep=f"check-{check.id}",
            data_job_check=check.id,
        ),
        class_=f"job-check job-is-{check.state or 'none'}",
    )


def _tick(check: Check, ticked: dict | None) -> Html:
    return el(
        "button",
        type="button",
        id=f"tick-{check.id}",
        role="checkbox",
        aria_checked="true" if ticked else "false",
        aria_label=f"Checked: {check.title}",
        data_job_call="strike" if ticked else "tick",
        data_line=line_of(check.id) if ticked else None,
        data_check=None if ticked else check.id,
        class_="job-tick",
    )


def _how_it_stands(check: Check, ticked: dict | None, own: bool, now: str) -> str:
    """Ticked off by whom, read by whom, or what is missing."""
    read = check.places - len(check.unread)
    sizes = (
        ""
        if not check.asks
        else "not measured"
        if not read
        else f"{read} of {check.places} measured"
        if check.unread
        else "measured by you"
        if own
        else "measured by the shop"
    )
    tick = f"ticked off {who(ticked['at'], ticked['by'], now)}" if ticked else ""
    return "; ".join(filter(None, (tick, sizes)))


def _read_already(job: dict, read: dict[tuple[str, str, str], dict], now: str) -> Html | None:
    lines = []
    for (id, place, _), one in list(read.items())[:MOST_HELD]:
        feature = feature_of(job, id)
        by = el("span", when_read(one, now), class_="job-who")
        lines.append(el("li", feature.label if feature else id, " ", place, ": ", reading(job, one), " ", by))
    left = len(read) - MOST_HELD
    more = el("li", f"and {left} more, below") if left > 0 else None
    return el("ul", *lines, more, class_="job-held") if lines else None


def check(asked: dict) -> dict:
    """The calculator of one check, filled in, and a form for those of its sizes that the calculator does not
    ask for."""
    job, id = job_of(asked["job"]), asked["check"]
    one = next((one for one in stations.checks(job) if one.id == id), None)
    if one is None:
        raise JobError("This check is no longer asked for with what has been read since.")
    features = {"reading": one.features[0]} if one.calculator == GENERAL else {}
    asked_for = measured(stations.find(one.calculator), sheet_of(job), features) if one.calculator else set()
    rest = tuple(id for id in one.features if id not in asked_for and feature_of(job, id))
    return {
        "html": {
            "check": children(
                _calculator(job, one, one.calculator, features) if one.calculator else None,
                _own(job, one, asked.get("writing", {}), rest) if rest else None,
            )
        }
    }


def _calculator(job: dict, check: Check, calculator: str, features: dict[str, str]) -> Html:
    filled = Standing(sheet_of(job), check.place)
    return el(
        "div",
        calculator_html(calculator, check.entries, f"{ANCHOR}-{check.id}", filled=filled),
        data_job_features=json.dumps(features),
        data_entries_key=f"{check.id} {calculator}",
    )


def _own(job: dict, check: Check, writing: dict, features: tuple[str, ...]) -> Html:
    key = f"own-{check.id}"
    return el(
        "details",
        el("summary", "Write down another size" if check.calculator else "Write down what you read"),
        write_down(job, writing, ("assembly",), features, key),
        data_keep=key,
        class_="job-correct",
    )
