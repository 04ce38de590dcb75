"""Measure pages as a phone gets them, and every calculator's keys: `python -m scripts.bench_page [--site-dir
DIR]`. Never a test.

First paint and shifting layout: a phone's screen, a processor slowed down four times, a line of 1.6 Mbit/s
and 150 ms. Keys: from the key to the painted answer, on this machine as it is; and the same without the wait
for the screen's next frame, which comes 60 times a second: a key that asks for nothing at all waits for it 8
ms, and one in twenty 16. Results go to .cache/bench-page.json too.
"""

from __future__ import annotations

import re
import statistics
import tempfile
from pathlib import Path

from scripts import environment
from scripts.bench import (
    COMPRESSED,
    KEPT,
    QUALITY,
    NotMeasured,
    Visitor,
    find_page,
    page_weight,
    poll,
    run,
    serving,
)
from scripts.link import Link
from scripts.server import compress_all

PHONE = {"width": 390, "height": 844}
LINE = (1.6e6, 0.150)  # bit/s, s there and back: what is called fast 3G
SLOWER = 4
WARM, KEYS = 5, 40  # of each calculator; the first few run code that is not compiled to the end yet
PAUSE = 100  # ms of rest between two keys, as a quick hand leaves it
RESULT = environment.CACHE / "bench-page.json"
READY = """import(new URL("/assets/js/runtime.mjs", location)).then(({ runtime }) => (runtime.state === "ready" ? performance.now() : null))"""

WATCH_SHIFTS = """
globalThis.shifted = 0;
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) if (!entry.hadRecentInput) shifted += entry.value;
}).observe({ type: "layout-shift", buffered: true });
"""
# Notes for each key when what it changed first was painted, a verdict or the sentence that refuses the entry,
# and when a whole result was: as seen, and what of it was work.
WATCH_KEYS = """(id) => {
  const live = document.querySelector(`live-calculator[data-calculator="${id}"]`);
  const entry = live.querySelector('input[data-entry]');
  globalThis.first = [];
  globalThis.whole = [];
  let typed = 0, begun = true;
  live.addEventListener("input", (event) => ([typed, begun] = [event.timeStamp, false]), true);
  new MutationObserver((changes) => {
    const since = typed, swapped = performance.now();
    const into = begun ? [] : [first];
    if (changes.some(({ target }) => target.dataset?.part === "result")) into.push(whole);
    begun = true;
    if (!since || !into.length) return;
    requestAnimationFrame(() => {
      const frame = performance.now();
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => into.forEach((list) => list.push([performance.now() - since, performance.now() - frame + swapped - since]));
      port2.postMessage(0);
    });
  }).observe(live, { childList: true, subtree: true, characterData: true });
  if (!entry) return false;
  entry.scrollIntoView({ block: "center" });
  entry.focus();
  return true;
}"""


def phone(playwright, site: Path, path: str) -> dict[str, float]:
    """A first visit, in which nothing is typed."""
    with serving(site) as (port, _), Link(port, *LINE) as link, tempfile.TemporaryDirectory() as profile:
        visitor = Visitor(playwright, Path(profile), WATCH_SHIFTS)
        try:
            page = visitor.context.new_page()
            page.set_viewport_size(PHONE)
            visitor.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
            page.goto(f"http://localhost:{link.port}/{path}", wait_until="commit")
            paint = poll(
                page,
                "performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? null",
                "the first paint on a phone",
            )
            live = poll(page, READY, "the calculators, ready, on a phone")
            page.wait_for_timeout(1000)
            return {"first_paint": paint, "live": live, "shift": page.evaluate("shifted")}
        finally:
            visitor.context.close()


def keys(playwright, site: Path) -> dict[str, dict]:
    """For every calculator of the site, ms from a key to its painted answer."""
    found = {}
    pages = {}
    for page_file in sorted(site.rglob("index.html")):
        for id in re.findall(
            r'<live-calculator[^>]*data-calculator="([^"]+)"', page_file.read_text(encoding="utf-8")
        ):
            pages.setdefault(id, page_file.parent.relative_to(site).as_posix() + "/")
    with serving(site) as (port, _), tempfile.TemporaryDirectory() as profile:
        visitor = Visitor(playwright, Path(profile), "")
        try:
            for id, path in pages.items():
                page = visitor.context.new_page()
                page.goto(f"http://localhost:{port}/{path}")
                poll(page, READY, f"the calculators of {path}")
                # else it is unpacked beside the first calculators' keys
                poll(page, KEPT, f"{path}, ready for offline use")
                if not page.evaluate(WATCH_KEYS, id):
                    page.close()
                    continue  # nothing to type into: it has choices only
                page.keyboard.press("End")
                for number in range(WARM + KEYS):
                    page.keyboard.press("Backspace" if number % 2 else "5")
                    poll(page, f"first[{number}]", f"the painted answer of {id} to key {number + 1}")
                    page.wait_for_timeout(PAUSE)
                found[id] = {
                    f"{what}_{name}": spread(times)
                    for what in ("first", "whole")
                    for name, times in zip(("seen", "work"), zip(*page.evaluate(f"{what}.slice({WARM})")))
                }
                page.close()
        finally:
            visitor.context.close()
    if not found:
        raise NotMeasured(f"no page of {site} has a calculator to type into")
    return found


def spread(times) -> dict[str, float]:
    return {"p50": round(statistics.median(times), 1), "p95": round(sorted(times)[int(len(times) * 0.95)], 1)}


def measure(site: Path, runs: int) -> dict:
    from playwright.sync_api import sync_playwright

    path = find_page(site)
    compress_all(site, COMPRESSED, QUALITY)
    with sync_playwright() as playwright:
        visits = [phone(playwright, site, path) for _ in range(runs)]
        return {
            "page": path,
            "runs": runs,
            "phone": {key: round(statistics.median(v[key] for v in visits), 4) for key in visits[0]},
            "weight": page_weight(playwright, site, path),
            "keys": keys(playwright, site),
        }


def table(result: dict) -> str:
    phone_, weight, typed = result["phone"], result["weight"], result["keys"]
    lines = [
        (
            f"phone: first paint {phone_['first_paint']:.0f} ms, calculators ready {phone_['live']:.0f} ms,"
            f" layout shifted {phone_['shift']:.3f}"
        ),
        f"the page without calculators: {weight['bytes'] / 1e3:.0f} kB, {weight['requests']:.0f} requests",
    ]
    for what, words in (("first", "key to painted verdict"), ("whole", "key to painted whole result")):
        for name, how in (("seen", "as seen"), ("work", "without the wait for the screen")):
            times = {id: each[f"{what}_{name}"] for id, each in typed.items() if f"{what}_{name}" in each}
            p50, p95 = (statistics.median(t[p] for t in times.values()) for p in ("p50", "p95"))
            worst = sorted(times.items(), key=lambda pair: -pair[1]["p95"])[:4]
            lines.append(
                f"{words}, {how}: p50 {p50:.0f} ms, p95 {p95:.0f} ms (medians of {len(times)} calculators); "
                "slowest p95 " + ", ".join(f"{id} {each['p95']:.0f}" for id, each in worst)
            )
    return "\n".join(lines)


if __name__ == "__main__":
    run("scripts.bench_page", __doc__.splitlines()[0], measure, table, RESULT, runs=7)
