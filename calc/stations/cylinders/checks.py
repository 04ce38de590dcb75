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


def rings_on(view: View) -> Check | None:
    if not view.has("piston", "cylinder"):
        return None
    return Check(
        "Rings on their pistons",
        "A ring upside down pumps oil; gaps in one line let the gas through.",
        as_text(
            "Each on the piston of its own cylinder, mark up, free in its groove. Gaps a third of a turn"
            " apart, none over an end of the pin; the oil ring's up, where the cylinder lies."
        ),
        "eyes, a ring expander",
        home="Eyes and a finger: roll each ring round its groove, then turn the gaps. Spread a ring no more"
        " than it needs: it breaks, and its ends cut.",
    )


def pistons_round(view: View) -> Check | None:
    if not view.has("piston") or not view.any("rod", "cylinder"):
        return None
    return Check(
        "Pistons the right way round, clips in",
        "A clip that jumps out wrecks its cylinder; a piston turned round knocks.",
        as_text(
            "Arrow or mark as the maker says, piston and rod by their numbers. Two new clips for each pin,"
            " bedded in their grooves all round, each with its opening towards the crown or the open end of"
            " the skirt, never to a side."
        ),
        "eyes, pliers, goggles",
        home="Goggles, and a rag in the case's mouth. Turn each clip with a small screwdriver: it goes round"
        " in its groove, and does not come out.",
    )


def tubes_sealed(view: View) -> Check | None:
    if not view.has("head", "cylinder") or not view.any("lifter", "crankcase"):
        return None
    return Check(
        "Pushrod tubes and their seals",
        "They lose the oil, and cannot be exchanged with the head on.",
        as_text(
            "No crack, no rust hole, all equally long, seams up. New seals at both ends, square in their"
            " seats, before the head is drawn down."
        ),
        "eyes, a calliper",
        home="A lamp inside the tube, and a calliper along it: folds that were pressed flat are drawn out by"
        " hand, to the length that the maker says.",
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
