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
            say("Not in test fluid: {t} says nothing", t=leak.time),
            "The times accepted hold for the tester's own thin fluid. Wash the last of the oil out, fill"
            " the tester with that, and test again; change no plunger because of this time.",
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
                "It will hardly give way as the valve grows, and dirt will make it stick. See first"
                " whether the fluid was as warm as typed and free of engine oil. If it was, take a"
                " plunger of {p} or less.",
                p=at_most(i.bore - leak.clearance_least, FINE),
            ),
        )
    return (
        "pass",
        say("Leaks down in {t}, as it should", t=leak.time),
        "Keep plunger and bore together. Write the time down with fluid and temperature: only tests made"
        " alike can be compared.",
    )
