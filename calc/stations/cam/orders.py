"""What is ordered between the cam's gear and the rockers, by their sizes."""

import math
from dataclasses import dataclass

from calc.core.result import say
from calc.core.working import constant
from calc.formulas.gear_backlash import per_radius, transverse_angle
from calc.job.sizes import Read, Sizes, decision
from calc.reference.engine import Feature
from calc.reference.size import usable
from calc.stations.shared.orders.order import Because, Order, because
from calc.stations.shared.orders.worn import Worn

PRESSURE = math.radians(20)  # square to the tooth: the standard rack of ISO 53


@dataclass(frozen=True)
class SizeCode:
    """A gear that is sold in steps of its pitch radius, chosen by the `play` that it is to have."""

    part: str
    play: str
    step: str
    last: str
    helix: str

    def rows(self, sizes: Sizes, before: tuple[Order, ...] = ()) -> list[Order]:
        play, step, last, helix = map(sizes.feature, (self.play, self.step, self.last, self.helix))
        if play is None or step is None or last is None or helix is None:
            return []
        read = sizes.best(play.id, "")
        if read is None:
            return []
        low, high = usable(play) if read.stage == "received" else (play.low, play.high)
        now = decision(float(read.value), read.u, low, high)
        if now == "in":
            return []
        if now == "cannot tell":
            return [self._row(play, read, "another size code, if it is out of its limits", "unsure", DOUBT)]
        if float(read.value) <= 0:
            return [self._row(play, read, "smaller, after a trial", "attention", BIND)]
        each = float(per_radius(step.nominal, transverse_angle(PRESSURE, helix.nominal)))
        # the gear at hand may be the smallest sold, and the one to take the largest
        most = 2 * round(last.nominal)
        steps = min(
            range(-most, most + 1), key=lambda n: (abs(float(read.value) - n * each - play.nominal), abs(n))
        )
        return [self._stepped(play, read, steps, each, round(last.nominal))]

    def _stepped(self, play: Feature, read: Read, steps: int, each: float, last: int) -> Order:
        left = float(read.value) - steps * each
        then = decision(left, read.u, play.low, play.high)
        if then == "out":
            return self._row(play, read, "no size code serves", "fail", DISTANCE)
        size = f"{abs(steps)} step{'s' * (abs(steps) > 1)} {'larger' if steps > 0 else 'smaller'}"
        if then == "cannot tell":
            return self._row(play, read, f"{size}, if it is read right", "unsure", DOUBT)
        return self._row(
            play,
            read,
            size,
            "pass",
            f"Counted from the code stamped on the gear at hand; sold from −{last} to +{last}. Leaves"
            " {left}. Read it round the gear first, and again with the new one.",
            left,
        )

    def _row(self, play: Feature, read: Read, size: str, state: str, do: str, left: float = 0.0) -> Order:
        told = constant("", play.label, play.form, left)
        words = say(do, left=told) if "{left}" in do else say(do)
        return Order(self.part, say(size), (), because(play, [Because(read.value, read.stage)]), state, words)


DOUBT = "Cannot tell: measure again with less doubt before ordering."
BIND = (
    "No play: how far they bind does not show. Read it with the smallest gear that you can borrow, and order"
    " by that."
)
DISTANCE = (
    "No gear brings the play within its limits. Measure the distance of crank and cam, and both gears, before"
    " anything is ordered."
)

CAM_GEAR = SizeCode("Cam gear", "cam.gear_backlash", "cam.gear_step", "cam.gear_last", "cam.gear_helix")
WORN = Worn(
    {"rocker.shaft": "Rocker shafts", "rocker.bush": "Rocker bushes", "rocker.pushrod_bow": "Pushrods"}
)
