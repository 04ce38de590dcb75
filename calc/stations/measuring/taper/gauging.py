"""A cone read over rollers: how far off its angle is, and how to set it."""

from calc.core.result import Judged, impossible, say
from calc.core.working import Number, constant
from calc.formulas import trigonometry as trig
from calc.formulas.trigonometry import degrees_minutes_seconds
from calc.stations.measuring.taper.asked import MINUTES, In


def refuse_half_a_gauging(i: In) -> None:
    """Raises where readings over rollers are there, and not all that goes with them."""
    low, high = i.read_low, i.read_high
    if low is not None and high is not None:
        if i.blocks is None:
            raise impossible(
                "blocks",
                "is empty, and the taper that was read depends on it; give what the upper rollers stood on",
            )
        if high <= low:
            raise impossible(
                "read_high",
                "is {high}, not more than {low} on the plate; stand the cone on its small end, and give more"
                " than {low}",
                high=high,
                low=low,
            )
    elif low is not None or high is not None:
        field, missing = ("read_low", "the blocks") if high is None else ("read_high", "the plate")
        raise impossible(
            field,
            "is given alone, and one reading has no angle; give the one over rollers on {missing} too",
            missing=missing,
        )


def off_by(i: In, side: Number) -> Number | None:
    """What the side as read stands steeper than wanted; None where it was not read."""
    if i.read_low is None or i.read_high is None or i.blocks is None:
        return None
    read = float(trig.side_angle_over_rollers(i.read_low, i.read_high, i.blocks))
    return constant("", "", MINUTES, read - float(side))


def verdict_on(i: In, side: Number, off: Number) -> Judged:
    made = degrees_minutes_seconds(float(side) + float(off))
    if abs(float(off)) <= float(i.allowed):
        return (
            "pass",
            say("Taper right: side at {a}", a=made),
            say("It is {d} off. Try it with blue for contact before you call it good.", d=off),
        )
    return (
        "fail",
        say(
            "Taper {way} by {d}",
            way="too steep" if float(off) > 0 else "too slow",
            d=constant("", "", MINUTES, abs(float(off))),
        ),
        say(
            "The side stands at {made} and should stand at {a}. Turn the slide by the difference and cut"
            " again.",
            made=made,
            a=degrees_minutes_seconds(side),
        ),
    )


def how_to_make(
    roller: Number, small: Number, side: Number, raised: Number, over_low: Number, over_high: Number
) -> Judged:
    """A cone that was not read yet: how to set it, and what it must read."""
    return (
        "pass",
        say("Set the slide to {a}", a=degrees_minutes_seconds(side)),
        say(
            "Small end {d}. Prove it over rollers of {w}: {low} on the plate, {high} on {H} of blocks.",
            w=roller,
            d=small,
            low=over_low,
            high=over_high,
            H=raised,
        ),
    )
