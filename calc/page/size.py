"""Is this size right? One reading of a part against the limits of its engine's sheet, with its doubt (ISO
14253-1), and what to do next: for whoever has one number in hand and wants one word."""

from calc.core.reading import EntryError, read
from calc.core.result import VERDICT_WORDS, say
from calc.core.working import constant
from calc.page.html import Html, children, el
from calc.reference.engine import STANDARD, Engine, Feature, engine
from calc.reference.size import Held, hold, limits_at, limits_in_words

STAGES = {"received": "Used", "finished": "New or machined"}


def size(asked: dict) -> dict:
    """The reply to {"call": "size", "engine": name, "feature": id, "stage": "received", "finished" or "" (not
    said), "text": what was typed, "system": "metric" or "inch"}: {"ok", "html": {"verdict", "announce"},
    "note": how the entry was read where that was a choice, "errors"}, as of a calculator."""
    feature, system = named(asked["engine"]).feature(asked["feature"]), asked["system"]
    try:
        entry = read(asked["text"], feature.form.kind, feature.form.unit(system), _possible(feature))
    except EntryError as error:
        message = f"{feature.label}: {error.problem}; {error.accepted}."
        return {
            "ok": False,
            "html": {},
            "errors": [{"field": "text", "code": error.code, "message": message, "suggestion": ""}],
        }
    value = constant("", feature.label, feature.form, entry.value)
    held = {stage: hold(feature, stage, value, entry.doubt) for stage in _stages(feature, asked["stage"])}
    if _alike(list(held.values())):
        held = {
            "finished": held["finished"]
        }  # new or used, it comes to the same; the stricter limits say how far
    meant = "" if entry.named else _meant(asked["text"], entry.value, feature, system)
    return {
        "ok": True,
        "html": {
            "verdict": children(
                _asked_back(meant) if meant else None,
                *(_verdict(feature, stage, one, len(held) > 1) for stage, one in held.items()),
            ),
            "announce": ". ".join(
                _announced(feature, stage, one, system, len(held) > 1) for stage, one in held.items()
            ),
        },
        "note": entry.note,
        "errors": [],
    }


def named(name: str) -> Engine:
    """The data sheet of that name; KeyError, one sentence, where this handbook has none."""
    if not name:
        raise KeyError("This handbook has no data sheet of your engine.")
    return engine(name)


def asks_stage(feature: Feature) -> bool:
    """Do other limits count for a part that has run than for one that was just made?"""
    return limits_at(feature, "received") != limits_at(feature, "finished")


def _stages(feature: Feature, asked: str) -> tuple[str, ...]:
    if asked in STAGES:
        return (asked,)
    if asks_stage(feature):
        return ("received", "finished")
    return ("received" if feature.low is None and feature.high is None else "finished",)


def _alike(held: list[Held]) -> bool:
    """Is it the same for a used part and a new one: in order as new, or so far off that it is none?"""
    return len(held) > 1 and (
        {one.state for one in held} == {"pass"} or len({one.do.plain() for one in held}) == 1
    )


def _possible(feature: Feature) -> tuple[float, float]:
    """No part is twenty times its size: by that, 37,500 is no 37 metres."""
    most = 20 * max(abs(x) for x in (feature.nominal, feature.high, feature.wear) if x is not None)
    return -most, most


def _meant(text: str, value: float, feature: Feature, system: str) -> str:
    """A bare number that lies far off, with the unit of the other system where it would not: 2.165 in a field
    in millimetres was read off an inch tool."""
    own, other = (feature.form.unit(s) for s in (system, "inch" if system == "metric" else "metric"))
    near = abs(feature.nominal) / 20
    if own == other or abs(value - feature.nominal) <= near:
        return ""
    whole = f"{text.strip()} {other.symbol}"
    try:
        there = read(whole, feature.form.kind).value
    except EntryError:
        return ""
    return whole if abs(there - feature.nominal) <= near else ""


def _asked_back(meant: str) -> Html:
    return el(
        "p", "Did you mean ", el("button", meant, type="button", data_suggest=meant), "?", class_="size-meant"
    )


def _verdict(feature: Feature, stage: str, held: Held, several: bool) -> Html:
    """What it is, by how much, and what next, with the limits where it was made to another size; one of
    `several` says as what."""
    said = STAGES[stage] if several else ""
    state = held.state or "unjudged"
    step = feature.at(held.step)
    return children(
        el(
            "div",
            el(
                "p",
                el("span", _word(feature, stage, held), class_="verdict-state"),
                " ",
                f"{said}: " if said else None,
                held.words,
                ".",
                class_="verdict-head",
            ),
            class_=f"verdict verdict-{state}",
            role="group",
            aria_label=f"Verdict, {said.lower()}" if said else "Verdict",
        ),
        el(
            "p",
            None
            if held.step == STANDARD
            else say("Held against {limits}. ", limits=limits_in_words(step, step.low, step.high)),
            held.do if held.state else "The sheet gives no limits for it, so nothing is judged.",
            class_=f"verdict-do verdict-{state}",
        ),
    )


def _word(feature: Feature, stage: str, held: Held) -> str:
    """In one word; of a size that is out, which way."""
    if held.state != "fail":
        return VERDICT_WORDS[held.state or "unjudged"]
    _, high = limits_at(feature.at(held.step), stage)
    return "Too large" if high is not None and float(held.value) > high else "Too small"


def _announced(feature: Feature, stage: str, held: Held, system: str, several: bool) -> str:
    said = f"{STAGES[stage]}: " if several else ""
    return f"{said}{_word(feature, stage, held)}. {held.words.plain(system)}"
