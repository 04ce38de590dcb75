"""Does the thread that was measured keep to its limits?"""

from calc.core.result import Judged, say
from calc.stations.shared.thread_sizes import length
from calc.stations.threads.thread_limits.asked import BOLT
from calc.stations.threads.thread_limits.readings import Reading
from calc.stations.threads.thread_limits.zone import Sizes


def verdict_on(reads: list[Reading], name: str, part: str, sizes: Sizes) -> Judged:
    out = sorted((r for r in reads if r.out), key=lambda r: (r.can_be_cut, -r.by))
    if not reads:
        return (
            "pass",
            say(name + ": pitch diameter {a} to {b}", a=sizes.pitch_low, b=sizes.pitch_high),
            say(
                ("Outside" if part == BOLT else "Bore")
                + " {a} to {b}. Type what you measured to have it judged.",
                a=sizes.crest_low,
                b=sizes.crest_high,
            ),
        )
    if not out:
        if len(reads) == 2:
            return (
                "pass",
                say("Both diameters within {name}", name=name),
                "Try the go gauge over its whole length, then use it.",
            )
        return (
            "pass",
            say("{words} within {name}: {read}", words=reads[0].words, name=name, read=reads[0].read),
            "The other diameter is not judged yet: type it too.",
        )
    worst = out[0]
    if worst.can_be_cut:
        do = (
            "Clean it and measure again. If it stays, run a die or roll over it; do not force it in."
            if part == BOLT
            else "Clean it and measure again. If it stays, tap or drill it to size."
        )
    elif part == BOLT:
        do = "Do not use it: what is worn or stretched away does not come back. Fit a new one."
    else:
        do = (
            "Do not build on it: it holds less than it should. See how far with the length of engagement, or"
            " fit a wire thread insert."
        )
    return "fail", say("{words} too {way} by {by}", words=worst.words, way=worst.way, by=length(worst.by)), do
