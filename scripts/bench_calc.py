"""Measure `calc` and the build in CPython: `python -m scripts.bench_calc [--pages]`. Never a test: timings
are noisy.

How long an import takes, each calculator's example, and with --pages how the time for pages grows with their
number. Results go to .cache/bench-calc.json too.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from functools import partial
from pathlib import Path

from scripts import environment, measured
from scripts.bench import NotMeasured, wait_until_quiet
from scripts.build import ROOT

RUNS = 15
TIMES = (1, 3, 10)
RESULT = environment.CACHE / "bench-calc.json"
IMPORT = (
    "import time; start = time.perf_counter(); import calc.page.live; print((time.perf_counter() - start) *"
    " 1e3)"
)


def imports() -> float:
    """ms for `import calc.page.live`, in processes of their own, its bytecode kept from the first."""
    env = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    times = []
    with tempfile.TemporaryDirectory() as kept:
        for _ in range(1 + RUNS):
            done = subprocess.run(
                [sys.executable, "-c", IMPORT],
                cwd=ROOT,
                env={**env, "PYTHONPYCACHEPREFIX": kept},
                capture_output=True,
                text=True,
            )
            if done.returncode:
                raise NotMeasured(f"the import failed: {done.stderr.strip()[-300:]}")
            times.append(float(done.stdout))
    return statistics.median(times[1:])


def evaluations() -> dict[str, dict[str, float]]:
    """ms for each calculator's example: worked, and worked and written as HTML."""
    from calc.declare.calculator import evaluate
    from calc.page.live import answer
    from calc.stations import index as stations

    def median(work) -> float:
        times = []
        for _ in range(RUNS):
            start = time.perf_counter()
            work()
            times.append((time.perf_counter() - start) * 1e3)
        return round(statistics.median(times), 2)

    found = {"worked": {}, "written": {}}
    for id in stations.ids():
        request = json.dumps(
            {"call": "evaluate", "calculator": id, "entries": {}, "system": "metric", "working": False}
        )
        if not json.loads(answer(request))["ok"]:
            raise NotMeasured(f"{id} refuses its own example")
        found["worked"][id] = median(partial(evaluate, stations.find(id)))
        found["written"][id] = median(partial(answer, request))
    return found


def pages() -> dict[int, dict[str, float]]:
    """Seconds for the pages of the site, and for so many times as many."""
    from mkdocs.commands.build import build
    from mkdocs.config import load_config

    found = {}
    with tempfile.TemporaryDirectory(dir=environment.CACHE) as work:
        for times in TIMES:
            docs = Path(work) / f"docs-{times}"
            shutil.copytree(ROOT / "docs", docs)
            for page in list(docs.rglob("*.md")):
                for copy in range(1, times):
                    shutil.copyfile(page, page.with_name(f"{page.stem}-{copy}.md"))
            config = load_config(
                str(ROOT / "mkdocs.yml"),
                docs_dir=str(docs),
                site_dir=str(Path(work) / f"site-{times}"),
                nav=None,
                strict=False,
            )
            start = time.perf_counter()
            build(config)
            count = len(list(docs.rglob("*.md")))
            found[times] = {"pages": count, "seconds": round(time.perf_counter() - start, 2)}
    return found


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m scripts.bench_calc", description=__doc__.splitlines()[0])
    parser.add_argument(
        "--pages", action="store_true", help="how the build of pages grows with their number; takes a minute"
    )
    chosen = parser.parse_args()
    try:
        environment.enter("scripts.bench_calc", "site")
        wait_until_quiet()
        result = {
            "import": round(imports(), 1),
            "evaluate": evaluations(),
            **({"pages": pages()} if chosen.pages else {}),
        }
    except (NotMeasured, environment.Missing) as error:
        sys.exit(f"Not measured: {error}")
    RESULT.parent.mkdir(exist_ok=True)
    environment.put(RESULT, json.dumps(result, indent=1))
    print(table(result))
    measured.write("scripts.bench_calc", table(result))


def table(result: dict) -> str:
    lines = [f"import of calc.page.live: {result['import']} ms"]
    for what, found in result["evaluate"].items():
        slowest = sorted(found.items(), key=lambda pair: -pair[1])[:6]
        told = ", ".join(f"{id} {ms}" for id, ms in slowest)
        lines.append(f"an example, {what}: median {statistics.median(found.values()):.2f} ms; slowest {told}")
    for times, found in result.get("pages", {}).items():
        each = found["seconds"] / found["pages"] * 1e3
        lines.append(f"{times}×: {found['pages']} pages in {found['seconds']} s, {each:.0f} ms a page")
    return "\n".join(lines)


if __name__ == "__main__":
    main()
