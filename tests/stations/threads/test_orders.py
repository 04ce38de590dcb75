"""Inserts are those that the words of what was done name."""

from tests.stations.jobs import needed, said


def test_inserts_are_those_that_the_words_name():
    rows = needed(
        done=[
            "Two M8×1.25 and one 3/8-16 insert in the case",
            "Studs M10 renewed",
            "Insert of bronze at the plug",
        ]
    )
    assert [said(row)[:2] for row in rows] == [("Thread insert", "M8×1.25"), ("Thread insert", "3/8-16")]
