// The page's side of the calculators' worker: one worker for the page, started late, never restarted
// on its own. It lives on when the theme swaps the page's content.
//
// state: "asleep" → "starting" → "ready", or "failed" with a sentence in `why`; every change is told by
// a "state" event. Requests asked before it is ready are kept and answered when it is.

const LIVE = 'meta[name="sizebook-live"]'; // on a page with calculators
const WITHOUT = 'meta[name="sizebook-start"]'; // on the pages of a build that has no memory to wake Python from
const ANSWERS = 5_000; // ms until a worker that is there has begun with a request
const SILENCE = 60_000; // ms without a reply to one that it has begun with: it is stuck

/**
 * @typedef {{request: Asked, lane: unknown, early: (reply: Reply) => void, resolve: (reply: Reply | null) => void}} Waiting
 */

class Runtime extends EventTarget {
  /** @type {"asleep" | "starting" | "ready" | "failed"} */
  state = "asleep";
  why = "";
  woken = false; // from its memory, or else started from bytecode
  /** @type {Worker | null} */
  #worker = null;
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
    const [python, calc] = build.split("-");
    const stations = document.querySelector(LIVE)?.content.split(" ").filter(Boolean) ?? []; // whose calculators the page holds
    const where = { runtime: new URL(`runtime/${python}/`, site).href, calc: new URL(`runtime/${calc}/`, site).href, stations, memory: !document.querySelector(WITHOUT) };
    this.#enter("starting");
    try {
      this.#worker = new Worker(new URL("worker.mjs", import.meta.url), { type: "module", name: JSON.stringify(where) });
    } catch (error) {
      return this.#fail(`The calculators could not be started: ${/** @type {Error} */ (error).message}.`);
    }
    this.#worker.onmessage = ({ data }) => this.#hear(data);
    this.#worker.onerror = (event) => {
      event.preventDefault();
      this.#fail(`The calculators stopped: ${event.message || "a part of them could not be fetched"}.`);
    };
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
    if (this.state !== "ready" || this.#running || !this.#worker) return;
    const [first] = this.#waiting.values();
    if (!first) return;
    this.#waiting.delete(first.lane);
    this.#running = first;
    this.#watch(ANSWERS);
    // Where others open the handbook, if the shop has said it (site_url in mkdocs.yml): for links that leave this device.
    const address = document.querySelector('meta[name="sizebook-address"]')?.content;
    this.#worker.postMessage(address ? { ...first.request, address } : first.request);
  }

  /** @param {number} patience */
  #watch(patience) {
    clearTimeout(this.#alarm);
    this.#alarm = setTimeout(() => this.#fail("The calculators do not answer any more."), patience);
  }

  /** @param {FromWorker} message */
  #hear(message) {
    if (message.state === "ready") {
      this.woken = message.woken;
      this.#enter("ready");
    } else if (message.state === "failed") {
      return this.#fail(`The calculators could not ${this.state === "ready" ? "go on" : "be started"}: ${message.why}.`);
    } else if (message.begun) {
      return this.#watch(SILENCE);
    } else if (!this.#running) {
      return; // it was cut off
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
  #fail(why) {
    clearTimeout(this.#alarm);
    this.#worker?.terminate();
    this.#worker = null;
    // What was being answered goes back in front of the queue, unless a later request overtook it.
    const cut = this.#running;
    this.#running = null;
    if (cut && this.#waiting.has(cut.lane)) cut.resolve(null);
    else if (cut) this.#waiting = new Map([[cut.lane, cut], ...this.#waiting]);
    this.#enter("failed", why);
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
