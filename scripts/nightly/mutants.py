"""What the tests would miss: each formula is spoilt in one place after the other (+ for −, 3 for 2, < for ≤),
and its tests must fail.

    python -m scripts.nightly mutants [group …]

The spoiling, and the running of only those tests that come through the spoilt function, is mutmut's. Here is
what to spoil, with which tests, and what came of it. Words, sources and drawings are left alone: a mutated
label is no wrong formula, and the walk over every calculator reads them.

mutmut leaves decorated functions alone, and a calculator is one: in the copy that is spoilt, and only there,
it is declared by a call below the function instead of a decorator above it.
"""

import json
import os
import re
import shutil
import subprocess
import sys
from collections import Counter
from fnmatch import fnmatch
from pathlib import Path

from calc.stations.index import STATIONS
from scripts import environment

FOLDER = environment.CACHE / "mutants"
WANTED = 0.9  # share of a formula module's mutants that must be killed
FORMULAS = ("formulas", "standards", "conformance", "doubt")  # groups that are held to it
# the tables of outside numbers are tests of what they ask; here those that stand beside the tests named
ROWS = "tests/test_checks.py"
GROUPS = {  # what is spoilt: the tests that must see it
    "formulas": (["calc/formulas/*"], ["tests/formulas", ROWS]),
    "standards": (["calc/reference/standards/*"], ["tests/reference/standards", ROWS]),
    "conformance": (["calc/core/conformance.py"], ["tests/core/test_conformance.py", ROWS]),
    "doubt": (["calc/declare/doubt.py"], ["tests/declare/test_doubt.py"]),
    "quantity": (
        ["calc/core/reading.py", "calc/core/entry.py", "calc/core/numeral.py"],
        ["tests/core/test_quantity.py"],
    ),
    **{
        station: ([f"calc/stations/{station}/*"], [f"tests/stations/{station}", ROWS]) for station in STATIONS
    },
}
# mutmut, without the mutants of words and sources, and without calls that lack some. Where pytest does not
# find the tests it is told to run, the exception would end the process with 1, as a failing test does: a
# mutant would pass for killed that nobody has tried.
RUN = """
import os
import libcst as cst
from mutmut.mutation import mutators
from mutmut.runners.harness import BadTestExecutionCommandsException, PytestRunner
run_tests = PytestRunner.run_tests
def run_tests_or_say_so(self, **what):
    try:
        return run_tests(self, **what)
    except BadTestExecutionCommandsException:
        os._exit(4)
PytestRunner.run_tests = run_tests_or_say_so
def is_words(value):
    return isinstance(value, cst.BaseString) or isinstance(value, cst.Attribute) and getattr(value.value, "value", "") == "sources"
def lacks_no_words(call):
    in_turn = [a for a in call.args if not a.star and getattr(a.value, "value", "") != "None"] + (list(call.args) if len(call.args) > 1 else [])
    return (mutant for mutant, arg in zip(mutators.operator_arg_removal(call), in_turn, strict=True) if not is_words(arg.value))
others = [pair for pair in mutators.mutation_operators if pair[1] not in (mutators.operator_string, mutators.operator_arg_removal)]
mutators.mutation_operators[:] = [*others, (cst.Call, lacks_no_words)]
from mutmut.__main__ import cli
cli()
"""
# What a run of a mutant's tests ended with, by mutmut's numbers. Time runs out where a property test looks on
# and on for a simpler failure.
FAILED = (1, 3)
KILLED, SURVIVED, UNTESTED, SKIPPED = (*FAILED, 36, 24, -24, 152, 255, -11, -9), (0,), (5, 33), (34, 37)


