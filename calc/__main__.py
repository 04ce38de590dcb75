"""The command: python -m calc list | show ID | run ID name=value ... | sheet JOB

Exit status: 0 done, 2 something asked for that cannot be used (one sentence on standard error for each
thing).
"""

import argparse
import io
import json
import os
import sys

from calc import __version__
from calc.core.reading import quoted
from calc.core.result import InputError, Refused, as_text, say
from calc.declare.calculator import evaluate
from calc.declare.declaration import AtOdds
from calc.declare.standing import Standing
from calc.page import link
from calc.page.link import Link
from calc.page.report import declaration_data, declaration_text, result_data, result_text
from calc.stations.index import every, find


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m calc", description="Sizes of re-machined engine parts, checked."
    )
    parser.add_argument("--version", action="version", version=f"Sizebook {__version__}")
    commands = parser.add_subparsers(dest="command", required=True)
    listed = commands.add_parser("list", help="every calculator")
    shown = commands.add_parser("show", help="a calculator's inputs and outputs")
    run = commands.add_parser(
        "run", help="evaluate a calculator: run seat-fit pocket_bore=37.48 'ring_outside=1 31/64 in'"
    )
    sheet = commands.add_parser("sheet", help="a job's size sheet, as one HTML file to print")
    for sub in (listed, shown, run):
        sub.add_argument("--json", action="store_true", help="as JSON; the schema is in calc/COMMAND.md")
    for sub in (shown, run):
        sub.add_argument("id", metavar="ID")
    run.add_argument(
        "entries",
        nargs="*",
        metavar="name=value",
        help="a value with its unit, or a bare number in the input's own unit",
    )
    run.add_argument(
        "--units",
        choices=("metric", "inch"),
        help="system of bare numbers and of what is printed; metric, where nothing is said",
    )
    run.add_argument(
        "--engine",
        metavar="NAME",
        help="the engine whose sheet gives limits and what nobody read, such as TS-16",
    )
    run.add_argument("--place", metavar="WHICH", default="", help='the part in hand: exhaust, or "2 exhaust"')
    run.add_argument(
        "--example", action="store_true", help="take what is not entered from the worked example"
    )
    run.add_argument(
        "--link", metavar="LINK", help="take entries, units, engine and part from the link of a result"
    )
    run.add_argument("--share", action="store_true", help="also give the link of this result")
    run.add_argument(
        "--site", metavar="URL", help="address of the handbook in that link, where it is not site_url"
    )
    sheet.add_argument("job", metavar="JOB", help="the file of a job, as the handbook exports it")
    sheet.add_argument(
        "--link-base",
        metavar="URL",
        help=(
            "address of the handbook, where it is not that of mkdocs.yml (site_url): the sheet gets a code"
            " that opens these sizes there"
        ),
    )
    sheet.add_argument("--paper", choices=("A4", "Letter"), default="A4")
    sheet.add_argument("--units", choices=("metric", "inch"), default="metric")
    sheet.add_argument("-o", dest="out", metavar="FILE", help="write it there, not to standard output")
    return parser


def main(arguments: list[str] | None = None) -> int:
    parser = _parser()
    asked, rest = parser.parse_known_args(arguments)
    if asked.command == "run" and not any(word.startswith("-") for word in rest):
        asked.entries += rest  # those behind an option, which argparse leaves over
    elif rest:
        parser.error(f"{rest[0]} is not understood")
    try:
        print(_answer(asked)) if asked.command != "sheet" else _sheet(asked)
    except Refused as refused:
        return _refuse(refused.errors, asked)
    except AtOdds as fault:  # no verdict is better than a wrong one
        return _refuse([InputError("", "fault", as_text(str(fault)))], asked)
    return 0


