// The worker: starts Python beside the page and answers one request after the other.
//
// Its name is what it is told at the start: {"runtime": address, "calc": address, "build": id, "task": …}.
// Tasks "start" and "wake" (from the memory kept of an earlier visit) serve: it says {state: "ready", woken}
// or {state: "failed", why} once, then {reply} or {fault} to each request. Task "keep" makes that memory,
// says {state: "kept"} or {state: "failed", why}, and is done.
import { startPython, takeSnapshot, wakePython } from "./python.mjs";
import * as snapshots from "./snapshots.mjs";

const { runtime, calc, build, task } = JSON.parse(self.name);
// Everything is asked for at once; Python itself would ask for one after the other.
const downloads = new Map(["python_stdlib.zip", "pyodide-lock.json"].map((name) => [runtime + name, fetch(runtime + name)]));
const program = WebAssembly.compileStreaming(whole(fetch(`${runtime}pyodide.asm.wasm`)));
downloads.set(`${runtime}pyodide.asm.wasm`, Promise.resolve(new Response())); // Python is handed the program itself
const calculators = bytes(calc);

try {
  await Promise.race([task === "keep" ? keep() : serve(), failureOfTheBrowser()]);
} catch (error) {
  self.postMessage({ state: "failed", why: error.message });
}

async function keep() {
  await snapshots.write(build, await takeSnapshot(runtime, calculators));
  self.postMessage({ state: "kept" });
}

async function serve() {
  const woken = task === "wake" && (await wake());
  const answer = woken || (await startPython(runtime, calculators));
  self.onmessage = async ({ data: request }) => {
    try {
      if (request.needs) await bring(answer, request.needs);
      self.postMessage({ reply: JSON.parse(answer(JSON.stringify(request))) });
    } catch (error) {
      // A fault of ours, not of the reader's entries: those come back as a reply.
      self.postMessage({ fault: error.message });
    }
  };
  self.postMessage({ state: "ready", woken: Boolean(woken) });
}

const brought = new Set();

/** For a request that imports late, or needs packages (`needs`) that no start brings; without signal it has to do without those. */
async function bring(answer, needs) {
  await answer.whole;
  for (const name of needs) {
    if (brought.has(name)) continue;
    await answer.add(name, bytes(`${runtime}${name}.zip`)).then(() => brought.add(name), console.warn);
  }
}

async function wake() {
  try {
    return await wakePython(runtime, calculators, snapshots.read(build));
  } catch (error) {
    console.warn("The kept memory could not be woken:", error);
    return null;
  }
}

async function bytes(address) {
  return new Uint8Array(await (await whole(fetch(address))).arrayBuffer());
}

async function whole(download) {
  const response = await download.catch(() => null);
  if (!response?.ok) throw new Error("a part of them could not be fetched");
  return response;
}

/**
 * Rejects when a download or the compilation fails. Python only prints that to the console, and then waits
 * for ever. On the way it is handed what is under way already.
 */
function failureOfTheBrowser() {
  const { fetch } = self;
  return new Promise((_, reject) => {
    const watched = (promise) => {
      promise.catch(reject);
      return promise;
    };
    self.fetch = (address, ...more) => {
      const early = downloads.get(String(address));
      downloads.delete(String(address));
      return watched(whole(early ?? fetch(address, ...more)));
    };
    WebAssembly.instantiateStreaming = (response, imports) =>
      watched(program.then(async (module) => ({ module, instance: await WebAssembly.instantiate(module, imports) })));
  });
}
