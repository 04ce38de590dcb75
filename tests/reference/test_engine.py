"""Engine data sheets: what a good one gives, and that a wrong one is refused with feature, line and reason in one sentence."""

import inspect
import re
import zipfile

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.declare.choice import WHICH, Choice, for_chosen
from calc.reference import engine
from calc.reference import sheet as sheet_module
from calc.reference.engine import SheetError, load
from calc.stations import index as stations

HEAD = '[engine]\nname = "E"\nabout = "An engine."\nfrom = "invented"\n\n'
GOOD = (
    HEAD
    + """[case]
# a remark
bore = { label = "Bore", nominal = "65.010 mm", low = "65.000 mm", high = "65.019 mm", wear = "65.030 mm", tool = "a bore gauge" }
wall = { label = "Shell wall", nominal = "4.972 mm", low = "4.968 mm", high = "4.976 mm", from = "maker's manual" }
clearance = { label = "Clearance", follows = "case.bore - 2 case.wall - crank.journal", wear = "0.150 mm" }
nut = { label = "Nut", kind = "torque", decimals = 0, nominal = "35 N·m" }

[crank]
journal = { label = "Journal", nominal = "55.000 mm", low = "54.990 mm", high = "55.005 mm" }

[crank.pin]
label = "Pin"
nominal = "2.000 in"
"""
)


def test_a_sheet_gives_its_sizes_in_si():
    sheet = load(GOOD)
    assert (sheet.name, sheet.about) == ("E", "An engine.")
    bore, wall, nut = (sheet.feature(f"case.{name}") for name in ("bore", "wall", "nut"))
    assert (bore.nominal, bore.low, bore.high, bore.wear) == (0.06501, 0.065, 0.065019, 0.06503)
    assert (bore.label, bore.tool, bore.source, wall.source, wall.tool) == (
        "Bore",
        "a bore gauge",
        "invented",
        "maker's manual",
        "",
    )
    assert (
        wall.wear is None
        and nut.low is None
        and nut.nominal == 35
        and nut.number("nominal").text() == "35 N·m"
    )
    assert sheet.feature("crank.pin").nominal == pytest.approx(
        0.0508, abs=1e-12
    )  # NIST SP 811: the inch is 25.4 mm exactly
    assert list(sheet.features) == [
        "case.bore",
        "case.wall",
        "case.clearance",
        "case.nut",
        "crank.journal",
        "crank.pin",
    ]


def test_what_follows_from_other_sizes_has_its_limits_at_the_worst_of_theirs():
    clearance = load(GOOD).feature("case.clearance")  # worked by hand, in millimetres
    assert clearance.nominal * 1000 == pytest.approx(65.010 - 2 * 4.972 - 55.000, abs=1e-9)
    assert clearance.low * 1000 == pytest.approx(65.000 - 2 * 4.976 - 55.005, abs=1e-9)
    assert clearance.high * 1000 == pytest.approx(65.019 - 2 * 4.968 - 54.990, abs=1e-9)


def test_a_selected_fit_may_be_closer_than_what_follows():
    clearance = load(changed('wear = "0.150 mm"', 'low = "0.050 mm", high = "0.080 mm"')).feature(
        "case.clearance"
    )
    assert (clearance.low, clearance.high) == (50e-6, 80e-6)


@given(
    st.lists(
        st.tuples(
            st.sampled_from("+-"),
            st.integers(1, 3),
            st.integers(0, 40000),
            st.integers(0, 50),
            st.integers(0, 50),
        ),
        min_size=1,
        max_size=4,
    )
)
def test_no_combination_of_sizes_within_limits_leaves_the_limits_that_follow(terms):
    rows = [
        f'f{i} = {{ label = "F", nominal = "{n} µm", low = "{n - low} µm", high = "{n + high} µm" }}'
        for i, (_, _, n, low, high) in enumerate(terms)
    ]
    follows = " ".join(f"{sign} {times} g.f{i}" for i, (sign, times, *_) in enumerate(terms))
    sheet = load(HEAD + "[g]\n" + "\n".join(rows) + f'\nsum = {{ label = "Sum", follows = "{follows}" }}\n')
    found = sheet.feature("g.sum")
    ends = [
        [(1 if sign == "+" else -1) * times * x for x in (n - low, n + high)]
        for sign, times, n, low, high in terms
    ]
    assert found.low * 1e6 == pytest.approx(sum(map(min, ends)), abs=1e-6)
    assert found.high * 1e6 == pytest.approx(sum(map(max, ends)), abs=1e-6)


