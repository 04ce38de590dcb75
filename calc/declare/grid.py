"""An input of several rows, each of one or more columns."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from calc.core.reading import read
from calc.core.result import InputError, Refused, Remark, refused
from calc.core.working import Form, Number
from calc.declare.quantity import Quantity
from calc.declare.taken import Input, Taken

Place = tuple[int, int]
"""Row and column of a cell, counted from 0."""
Rows = tuple[tuple[Number, ...], ...]
"""A grid's value. A row that may stay empty is None then, and so is a cell of an optional column."""


@dataclass(frozen=True)
class Column:
    """One column of a grid: what is read there, as for `Quantity`. A cell of an `optional` one may be empty
    in a filled row."""

    label: str
    symbol: str
    form: Form
    hard: tuple[str, ...]
    usual: tuple[str, ...] = ()
    optional: bool = False
    feature: str = ""  # whose places the rows are named after
    stage: str = "received"  # at which a reading is held against the feature's own limits; "": it is not


@dataclass(frozen=True)
class Grid(Input):
    """An input of several rows: eight valves, four chambers, a chain of sizes.

    As text, rows stand on lines of their own or are parted by |, cells by ; or a tab; a column pasted from
    elsewhere fits as it is. A cell may be entered by itself as name.row.column, counted from 1. Rows left
    empty are skipped as long as `least` rows are filled; the value is one tuple of Numbers a row, None for a
    skipped row and for an empty cell of an optional column. A grid with a `feature` asks for the sizes in
    which that part is sold; unread, they come from the engine's sheet.
    """

    label: str
    rows: tuple[str, ...]
    columns: tuple[Column, ...]
    least: int
    tool: str = ""
    feature: str = ""
    hint: str = ""
    fold: bool = False
    when: tuple[str, ...] = ()
    name: str = ""
    default: str = ""
    symbol: str = ""

    @property
    def measured(self) -> bool:
        return bool(self.tool)

    @property
    def optional(self) -> bool:
        """One that may be left quite empty."""
        return self.least == 0

    @property
    def parts(self) -> tuple[str, ...]:
        return tuple(f"{r + 1}.{c + 1}" for r in range(len(self.rows)) for c in range(len(self.columns)))

    def filled(self, texts: dict[str, str]) -> tuple[str, ...]:
        if texts.get("", "").strip():
            return (self.name, *(cell.name for cell in self.cells.values()))
        return super().filled(texts)

    @cached_property
    def cells(self) -> dict[Place, Quantity]:
        """Each cell as a quantity of its own."""
        return {
            (r, c): Quantity(
                f"{self.label}, {row}" + (f", {column.label}" if len(self.columns) > 1 else ""),
                _cell_symbol(column.symbol, row),
                column.form,
                column.hard,
                column.usual,
                self.tool,
                optional=column.optional,
                stage=column.stage,
                name=f"{self.name}.{r + 1}.{c + 1}",
            )
            for r, row in enumerate(self.rows)
            for c, column in enumerate(self.columns)
        }

    @cached_property
    def default_texts(self) -> dict[Place, str]:
        """The example's entry in each filled cell, with its unit where it names one."""
        return {place: text for place, text in self._split(self.default).items() if text}

    @cached_property
    def default_value(self) -> Any:
        """SI values of the worked example."""
        return self._rows(
            {
                place: read(text, self.cells[place].form.kind, self.cells[place].form.metric).value
                for place, text in self.default_texts.items()
            }
        )

    def default_text(self, system: str) -> str:
        return " | ".join(
            "; ".join(
                "" if row is None or row[c] is None else self.cells[r, c].form.bare(row[c], system)
                for c in range(len(self.columns))
            )
            for r, row in enumerate(self.default_value)
        )

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        values, told = self._cells_read(texts, system, chosen)
        for r in range(len(self.rows)):
            if missing := self._missing(values, r):
                leave = ", or leave the whole row empty" if self.least < len(self.rows) else ""
                what = f"a {missing[0].form.kind.name}{leave}"
                words = "{label}: is empty; give {what}."
                raise refused(missing[0].name, "empty", words, label=missing[0].label, what=what)
        filled = self._filled_rows(values)
        if filled < self.least:
            got = (
                "no row is" if not filled else "only one row is" if filled == 1 else f"only {filled} rows are"
            )
            words = "{label}: {got} filled; give at least {least}."
            raise refused(self.name, "too-few", words, label=self.label, got=got, least=self.least)
        return Taken(self, texts, self._rows(values), bool(texts), **told)

    def partly(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        """As it was taken while cells of it are still to be read: what was read among what the example has
        there, and in the note what comes next."""
        values, told = self._cells_read({"": "", **texts}, system, chosen)
        short = [cell.label for r in range(len(self.rows)) for cell in self._missing(values, r)]
        words = short[0] if short else f"{self.label}, {self.least - self._filled_rows(values)} more"
        cells = self.example_cells | values
        # a row that is begun beyond the example's has nothing there that could stand in for the rest of it
        begun = {r for r in range(len(self.rows)) if self._missing(cells, r)}
        whole = {place: x for place, x in cells.items() if place[0] not in begun}
        return Taken(self, texts, self._rows(whole), True, **told | {"notes": (words,)})

    def _missing(self, values: Mapping[Place, Number], r: int) -> list[Quantity]:
        """Cells of a row that must be filled and are not."""
        if not self._started(values, r) and self.least < len(self.rows):
            return []
        return [
            self.cells[r, c]
            for c, column in enumerate(self.columns)
            if (r, c) not in values and not column.optional
        ]

    @property
    def example_cells(self) -> dict[Place, Number]:
        """The example's cells as numbers, by their place."""
        return {
            (r, c): self.cells[r, c].number(x)
            for r, row in enumerate(self.default_value)
            if row
            for c, x in enumerate(row)
            if x is not None
        }

    def example(self, chosen: dict[str, str]) -> Any:
        """The example's rows, as a calculator takes them."""
        return self._rows(self.example_cells)

    def filled_with(self, sizes: Iterable[float]) -> Any:
        """Rows whose first cells are those sizes, SI, from the top."""
        return self._rows({(r, 0): self.cells[r, 0].number(x) for r, x in enumerate(sizes)})

    def _cells_read(
        self, texts: dict[str, str], system: str, chosen: dict[str, str]
    ) -> tuple[dict[Place, Number], dict[str, Any]]:
        """Values of the cells that are filled by their place, and what is told beside them: notes, doubts and
        what may have been meant."""
        by_default = "" not in texts
        entered = dict(self.default_texts) if by_default else self._split(texts[""])
        typed = {self._place(part): text for part, text in texts.items() if part}
        values: dict[Place, Number] = {}
        notes: list[str] = []
        doubts: list[tuple[Place, float]] = []
        meant: list[tuple[Place, str]] = []
        errors: list[InputError] = []
        for place, text in (entered | typed).items():
            if not text.strip():
                continue
            try:
                own_system = "metric" if by_default and place not in typed else system
                taken = self.cells[place].take({"": text}, own_system, chosen)
            except Refused as error:
                errors += error.errors
                continue
            values[place] = taken.value
            notes += taken.notes
            doubts += [(place, u) for _, u in taken.doubts]
            meant += [(place, text) for _, text in taken.meant]
        if errors:
            raise Refused(errors)
        return values, {"notes": tuple(notes), "doubts": tuple(doubts), "meant": tuple(meant)}

    @staticmethod
    def _place(part: str) -> Place:
        row, column = part.split(".")
        return int(row) - 1, int(column) - 1

    def preset(self, presets: dict[str, str]) -> dict[Place, str]:
        """What a page enters by itself, {name or name.row.column: text}, as the text of each cell that it
        speaks of."""
        texts: dict[Place, str] = {}
        if self.name in presets:
            texts = dict.fromkeys(self.cells, "") | self._split(presets[self.name])
        return texts | {
            place: presets[cell.name] for place, cell in self.cells.items() if cell.name in presets
        }

    def _started(self, values: Mapping[Place, Any], r: int) -> bool:
        return any((r, c) in values for c in range(len(self.columns)))

    def _filled_rows(self, values: Mapping[Place, Any]) -> int:
        return sum(self._started(values, r) for r in range(len(self.rows)))

    def _rows(self, values: Mapping[Place, Any]) -> Any:
        return tuple(
            tuple(values.get((r, c)) for c in range(len(self.columns))) if self._started(values, r) else None
            for r in range(len(self.rows))
        )

    def _split(self, text: str) -> dict[Place, str]:
        """Cells of a text. More rows or cells than there are is an error; one row of many fits a grid of one
        column."""
        lines = text.replace("|", "\n").split("\n")
        while lines and not lines[-1].strip():
            lines.pop()
        table = [_filled(line.replace("\t", ";").split(";")) for line in lines]
        if len(self.columns) == 1 and len(table) == 1:
            table = [[cell] for cell in table[0]]
        elif len(self.rows) == 1 and all(len(row) == 1 for row in table):
            table = [[row[0] for row in table]]
        if len(table) > len(self.rows) or any(len(row) > len(self.columns) for row in table):
            raise self._too_many(table)
        return {(r, c): cell.strip() for r, row in enumerate(table) for c, cell in enumerate(row)}

    def _too_many(self, table: list[list[str]]) -> Refused:
        return refused(
            self.name,
            "too-many",
            "{label}: has {rows} rows of up to {cells}; give {wanted} rows of {columns}.",
            label=self.label,
            rows=len(table),
            cells=max(map(len, table)),
            wanted=f"{self.least} to {len(self.rows)}" if self.least < len(self.rows) else len(self.rows),
            columns=len(self.columns),
        )

    def usual_remarks(self, taken: Taken) -> Iterable[Remark]:
        meant = dict(taken.meant)
        for r, row in enumerate(taken.value):
            for c, value in enumerate(row or ()):
                if value is not None:
                    cell = self.cells[r, c]
                    own = Taken(cell, {}, value, True, meant=(((), meant.get((r, c), "")),))
                    yield from cell.usual_remarks(own)


def _filled(cells: list[str]) -> list[str]:
    """Cells of a line without the empty ones at its end, which a pasted block brings along."""
    while len(cells) > 1 and not cells[-1].strip():
        cells = cells[:-1]
    return cells


def _cell_symbol(symbol: str, row: str) -> str:
    """H_2 in row "2" or "main 2", H_2i in row "2 intake"."""
    words = row.split()
    short = words[0] + words[1][0] if len(words) > 1 and words[0].isdigit() else words[-1]
    return f"{symbol}{',' if '_' in symbol else '_'}{short}" if symbol else ""
