"""The record of a job: nothing is lost, nothing is changed silently, and what is no job is refused in one sentence."""

import copy
import json
import math
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import calc
from calc.core.kinds import KINDS, LENGTH
from calc.core.reading import read
from calc.job import contents, files, record, texts
from calc.job.checking import checked
from calc.job.contents import JobError
from calc.job.files import dump, load
from calc.job.record import (
    add_done,
    add_reading,
    change,
    current,
    done,
    history,
    new,
    number,
    strike,
    unstrike,
)
from calc.job.texts import read_size
from calc.reference import engine
from tests.job.jobs import AT, any_job, job, ordinary, reading


def unmarked(**fields) -> dict:
    return {key: value for key, value in job(**fields).items() if key != "sheet"}


FORMS = Path(__file__).parent / "forms"
MAIN = ("crank.main_journal", "2")


def refused(call, *arguments, **named) -> str:
    with pytest.raises(JobError) as found:
        call(*arguments, **named)
    sentence = str(found.value)
    assert sentence.endswith(".") and "\n" not in sentence, sentence
    return sentence


# --- adding


def test_a_job_starts_empty_and_readings_are_added_to_a_copy():
    started = new(
        "k3J9",
        " Orchard frost fan ",
        "TS-16",
        "crank",
        "2026-11-25T09:12:41.123+01:00",
        "Tern Street Engine Works",
    )
    assert started == {
        "format": "sizebook-job",
        "version": 2,
        "id": "k3J9",
        "name": "Orchard frost fan",
        "engine": "TS-16",
        "received": "crank",
        "started": "2026-11-25T09:12+01:00",
        "by": "Tern Street Engine Works",
        "done": [],
        "readings": [],
    }
    kept = copy.deepcopy(started)
    one = add_reading(started, *MAIN, "received", "54.961 mm ± 0.004 mm", "2026-11-25T09:30:59Z", "MK")
    assert started == kept
    assert one["readings"] == [reading(stage="received", text="54.961 mm ± 0.004 mm", at="2026-11-25T09:30Z")]
    assert [line.text for line in done(add_done(one, " Mains ground ", AT, "MK"))] == [
        "Mains ground"
    ] and one["done"] == []
    assert (
        change(one, name="Hop dryer", received="crank, rods")["name"] == "Hop dryer"
        and one["name"] == "Orchard frost fan"
    )


def test_a_correction_says_why_and_the_history_stays():
    one = add_reading(job(), *MAIN, "finished", "54.989 mm", AT, "MK")
    assert 'Main journal 2 was read as "54.989 mm" as finished before; say why' in refused(
        add_reading, one, *MAIN, "finished", "54.987 mm", AT, "MK"
    )
    two = add_reading(one, *MAIN, "finished", "54.987 mm", AT, "JT", "gauge was warm")
    assert [r["text"] for r in history(two, *MAIN, "finished")] == ["54.989 mm", "54.987 mm"]
    assert current(two)[(*MAIN, "finished")]["text"] == "54.987 mm"
    assert refused(add_reading, two, *MAIN, "finished", "", AT, "JT").endswith(
        "is taken back without a reason; say why."
    )
    back = add_reading(two, *MAIN, "finished", "", AT, "JT", "was journal 3")
    assert current(back) == {} and len(history(back, *MAIN, "finished")) == 3
    assert "no reading as finished to take back" in refused(
        add_reading, back, *MAIN, "finished", "", AT, "JT", "again"
    )
    assert (
        current(add_reading(back, *MAIN, "finished", "54.990 mm", AT, "MK"))[(*MAIN, "finished")]["text"]
        == "54.990 mm"
    )


def test_what_the_sheet_no_longer_knows_can_still_be_corrected_and_taken_back():
    old = load(dump(job(readings=[reading("crank.oil_groove", "", text="3 mm"), reading(place="left")])))
    assert "no feature" in refused(add_reading, old, "crank.oil_hole", "", "finished", "3 mm", AT, "MK")
    one = add_reading(old, "crank.oil_groove", "", "finished", "3.1 mm", AT, "MK", "measured again")
    two = add_reading(one, "crank.main_journal", "left", "finished", "", AT, "MK", "it is number 2")
    assert [r["text"] for r in current(two).values()] == ["3.1 mm"]


