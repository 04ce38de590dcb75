"""Screw threads of 60°: metric (ISO 68-1, 261, 724, 965-1) and unified (ASME B1.1), written down from memory.

    external(THREADS["M8x1.25"], "6g").pitch.low     0.007042 m
    internal(THREADS["1/4-20"], "2B").minor.high     0.207 in, in m

Metric tolerances and deviations are the standard's tables: its rounding to preferred numbers cannot be worked
out anew. Unified ones are worked by the standard's formulas and rounded as it says. Engagement is normal
length: group N of ISO 965-1; one diameter in B1.1. Held are the sizes that an engine shop meets, M3 to M24
and #4 to 1 in.

Sizes in m at 20 °C, before plating. Raises `NotOffered` (a ValueError of one sentence) for classes that are
not held.
"""

import math
from bisect import bisect_left
from dataclasses import dataclass

INCH, MM, MICRON = 0.0254, 1e-3, 1e-6
HEIGHT = math.sqrt(3) / 2  # of the sharp triangle, over the pitch (ISO 68-1)

METRIC = {  # nominal diameter: pitches, mm; the coarse one first
    3: (0.5,),
    4: (0.7,),
    5: (0.8,),
    6: (1, 0.75),
    7: (1,),
    8: (1.25, 1),
    9: (1.25, 1),
    10: (1.5, 1.25, 1),
    11: (1.5, 1),
    12: (1.75, 1.5, 1.25, 1),
    14: (2, 1.5, 1.25),
    16: (2, 1.5),
    18: (2.5, 2, 1.5),
    20: (2.5, 2, 1.5),
    22: (2.5, 2, 1.5),
    24: (3, 2, 1.5),
}
UNIFIED = (  # called, nominal diameter in inches, threads per inch of UNC and of UNF
    ("4", 0.112, 40, 48),
    ("5", 0.125, 40, 44),
    ("6", 0.138, 32, 40),
    ("8", 0.164, 32, 36),
    ("10", 0.190, 24, 32),
    ("12", 0.216, 24, 28),
    ("1/4", 1 / 4, 20, 28),
    ("5/16", 5 / 16, 18, 24),
    ("3/8", 3 / 8, 16, 24),
    ("7/16", 7 / 16, 14, 20),
    ("1/2", 1 / 2, 13, 20),
    ("9/16", 9 / 16, 12, 18),
    ("5/8", 5 / 8, 11, 18),
    ("3/4", 3 / 4, 10, 16),
    ("7/8", 7 / 8, 9, 14),
    ("1", 1.0, 8, 12),
)

# ISO 965-1, µm, by pitch in mm. Deviations of e, f, g; H is 0 and G is g the other way round.
_DEVIATIONS = {
    0.5: (50, 36, 20),
    0.7: (56, 38, 22),
    0.75: (56, 38, 22),
    0.8: (60, 38, 24),
    1: (60, 40, 26),
    1.25: (63, 42, 28),
    1.5: (67, 45, 32),
    1.75: (71, 48, 34),
    2: (71, 52, 38),
    2.5: (80, 58, 42),
    3: (85, 63, 48),
}
_MAJOR = {  # T_d of grades 4, 6, 8
    0.5: (67, 106, None),
    0.7: (90, 140, None),
    0.75: (90, 140, None),
    0.8: (95, 150, 236),
    1: (112, 180, 280),
    1.25: (132, 212, 335),
    1.5: (150, 236, 375),
    1.75: (170, 265, 425),
    2: (180, 280, 450),
    2.5: (212, 335, 530),
    3: (236, 375, 600),
}
_MINOR = {  # T_D1 of grades 5, 6, 7
    0.5: (112, 140, 180),
    0.7: (140, 180, 224),
    0.75: (150, 190, 236),
    0.8: (160, 200, 250),
    1: (190, 236, 300),
    1.25: (212, 265, 335),
    1.5: (236, 300, 375),
    1.75: (265, 335, 425),
    2: (300, 375, 475),
    2.5: (355, 450, 560),
    3: (400, 500, 630),
}
_PITCH_BANDS = (2.8, 5.6, 11.2, 22.4, 45)  # mm, nominal diameters over one edge up to the next
# for each band from 2.8 mm on, by pitch: T_d2 of grades 4, 6, 8 and T_D2 of grades 5, 6, 7
_PITCH: dict[float, dict[float, tuple[int | None, ...]]] = {
    5.6: {
        0.5: (48, 75, None, 80, 100, 125),
        0.7: (56, 90, None, 95, 118, 150),
        0.75: (56, 90, None, 95, 118, 150),
        0.8: (60, 95, 150, 100, 125, 160),
    },
    11.2: {
        0.75: (63, 100, None, 106, 132, 170),
        1: (71, 112, 180, 118, 150, 190),
        1.25: (75, 118, 190, 125, 160, 200),
        1.5: (85, 132, 212, 140, 180, 224),
    },
    22.4: {
        1: (75, 118, 190, 125, 160, 200),
        1.25: (85, 132, 212, 140, 180, 224),
        1.5: (90, 140, 224, 150, 190, 236),
        1.75: (95, 150, 236, 160, 200, 250),
        2: (100, 160, 250, 170, 212, 265),
        2.5: (106, 170, 265, 180, 224, 280),
    },
    45: {
        1.5: (95, 150, 236, 160, 200, 250),
        2: (106, 170, 265, 180, 224, 280),
        3: (125, 200, 315, 212, 265, 335),
    },
}
EXTERNAL = {"metric": ("4h", "6h", "6g", "6f", "6e", "8g"), "unified": ("1A", "2A", "3A")}
INTERNAL = {"metric": ("5H", "6H", "6G", "7H"), "unified": ("1B", "2B", "3B")}
_GRADES = {"4": 0, "6": 1, "8": 2}, {"5": 0, "6": 1, "7": 2}


