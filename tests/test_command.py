"""The command, run as a reader runs it: its words, its JSON and its exit status."""

import contextlib
import io
import json
import os
import re
import shutil
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

import calc
from calc.__main__ import main
from calc.core.kinds import KINDS
from calc.core.result import Limit
from calc.core.spelling import unit_spelled
from calc.declare.calculator import evaluate
from calc.page.link import read, write
from calc.stations import index as stations

ROOT = Path(__file__).resolve().parent.parent


def run(*arguments, **environment):
    return subprocess.run(
        [sys.executable, "-m", "calc", *arguments],
        cwd=ROOT,
        capture_output=True,
        encoding="utf-8",
        env={"PATH": os.environ["PATH"], **environment},
    )


def here(*arguments):
    """The same in this process: for the walk over every calculator, where starting Python would take most of the time."""
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        code = main(list(arguments))
    return subprocess.CompletedProcess(arguments, code, out.getvalue(), err.getvalue())


def data(*arguments, run=run):
    """What the command prints as JSON; no number in it may be anything but a number."""

    def refuse(word):
        raise AssertionError(f"{word} in JSON")

    ran = run(*arguments, "--json")
    assert ran.stdout.endswith("}\n") or ran.stdout.endswith("]\n")
    return ran.returncode, json.loads(ran.stdout, parse_constant=refuse), ran.stderr


# the schema, as calc/COMMAND.md describes it: every key, and what stands behind it

TEXT, WHOLE = str, int
NUMBER = (int, float)
OPTIONAL = object()  # the key may be missing
SOURCE = {"id": TEXT, "text": TEXT, "kind": TEXT, "from_memory": bool}
CAUTION = {"id": TEXT, "text": TEXT}
WRITTEN = {"value": NUMBER, "unit": TEXT, "si": NUMBER, "text": TEXT}
NULL = type(None)
TAKEN = {
    "label": TEXT,
    "symbol": TEXT,
    "entered": bool,
    "entry": TEXT,
    "beside": (OPTIONAL, {str: TEXT}),
    "origin": {"from": TEXT, "words": TEXT},
    "span": (OPTIONAL, [NUMBER]),
}
RESULT = {
    "version": WHOLE,
    "example": bool,
    "engine": (TEXT, NULL),
    "link": (OPTIONAL, TEXT),
    "next": [TEXT],
    "calculator": TEXT,
    "title": TEXT,
    "units": TEXT,
    "inputs": {
        str: (
            {**TAKEN, **WRITTEN},
            {**TAKEN, "value": (TEXT, NULL)},
            {**TAKEN, "rows": [(NULL, [(NULL, WRITTEN)])]},
        )
    },
    "outputs": {str: {"label": TEXT, "symbol": TEXT, **WRITTEN, "doubt": (OPTIONAL, *NUMBER)}},
    "verdict": {"state": TEXT, "headline": TEXT, "do": TEXT},
    "working": [{"symbol": TEXT, "label": TEXT, "line": TEXT, "source": (TEXT, NULL)}],
    "remarks": [{"level": TEXT, "text": TEXT, "field": (TEXT, NULL)}],
    "tables": [{"title": TEXT, "columns": [TEXT], "rows": [[TEXT]], "states": [TEXT]}],
    "cautions": [CAUTION],
    "sources": [SOURCE],
}
QUANTITY = {
    "label": TEXT,
    "symbol": TEXT,
    "type": TEXT,
    "kind": TEXT,
    "unit": TEXT,
    "unit_inch": TEXT,
    "units": [TEXT],
    "decimals": WHOLE,
    "optional": bool,
    "least": NUMBER,
    "most": NUMBER,
    "usual": (NULL, [NUMBER]),
}
INPUT = {
    "hint": TEXT,
    "feature": (TEXT, NULL),
    "limit": (TEXT, NULL),
    "assumed": (TEXT, NULL),
    "stands_in": bool,
    "when": (NULL, [TEXT]),
}
DECLARATION = {
    "version": WHOLE,
    "calculator": TEXT,
    "title": TEXT,
    "station": TEXT,
    "purpose": TEXT,
    "finds": [TEXT],
    "inputs": {
        str: (
            {**QUANTITY, **INPUT, "default": (*NUMBER, NULL), "tool": (TEXT, NULL)},
            {**INPUT, "label": TEXT, "symbol": TEXT, "type": TEXT, "options": {str: TEXT}, "default": TEXT},
            {
                **INPUT,
                "label": TEXT,
                "symbol": TEXT,
                "type": TEXT,
                "rows": [TEXT],
                "least": WHOLE,
                "default": TEXT,
                "tool": (TEXT, NULL),
                "columns": [QUANTITY],
            },
            {**INPUT, "label": TEXT, "symbol": TEXT, "type": TEXT, "kinds": [TEXT], "default": TEXT},
        )
    },
    # a result of whatever kind the entry was has no unit of its own
    "outputs": {
        str: {
            "label": TEXT,
            "symbol": TEXT,
            "kind": TEXT,
            "unit": (TEXT, NULL),
            "unit_inch": (TEXT, NULL),
            "decimals": (WHOLE, NULL),
            "main": bool,
        }
    },
    "sources": [SOURCE],
    "cautions": [CAUTION],
}
LISTED = [{"calculator": TEXT, "title": TEXT, "station": TEXT, "purpose": TEXT, "finds": [TEXT]}]
ERRORS = {"errors": [{"field": (TEXT, NULL), "code": TEXT, "message": TEXT}]}


