"""A job as a code for a link or a printed code, and back: short, and any damage to it is noticed.

    code = "2" + base32 of (CRC-32 of what follows, big end first; raw deflate with the preset dictionary of form 2)
    part = "P" + number and count (two digits each) + CRC-32 of the whole code (eight hexadecimal digits) + a piece of the code
               + CRC-32 of all that (base32, seven characters)

Base32 (RFC 4648, no padding) because capitals and digits take 5.5 bits each in a QR code against 8 for what base64 needs: a fifth
less black and white for the same job. One damaged character changes at most eight bits in a row, which a CRC-32 always notices.

What is deflated stands by columns, in UTF-8: fields are parted by U+001F and columns by U+001E, which no text of a job can hold.
A field like the one above it is left empty, and an empty one that is not is U+001D. The columns, after the job's own line (id, name,
engine, sheet, received, started, by): feature, place, stage (one letter each, nothing between), number (a letter for how many
characters it shares with the number before it of that feature, then the others), the rest of the text, at (minutes since the line
above where it is written alike), by, why, part, gauge, of; then the entries of what was done: line (left empty where it is the name that
a new line with these words gets, else the name), text, at, by. Form 1 had what was done, as bare texts, at the end of the job's own line.
"""

import re
import zlib
from base64 import b32decode, b32encode
from dataclasses import dataclass
from datetime import datetime, timedelta

from calc.job.checking import checked
from calc.job.contents import (
    FORMAT,
    MOST_DONE,
    MOST_READINGS,
    MOST_STRUCK,
    MOST_TEXT,
    STAGES,
    JobError,
    name_of_line,
)

DAMAGED = "This code is damaged or cut short: scan it or open its link once more, or take the file instead."
_FIELD, _COLUMN, _EMPTY = "\x1f", "\x1e", "\x1d"
_LETTERS = {stage[0]: stage for stage in STAGES}
_HEAD = ("id", "name", "engine", "sheet", "received", "started", "by")
_TOLD = ("by", "why", "part", "gauge", "of")
_FORM, _FORMS, _PART = "2", ("1", "2"), "P"
_PART_LOOKS = re.compile(r"P([0-9]{2})([0-9]{2})([0-9A-F]{8})([0-9A-Z]+)([A-Z2-7]{7})")
_AROUND = 20  # characters of a part that are not a piece of the code
# What any job comes to; more is a bomb. What a link holds is counted before anything is made of it.
_MOST_BYTES = 4 * MOST_TEXT + 200_000
LONGEST = 2_000_000  # characters of a code: no browser opens a longer link
_MOST_COLUMNS = 1 + 6 + len(_TOLD) + 4


def encode(job: dict) -> str:
    """The code of a job: capitals and digits only. Drawn as a QR code, it should be a segment of its own (of letters and digits)
    behind the link's, so that the link's small letters do not cost it its 5.5 bits."""
    deflate = zlib.compressobj(9, zlib.DEFLATED, -15, 9, zlib.Z_DEFAULT_STRATEGY, _DICTIONARIES[_FORM])
    packed = deflate.compress(_columns(checked(job)).encode()) + deflate.flush()
    code = _FORM + _base32(zlib.crc32(packed).to_bytes(4, "big") + packed)
    if len(code) > LONGEST:
        raise JobError("This job is too large for a code or a link; give its file instead.")
    return code


