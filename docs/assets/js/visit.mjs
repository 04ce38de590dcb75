// Where Python lives: in a worker that all pages of a visit share and that outlives each of them, where the browser has such ones
// (HTML, SharedWorker with extendedLifetime), else in one of the page's own. Pages of one edition share one, since its name says which.

const SCRIPT = new URL("worker.mjs", import.meta.url);
const STUCK = "sizebook:own-python"; // in this tab the shared one was seen to answer no more, and cannot be ended from here

/**
 * @typedef {{hear: (message: FromWorker) => void, broken: (why: string) => void}} Ears
 * @typedef {{shared: boolean, send: (message: ToWorker) => void, leave: (stuck: boolean) => void}} Line
 */

/**
 * The page's line to it; throws where the browser makes no worker.
 * @param {object} where  what the worker is to know: its name
 * @param {string[]} stations  whose calculators the page holds
 * @param {Ears} ears
 * @returns {Line}
 */
export function connect(where, stations, ears) {
  const name = JSON.stringify(where);
  const line = navigator.locks && outlives() && !isStuck() ? shared(name, ears) : own(name, ears);
  line.send({ come: stations });
  return line;
}

/** @param {string} name @param {Ears} ears @returns {Line} */
function shared(name, { hear, broken }) {
  const worker = new SharedWorker(SCRIPT, /** @type {WorkerOptions} */ ({ type: "module", name, extendedLifetime: true }));
  const { port } = worker;
  const left = new AbortController();
  // The worker holds this lock as long as it lives, and nothing else tells that it lives no more.
  const watch = () => navigator.locks.request(name, { mode: "shared", signal: left.signal }, () => broken("the browser has ended them")).catch(() => {});
  worker.onerror = () => broken("a part of them could not be fetched");
  port.onmessage = ({ data }) => (data.here ? watch() : hear(data));
  return {
    shared: true,
    send: (message) => port.postMessage(message),
    leave: (stuck) => {
      worker.onerror = port.onmessage = null;
      port.postMessage({ gone: true });
      port.close();
      left.abort(); // a page that waits for a lock is not kept for going back to
      if (stuck) remember();
    },
  };
}

/** @param {string} name @param {Ears} ears @returns {Line} */
function own(name, { hear, broken }) {
  const worker = new Worker(SCRIPT, { type: "module", name });
  worker.onmessage = ({ data }) => hear(data);
  worker.onerror = (event) => {
    event.preventDefault();
    broken(event.message || "a part of them could not be fetched");
  };
  return { shared: false, send: (message) => worker.postMessage(message), leave: () => worker.terminate() };
}

/** Whether a shared worker outlives its pages here: asked of a browser that reads the wish, and then refuses the address. */
function outlives() {
  let read = false;
  const wish = {
    get extendedLifetime() {
      return (read = true);
    },
  };
  try {
    new SharedWorker("http://:", /** @type {WorkerOptions} */ (wish));
  } catch {
    // as it must, or there are none
  }
  return read;
}

function isStuck() {
  try {
    return Boolean(sessionStorage.getItem(STUCK));
  } catch {
    return false;
  }
}

function remember() {
  try {
    sessionStorage.setItem(STUCK, "true");
  } catch {
    // storage may be forbidden: the next page finds out anew
  }
}
