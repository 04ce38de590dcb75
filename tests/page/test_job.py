"""What the browser asks about a job: every field of every calculator, kept and filled in to the last bit; all that was typed stays text."""

import json
import re

import pytest
from hypothesis import given, settings

from calc.core.reading import read
from calc.declare.grid import Grid
from calc.job import contents, files, record, ticks
from calc.page.job import spots
from calc.page.live import answer
from calc.reference.engine import engine
from calc.stations.index import every, find
from tests import markup
from tests.job.jobs import any_job, ordinary
from tests.markup import page

NOW = "2026-11-25T14:15+01:00"
STAGES = ["received", "finished"]


def ask(call: str, **fields) -> dict:
    return json.loads(
        answer(
            json.dumps(
                {
                    "call": f"job-{call}",
                    "system": "metric",
                    "now": NOW,
                    "by": "MK",
                    "root": "http://x/",
                    "needs": [],
                    **fields,
                }
            )
        )
    )


def fresh(engine="TS-16") -> str:
    return files.dump(record.new("abc", "Orchard frost fan", engine, "two heads", NOW))


def fields(job: str, calculator: str, place: str = "", **more) -> dict:
    return ask("fields", job=job, kind="job", calculator=calculator, place=place, stages=STAGES, **more)


def keep(
    job: str,
    calculator: str,
    entries: dict,
    place: str = "",
    stage: str = "finished",
    why: str = "",
    system: str = "metric",
) -> dict:
    return ask(
        "keep",
        job=job,
        calculator=calculator,
        typed=list(entries),
        entries=entries,
        place=place,
        stage=stage,
        why=why,
        system=system,
    )


def choices(job: str, calculator: str) -> list[str]:
    return list(
        dict.fromkeys(re.findall(r'data-job-place="([^"]+)"', fields(job, calculator)["html"]["strip"]))
    ) or [""]


@pytest.mark.parametrize("system", ["metric", "inch"])
@pytest.mark.parametrize("calculator", [c for c in every()], ids=lambda c: c.id)
def test_every_field_that_names_a_feature_keeps_what_is_typed_and_fills_it_in_again(calculator, system):
    job = fresh()
    for place in choices(job, calculator.id):
        for spot in spots.spots(calculator, engine("TS-16"), place, {}):
            if spot.place is None:
                continue  # of another kind of valve
            shape = spot.declared.form
            text = shape.bare(spot.feature.nominal, system)
            value = read(text, shape.kind, shape.unit(system)).value
            low, high = spot.declared.hard_range
            if not low <= value <= high:
                continue
            reply = keep(job, calculator.id, {spot.entry: text}, place, system=system)
            assert reply["ok"], reply["errors"]
            made = files.load(reply["job"])
            kept = record.current(made)[spot.feature.id, spot.place, "finished"]
            assert float(record.number(made, kept)[0]) == value, (text, kept)
            told = fields(reply["job"], calculator.id, place)
            assert told["fill"][spot.field]["texts"][spot.entry] == kept["text"]
            assert (
                "Orchard frost fan" in told["html"][spot.field]
                and "finished, 25 Nov, MK" in told["html"][spot.field]
            )


@pytest.mark.parametrize("calculator", [c for c in every()], ids=lambda c: c.id)
def test_a_cylinder_is_not_offered_beside_its_valves(calculator):
    """Whoever holds valve "1 intake" is not asked whether it is cylinder "1"."""
    offered = choices(fresh(), calculator.id)
    assert not {place.partition(" ")[0] for place in offered if " " in place} & set(offered)


def test_the_calculators_measure_most_of_what_an_engine_has():
    """A feature that no calculator takes is written down on the job's page; they must stay the fewer."""
    sheet = engine("TS-16")
    asked_for = set().union(*(spots.measured(c, sheet, {}) for c in every()))
    assert (
        len(asked_for) > 60
        and {"rod.mass", "chamber.volume", "spring.open_load", "head.stem_height", "head.seat_pocket_exhaust"}
        <= asked_for
    )


@pytest.mark.parametrize("calculator", [c for c in every()], ids=lambda c: c.id)
def test_the_rows_of_a_grid_are_the_places_of_its_features(calculator):
    for declared in calculator.inputs:
        for column in declared.columns if isinstance(declared, Grid) else ():
            if column.feature:
                assert declared.rows == engine("TS-16").features[column.feature].places, (
                    calculator.id,
                    declared.name,
                )


