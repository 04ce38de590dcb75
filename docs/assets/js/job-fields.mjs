// What a job says beside the fields of a calculator: fills in what it holds, and keeps what is typed at one tap.
// Loaded only while a job is worked on (live.mjs), or on the page of a received sheet.

import { fieldOf } from "./entries.mjs";
import { ask, change, changes, current, exportButton, get, initials, now, setInitials } from "./jobs.mjs";
import { choosePlace, place as inHand } from "./standing.mjs";

/**
 * @import { StoreError } from "./jobs.mjs"
 * @import { LiveCalculator } from "./live.mjs"
 * @typedef {{name: string, key: string, place: string, texts: Texts, job: string}} Press  what keeping a reading took along
 */

const SITE = new URL("../../", import.meta.url).href;

const look = document.createElement("link");
Object.assign(look, { rel: "stylesheet", href: `${SITE}assets/css/job.css` });
if (!document.querySelector(`link[href$="/css/job.css"]`)) document.head.append(look);

/**
 * Put a calculator to the job that is worked on, or to the sheet that it stands on, until `signal` says that it has left.
 * @param {LiveCalculator} live @param {AbortSignal} signal
 */
export function attach(live, signal) {
  const fields = new JobFields(live);
  /** @type {Listen} */
  const on = (target, event, handler) => target.addEventListener(event, /** @type {EventListener} */ (handler), { signal });
  on(changes, "change", ({ detail }) => (detail === null || fields.knows(detail)) && fields.refresh());
  on(document, "sizebook:units", () => fields.refresh());
  on(document, "sizebook:place", () => fields.refresh());
  on(live, "input", (event) => fields.typed(event));
  on(live, "reset", () => fields.declined());
  on(live, "click", ({ target }) => fields.pressed(target));
  on(live, "change", ({ target }) => fields.chosen(target));
  return fields.refresh();
}


class JobFields {
  // What the page shows: a job (by its key) at a place, and what it has there. These change together, in one step with the markup.
  /** @type {string | null} */
  #key = null;
  #place = "";
  #live;
  /** @type {string | null} */
  #asked = null; // the job that is about to be shown
  #turn = 0; // of the showings; only the last one counts
  /** @type {Record<string, Fill>} */
  #fill = {}; // by field
  /** @type {Record<string, string[]>} */
  #results = {}; // result → the fields that must hold the reader's own before it can be kept
  /** @type {Set<string>} */
  #declined = new Set(); // fields whose filling the reader took back
  /** @type {HTMLElement | null} */
  #strip = null;
  #tap = ""; // what is being kept

  /** @param {LiveCalculator} live */
  constructor(live) {
    this.#live = live;
  }

  /** @param {string} key */
  knows(key) {
    return key === this.#key || key === this.#asked;
  }

