"""The code of a job: whatever was in the job comes out again to the last bit, and damage is refused."""

import random
import tracemalloc
import zlib
from base64 import b32encode
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.job import likely, share
from calc.job.contents import JobError
from calc.job.files import dump, load
from calc.job.share import DAMAGED, decode, encode, join, split
from calc.reference.engine import engine
from tests.job.jobs import any_job, job, ordinary, reading
from tests.job.test_record import refused

FORMS = Path(__file__).parent / "forms"
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567"  # RFC 4648, table 3
DICTIONARIES = {"1": 0x1ED001CA, "2": 0xC83F9269, "3": 0x4CB62182}
SMALL = job(readings=[reading()])


@given(any_job())
def test_any_job_comes_out_of_its_code_to_the_last_bit(any_job):
    code = encode(any_job)
    assert decode(code) == any_job and dump(decode(code)) == dump(any_job)  # the order of keys too
    assert code[0] == "3" and set(code[1:]) <= set(
        ALPHABET
    )  # what a QR code holds in 5.5 bits, and a link without escapes
    assert decode(f" {code[:5]}\n{code[5:]}\r\n") == any_job  # wrapped by a mail


@given(any_job(), st.integers(40, 400), st.randoms())
def test_any_job_comes_out_of_its_parts_in_any_order(any_job, most, order):
    code = encode(any_job)
    try:
        parts = split(code, most)
    except JobError as error:
        assert "give its file instead" in str(error) and len(code) > 99 * (most - 20)
        return
    assert (
        all(len(part) <= most for part in parts)
        and len(parts) == 1
        or max(map(len, parts)) - min(map(len, parts)) <= len(parts)
    )
    mixed = parts + parts[:1]
    order.shuffle(mixed)
    assert join(mixed) == code and decode(join(mixed)) == any_job


def test_an_ordinary_job_fits_one_code_that_a_phone_reads_off_a_laser_print():
    """ISO/IEC 18004: version 15 has 77 modules a side; printed 45 mm wide a module is 0.5 mm."""
    segno = pytest.importorskip("segno")
    shop = ordinary()
    code = encode(shop)
    assert decode(code) == shop and len(shop["readings"]) >= 39
    assert len(code) < 700
    assert (
        segno.make(
            [("https://handbook.example.org/sizebook/job/received/#", None), (code, None)],
            error="l",
            boost_error=False,
            micro=False,
        ).version
        <= 16
    )


def test_no_change_of_one_character_passes():
    """All of them: a CRC-32 notices every burst of up to 32 bits, and one character is 5."""
    code = encode(SMALL)
    for at in range(len(code)):
        for put in ALPHABET + "0189-_ az%\u2028é":
            if put != code[at]:
                with pytest.raises(JobError):
                    decode(code[:at] + put + code[at + 1 :])
        with pytest.raises(JobError):
            decode(code[:at] + code[at + 1 :])
        with pytest.raises(JobError):
            decode(code[:at])
        if code[at : at + 2] != code[at : at + 2][::-1]:
            with pytest.raises(JobError):
                decode(code[:at] + code[at : at + 2][::-1] + code[at + 2 :])


def test_no_change_of_one_character_of_a_part_passes():
    parts = split(encode(SMALL), 60)
    assert len(parts) > 3
    for at in range(len(parts[1])):
        for put in "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_ az":
            if put != parts[1][at]:
                with pytest.raises(JobError):
                    join([parts[0], parts[1][:at] + put + parts[1][at + 1 :], *parts[2:]])


@given(any_job(), st.data())
def test_no_damage_to_any_code_passes(any_job, data):
    code = encode(any_job)
    start, end = sorted((data.draw(st.integers(0, len(code))), data.draw(st.integers(0, len(code)))))
    damaged = code[:start] + data.draw(st.text(ALPHABET, max_size=end - start + 2)) + code[end:]
    if damaged != code:
        assert refused(decode, damaged)


def test_parts_that_are_missing_or_of_another_job_are_named():
    parts, others = split(encode(SMALL), 60), split(encode(job(readings=[reading(text="54.986 mm")])), 60)
    count = len(parts)
    assert refused(join, parts[:1] + parts[2:]) == f"Part 2 of {count} is missing; scan it as well."
    assert refused(join, parts[2:]) == f"Part 1, 2 of {count} is missing; scan them as well."
    assert "not all of one job" in refused(join, [others[0], *parts[1:]])
    assert "no part of a job's code" in refused(join, [parts[0], "https://example.org/"])
    assert "no part" in refused(join, [parts[0], encode(SMALL)])
    assert refused(join, [parts[0][:-1], *parts[1:]]) == DAMAGED
    assert "There is no code" in refused(join, [])
    assert f"part 1 of {count}" in refused(decode, parts[0])
    assert join([encode(SMALL)] * 2) == encode(SMALL)


