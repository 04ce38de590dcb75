// The worker: starts Python beside the page and answers one request after the other.
//
// Its name carries where the runtime lies: {"runtime": …, "calc": …}, both addresses.
// It says  {state: "ready"}  or  {state: "failed", why}  once, then  {reply}  or  {fault}  to each request.
import { startPython } from "./python.mjs";

const { runtime, calc } = JSON.parse(self.name);

try {
  const answer = await Promise.race([startPython(runtime, bytes(calc)), failureOfTheBrowser()]);
  self.onmessage = ({ data: request }) => {
    try {
      self.postMessage({ reply: JSON.parse(answer(JSON.stringify(request))) });
    } catch (error) {
      // A fault of ours, not of the reader's entries: those come back as a reply.
      self.postMessage({ fault: error.message });
    }
  };
  self.postMessage({ state: "ready" });
} catch (error) {
  self.postMessage({ state: "failed", why: error.message });
}

async function bytes(address) {
  return new Uint8Array(await (await fetch(address)).arrayBuffer());
}

/**
 * Rejects when a download or the compilation fails. The runtime only prints that to the console, and
 * then waits for ever.
 */
function failureOfTheBrowser() {
  return new Promise((_, reject) => {
    const watch = (owner, name, check = () => {}) => {
      const original = owner[name];
      owner[name] = (...given) => {
        const promise = original.apply(owner, given);
        promise.then(check).catch(reject);
        return promise;
      };
    };
    watch(self, "fetch", ({ ok, status, url }) => {
      if (!ok) throw new Error(`${url} gave ${status}`);
    });
    watch(WebAssembly, "instantiateStreaming");
  });
}
