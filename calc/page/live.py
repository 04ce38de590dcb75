"""The one entry that the browser calls: a request in, a reply out, both JSON."""

import json
from collections.abc import Callable
from functools import partial

from calc.core.result import VERDICT_WORDS, Refused
from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.declare.taken import Origin
from calc.page import link, live_first, live_rest, size_html
from calc.page.html import el
from calc.page.result import idle, origins
from calc.page.size import size
from calc.reference.engine import engine
from calc.stations.index import find

_rest: Callable[[], dict] = dict  # makes the reply that follows one with "more"


def answer(request: str) -> str:
    """Calls "job-…" go to `calc.page.job`, which is imported with the first of them.

    {"call": "evaluate", "calculator": id, "anchor": id, "entries": {name: text}, "system": "metric"|"inch",
    "working": is it open, "standing": null (what is not entered is the example's) or {"engine": name or "",
    "which": part in hand, "job": {entry: {"words", "stage"}} that a job filled in}} -> {"ok": true, "html":
    {part: markup}, "notes": {name: sentence}, "origins": {name: {"from", "words", "shown"}}, "errors": []} or
    {"ok": false, "html": {}, "notes": {}, "errors": [{"field", "code", "message", "suggestion"}]}; a
    suggestion is what may have been meant, a text that is accepted in that field, or "".

    {"call": "sizes", "engine": name or "", "sizes": ["feature part"]} -> {"ok": true, "html": {"feature
    part": markup}}: sizes of a sentence, for another engine than the examples'. "size" is told in
    `calc.page.size`, "bench" in `calc.page.bench`.

    {"call": "share", "calculator", "entries", "system", "standing", and the page's "engine" and "which"} ->
    {"ok": true, "title", "text": verdict in words, "fragment": what stands behind the # of its link} or,
    where an entry cannot be used, as above.

    {"call": "link", "fragment": of a page's address} -> {"ok": true, "calculator", "entries", "system",
    "engine", "which", "html": {"link": what is said of it}} or {"ok": false, "errors": [one sentence]}.

    With "first": true the verdict comes alone, in a third of the time, in a reply that says "more": true
    where {"call": "rest"} gives another with all other parts.
    """
    asked = json.loads(request)
    if asked["call"].startswith("job-"):
        from calc.page.job import calls as job

        return json.dumps(job.answer(asked))
    if asked["call"] == "rest":
        return json.dumps(_rest())
    if asked["call"] == "size":
        return json.dumps(size(asked))
    if asked["call"] == "bench":
        from calc.page.bench import bench

        return json.dumps(bench(asked))
    if asked["call"] == "sizes":
        html = {size: _size(size, asked["engine"]) for size in asked["sizes"]}
        return json.dumps({"ok": True, "html": html, "errors": []})
    if asked["call"] == "share":
        return json.dumps(_shared(asked))
    if asked["call"] == "link":
        return json.dumps(_linked(asked["fragment"]))
    return json.dumps(_evaluated(asked))


def _evaluated(asked: dict) -> dict:
    """The reply to "evaluate", its parts after the first kept back where they are asked for later."""
    global _rest
    system, standing = asked["system"], standing_of(asked.get("standing"))
    try:
        found = evaluate(find(asked["calculator"]), asked["entries"], system, standing, later=True)
    except Refused as refused:
        return _told_of(refused, system)
    anchor = asked.get("anchor") or asked["calculator"]
    notes = {t.input.name: " ".join(t.notes) for t in found.taken if t.notes and t.origin.kind != "missed"}
    told = {
        "ok": True,
        "notes": notes,
        "origins": origins(found, system) if found.standing else idle(found),
        "errors": [],
    }
    first = live_first(found, anchor, system)

    def rest(before: dict[str, str]) -> dict:
        try:
            return told | {"html": before | live_rest(found, anchor, asked.get("working", True))}
        except Refused as refused:  # by a drawing
            return _told_of(refused, system)

    if asked.get("first"):
        _rest = partial(rest, {})
        return told | {"html": first, "more": True}
    return rest(first)


def _told_of(refused: Refused, system: str) -> dict:
    errors = [
        {"field": e.field, "code": e.code, "message": e.sentence(system), "suggestion": e.suggestion}
        for e in refused.errors
    ]
    return {"ok": False, "html": {}, "notes": {}, "errors": errors}


def _shared(asked: dict) -> dict:
    """A result as it leaves the device: its numbers, and no name of anybody."""
    calculator, entries, system = find(asked["calculator"]), asked["entries"], asked["system"]
    chosen = standing_of(asked["standing"] or asked) or Standing()
    try:
        found = evaluate(calculator, entries, system, chosen if asked["standing"] else None)
        fragment = link.write(link.Link(calculator, entries, system, chosen.sheet_name, chosen.which))
    except Refused as refused:
        return _told_of(refused, system)
    except link.LinkError as error:
        return _unlinked(error)
    state = "Example" if found.example else VERDICT_WORDS[found.verdict.state]
    text = f"{state}: {found.verdict.headline.plain(system)}"
    return {"ok": True, "title": calculator.title, "text": text, "fragment": fragment, "errors": []}


def _linked(fragment: str) -> dict:
    try:
        found = link.read(fragment)
    except link.LinkError as error:
        return _unlinked(error)
    back = el("button", "Back to my own", type="button", data_leave_link=True)
    said = el("p", el("span", "These entries came with a link. Yours are kept."), " ", back)
    return {
        "ok": True,
        "calculator": found.calculator.id,
        "entries": found.entries,
        "system": found.system,
        "engine": found.engine,
        "which": found.which,
        "html": {"link": said},
        "errors": [],
    }


def _unlinked(error: link.LinkError) -> dict:
    wrong = {"field": None, "code": "link", "message": str(error), "suggestion": ""}
    return {"ok": False, "html": {}, "notes": {}, "errors": [wrong]}


def standing_of(asked: dict | None) -> Standing | None:
    """What a page's entries stand on: the engine chosen on it or its job's, the part in hand, what a job
    filled in."""
    if asked is None:
        return None
    try:
        sheet = engine(asked["engine"]) if asked["engine"] else None
    except KeyError:  # a job of an engine that has no sheet here
        sheet = None
    return Standing(
        sheet,
        asked.get("which", ""),
        {entry: Origin("job", told["words"], told["stage"]) for entry, told in asked.get("job", {}).items()},
    )


def _size(size: str, name: str) -> str:
    """A size that a sentence speaks of, on another engine's sheet."""
    feature, part = size.split(" ")
    try:
        return size_html(feature, part, name)
    except (KeyError, TypeError):
        return f"(not on {name}’s sheet)" if name else "(what your engine’s maker says)"
