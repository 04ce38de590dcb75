// The theme's own script (search, menus, tables of contents) takes longer to begin than all else on a page, and lays the whole
// page out several times over meanwhile. A page with calculators lets them begin first; but not for long, and not when the
// reader reaches for something.

import { runtime } from "./runtime.mjs";

const PATIENCE = 1000; // ms
const HEADSTART = 100; // ms, in which what was typed meanwhile is answered

const held = document.querySelector("script[data-held]");
const read = new Promise((go) => document.addEventListener("DOMContentLoaded", go, { once: true }));
const live = document.querySelector('meta[name="sizebook-live"]') && !navigator.connection?.saveData; // else they wait to be typed into

if (live) await Promise.race([calculators(), reader(), pause(PATIENCE)]);
await read;
const script = document.createElement("script");
script.src = held.src;
script.addEventListener("load", () => document.dispatchEvent(new Event("DOMContentLoaded"))); // it knows no other sign that the page was read
held.replaceWith(script);

async function calculators() {
  while (runtime.state === "asleep" || runtime.state === "starting") {
    await new Promise((go) => runtime.addEventListener("state", go, { once: true }));
  }
  await pause(HEADSTART);
}

/** A press or a key outside the calculators. */
function reader() {
  return new Promise((go) => {
    const outside = ({ target }) => target.closest?.("live-calculator") || go();
    for (const event of ["pointerdown", "keydown"]) addEventListener(event, outside, { capture: true, passive: true });
  });
}

function pause(ms) {
  return new Promise((go) => setTimeout(go, ms));
}
