"""What readers look for in other words than the pages', and what is not here yet."""

import pytest

from calc.stations import index as stations
from scripts import search
from scripts.environment import ROOT

MISSING = search.missing()


def words(text):
    return " ".join(text.lower().replace("-", " ").split())


def test_what_is_missing_is_looked_for_by_no_calculators_words():
    """The station that brings it takes it out of the list."""
    here = {words(one) for each in stations.every() for one in (each.title, *each.finds)}
    for one in MISSING:
        assert not here & {words(each) for each in (one.name, *one.words)}, one.name


@pytest.mark.parametrize("one", MISSING, ids=lambda one: one.id)
def test_the_nearest_page_is_there(one):
    assert (ROOT / "docs" / one.page).is_file()


def test_each_has_a_place_of_its_own():
    assert len({one.id for one in MISSING}) == len(MISSING) >= 3


def test_words_are_given_for_calculators_and_pages_that_there_are():
    """By the build too, which knows the pages' addresses (scripts/theme.py)."""
    missing = {one.id for one in MISSING}
    for place in search.found().keys() - missing:
        page = ROOT / "docs" / place
        assert place in stations.ids() or page.with_suffix(".md").is_file() or (page / "index.md").is_file()
