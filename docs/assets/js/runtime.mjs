// The page's side of the calculators' worker: one worker for the page, started late, never restarted
// on its own. It lives on when the theme swaps the page's content.
//
// state: "asleep" → "starting" → "ready", or "failed" with a sentence in `why`; every change is told by
// a "state" event. Requests asked before it is ready are kept and answered when it is.

const SILENCE = 60_000; // ms without a reply to one request: the worker is gone or stuck
const LEISURE = 4_000; // ms after the start, before a second worker makes the memory for the next visit
const ROOM = 2; // GB of memory that a device must have for that
const MEMORY = "sizebook:memory"; // in localStorage

class Runtime extends EventTarget {
  state = "asleep";
  why = "";
  woken = false; // from the memory of an earlier visit
  #worker = null;
  #where;
  #waiting = new Map(); // lane → {request, resolve}: the latest of each lane, in the order of asking
  #running = null;
  #alarm = 0;

  /**
   * On a page with calculators: start at once where all is on the device, else after the first paint, which
   * then has the line to itself. A reader who saves data starts it by typing.
   */
  startSoon() {
    if (navigator.connection?.saveData || !document.querySelector('meta[name="sizebook-live"]')) return;
    if (navigator.serviceWorker?.controller) this.start();
    else requestAnimationFrame(() => setTimeout(() => this.start()));
  }

  /** Start now, if it has not been started. */
  start() {
    if (this.state !== "asleep") return;
    const site = new URL("../../", import.meta.url);
    const build = document.querySelector('meta[name="sizebook-build"]')?.content;
    if (!build) return this.#fail("This copy of the handbook was built without its calculators.");
    const [python, calc] = build.split("-");
    this.#where = {
      runtime: new URL(`runtime/${python}/`, site).href,
      calc: new URL(`runtime/${calc}/calc.zip`, site).href,
      build,
    };
    this.#enter("starting");
    try {
      this.#worker = newWorker(this.#where, memory.state(build) === "kept" ? "wake" : "start");
    } catch (error) {
      return this.#fail(`The calculators could not be started: ${error.message}.`);
    }
    this.#worker.onmessage = ({ data }) => this.#hear(data);
    this.#worker.onerror = (event) => {
      event.preventDefault();
      this.#fail(`The calculators stopped: ${event.message || "a part of them could not be fetched"}.`);
    };
  }

  /** After "failed": start again, and answer what is still waiting. */
  retry() {
    if (this.state !== "failed") return;
    this.state = "asleep";
    this.start();
  }

  /**
   * Ask; the latest request of a lane overtakes the older ones that have not been answered.
   * @returns {Promise<object|null>} the reply, or null where a later request overtook this one
   */
  ask(request, lane = `${request.call} ${request.calculator ?? ""}`) {
    this.start();
    return new Promise((resolve) => {
      this.#waiting.get(lane)?.resolve(null);
      this.#waiting.set(lane, { request, lane, resolve });
      this.#next();
    });
  }

  #next() {
    if (this.state !== "ready" || this.#running) return;
    const [first] = this.#waiting.values();
    if (!first) return;
    this.#waiting.delete(first.lane);
    this.#running = first;
    this.#alarm = setTimeout(() => this.#fail("The calculators do not answer any more."), SILENCE);
    this.#worker.postMessage(first.request);
  }

  #hear(message) {
    if (message.state === "ready") {
      this.#enter("ready");
      const { build } = this.#where;
      this.woken = message.woken;
      if (memory.state(build) === "kept" && !this.woken) memory.set(build, "tried");
      if (memory.state(build) === "none") setTimeout(() => this.#keepMemory(), LEISURE);
    } else if (message.state === "failed") {
      return this.#fail(`The calculators could not be started: ${message.why}.`);
    } else {
      clearTimeout(this.#alarm);
      const { lane, resolve } = this.#running;
      this.#running = null;
      if (message.fault) {
        console.error(message.fault);
        resolve({ ok: false, notes: {}, errors: [{ field: null, code: "fault", message: FAULT }] });
      } else {
        resolve(this.#waiting.has(lane) ? null : message.reply);
      }
    }
    this.#next();
  }

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

  /** Let a worker of its own make what the next visit wakes; it is tried once for each build, and may fail in silence. */
  #keepMemory() {
    const { build } = this.#where;
    if (navigator.connection?.saveData || navigator.deviceMemory < ROOM || document.hidden || memory.state(build) !== "none") return;
    memory.set(build, "tried");
    const keeper = newWorker(this.#where, "keep");
    keeper.onmessage = ({ data }) => {
      if (data.state === "kept") memory.set(build, "kept");
      keeper.terminate();
    };
    keeper.onerror = (event) => event.preventDefault();
  }

  #enter(state, why = "") {
    this.state = state;
    this.why = why;
    this.dispatchEvent(new Event("state"));
  }
}

const FAULT = "The calculator failed on these entries; that is its fault, not yours. Please report it, with the entries.";

const newWorker = (where, task) =>
  new Worker(new URL("worker.mjs", import.meta.url), { type: "module", name: JSON.stringify({ ...where, task }) });

/** What is known of the memory of a build in this very browser: "none", "tried" or "kept". */
const memory = {
  state(build) {
    try {
      const [known, state] = JSON.parse(localStorage.getItem(MEMORY)) ?? [];
      return known === memory.of(build) ? state : "none";
    } catch {
      return "tried"; // where nothing can be remembered, nothing is tried
    }
  },
  set: (build, state) => localStorage.setItem(MEMORY, JSON.stringify([memory.of(build), state])),
  // Another version of a browser may compile the program otherwise, and the memory holds addresses in it.
  of: (build) => `${build} ${navigator.userAgent}`,
};

export const runtime = new Runtime();
