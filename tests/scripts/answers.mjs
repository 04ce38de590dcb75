// Answers requests (a JSON list on stdin) as the reader's browser would, but under Node: the same start,
// the same files.   node answers.mjs <folder of python.mjs> <folder of the runtime> <folder of the calculators> start|wake
// On stderr, how often the cold part of the program was asked for.
import { readFileSync, readdirSync } from "node:fs";
import { text } from "node:stream/consumers";

const [scripts, runtime, calculators, task] = /** @type {[string, string, string, string]} */ (process.argv.slice(2));
const { startPython, wakePython } = /** @type {typeof import("../../docs/assets/js/python.mjs")} */ (await import(`${scripts}/python.mjs`));

const read = (/** @type {string} */ name) => new Uint8Array(readFileSync(name));
let cold = 0;
const program = {
  hot: WebAssembly.compile(read(`${calculators}/hot.wasm`)),
  cold: () => (cold++, read(`${runtime}/cold.wasm`)),
};
const calc = read(`${calculators}/calc.zip`);
const start = () =>
  task === "start"
    ? startPython(`${runtime}/`, Promise.resolve(calc))
    : wakePython(`${runtime}/`, Promise.resolve(read(`${calculators}/memory.wasm`).buffer), program);
const { answer, addStation } = await start();
for (const file of readdirSync(`${calculators}/stations`)) addStation(file.replace(".zip", ""), read(`${calculators}/stations/${file}`));
const reply = (/** @type {object} */ request) => {
  try {
    return answer(JSON.stringify(request));
  } catch (error) {
    return `fault: ${/** @type {Error} */ (error).message}`;
  }
};
const requests = JSON.parse(await text(process.stdin));
const replies = requests.map(reply);
await new Promise((written) => process.stdout.write(JSON.stringify({ cold, replies }), written));
process.exit(0);