def mismatch(value, shape, at="") -> str:
    """Where a value departs from its shape, or nothing."""
    if isinstance(shape, tuple):
        tried = [mismatch(value, one, at) for one in shape if one is not OPTIONAL]
        return "" if "" in tried else " or ".join(tried)
    if isinstance(shape, list):
        return (
            next(filter(None, (mismatch(v, shape[0], f"{at}[{i}]") for i, v in enumerate(value))), "")
            if isinstance(value, list)
            else f"{at} is no list"
        )
    if not isinstance(shape, dict):
        return "" if type(value) is shape else f"{at} is {value!r}, not {shape.__name__}"
    if not isinstance(value, dict):
        return f"{at} is no object"
    if str in shape:
        return next(filter(None, (mismatch(v, shape[str], f"{at}.{k}") for k, v in value.items())), "")
    missing = [k for k, s in shape.items() if k not in value and not (isinstance(s, tuple) and OPTIONAL in s)]
    if missing or value.keys() - shape.keys():
        return f"{at} lacks {missing} and has {sorted(value.keys() - shape.keys())}"
    return next(filter(None, (mismatch(v, shape[k], f"{at}.{k}") for k, v in value.items())), "")


def test_the_check_of_shapes_finds_what_is_wrong():
    assert mismatch({"a": 1, "b": None}, {"a": NUMBER, "b": (TEXT, NULL), "c": (OPTIONAL, TEXT)}) == ""
    for wrong in (
        {"a": True, "b": ""},
        {"a": 1},
        {"a": 1, "b": "", "d": 1},
        {"a": 1, "b": 2},
        {"a": 1, "b": "", "c": 0},
        [],
    ):
        assert mismatch(wrong, {"a": NUMBER, "b": (TEXT, NULL), "c": (OPTIONAL, TEXT)})


def names(shape):
    """Every key of a shape."""
    if isinstance(shape, dict):
        yield from (k for k in shape if k is not str)
    for inner in (
        shape.values() if isinstance(shape, dict) else shape if isinstance(shape, (tuple, list)) else ()
    ):
        yield from names(inner)


def test_the_version_is_told(capsys):
    with pytest.raises(SystemExit) as ended:
        main(["--version"])
    assert ended.value.code == 0 and capsys.readouterr().out == f"Sizebook {calc.__version__}\n"
    assert re.fullmatch(r"\d+\.\d+\.\d+", calc.__version__)
    newest = re.search(r"^## (.+)$", (ROOT / "CHANGELOG.md").read_text(encoding="utf-8"), re.MULTILINE)
    assert newest[1] == calc.__version__, "what changed is told of this version"


def documented() -> str:
    return (ROOT / "calc/COMMAND.md").read_text(encoding="utf-8")


def test_every_key_and_every_code_is_described():
    told = set(re.findall(r'"?([a-z][a-z_-]*)"?', " ".join(re.findall(r"`([^`]*)`", documented()))))
    assert not {key for shape in (RESULT, DECLARATION, LISTED, ERRORS) for key in names(shape)} - told
    source = "".join(p.read_text(encoding="utf-8") for p in (ROOT / "calc").rglob("*.py"))
    codes = set(
        re.findall(
            r'(?:EntryError|refusal)\(\s*"([a-z-]+)"|(?:InputError|_refused)\([^,()]+(?:\([^()]*\))?, "([a-z-]+)"',
            source,
        )
    )
    codes = {code for pair in codes for code in pair if code}
    assert len(codes) > 15 and not codes - told, codes - told


