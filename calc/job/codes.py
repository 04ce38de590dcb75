"""The codes of a size sheet: links that open the handbook with the job in them, and what draws them."""
import re

from calc.job import share
from calc.job.record import JobError
from calc.quantity import quoted

PAGE = "job/received/"  # the page of the handbook that reads a link
FORM = "v1."
MOST = 1100  # characters of a job in one code: 117 modules across with the border, 0.36 mm each where the code is 42 mm wide
MOST_CODES = 6  # a sheet with more of them is scanned by nobody


def links(job: dict, base: str) -> tuple:
    """The links that carry the job, one for each code; none where it is too large for codes. The job stands behind the #, which no
    browser sends to a server.

    `base` is the address of the handbook. Raises JobError where it cannot be one.
    """
    if not re.fullmatch(r"https?://[^\s#?<>\"']+", base):
        raise JobError(f"{quoted(base)} is no address of a handbook; give one such as https://example.org/sizebook/.")
    whole = share.encode(job)
    if len(whole) > MOST * MOST_CODES:
        return ()
    parts = share.split(whole, MOST)
    return tuple(f"{base.rstrip('/')}/{PAGE}#{FORM}{part}" for part in parts) if len(parts) <= MOST_CODES else ()


def draw(link: str) -> str | None:
    """A link as a QR code in SVG; None where the library that draws it is not installed."""
    try:
        import segno
    except ImportError:
        return None
    address, mark, code = link.partition(f"#{FORM}")
    # capitals and digits take 5.5 bits in a segment of their own, in one with the address 8
    drawn = segno.make([address + mark, code] if code else link, micro=False, error="m", boost_error=False)
    return drawn.svg_inline(border=4, omitsize=True, svgclass=None, lineclass=None, dark="#000", light="#fff")
