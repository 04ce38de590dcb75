// Runs before the first paint, so that a page never shows one unit system and then the other, nor no job and then one, nor another engine's limits.
(() => {
  const { dataset } = document.documentElement;
  const engines = [{% for name in config.extra.engines %}{{ name | tojson }}, {% endfor %}""]; // the first is the shop's own; "": one without a sheet here
  let kept = null;
  let engine = null;
  try {
    kept = localStorage.getItem("sizebook:units");
    engine = localStorage.getItem("sizebook:engine");
    if (location.hash.startsWith("#v1.") || localStorage.getItem("sizebook:job")) dataset.job = ""; // it comes with the link (calc/job/codes.py), or is here
  } catch {
    // Storage may be forbidden; then every page starts in metric, without a job.
  }
  dataset.units = kept === "inch" ? "inch" : "metric";
  dataset.engines = JSON.stringify(engines);
  dataset.engine = engine !== null && engines.includes(engine) ? engine : engines[0];
})();

// The calculators need not wait for the rest of the page.
import(new URL(`${document.querySelector('meta[name="sizebook-root"]')?.content}assets/js/runtime.mjs`, location.href).href).then(({ runtime }) => runtime.startSoon());
