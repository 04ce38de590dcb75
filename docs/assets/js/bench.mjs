// The bench, on the first page: which part and which size are shown is said by the address alone (#view-crank,
// #size-crank.rod_journal), so that back works and a link can be sent. Its markup stands in the page and reads without a script
// (calc/page/bench.py). Here a size opens its panel, what is typed is carried to Python, and whatever was looked at last comes first.

import { Entries } from "./entries.mjs";
import { again, forget } from "./find.mjs";
import { runtime } from "./runtime.mjs";
import { choosePlace, engine, place as inHand, show as showEngines } from "./standing.mjs";
import { system } from "./units.mjs";

const JOB = "sizebook:job"; // in localStorage while a job is worked on; without one nothing of it is loaded
const LATELY = "sizebook:lately"; // what was looked at, the last first, as it is linked here
const ENGINE = "sizebook:job-engine"; // that of the job which was worked on last
const MOST = 4;
const PAUSE = 700; // ms of rest in typing before the verdict is read out

/** @typedef {typeof import("./jobs.mjs")} Jobs */

/** The same in every window. @param {string} key */
function kept(key) {
  try {
    return localStorage.getItem(key) ?? "";
  } catch {
    return "";
  }
}

/** @param {string} key @param {string} text */
function keep(key, text) {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Storage may be forbidden: then nothing comes first.
  }
}

/** The size that an address names, or "". */
const sizeIn = (/** @type {string} */ hash) => (hash.startsWith("#size-") ? decodeURIComponent(hash.slice(6)) : "");

class SizeBench extends HTMLElement {
  /** @type {Jobs | null} */
  #jobs = null;
  #own = ""; // the engine that the page was built with
  #built = ""; // its markup
  #turn = 0; // of the showings; only the last one counts
  /** @type {SizePanel | null} */
  #panel = null;
  #inList = false; // whether the size was tapped in the list below its drawing

