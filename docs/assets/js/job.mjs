// <job-view data-view="jobs | sheet | received">: the pages of a job. What stands in them is written by Python from
// what this device holds; here it is fetched, stored, and kept from getting lost. Loaded only on those pages (live.mjs).
//
// In the markup: a form with data-job-call asks Python for that change of the job, a button with data-job-call too;
// data-job-do names what only the device can do. Whatever is typed or pressed belongs to what the page shows at that
// moment: a draft names its job (or sheet), its form and its field, and a press takes along the job, the entries and the
// time that it was made with. Nothing of it is read off the page later, when another job may stand there.

import { all, ask, askToPersist, change, changes, current, download, exportButton, exported, forgetParts, get, initials, keep, keepPart, makeCurrent, now, parts, remove, safety, setInitials, StoreError } from "./jobs.mjs";
import { runtime } from "./runtime.mjs";
import { choosePlace } from "./standing.mjs";

const SITE = new URL("../../", import.meta.url).href;
const CODE = /^v\d+\./; // how the codes of a sheet begin (calc/job/codes.py)
const MOST_BYTES = 10_000_000; // of a job's file (calc/job/record.py)
const DRAFTS = `sizebook:drafts:${location.pathname}`;
const ONCE = ["text", "place", "why", "reason"]; // entries of a size or a line: the next one has its own
const DOUBLE = { ms: 400, pixels: 24 }; // within which a second tap is the same tap

/**
 * What the page shows: the job or sheet by its key (null: not kept here), by what its drafts are known (`of`), its name and text; the page's markup.
 * @typedef {{key: string | null, of: string, name: string, text: string, html: string}} Shown
 * @typedef {Shown & {words: string, after?: () => Promise<void>}} ToShow  what a view is to show, what is to be said, and what is done then
 * @typedef {{code: string, text: string, origin: string, used: string[], keeping: boolean, lost: Error | null}} Opened  what a link's code holds
 * @typedef {{key: string | null, of: string, name: string, at: {now: string, by: string}}} Here
 * @typedef {"new" | "add" | "take-back" | "done" | "tick" | "strike" | "unstrike" | "change"} Change
 * @typedef {Here & {call: Change, fields: Form, form: string, gone: Set<string>, was: Form}} Sent  a press that sends a form: what left it at once (`gone`), and what it held
 * @typedef {Here & {call: Change, fields: Form, form?: undefined, gone?: undefined, was?: undefined}} Press
 * @typedef {HTMLInputElement | HTMLSelectElement} Field  of a form
 * @import { Fields } from "./jobs.mjs"
 */

/** @type {Shown} */
const NOTHING = { key: null, of: "", name: "", text: "", html: "" };
const GONE = "is no longer on this device: it was removed, or the browser has cleared what it kept.";

export class JobView extends HTMLElement {
  /** @type {AbortController | undefined} */
  #left;
  /** @type {string | undefined} */
  #begun;
  #held = NOTHING;
  #turn = 0; // of the showings; only the last one counts
  #next = ""; // what gets the focus once it is there
  #missed = ""; // what had the focus and is not there yet
  /** @type {{of: string, form: string, html: string} | null} */
  #kept = null; // what was said of the reading that was kept last
  /** @type {Map<string, boolean>} */
  #open = new Map(); // folds that the reader opened or closed
  /** @type {Promise<unknown>} */
  #pending = Promise.resolve(); // changes are made in the order of the presses
  /** @type {Map<string, Sent>} */
  #flying = new Map(); // by draft, presses that took one along which is not kept yet
  /** @type {Opened | null} */
  #opened = null; // what the code in the address holds
  #composing = false;
  #tapped = { at: -Infinity, x: 0, y: 0 };
  #words = ""; // what the last showing had to say