# list and show


def test_list_names_every_calculator_in_the_order_of_the_work():
    ran = run("list")
    assert ran.returncode == 0 and not ran.stderr
    assert [line.split()[0] for line in ran.stdout.splitlines()] == stations.ids()
    code, rows, _ = data("list")
    assert code == 0 and [row["calculator"] for row in rows] == stations.ids() and not mismatch(rows, LISTED)


@pytest.mark.parametrize("id", stations.ids())
def test_show_gives_the_declaration(id):
    code, shown, errors = data("show", id, run=here)
    calculator = stations.find(id)
    assert code == 0 and not errors and not mismatch(shown, DECLARATION, id)
    assert list(shown["inputs"]) == [i.name for i in calculator.inputs] and list(shown["outputs"]) == [
        o.key for o in calculator.outputs
    ]
    for name, i in shown["inputs"].items():
        if i["type"] == "quantity":
            assert i["default"] is None and i["optional"] or i["least"] <= i["default"] <= i["most"]
            assert i["unit"] in i["units"] and i["unit_inch"] in i["units"] and i["kind"] in KINDS
            assert not i["unit"] or unit_spelled(KINDS[i["kind"]], i["unit"]).symbol == i["unit"]
    text = here("show", id)
    assert text.returncode == 0 and all(name in text.stdout for name in (*shown["inputs"], *shown["outputs"]))


# run


@pytest.mark.parametrize("units", ["metric", "inch"])
@pytest.mark.parametrize("id", stations.ids())
def test_run_gives_what_the_library_gives(id, units):
    code, found, errors = data("run", id, "--example", "--units", units, run=here)
    expected = evaluate(stations.find(id), {}, units)
    assert (
        code == 0
        and not errors
        and not mismatch(found, RESULT, id)
        and found["example"]
        and found["version"] == 2
    )
    assert found["units"] == units and found["verdict"]["state"] == expected.verdict.state == "pass"
    for key, n in expected.outputs.items():
        told, unit = found["outputs"][key], n.form.unit(units)
        assert told["si"] == float(n) and told["unit"] == unit.symbol and told["text"] == n.text(units)
        assert told["value"] * float(unit.factor) + float(unit.offset) == pytest.approx(
            told["si"], rel=1e-12, abs=1e-15
        )
    assert len(found["working"]) == len(expected.working)
    text = here("run", id, "--example", "--units", units)
    assert text.returncode == 0 and not text.stderr
    assert all(found["outputs"][key]["text"] in text.stdout for key in found["outputs"])
    assert found["verdict"]["headline"] in text.stdout and all(
        c["text"] in text.stdout for c in found["cautions"]
    )


def test_this_process_and_another_say_the_same():
    for arguments in (
        ["list", "--json"],
        ["show", "seat-fit"],
        ["run", "seat-fit", "--example", "--json", "--units", "inch"],
        ["run", "seat-fit", "--engine", "TS-16"],
        ["run", "seat-fit", "depth=x", "--json"],
    ):
        own, other = here(*arguments), run(*arguments)
        assert (own.returncode, own.stdout, own.stderr) == (other.returncode, other.stdout, other.stderr)


def test_entries_are_read_in_the_chosen_units_or_their_own():
    entries = {"pocket_bore": "1 31/64", "ring_outside": "37.81 mm", "ring_material": "grey-iron"}
    _, found, _ = data(
        "run", "seat-fit", "--example", "--units", "inch", *(f"{k}={v}" for k, v in entries.items())
    )
    expected = evaluate(stations.find("seat-fit"), entries, "inch")
    assert (
        found["outputs"]["interference"]["si"] == expected["interference"] == 0.03781 - 0.037703125
    )  # 1 31/64 in is 37.703125 mm exactly
    told = found["inputs"]["pocket_bore"]
    assert (told["entered"], told["entry"], told["unit"], told["value"]) == (True, "1 31/64", "in", 1.484375)
    assert (
        not found["inputs"]["depth"]["entered"] and found["inputs"]["ring_material"]["value"] == "grey-iron"
    )


