"""What is checked of rods before an engine is closed."""

from calc.core.result import as_text
from calc.job.view import View, written
from calc.stations.shared.checks import CYLINDERS, Check, as_rows, asked, size_check, torque_check


def straight(view: View) -> Check | None:
    bend, twist = view.feature("rod.bend"), view.feature("rod.twist")
    if not view.has("rod") or bend is None or twist is None:
        return None
    limits = {
        name: written(limit, 0, f.form)
        for f, short in ((bend, "bend"), (twist, "twist"))
        for name, limit in ((f"{short}_new", f.high), (f"{short}_worn", f.wear))
        if limit is not None
    }
    read, place = _bend_and_twist(view, bend.places or ("",))
    state, said = view.judged("rod.bend", "rod.twist")
    return Check(
        "Rods straight",
        "A bent rod tips its piston and wears one end of each shell.",
        as_text("On a rod gauge, upright for bend and laid over for twist; without one, ask the shop."),
        bend.tool,
        "rod-align",
        limits | read,
        () if read else ("bend_left", "bend_right", "twist_left", "twist_right", "span"),
        ("rod.bend", "rod.twist"),
        state,
        said,
        place,
        shop="A rod gauge: a bend that wears a bearing out is too small to be seen.",
        **asked(view, "rod.bend", "rod.twist"),
    )


def _bend_and_twist(view: View, places: tuple[str, ...]) -> tuple[dict[str, str], str]:
    """Of the worst rod, as entries over the 100 mm that the sheet tells them for, and which it is."""
    read = tuple(place for place in places if view.text("rod.bend", place) and view.text("rod.twist", place))
    row = view.worst("rod.bend", "rod.twist", places=read)
    if row is None:
        return {}, ""
    entries = {
        "bend_left": "0 mm",
        "bend_right": view.text("rod.bend", row.place),
        "twist_left": "0 mm",
        "twist_right": view.text("rod.twist", row.place),
        "span": "100 mm",
    }
    return entries, row.place


def weights(view: View) -> Check | None:
    big, small = view.feature("rod.big_end_mass"), view.feature("rod.small_end_mass")
    if not view.has("rod") or big is None or small is None:
        return None
    cells = [
        [view.text(f"rod.{name}", place) for name in ("big_end_mass", "small_end_mass", "mass")]
        for place in CYLINDERS
    ]
    if sum(bool(row[0] and row[1]) for row in cells) < 2:
        return None  # weighed by the shop, or not at all: nobody weighs rods at home
    state, said = view.judged("rod.big_end_mass", "rod.small_end_mass", "rod.mass")
    return Check(
        "Rods of one weight",
        "Rods that differ shake the engine.",
        as_text("Compare with the tags; end weights of all four alike."),
        big.tool,
        "rod-weights",
        {"weights": as_rows([row if row[0] and row[1] else [] for row in cells])},
        (),
        ("rod.big_end_mass", "rod.small_end_mass", "rod.mass"),
        state,
        said,
        home="Kitchen scales that show single grams: one end on the scales, the other hung level on a"
        " thread, each twice.",
        **asked(view, "rod.big_end_mass", "rod.small_end_mass"),
    )


def bearings(view: View) -> Check | None:
    if not view.has("rod", "crank"):
        return None
    return size_check(
        view,
        "Rod bearing clearance",
        "Too little seizes, too much hammers.",
        "Rod bolted up with its shells, bore measured; less the journal. Or a gauging strip in each cap.",
        "rod.bearing_clearance",
        "rod.big_end_bore",
        "rod.shell_wall",
        "crank.rod_journal",
        home="Plastic gauging strip from a parts shop: a piece along the dry journal, cap on at full"
        " torque, the rod not turned, cap off. The width that it was pressed to is read on its own"
        " card. It is out by up to a hundredth of a millimetre: nearer to a limit, the shop measures.",
    )


def nuts(view: View) -> Check | None:
    if not view.has("rod", "crank"):
        return None
    return torque_check(
        view,
        "Rod nuts",
        "A bolt that slackens breaks, and the rod goes through the case.",
        "New bolts and nuts, oiled as the maker says, in steps to {torque}. Each rod then falls by its own"
        " weight.",
        "torque.rod_nut",
    )


def side_clearance(view: View) -> Check | None:
    if not view.has("rod", "crank"):
        return None
    return size_check(
        view,
        "Rod side clearance",
        "Too little binds, too much throws oil.",
        "Feelers between rod and cheek.",
        "rod.side_clearance",
        "crank.rod_journal_length",
        "rod.width",
        home="Feeler gauges: the thickest leaf that slides in beside the rod.",
    )