def test_a_job_without_readings_fills_nothing_and_one_of_an_unknown_engine_offers_nothing():
    told = fields(fresh(), "seat-fit")
    assert told["fill"] == {} and "Keep for" in told["html"]["pocket_bore"]
    assert fields(fresh("Own-77"), "seat-fit")["html"] == {"strip": ""}


def test_a_bare_number_and_its_doubt_are_kept_in_the_unit_of_the_field():
    for system, typed, kept in (
        ("metric", "37.51 ± 0.002", "37.51 ± 0.002 mm"),
        ("inch", "1 31/64", "1 31/64 in"),
        ("inch", "37.51 mm", "37.51 mm"),
        ("metric", "1.4768 in ± 0.0001 in", "1.4768 in ± 0.0001 in"),
    ):
        reply = keep(fresh(), "seat-fit", {"pocket_bore": typed}, "1 intake", system=system)
        assert [r["text"] for r in files.load(reply["job"])["readings"]] == [kept]


def test_what_cannot_be_kept_is_refused_in_one_sentence_at_its_field():
    for entries, place, words in (
        ({"pocket_bore": ""}, "1 intake", "is empty"),
        ({"pocket_bore": "37.5 kg"}, "1 intake", "kg"),
        ({"pocket_bore": "3000"}, "1 intake", "above"),
        ({"pocket_bore": "37.5"}, "", "say first which one"),
        ({"pocket_bore": "37.5"}, "9 intake", "say first which one"),
    ):
        reply = keep(fresh(), "seat-fit", entries, place)
        assert (
            not reply["ok"]
            and words in reply["errors"][0]["message"]
            and reply["errors"][0]["field"] == "pocket_bore"
        )


def test_a_second_reading_needs_a_reason_and_the_first_stays():
    first = keep(fresh(), "seat-fit", {"pocket_bore": "37.51"}, "1 intake")["job"]
    refused = keep(first, "seat-fit", {"pocket_bore": "37.50"}, "1 intake")
    assert "say why" in refused["errors"][0]["message"]
    second = files.load(
        keep(first, "seat-fit", {"pocket_bore": "37.50"}, "1 intake", why="Misread before")["job"]
    )
    assert [(r["text"], r["why"]) for r in second["readings"]] == [
        ("37.51 mm", ""),
        ("37.50 mm", "Misread before"),
    ]


def test_a_warm_reading_is_brought_to_20_degrees_by_the_material_on_the_jobs_own_sheet():
    for name in ("TS-16", "RC-40"):
        job, place = fresh(name), engine(name).features["head.seat_pocket_intake"].places[0]
        text = engine(name).features["head.seat_pocket_intake"].text
        asked = ask(
            "keep",
            job=job,
            calculator="seat-fit",
            typed=["pocket_bore"],
            entries={"pocket_bore": text, "pocket_bore.part": "35"},
            place=place,
            stage="finished",
            why="",
        )
        assert files.load(asked["job"])["readings"][0]["of"] == engine(name).materials["head.alloy"]
    assert engine("TS-16").materials["head.alloy"] != engine("RC-40").materials["head.alloy"], (
        "else this tells nothing"
    )


def test_a_correction_is_one_of_the_reading_that_its_form_shows():
    at = {"feature": "crank.main_journal", "place": "2", "stage": "finished"}
    once = ask("add", job=fresh(), text="54.98", **at)["job"]
    shown = re.findall(
        r'name="shown" value="(\d+)"',
        ask(
            "view",
            jobs=[{"key": "k", "kind": "job", "text": once, "kept": NOW, "exported": "", "changed": True}],
            key="k",
            engines=["TS-16"],
            safety="unknown",
        )["html"]["view"],
    )
    assert shown == ["1"]
    twice = ask("add", job=once, text="54.985", why="Measured again", shown="1", **at)["job"]
    for call in ("add", "take-back"):
        late = ask(call, job=twice, text="54.99", why="Misread before", shown="1", **at)
        assert (
            not late["ok"]
            and "another tab has read this size anew meanwhile (54.985 mm)" in late["errors"][0]["message"]
        )


def test_a_form_changes_what_was_changed_in_it_only():
    made = files.load(ask("change", job=fresh(), shop="Tern Street")["job"])
    assert (made["name"], made["received"], made["by"]) == ("Orchard frost fan", "two heads", "Tern Street")


