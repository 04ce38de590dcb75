"""The page of the size sheet: the sheet with its codes, below what prints and sends it."""

from calc.job import codes
from calc.page.html import Html, children, el
from calc.page.job.pieces import job_of
from calc.page.job.sharing import address, link, sending
from calc.page.job.sheet import css, sheet


def shown(asked: dict) -> dict:
    """The sheet carries codes where the handbook stands at an address that opens on other devices."""
    job, at = job_of(asked["job"]), address(asked)
    links, here = (codes.links(job, at), "") if codes.reachable(at) else (None, codes.here(at))
    view = children(
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
    return {"html": {"view": view}, "name": job["name"]}


def _ways(job: dict, asked: dict) -> Html:
    return el(
        "div",
        el(
            "div",
            el("button", "Print", type="button", data_job_do="print", class_="go"),
            *sending(job, asked),
            class_="job-buttons",
        ),
        link(job, address(asked)),
        class_="md-typeset job-ways",
    )
