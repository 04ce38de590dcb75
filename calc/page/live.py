"""The one entry that the browser calls: a request in, a reply out, both JSON."""
import json

from calc.page import live_parts
from calc.result import Refused
from calc.stations import find


def answer(request: str) -> str:
    """Calls "job-…" go to `calc.page.job`, which is imported with the first of them.

    {"call": "evaluate", "calculator": id, "anchor": id, "entries": {name: text}, "system": "metric"|"inch",
    "working": is it open} ->
    {"ok": true, "html": {part: markup}, "notes": {name: sentence}, "errors": []} or
    {"ok": false, "html": {}, "notes": {}, "errors": [{"field", "code", "message"}]}.
    """
    asked = json.loads(request)
    if asked["call"].startswith("job-"):
        from calc.page import job
        return json.dumps(job.answer(asked))
    system = asked["system"]
    try:
        parts, notes = live_parts(find(asked["calculator"]), asked["entries"], system, asked.get("anchor") or asked["calculator"],
                                  asked.get("working", True))
    except Refused as refused:
        errors = [{"field": e.field, "code": e.code, "message": e.sentence(system)} for e in refused.errors]
        return json.dumps({"ok": False, "html": {}, "notes": {}, "errors": errors})
    return json.dumps({"ok": True, "html": parts, "notes": notes, "errors": []})
