"""Do the pistons stand square, both of a head alike, and which shims bring them where they belong?"""

from calc.core.conformance import past
from calc.core.result import Judged, Limit, Text, say
from calc.core.working import Number, constant
from calc.stations.cylinders.deck_height.asked import In
from calc.stations.cylinders.deck_height.barrels import Barrel, Head
from calc.stations.shared.forms import COARSE, SIZE


def verdict_on(i: In, heads: list[Head], worst: Barrel, slope: Number) -> Judged:
    return (
        _leans(i, worst, slope)
        or _no_shim(i, heads)
        or _unlike(i, heads)
        or _leans_a_little(i, worst, slope)
        or _shims(i, heads)
    )


def limits_of(i: In, heads: list[Head], worst: Barrel, slope: Number) -> tuple[Limit, ...]:
    lean = f"the slope of piston {worst.name}"
    return (
        *(Limit(f"the deck height of {head.name}", head.room, low=0) for head in heads),
        *((Limit(lean, slope, high=i.most_slope),) if i.most_slope is not None else ()),
        *((Limit(lean, slope, high=i.good_slope, level="attention"),) if i.good_slope is not None else ()),
        *(
            Limit(f"how alike {head.name} are", head.spread, high=i.most_spread, level="attention")
            for head in heads
            if len(head.barrels) > 1
        ),
    )


def _leans(i: In, worst: Barrel, slope: Number) -> Judged | None:
    if i.most_slope is None or not past(slope, i.most_slope):
        return None
    return (
        "fail",
        say("Piston {n} leans: {f}, {w} allowed", n=worst.name, f=slope, w=i.most_slope),
        "Clean the cylinder's foot, its seat and the shims, hold it down evenly, and read again. If it stays,"
        " look at the rod for bend, then at the seat in the case. No shim cures a piston that leans.",
    )


def _leans_a_little(i: In, worst: Barrel, slope: Number) -> Judged | None:
    if i.good_slope is None or not past(slope, i.good_slope):
        return None
    return (
        "attention",
        say("Piston {n} leans: {f}, {w} is good", n=worst.name, f=slope, w=i.good_slope),
        "Hold the cylinder down evenly on a clean seat and read again. If it stays, have the rod looked at"
        " for bend before the head goes on.",
    )


def _no_shim(i: In, heads: list[Head]) -> Judged | None:
    head = next((head for head in heads if not head.serves), None)
    if head is None:
        return None
    bare = [float(barrel.bare) for barrel in head.barrels]
    if max(bare) > float(i.high):
        return (
            "fail",
            say("{n}: {t} of deck without any shim", n=head.name, t=_size(max(bare))),
            say(
                "{high} is the most, and a shim only adds. See whether rods, pistons and cylinders belong to"
                " this engine, and measure their lengths.",
                high=i.high,
            ),
        )
    if past(max(bare) - min(bare), i.most_spread):
        return (
            "fail",
            say("{n} too unlike: {d} apart", n=head.name, d=_size(max(bare) - min(bare))),
            "One head stands on both, so both get the same shims, and none that are sold serve both. Change"
            " rods, pistons or cylinders about until they are alike.",
        )
    return (
        "fail",
        say("{n}: no shims sold fit", n=head.name),
        say(
            "{by} are missing to {wanted}. Measure again; have shims made, or look for the part that is"
            " too long.",
            by=constant("", "", COARSE, float(i.wanted) - sum(bare) / len(bare)),
            wanted=i.wanted,
        ),
    )


def _unlike(i: In, heads: list[Head]) -> Judged | None:
    apart = [head for head in heads if past(head.spread, i.most_spread)]
    if not apart:
        return None
    head = max(apart, key=lambda head: float(head.spread))
    return (
        "attention",
        say("{n} unlike: {d} apart, {w} wanted", n=head.name, d=head.spread, w=i.most_spread),
        say(
            "Both get the same shims all the same, because one head stands on both: {told}. Change pistons or"
            " rods about within the set, the longer ones to the deeper decks, and read again.",
            told=_told(heads),
        ),
    )


def _shims(i: In, heads: list[Head]) -> Judged:
    if all(head.stays for head in heads):
        decks = [deck for head in heads for deck in head.decks]
        return (
            "pass",
            say("Decks right: {a} to {b}", a=min(decks, key=float), b=max(decks, key=float))
            if len(decks) > 1
            else say("Deck right: {a}", a=decks[0]),
            "Leave the shims as they are, each under its own cylinder. Tag cylinder and piston together.",
        )
    return (
        "pass",
        say("Shims: {told}", told=_told(heads)),
        "The same under both cylinders of a head, clean and without burrs. Hold the cylinders down with them"
        " in, and measure again.",
    )


def _told(heads: list[Head]) -> Text:
    """The stack under each head: "0.25 mm under 1 and 2, none under 3 and 4"."""
    parts = [
        say("{s} under " + head.name, s=_stack(head)) if head.thick > 0 else say("none under " + head.name)
        for head in heads
    ]
    return parts[0] if len(parts) == 1 else say("{a}, {b}", a=parts[0], b=parts[1])


def _stack(head: Head) -> Text:
    sizes = [constant("", "", COARSE, size) for size in head.stack]
    return say(
        " + ".join(f"{{s{n}}}" for n in range(len(sizes))), **{f"s{n}": size for n, size in enumerate(sizes)}
    )


def _size(length: float) -> Number:
    return constant("", "", SIZE, length)
