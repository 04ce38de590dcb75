"""Lay the files of a new calculator: `python3 scripts/new_calculator.py STATION ID TITLE [--page
docs/STATION/PAGE.md]`.

What is laid works as it stands, as the clearance of a shaft in its bore, and its example is marked REPLACE
line by line; while a mark is left, the calculator's own test fails. The marks ask what a good calculator
answers before a line of it is written.
"""

from __future__ import annotations

import argparse
import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
MARK = "REPLACE"

MODULE = '''\
"""REPLACE: what this finds out, in one line. As it stands: how much room a shaft has in its bore."""

from calc.core.conformance import past
from calc.core.result import impossible, say
from calc.declare.calculator import (
    Answer,
    Inputs,
    Limit,
    Number,
    Output,
    Outputs,
    answer,
    calculator,
    given,
    measured,
)
from calc.reference import cautions, sources
from calc.stations.shared.forms import SIZE


class In(Inputs):
    # REPLACE: what is asked for, in the order of the work. Which tool reads it, over which place? Where does
    # the sum end (hard), what is usual? Is it a size of the engine's sheet (feature="…")? A limit of that
    # engine (limit(…, which="wear"))? May it be left empty (Number | None)?
    bore: Number = measured("Bore", "D", SIZE, tool="a bore gauge", hard="2 to 300 mm", example="20.020 mm")
    shaft: Number = measured("Shaft", "d", SIZE, tool="a micrometer", hard="1 to 300 mm", example="20.000 mm")
    least: Number = given("Clearance, least", "c_min", SIZE, hard="0 to 2 mm", example="0.010 mm")
    most: Number = given("Clearance, most", "c_max", SIZE, hard="0 to 3 mm", example="0.050 mm")


class Out(Outputs):
    # REPLACE: what is told, the most wanted first (main=True). Is one of them a size of the sheet that no
    # gauge reads (feature="…")?
    clearance = Output("Clearance", "c", SIZE, main=True)


@calculator(
    "%(id)s",
    "%(title)s",
    In,
    Out,
    purpose="REPLACE: the question that it answers, as the one with the part in hand would ask it?",
    finds=("REPLACE: words that the trade looks for it by",),
    sources=(sources.PRACTICE,),  # REPLACE: where the formula and the limits come from
    cautions=(cautions.MAKER_FIRST, cautions.AIRCRAFT),  # REPLACE: what can hurt somebody here?
)
def %(name)s(i: In) -> Answer:
    """REPLACE: by which formula, what is taken for granted, where it ends."""
    if past(i.least, i.most):
        raise impossible(
            "least", "is {least}, more than the most, {most}; give {most} or less", least=i.least, most=i.most
        )
    clearance = Out.clearance(i.bore - i.shaft)
    # REPLACE: the verdict. What does the hand do next, on whose number, and what if that number is at the
    # end of its limits, hot, worn, oily, read over the wrong place?
    if past(i.least, clearance):
        do = "Measure both again. Then take it off the part that may be cut."
        verdict = ("fail", say("Too tight: {c}", c=clearance), do)
    elif past(clearance, i.most):
        do = "Measure both again. Then look for the part that is worn, and renew it."
        verdict = ("fail", say("Too loose: {c}", c=clearance), do)
    else:
        verdict = ("pass", say("Runs with {c}", c=clearance), "Fit it.")
    limits = (Limit("the clearance", clearance, low=float(i.least), high=float(i.most)),)
    return answer(clearance, verdict=verdict, limits=limits)
'''

CHECKS = '''\
"""REPLACE: outside numbers of this calculator: a standard, a handbook's example, another library, an analytic limit; its source beside each."""

from tests.checks import Check, Trend, asked

CHECKS = [
    Check("%(id)s", "clearance, mm", {"bore": "20.020 mm", "shaft": "20.000 mm"}, 0.020, 1e-6, asked("%(id)s", "clearance", "mm"),
          "REPLACE: difference of two sizes, by hand", "limit"),
]

TRENDS = {
    "clearance": Trend(rises="bore", falls="shaft"),
}
'''

TEST = '''\
"""%(title)s: what a person can get wrong with it, and what it must say then."""

from pathlib import Path

import pytest

from calc.core.result import Refused
from calc.stations.index import find
from scripts.new_calculator import left_to_replace


def judged(**entries):
    return find("%(id)s")(**entries).verdict


@pytest.mark.parametrize(
    "bore, state",
    [("20.009 mm", "fail"), ("20.010 mm", "pass"), ("20.050 mm", "pass"), ("20.051 mm", "fail")],
)
def test_on_its_limits_it_is_in_order_and_past_them_it_is_not(bore, state):
    assert judged(bore=bore).state == state


def test_limits_that_do_not_go_together_are_refused():
    with pytest.raises(Refused, match="more than the most"):
        judged(least="0.06 mm")


def test_every_line_of_the_example_was_replaced():
    assert not left_to_replace("%(station)s", "%(id)s", Path(__file__).parents[3])
'''

