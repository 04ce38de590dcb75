// The worker: wakes Python beside the pages and answers one request after the other. It serves all pages of a visit, each by a port of
// its own, where the browser has such workers (visit.mjs), else the one page that made it.
//
// Its name is where things are: {"runtime": folder, "calc": folder, "memory": whether the build has one}. A page says {come: stations}
// first, whose calculators it holds, and is told {state: "ready", woken} or {state: "failed", why}; then to each request {turn, …}
// {turn, begun}, and {turn, reply} or {turn, fault}; after a reply with `more` another one follows. What ends Python is told to all pages, and ends the worker.
class Missing extends Error {}

const NOT_FETCHED = "a part of them could not be fetched";
const GONE = "a part of them is not there any more, most likely because a new edition has taken its place; reload the page";
const WITHOUT = /No module named 'calc\.stations\.(\w+)\.\w+'/; // what Python says of a station whose calculators are not there yet
const ANOTHER_PAGE = "the network answered with a page of its own, as one does that asks you to sign in; open that page, then come back";

/** @typedef {{postMessage: (message: FromWorker) => void, onmessage: ((event: MessageEvent<ToWorker>) => void) | null}} Port */
/** @type {{runtime: string, calc: string, memory: boolean}} */
const { runtime, calc, memory: hasMemory } = JSON.parse(self.name);
/** @type {Set<Port>} */
const pages = new Set();
let over = ""; // why there is no Python here any more
/** @type {Map<string, Promise<Uint8Array>>} */
const fetched = new Map(); // stations, by name
if ("onconnect" in self) {
  // Held as long as this worker lives: what its pages go by (visit.mjs).
  const lives = new Promise((go) => navigator.locks.request(self.name, () => new Promise(() => go(undefined))));
  self.onconnect = (/** @type {MessageEvent} */ { ports: [port] }) => {
    if (!port) return;
    welcome(port);
    lives.then(() => port.postMessage({ here: true }));
  };
} else welcome(/** @type {Port} */ (/** @type {unknown} */ (self)));
self.addEventListener("error", (event) => end(event.message));
keepToOurOrigin();
// Everything is asked for at once; Python itself would ask for one after the other.
/** @type {Map<string, Promise<Response> | Response>} */
const downloads = new Map([["pyodide-lock.json", fetch(`${runtime}pyodide-lock.json`)]]);
const asleep = hasMemory && {
  memory: whole(fetch(`${calc}memory.wasm`)).then((response) => response.arrayBuffer()),
  hot: WebAssembly.compileStreaming(whole(fetch(`${calc}hot.wasm`))),
};
const start = /** @type {Promise<typeof import("./python.mjs")>} */ (part("./python.mjs"));
for (const module of ["./memory.mjs", "./program.mjs", `${runtime}pyodide.mjs`, `${runtime}pyodide.asm.mjs`]) part(module);
let lost = false; // a part of the program, while it ran

const python = wakeOrStart();
python.catch((error) => end(messageOf(error)));
/** Resolves where Python is there; where it does not come, `end` has said so. @type {ReturnType<typeof wakeOrStart>} */
const served = new Promise((go) => python.then(go, () => {}));

async function wakeOrStart() {
  const { LIBRARY, startPython, wakePython } = await start;
  const failed = failureOfTheLoader();
  const woken = await Promise.race([wake(wakePython), failed]);
  const { answer, add, addStation } = woken ?? (await Promise.race([startPython(runtime, bytes(`${calc}calc.zip`)), failed]));
  const late = new Late(add, LIBRARY, woken);
  /** @type {Map<string, Promise<void>>} */
  const there = new Map();
  /** @param {string} name */
  const bring = (name) => {
    const coming = there.get(name) ?? station(name).then((zip) => {
      try {
        addStation(name, zip);
      } catch {
        throw new Missing(NOT_FETCHED); // not all of it
      }
    });
    there.set(name, coming);
    coming.catch(() => (there.delete(name), fetched.delete(name)));
    return coming;
  };
  return { answer, late, bring, there, woken: Boolean(woken) };
}

/** @param {Port} port */
function welcome(port) {
  pages.add(port);
  if (over) return end(over);
  port.onmessage = ({ data }) => (data.gone ? pages.delete(port) : data.come ? come(port, data.come) : serve(port, data));
}

