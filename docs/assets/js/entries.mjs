// What the reader has entered into one calculator's form: what an entry means when the unit system changes, what is shown
// as a hint where nothing was entered, and keeping it all while the page is reloaded.
//
// An entry that nobody filled is empty; its hint is the example's text (data-metric, data-inch), or what the answer says that
// it was taken for. data-unit-metric and data-unit-inch are the symbols of the unit that a bare number is read in (missing where
// it has none). A question to the calculator (data-question) always has an answer: the first, until another is chosen.

// A letter, a quote, a degree or per cent sign: the reader has said the unit.
const SAYS_UNIT = /[\p{L}"'″′°%]/u;

export class Entries {
  #form;
  #name;
  #of = "";

  constructor(form, name) {
    this.#form = form;
    this.#name = name;
  }

  /** Whose entries these are: of a job or a sheet, by its key, or of nobody's (""). They are kept apart. */
  belongTo(key, system) {
    if (key === this.#of) return false;
    this.#of = key;
    this.begin(system);
    return true;
  }

  get #key() {
    return `sizebook:entries:${location.pathname}#${this.#name}@${this.#of}`;
  }

  get all() {
    return [...this.#form.querySelectorAll("[data-entry]")];
  }

  named(name) {
    return this.all.find((entry) => entry.name === name);
  }

  /** What was entered, by name. */
  get texts() {
    return Object.fromEntries(this.all.filter((entry) => entry.value.trim()).map((entry) => [entry.name, entry.value]));
  }

  /** Whether a number was entered: a choice alone only asks for another example. */
  get anyRead() {
    return this.all.some((entry) => entry.matches("input") && entry.value.trim());
  }

  /** Of what a job filled in, what still stands there, by name. */
  stillFilled(told) {
    return Object.fromEntries(Object.entries(told).filter(([name]) => this.named(name)?.dataset.filled === this.named(name)?.value));
  }

  /** Whether nothing at all was entered or chosen. */
  get untouched() {
    return this.all.every((entry) => entry.value === blank(entry));
  }

  /** What stands here at first: nothing, what the page fills in, and what was kept. */
  begin(system) {
    this.empty();
    this.preset();
    this.restore(system);
  }

  empty() {
    for (const entry of this.all) {
      entry.value = blank(entry);
      delete entry.dataset.filled;
    }
  }

  /** Fill in what the page has its reasons for, where nothing else stands. */
  preset() {
    for (const entry of this.all) {
      const { preset } = entry.dataset;
      if (preset && entry.value === blank(entry)) entry.value = entry.dataset.filled = preset;
    }
  }

  /** Show what stands in for each entry: what the answer took it for, else the example. */
  hint(system, origins = {}) {
    for (const entry of this.all) {
      const text = origins[entry.name]?.shown;
      if (entry.matches("select")) {
        const option = entry.querySelector("[data-hint]");
        if (option) option.textContent = text || (origins[entry.name] ? "Choose …" : (option.dataset.example ??= option.textContent));
      } else {
        entry.placeholder = (text ?? entry.dataset[system]) || " ";
      }
    }
  }

  /** Change to another unit system: what was typed keeps its meaning. */
  turn(from) {
    for (const entry of this.all) if (entry.matches("input")) entry.value = withUnit(entry, entry.value, from);
  }

  keep(system) {
    // What a job filled in is kept by the job.
    const typed = this.all.filter((entry) => entry.value !== blank(entry) && entry.value !== entry.dataset.filled).map((entry) => [entry.name, entry.value]);
    try {
      if (typed.length) sessionStorage.setItem(this.#key, JSON.stringify({ system, typed }));
      else sessionStorage.removeItem(this.#key);
    } catch {
      // Storage may be forbidden or full: the entries then live as long as the page.
    }
  }

  /** Put back what was kept. */
  restore(system) {
    let kept;
    try {
      kept = JSON.parse(sessionStorage.getItem(this.#key));
    } catch {
      return;
    }
    for (const [name, text] of kept?.typed ?? []) {
      const entry = this.named(name);
      if (entry) entry.value = kept.system === system ? text : withUnit(entry, text, kept.system);
    }
  }
}

const blank = (entry) => entry.dataset.question ?? "";

function withUnit(entry, text, system) {
  const symbol = system === "inch" ? entry.dataset.unitInch : entry.dataset.unitMetric;
  return symbol && text.trim() && !SAYS_UNIT.test(text) ? `${text.trimEnd()} ${symbol}` : text;
}
