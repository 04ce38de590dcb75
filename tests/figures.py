"""Looks at a figure as drawn: is every number in it a number, and does everything stand on the paper, the words as well?"""

import math
import re

# Advance widths of Helvetica in thousandths of the size (Adobe's font metrics for the core fonts, from memory); Arial and the
# usual sans serifs of phones are as wide or narrower on the whole.
_WIDTHS = {
    **dict.fromkeys("ijl'", 222),
    **dict.fromkeys(" ,.:;!ft/\\I|", 278),
    **dict.fromkeys("r-()[]", 333),
    **dict.fromkeys("cksvxyzJ°", 500),
    **dict.fromkeys("ABEKPSVXY&", 667),
    **dict.fromkeys("CDHNRUw", 722),
    **dict.fromkeys("GOQ", 778),
    **dict.fromkeys("mM%", 889),
    "W": 944,
    "F": 611,
    "T": 611,
    "Z": 611,
    "−": 584,
    "+": 584,
    "=": 584,
    "·": 278,
}
SIZE = 12  # of the words in drawings, see drawing.css
_NUMBER = r"-?\d+(?:\.\d+)?"
_SLACK = 2  # user units that a line's own thickness or a letter's overhang may take


def width(text: str, size: float = SIZE) -> float:
    return sum(_WIDTHS.get(c, 556) for c in text) * size / 1000


def faults(svg) -> list[str]:
    """What is wrong with an <svg> (an ElementTree element without namespaces), in words."""
    found = []
    box = svg.get("viewBox", "").split()
    if len(box) != 4 or not all(re.fullmatch(_NUMBER, n) for n in box):
        return [f"viewBox is {svg.get('viewBox')!r}"]
    across, down = float(box[2]), float(box[3])
    if not (0 < across <= 400 and 0 < down <= 2000):
        found.append(f"the paper is {across} by {down}")
    if "{" in "".join(svg.itertext()):
        found.append("a placeholder in the words")
    patterns = {id(e) for p in svg.iter("pattern") for e in p.iter()}

    def on_paper(x, y, what):
        if not (-_SLACK <= x <= across + _SLACK and -_SLACK <= y <= down + _SLACK):
            found.append(f"{what} at {x:.1f}, {y:.1f} off the paper of {across:g} by {down:g}")

    for e in svg.iter():
        if id(e) in patterns:
            continue
        if e.tag == "path":
            d = e.get("d", "")
            if not re.fullmatch(rf"(?:M{_NUMBER} {_NUMBER}(?:L{_NUMBER} {_NUMBER})*Z?)+", d):
                found.append(f"a path that cannot be drawn: {d[:60]!r}")
                continue
            for x, y in re.findall(rf"({_NUMBER}) ({_NUMBER})", d):
                on_paper(float(x), float(y), e.get("class", "path"))
        elif e.tag == "circle":
            if not all(re.fullmatch(_NUMBER, e.get(a, "")) for a in ("cx", "cy", "r")):
                found.append("a circle that cannot be drawn")
                continue
            on_paper(float(e.get("cx")), float(e.get("cy")), "circle")
        elif e.tag == "text":
            for x, y in corners(e):
                on_paper(x, y, f"the words {''.join(e.itertext())!r}")
    for name in re.findall(r"url\(#([^)]*)\)", " ".join(v for e in svg.iter() for v in e.attrib.values())):
        if not any(p.get("id") == name for p in svg.iter("pattern")):
            found.append(f"hatching {name} is missing")
    return found


def corners(text) -> list[tuple[float, float]]:
    """Corners of the box that a <text> takes, turned as it is."""
    x, y, wide = float(text.get("x")), float(text.get("y")), width("".join(text.itertext()))
    left = {"start": x, "middle": x - wide / 2, "end": x - wide}[text.get("text-anchor")]
    box = [(px, py) for px in (left, left + wide) for py in (y - 0.75 * SIZE, y + 0.22 * SIZE)]
    turned = re.fullmatch(rf"rotate\(({_NUMBER}) ({_NUMBER}) ({_NUMBER})\)", text.get("transform", ""))
    if not turned:
        return box
    angle, ox, oy = math.radians(float(turned[1])), float(turned[2]), float(turned[3])
    return [
        (
            ox + (px - ox) * math.cos(angle) - (py - oy) * math.sin(angle),
            oy + (px - ox) * math.sin(angle) + (py - oy) * math.cos(angle),
        )
        for px, py in box
    ]
