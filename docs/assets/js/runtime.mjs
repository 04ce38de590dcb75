// The page's side of the calculators' worker (visit.mjs says which): started late, never restarted on its own.
//
// state: "asleep" → "starting" → "ready", or "failed" with a sentence in `why`; every change is told by
// a "state" event. Requests asked before it is ready are kept and answered when it is.

import { connect } from "./visit.mjs";

const LIVE = 'meta[name="sizebook-live"]'; // on a page with calculators
const WITHOUT = 'meta[name="sizebook-start"]'; // on the pages of a build that has no memory to wake Python from
const ANSWERS = 5_000; // ms until a worker that is there has begun with a request
const OTHERS = 15_000; // ms until one that serves other pages too has
const SILENCE = 60_000; // ms without a reply to one that it has begun with: it is stuck

/**
 * @typedef {import("./visit.mjs").Line} Line
 * @typedef {{request: Asked, lane: unknown, early: (reply: Reply) => void, resolve: (reply: Reply | null) => void}} Waiting
 */

class Runtime extends EventTarget {
  /** @type {"asleep" | "starting" | "ready" | "failed"} */
  state = "asleep";
  why = "";
  woken = false; // from its memory, or else started from bytecode
  /** @type {Line | null} */
  #line = null;
  #turn = 0;
  /** @type {Map<unknown, Waiting>} */
  #waiting = new Map(); // by lane: the latest of each, in the order of asking
  /** @type {Waiting | null} */
  #running = null;
  #alarm = 0;

  /** Whether this page starts it without being asked: one with calculators does. A reader who saves data starts it by typing. */
  get startsByItself() {
    return !navigator.connection?.saveData && Boolean(document.querySelector(LIVE));
  }

  /** Start at once where all is on the device, else after the first paint, which then has the line to itself. */
  startSoon() {
    if (!this.startsByItself) return;
    if (navigator.serviceWorker?.controller) this.start();
    else requestAnimationFrame(() => setTimeout(() => this.start()));
  }

  /** Start now, if it has not been started. */
  start() {
    if (this.state !== "asleep") return;
    const site = new URL("../../", import.meta.url);
    const build = document.querySelector('meta[name="sizebook-build"]')?.content;
    if (!build) return this.#fail("This copy of the handbook was built without its calculators.");
    if (typeof WebAssembly === "undefined") return this.#fail("This browser cannot run the calculators: it has no WebAssembly, because it is too old or a strict setting turns it off. The pages can be read.");
    const [python, calc, scripts] = build.split("-");
    const stations = document.querySelector(LIVE)?.content.split(" ").filter(Boolean) ?? []; // whose calculators the page holds
    const where = { runtime: new URL(`runtime/${python}/`, site).href, calc: new URL(`runtime/${calc}/`, site).href, scripts, memory: !document.querySelector(WITHOUT) };
    this.#enter("starting");
    try {
      const line = connect(where, stations, {
        hear: (message) => line === this.#line && this.#hear(message),
        broken: (why) => line === this.#line && this.#fail(`The calculators stopped: ${why}.`),
      });
      this.#line = line;
    } catch (error) {
      this.#fail(`The calculators could not be started: ${/** @type {Error} */ (error).message}.`);
    }
  }

  /** Resolves when it is ready, or has failed. */
  async settled() {
    while (this.state === "asleep" || this.state === "starting") {
      await new Promise((go) => this.addEventListener("state", go, { once: true }));
    }
  }

  /** After "failed": start again, and answer what is still waiting. */
  retry() {
    if (this.state !== "failed") return;
    this.state = "asleep";
    this.start();
  }

