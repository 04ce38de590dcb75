// What a job says beside the fields of a calculator: fills in what it holds, and keeps what is typed at one tap.
// Loaded only while a job is worked on (live.mjs), or on the page of a received sheet.

import { ask, change, changes, current, download, get, setInitials } from "./jobs.mjs";
import { choosePlace, place as inHand } from "./standing.mjs";

const SITE = new URL("../../", import.meta.url).href;

const look = document.createElement("link");
Object.assign(look, { rel: "stylesheet", href: `${SITE}assets/css/job.css` });
if (!document.querySelector(`link[href$="/css/job.css"]`)) document.head.append(look);

/** Put a calculator to the job that is worked on, or to the sheet that it stands on, until `signal` says that it has left. */
export function attach(live, signal) {
  const fields = new JobFields(live);
  const on = (target, event, handler) => target.addEventListener(event, handler, { signal });
  on(changes, "change", ({ detail }) => (detail === null || detail === fields.key) && fields.refresh());
  on(document, "sizebook:units", () => fields.refresh());
  on(document, "sizebook:place", () => fields.refresh());
  on(live, "input", (event) => fields.typed(event));
  on(live, "reset", () => fields.declined());
  on(live, "click", ({ target }) => fields.pressed(target));
  on(live, "change", ({ target }) => fields.chosen(target));
  return fields.refresh();
}

class JobFields {
  key = null;
  #live;
  #place = "";
  #fill = {}; // field → {texts: {entry: text}, at_once}
  #results = {}; // result → the fields that must hold the reader's own before it can be kept
  #declined = new Set(); // fields whose filling the reader took back
  #strip = null;

  constructor(live) {
    this.#live = live;
  }

