"""The size sheet on paper: printed by Chromium, and read back from the printed page."""

import re
from functools import partial

import pypdfium2
import pytest
import zxingcpp

from calc.job.codes import draw, links
from calc.job.record import add_reading, current
from calc.page.job import sheet
from calc.reference.engine import demo
from tests.job.jobs import job, reading
from tests.job.orchard import orchard

BASE = "https://tern-street.example/sizebook"
POINTS = {
    "A4": (210 / 25.4 * 72, 297 / 25.4 * 72),
    "Letter": (8.5 * 72, 11 * 72),
}  # ISO 216 and ANSI/ASME Y14.1
SMALLEST = 9  # pt


@pytest.fixture
def paper(browser):
    """Prints a job's sheet and gives the PDF; `paper.page` is the page that it was printed from."""
    page = browser.new_page()

    def printed(made, size, system="metric", codes=True):
        page.set_content(
            sheet.page(made, links(made, BASE) if codes else None, draw, system=system, paper=size)
        )
        return pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True))

    printed.page = page
    yield printed
    page.close()


def text(pdf, n=0) -> str:
    return " ".join(pdf[n].get_textpage().get_text_range().split())


def lines(pdf) -> list:
    """Where each piece of text stands on the first page, in whole points."""
    page = pdf[0].get_textpage()
    return [tuple(round(x) for x in page.get_rect(n)) for n in range(page.count_rects())]


@pytest.mark.parametrize("system", sheet.SYSTEMS)
@pytest.mark.parametrize("size", sheet.PAPERS)
def test_all_sizes_of_an_ordinary_job_are_on_one_page_and_overleaf_is_how_they_are_checked(
    paper, size, system
):
    pdf = paper(orchard(), size, system)
    assert len(pdf) == 3 and pdf[0].get_size() == pytest.approx(POINTS[size], abs=1)
    words = text(pdf)
    assert "page 1 of 3" in words and "How each check is made" not in words
    assert "Where these sizes are" in text(pdf, 1) and "How each check is made" in text(pdf, 1)
    if system == "metric":
        for told in current(orchard()).values():
            assert told["text"].split()[0] in words
    for last in ("Orchard frost fan", "Turned through by hand", "Take care", "Signature"):
        assert last in words


ORDINARY = {  # received, sizes as finished: 35 to 40 readings each
    "heads": (
        "two heads with valves and springs",
        "head.seat_pocket_intake head.seat_ring_outside_intake head.seat_pocket_exhaust head.seat_ring_outside_exhaust guide.bore "
        "valve.stem_intake valve.stem_exhaust head.stem_height",
    ),
    "crank": (
        "crank, rods, case, shells",
        "crank.main_journal crank.rod_journal rod.big_end_bore rod.shell_wall rod.bush_bore rod.centre_distance crankcase.main_housing "
        "crankcase.main_shell_wall crank.end_float crank.bow rod.width crank.rod_journal_length",
    ),
    "bottom end": (
        "crank, rods, case, shells, flywheel",
        "crank.main_journal crank.rod_journal crank.bow crank.journal_round crank.journal_taper crank.end_float crankcase.main_housing "
        "crankcase.main_shell_wall crankcase.saddle_line crankcase.cam_distance crankcase.spigot_bore crankcase.seat_height "
        "rod.big_end_bore rod.shell_wall flywheel.runout",
    ),
    "cylinders": (
        "cylinders and pistons",
        "cylinder.bore piston.diameter piston.ring_gap piston.pin piston.pin_bore cylinder.length piston.compression_height piston.groove piston.ring_width",
    ),
    "whole engine": (
        "heads, rods, crank, case, cylinders, pistons, cam, lifters, flywheel",
        "crank.main_journal crank.rod_journal rod.big_end_bore crankcase.main_housing cylinder.bore "
        "piston.diameter head.stem_height chamber.volume crank.end_float",
    ),
}


