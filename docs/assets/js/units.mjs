// The reader's unit system: kept on <html data-units>, where CSS shows one of the two texts of every
// size, and in localStorage, from where other tabs follow. A change is told by "sizebook:units" on
// the document, with the system that was left in `detail`.

const KEPT = "sizebook:units";
const root = document.documentElement;

/** @returns {System} */
export const system = () => (root.dataset.units === "inch" ? "inch" : "metric");

/** @param {string | null | undefined} wanted */
export function choose(wanted) {
  const left = system();
  if (wanted === left || (wanted !== "metric" && wanted !== "inch")) return;
  root.dataset.units = wanted;
  show();
  document.dispatchEvent(new CustomEvent("sizebook:units", { detail: left }));
}

function show() {
  for (const button of document.querySelectorAll("[data-units-choice]")) {
    button.setAttribute("aria-pressed", String(button.dataset.unitsChoice === system()));
  }
}

document.addEventListener("click", (event) => {
  const wanted = event.target.closest("[data-units-choice]")?.dataset.unitsChoice;
  if (!wanted) return;
  choose(wanted);
  try {
    localStorage.setItem(KEPT, system());
  } catch {
    // Storage may be forbidden: the choice then holds for this page only.
  }
});

addEventListener("storage", ({ key }) => {
  if (key !== KEPT && key !== null) return;
  try {
    choose(localStorage.getItem(KEPT));
  } catch {
    // Forbidden meanwhile: the page goes on as it is.
  }
});

show();