def _sheet(asked) -> None:
    """Write a job's size sheet."""
    from calc.job import codes
    from calc.job.contents import MOST_BYTES, JobError
    from calc.job.files import load
    from calc.page.job import sheet

    try:
        if asked.out is not None and _is_same(asked.job, asked.out):
            raise JobError(
                f"{quoted(asked.out)} is the job itself, and the sheet would take its place; give another"
                " file behind -o."
            )
        with open(asked.job, "rb") as file:
            job = load(file.read(MOST_BYTES + 1))
        address = asked.link_base or _own_address(codes)
        links = codes.links(job, address) if address else None
        here = codes.here(address) if address and not codes.reachable(address) else ""
        links = None if here else links
        page = sheet.page(job, links, codes.draw, system=asked.units, paper=asked.paper, here=here)
        if here:
            print(
                f"The sheet carries no code: {here} opens on no other device; give the shop's own address"
                " behind --link-base, or once as site_url in mkdocs.yml.",
                file=sys.stderr,
            )
        if links and codes.draw(links[0]) is None:
            print(
                "The sheet carries no code: segno, which draws it, is not installed; send the job's file"
                " along.",
                file=sys.stderr,
            )
        if asked.out is None:
            print(page, end="")
        else:
            _write(asked.out, page)
    except JobError as error:
        raise _refused("", "job", "{why}", why=str(error)) from None
    except OSError as error:
        raise _refused(
            "",
            "file",
            "{file}: {why}; give a file that can be {used}.",
            file=quoted(error.filename or asked.out or asked.job),
            why=(error.strerror or "it cannot be used").lower(),
            used="written" if error.filename == asked.out else "read",
        ) from None


def _is_same(one: str, other: str) -> bool:
    try:
        return os.path.samefile(one, other)
    except OSError:  # one of them is not there
        return os.path.abspath(one) == os.path.abspath(other)


def _own_address(codes) -> str:
    """The shop's own address of the handbook, from the settings of the site beside this package; "" where
    there are none."""
    try:
        with open(
            os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "mkdocs.yml"),
            encoding="utf-8",
        ) as file:
            return codes.address_in(file.read())
    except OSError:
        return ""


def _write(path: str, text: str) -> None:
    """Beside its place, and moved there once it is whole: what stood there before is never half gone."""
    if os.path.exists(path) and not os.path.isfile(path):  # a device or a pipe: nothing stands there
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return
    place = os.path.realpath(path)
    unfinished = f"{place}.{os.getpid()}.part"
    try:
        with open(unfinished, "x", encoding="utf-8") as file:
            file.write(text)
        os.replace(unfinished, place)
    except OSError as error:
        error.filename = path
        raise
    finally:
        if os.path.exists(unfinished):
            os.remove(unfinished)


def _answer(asked) -> str:
    if asked.command == "list":
        rows = every()
        if asked.json:
            return _json(
                [
                    {
                        "calculator": c.id,
                        "title": c.title,
                        "station": c.station,
                        "purpose": c.purpose,
                        "finds": list(c.finds),
                    }
                    for c in rows
                ]
            )
        return "\n".join(f"{c.id:<20} {c.station:<10} {c.title}" for c in rows)
    try:
        calculator = find(asked.id)
    except KeyError as error:
        raise _refused("", "unknown-calculator", "{why}", why=error.args[0]) from None
    if asked.command == "show":
        return _json(declaration_data(calculator)) if asked.json else declaration_text(calculator)
    taken = _linked(asked, calculator) if asked.link is not None else _typed(asked, calculator)
    asked.units = taken.system  # what is wrong with an entry is told in it too
    standing = Standing(_sheet_named(taken.engine), taken.which)
    found = evaluate(calculator, taken.entries, taken.system, None if asked.example else standing)
    if missed := [t.input for t in found.taken if t.origin.kind == "missed"]:
        raise Refused(
            [
                InputError(
                    i.name,
                    "no-limit" if getattr(i, "limit", "") else "unread",
                    say(_missing(i, taken.engine), label=i.label, name=i.name, engine=taken.engine),
                )
                for i in missed
            ]
        )
    address = _shared(asked, taken) if asked.share else ""
    if asked.json:
        told = result_data(found, taken.system)
        return _json(told | {"link": address} if address else told)
    return result_text(found, taken.system) + (f"\n\nLink\n  {address}" if address else "")


