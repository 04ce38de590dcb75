"""The size sheet as markup: every size on it in both unit systems, nothing that a text could break, nothing said that is not so."""

import re
from collections import Counter

import pytest
from hypothesis import given, settings

import calc
from calc.job.checking import sheet_of
from calc.job.codes import FORM, MOST, MOST_CODES, address_in, draw, links, reachable
from calc.job.contents import JobError
from calc.job.parts import counts, not_checked
from calc.job.record import add_reading, current, strike
from calc.job.share import decode, join
from calc.job.ticks import tick
from calc.job.verdicts import CHANGED, judge
from calc.page.job import missing as missed
from calc.page.job import sheet
from calc.page.job.sheet_marks import CORRECTED, SYSTEMS, WARM, WORN
from calc.reference import cautions
from calc.reference.engine import engine as engine_named
from calc.stations import index as stations
from tests import markup
from tests.job.jobs import any_job, done, job, reading
from tests.job.orchard import orchard

BASE = "https://tern-street.example/sizebook"


def body(made, codes=None, draw_code=None):
    return markup.page(sheet.sheet(made, codes, draw_code))


def part(root, name):
    (found,) = markup.classed(root, name)
    return found


def table(root, system="metric") -> list:
    """The rows of sizes as their reader sees them: the size's name alone, or place, readings and verdict."""
    return [[markup.inside(cell, system) for cell in row] for row in part(root, "sheet-sizes").iter("tr")]


def told(root, system="metric") -> str:
    return markup.inside(root, system)


def test_every_reading_stands_on_it_digit_for_digit():
    rows = table(body(orchard()))
    of, seen = "", {}
    was_worn = {(row.feature, row.place) for row in judge(orchard()) if row.was_worn}
    assert was_worn == {
        ("rod.big_end_bore", "1"),
        ("rod.big_end_bore", "2"),
        ("rod.big_end_bore", "3"),
        ("crank.main_journal", "1"),
        ("crank.main_journal", "3"),
    }
    for row in rows[1:]:
        if len(row) == 1:
            of = row[0]
        else:
            seen[of, row[0]] = row[1:]
    for (id, place, stage), told in current(orchard()).items():
        label = sheet_of(orchard()).features[id].label
        cells = next(
            cells for (of, where), cells in seen.items() if of.startswith(label) and where == (place or "–")
        )
        at = 0 if stage == "received" else 2
        size, _, doubt = told["text"].partition(" ± ")
        worn = WORN if stage == "received" and (id, place) in was_worn else ""
        assert (
            cells[at] == size.split()[0]
            and cells[at + 1].removesuffix(CORRECTED) == (f"± {doubt.split()[0]}" if doubt else "") + worn
        )
    assert len(seen) == len({key[:2] for key in current(orchard())})


def test_other_limits_than_at_the_last_reading_are_told():
    words = CHANGED
    now = add_reading(orchard(), "crank.end_float", "", "finished", "0.10 mm", "2026-11-24T10:00Z", "MK")
    assert words not in told(body(now)) and words not in told(body(orchard()))  # of this one no mark was kept
    assert words in told(part(body({**now, "sheet": "0123abcd"}), "sheet-warning"))


def test_a_size_is_told_with_its_limits_and_verdict():
    rows = table(body(orchard()))
    assert rows[0] == ["Place", "As received ±", "As finished ±", "Verdict"]
    assert ["Main journal 54.735–54.750 mm (0.25 mm undersize); worn at 54.960"] in rows
    assert ["1", "54.952", f"± 0.004{WORN}", "54.743", "± 0.003", "In order"] in rows
    assert ["4", "56.027", "± 0.003", "56.018", "± 0.003", "Cannot tell"] in rows
    assert ["Crank bow at the centre main, full reading up to 0.02 mm"] in rows
    shapes = {
        row.get("class"): row.find(".//svg") is not None
        for row in part(body(orchard()), "sheet-sizes").iter("tr")
        if row.get("class", "").startswith("is-")
    }
    assert shapes == {"is-pass": True, "is-unsure": True}, "a shape beside the words"