def ordinary(received, ids):
    sizes = [(f, place) for f in (demo().features[id] for id in ids.split()) for place in f.places or ("",)]
    return job(
        received=received,
        done=["Machined to the sizes below, cleaned and oiled", "Gauges set in the shop's rings"],
        readings=[
            reading(
                f.id,
                place,
                "finished",
                f.text + (" ± 0.003 mm" if f.text.endswith(" mm") else ""),
                f"2026-11-{16 + n % 8}T1{n % 10}:{10 + n % 49}+01:00",
                ("MK", "RB")[n % 2],
            )
            for n, (f, place) in enumerate(sizes)
        ],
    )


@pytest.mark.parametrize("size", sheet.PAPERS)
def test_a_bottom_end_that_was_ground_is_ordered_for_on_its_first_page(paper, size):
    """What a parts counter asks for: shells by undersize, and shims by size."""
    received, ids = ORDINARY["bottom end"]
    made = ordinary(received, ids)
    ground = {
        "crank.main_journal": "54.743 mm",
        "crank.rod_journal": "51.493 mm",
        "crank.end_float": "0.28 mm",
    }
    for told in made["readings"]:
        told["text"] = ground.get(told["feature"], told["text"])
    # as bored for shells of standard outside, worn past those that were in it
    made["readings"] = [told for told in made["readings"] if "shell_wall" not in told["feature"]]
    words = text(paper(made, size))
    ordered = words[words.index("To order") :] if "To order" in words else words
    for told in ("Main bearing shells", "0.25 mm", "Rod bearing shells", "0.50 mm", "End-float shims"):
        assert told in ordered, ordered[:600]


@pytest.mark.parametrize("size", sheet.PAPERS)
@pytest.mark.parametrize("received, ids", ORDINARY.values(), ids=ORDINARY.keys())
def test_so_are_other_ordinary_jobs(paper, size, received, ids):
    pdf = paper(ordinary(received, ids), size)
    assert len(pdf) in (2, 3) and "Signature" in text(pdf) and "Where these sizes are" not in text(pdf)
    assert "Where these sizes are" in text(pdf, 1)


@pytest.mark.parametrize("size", sheet.PAPERS)
def test_nothing_printed_is_too_small_or_too_pale(paper, size):
    paper(orchard(), size)
    paper.page.emulate_media(media="print")
    found = paper.page.evaluate("""() => [...document.querySelectorAll(".sheet *")].filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())).map(e => {
        const style = getComputedStyle(e)
        return [parseFloat(style.fontSize) * 72 / 96, style.color, style.fontVariantNumeric]
    })""")
    assert len(found) > 100 and min(size for size, *_ in found) >= SMALLEST
    assert {colour for _, colour, _ in found} == {"rgb(0, 0, 0)"} and all(
        "tabular-nums" in figures for *_, figures in found
    )


@pytest.mark.parametrize("size", sheet.PAPERS)
def test_the_words_at_the_pictures_are_as_large_as_the_others_and_none_stands_on_another(paper, size):
    """An SVG's own 12 px are no points: what counts is how large a letter is on the paper."""
    for made in (orchard(), ordinary(*ORDINARY["heads"]), ordinary(*ORDINARY["cylinders"])):
        paper(made, size)
        paper.page.set_viewport_size({"width": int((POINTS[size][0] / 72 - 20 / 25.4) * 96), "height": 1000})
        paper.page.emulate_media(media="print")
        found = paper.page.evaluate("""() => {
            document.body.style.margin = 0
            const over = (a, b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 3 && b.top < a.bottom - 3
            return [...document.querySelectorAll(".sheet-pictures svg")].map(svg => {
                const words = [...svg.querySelectorAll("text")], boxes = words.map(w => w.getBoundingClientRect())
                const size = Math.min(...words.map(w => parseFloat(getComputedStyle(w).fontSize) * svg.getScreenCTM().a * 72 / 96))
                return [size, boxes.some((a, i) => boxes.slice(i + 1).some(b => over(a, b)))]
            })
        }""")
        paper.page.emulate_media(media="null")
        assert found and min(points for points, _ in found) >= SMALLEST
        assert not any(crowded for _, crowded in found)