def test_a_second_tap_adds_nothing():
    one = add_reading(job(), *MAIN, "finished", "54.987 mm", AT, "MK")
    assert add_reading(one, *MAIN, "finished", "54.987 mm", "2026-11-25T10:00Z", "MK") == one


def test_stages_are_kept_apart():
    both = add_reading(
        add_reading(job(), *MAIN, "received", "54.961 mm", AT, "MK"), *MAIN, "finished", "54.987 mm", AT, "MK"
    )
    assert [key[2] for key in current(both)] == ["received", "finished"]


@pytest.mark.parametrize(
    "typed, kept",
    {
        "54.987 mm": "54.987 mm",
        " 54.987 mm ": "54.987 mm",
        "54,987 mm": "54.987 mm",
        "1 234,5 mm": "1234.5 mm",
        "54.987 ± 0.004 mm": "54.987 ± 0.004 mm",
        "54,961 ± 0,004 mm": "54.961 ± 0.004 mm",
        "54.987 mm ± 0.004": "54.987 mm ± 0.004 mm",
        "2.1654 ± 0.0002 in": "2.1654 ± 0.0002 in",
        "1 31/64 in": "1 31/64 in",
        "5/8": "5/8 in",
        "54.987 mm ± 4 µm": "54.987 mm ± 4 µm",
        "0": "0 mm",
    }.items(),
)
def test_a_reading_is_kept_as_typed_with_its_unit_and_a_decimal_point(typed, kept):
    found = add_reading(job(), *MAIN, "finished", typed, AT, "MK")["readings"][0]["text"]
    assert found == kept
    for unit in (LENGTH.metric, LENGTH.inch):  # it means the same on a metric page and on an inch page
        before, after = read_size(typed, LENGTH, LENGTH.metric), read(found, LENGTH, unit)
        assert (before.value, before.doubt) == (after.value, after.doubt)


REFUSED = [  # arguments of add_reading: words of the sentence
    (
        ("crank.main_jurnal", "2", "finished", "54.987 mm"),
        "is no feature of TS-16; nearest are crank.main_journal",
    ),
    (("qqqq", "2", "finished", "54.987 mm"), "give one of its data sheet"),
    (
        ("crank.main_journal", "", "finished", "54.987 mm"),
        "Main journal: its place is not told; give one of 1, 2, 3",
    ),
    (
        ("crank.main_journal", "4", "finished", "54.987 mm"),
        'Main journal: "4" is no place of it; give one of 1, 2, 3',
    ),
    (("crank.end_float", "2", "finished", "0.1 mm"), "Crank end float: there is only one"),
    (
        ("crank.main_journal", "2", "as made", "54.987 mm"),
        "is no stage of a reading; give received, finished, assembly",
    ),
    (("crank.main_journal", "2", "finished", "54.987"), "names no unit; give a length such as"),
    (("crank.main_journal", "2", "finished", "54.987 kg"), "kg is a mass, and a length belongs here"),
    (("crank.main_journal", "2", "finished", "large"), "is not a number"),
    (("crank.main_journal", "2", "finished", "nan mm"), "is not a size"),
    (("crank.main_journal", "2", "finished", "1e99 mm"), "beyond all sizes"),
    (("crank.main_journal", "2", "finished", "9" * 101), "has 101 characters; give at most 100"),
    (("crank.main_journal", "2", "finished", "54.987 mm\x00"), "cannot be shown (U+0000)"),
    (("crank.main_journal", "2", "finished", None), "The reading's text is not a text"),
    (("crank.main_journal", ["2"], "finished", "54.987 mm"), "The reading's place is not a text"),
    (("torque.head_nut", "", "finished", "32 mm"), "mm is a length, and a torque belongs here"),
]


