"""Which parts a job is about, and which of their sizes have not been read."""

import re
from dataclasses import dataclass

from calc.job.checking import sheet_of
from calc.job.record import current
from calc.reference.engine import Engine


@dataclass(frozen=True)
class Part:
    """What people bring: the word for it, what else it is called (a pattern), and the groups of a data sheet
    that come with it."""

    word: str
    called: str
    groups: tuple[str, ...]

    def named_in(self, words: str) -> bool:
        return bool(re.search(rf"\b(?:{self.called})\b", words, re.IGNORECASE))


PARTS = (
    Part("heads", "heads?", ("head", "guide", "chamber", "port")),
    Part("guides", "guides?", ("guide",)),
    Part("valves", "valves?", ("valve",)),
    Part("springs", "springs?", ("spring",)),
    Part("cylinders", "cylinders?|barrels?", ("cylinder",)),
    Part("pistons", "pistons?", ("piston",)),
    Part("rods", "rods?|conrods?", ("rod",)),
    Part("crank", "cranks?|crankshafts?", ("crank",)),
    Part("case", "(?:crank)?cases?", ("crankcase",)),
    Part("studs", "studs?", ("stud",)),
    Part("cam", "cams?|camshafts?", ("cam",)),
    Part("lifters", "lifters?", ("lifter",)),
    Part("rockers", "rockers?", ("rocker",)),
    Part("flywheel", "flywheels?", ("flywheel",)),
)


def parts_of(sheet: Engine) -> tuple[Part, ...]:
    """The parts that an engine's data sheet has sizes of."""
    theirs = {id.partition(".")[0] for id in sheet.features}
    return tuple(part for part in PARTS if part.groups[0] in theirs)


def groups(job: dict) -> set:
    """The groups of the engine's sheet that the job's parts have: named as received, or with a reading."""
    found = {group for part in PARTS if part.named_in(job["received"]) for group in part.groups}
    return found | {feature.partition(".")[0] for feature, _, _ in current(job)}


def counts(feature) -> bool:
    """Is it a size that a tool reads and that has limits? What follows from others is not counted again."""
    return (
        bool(feature.tool)
        and not feature.follows
        and (feature.low, feature.high, feature.wear) != (None, None, None)
    )


def not_checked(job: dict) -> tuple[list, int]:
    """[(feature, places without a reading as finished or at assembly)] of the job's parts, and how many sizes
    they have in all.

    Counted are the sizes that the engine's sheet has limits for and that a tool reads; what follows from them
    is not counted again. Empty, and 0, where the handbook has no sheet of the engine.
    """
    sheet, theirs = sheet_of(job), groups(job)
    if sheet is None:
        return [], 0
    read = {(feature, place) for feature, place, stage in current(job) if stage != "received"}
    missing, every = [], 0
    for feature in sheet.features.values():
        if feature.id.partition(".")[0] not in theirs or not counts(feature):
            continue
        places = feature.places or ("",)
        every += len(places)
        left = tuple(place for place in places if (feature.id, place) not in read)
        if left:
            missing.append((feature, left))
    return missing, every