  async refresh(kept = []) {
    const sheet = this.#live.closest("job-view");
    this.key = sheet ? sheet.key : current();
    const held = this.key ? await get(this.key).catch(() => null) : null;
    if (!held) return this.#clear();
    const asked = { job: held.text, kind: held.kind, calculator: this.#live.calculator, place: inHand(), features: this.#features, stages: stagesOf(held), root: SITE };
    const reply = await ask("job-fields", asked, `job-fields ${this.#live.id}`);
    if (!reply || !this.#live.isConnected) return;
    if (!reply.ok) return this.#cannot(reply.errors[0].message);
    if (reply.place !== this.#place) this.#declined.clear();
    this.#place = reply.place;
    const before = this.#fill;
    this.#fill = reply.fill;
    this.#results = reply.results;
    const { strip, ...beside } = reply.html;
    const focused = !sheet && this.#live.contains(document.activeElement) ? document.activeElement : null;
    const stood = focused?.getBoundingClientRect().top;
    this.#show(strip, beside);
    if (focused) scrollBy({ top: focused.getBoundingClientRect().top - stood, behavior: "instant" }); // what the job says comes above the entry, which stays where it is
    this.#live.standOn(undefined, this.key); // its own entries first
    let filled = false;
    for (const name of Object.keys(beside)) filled = this.#bring(name, before[name], kept.includes(name)) || filled;
    this.#live.standOn({ engine: reply.engine, which: reply.place || inHand(), job: reply.said }, this.key);
    if (filled) this.#entered();
    this.#tell();
  }

  /** Fill a field that the reader has not touched; whether anything changed. */
  #bring(name, before, kept) {
    const fill = this.#fill[name];
    const entries = this.#entriesOf(name, fill, before);
    const untouched = entries.every((entry) => !entry.value || entry.value === entry.dataset.filled);
    const preset = entries.some((entry) => "preset" in entry.dataset); // the page has its reasons for what it filled in
    const wanted = fill && (kept || (untouched && fill.at_once && !preset && !this.#declined.has(name)));
    let changed = false;
    for (const entry of entries) {
      const text = fill?.texts[entry.name];
      const was = entry.value;
      if (wanted && text !== undefined) entry.value = text;
      else if (untouched && entry.dataset.filled !== undefined && entry.value === entry.dataset.filled) entry.value = ""; // the job lets go of it
      if (text === undefined) delete entry.dataset.filled;
      else entry.dataset.filled = text;
      changed ||= entry.value !== was;
    }
    return changed;
  }

  #entriesOf(name, ...fills) {
    const own = this.#entries.filter((entry) => entry.name.split(".")[0] === name && !isWarmth(entry));
    const beside = new Set(fills.flatMap((fill) => Object.keys(fill?.texts ?? {})));
    return [...own, ...this.#entries.filter((entry) => isWarmth(entry) && beside.has(entry.name))];
  }

  /** What a field measures where the calculator itself does not say it. */
  get #features() {
    return JSON.parse(this.#live.closest("[data-job-features]")?.dataset.jobFeatures ?? "{}");
  }

  get #entries() {
    return [...this.#live.querySelectorAll("[data-entry]")];
  }

  #show(strip, beside) {
    const form = this.#live.querySelector("[data-form]");
    this.#strip ??= form.insertBefore(document.createElement("div"), form.firstChild);
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
        else this.#live.querySelector('[data-part="result"]').before(place); // a result's own: below all fields
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
    let changed = false;
    for (const name of Object.keys(before)) changed = this.#bring(name, before[name], false) || changed;
    this.#live.standOn(null, "");
    if (changed) this.#entered();
  }

  #cannot(why) {
    this.#clear();
    const form = this.#live.querySelector("[data-form]");
    this.#strip = form.insertBefore(document.createElement("p"), form.firstChild);
    this.#strip.className = "job-strip";
    this.#strip.textContent = why;
  }

  /** Say of each field whether what stands in it is the job's, typed, or neither; CSS shows what belongs to that. */
  #tell() {
    for (const place of this.#live.querySelectorAll("[data-job-field]")) {
      const name = place.dataset.jobField;
      const behind = this.#results[name]?.map((field) => this.#stateOf(field) !== "example");
      place.dataset.state = !behind ? this.#stateOf(name) : behind.every(Boolean) ? "typed" : behind.some(Boolean) ? "partly" : "example";
    }
  }

  #stateOf(name) {
    const fill = this.#fill[name];
    const filled = fill && Object.entries(fill.texts).every(([entry, text]) => holds(this.#entries.find((one) => one.name === entry), text));
    return this.#typedIn(name).length ? "typed" : filled ? "filled" : "example";
  }

  #typedIn(name) {
    return this.#entriesOf(name)
      .filter((entry) => entry.value.trim() && entry.value !== entry.dataset.filled)
      .map((entry) => entry.name);
  }

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

  chosen(target) {
    if (!target.matches("[data-job-initials]")) return;
    setInitials(target.value);
  }

  pressed(target) {
    const button = target.closest("button");
    if (!button) return;
    const { jobPlace, jobKeep, jobWhy, jobFill, jobExport } = button.dataset;
    if (jobPlace !== undefined) return choosePlace(jobPlace);
    const place = button.closest("[data-job-field]");
    if (jobFill !== undefined) return this.#fillIn(place.dataset.jobField);
    if (jobKeep !== undefined) return this.#keep(place, jobKeep, jobWhy ?? "");
    if (jobExport !== undefined) return download("sizebook-job.json", button.text);
  }

  #fillIn(name) {
    this.#declined.delete(name);
    for (const [entry, text] of Object.entries(this.#fill[name].texts)) {
      const found = this.#entries.find((one) => one.name === entry);
      if (found) found.value = text;
    }
    this.#entered();
    this.#tell();
    this.#entriesOf(name)[0]?.focus({ preventScroll: true });
  }

  async #keep(place, stage, why) {
    const name = place.dataset.jobField;
    const typed = name in this.#results ? [name] : this.#typedIn(name);
    if (!typed.length) return;
    const strip = this.#strip?.querySelector("[data-job-initials]");
    if (strip?.value) setInitials(strip.value);
    const entries = Object.fromEntries(this.#entries.filter((entry) => entry.value.trim()).map((entry) => [entry.name, entry.value]));
    this.#say(place, "");
    place.setAttribute("aria-busy", "true");
    try {
      let refused = null;
      await change(this.key, async (job) => {
        const reply = await ask("job-keep", { job, calculator: this.#live.calculator, place: this.#place, stage, why, typed, entries, features: this.#features });
        refused = reply.ok ? null : reply.errors[0].message;
        return reply.ok ? reply.job : null;
      });
      if (refused) return this.#say(place, refused);
      if (place.contains(document.activeElement)) (this.#entriesOf(name)[0] ?? place).focus({ preventScroll: true }); // the button goes
      await this.refresh([name]);
      this.#live.querySelector(`[data-job-field="${CSS.escape(name)}"] .job-from`)?.scrollIntoView({ block: "nearest" });
    } catch (error) {
      this.#say(place, error.message, error.text);
    } finally {
      place.removeAttribute("aria-busy");
    }
  }

  #say(place, words, unkept = "") {
    const message = place.querySelector("[data-job-message]");
    message.textContent = words;
    message.hidden = !words;
    if (!unkept) return;
    const button = document.createElement("button");
    Object.assign(button, { type: "button", textContent: "Export the job with this reading", text: unkept });
    button.dataset.jobExport = "";
    message.append(" ", button);
  }

  #placeOf(entry) {
    return this.#live.querySelector(`[data-job-field="${CSS.escape(entry.name.split(".")[0])}"]`);
  }

  /** As if the reader had typed it: the calculator works it out. */
  #entered() {
    this.#live.querySelector("[data-form]").dispatchEvent(new Event("input", { bubbles: true }));
  }
}

const written = new WeakMap(); // place → its markup as Python wrote it

/** Replace markup where it differs, leaving open what the reader had opened, and the focus where it was. */
function replace(place, html) {
  if (written.get(place) === html) return;
  written.set(place, html);
  const focused = place.contains(document.activeElement) ? document.activeElement.dataset.jobPlace : undefined;
  const open = new Set([...place.querySelectorAll("details[open]")].map((fold) => fold.dataset.keep));
  place.innerHTML = html;
  for (const fold of place.querySelectorAll("details")) fold.open = open.has(fold.dataset.keep);
  if (focused !== undefined) place.querySelector(`[data-job-place="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
}

const stagesOf = (held) => (held.kind === "sheet" ? ["assembly"] : ["received", "finished"]);
const holds = (entry, text) => entry?.value === text;
const isWarmth = (entry) => /\.(part|gauge)$/.test(entry.name);
