"""Where in which file something stands, so that a refusal can name it."""

from __future__ import annotations

import re
from contextlib import contextmanager
from contextvars import ContextVar
from pathlib import Path

FENCE = re.compile(r"^[ >]*(`{3,}|~{3,})")

_page: ContextVar[tuple[str, int]] = ContextVar("page", default=("", 0))


class MarkdownError(ValueError):
    """A form in a page that cannot be rendered: says file, line, what is wrong and what is accepted."""

    def __init__(self, line: int | None, problem: str):
        file, above = _page.get()
        self.file, self.line, self.problem = file, line and line + above, problem
        where = ":".join(str(part) for part in (file, self.line) if part)
        if not file and self.line:
            where = f"line {self.line}"
        super().__init__(f"{where}: {problem}" if where else problem)


def enter_page(file: str, lines_above: int = 0) -> None:
    """Name the page that is converted next, and how many of its lines (front matter) the converter does not
    see."""
    _page.set((file, lines_above))


def enter_source(source: Path, root: Path, markdown: str) -> None:
    """Name the page that is converted next by its source under `root`, of which the converter sees
    `markdown`."""
    text = source.read_text(encoding="utf-8-sig")
    start = text.find(markdown)  # the front matter was cut off
    enter_page(source.relative_to(root).as_posix(), text.count("\n", 0, max(start, 0)))


def current_file() -> str:
    """The page in work, empty where nobody named it."""
    return _page.get()[0]


@contextmanager
def page(file: str, lines_above: int = 0):
    token = _page.set((file, lines_above))
    try:
        yield
    finally:
        _page.reset(token)


class Lines:
    """The source of the page in work, as its author wrote it, without what stands in fenced code."""

    def __init__(self):
        self._open: list[str] = []

    def read(self, lines: list[str]) -> None:
        self._open = list(outside_fences(lines))

    def first(self, text: str) -> int | None:
        """Number of the first line that holds the text, counted from 1.

        The first is the right one: the same words fail the same way wherever they stand.
        """
        bare = text.strip()
        return next((n for n, line in enumerate(self._open, 1) if bare in re.sub(r"`[^`]*`", "", line)), None)


def outside_fences(lines: list[str]):
    """The same lines, those of fenced code blanked."""
    fence = ""
    for line in lines:
        mark = FENCE.match(line)
        if fence:
            if mark and mark[1].startswith(fence) and not line.strip(" >" + fence[0]):
                fence = ""
            yield ""
        elif mark:
            fence = mark[1]
            yield ""
        else:
            yield line
