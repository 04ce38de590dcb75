"""An input that is one of several named options."""

import re
from dataclasses import dataclass
from difflib import get_close_matches

from calc.core.reading import quoted
from calc.core.result import Refused, refused
from calc.declare.taken import Input, Taken
from calc.reference import engine

# what an engine has two kinds of, by the input's name: {valve} in a feature's id
WHICH = {"valve": ("intake", "exhaust"), "casting": ("crankcase", "head")}


@dataclass(frozen=True)
class Choice(Input):
    """An input that is one of several named options. `options` maps id to words; `exact` where capitals tell
    options apart (a hole H7, a shaft h7).

    What nobody chose: what `must` be chosen is missed; a material of the engine (`feature`) comes from the
    engine's sheet; what is `assumed` keeps its default, and is told with the verdict. Any other is a question
    put to the calculator, whose first answer stands where all see it. `which` tells which of several parts is
    meant (intake or exhaust): it is chosen once for a page.
    """

    label: str
    options: dict[str, str]
    hint: str = ""
    fold: bool = False
    exact: bool = False
    must: bool = False
    assumed: str = ""
    feature: str = ""
    which: bool = False
    when: tuple[str, ...] = ()
    name: str = ""
    default: str = ""
    symbol: str = ""

    def feature_for(self, chosen: dict[str, str]) -> str:
        return for_chosen(self.feature, chosen)

    def default_text(self, system: str) -> str:
        return self.default

    @property
    def default_value(self) -> str:
        return self.default

    def example(self, chosen: dict[str, str]) -> str:
        """What the worked example has for what was chosen: the material of an exhaust valve where it is
        worked for one."""
        found = engine.demo().materials.get(self.feature_for(chosen)) if "{" in self.feature else None
        return found if found in self.options else self.default

    def take(self, texts: dict[str, str], system: str, chosen: dict[str, str]) -> Taken:
        if "" not in texts:
            return Taken(self, texts, self.example(chosen), False)
        ids = self._meant(texts[""].strip())
        if len(ids) != 1:
            raise self._unknown(texts[""].strip())
        return Taken(self, texts, ids[0], True)

    def _meant(self, text: str) -> list[str]:
        """The options that a text can be: by id, or by words where capitals do not count."""
        if text in self.options:
            return [text]
        if self.exact:
            return []
        return [id for id, words in self.options.items() if _plain(text) in (_plain(words), _plain(id))]

    def _unknown(self, text: str) -> Refused:
        what = f"{quoted(text)} is not a choice" if text else "is empty"
        return refused(
            self.name,
            "unknown-choice",
            "{label}: {what}; choose one of {accepted}.",
            label=self.label,
            what=what,
            accepted=self._near(text),
        )

    def _near(self, text: str) -> str:
        """The options; the nearest three where there are too many for a sentence."""
        if len(self.options) <= 12:
            return ", ".join(self.options)
        folded = {_plain(id): id for id in self.options}
        # "M8" is the beginning of M8x1.25
        begun = [
            id for key, id in folded.items() if text and re.match(re.escape(_plain(text)) + r"(?![\d.])", key)
        ]
        close = [folded[key] for key in get_close_matches(_plain(text), folded, 3, 0.3)]
        near = list(dict.fromkeys([*begun, *close]))[:3] or list(self.options)[:3]
        return f"{len(self.options)}, such as {', '.join(near)}"


def for_chosen(feature: str, chosen: dict[str, str]) -> str:
    """A feature's id with what was chosen put in: {valve} is intake where nothing was."""
    return (
        re.sub(r"\{(\w+)\}", lambda found: chosen.get(found[1]) or WHICH[found[1]][0], feature)
        if "{" in feature
        else feature
    )


def _plain(text: str) -> str:
    """An option as it is compared: capitals and × or x alike, as a thread is written one way on paper and
    another on a keyboard."""
    return re.sub(r"(?<=\d)\s*[x×]\s*(?=\d)", "x", text.casefold())