def decode(code: str) -> dict:
    """The job of a code; spaces and ends of lines in it do not count. JobError where anything else of it is not as it was made."""
    code = _whole(code)
    if not code:
        raise JobError("There is no code here; open the link that is printed on the sheet, or take the file.")
    if one := part(code):
        raise JobError(f"This is part {one.number} of {one.count} of a job; scan the others as well.")
    if code[0] not in _FORMS:
        raise JobError(
            "This code was made by a newer handbook; open it with that one."
            if re.fullmatch("[3-9][A-Z2-7]+", code)
            else "This is no code of a job; open the link that is printed on the sheet, or take the file."
        )
    try:
        data = b32decode(code[1:] + "=" * (-len(code[1:]) % 8))
    except ValueError:
        raise JobError(DAMAGED) from None
    if _base32(data) != code[1:] or len(data) < 5 or zlib.crc32(data[4:]) != int.from_bytes(data[:4], "big"):
        raise JobError(DAMAGED)
    try:
        inflate = zlib.decompressobj(-15, _DICTIONARIES[code[0]])
        text = inflate.decompress(data[4:], _MOST_BYTES)
        if not inflate.eof or inflate.unused_data:
            raise JobError(DAMAGED)
        return checked(_job(text.decode(), int(code[0])))
    except (zlib.error, ValueError, LookupError, OverflowError):  # a check sum can be made to fit anything
        raise JobError(DAMAGED) from None


def split(code: str, most: int) -> list[str]:
    """The code in parts of at most `most` characters, the code itself where it fits. JobError where 99 parts do not hold it."""
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
    """One of several codes: its number of how many, by what those of the same job are known, and what it holds."""

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
    """The code whose parts these are, in any order; a part may stand there twice. JobError names what is missing or does not belong."""
    parts = [_whole(code) for code in parts]
    if len(set(parts)) == 1 and parts[0][:1] in _FORMS:
        return parts[0]
    found = [part(code) for code in parts]
    if not found:
        raise JobError("There is no code here; scan the codes that are printed on the sheet.")
    if None in found:
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


# --- By columns -------------------------------------------------------------------------------


def _columns(job: dict) -> str:
    rows = job["readings"]
    cut = [len(re.match(r"[0-9.]{0,25}", row["text"])[0]) for row in rows]
    return _COLUMN.join(
        (
            _FIELD.join(job.get(key, "") for key in _HEAD),
            _sparse(row["feature"] for row in rows),
            _sparse(row["place"] for row in rows),
            "".join(row["stage"][0] for row in rows),
            _shared(rows, [row["text"][:n] for row, n in zip(rows, cut)]),
            _sparse(row["text"][n:] for row, n in zip(rows, cut)),
            _sparse(_since([job["started"], *(row["at"] for row in rows)])),
            *(_sparse(row.get(key, "") for row in rows) for key in _TOLD),
            *_done(job["done"], job["started"]),
        )
    )


def _done(entries: list, started: str):
    """The columns of what was done."""
    lines, known = [], set()
    for entry in entries:
        lines.append(
            ""
            if entry["line"] not in known
            and entry["line"] == name_of_line(entry["text"], entry["at"], entry["by"], known)
            else entry["line"]
        )
        known.add(entry["line"])
    return (
        _FIELD.join(lines),
        _FIELD.join(entry["text"] for entry in entries),
        _sparse(_since([started, *(entry["at"] for entry in entries)])),
        _sparse(entry["by"] for entry in entries),
    )


def _entries(started: str, lines: str, texts: str, at: str, by: str) -> list:
    """The entries of what was done, from their columns; a first entry has a text, so no text is no entry."""
    told = _parted(texts, _FIELD, MOST_DONE + MOST_STRUCK) if texts else []
    names, known = _parted(lines, _FIELD, MOST_DONE + MOST_STRUCK) if told else [], set()
    entries = []
    for name, text, at, by in zip(
        names, told, _times(started, _full(at, len(told))), _full(by, len(told)), strict=True
    ):
        name = name or name_of_line(text, at, by, known)
        known.add(name)
        entries.append({"line": name, "text": text, "at": at, "by": by})
    return entries


