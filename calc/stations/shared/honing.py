"""Hone it, or bore it first: one rule for every bore that is finished with a hone.

A hone follows the hole that it finds, takes a few hundredths of a millimetre a minute, and warms the part.
Past a tenth on the diameter it is quicker, rounder and cooler to bore first; and what the boring tool leaves
needs two hundredths to clean up. Common practice, no source.
"""

from calc.core.advice import at_least, at_most
from calc.core.conformance import past
from calc.core.kinds import LENGTH
from calc.core.reading import in_si
from calc.core.result import Text, say
from calc.core.working import Form, Number, constant, form

MOST, LEAST = "0.100 mm", "0.020 mm"  # on the diameter
WHY = "more is for the boring tool; common practice, no source"
_SIZE = form(LENGTH, 3)


TAKES_MOST = constant("a_max", "Hone takes off at most", _SIZE, in_si(MOST, LENGTH))
LEFT_LEAST = constant("a_min", "Left for the hone, at least", _SIZE, in_si(LEAST, LENGTH))


def bored_first(stock, most: Number = TAKES_MOST) -> bool:
    """Is that more, on the diameter, than a hone takes off?"""
    return past(stock, most)


def plan(target: Number, shape: Form, least: Number = LEFT_LEAST, most: Number = TAKES_MOST) -> Text:
    """Where the boring tool stops, so that the hone finds neither too much nor too little."""
    return say(
        "Bore to between {a} and {b}, then hone to {D}.",
        a=at_least(target - most, shape),
        b=at_most(target - least, shape),
        D=target,
    )