@pytest.mark.parametrize("arguments, words", REFUSED, ids=range(len(REFUSED)))
def test_what_cannot_be_a_reading_is_refused_and_the_job_stays(arguments, words):
    before = job()
    kept = copy.deepcopy(before)
    assert words in refused(add_reading, before, *arguments, AT, "MK")
    assert before == kept


@pytest.mark.parametrize(
    "at",
    [
        "",
        "yesterday",
        "2026-02-30T09:00Z",
        "2026-11-25T25:00Z",
        "2026-11-25T09:12+01:00" * 9,
        7,
        None,
        "2026-11-25T09:12\n",
    ],
)
def test_a_time_that_is_none_is_refused(at):
    assert "has the time" in refused(add_reading, job(), *MAIN, "finished", "54.987 mm", at, "MK")


def test_a_warm_reading_is_worked_out_at_20_degrees():
    """Steel 11.5e-6/K: 54.987 mm read 10 K warm with a steel gauge at 20 °C is 54.987 / (1 + 11.5e-6·10) at 20 °C (ISO 1)."""
    warm = add_reading(
        job(), *MAIN, "finished", "54.987 mm ± 0.004 mm", AT, "MK", part="30 °C", of="forged-steel"
    )
    value, u = number(warm, warm["readings"][0])
    from calc.reference.materials import MATERIALS

    alpha = MATERIALS["forged-steel"].mean_alpha(303.15)
    assert float(value) == pytest.approx(0.054987 / (1 + alpha * 10), abs=1e-9)
    assert u == pytest.approx(
        math.hypot(2e-6, 0.054987 * alpha * 10 * 0.025)
    )  # GUM, H.1 (from memory), counts the coefficient's doubt too: 5 % of it, k = 2
    bare = add_reading(job(), *MAIN, "finished", "54.987 mm", AT, "MK", part="30 °C", of="forged-steel")
    assert number(bare, bare["readings"][0]) == (value, 0.0)  # where none is told, it is taken as it is
    doubtful = add_reading(
        job(), *MAIN, "finished", "54.987 mm", AT, "MK", part="30 ± 2 °C", of="forged-steel"
    )
    assert number(doubtful, doubtful["readings"][0])[1] == pytest.approx(
        0.054987 * alpha * math.hypot(1, 10 * 0.025), rel=1e-3
    )  # GUM: |∂L/∂t|·u(t), and the coefficient as above
    assert "is no material of this handbook" in refused(
        add_reading, job(), *MAIN, "finished", "54.987 mm", AT, "MK", part="30 °C"
    )
    assert "no temperature to measure at" in refused(
        add_reading, job(), *MAIN, "finished", "54.987 mm", AT, "MK", part="300 °C", of="forged-steel"
    )
    assert "only a length" in refused(
        add_reading,
        job(),
        "torque.head_nut",
        "",
        "finished",
        "32 N·m",
        AT,
        "MK",
        part="30 °C",
        of="forged-steel",
    )


def test_what_is_changed_is_what_may_be():
    for key in ("readings", "done", "id", "version", "colour"):
        assert "cannot be changed" in refused(change, job(), **{key: "x"})
    assert "name is empty" in refused(change, job(), name="  ")
    assert "line of what was done is empty" in refused(add_done, job(), " ")


def test_a_bracket_in_a_text_is_no_depth():
    kept = job(received="[" * 300 + "\\" + '"' + "{" * 200)
    assert load(dump(kept)) == kept


def test_no_job_holds_more_text_than_a_file_may():
    full = job(readings=[reading(why="w" * 200, by="b" * 60) for _ in range(5000)])
    assert len(dump(full)) < contents.LONGEST_FILE and load(dump(full)) == full
    assert "characters; no more than" in refused(
        checked,
        job(
            readings=[
                reading(place="p" * 40, why="w" * 200, by="b" * 60, of="o" * 40, feature="f." + "x" * 78)
                for _ in range(5000)
            ]
        ),
    )


