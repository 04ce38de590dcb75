// <job-view data-view="jobs | sheet | received">: the pages of a job. What stands in them is written by Python from
// what this device holds; here it is fetched, stored, and kept from getting lost. Loaded only on those pages (live.mjs).
//
// In the markup: a form with data-job-call asks Python for that change of the job, a button with data-job-call too;
// data-job-do names what only the device can do; what is typed is kept as a draft until its form went through.

import { all, ask, askToPersist, change, changes, current, download, exported, forgetParts, get, initials, keep, keepPart, makeCurrent, parts, remove, safety, setInitials } from "./jobs.mjs";
import { runtime } from "./runtime.mjs";

const SITE = new URL("../../", import.meta.url).href;
const CODE = "v1."; // how the codes of a sheet begin (calc/job/codes.py)
const DRAFTS = `sizebook:drafts:${location.pathname}`;

class JobView extends HTMLElement {
  key = null; // of the job or sheet that is shown
  #left;
  #bare; // what the page shows while there is nothing on the device
  #shown = "";
  #next = ""; // what gets the focus once it is there
  #missed = ""; // what had the focus and is not there yet
  #kept = null; // what was said of the reading that was kept last: {form, html}
  #open = new Map(); // folds that the reader opened or closed

  connectedCallback() {
    this.#left = new AbortController();
    const { signal } = this.#left;
    const on = (target, event, handler) => target.addEventListener(event, handler, { signal });
    for (const button of this.querySelectorAll("button[disabled]")) button.disabled = false; // until now a tap would have gone nowhere
    if (this.dataset.view === "sheet") this.closest(".md-typeset")?.classList.remove("md-typeset");
    this.#bare ??= this.#shown = this.#view.innerHTML;
    on(this, "submit", (event) => this.#submitted(event));
    on(this, "click", (event) => this.#pressed(event));
    on(this, "change", ({ target }) => this.#chosen(target));
    on(this, "input", ({ target }) => {
      this.#draft(target);
      if (target.name === "received") tick(target.form);
    });
    this.addEventListener("toggle", ({ target }) => target.matches?.("details[data-keep]") && this.#toggled(target), { signal, capture: true }); // it does not bubble
    on(changes, "change", () => this.show());
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

  get #view() {
    return this.querySelector("[data-job-view]");
  }

  /** Bring the page to what the device holds now. */
  async show() {
    try {
      const found = await VIEWS[this.dataset.view].call(this);
      if (!found || !this.isConnected) return;
      if (!found.reply.ok) return this.#say(found.reply.errors[0].message);
      this.#say("");
      this.#replace(found.reply.html.view);
    } catch (error) {
      this.#say(error.message, error.text);
    }
  }

  async jobs() {
    const held = await all();
    const kept = await safety();
    if (!held.length) {
      this.key = null;
      this.#replace(this.#bare);
      for (const field of this.querySelectorAll("[name=initials]")) field.value ||= initials();
      return null;
    }
    this.key = current();
    const jobs = held.map(({ key, kind, text, kept, exported, rev }) => ({ key, kind, text, kept, exported: exported?.at ?? "", changed: exported?.rev !== rev }));
    return this.#asked("view", { jobs, key: this.key, engines: this.#engines, safety: kept, writing: this.#writing("write") });
  }

  async sheet() {
    this.key = location.hash.slice(1) || current();
    const held = this.key ? await get(this.key) : null;
    if (!held) return this.#nothing();
    return this.#asked("sheet", { job: held.text, key: this.key, needs: ["codes"] });
  }

  async received() {
    const named = location.hash.slice(1);
    if (named.startsWith(CODE) && !(await this.#openCode(named))) return null;
    const held = await all();
    const shown = held.find(({ key }) => key === location.hash.slice(1));
    this.key = shown?.key ?? null;
    const sheets = held.filter(({ kind }) => kind === "sheet").map(({ key, text, kept }) => ({ key, text, kept }));
    if (!shown && !sheets.length) return this.#nothing();
    const mine = held.filter(({ kind, key }) => kind === "job" && key !== this.key).map(({ key, text }) => ({ key, text }));
    return this.#asked("received", { job: shown?.text ?? null, key: this.key, kept: shown?.kept ?? "", sheets, mine });
  }

  /** A link's code: kept on this device as a sheet of its own, once; whether it is there. */
  async #openCode(code) {
    const reply = await ask("job-open", { code, others: await parts() });
    if (!reply.ok) {
      this.#nothing();
      this.#say(reply.errors[0].message);
      return false;
    }
    if (!reply.job) {
      await keepPart(code);
      this.#replace(reply.html.view); // others of its codes are still to be read
      return false;
    }
    const there = (await all()).find(({ origin }) => origin === reply.origin);
    const key = there?.key ?? (await keep("sheet", reply.job, reply.origin));
    await forgetParts(reply.used);
    askToPersist();
    history.replaceState(null, "", `#${key}`);
    return true;
  }

  #nothing() {
    this.key = null;
    this.#replace(this.#bare);
    return null;
  }

  async #asked(call, fields) {
    const reply = await ask(`job-${call}`, { root: SITE, ...fields }, `job-${call}`);
    return reply && { reply };
  }

  get #engines() {
    const template = document.createElement("template");
    template.innerHTML = this.#bare;
    return [...template.content.querySelectorAll("[name=engine] option")].map(({ value }) => value);
  }

  // --- What the reader does -------------------------------------------------------------------------

  async #submitted(event) {
    const form = event.target;
    if (!form.dataset.jobCall) return;
    event.preventDefault();
    const fields = Object.fromEntries(new FormData(form));
    const call = event.submitter?.value || form.dataset.jobCall;
    if (fields.initials !== undefined) setInitials(fields.initials);
    if (fields.reason) fields.why = fields.reason;
    // Of a size written down the next place is likely to be next: what is chosen stays chosen.
    const ids = [...form.querySelectorAll("[id]")].filter(({ name }) => call !== "add" || !["feature", "stage"].includes(name)).map(({ id }) => id);
    await this.#busy(form, async () => {
      const done = call === "new" ? await this.#start(fields, form) : await this.#change(call, fields, form);
      if (!done) return;
      for (const id of ids) this.#drafts.delete(id);
      this.#keepDrafts();
      if (call !== "new") form.reset();
    });
  }

  async #start(fields, form) {
    const reply = await ask("job-new", { ...fields, id: randomId() });
    if (!reply.ok) return this.#refuse(form, reply.errors);
    this.openJob(await keep("job", reply.job));
    askToPersist();
    return true;
  }

  /** Work on a job: the page begins with it, and so does who hears it. */
  openJob(key) {
    this.#next = "#job-now";
    makeCurrent(key);
  }

  async #change(call, fields, form) {
    let reply = null;
    this.#kept = null;
    await change(this.key, async (job) => {
      reply = await ask(`job-${call}`, { job, ...fields });
      return reply.ok ? reply.job : null;
    });
    if (!reply.ok) return this.#refuse(form, reply.errors);
    if (fields.form && reply.html?.kept) this.#kept = { form: fields.form, html: reply.html.kept };
    this.#clearMessages(form);
    return true;
  }

  #refuse(form, errors) {
    this.#clearMessages(form);
    for (const { field, message } of errors) {
      const place = form?.querySelector(`[data-message-for="${CSS.escape(field ?? "")}"]`) ?? form?.querySelector('[data-message-for=""]');
      if (!place) this.#say(message);
      else {
        place.closest("[data-job-reasons]")?.removeAttribute("hidden");
        place.textContent = message;
        place.hidden = false;
        const entry = form.elements[field];
        if (entry instanceof RadioNodeList) entry[0].focus();
        else entry?.setAttribute?.("aria-invalid", "true"), entry?.focus?.();
      }
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

  #pressed(event) {
    const button = event.target.closest("button");
    if (!button || button.closest("live-calculator")) return;
    const { jobDo, jobCall, key, line } = button.dataset;
    if (jobCall) return this.#busy(button, () => this.#change(jobCall, { line }, null));
    if (jobDo) return this.#busy(button, () => DEEDS[jobDo].call(this, key ?? this.key, button));
    if (button.dataset.retry !== undefined) runtime.retry();
    if (button.dataset.jobExport !== undefined) download("sizebook-job.json", button.text);
  }

  async #chosen(target) {
    if (target.dataset.jobPart !== undefined) return ticked(target);
    if (target.name === "engine") tick(target.form);
    if (target.matches("[data-job-initials]")) return setInitials(target.value);
    if (target.matches("input[type=file]")) return this.#busy(target, () => this.#read(target));
    const part = target.dataset.jobAgain;
    if (!part || !this.key) return;
    const form = target.closest("form");
    const held = await get(this.key);
    const reply = await ask(`job-${part}`, { job: held.text, ...Object.fromEntries(new FormData(form)) }, `job-${part}`);
    if (!reply?.ok) return;
    const template = document.createElement("template");
    template.innerHTML = reply.html[part];
    const made = template.content.firstElementChild;
    for (const [id] of this.#drafts) if (id.startsWith(`${form.elements.form.value}-place-`)) this.#drafts.delete(id); // the places of another size are others
    this.#keepDrafts();
    form.replaceWith(made);
    this.#putBackIn(made);
    this.querySelector(`#${target.id}`)?.focus();
  }

  /** A file: a job beside the others, or on the page of received sheets a sheet. */
  async #read(input) {
    const [file] = input.files;
    if (!file) return;
    const form = input.closest("form");
    this.#clearMessages(form);
    try {
      const text = await file.text();
      const reply = await ask("job-read", { text });
      if (!reply.ok) return this.#refuse(form, reply.errors);
      const kind = this.dataset.view === "received" ? "sheet" : "job";
      const twin = (await all()).find((held) => held.kind === kind && held.text === reply.job);
      if (twin && kind === "job") return this.#refuse(form, [{ field: null, message: `This very job is on this device already: ${reply.name}.` }]);
      const key = twin?.key ?? (await keep(kind, reply.job, reply.origin));
      askToPersist();
      if (kind === "sheet") location.hash = key;
      else if (!current()) makeCurrent(key);
    } finally {
      input.value = "";
    }
  }

  async #busy(element, work) {
    if (element.getAttribute("aria-busy") === "true") return;
    element.setAttribute("aria-busy", "true");
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

  /** Replace the page's markup: what is typed, unfolded and focused stays so. */
  #replace(html) {
    this.dataset.ready = "";
    this.#tellState();
    if (html === this.#shown) return;
    this.#shown = html;
    const focused = this.contains(document.activeElement) ? document.activeElement : null;
    const back = wayTo(focused).map((way) => [way, this.#view.querySelector(way)?.getBoundingClientRect().top]);
    const heights = [...this.#view.querySelectorAll("[data-job-check][open]")].map((fold) => [fold.dataset.keep, heightOf(fold.querySelector("[data-job-calculator]"))]);
    this.#view.innerHTML = html;
    // A check's calculator is made anew in a moment: until then its room is kept, so that nothing moves away.
    for (const [key, height] of heights) this.#view.querySelector(`[data-keep="${CSS.escape(key)}"] > [data-job-calculator]`)?.style.setProperty("min-height", `${height}px`);
    for (const button of this.#view.querySelectorAll('[data-job-do="send"]')) button.hidden = !navigator.share;
    for (const fold of this.#view.querySelectorAll("details[data-keep]")) if (this.#open.has(fold.dataset.keep)) fold.open = this.#open.get(fold.dataset.keep);
    this.#putBackIn(this.#view);
    const next = this.#next && this.#view.querySelector(this.#next);
    if (next) this.#next = "";
    if (next) scrollTo({ top: 0 });
    const [way, stood] = back.find(([way]) => this.#view.querySelector(way)) ?? [];
    const found = next || (way && this.#view.querySelector(way));
    found?.focus({ preventScroll: true });
    if (found && !next) scrollBy({ top: found.getBoundingClientRect().top - stood, behavior: "instant" }); // whatever grew above it
    this.#missed = found && focused?.id && found.id !== focused.id ? focused.id : ""; // it may be in a check that is made in a moment
  }

  /** Drafts, and what was said of a reading kept, into markup that is new. */
  #putBackIn(place) {
    for (const [id, text] of this.#drafts) this.#putBack(place, id, text);
    const said = this.#kept && place.querySelector(`[data-job-kept="${CSS.escape(this.#kept.form)}"]`);
    if (said) said.innerHTML = this.#kept.html;
  }

  #putBack(place, id, text) {
    const field = place.querySelector(`#${CSS.escape(id)}`);
    if (!field) return;
    if (field.type === "radio") field.checked = true;
    else if ("value" in field) field.value = text;
    if (["received", "engine"].includes(field.name)) tick(field.form);
    if (field.type !== "text" || !text) return;
    field.closest("[data-job-reasons]")?.removeAttribute("hidden");
    for (let fold = field.closest("details[data-keep]"); fold; fold = fold.parentElement.closest("details[data-keep]")) if (!this.#open.has(fold.dataset.keep)) fold.open = true; // what was typed is in sight
  }

  /** What is chosen in the form for writing down a size. */
  #writing(form) {
    const chosen = (name) => [...this.#drafts].find(([id]) => id.startsWith(`${form}-${name}`))?.[1] ?? "";
    return { feature: chosen("feature"), place: chosen("place-"), stage: chosen("stage-") };
  }

  #toggled(fold) {
    this.#open.set(fold.dataset.keep, fold.open);
    if (fold.open && fold.dataset.jobCheck) this.#check(fold);
  }

  /** The calculator of a check, filled in: made when it is first looked at. */
  async #check(fold) {
    const place = fold.querySelector("[data-job-calculator]");
    if (!place || place.children.length) return;
    const held = await get(this.key);
    const n = fold.dataset.jobCheck;
    const reply = await ask("job-check", { job: held.text, check: n, root: SITE, writing: this.#writing(`own-${n}`) });
    if (!reply?.ok || place.children.length) return;
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

  #draft(field) {
    if (!field.id || field.closest("live-calculator") || !field.closest("form[data-job-call]") || field.type === "file") return;
    if (field.type === "radio") for (const other of field.form.elements[field.name]) this.#drafts.delete(other.id);
    this.#drafts.set(field.id, field.value);
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
    const held = await get(key);
    const reply = await ask("job-read", { text: held.text });
    download(`${fileName(reply.ok ? reply.name : "job")}.json`, held.text);
    await exported(key, held.rev);
  },
  async remove(key) {
    await remove(key);
    if (location.hash.slice(1) === key) history.replaceState(null, "", location.pathname);
    this.show();
  },
  /** What a sheet that came back has for its job, in one change of the job. */
  async "take-over"(key, button) {
    const { text: sheet, kept } = await get(button.dataset.of);
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
    await navigator.clipboard?.writeText(field.value); // where it is not permitted, the link stands selected
    button.textContent = "Copied";
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