def test_in_inches_every_size_is_the_same_size():
    rows = table(body(orchard()), "inch")
    assert ["Main journal 2.15492–2.15551 in (0.25 mm undersize); worn at 2.16378"] in rows  # by hand: ÷ 25.4
    assert ["1", "2.16346", f"± 0.00016{WORN}", "2.15524", "± 0.00012", "In order"] in rows
    inch = job(
        engine="RC-40", readings=[reading("crank.main_journal", "1", "finished", "2.2497 in ± 0.0001 in")]
    )
    assert ["1", "2.2497", "± 0.0001", "In order"] in table(body(inch), "inch") and [
        "1",
        "57.142",
        "± 0.0025",
        "In order",
    ] in table(body(inch))
    mixed = job(
        readings=[
            reading("crank.main_journal", "1", "finished", "54,991 mm ± 4 µm"),
            reading("crank.main_journal", "2", "finished", "2 1/8 in"),
        ]
    )
    assert ["1", "54.991", "± 0.004", "In order"] in table(body(mixed)) and [
        "2",
        "2 1/8",
        "",
        "Not in order",
    ] in table(body(mixed), "inch")


def test_what_was_corrected_read_warm_or_not_in_order_is_said_below():
    made = add_reading(orchard(), "rod.bend", "1", "finished", "0.07 mm", "2026-11-23T12:00+01:00", "RB")
    made = add_reading(
        made,
        "crank.main_journal",
        "1",
        "finished",
        "54.753 mm",
        "2026-11-23T12:00+01:00",
        "RB",
        "read while warm",
        part="35 °C",
        gauge="20 °C",
        of="forged-steel",
    )
    made = add_reading(
        made,
        "crankcase.main_housing",
        "3",
        "finished",
        "",
        "2026-11-23T13:00+01:00",
        "MK",
        "case went back to be bored",
    )
    notes = told(part(body(made), "sheet-notes"))
    assert (
        f"{CORRECTED} Main bearing housing, bolted up 3, as finished: was 65.008 mm ± 0.004 mm until"
        f" 2026-11-23 MK, case went back to be bored; taken back." in notes
    )
    assert (
        f"{CORRECTED} Height of the stem tip above the spring's bed 3 exhaust, as finished: was 45.80 mm ±"
        f" 0.02 mm until 2026-11-23 RB, misread the vernier; measured again." in notes
    )
    assert (
        f"{CORRECTED} Main journal 1, as finished: was 54.743 mm ± 0.003 mm until 2026-11-23 RB, read while"
        f" warm." in notes
    )
    assert (
        f"{WARM} Read warm, brought to 20 °C. {WORN} Was worn past its limit." in notes
        and "Rod bend over 100 mm 1: 0.04 mm over the upper limit. Do not fit it." in notes
    )
    assert "Big-end bore, bolted up 4: Only 74 % sure" in notes
    row = next(row for row in table(body(made)) if row[0] == "1" and row[1] == "54.952")
    assert row[3:5] == ["54.744", CORRECTED + WARM]  # by hand: 54.753 less 15 K of about 11 millionths


def test_a_clearance_is_worked_out_where_all_its_parts_are_read():
    made = job(
        readings=[
            reading("crankcase.main_housing", "1", "finished", "65.010 mm ± 0.004 mm"),
            reading("crankcase.main_shell_wall", "1", "finished", "4.972 mm"),
            reading("crank.main_journal", "1", "finished", "54.993 mm ± 0.003 mm"),
        ]
    )
    rows = table(body(made))
    assert ["1", "0.073", "± 0.005", "In order"] in rows and [
        "Main bearing clearance 0.048–0.098 mm; worked out"
    ] in rows