def test_what_was_read_last_is_so_by_the_record_though_a_clock_went_back():
    job = files.load(fresh())
    job = record.add_reading(
        job, "crank.main_journal", "1", "finished", "54.98 mm", "2026-10-25T02:50+02:00", "MK"
    )
    job = record.add_reading(
        job, "crank.main_journal", "2", "finished", "54.98 mm", "2026-10-24T23:10+01:00", "MK"
    )  # an hour back, and a clock that was wrong
    html = ask("received", job=files.dump(job), key="s", kept=NOW, sheets=[], mine=[])["html"]["view"]
    assert "the last on 24 Oct" in html


def test_a_sheet_that_is_not_kept_is_shown_and_offers_nothing_that_needs_it_kept():
    html = ask("received", job=files.dump(ordinary()), key=None, kept=NOW, sheets=[], mine=[])["html"]["view"]
    assert "job-check" in html and "job-link" in html and "None" not in html and "job/sheet/#" not in html


def test_checks_are_known_by_themselves_and_not_by_their_place_in_the_list():
    names = re.findall(
        r'data-job-check="([^"]+)"',
        ask("received", job=files.dump(ordinary()), key="s", kept=NOW, sheets=[], mine=[])["html"]["view"],
    )
    assert len(names) == len(set(names)) > 8 and "crankcase-main-bearings" in names
    assert (
        'data-entries-key="crankcase-main-bearings reading-verdict"'
        in ask("check", job=files.dump(ordinary()), check="crankcase-main-bearings")["html"]["check"]
    )
    assert (
        "no longer asked for"
        in ask("check", job=files.dump(ordinary()), check="lifters-lash-or-travel")["errors"][0]["message"]
    )


def received_page(job: dict, key: str | None = "s", by: str = "JP") -> str:
    return ask("received", job=files.dump(job), key=key, kept=NOW, sheets=[], mine=[], by=by)["html"]["view"]


def test_the_received_page_says_first_what_is_not_checked_and_who_can_check_it():
    shown = page(received_page(ordinary()))
    (box,) = markup.classed(shown, "job-open")
    assert markup.words(box).startswith("Not checked yet: 14 of 17 checks")
    groups = [[markup.words(item) for item in ul] for ul in box.iter("ul")]
    assert groups == [
        ["Crank straight, journals round", "Rods straight"],
        [
            "Rod side clearance",
            "Crank turns, case bolted up",
            "Deck height",
            "Flywheel runout",
            "Clutch step",
        ],
        [
            "Every passage clean",
            "Each part to its own place",
            "Main shells on their dowels",
            "Rod nuts",
            "Seals of the through studs",
            "Close the case",
            "Turned through by hand",
        ],
    ]
    whole = markup.words(shown)
    assert (
        whole.index("Not checked yet")
        < whole.index("Before you go on, ask the shop")
        < whole.index("What comes next")
    )
    every = {one.get("data-job-check") for one in shown.iter("details")}
    assert {button.get("data-of") for button in box.iter("button")} < every, "each leads to its check"


def test_a_check_says_its_way_at_home_and_what_takes_the_shop():
    shown = page(received_page(ordinary()))
    ways = {
        one.get("data-job-check"): [markup.words(way) for way in markup.classed(one, "job-way")]
        for one in shown.iter("details")
        if one.get("data-job-check")
    }
    assert ways["rods-straight"] == [
        "Only the shop can: A rod gauge: a bend that wears a bearing out is too small to be seen."
    ]
    assert ways["rods-side-clearance"][0].startswith("At home: Feeler gauges")
    assert len(ways["crankcase-main-bearings"]) == 2 and all(ways.values())


def test_every_check_can_be_ticked_off_and_the_tick_taken_back():
    asked, call = ordinary(), {"now": NOW, "by": "JP"}
    ids = re.findall(r'id="tick-([^"]+)"', received_page(asked))
    assert len(ids) == 17 and "passages-clean" in ids and "crankcase-end-float" in ids
    for n, id in enumerate(ids, 1):
        asked = files.load(ask("tick", job=files.dump(asked), check=id, **call)["job"])
        html = received_page(asked)
        assert html.count('aria-checked="true"') == n
    assert "All 17 checks are read or ticked off." in html and "ticked off 25 Nov 14:15, JP" in html
    back = ask("strike", job=files.dump(asked), line="check-rods-nuts", **call)["job"]
    assert "Not checked yet: 1 of 17 checks" in markup.words(page(received_page(files.load(back))))
    errors = ask("tick", job=files.dump(asked), check="lifters-lash-or-travel", **call)["errors"]
    assert "no longer asked for" in errors[0]["message"]