def test_thousands_of_readings_are_kept_and_then_no_more():
    full = job(
        readings=[reading(place=str(i % 3 + 1), text=f"54.{i:04} mm") for i in range(contents.MOST_READINGS)]
    )
    assert load(dump(full)) == full
    assert "no more are kept; start a second job" in refused(
        add_reading, full, "crank.end_float", "", "finished", "0.1 mm", AT, "MK"
    )
    assert "give at most 5000" in refused(checked, {**full, "readings": full["readings"] * 2})


# --- what was done


def test_a_line_is_struck_by_its_name_whatever_stands_before_it_and_can_be_put_back():
    """By place or by text, a double tap took the line behind it, and of two tabs the second took another one."""
    made = add_done(
        add_done(add_done(job(), "Guides replaced", AT, "MK"), "Seats cut", AT, "MK"),
        "Seats cut",
        "2026-11-26T09:00Z",
        "JT",
    )
    first, second, third = (line.line for line in done(made))
    one = strike(made, first, "2026-11-26T10:00:31Z", "JT")
    assert [bool(line.struck) for line in done(one)] == [True, False, False]
    assert strike(one, first, "2026-11-26T10:00Z", "JT") is one  # a second tap on the same line
    two = strike(one, second, "2026-11-26T10:05Z", "JT")  # from a tab that still shows all three
    assert [(line.text, line.line) for line in done(two) if not line.struck] == [("Seats cut", third)]
    back = unstrike(two, first, "2026-11-26T10:06Z", "MK")
    assert unstrike(back, first, "2026-11-26T10:06Z", "MK") is back
    line = done(back)[0]
    assert (line.text, line.at, line.by, line.struck) == ("Guides replaced", AT, "MK", None)
    assert [(e["text"], e["at"], e["by"]) for e in line.entries] == [
        ("Guides replaced", AT, "MK"),
        ("", "2026-11-26T10:00Z", "JT"),
        ("Guides replaced", "2026-11-26T10:06Z", "MK"),
    ]
    assert load(dump(back)) == back and made["done"] == back["done"][:3]
    assert "is not in the job" in refused(strike, made, "0", AT, "MK")


def test_a_second_tap_adds_no_second_line():
    one = add_done(job(), "Mains ground", AT, "MK")
    assert add_done(one, "Mains ground", AT, "MK") is one
    assert len(done(add_done(one, "Mains ground", "2026-11-26T09:00Z", "MK"))) == 2  # done again
    again = add_done(strike(one, done(one)[0].line, AT, "MK"), "Mains ground", AT, "MK")
    assert [bool(line.struck) for line in done(again)] == [True, False] and load(dump(again)) == again


def test_lines_are_bounded_and_a_line_can_be_struck_while_there_are_as_many_as_there_may_be():
    full = job(done=[f"line {n}" for n in range(contents.MOST_DONE)])
    assert "no more are kept; start a second job" in refused(add_done, full, "one more", AT, "MK")
    for n in range(contents.MOST_STRUCK):
        full = (unstrike if n % 2 else strike)(full, "line-7", AT, "MK")
    assert "no more is kept" in refused(strike, full, "line-7", AT, "MK") and load(dump(full)) == full


# --- looking


def test_other_limits_of_what_was_read_than_at_the_last_reading_are_noticed(monkeypatch):
    before = add_reading(job(), *MAIN, "finished", "54.987 mm", AT, "MK")
    for id in ("crankcase.main_housing", "crankcase.main_shell_wall"):
        before = add_reading(before, id, "2", "finished", engine.demo().feature(id).text, AT, "MK")
    sheet = engine.demo()

    def noticed(**changed):
        """... where these features of the sheet have changed since."""
        features = {
            id: replace(f, **changed.get(id.replace(".", "_"), {})) for id, f in sheet.features.items()
        }
        monkeypatch.setattr(
            engine, "engine", lambda name: engine.Engine(sheet.name, "Said otherwise", features)
        )
        return record.sheet_changed(before)

    assert not noticed() and not noticed(
        crank_main_journal={"label": "Journal"}, cam_journal={"low": 0.02}
    )  # words, and what was not read
    assert (
        noticed(crank_main_journal={"low": 0.054980})
        and noticed(crank_main_journal={"places": ("1", "2")})
        and noticed(crankcase_main_clearance={"wear": 0.0002})
    )
    assert not record.sheet_changed(
        {key: value for key, value in before.items() if key != "sheet"}
    )  # of one that was never marked nothing is known
    again = add_reading(before, "crank.main_journal", "1", "finished", "54.987 mm", AT, "MK")
    assert not record.sheet_changed(again) and again["sheet"] != before["sheet"]


