// The theme's own script (search, menus, tables of contents) takes longer to begin than all else on a page, and lays the whole
// page out several times over meanwhile. A page with calculators lets them begin first; but not for long, and not when the
// reader reaches for something.

import { runtime } from "./runtime.mjs";

const PATIENCE = 1000; // ms
const HEADSTART = 100; // ms, in which what was typed meanwhile is answered
const STILL = 200; // ms without a change of size

const held = /** @type {HTMLScriptElement} */ (document.querySelector("script[data-held]")); // every page has one (main.html)
const read = new Promise((go) => document.addEventListener("DOMContentLoaded", go, { once: true }));
const waited = new AbortController();

if (runtime.startsByItself) await Promise.race([calculators(), reader(waited.signal), pause(PATIENCE)]);
waited.abort();
await read;
globalThis.ResizeObserver = late(globalThis.ResizeObserver);
const script = document.createElement("script");
script.src = held.src;
script.addEventListener("load", () => document.dispatchEvent(new Event("DOMContentLoaded"))); // it knows no other sign that the page was read
held.replaceWith(script);

async function calculators() {
  await runtime.settled();
  await pause(HEADSTART);
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
 * It measures every heading again when an answer changes the page's height, and the answer's paint would wait
 * for that.
 * @param {typeof ResizeObserver} Observer
 */
function late(Observer) {
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
