"""A sheet of several codes, each opened by itself: what the page says until all are there."""
import json
from itertools import permutations

import pytest

from calc.job.record import load
from calc.job.share import encode, split
from calc.page.live import answer
from tests import markup
from tests.job.jobs import job, ordinary, reading

JOB = ordinary()
CODES = ["v1." + part for part in split(encode(JOB), 260)]
OTHERS = ["v1." + part for part in split(encode(job(readings=[reading()])), 60)]


def opened(code, others=()):
    return json.loads(answer(json.dumps({"call": "job-open", "code": code, "others": list(others), "system": "metric", "now": "2026-11-25T14:15+01:00", "by": ""})))


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
