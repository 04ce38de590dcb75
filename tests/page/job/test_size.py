"""Of a job on the bench: what is still to be read, and of one size what it has and how it is kept."""

import json
import re

from calc.job import record
from calc.job.files import dump
from calc.page.live import answer
from calc.reference.engine import engine
from tests.job.jobs import ordinary

NOW = "2026-11-25T14:15+01:00"


def ask(call: str, job: dict, **more) -> dict:
    asked = {"call": call, "job": dump(job), "system": "metric", "now": NOW, "by": "MK", **more}
    return json.loads(answer(json.dumps(asked)))


def fresh(received: str, name: str = "TS-16") -> dict:
    return record.new("k3J9", "Fan", name, received, NOW, "Tern Street")


def unread(job: dict) -> list[str]:
    return re.findall(r'href="#size-([\w.]+)"', ask("job-bench", job)["html"]["unread"])


def test_what_is_still_to_be_read_is_every_size_with_limits_and_a_tool_of_the_parts_that_came():
    expected = [
        f.id
        for f in engine("TS-16").features.values()
        if f.id.startswith("crank.")
        and f.tool
        and not f.terms
        and (f.low, f.high, f.wear) != (None, None, None)
    ]
    assert len(expected) > 5 and unread(fresh("crank")) == expected
    job = record.add_reading(fresh("crank"), "crank.bow", "", "finished", "0.01 mm", NOW, "MK")
    assert unread(job) == [id for id in expected if id != "crank.bow"]
    assert unread(fresh("nothing that is known")) == []


def test_places_that_are_left_are_counted():
    job = fresh("crank")
    for place in "134":
        job = record.add_reading(job, "crank.rod_journal", place, "finished", "51.99 mm", NOW, "MK")
    assert '#size-crank.rod_journal">Rod journal</a>' in ask("job-bench", job)["html"]["unread"], (
        "one is left"
    )
    assert "Rod journal<small> 4×</small>" in ask("job-bench", fresh("crank"))["html"]["unread"]


def test_the_bench_shows_the_engine_of_the_job():
    assert ask("job-bench", fresh("crank", "RC-40"))["engine"] == "RC-40"
    gone = ask("job-bench", fresh("crank", "XX-1"))
    assert (gone["ok"], gone["engine"], gone["html"]["unread"]) == (True, "XX-1", "")


def of_one(job: dict, place: str, **more) -> str:
    asked = {
        "kind": "job",
        "feature": "crank.rod_journal",
        "place": place,
        "stages": ["received", "finished"],
    }
    return ask("job-size", job, **{**asked, **more})["html"]["job"]


def test_what_the_job_has_of_a_size_stands_with_its_verdict():
    job = record.add_reading(fresh("crank"), "crank.rod_journal", "2", "finished", "51.99 mm", NOW, "MK")
    job = record.add_reading(job, "crank.rod_journal", "3", "finished", "51.90 mm", NOW, "MK")
    shown = re.findall(r"<strong>(\d) </strong>.*?chip chip-(\w+)", of_one(job, "2"))
    assert shown == [("2", "pass"), ("3", "fail")]


def test_a_first_reading_is_kept_at_one_tap_and_another_with_its_reason():
    assert of_one(fresh("crank"), "2").count("data-job-why") == 0
    assert 'data-job-keep="finished">Keep as finished, 2' in of_one(fresh("crank"), "2")
    job = record.add_reading(fresh("crank"), "crank.rod_journal", "2", "finished", "51.99 mm", NOW, "MK")
    assert of_one(job, "2").count('data-job-keep="finished" data-job-why="') == 4
    assert 'data-job-keep="finished">' in of_one(job, "1")


def test_which_one_it_is_is_asked_before_it_is_kept():
    asked = of_one(fresh("crank"), "")
    assert re.findall('data-job-place="(.)"', asked) == ["1", "2", "3", "4"] and "data-job-keep" not in asked


def test_initials_are_asked_for_where_they_are_not_known():
    assert "data-job-initials" not in of_one(fresh("crank"), "2")
    assert "data-job-initials" in of_one(fresh("crank"), "2", by="")


def test_of_a_size_that_its_engine_has_not_a_job_says_nothing():
    assert of_one(fresh("crank"), "2", feature="crank.no_such") == ""
    assert of_one(ordinary() | {"engine": "XX-1"}, "2") == ""