def test_limits_move_with_the_size_that_a_part_is_made_to():
    sheet = load(
        changed(
            'high = "55.005 mm"',
            'high = "55.005 mm", wear = "54.970 mm", undersizes = ["0.50 mm", "0.25 mm"]',
        )
        .replace('from = "maker\'s manual"', 'oversizes = ["0.125 mm"]')
        .replace('nominal = "2.000 in"', 'nominal = "2.000 in"\nsizes = ["2.000 in", "2.010 in"]')
    )
    journal, wall, pin = (sheet.feature(f) for f in ("crank.journal", "case.wall", "crank.pin"))
    assert [step.name for step in journal.steps] == ["0.25 mm undersize", "0.50 mm undersize"]
    ground = journal.at(journal.steps[0])  # by hand: each limit less 0.25 mm
    assert [round(x * 1000, 9) for x in (ground.nominal, ground.low, ground.high, ground.wear)] == [
        54.75,
        54.74,
        54.755,
        54.72,
    ]
    assert (
        wall.at(wall.steps[0]).nominal * 1000 == pytest.approx(5.097) and wall.at(wall.steps[0]).wear is None
    )
    assert [step.name for step in pin.steps] == ["2.010 in"] and pin.at(
        pin.steps[0]
    ).nominal == pytest.approx(0.051054)  # 2.010 · 25.4 mm
    assert [journal.nearest(x / 1000).name for x in (55.2, 54.876, 54.874, 54.6, 53)] == [
        "standard",
        "standard",
        "0.25 mm undersize",
        "0.50 mm undersize",
        "0.50 mm undersize",
    ]


def test_an_unknown_feature_names_the_nearest():
    with pytest.raises(KeyError, match="E has no feature 'case.bor'.*case.bore"):
        load(GOOD).feature("case.bor")
    with pytest.raises(KeyError, match="data sheet"):
        load(GOOD).feature("qqqqqq")


def placed(
    case: str = 'places = "mains"',
    journal: str = 'places = ["1", "2", "3"]',
    lists: str = 'mains = ["1", "2", "3", "4"]',
    clearance: str = "",
) -> str:
    """The good sheet with places on three of its lines."""
    text = GOOD.replace('label = "Bore",', f'label = "Bore", {case},').replace(
        'label = "Journal",', f'label = "Journal", {journal},'
    )
    return text.replace('wear = "0.150 mm" }', f'wear = "0.150 mm"{clearance} }}') + f"\n[places]\n{lists}\n"


def test_places_are_a_list_or_the_name_of_one_and_what_follows_has_those_that_all_parts_share():
    sheet = load(placed())
    assert sheet.feature("case.bore").places == ("1", "2", "3", "4")
    assert sheet.feature("crank.journal").places == ("1", "2", "3")
    assert sheet.feature("case.wall").places == ()  # one size for all places
    assert sheet.feature("case.clearance").places == ("1", "2", "3")
    assert sheet.feature("case.clearance").terms == (
        (1, "case.bore"),
        (-2, "case.wall"),
        (-1, "crank.journal"),
    )
    assert load(placed(clearance=', places = ["3"]')).feature("case.clearance").places == ("3",)
    assert list(sheet.features) == list(load(GOOD).features)  # the lists are no features


