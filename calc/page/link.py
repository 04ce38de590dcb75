"""A result as a link, and back: what was entered, in which units, and what it stands on, in the part of an
address that no browser sends to a server.

    seat-fit?V=1&Units=metric&Engine=TS-16&Place=2+exhaust&pocket_bore=37.48&ring_outside=37.61&End=684fb93e

The calculator's id comes first, so that a page knows which of its calculators is meant. Texts stand as they
were typed, in the encoding of a form (RFC 3986; a space is +). What is no entry begins with a capital, which
no entry's name does. `End` is the CRC-32 of all that, decoded: a link that was cut short or damaged must not
give another number. There is room for no name and no remark.
"""

import re
import zlib
from dataclasses import dataclass, field

from calc.core.reading import quoted
from calc.declare.calculator import Calculator
from calc.reference.engine import SheetError, engine
from calc.stations.index import find

PAGE = "check-a-number/"  # of the handbook, from where a link finds the page of its calculator
FORM = "1"
_OWN = ("V", "Units", "Engine", "Place")
MOST = 4000  # characters: more than any form takes, and less than programs that send links cut off

_LOOKS = re.compile(r"([a-z0-9-]+)(?:\?([!-~]*))?")
_PLACE = re.compile(r"[0-9]{0,3} ?[a-z_]{0,20}")  # "exhaust", "2 exhaust", "2"
_BARE = frozenset("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/:,")

DAMAGED = "This link is damaged or was cut short, so nothing of it is shown; ask for it once more."
TOO_LONG = "These entries are too much for a link; send the numbers themselves."


class LinkError(ValueError):
    """What is wrong with a link, in one sentence for the reader."""


@dataclass(frozen=True)
class Link:
    """`entries`: texts by the entry's name, bare numbers in `system`'s unit. `engine`: name of its sheet, ""
    where there is none. `which`: the part in hand, "exhaust" or "2 exhaust"."""

    calculator: Calculator
    entries: dict[str, str] = field(default_factory=dict)
    system: str = "metric"
    engine: str = ""
    which: str = ""


def write(link: Link) -> str:
    """What stands behind the # of the address; where nothing was entered, the calculator's id alone.

    LinkError where it would be too long.
    """
    entries = {name: text.strip() for name, text in link.entries.items() if text.strip()}
    if not entries:
        return link.calculator.id
    which = link.which if _PLACE.fullmatch(link.which) else ""
    said = {"V": FORM, "Units": link.system, "Engine": link.engine, "Place": which, **entries}
    said = {name: text for name, text in said.items() if text}
    pairs = "&".join(f"{name}={_encoded(text)}" for name, text in said.items())
    written = f"{link.calculator.id}?{pairs}&End={_end(link.calculator.id, said)}"
    if len(written) > MOST:
        raise LinkError(TOO_LONG)
    return written


def address(link: Link, site: str = "") -> str:
    """The link with its address: on the handbook at `site`, or as it stands within one where that is ""."""
    if site and not re.fullmatch(r"https?://[^\s#?<>\"']+", site):
        raise LinkError(
            f"{quoted(site)} is no address of a handbook; give one such as https://example.org/sizebook/."
        )
    return f"{site and site.rstrip('/') + '/'}{PAGE}#{write(link)}"


def read(text: str) -> Link:
    """The link in an address, or in what stands behind its #. LinkError where anything of it is not as it was
    made, or not of this edition."""
    looks = _LOOKS.fullmatch(text.strip().rpartition("#")[2][: MOST + 1])
    if not looks:
        raise LinkError(DAMAGED)
    id, query = looks.groups()
    said = _pairs(query) if query is not None else {}
    if query is not None:
        _check(id, said)
    try:
        calculator = find(id)
    except KeyError:
        raise LinkError(
            f"This link is of a calculator that this edition of the handbook does not have: {quoted(id)}."
        ) from None
    entries = {name: text for name, text in said.items() if name not in _OWN}
    for name in entries:
        base, _, part = name.partition(".")
        if base not in calculator.input or part and part not in calculator.input[base].parts:
            raise LinkError(
                f"This link was made by another edition of the handbook: here nobody asks for {quoted(name)}."
            )
    system, which = said.get("Units", "metric"), said.get("Place", "")
    if system not in ("metric", "inch") or not _PLACE.fullmatch(which):
        raise LinkError(DAMAGED)
    return Link(calculator, entries, system, _sheet(said.get("Engine", "")), which)


def _check(id: str, said: dict[str, str]) -> None:
    """LinkError for another form than this one, or another end than that of what stands before it."""
    form = said.get("V", "")
    if form != FORM and re.fullmatch("[0-9]{1,3}", form):
        raise LinkError("This link was made by a newer edition of the handbook; open it with that one.")
    end = said.pop("End", "")
    if form != FORM or end != _end(id, said):
        raise LinkError(DAMAGED)


def _pairs(query: str) -> dict[str, str]:
    said: dict[str, str] = {}
    for pair in query.split("&"):
        name, equals, text = pair.partition("=")
        if not equals or name in said:
            raise LinkError(DAMAGED)
        said[name] = _decoded(text)
    return said


def _end(id: str, said: dict[str, str]) -> str:
    whole = "\n".join([id, *(f"{name}={text}" for name, text in said.items())])
    return f"{zlib.crc32(whole.encode()):08x}"


def _sheet(name: str) -> str:
    try:
        return engine(name).name if name else ""
    except (KeyError, SheetError):
        raise LinkError(
            f"This link goes by the sheet of an engine that is not here: {quoted(name)}."
        ) from None


def _encoded(text: str) -> str:
    return "".join(
        c if c in _BARE else "+" if c == " " else "".join(f"%{byte:02X}" for byte in c.encode("utf-8"))
        for c in text
    )


def _decoded(text: str) -> str:
    """As `urllib.parse.unquote_plus` has it, which would bring more into a reader's memory than all this."""
    data = re.sub(
        rb"%([0-9A-Fa-f]{2})", lambda byte: bytes.fromhex(byte[1].decode()), text.replace("+", " ").encode()
    )
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError:
        raise LinkError(DAMAGED) from None
