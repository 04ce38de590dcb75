"""A hazard is said once on a page, in words, and stands in its calculators as a line that opens: so whatever a calculator there is
declared to be dangerous for must be said on the page itself."""

import re
from pathlib import Path

import pytest

from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.page import calculator_html, live_rest
from calc.reference.engine import demo
from calc.stations.index import find, ids
from tests.markup import page, words

DOCS = Path(__file__).resolve().parents[2] / "docs"
PAGES = {
    path.relative_to(DOCS).as_posix(): text
    for path in sorted(DOCS.rglob("*.md"))
    if "{caution:" in (text := path.read_text(encoding="utf-8")) or "/// calculator" in text
}


def said(text: str) -> list[str]:
    return re.findall(r"\{caution: *([\w-]+)\}", text)


def folds(html: str, name: str) -> list:
    return [e for e in page(html).iter("details") if e.get("data-keep") == name]


@pytest.mark.parametrize("address", PAGES)
def test_no_hazard_is_said_twice_on_a_page(address):
    found = said(PAGES[address])
    assert sorted(found) == sorted(set(found))


@pytest.mark.parametrize("address", PAGES)
def test_a_page_says_every_hazard_of_its_calculators_in_words(address):
    text = PAGES[address]
    for id in re.findall(r"^/// calculator \| (\S+)", text, re.M):
        assert {c.id for c in find(id).cautions} <= set(said(text)), id


@pytest.mark.parametrize("id", ids())
def test_the_hazards_of_the_work_stand_in_a_line_that_opens_and_names_them(id):
    cautions = find(id).cautions
    found = folds(calculator_html(id), "care")
    assert len(found) == bool(cautions)
    for fold in found:
        assert fold.get("open") is None and all(c.text in words(fold) for c in cautions)
        assert all(
            c.id.replace("-", " ") in words(fold.find("summary"))
            for c in cautions
            if c.id not in ("maker-first", "aircraft")
        )


def test_where_no_page_says_them_they_stand_open():
    (fold,) = folds(calculator_html("seat-fit", filled=Standing(demo())), "care")
    assert fold.get("open") is not None


READ = {"start": "60 kPa", "end": "59 kPa", "time": "60 s", "volume": "250 cm³", "valve": "intake"}


def test_what_a_readers_numbers_call_for_stands_in_full_an_examples_in_a_line():
    def told(entries, standing):
        found = evaluate(find("leak-test"), entries, standing=standing)
        return live_rest(found, "a", False)["result"]

    own, example = told(READ, Standing(demo())), told({}, None)
    vacuum = "A vessel under vacuum can implode"
    assert vacuum in own and not folds(own, "raised") and "<summary" not in own[: own.index(vacuum)]
    assert vacuum in words(folds(example, "raised")[0]) and 'class="cautions"' not in example
