"""Limits of a hole and a shaft by their ISO classes, the play or grip they make, and parts judged by it."""

from calc.core.result import Remark, impossible, note
from calc.declare.calculator import Answer, Limit, answer, calculator
from calc.reference import sources
from calc.stations.measuring.iso_fit.asked import In
from calc.stations.measuring.iso_fit.drawing import zones_drawn
from calc.stations.measuring.iso_fit.limits import INTERFERENCE, Fit, fit_of
from calc.stations.measuring.iso_fit.parts import Part, part_by_part, play
from calc.stations.measuring.iso_fit.told import Out
from calc.stations.measuring.iso_fit.verdict import verdict_on

NEAR = 0.05  # a measured size farther than this share (and 1 mm) from the nominal one belongs to another part


@calculator(
    "iso-fit",
    "Fit by its ISO classes",
    In,
    Out,
    purpose="What sizes may hole and shaft have under this fit, and do mine keep to it?",
    finds=(
        "ISO 286",
        "H7 g6",
        "tolerance class",
        "limits and fits",
        "clearance fit",
        "interference fit",
        "transition fit",
        "tolerance zone",
    ),
    sources=(sources.ISO_286,),
)
def iso_fit(i: In) -> Answer:
    """Limits from the tables of ISO 286-1:2010 and the Δ rule; sizes up to and including 500 mm, at 20 °C.

    A pair out of its limits may still have the clearance that the classes mean: that is told apart from a
    wrong fit.
    """
    fit = fit_of(i)
    _refuse_other_parts(i)
    parts = [
        Part(name, read, limits)
        for name, read, limits in (("Hole", i.hole_read, fit.hole), ("Shaft", i.shaft_read, fit.shaft))
        if read is not None
    ]
    gap = None if i.hole_read is None or i.shaft_read is None else float(i.hole_read) - float(i.shaft_read)
    return answer(
        fit.tightest,
        fit.loosest,
        fit.hole.low,
        fit.hole.high,
        fit.shaft.low,
        fit.shaft.high,
        verdict=verdict_on(fit, parts, gap),
        limits=tuple(
            Limit(f"the {part.name.lower()}", part.read, low=float(part.low), high=float(part.high))
            for part in parts
        ),
        remarks=_remarks_on(i, fit, parts, gap),
        tables=lambda: (part_by_part(parts),) if parts else (),
        figures=lambda: (zones_drawn(fit, i.size, parts),),
    )


def _refuse_other_parts(i: In) -> None:
    """Raises where a measured size is so far from the nominal one that it must be another part's."""
    for field, read in (("hole_read", i.hole_read), ("shaft_read", i.shaft_read)):
        if read is not None and abs(float(read) - float(i.size)) > max(1e-3, NEAR * float(i.size)):
            raise impossible(
                field,
                "is {read}, far from the nominal {size}; measure again, or give the nominal size that it"
                " belongs to",
                read=read,
                size=i.size,
            )


def _remarks_on(i: In, fit: Fit, parts: list[Part], gap: float | None) -> tuple[Remark | None, ...]:
    if not parts:
        return ()
    return (
        note(
            "{hole}/{shaft} at {size} is {kind} fit.",
            hole=i.hole,
            shaft=i.shaft,
            size=i.size,
            kind=("an " if fit.kind == INTERFERENCE else "a ") + fit.kind,
        ),
        note("Your pair has {g}.", g=play(gap)) if gap is not None else None,
        note(
            "Limits hold at 20 °C, for round and straight parts: judge by the largest and by the smallest"
            " reading."
        ),
    )
