// Sizes that a sentence takes from the sheet of the examples' engine: while the reader's engine is another one, by a job or by choice,
// its own stand in their place. Loaded only then (live.mjs).

import { runtime } from "./runtime.mjs";
import { engine } from "./standing.mjs";

const places = [...document.querySelectorAll("[data-sheet-size]")];
const first = new Map(places.map((place) => [place, place.innerHTML]));

/** Show the sizes of an engine; of the one that stands here first, as they stood. */
export async function show(name = engine()) {
  const strange = places.filter((place) => place.dataset.engine !== name);
  const sizes = [...new Set(strange.map((place) => place.dataset.sheetSize))];
  const reply = sizes.length ? await runtime.ask({ call: "sizes", engine: name, sizes }, "sizes") : { ok: true, html: {} };
  if (!reply) return; // overtaken by the choice of another
  for (const place of places) {
    place.innerHTML = place.dataset.engine === name ? first.get(place) : reply.ok ? reply.html[place.dataset.sheetSize] : `(${name || "your engine"}: see its sheet)`;
  }
}