@pytest.mark.parametrize("size, width", [("A4", 210 - 20), ("Letter", 215.9 - 20)])
def test_nothing_printed_is_cut_or_runs_into_its_neighbour(paper, size, width):
    made = add_reading(
        orchard(), "crank.end_float", "", "assembly", "0.11 mm ± 0.01 mm", "2026-12-01T10:00+01:00", "JP"
    )
    long = job(
        name="W" * 120,
        received="head " * 100,
        by="X" * 60,
        done=["Y" * 400],
        readings=[reading("crank.main_journal", "1", "finished", "54.987 mm ± 0.004 mm", by="Z" * 60)] * 2,
    )
    for each, system in ((orchard(), "metric"), (orchard(), "inch"), (made, "inch"), (long, "metric")):
        paper(each, size, system)
        paper.page.set_viewport_size({"width": int(width / 25.4 * 96), "height": 1000})
        paper.page.emulate_media(media="print")
        over = paper.page.evaluate("""() => {
            document.body.style.margin = 0
            const sheet = document.querySelector(".sheet").getBoundingClientRect()
            const shown = [...document.querySelectorAll(".sheet :is(td, th, li, p, h1, h2, dd, b, svg)")].filter(e => e.getClientRects().length)
            const out = shown.filter(e => [...e.getClientRects()].some(r => r.right > sheet.right + 1 || r.left < sheet.left - 5)).map(e => e.textContent.slice(0, 60))
            const cells = [...document.querySelectorAll(".sheet-sizes tr")].flatMap(row => [...row.cells].filter(c => c.scrollWidth > c.clientWidth + 1)).map(c => c.textContent)
            return [...out, ...cells]
        }""")
        assert over == []


@pytest.mark.parametrize("size", sheet.PAPERS)
def test_the_printed_code_is_read_back(paper, size):
    pdf = paper(orchard(), size)
    found = zxingcpp.read_barcodes(pdf[0].render(scale=300 / 72).to_numpy())
    assert tuple(code.text for code in found) == links(orchard(), BASE)


def test_several_codes_are_read_back(paper):
    made = job(
        readings=[
            reading(
                "crank.main_journal",
                "1",
                "finished",
                f"{i * 7919 % 100000}.{i * 104729 % 1000:03} mm",
                by=f"{i * 7907 % 9973}",
                why="x",
            )
            for i in range(150)
        ]
    )
    pdf = paper(made, "A4")
    found = [
        code.text
        for n in range(len(pdf))
        for code in zxingcpp.read_barcodes(pdf[n].render(scale=300 / 72).to_numpy())
    ]
    assert len(found) > 1 and sorted(found) == sorted(links(made, BASE))


def test_inside_a_page_of_the_site_it_prints_alike(browser, server, paper):
    pdf = paper(orchard(), "Letter")
    page = browser.new_page()
    page.goto(f"{server}about/")
    page.evaluate(
        """([style, body]) => {
        document.head.append(Object.assign(document.createElement("style"), { textContent: style }))
        document.querySelector("article").innerHTML = body
    }""",
        [sheet.css(), sheet.sheet(orchard(), links(orchard(), BASE), draw)],
    )
    there = pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True, format="Letter"))
    page.close()
    assert len(there) == len(pdf) and [*map(partial(text, there), range(3))] == [
        *map(partial(text, pdf), range(3))
    ]
    down = [tuple(b - a for a, b in zip(*both)) for both in zip(lines(there), lines(pdf), strict=True)]
    assert all(abs(left) <= 1 and abs(right) <= 1 and 0 <= low <= 6 for left, low, right, _ in down), (
        "each piece of text, 2 mm lower at most"
    )


def test_a_large_job_says_which_page_of_how_many(paper):
    made = job(
        readings=[
            reading(f.id, place, "finished", f.text)
            for f in demo().features.values()
            if not f.follows
            for place in f.places or ("",)
        ]
    )
    pdf = paper(made, "A4", codes=False)
    assert len(pdf) > 2
    for n in range(len(pdf)):
        assert f"page {n + 1} of {len(pdf)}" in text(pdf, n)
        if re.search(r"\bIn order\b", text(pdf, n)) and not re.search(
            "Check before closing|Where these sizes", text(pdf, n)
        ):
            assert "Place As finished ± Verdict" in text(pdf, n), "the head stands on every page of the table"