  connectedCallback() {
    const bench = this.querySelector(".bench");
    if (!bench) return;
    this.#own = bench.dataset.bench ?? "";
    this.#built = bench.outerHTML;
    showEngines();
    this.addEventListener("click", (event) => this.#pressed(event));
    addEventListener("hashchange", () => this.#open());
    document.addEventListener("sizebook:engine", () => this.show());
    document.querySelector(".index")?.addEventListener("click", ({ target }) => looked(target.closest("a")?.getAttribute("href")));
    addEventListener("storage", ({ key }) => (key === JOB || key === null) && this.show());
    this.show();
  }

  /** Show the engine of the job that is worked on, or else that which was chosen. */
  async show() {
    const turn = ++this.#turn;
    const job = kept(JOB);
    if (job) this.#jobs ??= await import("./jobs.mjs").then((jobs) => (jobs.changes.addEventListener("change", () => this.show()), looks(), jobs));
    const [of, known] = kept(ENGINE).split("\n");
    if (!job || of === job) await this.#put(job ? (known ?? "") : engine(), turn);
    if (!job || !this.#jobs) return this.#first("");
    const held = await this.#jobs.get(job).catch(() => null);
    const reply = held ? await this.#jobs.ask("job-bench", { job: held.text }, "job-bench") : null;
    if (turn !== this.#turn) return;
    keep(ENGINE, reply?.ok ? `${job}\n${reply.engine}` : "");
    await this.#put(reply?.ok ? reply.engine : engine(), turn);
    this.#first(reply?.ok ? reply.html.unread : "");
    this.#panel?.ofJob(this.#jobs);
  }

  /** Put an engine's bench into the page; one that the page was not built with is written by Python. @param {string} name @param {number} turn */
  async #put(name, turn) {
    if (turn !== this.#turn) return;
    this.dataset.shows = name;
    if (this.querySelector(".bench")?.dataset.bench !== name && name) {
      const status = this.querySelector("[data-bench-status]");
      const tell = () => status && (status.textContent = runtime.state === "failed" ? runtime.why : `${name} …`);
      runtime.addEventListener("state", tell);
      if (name !== this.#own) tell();
      const reply = name === this.#own ? null : await runtime.ask({ call: "bench", engine: name }, "bench");
      runtime.removeEventListener("state", tell);
      if (turn !== this.#turn) return;
      if (status) status.textContent = reply && !reply.ok ? reply.errors[0].message : "";
      const bench = this.querySelector(".bench");
      if (bench) bench.outerHTML = name === this.#own ? this.#built : reply?.ok ? reply.html.bench : '<div class="bench"></div>';
      this.#panel = null;
      again();
      if (location.hash) location.replace(location.href); // what it names has come anew
    }
    this.#open();
  }

  /** @param {MouseEvent} event */
  #pressed(event) {
    const link = event.target.closest("a");
    const hash = link?.getAttribute("href") ?? "";
    if (!link || !hash.startsWith("#")) return;
    forget();
    if (!sizeIn(hash)) return runtime.start(); // a part: its sizes come next
    // The browser would go to the size's line; the panel comes to where it was tapped.
    event.preventDefault();
    this.#inList = Boolean(link.closest(".sizes"));
    const { scrollY } = globalThis;
    if (location.hash === hash) this.#open();
    else location.hash = hash;
    scrollTo({ top: scrollY, behavior: "instant" });
  }

  /** Open the size that the address names, in the line that it was tapped in, or below its drawing. */
  #open() {
    this.#draw();
    const id = sizeIn(location.hash);
    const line = id ? this.querySelector(`[id="size-${CSS.escape(id)}"]`) : null;
    const template = this.querySelector("[data-panel]");
    for (const link of this.querySelectorAll('[aria-current="true"]')) link.removeAttribute("aria-current");
    if (!line?.dataset.places || !template) {
      this.#panel?.remove();
      this.#panel = null;
      return;
    }
    const name = this.dataset.shows ?? "";
    for (const link of this.querySelectorAll(`a[href="#size-${CSS.escape(id)}"]`)) link.setAttribute("aria-current", "true");
    const { places = "[]", tools = "[]" } = this.querySelector(".bench")?.dataset ?? {};
    if (this.#panel?.isOf(name, id)) return this.#panel.toSight();
    this.#panel?.remove();
    this.#panel = new SizePanel(template, name, id, line, JSON.parse(places)[Number(line.dataset.places)], JSON.parse(tools)[Number(line.dataset.tool)] ?? "");
    const picture = line.closest(".bench-part")?.querySelector(".bench-picture");
    if (picture && !this.#inList) picture.after(this.#panel.element);
    else line.append(this.#panel.element);
    this.#panel.begin(this.#jobs);
    looked(location.hash);
  }

  /** Bring the drawing of the part that the address names from the page that holds it; its room is kept free. */
  async #draw() {
    const named = location.hash && this.querySelector(`[id="${CSS.escape(decodeURIComponent(location.hash.slice(1)))}"]`);
    const room = named && named.closest(".bench-part")?.querySelector("[data-drawn]");
    if (!room) return;
    const from = new URL(room.dataset.drawn ?? "", location.href);
    const html = await fetch(from).then((answer) => (answer.ok ? answer.text() : "")).catch(() => "");
    const picture = new DOMParser().parseFromString(html, "text/html").querySelector(`[id="${CSS.escape(from.hash.slice(1))}"] svg`);
    if (!picture || !room.isConnected) return; // the link to it stays
    for (const link of picture.querySelectorAll("a")) link.setAttribute("href", (link.getAttribute("href") ?? "").replace(/^[^#]*/, ""));
    room.replaceChildren(picture);
    delete room.dataset.drawn;
    for (const link of room.querySelectorAll(`a[href="${CSS.escape(location.hash)}"]`)) link.setAttribute("aria-current", "true");
  }

  /** What comes first: what the job still wants, and what was looked at last. @param {string} unread */
  #first(unread) {
    const place = this.querySelector("[data-unread]");
    if (place && place.innerHTML !== unread) place.innerHTML = unread;
    const lately = this.querySelector("[data-lately]");
    const list = lately?.querySelector("ul");
    if (!lately || !list) return;
    const links = latest().map((href) => document.querySelector(`.sizes a[href="${CSS.escape(href)}"], .index a[href="${CSS.escape(href)}"]`));
    const items = links.filter((link) => link !== null).slice(0, MOST);
    list.replaceChildren(...items.map((link) => lineOf(link)));
    lately.hidden = !items.length;
  }
}

/** A link once more, without its limits. @param {Element} link */
function lineOf(link) {
  const line = document.createElement("li");
  const again = /** @type {Element} */ (link.cloneNode(true));
  again.querySelector("small")?.remove();
  again.removeAttribute("aria-current");
  line.append(again);
  return line;
}

/** @returns {string[]} */
function latest() {
  try {
    return JSON.parse(kept(LATELY) || "[]");
  } catch {
    return [];
  }
}

/** @param {string | null | undefined} href */
function looked(href) {
  if (href) keep(LATELY, JSON.stringify([href, ...latest().filter((one) => one !== href)].slice(0, 2 * MOST)));
}

/** The look of what a job says. */
function looks() {
  const look = document.createElement("link");
  Object.assign(look, { rel: "stylesheet", href: new URL("../css/job.css", import.meta.url).href });
  document.head.append(look);
}

/** The panel of one size, which it asks for, and what is said of it. */
class SizePanel {
  element;
  #engine;
  #id;
  /** @type {string[]} */
  #places;
  #form;
  #entry;
  #entries;
  /** @type {Jobs | null} */
  #jobs = null;
  #left = new AbortController();
  #speaks = 0;
  #kept = { text: "", html: "" }; // what was said of the reading that was kept last
  #asked = 0; // of the job: only the last answer counts

  /** @param {HTMLTemplateElement} template @param {string} name @param {string} id @param {HTMLElement} line @param {string[]} places @param {string} tool */
  constructor(template, name, id, line, places, tool) {
    this.#engine = name;
    this.#id = id;
    this.#places = places;
    this.element = /** @type {HTMLElement} */ (template.content.firstElementChild?.cloneNode(true));
    this.#form = /** @type {HTMLFormElement} */ (this.#part("[data-form]"));
    this.#entry = /** @type {HTMLInputElement} */ (this.#part("[data-entry]"));
    this.#entries = new Entries(this.#form, `size:${name}:${id}`);
    this.#fill(line, tool);
  }

  /** @param {string} name @param {string} id */
  isOf(name, id) {
    return this.#engine === name && this.#id === id && this.element.isConnected;
  }

  /** What the size's line says of it. @param {HTMLElement} line @param {string} tool */
  #fill(line, tool) {
    const { units = "mm in", worn } = line.dataset;
    const label = line.querySelector("a")?.firstChild?.textContent?.trim() ?? "";
    this.#part("[data-label]").textContent = label;
    this.#part("[data-limits]").innerHTML = line.querySelector("small")?.innerHTML ?? "";
    const [metric = "", inch = ""] = units.split(" ");
    Object.assign(this.#entry.dataset, { unitMetric: metric, unitInch: inch });
    this.#part("[data-unit]").innerHTML = metric === inch ? metric : `<span class="u-metric">${metric}</span><span class="u-inch">${inch}</span>`;
    this.#part("[data-tool]").textContent = tool ? `, with ${tool}` : "";
    this.#part("[data-stages]").hidden = worn === undefined;
    this.#part("[data-which-one]").hidden = this.#places.length === 0;
    this.#select.append(new Option("", ""), ...this.#places.map((one) => new Option(one, one)));
    const view = line.closest(".bench-part")?.querySelector("h2")?.id;
    this.#part("[data-close]").setAttribute("href", `#${view ?? "engine"}`);
    const others = (line.dataset.others ?? "").split(" ").map((id) => document.querySelector(`[id="size-${CSS.escape(id)}"] > a`));
    const used = document.querySelectorAll(`.index a:is([data-sizes~="${CSS.escape(this.#id)}"], [data-sizes="*"])`);
    const lines = [...others.filter((link) => link !== null).map(lineOf), ...[...used].map((link) => /** @type {Node} */ (link.closest("li")).cloneNode(true))];
    this.#part("[data-uses]").append(...lines);
    this.#part("[data-used]").hidden = !lines.length;
  }

  /** @param {Jobs | null} jobs */
  begin(jobs) {
    const { signal } = this.#left;
    /** @type {Listen} */
    const on = (target, event, handler) => target.addEventListener(event, /** @type {EventListener} */ (handler), { signal });
    on(this.#form, "input", ({ target }) => target === this.#entry && this.#entered());
    on(this.#form, "change", ({ target }) => (target === this.#select ? choosePlace(this.#select.value) : this.#evaluate()));
    on(this.#form, "submit", (event) => event.preventDefault());
    // The entry keeps the focus: without it the signs below it would go, and the button move away under the thumb.
    on(this.element, "mousedown", (event) => event.target.closest("button, summary, label, a") && event.preventDefault());
    on(this.element, "click", (event) => this.#pressed(event));
    on(document, "sizebook:units", ({ detail: left }) => this.#turned(left));
    on(document, "sizebook:place", () => this.#placed());
    on(runtime, "state", () => this.#tellState());
    runtime.start();
    this.#placed();
    this.toSight();
    if (document.readyState !== "complete") on(globalThis, "load", () => this.toSight()); // the browser goes to the size's line then
    this.ofJob(jobs);
  }

  remove() {
    clearTimeout(this.#speaks);
    this.#left.abort();
    this.element.remove();
  }

  toSight() {
    this.element.scrollIntoView({ block: "nearest" });
  }

  /** @template {string} S @param {S} selector */
  #part(selector) {
    return /** @type {Found<S>} */ (this.element.querySelector(selector));
  }

  get #select() {
    return this.#part("[data-place]");
  }

  /** The part in hand, as this size has places: of valve "2 intake" the cylinder is "2". */
  get #place() {
    const hand = inHand();
    return [hand, hand.split(" ")[0] ?? ""].find((one) => this.#places.includes(one)) ?? "";
  }

  #placed() {
    const place = this.#place;
    this.#select.value = place;
    this.#entries.belongTo(this.#id, system(), place, ["text"]);
    this.#entries.begin(system());
    this.#evaluate();
    this.ofJob(this.#jobs);
  }

  #entered() {
    this.#entries.keep(system());
    this.#evaluate();
  }

  /** @param {System} left */
  #turned(left) {
    this.#entries.turn(left);
    this.#entered();
  }

  async #evaluate() {
    const text = this.#entry.value;
    this.#part('[data-part="job"]').dataset.state = text.trim() ? "typed" : "example";
    this.#tellState();
    if (!text.trim()) return this.#say("", "", "");
    const reply = await runtime.ask({ call: "size", engine: this.#engine, feature: this.#id, stage: this.#stage, text, system: system() }, "size");
    if (!reply || this.#entry.value !== text) return;
    this.#tellState();
    if (reply.ok) this.#say(reply.html.verdict ?? "", reply.html.announce ?? "", reply.note);
    else this.#say("", "", reply.errors[0].message, true);
  }

  get #stage() {
    const { value } = /** @type {RadioNodeList} */ (this.#form.elements.namedItem("stage"));
    return /** @type {"" | "received" | "finished"} */ (value);
  }

  /** @param {string} verdict @param {string} aloud @param {string} beside */
  #say(verdict, aloud, beside, wrong = false) {
    this.#part('[data-part="verdict"]').innerHTML = verdict;
    const message = this.#part("[data-message-for]");
    message.textContent = beside;
    message.hidden = !beside;
    message.dataset.kind = wrong ? "error" : "note";
    this.#entry.toggleAttribute("aria-invalid", wrong);
    if (wrong) this.#entry.setAttribute("aria-invalid", "true");
    clearTimeout(this.#speaks);
    this.#speaks = setTimeout(() => (this.#part('[data-part="announce"]').textContent = aloud || (wrong ? beside : "")), PAUSE);
  }

  #tellState() {
    const status = this.#part('[data-part="status"]');
    const waits = Boolean(this.#entry.value.trim());
    status.textContent = waits && runtime.state === "starting" ? "Starting: your reading is judged as soon as it is ready." : "";
    if (!waits || runtime.state !== "failed") return;
    const again = document.createElement("button");
    Object.assign(again, { type: "button", textContent: "Try again" });
    again.addEventListener("click", () => runtime.retry());
    status.append(`${runtime.why} What you typed is kept. `, again);
  }

  /** @param {MouseEvent} event */
  #pressed({ target }) {
    const button = target.closest("button");
    if (!button) return;
    const { key, suggest, jobPlace, jobKeep, jobWhy } = button.dataset;
    if (key) this.#type(key);
    if (suggest) this.#put(suggest);
    if (jobPlace !== undefined) choosePlace(jobPlace);
    if (jobKeep) this.#keep(jobKeep, jobWhy ?? "");
  }

  /** @param {string} sign */
  #type(sign) {
    const { selectionStart: from, selectionEnd: to, value } = this.#entry;
    this.#entry.setRangeText(sign, from ?? value.length, to ?? value.length, "end");
    this.#entry.focus();
    this.#entered();
  }

  /** @param {string} text */
  #put(text) {
    this.#entry.value = text;
    this.#entry.focus();
    this.#entered();
  }

  // --- The job --------------------------------------------------------------------------------------

  /** What the job that is worked on has of this size, and the ways to keep what is typed. @param {Jobs | null} jobs */
  async ofJob(jobs) {
    this.#jobs = jobs;
    const asked = ++this.#asked;
    const key = jobs?.current();
    const held = jobs && key ? await jobs.get(key).catch(() => null) : null;
    const stages = held?.kind === "sheet" ? ["assembly"] : ["received", "finished"];
    const reply = jobs && held ? await jobs.ask("job-size", { job: held.text, kind: held.kind, feature: this.#id, place: this.#place, stages }, "job-size") : null;
    if (asked !== this.#asked) return;
    const box = this.#part('[data-part="job"]');
    const kept = this.#kept.text === this.#entry.value ? this.#kept.html : "";
    box.innerHTML = kept + (reply?.ok ? reply.html.job : "");
  }

  /** A press keeps what stands there now, whatever comes in between. @param {string} stage @param {string} why */
  async #keep(stage, why) {
    const jobs = this.#jobs;
    const key = jobs?.current();
    if (!jobs || !key) return;
    const box = this.#part('[data-part="job"]');
    const hand = box.querySelector("[data-job-initials]")?.value;
    if (hand) jobs.setInitials(hand);
    const asked = { feature: this.#id, place: this.#place, stage, text: this.#entry.value, why, now: jobs.now(), by: jobs.initials() };
    box.setAttribute("aria-busy", "true");
    try {
      let refused = "";
      await jobs.change(key, async (job) => {
        const reply = await jobs.ask("job-add", { job, ...asked });
        refused = reply.ok ? "" : reply.errors[0].message;
        if (reply.ok) this.#kept = { text: asked.text, html: reply.html?.kept ?? "" };
        return reply.ok ? reply.job : null;
      });
      if (refused) return this.#refuse(refused);
      await this.ofJob(jobs);
      if (this.#entry.value === asked.text) box.dataset.state = "filled"; // until something else is typed
    } catch (error) {
      const { message, text } = /** @type {import("./jobs.mjs").StoreError} */ (error);
      this.#refuse(message, text);
    } finally {
      box.removeAttribute("aria-busy");
    }
  }

  /** @param {string} words */
  #refuse(words, unkept = "") {
    const message = this.#part("[data-job-message]");
    message.textContent = words;
    message.hidden = false;
    if (unkept && this.#jobs) message.append(" ", this.#jobs.exportButton("Export the job with this reading", unkept));
  }
}

customElements.define("size-bench", SizeBench);
