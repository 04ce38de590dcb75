"""Which parts a job is about, and which of their sizes have not been read."""
import re

from calc.job.record import current, sheet_of

# What people call the parts that they bring, and the groups of a data sheet that come with them.
CALLED = {
    r"heads?": ("head", "guide", "chamber", "port"),
    r"guides?": ("guide",),
    r"valves?": ("valve",),
    r"springs?": ("spring",),
    r"cylinders?|barrels?": ("cylinder",),
    r"pistons?": ("piston",),
    r"rods?|conrods?": ("rod",),
    r"cranks?|crankshafts?": ("crank",),
    r"(?:crank)?cases?": ("crankcase",),
    r"cams?|camshafts?": ("cam",),
    r"lifters?": ("lifter",),
    r"flywheels?": ("flywheel",),
}


def groups(job: dict) -> set:
    """The groups of the engine's sheet that the job's parts have: named as received, or with a reading."""
    words = job["received"].lower()
    found = {group for called, theirs in CALLED.items() if re.search(rf"\b(?:{called})\b", words) for group in theirs}
    return found | {feature.partition(".")[0] for feature, _, _ in current(job)}


def not_checked(job: dict) -> tuple[list, int]:
    """[(feature, places without a reading as finished or at assembly)] of the job's parts, and how many sizes they have in all.

    Counted are the sizes that the engine's sheet has limits for and that a tool reads; what follows from them is not counted
    again. Empty, and 0, where the handbook has no sheet of the engine.
    """
    sheet, theirs = sheet_of(job), groups(job)
    if sheet is None:
        return [], 0
    read = {(feature, place) for feature, place, stage in current(job) if stage != "received"}
    missing, every = [], 0
    for feature in sheet.features.values():
        if feature.follows or feature.id.partition(".")[0] not in theirs or (feature.low, feature.high, feature.wear) == (None, None, None):
            continue
        places = feature.places or ("",)
        every += len(places)
        left = tuple(place for place in places if (feature.id, place) not in read)
        if left:
            missing.append((feature, left))
    return missing, every
