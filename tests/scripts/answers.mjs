// Answers requests (a JSON list on stdin) as the reader's browser would, but under Node: the same start,
// the same bytecode.   node answers.mjs <folder of python.mjs> <folder of the runtime> <calc.zip> start|wake
import { readFile } from "node:fs/promises";
import { text } from "node:stream/consumers";

const [scripts, runtime, calc, task] = process.argv.slice(2);
globalThis.self = globalThis; // as in a worker, for snapshots.mjs
const { startPython, takeSnapshot, wakePython } = await import(`${scripts}/python.mjs`);
const { compact, expand } = await import(`${scripts}/snapshots.mjs`);

const zip = () => readFile(calc).then((buffer) => new Uint8Array(buffer));
const start = async () => {
  if (task === "start") return startPython(`${runtime}/`, zip());
  const kept = await compact(await takeSnapshot(`${runtime}/`, zip())).arrayBuffer();
  console.error(`kept ${kept.byteLength} bytes`);
  return wakePython(`${runtime}/`, zip(), Promise.resolve(expand(kept)));
};
const answer = await start();
const reply = (request) => {
  try {
    return answer(JSON.stringify(request));
  } catch (error) {
    return `fault: ${error.message}`;
  }
};
const requests = JSON.parse(await text(process.stdin));
await new Promise((written) => process.stdout.write(JSON.stringify(requests.map(reply)), written));
process.exit(0);