WRONG_PLACES = {  # what is wrong: the sheet, the line that the sentence names, words of the reason
    "no such list": (
        placed(case='places = "main"'),
        "line 8: case.bore",
        "the places 'main', a list that [places] does not have; mains is the nearest",
    ),
    "no list at all": (placed(case='places = "qqqq"'), "line 8: case.bore", "write a line for it there"),
    "a number": (
        placed(case="places = 3"),
        "line 8: case.bore",
        "places that are not a list of texts; give a list such as",
    ),
    "empty": (placed(case="places = []"), "line 8: case.bore", "not a list of texts"),
    "numbers in it": (placed(case="places = [1, 2]"), "line 8: case.bore", "not a list of texts"),
    "an empty place": (
        placed(case='places = ["1", ""]'),
        "line 8: case.bore",
        "a place '' that cannot be used",
    ),
    "a space at its end": (
        placed(case='places = ["1 "]'),
        "line 8: case.bore",
        "none of them a space at either end",
    ),
    "two lines in one": (placed(case='places = ["1\\n2"]'), "line 8: case.bore", "cannot be used"),
    "too long": (placed(case=f'places = ["{"x" * 41}"]'), "line 8: case.bore", "give 1 to 40 characters"),
    "too many": (
        placed(case=f"places = {[str(i) for i in range(65)]}"),
        "line 8: case.bore",
        "has 65 places; give at most 64",
    ),
    "twice": (
        placed(case='places = ["2", "1", "2"]'),
        "line 8: case.bore",
        "the place '2' twice; give each place once",
    ),
    "twice in a named list": (
        placed(lists='mains = ["1", "1"]'),
        "line 21: places.mains",
        "the place '1' twice",
    ),
    "a named list that is none": (
        placed(lists='mains = "1"'),
        "line 21: places.mains",
        "not a list of texts",
    ),
    "no group of lists": (
        "places = 3\n" + GOOD,
        "line 1",
        "places is not a group of lists; write [places] above",
    ),
    "none in common": (
        placed(journal='places = ["left"]'),
        "line 10: case.clearance",
        "follows from case.bore and crank.journal, which have no place in common; name the same places",
    ),
    "a place that a part has not": (
        placed(clearance=', places = ["4"]'),
        "line 10: case.clearance",
        "the place '4', where not all that it follows from is measured; leave places out, and it takes 1, 2, 3",
    ),
}


@pytest.mark.parametrize("text, where, reason", WRONG_PLACES.values(), ids=WRONG_PLACES.keys())
def test_wrong_places_are_refused_in_one_sentence(text, where, reason):
    with pytest.raises(SheetError) as refused:
        load(text, "e.toml")
    assert str(refused.value).startswith(f"e.toml, {where}") and reason in str(refused.value), str(
        refused.value
    )
    assert str(refused.value).endswith(".") and "\n" not in str(refused.value)


@pytest.mark.parametrize("name", ("TS-16", "RC-40"))
def test_what_an_engine_has_several_of_has_its_places(name):
    """A flat four: four cylinders with what belongs to each, two valves a cylinder; and a size of one place is never part of several."""
    features = engine.engine(name).features
    count = {
        "cylinder.bore": 4,
        "piston.pin": 4,
        "rod.big_end_bore": 4,
        "crank.rod_journal": 4,
        "crank.main_journal": 3,
        "guide.bore": 8,
        "head.seat_pocket_intake": 4,
        "lifter.body": 8,
        "crank.end_float": 0,
        "crankcase.main_clearance": 3,
        "guide.clearance_intake": 4,
        "crankcase.deck_height": 4,
    }
    assert {id: len(features[id].places) for id in count} == count
    for f in features.values():
        if f.terms:
            assert len({bool(features[id].places) for _, id in f.terms}) == 1, f.id


def test_a_size_that_the_sheet_does_not_give_says_so():
    with pytest.raises(KeyError, match="case.wall has no wear"):
        load(GOOD).feature("case.wall").number("wear")


def changed(old, new):
    assert old in GOOD
    return GOOD.replace(old, new, 1)


