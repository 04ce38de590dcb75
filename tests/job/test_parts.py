"""Parts as people name them, and the groups of the data sheets that come with them."""

import pytest

from calc.job.parts import PARTS, groups, parts_of
from calc.reference.engine import engine
from tests.job.jobs import job


@pytest.mark.parametrize("name", ["TS-16", "RC-40"])
def test_every_group_of_a_sheet_comes_with_a_part_and_no_part_without_one_is_offered(name):
    theirs = {id.partition(".")[0] for id in engine(name).features} - {"torque"}  # a setting, not a part
    assert {group for part in parts_of(engine(name)) for group in part.groups} >= theirs
    assert all(part.groups[0] in theirs for part in parts_of(engine(name)))


@pytest.mark.parametrize("part", PARTS, ids=lambda part: part.word)
def test_the_word_that_a_tick_writes_is_read_as_its_part_and_no_other(part):
    assert [other.word for other in PARTS if other.named_in(part.word)] == [part.word]
    assert groups(job(received=f"two {part.word}, ribbon")) == set(part.groups)


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("Crankcase", {"crankcase"}),
        ("crankshaft; BARRELS", {"crank", "cylinder"}),
        ("camera, springboard, casework", set()),
        ("", set()),
    ],
)
def test_free_words(words, found):
    assert groups(job(received=words)) == found
