// Looks through the lists of a page while a word is typed: a line stays where each word that is typed begins one of its own, or of
// those that it is looked for by (data-words). What is folded opens while something in it is found.

const LINES = ".sizes > li, .index li, .stations li";
const root = document.documentElement;

/** @type {WeakMap<HTMLElement, string>} */
const texts = new WeakMap();

/** @param {string} text */
const plain = (text) => ` ${text.toLowerCase().replace(/[^\p{L}\p{N}.]+/gu, " ")} `;

/** @param {HTMLElement} line */
function textOf(line) {
  let text = texts.get(line);
  if (!text) texts.set(line, (text = plain(`${line.textContent} ${line.querySelector("[data-words]")?.dataset.words ?? ""}`)));
  return text;
}

/** @type {Map<HTMLDetailsElement, boolean>} */
const folds = new Map(); // as they stood before something was looked for

/** @param {string} typed */
function look(typed) {
  const words = plain(typed).split(" ").filter(Boolean);
  const finding = words.length > 0;
  let found = 0;
  for (const line of document.querySelectorAll(LINES)) {
    line.hidden = finding && !words.every((word) => textOf(line).includes(` ${word}`));
    found += Number(!line.hidden);
  }
  root.toggleAttribute("data-finding", finding);
  for (const fold of document.querySelectorAll("details.fold")) {
    if (finding && !folds.has(fold)) folds.set(fold, fold.open);
    fold.open = finding ? Boolean(fold.querySelector("li:not([hidden])")) : (folds.get(fold) ?? fold.open);
  }
  if (!finding) folds.clear();
  for (const none of document.querySelectorAll("[data-not-found]")) none.hidden = !finding || found > 0;
}

/** The lists are others now: what is looked for is looked for in them. */
export function again() {
  if (entry?.value) look(entry.value);
}

/** Begin again: nothing is looked for any more. */
export function forget() {
  if (!entry?.value) return;
  entry.value = "";
  look("");
}

const entry = document.querySelector("[data-find]");
if (entry) {
  for (const box of document.querySelectorAll(".find")) box.hidden = false;
  entry.addEventListener("input", () => look(entry.value));
  if (entry.value) look(entry.value); // the browser put back what was typed
}
