"""A job as a code for a link or a printed code, and back: short, and any damage to it is noticed.

    code = "3" + base32 of (CRC-32 of what follows, big end first; raw deflate with the dictionary of form 3)
    part = "P" + number and count (two digits each) + CRC-32 of the whole code (eight hexadecimal digits)
               + a piece of the code + CRC-32 of all that (base32, seven characters)

Base32 (RFC 4648, no padding) because capitals and digits take 5.5 bits each in a QR code against 8 for what
base64 needs: a fifth less black and white for the same job. One damaged character changes at most eight bits
in a row, which a CRC-32 always notices.

What is deflated stands by columns (`calc.job.columns`); its likeliest words are known beforehand
(`calc.job.likely`).
"""

import re
import zlib
from base64 import b32decode, b32encode
from dataclasses import dataclass

from calc.job.checking import checked
from calc.job.columns import columns_of, job_of
from calc.job.contents import MOST_TEXT, JobError
from calc.job.likely import DICTIONARIES

DAMAGED = "This code is damaged or cut short: scan it or open its link once more, or take the file instead."
# the forms of codes, and how a job of each stands by columns: the third only knows more words
_FORM, _FORMS, _PART = "3", {"1": 1, "2": 2, "3": 2}, "P"
_PART_LOOKS = re.compile(r"P([0-9]{2})([0-9]{2})([0-9A-F]{8})([0-9A-Z]+)([A-Z2-7]{7})")
_AROUND = 20  # characters of a part that are not a piece of the code
# What any job comes to; more is a bomb. What a link holds is counted before anything is made of it.
_MOST_BYTES = 4 * MOST_TEXT + 200_000
LONGEST = 2_000_000  # characters of a code: no browser opens a longer link


def encode(job: dict) -> str:
    """The code of a job: capitals and digits only. Drawn as a QR code, it should be a segment of its own (of
    letters and digits) behind the link's, so that the link's small letters do not cost it its 5.5 bits."""
    deflate = zlib.compressobj(9, zlib.DEFLATED, -15, 9, zlib.Z_DEFAULT_STRATEGY, DICTIONARIES[_FORM])
    packed = deflate.compress(columns_of(checked(job)).encode()) + deflate.flush()
    code = _FORM + _base32(zlib.crc32(packed).to_bytes(4, "big") + packed)
    if len(code) > LONGEST:
        raise JobError("This job is too large for a code or a link; give its file instead.")
    return code


def decode(code: str) -> dict:
    """The job of a code; spaces and ends of lines in it do not count. JobError where anything else of it is
    not as it was made."""
    code = _whole(code)
    if not code:
        raise JobError("There is no code here; open the link that is printed on the sheet, or take the file.")
    if one := part(code):
        raise JobError(f"This is part {one.number} of {one.count} of a job; scan the others as well.")
    if code[0] not in _FORMS:
        raise JobError(
            "This code was made by a newer handbook; open it with that one."
            if re.fullmatch("[4-9][A-Z2-7]+", code)
            else "This is no code of a job; open the link that is printed on the sheet, or take the file."
        )
    try:
        data = b32decode(code[1:] + "=" * (-len(code[1:]) % 8))
    except ValueError:
        raise JobError(DAMAGED) from None
    if _base32(data) != code[1:] or len(data) < 5 or zlib.crc32(data[4:]) != int.from_bytes(data[:4], "big"):
        raise JobError(DAMAGED)
    try:
        inflate = zlib.decompressobj(-15, DICTIONARIES[code[0]])
        text = inflate.decompress(data[4:], _MOST_BYTES)
        if not inflate.eof or inflate.unused_data:
            raise JobError(DAMAGED)
        return checked(job_of(text.decode(), _FORMS[code[0]]))
    except (zlib.error, ValueError, LookupError, OverflowError):  # a check sum can be made to fit anything
        raise JobError(DAMAGED) from None


def split(code: str, most: int) -> list[str]:
    """The code in parts of at most `most` characters, the code itself where it fits. JobError where 99 parts
    do not hold it."""
    if len(code) <= most:
        return [code]
    if most < 2 * _AROUND:
        raise ValueError(f"a part of {most} characters holds nothing; allow at least {2 * _AROUND}")
    count = -(-len(code) // (most - _AROUND))
    if count > 99:
        raise JobError(
            f"This job would take {count} codes, and there are never more than 99; give its file instead."
        )
    size = -(-len(code) // count)
    whole = f"{zlib.crc32(code.encode()):08X}"
    bodies = [f"{_PART}{i + 1:02}{count:02}{whole}{code[i * size : (i + 1) * size]}" for i in range(count)]
    return [body + _check(body) for body in bodies]


@dataclass(frozen=True)
class Part:
    """One of several codes: its number of how many, by what those of the same job are known, and what it
    holds."""

    number: int
    count: int
    whole: str
    piece: str


def part(code: str) -> Part | None:
    """The part that a code is, None where it is something else. JobError where it is one, but damaged."""
    code = _whole(code)
    looks = _PART_LOOKS.fullmatch(code)
    if looks is None or _check(code[:-7]) != code[-7:] or not 1 <= int(looks[1]) <= int(looks[2]):
        if code.startswith(_PART):
            raise JobError(DAMAGED)
        return None
    return Part(int(looks[1]), int(looks[2]), looks[2] + looks[3], looks[4])


def join(parts: list[str]) -> str:
    """The code whose parts these are, in any order; a part may stand there twice. JobError names what is
    missing or does not belong."""
    parts = [_whole(code) for code in parts]
    if len(set(parts)) == 1 and parts[0][:1] in _FORMS:
        return parts[0]
    read = [part(code) for code in parts]
    if not read:
        raise JobError("There is no code here; scan the codes that are printed on the sheet.")
    found = [one for one in read if one]
    if len(found) < len(read):
        raise JobError("One of these is no part of a job's code; scan the codes of one sheet only.")
    if len({one.whole for one in found}) > 1:
        raise JobError("These parts are not all of one job; scan the codes of one sheet only.")
    count, pieces = found[0].count, {one.number: one.piece for one in found}
    if missing := [str(i) for i in range(1, count + 1) if i not in pieces]:
        raise JobError(
            f"Part {', '.join(missing)} of {count} is missing; scan {'it' if len(missing) == 1 else 'them'}"
            " as well."
        )
    code = "".join(pieces[i] for i in range(1, count + 1))
    if f"{zlib.crc32(code.encode()):08X}" != found[0].whole[2:]:
        raise JobError(DAMAGED)
    return code


def _whole(code: str) -> str:
    """Without spaces and ends of lines, where it is no longer than a code can be."""
    if len(code) > LONGEST + LONGEST // 10:
        raise JobError(
            f"This is no code of a job: it has {len(code)} characters, and none has more than {LONGEST}."
        )
    return re.sub(r"\s+", "", code)


def _base32(data: bytes) -> str:
    return b32encode(data).decode().rstrip("=")


def _check(body: str) -> str:
    return _base32(zlib.crc32(body.encode()).to_bytes(4, "big"))
