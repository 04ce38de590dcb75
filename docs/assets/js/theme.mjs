// The theme's own script (search, menus, tables of contents) takes longer to begin than all else on a page, and lays the whole
// page out several times over meanwhile. A page with calculators lets them begin first; but not for long, and not when the
// reader reaches for something.

import { runtime } from "./runtime.mjs";

const PATIENCE = 1000; // ms
const HEADSTART = 100; // ms, in which what was typed meanwhile is answered
const STILL = 200; // ms without a change of size

const held = /** @type {HTMLScriptElement} */ (document.querySelector("script[data-held]")); // every page has one (scripts/theme.py)
const read = new Promise((go) => document.addEventListener("DOMContentLoaded", go, { once: true }));
const waited = new AbortController();

if (runtime.startsByItself) await Promise.race([calculators(), reader(waited.signal), pause(PATIENCE)]);
waited.abort();
await read;
// The build has the theme's script ask for these, and wait for that sign (scripts/theme.py).
Object.assign(globalThis, { StillObserver: still(ResizeObserver), LateWorker: late(Worker) });
const script = document.createElement("script");
script.src = held.src;
for (const colour of document.querySelectorAll('meta[name="theme-color"]')) script.addEventListener("load", () => colour.remove()); // the theme has its own, which follow its switch
script.addEventListener("load", () => document.dispatchEvent(new Event("sizebook:read")));
held.replaceWith(script);

async function calculators() {
  await runtime.settled();
  await pause(HEADSTART);
  await runtime.idle();
  await new Promise((go) => requestAnimationFrame(() => setTimeout(go))); // the answer is painted
}

/** A press or a key outside the calculators. @param {AbortSignal} signal @returns {Promise<void>} */
function reader(signal) {
  return new Promise((go) => {
    /** @param {Event} event */
    const outside = ({ target }) => (target instanceof Element && target.closest("live-calculator")) || go();
    for (const event of ["pointerdown", "keydown"]) addEventListener(event, outside, { capture: true, passive: true, signal });
  });
}

/** @param {number} ms */
function pause(ms) {
  return new Promise((go) => setTimeout(go, ms));
}

/**
 * Tells of sizes once they have been still: what the theme measures then would keep an answer's paint waiting.
 * @param {typeof ResizeObserver} Observer
 */
function still(Observer) {
  return class extends Observer {
    /** @param {ResizeObserverCallback} tell */
    constructor(tell) {
      /** @type {Map<Element, ResizeObserverEntry>} */
      const sizes = new Map(); // of each element the latest
      let alarm = 0;
      super((entries, observer) => {
        for (const entry of entries) sizes.set(entry.target, entry);
        clearTimeout(alarm);
        alarm = setTimeout(() => {
          tell([...sizes.values()], observer);
          sizes.clear();
        }, STILL);
      });
    }
  };
}

/**
 * A worker that begins with its first message: the search's is sent once the reader reaches for it.
 * @param {typeof Worker} Begun
 */
function late(Begun) {
  return class extends EventTarget {
    /** @type {Worker | undefined} */
    #worker;
    /** @param {string} url */
    constructor(url) {
      super();
      this.url = url;
    }
    /** @param {unknown} message */
    postMessage(message) {
      this.#worker ??= this.#begun();
      this.#worker.postMessage(message);
    }
    #begun() {
      const worker = new Begun(this.url);
      worker.onmessage = ({ data }) => this.dispatchEvent(new MessageEvent("message", { data }));
      return worker;
    }
  };
}
