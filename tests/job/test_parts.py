"""Parts as people name them, and the groups of the data sheets that come with them."""

import pytest

from calc.job.parts import PARTS, groups, not_checked, parts_of
from calc.reference.engine import engine
from tests.job.jobs import job, reading
from tests.stations.jobs import nominal


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


def test_a_word_is_a_part_only_where_it_stands_alone():
    assert groups(job(received="crankcase")) == {"crankcase"} and groups(job(received="CRANK, camshaft")) == {
        "crank",
        "cam",
    }
    assert groups(job(received="a broadhead in a suitcase")) == set()
    assert groups(job(received="", readings=[reading("cylinder.bore", "1")])) == {"cylinder"}


def test_what_was_not_checked_is_counted_place_by_place():
    missing, every = not_checked(job(received="flywheel", readings=[]))
    assert [(feature.id, places) for feature, places in missing] == [
        ("flywheel.mass", ("",)),
        ("flywheel.runout", ("",)),
        ("flywheel.register", ("",)),
        ("flywheel.face_thickness", ("",)),
        ("flywheel.root_thickness", ("",)),
        ("flywheel.step", ("",)),
        ("flywheel.gear_seat", ("",)),
        ("flywheel.gear_bore", ("",)),
    ] and every == 8
    sizes = [
        reading("crank.main_journal", "1"),
        reading("crank.main_journal", "2", "received"),
        reading("crank.rod_journal", "4", "assembly"),
    ]
    missing, every = not_checked(job(received="", readings=sizes))
    crank = [
        f
        for f in engine("TS-16").features.values()
        if f.id.startswith("crank.")
        and f.tool
        and not f.follows
        and (f.low, f.high, f.wear) != (None, None, None)
    ]  # nobody is asked for what has no limit, or what no gauge reads
    assert every == sum(len(f.places or "1") for f in crank)
    assert dict((feature.id, places) for feature, places in missing)["crank.main_journal"] == ("2", "3"), (
        "as received is not as finished"
    )
    assert sum(len(places) for _, places in missing) == every - 2
    assert not_checked(job(received="flywheel", engine="XX-9")) == ([], 0)
    assert not_checked(job(received="", readings=[reading(*told) for told in nominal("flywheel")])) == ([], 8)