def test_what_is_not_kept_on_the_device_has_no_ticks_and_whoever_has_initials_is_not_asked_for_them():
    assert "tick-" not in received_page(ordinary(), key=None)
    assert "checks-initials" not in received_page(ordinary()) and "checks-initials" in received_page(
        ordinary(), by=""
    )


def test_a_tick_that_came_back_is_offered_in_its_own_words():
    mine = [{"key": "j", "text": files.dump(ordinary())}]
    sheet = ticks.tick(ordinary(), "rods-nuts", "Rod nuts", NOW, "JP")
    html = ask("received", job=files.dump(sheet), key="s", kept=NOW, sheets=[], mine=mine)["html"]["view"]
    assert "<li>Checked: Rod nuts</li>" in html and "Done: Checked" not in html


def test_a_link_of_a_newer_edition_is_told_from_a_damaged_one():
    assert "newer edition" in ask("open", code="v2.ABC", others=[])["errors"][0]["message"]


def test_a_grid_is_filled_at_once_only_with_whole_rows():
    job = keep(fresh(), "rod-weights", {"weights.2.1": "400 g"})["job"]
    told = fields(job, "rod-weights")["fill"]["weights"]
    assert told == {"texts": {"weights.2.1": "400 g"}, "at_once": False}
    for row in "12":
        job = keep(job, "rod-weights", {f"weights.{row}.1": "400 g", f"weights.{row}.2": "160 g"})["job"]
    told = fields(job, "rod-weights")["fill"]["weights"]
    assert told["at_once"] and told["texts"]["weights.1.2"] == "160 g" and told["texts"]["weights.4.1"] == ""


def test_the_check_of_one_size_keeps_it_as_that_size():
    features = {"reading": "crankcase.main_clearance"}
    reply = ask(
        "keep",
        job=files.dump(ordinary()),
        calculator="reading-verdict",
        typed=["reading"],
        entries={"reading": "0.06"},
        place="2",
        stage="assembly",
        why="",
        features=features,
    )
    kept = files.load(reply["job"])["readings"][-1]
    assert (kept["feature"], kept["place"], kept["stage"], kept["text"]) == (
        "crankcase.main_clearance",
        "2",
        "assembly",
        "0.06 mm",
    )


def test_a_sheet_is_offered_to_its_own_job_only_and_one_that_cannot_be_opened_is_in_nobodys_way():
    job, tip = files.load(fresh()), ("head.stem_height", "1 intake", "assembly")
    sheet = files.dump(record.add_reading(job, *tip, "45.05 mm", NOW, "AB"))
    other = files.dump({**job, "id": "other"})
    mine = [{"key": "j", "text": files.dump(job)}, {"key": "o", "text": other}, {"key": "bad", "text": "{}"}]
    html = ask("received", job=sheet, key="s", kept=NOW, sheets=[], mine=mine)["html"]["view"]
    assert html.count('data-job-do="take-over"') == 1 and 'data-key="j"' in html and 'data-of="s"' in html
    taken = files.load(ask("take-over", job=files.dump(job), sheet=sheet, kept=NOW)["job"])
    assert taken["readings"] == files.load(sheet)["readings"]
    assert ask("take-over", job=other, sheet=sheet, kept=NOW)["job"] == other


def test_a_sheet_with_nothing_but_a_line_of_what_was_done_is_offered_too():
    job = files.load(fresh())
    sheet = files.dump(record.add_done(job, "Case bolted up <b>dry</b>"))
    held = [
        {"key": key, "kind": kind, "text": text, "kept": NOW, "exported": "", "changed": True}
        for key, kind, text in (("j", "job", fresh()), ("s", "sheet", sheet))
    ]
    html = ask("view", jobs=held, key="j", engines=["TS-16"], safety="persistent")["html"]["view"]
    assert (
        "<strong>1 line</strong> of what was done that the job has not" in html
        and "Done: Case bolted up &lt;b&gt;dry&lt;/b&gt;" in html
        and "Take it over into the job" in html
    )
    taken = ask("take-over", job=fresh(), sheet=sheet, kept=NOW)["job"]
    assert files.load(taken) == files.load(sheet)
    held[0]["text"] = taken
    assert (
        "take-over"
        not in ask("view", jobs=held, key="j", engines=["TS-16"], safety="persistent")["html"]["view"]
    )
    full = files.dump(
        {
            **job,
            "done": [
                {"line": f"l{n}", "text": f"line {n}", "at": "", "by": ""} for n in range(contents.MOST_DONE)
            ],
        }
    )
    mine = [{"key": "j", "text": full}]
    told = ask("received", job=sheet, key="s", kept=NOW, sheets=[], mine=mine)["html"]["view"]
    assert "room for 100 lines" in told and "Case bolted up" in told and "take-over" not in told