def _typed(asked, calculator) -> Link:
    """What stands in the command itself."""
    system = asked.units or "metric"
    entries: dict[str, str] = {}
    for pair in asked.entries:
        name, equals, value = pair.partition("=")
        if not equals:
            raise _refused(
                "",
                "not-an-entry",
                "{pair} is not an entry; give name=value, such as {name}={default}.",
                pair=quoted(pair),
                name=calculator.inputs[0].name,
                default=calculator.inputs[0].default_text(system),
            )
        if name in entries:
            raise _refused(name, "given-twice", "{name} is given twice; give it once.", name=quoted(name))
        entries[name] = value
    sheet = None if asked.example else _sheet_named(asked.engine)
    return Link(calculator, entries, system, sheet.name if sheet else "", asked.place)


def _linked(asked, calculator) -> Link:
    """What came with a link, which says all of it."""
    options = {
        "--engine": asked.engine,
        "--place": asked.place,
        "--units": asked.units,
        "--example": asked.example,
    }
    beside = [*asked.entries, *(name for name, given in options.items() if given)]
    if beside:
        raise _refused(
            "",
            "beside-link",
            "{beside} is given beside a link, which says all that is entered; leave one of them out.",
            beside=quoted(beside[0]),
        )
    try:
        found = link.read(asked.link)
    except link.LinkError as error:
        raise _refused("", "link", "{why}", why=str(error)) from None
    if found.calculator is not calculator:
        raise _refused(
            "",
            "other-calculator",
            "This link is of {other}, not of {id}; give run {other}.",
            other=found.calculator.id,
            id=calculator.id,
        )
    return found


def _shared(asked, taken: Link) -> str:
    """The address of a result: on the handbook's own site, or as it stands within one."""
    from calc.job import codes

    if asked.example and taken.entries:
        raise _refused(
            "", "example", "A link holds what was read; give --share without --example, or without entries."
        )
    try:
        return link.address(taken, asked.site or _own_address(codes))
    except link.LinkError as error:
        raise _refused("", "link", "{why}", why=str(error)) from None


def _missing(declared, engine: str | None) -> str:
    """What is said of an input that nobody entered and no sheet knows."""
    if not getattr(declared, "limit", ""):
        return "{label}: is still to be read; give {name}=…, or --example for the worked example."
    return (
        "{label}: {engine}’s sheet does not say it; give {name}=…."
        if engine
        else "{label}: no engine says it; give {name}=…, or the engine with --engine."
    )


def _sheet_named(name: str | None):
    from calc.reference.engine import SheetError, engine

    try:
        return engine(name) if name else None
    except (KeyError, SheetError) as error:
        raise _refused(
            "",
            "unknown-engine",
            "{why}; give the name of a sheet in calc/reference/engines, such as TS-16.",
            why=str(error.args[0]).rstrip("."),
        ) from None


def _json(data) -> str:
    return json.dumps(data, ensure_ascii=False, indent=2, allow_nan=False)


def _refused(field, code, template, **values) -> Refused:
    return Refused([InputError(field, code, say(template, **values))])


def _refuse(errors, asked) -> int:
    told = [
        {
            "field": e.field or None,
            "code": e.code,
            "message": e.sentence(getattr(asked, "units", None) or "metric"),
        }
        for e in errors
    ]
    if getattr(asked, "json", False):
        print(_json({"errors": told}))
    for error in told:
        print(error["message"], file=sys.stderr)
    return 2


if __name__ == "__main__":
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(encoding="utf-8")  # for −, µ and ° wherever it is written to
    try:
        sys.exit(main())
    except BrokenPipeError:  # the reader of a pipe had seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
