// The worker: starts Python beside the page and answers one request after the other.
//
// Its name carries where the runtime lies: {"runtime": …, "calc": …}, both addresses.
// It says  {state: "ready"}  or  {state: "failed", why}  once, then  {reply}  or  {fault}  to each request.
import { startPython } from "./python.mjs";

const where = JSON.parse(self.name);

try {
  const answer = await startPython(where.runtime, bytes(where.calc));
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
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status} ${response.statusText}`);
  return new Uint8Array(await response.arrayBuffer());
}
