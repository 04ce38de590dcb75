// <job-view data-view="jobs | sheet | received">: the pages of a job. What stands in them is written by Python from
// what this device holds; here it is fetched, stored, and kept from getting lost. Loaded only on those pages (live.mjs).
//
// In the markup: a form with data-job-call asks Python for that change of the job, a button with data-job-call too;
// data-job-do names what only the device can do. Whatever is typed or pressed belongs to what the page shows at that
// moment: a draft names its job (or sheet), its form and its field, and a press takes along the job, the entries and the
// time that it was made with. Nothing of it is read off the page later, when another job may stand there.

import { all, ask, askToPersist, change, changes, current, download, exported, forgetParts, get, initials, keep, keepPart, makeCurrent, now, parts, remove, safety, setInitials, StoreError } from "./jobs.mjs";
import { runtime } from "./runtime.mjs";
import { choosePlace } from "./standing.mjs";

const SITE = new URL("../../", import.meta.url).href;
const CODE = /^v\d+\./; // how the codes of a sheet begin (calc/job/codes.py)
const MOST_BYTES = 10_000_000; // of a job's file (calc/job/record.py)
const DRAFTS = `sizebook:drafts:${location.pathname}`;
const ONCE = ["text", "place", "why", "reason"]; // entries of a size or a line: the next one has its own
const DOUBLE = [400, 24]; // ms and pixels within which a second tap is the same tap

const NOTHING = { key: null, of: "", name: "", text: "", html: "" };
const GONE = "is no longer on this device: it was removed, or the browser has cleared what it kept.";

class JobView extends HTMLElement {
  #left;
  #bare; // what the page shows while there is nothing on the device
  #held = NOTHING; // the job or sheet that is shown: its key (null: not kept here), by what its drafts are known, its name and text; the page's markup
  #turn = 0; // of the showings; only the last one counts
  #next = ""; // what gets the focus once it is there
  #missed = ""; // what had the focus and is not there yet
  #kept = null; // what was said of the reading that was kept last: {of, form, html}
  #open = new Map(); // folds that the reader opened or closed
  #pending = Promise.resolve(); // changes are made in the order of the presses
  #flying = new Map(); // drafts that a press took along and that are not kept yet: draft → press
  #opened = null; // what the code in the address holds
  #composing = false;
  #tapped = { at: -Infinity, x: 0, y: 0 };
  #words = ""; // what the last showing had to say

