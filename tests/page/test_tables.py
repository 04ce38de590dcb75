"""Tables for pages: their numbers against a library, their rows, and both unit systems."""

import re

import pressfit
import pytest

from calc.page import table_html, tables
from calc.page.html import children
from calc.reference.standards import iso_286


def seen(cell, system):
    """What a reader of one unit system sees of a cell."""
    other = "inch" if system == "metric" else "metric"
    html = re.sub(rf'<span class="u-{other}">.*?</span>', "", children(cell).replace("<br>", "/"))
    return re.sub(r"<[^>]+>", "", html)


def rows(name, system="metric"):
    return [[seen(cell, system) for cell in row] for row in tables.TABLES[name]().rows]


def head(name, system="metric"):
    return [seen(cell, system) for cell in tables.TABLES[name]().columns]


@pytest.mark.parametrize("name, kind", [("iso-286 shafts", "shaft"), ("iso-286 holes", "hole")])
def test_limits_are_pressfits_at_both_ends_of_every_band(name, kind):
    """Every class that pressfit 0.1.0 holds, at a size just over the lower edge and at the upper one."""
    names, compared = head(name)[1:], 0
    for row in rows(name):
        low, high = map(int, row[0].split("–"))
        for label, cell in zip(names, row[1:]):
            letter, grade = iso_286.split(label)
            if kind == "hole" and letter != "H" or kind == "shaft" and letter not in pressfit.SHAFT_LETTERS:
                continue
            for size in (low + 0.01, high):
                theirs = pressfit.fit(f"H{grade}/{label if kind == 'shaft' else f'h{grade}'}", size)
                limits = (
                    (theirs.shaft_es_um, theirs.shaft_ei_um)
                    if kind == "shaft"
                    else (theirs.hole_es_um, theirs.hole_ei_um)
                )
                assert tuple(int(x.replace("−", "-")) for x in cell.split("/")) == limits, (label, size)
                compared += 1
    assert compared >= 48


@pytest.mark.parametrize("name", ["iso-286 holes", "iso-286 shafts", "it-grades"])
def test_bands_follow_each_other_without_a_gap(name):
    bands = [tuple(map(int, row[0].split("–"))) for row in rows(name)]
    assert bands[0][0] == 3 and bands[-1][1] == (500 if name == "it-grades" else 180)
    assert all(a[1] == b[0] for a, b in zip(bands, bands[1:]))
    assert all(x[1:] != y[1:] for x, y in zip(rows(name), rows(name)[1:]))  # like rows stand as one


def test_inch_readers_see_the_same_limits_in_thousandths():
    metric, inch = rows("iso-286 holes"), rows("iso-286 holes", "inch")
    assert (
        head("iso-286 holes", "inch")[0] == "Over, to inlimits in thou"
        and head("iso-286 holes")[0] == "Over, to mmlimits in µm"
    )
    for one, other in zip(metric, inch):
        low, high = (float(x) for x in other[0].split("–"))
        assert [round(low * 25.4), round(high * 25.4)] == [int(x) for x in one[0].split("–")]
        for a, b in zip(one[1:], other[1:]):
            for x, y in zip(a.split("/"), b.split("/")):
                assert float(y.replace("−", "-")) * 25.4 == pytest.approx(
                    float(x.replace("−", "-")), abs=0.13
                )  # written to 0.01 thou


def test_undersizes_are_exact():
    """0.010 in is 0.254 mm; a shell's wall grows by half of what the journal loses."""
    told = {row[0].replace("\u00a0", " "): row[1:] for row in rows("undersizes")}
    assert (
        told["0.25 mm"] == ["0.250", "0.1250"]
        and told["0.010 in"] == ["0.254", "0.1270"]
        and told["0.040 in"] == ["1.016", "0.5080"]
    )
    inch = {row[0].replace("\u00a0", " "): row[1] for row in rows("undersizes", "inch")}
    assert inch["0.010 in"] == "0.01000" and inch["1.00 mm"] == "0.03937"


def test_materials_growth_goes_with_their_expansion():
    """50 mm in 10 K: α·50 mm·10 K; near 20 °C a little less than the mean to 100 °C, and aluminium about twice iron."""
    told = {row[0]: row[1:] for row in rows("materials")}
    for name, (alpha, growth, _) in told.items():
        assert 0.85 * float(alpha) * 0.5 - 0.5 <= float(growth) <= float(alpha) * 0.5 + 0.5, name
    assert float(told["Al–Si casting alloy, T6"][1]) == pytest.approx(
        2 * float(told["Grey cast iron, 250 grade"][1]), abs=1
    )


def test_threads_are_those_of_the_standards_tables_with_their_usual_drills():
    """ISO 965-2 from memory, ASME B1.1 as screw_thread_lib 0.0.6 has it; drills as bd_warehouse 0.4.0 has them for soft metal."""
    told, inch = ({row[0]: row[1:] for row in rows("threads", system)} for system in ("metric", "inch"))
    assert told["M8×1.25"] == ["6.8\u00a0mm", "6.647–6.912", "7.188–7.348", "7.760–7.972", "7.042–7.160"]
    assert told["M14×1.5"] == [
        "12.5\u00a0mm",
        "12.376–12.676",
        "13.026–13.216",
        "13.732–13.968",
        "12.854–12.994",
    ]
    assert inch["1/4-20 UNC"] == [
        "#7",
        "0.19600–0.20700",
        "0.21750–0.22240",
        "0.24080–0.24890",
        "0.21270–0.21640",
    ]
    assert (
        inch["3/8-24 UNF"][0] == "Q"
        and inch["5/16-18 UNC"][0] == "F"
        and head("threads", "inch")[2] == "Hole, bore in"
    )


def test_every_table_is_markup_with_its_anchor_and_a_name_for_the_ear():
    for name in tables.TABLES:
        html = table_html(name, "here")
        assert (
            html.startswith('<div class="reference" id="here">')
            and f'aria-label="{tables.TABLES[name]().title}"' in html
        )
        assert html.count("<tr") == len(tables.TABLES[name]().rows) + 1


def test_an_unknown_table_is_refused_with_those_there_are():
    with pytest.raises(
        KeyError,
        match="there is no table 'iso'; there are iso-286 holes, iso-286 shafts, it-grades, materials, undersizes, threads",
    ):
        table_html("iso", "iso")
