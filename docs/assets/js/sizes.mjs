// Sizes that a sentence takes from the sheet of the examples' engine: while the reader's engine is another one, by a job or by choice,
// its own stand in their place. Loaded only then (live.mjs).

import { runtime } from "./runtime.mjs";
import { engine } from "./standing.mjs";

const places = [...document.querySelectorAll("[data-sheet-size]")];
const first = new Map(places.map((place) => [place, place.innerHTML]));

/** @param {HTMLElement} place */
const sizeOf = (place) => place.dataset.sheetSize ?? "";

let turn = 0; // of the showings; only the last one counts

/** Show the sizes of an engine; of the one that stands here first, as they stood. */
export async function show(name = engine()) {
  const own = ++turn;
  const strange = places.filter((place) => place.dataset.engine !== name);
  const sizes = [...new Set(strange.map(sizeOf))];
  const reply = sizes.length ? await runtime.ask(/** @type {Asked<"sizes">} */ ({ call: "sizes", engine: name, sizes }), "sizes") : null;
  if (own !== turn) return;
  for (const place of places) {
    const stands = place.dataset.engine === name ? first.get(place) : reply?.ok ? reply.html[sizeOf(place)] : `(${name || "your engine"}: see its sheet)`;
    place.innerHTML = stands ?? "";
  }
}