WRONG = {  # what is wrong with the sheet: its text, the feature and the line that the sentence names, words of the reason
    "no TOML": (changed("wall = {", "wall {"), "line 9", "not a line of a sheet"),
    "text left open": (changed('label = "Bore",', 'label = "Bore,'), "line 8", "not a line of a sheet"),
    "given twice": (changed("wall =", "bore ="), "line 9", "not a line of a sheet"),
    "no head": (GOOD.removeprefix(HEAD), "line 1", "[engine] must say"),
    "no name": (changed('name = "E"\n', ""), "line 1", "[engine] must say"),
    "about is empty": (changed('"An engine."', '" "'), "line 1", "[engine] must say"),
    "nobody's numbers": (changed('from = "invented"\n', ""), "line 1", "whose numbers"),
    "head is a number": ("engine = 3\n", "line 1", "[engine] must say"),
    "no group": ("bore = 3\n" + GOOD, "line 1", "bore is not a group of features; write [bore]"),
    "no feature": (
        changed("[crank]", "[crank]\nlength = 3"),
        "line 14: crank.length",
        "is not a feature; write",
    ),
    "capitals in a name": (
        changed("bore =", "Bore ="),
        "line 8: case.Bore",
        "has a name that cannot be used; give small letters, digits and _",
    ),
    "a space in a name": (
        changed("bore =", '"main bore" ='),
        "line 1: case.main bore",
        "has a name that cannot be used",
    ),
    "a long name": (changed("bore =", "b" * 90 + " ="), "line 8: case.bbb", "up to 80 with its group's"),
    "misspelt word": (
        changed('low = "65', 'lowe = "65'),
        "line 8: case.bore",
        "'lowe', which no sheet knows; low is the nearest",
    ),
    "strange word": (
        changed('low = "65', 'qqqq = "65'),
        "line 8: case.bore",
        "it may say decimals, follows, from",
    ),
    "unknown kind": (
        changed('"torque"', '"torqe"'),
        "line 11: case.nut",
        "has the kind 'torqe', which there is not; torque is the nearest",
    ),
    "kind is a list": (changed('"torque"', "[1]"), "line 11: case.nut", "which there is not"),
    "no label": (changed('label = "Pin"\n', ""), "line 16: crank.pin", "has no label; give"),
    "empty label": (changed('"Pin"', '""'), "line 16: crank.pin", "has no label"),
    "label is a number": (changed('"Pin"', "3"), "line 16: crank.pin", "has no label"),
    "decimals": (changed("decimals = 0", "decimals = 0.5"), "line 11: case.nut", "whole number from 0 to 9"),
    "negative decimals": (
        changed("decimals = 0", "decimals = -1"),
        "line 11: case.nut",
        "whole number from 0 to 9",
    ),
    "decimals is true": (
        changed("decimals = 0", "decimals = true"),
        "line 11: case.nut",
        "whole number from 0 to 9",
    ),
    "tool is a number": (
        changed('"a bore gauge"', "7"),
        "line 8: case.bore",
        "tool that is not a text; give words",
    ),
    "from is empty": (changed('"maker\'s manual"', '""'), "line 9: case.wall", "from that is not a text"),
    "follows is a list": (
        changed('"case.bore - 2 case.wall - crank.journal"', '["case.bore"]'),
        "line 10: case.clearance",
        "follows that is not a text",
    ),
    "no unit": (
        changed('"65.000 mm"', '"65.000"'),
        "line 8: case.bore",
        "has a low that cannot be read: .*names no unit; give a length",
    ),
    "a bare number": (changed('"65.000 mm"', "65.0"), "line 8: case.bore", "has a low that cannot be read"),
    "wrong kind of unit": (
        changed('"35 N·m"', '"35 mm"'),
        "line 11: case.nut",
        "has a nominal that cannot be read: .*torque",
    ),
    "words for a number": (
        changed('"65.030 mm"', '"large"'),
        "line 8: case.bore",
        "has a wear that cannot be read",
    ),
    "no nominal": (
        changed('nominal = "2.000 in"\n', ""),
        "line 16: crank.pin",
        "has no nominal size; give one with its unit",
    ),
    "upside down": (
        changed('"65.000 mm"', '"65.020 mm"'),
        "line 8: case.bore",
        "upside down: low 65.020 mm lies above high 65.019 mm; give the smaller as low",
    ),
    "nominal too large": (
        changed('"65.010 mm"', '"65.030 mm"'),
        "line 8: case.bore",
        "nominal size outside its own limits; give one within 65.000 mm and 65.019 mm",
    ),
    "nominal too small": (
        changed('"54.990 mm"', '"55.002 mm"'),
        "line 14: crank.journal",
        "nominal size outside its own limits",
    ),
    "follows from nothing": (
        changed("- 2 case.wall", "- 2 case.wal"),
        "line 10: case.clearance",
        "follows from case.wal, which the sheet does not have",
    ),
    "follows from a torque": (
        changed("- 2 case.wall", "- 2 case.nut"),
        "line 10: case.clearance",
        "case.nut, which is a torque and not a length",
    ),
    "no sign between": (
        changed("- 2 case.wall", "2 case.wall"),
        "line 10: case.clearance",
        "cannot be read; write features with \\+ and -",
    ),
    "a product": (changed("- 2 case.wall", "* case.wall"), "line 10: case.clearance", "cannot be read"),
    "follows from itself": (
        changed("- 2 case.wall", "- 2 case.clearance"),
        "line 10: case.clearance",
        "follows from itself",
    ),
    "in a circle": (
        changed(
            'journal = { label = "Journal", nominal = "55.000 mm"',
            'journal = { label = "Journal", follows = "case.clearance", nominal = "55.000 mm"',
        ),
        "line 10: case.clearance",
        "follows from itself by way of case.clearance, crank.journal; give one",
    ),
    "does not follow": (
        changed('wear = "0.150 mm"', 'nominal = "0.100 mm"'),
        "line 10: case.clearance",
        "does not follow from the sizes that it names: those give nominal 0.066 mm",
    ),
    "one undersize, no list": (
        changed('wear = "65.030 mm"', 'oversizes = "0.50 mm"'),
        "line 8: case.bore",
        "has oversizes that are not a list of texts; write oversizes =",
    ),
    "undersizes are numbers": (
        changed('wear = "65.030 mm"', "undersizes = [0.5]"),
        "line 8: case.bore",
        "has undersizes that are not a list of texts",
    ),
    "undersize without unit": (
        changed('wear = "65.030 mm"', 'undersizes = ["0.5"]'),
        "line 8: case.bore",
        "has undersizes that cannot be read: .*names no unit",
    ),
    "undersize below nothing": (
        changed('wear = "65.030 mm"', 'undersizes = ["-0.5 mm"]'),
        "line 8: case.bore",
        "has -0.5 mm among its undersizes; give each as more than nothing",
    ),
    "follows and has sizes": (
        changed('wear = "0.150 mm"', 'sizes = ["0.1 mm"]'),
        "line 10: case.clearance",
        "follows from other sizes and says sizes; give them to those sizes",
    ),
    "worn out when new": (
        changed('"65.030 mm"', '"65.015 mm"'),
        "line 8: case.bore",
        "has its wear limit 65.015 mm within the limits as made, so that a new part could be worn out already",
    ),
    "wider than what follows": (
        changed('wear = "0.150 mm"', 'high = "0.100 mm"'),
        "line 10: case.clearance",
        "those give nominal 0.066 mm, low 0.043 mm, high 0.093 mm",
    ),
}