def test_a_line_of_what_was_done_is_struck_by_its_name_and_put_back_from_its_fold():
    job = ask("done", job=ask("done", job=fresh(), text="Guides <b>replaced</b>")["job"], text="Seats cut")[
        "job"
    ]

    def shown(job):
        held = [{"key": "j", "kind": "job", "text": job, "kept": NOW, "exported": "", "changed": True}]
        return re.findall(
            r'<li class="job-line".*?</li>',
            ask("view", jobs=held, key="j", engines=["TS-16"], safety="persistent")["html"]["view"],
        )

    first, second = (re.search(r'data-job-call="strike" data-line="(\w+)"', line)[1] for line in shown(job))
    once = ask("strike", job=job, line=first)["job"]
    assert ask("strike", job=once, line=first)["job"] == once, "a second tap takes nothing more"
    struck, standing = shown(once)
    assert (
        "<s>Guides &lt;b&gt;replaced&lt;/b&gt;</s>" in struck
        and f'data-line="{second}"' in standing
        and "<s>" not in standing
    )
    # under the finger that struck it is no button that puts it back, but the fold around that one
    assert re.search(
        rf'<details [^>]*><summary>Struck [^<]*14:15, MK</summary><button type="button" data-job-call="unstrike" data-line="{first}"',
        struck,
    )
    assert [
        line.struck for line in record.done(files.load(ask("unstrike", job=once, line=first)["job"]))
    ] == [None, None]
    assert not ask("strike", job=job, line="0")["ok"]


def test_a_place_of_which_all_was_taken_back_is_still_seen_with_its_history():
    spot = ("crank.main_journal", "2", "finished")
    job = record.add_reading(files.load(fresh()), *spot, "54.98 mm", NOW, "MK")
    job = record.add_reading(job, *spot, "", NOW, "MK", "Another part")
    job = record.add_reading(job, "head.stem_height", "1 intake", "finished", "45.05 mm", NOW, "MK")
    held = [
        {"key": "j", "kind": "job", "text": files.dump(job), "kept": NOW, "exported": "", "changed": True}
    ]
    html = ask("view", jobs=held, key="j", engines=["TS-16"], safety="persistent")["html"]["view"]
    (gone,) = [part for part in html.split("<li ") if 'data-keep="crank.main_journal 2"' in part]
    assert "Main journal" in gone and "taken back" in gone and "no size" in gone
    assert (
        ": Another part" in html
        and html.count("<s>") == 1
        and "54.98 mm" in html.partition("<s>")[2].partition("</s>")[0]
        and "Put a size in its place" in html
    )
    assert html.count('class="chip chip-pass"') == 2, (
        "the other size, in the tally and in its row: what is gone is not judged"
    )


ALIGN = {"bend_left": "0.00", "bend_right": "0.03 ± 0.005", "span": "150"}


def test_a_result_that_is_a_size_of_the_part_is_kept_as_it_is_shown_with_its_doubt():
    told = fields(fresh(), "rod-align", "3")
    assert told["results"] == {
        "=bend": ["bend_left", "bend_right", "span"],
        "=twist": ["twist_left", "twist_right", "span"],
    } and choices(fresh(), "rod-align") == ["1", "2", "3", "4"]
    reply = ask(
        "keep",
        job=fresh(),
        calculator="rod-align",
        typed=["=bend"],
        entries=ALIGN,
        place="3",
        stage="received",
        why="",
    )
    (kept,) = files.load(reply["job"])["readings"]
    assert (kept["feature"], kept["place"], kept["stage"]) == ("rod.bend", "3", "received")
    assert (
        kept["text"] == "0.020 mm ± 0.0033 mm"
    )  # by hand: 0.03·100/150, its doubt likewise: 0.005·100/150 = 0.00333
    html = fields(reply["job"], "rod-align", "3")["html"]["=bend"]
    assert (
        "The job has" in html
        and "received, 25 Nov, MK" in html
        and "chip-pass" in html
        and "Correct as received" in html
    )
    inch = ask(
        "keep",
        job=fresh(),
        calculator="rod-align",
        typed=["=bend"],
        entries={"bend_left": "0", "bend_right": "0.002", "span": "6"},
        place="1",
        stage="received",
        why="",
        system="inch",
    )
    assert (
        files.load(inch["job"])["readings"][0]["text"] == "0.00131 in"
    )  # 0.002 in over 6 in is 0.00131 in over 100 mm (3.937 in)


