"""Is this size right: held against the limits that the data sheets' own text says, read here without the handbook."""

import json
import tomllib
from decimal import Decimal
from statistics import NormalDist

import pytest

from calc.core.kinds import KINDS
from calc.page.live import answer
from calc.reference.engine import engine
from scripts.environment import ROOT

SHEETS = {"TS-16": "ts16", "RC-40": "rc40"}


def told(name: str) -> dict[str, dict]:
    """The lines of a data sheet, by the feature's id, as its file has them."""
    text = (ROOT / f"calc/reference/engines/{SHEETS[name]}.toml").read_text(encoding="utf-8")
    groups = {k: v for k, v in tomllib.loads(text).items() if k not in ("engine", "places")}
    return {f"{group}.{id}": line for group, lines in groups.items() for id, line in lines.items()}


def ask(name: str, feature: str, text: str, stage: str = "", system: str = "metric") -> dict:
    asked = {
        "call": "size",
        "engine": name,
        "feature": feature,
        "stage": stage,
        "text": text,
        "system": system,
    }
    return json.loads(answer(json.dumps(asked)))


def said(*asked, **more) -> str:
    reply = ask(*asked, **more)
    assert reply["ok"], reply
    return reply["html"]["announce"]


def beyond(limit: str, steps: int) -> str:
    """A limit moved by so many of its last digit, of one more decimal: 37.490 mm is 37.4899 mm."""
    number, _, unit = limit.replace("°", " °").partition(" ")
    moved = Decimal(number) + steps * Decimal(1).scaleb(Decimal(number).as_tuple().exponent - 1)
    return f"{moved} {unit}"


MADE = [
    (name, id, line)
    for name in SHEETS
    for id, line in told(name).items()
    if {"low", "high"} <= line.keys()
    and not line.get("undersizes")
    and not line.get("oversizes")
    and not line.get("sizes")
]
WORN = [
    (name, id, line)
    for name in SHEETS
    for id, line in told(name).items()
    if {"low", "high", "wear"} <= line.keys()
]


def ids(rows):
    return [f"{name} {id}" for name, id, _ in rows]


@pytest.mark.parametrize("name, id, line", MADE, ids=ids(MADE))
def test_on_its_limit_a_new_part_is_in_order_and_a_hair_beyond_it_is_not(name, id, line):
    assert len(MADE) > 100
    for limit, out, way in (("low", -1, "Too small"), ("high", 1, "Too large")):
        assert said(name, id, line[limit], "finished").startswith(
            "In order. Within limits, on the limit itself"
        )
        assert said(name, id, beyond(line[limit], -out), "finished").startswith("In order.")
        assert said(name, id, beyond(line[limit], out), "finished").startswith(f"{way}. ")


@pytest.mark.parametrize("name, id, line", WORN, ids=ids(WORN))
def test_a_used_part_is_held_against_its_wear_limit(name, id, line):
    assert len(WORN) > 30
    wear = engine(name).feature(id).wear
    upwards = wear > engine(name).feature(id).nominal
    way = "Too large" if upwards else "Too small"
    assert said(name, id, line["wear"], "received").startswith("In order. ")
    past = said(name, id, beyond(line["wear"], 1 if upwards else -1), "received")
    assert past.startswith(way) or "oversize" in past or line.keys() & {"undersizes", "oversizes"}


def test_where_it_matters_whether_it_is_used_both_are_told_until_it_is_said():
    """Guide bore of the TS-16: made 8.000 to 8.015 mm, worn out at 8.060 mm."""
    sheet = told("TS-16")["guide.bore"]
    assert (sheet["low"], sheet["high"], sheet["wear"]) == ("8.000 mm", "8.015 mm", "8.060 mm")
    both = said("TS-16", "guide.bore", "8.030")
    assert both.startswith("Used: In order. ") and ". New or machined: Too large. 0.015 mm over" in both
    assert said("TS-16", "guide.bore", "8.030", "received").startswith("In order. Fit for use, 0.030 mm")
    assert said("TS-16", "guide.bore", "8.030", "finished").startswith("Too large. 0.015 mm")
    assert "Used" not in said("TS-16", "guide.bore", "8.010"), "in order as new, it is so as used"


def test_a_doubt_that_reaches_over_the_limit_is_told():
    """ISO 14253-1: U = 0.010 mm is k = 2, so 0.002 mm inside is 0.4 u, and Φ(0.4) by the standard library 65.5 %."""
    sheet = told("TS-16")["valve.lift"]
    assert (sheet["low"], sheet["high"]) == ("8.75 mm", "8.95 mm")
    sure = int(100 * NormalDist().cdf(0.002 / (0.010 / 2)))
    found = said("TS-16", "valve.lift", "8.752 ± 0.010", "finished")
    assert found.startswith(f"Cannot tell. Only {sure} % sure")
    assert said("TS-16", "valve.lift", "8.752 ± 0.001", "finished").startswith("In order.")


def test_what_is_made_to_another_size_is_held_against_that():
    """0.25 mm undersize: 51.985 to 52.000 mm less 0.25."""
    html = ask("TS-16", "crank.rod_journal", "51.740", "finished")["html"]["verdict"]
    assert "Within limits for 0.25 mm undersize" in html and "51.735 mm" in html and "51.750 mm" in html


def test_a_size_without_limits_is_not_judged():
    assert "low" not in told("TS-16")["valve.rock_tip"]
    assert said("TS-16", "valve.rock_tip", "2").startswith("Not judged. ")


@pytest.mark.parametrize("text", ["abc", "5 kg", "12 34", "1e400", "9" * 200, "37.5 ± x", "", "<b>1</b>"])
def test_what_cannot_be_used_is_refused_in_one_sentence(text):
    reply = ask("TS-16", "crank.rod_journal", text)
    assert not reply["ok"] and len(reply["errors"]) == 1
    error = reply["errors"][0]
    assert error["field"] == "text" and error["message"].startswith("Rod journal: ")
    assert error["message"].endswith(".") and "<" not in error["message"].replace("<b>1</b>", "")


def test_a_bare_number_is_in_the_readers_unit_and_one_of_the_other_is_asked_back():
    inches = said("TS-16", "crank.rod_journal", "2.0470", "finished", system="inch")
    assert inches.startswith("In order"), "2.0470 in is 51.994 mm"
    assert 'data-suggest="2.0470 in"' in ask("TS-16", "crank.rod_journal", "2.0470")["html"]["verdict"]
    assert "data-suggest" not in ask("TS-16", "crank.rod_journal", "51.99")["html"]["verdict"]
    assert "data-suggest" not in ask("TS-16", "crank.rod_journal", "2.0470 in")["html"]["verdict"]


def test_a_comma_before_three_digits_is_read_as_the_part_allows():
    assert said("TS-16", "crank.rod_journal", "51,990", "finished").startswith("In order")


def test_every_feature_of_every_sheet_answers_to_its_nominal_size():
    for name in SHEETS:
        for feature in engine(name).features.values():
            judged = said(name, feature.id, feature.text, "")
            has = (feature.low, feature.high, feature.wear) != (None, None, None)
            assert judged.startswith("Not judged") != has, feature.id


def test_kinds_of_the_sheets_are_known_here():
    assert {line.get("kind", "length") for line in told("TS-16").values() if "material" not in line} <= set(
        KINDS
    )
