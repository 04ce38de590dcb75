"""What is checked of cylinders and pistons before an engine is closed."""

from calc.core.result import as_text
from calc.job.texts import read_size
from calc.job.view import View, written
from calc.stations.shared.checks import Check, as_rows, asked, sheet_limits, size_check


def ring_gaps(view: View) -> Check | None:
    if not view.has("piston", "cylinder"):
        return None
    return size_check(
        view,
        "Ring gaps",
        "A ring whose ends meet when hot breaks its land.",
        "Each ring in its own cylinder, pushed down square with a piston.",
        "piston.ring_gap",
        home="Feeler gauges: the thickest leaf that goes in between the ring's ends.",
    )


def pistons(view: View) -> Check | None:
    if not view.has("piston", "cylinder"):
        return None
    return size_check(
        view,
        "Piston clearance",
        "Too little seizes when hot.",
        "Across the skirt, against the bore of its own cylinder.",
        "piston.clearance",
        "cylinder.bore",
        "piston.diameter",
        home="Long feeler leaves laid along the skirt, across the pin, in the dry bore: the piston slides"
        " past one as thick as the least clearance, and not past one thicker than the most.",
    )


# sizes that the deck height is made of, and the way of each: 1 opens the gap over the piston, −1 closes it
CHAIN = (
    ("crankcase.seat_height", "1"),
    ("cylinder.length", "1"),
    ("crank.throw", "−1"),
    ("rod.centre_distance", "−1"),
    ("piston.compression_height", "−1"),
)


def deck_height(view: View) -> Check | None:
    deck = view.feature("crankcase.deck_height")
    if deck is None or not view.has("crankcase") or not view.any("rod", "cylinder", "piston"):
        return None
    title, why = "Deck height", "It sets the compression, and keeps piston and head apart."
    do = (
        "Each cylinder with its shims held down, piston at the top: crown below the cylinder's face, the mean"
        " of both ends of the pin. Both under one head alike."
    )
    home = (
        "The depth rod of a calliper over a straight edge laid across the cylinder along the pin, near both"
        " walls; or feeler gauges under the straight edge."
    )
    features, row = tuple(id for id, _ in CHAIN), view.worst(deck.id)
    place = row.place if row else ""
    chain = _chain(view, place)
    if row is None or chain is None:
        return size_check(view, title, why, do, deck.id, *features, home=home)
    state, said = view.judged(deck.id)
    return Check(
        title,
        why,
        as_text(do),
        deck.tool or "a depth gauge",
        "stack-up",
        {"chain": chain} | sheet_limits(deck),
        (),
        (deck.id, *features),
        state,
        said,
        place,
        home,
        **asked(view, deck.id),
    )


def _chain(view: View, place: str) -> str | None:
    """The chain at a cylinder as an entry, each size with its doubt for a tolerance, where all are read."""
    rows = []
    for id, way in CHAIN:
        feature = view.feature(id)
        text = view.text(id, place if feature.places else "") if feature else ""
        if feature is None or not text:
            return None
        entry = read_size(text, feature.form.kind)
        doubt = written(entry.doubt or 0, 0, feature.form)
        rows.append([written(entry.value, 0, feature.form), doubt, doubt, way])
    return as_rows(rows)
