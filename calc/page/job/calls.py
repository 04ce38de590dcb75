"""A job in the browser: what can be asked about it. Judgements come from `calc.job`, the HTML of its pages
from the modules beside.

`answer` takes a request {"call": "job-…", …} and gives a reply; both are JSON-ready. A job travels as its
text, which only `calc.job.record` reads, so that what a device stores is what was checked here. Imported only
once a job is asked for.
"""

from collections.abc import Callable

from calc.core.result import Refused
from calc.job.contents import JobError
from calc.page.job import changes, fields, jobs, keep, returned, sizes, write_down
from calc.page.job.pieces import AtField


def answer(asked: dict) -> dict:
    """The reply to a request: {"ok": true, …} or {"ok": false, "errors": [{"field", "code", "message"}]}."""
    try:
        return {"ok": True, "errors": [], **CALLS[asked["call"]](asked)}
    except JobError as error:
        field, code = (error.field, error.code) if isinstance(error, AtField) else (None, "job")
        return _refused([{"field": field, "code": code, "message": str(error)}])
    except Refused as refused:
        return _refused(
            [
                {"field": e.field, "code": e.code, "message": e.sentence(asked["system"])}
                for e in refused.errors
            ]
        )


def _refused(errors: list[dict]) -> dict:
    return {"ok": False, "html": {}, "errors": errors}


# What a job needs where it leaves the shop is half of all that it needs: it is imported with the first call
# for it.


def _sheet(asked: dict) -> dict:
    from calc.page.job.sheet_page import shown

    return shown(asked)


def _open(asked: dict) -> dict:
    from calc.page.job.sharing import opened

    return opened(asked)


def _received(asked: dict) -> dict:
    from calc.page.job.received import received

    return received(asked)


def _check(asked: dict) -> dict:
    from calc.page.job.checks import check

    return check(asked)


def _of_one(asked: dict) -> dict:
    from calc.page.job.size import of_one

    return of_one(asked)


def _bench(asked: dict) -> dict:
    from calc.page.job.size import bench

    return bench(asked)


CALLS: dict[str, Callable[[dict], dict]] = {
    "job-new": changes.new,
    "job-add": changes.add,
    "job-take-back": changes.take_back,
    "job-done": changes.done,
    "job-tick": changes.tick,
    "job-strike": changes.strike,
    "job-unstrike": changes.unstrike,
    "job-change": changes.change,
    "job-read": changes.read,
    "job-keep": keep.keep,
    "job-fields": fields.fields,
    "job-view": jobs.view,
    "job-write": write_down.write,
    "job-sizes": sizes.sizes,
    "job-take-over": returned.take_over,
    "job-sheet": _sheet,
    "job-open": _open,
    "job-received": _received,
    "job-check": _check,
    "job-size": _of_one,
    "job-bench": _bench,
}