@pytest.mark.parametrize("text, where, reason", WRONG.values(), ids=WRONG.keys())
def test_a_wrong_sheet_is_refused_in_one_sentence(text, where, reason):
    with pytest.raises(SheetError) as refused:
        load(text, "e.toml")
    sentence = str(refused.value)
    assert sentence.startswith(f"e.toml, {where}"), sentence
    assert re.search(reason.replace("[", r"\[") if "[" in reason else reason, sentence), sentence
    assert sentence.endswith(".") and "\n" not in sentence and ". " not in sentence.replace("...", "")


@given(st.data())
def test_no_damage_to_a_sheet_gives_anything_but_an_engine_or_that_refusal(data):
    text = GOOD
    for _ in range(data.draw(st.integers(1, 3))):
        at, cut = data.draw(st.integers(0, len(text))), data.draw(st.integers(0, 6))
        text = text[:at] + data.draw(st.text("abc .=-{}[]\"'0129\nmµ#", max_size=4)) + text[at + cut :]
    try:
        sheet = load(text)
    except SheetError as refused:
        assert str(refused).endswith(".")
        return
    assert all(f.low is None or f.high is None or f.low <= f.high for f in sheet.features.values())


def test_the_example_in_the_module_loads():
    sheet = load(
        re.sub(
            r"(?m)^    ", "", inspect.getdoc(sheet_module).partition("\n\n")[2].rpartition("\n\nA feature")[0]
        )
    )
    assert sheet.feature("crankcase.main_clearance").high * 1000 == pytest.approx(55.080 - 54.985, abs=1e-9)