BLOCK = """
## %(title)s

REPLACE: why, how, what can hurt, what passes, what to do when it does not.

/// calculator | %(id)s
///
"""


def files(root: Path, station: str, id: str) -> dict[str, Path]:
    """The three files of a calculator, by what they are."""
    name = id.replace("-", "_")
    return {
        "module": root / "calc/stations" / station / f"{name}.py",
        "checks": root / "tests/checks/stations" / station / f"{name}.py",
        "test": root / "tests/stations" / station / f"test_{name}.py",
    }


def left_to_replace(station: str, id: str, root: Path = ROOT) -> list[str]:
    """Where the example still stands, as file:line: in the module, or the modules of the folder that it has
    become, its outside numbers and its station's pages."""
    laid = files(root, station, id)
    folder = laid["module"].with_suffix("")
    modules = sorted(folder.rglob("*.py")) if folder.is_dir() else [laid["module"]]
    places = [*modules, laid["checks"], *sorted((root / "docs" / station).rglob("*.md"))]
    return [
        f"{path.relative_to(root)}:{number}"
        for path in places
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        if MARK in line
    ]


def lay(station: str, id: str, title: str, page: Path | None = None, root: Path = ROOT) -> list[Path]:
    """Write the files, enter the calculator in its station and put its block on a page. ValueError says what
    cannot be used."""
    package = root / "calc/stations" / station / "__init__.py"
    if not package.exists():
        known = sorted(
            path.parent.name
            for path in package.parents[1].glob("*/__init__.py")
            if "CALCULATORS" in path.read_text(encoding="utf-8")
        )
        raise ValueError(
            f"There is no station {station!r}; give one of {', '.join(known)}, or add it first"
            " (DEVELOPERS.md)."
        )
    if not re.fullmatch(r"[a-z][a-z0-9]*(-[a-z0-9]+)*", id):
        raise ValueError(
            f"{id!r} cannot be an id; give small letters, digits and hyphens, such as valve-lash."
        )
    if id.endswith("-test"):
        raise ValueError(f"{id!r} makes a file that every tool takes for a test; give another id.")
    if re.search(
        rf'"{re.escape(id)}"',
        "".join(path.read_text(encoding="utf-8") for path in package.parents[1].glob("*/__init__.py")),
    ):
        raise ValueError(f"There is a calculator {id!r} already; give another id.")
    page = page or next(
        (
            path
            for path in sorted((root / "docs" / station).glob("*.md"))
            if path.stem not in ("index", "sources")
        ),
        None,
    )
    if page is None or not page.exists():
        raise ValueError(
            f"There is no page {page or f'in docs/{station}'}; make it first, and give it with --page."
        )
    words = {"station": station, "id": id, "title": title, "name": id.replace("-", "_")}
    laid = files(root, station, id)
    for kind, text in (("module", MODULE), ("checks", CHECKS), ("test", TEST)):
        laid[kind].parent.mkdir(parents=True, exist_ok=True)
        laid[kind].write_text(text % words, encoding="utf-8")
    _enter(package, id)
    page.write_text(page.read_text(encoding="utf-8").rstrip() + "\n" + BLOCK % words, encoding="utf-8")
    return [*laid.values(), package, page]


def _enter(package: Path, id: str) -> None:
    """The id at the end of the station's list; where it stands in the order of the work, who adds it
    knows."""
    text = package.read_text(encoding="utf-8")
    entered, found = re.subn(
        r"^(CALCULATORS = \()([^)]*?),?(\s*)\)",
        lambda line: f'{line[1]}{line[2]}, "{id}"{line[3]})' if line[2].strip() else f'{line[1]}"{id}",)',
        text,
        count=1,
        flags=re.MULTILINE,
    )
    if not found:
        raise ValueError(f"{package} has no list CALCULATORS = (…) to enter {id} in.")
    package.write_text(entered, encoding="utf-8")


def main(arguments: list[str] | None = None) -> int:
    parser = argparse.ArgumentParser(
        prog="python3 scripts/new_calculator.py", description=__doc__.splitlines()[0]
    )
    parser.add_argument("station", help="such as heads")
    parser.add_argument("id", help="such as valve-lash")
    parser.add_argument("title", help="as it stands over the calculator")
    parser.add_argument("--page", type=Path, help="where its block goes; else the station's first page")
    asked = parser.parse_args(arguments)
    try:
        for path in lay(asked.station, asked.id, asked.title, asked.page and asked.page.resolve()):
            print(path.relative_to(ROOT))
    except ValueError as error:
        print(error, file=sys.stderr)
        return 2
    name = asked.id.replace("-", "_")
    print(f"Now replace what is marked {MARK}. See it: python3 -m calc run {asked.id} --example")
    print(
        f"Test it: python3 scripts/test.py tests/stations/{asked.station} tests/test_*.py"
        f" -k '{asked.id} or {name}'"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