  connectedCallback() {
    this.#left = new AbortController();
    const { signal } = this.#left;
    /** @type {Listen} */
    const on = (target, event, handler) => target.addEventListener(event, /** @type {EventListener} */ (handler), { signal });
    for (const button of this.querySelectorAll("button[disabled]")) button.disabled = false; // until now a tap would have gone nowhere
    if (this.dataset.view === "sheet") this.closest(".md-typeset")?.classList.remove("md-typeset");
    if (this.#begun === undefined) this.#held = { ...NOTHING, html: (this.#begun = this.#view.innerHTML) };
    on(this, "submit", (event) => this.#submitted(event));
    this.addEventListener("click", (event) => this.#onceOnly(event), { signal, capture: true });
    on(this, "click", (event) => this.#pressed(event));
    on(this, "compositionstart", () => (this.#composing = true));
    on(this, "compositionend", () => this.#composed());
    on(this, "change", ({ target }) => this.#chosen(target));
    on(this, "input", ({ target }) => {
      this.#draft(/** @type {Field} */ (target));
      tickIn(/** @type {Field} */ (target), "received");
    });
    this.addEventListener("toggle", ({ target }) => target.matches("details[data-keep]") && this.#toggled(target), { signal, capture: true }); // it does not bubble
    on(changes, "change", () => this.show());
    on(changes, "blocked", ({ detail }) => this.#say(detail));
    on(runtime, "state", () => this.#tellState());
    on(globalThis, "hashchange", () => this.show());
    for (const field of this.querySelectorAll("[name=initials]")) field.value ||= initials();
    this.#putBackIn(this.#view);
    this.show();
    this.#tellState(); // it may be starting already
  }

  disconnectedCallback() {
    this.#left?.abort();
  }

  /** Of the job or sheet that is shown, null where it is not kept on this device. */
  get key() {
    return this.#held.key;
  }

  get text() {
    return this.#held.text;
  }

  get #view() {
    return /** @type {HTMLElement} */ (this.querySelector("[data-job-view]")); // every page of a job has one
  }

  /** What the page shows while there is nothing on the device. */
  get #bare() {
    return this.#begun ?? "";
  }

  /** Bring the page to what the device holds now. What it shows and whose it is change in one step. */
  async show() {
    const turn = ++this.#turn;
    try {
      const found = await this.#find();
      if (!found || turn !== this.#turn || !this.isConnected || this.#composing) return;
      const left = this.#held.of !== found.of && !this.#next && this.dataset.view === "jobs" ? this.#held : NOTHING;
      this.#replace(found);
      this.#tellOfShown(found.words || (left.of && found.of ? `Another tab has gone over to ${found.name}, so this page shows that job now. What you typed for ${left.name} is kept with ${left.name}.` : ""));
      await found.after?.();
    } catch (error) {
      if (turn === this.#turn) this.#sayOf(error);
    }
  }

  /** @returns {Promise<ToShow | null>} null where a later showing overtook this one */
  #find() {
    const { view } = this.dataset;
    return view === "jobs" ? this.#jobs() : view === "sheet" ? this.#sheet() : this.#received();
  }

  async #jobs() {
    const [held, kept, key] = [await all(), await safety(), current()];
    const its = held.find((one) => one.key === key);
    const words = key && !its ? `The job that was worked on here ${GONE} If it was exported, bring it in from its file.` : "";
    if (!held.length) return { ...NOTHING, html: this.#bare, words };
    const jobs = held.map(({ key, kind, text, kept, exported, rev }) => ({ key, kind, text, kept, exported: exported?.at ?? "", changed: exported?.rev !== rev }));
    return this.#asked("job-view", its, { root: SITE, jobs, key, engines: this.#engines, safety: kept, writing: this.#writing(key, "write") }, words);
  }

  async #sheet() {
    const key = location.hash.slice(1) || current();
    const held = key ? await get(key) : null;
    if (!held) return { ...NOTHING, html: this.#bare, words: key ? `The job of this size sheet ${GONE}` : "" };
    return this.#asked("job-sheet", held, { root: SITE, job: held.text, key, needs: ["codes"] });
  }

  /**
   * A sheet out of the link's code is shown whether or not this device lets it be kept.
   * @returns {Promise<ToShow | null>}
   */
  async #received() {
    const named = location.hash.slice(1);
    const opened = CODE.test(named) ? await this.#codeOf(named) : null;
    if (opened && !("code" in opened)) return { ...NOTHING, ...opened };
    let [held, closed] = [/** @type {Held[]} */ ([]), /** @type {Error | null} */ (null)];
    try {
      held = await all();
    } catch (error) {
      if (!opened) throw error;
      closed = /** @type {Error} */ (error);
    }
    const kept = held.find(({ key, kind, origin }) => (opened ? kind === "sheet" && origin === opened.origin : key === named));
    const shown = kept ?? (opened && { key: null, origin: opened.origin, text: opened.text, kept: now() });
    const sheets = held.filter(({ kind }) => kind === "sheet").map(({ key, text, kept }) => ({ key, text, kept }));
    const lost = opened && !kept && (closed ?? opened.lost);
    const words = lost ? unkept(lost) : named && !shown ? `This sheet ${GONE} Open its link once more, or ask for it again.` : "";
    if (!shown && !sheets.length) return { ...NOTHING, html: this.#bare, words };
    const mine = held.filter(({ kind, key }) => kind === "job" && key !== shown?.key).map(({ key, text }) => ({ key, text }));
    const view = await this.#asked("job-received", shown, { root: SITE, job: shown?.text ?? null, key: shown?.key ?? null, kept: shown?.kept ?? "", sheets, mine }, words);
    return view && opened && !kept && !opened.keeping ? { ...view, after: () => this.#keepOpened(opened) } : view;
  }

  /**
   * What a link's code holds, or the page to show instead while others of its codes are still to be read.
   * @param {string} code @returns {Promise<Opened | {html: string, words: string}>}
   */
  async #codeOf(code) {
    if (this.#opened?.code === code) return this.#opened;
    const others = await parts().catch(() => /** @type {string[]} */ ([]));
    const reply = await ask("job-open", { code, others });
    if (!reply.ok) return { html: this.#bare, words: reply.errors[0].message };
    if (reply.html) {
      const words = await keepPart(code).then(() => "", (error) => `This code alone does not hold the whole sheet. ${error.message} Ask for its link or its file: they hold all of it.`);
      return { html: reply.html.view, words };
    }
    // The address keeps the code, so that it can be sent on and opened again; of several codes, that of them all.
    if (reply.code !== code) history.replaceState(history.state, "", `#${reply.code}`);
    return (this.#opened = { code: reply.code, text: reply.job, origin: reply.origin, used: reply.used, keeping: false, lost: null });
  }

  /**
   * A sheet that was opened is kept on this device, once: one that is removed again stays so until its link
   * is opened anew.
   * @param {Opened} opened
   */
  async #keepOpened(opened) {
    opened.keeping = true;
    try {
      await keep("sheet", opened.text, opened.origin, { once: true });
      opened.lost = new StoreError("It was removed from this device; open its link once more to keep it again.", "gone");
      await forgetParts(opened.used);
      askToPersist();
    } catch (error) {
      opened.lost = /** @type {Error} */ (error);
      this.#tellOfShown(unkept(opened.lost));
    }
  }

  /**
   * The markup that Python makes for a view, and whose it is; null where a later request overtook this one.
   * @template {"job-view" | "job-sheet" | "job-received"} C
   * @param {C} call @param {{key: string | null, origin: string, text: string} | null | undefined} held @param {Fields<C>} fields
   * @returns {Promise<ToShow | null>}
   */
  async #asked(call, held, fields, words = "") {
    const reply = /** @type {Reply<"job-view" | "job-sheet" | "job-received"> | null} */ (await ask(call, fields, call));
    if (!reply) return null;
    if (!reply.ok) return { ...this.#held, words: reply.errors[0].message };
    return { key: held?.key ?? null, of: known(held), name: reply.name ?? "", text: held?.text ?? "", html: reply.html.view, words };
  }

  get #engines() {
    const template = document.createElement("template");
    template.innerHTML = this.#bare;
    return [...template.content.querySelectorAll("[name=engine] option")].map(({ value }) => value);
  }

  // --- What the reader does -------------------------------------------------------------------------

  /**
   * A form is sent: what it holds now goes, whatever is typed or shown by the time that it is kept.
   * @param {SubmitEvent} event
   */
  async #submitted(event) {
    const form = event.target;
    if (!form.dataset.jobCall) return;
    event.preventDefault();
    const submitter = /** @type {HTMLButtonElement | null} */ (event.submitter);
    const call = /** @type {Change} */ (submitter?.value || form.dataset.jobCall);
    const fields = fieldsOf(form);
    if (fields.initials !== undefined) setInitials(fields.initials);
    /** @type {Sent} */
    const press = { ...this.#here, of: ofForm(form, this.#held.of), form: form.dataset.jobForm ?? "", call, fields, gone: new Set(), was: {} };
    const another = form.getAttribute("aria-busy") === "true" || [...this.#flying.values()].some((one) => one.form === press.form && one.of === press.of);
    if (another && !(call in NEXT && fields.text?.trim())) return; // the same tap once more
    if (fields.reason) fields.why = fields.reason;
    if (call === "change") for (const { name, value, defaultValue } of form.querySelectorAll("input[type=text]")) if (value === defaultValue) delete fields[/** @type {keyof Form} */ (name)];
    this.#takeAlong(press, form);
    await this.#busy(form, () => this.#inTurn(async () => {
      let refused = true;
      try {
        refused = !(call === "new" ? await this.#start(press) : await this.#change(press));
      } finally {
        this.#landed(press, refused);
      }
    }));
  }

  /** What a press goes to: the job that is shown, the hand and the time. */
  get #here() {
    const { key, of, name } = this.#held;
    return { key, of, name, at: { now: now(), by: initials() } };
  }

  /** @template T @param {() => Promise<T>} work */
  #inTurn(work) {
    const done = this.#pending.then(work);
    this.#pending = done.catch(() => {});
    return done;
  }

  /** @param {Sent} press */
  async #start(press) {
    const reply = await ask("job-new", { ...press.fields, ...press.at, id: randomId() });
    if (!reply.ok) return this.#refuse(press, reply.errors);
    this.openJob(await keep("job", reply.job));
    askToPersist();
    return true;
  }

  /** Work on a job: the page begins with it, and so does who hears it. @param {string} key */
  openJob(key) {
    this.#next = "#job-now";
    choosePlace(""); // the part in hand is another one
    makeCurrent(key);
  }

  /** Whether it was kept. @param {Sent | Press} press */
  async #change(press) {
    if (!press.key) throw new StoreError("This sheet is not kept on this device, so nothing can be kept with it.", "unkept");
    let [refused, html] = [/** @type {Wrong[]} */ ([]), ""];
    this.#kept = null;
    await change(press.key, async (job) => {
      const reply = await ask(/** @type {"job-add"} */ (`job-${press.call}`), { job, ...press.fields, ...press.at });
      [refused, html] = reply.ok ? [[], reply.html?.kept ?? ""] : [reply.errors, ""];
      return reply.ok ? reply.job : null;
    });
    if (refused.length) return this.#refuse(press, refused);
    if (press.form && html) this.#kept = { of: press.of, form: press.form, html };
    this.#clearMessages(this.#formOf(press));
    return true;
  }

  // --- What a press took along ------------------------------------------------------------------------

  /**
   * The drafts of a form go with its press. What belongs to one size or line only leaves the form at once:
   * the next is typed there.
   * @param {Sent} press @param {HTMLFormElement} form
   */
  #takeAlong(press, form) {
    press.gone = new Set(press.call in NEXT ? ONCE.filter((name) => form.elements.namedItem(name)) : []); // which size and at which stage is likely to be the same for the next
    press.was = press.gone.has("reason") ? { ...press.fields, why: form.querySelector("[name=why]:checked")?.value ?? "" } : { ...press.fields };
    for (const name of Object.keys(press.was)) if (entriesOf(form, name).length) this.#flying.set(draftOf(press.of, press.form, name), press);
    for (const name of press.gone) setEntry(form, name, "");
  }

  /**
   * It is kept, or refused: then what was taken along stands there again, unless the reader has typed
   * something else by then.
   * @param {Sent} press @param {boolean} refused
   */
  #landed(press, refused) {
    const form = this.#formOf(press);
    for (const [draft, its] of [...this.#flying]) {
      if (its !== press) continue;
      this.#flying.delete(draft);
      const { name } = partsOf(draft);
      const was = press.was[/** @type {keyof Form} */ (name)] ?? "";
      if (!refused && (press.gone.has(name) || !(press.call in NEXT))) this.#drafts.delete(draft);
      else if (refused) this.#drafts.set(draft, was);
      if (refused && form && press.gone.has(name)) setEntry(form, name, was);
    }
    this.#keepDrafts();
  }

  /**
   * The form that a press came from, as it stands on the page now; none where another job is shown.
   * @param {Sent | Press} press
   */
  #formOf(press) {
    const form = press.form ? this.#view.querySelector(`form[data-job-form="${CSS.escape(press.form)}"]`) : null;
    return form && ofForm(form, this.#held.of) === press.of ? form : null;
  }

  /** @param {Sent | Press} press @param {Wrong[]} errors */
  #refuse(press, errors) {
    const form = this.#formOf(press);
    this.#clearMessages(form);
    for (const { field, message } of errors) {
      const place = form?.querySelector(`[data-message-for="${CSS.escape(field ?? "")}"]`) ?? form?.querySelector('[data-message-for=""]');
      if (!place) {
        this.#say(press.of && press.of !== this.#held.of ? `${press.name}: ${message}` : message);
        continue;
      }
      const entry = fieldIn(form, field ?? "");
      const was = press.was?.[/** @type {keyof Form} */ (field)];
      const other = press.gone?.has(field ?? "") && entry?.value && entry.value !== was; // the next one is being typed there
      place.closest("[data-job-reasons]")?.removeAttribute("hidden");
      place.textContent = other ? `Not kept: “${was}”. ${message}` : message;
      place.hidden = false;
      if (entry instanceof RadioNodeList) /** @type {Field} */ (entry[0]).focus();
      else entry?.setAttribute("aria-invalid", "true"), other || entry?.focus();
    }
    return false;
  }

  /** @param {HTMLElement | null} form */
  #clearMessages(form) {
    for (const place of form?.querySelectorAll("[data-message-for]") ?? []) {
      place.hidden = true;
      place.textContent = "";
    }
    for (const entry of form?.querySelectorAll("[aria-invalid]") ?? []) entry.removeAttribute("aria-invalid");
  }

  /**
   * The second tap of a double tap falls on whatever has moved there by then. It is not meant for that.
   * @param {MouseEvent} event
   */
  #onceOnly(event) {
    const { timeStamp: at, clientX: x, clientY: y, detail } = event;
    const last = this.#tapped;
    if (!detail || event.target.closest("live-calculator")) return; // by keyboard
    this.#tapped = { at, x, y };
    if (!event.target.closest("button") || at - last.at > DOUBLE.ms || Math.hypot(x - last.x, y - last.y) > DOUBLE.pixels) return;
    event.preventDefault();
    event.stopPropagation();
  }

  /** @param {MouseEvent} event */
  #pressed(event) {
    const button = event.target.closest("button");
    if (!button || button.closest("live-calculator")) return;
    const { jobDo, jobCall, key, line, check } = button.dataset;
    const press = /** @type {Press} */ ({ ...this.#here, call: jobCall, fields: { line, check } });
    if (jobCall) this.#busy(button, () => this.#inTurn(() => this.#change(press)));
    else if (jobDo) this.#busy(button, () => DEEDS[/** @type {keyof typeof DEEDS} */ (jobDo)].call(this, key ?? press.key, button));
    else if (button.dataset.retry !== undefined) runtime.retry();
  }

  /** @param {HTMLElement} target */
  async #chosen(target) {
    if (target.matches("[data-job-part]")) return ticked(target);
    tickIn(/** @type {Field} */ (target), "engine");
    if (target.matches("[data-job-initials]")) return setInitials(target.value);
    if (target.matches("input[type=file]")) return this.#busy(target, () => this.#read(target));
    const form = target.closest("form");
    if (form && target.dataset.jobAgain === "write") await this.#writeAgain(form, target.id);
  }

  /**
   * The form for writing down a size, for another size.
   * @param {HTMLFormElement} form @param {string} chosen  its field that was used
   */
  async #writeAgain(form, chosen) {
    const { of, text } = this.#held;
    this.#drafts.delete(draftOf(of, form.dataset.jobForm ?? "", "place")); // the places of another size are others
    this.#keepDrafts();
    const reply = await ask("job-write", { job: text, ...fieldsOf(form), place: "" }, "job-write");
    if (!reply?.ok || !form.isConnected) return;
    const template = document.createElement("template");
    template.innerHTML = reply.html.write;
    const made = template.content.querySelector("form");
    if (!made) return;
    form.replaceWith(made);
    this.#putBackIn(made);
    this.querySelector(`#${chosen}`)?.focus();
  }

  /**
   * A file: a job beside the others, or on the page of received sheets a sheet.
   * @param {HTMLInputElement} input
   */
  async #read(input) {
    const file = input.files?.[0];
    const form = input.closest("form");
    if (!file || !form) return;
    const refuse = (/** @type {string} */ message) => {
      const place = form.querySelector('[data-message-for=""]');
      if (place) Object.assign(place, { textContent: message, hidden: false });
    };
    this.#clearMessages(form);
    try {
      // Looked at before it is read: hundreds of megabytes would end the page.
      if (file.size > MOST_BYTES) return refuse(`This is no job's file: it has ${Math.round(file.size / 1e6)} MB, and no job has more than ${MOST_BYTES / 1e6}.`);
      const text = await file.text();
      const reply = await ask("job-read", { text });
      if (!reply.ok) return refuse(reply.errors[0].message);
      const kind = this.dataset.view === "received" ? "sheet" : "job";
      const twin = (await all()).find((held) => held.kind === kind && held.text === reply.job);
      if (twin && kind === "job") return refuse(`This very job is on this device already: ${reply.name}.`);
      const key = twin?.key ?? (await keep(kind, reply.job, reply.origin));
      askToPersist();
      if (kind === "sheet") location.hash = key;
      else if (!current()) makeCurrent(key);
    } finally {
      input.value = "";
    }
  }

