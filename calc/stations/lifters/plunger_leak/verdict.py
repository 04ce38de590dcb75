"""Does the plunger go down in the time accepted?"""

from calc.core.advice import at_least, at_most
from calc.core.result import Judged, say
from calc.stations.lifters.plunger_leak.asked import TEST_FLUIDS, In
from calc.stations.lifters.plunger_leak.leak import Leak
from calc.stations.shared.forms import FINE


def verdict_on(i: In, leak: Leak) -> Judged:
    if i.oil not in TEST_FLUIDS:
        # no maker's band is for it: neither a good time nor a bad one says anything of this plunger
        return (
            "attention",
            say("No test fluid: these {t} compare with nothing", t=leak.time),
            "The times accepted are told for the tester's own thin fluid. Wash the last of the oil out,"
            " fill the tester with that, and test again; change no plunger for this time.",
        )
    if leak.time < i.least_time:
        return (
            "fail",
            say("Leaks too fast: {t}, {least} wanted", t=leak.time, least=i.least_time),
            say(
                "Wash plunger, bore and check valve, bleed it and test again. If it stays, this bore wants a"
                " plunger of {p} or more.",
                p=at_least(i.bore - leak.clearance_most, FINE),
            ),
        )
    if leak.time > i.most_time:
        return (
            "attention",
            say("Leaks too slowly: {t}, {most} accepted", t=leak.time, most=i.most_time),
            say(
                "It will hardly bleed down on a valve that grows, and dirt will stick it. Was the fluid as"
                " warm as typed, and none of the engine's oil left in it? Else a plunger of {p} or less.",
                p=at_most(i.bore - leak.clearance_least, FINE),
            ),
        )
    return (
        "pass",
        say("Leaks down in {t}, as it should", t=leak.time),
        "Keep plunger and bore together. Write the time down with fluid and temperature: only tests made"
        " alike can be compared.",
    )