def test_readings_stand_in_the_order_of_the_sheet_and_what_it_does_not_know_stands_last():
    rows = [
        ("shop.jig", "b"),
        ("lifter.body", "3 exhaust"),
        ("crank.main_journal", "3"),
        ("crank.main_journal", "left"),
        ("crank.main_journal", "1"),
        ("head.guide_hole", "2 exhaust"),
        ("head.guide_hole", "2 intake"),
        ("shop.arbor", "a"),
    ]
    found = current(job(readings=[reading(*row, text="1 mm") for row in rows]))
    assert [key[:2] for key in found] == [
        ("head.guide_hole", "2 intake"),
        ("head.guide_hole", "2 exhaust"),
        ("crank.main_journal", "1"),
        ("crank.main_journal", "3"),
        ("crank.main_journal", "left"),
        ("lifter.body", "3 exhaust"),
        ("shop.jig", "b"),
        ("shop.arbor", "a"),
    ]


def test_a_job_of_an_engine_without_a_sheet_is_kept_and_takes_readings():
    strange = change(job(), engine="ZZ-9")
    read = add_reading(job(), *MAIN, "finished", "54.987 mm", AT, "MK")
    assert (
        "sheet" not in change(read, engine="ZZ-9")
        and change(change(read, engine="ZZ-9"), engine="TS-16") == read
    )
    one = add_reading(strange, "gearbox.pinion_depth", "left", "finished", "12.34 mm", AT, "MK")
    assert load(dump(one)) == one and list(current(one)) == [("gearbox.pinion_depth", "left", "finished")]
    value, u = number(one, one["readings"][0])
    assert value.text() == "12.34 mm" and float(value) == 0.01234 and u == 0
    assert "no size with its unit" in refused(
        add_reading, strange, "gearbox.pinion_depth", "", "finished", "much", AT, "MK"
    )


def test_a_data_sheet_that_cannot_be_used_is_told_with_its_line(monkeypatch):
    def broken(name):
        raise engine.SheetError(
            "calc/reference/engines/zz9.toml, line 3: crank.main_journal has no nominal size; give one."
        )

    kept = job()
    monkeypatch.setattr(engine, "engine", broken)
    assert refused(current, kept).startswith("calc/reference/engines/zz9.toml, line 3")


def test_a_reading_of_another_kind_than_the_sheets_is_kept_but_is_no_number():
    kept = load(dump(job(readings=[reading(text="5 kg")])))
    assert current(kept)
    assert "kg is a mass" in refused(number, kept, kept["readings"][0])


# --- files


@given(any_job())
def test_any_job_comes_back_from_its_file_to_the_last_bit(any_job):
    assert load(dump(any_job)) == any_job
    assert json.dumps(load(dump(any_job))) == json.dumps(checked(any_job))  # the order of keys too
    assert load(dump(any_job).encode()) == any_job and load("\ufeff" + dump(any_job)) == any_job
    assert load(json.dumps(any_job)) == any_job  # without a check sum, other spaces