# the demo engine


def test_the_demo_engine_says_of_itself_and_of_every_size_that_it_is_invented():
    demo = engine.demo()
    assert (
        demo.name == engine.DEMO == "TS-16"
        and "invented" in demo.about
        and "never use them on a real engine" in demo.about
    )
    assert {f.source for f in demo.features.values()} == {"invented"}


def test_no_worn_part_of_the_demo_engine_is_also_a_new_one():
    """A wear limit lies on or past the limit as made, towards one side."""
    for f in engine.demo().features.values():
        if f.wear is not None and f.low is not None and f.high is not None:
            assert f.wear <= f.low or f.wear >= f.high, f.id


def test_every_feature_reads_as_a_person_would_say_it():
    for f in engine.demo().features.values():
        assert f.label[0].isupper() or f.label[0].isdigit(), f.id
        assert not f.label.endswith("."), f.id
        assert f.form.write(f.nominal, "metric") and f.form.write(f.nominal, "inch")


def test_every_feature_that_a_calculator_names_is_on_the_demo_engines_sheet_and_of_its_kind():
    for calculator in stations.every():
        for declared in calculator.inputs:
            ids = (
                {for_chosen(declared.feature, {"valve": kind}) for kind in WHICH["valve"]}
                if declared.feature
                else ()
            )
            for id in ids:
                if isinstance(declared, Choice):
                    assert engine.demo().materials[id] in declared.options, (
                        f"{calculator.id}: {declared.name} from {id}"
                    )
                    continue
                feature = engine.demo().feature(id)
                kinds = (
                    [declared.form.kind]
                    if hasattr(declared, "form")
                    else [column.form.kind for column in getattr(declared, "columns", ())]
                )
                assert feature.form.kind.dims in [k.dims for k in kinds] or not kinds, (
                    f"{calculator.id}: {declared.name} from {id}"
                )


def test_an_engine_without_a_sheet_is_named():
    with pytest.raises(KeyError, match="no data sheet for 'TS-17'"):
        engine.engine("TS-17")


def test_the_sheet_is_read_from_a_zip_as_well(tmp_path):
    """The browser's runtime carries the package as a zip."""
    import subprocess
    import sys
    from pathlib import Path

    package = Path(engine.__file__).parents[1]
    with zipfile.ZipFile(tmp_path / "calc.zip", "w") as archive:
        for file in package.rglob("*"):
            if file.suffix in (".py", ".toml"):
                archive.write(file, file.relative_to(package.parent))
    code = "from calc.reference import engine; print(engine.__file__); print(engine.demo().name)"
    ran = subprocess.run(
        [sys.executable, "-c", code],
        env={"PYTHONPATH": str(tmp_path / "calc.zip")},
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=True,
    )
    assert ran.stdout.splitlines()[1] == "TS-16" and "calc.zip" in ran.stdout


def test_a_mark_changes_with_what_follows_from_what_follows():
    nested = GOOD + '\n[all]\ntwice = { label = "Twice", wear = "0.400 mm", follows = "2 case.clearance" }\n'
    read = {"case.bore", "case.wall", "crank.journal"}
    assert load(nested).mark(read) != load(nested.replace('"0.400 mm"', '"0.300 mm"')).mark(
        read
    )  # its limit judges those readings
    assert load(nested).mark(read - {"case.wall"}) == load(nested.replace('"0.400 mm"', '"0.300 mm"')).mark(
        read - {"case.wall"}
    )  # here it cannot be worked out