def test_what_was_done_is_to_be_ordered_checked_and_was_not_checked():
    root = body(orchard())
    words = told(part(root, "sheet-words"))
    for line in done(orchard()):
        assert line in words
    assert (
        "Main bearing shells 1, 2, 3: 0.25 mm undersize. Main journal 54.741 mm to 54.744 mm. Main shell"
        " wall 5.097 mm." in words
    )
    missing, every = not_checked(orchard())
    left = sum(len(places) for _, places in missing)
    assert (
        f"Not checked: {left} of {every} sizes" in words and left == every - 35
    )  # as finished: 8 + 4 + 4 + 4 + 4 + 3 + 4 + 1 + 3
    by_group = Counter(feature.id.partition(".")[0] for feature, places in missing for _ in places)
    assert f"Heads: {by_group['head']} sizes not checked; " in words and f"; rods: {by_group['rod']}" in words
    counted = re.findall(r": (\d+)", words.partition("Not checked")[2].partition("sizes")[2])
    assert sum(map(int, counted)) == left
    shells, _, insert = [
        item
        for item in part(root, "sheet-words").iter("li")
        if markup.words(item).startswith(("Main bearing", "Rod bearing", "Thread insert"))
    ][-3:]
    assert shells.find(".//svg") is None and insert.find(".//svg") is not None, (
        "what is not simply to be ordered is marked"
    )
    titles = [markup.words(item.find("b")) for item in part(root, "sheet-checks")]
    assert (
        titles[0] == "Every passage clean"
        and titles[-1] == "Turned through by hand"
        and "Stem heights: 8 of 8 in order" in words
        and "Main bearing clearance: not measured" in words
        and "Rod nuts: 31 N·m to 35 N·m" in words
    )
    assert "These sizes call for nothing to be ordered." in words_of(job(received="flywheel"))


def words_of(made) -> str:
    return told(markup.classed(body(made), "sheet-words")[0])


def test_what_was_not_read_is_told_by_part_and_count_on_paper():
    assert "Not checked: 8 of 8 sizesFlywheel: 8 sizes not checked." in words_of(job(received="flywheel"))
    sizes = {
        "runout": "0.05 mm",
        "register": "40.012 mm",
        "face_thickness": "18.00 mm",
        "root_thickness": "18.00 mm",
        "step": "10.00 mm",
        "gear_seat": "256.00 mm",
        "gear_bore": "255.70 mm",
    }
    one = [reading(f"flywheel.{id}", "", "finished", size) for id, size in sizes.items()]
    assert "Not checked: 1 of 8 sizesFlywheel: 1 size not checked." in words_of(
        job(received="flywheel", readings=one)
    )
    both = [*one, reading("flywheel.mass", "", "finished", "8600 g")]
    assert "Nothing: all 8 sizes of these parts were read." in words_of(
        job(received="flywheel", readings=both)
    )
    assert "is not known here" in words_of(job(received="flywheel", engine="XX-9"))


def test_where_it_is_unfolded_it_is_told_by_name():
    made = job(received="crank", readings=[reading("crank.main_journal", "1")])
    names = told(markup.page(missed.by_name(made)))
    assert "Main journal (2, 3);" in names, "where some places were read the others are named"
    assert "Rod journal;" in names and names.startswith("Sizes not checked: ")
    for feature, _ in not_checked(made)[0]:
        assert feature.label in names
    assert missed.by_name(job(engine="XX-9")) is None


@pytest.mark.parametrize("name", ["TS-16", "RC-40"])
def test_every_part_that_is_counted_has_a_word(name):
    groups = {id.partition(".")[0] for id, feature in engine_named(name).features.items() if counts(feature)}
    assert groups - {"torque"} <= {*missed.PARTS}


def test_a_check_is_ticked_where_it_was_ticked_off_and_stands_not_among_what_was_done():
    made = tick(orchard(), "rods-nuts", "Rod nuts", "2026-12-01T10:00+01:00", "JP")
    root = body(made)
    (ticked,) = [item for item in part(root, "sheet-checks") if item.get("class") == "ticked"]
    assert told(ticked) == "Rod nuts: 31 N·m to 35 N·m, ticked off 2026-12-01, JP"
    assert "Checked: Rod nuts" not in told(root)
    struck = strike(made, "check-rods-nuts", "2026-12-01T11:00+01:00", "JP")
    assert not markup.classed(body(struck), "ticked")


def test_the_back_says_of_each_check_how_it_is_made_and_what_of_it_takes_the_shop():
    how, front = (list(part(body(orchard()), name)) for name in ("sheet-how", "sheet-checks"))
    assert len(how) == len(front) == 20
    for line, check in zip(how, stations.checks(orchard()), strict=True):
        words = told(line)
        assert words.startswith(f"{check.title}. ")
        assert (f"At home: {check.home}" in words) == bool(check.home)
        assert (f"Only the shop can: {check.shop}" in words) == bool(check.shop)
    assert "Only the shop can: A rod gauge" in markup.words(how[5])