def test_what_was_left_out_is_null_and_what_stood_beside_comes_back():
    _, found, _ = data("run", "seat-fit", "--example", "pocket_bore=37.5", "pocket_bore.part=25 °C")
    assert (
        found["inputs"]["pocket_bore"]["beside"] == {"part": "25 °C"}
        and "beside" not in found["inputs"]["depth"]
    )
    assert found["inputs"]["pocket_bore"]["si"] < 0.0375  # read warm, so smaller at 20 °C
    assert {r["field"] for r in data("run", "seat-fit", "--example", "head_wall=27")[1]["remarks"]} == {
        None,
        "head_wall",
    }
    _, shown, _ = data("show", "seat-fit")
    assert (
        shown["inputs"]["pocket_bore"]["feature"] == "head.seat_pocket_{valve}"
        and shown["inputs"]["friction"]["feature"] is None
    )
    assert shown["inputs"]["pocket_bore"]["tool"] and shown["inputs"]["friction"]["tool"] is None
    text = run("show", "seat-fit").stdout
    assert re.search(r"pocket_bore +Pocket bore: length, default 37.5 mm, 10 to 90 mm", text) and re.search(
        r"friction +Friction of ring on head: ratio, default 0.12, 0.02 to 0.6$", text, re.M
    )
    assert re.search(r"interference +Interference, cold: length, mm", text) and "no unit" not in text


def test_a_doubt_comes_back_beside_the_number():
    _, found, _ = data("run", "seat-fit", "--example", "pocket_bore=37.5 ± 0.004 mm")
    assert found["outputs"]["interference"]["doubt"] == pytest.approx(0.004, rel=1e-6)
    assert found["outputs"]["interference"]["text"].endswith("± 0.004 mm")


def test_options_may_stand_before_between_and_behind_the_entries():
    asked = [
        ["run", "--example", "--json", "seat-fit", "depth=7", "friction=0.15"],
        ["run", "seat-fit", "depth=7", "--json", "--example", "friction=0.15"],
        ["run", "seat-fit", "--json", "--example", "depth=7", "friction=0.15"],
        ["run", "seat-fit", "depth=7", "friction=0.15", "--example", "--json"],
    ]
    told = {run(*arguments).stdout for arguments in asked}
    assert len(told) == 1 and json.loads(told.pop())["inputs"]["friction"]["value"] == 0.15


# refusals

REFUSED = [
    (
        ["run", "seat-fit", "pocket_bore=5"],
        [("pocket_bore", "out-of-range")],
        "Pocket bore: 5.000 mm is below 10.000 mm",
    ),
    (
        ["run", "seat-fit", "--example", "pocket_bore=", "depth=x"],
        [("pocket_bore", "empty"), ("depth", "not-a-number")],
        "Pocket bore: nothing was given",
    ),
    (
        ["run", "seat-fit", "pocket_bore=5", "--units", "inch"],
        [("pocket_bore", "out-of-range")],
        "Pocket bore: 5.00000 in is above",
    ),
    (
        ["run", "seat-fit", "--example", "ring_bore=37.6", "ring_outside=37.6"],
        [("ring_bore", "impossible")],
        "Ring bore: is ",
    ),
    (
        ["run", "seat-fit", "pocket_bor=37"],
        [("pocket_bor", "unknown-input")],
        '"pocket_bor" is not an input of seat-fit; the nearest is pocket_bore.',
    ),
    (
        ["run", "seat-fit", "37.5"],
        [(None, "not-an-entry")],
        '"37.5" is not an entry; give name=value, such as valve=',
    ),
    (
        ["run", "seat-fit", "depth=7", "depth=8"],
        [("depth", "given-twice")],
        '"depth" is given twice; give it once.',
    ),
    (
        ["run", "three-wire", "wire=0.866", "size=M10x1.5"],
        [("reading", "unread")],
        "Reading over the wires: is still to be read; give reading=…, or --example for the worked example.",
    ),
    (
        ["run", "reading-verdict", "--engine", "XX-1"],
        [(None, "unknown-engine")],
        "there is no data sheet for 'XX-1'",
    ),
    (
        ["run", "seat-fitt"],
        [(None, "unknown-calculator")],
        "there is no calculator 'seat-fitt'; the nearest are seat-fit",
    ),
    (["show", "qqqqqqq"], [(None, "unknown-calculator")], "there is no calculator 'qqqqqqq'; there are "),
]


