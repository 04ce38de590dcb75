// What the reader has entered into one calculator's form: what an entry means when the unit system changes, what is shown
// as a hint where nothing was entered, and keeping it all while the page is reloaded.
//
// An entry that nobody filled is empty; its hint is the example's text (data-metric, data-inch), or what the answer says that
// it was taken for. data-unit-metric and data-unit-inch are the symbols of the unit that a bare number is read in (missing where
// it has none). A question to the calculator (data-question) always has an answer: the first, until another is chosen.

// A letter, a quote, a degree or per cent sign: the reader has said the unit. The e of 3.79e1 says none.
const SAYS_UNIT = /[\p{L}"'″′°%]/u;
const EXPONENT = /(?<=[0-9][.,]?)e(?=[-+−]?[0-9])/gi;
const FRACTION = /[/⁄\u00bc-\u00be\u2150-\u215e]/; // of inches, in the field of any length (calc/core/reading.py)

/** @type {Map<string, string>} */
const memory = new Map(); // what storage would not take lives as long as the page

/** @typedef {[name: string, text: string][]} Typed */

export class Entries {
  #form;
  #name;
  #of = "";
  #place = "";
  /** @type {string[]} */
  #placed = [];

  /** @param {HTMLFormElement} form @param {string} name */
  constructor(form, name) {
    this.#form = form;
    this.#name = name;
  }

  /**
   * Whose entries these are: of a job or a sheet, by its key, or of nobody's (""), and those of the fields `placed` of which place of
   * its parts. They are kept apart. What is typed before it is said which place it is goes to the one that is said; what was typed for a job that is gone is nobody's.
   * @param {string} key @param {System} system @param {string[]} placed
   */
  belongTo(key, system, place = "", placed = []) {
    if (key === this.#of && place === this.#place && placed.join() === this.#placed.join()) return false;
    const said = !key ? this.#typed : key === this.#of && !this.#place && place ? this.#typed.filter(([name]) => placed.includes(fieldOf(name))) : [];
    if (said.length) write(this.#here, [], system);
    this.#of = key;
    this.#place = place;
    this.#placed = placed;
    this.begin(system);
    for (const [name, text] of said) this.#put(name, text);
    if (said.length) this.keep(system);
    return true;
  }

  /**
   * Make room for what comes with a link; what is the reader's own stays kept where it is.
   * @param {string} link
   */
  lend(link) {
    this.#of = `link ${link}`;
    this.empty();
  }

  /** @param {boolean} waits  whether nothing can be typed */
  wait(waits) {
    this.#form.inert = waits;
  }

  /** What came with the link, or what was made of it before. @param {Texts} texts @param {System} system */
  fill(texts, system) {
    if (read(this.#whole)) return this.restore(system);
    for (const [name, text] of Object.entries(texts)) this.#put(name, text);
    this.keep(system);
  }

  /** What was made of a link is done with. @param {System} system */
  giveBack(system) {
    write(this.#whole, [], system);
    this.#of = "";
  }

  /** Where entries are kept: those of the whole job, and those of the place in hand. */
  get #whole() {
    return this.#wholeOf(this.#of);
  }

  /** @param {string} key */
  #wholeOf(key) {
    return `sizebook:entries:${location.pathname}#${this.#name}@${key}`;
  }

  get #here() {
    return `${this.#whole}@${this.#place}`;
  }

  get all() {
    return [...this.#form.querySelectorAll("[data-entry]")];
  }

  /** @param {string | null} name */
  named(name) {
    return this.all.find((entry) => entry.name === name);
  }

  /** @param {string} name @param {string} text */
  #put(name, text) {
    const entry = this.named(name);
    if (entry) entry.value = text;
  }

  /** What was entered, by name. */
  get texts() {
    return Object.fromEntries(this.all.filter((entry) => entry.value.trim()).map((entry) => [entry.name, entry.value]));
  }

  /** Whether a number was entered: a choice alone only asks for another example. */
  get anyRead() {
    return this.all.some((entry) => entry.matches("input") && entry.value.trim());
  }

  /** Of what a job filled in, what still stands there, by name. @param {Said} told */
  stillFilled(told) {
    return Object.fromEntries(Object.entries(told).filter(([name]) => this.named(name)?.dataset.filled === this.named(name)?.value));
  }

  /** Whether nothing at all was entered or chosen. */
  get untouched() {
    return this.all.every((entry) => entry.value === blank(entry));
  }

  /** What stands here at first: nothing, what the page fills in, and what was kept. @param {System} system */
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

  /**
   * Show what stands in for each entry: what the answer took it for, else the example.
   * @param {System} system @param {Origins} origins
   */
  hint(system, origins = {}) {
    for (const entry of this.all) {
      const text = origins[entry.name]?.shown;
      if (entry.matches("select")) {
        const option = entry.querySelector("[data-hint]");
        const hint = option && (text || (origins[entry.name] ? "Choose …" : (option.dataset.example ??= option.textContent)));
        if (option && option.textContent !== hint) option.textContent = hint;
      } else {
        const hint = (text ?? entry.dataset[system]) || " ";
        if (entry.placeholder !== hint) entry.placeholder = hint; // set to the same, it would be laid out again
      }
    }
  }

  /** Change to another unit system: what was typed keeps its meaning. @param {System} from */
  turn(from) {
    for (const entry of this.all) if (entry.matches("input")) entry.value = withUnit(entry, entry.value, from);
  }

  /** @param {System} system */
  keep(system) {
    const here = (/** @type {Typed[number]} */ [name]) => this.#placed.includes(fieldOf(name));
    const typed = this.#typed;
    write(this.#whole, typed.filter((one) => !here(one)), system);
    if (this.#placed.length) write(this.#here, typed.filter(here), system);
  }

  /**
   * What a job or sheet has kept at a place needs no keeping here.
   * @param {string} key @param {string} place @param {Texts} texts
   */
  forget(key, place, texts) {
    for (const at of [this.#wholeOf(key), `${this.#wholeOf(key)}@${place}`]) {
      const kept = read(at);
      if (kept) write(at, kept.typed.filter(([name, text]) => texts[name] !== text), kept.system);
    }
  }

  /** What a job filled in is kept by the job. @returns {Typed} */
  get #typed() {
    return this.all.filter((entry) => entry.value !== blank(entry) && entry.value !== entry.dataset.filled).map((entry) => [entry.name, entry.value]);
  }

  /** Put back what was kept. @param {System} system */
  restore(system) {
    for (const key of [this.#whole, ...(this.#placed.length ? [this.#here] : [])]) {
      const kept = read(key);
      if (!kept) continue;
      for (const [name, text] of kept.typed) {
        const entry = this.named(name);
        if (entry) entry.value = kept.system === system ? text : withUnit(entry, text, kept.system);
      }
    }
  }
}

/** @param {Entry} entry */
const blank = (entry) => entry.dataset.question ?? "";

/** @param {string} name @returns {string} of the field that an entry is a part of */
export const fieldOf = (name) => name.split(".")[0] ?? "";

/**
 * What was typed, with the unit that it was read in.
 * @param {Entry} entry @param {string} text @param {System} system
 */
function withUnit(entry, text, system) {
  const { unitInch, unitMetric } = entry.dataset;
  const inches = FRACTION.test(text) && ["in", "µin", "thou"].includes(unitInch ?? "");
  const symbol = inches ? "in" : system === "inch" ? unitInch : unitMetric;
  return symbol && text.trim() && !SAYS_UNIT.test(text.replace(EXPONENT, "")) ? `${text.trimEnd()} ${symbol}` : text;
}

/** @param {string} key @param {Typed} typed @param {System} system */
function write(key, typed, system) {
  const text = typed.length ? JSON.stringify({ system, typed }) : null;
  memory.delete(key);
  try {
    if (text) sessionStorage.setItem(key, text);
    else sessionStorage.removeItem(key);
  } catch {
    if (text) memory.set(key, text); // storage may be forbidden or full
  }
}

/** @param {string} key @returns {{system: System, typed: Typed} | null} */
function read(key) {
  try {
    return JSON.parse(memory.get(key) ?? sessionStorage.getItem(key) ?? "null");
  } catch {
    return null;
  }
}
