"""What the calculators of threads share: the sizes and classes to choose from, and a thread's basic sizes as
lines of the working."""

from typing import Any

from calc.core.result import Source, impossible
from calc.core.working import Form, Number, Value, constant
from calc.declare.calculator import choice
from calc.reference import sources
from calc.reference.standards.threads import THREADS, Limits, NotOffered, Thread, Zone, external, internal
from calc.stations.shared.forms import SIZE

NOTHING = 1e-10  # m: what is left of a sum of floats is neither over nor under a limit
SIZES = {name: thread.words for name, thread in THREADS.items()}
FITS = {
    "usual": "Usual: 6H/6g, or 2B/2A",
    "close": "Close: 5H/4h, or 3B/3A",
    "loose": "Loose: 7H/8g, or 1B/1A",
    "bare": "No allowance: 6H/6h, or 2B/3A",
    "coated": "For thick plating: 6H/6e, metric only",
}
CLASSES = {  # hole and bolt
    "usual": {"metric": ("6H", "6g"), "unified": ("2B", "2A")},
    "close": {"metric": ("5H", "4h"), "unified": ("3B", "3A")},
    "loose": {"metric": ("7H", "8g"), "unified": ("1B", "1A")},
    "bare": {"metric": ("6H", "6h"), "unified": ("2B", "3A")},
    "coated": {"metric": ("6H", "6e")},
}


def thread_of(example: str) -> Any:
    """Input: the thread."""
    return choice("Thread", SIZES, must=True, example=example)


def fit_of_pair() -> Any:
    """Input: the class of hole and bolt, for `pair`."""
    return choice("Class", FITS, fold=True, assumed=("usual", "what is sold unless another is asked for"))


def pair(size: str, fit: str) -> tuple[Thread, Limits, Limits]:
    """The thread, the hole's limits and the bolt's in a class; refuses classes that the standard does not
    have for it."""
    thread = THREADS[size]
    if thread.system not in CLASSES[fit]:
        raise impossible(
            "fit",
            "6e is a metric class, and {thread} is none; choose usual, close or loose",
            thread=thread.words,
        )
    hole, bolt = CLASSES[fit][thread.system]
    try:
        return thread, internal(thread, hole), external(thread, bolt)
    except NotOffered:
        raise impossible(
            "fit",
            "{hole}/{bolt} is not defined for so small a thread as {thread}; choose usual or close",
            hole=hole,
            bolt=bolt,
            thread=thread.words,
        ) from None


def standard(thread: Thread) -> Source:
    """Where its sizes come from."""
    return sources.ISO_965 if thread.system == "metric" else sources.ASME_B1_1


def pitch(thread: Thread) -> Number:
    """Its pitch, named in the working."""
    return known("P", "Pitch", thread.P, standard(thread), SIZE)


def nominal(thread: Thread) -> Number:
    """Its nominal diameter, named in the working."""
    return known("d", "Nominal diameter", thread.d, standard(thread))


def basic(thread: Thread) -> tuple[Number, Number, Number]:
    """Its pitch, nominal diameter and basic pitch diameter, named in the working."""
    return (
        pitch(thread),
        nominal(thread),
        known("d_2", "Basic pitch diameter", thread.pitch_diameter, standard(thread)),
    )


def known(symbol: str, label: str, value: float, source: Source | None, shape: Form = SIZE) -> Number:
    """A size out of a standard, SI."""
    return constant(symbol, label, shape, value, source)


def least_and_most(zone: Zone) -> tuple[float, float]:
    """Both limits of a diameter, m, where the standard sets both: not of a bolt's root nor of a hole's."""
    low, high = zone.low, zone.high
    assert low is not None and high is not None
    return low, high


def tolerance_of(zone: Zone) -> float:
    """What lies between them, m."""
    assert zone.tolerance is not None
    return zone.tolerance


def length(value: Value, shape: Form = SIZE) -> Number:
    """A length, m, in a sentence or a table."""
    return constant("", "", shape, float(value))