BOW = {f"readings.{n}.1": f"{x / 1000:.3f}" for n, x in enumerate((0, 11, 23, 30, 24, 12, 2, -5), 1)}


def test_a_result_of_a_grid_is_kept_once_the_grid_is_the_readers_own():
    told = fields(fresh(), "shaft-bow", "")
    assert told["results"] == {"=whole": ["readings"]}
    call = dict(job=fresh(), calculator="shaft-bow", typed=["=whole"], place="", stage="received", why="")
    (kept,) = files.load(ask("keep", entries=BOW, **call)["job"])["readings"]
    assert kept["feature"] == "crank.bow" and kept["text"].startswith(
        "0.033 mm"
    )  # twice 16.72 µm, as scipy has it
    reply = ask("keep", entries={}, **call)
    assert not reply["ok"] and "still to be read" in reply["errors"][0]["message"]
    some = {name: text for name, text in BOW.items() if name < "readings.3"}
    assert not ask("keep", entries=some, **call)["ok"]


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"span": None}, "Distance between the readings is still to be read"),
        ({"span": None, "bend_left": None}, "are still to be read"),
        ({"bend_right": "a bit"}, "not a number"),
        ({"place": ""}, "say first which one"),
    ],
)
def test_a_result_is_not_kept_where_something_behind_it_is_not_the_readers_own(change, words):
    place = change.pop("place", "1") if "place" in change else "1"
    entries = {name: text for name, text in {**ALIGN, **change}.items() if text is not None}
    reply = ask(
        "keep",
        job=fresh(),
        calculator="rod-align",
        typed=["=bend"],
        entries=entries,
        place=place,
        stage="received",
        why="",
    )
    assert not reply["ok"] and words in reply["errors"][0]["message"]


def test_results_that_are_sizes_are_on_the_sheet_as_the_calculator_has_them():
    found = [(c, o) for c in every() for o in c.outputs if o.feature]
    assert found
    for calculator, output in found:
        any_valve = "{valve}" in output.feature
        for kind in ("intake", "exhaust"):
            feature = engine("TS-16").features[output.feature.replace("{valve}", kind)]
            assert feature.form.kind == output.form.kind and not feature.terms, (calculator.id, output.key)
            kept = spots.results(calculator, engine("TS-16"), f"1 {kind}" if any_valve else "")
            assert (output.key, feature.id) in {(o.declared.key, o.feature.id) for o in kept}
        early = {o.declared.key for o in spots.results(calculator, engine("TS-16"), "")}
        assert (output.key in early) != any_valve, "whose it is must be said first"


def test_the_jobs_view_tells_quietly_what_was_worn_as_received():
    view = lambda job: ask(
        "view",
        jobs=[
            {"key": "k", "kind": "job", "text": files.dump(job), "kept": NOW, "exported": "", "changed": True}
        ],
        key="k",
        engines=["TS-16"],
        safety="unknown",
    )["html"]["view"]
    worn = record.add_reading(
        files.load(fresh()), "crank.main_journal", "1", "received", "54.955 mm", NOW, "MK"
    )  # worn at 54.960
    assert "was worn" not in view(worn)
    html = view(record.add_reading(worn, "crank.main_journal", "1", "finished", "54.742 mm", NOW, "MK"))
    assert html.count("finished, was worn") == 1 and "As received: Worn past its limit by" in html


