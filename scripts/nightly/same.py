"""The reader's Python against CPython: random accepted entries of every calculator, answered by both,
compared as whole replies.

    python -m scripts.nightly same [--count 1000] [--seed 1] [--only calculator …]

The reader's is what a build ships (the program in its two parts, woken from its memory), run under Node:
WebAssembly's arithmetic is fixed to the last bit, so it says there what it says in any browser, and without a
page the answers take a fraction of the time. `tests/browser/test_same.py` asks some of the same through a
page's worker.

What a reader sees must be equal to the last digit. Behind it the mathematical libraries of the two may differ
in a float's last bits (sin, exp, powers: IEEE 754 does not fix them); the largest such difference is measured
and reported.
"""

import json
import subprocess
import tempfile
from pathlib import Path

from hypothesis import HealthCheck, Phase, assume, given, seed, settings
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.page.live import answer
from calc.page.report import result_data
from calc.stations import index as stations
from scripts import environment
from scripts.runtime import bundle
from tests.entries import entries

HERE = Path(__file__).parent
SCRIPTS = environment.ROOT / "docs/assets/js"
# relative difference of floats above which something is wrong; near a zero crossing the last bits count for
# more
LARGEST = 1e-6


def accepted(calculator, count, start=1) -> list:
    """`count` requests that the calculator answers, the same for the same start."""
    found = []

    @seed(start)
    @settings(
        max_examples=count,
        database=None,
        deadline=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(entries(calculator), st.sampled_from(["metric", "inch"]))
    def draw(entered, system):
        try:
            evaluate(calculator, entered, system)
        except Refused:
            assume(False)
        found.append(
            {
                "call": "evaluate",
                "calculator": calculator.id,
                "anchor": "here",
                "entries": entered,
                "system": system,
            }
        )

    draw()
    return found


def case(request: dict) -> dict:
    """A request with what CPython says to it."""
    text = json.dumps(request)
    found = evaluate(stations.find(request["calculator"]), request["entries"], request["system"])
    return {"request": text, "reply": answer(text), "data": json.dumps(result_data(found, request["system"]))}


def differences(cases: list, python: Path, calculators: Path) -> list:
    """(case, what the reader's Python says) wherever it is not the same, floats of the data included."""
    with tempfile.TemporaryDirectory() as folder:
        asked = Path(folder) / "cases.json"
        asked.write_text(json.dumps(cases), encoding="utf-8")
        done = subprocess.run(
            [environment.node(), HERE / "same.mjs", SCRIPTS, python, calculators, asked],
            capture_output=True,
            text=True,
            check=False,
        )
    if done.returncode:
        raise RuntimeError(f"Node failed: {done.stderr[-2000:]}")
    said = [json.loads(line) for line in done.stdout.splitlines()]
    return [(each, got) for each, got in zip(cases, said, strict=True) if got is not None]


def deviation(ours, theirs) -> float:
    """Largest relative difference of two floats at the same place of two replies' data; infinite where
    anything else differs."""
    if isinstance(ours, float) and isinstance(theirs, float):
        return abs(ours - theirs) / max(abs(ours), abs(theirs)) if ours != theirs else 0.0
    if isinstance(ours, dict) and isinstance(theirs, dict) and list(ours) == list(theirs):
        return max((deviation(ours[key], theirs[key]) for key in ours), default=0.0)
    if isinstance(ours, list) and isinstance(theirs, list) and len(ours) == len(theirs):
        return max(map(deviation, ours, theirs), default=0.0)
    return 0.0 if ours == theirs else float("inf")


def run(ids=(), count=1000, start=1) -> dict:
    """{calculator: {"asked", "shown_differently", "floats_differ", "largest": relative deviation, "first": a
    request that differs}}."""
    told = {}
    with tempfile.TemporaryDirectory() as folder:
        runtime = Path(folder) / "runtime"
        python, calculators = bundle.build(Path(folder), environment.CACHE).split("-")
        for id in ids or stations.ids():
            cases = [case(request) for request in accepted(stations.find(id), count, start)]
            found = differences(cases, runtime / python, runtime / calculators)
            shown = [each for each, got in found if got["reply"] != each["reply"]]
            floats = [
                deviation(json.loads(each["data"]), json.loads(got["data"] or "null")) for each, got in found
            ]
            told[id] = {
                "asked": len(cases),
                "shown_differently": len(shown),
                "floats_differ": len(found),
                "largest": max(floats, default=0.0),
                "first": json.loads(shown[0]["request"]) if shown else None,
            }
            print(
                f"{id:20} {told[id]['asked']:5} asked, {len(shown)} shown differently, {len(found)} with"
                f" other last bits, {told[id]['largest']:.1e} at most",
                flush=True,
            )
    return told