/** @param {Port} port @param {string[]} stations */
async function come(port, stations) {
  stations.map(station); // beside the memory
  const { bring, woken } = await served;
  await Promise.all(stations.map(bring)).then(() => port.postMessage({ state: "ready", woken }), (error) => fail(port, error));
}

/** @param {Port} port @param {Numbered} request @returns {Promise<void>} */
async function serve(port, request) {
  const { answer, late, bring, there } = await served;
  const { turn, ...first } = request;
  /** @param {{begun: true} | {reply: Reply} | {fault: string}} message */
  const tell = (message) => port.postMessage({ turn, ...message });
  tell({ begun: true }); // else it would take a minute to see that nobody is here
  try {
    if (request.needs) await late.bring(request.needs);
  } catch (error) {
    return fail(port, error);
  }
  try {
    // Nothing is waited for in here: what another page asks comes before or after, never between a reply and the rest of it.
    for (let asked = /** @type {Asked | null} */ (first); asked; ) {
      const reply = /** @type {Reply} */ (JSON.parse(answer(JSON.stringify(asked))));
      tell({ reply });
      asked = reply.more ? { call: "rest" } : null;
    }
  } catch (error) {
    if (lost || error instanceof Missing) return end(error instanceof Missing ? error.message : NOT_FETCHED);
    const asked = WITHOUT.exec(messageOf(error))?.[1];
    if (asked && !there.has(asked)) return bring(asked).then(() => serve(port, request), (missing) => fail(port, missing));
    if (!answers(answer)) return end(messageOf(error));
    // A fault of ours, not of the reader's entries: those come back as a reply. It may be an import that found nothing.
    if (late.isThere) return tell({ fault: messageOf(error) });
    serve(port, { ...request, needs: request.needs ?? [] });
  }
}

/** Whether Python still answers at all: out of memory, or with a fault of the program, it does no more. @param {(request: string) => string} answer */
function answers(answer) {
  try {
    return Boolean(answer('{"call": "sizes", "engine": "", "sizes": []}'));
  } catch {
    return false;
  }
}

/** One page does not get what it needs; the others go on. @param {Port} port @param {unknown} error  why something could not be fetched */
function fail(port, error) {
  pages.delete(port);
  port.postMessage({ state: "failed", why: error instanceof Missing ? error.message : NOT_FETCHED });
}

/** There is no Python here any more. Where that is known before the first page has come, the worker waits to tell it. @param {string} why */
function end(why) {
  over = why;
  if (!pages.size) return;
  for (const port of pages) port.postMessage({ state: "failed", why });
  pages.clear();
  self.close();
}

/** @param {unknown} error */
const messageOf = (error) => (error instanceof Error ? error.message : String(error));

/** What is imported late: from the zips that a woken Python did not need, and packages that no start brings. */
class Late {
  #add;
  #library;
  #there = new Set();

  /** @param {(name: string, zip: Uint8Array) => void} add @param {string} library @param {unknown} woken */
  constructor(add, library, woken) {
    this.#add = add;
    this.#library = library;
    if (!woken) this.#there.add(library).add("calc");
  }

  get isThere() {
    return this.#there.has("calc");
  }

