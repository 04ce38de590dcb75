// <live-calculator data-calculator="…">: carries entries to the calculators' worker and its answer back
// into the page. The page already holds the example, worked out when the site was built; nothing is
// worked out until something is entered or a job is open. Words and markup of results come from the worker.

import { Entries, fieldOf } from "./entries.mjs";
import { runtime } from "./runtime.mjs";
import { chooseKind, engine, place } from "./standing.mjs";
import { swap } from "./swap.mjs";
import { system } from "./units.mjs";

const PATIENCE = 150; // ms after which a result that waits for its answer is marked as the older one
const PAUSE = 700; // ms of rest in typing before the verdict is read out
const REHEARSALS = 5; // answers that nobody has asked for

const FOLDS = "sizebook:folds"; // in sessionStorage: which folds of a calculator stand open, on whatever page it is

const LINK = /^#([a-z0-9-]+)\?V=/; // a result in the page's address (calc/page/link.py)
const JOB = "sizebook:job"; // in localStorage while a job is worked on; without one nothing of it is loaded

/**
 * @typedef {StandingAsked | null | undefined} Standing  null where there is none, undefined until a job has said so
 */

export class LiveCalculator extends HTMLElement {
  #entries = new Entries(document.createElement("form"), "");
  /** @type {AbortController | undefined} */
  #left; // aborted when the element leaves the page
  /** @type {[part: HTMLElement, html: string][] | undefined} */
  #example; // what stood here first
  #waits = 0;
  #speaks = 0;
  #turn = 0; // of asking: an answer to an earlier one is not shown
  #rehearsed = false;
  #job = false; // whether a job has its say here
  /** @type {{which: string} | null} */
  #link = null; // what stands here came with one, for that part
  #linked = false; // whether the page's address has one for this calculator
  /** @type {Standing} */
  #standing = null; // what the job says that entries stand on

