"""Random accepted entries of every calculator, asked of a page's own worker: answered as CPython answers, whole replies compared."""

import json

from calc.stations.index import every
from scripts.nightly import same


def test_the_pages_worker_answers_as_cpython_does(page, address):
    page.goto(address)
    for calculator in every():
        cases = [same.case(request) for request in same.accepted(calculator, 2, start=2)]
        replies = page.evaluate(
            """(requests) => import(new URL('/assets/js/runtime.mjs', location)).then(async ({ runtime }) => {
            const replies = [];
            for (const request of requests) replies.push(await runtime.ask(request));
            return replies;
        })""",
            [json.loads(each["request"]) for each in cases],
        )
        assert replies == [json.loads(each["reply"]) for each in cases], calculator.id
