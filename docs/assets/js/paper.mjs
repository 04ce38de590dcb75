// On paper the working and the checks stand only where the reader has unfolded them (print.css): else a procedure
// of six pages fills twenty. All else that is folded is unfolded while it is printed, so what the reader did is noted apart from that.

const media = matchMedia("print");
let printing = false;
/** @type {HTMLDetailsElement[]} */
let folded = [];

/** @param {HTMLDetailsElement} fold */
function note(fold) {
  if (!printing && !media.matches) fold.toggleAttribute("data-unfolded", fold.open);
}

addEventListener("beforeprint", () => {
  printing = true;
  folded = [...document.querySelectorAll("details:not([open])")];
  for (const fold of folded) fold.open = true;
  // A formula does not break into lines: one too long for the paper is set smaller, by its length in its own letters.
  for (const line of document.querySelectorAll("[data-unfolded] .formula math")) {
    line.style.setProperty("--length", String(Math.ceil(line.getBoundingClientRect().width / parseFloat(getComputedStyle(line).fontSize))));
  }
});
addEventListener("afterprint", () => {
  for (const fold of folded) fold.open = false;
  setTimeout(() => (printing = false)); // of that folding is told after this
});
document.addEventListener("toggle", ({ target }) => target.matches("details") && note(target), true);
for (const fold of document.querySelectorAll("details[open]")) note(fold);
