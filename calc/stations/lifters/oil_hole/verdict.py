"""Is the lifter filled in the time that there is?"""

from calc.core.result import Judged, say
from calc.stations.lifters.oil_hole.asked import In
from calc.stations.lifters.oil_hole.drills import Drills
from calc.stations.lifters.oil_hole.feed import Feed


def verdict_on(i: In, feed: Feed, drills: Drills) -> Judged:
    if feed.share > 1:
        return (
            "fail",
            say(
                "Starves: needs {t}, has {w}",
                t=feed.fill.held_to(None, float(feed.window)),
                w=feed.window.held_to(float(feed.fill), None),
            ),
            say("It goes down a little more each turn, and collapses. {other}", other=drills.advice()),
        )
    if feed.share > i.most_share:
        return (
            "attention",
            say("Barely fills: {s} of the time used", s=feed.share),
            say("A worn plunger would starve it. {other}", other=drills.advice()),
        )
    if feed.running > i.most_running:
        return (
            "attention",
            say("Slow to fill: {t} of running", t=feed.running),
            say("It stays noisy that long after it has run empty. {other}", other=drills.advice()),
        )
    if i.hole >= i.groove:
        return (
            "attention",
            say("Hole {d} as wide as its groove", d=i.hole),
            say(
                "Its edges weaken the body and drain the groove as it passes the bore's end. {other}",
                other=drills.advice(),
            ),
        )
    return (
        "pass",
        say("Fills in {t} of {w}", t=feed.fill, w=feed.window),
        "Drill it, take off the burr inside as well, and see that it stays in the case at full lift.",
    )