  connectedCallback() {
    this.#left = new AbortController();
    const { signal } = this.#left;
    const on = (target, event, handler) => target.addEventListener(event, handler, { signal });
    for (const button of this.querySelectorAll("button[disabled]")) button.disabled = false; // until now a tap would have gone nowhere
    if (this.dataset.view === "sheet") this.closest(".md-typeset")?.classList.remove("md-typeset");
    if (this.#bare === undefined) this.#held = { ...NOTHING, html: (this.#bare = this.#view.innerHTML) };
    on(this, "submit", (event) => this.#submitted(event));
    this.addEventListener("click", (event) => this.#onceOnly(event), { signal, capture: true });
    on(this, "click", (event) => this.#pressed(event));
    on(this, "compositionstart", () => (this.#composing = true));
    on(this, "compositionend", () => this.#composed());
    on(this, "change", ({ target }) => this.#chosen(target));
    on(this, "input", ({ target }) => {
      this.#draft(target);
      if (target.name === "received") tick(target.form);
    });
    this.addEventListener("toggle", ({ target }) => target.matches?.("details[data-keep]") && this.#toggled(target), { signal, capture: true }); // it does not bubble
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
    return this.querySelector("[data-job-view]");
  }

  /** Bring the page to what the device holds now. What it shows and whose it is change in one step. */
  async show() {
    const turn = ++this.#turn;
    try {
      const found = await VIEWS[this.dataset.view].call(this);
      if (!found || turn !== this.#turn || !this.isConnected || this.#composing) return;
      const left = this.#held.of !== found.of && !this.#next && this.dataset.view === "jobs" ? this.#held : NOTHING;
      this.#replace(found);
      this.#tellOfShown(found.words || (left.of && found.of ? `Another tab has gone over to ${found.name}, so this page shows that job now. What you typed for ${left.name} is kept with ${left.name}.` : ""));
      await found.after?.();
    } catch (error) {
      if (turn === this.#turn) this.#say(error.message, error.text);
    }
  }

  async jobs() {
    const [held, kept, key] = [await all(), await safety(), current()];
    const its = held.find((one) => one.key === key);
    const words = key && !its ? `The job that was worked on here ${GONE} If it was exported, bring it in from its file.` : "";
    if (!held.length) return { ...NOTHING, html: this.#bare, words };
    const jobs = held.map(({ key, kind, text, kept, exported, rev }) => ({ key, kind, text, kept, exported: exported?.at ?? "", changed: exported?.rev !== rev }));
    return this.#asked("view", its, { jobs, key, engines: this.#engines, safety: kept, writing: this.#writing(key, "write") }, words);
  }

  async sheet() {
    const key = location.hash.slice(1) || current();
    const held = key ? await get(key) : null;
    if (!held) return { ...NOTHING, html: this.#bare, words: key ? `The job of this size sheet ${GONE}` : "" };
    return this.#asked("sheet", held, { job: held.text, key, needs: ["codes"] });
  }

  /** A sheet out of the link's code is shown whether or not this device lets it be kept. */
  async received() {
    const named = location.hash.slice(1);
    const opened = CODE.test(named) ? await this.#codeOf(named) : null;
    if (opened && !opened.text) return { ...NOTHING, html: opened.html, words: opened.words };
    let [held, closed] = [[], null];
    try {
      held = await all();
    } catch (error) {
      if (!opened) throw error;
      closed = error;
    }
    const kept = held.find(({ key, kind, origin }) => (opened ? kind === "sheet" && origin === opened.origin : key === named));
    const shown = kept ?? (opened && { key: null, origin: opened.origin, text: opened.text, kept: now() });
    const sheets = held.filter(({ kind }) => kind === "sheet").map(({ key, text, kept }) => ({ key, text, kept }));
    const lost = opened && !kept && (closed ?? opened.lost);
    const words = lost ? unkept(lost) : named && !shown ? `This sheet ${GONE} Open its link once more, or ask for it again.` : "";
    if (!shown && !sheets.length) return { ...NOTHING, html: this.#bare, words };
    const mine = held.filter(({ kind, key }) => kind === "job" && key !== shown?.key).map(({ key, text }) => ({ key, text }));
    const view = await this.#asked("received", shown, { job: shown?.text ?? null, key: shown?.key ?? null, kept: shown?.kept ?? "", sheets, mine }, words);
    return view && opened && !kept && !opened.keeping ? { ...view, after: () => this.#keepOpened(opened) } : view;
  }

  /** What a link's code holds: {text, origin, …}, or the page to show instead while others of its codes are still to be read. */
  async #codeOf(code) {
    if (this.#opened?.code === code) return this.#opened;
    const others = await parts().catch(() => []);
    const reply = await ask("job-open", { code, others });
    if (!reply.ok) return { html: this.#bare, words: reply.errors[0].message };
    if (!reply.job) {
      const words = await keepPart(code).then(() => "", (error) => `This code alone does not hold the whole sheet. ${error.message} Ask for its link or its file: they hold all of it.`);
      return { html: reply.html.view, words };
    }
    // The address keeps the code, so that it can be sent on and opened again; of several codes, that of them all.
    if (reply.code !== code) history.replaceState(history.state, "", `#${reply.code}`);
    return (this.#opened = { code: reply.code, text: reply.job, origin: reply.origin, used: reply.used, keeping: false, lost: null });
  }

  /** A sheet that was opened is kept on this device, once: one that is removed again stays so until its link is opened anew. */
  async #keepOpened(opened) {
    opened.keeping = true;
    try {
      await keep("sheet", opened.text, opened.origin, { once: true });
      opened.lost = new StoreError("It was removed from this device; open its link once more to keep it again.", "gone");
      await forgetParts(opened.used);
      askToPersist();
    } catch (error) {
      opened.lost = error;
      this.#tellOfShown(unkept(error));
    }
  }

  /** The markup that Python makes for a view, and whose it is; null where a later request overtook this one. */
  async #asked(call, held, fields, words = "") {
    const reply = await ask(`job-${call}`, { root: SITE, ...fields }, `job-${call}`);
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

  /** A form is sent: what it holds now goes, whatever is typed or shown by the time that it is kept. */
  async #submitted(event) {
    const form = event.target;
    if (!form.dataset.jobCall) return;
    event.preventDefault();
    const call = event.submitter?.value || form.dataset.jobCall;
    const fields = Object.fromEntries(new FormData(form));
    if (fields.initials !== undefined) setInitials(fields.initials);
    const press = { ...this.#here, of: ofForm(form, this.#held.of), form: form.dataset.jobForm, call, fields };
    const another = form.getAttribute("aria-busy") === "true" || [...this.#flying.values()].some((one) => one.form === press.form && one.of === press.of);
    if (another && !(call in NEXT && fields.text?.trim())) return; // the same tap once more
    if (fields.reason) fields.why = fields.reason;
    if (call === "change") for (const { name, value, defaultValue } of form.querySelectorAll("input[type=text]")) if (value === defaultValue) delete fields[name];
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

  #inTurn(work) {
    const done = this.#pending.then(work);
    this.#pending = done.catch(() => {});
    return done;
  }

  async #start(press) {
    const reply = await ask("job-new", { ...press.fields, ...press.at, id: randomId() });
    if (!reply.ok) return this.#refuse(press, reply.errors);
    this.openJob(await keep("job", reply.job));
    askToPersist();
    return true;
  }

  /** Work on a job: the page begins with it, and so does who hears it. */
  openJob(key) {
    this.#next = "#job-now";
    choosePlace(""); // the part in hand is another one
    makeCurrent(key);
  }

  async #change(press) {
    if (!press.key) throw new StoreError("This sheet is not kept on this device, so nothing can be kept with it.", "unkept");
    let reply = null;
    this.#kept = null;
    await change(press.key, async (job) => {
      reply = await ask(`job-${press.call}`, { job, ...press.fields, ...press.at });
      return reply.ok ? reply.job : null;
    });
    if (!reply.ok) return this.#refuse(press, reply.errors);
    if (press.form && reply.html?.kept) this.#kept = { of: press.of, form: press.form, html: reply.html.kept };
    this.#clearMessages(this.#formOf(press));
    return true;
  }

  // --- What a press took along ------------------------------------------------------------------------

  /** The drafts of a form go with its press. What belongs to one size or line only leaves the form at once: the next is typed there. */
  #takeAlong(press, form) {
    press.gone = new Set(press.call in NEXT ? ONCE.filter((name) => form.elements[name]) : []); // which size and at which stage is likely to be the same for the next
    press.was = press.gone.has("reason") ? { ...press.fields, why: form.querySelector("[name=why]:checked")?.value ?? "" } : { ...press.fields };
    for (const name of Object.keys(press.was)) if (entriesOf(form, name).length) this.#flying.set(draftOf(press.of, press.form, name), press);
    for (const name of press.gone) setEntry(form, name, "");
  }

  /** It is kept, or refused: then what was taken along stands there again, unless the reader has typed something else by then. */
  #landed(press, refused) {
    const form = this.#formOf(press);
    for (const [draft, its] of [...this.#flying]) {
      if (its !== press) continue;
      this.#flying.delete(draft);
      const name = draft.split("\n")[2];
      if (!refused && (press.gone.has(name) || !(press.call in NEXT))) this.#drafts.delete(draft);
      else if (refused) this.#drafts.set(draft, press.was[name]);
      if (refused && form && press.gone.has(name)) setEntry(form, name, press.was[name]);
    }
    this.#keepDrafts();
  }

  /** The form that a press came from, as it stands on the page now; none where another job is shown. */
  #formOf(press) {
    const form = press.form && this.#view.querySelector(`[data-job-form="${CSS.escape(press.form)}"]`);
    return form && ofForm(form, this.#held.of) === press.of ? form : null;
  }

  #refuse(press, errors) {
    const form = this.#formOf(press);
    this.#clearMessages(form);
    for (const { field, message } of errors) {
      const place = form?.querySelector(`[data-message-for="${CSS.escape(field ?? "")}"]`) ?? form?.querySelector('[data-message-for=""]');
      if (!place) {
        this.#say(press.of && press.of !== this.#held.of ? `${press.name}: ${message}` : message);
        continue;
      }
      const entry = form.elements[field];
      const other = press.gone?.has(field) && entry.value && entry.value !== press.was[field]; // the next one is being typed there
      place.closest("[data-job-reasons]")?.removeAttribute("hidden");
      place.textContent = other ? `Not kept: “${press.was[field]}”. ${message}` : message;
      place.hidden = false;
      if (entry instanceof RadioNodeList) entry[0].focus();
      else entry?.setAttribute?.("aria-invalid", "true"), other || entry?.focus?.();
    }
    return false;
  }

  #clearMessages(form) {
    for (const place of form?.querySelectorAll("[data-message-for]") ?? []) {
      place.hidden = true;
      place.textContent = "";
    }
    for (const entry of form?.querySelectorAll("[aria-invalid]") ?? []) entry.removeAttribute("aria-invalid");
  }

  /** The second tap of a double tap falls on whatever has moved there by then. It is not meant for that. */
  #onceOnly(event) {
    const { timeStamp: at, clientX: x, clientY: y, detail } = event;
    const last = this.#tapped;
    if (!detail || event.target.closest("live-calculator")) return; // by keyboard
    this.#tapped = { at, x, y };
    if (!event.target.closest("button") || at - last.at > DOUBLE[0] || Math.hypot(x - last.x, y - last.y) > DOUBLE[1]) return;
    event.preventDefault();
    event.stopPropagation();
  }

  #pressed(event) {
    const button = event.target.closest("button");
    if (!button || button.closest("live-calculator")) return;
    const { jobDo, jobCall, key, line } = button.dataset;
    const press = { ...this.#here, call: jobCall, fields: { line } };
    if (jobCall) return this.#busy(button, () => this.#inTurn(() => this.#change(press)));
    if (jobDo) return this.#busy(button, () => DEEDS[jobDo].call(this, key ?? press.key, button));
    if (button.dataset.retry !== undefined) runtime.retry();
    if (button.dataset.jobExport !== undefined) download("sizebook-job.json", button.text);
  }

  async #chosen(target) {
    if (target.dataset.jobPart !== undefined) return ticked(target);
    if (target.name === "engine") tick(target.form);
    if (target.matches("[data-job-initials]")) return setInitials(target.value);
    if (target.matches("input[type=file]")) return this.#busy(target, () => this.#read(target));
    const part = target.dataset.jobAgain;
    if (!part) return;
    const form = target.closest("form");
    const { of, text } = this.#held;
    this.#drafts.delete(draftOf(of, form.dataset.jobForm, "place")); // the places of another size are others
    this.#keepDrafts();
    const reply = await ask(`job-${part}`, { job: text, ...Object.fromEntries(new FormData(form)), place: "" }, `job-${part}`);
    if (!reply?.ok || !form.isConnected) return;
    const template = document.createElement("template");
    template.innerHTML = reply.html[part];
    const made = template.content.firstElementChild;
    form.replaceWith(made);
    this.#putBackIn(made);
    this.querySelector(`#${target.id}`)?.focus();
  }

  /** A file: a job beside the others, or on the page of received sheets a sheet. */
  async #read(input) {
    const [file] = input.files;
    if (!file) return;
    const form = input.closest("form");
    const refuse = (errors) => {
      const place = form.querySelector('[data-message-for=""]');
      Object.assign(place, { textContent: errors[0].message, hidden: false });
    };
    this.#clearMessages(form);
    try {
      // Looked at before it is read: hundreds of megabytes would end the page.
      if (file.size > MOST_BYTES) return refuse([{ message: `This is no job's file: it has ${Math.round(file.size / 1e6)} MB, and no job has more than ${MOST_BYTES / 1e6}.` }]);
      const text = await file.text();
      const reply = await ask("job-read", { text });
      if (!reply.ok) return refuse(reply.errors);
      const kind = this.dataset.view === "received" ? "sheet" : "job";
      const twin = (await all()).find((held) => held.kind === kind && held.text === reply.job);
      if (twin && kind === "job") return refuse([{ message: `This very job is on this device already: ${reply.name}.` }]);
      const key = twin?.key ?? (await keep(kind, reply.job, reply.origin));
      askToPersist();
      if (kind === "sheet") location.hash = key;
      else if (!current()) makeCurrent(key);
    } finally {
      input.value = "";
    }
  }

  async #busy(element, work) {
    if (element.getAttribute("aria-busy") === "true" && !element.dataset.jobForm) return;
    element.setAttribute("aria-busy", "true");
    this.#say("");
    this.#tellState();
    try {
      await work();
    } catch (error) {
      this.#say(error.message, error.text);
    } finally {
      element.removeAttribute("aria-busy");
      this.#tellState();
    }
  }

  // --- What is shown ----------------------------------------------------------------------------------

  /** Replace the page's markup: what is typed, unfolded and focused stays so, where it is still the same job's. */
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
    const focused = same && this.contains(document.activeElement) ? document.activeElement : null;
    const [from, to] = focused?.type === "text" ? [focused.selectionStart, focused.selectionEnd] : [];
    const back = wayTo(focused).map((way) => [way, this.#view.querySelector(way)?.getBoundingClientRect().top]);
    const heights = [...this.#view.querySelectorAll("[data-job-check][open]")].map((fold) => [fold.dataset.keep, heightOf(fold.querySelector("[data-job-calculator]"))]);
    this.#view.innerHTML = html;
    // A check's calculator is made anew in a moment: until then its room is kept, so that nothing moves away.
    for (const [key, height] of heights) this.#view.querySelector(`[data-keep="${CSS.escape(key)}"] > [data-job-calculator]`)?.style.setProperty("min-height", `${height}px`);
    for (const button of this.#view.querySelectorAll('[data-job-do="send"]')) button.hidden = !navigator.share;
    for (const fold of this.#view.querySelectorAll("details[data-keep]")) if (this.#open.has(this.#foldOf(fold))) fold.open = this.#open.get(this.#foldOf(fold));
    for (const field of this.querySelectorAll("[name=initials]")) field.value ||= initials();
    this.#putBackIn(this.#view);
    const next = this.#next && this.#view.querySelector(this.#next);
    if (next) this.#next = "";
    if (next) scrollTo({ top: 0 });
    const [way, stood] = back.find(([way]) => this.#view.querySelector(way)) ?? [];
    const found = next || (way && this.#view.querySelector(way));
    found?.focus({ preventScroll: true });
    if (from !== undefined && found?.id === focused.id && found.value === focused.value) found.setSelectionRange(from, to);
    if (found && !next) scrollBy({ top: found.getBoundingClientRect().top - stood, behavior: "instant" }); // whatever grew above it
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

  /** Drafts, and what was said of a reading kept, into markup that is new. */
  #putBackIn(place) {
    for (const form of [...(place.matches("[data-job-form]") ? [place] : []), ...place.querySelectorAll("[data-job-form]")]) this.#putBack(form);
    const said = this.#kept?.of === this.#held.of && place.querySelector(`[data-job-kept="${CSS.escape(this.#kept.form)}"]`);
    if (said) said.innerHTML = this.#kept.html;
  }

  #putBack(form) {
    for (const [draft, text] of this.#drafts) {
      const [of, its, name] = draft.split("\n");
      if (its !== form.dataset.jobForm || of !== ofForm(form, this.#held.of) || this.#flying.get(draft)?.gone.has(name)) continue;
      setEntry(form, name, text);
      const [entry] = entriesOf(form, name);
      if (entry?.type !== "text" || !text) continue;
      entry.closest("[data-job-reasons]")?.removeAttribute("hidden");
      for (let fold = entry.closest("details[data-keep]"); fold; fold = fold.parentElement.closest("details[data-keep]")) if (!this.#open.has(this.#foldOf(fold))) fold.open = true; // what was typed is in sight
    }
    if (form.elements.received) tick(form);
  }

  /** What belongs to a job or sheet goes by another name from now on. */
  #rename(from, to) {
    this.#open = new Map([...this.#open].map(([fold, open]) => [fold.startsWith(`${from} `) ? to + fold.slice(from.length) : fold, open]));
    this.#draftsRead = new Map([...this.#drafts].map(([draft, text]) => [draft.startsWith(`${from}\n`) ? to + draft.slice(from.length) : draft, text]));
    this.#keepDrafts();
  }

  /** What is chosen in the form for writing down a size. */
  #writing(of, form) {
    return Object.fromEntries(["feature", "place", "stage"].map((name) => [name, this.#drafts.get(draftOf(of, form, name)) ?? ""]));
  }

  #foldOf(fold) {
    return `${this.#held.of} ${fold.dataset.keep}`;
  }

  #toggled(fold) {
    this.#open.set(this.#foldOf(fold), fold.open);
    if (fold.open && fold.dataset.jobCheck) this.#check(fold);
  }

  /** The calculator of a check, filled in: made when it is first looked at. */
  async #check(fold) {
    const place = fold.querySelector("[data-job-calculator]");
    if (!place || place.children.length) return;
    const { of, text } = this.#held;
    const id = fold.dataset.jobCheck;
    const reply = await ask("job-check", { job: text, check: id, root: SITE, writing: this.#writing(of, `own-${id}`) });
    if (!reply.ok || place.children.length || !place.isConnected) return;
    place.innerHTML = reply.html.check;
    this.#putBackIn(place);
    const missed = this.#missed && place.querySelector(`#${CSS.escape(this.#missed)}`);
    if (missed && document.activeElement === fold.firstElementChild) missed.focus({ preventScroll: true });
  }

  #say(words, unkept = "") {
    const place = this.querySelector("[data-job-message]");
    place.replaceChildren(words);
    place.hidden = !words;
    if (!unkept) return;
    const button = document.createElement("button");
    Object.assign(button, { type: "button", textContent: "Export the job with this change", text: unkept });
    button.dataset.jobExport = "";
    place.append(" ", button);
  }

  #tellState() {
    const place = this.querySelector("[data-job-status]");
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

  #draftsRead = null;

  get #drafts() {
    try {
      this.#draftsRead ??= new Map(JSON.parse(sessionStorage.getItem(DRAFTS)) ?? []);
    } catch {
      this.#draftsRead = new Map();
    }
    return this.#draftsRead;
  }

  /** Kept with the name of the job that it was typed for. */
  #draft(field) {
    const form = field.closest("form[data-job-form]");
    if (!form || !field.name || field.type === "hidden" || field.closest("live-calculator")) return;
    const draft = draftOf(ofForm(form, this.#held.of), form.dataset.jobForm, field.name);
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

const VIEWS = { jobs: JobView.prototype.jobs, sheet: JobView.prototype.sheet, received: JobView.prototype.received };

/** What the buttons with data-job-do do, called on the view. */
const DEEDS = {
  async current(key) {
    this.openJob(key);
  },
  async export(key) {
    const held = key ? await get(key) : { text: this.text };
    if (!held) throw new StoreError(`This ${GONE}`, "gone");
    const reply = await ask("job-read", { text: held.text });
    download(`${fileName(reply.ok ? reply.name : "job")}.json`, held.text);
    if (key) await exported(key, held.rev);
  },
  async remove(key) {
    await remove(key);
    if (location.hash.slice(1) === key) history.replaceState(null, "", location.pathname);
    this.show();
  },
  /** What a sheet that came back has for its job, in one change of the job. */
  async "take-over"(key, button) {
    const { text: sheet, kept } = button.dataset.of ? await get(button.dataset.of) : { text: this.text, kept: now() };
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
  async print() {
    print();
  },
  async copy(_, button) {
    const field = this.querySelector(`#${button.dataset.of}`);
    field.select();
    button.textContent = (await copied(field)) ? "Copied" : "Not copied: the link is marked, copy it by hand";
  },
  async send(_, button) {
    const { title, of } = button.dataset;
    await navigator.share({ title, url: this.querySelector(`#${of}`).value }).catch((error) => {
      if (error.name !== "AbortError") throw error;
    });
  },
};

// --- Parts received: ticks beside words, and the words are what counts ------------------------------------

/** Tick the parts that the words name; those that the engine has not are out of sight. */
function tick(form) {
  const { received, engine } = form.elements;
  for (const box of form.querySelectorAll("[data-job-part]")) {
    box.checked = new RegExp(`\\b(?:${box.dataset.called})\\b`, "i").test(received.value);
    box.parentElement.hidden = Boolean(engine && box.dataset.engines && !box.dataset.engines.split(" ").includes(engine.value));
  }
}

/** A part was ticked: its word is added; or no longer: it goes, with the number before it. Words that say more than that stay. */
function ticked(box) {
  const { received } = box.form.elements;
  const own = new RegExp(`^\\s*(?:[\\w½]+\\s+)?(?:${box.dataset.called})\\s*$`, "i");
  const words = received.value.split(",").filter((part) => part.trim() && (box.checked || !own.test(part)));
  received.value = [...words.map((part) => part.trim()), ...(box.checked ? [box.dataset.jobPart] : [])].join(", ");
  received.dispatchEvent(new Event("input", { bubbles: true })); // kept as a draft, and the ticks as the words now are
}

/** Put a field's text on the clipboard; whether it is there. Without encryption, on a shop's own network, a browser has only the old way. */
async function copied(field) {
  try {
    await navigator.clipboard.writeText(field.value);
    return true;
  } catch {
    return document.execCommand("copy");
  }
}

// --- Of whom a draft is -----------------------------------------------------------------------------------

const NEXT = { add: true, done: true, "take-back": true }; // after which the same form takes the next one

/** A job or sheet's own name on this page: that of the device, or while it is not kept here, what it was when it was sent. */
const known = (held) => held?.key ?? held?.origin ?? "";

/** The job that a form belongs to; the one that starts a job belongs to none. */
const ofForm = (form, of) => (form.dataset.jobCall === "new" ? "" : of);

const draftOf = (of, form, name) => [of, form, name].join("\n");

/** What the reader fills in under one name: a field, or some to choose from. */
const entriesOf = (form, name) => [...form.querySelectorAll(`[name="${CSS.escape(name)}"]:not([type=hidden])`)];

function setEntry(form, name, text) {
  for (const entry of entriesOf(form, name)) {
    if (entry.type === "radio") entry.checked = entry.value === text;
    else entry.value = text;
  }
}

const unkept = (error) => `This sheet is shown from its link and is not kept on this device. ${error.message}`;

const heightOf = (place) => (place?.lastElementChild ? place.lastElementChild.getBoundingClientRect().bottom - place.getBoundingClientRect().top : 0);

/** Selectors of what has the focus in markup to come: the thing itself, or else the fold around it, from within outwards. */
function wayTo(focused) {
  const ways = focused?.id ? [`#${CSS.escape(focused.id)}`] : [];
  for (let fold = focused?.closest("[data-keep]"); fold; fold = fold.parentElement.closest("[data-keep]")) ways.push(`[data-keep="${CSS.escape(fold.dataset.keep)}"] > summary`);
  return ways;
}

const fileName = (name) => `sizebook ${name}`.normalize("NFKD").replace(/[^\w]+/g, "-").replace(/^-+|-+$/g, "").toLowerCase().slice(0, 60);
const randomId = () => btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(9)))).replaceAll("+", "-").replaceAll("/", "_");

customElements.define("job-view", JobView);
