// What entries stand on, chosen once for all pages: the engine whose sheet gives the limits (in localStorage, from where other
// tabs follow), and which of its parts is in hand (in sessionStorage: another tab may hold another part).
// Changes are told by "sizebook:engine" and "sizebook:place" on the document.

const ENGINE = "sizebook:engine";
const PLACE = "sizebook:place";
const root = document.documentElement;

/** Name of the engine's sheet; empty for an engine that has none here. */
export const engine = () => root.dataset.engine ?? "";

/** The part in hand: "2 exhaust", "exhaust", "2", or empty. */
export function place() {
  try {
    return sessionStorage.getItem(PLACE) ?? remembered;
  } catch {
    return remembered;
  }
}

let remembered = "";

/** @param {string} wanted */
export function choosePlace(wanted) {
  if (wanted === place()) return;
  remembered = wanted;
  try {
    sessionStorage.setItem(PLACE, wanted);
  } catch {
    // Storage may be forbidden: the choice then holds for this page only.
  }
  document.dispatchEvent(new Event("sizebook:place"));
}

/** Intake or exhaust: a cylinder that was chosen with it stays. @param {string} kind */
export function chooseKind(kind) {
  const cylinder = place().match(/^\d+(?= |$)/)?.[0];
  choosePlace([cylinder, kind].filter(Boolean).join(" "));
}

/** For this page only: what the reader chooses is kept below. @param {string} wanted */
export function chooseEngine(wanted) {
  if (wanted === engine()) return;
  root.dataset.engine = wanted;
  show();
  document.dispatchEvent(new Event("sizebook:engine"));
}

/** Put the engines into every choice of them, as those of a calculator that has come with an answer. */
export function show() {
  for (const select of document.querySelectorAll("[data-engine-choice]")) {
    const names = /** @type {string[]} */ (JSON.parse(root.dataset.engines ?? "[]"));
    if (!select.options.length) select.append(...names.map((name) => new Option(name || select.dataset.none, name)));
    select.value = engine();
  }
}

document.addEventListener("change", ({ target }) => {
  if (!(target instanceof HTMLSelectElement && target.matches("[data-engine-choice]"))) return;
  chooseEngine(target.value);
  try {
    localStorage.setItem(ENGINE, target.value);
  } catch {
    // Storage may be forbidden: the choice then holds for this page only.
  }
});

addEventListener("storage", ({ key, newValue }) => key === ENGINE && newValue !== null && chooseEngine(newValue));

show();