class NotOffered(ValueError):
    """A class that the standard does not have for that thread, or that is not held here; says what is offered
    instead."""


@dataclass(frozen=True)
class Thread:
    """A thread by its designation: nominal diameter and pitch in m; `system` is "metric" or "unified"."""

    name: str
    words: str
    d: float
    P: float
    system: str

    @property
    def pitch_diameter(self) -> float:
        """Basic, d − ¾H, m; metric ones to the micrometre as ISO 724 prints them."""
        return self._printed(self.d - 0.75 * HEIGHT * self.P)

    @property
    def minor(self) -> float:
        """Basic minor diameter of the internal thread, d − 1¼H, m; metric ones to the micrometre."""
        return self._printed(self.d - 1.25 * HEIGHT * self.P)

    @property
    def root(self) -> float:
        """Minor diameter of the external thread at the bottom of its rounded root, d − 17H/12, m (d3 of ISO
        898-1)."""
        return self.d - 17 / 12 * HEIGHT * self.P

    def _printed(self, size):
        return _rounded(size, MICRON) if self.system == "metric" else size


@dataclass(frozen=True)
class Zone:
    """One diameter: the standard's basic size, its deviation and its tolerance, m, and the limits that they
    make.

    Counted into the metal: an external thread is smaller by `deviation` and `tolerance`, an internal one
    larger. `tolerance` is None where the standard sets one limit only.
    """

    basic: float
    deviation: float
    tolerance: float | None
    inward: int  # −1 external, +1 internal

    @property
    def near(self) -> float:
        """Limit of most material."""
        return self.basic + self.inward * self.deviation

    @property
    def far(self) -> float | None:
        """Limit of least material."""
        return None if self.tolerance is None else self.near + self.inward * self.tolerance

    @property
    def low(self) -> float | None:
        return self.far if self.inward < 0 else self.near

    @property
    def high(self) -> float | None:
        return self.near if self.inward < 0 else self.far


@dataclass(frozen=True)
class Limits:
    """Zones of a thread of one class. External minor and internal major have one limit, that of most
    material."""

    name: str
    major: Zone
    pitch: Zone
    minor: Zone


def _all() -> dict[str, Thread]:
    found = {}
    for d, pitches in METRIC.items():
        for i, P in enumerate(pitches):
            found[f"M{d}x{P:g}"] = Thread(
                f"M{d}x{P:g}", f"M{d}×{P:g}" + ("" if i else " coarse"), d * MM, P * MM, "metric"
            )
    for called, inches, *counts in UNIFIED:
        for series, n in zip(("UNC", "UNF"), counts):
            sign = "#" if inches < 0.25 else ""
            found[f"{called}-{n}"] = Thread(
                f"{called}-{n}", f"{sign}{called}-{n} {series}", inches * INCH, INCH / n, "unified"
            )
    return found


THREADS: dict[str, Thread] = _all()


def external(thread: Thread, name: str) -> Limits:
    """Limits of the bolt's thread in a class such as "6g" or "2A"."""
    _offered(thread, name, EXTERNAL, "external")
    if thread.system == "metric":
        P, grade = _pitch(thread), _GRADES[0][name[0]]
        es = 0 if name[1] == "h" else _DEVIATIONS[P]["efg".index(name[1])]
        major, pitch = _MAJOR[P][grade], _band(thread)[grade]
        if major is None or pitch is None:
            raise NotOffered(
                f"{name} is not defined for {thread.words}; its grade begins at a pitch of 0.8 mm, so"
                " give 6g."
            )
        return Limits(
            name,
            *(
                Zone(basic, es * MICRON, None if t is None else t * MICRON, -1)
                for basic, t in ((thread.d, major), (thread.pitch_diameter, pitch), (thread.minor, None))
            ),
        )
    D, P = thread.d / INCH, thread.P / INCH
    pitch = _pitch_tolerance(D, P) * {"1A": 1.5, "2A": 1, "3A": 0.75}[name]
    allowance = 0.0 if name == "3A" else _allowance(D, P)
    major = (0.09 if name == "1A" else 0.06) * P ** (2 / 3)
    return Limits(
        name,
        *(
            _unified(basic - allowance, t, -1, allowance)
            for basic, t in ((D, major), (D - 0.75 * HEIGHT * P, pitch), (D - 1.25 * HEIGHT * P, None))
        ),
    )


