"""The length that each valve needs, the one that serves them all, and how far rockers stand off square."""

from typing import NamedTuple

from calc.core.conformance import past
from calc.core.result import impossible
from calc.core.working import Number, greatest, least, step
from calc.formulas import rocker
from calc.reference import sources
from calc.stations.cam.pushrod_length.asked import CHECKED, VALVES, In
from calc.stations.cam.pushrod_length.told import Out
from calc.stations.shared.forms import COARSE, TENTHS_OF_DEGREE


class Rod(NamedTuple):
    """One valve's: the length that it needs, and its contact shut and at full lift (None: not read)."""

    name: str
    needs: Number
    shut: Number | None
    opened: Number | None

    @property
    def run(self) -> float:
        """How far the contact goes towards the shaft as the valve opens, m; outwards where negative."""
        return 0.0 if self.shut is None or self.opened is None else float(self.opened) - float(self.shut)


class Needed(NamedTuple):
    rods: tuple[Rod, ...]
    length: Number
    longer: Number
    off: Number
    apart: Number
    run: Number
    up: Number
    with_shims: Number
    read: bool  # whether any contact was read


def needed(i: In) -> Needed:
    rods = _read(i) if i.how == CHECKED else (_by_the_chain(i),)
    lengths = [rod.needs for rod in rods]
    low, high = least(*lengths), greatest(*lengths)
    off = Out.off(greatest(high - i.fitted, i.fitted - low, 0 * i.fitted))
    # in the middle third, the one at hand serves and no other is named
    serves = not past(off, i.travel / 6)
    length = Out.length(i.fitted if serves else (low + high) / 2)
    apart = Out.apart(greatest(high - length, length - low, 0 * length))
    read = [rod for rod in rods if rod.shut is not None]
    run, up = _square(i, read) if read else (Out.run(0.0), Out.up(0.0))
    shims = Out.with_shims(length + up * (1 + 1 / i.ratio), sources.CHAIN_ALONG_PUSHROD)
    return Needed(rods, length, Out.longer(length - i.fitted), off, apart, run, up, shims, bool(read))


def _read(i: In) -> tuple[Rod, ...]:
    rods = []
    for n, row in enumerate(i.rods):
        if row is None:
            continue
        length, shut, opened = row
        if (shut is None) != (opened is None):
            raise impossible(
                f"rods.{n + 1}.{2 if shut is None else 3}",
                "is empty beside its other contact; give both, or neither",
            )
        needs = step(f"L_{n + 1}", f"Valve {VALVES[n]} needs", COARSE, length + i.press)
        rods.append(Rod(VALVES[n], needs, shut, opened))
    return tuple(rods)


def _by_the_chain(i: In) -> Rod:
    # a shaft raised over a tip that stays turns the rocker: the cup rises by the shim, and by the shim ÷ i
    along = step(
        "a", "Lifter farther from the rocker by", COARSE, i.shims + i.base + i.stand - i.case_cut - i.head_cut
    )
    return Rod(
        "all",
        step(
            "L_1",
            "Needed now",
            COARSE,
            i.fitted + along + (i.stand - i.tip) / i.ratio,
            sources.CHAIN_ALONG_PUSHROD,
        ),
        None,
        None,
    )


def _square(i: In, read: list[Rod]) -> tuple[Number, Number]:
    """The largest run of a contact, and how far that valve's shaft is to go up."""
    worst = max(read, key=lambda rod: abs(rod.run))
    assert worst.shut is not None and worst.opened is not None
    signed = step(
        "c_s", f"Contact comes towards the shaft less, {worst.name}", COARSE, worst.opened - worst.shut
    )
    if abs(float(signed)) >= 0.9 * float(i.lift):
        raise impossible(
            "rods",
            "say that the contact of {v} runs {c}, too much for a lift of {l}; give both as read from the"
            " same edge",
            v=worst.name,
            c=Out.run(abs(signed)),
            l=i.lift,
        )
    mean = step(
        "α_m",
        "Arm off square at half lift",
        TENTHS_OF_DEGREE,
        rocker.off_square(signed, i.lift),
        sources.ROCKER,
    )
    try:
        up = rocker.shaft_up(mean, i.lift, i.arm)
    except ValueError:
        raise impossible(
            "arm", "is {a}, too short for a lift of {l}; measure it again", a=i.arm, l=i.lift
        ) from None
    return Out.run(abs(signed)), Out.up(up, sources.ROCKER)
