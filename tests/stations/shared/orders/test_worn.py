"""What is worn out is renewed, unless it is bought to another part's size already."""

from tests.stations.jobs import finished, needed, said


def test_what_is_worn_out_and_not_re_machined_is_renewed():
    rows = needed(
        ("valve.stem_intake", "1 intake", "received", "7.910 mm"),
        ("valve.stem_intake", "2 intake", "received", "7.960 mm"),
        ("spring.free_length", "1 intake", "received", "41.5 mm ± 0.2 mm"),
        ("guide.bore", "1 intake", "received", "8.100 mm"),
        ("guide.bore", "1 intake", "finished", "8.008 mm"),
    )
    assert [said(row) for row in rows] == [
        ("Valves, intake", "new", ("1 intake",), "pass"),
        ("Valve springs", "new", ("1 intake",), "unsure"),
    ]
    assert rows[0].do.plain() == "Past the wear limit of 7.920 mm." and rows[1].do.plain().startswith(
        "Cannot tell"
    )


def test_wear_of_an_oversize_part_is_counted_from_its_own_size():
    # by hand: 8.160 lies within 8.150 to 8.210, a guide of 0.15 mm over; 88.395 under 87.900 + 0.50, 87.995 being no such wear of a standard one
    assert [row.part for row in needed(("guide.bore", "1 intake", "received", "8.160 mm"))] == [
        "Valves, intake"
    ]
    (row,) = needed(("piston.diameter", "1", "received", "88.395 mm"))
    assert (
        said(row) == ("Pistons with rings", "new, 0.50 mm oversize", ("1",), "pass")
        and row.do.plain() == "Past the wear limit of 88.400 mm."
    )


def test_a_part_that_is_bought_to_size_already_is_not_ordered_once_more():
    rows = needed(
        ("piston.diameter", "1", "received", "87.890 mm"),
        ("piston.diameter", "2", "received", "87.890 mm"),
        *finished("cylinder.bore", p1="88.510 mm"),
    )
    assert [said(row) for row in rows] == [
        ("Pistons with rings", "0.50 mm oversize", ("1",), "pass"),
        ("Pistons with rings", "new", ("2",), "pass"),
    ]
