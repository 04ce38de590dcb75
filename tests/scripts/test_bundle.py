"""The browser's Python, run under Node: the trimmed bytecode must answer as CPython does here, refusals included."""

import itertools
import json
import os
import re
import shutil
import subprocess
import zipfile
from importlib.metadata import version
from pathlib import Path

import pytest

from calc.job.files import dump
from calc.job.share import encode, split
from calc.page.live import answer
from calc.stations import index as stations
from calc.stations.index import every
from scripts import environment
from scripts.nightly import same
from scripts.runtime import bundle, costs
from tests.job.jobs import ordinary

SCRIPTS = environment.ROOT / "docs/assets/js"
# Other entries than the build rehearsed with, so that it cannot have learnt the modules from these.
TYPED = ("37.91", "1 31/64 in", "-0", "1e-3", "∞", "12 34", "'; drop", "7" * 400, "0x10", "1/0", "½", "5 °")


@pytest.fixture(scope="module")
def made(tmp_path_factory) -> tuple[Path, Path]:
    """The two folders of the runtime: Python's and the calculators'."""
    site = tmp_path_factory.mktemp("site")
    python, calc = bundle.build(site, environment.CACHE).split("-")
    return site / "runtime" / python, site / "runtime" / calc


def ask_runtime(made, requests: list[dict], task: str = "start") -> tuple[list[str], int]:
    """The replies, and how often the cold part of the program was fetched."""
    python, calculators = made
    done = subprocess.run(
        [environment.node(), Path(__file__).with_name("answers.mjs"), SCRIPTS, python, calculators, task],
        input=json.dumps(requests),
        capture_output=True,
        text=True,
        timeout=600,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    answered = json.loads(done.stdout)
    return answered["replies"], answered["cold"]


def requests():
    """Every calculator's example and each of its entries spoilt, the entries taking turns in how."""
    typed = itertools.cycle(TYPED)
    for calculator in every():
        for system in ("metric", "inch"):
            ask = {"call": "evaluate", "calculator": calculator.id, "anchor": "here", "system": system}
            yield {**ask, "entries": {}}
            for entry in calculator.inputs:
                yield {**ask, "entries": {entry.name: next(typed)}}


@pytest.mark.parametrize("task", ["start", "wake"])
def test_browser_and_cpython_answer_the_same(made, task):
    """From bytecode, and from the memory that the build made."""
    asked = list(requests())
    assert len(asked) > 100
    refused = 0
    replies, cold = ask_runtime(made, asked, task)
    assert cold <= 1, "it stays once it is there"
    for request, got in zip(asked, replies, strict=True):
        expected = json.loads(answer(json.dumps(request)))
        assert json.loads(got) == expected, request
        refused += not expected["ok"]
    assert 0 < refused < len(asked)


def job_requests():
    """What is asked about a job: read from its file and code, refused, added to, judged and shown."""
    job = ordinary()
    text, code = dump(job), encode(job)
    ask = {
        "system": "inch",
        "now": "2026-11-25T14:15+01:00",
        "by": "MK",
        "root": "https://tern-street.example/",
    }
    older = (environment.ROOT / "tests/job/forms/form-0.json").read_text(encoding="utf-8")
    for file in (
        text,
        older,
        text[:900],
        text.replace("54.9", "54.8", 1),
        "[" * 100_000,
        '{"a":' * 100_000,
        "9" * 5000,
        '{"a": NaN}',
        older.replace('version": 0', 'version": 99'),
    ):
        yield {**ask, "call": "job-read", "text": file}
    parts = split(code, 200)
    for link in (code, code[:-1], code[:9] + "2" + code[10:], "", parts[0], parts[1][:-1], "9ABC"):
        yield {**ask, "call": "job-open", "code": f"v1.{link}", "others": []}
    yield {**ask, "call": "job-open", "code": f"v1.{parts[-1]}", "others": [f"v1.{part}" for part in parts]}
    for size in ("55.01 mm ± 4 µm", "2.165", "1 31/64 in", "5 kg", "", "9" * 400):
        yield {
            **ask,
            "call": "job-add",
            "job": text,
            "feature": "crank.main_journal",
            "place": "2",
            "stage": "assembly",
            "text": size,
        }
    yield {
        **ask,
        "call": "job-view",
        "jobs": [
            {"key": "a", "kind": "job", "text": text, "kept": ask["now"], "exported": None, "changed": True}
        ],
        "key": "a",
        "engines": ["TS-16"],
        "safety": "unknown",
    }


def test_browser_and_cpython_say_the_same_of_a_job(made):
    """Its sizes to the last bit, its verdicts, and its refusals; what is nested without end does not end Python."""
    asked = list(job_requests())
    refused = 0
    for request, got in zip(asked, ask_runtime(made, asked)[0], strict=True):
        expected = json.loads(answer(json.dumps(request)))
        assert json.loads(got) == expected, request
        refused += not expected["ok"]
    assert refused == 15 and len(asked) > 20


def test_what_the_examples_need_of_the_program_is_in_its_hot_part(made):
    asked = [
        {"call": "evaluate", "calculator": c.id, "anchor": "here", "entries": {}, "system": "metric"}
        for c in every()
    ]
    assert ask_runtime(made, asked, "wake")[1] == 0


def test_the_memory_does_not_tell_where_it_was_made(made):
    """The same sources give the same bytes on every machine, and no reader gets the name of a maker's folder."""
    memory, place = (made[1] / "memory.wasm").read_bytes(), str(environment.ROOT)
    assert not any(
        place.encode(coding) in memory for coding in ("utf-8", "utf-16-le", "utf-32-le")
    )  # Python's strings have one to four bytes a letter


def test_the_loader_is_the_runtimes_own_but_for_the_sign_that_it_is_called_at_once(made):
    own = (bundle.packages(environment.CACHE) / "pyodide" / bundle.LOADER).read_text(encoding="utf-8")
    ours = (made[0] / bundle.LOADER).read_text(encoding="utf-8")
    assert ours.startswith("const _createPyodideModule=(async function(")
    back = ours.replace(
        "const _createPyodideModule=(async function(", "async function _createPyodideModule(", 1
    )
    assert back.replace("});export default", "}export default", 1) == own


def test_the_memory_leaves_room_for_what_comes(made):
    assert 0.3 < costs.filled(made[1] / "memory.wasm") < costs.ALLOWED


def test_the_hot_part_is_a_small_one(made):
    """A tenth of the functions, and none of the data."""
    assert (made[1] / "hot.wasm").stat().st_size < (made[0] / "pyodide.asm.wasm").stat().st_size / 5


def test_random_accepted_entries_are_answered_alike_to_the_last_digit_that_is_shown(made):
    """A few for each calculator; `python -m scripts.nightly same` asks a thousand. The floats behind may differ in their last bits."""
    cases = [same.case(request) for calculator in every() for request in same.accepted(calculator, 4)]
    assert len(cases) == 4 * len(list(every()))
    found = same.differences(cases, *made)
    assert not [each["request"] for each, got in found if got["reply"] != each["reply"]]
    assert all(
        same.deviation(json.loads(each["data"]), json.loads(got["data"])) < same.LARGEST
        for each, got in found
    )


def test_what_compares_answers_sees_what_differs(made):
    request = {
        "call": "evaluate",
        "calculator": "rod-weights",
        "anchor": "here",
        "entries": {},
        "system": "metric",
    }  # sums and products only: alike to the last bit
    right = same.case(request)
    wrong = {**right, "reply": right["reply"].replace("apart", "together", 1)}
    assert wrong != right
    assert same.differences([right, wrong], *made) == [
        (wrong, {"reply": right["reply"], "data": right["data"]})
    ]
    assert same.deviation({"a": [1.0, "x"]}, {"a": [1.0 + 1e-12, "x"]}) == pytest.approx(1e-12, rel=1e-3)
    assert (
        same.deviation({"a": [1.0, "x"]}, {"a": [1.0, "y"]})
        == same.deviation({"a": 1.0}, {"b": 1.0})
        == same.deviation([1.0], [1.0, 2.0])
        == float("inf")
    )


def test_a_fault_names_where_it_happened(made):
    """Though line numbers are left out of the bytecode, to make it smaller."""
    (fault,), _ = ask_runtime(
        made, [{"call": "evaluate", "calculator": "no-such-calculator", "entries": {}, "system": "metric"}]
    )
    assert "KeyError" in fault and "calc/page/live.py" in fault and "no-such-calculator" in fault


def test_library_is_bytecode_only_and_much_smaller_than_the_whole(made):
    with zipfile.ZipFile(made[0] / "python_stdlib.zip") as library:
        names = library.namelist()
        assert all(info.compress_type == zipfile.ZIP_STORED for info in library.infolist())
    assert all(name.endswith(".pyc") for name in names)
    with zipfile.ZipFile(bundle.packages(environment.CACHE) / "pyodide/python_stdlib.zip") as whole:
        assert len(names) < len(whole.namelist()) / 2
    assert not {"tarfile.pyc", "http/client.pyc", "unittest/__init__.pyc"} & set(names)


def test_what_draws_codes_is_packed_by_itself(made):
    with (
        zipfile.ZipFile(made[0] / "codes.zip") as codes,
        zipfile.ZipFile(made[0] / "python_stdlib.zip") as library,
    ):
        assert "segno/encoder.pyc" in codes.namelist()
        assert not any(name.startswith("segno") for name in library.namelist())
        assert not set(codes.namelist()) & set(library.namelist()), "nothing is shipped twice"


def test_other_peoples_scripts_carry_their_licence(tmp_path):
    bundle.build(tmp_path, environment.CACHE)
    script = (tmp_path / "assets/js/idb.mjs").read_text(encoding="utf-8")
    assert script.startswith("/*\nISC License") and "export { " in script


def test_the_notice_names_the_version_that_is_shipped(made):
    """MPL 2.0, 3.2: whoever gets the program is told where its source is."""
    package = json.loads(
        (bundle.packages(environment.CACHE) / "pyodide/package.json").read_text(encoding="utf-8")
    )
    notice = (made[0] / "NOTICE.txt").read_text(encoding="utf-8")
    assert f"Pyodide {package['version']}" in notice
    assert package["repository"]["url"].removeprefix("git+").removesuffix(".git") in notice
    assert f"segno {version('segno')}" in notice


def test_calc_carries_its_data_and_leaves_the_command_out(made):
    packed = {}
    for path in (made[1] / "calc.zip", *sorted((made[1] / "stations").iterdir())):
        with zipfile.ZipFile(path) as archive:
            packed[path.stem] = archive.namelist()
    names = set().union(*packed.values())
    sources = {
        p.relative_to(environment.ROOT).as_posix()
        for p in bundle.CALC.rglob("*")
        if p.is_file() and "__pycache__" not in p.parts
    }
    expected = {
        name + "c" if name.endswith(".py") else name for name in sources if not name.endswith("__main__.py")
    }
    assert names == expected and sum(map(len, packed.values())) == len(names), "nothing is packed twice"
    assert any(name.endswith(".toml") for name in names)


def test_each_stations_calculators_are_packed_by_themselves(made):
    """So that a handbook of many stations sends a reader one of them."""
    for name in stations.STATIONS:
        with zipfile.ZipFile(made[1] / "stations" / f"{name}.zip") as packed:
            names = packed.namelist()
        assert all(file.startswith(f"calc/stations/{name}/") for file in names)
        assert len(names) >= len(stations.station(name).CALCULATORS)
        assert not {f"calc/stations/{name}/{own}.pyc" for own in ("checks", "orders")} & set(names), (
            "a job asks all stations for these"
        )
    assert {path.stem for path in (made[1] / "stations").iterdir()} == set(stations.STATIONS)
    memory = (made[1] / "memory.wasm").read_bytes()
    held = set(re.findall(rb"calc/(\w+)/(\w+)/(?!__init__|checks|orders)\w", memory))
    assert (b"reference", b"standards") in held
    # one example was worked in it, and traces of that are left
    assert {own for floor, own in held if floor == b"stations"} <= {b"shared", stations.STATIONS[0].encode()}


def test_two_builds_are_the_same_and_the_second_takes_all_from_the_cache(tmp_path, monkeypatch):
    first = bundle.build(tmp_path / "one", environment.CACHE)
    monkeypatch.setattr(bundle, "_run", lambda *_, **__: pytest.fail("the cache was not used"))
    assert bundle.build(tmp_path / "two", environment.CACHE) == first


def test_a_fresh_compile_gives_the_same_bytes(made, tmp_path):
    again = bundle.memory(fresh_cache(tmp_path))
    for name, folder in (
        *((f"stations/{name}.zip", made[1]) for name in stations.STATIONS),
        ("python_stdlib.zip", made[0]),
        ("codes.zip", made[0]),
        ("calc.zip", made[1]),
        ("memory.wasm", made[1]),
        ("hot.wasm", made[1]),
    ):
        assert (again / name).read_bytes() == (folder / name).read_bytes(), name


def test_an_edit_of_a_calculator_changes_only_its_own_folder(made, tmp_path):
    calc = edited_calc(
        tmp_path, "page/live.py", lambda text: text + "\n# an edit that changes no answer\nEDITED = True\n"
    )
    python, calculators = bundle.build(tmp_path / "site", fresh_cache(tmp_path), calc).split("-")
    assert python == made[0].name
    assert calculators != made[1].name


def test_only_the_newest_of_many_edits_are_kept(tmp_path, monkeypatch):
    monkeypatch.setattr(bundle, "_run", lambda command, cwd: (cwd / "calc.zip").write_text("made"))
    monkeypatch.setattr(bundle, "packages", lambda cache: tmp_path)
    monkeypatch.setattr(bundle, "program", lambda cache: tmp_path)
    monkeypatch.setattr(bundle, "library", lambda cache: tmp_path)
    calc = edited_calc(tmp_path, "page/live.py", lambda text: text)
    folders = []
    for edit in range(bundle.KEPT + 2):
        (calc / "edit.toml").write_text(f"edit = {edit}")
        folders.append(bundle.bytecode(tmp_path / "cache", calc))
        os.utime(folders[-1], (edit, edit))  # file systems may tell times only coarsely
    assert [folder.exists() for folder in folders] == [False] * 2 + [True] * bundle.KEPT


def test_what_fails_while_compiling_stops_the_build_with_its_words(tmp_path):
    calc = edited_calc(
        tmp_path, "page/live.py", lambda text: text + "\nraise RuntimeError('spoilt on purpose')\n"
    )
    cache = fresh_cache(tmp_path)
    with pytest.raises(bundle.BundleError, match="spoilt on purpose"):
        bundle.bytecode(cache, calc)
    assert list((cache / "bytecode").iterdir()) == [], "nothing half made may stay"


def fresh_cache(tmp_path) -> Path:
    """An empty cache, but with the npm packages, which are not the matter here."""
    installed = bundle.packages(environment.CACHE).parent
    cache = tmp_path / "cache"
    (cache / "npm").mkdir(parents=True)
    (cache / "npm" / installed.name).symlink_to(installed)
    return cache


def edited_calc(tmp_path, name: str, edit) -> Path:
    calc = shutil.copytree(bundle.CALC, tmp_path / "calc", ignore=shutil.ignore_patterns("__pycache__"))
    path = calc / name
    path.write_text(edit(path.read_text(encoding="utf-8")), encoding="utf-8")
    return calc