def test_too_many_parts_are_refused_and_too_small_ones_are_a_slip():
    shop = job(
        readings=[
            reading(text=f"{random.Random(i).random():.9f} mm", why=str(random.Random(i).random()))
            for i in range(300)
        ]
    )
    assert "give its file instead" in refused(split, encode(shop), 60)
    with pytest.raises(ValueError):
        split(encode(shop), 20)


def sealed(packed: bytes, form: str = "1") -> str:
    return form + b32encode(zlib.crc32(packed).to_bytes(4, "big") + packed).decode().rstrip("=")


def deflated(text: bytes) -> bytes:
    squeeze = zlib.compressobj(9, zlib.DEFLATED, -15)
    return squeeze.compress(text) + squeeze.flush()


@pytest.mark.parametrize(
    "code, words",
    [
        ("", "There is no code"),
        ("  ", "There is no code"),
        ("hello", "no code of a job"),
        ("4ABCDEFG", "newer handbook"),
        ("1", "damaged"),
        ("1A", "damaged"),
        ("1====", "damaged"),
        ("1é", "damaged"),
        ("1" + "A" * 100_001, "damaged"),
        (sealed(b""), "damaged"),
        (sealed(b"\x00"), "damaged"),
        (sealed(deflated(b"")), "damaged"),
        (sealed(deflated(b"a\x1eb")), "damaged"),
        (sealed(deflated(SMALL["name"].encode()) + b"more"), "damaged"),
        (sealed(deflated(b"\xff\xff")), "damaged"),
        (sealed(deflated(b"id\x1fn\x1fTS-16\x1f\x1fr\x1f2026-11-25\x1f\x1e" + b"\x1e" * 10)), ""),
    ],
    ids=range(16),
)
def test_what_is_no_code_is_refused(code, words):
    if words:
        assert words in refused(decode, code)
    else:
        assert decode(code)["name"] == "n"  # made by hand, as the description says


def test_a_bomb_is_not_inflated():
    """A hundred megabytes of nothing in a tenth of one: no more is inflated than the longest job takes."""
    squeeze = zlib.compressobj(9, zlib.DEFLATED, -15)
    code = sealed(b"".join(squeeze.compress(bytes(1_000_000)) for _ in range(100)) + squeeze.flush())
    tracemalloc.start()
    assert refused(decode, code) == DAMAGED
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 3 * share._MOST_BYTES


@given(
    st.lists(st.text(st.sampled_from("rfa1z.\x1f\x1d-5T:+0mé<"), max_size=12), min_size=10, max_size=18),
    st.sampled_from("12"),
)
@settings(max_examples=300)
def test_no_columns_give_anything_but_a_job_or_a_refusal(columns, form):
    columns[0] = "\x1f".join(
        ("id", "name", "TS-16", "", "", "2026-11-25T09:00", "", *columns[0].split("\x1f"))
    )
    code = sealed(deflated("\x1e".join(columns).encode()), form)
    try:
        assert decode(encode(decode(code))) == decode(code)
    except JobError as error:
        assert str(error).endswith(".")


def test_a_code_of_form_1_is_read_for_ever():
    """It stands on paper: this one was made by the first edition that made any."""
    assert decode((FORMS / "code-1.txt").read_text()) == load((FORMS / "form-1.json").read_text())


def test_a_code_of_form_2_is_read_for_ever():
    """With a line of what was done that was struck, and one that was struck and put back."""
    assert decode((FORMS / "code-2.txt").read_text()) == load((FORMS / "form-2.json").read_text())


def test_a_code_of_form_3_is_read_for_ever():
    """The same job as that of form 2, whose columns it has: it only knows more words."""
    assert decode((FORMS / "code-3.txt").read_text()) == load((FORMS / "form-2.json").read_text())


def test_the_dictionaries_never_change():
    assert {form: zlib.crc32(words) for form, words in likely.DICTIONARIES.items()} == DICTIONARIES and all(
        len(words) < 32768 for words in likely.DICTIONARIES.values()
    )


def test_the_dictionary_holds_what_the_sheets_of_this_edition_name():
    """Not needed to be read, only to be short: a sheet may name more."""
    known = set(likely.DICTIONARIES["3"].decode().split("\x1f"))
    read = [id for id, feature in engine("TS-16").features.items() if feature.tool]
    assert len([id for id in read if id not in known]) < len(read) / 6
