"""The pictures of a size sheet: the views on which its sizes lie, with the sizes themselves at their places."""

import pytest

from calc.job.record import current
from calc.page.engine import place_of
from calc.page.job import sheet
from calc.reference.engine import engine
from tests import markup
from tests.job.jobs import job, reading
from tests.job.orchard import orchard


def figures(made) -> list:
    root = markup.page(sheet.sheet(made))
    return [figure for place in markup.classed(root, "sheet-pictures") for figure in place]


def written(figure, system="metric") -> list[str]:
    """The words at each place, without the spaces, which lines have none between them."""
    return ["".join(markup.inside(words, system).split()) for words in figure.iter("text")]


def test_every_size_that_was_read_stands_at_its_place_once():
    shown = figures(orchard())
    views = dict.fromkeys(place_of(engine("TS-16"), id).title for id, *_ in current(orchard()))
    assert {markup.words(figure.find("figcaption")) for figure in shown} == {*views} and len(shown) == 7
    words = [one for figure in shown for one in written(figure)]
    # the readings of tests/job/orchard.json: of several places the smallest and the greatest
    assert sorted(words) == [
        "Big-endbore56.009to56.018mmCannottell",
        "Bow0.01mm",
        "Bushbore,honed22.010to22.012mm",
        "Centretocentre136.97to136.99mm",
        "Chambervolume55.8to56.1cm³",
        "Mainhousing65.008to65.011mm",
        "Mainjournal54.741to54.744mm",
        "Rodjournal51.740to51.744mm",
        "Stemheight44.96to45.10mm",
    ]


def test_in_inches_it_is_the_same_size():
    one = [reading("crank.main_journal", "1", "finished", "54.991 mm")]
    (figure,) = figures(job(received="crank", readings=one))
    assert written(figure) == ["Mainjournal54.991mm"]
    assert written(figure, "inch") == ["Mainjournal2.16500in"]  # by hand: 54.991 / 25.4


def test_on_paper_nothing_is_a_link():
    """A fragment in the address of the sheet's page names the job."""
    root = markup.page(sheet.sheet(orchard()))
    assert not list(root.iter("a")) and all(
        svg.get("role") == "img" for f in figures(orchard()) for svg in f.iter("svg")
    )


@pytest.mark.parametrize("made", [job(readings=[]), job(engine="XX-9", readings=[reading()])])
def test_without_sizes_or_without_a_sheet_there_is_no_picture(made):
    assert not figures(made)
    assert "Where these sizes are" not in markup.words(markup.page(sheet.sheet(made)))


def test_an_engine_of_which_little_is_known_has_pictures_too():
    one = [reading("crank.main_journal", "1", "finished", "2.2497 in")]
    assert len(figures(job(engine="RC-40", received="crank", readings=one))) == 1
