// Answers a calculator's requests in the reader's Python, under Node, and says where it differs from what CPython said.
//   node same.mjs <folder of the runtime> <calc.zip> <file of cases>
// A case is {request, reply, data}: texts, as CPython wrote them. Written to stdout is one line a case: null, or {reply, data}.
import { readFile } from "node:fs/promises";

const [runtime, calc, cases] = process.argv.slice(2);
const { loadPyodide } = await import(`${runtime}/pyodide.mjs`);
const python = await loadPyodide({ indexURL: `${runtime}/` });
python.FS.writeFile("/lib/calc.zip", await readFile(calc));
const ask = python.runPython(`
import json, sys
sys.path.append("/lib/calc.zip")
from calc.calculator import evaluate
from calc.page.live import answer
from calc.report import result_data
from calc.stations import find

def ask(request):
    asked = json.loads(request)
    return answer(request), json.dumps(result_data(evaluate(find(asked["calculator"]), asked["entries"], asked["system"]), asked["system"]))
ask
`);
for (const each of JSON.parse(await readFile(cases, "utf-8"))) {
  let got;
  try {
    const pair = ask(each.request);
    got = pair.toJs();
    pair.destroy();
  } catch (error) {
    got = [`fault: ${error.message}`, ""];
  }
  const [reply, data] = got;
  console.log(JSON.stringify(reply === each.reply && data === each.data ? null : { reply, data }));
}
