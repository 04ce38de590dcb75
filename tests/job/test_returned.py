"""A sheet that came back: what of it the job has not, taken over without a loss. The rules are the record's own: readings are only added."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.job import contents, record, returned
from calc.job.files import dump, load
from calc.job.record import add_reading, current
from tests.job.jobs import any_job, any_reading, done, job, ordinary, reading

NAMED = "From the sheet “Orchard frost fan” that came back 27 Nov 2026 08:30"
TIP = ("head.stem_height", "1 intake", "assembly")


def add(made, text, at="2026-11-26T10:00+01:00", by="", why="", spot=TIP, **beside):
    return add_reading(made, *spot, text, at, by, why, **beside)


def lines(made, spot=TIP):
    return [(r["text"], r["why"]) for r in record.history(made, *spot)]


def test_what_the_assembler_read_is_taken_over_to_the_last_character():
    sheet = add(
        add(ordinary(), "45.050 mm ± 0.02 mm", by="AB", part="24 °C", gauge="20 °C", of="al-si-t6"),
        "1.772 in",
        spot=("head.stem_height", "2 intake", "assembly"),
    )
    made = returned.take_over(ordinary(), sheet, NAMED)
    assert made == sheet
    assert returned.compare(made, sheet, NAMED) == ([], []) and returned.take_over(made, sheet, NAMED) is made


def test_the_shop_may_have_gone_on_meanwhile():
    spot = ("crank.main_journal", "1", "finished")
    shop = record.add_done(
        add(ordinary(), "54.742 mm", "2026-11-27T09:00+01:00", "MK", "Measured again", spot), "Rods weighed"
    )
    made = returned.take_over(shop, add(ordinary(), "45.05 mm"), NAMED)
    assert made["readings"][:-1] == shop["readings"] and made["done"] == shop["done"]
    assert lines(made) == [("45.05 mm", "")] and current(made)[spot]["text"] == "54.742 mm"


def test_another_size_comes_as_a_correction_that_names_the_sheet_and_what_was_there_stays():
    shop = add(job(), "45.10 mm", by="MK")
    sheet = add(
        add(job(), "45.05 mm", "2026-11-26T11:00+01:00"),
        "45.06 mm",
        "2026-11-26T11:05+01:00",
        why="Measured again",
    )
    (first, second), late = returned.compare(shop, sheet, NAMED)
    assert (first.before["text"], second.before["text"], late) == ("45.10 mm", "45.05 mm", [])
    made = returned.take_over(shop, sheet, NAMED)
    assert lines(made) == [("45.10 mm", ""), ("45.05 mm", NAMED), ("45.06 mm", "Measured again")]
    # what was taken over is taken back as any other, and does not come again
    back = add(
        add(made, "", "2026-11-28T08:00+01:00", "MK", "Misread before"),
        "45.10 mm",
        "2026-11-28T08:01+01:00",
        "MK",
    )
    assert returned.compare(back, sheet, NAMED) == ([], [])
    # but what is corrected at home after that does, as a correction
    again = returned.take_over(
        made, add(sheet, "45.07 mm", "2026-11-29T08:00+01:00", why="Misread before"), NAMED
    )
    assert lines(again)[-1] == ("45.07 mm", f"{NAMED}: Misread before")


def test_the_same_size_is_no_news():
    assert returned.compare(
        add(job(), "45.10 mm", by="MK"), add(job(), "45.10 mm", "2026-11-27T10:00+01:00", "AB"), NAMED
    ) == ([], [])


def test_a_later_reading_of_the_job_is_not_replaced_by_an_older_one_of_the_sheet():
    shop = add(job(), "45.10 mm", "2026-11-26T12:00+01:00", "MK")
    sheet = add(job(), "45.05 mm", "2026-11-26T11:30Z")  # 12:30 where the shop is
    assert len(returned.compare(shop, sheet, NAMED)[0]) == 1
    sheet = add(job(), "45.05 mm", "2026-11-26T10:30Z")  # 11:30
    new, (late,) = returned.compare(shop, sheet, NAMED)
    assert (new, late.reading["text"]) == ([], "45.05 mm") and returned.take_over(shop, sheet, NAMED) is shop


def test_a_reading_that_was_taken_back_at_home_is_taken_back_in_the_job():
    sheet = add(job(), "45.05 mm")
    shop = returned.take_over(job(), sheet, NAMED)
    made = returned.take_over(shop, add(sheet, "", "2026-11-27T10:00+01:00", why="Another part"), NAMED)
    assert lines(made) == [("45.05 mm", ""), ("", f"{NAMED}: Another part")] and TIP not in current(made)


def said(made, *texts, by="MK"):
    for text in texts:
        made = record.add_done(made, text, "2026-11-26T10:00Z", by)
    return made


def texts(lines):
    return [line.text for line in lines]


@pytest.mark.parametrize(
    "shops, sheets, new",
    [
        ("a", "ab", "b"),
        ("a", "abc", "bc"),
        ("", "ab", "ab"),
        ("ab", "ab", ""),
        ("ab", "a", ""),
        ("ax", "ab", "b"),  # the shop went on meanwhile
    ],
)
def test_lines_of_what_was_done_are_new_where_the_job_has_not_got_them(shops, sheets, new):
    shop, sheet = said(job(), *shops), said(job(), *sheets)
    assert (texts(returned.done(shop, sheet)[0]), returned.done(shop, sheet)[1]) == (list(new), [])
    made = returned.take_over(shop, sheet, NAMED)
    assert done(made) == [*shops, *new] and made["readings"] == shop["readings"]
    assert returned.done(made, sheet) == ([], []) and returned.take_over(made, sheet, NAMED) is made
    assert returned.done({**shop, "id": "other"}, sheet) == ([], [])


def test_what_was_struck_on_either_side_stays_struck_and_the_jobs_word_is_the_last():
    both = said(job(), "a", "b")
    a, b = (line.line for line in record.done(both))
    struck = record.strike(both, a, "2026-11-27T09:00Z", "AB")
    assert returned.done(struck, both) == ([], []), "the shop struck a line that the sheet still has"
    made = returned.take_over(both, struck, NAMED)
    assert done(made) == ["b"] and made["done"] == struck["done"], "the assembler struck one"
    back = record.unstrike(made, a, "2026-11-28T09:00Z", "MK")
    assert returned.done(back, struck) == ([], []), "put back in the shop, it stays"
    assert done(returned.take_over(made, record.unstrike(struck, a, "2026-11-28T09:00Z", "AB"), NAMED)) == [
        "a",
        "b",
    ]
    gone = record.strike(said(both, "c"), record.done(said(both, "c"))[2].line, "2026-11-27T09:00Z", "AB")
    assert returned.done(both, gone) == ([], []), "written down and struck again is no news"


def test_lines_for_which_the_job_has_no_room_keep_nothing_else_out():
    shop = job(done=[f"shop's {n}" for n in range(contents.MOST_DONE - 1)])
    sheet = add(said(job(), "bolted up", "turned through"), "45.05 mm")
    assert tuple(map(texts, returned.done(shop, sheet))) == (["bolted up"], ["turned through"])
    made = load(dump(returned.take_over(shop, sheet, NAMED)))
    assert done(made) == [*done(shop), "bolted up"] and lines(made) == [("45.05 mm", "")]


@pytest.mark.parametrize("fields", [{"id": "other"}, {"engine": "RC-40"}], ids=str)
def test_the_sheet_of_another_job_has_nothing_for_it(fields):
    sheet = job(**fields, readings=[reading()])
    assert not returned.belongs(job(), sheet) and returned.take_over(job(), sheet, NAMED) == job()


@settings(max_examples=150, deadline=None)
@given(
    any_job(),
    st.lists(any_reading(), max_size=6),
    st.lists(any_reading(), max_size=6),
    st.text("x", max_size=150),
)
def test_whatever_comes_back_nothing_is_lost_and_it_comes_once(first, shops, theirs, named):
    shop, sheet = ({**first, "readings": first["readings"] + more} for more in (shops, theirs))
    new, late = returned.compare(shop, sheet, named)
    made = returned.take_over(shop, sheet, named)
    assert made["readings"][: len(shop["readings"])] == shop["readings"] and len(made["readings"]) == len(
        shop["readings"]
    ) + len(new)
    assert load(dump(made)) == made
    assert returned.compare(made, sheet, named)[0] == []
    # each size that counts in the sheet counts in the job, but where the job's own is later
    out = {(one.reading["feature"], one.reading["place"], one.reading["stage"]) for one in late}
    for spot, told in current(sheet).items():
        if spot in {(one.reading["feature"], one.reading["place"], one.reading["stage"]) for one in new}:
            assert current(made)[spot]["text"] == told["text"] and spot not in out
