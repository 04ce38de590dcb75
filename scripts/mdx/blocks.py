"""The blocks: each puts one piece of HTML where it stands.

    /// calculator | seat-fit
        pocket_bore: 37.48 mm
    ///

A new block is one function in `BLOCKS`: it is given its `Use`, and returns HTML, or `Markdown` where
links to other pages are in it. To refuse, it raises a `ValueError` or `KeyError` whose message says
what would be accepted, `OptionError` where it is one option's fault.

The Blocks API takes a block with a misspelt name or option for text and goes on, and reads options
as YAML, which turns `1:30` into 90. So a preprocessor first checks what the API would pass over,
and hands each option on as plain text with its line.
"""

from __future__ import annotations

import json
import re
import xml.etree.ElementTree as etree
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from difflib import get_close_matches

from markdown.preprocessors import Preprocessor
from markdown.treeprocessors import Treeprocessor
from markdown.util import AtomicString
from pymdownx.blocks import BlocksExtension
from pymdownx.blocks.block import Block

from calc.core.result import Refused
from calc.reference import engine
from scripts import pictures, search
from scripts.mdx import lists, zensical
from scripts.mdx.handbook import Handbook
from scripts.mdx.lists import Fold
from scripts.mdx.place import Lines, MarkdownError, outside_fences

START = re.compile(r"^(?P<indent> *)(?P<slashes>/{3,}) *(?P<name>[\w-]+) *(?:\| *(?P<argument>.*?) *)?$")
SLASHES = re.compile(r"^ *///")
END = re.compile(r"^ *(/{3,}) *$")
OPTION = re.compile(r"^ *(?P<key>[^\s:]+) *: *(?P<value>.*?) *$")
LINE = "line of the header"  # no option can be called so: it has spaces

# Python-Markdown's own steps: tabs become spaces at 30, fenced code is taken out at 25.
BEFORE_FENCES = 29
# The table of contents and MkDocs gather a page's anchors at 5.
AFTER_ANCHORS = 4

PLACE = "data-place"


class Markdown(str):
    """Markdown, to be converted where the block stands."""


@dataclass(frozen=True)
class Use:
    """A block as it is used on a page."""

    handbook: Handbook
    argument: str
    options: dict[str, str]
    anchor: str  # free on the page


class OptionError(ValueError):
    """A refusal that is one option's fault."""

    def __init__(self, option: str, problem: str):
        self.option = option
        super().__init__(problem)


def _no_options(use: Use, block: str) -> None:
    for name in use.options:
        raise OptionError(name, f"{name} is not an option of /// {block}, which has none")


def _sheet(use: Use, block: str) -> str:
    """Whose sizes it shows: those of the option `engine`, the only one."""
    for name in use.options:
        if name != "engine":
            raise OptionError(name, f"{name} is not an option of /// {block}; it takes engine")
    return use.options.get("engine", engine.DEMO)


def calculator(use: Use) -> str:
    """The calculator of that id, with its worked example; options pre-set inputs, `engine` takes another
    sheet's sizes."""
    presets = dict(use.options)
    try:
        return use.handbook.page.calculator_html(use.argument, presets, use.anchor, presets.pop("engine", ""))
    except Refused as refused:
        first = refused.errors[0]
        raise OptionError(first.field, first.sentence()) from refused


def station(use: Use) -> Markdown:
    """A station's write-ups and calculators, each linked to where it stands, in the order of the work."""
    _no_options(use, "station")
    return Markdown(lists.station(use.handbook, use.argument))


def stations(use: Use) -> Markdown | list[Fold]:
    """Every station with its calculators; with its write-ups, where these are named."""
    _no_options(use, "stations")
    if use.argument not in ("", "write-ups"):
        raise ValueError(f"{use.argument!r} is nothing that stations have; give write-ups, or nothing")
    return Markdown(lists.write_ups(use.handbook)) if use.argument else lists.calculators(use.handbook)


def limits(use: Use) -> list[Fold]:
    """The limits of an engine's features, by groups of its data sheet; each linked to the calculator that
    judges it."""
    return lists.limits(use.handbook, use.argument.split(), _sheet(use, "limits"))


