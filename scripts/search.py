"""Words that readers look for and the pages do not use, and what is not here yet: `search.toml`."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path

NOT_HERE = "not-here-"  # begins the id of what is missing
FILE = Path(__file__).with_suffix(".toml")


@dataclass(frozen=True)
class Missing:
    """`name`: as a heading. `words`: what it is looked for by. `page`: the file of the nearest page, which
    `tells` something of it."""

    name: str
    words: tuple[str, ...]
    page: str
    tells: str

    @property
    def id(self) -> str:
        return NOT_HERE + re.sub(r"[^a-z]+", "-", self.name.lower())

    @property
    def called(self) -> str:
        """The name within a sentence."""
        return self.name[:1].lower() + self.name[1:]


@cache
def _told() -> dict:
    return tomllib.loads(FILE.read_text(encoding="utf-8"))


def missing() -> tuple[Missing, ...]:
    """What no station has yet."""
    return tuple(Missing(one["name"], tuple(one["words"]), *one["nearest"]) for one in _told()["missing"])


def found() -> dict[str, list[str]]:
    """Id of a calculator or of what is missing, or address of a page → words that it is looked for by."""
    return _told()["found"] | {one.id: [one.name, *one.words] for one in missing()}


def short() -> dict[str, str]:
    """What is written short → what is meant."""
    return _told()["short"]