@pytest.mark.parametrize("arguments, expected, words", REFUSED, ids=[" ".join(a) for a, *_ in REFUSED])
def test_what_cannot_be_used_is_refused_with_status_2_and_a_sentence_for_each(arguments, expected, words):
    ran = run(*arguments)
    assert ran.returncode == 2 and not ran.stdout
    told = ran.stderr.splitlines()
    assert (
        len(told) == len(expected) and told[0].startswith(words) and all(line.endswith(".") for line in told)
    )
    code, errors, again = data(*arguments)
    assert code == 2 and again == ran.stderr and not mismatch(errors, ERRORS)
    assert [(e["field"], e["code"]) for e in errors["errors"]] == expected and [
        e["message"] for e in errors["errors"]
    ] == told


@pytest.mark.parametrize(
    "arguments",
    [
        [],
        ["walk"],
        ["run"],
        ["run", "seat-fit", "--units", "cubits"],
        ["list", "--jsn"],
        ["show", "seat-fit", "more"],
    ],
)
def test_a_wrong_call_shows_the_usage_and_ends_with_status_2(arguments):
    ran = run(*arguments)
    assert (
        ran.returncode == 2
        and not ran.stdout
        and ran.stderr.startswith("usage: python -m calc")
        and "Traceback" not in ran.stderr
    )


def test_help_works():
    for arguments in ([], ["run"], ["show"], ["list"]):
        assert run(*arguments, "--help").returncode == 0


@pytest.mark.parametrize(
    "environment",
    [
        {"PYTHONIOENCODING": "ascii"},
        {"LC_ALL": "C", "PYTHONCOERCECLOCALE": "0", "PYTHONUTF8": "0"},
        {"PYTHONIOENCODING": "cp1252"},
    ],
)
def test_signs_come_through_whatever_the_terminals_encoding(environment):
    ran = run("run", "seat-fit", "--example", **environment)
    assert ran.returncode == 0 and "°C" in ran.stdout and "−" in ran.stdout and "µm" in ran.stdout
    assert run("run", "seat-fit", "head_temperature=-99 C", **environment).stderr.startswith(
        "Head at the pocket, running: −99 °C is below −60 °C"
    )