  connectedCallback() {
    const form = this.querySelector("[data-form]");
    if (!form) return;
    const twins = document.querySelectorAll(`live-calculator[data-calculator="${CSS.escape(this.calculator)}"]`);
    this.#entries = new Entries(form, this.closest("[data-entries-key]")?.dataset.entriesKey ?? [this.calculator, [...twins].indexOf(this)].filter(Boolean).join(":"));
    this.#left = new AbortController();
    const { signal } = this.#left;
    /** @type {Listen} */
    const on = (target, event, handler) => target.addEventListener(event, /** @type {EventListener} */ (handler), { signal });

    on(form, "input", () => this.#entered());
    on(form, "change", ({ target }) => target.matches("[data-which]") && target.value && !this.#link && chooseKind(target.value));
    on(form, "submit", (event) => event.preventDefault());
    on(form, "reset", (event) => this.#reset(event));
    on(form, "keydown", (event) => this.#moveOn(event));
    on(form, "paste", (event) => this.#pasted(event));
    on(form, "focusin", () => this.#rehearse());
    // The entry keeps the focus: without it the signs below it would go, and the button move away under the thumb.
    on(this, "mousedown", (event) => event.target.closest("button, summary") && event.preventDefault());
    on(this, "click", (event) => this.#pressed(event));
    for (const fold of foldsIn(this)) fold.open = kept()[this.calculator]?.[fold.dataset.keep ?? ""] ?? fold.open;
    this.addEventListener("toggle", ({ target }) => target.matches("details[data-keep]") && this.#folded(target), { signal, capture: true }); // it does not bubble
    on(this.#working, "toggle", () => this.#working.open && this.#example && this.#evaluate());
    on(runtime, "state", () => this.#tellState());
    on(document, "sizebook:units", ({ detail: left }) => this.#turned(left));
    on(document, "sizebook:engine", () => this.#asked && this.#evaluate());
    on(document, "sizebook:place", () => this.#placed());

    on(globalThis, "storage", ({ key }) => (key === JOB || key === null) && hasJob(this) && !this.#linked && this.#putToJob(signal));

    if (linkedHere() === this) this.#openLink();
    else this.#beginOwn();
  }

  /** Begin with what is the reader's own: entries, and the job that is worked on. */
  #beginOwn() {
    this.#entries.begin(system()); // the browser may have put back older texts by itself
    this.#entries.hint(system());
    this.#putPlace();
    if (hasJob(this) && this.#left) this.#putToJob(this.#left.signal);
    else if (this.#asked) this.#evaluate();
    else runtime.startSoon();
  }

  /** Begin with what the page's address brings; until it has been read, nothing is judged and nothing typed. */
  async #openLink() {
    this.#linked = true;
    this.#standing = undefined;
    this.#entries.lend(location.hash.slice(-8));
    this.#entries.wait(true);
    const { open } = await import("./share.mjs");
    const found = await open(this);
    this.#entries.wait(false);
    this.#standing = null;
    if (!found) return this.giveBack();
    this.#link = found;
    this.#putPlace();
    this.#entries.fill(found.entries, system());
    this.#entries.hint(system());
    this.#evaluate();
  }

  /** Of a link nothing stays: the reader's own comes back. */
  giveBack() {
    this.#linked = false;
    this.#entries.giveBack(system());
    if (this.isConnected) this.#beginOwn();
  }

  disconnectedCallback() {
    this.#left?.abort();
    clearTimeout(this.#waits);
    clearTimeout(this.#speaks);
  }

  /**
   * Let the job that is worked on fill in what it holds, and keep what is typed.
   * @param {AbortSignal} signal
   */
  async #putToJob(signal) {
    if (this.#job) return;
    this.#job = true;
    this.#standing = undefined; // until the job has said which engine it is of, nothing is judged
    const { attach } = await import("./job-fields.mjs");
    if (!signal.aborted) attach(this, signal);
  }

  /**
   * What a job says that entries stand on. `key` names whose they are, `place` at which place those of the fields `placed` were read.
   * @param {Standing} standing @param {string} key @param {string[]} placed
   */
  standOn(standing, key, place = "", placed = []) {
    const moved = this.#entries.belongTo(key, system(), place, placed);
    if (moved) this.#putPlace();
    const changed = JSON.stringify(standing) !== JSON.stringify(this.#standing);
    this.#standing = standing;
    this.toggleAttribute("data-of-job", Boolean(standing));
    if (moved || changed) this.#evaluate();
  }

  /**
   * These texts are kept by a job or sheet: as drafts they are done with.
   * @param {string} key @param {string} place @param {Texts} texts
   */
  forget(key, place, texts) {
    this.#entries.forget(key, place, texts);
  }

  /** Whether there is anything to be worked out: something was read or chosen, or a job is open. */
  get #asked() {
    return this.#standing !== null || !this.#entries.untouched;
  }

  #putPlace() {
    const which = this.querySelector("[data-which]");
    const kind = this.#which.split(" ").pop() ?? "";
    if (!which || ![...which.options].some(({ value }) => value === kind)) return false;
    const changed = which.value !== kind;
    which.value = kind;
    return changed;
  }

  #placed() {
    if (!this.#linked && this.#putPlace()) this.#entered();
  }

  /** The part in hand, or that of the link. */
  get #which() {
    return this.#link?.which ?? place();
  }

  get calculator() {
    return this.dataset.calculator ?? "";
  }

  #entered() {
    this.#evaluate();
    this.#entries.keep(system()); // while Python is at work
  }

  /** @param {System} left */
  #turned(left) {
    if (this.#linked && !this.#link) return; // nothing stands here yet
    this.#entries.turn(left);
    this.#entries.keep(system());
    if (this.#asked) this.#evaluate();
    else this.#entries.hint(system());
  }

  /** @param {Event} event */
  #reset(event) {
    event.preventDefault();
    this.#entries.empty();
    this.#entries.preset();
    this.#entries.keep(system());
    this.#clearMessages();
    this.#evaluate();
  }

  /** Back to what stood here first; an answer on its way comes too late. */
  #showExample() {
    this.#turn++;
    clearTimeout(this.#waits);
    this.#clearMessages();
    for (const [part, html] of this.#example ?? []) swap(part, html);
    this.#example = undefined;
    this.#markStale(false);
    this.#tellOrigins({});
  }

  async #evaluate() {
    if (this.#standing === undefined) return;
    if (!this.#asked) return this.#showExample();
    this.#example ??= this.#parts.map((part) => [part, part.innerHTML]);
    clearTimeout(this.#waits);
    this.#waits = setTimeout(() => this.#markStale(true), PATIENCE);
    const turn = ++this.#turn;
    const told = (/** @type {Reply<"evaluate"> | null} */ reply) => turn === this.#turn && this.#answered(reply);
    const asked = runtime.ask(this.#request, this, told);
    this.#tellState();
    told(await asked);
  }

  /** @param {Reply<"evaluate"> | null} reply */
  #answered(reply) {
    if (!reply || !this.isConnected) return;
    clearTimeout(this.#waits);
    this.#clearMessages();
    if (reply.ok) {
      this.#show(reply.html);
      this.#tellOrigins(reply.origins);
    } else {
      this.#refuse(reply.errors);
    }
    for (const [name, text] of Object.entries(reply.notes ?? {})) this.#message(name, "note", text);
  }

  /** @returns {Asked<"evaluate">} */
  get #request() {
    const own = this.#entries.anyRead ? { engine: engine(), which: this.#which, job: {} } : null;
    const standing = this.#standing ? { ...this.#standing, job: this.#entries.stillFilled(this.#standing.job) } : own;
    return { call: "evaluate", calculator: this.calculator, anchor: this.id, first: true, entries: this.#entries.texts, standing, system: system(), working: this.#working.open };
  }

  /** What is asked for the link of what stands here. @returns {Asked<"share">} */
  get asShared() {
    const { calculator, entries, system, standing } = this.#request;
    return { call: "share", calculator, entries, system, standing, engine: engine(), which: this.#which };
  }

  /** Say beside each field where its value comes from. @param {Origins} origins */
  #tellOrigins(origins) {
    this.#entries.hint(system(), origins);
    for (const place of this.querySelectorAll("[data-origin]")) {
      const told = origins[place.dataset.origin ?? ""];
      const words = told ? (told.held ?? told.words) : "";
      if (place.textContent !== words) place.textContent = words;
      say(place, "state", told?.state ?? "");
      const field = place.closest("[data-field]");
      if (field) say(field, "from", told?.from);
    }
  }

  /** Where an entry gets the focus keys come next, and a calculator's first few answers take three times as long as all that follow. */
  async #rehearse() {
    if (runtime.state !== "ready") return runtime.start();
    if (this.#rehearsed) return;
    this.#rehearsed = true;
    for (let n = 0; n < REHEARSALS && !this.#example; n++) await runtime.ask(this.#request, Symbol("rehearsal"));
  }

  /** @param {Texts} html */
  #show(html) {
    const changed = this.#parts.filter((part) => partOf(part) in html);
    const left = kept()[this.calculator];
    for (const part of changed) swap(part, html[partOf(part)] ?? "", left);
    this.#markStale(false, false, changed);
    if (html.announce) this.#say(html.announce);
  }

  /** @param {Wrong[]} errors */
  #refuse(errors) {
    this.#markStale(true, true);
    for (const { field, message, suggestion } of errors) {
      if (field === null || !this.#message(field, "error", message)) this.#status.append(message);
      else if (suggestion) this.#suggest(field, suggestion);
    }
  }

  /**
   * Put a sentence under a field, whose aria-describedby names that place already; whether there is such a
   * field.
   * @param {string} name @param {"note" | "error"} kind @param {string} text
   */
  #message(name, kind, text) {
    const entry = this.#entries.named(name);
    // A cell of a grid has its sentence below the grid.
    const place = [name, fieldOf(name)].map((known) => this.querySelector(`[data-message-for="${CSS.escape(known)}"]`)).find(Boolean);
    if (!place) return false;
    place.textContent = [place.textContent, text].filter(Boolean).join(" "); // several cells of a grid share one place
    place.dataset.kind = kind;
    place.hidden = false;
    if (kind === "error") {
      entry?.setAttribute("aria-invalid", "true");
      const folded = place.closest("details");
      if (folded) folded.open = true;
    }
    return true;
  }

  /** What was probably meant, at one tap. @param {string} name @param {string} text */
  #suggest(name, text) {
    const button = document.createElement("button");
    Object.assign(button, { type: "button", textContent: text });
    Object.assign(button.dataset, { suggest: text, suggestFor: name });
    this.querySelector(`[data-message-for="${CSS.escape(name)}"]`)?.append(" ", button);
  }

  #clearMessages() {
    for (const place of this.querySelectorAll("[data-message-for]:not([hidden])")) {
      place.hidden = true;
      place.textContent = "";
    }
    for (const entry of this.#entries.all) entry.removeAttribute("aria-invalid");
    this.#tellState();
  }

  /**
   * Mark the result as that of other entries; the words for it say that an entry was refused.
   * @param {boolean} stale
   */
  #markStale(stale, refused = false, parts = this.#parts) {
    const words = this.querySelector('[data-part="stale"]');
    if (words) words.hidden = !refused;
    for (const part of parts) part.toggleAttribute("data-stale", stale);
  }

  /** @param {string} text */
  #say(text) {
    const place = this.querySelector('[data-part="announce"]');
    clearTimeout(this.#speaks);
    if (place) this.#speaks = setTimeout(() => (place.textContent = text), PAUSE);
  }

  #tellState() {
    const waiting = this.#asked;
    const status = this.#status;
    if (runtime.state === "failed" && (waiting || this.#example)) {
      const again = document.createElement("button");
      again.type = "button";
      again.textContent = "Try again";
      again.dataset.retry = "";
      status.replaceChildren(`${runtime.why} Your entries are kept; the result shown is the earlier one. `, again);
    } else if (runtime.state === "starting" && waiting) {
      status.textContent = "Starting the calculator: your entries are worked out as soon as it is ready. Until then the result is the earlier one.";
    } else {
      status.textContent = "";
    }
  }

  /**
   * Remember a fold as the reader left it: of this calculator, since who wants the working of one does not want that of all.
   * @param {HTMLDetailsElement} fold
   */
  #folded(fold) {
    const folds = kept();
    folds[this.calculator] = { ...folds[this.calculator], [fold.dataset.keep ?? ""]: fold.open };
    try {
      sessionStorage.setItem(FOLDS, JSON.stringify(folds));
    } catch {
      // storage may be forbidden or full
    }
  }

  /** @param {MouseEvent} event */
  #pressed(event) {
    const { target } = event;
    if (target.closest("[data-retry]")) return runtime.retry();
    if (target.closest("[data-share]")) return import("./share.mjs").then(({ share }) => share(this));
    const link = target.closest("[data-field-link]");
    if (link) return this.#goTo(link.dataset.fieldLink ?? "", event);
    const suggested = target.closest("[data-suggest]");
    if (suggested) {
      const { suggest = "", suggestFor = "" } = suggested.dataset;
      const entry = this.#entries.named(suggestFor);
      if (!entry) return;
      entry.value = suggest;
      entry.focus();
      entry.dispatchEvent(new Event("input", { bubbles: true }));
      return;
    }
    const key = target.closest("[data-key]");
    const field = key?.closest("[data-field]");
    if (!key || !field) return;
    const sign = key.dataset.key ?? "";
    const focused = document.activeElement;
    const entry = field.contains(focused) && focused?.matches("input") ? focused : field.querySelector("input[data-entry]");
    if (!entry) return;
    const [start, end] = [entry.selectionStart ?? 0, entry.selectionEnd ?? 0];
    const whole = start === 0 && end === entry.value.length;
    // A unit is added behind a number that is selected as a whole; anything else replaces it.
    entry.setRangeText(sign, whole && sign.startsWith(" ") ? end : start, end, "end");
    entry.dispatchEvent(new Event("input", { bubbles: true }));
  }

  /**
   * To the field that a verdict speaks of, in whatever fold it stands.
   * @param {string} name @param {Event} event
   */
  #goTo(name, event) {
    const entry = this.#entries.named(name) ?? this.#entries.all.find((one) => one.name.startsWith(`${name}.`));
    if (!entry) return;
    event.preventDefault();
    const fold = entry.closest("details") ?? (entry.checkVisibility() ? null : entry.closest("[data-field]")?.querySelector("details")); // of the rows of a grid
    if (fold) fold.open = true;
    entry.focus();
  }

  /** Enter goes on to the next entry that is in sight. @param {KeyboardEvent} event */
  #moveOn(event) {
    if (event.key !== "Enter" || event.isComposing || !event.target.matches("input[data-entry]")) return;
    event.preventDefault();
    const open = this.#entries.all.filter((entry) => entry.checkVisibility());
    open[open.indexOf(event.target) + 1]?.focus();
  }

  /**
   * A column (or block) copied from elsewhere fills the cells from here on; what has no cell is left to the
   * reader.
   * @param {ClipboardEvent} event
   */
  #pasted(event) {
    const text = event.clipboardData?.getData("text/plain").replace(/\r?\n$/, "") ?? "";
    const row = event.target.closest("[data-grid] tr");
    const cell = event.target.closest("td");
    const body = row?.closest("tbody");
    if (!row || !cell || !body || !/[\t\n]/.test(text)) return;
    event.preventDefault();
    const rows = [...body.rows];
    const across = [...row.cells].indexOf(cell);
    text.split(/\r?\n/).forEach((line, down) => {
      line.split("\t").forEach((value, along) => {
        const entry = rows[rows.indexOf(row) + down]?.cells[across + along]?.querySelector("[data-entry]");
        if (entry) entry.value = value.trim();
      });
    });
    this.#entered();
  }

  /** The parts whose markup comes with an answer. */
  get #parts() {
    return [...this.querySelectorAll("[data-part]")].filter((part) => !["stale", "status", "announce"].includes(partOf(part)));
  }

  /** The fold with the working, which comes with an answer only while it stands open. */
  get #working() {
    return this.querySelector('details[data-keep="working"]') ?? document.createElement("details");
  }

  get #status() {
    return this.querySelector('[data-part="status"]') ?? document.createElement("p");
  }
}

/**
 * Set what data an element has, undefined for none; where it is said already the browser has nothing to do, which it would not see by itself.
 * @param {HTMLElement} element @param {string} name @param {string | undefined} value
 */
function say(element, name, value) {
  if (element.dataset[name] === value) return;
  if (value === undefined) delete element.dataset[name];
  else element.dataset[name] = value;
}

/** @param {HTMLElement} part */
const partOf = (part) => part.dataset.part ?? "";

/** @param {HTMLElement} root */
const foldsIn = (root) => root.querySelectorAll("details[data-keep]");

/** @returns {Record<string, Record<string, boolean>>} which folds were opened or shut, by calculator and fold */
function kept() {
  try {
    return JSON.parse(sessionStorage.getItem(FOLDS) ?? "{}");
  } catch {
    return {};
  }
}

/** The calculator that the page's address has a result for; undefined where it has one for none of this page's. */
function linkedHere() {
  const id = location.hash.match(LINK)?.[1];
  return [...document.querySelectorAll("live-calculator")].find((live) => live.dataset.calculator === id && !live.closest("job-view"));
}

/** @param {Element} live */
function hasJob(live) {
  try {
    return Boolean(live.closest("job-view") || localStorage.getItem(JOB));
  } catch {
    return false;
  }
}

customElements.define("live-calculator", LiveCalculator);
if (document.querySelector("job-view")) import("./job.mjs");
if (document.querySelector("[data-find]")) import("./find.mjs");

function sizesOfJob() {
  if (document.querySelector("[data-job-size], [data-job-said]") && hasJob(document.body)) import("./job-sizes.mjs");
  else if (document.querySelector(`[data-sheet-size]:not([data-engine="${CSS.escape(engine())}"])`)) import("./sizes.mjs").then(({ show }) => show());
}

document.addEventListener("sizebook:engine", () => !hasJob(document.body) && document.querySelector("[data-sheet-size]") && import("./sizes.mjs").then(({ show }) => show()));

sizesOfJob();
addEventListener("storage", ({ key }) => (key === JOB || key === null) && sizesOfJob());

const arrived = location.hash;
if (LINK.test(arrived) && !linkedHere()) import("./share.mjs").then(({ forward }) => forward(arrived.match(LINK)?.[1] ?? ""));
addEventListener("hashchange", () => location.hash !== arrived && LINK.test(location.hash) && location.reload());
