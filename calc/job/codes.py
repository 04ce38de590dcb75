"""The codes of a size sheet: links that open the handbook with the job in them, and what draws them."""

import re

from calc.core.reading import quoted
from calc.job import share
from calc.job.contents import JobError

PAGE = "job/received/"  # the page of the handbook that reads a link
FORM = "v1."
# characters of a job in one code: 117 modules across with the border, 0.36 mm each where the code is 42 mm
# wide
MOST = 1100
MOST_CODES = 6  # a sheet with more of them is scanned by nobody


def links(job: dict, base: str) -> tuple:
    """The links that carry the job, one for each code; none where it is too large for codes. The job stands
    behind the #, which no browser sends to a server.

    `base` is the address of the handbook. Raises JobError where it cannot be one.
    """
    if not re.fullmatch(r"https?://[^\s#?<>\"']+", base):
        raise JobError(
            f"{quoted(base)} is no address of a handbook; give one such as https://example.org/sizebook/."
        )
    whole = share.encode(job)
    if len(whole) > MOST * MOST_CODES:
        return ()
    parts = share.split(whole, MOST)
    return (
        tuple(f"{base.rstrip('/')}/{PAGE}#{FORM}{part}" for part in parts) if len(parts) <= MOST_CODES else ()
    )


_HOST = re.compile(r"https?://(?:[^/@]*@)?(\[[^\]]*\]|[^/:?#]*)", re.IGNORECASE)
_WITHIN = (
    "localhost",
    "local",
    "lan",
    "home",
    "home.arpa",
    "internal",
    "intranet",
    "corp",
    "private",
    "test",
    "invalid",
)
_QUAD = re.compile(r"([0-9]{1,3})\.([0-9]{1,3})\.([0-9]{1,3})\.([0-9]{1,3})")


def reachable(address: str) -> bool:
    """Can the customer's phone open this address, as far as it tells? Not one of this machine alone, of the
    shop's own network, or of a file."""
    found = _HOST.match(address)
    host = found[1].rstrip(".").lower() if found else ""
    if host.startswith("["):  # ::1 and other special ones, link-local, unique local
        return not re.match(r"\[(::|fe[89ab]|f[cd])", host)
    if re.fullmatch(r"[0-9]+|0x[0-9a-f]*", host.rpartition(".")[2]):
        quad = _QUAD.fullmatch(host)
        first, second = (int(quad[1]), int(quad[2])) if quad else (0, 0)
        return not (
            first in (0, 10, 127)
            or (first, second) in ((169, 254), (192, 168))
            or first == 172
            and 16 <= second < 32
            or first == 100
            and 64 <= second < 128
        )
    return "." in host and not any(host.endswith(f".{name}") for name in _WITHIN)


def here(address: str) -> str:
    """The part of an address that says where it is, for a sentence."""
    found = _HOST.match(address)
    return found[1] if found and found[1] else address[:60]


_ADDRESS = re.compile(r"^(?:site_url|[ \t]+address): *(?:'([^'\n]*)'|\"([^\"\n]*)\"|([^\s#]+))", re.MULTILINE)


def address_in(settings: str) -> str:
    """The shop's own address of the handbook in the text of its `mkdocs.yml`: `site_url`, or `address` under
    `extra`; "" where none is set."""
    return next((given for found in _ADDRESS.finditer(settings) for given in found.groups() if given), "")


def draw(link: str) -> str | None:
    """A link as a QR code in SVG; None where the library that draws it is not installed."""
    try:
        import segno
    except ImportError:
        return None
    address, mark, code = link.partition(f"#{FORM}")
    # capitals and digits take 5.5 bits in a segment of their own, in one with the address 8
    content: list[str] | str = [address + mark, code] if code else link
    # its types know of one content only; a list makes segments
    drawn = segno.make(content, micro=False, error="m", boost_error=False)  # type: ignore[arg-type]
    return drawn.svg_inline(border=4, omitsize=True, svgclass=None, lineclass=None, dark="#000", light="#fff")
