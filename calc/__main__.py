"""The command: python -m calc list | show ID | run ID name=value ...

Exit status: 0 done, 2 something asked for that cannot be used (one sentence on standard error for each thing).
"""
import argparse
import json
import os
import sys

from calc.calculator import evaluate
from calc.report import declaration_data, declaration_text, result_data, result_text
from calc.result import Refused
from calc.stations import every, find


def main(arguments: list[str] | None = None) -> int:
    parser = argparse.ArgumentParser(prog="python -m calc", description="Sizes of re-machined engine parts, checked.")
    commands = parser.add_subparsers(dest="command", required=True)
    listed = commands.add_parser("list", help="every calculator")
    shown = commands.add_parser("show", help="a calculator's inputs and outputs")
    run = commands.add_parser("run", help="evaluate a calculator: run seat-fit pocket_bore=37.48 'ring_outside=1 31/64 in'")
    for sub in (listed, shown, run):
        sub.add_argument("--json", action="store_true", help="as JSON; the schema is in DEVELOPERS.md")
    for sub in (shown, run):
        sub.add_argument("id", metavar="ID")
    run.add_argument("entries", nargs="*", metavar="name=value", help="a value with its unit, or a bare number in the input's own unit")
    run.add_argument("--units", choices=("metric", "inch"), default="metric", help="system of bare numbers and of what is printed")
    asked = parser.parse_args(arguments)
    try:
        print(_answer(asked))
    except KeyError as error:
        return _refuse([error.args[0]], asked)
    except Refused as refused:
        return _refuse([e.sentence(asked.units) for e in refused.errors], asked, refused.errors)
    return 0


def _answer(asked) -> str:
    if asked.command == "list":
        rows = every()
        if asked.json:
            return _json([{"calculator": c.id, "title": c.title, "station": c.station, "purpose": c.purpose, "finds": list(c.finds)} for c in rows])
        return "\n".join(f"{c.id:<20} {c.station:<10} {c.title}" for c in rows)
    calculator = find(asked.id)
    if asked.command == "show":
        return _json(declaration_data(calculator)) if asked.json else declaration_text(calculator)
    entries = {}
    for pair in asked.entries:
        name, equals, value = pair.partition("=")
        if not equals:
            raise KeyError(f"“{pair[:40]}” is not an entry; give name=value, such as {calculator.inputs[0].name}={calculator.inputs[0].default_text('metric')}.")
        if name in entries:
            raise KeyError(f"{name} is given twice; give it once.")
        entries[name] = value
    found = evaluate(calculator, entries, asked.units)
    return _json(result_data(found, asked.units)) if asked.json else result_text(found, asked.units)


def _json(data) -> str:
    return json.dumps(data, ensure_ascii=False, indent=2)


def _refuse(sentences, asked, errors=()) -> int:
    if asked.json:
        print(_json({"errors": [{"field": e.field, "code": e.code, "message": s} for e, s in zip(errors, sentences)]
                     or [{"field": None, "code": "not-found", "message": s} for s in sentences]}))
    for sentence in sentences:
        print(sentence, file=sys.stderr)
    return 2


if __name__ == "__main__":
    try:
        sys.exit(main())
    except BrokenPipeError:  # the reader of a pipe had seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