@given(any_job(), st.data())
def test_any_damage_to_a_file_is_refused_or_harmless(any_job, data):
    """One character put for another changes spaces at most: whatever the file says is guarded by its check sum."""
    text = dump(any_job)
    at = data.draw(st.integers(0, len(text) - 1))
    put = data.draw(st.one_of(st.characters(exclude_categories=("Cs",)), st.just("")))
    damaged = text[:at] + put + text[at + 1 :]
    try:
        found = load(damaged)
    except JobError as error:
        assert str(error).endswith(".") and "\n" not in str(error)
    else:
        assert found == any_job
    if (short := text[:at].rstrip()) != text.rstrip():
        refused(load, short)


def nested(depth):
    return '{"format": "sizebook-job", "version": 2, "readings": ' + "[" * depth + "]" * depth + "}"


GOOD = job(readings=[reading()], done=["Ground"])


def without(key):
    return json.dumps({k: v for k, v in GOOD.items() if k != key})


def with_(**fields):
    return json.dumps({**GOOD, **fields})


def with_done(**fields):
    return json.dumps({**GOOD, "done": [{**GOOD["done"][0], **fields}]})


def with_reading(**fields):
    return json.dumps({**GOOD, "readings": [{**GOOD["readings"][0], **fields}]})


HOSTILE = {
    "": "is empty",
    " \n": "is empty",
    "nonsense": "is not JSON",
    "null": "no job of this handbook",
    "[]": "no job",
    "3": "no job",
    '"sizebook-job"': "no job",
    "{}": "no job",
    "[" * 100_000: "too deep",
    '{"a":' * 100_000: "too deep",
    nested(25): "is missing",
    nested(31): "too deep",
    "9" * 5000: "beyond all sizes",
    '{"format": NaN}': "NaN",
    '{"a": -Infinity}': "-Infinity",
    '{"format": "sizebook-job", "format": "sizebook-job"}': '"format" stands in it twice',
    dump(GOOD)[:-40]: "cut short",
    dump(GOOD).replace("54.987", "54.937"): "check sum",
    dump(GOOD).replace('"check": "', '"check": "0'): "check sum",
    with_(check=7): "check sum",
    with_(check=["x"]): "check sum",
    with_(version=99): "form 99, written by a newer handbook",
    with_(version=10**40): "newer handbook",
    with_(version=-1): "whole number",
    with_(version=True): "whole number",
    with_(version="1"): "whole number",
    with_(version=None): "whole number",
    with_(version=1.0): "whole number",
    with_(format="cookbook"): "no job",
    **{
        without(key): f"its {key} is missing"
        for key in ("id", "name", "engine", "received", "started", "by", "done", "readings")
    },
    with_(colour="red"): '"colour", which this form',
    with_(name=""): "name is empty",
    with_(name=3): "name is not a text",
    with_(name="x" * 121): "121 characters; give at most 120",
    with_(name="a\x00b"): "U+0000",
    with_(name="\ud800"): "U+D800",
    with_(id="../x"): "id",
    with_(id=""): "id",
    with_(engine="\n"): "engine is empty",
    with_(sheet="xyz"): "eight hexadecimal digits",
    with_(sheet=7): "is not a text",
    with_(sheet=""): "eight",
    with_(started="soon"): "has the time",
    with_(started=None): "has the time",
    with_(done="Ground"): "done is not a list",
    with_(version=1, done=[3]): "is not a text",
    with_(version=1, done=[""]): "is empty",
    with_(version=1, done=3): "done is not a list",
    with_(done=["Ground"]): "is none",
    with_(done=[{}]): "its line is missing",
    with_done(text=""): "is empty",
    with_done(text=" "): "is empty",
    with_done(line="a b"): "is called",
    with_done(at="now"): "has the time",
    with_done(at=None): "has the time",
    with_done(by=3): "is not a text",
    with_done(why=""): '"why"',
    with_(version=1, done=["x"] * 101): "101 lines",
    with_(done=job(done=["x"] * 101)["done"]): "101 lines",
    with_(done=[GOOD["done"][0]] * 401): "401 lines",
    with_(done={}): "not a list",
    with_(readings={}): "not a list",
    with_(readings=[[]]): "Reading 1 is not a reading",
    with_(readings=[None]): "Reading 1 is not",
    with_(readings=[{}]): "Reading 1 is not whole: its feature is missing",
    with_reading(text=54.987): "Reading 1, text is not a text",
    with_reading(text="54.987"): "no size with its unit",
    with_reading(text="54.9x87 mm"): "no size",
    with_reading(text=""): "taken back without a reason",
    with_reading(text="x" * 101): "101 characters",
    with_reading(stage="made"): "no stage",
    with_reading(stage=None): "is not a text",
    with_reading(feature="main"): "no feature",
    with_reading(feature="<b>.x"): "no feature",
    with_reading(feature=["a"]): "is not a text",
    with_reading(place=2): "place is not a text",
    with_reading(at="now"): "has the time",
    with_reading(at=[]): "has the time",
    with_reading(extra=""): '"extra"',
    with_reading(part="hot"): "is not a number",
    with_reading(part="31"): "names no unit",
    with_reading(gauge=20): "is not a text",
    with_reading(of=None): "is not a text",
}