def test_the_head_says_whose_job_and_whose_limits():
    head = told(body(orchard()).find(".//header"))
    for words in (
        "Size sheet",
        "Orchard frost fan",
        "TS-16",
        "two heads, crank, four rods, case",
        "Tern Street Engine Works",
        "orchard-7",
        f"Sizebook {calc.__version__}",
        "2026-11-16 to 2026-11-23",
        "by RB (23 sizes) and MK (23 sizes)",
        "Invented limits. TS-16, an invented",
    ):
        assert words in head
    empty = told(body(job(by="", received="")).find(".//header"))
    assert "Measurednothing yet" in empty and "Shop" not in empty and "Parts" not in empty
    unsigned = job(readings=[reading(by=""), reading(place="1", by="MK")])
    assert "by MK (1 size); 1 size without a name" in told(body(unsigned).find(".//header"))
    assert "limits were changed" not in head and CHANGED in told(
        body({**orchard(), "sheet": "00000000"}).find(".//header")
    )


def test_who_gets_lifters_or_a_cam_back_is_told_how_the_first_start_goes():
    """Common practice, found in public material of cam grinders: never idled, 2000 to 3000 1/min at once, 20 to 30 min. One text, word for word."""
    text = cautions.BREAK_IN.text
    assert all(
        words in text
        for words in (
            "never idled",
            "2000 to 3000 1/min",
            "20 to 30 minutes",
            "Only on new or reground lobes",
        )
    )
    for received, said in (("lifters", True), ("cam", True), ("two heads", False)):
        words = told(body(job(received=received)))
        assert (text in words) == said, received
        assert words.count("never idled") == said and not (said and "turned by the starter" in words), (
            received
        )


def test_an_engine_without_a_sheet_here_is_printed_unjudged():
    root = body(
        job(
            engine="XX-9",
            readings=[
                reading("crank.main_journal", "1", "received", "54.987 mm ± 0.004 mm"),
                reading("crank.odd", "", "finished", "3 kg"),
            ],
        )
    )
    rows = table(root)
    assert ["1", "54.987 mm ± 0.004 mm", "", "", "not judged"] in rows and [
        "–",
        "",
        "",
        "3 kg",
        "not judged",
    ] in rows
    assert "no data sheet of XX-9" in told(root) and "In order" not in told(part(root, "sheet-sizes"))


def test_three_stages_stand_side_by_side():
    made = add_reading(
        orchard(), "crank.end_float", "", "assembly", "0.11 mm ± 0.01 mm", "2026-12-01T10:00+01:00", "JP"
    )
    rows = table(body(made))
    assert (
        rows[0] == ["Place", "As received ±", "As finished ±", "At assembly ±", "Verdict"]
        and ["–", "", "", "", "", "0.11", "± 0.01", "In order"] in rows
    )
    for each, wide in ((made, True), (orchard(), False)):
        sizes = part(body(each), "sheet-sizes")
        assert ("wide" in sizes.get("class").split()) == wide, "three stages do not fit half a page"
        assert len({sum(int(cell.get("colspan", 1)) for cell in row) for row in sizes.iter("tr")}) == 1, (
            "every row is as wide as the table"
        )


# --- Codes ---------------------------------------------------------------------------------------


def test_the_codes_carry_the_job():
    (link,) = links(orchard(), BASE)
    assert link.startswith(f"{BASE}/job/received/#{FORM}") and decode(link.partition(FORM)[2]) == orchard()
    root = body(orchard(), (link,), draw)
    assert (
        len(list(part(root, "sheet-codes").iter("svg"))) == 1
        and "The code opens these sizes at home" in told(root)
        and f"{BASE}/job/received/." in told(root)
    )


def large(n):
    return job(
        readings=[
            reading(
                "crank.main_journal",
                "1",
                "finished",
                f"{i * 7919 % 100000}.{i * 104729 % 1000:03} mm",
                why="x" if i else "",
                by=f"{i * 7907 % 9973}",
            )
            for i in range(n)
        ]
    )


def test_a_large_job_takes_several_codes_and_says_so():
    several = links(large(150), BASE)
    assert 1 < len(several) <= MOST_CODES and all(len(link.partition(FORM)[2]) <= MOST for link in several)
    assert decode(join([link.partition(FORM)[2] for link in several])) == large(150)
    root = body(large(150), several, draw)
    assert len(list(part(root, "sheet-codes").iter("svg"))) == len(several)
    assert (
        f"These sizes do not fit one code: all {len(several)}, scanned one after the other in any order,"
        f" open them at home"
        in told(root)
        and f"1 of {len(several)}" in told(root)
    )