def internal(thread: Thread, name: str) -> Limits:
    """Limits of the hole's thread in a class such as "6H" or "2B"."""
    _offered(thread, name, INTERNAL, "internal")
    if thread.system == "metric":
        P, grade = _pitch(thread), _GRADES[1][name[0]]
        ei = 0 if name[1] == "H" else _DEVIATIONS[P][2]
        return Limits(
            name,
            *(
                Zone(basic, ei * MICRON, None if t is None else t * MICRON, 1)
                for basic, t in (
                    (thread.d, None),
                    (thread.pitch_diameter, _band(thread)[3 + grade]),
                    (thread.minor, _MINOR[P][grade]),
                )
            ),
        )
    D, P = thread.d / INCH, thread.P / INCH
    pitch = _pitch_tolerance(D, P) * {"1B": 1.95, "2B": 1.3, "3B": 0.975}[name]
    coarse = name != "3B" and D >= 0.138  # B1.1 prints the minor diameters of these to 0.001 in
    # ASME B1.30: worked out whole, rounded once. Tables up to B1.1-2003 add what they have rounded already,
    # and are a last place off here and there.
    low, step = D - 1.25 * HEIGHT * P, 1e-3 if coarse else 1e-4
    near = _rounded(low, 1e-3 if D >= 0.138 else 1e-4)
    far = _rounded(low + _minor_tolerance(name, D, P), step)
    return Limits(
        name,
        _unified(D, None, 1, 0.0),
        _unified(D - 0.75 * HEIGHT * P, pitch, 1, 0.0),
        Zone(near * INCH, 0.0, (far - near) * INCH, 1),
    )


def stress_height(thread: Thread) -> float:
    """What comes off the nominal diameter for that of the tensile stress area, over the pitch: 13/12·H of ISO
    898-1, its (d2 + d3)/2; 9/8·H of ASME B1.1, its 0.9743."""
    return (13 / 12 if thread.system == "metric" else 9 / 8) * HEIGHT


def stress_area(thread: Thread) -> float:
    """Tensile stress area, m², by the thread's own standard."""
    return math.pi / 4 * (thread.d - stress_height(thread) * thread.P) ** 2


def _offered(thread, name, classes, which):
    if name not in classes[thread.system]:
        raise NotOffered(
            f"{name} is not a class of {which} {thread.system} threads that is held here; give"
            f" {', '.join(classes[thread.system])}."
        )
    if name[0] == "1" and thread.system == "unified" and thread.d < 0.2499 * INCH:
        raise NotOffered(f"{name} begins at 1/4 in; give 2{name[1]} for {thread.words}.")


def _pitch(thread):
    return round(thread.P / MM, 6)


def _band(thread):
    edge = _PITCH_BANDS[bisect_left(_PITCH_BANDS, round(thread.d / MM, 6))]
    return _PITCH[edge][_pitch(thread)]


def _pitch_tolerance(D, P):
    """T_d2 of class 2A, in, for an engagement of one diameter: what every other tolerance of B1.1 on the
    pitch diameter is counted in."""
    return 0.0015 * D ** (1 / 3) + 0.0015 * D**0.5 + 0.015 * P ** (2 / 3)


def _allowance(D, P):
    """es of classes 1A and 2A, in: 0.3 of 2A's tolerance, to 0.0001 in. Of 5/8-11 that is 0.00165, which the
    standard prints as 0.0016."""
    return _rounded(0.3 * round(_pitch_tolerance(D, P), 5) - 1e-7, 1e-4)


def _minor_tolerance(name, D, P):
    """T_D1 of B1.1, in."""
    small = 0.05 * P ** (2 / 3) + 0.03 * P / D - 0.002
    if name == "3B":
        least = 0.12 * P if P > 1 / 12.5 else 0.23 * P - 1.5 * P * P  # 12 threads per inch and coarser
        return max(least, min(small, 0.394 * P))
    if D < 0.25:
        return max(0.25 * P - 0.4 * P * P, min(small, 0.394 * P))
    return 0.25 * P - 0.4 * P * P


def _unified(edge, tolerance, inward, deviation):
    """A zone from its limit of most material, in inches: that rounded to 0.0001 in, the other one counted
    from it and rounded."""
    near = _rounded(edge, 1e-4)
    far = None if tolerance is None else _rounded(near + inward * _rounded(tolerance, 1e-6), 1e-4)
    return Zone(
        (near - inward * deviation) * INCH,
        deviation * INCH,
        None if far is None else abs(far - near) * INCH,
        inward,
    )


def _rounded(value, step):
    """To the nearest step, halves up."""
    return math.floor(value / step + 0.5 + 1e-9) * step