def _job(text: str, form: int) -> dict:
    if len(text) > MOST_TEXT + 200_000:
        raise ValueError("more text than any job has")
    head, feature, place, stages, numbers, rest, at, *told = _parted(text, _COLUMN, _MOST_COLUMNS)
    told, done = (told, None) if form == 1 else (told[: len(_TOLD)], told[len(_TOLD) :])
    told_once = _parted(head, _FIELD, len(_HEAD) + (MOST_DONE if form == 1 else 0))
    if len(stages) > MOST_READINGS:
        raise ValueError("more readings than any job has")
    own = {
        key: text for key, text in zip(_HEAD, told_once[: len(_HEAD)], strict=True) if text or key != "sheet"
    }
    many = len(stages)
    features = _full(feature, many)
    columns = {
        "feature": features,
        "place": _full(place, many),
        "stage": [_LETTERS[letter] for letter in stages],
        "text": [a + b for a, b in zip(_unshared(features, numbers), _full(rest, many), strict=True)],
        "at": _times(own["started"], _full(at, many)),
        **{key: _full(column, many) for key, column in zip(_TOLD, told, strict=True)},
    }
    rows = [dict(zip(columns, row)) for row in zip(*columns.values(), strict=True)]
    return {
        "format": FORMAT,
        "version": form,
        **own,
        "done": told_once[len(_HEAD) :] if form == 1 else _entries(own["started"], *done),
        "readings": rows,
    }


def _parted(text: str, mark: str, most: int) -> list:
    """Counted before it is parted: eight million fields of nothing are eight megabytes, and a list of them many times that."""
    if text.count(mark) >= most:
        raise ValueError("more parts than any job has")
    return text.split(mark)


def _sparse(values) -> str:
    fields, above = [], ""
    for value in values:
        fields.append("" if value == above else value or _EMPTY)
        above = value
    return _FIELD.join(fields).rstrip(_FIELD)


def _full(column: str, many: int) -> list:
    values, above = [], ""
    for field in _parted(column, _FIELD, max(many, 1)) + [""] * (many - 1 - column.count(_FIELD)):
        above = above if field == "" else "" if field == _EMPTY else field
        values.append(above)
    return values if many else []


def _shared(rows: list, numbers: list) -> str:
    told, before = [], {}
    for row, number in zip(rows, numbers):
        last = before.get(row["feature"], "")
        same = next((i for i, (a, b) in enumerate(zip(last, number)) if a != b), min(len(last), len(number)))
        told.append(chr(ord("a") + same) + number[same:])
        before[row["feature"]] = number
    return "".join(told)


def _unshared(features: list, column: str) -> list:
    numbers, before = [], {}
    if len(column) > 30 * len(features):  # a letter and up to 25 characters each
        raise ValueError("more numbers than readings")
    for feature, told in zip(features, re.findall(r"[a-z][0-9.]*", column), strict=True):
        before[feature] = before.get(feature, "")[: ord(told[0]) - ord("a")] + told[1:]
        numbers.append(before[feature])
    return numbers


_MINUTE = len("2026-11-25T09:12")
_FAR = 10**9  # minutes: nineteen centuries and more are not counted, and no digits beyond are read


def _since(times: list):
    """Minutes since the time before, where both are written alike from the seconds on; else the time itself."""
    for before, at in zip(times, times[1:]):
        alike = len(before) > _MINUTE - 1 < len(at) and before[_MINUTE:] == at[_MINUTE:]
        minutes = (_naive(at) - _naive(before)) // timedelta(minutes=1) if alike else 0
        yield str(minutes) if alike and abs(minutes) < _FAR else at


def _times(started: str, fields: list) -> list:
    times = [started]
    for field in fields:
        if re.fullmatch("-?[0-9]{1,10}", field):
            field = (_naive(times[-1]) + timedelta(minutes=int(field))).isoformat(timespec="minutes") + times[
                -1
            ][_MINUTE:]
        times.append(field)
    return times[1:]


def _naive(at: str) -> datetime:
    return datetime.fromisoformat(at[:_MINUTE])


# --- The dictionaries: what a job is likely to say, the likeliest last. They never change: codes on paper need them. --------------

