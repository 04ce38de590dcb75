"""The size sheet: a job on paper, one page that goes into the box with the parts.

`sheet` gives its body, the same in a terminal and in the browser; `page` a whole file that needs nothing
else. What draws the codes is passed in, so that this imports no library. Every size stands in both unit
systems, of which CSS shows one.
"""

import os
from collections.abc import Callable, Sequence
from functools import cache
from typing import Any

from calc.job.checking import sheet_of
from calc.job.record import current
from calc.job.verdicts import judge
from calc.page.html import Html, el
from calc.page.job.missing import by_count
from calc.page.job.sheet_foot import foot
from calc.page.job.sheet_head import head
from calc.page.job.sheet_marks import STAGES, SYSTEMS
from calc.page.job.sheet_notes import checks, how_to, notes, order, what_was_done
from calc.page.job.sheet_picture import pictures
from calc.page.job.sheet_sizes import sizes
from calc.stations import index as stations

PAPERS = ("A4", "Letter")
_LOADER: Any = __spec__.loader  # reads from a folder and from a zip alike


@cache
def css() -> str:
    """The sheet's style, the same for one that stands alone and one on a page of the site, which puts it in
    beside the sheet."""
    return _LOADER.get_data(os.path.join(os.path.dirname(__file__), "sheet.css")).decode()


def sheet(
    job: dict,
    codes: Sequence[str] | None = None,
    draw_code: Callable[[str], str | None] | None = None,
    here: str = "",
) -> Html:
    """The sheet's body. `codes` are the links that carry the job (calc.job.codes.links): None where there is
    no address to open, empty where the job is too large for them; `here` is an address that opens on no other
    device, where that is why there are none. `draw_code(link)` gives one as SVG, or None where it cannot."""
    rows, engine = judge(job), sheet_of(job)
    found = stations.checks(job, rows)
    read = {stage for _, _, stage in current(job)}
    stages = [stage for stage in STAGES if stage in read] or ["received", "finished"]
    return el(
        "article",
        head(job, engine),
        sizes(job, rows, engine, stages),
        notes(job, rows, engine),
        el("div", what_was_done(job), checks(job, found), order(job), by_count(job), class_="sheet-words"),
        foot(job, codes, draw_code, here),
        el("div", pictures(rows, engine), how_to(found), class_="sheet-back"),
        class_="sheet",
    )


def page(
    job: dict,
    codes: Sequence[str] | None = None,
    draw_code: Callable[[str], str | None] | None = None,
    *,
    system: str = "metric",
    paper: str = "A4",
    here: str = "",
) -> str:
    """The sheet as one HTML file that needs nothing else. ValueError for a system or paper that there is
    not."""
    if system not in SYSTEMS or paper not in PAPERS:
        raise ValueError(f"{system} and {paper}: give metric or inch, A4 or Letter")
    about = el(
        "head",
        Html('<meta charset="utf-8">'),
        Html('<meta name="viewport" content="width=device-width, initial-scale=1">'),
        el("title", f"Size sheet: {job['name']}"),
        el("style", Html(css() + f"\n@page sheet {{ size: {paper}; }}\n")),
    )
    body = el("body", sheet(job, codes, draw_code, here))
    return "<!DOCTYPE html>\n" + el("html", about, body, lang="en", data_units=system) + "\n"