def test_a_pipe_that_closes_early_is_no_fault():
    reader = subprocess.Popen(
        [sys.executable, "-m", "calc", "run", "seat-fit", "--example", "--json"],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    reader.stdout.close()
    assert b"Traceback" not in reader.stderr.read()
    reader.stderr.close()
    reader.wait()


# --- sheet ---------------------------------------------------------------------------------------

JOB = "tests/job/orchard.json"
HANDBOOK = "https://tern-street.example/sizebook/"


def test_sheet_writes_one_file_to_print(tmp_path):
    out = tmp_path / "sheet.html"
    ran = run("sheet", JOB, "--link-base", HANDBOOK, "--paper", "Letter", "--units", "inch", "-o", str(out))
    assert (ran.returncode, ran.stdout, ran.stderr) == (0, "", "")
    page = out.read_text(encoding="utf-8")
    assert (
        page.startswith("<!DOCTYPE html>")
        and "Orchard frost fan" in page
        and "size: Letter;" in page
        and 'data-units="inch"' in page
        and "The code opens these sizes" in page
    )
    plain = run("sheet", JOB)
    assert (
        plain.returncode == 0
        and plain.stderr == ""
        and 'data-units="metric"' in plain.stdout
        and "size: A4;" in plain.stdout
    )
    assert "This sheet carries no code." in plain.stdout and plain.stdout.endswith("</html>\n")


def test_without_the_library_that_draws_codes_the_sheet_says_so(tmp_path):
    (tmp_path / "segno.py").write_text("raise ImportError('not here')")
    ran = run("sheet", JOB, "--link-base", HANDBOOK, PYTHONPATH=str(tmp_path))
    assert (
        ran.returncode == 0
        and "This sheet carries no code. " in re.sub("<[^>]+>", "", ran.stdout)
        and 'sheet-codes"' not in ran.stdout
    )
    assert (
        ran.stderr
        == "The sheet carries no code: segno, which draws it, is not installed; send the job's file along.\n"
    )


@pytest.mark.parametrize(
    "base",
    [
        "http://localhost:8000/",
        "http://127.0.0.1:8000",
        "http://[::1]:8000/",
        "http://192.168.1.20:8000/",
        "http://shop-pc/sizebook/",
    ],
)
def test_an_address_that_opens_on_no_other_device_is_told_and_printed_nowhere(base):
    """A code that says "opens these sizes at home" and leads to localhost opens nothing there."""
    ran = run("sheet", JOB, "--link-base", base)
    words = re.sub("<[^>]+>", "", ran.stdout)
    assert (
        ran.returncode == 0
        and base not in ran.stdout
        and 'class="sheet-codes"' not in ran.stdout
        and "at home" not in words
    )
    assert (
        "This sheet carries no code: the handbook was opened at" in words
        and "which no other device can open. Send the job's file along" in words
    )
    assert (
        "opens on no other device; give the shop's own address behind --link-base, or once as site_url in mkdocs.yml."
        in ran.stderr
    )


def test_the_shops_own_address_is_set_once(tmp_path):
    """As site_url or under extra, in the settings beside the package: the command takes it where none is given."""
    shutil.copytree(ROOT / "calc", tmp_path / "calc", ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(ROOT / JOB, tmp_path / "job.json")
    for said in (
        f"site_name: Sizebook\nsite_url: {HANDBOOK}\n",
        f"site_name: Sizebook\nextra:\n  generator: false\n  address: '{HANDBOOK}'  # ours\n",
    ):
        (tmp_path / "mkdocs.yml").write_text(said, encoding="utf-8")
        ran = subprocess.run(
            [sys.executable, "-m", "calc", "sheet", "job.json"],
            cwd=tmp_path,
            capture_output=True,
            encoding="utf-8",
        )
        assert (
            ran.returncode == 0
            and "The code opens these sizes at home" in ran.stdout
            and f"{HANDBOOK}job/received/." in ran.stdout
        )
        ran = subprocess.run(
            [sys.executable, "-m", "calc", "sheet", "job.json", "--link-base", "https://other.example/"],
            cwd=tmp_path,
            capture_output=True,
            encoding="utf-8",
        )
        assert "https://other.example/job/received/." in ran.stdout and HANDBOOK not in ran.stdout


def test_a_job_is_not_replaced_by_its_sheet_and_a_sheet_stands_whole_or_not_at_all(tmp_path):
    job, kept = tmp_path / "job.json", (ROOT / JOB).read_bytes()
    job.write_bytes(kept)
    (tmp_path / "other.json").symlink_to(job)
    for out in (job, tmp_path / "x" / ".." / "job.json", tmp_path / "other.json"):
        (tmp_path / "x").mkdir(exist_ok=True)
        ran = run("sheet", str(job), "-o", str(out))
        assert (
            ran.returncode == 2
            and ran.stderr.endswith(
                "is the job itself, and the sheet would take its place; give another file behind -o.\n"
            )
            and job.read_bytes() == kept
        )
    sheet = tmp_path / "sheet.html"
    sheet.write_text("the sheet of yesterday")
    before = sheet.stat().st_ino
    assert run("sheet", str(job), "-o", str(sheet)).returncode == 0
    assert sheet.read_text(encoding="utf-8").endswith("</html>\n") and sheet.stat().st_ino != before, (
        "moved into place, not written over"
    )
    assert sorted(path.name for path in tmp_path.iterdir()) == ["job.json", "other.json", "sheet.html", "x"]


@pytest.mark.parametrize(
    "arguments, sentence",
    [
        (["nowhere.json"], '"nowhere.json": no such file or directory; give a file that can be read.'),
        (["docs"], '"docs": is a directory; give a file that can be read.'),
        (
            ["README.md"],
            "This is no job's file: it is not JSON, or was cut short (line 1); give a file that was exported here.",
        ),
        (
            ["scripts/runtime/package.json"],
            'This is no job of this handbook: it does not say "format": "sizebook-job".',
        ),
        (
            [JOB, "-o", "/nowhere/sheet.html"],
            '"/nowhere/sheet.html": no such file or directory; give a file that can be written.',
        ),
        (
            [JOB, "--link-base", "tern-street"],
            '"tern-street" is no address of a handbook; give one such as https://example.org/sizebook/.',
        ),
    ],
)
def test_sheet_refuses_in_one_sentence(arguments, sentence):
    ran = run("sheet", *arguments)
    assert (ran.returncode, ran.stdout, ran.stderr) == (2, "", sentence + "\n")


@pytest.mark.parametrize(
    "arguments", [[], [JOB, "--paper", "A3"], [JOB, "--units", "furlong"], [JOB, "more"]]
)
def test_sheet_shows_its_usage_where_it_is_not_understood(arguments):
    ran = run("sheet", *arguments)
    assert ran.returncode == 2 and ran.stdout == "" and ran.stderr.startswith("usage: ")


READ = ("pocket_bore=1 31/64 in", "ring_outside=1.4851", "valve=intake")


def test_a_result_has_a_link_which_is_taken_again():
    given = ("run", "seat-fit", *READ, "--units", "inch", "--engine", "TS-16", "--place", "2 intake")
    code, shared, _ = data(*given, "--share", "--site", "https://example.org/book", run=here)
    assert code == 0 and mismatch(shared, RESULT) == ""
    assert shared["link"].startswith("https://example.org/book/check-a-number/#seat-fit?")
    code, taken, _ = data("run", "seat-fit", "--link", shared["link"], run=here)
    assert code == 0 and "link" not in taken
    assert taken == {key: said for key, said in shared.items() if key != "link"}
    assert taken["units"] == "inch" and taken["inputs"]["pocket_bore"]["entry"] == "1 31/64 in"


def test_without_an_address_of_the_handbook_a_link_is_relative_and_in_words_it_stands_last():
    ran = here("run", "seat-fit", *READ, "--units", "inch", "--engine", "TS-16", "--share")
    *_, head, last = ran.stdout.rstrip("\n").split("\n")
    assert head == "Link" and last.startswith("  check-a-number/#seat-fit?")
    plain = here("run", "seat-fit", *READ, "--units", "inch", "--engine", "TS-16")
    assert ran.stdout == f"{plain.stdout}\nLink\n{last}\n"
    assert here("run", "seat-fit", "--link", last, "--share").stdout == ran.stdout
    example = here("run", "seat-fit", "--example", "--share")
    assert example.stdout.endswith("\n  check-a-number/#seat-fit\n")


def test_what_is_wrong_with_an_entry_of_a_link_is_told_in_its_units():
    link = here("run", "seat-fit", *READ, "--units", "inch", "--engine", "TS-16", "--share", "--json")
    whole = json.loads(link.stdout)["link"]
    wrong = write(replace(read(whole), entries={**read(whole).entries, "pocket_bore": "40"}))
    ran = here("run", "seat-fit", "--link", wrong)
    assert ran.returncode == 2 and "40.00000 in is above" in ran.stderr


LINKED = "seat-fit?V=1&Units=metric&pocket_bore=37.48&End="


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        (("--link", LINKED + "00000000"), "link", "damaged or was cut short"),
        (("--link", "#guide-fit"), "other-calculator", "give run guide-fit"),
        (("--link", "#seat-fit", "pocket_bore=37.48"), "beside-link", '"pocket_bore=37.48" is given beside'),
        (("--link", "#seat-fit", "--units", "inch"), "beside-link", '"--units" is given beside'),
        (("--link", "#seat-fit", "--engine", "TS-16"), "beside-link", '"--engine" is given beside'),
        (("--example", "--share", "pocket_bore=37.48"), "example", "without --example"),
        (("--example", "--share", "--site", "example.org"), "link", "no address of a handbook"),
    ],
)
def test_a_link_that_cannot_be_used_is_refused_in_one_sentence(arguments, code, words):
    ran = here("run", "seat-fit", *arguments, "--json")
    (error,) = json.loads(ran.stdout)["errors"]
    assert ran.returncode == 2 and error["code"] == code and words in error["message"]
    assert ran.stderr == error["message"] + "\n"


def test_a_calculator_at_odds_with_itself_gives_no_verdict(monkeypatch):
    """By hand: a ring that is larger than its pocket holds, and a limit that it passes says otherwise."""
    c = stations.find("seat-fit")
    limit = Limit("the ring", 1.0, low=2.0)
    spoilt = replace(c, function=lambda i: replace(c.function(i), limits=(limit,)))
    monkeypatch.setattr("calc.__main__.find", lambda id: spoilt)
    done = here("run", "seat-fit", "--example", "--json")
    (told,) = json.loads(done.stdout)["errors"]
    assert done.returncode == 2 and told["code"] == "fault" and "Do not use its verdict" in told["message"]
    assert "Do not use its verdict" in done.stderr and "verdict" not in json.loads(done.stdout)
