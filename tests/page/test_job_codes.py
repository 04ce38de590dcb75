"""A sheet of several codes, each opened by itself: what the page says until all are there."""

import json
import re
from itertools import permutations

import pytest

from calc.job.files import dump, load
from calc.job.share import encode, split
from calc.page.live import answer
from tests import markup
from tests.job.jobs import job, ordinary, reading

JOB = ordinary()
CODES = ["v1." + part for part in split(encode(JOB), 260)]
OTHERS = ["v1." + part for part in split(encode(job(readings=[reading()])), 60)]


def opened(code, others=()):
    return json.loads(
        answer(
            json.dumps(
                {
                    "call": "job-open",
                    "code": code,
                    "others": list(others),
                    "system": "metric",
                    "now": "2026-11-25T14:15+01:00",
                    "by": "",
                }
            )
        )
    )


@pytest.mark.parametrize("order", list(permutations(range(len(CODES)))), ids=str)
def test_codes_are_read_in_any_order_beside_those_of_another_sheet(order):
    held = OTHERS[:2]
    for n, i in enumerate(order[:-1], 1):
        told = markup.page(opened(CODES[i], held)["html"]["view"])
        assert told.find(".//h2").text == f"{n} of {len(CODES)} codes read"
        missing = [str(j + 1) for j in range(len(CODES)) if j not in order[:n]]
        assert f"Scan code {' and '.join(missing)} as well" in markup.inside(told, "metric")
        held = [*held, CODES[i]]
    reply = opened(CODES[order[-1]], held)
    assert load(reply["job"]) == JOB and sorted(reply["used"]) == sorted(CODES)


def test_a_damaged_code_is_refused_at_once():
    damaged = CODES[0][:40] + ("A" if CODES[0][40] != "A" else "B") + CODES[0][41:]
    reply = opened(damaged)
    assert not reply["ok"] and "damaged or cut short" in reply["errors"][0]["message"]


def test_one_code_that_holds_all_needs_no_other():
    reply = opened("v1." + encode(JOB), CODES[:1])
    assert load(reply["job"]) == JOB and reply["used"] == []


def test_a_link_of_a_newer_handbook_says_so():
    reply = opened("v2." + encode(JOB))
    assert not reply["ok"] and reply["errors"][0]["message"].startswith(
        "This link was made by a newer edition of this handbook. Reload this page"
    )


def sheet(**fields) -> str:
    asked = {
        "call": "job-sheet",
        "job": dump(JOB),
        "key": "j",
        "system": "metric",
        "now": "2026-11-25T14:15+01:00",
        "by": "",
        "root": "http://localhost:8000/",
        **fields,
    }
    return json.loads(answer(json.dumps(asked)))["html"]["view"]


def test_at_an_address_that_no_other_device_opens_no_code_is_printed_and_the_shops_own_goes_first():
    here = sheet()
    assert (
        'class="sheet-codes"' not in here
        and "the handbook was opened at localhost, which no other device can open" in here
        and "at home" not in here
    )
    assert (
        "localhost opens on no other device, so the sheet carries no code, and this link serves here only."
        in here
    )
    there = sheet(address="https://tern-street.example/sizebook/")
    assert (
        'class="sheet-codes"' in there
        and "The code opens these sizes at home" in there
        and 'value="https://tern-street.example/sizebook/job/received/#v1.' in there
        and "localhost" not in there
    )
    assert "The code opens these sizes at home" in sheet(root="https://tern-street.example/sizebook/")


def test_a_mark_that_turns_the_direction_is_shown_and_not_obeyed():
    """U+202E makes a browser write what follows backwards (Unicode Standard Annex 9): 54.987 behind such a name would be read 789.45."""
    turned = dump({**JOB, "name": "frost \u202e fan", "received": "\u2067crank\u200f", "by": "\u061c"})
    html = sheet(job=turned)
    assert "frost ⟨U+202E⟩ fan" in html and "⟨U+2067⟩crank⟨U+200F⟩" in html and "⟨U+061C⟩" in html
    assert "\u202e" not in re.sub('"[^"]*"', "", html)
