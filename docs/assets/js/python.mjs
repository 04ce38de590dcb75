// Starts Python and gives back the one function that answers requests. Knows the runtime, but neither
// page nor worker, so that the tests run the very same start under Node.

import { pour } from "./memory.mjs";
import { instantiate } from "./program.mjs";

// Where Python has looked in vain it does not look again by itself.
const LOOK_AGAIN = `
import sys
for path in [path for path, finder in sys.path_importer_cache.items() if finder is None]: del sys.path_importer_cache[path]
`;

export const LIBRARY = "python314"; // where Python looks for it

/**
 * @typedef {import("pyodide").PyodideInterface} Python
 * @typedef {import("pyodide").PyodideConfig} Config
 * @typedef {NonNullable<Config["createPyodideModule"]>} Create  the loader's own
 * @typedef {Parameters<Create>[0]} Settings
 * @typedef {{hot: Promise<WebAssembly.Module>, cold: () => BufferSource}} Program  see program.mjs
 */

/**
 * Wake Python from its memory as it stood, when the site was built, with all imported that calculators need.
 * @param {string} runtime  address of the folder with the runtime, ending in a slash
 * @param {Promise<ArrayBuffer>} memory  what scripts/runtime/remember.mjs wrote
 * @param {Program} program
 * @returns its `answer`: JSON in, JSON out; nothing can be imported late until the zips LIBRARY and "calc", or others, have been added
 */
export async function wakePython(runtime, memory, program) {
  const python = await load(runtime, {
    _loadSnapshot: new Uint8Array(), // only says that there is one
    createPyodideModule: async (settings) => {
      const { default: create } = /** @type {{default: Create}} */ (await import(`${runtime}pyodide.asm.mjs`));
      /** @type {ReturnType<Settings["API"]["restoreSnapshot"]>} */
      let state;
      const module = await begin(create, settings, program, async (exports) => {
        state = pour(await memory, new Uint8Array(exports.memory.buffer));
        // What the program's constructors would leave outside its memory.
        exports.table1.grow(2, null);
        exports.table1.set(1, new Map());
        exports.table2.grow(1, null);
      });
      module.API.restoreSnapshot = () => state; // the memory is there already
      return module;
    },
  });
  python.runPython("import random; random.seed()"); // else every visit would draw the same
  return serving(python);
}

/**
 * Start from bytecode, which takes longer, but asks nothing of the browser that it may not have.
 * @param {string} runtime
 * @param {Promise<Uint8Array>} calc  the calculators' bytecode as a stored zip
 */
export async function startPython(runtime, calc) {
  const python = await load(runtime);
  add(python, "calc", await calc);
  return serving(python);
}

/**
 * Let the runtime begin with a program of ours where it would fetch its own.
 * @param {Create} create @param {Settings} settings @param {Program} program
 * @param {(exports: import("./program.mjs").Tables) => Promise<void>} fill
 * @returns {ReturnType<Create>}
 */
function begin(create, settings, { hot, cold }, fill) {
  return new Promise((resolve, reject) => {
    const fault = Symbol("fault");
    /**
     * @param {WebAssembly.Imports} imports
     * @param {(instance: WebAssembly.Instance, module: WebAssembly.Module) => void} done
     */
    const instantiateWasm = (imports, done) => {
      Object.assign(imports.env ?? {}, { Jsv_GetError_import: () => fault, JsvError_Check: (/** @type {unknown} */ value) => value === fault });
      hot.then(async (module) => {
        const instance = await instantiate(module, imports, cold);
        await fill(instance.exports);
        done(instance, module);
      }).catch(reject);
      return {};
    };
    create(Object.assign(settings, { instantiateWasm })).then(resolve, reject);
  });
}

/** @param {string} runtime @param {Config & {stdLibURL?: string}} [more] @returns {Promise<Python>} */
export async function load(runtime, more) {
  // The second is asked for by the first; here it is asked for with it.
  const parts = ["pyodide.mjs", "pyodide.asm.mjs"].map((name) => import(runtime + name));
  const [{ loadPyodide }] = await Promise.all(parts).catch(() => {
    throw new Error("a part of them could not be fetched");
  });
  return loadPyodide({ indexURL: runtime, ...more });
}

/** @param {Python} python */
function serving(python) {
  const { answer } = /** @type {{answer: (request: string) => string}} */ (python.pyimport("calc.page.live"));
  // Garbage is collected from here on, but not looked for among what was imported.
  python.runPython("import gc; gc.freeze(); gc.enable()");
  return {
    answer,
    python,
    add: (/** @type {string} */ name, /** @type {Uint8Array} */ zip) => add(python, name, zip),
    addStation: (/** @type {string} */ name, /** @type {Uint8Array} */ zip) => addStation(python, name, zip),
  };
}

/**
 * Let Python import from a stored zip.
 * @param {Python} python @param {string} name @param {Uint8Array} zip
 */
export function add(python, name, zip) {
  const path = `/lib/${name}.zip`;
  python.FS.writeFile(path, zip);
  python.runPython(`import sys; "${path}" in sys.path or sys.path.append("${path}")
${LOOK_AGAIN}`);
}

/**
 * Let Python import the calculators of a station from a stored zip; throws where that is none.
 * @param {Python} python @param {string} name @param {Uint8Array} zip
 */
export function addStation(python, name, zip) {
  const path = `/lib/station-${name}.zip`;
  python.FS.writeFile(path, zip);
  // In front: calc.zip, which the station itself was imported from, need not be there.
  python.runPython(`
from zipimport import zipimporter
from calc.stations import ${name} as station
zipimporter("${path}")
station.__path__.insert(0, "${path}/calc/stations/${name}")
del station, zipimporter
${LOOK_AGAIN}`);
}
