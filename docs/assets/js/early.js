// Runs before the first paint, so that a page never shows one unit system and then the other.
(() => {
  let kept = null;
  try {
    kept = localStorage.getItem("sizebook:units");
  } catch {
    // Storage may be forbidden; then every page starts in metric.
  }
  document.documentElement.dataset.units = kept === "inch" ? "inch" : "metric";
})();

// The calculators need not wait for the rest of the page.
import("./runtime.mjs").then(({ runtime }) => runtime.startSoon());