  /** Without signal a request has to do without the packages that it named. @param {string[]} packages */
  async bring(packages) {
    await Promise.all([this.#one(this.#library, `${runtime}python_stdlib.zip`), this.#one("calc", `${calc}calc.zip`)]);
    for (const name of packages) await this.#one(name, `${runtime}${name}.zip`).catch(console.warn);
  }

  /** @param {string} name @param {string} address */
  async #one(name, address) {
    if (this.#there.has(name)) return;
    this.#add(name, await bytes(address));
    this.#there.add(name);
  }
}

/** @param {typeof import("./python.mjs").wakePython} wakePython */
async function wake(wakePython) {
  if (!asleep) return null;
  try {
    downloads.set("python_stdlib.zip", new Response()).set("pyodide.asm.wasm", new Response()); // it needs neither
    return await wakePython(runtime, asleep.memory, { hot: asleep.hot, cold });
  } catch (error) {
    if (error instanceof Missing) throw error;
    if (lost) throw new Missing(NOT_FETCHED);
    console.warn("Python's memory could not be woken:", error);
    downloads.clear();
    return null;
  }
}

/** The other part of the program, while it waits in the middle of a function. @returns {ArrayBuffer} */
function cold() {
  const request = new XMLHttpRequest();
  request.open("GET", `${runtime}cold.wasm`, false);
  request.responseType = "arraybuffer";
  lost = true;
  request.send();
  const wrong = fault(request.status, request.getResponseHeader("Content-Type"));
  if (wrong) throw new Missing(wrong);
  lost = false;
  return request.response;
}

/** A module; where it cannot be had, that is told when it is waited for. @param {string} address */
function part(address) {
  const module = import(address).catch(async () => {
    await whole(fetch(new URL(address, import.meta.url))); // why it is missing
    throw new Missing(NOT_FETCHED);
  });
  module.catch(() => {});
  return module;
}

/** A station's calculators; where they cannot be had, that is told when they are waited for. @param {string} name */
function station(name) {
  const part = fetched.get(name) ?? bytes(`${calc}stations/${name}.zip`);
  fetched.set(name, part);
  part.catch(() => {});
  return part;
}

/** @param {string} address */
async function bytes(address) {
  return new Uint8Array(await (await whole(fetch(address))).arrayBuffer());
}

/** @param {Promise<Response> | Response} download */
async function whole(download) {
  const response = await Promise.resolve(download).catch((error) => {
    if (error instanceof Missing) throw error;
    return null;
  });
  const wrong = response ? fault(response.status, response.headers.get("Content-Type")) : NOT_FETCHED;
  if (!response || wrong) throw new Missing(wrong);
  return response;
}

/**
 * What is wrong with an answer, "" where nothing is: no part of the program is a page.
 * @param {number} status @param {string | null} type
 */
function fault(status, type) {
  if (status === 404 || status === 410) return GONE;
  if (type?.includes("text/html")) return ANOTHER_PAGE;
  return status === 200 ? "" : NOT_FETCHED;
}

/**
 * Nothing here asks another host for anything, whatever it comes to run. A page's policy does not reach its workers; where the host sends
 * the policy as a header, that holds here too, and for import() as well, which cannot be guarded from within.
 */
function keepToOurOrigin() {
  /** @param {RequestInfo | URL} address */
  const ours = (address) => {
    const url = new URL(address instanceof Request ? address.url : address, self.location.href);
    if (url.origin !== self.location.origin) throw new TypeError(`Only this site is asked, not ${url.host}.`);
  };
  const { fetch } = self;
  self.fetch = async (/** @type {RequestInfo | URL} */ address, ...more) => {
    ours(address);
    return fetch(address, ...more);
  };
  const there = /** @type {Record<string, unknown>} */ (/** @type {unknown} */ (self));
  const { open } = XMLHttpRequest.prototype;
  XMLHttpRequest.prototype.open = function (/** @type {string} */ method, /** @type {string | URL} */ address, /** @type {unknown[]} */ ...more) {
    ours(address);
    return Reflect.apply(open, this, [method, address, ...more]);
  };
  for (const name of ["WebSocket", "WebSocketStream", "EventSource", "WebTransport", "Worker"]) delete there[name];
}

/**
 * Rejects when one of the loader's downloads fails, or its compilation: it only prints that to the console, and
 * then waits for ever. On the way it is handed what is under way already.
 * @returns {Promise<never>}
 */
function failureOfTheLoader() {
  const { fetch } = self;
  const { instantiateStreaming } = WebAssembly;
  return new Promise((_, reject) => {
    /** @type {<T>(promise: Promise<T>) => Promise<T>} */
    const watched = (promise) => {
      promise.catch(reject);
      return promise;
    };
    self.fetch = (address, ...more) => {
      if (!String(address).startsWith(runtime)) return fetch(address, ...more); // a station's: whoever asked for it is told
      const name = String(address).split("/").pop() ?? "";
      const early = downloads.get(name);
      downloads.delete(name);
      return watched(whole(early ?? fetch(address, ...more)));
    };
    WebAssembly.instantiateStreaming = (...how) => watched(instantiateStreaming.apply(WebAssembly, how));
  });
}