  /**
   * Ask; the latest request of a lane overtakes the older ones that have not been answered.
   * @template {Call} C
   * @param {Asked<C>} request
   * @param {unknown} lane
   * @param {(reply: Reply<C>) => void} early  told of a reply that more is to follow
   * @returns {Promise<Reply<C> | null>} the reply, or null where a later request overtook this one
   */
  ask(request, lane = `${request.call} ${"calculator" in request ? request.calculator : ""}`, early = () => {}) {
    this.start();
    return new Promise((resolve) => {
      this.#waiting.get(lane)?.resolve(null);
      this.#waiting.set(lane, /** @type {Waiting} */ ({ request, lane, early, resolve }));
      this.#next();
    });
  }

  #next() {
    if (this.state !== "ready" || this.#running || !this.#line) return;
    const [first] = this.#waiting.values();
    if (!first) return void this.dispatchEvent(new Event("idle"));
    this.#waiting.delete(first.lane);
    this.#running = first;
    this.#watch(this.#line.shared ? OTHERS : ANSWERS);
    // Where others open the handbook, if the shop has said it (site_url in mkdocs.yml): for links that leave this device.
    const address = document.querySelector('meta[name="sizebook-address"]')?.content;
    this.#line.send({ turn: ++this.#turn, ...first.request, ...(address && { address }) });
  }

  /** @param {number} patience */
  #watch(patience) {
    clearTimeout(this.#alarm);
    this.#alarm = setTimeout(() => this.#fail("The calculators do not answer any more.", true), patience);
  }

  /** @param {FromWorker} message */
  #hear(message) {
    if (message.state === "ready") {
      this.woken = message.woken;
      this.#enter("ready");
    } else if (message.state === "failed") {
      return this.#fail(`The calculators could not ${this.state === "ready" ? "go on" : "be started"}: ${message.why}.`);
    } else if (!this.#running || message.turn !== this.#turn) {
      return; // it was cut off
    } else if (message.begun) {
      return this.#watch(SILENCE);
    } else if (message.reply?.more) {
      const { lane, early } = this.#running;
      if (!this.#waiting.has(lane)) early(message.reply);
      return;
    } else {
      clearTimeout(this.#alarm);
      const { lane, resolve } = this.#running;
      this.#running = null;
      if (message.fault !== undefined) {
        console.error(message.fault);
        resolve({ ok: false, html: {}, notes: {}, errors: [{ field: null, code: "fault", message: FAULT }] });
      } else {
        resolve(this.#waiting.has(lane) ? null : message.reply);
      }
    }
    this.#next();
  }

  /** @param {string} why */
  #fail(why, stuck = false) {
    this.#leave(stuck);
    this.#enter("failed", why);
  }

  #leave(stuck = false) {
    clearTimeout(this.#alarm);
    this.#line?.leave(stuck);
    this.#line = null;
    // What was being answered goes back in front of the queue, unless a later request overtook it.
    const cut = this.#running;
    this.#running = null;
    if (cut && this.#waiting.has(cut.lane)) cut.resolve(null);
    else if (cut) this.#waiting = new Map([[cut.lane, cut], ...this.#waiting]);
  }

  /** The page goes, and may be kept by the browser: a word from a worker that others share would make it forget the page. */
  away() {
    if (!this.#line?.shared) return;
    this.#leave();
    this.state = "asleep";
  }

  back() {
    if (this.#waiting.size) this.start();
    else this.startSoon();
  }

  /** Resolves when nothing is asked or being answered. */
  async idle() {
    while (this.state === "ready" && (this.#running || this.#waiting.size)) {
      await new Promise((go) => (this.addEventListener("idle", go, { once: true }), this.addEventListener("state", go, { once: true })));
    }
  }

  /** @param {Runtime["state"]} state */
  #enter(state, why = "") {
    this.state = state;
    this.why = why;
    this.dispatchEvent(new Event("state"));
  }
}

const FAULT = "The calculator failed on these entries; that is its fault, not yours. Please report it, with the entries.";

export const runtime = new Runtime();
addEventListener("pagehide", () => runtime.away());
addEventListener("pageshow", ({ persisted }) => persisted && runtime.back());
