"""A tick is a line of what was done: when, by whom, struck and put back, carried by file and code, read by any handbook."""

from pathlib import Path

import pytest

from calc.job import files, record, returned, share
from calc.job.contents import LONGEST, MOST_DONE, NAME_MARKS, JobError
from calc.job.ticks import is_tick, line_of, tick, ticks
from calc.stations.index import CHECKS, id_of
from tests.job.jobs import done, job

AT, LATER = "2026-12-01T10:00+01:00", "2026-12-01T11:30+01:00"


def ticked(made=None, at=AT, by="JP") -> dict:
    return tick(made or job(), "rods-nuts", "Rod nuts", at, by)


def test_a_tick_says_when_and_by_whom():
    assert ticks(job()) == {} and ticks(ticked())["rods-nuts"] == {
        "line": "check-rods-nuts",
        "text": "Checked: Rod nuts",
        "at": AT,
        "by": "JP",
    }
    assert ticked(ticked(), LATER, "AB") == ticked(), "a second tap, or another hand, changes nothing"


def test_it_is_taken_back_by_striking_its_line_and_put_back_with_its_own_time_and_hand():
    back = record.strike(ticked(), line_of("rods-nuts"), LATER, "AB")
    assert ticks(back) == {} and len(back["done"]) == 2, "the history stays"
    again = ticked(back, LATER, "AB")
    assert (ticks(again)["rods-nuts"]["at"], ticks(again)["rods-nuts"]["by"]) == (LATER, "AB")
    assert [line.entries for line in record.done(again)] == [tuple(again["done"])]


def test_file_and_code_carry_it_and_what_is_no_tick_is_none():
    made = record.add_done(ticked(), "Checked: Rod nuts", LATER, "MK")  # the same words, written by hand
    assert files.load(files.dump(made)) == made == share.decode(share.encode(made))
    assert [is_tick(line) for line in record.done(made)] == [True, False]


def test_a_handbook_that_knows_nothing_of_ticks_reads_it_as_a_line():
    """The form is that of before: version 2, the keys of its description, nothing else."""
    text = files.dump(ticked())
    assert '"version": 2' in text and done(files.load(text)) == ["Checked: Rod nuts"]
    older = files.load((Path(__file__).parent / "forms" / "form-1.json").read_text("utf-8"))
    assert ticks(older) == {} and "rods-nuts" in ticks(ticked(older)), "older files open, and can be ticked"


def test_it_comes_back_to_the_shop_with_the_sheet_and_is_taken_over_once():
    (line,), beyond = returned.done(job(), ticked())
    assert (line.text, line.by, beyond) == ("Checked: Rod nuts", "JP", [])
    home = returned.take_over(job(), ticked(), "From the sheet")
    assert ticks(home) == ticks(ticked()) and returned.done(home, ticked()) == ([], [])


def test_a_job_without_room_for_a_line_says_so():
    full = job(done=[f"Line {n}" for n in range(MOST_DONE)])
    with pytest.raises(JobError, match="no more are kept"):
        ticked(full)


@pytest.mark.parametrize("path", CHECKS)
def test_the_line_of_every_check_is_one_that_a_job_may_hold(path):
    name = line_of(id_of(path))
    assert NAME_MARKS.fullmatch(name) and len(name) <= LONGEST["line"]
    assert [id_of(other) for other in CHECKS].count(id_of(path)) == 1
