"""What the Markdown forms are filled from: the calculators, and the pages that they stand on."""

from __future__ import annotations

import posixpath
import re
from collections.abc import Iterator
from difflib import get_close_matches
from functools import cached_property
from pathlib import Path
from typing import Any

import yaml

from calc.reference import engine
from scripts.mdx import place
from scripts.mdx.write_ups import WriteUp, write_up

PLACED = re.compile(r"^ *///+ *calculator *\| *([\w-]+) *$")


class Handbook:
    """`page` renders (`calc.page`), `stations` lists (`calc.stations.index`), `docs` is the folder of the
    pages."""

    def __init__(self, page, stations, docs: Path):
        self.page, self.stations, self.docs = page, stations, docs

    @cached_property
    def _settings(self) -> dict[str, Any]:
        """mkdocs.yml, which stands beside the folder of the pages: both makers of the site read it."""
        file = self.docs.parent / "mkdocs.yml"
        return yaml.safe_load(file.read_text(encoding="utf-8")) if file.exists() else {}

    @property
    def engines(self) -> list[str]:
        """The engines of the handbook, the shop's own first."""
        return self._settings.get("extra", {}).get("engines", [])

    def write_ups(self, folder: str = "") -> list[WriteUp]:
        """The pages of a station that tell a piece of work, of all stations where none is named, in the order
        of the navigation."""
        pages = [page for page in _pages(self._settings.get("nav", [])) if not page.endswith("index.md")]
        stations = (folder,) if folder else self.stations.STATIONS
        return [write_up(self.docs, page) for page in pages if posixpath.dirname(page) in stations]

    def to(self, page: str, anchor: str = "") -> str:
        """A page of the handbook, as a link for the Markdown of the page in work."""
        here = posixpath.dirname(place.current_file())
        docs = self.docs.name if here else ""
        return posixpath.relpath(posixpath.join(docs, page), here or ".") + (f"#{anchor}" if anchor else "")

    def address(self, page: str) -> str:
        """A page of the handbook as its address from the page in work, for what is HTML already."""
        here = place.current_file().removeprefix(f"{self.docs.name}/") or "index.md"
        return f"{posixpath.relpath(_folder(page), _folder(here))}/"

    def calculators(self, station: str) -> list[tuple[str, str, str, tuple[str, ...]]]:
        """Id, title, purpose and search words of a station's calculators, in the order of the work."""
        if station not in self.stations.STATIONS:
            near = get_close_matches(station, self.stations.STATIONS, 1)
            hint = f"did you mean {near[0]}?" if near else f"there are {', '.join(self.stations.STATIONS)}"
            raise KeyError(f"there is no station {station!r}; {hint}")
        found = [self.stations.find(id) for id in self.stations.station(station).CALCULATORS]
        return [(c.id, c.title, c.purpose, c.finds) for c in found]

    def limits(self, groups: list[str], sheet: str) -> list[tuple]:
        """Of each feature in those groups of an engine's sheet: itself, a link to what judges it or "", its
        limits as made and worn as HTML."""
        found = engine.engine(sheet)
        for group in groups:
            if not any(id.startswith(f"{group}.") for id in found.features):
                known = sorted({id.partition(".")[0] for id in found.features})
                raise KeyError(f"{sheet} has no group {group!r}; it has {', '.join(known)}")

        def part(feature, what):
            return self.page.size_html(feature.id, what, sheet)

        return [
            (
                f,
                self._judge(f),
                part(f, "limits") if f.low is not None or f.high is not None else part(f, "nominal"),
                "" if f.wear is None else part(f, "wear"),
            )
            for f in found.features.values()
            if f.id.partition(".")[0] in groups
        ]

    def _judge(self, feature) -> str:
        """Link to the calculator that takes a feature, or one that it follows from; empty where none does."""
        for id in (feature.id, *re.findall(r"[a-z_]+\.[a-z0-9_]+", feature.follows)):
            if id in self._takers:
                return self.link(self._takers[id])
        return ""

    @cached_property
    def _takers(self) -> dict[str, str]:
        """Feature → the first placed calculator with an input that measures it."""
        taken: dict[str, str] = {}
        for calculator in self.stations.every():
            if calculator.id in self._placed:
                for declared in calculator.inputs:
                    if declared.feature:
                        taken.setdefault(declared.feature, calculator.id)
        return taken

    def placed(self, id: str) -> bool:
        """Does a calculator stand on a page?"""
        return id in self._placed

    def link(self, id: str) -> str:
        """Where a calculator stands, as a link for the Markdown of the page in work."""
        if id not in self._placed:
            raise KeyError(f"{id} stands on no page; put a block /// calculator | {id} on one")
        return self.to(self._placed[id], id)

    @cached_property
    def _placed(self) -> dict[str, str]:
        """Id of each calculator → the page that it stands on, the first where there are several."""
        found: dict[str, str] = {}
        for path in sorted(self.docs.rglob("*.md")):
            for line in place.outside_fences(path.read_text(encoding="utf-8").splitlines()):
                if placed := PLACED.match(line):
                    found.setdefault(placed[1], path.relative_to(self.docs).as_posix())
        return found


def _pages(nav) -> Iterator[str]:
    """The pages of a navigation, however deep they stand in it."""
    for entry in nav if isinstance(nav, list) else nav.values():
        if isinstance(entry, str):
            yield entry
        else:
            yield from _pages(entry)


def _folder(page: str) -> str:
    """The folder that a page becomes on the site: heads/index.md is heads, heads/seats.md heads/seats."""
    return re.sub(r"(^|/)index\.md$|\.md$", "", page) or "."
