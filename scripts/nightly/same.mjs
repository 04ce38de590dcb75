// Answers a calculator's requests in the reader's Python, woken from the memory that the build made, under Node, and says where it
// differs from what CPython said.   node same.mjs <folder of python.mjs> <folder of the runtime> <folder of the calculators> <file of cases>
// A case is {request, reply, data}: texts, as CPython wrote them. Written to stdout is one line a case: null, or {reply, data}.
import { readFileSync, readdirSync } from "node:fs";

const [scripts, runtime, calculators, cases] = /** @type {[string, string, string, string]} */ (process.argv.slice(2));
const { LIBRARY, wakePython } = /** @type {typeof import("../../docs/assets/js/python.mjs")} */ (await import(`${scripts}/python.mjs`));
const read = (/** @type {string} */ name) => new Uint8Array(readFileSync(name));
const program = { hot: WebAssembly.compile(read(`${calculators}/hot.wasm`)), cold: () => read(`${runtime}/cold.wasm`) };
const { python, add, addStation } = await wakePython(`${runtime}/`, Promise.resolve(read(`${calculators}/memory.wasm`).buffer), program);
add(LIBRARY, read(`${runtime}/python_stdlib.zip`));
add("calc", read(`${calculators}/calc.zip`)); // what only the command reports with is not in the memory
for (const file of readdirSync(`${calculators}/stations`)) addStation(file.replace(".zip", ""), read(`${calculators}/stations/${file}`));
const ask = python.runPython(`
import json
from calc.declare.calculator import evaluate
from calc.page.live import answer
from calc.page.report import result_data
from calc.stations.index import find

def ask(request):
    asked = json.loads(request)
    return answer(request), json.dumps(result_data(evaluate(find(asked["calculator"]), asked["entries"], asked["system"]), asked["system"]))
ask
`);
for (const each of JSON.parse(readFileSync(cases, "utf-8"))) {
  let got;
  try {
    const pair = ask(each.request);
    got = pair.toJs();
    pair.destroy();
  } catch (error) {
    got = [`fault: ${/** @type {Error} */ (error).message}`, ""];
  }
  const [reply, data] = got;
  console.log(JSON.stringify(reply === each.reply && data === each.data ? null : { reply, data }));
}