  /**
   * Show what the job has now; `kept` is the press with which a reading has been kept.
   * @param {Press | null} kept
   */
  async refresh(kept = null) {
    const turn = ++this.#turn;
    const sheet = this.#live.closest("job-view");
    const key = (this.#asked = sheet ? sheet.key : current());
    let [held, failed] = [/** @type {Held | undefined} */ (undefined), sheet ? "" : GONE];
    try {
      held = key ? await get(key) : undefined;
    } catch (error) {
      failed = /** @type {StoreError} */ (error).message;
    }
    if (turn !== this.#turn || !this.#live.isConnected) return;
    if (!held || !key) return key && failed ? this.#cannot(failed) : this.#clear();
    const asked = { job: held.text, kind: held.kind, calculator: this.#live.calculator, place: inHand(), features: this.#features, stages: stagesOf(held), root: SITE };
    const reply = await ask("job-fields", asked, `job-fields ${this.#live.id}`);
    if (!reply || turn !== this.#turn || !this.#live.isConnected) return;
    if (!reply.ok) return this.#cannot(reply.errors[0].message);
    if (reply.place !== this.#place || key !== this.#key) this.#declined.clear();
    this.#key = key;
    this.#place = reply.place;
    const before = this.#fill;
    this.#fill = reply.fill;
    this.#results = reply.results;
    const { strip, ...beside } = reply.html;
    const focused = !sheet && this.#live.contains(document.activeElement) ? document.activeElement : null;
    const stood = focused?.getBoundingClientRect().top ?? 0;
    this.#show(strip, beside);
    if (focused) scrollBy({ top: focused.getBoundingClientRect().top - stood, behavior: "instant" }); // what the job says comes above the entry, which stays where it is
    const whose = /** @type {const} */ ([key, reply.place, reply.placed]);
    this.#live.standOn(undefined, ...whose); // its own entries first
    let filled = false;
    const answered = kept && kept.key === key && kept.place === reply.place ? kept : null;
    for (const name of Object.keys(beside)) filled = this.#bring(name, before[name], answered?.name === name ? answered.texts : null) || filled;
    this.#live.standOn({ engine: reply.engine, which: reply.place || inHand(), job: reply.said }, ...whose);
    if (filled) this.#entered();
    this.#tell();
  }

  /**
   * Fill a field that the reader has not touched, or not touched since it was kept as those `kept` texts; whether anything changed.
   * @param {string} name @param {Fill | undefined} before @param {Texts | null} kept
   */
  #bring(name, before, kept) {
    const fill = this.#fill[name];
    const entries = this.#entriesOf(name, fill, before);
    const untouched = entries.every((entry) => !entry.value || entry.value === entry.dataset.filled);
    const preset = entries.some((entry) => "preset" in entry.dataset); // the page has its reasons for what it filled in
    const wanted = (/** @type {Entry} */ entry) => (kept ? kept[entry.name] === entry.value : untouched && fill?.at_once && !preset && !this.#declined.has(name));
    let changed = false;
    for (const entry of entries) {
      const text = fill?.texts[entry.name];
      const was = entry.value;
      if (text !== undefined && wanted(entry)) put(entry, text);
      else if (pages(entry)) continue; // the page has its reasons for it
      else if (untouched && entry.dataset.filled !== undefined && entry.value === entry.dataset.filled) entry.value = ""; // the job lets go of it
      if (text === undefined) delete entry.dataset.filled;
      else entry.dataset.filled = text;
      changed ||= entry.value !== was;
    }
    return changed;
  }

  /** @param {string} name @param {(Fill | undefined)[]} fills */
  #entriesOf(name, ...fills) {
    const own = this.#entries.filter((entry) => fieldOf(entry.name) === name && !isWarmth(entry));
    const beside = new Set(fills.flatMap((fill) => Object.keys(fill?.texts ?? {})));
    return [...own, ...this.#entries.filter((entry) => isWarmth(entry) && beside.has(entry.name))];
  }

  /** What a field measures where the calculator itself does not say it. @returns {Texts} */
  get #features() {
    return JSON.parse(this.#live.closest("[data-job-features]")?.dataset.jobFeatures ?? "{}");
  }

  get #entries() {
    return [...this.#live.querySelectorAll("[data-entry]")];
  }

  /** The calculator's form: only one that has a form is put to a job. */
  get #form() {
    return /** @type {HTMLFormElement} */ (this.#live.querySelector("[data-form]"));
  }

  /** @param {string} strip @param {Texts} beside  what stands below each field or result */
  #show(strip, beside) {
    this.#strip ??= this.#form.insertBefore(document.createElement("div"), this.#form.firstChild);
    replace(this.#strip, strip);
    for (const [name, html] of Object.entries(beside)) {
      const message = this.#live.querySelector(`[data-message-for="${CSS.escape(name)}"]`);
      let place = this.#live.querySelector(`[data-job-field="${CSS.escape(name)}"]`);
      if (!place) {
        place = document.createElement("div");
        place.dataset.jobField = name;
        place.className = "job-field";
        if (!message) place.tabIndex = -1;
        if (message) message.after(place);
        else this.#live.querySelector('[data-part="result"]')?.before(place); // a result's own: below all fields
      }
      replace(place, html);
    }
  }

  #clear() {
    this.#strip?.remove();
    this.#strip = null;
    for (const place of this.#live.querySelectorAll("[data-job-field]")) place.remove();
    const before = this.#fill;
    this.#fill = {};
    this.#key = null;
    this.#place = "";
    let changed = false;
    for (const name of Object.keys(before)) changed = this.#bring(name, before[name], null) || changed;
    this.#live.standOn(null, "");
    if (changed) this.#entered();
  }

  /** @param {string} why */
  #cannot(why) {
    this.#clear();
    this.#strip = this.#form.insertBefore(document.createElement("p"), this.#form.firstChild);
    this.#strip.className = "job-strip";
    this.#strip.textContent = why;
  }

  /** Say of each field whether what stands in it is the job's, typed, or neither; CSS shows what belongs to that. */
  #tell() {
    for (const place of this.#live.querySelectorAll("[data-job-field]")) {
      const name = place.dataset.jobField ?? "";
      const behind = this.#results[name]?.map((field) => this.#stateOf(field) !== "example");
      place.dataset.state = !behind ? this.#stateOf(name) : behind.every(Boolean) ? "typed" : behind.some(Boolean) ? "partly" : "example";
    }
  }

  /** @param {string} name */
  #stateOf(name) {
    const fill = this.#fill[name];
    const filled = fill && Object.entries(fill.texts).every(([entry, text]) => holds(this.#entries.find((one) => one.name === entry), text));
    return this.#typedIn(name).length ? "typed" : filled ? "filled" : "example";
  }

  /** @param {string} name */
  #typedIn(name) {
    return this.#entriesOf(name)
      .filter((entry) => entry.value.trim() && entry.value !== entry.dataset.filled)
      .map((entry) => entry.name);
  }

  /** @param {{target: HTMLElement}} event */
  typed({ target }) {
    if (!target.matches("[data-entry]")) return;
    const place = this.#placeOf(target);
    if (place) this.#say(place, "");
    const before = place?.dataset.state;
    this.#tell();
    if (place && place.dataset.state !== before) place.scrollIntoView({ block: "nearest" }); // within reach of the thumb that types
  }

  declined() {
    for (const name of Object.keys(this.#fill)) this.#declined.add(name);
    queueMicrotask(() => this.#tell());
  }

  /** @param {HTMLElement} target */
  chosen(target) {
    if (!target.matches("[data-job-initials]")) return;
    setInitials(target.value);
  }

  /** @param {HTMLElement} target */
  pressed(target) {
    const button = target.closest("button");
    if (!button) return;
    const { jobPlace, jobKeep, jobWhy, jobFill } = button.dataset;
    if (jobPlace !== undefined) return choosePlace(jobPlace);
    const place = button.closest("[data-job-field]");
    if (!place) return;
    if (jobFill !== undefined) this.#fillIn(place.dataset.jobField ?? "");
    if (jobKeep !== undefined) this.#keep(place, jobKeep, jobWhy ?? "");
  }

  /** @param {string} name */
  #fillIn(name) {
    this.#declined.delete(name);
    for (const [entry, text] of Object.entries(this.#fill[name]?.texts ?? {})) {
      const found = this.#entries.find((one) => one.name === entry);
      if (found) put(found, text);
    }
    this.#entered();
    this.#tell();
    this.#entriesOf(name)[0]?.focus({ preventScroll: true });
  }

  /**
   * A press keeps what stands there now, for the job and the place that are shown now, whatever comes in
   * between.
   * @param {HTMLElement} beside @param {string} stage @param {string} why
   */
  async #keep(beside, stage, why) {
    const name = beside.dataset.jobField ?? "";
    const typed = name in this.#results ? [name] : this.#typedIn(name);
    if (!typed.length || !this.#key) return;
    const strip = this.#strip?.querySelector("[data-job-initials]");
    if (strip?.value) setInitials(strip.value);
    const valueOf = (/** @type {Entry} */ entry) => [entry.name, entry.value];
    const entries = Object.fromEntries(this.#entries.filter((entry) => entry.value.trim()).map(valueOf));
    const texts = Object.fromEntries(this.#entries.map(valueOf));
    const tap = JSON.stringify([this.#key, this.#place, stage, typed, entries]);
    if (this.#tap === tap) return; // the same tap once more
    this.#tap = tap;
    const press = { name, key: this.#key, place: this.#place, texts, job: this.#strip?.querySelector(".job-strip-name")?.textContent ?? "" };
    const asked = { calculator: this.#live.calculator, place: press.place, stage, why, typed, entries, features: this.#features, now: now(), by: initials() };
    this.#say(beside, "");
    beside.setAttribute("aria-busy", "true");
    try {
      let refused = "";
      await change(press.key, async (job) => {
        const reply = await ask("job-keep", { job, ...asked });
        refused = reply.ok ? "" : reply.errors[0].message;
        return reply.ok ? reply.job : null;
      });
      if (refused) return this.#answer(press, beside, refused);
      this.#live.forget(press.key, press.place, Object.fromEntries(Object.entries(entries).filter(([entry]) => typed.includes(entry) || (isWarmth({ name: entry }) && typed.includes(fieldOf(entry))))));
      if (beside.contains(document.activeElement)) (this.#entriesOf(name)[0] ?? beside).focus({ preventScroll: true }); // the button goes
      await this.refresh(press);
      this.#live.querySelector(`[data-job-field="${CSS.escape(name)}"] .job-from`)?.scrollIntoView({ block: "nearest" });
    } catch (error) {
      const { message, text } = /** @type {StoreError} */ (error);
      this.#answer(press, beside, message, text);
    } finally {
      if (this.#tap === tap) this.#tap = "";
      beside.removeAttribute("aria-busy");
    }
  }

  /**
   * What speaks against keeping; with the job and the place that it was for, where others are shown by now.
   * @param {Press} press @param {HTMLElement} beside @param {string} words @param {string} [unkept]
   */
  #answer(press, beside, words, unkept) {
    const there = press.key === this.#key && press.place === this.#place;
    this.#say(beside, there ? words : `${[press.job, press.place].filter(Boolean).join(", ")}: ${words}`, unkept);
  }

  /** @param {HTMLElement} place @param {string} words */
  #say(place, words, unkept = "") {
    const message = place.querySelector("[data-job-message]");
    if (!message) return;
    message.textContent = words;
    message.hidden = !words;
    if (unkept) message.append(" ", exportButton("Export the job with this reading", unkept));
  }

  /** @param {Entry} entry */
  #placeOf(entry) {
    return this.#live.querySelector(`[data-job-field="${CSS.escape(fieldOf(entry.name))}"]`);
  }

  /** As if the reader had typed it: the calculator works it out. */
  #entered() {
    this.#form.dispatchEvent(new Event("input", { bubbles: true }));
  }
}

/** @type {WeakMap<HTMLElement, string>} */
const written = new WeakMap(); // place → its markup as Python wrote it

/**
 * Replace markup where it differs, leaving open what the reader had opened, and the focus where it was.
 * @param {HTMLElement} place @param {string} html
 */
function replace(place, html) {
  if (written.get(place) === html) return;
  written.set(place, html);
  const focus = document.activeElement;
  const focused = focus instanceof HTMLElement && place.contains(focus) ? focus.dataset.jobPlace : undefined;
  const open = new Set([...place.querySelectorAll("details[open]")].map((fold) => fold.dataset.keep));
  place.innerHTML = html;
  for (const fold of place.querySelectorAll("details")) fold.open = open.has(fold.dataset.keep);
  if (focused !== undefined) place.querySelector(`[data-job-place="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
}

/**
 * Put a text into an entry. Where it has the focus, what was marked stays so, and what was empty is marked:
 * the next key writes over it.
 * @param {Entry} entry @param {string} text
 */
function put(entry, text) {
  const value = entry.value;
  if (document.activeElement !== entry || !entry.matches("input")) return void (entry.value = text);
  const { selectionStart: from, selectionEnd: to } = entry;
  entry.value = text;
  if (from === 0 && to === value.length) entry.select();
  else if (text.startsWith(value)) entry.setSelectionRange(from, to);
}

const GONE = "The job that was worked on is no longer on this device: it was removed, or the browser has cleared what it kept.";
/** Does what the page itself fills in stand there? @param {Entry} entry */
const pages = (entry) => Boolean(entry.dataset.preset) && entry.value === entry.dataset.preset && entry.dataset.filled === entry.dataset.preset;

/** @param {Held} held */
const stagesOf = (held) => (held.kind === "sheet" ? ["assembly"] : ["received", "finished"]);
/** @param {Entry | undefined} entry @param {string} text */
const holds = (entry, text) => entry?.value === text;
/** @param {{name: string}} entry */
const isWarmth = (entry) => /\.(part|gauge)$/.test(entry.name);