  /** @param {HTMLElement} element @param {() => Promise<unknown>} work */
  async #busy(element, work) {
    if (element.getAttribute("aria-busy") === "true" && !element.dataset.jobForm) return;
    element.setAttribute("aria-busy", "true");
    this.#say("");
    this.#tellState();
    try {
      await work();
    } catch (error) {
      this.#sayOf(error);
    } finally {
      element.removeAttribute("aria-busy");
      this.#tellState();
    }
  }

  // --- What is shown ----------------------------------------------------------------------------------

  /**
   * Replace the page's markup: what is typed, unfolded and focused stays so, where it is still the same
   * job's.
   * @param {Shown} found
   */
  #replace({ key, of, name, text, html }) {
    this.dataset.ready = "";
    const before = this.#held;
    // A fold tells of itself a moment after the tap.
    for (const fold of this.#view.querySelectorAll("details[data-keep]")) if (fold.open !== (this.#open.get(this.#foldOf(fold)) ?? false)) this.#open.set(this.#foldOf(fold), fold.open);
    const justKept = Boolean(before.of && !before.key && key && before.text === text); // a sheet that was opened
    if (justKept) this.#rename(before.of, of);
    const same = before.of === of || justKept;
    this.#held = { key, of, name, text, html };
    this.#tellState();
    if (html === before.html) return;
    const active = document.activeElement;
    const focused = same && active instanceof HTMLElement && this.contains(active) ? active : null;
    const typed = focused instanceof HTMLInputElement && focused.type === "text" ? { text: focused.value, from: focused.selectionStart, to: focused.selectionEnd } : null;
    const back = wayTo(focused).map((way) => ({ way, stood: this.#view.querySelector(way)?.getBoundingClientRect().top }));
    const heights = [...this.#view.querySelectorAll("[data-job-check][open]")].map((fold) => ({ key: fold.dataset.keep ?? "", height: heightOf(fold.querySelector("[data-job-calculator]")) }));
    this.#view.innerHTML = html;
    // A check's calculator is made anew in a moment: until then its room is kept, so that nothing moves away.
    for (const { key, height } of heights) this.#view.querySelector(`[data-keep="${CSS.escape(key)}"] > [data-job-calculator]`)?.style.setProperty("min-height", `${height}px`);
    for (const button of this.#view.querySelectorAll('[data-job-do="send"]')) button.hidden = !navigator.share;
    for (const fold of this.#view.querySelectorAll("details[data-keep]")) fold.open = this.#open.get(this.#foldOf(fold)) ?? fold.open;
    for (const field of this.querySelectorAll("[name=initials]")) field.value ||= initials();
    this.#putBackIn(this.#view);
    const next = this.#next ? this.#view.querySelector(this.#next) : null;
    if (next) this.#next = "";
    if (next) scrollTo({ top: 0 });
    const { way, stood } = back.find(({ way }) => this.#view.querySelector(way)) ?? {};
    const found = next ?? (way ? this.#view.querySelector(way) : null);
    found?.focus({ preventScroll: true });
    if (typed && found instanceof HTMLInputElement && found.id === focused?.id && found.value === typed.text) found.setSelectionRange(typed.from, typed.to);
    if (found && !next && stood !== undefined) scrollBy({ top: found.getBoundingClientRect().top - stood, behavior: "instant" }); // whatever grew above it
    this.#missed = found && focused?.id && found.id !== focused.id ? focused.id : ""; // it may be in a check that is made in a moment
  }

  /** What a showing has to say; what was said of a press stays until the next one. */
  #tellOfShown(words = "") {
    if (words || this.#words) this.#say(words);
    this.#words = words;
  }

  /** What came while a word was being composed is shown now. */
  #composed() {
    this.#composing = false;
    this.show();
  }

  /** Drafts, and what was said of a reading kept, into markup that is new. @param {HTMLElement} place */
  #putBackIn(place) {
    for (const form of [...(place.matches("[data-job-form]") ? [place] : []), ...place.querySelectorAll("[data-job-form]")]) this.#putBack(form);
    const kept = this.#kept;
    const said = kept && kept.of === this.#held.of ? place.querySelector(`[data-job-kept="${CSS.escape(kept.form)}"]`) : null;
    if (kept && said) said.innerHTML = kept.html;
  }

  /** @param {HTMLFormElement} form */
  #putBack(form) {
    for (const [draft, text] of this.#drafts) {
      const { of, form: its, name } = partsOf(draft);
      if (its !== form.dataset.jobForm || of !== ofForm(form, this.#held.of) || this.#flying.get(draft)?.gone.has(name)) continue;
      setEntry(form, name, text);
      const [entry] = entriesOf(form, name);
      if (entry?.type !== "text" || !text) continue;
      entry.closest("[data-job-reasons]")?.removeAttribute("hidden");
      for (let fold = entry.closest("details[data-keep]"); fold; fold = fold.parentElement?.closest("details[data-keep]") ?? null) if (!this.#open.has(this.#foldOf(fold))) fold.open = true; // what was typed is in sight
    }
    tick(form);
  }

  /**
   * What belongs to a job or sheet goes by another name from now on.
   * @param {string} from @param {string} to
   */
  #rename(from, to) {
    this.#open = new Map([...this.#open].map(([fold, open]) => [fold.startsWith(`${from} `) ? to + fold.slice(from.length) : fold, open]));
    this.#draftsRead = new Map([...this.#drafts].map(([draft, text]) => [draft.startsWith(`${from}\n`) ? to + draft.slice(from.length) : draft, text]));
    this.#keepDrafts();
  }

  /**
   * What is chosen in the form for writing down a size.
   * @param {string | null} of @param {string} form @returns {Texts}
   */
  #writing(of, form) {
    return Object.fromEntries(["feature", "place", "stage"].map((name) => [name, this.#drafts.get(draftOf(of ?? "", form, name)) ?? ""]));
  }

  /** @param {HTMLDetailsElement} fold */
  #foldOf(fold) {
    return `${this.#held.of} ${fold.dataset.keep}`;
  }

  /** @param {HTMLDetailsElement} fold */
  #toggled(fold) {
    this.#open.set(this.#foldOf(fold), fold.open);
    if (fold.open && fold.dataset.jobCheck) this.#check(fold);
  }

  /**
   * The calculator of a check, filled in: made when it is first looked at.
   * @param {HTMLDetailsElement} fold
   */
  async #check(fold) {
    const place = fold.querySelector("[data-job-calculator]");
    if (!place || place.children.length) return;
    const { of, text } = this.#held;
    const id = fold.dataset.jobCheck ?? "";
    const reply = await ask("job-check", { job: text, check: id, root: SITE, writing: this.#writing(of, `own-${id}`) });
    if (!reply.ok || place.children.length || !place.isConnected) return;
    place.innerHTML = reply.html.check;
    this.#putBackIn(place);
    const missed = this.#missed ? place.querySelector(`#${CSS.escape(this.#missed)}`) : null;
    if (missed && document.activeElement === fold.firstElementChild) missed.focus({ preventScroll: true });
  }

  /** What stood in the way, and the job that could not be kept. @param {unknown} error */
  #sayOf(error) {
    const { message, text } = /** @type {StoreError} */ (error);
    this.#say(message, text);
  }

  /** @param {string} words */
  #say(words, unkept = "") {
    const place = this.querySelector("[data-job-message]");
    if (!place) return;
    place.replaceChildren(words);
    place.hidden = !words;
    if (unkept) place.append(" ", exportButton("Export the job with this change", unkept));
  }

  #tellState() {
    const place = this.querySelector("[data-job-status]");
    if (!place) return;
    const first = !("ready" in this.dataset); // a later wait is a blink
    const what = this.dataset.view === "received" ? "sheet" : "job";
    if (runtime.state === "failed") {
      const again = document.createElement("button");
      Object.assign(again, { type: "button", textContent: "Try again" });
      again.dataset.retry = "";
      place.replaceChildren(`${runtime.why} What is kept on this device is untouched, and what you typed stands where it was. `, again);
    } else if (runtime.state === "starting" && (first || this.querySelector('[aria-busy="true"]'))) {
      place.textContent = `Starting: your ${what} is shown as soon as it is ready.`;
    } else {
      place.textContent = runtime.state === "ready" && first ? `Your ${what} is being looked through…` : "";
    }
  }

  // --- Drafts: what is typed and not yet kept ----------------------------------------------------------

  /** @type {Map<string, string> | null} */
  #draftsRead = null;

  get #drafts() {
    try {
      this.#draftsRead ??= new Map(JSON.parse(sessionStorage.getItem(DRAFTS) ?? "[]"));
    } catch {
      this.#draftsRead = new Map();
    }
    return this.#draftsRead;
  }

  /** Kept with the name of the job that it was typed for. @param {Field} field */
  #draft(field) {
    const form = field.closest("form[data-job-form]");
    if (!form || !field.name || field.type === "hidden" || field.closest("live-calculator")) return;
    const draft = draftOf(ofForm(form, this.#held.of), form.dataset.jobForm ?? "", field.name);
    this.#flying.delete(draft); // it is another one than the press took along
    this.#drafts.set(draft, field.value);
    this.#keepDrafts();
  }

  #keepDrafts() {
    try {
      sessionStorage.setItem(DRAFTS, JSON.stringify([...this.#drafts]));
    } catch {
      // Storage may be forbidden or full: the drafts then live as long as the page.
    }
  }
}

/**
 * What the buttons with data-job-do do, called on the view.
 * @satisfies {Record<string, (this: JobView, key: string | null, button: HTMLButtonElement) => Promise<void>>}
 */
const DEEDS = {
  async current(key) {
    if (key) this.openJob(key);
  },
  async export(key) {
    const held = key ? await get(key) : { text: this.text, rev: 0 };
    if (!held) throw new StoreError(`This ${GONE}`, "gone");
    const reply = await ask("job-read", { text: held.text });
    download(`${fileName(reply.ok ? reply.name : "job")}.json`, held.text);
    if (key) await exported(key, held.rev);
  },
  async remove(key) {
    if (!key) return;
    await remove(key);
    if (location.hash.slice(1) === key) history.replaceState(null, "", location.pathname);
    this.show();
  },
  /** What a sheet that came back has for its job, in one change of the job. */
  async "take-over"(key, button) {
    const { of } = button.dataset;
    const held = of ? await get(of) : { text: this.text, kept: now() };
    if (!held || !key) throw new StoreError(`This sheet ${GONE}`, "gone");
    const { text: sheet, kept } = held;
    let refused = "";
    await change(key, async (job) => {
      const reply = await ask("job-take-over", { job, sheet, kept });
      refused = reply.ok ? "" : reply.errors[0].message;
      return reply.ok ? reply.job : null;
    });
    await this.show();
    if (refused) throw new Error(refused);
    (this.querySelector("[data-job-taken]") ?? this.querySelector("#job-now"))?.focus(); // the button is gone
  },
  /** The check that a line of what is missing names: the fragment of the address names the sheet. */
  async unfold(_, button) {
    const fold = /** @type {HTMLDetailsElement | null} */ (this.querySelector(`[data-job-check="${CSS.escape(button.dataset.of ?? "")}"]`));
    if (!fold) return;
    fold.open = true;
    const summary = /** @type {HTMLElement} */ (fold.firstElementChild);
    summary.focus({ preventScroll: true });
    summary.scrollIntoView({ block: "start" });
  },
  async print() {
    print();
  },
  async copy(_, button) {
    const field = this.querySelector(`input#${button.dataset.of}`);
    if (!field) return;
    field.select();
    button.textContent = (await copied(field.value)) ? "Copied" : "Not copied: the link is marked, copy it by hand";
  },
  async send(_, button) {
    const { title, of } = button.dataset;
    const url = this.querySelector(`input#${of}`)?.value;
    await navigator.share({ title, url }).catch((error) => {
      if (error.name !== "AbortError") throw error;
    });
  },
};

// --- Parts received: ticks beside words, and the words are what counts ------------------------------------

/**
 * Tick the parts that the words name; those that the engine has not are out of sight.
 * @param {HTMLFormElement} form
 */
function tick(form) {
  const [received, engine] = [fieldIn(form, "received"), fieldIn(form, "engine")];
  if (!received) return;
  for (const box of form.querySelectorAll("[data-job-part]")) {
    const engines = box.dataset.engines?.split(" ");
    box.checked = new RegExp(`\\b(?:${box.dataset.called})\\b`, "i").test(received.value);
    if (box.parentElement) box.parentElement.hidden = Boolean(engine && engines && !engines.includes(engine.value));
  }
}

/** Where a field of that name was used. @param {Field} field @param {string} name */
function tickIn(field, name) {
  if (field.name === name && field.form) tick(field.form);
}

/**
 * A part was ticked: its word is added; or no longer: it goes, with the number before it. Words that say more
 * than that stay.
 * @param {HTMLInputElement} box
 */
function ticked(box) {
  const received = box.form?.querySelector("input[name=received]");
  if (!received) return;
  const own = new RegExp(`^\\s*(?:[\\w½]+\\s+)?(?:${box.dataset.called})\\s*$`, "i");
  const words = received.value.split(",").filter((part) => part.trim() && (box.checked || !own.test(part)));
  received.value = [...words.map((part) => part.trim()), ...(box.checked ? [box.dataset.jobPart] : [])].join(", ");
  received.dispatchEvent(new Event("input", { bubbles: true })); // kept as a draft, and the ticks as the words now are
}

/**
 * Put a text, which is marked, on the clipboard; whether it is there. Without encryption, on a shop's own
 * network, a browser has only the old way.
 * @param {string} text
 */
async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return document.execCommand("copy");
  }
}

// --- Of whom a draft is -----------------------------------------------------------------------------------

const NEXT = { add: true, done: true, "take-back": true }; // after which the same form takes the next one

/**
 * A job or sheet's own name on this page: that of the device, or while it is not kept here, what it was when
 * it was sent.
 * @param {{key: string | null, origin: string} | null | undefined} held
 */
const known = (held) => held?.key ?? held?.origin ?? "";

/**
 * The job that a form belongs to; the one that starts a job belongs to none.
 * @param {HTMLFormElement} form @param {string} of
 */
const ofForm = (form, of) => (form.dataset.jobCall === "new" ? "" : of);

/** @param {string} of @param {string} form @param {string} name */
const draftOf = (of, form, name) => [of, form, name].join("\n");

/** @param {string} draft */
function partsOf(draft) {
  const [of = "", form = "", name = ""] = draft.split("\n");
  return { of, form, name };
}

/**
 * The field of that name; where there are some to choose from, all of them, with the chosen one's value.
 * @param {HTMLFormElement | null} form @param {string} name
 */
const fieldIn = (form, name) => /** @type {Field | RadioNodeList | null | undefined} */ (form?.elements.namedItem(name));

/** What a form holds now; none on these pages sends a file. @param {HTMLFormElement} form */
const fieldsOf = (form) => /** @type {Form} */ (Object.fromEntries(new FormData(form)));

/**
 * What the reader fills in under one name: a field, or some to choose from.
 * @param {HTMLFormElement} form @param {string} name
 */
const entriesOf = (form, name) => /** @type {NodeListOf<Field>} */ (form.querySelectorAll(`[name="${CSS.escape(name)}"]:not([type=hidden])`));

/** @param {HTMLFormElement} form @param {string} name @param {string} text */
function setEntry(form, name, text) {
  for (const entry of entriesOf(form, name)) {
    if (entry instanceof HTMLInputElement && entry.type === "radio") entry.checked = entry.value === text;
    else entry.value = text;
  }
}

/** @param {Error} error */
const unkept = (error) => `This sheet is shown from its link and is not kept on this device. ${error.message}`;

/** @param {HTMLElement | null} place */
const heightOf = (place) => (place?.lastElementChild ? place.lastElementChild.getBoundingClientRect().bottom - place.getBoundingClientRect().top : 0);

/**
 * Selectors of what has the focus in markup to come: the thing itself, or else the fold around it, from
 * within outwards.
 * @param {HTMLElement | null} focused
 */
function wayTo(focused) {
  const ways = focused?.id ? [`#${CSS.escape(focused.id)}`] : [];
  for (let fold = focused?.closest("[data-keep]"); fold; fold = fold.parentElement?.closest("[data-keep]")) ways.push(`[data-keep="${CSS.escape(fold.dataset.keep ?? "")}"] > summary`);
  return ways;
}

/** @param {string} name */
const fileName = (name) => `sizebook ${name}`.normalize("NFKD").replace(/[^\w]+/g, "-").replace(/^-+|-+$/g, "").toLowerCase().slice(0, 60);
const randomId = () => btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(9)))).replaceAll("+", "-").replaceAll("/", "_");

customElements.define("job-view", JobView);
