"""Drills near the one wanted, and what each leaves."""

from collections.abc import Iterable

from calc.core.result import Table
from calc.reference.standards.drills import Drill
from calc.stations.shared.thread_sizes import known, length
from calc.stations.threads.tap_drill.tapping import Tapping
from calc.stations.threads.tap_drill.told import THREAD_SHARE


def drills_near(around: Iterable[Drill], tapping: Tapping) -> Table:
    ordered = sorted(around, key=lambda drill: drill.size)
    return Table(
        "Drills near it",
        ("Drill", "Size", "Thread", "Bore"),
        tuple(
            (
                drill.name,
                length(drill.size),
                known("", "", tapping.share_of(drill.size), None, THREAD_SHARE),
                length(tapping.bore_of(drill.size)),
            )
            for drill in ordered
        ),
        tuple("pass" if tapping.within(drill.size) else "fail" for drill in ordered),
    )
