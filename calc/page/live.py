"""The one entry that the browser calls: a request in, a reply out, both JSON."""
import json

from calc.calculator import evaluate
from calc.page import live_first, live_rest
from calc.result import Refused
from calc.stations import find

_rest = None  # makes the reply that follows one with "more"


def answer(request: str) -> str:
    """Calls "job-…" go to `calc.page.job`, which is imported with the first of them.

    {"call": "evaluate", "calculator": id, "anchor": id, "entries": {name: text}, "system": "metric"|"inch",
    "working": is it open} ->
    {"ok": true, "html": {part: markup}, "notes": {name: sentence}, "errors": []} or
    {"ok": false, "html": {}, "notes": {}, "errors": [{"field", "code", "message"}]}.

    With "first": true the verdict comes alone, in a third of the time, in a reply that says "more": true where {"call": "rest"}
    gives another with all other parts.
    """
    global _rest
    asked = json.loads(request)
    if asked["call"].startswith("job-"):
        from calc.page import job
        return json.dumps(job.answer(asked))
    if asked["call"] == "rest":
        return json.dumps(_rest())
    system = asked["system"]
    try:
        found = evaluate(find(asked["calculator"]), asked["entries"], system)
    except Refused as refused:
        errors = [{"field": e.field, "code": e.code, "message": e.sentence(system)} for e in refused.errors]
        return json.dumps({"ok": False, "html": {}, "notes": {}, "errors": errors})

    told = {"ok": True, "notes": {t.input.name: " ".join(t.notes) for t in found.taken if t.notes}, "errors": []}
    first = live_first(found, system)

    def rest():
        return told | {"html": live_rest(found, asked.get("anchor") or asked["calculator"], asked.get("working", True))}
    if asked.get("first"):
        _rest = rest
        return json.dumps(told | {"html": first, "more": True})
    return json.dumps(told | {"html": first | rest()["html"]})
