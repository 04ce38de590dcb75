"""Where all stems should stand."""

from calc.core.conformance import DUST


def plan(
    levels: list[float],
    low: float,
    high: float,
    spread: float,
    wanted: float,
    tip_most: float,
    sink_most: float,
) -> tuple[float, float]:
    """From where to where all stems should stand: a window no wider than `spread` within low…high, m.

    First, no tip or seat gives more than it may; then least off the seats; then least off the tips; then
    nearest to the height wanted. Each of these bends only where a stem meets an end of the window, or where a
    tip or seat has no more to give: the best place is one of those.
    """
    wide = min(spread, high - low)
    bends = [
        place
        for level in levels
        for place in (level, level - wide, level - tip_most - wide, level + sink_most)
    ]
    places = {min(max(a, low), high - wide) for a in (wanted - wide / 2, *bends)}

    def cost(a: float) -> tuple[float, ...]:
        tips = [max(level - a - wide, 0.0) for level in levels]
        sinks = [max(a - level, 0.0) for level in levels]
        over = sum(t > tip_most + DUST for t in tips) + sum(z > sink_most + DUST for z in sinks)
        return over, round(sum(sinks), 9), round(sum(tips), 9), round(abs(a + wide / 2 - wanted), 9), a

    bottom = min(places, key=cost)
    return bottom, bottom + wide