def bench(use: Use) -> str:
    """The engine on the bench, that of the shop, with each of its sizes to be checked."""
    _no_options(use, "bench")
    return use.handbook.page.bench_page(use.handbook.engines[0], use.handbook.address("limits/drawings.md"))


def views(use: Use) -> str:
    """Drawings of an engine, by the names of its views; all of them where none is named."""
    sheet = _sheet(use, "views")
    at = use.handbook.address("index.md")
    return use.handbook.page.views_html(tuple(use.argument.split()), sheet, at)


def index(use: Use) -> Markdown:
    """Every calculator and write-up, for the bench to be looked through."""
    _no_options(use, "index")
    return Markdown(lists.index(use.handbook))


def checks(use: Use) -> Markdown:
    """The sources of a station's calculators, and the outside numbers that they meet; of all at a glance,
    where none is named."""
    from scripts.mdx import checks as tables  # reads the tests' tables, which only these pages need

    _no_options(use, "checks")
    if use.argument:
        return Markdown(tables.of_station(use.handbook, use.argument))
    return Markdown(tables.at_a_glance(use.handbook))


def table(use: Use) -> str:
    """A table of a standard, of materials or of practice, worked by the same code as the calculators."""
    _no_options(use, "table")
    return use.handbook.page.table_html(use.argument, use.anchor)


def drawing(use: Use) -> str:
    """A picture of the work, for the step that a hand gets wrong."""
    return pictures.picture_html(use.argument, use.anchor, _sheet(use, "drawing"))


def not_here(use: Use) -> Markdown:
    """What is looked for and not here yet, each with the page that is nearest; the search finds it."""
    _no_options(use, "not-here")
    return Markdown(
        "\n\n".join(
            f"### {one.name}: not here yet {{ #{one.id}-title }}\n\n"
            f"Nothing here about {one.called} yet; nearest is"
            f" [{one.tells}]({use.handbook.to(one.page)}).\n\n"
            f"Also looked for as: {', '.join(one.words)}.\n{{ .finds }}"
            for one in search.missing()
        )
    )


def job(use: Use) -> str:
    """A page of jobs: jobs, sheet or received; filled on the device that holds them."""
    _no_options(use, "job")
    return use.handbook.page.job_html(use.argument)


BLOCKS: dict[str, Callable[[Use], str | list[Fold]]] = {
    "calculator": calculator,
    "station": station,
    "stations": stations,
    "limits": limits,
    "bench": bench,
    "views": views,
    "index": index,
    "checks": checks,
    "table": table,
    "drawing": drawing,
    "not-here": not_here,
    "job": job,
}


def register(md, handbook: Handbook, lines: Lines) -> None:
    """Give a Markdown converter the blocks, filled from `handbook`."""
    _Registration(handbook).extendMarkdown(md)
    names = md.parser.blockprocessors["blocks"].blocks  # those of other extensions too, once all are loaded
    md.preprocessors.register(_Check(md, names, lines), "sizebook_blocks", BEFORE_FENCES)
    md.treeprocessors.register(_BarePlaces(md), "sizebook_places", AFTER_ANCHORS)
    md.block_level_elements += ["live-calculator", "job-view", "size-bench"]


class _Registration(BlocksExtension):
    def __init__(self, handbook):
        self.handbook = handbook
        super().__init__()

    def extendMarkdownBlocks(self, md, block_mgr):
        for name, function in BLOCKS.items():
            block = type(
                f"{name.title()}Block", (_Placed,), {"NAME": name, "function": staticmethod(function)}
            )
            block_mgr.register(block, {"handbook": self.handbook})