_FEATURES = """torque: head_nut case_nut rod_nut
chamber: mouth volume
port: width_intake height_intake manifold_width_intake manifold_height_intake throat_intake
spring: wire mean_diameter active_turns total_turns free_length installed_height shim seat_load open_load
lifter: lash unit_outside unit_hole unit_clearance plunger plunger_bore plunger_clearance plunger_land travel preload oil_hole ring groove groove_width groove_depth lip pushrod body clearance
head: seat_ring_bore_intake seat_ring_bore_exhaust seat_pocket_wall valve_head_intake valve_head_exhaust valve_face_width valve_margin_intake valve_margin_exhaust seat_width_intake seat_width_exhaust valve_angle seat_angle seat_upper_angle seat_throat_angle stem_rise rocker_height stem_height seat_pocket_depth seat_ring_outside_exhaust seat_pocket_exhaust seat_ring_outside_intake seat_pocket_intake guide_hole
valve: length tip_to_retainer tip_ground lift stem_exhaust stem_intake
guide: length interference clearance_exhaust clearance_intake outside bore
flywheel: mass runout
cam: lobe_lift base_circle end_float clearance journal
piston: mass compression_height groove ring_width ring_side_clearance ring_gap pin_clearance clearance pin_bore pin diameter
cylinder: length shim register_clearance register bore
rod: mass big_end_mass small_end_mass cap_mass bolt_stretch bend twist width side_clearance centre_distance small_end_bore bush_outside bush_interference bush_bore pin_clearance bearing_clearance shell_wall big_end_bore
crankcase: deck_height seat_height cam_bore spigot_bore lifter_bore main_clearance main_shell_wall main_housing
crank: stroke throw rod_journal_length fillet bow end_float_shim end_float rod_journal main_journal"""
_LIKELY = (
    (
        "gearbox flywheel cam lifters springs pushrods pistons cylinders valves guides case halves four rods"
        " two heads, crank"
    ),
    "RC-40",
    "TS-16",
    (
        "new rings fitted, faced, balanced, replaced, reamed, lapped, line bored, bored, honed to size,"
        " polished, ground 0.50 mm under, ground 0.25 mm under, Mains and rod journals ground "
    ),
    "Guides replaced",
    "Seats cut",
    "Cylinders bored",
    "Big ends resized",
    "Small-end bushes pressed in and honed",
    "Flywheel faced",
    "Threads mended with inserts",
    "wrong place",
    "typed wrong",
    "was warm",
    "measured again",
    "forged-steel",
    "al-si-t6",
    "24 °C",
    "22 °C",
    *(f"{cylinder} {side}" for cylinder in range(1, 5) for side in ("intake", "exhaust")),
    "1",
    "2",
    "3",
    "4",
    "rrrrrrrr",
    "aaaaaaaa",
    "rfrfrfrf",
    "ffffffff",
    " g",
    " N",
    " N·m",
    " cm³",
    "°",
    " thou",
    " in ± 0.0005 in",
    " in ± 0.0001 in",
    " in ± 0.0002 in",
    " µm",
    " mm ± 0.05 mm",
    " mm ± 0.02 mm",
    " mm ± 0.01 mm",
    " mm ± 0.005 mm",
    " mm ± 0.006 mm",
    " mm ± 0.002 mm",
    " mm ± 0.003 mm",
    " mm ± 0.004 mm",
    "d3",
    "d5",
    "e1",
    "f7",
    "2027-01-01T08:00+00:00",
    "2026-11-25T09:00+01:00",
)
_SINCE_2 = """head: seat_inner_intake seat_inner_exhaust guide_wall
guide: supplied_bore
chamber: step_cut
port: width_exhaust height_exhaust manifold_width_exhaust manifold_height_exhaust throat_exhaust
piston: height
rod: small_end_wall small_end_length bush_supplied_bore bolt_shank bolt_shank_length bolt_free_thread pad_beyond_big_end pad_beyond_small_end pad_loss_big_end pad_loss_small_end offset"""


def _ids(lines: str):
    return (
        f"{group}.{name}"
        for group, _, names in (line.partition(":") for line in lines.splitlines())
        for name in names.split()
    )


_DICTIONARIES = {"1": _FIELD.join((*_ids(_FEATURES), *_LIKELY)).encode()}
_DICTIONARIES["2"] = _FIELD.join(_ids(_SINCE_2)).encode() + _FIELD.encode() + _DICTIONARIES["1"]
