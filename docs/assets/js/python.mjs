// Starts Python and gives back the one function that answers requests. Knows the runtime, but neither
// page nor worker, so that the tests run the very same start under Node.

// The heap that the runtime is compiled with. A snapshot of a heap that has grown would not be restored.
const HEAP = 31_457_280; // bytes

/**
 * Start from bytecode.
 * @param {string} runtime  address of the folder with the runtime, ending in a slash
 * @param {Promise<Uint8Array>} calc  the calculators' bytecode as a stored zip
 * @returns {Promise<(request: string) => string>}  JSON in, JSON out
 */
export async function startPython(runtime, calc) {
  const python = await load(runtime);
  await mount(python, calc);
  return answerer(python, Promise.resolve());
}

/**
 * Start where a snapshot was taken. Nothing can be imported from the calculators' zip before it is there,
 * but nothing needs to be: the snapshot was taken with all of them imported.
 * @param {Promise<Uint8Array>} snapshot
 */
export async function wakePython(runtime, calc, snapshot) {
  const python = await load(runtime, { _loadSnapshot: snapshot });
  const mounted = mount(python, calc);
  python.runPython("import random; random.seed()"); // else every visit would draw the same
  return answerer(python, mounted);
}

/**
 * Start from bytecode, work through every calculator's example, and take a snapshot of the memory.
 * @returns {Promise<Uint8Array>}  rejects where the memory has outgrown what can be woken
 */
export async function takeSnapshot(runtime, calc) {
  const python = await load(runtime, { _makeSnapshot: true });
  await mount(python, calc);
  answerer(python, Promise.resolve());
  python.runPython(REHEARSE);
  const size = python._module.HEAP8.length;
  if (size !== HEAP) throw new Error(`The memory has grown to ${size} bytes; only ${HEAP} can be woken.`);
  return python.makeMemorySnapshot();
}

const REHEARSE = `
import json
from calc.page.live import answer
from calc.stations import ids
for id in ids():
    answer(json.dumps({"call": "evaluate", "calculator": id, "entries": {}, "system": "metric"}))
import gc
gc.collect()
`;

async function load(runtime, more) {
  // The second is asked for by the first; here it is asked for with it.
  const parts = ["pyodide.mjs", "pyodide.asm.mjs"].map((name) => import(runtime + name));
  const [{ loadPyodide }] = await Promise.all(parts).catch(() => {
    throw new Error("a part of them could not be fetched");
  });
  return loadPyodide({ indexURL: runtime, ...more });
}

async function mount(python, zip, name = "calc") {
  python.FS.writeFile(`/lib/${name}.zip`, await zip);
}

/**
 * The function; garbage is collected from here on, but not looked for among what was imported. What is imported
 * late is there once its promise `whole` is kept; `add(name, zip)` brings in more packages.
 */
function answerer(python, whole) {
  const reach = (name) => python.runPython(`import sys; '/lib/${name}.zip' in sys.path or sys.path.append('/lib/${name}.zip')`);
  reach("calc");
  const { answer } = python.pyimport("calc.page.live");
  python.runPython("import gc; gc.freeze(); gc.enable()");
  const add = async (name, zip) => {
    await mount(python, zip, name);
    reach(name);
  };
  return Object.assign((request) => answer(request), { whole, add });
}