@pytest.mark.parametrize("text, words", HOSTILE.items(), ids=range(len(HOSTILE)))
def test_what_is_no_job_is_refused_in_one_sentence(text, words):
    assert words in refused(load, text)


def test_a_file_that_is_too_large_or_no_text_is_refused():
    assert "no job has more" in refused(load, " " * (contents.LONGEST_FILE + 1))
    assert "not text in UTF-8" in refused(load, b"\xff\xfe\x00")


@given(
    st.recursive(
        st.none() | st.booleans() | st.floats() | st.integers() | st.text(max_size=5),
        lambda x: (
            st.lists(x, max_size=3)
            | st.dictionaries(
                st.sampled_from([*GOOD, "sizes", "customer", "feature", "text", "x"]), x, max_size=4
            )
        ),
        max_leaves=12,
    ),
    st.sampled_from([0, 1]),
)
@settings(max_examples=300)
def test_no_data_gives_anything_but_a_job_or_that_refusal(data, version):
    for tried in (
        data,
        {**GOOD, "readings": data},
        {
            "format": "sizebook-job",
            "version": version,
            **(data if isinstance(data, dict) else {"sizes": data}),
        },
        {
            "format": "sizebook-job",
            "version": 0,
            "id": "a",
            "customer": "b",
            "engine": "c",
            "started": AT,
            "sizes": [data],
        },
    ):
        try:
            assert load(dump(checked(tried))) == checked(tried)
        except JobError:
            pass


# --- forms


def test_a_job_of_form_0_is_brought_to_the_present_one():
    found = load((FORMS / "form-0.json").read_text())
    assert found == unmarked(
        id="frost-1",
        received="crank, four rods",
        started="2026-03-02T08:05+01:00",
        by="",
        readings=[
            reading(place="1", stage="received", text="54.961 mm", at="2026-03-03T10:40+01:00"),
            reading(place="1", text="54.743 mm ± 0.004 mm", at="2026-03-03T10:40+01:00"),
            reading(stage="received", text="54.958 mm", at="2026-03-02T08:05+01:00", by=""),
            reading("crank.end_float", "", text="0.10 mm", at="2026-03-02T08:05+01:00", by="JT"),
        ],
    )


def test_a_job_of_form_1_is_brought_to_the_present_one():
    """Its lines of what was done bore no name: each gets one, the same on every device, also where the same was said twice."""
    old = json.loads((FORMS / "form-1.json").read_text())
    found = load((FORMS / "form-1.json").read_text())
    assert {key: found[key] for key in found if key not in ("version", "done")} == {
        key: old[key] for key in old if key not in ("version", "done", "check")
    }
    assert [(line.text, line.at, line.by, line.struck) for line in done(found)] == [
        (text, "", "", None) for text in old["done"]
    ]
    said_twice = {
        key: value for key, value in {**old, "done": ["Ground", "Ground"]}.items() if key != "check"
    }
    assert len({line.line for line in done(checked(said_twice))}) == 2 and checked(said_twice) == checked(
        said_twice
    )


