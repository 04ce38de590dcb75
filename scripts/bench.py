"""Measure how long a reader waits: `python -m scripts.bench [--runs N]`. Never a test: timings are noisy.

In one run, on one machine, taking turns: this site, and the same site with the stock way in place of its
runtime (the stock library as source, `calc` as a source wheel, a worker for each page). Medians go to
.cache/bench.json too. Cold: a new browser that has seen nothing. Warm: all is on the device, and the server
gone; no Python runs yet where the first page of a visit is opened, and with the second the first one's does.
On a machine that is not quiet nothing is reported.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import statistics
import sys
import tempfile
import threading
import time
import zipfile
from contextlib import contextmanager, nullcontext
from pathlib import Path

from scripts import environment
from scripts.build import SITE, build
from scripts.link import Link
from scripts.measured import write as write_measured
from scripts.runtime import bundle, offline
from scripts.server import compress_all, server

CALCULATOR, ENTRY, TYPED = "seat-fit", "ring_outside", "37.61"
QUALITY = 11  # of brotli: as a host that compresses in advance
SLOW = (10e6, 0.050)  # bit/s, s there and back
PATIENCE = 120  # s
QUIET = 0.7  # load in the mean of a minute, above which nothing is measured
UNSTEADY = 0.25  # of the median, that the middle half of repeats may be apart
PAUSE = (
    3000  # ms from the end of the first visit to the second: the browser still writes down what it has got
)
BETWEEN = "about/"  # a page on the way to the second one with calculators
COMPRESSED = environment.CACHE / "compressed"
KEPT = (  # all is there for later visits
    "/^Ready/.test(document.querySelector('[data-offline-status]').textContent) || null"
)
RESULT = environment.CACHE / "bench.json"

# The stock way: the runtime as it comes, the package as a source wheel. To be fair, it asks for everything at
# once too.
STOCK_WORKER = """
const { runtime, calc } = JSON.parse(self.name);
const waiting = [];
self.onmessage = ({ data }) => waiting.push(data);
const { fetch } = self;
const names = ["pyodide.asm.wasm", "python_stdlib.zip", "pyodide-lock.json"];
const early = new Map(names.map((name) => [name, fetch(runtime + name)]));
self.fetch = (address, ...more) => early.get(String(address).split("/").pop()) ?? fetch(address, ...more);
const wheel = fetch(`${calc}calc.zip`).then((response) => response.arrayBuffer());
const modules = ["pyodide.mjs", "pyodide.asm.mjs"];
const [{ loadPyodide }] = await Promise.all(modules.map((name) => import(runtime + name)));
const python = await loadPyodide({ indexURL: runtime });
python.unpackArchive(await wheel, "wheel");
const { answer } = python.pyimport("calc.page.live");
const reply = (asked) => JSON.parse(answer(JSON.stringify(asked)));
const serve = ({ turn, come, ...asked }) => {
  if (come) return;
  const first = reply(asked);
  self.postMessage({ turn, reply: first });
  if (first.more) self.postMessage({ turn, reply: reply({ call: "rest" }) });
};
waiting.forEach(serve);
self.onmessage = ({ data }) => serve(data);
self.postMessage({ state: "ready" });
"""

# Types into the first calculator as soon as it can be typed into, and notes when its answer was painted.
TYPE_AND_WATCH = """
(() => {
  const painted = (then) => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = then;
    port2.postMessage(0);
  });
  const look = () => {
    const live = document.querySelector('live-calculator[data-calculator="%(calculator)s"]');
    const verdict = live?.querySelector('[data-part="verdict"]');
    if (!verdict || !live.matches(":defined")) return requestAnimationFrame(look);
    const entry = live.querySelector('[name="%(entry)s"]');
    new MutationObserver(() => painted(() => (globalThis.firstResult ??= performance.now())))
      .observe(verdict, { childList: true, characterData: true, subtree: true });
    entry.focus();
    entry.value = "%(typed)s";
    entry.dispatchEvent(new Event("input", { bubbles: true }));
  };
  look();
})();
""" % {"calculator": CALCULATOR, "entry": ENTRY, "typed": TYPED}  # noqa: UP031  # braces are the script's own


class NotMeasured(Exception):
    """A number that could not be had; names it."""


def stock_site(site: Path, folder: Path) -> Path:
    """A copy of the site that runs the stock runtime in the stock way; all else is the same."""
    shutil.copytree(site, folder)
    python, calc = runtime_folders(folder)
    package = bundle.packages(environment.CACHE) / "pyodide"
    for name in ("python_stdlib.zip", "pyodide-lock.json"):
        shutil.copyfile(package / name, python / name)
    with zipfile.ZipFile(calc / "calc.zip", "w", zipfile.ZIP_DEFLATED) as wheel:
        for path in sorted(p for p in bundle.CALC.rglob("*") if p.is_file() and "__pycache__" not in p.parts):
            wheel.write(path, path.relative_to(bundle.CALC.parent).as_posix())
    for name in ("cold.wasm", "codes.zip"):
        (python / name).unlink()
    for name in ("hot.wasm", "memory.wasm"):
        (calc / name).unlink()
    scripts = folder / "assets/js"
    (scripts / "worker.mjs").write_text(STOCK_WORKER)
    ours = (scripts / "visit.mjs").read_text(encoding="utf-8")
    theirs = ours.replace("outlives() &&", "false &&")
    if theirs == ours:
        raise NotMeasured("visit.mjs is written otherwise: the stock way would share its Python")
    (scripts / "visit.mjs").write_text(theirs, encoding="utf-8")
    offline.write(folder, f"{python.name}-{calc.name}")
    return folder


def runtime_folders(site: Path) -> tuple[Path, Path]:
    (wasm,), (calc,) = (site / "runtime").glob("*/pyodide.asm.wasm"), (site / "runtime").glob("*/calc.zip")
    return wasm.parent, calc.parent


@contextmanager
def serving(site: Path):
    running = server(site, COMPRESSED, quality=QUALITY)
    threading.Thread(target=running.serve_forever, args=(0.05,), daemon=True).start()

    def stop():
        running.shutdown()
        running.server_close()

    try:
        yield running.server_port, stop
    finally:
        stop()


class Visitor:
    """A browser with a profile of its own, kept until it is done with; every page of it runs `script`
    first."""

    def __init__(self, playwright, profile: Path, script: str = TYPE_AND_WATCH):
        self.context = playwright.chromium.launch_persistent_context(
            profile,
            executable_path=environment.browser(),
            viewport={"width": 1280, "height": 900},
            args=environment.HEADLESS,
        )
        self.context.add_init_script(script)
        self.requests = 0
        self.context.on("request", lambda _: self._count())

    def _count(self):
        self.requests += 1

    def visit(self, address: str, page=None):
        """Open an address, in a new tab or a given one, and wait for the first live result; returns (page, ms
        since the navigation began)."""
        page = page or self.context.new_page()
        page.goto(address, wait_until="commit")
        took = poll(page, "globalThis.firstResult", f"the first live result at {address}")
        return page, took


def poll(page, expression: str, what: str):
    until = time.monotonic() + PATIENCE
    while time.monotonic() < until:
        if (value := page.evaluate(expression)) is not None:
            return value
        page.wait_for_timeout(10)
    status = page.evaluate("document.querySelector('[data-part=status]')?.textContent")
    raise NotMeasured(f"{what}: nothing within {PATIENCE} s; the page says {status!r}")


def cold(playwright, site: Path, path: str, line: tuple[float, float] | None) -> dict[str, float]:
    with (
        serving(site) as (port, _),
        Link(port, *line) if line else nullcontext() as link,
        tempfile.TemporaryDirectory() as profile,
    ):
        visitor = Visitor(playwright, Path(profile))
        try:
            _, took = visitor.visit(f"http://localhost:{link.port if link else port}/{path}")
            return {"ms": took, "bytes": link.received if link else 0, "requests": visitor.requests}
        finally:
            visitor.context.close()


def warm(playwright, site: Path, path: str) -> dict[str, float]:
    """With the server gone: the first page of a visit, the second, and the first in a browser begun anew."""
    with serving(site) as (port, stop), tempfile.TemporaryDirectory() as profile:
        address = f"http://localhost:{port}/{path}"
        visitor = Visitor(playwright, Path(profile))
        try:
            page, _ = visitor.visit(address)
            poll(page, KEPT, f"ready for offline use at {address}")
            page.wait_for_timeout(PAUSE)
            page.goto("about:blank")
            stop()
            end_pythons(page)
            _, first = visitor.visit(address, page)
            page.wait_for_timeout(PAUSE)  # a reader looks at it
            page.goto(f"http://localhost:{port}/{BETWEEN}")
            _, second = visitor.visit(address, page)
        finally:
            visitor.context.close()
        visitor = Visitor(playwright, Path(profile))
        try:
            _, restarted = visitor.visit(address, visitor.context.pages[0])
        finally:
            visitor.context.close()
    return {"ms": first, "second": second, "restarted": restarted}


def end_pythons(page) -> None:
    """End what outlives its page, as the browser does some minutes after the last page was left."""
    session = page.context.new_cdp_session(page)
    for target in session.send("Target.getTargets")["targetInfos"]:
        if target["type"] == "shared_worker":
            session.send("Target.closeTarget", {"targetId": target["targetId"]})
    page.wait_for_timeout(500)


def page_weight(playwright, site: Path, path: str) -> dict[str, float]:
    """The page itself as it comes over the wire, with the calculators left asleep."""
    with serving(site) as (port, _), Link(port, 1e9, 0) as link, tempfile.TemporaryDirectory() as profile:
        visitor = Visitor(playwright, Path(profile))
        try:
            page = visitor.context.new_page()
            page.add_init_script("delete globalThis.SharedWorker")  # which no route reaches
            page.route("**/assets/js/worker.mjs", lambda route: route.abort())
            visitor.context.route("**/sw.js", lambda route: route.abort())
            visitor.requests = 0
            page.goto(f"http://localhost:{link.port}/{path}", wait_until="networkidle")
            return {"bytes": link.received, "requests": visitor.requests}
        finally:
            visitor.context.close()


def find_page(site: Path) -> str:
    for path in sorted(site.rglob("index.html")):
        if f'data-calculator="{CALCULATOR}"' in path.read_text(encoding="utf-8"):
            return path.parent.relative_to(site).as_posix() + "/"
    raise NotMeasured(f"no page holds {CALCULATOR}")


def measure(site: Path, runs: int, say=print) -> dict:
    from playwright.sync_api import sync_playwright

    path = find_page(site)
    kinds = {
        "cold": lambda playwright, folder: cold(playwright, folder, path, None),
        "cold, slow line": lambda playwright, folder: cold(playwright, folder, path, SLOW),
        "warm": lambda playwright, folder: warm(playwright, folder, path),
    }
    with tempfile.TemporaryDirectory() as work, sync_playwright() as playwright:
        sites = {"stock": stock_site(site, Path(work) / "stock"), "ours": site}
        for folder in sites.values():
            compress_all(folder, COMPRESSED, QUALITY)
        found = {name: {kind: [] for kind in kinds} for name in sites}
        for run in range(runs):
            for kind, run_once in kinds.items():
                for name, folder in sites.items():
                    found[name][kind].append(run_once(playwright, folder))
                    say(
                        f"{run + 1}/{runs} {name}, {kind}: {found[name][kind][-1]['ms']:.0f} ms",
                        file=sys.stderr,
                    )
        for name, kinds_ in found.items():
            for kind, rows in kinds_.items():
                steady(f"{name}, {kind}", [row["ms"] for row in rows])
        result = {
            name: {kind: medians(rows) for kind, rows in kinds_.items()} for name, kinds_ in found.items()
        }
        result["page"] = page_weight(playwright, site, path)
        result["runs"], result["browser"] = runs, environment.browser()
    return result


def medians(rows: list[dict[str, float]]) -> dict[str, float]:
    return {key: round(statistics.median(row[key] for row in rows), 1) for key in rows[0]}


def steady(what: str, times: list[float]) -> None:
    """Refuses times of one thing that lie far apart: the middle half within a quarter of the median."""
    if len(times) < 4:
        return
    low, middle, high = statistics.quantiles(times, n=4)
    if high - low > UNSTEADY * middle:
        told = ", ".join(f"{each:.0f}" for each in sorted(times))
        raise NotMeasured(f"the machine was not quiet: {what} took {told} ms")


def wait_until_quiet() -> None:
    """Refuses a machine that has other work; what was done just before may end first."""
    until = time.monotonic() + PATIENCE
    while (load := os.getloadavg()[0]) > QUIET:
        if time.monotonic() > until:
            raise NotMeasured(f"the machine is not quiet: its load is {load:.1f}, where {QUIET} is allowed")
        time.sleep(2)


def table(result: dict) -> str:
    ours, stock = result["ours"], result["stock"]
    lines = [f"{'navigation to first live result, ms':<42}{'stock':>8}{'ours':>8}{'ratio':>8}"]
    rows = [
        ("cold, fast line", "cold", "ms"),
        (f"cold, {SLOW[0] / 1e6:.0f} Mbit/s and {SLOW[1] * 1e3:.0f} ms", "cold, slow line", "ms"),
        ("warm, first page of a visit", "warm", "ms"),
        ("warm, second page of a visit", "warm", "second"),
        ("warm, browser started anew", "warm", "restarted"),
    ]
    for words, kind, key in rows:
        # of the stock way each page is a first one
        a, b = stock[kind]["ms" if key == "second" else key], ours[kind][key]
        lines.append(f"{words:<42}{a:>8.0f}{b:>8.0f}{b / a:>8.2f}")
    a, b = stock["cold, slow line"], ours["cold, slow line"]
    lines.append(
        f"{'MB over the wire until then':<42}{a['bytes'] / 1e6:>8.2f}{b['bytes'] / 1e6:>8.2f}"
        f"{b['bytes'] / a['bytes']:>8.2f}"
    )
    lines.append(f"{'requests until then':<42}{a['requests']:>8.0f}{b['requests']:>8.0f}")
    lines.append(
        f"the page without calculators: {result['page']['bytes'] / 1e3:.0f} kB,"
        f" {result['page']['requests']:.0f} requests"
    )
    return "\n".join(lines)


def run(module: str, description: str, measure, table, result: Path, runs: int) -> None:
    """A bench as a command: `measure(site, runs)` gives what is written to `result` and shown by `table`."""
    parser = argparse.ArgumentParser(prog=f"python -m {module}", description=description)
    parser.add_argument("--runs", type=int, default=runs)
    parser.add_argument("--site-dir", type=Path, help="measure this built site")
    chosen = parser.parse_args()
    try:
        environment.enter(module, "site", "test")
        if not chosen.site_dir:
            build()
        wait_until_quiet()
        measured = measure(chosen.site_dir or SITE, chosen.runs)
    except (NotMeasured, environment.Missing) as error:
        sys.exit(f"Not measured: {error}")
    result.parent.mkdir(exist_ok=True)
    environment.put(result, json.dumps(measured, indent=1))
    print(table(measured))
    if not chosen.site_dir:
        write_measured(module, table(measured))


if __name__ == "__main__":
    run("scripts.bench", __doc__.splitlines()[0], measure, table, RESULT, runs=7)