def prepare(group: str) -> Path:
    """A folder with what is spoilt and its tests. What mutmut knows from before is kept: it runs again what
    has changed, and what no test had failed on, for it does not see that a test has changed."""
    files, tests = GROUPS[group]
    box = FOLDER / group
    box.mkdir(parents=True, exist_ok=True)
    for name in ("calc", "tests"):
        shutil.rmtree(box / name, ignore_errors=True)
        shutil.copytree(
            environment.ROOT / name,
            box / name,
            ignore=shutil.ignore_patterns("__pycache__", "browser", "scripts"),
        )
    for path in spoilt_in(box, files):
        copy = undecorated(path.read_text(encoding="utf-8"))
        path.write_text(
            copy.replace("-> Drawing:", "-> Drawing:  # pragma: no mutate block"), encoding="utf-8"
        )
    settings = {
        "source_paths": ["calc"],
        "only_mutate": files,
        "pytest_add_cli_args_test_selection": tests,
        # left_out counts functions, and finds the spoilt ones; unraisableexception clears memory out twice a
        # run, which takes longer than most tests
        "pytest_add_cli_args": [
            "-p",
            "no:cacheprovider",
            "-p",
            "no:unraisableexception",
            "-k",
            "not left_out",
        ],
        "timeout_multiplier": 6.0,
        "timeout_constant": 2.0,
        "use_git_change_detection": False,
    }
    beside = tuple(test.removesuffix(".py").replace("/test_", "/") for test in tests)
    checks = box / "tests/checks"
    for path in checks.rglob("*.py"):
        table = path.relative_to(checks).with_suffix("").as_posix()
        if path.name != "__init__.py" and not f"tests/{table}".startswith(beside):
            path.unlink()
    # Collected a second time in one process, pytest escapes the names of tests once more and no longer finds
    # them.
    unescaped = (
        "[tool.pytest.ini_options]\ndisable_test_id_escaping_and_forfeit_all_rights_to_community_support ="
        " true"
    )
    text = (
        (environment.ROOT / "pyproject.toml")
        .read_text(encoding="utf-8")
        .replace("[tool.pytest.ini_options]", unescaped)
    )
    lines = [f"{key} = {json.dumps(value)}" for key, value in settings.items()]
    (box / "pyproject.toml").write_text("\n".join([text, "[tool.mutmut]", *lines, ""]), encoding="utf-8")
    (box / "mutants" / "mutmut-stats.json").unlink(missing_ok=True)  # which tests come through which function
    for path in (box / "mutants").rglob("*.meta"):
        known = json.loads(path.read_text(encoding="utf-8"))
        known["exit_code_by_key"] = {
            name: code if code in FAILED else None for name, code in known["exit_code_by_key"].items()
        }
        environment.put(path, json.dumps(known))
    return box


def spoilt_in(root: Path, files: list[str]) -> list[Path]:
    """The modules that the patterns name, as mutmut reads them: a star goes into folders too."""
    return [
        path
        for path in sorted((root / "calc").rglob("*.py"))
        if any(fnmatch(path.relative_to(root).as_posix(), pattern) for pattern in files)
    ]


def undecorated(source: str) -> str:
    """A calculator's module with the declaration called below its function."""
    found = re.search(
        r"^@(calculator\(.*?\))\n(def (\w+)\(.*?)(?=^(?:def|class|@)\b|\Z)", source, re.MULTILINE | re.DOTALL
    )
    if not found:
        return source
    declaration, function, name = found.groups()
    return (
        f"{source[: found.start()]}{function.rstrip()}\n\n\n{name} ="
        f" {declaration}({name})\n\n\n{source[found.end() :]}"
    )


def run(groups=(), children=1) -> dict:
    """{module: {"killed", "survived", "untested", "score", "survivors": {mutant: difference}}}."""
    told = {}
    for group in groups or GROUPS:
        box = prepare(group)
        env = {**os.environ, "SIZEBOOK_HYPOTHESIS": "mutants"}
        done = subprocess.run(
            [sys.executable, "-c", RUN, "run", "--max-children", str(children)],
            cwd=box,
            env=env,
            capture_output=True,
            text=True,
            check=False,
        )
        found = read(box)
        if done.returncode or not found:
            raise RuntimeError(f"mutmut failed on {group}: {done.stdout[-2000:]}{done.stderr[-2000:]}")
        told |= found
    return told


def read(box: Path) -> dict:
    """What is known of each module in a folder of mutants; those not run yet do not count."""
    told = {}
    for path in sorted((box / "mutants").rglob("*.meta")):
        ended = {
            name: code
            for name, code in json.loads(path.read_text(encoding="utf-8"))["exit_code_by_key"].items()
            if code is not None and code not in SKIPPED
        }
        if broken := [name for name, code in ended.items() if code not in (*KILLED, *SURVIVED, *UNTESTED)]:
            raise RuntimeError(
                f"the tests of {len(broken)} mutants could not be run, as of {broken[0]}: nothing is known of"
                " them"
            )
        counts = Counter(
            "killed" if code in KILLED else "untested" if code in UNTESTED else "survived"
            for code in ended.values()
        )
        if ended:
            module = path.relative_to(box / "mutants").as_posix().removesuffix(".py.meta").replace("/", ".")
            told[module] = {
                **{what: counts[what] for what in ("killed", "survived", "untested")},
                "score": counts["killed"] / len(ended),
                "survivors": {
                    name: difference(box, name)
                    for name, code in ended.items()
                    if code in (*SURVIVED, *UNTESTED)
                },
            }
    return told


def difference(box: Path, mutant: str) -> str:
    """The lines that a mutant changed."""
    shown = subprocess.run(
        [sys.executable, "-c", RUN, "show", mutant], cwd=box, capture_output=True, text=True, check=False
    ).stdout
    return "\n".join(line for line in shown.splitlines() if re.match(r"[-+](?![-+])", line))