def test_a_job_of_form_2_loads_as_it_was_written():
    """The file is not written anew by this edition: it is what a shop has on its disk."""
    found = load((FORMS / "form-2.json").read_text())
    assert {**json.loads((FORMS / "form-2.json").read_text())} == {**found, "check": files._check(found)}
    assert [r["by"] for r in history(found, "crank.main_journal", "1", "finished")] == ["MK", "JT"]


def test_a_job_of_a_newer_form_is_refused_and_says_so():
    assert refused(load, (FORMS / "form-99.json").read_text()) == (
        "This job is of form 99, written by a newer handbook, and this one reads forms up to 2; open it with the newer one."
    )


@pytest.mark.parametrize(
    "damage",
    [
        {"sizes": 3},
        {"sizes": [3]},
        {"sizes": [{}]},
        {"customer": None},
        {"sizes": [{"feature": "a.b", "as_received": 5}]},
        {"started": 4},
    ],
)
def test_a_damaged_older_form_is_refused(damage):
    refused(checked, {**json.loads((FORMS / "form-0.json").read_text()), **damage})
    refused(
        checked, {k: v for k, v in json.loads((FORMS / "form-0.json").read_text()).items() if k not in damage}
    )


def test_the_file_in_the_description_of_the_form_is_one():
    """Its example is what `dump` writes."""
    page = Path(record.__file__).with_name("FORMAT.md").read_text(encoding="utf-8")
    example = page.partition("```json\n")[2].partition("```")[0]
    kept = load(example)
    assert set(kept["readings"][0]) == {
        "feature",
        "place",
        "stage",
        "text",
        "at",
        "by",
        "why",
        "part",
        "gauge",
        "of",
    }
    assert json.loads(dump(kept)) == json.loads(example)
    for key in (*kept, *kept["readings"][0]):
        assert f"`{key}`" in page, key


@pytest.mark.parametrize(
    "number",
    [
        "0",
        "0.5",
        "0,250",
        "1,250",
        "1 234,5",
        "5/8",
        "11/8",
        "1 31/64",
        "1 10/100",
        "1:10",
        "44° 54'",
        "1e5",
        "3·10^-3",
        "100,0",
        "20 ± 1",
        "54.987 ± 0,250",
    ],
)
def test_the_kind_of_a_text_is_that_which_asking_every_kind_gives(number):
    """Thousands of texts are told apart by their marks and units alone."""
    units = {unit.symbol for kind in KINDS.values() for unit in (kind.metric, kind.inch)} | {
        "cm3",
        "N/mm2",
        "C",
        "ft",
        "''",
    }
    for text in [f"{number} {unit}" for unit in units]:
        reading = [
            kind
            for kind in KINDS.values()
            if not (texts._BARE.fullmatch(text) and kind.metric.symbol) and texts.reads(text, kind)
        ]
        assert texts.kind_of(text) == min(
            reading,
            key=lambda kind: not text.rstrip().endswith(texts.entry_of(text, kind).unit.symbol),
            default=None,
        ), text


def test_a_file_says_which_handbook_wrote_it_and_that_is_no_part_of_the_job():
    kept = ordinary()
    text = dump(kept)
    assert json.loads(text)["written_by"] == f"Sizebook {calc.__version__}"
    assert load(text) == kept and "written_by" not in load(text)
    other = text.replace(f"Sizebook {calc.__version__}", "Sizebook 9.1.0")
    assert load(other) == kept and dump(load(other)) == text
    assert load("".join(line for line in text.splitlines(True) if "written_by" not in line)) == kept


@pytest.mark.parametrize("said", ["7", "[]", '"' + "x" * 200 + '"'])
def test_a_writer_that_is_no_name_is_refused(said):
    spoilt = dump(ordinary()).replace(f'"Sizebook {calc.__version__}"', said)
    with pytest.raises(JobError, match="is no name of a handbook"):
        load(spoilt)
