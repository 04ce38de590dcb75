"""Measure pages as a phone gets them, and every calculator's keys: `python -m scripts.bench_page [--site-dir
DIR]`. Never a test.

First paint and shifting layout: a phone's screen, a processor slowed down four times, a line of 1.6 Mbit/s
and 150 ms. Keys: all that stands in sight is filled in as in the example, and the first entry typed on. From
the key to the painted verdict, once on this machine as it is without the wait for the screen's next frame
(work), which comes 60 times a second: a key that asks for nothing at all waits for it 8 ms, and one in twenty
16; and once as seen on the phone. The browser slows down the page's own thread only, so there the worker
holds back each answer by three times what it took. Results go to .cache/bench-page.json too.
"""

from __future__ import annotations

import re
import shutil
import statistics
import tempfile
from pathlib import Path

from scripts import environment
from scripts.bench import (
    COMPRESSED,
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

DESK, PHONE = {"width": 1280, "height": 900}, {"width": 390, "height": 844}
LINE = (1.6e6, 0.150)  # bit/s, s there and back: what is called fast 3G
SLOWER = 4
WORK, SEEN = 16, 50  # ms that a key may take (p95)
SIMULATIONS = {"stack-up"}  # draws ten thousand sets of parts; no calculator goes through time in steps
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
# Notes for each key when its first answer, a verdict or what refuses the entry, was painted, and when the last:
# [as seen, without the wait for the frame], ms.
WATCH_KEYS = """
globalThis.painted = { first: [], whole: [] };
let typed = 0, answered = true;
addEventListener("input", (event) => ([typed, answered] = [event.timeStamp, false]), true);
const next = (then) => {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = then;
  port2.postMessage(0);
};
const hear = ({ data: { reply } }) => {
  if (!reply || !typed) return;
  const [since, into] = [typed, []];
  if (!answered) into.push(painted.first);
  if (!reply.more) into.push(painted.whole);
  answered = true;
  next(() => {
    const swapped = performance.now();
    requestAnimationFrame(() => {
      const frame = performance.now();
      next(() => into.forEach((list) => list.push([performance.now() - since, performance.now() - frame + swapped - since])));
    });
  });
};
for (const name of ["Worker", "SharedWorker"]) {
  globalThis[name] = class extends globalThis[name] {
    constructor(...how) {
      super(...how);
      (this.port ?? this).addEventListener("message", hear);
    }
  };
}
"""
# In front of the worker's script: what it took until it answers, it takes so many times.
SLOW = """
{
  let since = performance.now();
  for (const port of [self, MessagePort.prototype]) {
    const tell = port.postMessage;
    if (tell) port.postMessage = function (message, ...more) {
      const until = message?.reply ? since + %d * (performance.now() - since) : 0;
      while (performance.now() < until);
      tell.call(this, message, ...more);
      since = performance.now();
    };
  }
}
"""
# Fills in what stands in sight as in the example, and goes to the first entry; whether there is one.
FILL_IN = """(id) => {
  const live = document.querySelector(`live-calculator[data-calculator="${id}"]`);
  const inSight = [...live.querySelectorAll("[data-entry]")].filter((entry) => entry.checkVisibility());
  for (const entry of inSight) {
    if (entry.matches("input")) entry.value = entry.dataset.metric ?? "";
    const hint = entry.querySelector("[data-hint]")?.textContent;
    const meant = hint && [...entry.options].find(({ value, text }) => value && hint.endsWith(text));
    if (!meant) continue;
    entry.value = meant.value;
    entry.dispatchEvent(new Event("change", { bubbles: true }));
  }
  const first = inSight.find((entry) => entry.matches("input") && entry.value) ?? inSight.find((entry) => entry.matches("input"));
  if (!first) return false;
  first.scrollIntoView({ block: "center" });
  first.focus();
  first.dispatchEvent(new Event("input", { bubbles: true }));
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
    """For every calculator of the site, ms from a key to its painted answer, here and on a phone."""
    with tempfile.TemporaryDirectory() as folder:
        slow = Path(folder) / "slow"
        shutil.copytree(site, slow)
        worker = slow / "assets/js/worker.mjs"
        worker.write_text(SLOW % SLOWER + worker.read_text(encoding="utf-8"), encoding="utf-8")
        here, phone = typed_into(playwright, site, DESK, 1), typed_into(playwright, slow, PHONE, SLOWER)
    if not here:
        raise NotMeasured(f"no page of {site} has a calculator to type into")
    return {id: here[id] | {f"phone_{what}": times for what, times in phone[id].items()} for id in here}


def typed_into(playwright, site: Path, screen: dict[str, int], slower: int) -> dict[str, dict]:
    """The same on one screen, by a processor so many times slower."""
    found = {}
    browser = playwright.chromium.launch(executable_path=environment.browser(), args=environment.HEADLESS)
    with serving(site) as (port, _):
        try:
            # with a service worker, files would be unpacked beside the first calculators' keys
            context = browser.new_context(viewport=screen, service_workers="block")
            context.add_init_script(WATCH_KEYS)
            for id, path in pages_of(site).items():
                page = context.new_page()
                page.goto(f"http://localhost:{port}/{path}")
                poll(page, READY, f"the calculators of {path}")
                if page.evaluate(FILL_IN, id):
                    context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": slower})
                    found[id] = keys_of(page, id)
                page.close()
        finally:
            browser.close()
    return found


def pages_of(site: Path) -> dict[str, str]:
    """Where each calculator stands first, by its id."""
    pages: dict[str, str] = {}
    for page_file in sorted(site.rglob("index.html")):
        for id in re.findall(
            r'<live-calculator[^>]*data-calculator="([^"]+)"', page_file.read_text(encoding="utf-8")
        ):
            pages.setdefault(id, page_file.parent.relative_to(site).as_posix() + "/")
    return pages


def keys_of(page, id: str) -> dict:
    """Of the entry that has the focus."""
    page.wait_for_timeout(10 * PAUSE)
    page.keyboard.press("End")
    page.evaluate("painted.first.length = painted.whole.length = 0")
    for number in range(WARM + KEYS):
        page.keyboard.press("Backspace" if number % 2 else "5")
        poll(page, f"painted.whole[{number}]", f"the painted answer of {id} to key {number + 1}")
        page.wait_for_timeout(PAUSE)
    times = page.evaluate("painted")
    return {
        f"{what}_{name}": spread(each)
        for what in ("first", "whole")
        for name, each in zip(("seen", "work"), zip(*times[what][WARM:]))
    }


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
        *keys_told(typed),
    ]
    return "\n".join(lines)


def keys_told(typed: dict[str, dict]) -> list[str]:
    """The keys of all calculators in one line each, the slowest first, and which of them take too long."""
    lines = [
        "",
        f"{'from the key to the painted verdict, ms':<42}{'work':>6}{'p95':>8}{'phone, seen':>14}{'p95':>8}",
    ]
    for id, times in sorted(typed.items(), key=lambda each: -each[1]["first_work"]["p95"]):
        work, seen = times["first_work"], times["phone_first_seen"]
        name = id + (" (simulation)" if id in SIMULATIONS else "")
        lines.append(
            f"{name:<42}{work['p50']:>6.1f}{work['p95']:>8.1f}{seen['p50']:>14.1f}{seen['p95']:>8.1f}"
        )
    for words, key, most in (("work", "first_work", WORK), ("as seen on a phone", "phone_first_seen", SEEN)):
        missed = [id for id, times in typed.items() if times[key]["p95"] > most]
        real = sorted(set(missed) - SIMULATIONS)
        told = (
            f"missed by {len(real)} of {len(typed)}: {', '.join(real)}"
            if real
            else "kept by all but simulations"
            if missed
            else "kept by all"
        )
        lines.append(f"{words}, p95 {most} ms at most: {told}")
    for what, words in (("first", "verdict"), ("whole", "whole result")):
        p50, p95 = (
            statistics.median(times[f"{what}_work"][p] for times in typed.values()) for p in ("p50", "p95")
        )
        lines.append(
            f"key to painted {words}, work: p50 {p50:.1f} ms, p95 {p95:.1f} ms (medians of {len(typed)} calculators)"
        )
    return lines


if __name__ == "__main__":
    run("scripts.bench_page", __doc__.splitlines()[0], measure, table, RESULT, runs=7)
