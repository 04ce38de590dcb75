"""What is checked of heads and their valves before an engine is closed."""

from calc.core.result import as_text
from calc.job.view import View
from calc.stations.shared.checks import CYLINDERS, VALVES, Check, as_rows, asked, sheet_limits, torque_check


def valves_tight(view: View) -> Check | None:
    if not view.has("head"):
        return None
    return Check(
        "Valves tight",
        "A leak burns its seat within hours.",
        as_text(
            "Plug in, valves and springs on, chamber level: no drip into the port in two minutes, or a"
            " pressure test."
        ),
        "a little thin solvent, a lamp",
        "leak-test",
        {},
        ("start", "end", "time"),
        home="Paraffin or white spirit from a paint shop: the chamber brimful, a lamp held in the port. A"
        " pressure test is the shop's.",
    )


def valves_free(view: View) -> Check | None:
    if not view.has("guide", "valve"):
        return None
    row = view.worst("guide.clearance_intake", "guide.clearance_exhaust")
    if row is None:
        return None
    kind = row.feature.removeprefix("guide.clearance_")
    state, said = view.judged("guide.clearance_intake", "guide.clearance_exhaust")
    return Check(
        "Valves free in their guides",
        "A stem that binds hot holds its valve open.",
        as_text("Each lifted a little and rocked: all alike."),
        "a small bore gauge and a micrometer",
        "guide-fit",
        {
            "valve": kind,
            "stem": view.text(f"valve.stem_{kind}", row.place),
            "guide_bore": view.text("guide.bore", row.place),
        },
        (),
        ("guide.bore", f"valve.stem_{kind}"),
        state,
        said,
        row.place,
        home="Lift each by a finger's breadth and rock it, intakes and exhausts each among themselves: one"
        " that rocks more than its fellows goes back to the shop.",
        **asked(view, "guide.clearance_intake", "guide.clearance_exhaust"),
    )


def stem_heights(view: View) -> Check | None:
    feature = view.feature("head.stem_height")
    if not view.has("head") or feature is None:
        return None
    texts = [view.text(feature.id, place) for place in VALVES]
    state, said = view.judged(feature.id)
    return Check(
        "Stem heights",
        "They set the springs and the rockers' angle.",
        as_text("From the spring's bed to each tip: as on this sheet, and all alike."),
        feature.tool,
        "stem-height",
        sheet_limits(feature)
        | {"wanted": feature.text}
        | ({"heights": as_rows([[text] for text in texts])} if any(texts) else {}),
        () if any(texts) else ("heights",),
        (feature.id,),
        state,
        said,
        home="The depth rod of a calliper; or a straight edge from tip to tip and feeler gauges under it,"
        " which tells whether they are alike.",
        **asked(view, feature.id),
    )


def chambers_alike(view: View) -> Check | None:
    feature = view.feature("chamber.volume")
    if not view.has("chamber") or feature is None:
        return None
    texts = [view.text(feature.id, place) for place in CYLINDERS]
    if not any(texts):
        return None
    state, said = view.judged(feature.id)
    return Check(
        "Chambers alike",
        "A cylinder with another chamber does not pull like the others.",
        as_text("Heads by their numbers: each cylinder has the chamber of this sheet."),
        feature.tool,
        "chamber-volume",
        sheet_limits(feature) | {"wanted": feature.text, "readings": as_rows([[text] for text in texts])},
        (),
        (feature.id,),
        state,
        said,
        home="A piece of flat clear plastic with a small hole in it, stuck down with grease, and a syringe"
        " from the chemist's: how much thin oil goes in.",
        **asked(view, feature.id),
    )


def nuts(view: View) -> Check | None:
    if not view.has("head"):
        return None
    return torque_check(
        view,
        "Head nuts",
        "Uneven nuts bend the head, and it leaks.",
        "Studs clean, washers on, in steps and crosswise to {torque}.",
        "torque.head_nut",
        clamped="cylinder",
    )
