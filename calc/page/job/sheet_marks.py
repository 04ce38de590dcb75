"""What tells things apart on the size sheet: stages, marks beside a size, shapes of the verdicts."""

from calc.job.record import current
from calc.page.html import Html

SYSTEMS = ("metric", "inch")
CORRECTED, WARM, WORN = "†", "*", "‡"

Where = tuple[str, str, str]
"""Feature, place and stage of a reading."""


STAGES = {"received": "As received", "finished": "As finished", "assembly": "At assembly"}


# Told by shape as well, for a printer with one ink: a tick in a ring, a cross in a square, a question in a
# diamond, a dash in a triangle.
_SHAPES = {
    "pass": '<circle cx="8" cy="8" r="7"/><path d="M4.5 8.2 7 10.8 11.6 5.2"/>',
    "fail": '<path class="full" d="M1 1h14v14H1z"/><path class="gap" d="M4 4l8 8M12 4l-8 8"/>',
    "unsure": (
        '<path d="M8 .8 15.2 8 8 15.2.8 8z"/><path d="M6 6.6C6 4 10 4 10 6.6 10 8.2 8 8 8 9.8M8 11.2v1"/>'
    ),
    "attention": '<path class="full" d="M8 1 15.5 15H.5z"/><path class="gap" d="M8 5.5v5M8 11.8v1.4"/>',
}


def shape(state: str) -> Html:
    return Html(f'<svg class="shape" viewBox="0 0 16 16" aria-hidden="true">{_SHAPES[state]}</svg>')


def where(reading: dict) -> Where:
    return reading["feature"], reading["place"], reading["stage"]


def corrected(job: dict) -> dict[Where, list[dict]]:
    """All that was read at a place and stage, where it was read more than once, in the order of the sheet;
    what was taken back comes last."""
    told: dict[Where, list[dict]] = {}
    for reading in job["readings"]:
        told.setdefault(where(reading), []).append(reading)
    return {key: told[key] for key in {**current(job), **told} if len(told[key]) > 1}


def is_warm(reading: dict) -> bool:
    """Was it read warm, and brought to 20 °C?"""
    return bool({"part", "gauge"} & set(reading))


def day(at: str) -> str:
    return at[:10]