def test_a_job_too_large_for_codes_goes_along_as_its_file():
    assert links(large(4000), BASE) == ()
    assert "too many for codes. Send the job's file along" in told(body(large(3), (), draw))


@pytest.mark.parametrize(
    "codes, drawer",
    [
        (None, None),
        (None, draw),
        (("https://a.example/#v1.1A",), None),
        (("https://a.example/#v1.1A",), lambda link: None),
    ],
)
def test_a_sheet_without_a_code_says_so(codes, drawer):
    root = body(orchard(), codes, drawer)
    assert "This sheet carries no code. Send the job's file along" in told(root) and not markup.classed(
        root, "sheet-codes"
    )


@pytest.mark.parametrize(
    "base",
    [
        "",
        "tern-street",
        "ftp://a.example",
        "https://",
        "https://a b.example",
        "https://a.example/#x",
        "https://a.example/?q=1",
        'https://a.example/">',
        "javascript:alert(1)",
    ],
)
def test_what_is_no_address_of_a_handbook_is_refused(base):
    with pytest.raises(JobError, match="is no address of a handbook; give one such as"):
        links(orchard(), base)


@pytest.mark.parametrize(
    "address",
    [
        "https://tern-street.example/sizebook/",
        "http://sizebook.tern-street.example:8080",
        "https://203.0.113.7/",
        "https://[2001:db8::7]/",
        "https://172.32.0.1/",
    ],
)
def test_an_address_that_others_can_open_is_taken(address):
    assert reachable(address)


@pytest.mark.parametrize(
    "address",
    [
        "",
        "file:///home/shop/site/index.html",
        "http://localhost:8000/",
        "http://LOCALHOST./",
        "http://127.0.0.1:8000/",
        "http://127.1/",
        "http://2130706433/",
        "http://0x7f.0.0.1/",
        "http://0.0.0.0:8000/",
        "http://[::1]:8000/",
        "http://[::ffff:127.0.0.1]/",
        "http://[fe80::1]/",
        "http://[fd00::5]/",
        "http://shop-pc/",
        "http://shop-pc.local/",
        "http://nas.lan:80/",
        "http://handbook.home.arpa/",
        "http://a@localhost/",
        "http://10.0.0.5/",
        "http://172.16.0.1/",
        "http://172.31.9.9/",
        "http://192.168.178.20:8000/",
        "http://169.254.1.1/",
        "http://100.64.0.9/",
    ],
)  # RFC 1918, 3927, 4193, 4291, 6598, 6761, 6762, 8375
def test_an_address_of_this_machine_or_network_is_not(address):
    assert not reachable(address)


def test_a_sheet_without_an_address_for_others_says_why():
    root = body(orchard(), None, draw)
    assert "This sheet carries no code." in told(root)
    assert (
        "carries no code: the handbook was opened at localhost, which no other device can open. Send the"
        " job's file along" in re.sub("<[^>]+>", "", sheet.sheet(orchard(), None, draw, "localhost"))
    )


@pytest.mark.parametrize(
    "settings, address",
    [
        ("", ""),
        ("site_name: x\n# site_url: https://a.example/\n", ""),
        ("site_url: ''\n", ""),
        ('site_url: "https://a.example/"\n', "https://a.example/"),
        ("extra:\n  address: https://b.example/x/ # ours\n", "https://b.example/x/"),
        ("site_url: https://a.example/\nextra:\n  address: https://b.example/\n", "https://a.example/"),
    ],
)
def test_the_shops_address_is_read_from_the_settings(settings, address):
    assert address_in(settings) == address


# --- Safety and the whole file ----------------------------------------------------------------------

NASTY = "<script>alert(1)</script><img src=x onerror=alert(2)>\"'&</style></title>"