@settings(max_examples=40, deadline=None)
@given(any_job())
def test_any_job_is_shown_whole_and_everything_in_it_stays_text(job):
    text = files.dump(job)
    held = {"key": "k", "kind": "job", "text": text, "kept": NOW, "exported": "", "changed": True}
    views = [
        ask("view", jobs=[held], key="k", engines=["TS-16"], safety="unknown"),
        ask("sheet", job=text, key="k"),
        ask("received", job=text, key="k", kept=NOW, sheets=[], mine=[{"key": "j", "text": text}]),
    ]
    for reply in views:
        assert reply["ok"], reply["errors"]
        html = reply["html"]["view"]
        assert "<script" not in html and not re.search(r"<(img|iframe|object)\b", html)
        page(html)
    assert find("seat-fit") and fields(text, "seat-fit")["ok"]


def said(job: dict, feature: str, system: str = "metric") -> str:
    """What stands behind a size in a sentence, as a reader of one system sees it."""
    other = "inch" if system == "metric" else "metric"
    html = ask("sizes", job=files.dump(job))["said"][feature]
    return re.sub("<[^>]+>", "", re.sub(rf'<span class="u-{other}">[^<]*</span>', "", html)).strip()


def test_a_sentence_tells_the_jobs_size_where_and_when_it_was_read():
    job = files.load(fresh())
    one = record.add_reading(job, "rod.bush_bore", "2", "received", "22.0105 mm ± 0.002 mm", NOW, "MK")
    assert said(one, "rod.bush_bore") == "[Orchard frost fan: 22.0105 mm ± 0.002 mm, received, 2]"
    both = record.add_reading(
        record.add_reading(one, "rod.bush_bore", "3", "finished", "22.009 mm", NOW, "MK"),
        "rod.bush_bore",
        "2",
        "finished",
        "0.8666 in",
        NOW,
        "MK",
    )
    assert said(both, "rod.bush_bore").startswith(
        "[Orchard frost fan: 22.009 to 22.012 mm, finished, 2, 3"
    )  # 0.8666 × 25.4 = 22.01164
    assert said(both, "rod.bush_bore", "inch").startswith(
        "[Orchard frost fan: 0.86650 to 0.86660 in, finished, 2, 3"
    )  # 22.009 / 25.4 = 0.866496
    apart = record.add_reading(one, "rod.bush_bore", "3", "finished", "22.009 mm", NOW, "MK")
    assert said(apart, "rod.bush_bore").startswith(
        "[Orchard frost fan: 22.0105 mm ± 0.002 mm, received, 2; 22.009 mm, finished, 3"
    )
    every = job
    for place in engine("TS-16").feature("head.seat_pocket_intake").places:
        every = record.add_reading(
            every, "head.seat_pocket_intake", place, "finished", "37.505 mm", NOW, "MK"
        )
    assert said(every, "head.seat_pocket_intake").startswith("[Orchard frost fan: 37.505 mm, finished, all 4")


def test_a_sentence_tells_which_place_is_not_in_order_and_what_follows_from_sizes_and_nothing_of_what_cannot_be_read():
    job = record.add_reading(
        files.load(fresh()), "crank.main_journal", "1", "finished", "54.70 mm", NOW, "MK"
    )
    job = record.add_reading(job, "crank.main_journal", "2", "finished", "54.99 mm", NOW, "MK")
    assert said(job, "crank.main_journal").endswith("finished, 1, 2 Not in order: 1]")
    assert ask("sizes", job=files.dump(ordinary()))["said"]["rod.bearing_clearance"].count("worked out") == 1
    spoilt = files.dump({**job, "readings": [{**job["readings"][0], "text": "37 N·m"}]})
    assert ask("sizes", job=spoilt)["said"] == {}
    warm = record.add_reading(
        job,
        "piston.pin",
        "1",
        "finished",
        "22.010 mm",
        NOW,
        "MK",
        part="35 °C",
        gauge="20 °C",
        of="forged-steel",
    )
    assert said(warm, "piston.pin").startswith(
        "[Orchard frost fan: 22.006 mm, finished, 1"
    )  # 22.010 (1 − 11.5e-6·15) = 22.0062: 11.5e-6/K from memory


def test_a_result_is_not_rounded_onto_a_limit_when_it_is_kept():
    entries = {**ALIGN, "bend_left": "0", "bend_right": "0.0304", "span": "100 mm"}
    reply = ask(
        "keep",
        job=fresh(),
        calculator="rod-align",
        typed=["=bend"],
        entries=entries,
        place="3",
        stage="finished",
        why="",
    )
    kept = files.load(reply["job"])["readings"][-1]["text"]
    assert kept.split(" mm")[0] == "0.0304", "the sheet allows 0.03"
