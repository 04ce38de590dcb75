"""What is checked between lobe and piston before an engine is closed."""

from calc.core.result import Text, say
from calc.job.view import View, limits_written, written
from calc.stations.shared.checks import Check, asked, size_check

ROOMS, EDGE = ("valve.room_intake", "valve.room_exhaust"), "valve.edge_room"


def rockers(view: View) -> Check | None:
    if not view.any("rocker", "cam", "lifter"):
        return None
    return size_check(
        view,
        "Rockers and pushrods",
        "A worn bush or a bent pushrod takes lift from its valve, and wears its guide on one side.",
        "Each pushrod rolled, blown through and of one length; bush less shaft under each rocker; the mark on"
        " each tip, shut and at full lift.",
        "rocker.clearance",
        "rocker.bush",
        "rocker.shaft",
        "rocker.pushrod_bow",
        "rocker.contact_run",
        home="Roll each pushrod on a pane of glass, thicker ends over its edges: no light flickers under it."
        " Rock each rocker on its oiled shaft: it turns freely and does not click. Felt pen on each tip, two"
        " turns by hand, rocker off: the mark stays on the middle third. Never straighten a bent pushrod:"
        " look for what bent it.",
        shop="A small bore gauge and a micrometer, for the play of each rocker on its shaft.",
    )


def valves_clear(view: View) -> Check | None:
    """For whatever brings valve and piston nearer: a cam, rockers, a cut head, other pistons or shims.

    Both kinds have a limit of their own; the one that was read nearest to it is filled in.
    """
    if not view.any("cam", "rocker", "head", "piston", "cylinder") or any(
        view.feature(id) is None for id in ROOMS
    ):
        return None
    row = view.worst(*ROOMS)
    feature = view.feature(row.feature) if row else None
    entries, calculator = {"how": "clay"}, "valve-to-piston"
    if row is not None and feature is not None:  # worked out already: what it keeps when running decides
        calculator = "reading-verdict"
        entries = limits_written(row.low, row.high, feature.form) | {
            "reading": written(float(row.value), row.U, feature.form)
        }
    ids = (*ROOMS, *([EDGE] if view.feature(EDGE) else []))
    state, said = view.judged(*ids)
    return Check(
        "Valves clear the pistons",
        "A valve that meets its piston bends or breaks off, and ends the engine.",
        _turned_over_clay(view),
        "modelling clay, a calliper",
        calculator,
        entries,
        ("valve", "clay") if row is None else () if row.U else ("doubt",),
        ids,
        state,
        said,
        home="Modelling clay from a toy shop, thicker than the room, the valves' heads oiled; a sharp knife"
        " and the depth rod of a calliper. Stop where it turns hard: never force it over. A hydraulic plunger"
        " gives way and shows more room than there is: borrow solid checking lifters from the shop.",
        **asked(view, *ids),
    )


def _turned_over_clay(view: View) -> Text:
    intake, exhaust = (view.feature(id) for id in ROOMS)
    assert intake is not None and exhaust is not None
    do = (
        "Before the heads go on for good: clay on the crown under both valves, cylinder and head on with"
        " their own shims, nuts down, lash set, two whole turns by hand the way the engine runs. Head off,"
        " the clay cut through where it is thinnest; less what lash and float take."
    )
    if intake.low is None or exhaust.low is None:
        return say(do)
    return say(
        do + " Left when running: intake {intake} at least, exhaust {exhaust}.",
        intake=intake.number("low"),
        exhaust=exhaust.number("low"),
    )