def test_markup_in_any_text_stays_text():
    made = job(
        id="a",
        name=NASTY,
        engine=NASTY[:40],
        received=f"{NASTY} crank",
        by=NASTY[:60],
        done=[NASTY, f"M8 insert {NASTY}"],
        readings=[
            reading("crank.main_journal", "1", "finished", "54.987 mm", by=NASTY[:60]),
            reading("crank.main_journal", "1", "finished", "54.988 mm", by=NASTY[:60], why=NASTY),
            reading("crank.main_journal", NASTY[:40], "finished", "54.987 mm"),
        ],
    )
    for engine in (NASTY[:40], "TS-16"):
        root = body({**made, "engine": engine})
        assert not {"script", "img", "style", "title"} & {e.tag for e in root.iter()} and not any(
            name.startswith("on") for e in root.iter() for name in e.attrib
        )
        assert told(root).count(NASTY) >= 4
    whole = sheet.page(made)
    assert (
        whole.count("<script") == whole.count("<img") == 0
        and whole.count("<style>") == whole.count("</style>") == whole.count("</title>") == 1
    )


@settings(deadline=None)
@given(any_job())
def test_any_job_makes_a_sheet_of_sound_markup(strange):
    assert {e.tag for e in body(strange).iter() if isinstance(e.tag, str)} <= {
        "body",
        "main",
        "article",
        "header",
        "div",
        "p",
        "h1",
        "h2",
        "dl",
        "dt",
        "dd",
        "table",
        "thead",
        "tbody",
        "tr",
        "th",
        "td",
        "span",
        "b",
        "svg",
        "path",
        "circle",
        "section",
        "ul",
        "ol",
        "li",
        *("figure", "figcaption", "defs", "pattern", "g", "use", "text", "tspan"),
    }


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("paper", sheet.PAPERS)
def test_a_page_needs_nothing_else(system, paper):
    whole = sheet.page(orchard(), links(orchard(), BASE), draw, system=system, paper=paper)
    assert f'data-units="{system}"' in whole and f"size: {paper};" in whole and sheet.css() in whole
    assert not re.search(r"<link|@import|url\((?!#)|src=|<script", whole)
    assert whole.startswith('<!DOCTYPE html>\n<html lang="en"') and whole.endswith("</html>\n")


@pytest.mark.parametrize("wrong", [{"system": "furlong"}, {"paper": "A3"}])
def test_another_paper_or_system_is_refused(wrong):
    with pytest.raises(ValueError, match="metric or inch, A4 or Letter"):
        sheet.page(orchard(), **wrong)


@pytest.mark.parametrize(
    "feature, place, text, shown",
    [  # by hand; 4 21/64 in is 4.328125 · 25.4
        ("crank.rod_journal", "1", "5.1990e1 mm", ("51.990", "2.04685")),
        ("head.valve_angle", "1 intake", "44° 54'", ("44.9", "44.9")),
        ("spring.active_turns", "1 intake", "9:2", ("4.5", "4.5")),
        ("cylinder.length", "1", "4½ in", ("114.30", "4.5000")),
        ("cylinder.length", "1", "4-21/64 in", ("109.93", "4.3281")),
        ("cylinder.length", "1", "4 21/64 in", ("109.93", "4 21/64")),
    ],
)
def test_a_size_is_printed_whole_however_it_was_typed(feature, place, text, shown):
    made = body(job(readings=[reading(feature, place, "finished", text)]))
    assert (
        tuple(
            next(row[1 + 2 * (len(row) > 4)] for row in table(made, system) if row[0] == place)
            for system in ("metric", "inch")
        )
        == shown
    )


def test_the_wear_limit_is_that_of_the_size_that_came():
    made = job(readings=[reading("crank.main_journal", "1", "received", "54.735 mm")])
    assert ["Main journal 54.735–54.750 mm (0.25 mm undersize); worn at 54.710 (0.25 mm undersize)"] in table(
        body(made)
    )  # by hand: 54.960 − 0.25


def test_a_size_past_its_limit_is_printed_past_it_in_both_systems():
    made = job(
        readings=[
            reading("crank.rod_journal", "1", "finished", "52.00004 mm"),
            reading("crank.rod_journal", "2", "finished", "2.04725 in"),
        ]
    )
    # by hand: 52 mm are 2.047244 in and 52.00004 mm 2.0472457; 2.04725 in are 52.00015 mm
    assert [row[1] for row in table(body(made)) if row[0] in "12"] == ["52.00004", "52.0002"] and [
        row[1] for row in table(body(made), "inch") if row[0] in "12"
    ] == ["2.04725", "2.04725"]  # the limit is written 2.04724
    assert "Rod journal 52.00004 mm to 52.0002 mm" in told(body(made))
