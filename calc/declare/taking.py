"""All of a calculator's inputs as they are taken from a reader's entries."""

from collections.abc import Mapping
from dataclasses import replace
from difflib import get_close_matches
from typing import Any

from calc.core.advice import at_least
from calc.core.conformance import COVERAGE
from calc.core.reading import quoted
from calc.core.result import InputError, Refused, say
from calc.declare.choice import Choice
from calc.declare.declaration import Declaration
from calc.declare.grid import Grid
from calc.declare.standing import Standing
from calc.declare.taken import MISSED, READ, Taken


def take_all(
    calculator: Declaration, entries: Mapping[str, str], system: str, standing: Standing | None = None
) -> tuple[Taken, ...]:
    """Every input as it was taken, or `Refused` with all that is wrong, in the order of the form."""
    own, errors = _by_input(calculator, entries)
    taken: dict[str, Taken] = {}
    chosen = {
        name: "read"
        for name, texts in own.items()
        if not isinstance(calculator.input[name], Choice) and texts.get("", "").strip()
    }
    # Choices first: one may name another input's material.
    for declared in sorted(calculator.inputs, key=lambda i: not isinstance(i, Choice)):
        try:
            taken[declared.name] = _taken(declared, own[declared.name], system, chosen, standing)
            if isinstance(declared, Choice):
                chosen[declared.name] = taken[declared.name].value
        except Refused as refusal:
            errors += refusal.errors
            if isinstance(declared, Choice):
                chosen[declared.name] = declared.default
    if errors:
        place = {i.name: n for n, i in enumerate(calculator.inputs)}
        raise Refused(sorted(errors, key=lambda e: place.get(e.field.partition(".")[0], -1)))
    hand_over_doubts(taken)
    return tuple(taken[i.name] for i in calculator.inputs)


def chosen_of(taken: tuple[Taken, ...]) -> dict[str, str]:
    """What was chosen, by the choice's name."""
    return {t.input.name: t.value for t in taken if isinstance(t.input, Choice)}


def _by_input(
    calculator: Declaration, entries: Mapping[str, str]
) -> tuple[dict[str, dict[str, str]], list[InputError]]:
    """The texts for each input by part name, and what is wrong with entries that are of none."""
    own: dict[str, dict[str, str]] = {i.name: {} for i in calculator.inputs}
    errors = []
    for name, text in entries.items():
        base, _, part = name.partition(".")
        if base in own and (not part or part in calculator.input[base].parts):
            own[base][part] = str(text)
        else:
            errors.append(_unknown_input(calculator, name))
    return own, errors


def _unknown_input(calculator: Declaration, name: str) -> InputError:
    near = get_close_matches(name, calculator.input, 1)
    hint = f"the nearest is {near[0]}" if near else "give one of " + ", ".join(calculator.input)
    words = say("{name} is not an input of {id}; {hint}.", name=quoted(name), id=calculator.id, hint=hint)
    return InputError(name, "unknown-input", words)


def _taken(
    declared: Any, texts: dict[str, str], system: str, chosen: dict[str, str], standing: Standing | None
) -> Taken:
    taken: Taken
    if standing is None:
        taken = declared.take(texts, system, chosen)
        return replace(taken, origin=READ) if taken.entered else taken
    own = list(texts.values()) if isinstance(declared, Grid) else [texts.get("", "")]
    if not any(text.strip() for text in own):
        unread = standing.unread(declared, chosen)
        told = {part: text for part, text in texts.items() if text.strip()}
        # its temperatures alone are no reading
        return replace(unread, texts=told, origin=MISSED if told else unread.origin)
    try:
        taken = declared.take({"": "", **texts} if isinstance(declared, Grid) else texts, system, chosen)
    except Refused as refusal:
        if not isinstance(declared, Grid) or any(e.code not in ("empty", "too-few") for e in refusal.errors):
            raise
        return replace(declared.partly(texts, system, chosen), origin=MISSED)
    origins = {standing.origin(name) for name in taken.read}
    return replace(taken, origin=origins.pop() if len(origins) == 1 else READ)


def hand_over_doubts(taken: dict[str, Taken]) -> None:
    """Give each input that asks for the doubt of a reading the one behind that reading's ±, in place. Raises
    `Refused` where both carry one."""
    for name, own in taken.items():
        reading = taken.get(getattr(own.input, "doubt_of", ""))
        if reading is None or not (reading.doubts or reading.doubt_told):
            continue
        taken[name] = _handed_over(own, reading)
        taken[reading.input.name] = replace(reading, doubts=())


def _handed_over(own: Taken, reading: Taken) -> Taken:
    """An input that asks for the doubt of a reading, with the one behind that reading's ±."""
    if own.text.strip():
        raise own.input.refused(
            "twice",
            say(
                "is given here and behind the ± of {reading}; give it in one place",
                reading=reading.input.label,
            ),
        )
    u = sum(u for _, u in reading.doubts)  # one, or none where it was told as nothing
    if not u and own.input.hard_range[0] > 0:
        raise own.input.refused(
            "out-of-range",
            say(
                "is told as none behind the ± of {reading}, and no reading is without one;"
                " give {least} or more",
                reading=reading.input.label,
                least=at_least(own.input.hard_range[0], own.input.form),
            ),
        )
    own.input.check(COVERAGE * u)
    return replace(
        own,
        value=own.input.number(COVERAGE * u),
        origin=reading.origin,
        notes=(f"Taken from behind the ± of {reading.input.label}.",),
    )