class _Placed(Block):
    """A block that is replaced by HTML and has no text of its own."""

    ARGUMENT = None

    def _validate(self, parent, argument, **options):
        # In place of the API's own: what is refused here would be left on the page as text.
        self.argument = argument or ""
        self.line = options.pop(LINE)
        self.given = options
        self.options = {"attrs": {}}
        return True

    def on_create(self, parent):
        options = {name: value for name, (value, _) in self.given.items()}
        anchor = self._free_anchor()
        try:
            content = self.function(Use(self.config["handbook"], self.argument, options, anchor))
        except (KeyError, ValueError) as error:
            option = getattr(error, "option", None)
            line = self.given[option][1] if option in self.given else self.line
            raise MarkdownError(line, f"/// {self.NAME}: {error.args[0]}") from error
        if isinstance(content, list):
            return self._folded(parent, content)
        if isinstance(content, Markdown):
            place = etree.SubElement(parent, "div", {"class": self.NAME})
            self._block_mgr.parser.parseChunk(place, content)
            return place
        # The stash puts the HTML in the place of a bare paragraph; its id is for the check of links only.
        place = etree.SubElement(parent, "p", {"id": anchor, PLACE: ""})
        place.text = AtomicString(self.md.htmlStash.store(zensical.links(self.md, content)))
        return place

    def _folded(self, parent, folds: list[Fold]):
        place = etree.SubElement(parent, "div", {"class": "folds"})
        for fold in folds:
            details = etree.SubElement(
                place, "details", {"class": "fold", "id": fold.id, **({"open": "open"} if fold.open else {})}
            )
            summary = etree.SubElement(details, "summary")
            summary.text = f"{fold.title} "
            etree.SubElement(summary, "small").text = fold.beside
            inside = etree.SubElement(details, "div", {"class": self.NAME})
            self._block_mgr.parser.parseChunk(inside, fold.content)
        return place

    def on_markdown(self):
        return "raw"

    def _free_anchor(self) -> str:
        """The argument as an anchor: a second use on the same page gets a number."""
        anchor = self.argument.replace(" ", "-")
        taken = self.tracker[anchor] = self.tracker.get(anchor, 0) + 1
        return anchor if taken == 1 else f"{anchor}-{taken}"


class _BarePlaces(Treeprocessor):
    """Takes off the places' ids once links were checked: the HTML that is put there brings its own."""

    def run(self, root):
        for place in root.iter("p"):
            if PLACE in place.attrib:
                place.attrib.clear()


@dataclass(frozen=True)
class _Header:
    number: int
    indent: str
    slashes: str
    name: str


class _Check(Preprocessor):
    def __init__(self, md, names, lines: Lines):
        super().__init__(md)
        self.names, self.source = names, lines

    def run(self, lines: list[str]) -> list[str]:
        self.source.read(lines)
        return list(self._checked(lines))

    def _checked(self, lines: list[str]) -> Iterator[str]:
        header, options = None, {}
        for number, (line, bare) in enumerate(zip(lines, outside_fences(lines)), 1):
            start = START.match(bare)
            if header is None:
                if not start:
                    if SLASHES.match(bare) and not END.match(bare):
                        raise MarkdownError(
                            number, f"“{line.strip()[:60]}” does not open a block; write /// name | argument"
                        )
                    yield line
                    continue
                self._known(number, start["name"])
                yield line
                if start["name"].lower() in BLOCKS:
                    header, options = _Header(number, start["indent"], start["slashes"], start["name"]), {}
                    yield f"{header.indent}    {json.dumps(LINE)}: {number}"
                continue
            end = END.match(bare)
            if end and end[1] == header.slashes:
                header = None
                yield line
            elif line.strip():
                key, value = self._option(header, options, number, bare)
                options[key] = number
                yield f"{header.indent}    {json.dumps(key)}: {json.dumps([value, number])}"
        if header:
            raise MarkdownError(
                header.number, f"/// {header.name} is not closed; a line {header.slashes} closes it"
            )

    def _known(self, number: int, name: str) -> None:
        if name.lower() in self.names:
            return
        near = get_close_matches(name.lower(), self.names, 2)
        hint = f"did you mean {' or '.join(near)}?" if near else f"there are {', '.join(sorted(self.names))}"
        raise MarkdownError(number, f"there is no block called {name}; {hint}")

    def _option(self, header: _Header, options: dict[str, int], number: int, line: str) -> tuple[str, str]:
        option = OPTION.match(line)
        indented = line.startswith(header.indent + "    ")
        if not option or not indented:
            raise MarkdownError(
                number,
                f"“{line.strip()[:60]}” is not an option of /// {header.name} (line {header.number}); an"
                f" option is a line “name: value”, four spaces in, and a line {header.slashes} closes the"
                " block",
            )
        if option["key"] in options:
            raise MarkdownError(
                number,
                f"{option['key']} is given twice, first on line {options[option['key']]}; give it once",
            )
        return option["key"], option["value"]
