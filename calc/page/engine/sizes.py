"""Sizes to draw with: a sheet's own, and where it has none the example engine's in proportion."""

from statistics import median

from calc.reference.engine import Engine, demo


class Sizes:
    """Nominal sizes of one engine, SI. One that its sheet lacks is the example engine's, as much larger or
    smaller as the sheet's other sizes of that group are, of one kind with it; where the group has none, as
    all its sizes are. A size of nothing is none, where the example has one."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine
        self._pattern = demo()
        self._times: dict[tuple[str, str], float] = {}

    def __call__(self, id: str) -> float:
        own, like = self.engine.features.get(id), self._pattern.feature(id)
        if own is not None and (own.nominal > 0 or like.nominal <= 0):
            return own.nominal
        return like.nominal * self._ratio(id.split(".")[0], like.form.kind.name)

    def has(self, id: str) -> bool:
        """Does the sheet say this size, or what this part is made of?"""
        return id in self.engine.features or id in self.engine.materials

    def _ratio(self, group: str, kind: str) -> float:
        if (group, kind) not in self._times:
            found = self._ratios(group, kind) or self._ratios("", kind)
            self._times[group, kind] = median(found) if found else 1.0
        return self._times[group, kind]

    def _ratios(self, group: str, kind: str) -> list[float]:
        return [
            f.nominal / like.nominal
            for f in self.engine.features.values()
            if (like := self._pattern.features.get(f.id)) is not None
            and (not group or f.id.split(".")[0] == group)
            and not f.terms
            and f.form.kind.name == like.form.kind.name == kind
            and f.nominal > 0 < like.nominal
        ]
