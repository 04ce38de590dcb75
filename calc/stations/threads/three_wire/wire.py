"""The wires that a thread can be read over."""

from calc.core.result import impossible
from calc.core.working import Number
from calc.formulas.screw_threads import best_wire
from calc.reference.standards.threads import Thread
from calc.stations.shared.forms import FINE
from calc.stations.shared.thread_sizes import length

# Of the pitch: thinner wires sink below the crests, thicker ones touch past the flanks (ASME B1.2).
THINNEST, THICKEST = 0.505, 1.01


def refuse_other_wire(wire: Number, thread: Thread) -> None:
    for wrong, words in (
        (float(wire) < THINNEST * thread.P, "too thin to stand out of"),
        (float(wire) > THICKEST * thread.P, "too thick for the flanks of"),
    ):
        if wrong:
            raise impossible(
                "wire",
                "is {w}, " + words + " {thread}; give {low} to {high}, best {best}",
                w=wire,
                thread=thread.words,
                low=length(THINNEST * thread.P, FINE),
                high=length(THICKEST * thread.P, FINE),
                best=length(best_wire(thread.P), FINE),
            )
