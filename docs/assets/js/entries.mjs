// What the reader has entered into one calculator's form: which entries are still the example, what an
// entry means when the unit system changes, and keeping it all while the page is reloaded.
//
// Every entry carries the example's text in both systems (data-metric, data-inch) and the symbol of the
// unit that a bare number is read in (data-unit-metric, data-unit-inch; missing where it has no unit).

// A letter, a quote, a degree or per cent sign: the reader has said the unit.
const SAYS_UNIT = /[\p{L}"'″′°%]/u;

export class Entries {
  #form;
  #key;

  constructor(form, key) {
    this.#form = form;
    this.#key = `sizebook:entries:${location.pathname}#${key}`;
  }

  get all() {
    return [...this.#form.querySelectorAll("[data-entry]")];
  }

  named(name) {
    return this.all.find((entry) => entry.name === name);
  }

  /** What differs from the calculator's own example: typed entries, and those that the page pre-set. */
  texts(system) {
    const text = (entry) => (isExample(entry, system) ? entry.dataset.preset : entry.value);
    return Object.fromEntries(this.all.map((entry) => [entry.name, text(entry)]).filter(([, given]) => given !== undefined));
  }

  isExample(system) {
    return this.all.every((entry) => isExample(entry, system));
  }

  setExample(system) {
    for (const entry of this.all) entry.value = example(entry, system);
  }

  /** Change to another unit system: the example changes its text, what was typed keeps its meaning. */
  turn(from, to) {
    for (const entry of this.all) {
      if (isExample(entry, from)) entry.value = example(entry, to);
      else entry.value = withUnit(entry, entry.value, from);
    }
  }

  keep(system) {
    // What a job filled in is kept by the job.
    const typed = this.all.filter((entry) => !isExample(entry, system) && entry.value !== entry.dataset.filled).map((entry) => [entry.name, entry.value]);
    try {
      if (typed.length) sessionStorage.setItem(this.#key, JSON.stringify({ system, typed }));
      else sessionStorage.removeItem(this.#key);
    } catch {
      // Storage may be forbidden or full: the entries then live as long as the page.
    }
  }

  /** Put back what was kept; whether there was anything. */
  restore(system) {
    let kept;
    try {
      kept = JSON.parse(sessionStorage.getItem(this.#key));
    } catch {
      return false;
    }
    for (const [name, text] of kept?.typed ?? []) {
      const entry = this.named(name);
      if (entry) entry.value = kept.system === system ? text : withUnit(entry, text, kept.system);
    }
    return Boolean(kept);
  }
}

const example = (entry, system) => entry.dataset[system] ?? "";

const isExample = (entry, system) => entry.value === example(entry, system);

function withUnit(entry, text, system) {
  const symbol = system === "inch" ? entry.dataset.unitInch : entry.dataset.unitMetric;
  return symbol && text.trim() && !SAYS_UNIT.test(text) ? `${text.trimEnd()} ${symbol}` : text;
}
