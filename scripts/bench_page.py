"""Measure pages as a phone gets them, and every calculator's keys: `python -m scripts.bench_page [--site-dir DIR]`. Never a test.

First paint and shifting layout: a phone's screen, a processor slowed down four times, a line of 1.6 Mbit/s and 150 ms. Keys: from
the key to the painted answer, on this machine as it is; and the same without the wait for the screen's next frame, which comes
60 times a second: a key that asks for nothing at all waits for it 8 ms, and one in twenty 16. Results go to .cache/bench-page.json too.
"""

from __future__ import annotations

import json
import re
import statistics
import tempfile
from pathlib import Path

from scripts import environment
from scripts.bench import COMPRESSED, QUALITY, NotMeasured, Visitor, find_page, page_weight, poll, run, serving
from scripts.link import Link
from scripts.server import compress_all

PHONE = {"width": 390, "height": 844}
LINE = (1.6e6, 0.150)  # bit/s, s there and back: what is called fast 3G
SLOWER = 4
KEYS = 40
RESULT = environment.CACHE / "bench-page.json"

WATCH_SHIFTS = """
globalThis.shifted = 0;
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) if (!entry.hadRecentInput) shifted += entry.value;
}).observe({ type: "layout-shift", buffered: true });
"""
# Notes for each key when what it changed was painted: a result, or the sentence that refuses it.
WATCH_KEYS = """(id) => {
  const live = document.querySelector(`live-calculator[data-calculator="${id}"]`);
  const entry = live.querySelector('input[data-entry]');
  globalThis.painted = [];
  let typed = 0;
  live.addEventListener("input", (event) => (typed = event.timeStamp), true);
  new MutationObserver(() => {
    if (!typed) return;
    const since = typed, swapped = performance.now();
    typed = 0;
    requestAnimationFrame(() => {
      const begun = performance.now();
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => painted.push([performance.now() - since, performance.now() - begun + swapped - since]);
      port2.postMessage(0);
    });
  }).observe(live, { childList: true, subtree: true, characterData: true });
  if (!entry) return false;
  entry.scrollIntoView({ block: "center" });
  entry.focus();
  return true;
}"""


def phone(playwright, site: Path, path: str) -> dict[str, float]:
    with serving(site) as (port, _), Link(port, *LINE) as link, tempfile.TemporaryDirectory() as profile:
        visitor = Visitor(playwright, Path(profile))
        try:
            visitor.context.add_init_script(WATCH_SHIFTS)
            page = visitor.context.new_page()
            page.set_viewport_size(PHONE)
            visitor.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
            page.goto(f"http://localhost:{link.port}/{path}", wait_until="commit")
            result = poll(page, "globalThis.firstResult", "the first live result on a phone")
            page.wait_for_timeout(1000)
            paint = poll(page, "performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? null", "the first paint on a phone")
            return {"first_paint": paint, "first_result": result, "shift": page.evaluate("shifted")}
        finally:
            visitor.context.close()


def keys(playwright, site: Path) -> dict[str, dict[str, float]]:
    """For every calculator of the site, ms from a key to its painted answer."""
    found = {}
    pages = {}
    for page_file in sorted(site.rglob("index.html")):
        for id in re.findall(r'<live-calculator[^>]*data-calculator="([^"]+)"', page_file.read_text(encoding="utf-8")):
            pages.setdefault(id, page_file.parent.relative_to(site).as_posix() + "/")
    with serving(site) as (port, _), tempfile.TemporaryDirectory() as profile:
        visitor = Visitor(playwright, Path(profile))
        try:
            for id, path in pages.items():
                page = visitor.context.new_page()
                page.goto(f"http://localhost:{port}/{path}")
                if not page.evaluate(WATCH_KEYS, id):
                    page.close()
                    continue  # nothing to type into: it has choices only
                page.keyboard.press("End")
                page.keyboard.type("5")
                poll(page, "painted[0]", f"the painted answer of {id}")
                page.evaluate("painted.length = 0")
                for number in range(KEYS):
                    page.keyboard.press("5" if number % 2 else "Backspace")
                    poll(page, f"painted[{number}]", f"the painted answer of {id} to key {number + 1}")
                found[id] = {f"{what}{name}": round(value, 1) for what, times in zip(("", "work_"), zip(*page.evaluate("painted")))
                             for name, value in (("p50", statistics.median(times)), ("p95", sorted(times)[int(len(times) * 0.95)]))}
                page.close()
        finally:
            visitor.context.close()
    if not found:
        raise NotMeasured(f"no page of {site} has a calculator to type into")
    return found


def measure(site: Path, runs: int) -> dict:
    from playwright.sync_api import sync_playwright

    path = find_page(site)
    compress_all(site, COMPRESSED, QUALITY)
    with sync_playwright() as playwright:
        visits = [phone(playwright, site, path) for _ in range(runs)]
        return {"page": path, "runs": runs, "phone": {key: round(statistics.median(v[key] for v in visits), 4) for key in visits[0]},
                "weight": page_weight(playwright, site, path), "keys": keys(playwright, site)}


def table(result: dict) -> str:
    phone_, weight, typed = result["phone"], result["weight"], result["keys"]
    worst = sorted(typed.items(), key=lambda pair: -pair[1]["work_p95"])[:5]

    def middle(what):
        return f"{statistics.median(t[what] for t in typed.values()):.0f} ms"
    return "\n".join((
        f"phone: first paint {phone_['first_paint']:.0f} ms, first live result {phone_['first_result']:.0f} ms, layout shifted {phone_['shift']:.3f}",
        f"the page without calculators: {weight['bytes'] / 1e3:.0f} kB, {weight['requests']:.0f} requests",
        f"key to painted answer, {len(typed)} calculators: median of p50 {middle('p50')}, of p95 {middle('p95')}; "
        f"without the wait for the screen {middle('work_p50')} and {middle('work_p95')}",
        "slowest p95 of these: " + ", ".join(f"{id} {times['work_p95']:.0f} ms" for id, times in worst)))


if __name__ == "__main__":
    run("scripts.bench_page", __doc__.splitlines()[0], measure, table, RESULT, runs=7)
