"""Whatever is typed, pasted or sent, in any field of any calculator: a result, or one sentence about that field.

Asked as the browser asks, so that what comes back is what the page is handed. The large entries are the size that a slip of the
clipboard makes; those with large exponents would take a naive reader for ever.
"""

import json
import re

import pytest

from calc.core.kinds import KINDS
from calc.core.spelling import unit_spelled
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.open_input import Open
from calc.declare.quantity import Quantity
from calc.page.live import answer
from calc.stations import index as stations
from tests.sentences import check_sentence

CODES = {
    "unknown-choice",
    "empty",
    "not-a-number",
    "several-numbers",
    "two-ways",
    "unknown-unit",
    "wrong-kind",
    "not-finite",
    "too-long",
    "bad-fraction",
    "bad-angle",
    "bad-doubt",
    "out-of-range",
    "too-few",
    "too-many",
    "twice",
    "impossible",
}  # those of calc/COMMAND.md but `no-answer`, which is a fault of ours
LARGE = 10_000  # characters
MARKUP = [
    "<b>5</b>",
    "<script>alert(1)</script>",
    '"><img src=x onerror=alert(1)>',
    "' onfocus='alert(1)",
    "5 mm<!--",
    "]]>",
    "&lt;i&gt;",
    "<svg/onload=alert(1)>",
]
NO_NUMBER = [
    "abc",
    "mm",
    "-",
    "±",
    "nan",
    "NaN mm",
    "inf",
    "-inf mm",
    "∞",
    "true",
    "None",
    "0x10",
    "1_000",
    "=1+1",
    "'; drop table",
    "{bore}",
    "%s",
    "\x00",
    "\ud800",
    "٣٧",
    "\u202e5.73",
    "⏱",
]
MANY = ["37.5 37.6", "37.5, 37.6 mm", "1,234,5", "37.5\n37.6", "1/0", "5/4 1", "5 ± ± 1", "± 0.1", "5 ± -1"]
LONG = [
    "1" * LARGE,
    "9 mm " * (LARGE // 5),
    "x" * LARGE,
    "<b>" * (LARGE // 3),
    "1/" + "3" * LARGE,
    "½" * (LARGE // 2),
    "(" * LARGE,
    "5° " * (LARGE // 3),
    "± " * (LARGE // 2),
    "0." + "0" * LARGE + "1",
    "1e999999",
    "1e-999999",
    "1e9999999999999 mm",
    "5 ± 1e999999 mm",
]
REFUSED = [*NO_NUMBER, *MANY, *MARKUP]  # by every number, as are LONG ones
PERHAPS = [
    "",
    "   ",
    " " * LARGE,
    "0",
    "-5",
    "1e29",
    "-1e29",
    "1e-29",
    "1e400",
    "5 mm ± 100 m",
    "1;2;3",
]  # what is optional may be empty, an angle below nothing
CELLS = [
    "|" * LARGE,
    ";" * LARGE,
    "1;" * (LARGE // 2),
    "1|" * (LARGE // 2),
    "\t" * LARGE,
    "\n" * LARGE,
]  # of a grid pasted whole


def ask(calculator, name, text, system):
    reply = json.loads(
        answer(
            json.dumps(
                {
                    "call": "evaluate",
                    "calculator": calculator.id,
                    "entries": {name: text},
                    "system": system,
                    "working": False,
                }
            )
        )
    )
    if reply["ok"]:
        assert reply["html"] and not reply["errors"]
        markup = " ".join(reply["html"].values())
        assert not any(text in markup for text in MARKUP[:4]) and not re.search(
            r">[^<]*\b(?:nan|inf|None)\b", markup
        )
        return None
    assert not reply["html"]
    for error in reply["errors"]:
        assert error["code"] in CODES, f"{name}={text[:40]!r}: {error}"
        check_sentence(calculator, error["field"], error["message"])
        about = error["field"].partition(".")[0]
        told = {
            about,
            getattr(calculator.input[about], "doubt_of", ""),
            getattr(calculator.input[about], "by", ""),
        }
        assert (
            name.partition(".")[0] in told
            or error["code"] == "impossible"
            or isinstance(calculator.input[name.partition(".")[0]], (Choice, Open))
        ), f"{name}={text[:40]!r}: {error}"
    return reply["errors"]


def is_option(declared, text) -> bool:
    return isinstance(declared, Choice) and text.casefold() in {
        word.casefold() for option in declared.options.items() for word in option
    }


def names(declared):
    """The entries that an input has: its own, temperatures, the cells of a grid's first and last row."""
    yield declared.name
    ends = {1, len(declared.rows)} if isinstance(declared, Grid) else ()
    yield from (
        f"{declared.name}.{part}"
        for part in declared.parts
        if not ends or int(part.partition(".")[0]) in ends
    )


@pytest.mark.parametrize("id", stations.ids())
def test_whatever_is_entered_in_any_field_gives_a_result_or_one_sentence_about_that_field(id):
    c = stations.find(id)
    read = set()  # kinds of field that have had the long entries: those take a while, and a kind is read by the same code everywhere
    for declared in c.inputs:
        for name in names(declared):
            whole = isinstance(declared, Grid) and name == declared.name
            kind = type(declared), getattr(declared, "form", None), name == declared.name
            for n, text in enumerate(
                [*REFUSED, *(LONG if kind not in read else ()), *PERHAPS, *(CELLS if whole else ())]
            ):
                errors = ask(c, name, text, ("metric", "inch")[n % 2])
                if text in REFUSED + LONG and not (whole and text in MANY) and not is_option(declared, text):
                    assert errors, f"{name}={text[:40]!r} was taken"
                    assert len(errors) == 1 or whole, f"{name}={text[:40]!r}: {errors}"
            read.add(kind)


@pytest.mark.parametrize("id", stations.ids())
def test_a_quantity_of_another_kind_is_refused_by_its_name(id):
    """In every unit that stands for nothing that the input asks for."""
    c = stations.find(id)
    for declared in c.inputs:
        if isinstance(declared, Quantity):
            kind = declared.form.kind
            others = {
                k.metric.symbol
                for k in KINDS.values()
                if k.dims != kind.dims and k.metric.symbol and unit_spelled(kind, k.metric.symbol) is None
            }
            for unit in sorted(others):
                errors = ask(c, declared.name, f"5 {unit}", "metric")
                assert errors and errors[0]["code"] in ("wrong-kind", "unknown-unit"), (
                    f"{declared.name} took 5 {unit}: {errors}"
                )
            errors = ask(c, declared.name, "5 furlong", "metric")
            assert errors and errors[0]["code"] == "unknown-unit" and "furlong" in errors[0]["message"], (
                errors
            )


@pytest.mark.parametrize(
    "id, name, text, either",
    [
        ("leak-test", "volume", "1,250 cm³", True),
        ("leak-test", "volume", "1,250", True),
        ("units", "value", "1,250 mm", True),
        ("units", "value", "1,250", True),
        ("seat-fit", "pocket_bore", "37,480", False),
        ("seat-fit", "pocket_bore", "1,476 in", False),
        ("leak-test", "volume", "1,25 L", False),
        ("leak-test", "volume", "1,250.5 cm³", False),
    ],
)
def test_a_comma_is_refused_where_the_field_could_take_both_its_readings(id, name, text, either):
    for system in ("metric", "inch"):
        errors = ask(stations.find(id), name, text, system) or []
        assert [e["code"] for e in errors] == (
            ["two-ways"] if either else ["out-of-range"] if (text, system) == ("37,480", "inch") else []
        ), errors


def test_every_input_of_every_type_was_asked():
    kinds = {type(i) for id in stations.ids() for i in stations.find(id).inputs}
    assert kinds == {Quantity, Choice, Grid, Open}
