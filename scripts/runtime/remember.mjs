// Makes the memory that readers' browsers wake Python from, and finds which functions of its program run then.
//   node remember.mjs <folder of the loader> <folder of the bytecode> <trimmed program> <marked program> <folder for what is made>
// Writes memory.wasm (docs/assets/js/memory.mjs tells its form) and seen.json, the numbers of those functions.
import chance from "node:crypto";
import { readFile, readdir, writeFile } from "node:fs/promises";
import { join, sep } from "node:path";
import { pack } from "../../docs/assets/js/memory.mjs";
import { LIBRARY, add, addStation, load, wakePython } from "../../docs/assets/js/python.mjs";

const [loader, bytecode, trimmed, marked, out] = /** @type {[string, string, string, string, string]} */ (process.argv.slice(2));

// What the browser's memory begins with; one that has grown is not what the program expects to find.
const HEAP = 31_457_280; // bytes
const BITS = 32;
const rehearsal = await readFile(new URL("rehearsal.py", import.meta.url), "utf8");
const read = async (/** @type {string} */ name) => new Uint8Array(await readFile(join(bytecode, name)));
const [library, calc] = await Promise.all([read("python_stdlib.zip"), read("calc.zip")]);
const core = await readFile(join(bytecode, "core.json"), "utf8");
const stations = (await readdir(join(bytecode, "stations"))).sort().map((file) => file.replace(".zip", ""));

// The same sources give the same memory: nothing in it may come from the hour, from chance, or from where it is made.
process.argv[1] = "./this.program"; // what a browser calls it: the runtime keeps the path that it was started by
process.env.TZ = "UTC";
Date.now = () => 946_728_000_000; // 2000-01-01, noon
performance.now = () => 0;
Math.random = () => 0.5;
const ones = (/** @type {Uint8Array} */ array) => array.fill(1);
Object.assign(crypto, { getRandomValues: ones });
Object.assign(chance, { randomFillSync: ones });

try {
  const file = Buffer.concat(await remember());
  const seen = await observe(file.buffer.slice(file.byteOffset, file.byteOffset + file.length));
  await writeFile(join(out, "memory.wasm"), file);
  await writeFile(join(out, "seen.json"), JSON.stringify(seen));
} catch (error) {
  console.error(/** @type {Error} */ (error).message);
  process.exit(1);
}
process.exit(0); // nothing runs any more, but the runtime may hold Node open


/**
 * @typedef {import("pyodide").PyodideInterface & {_module: {HEAPU8: Uint8Array}, _api: {serializeHiwireState(): object}}} Inside  the runtime with what is no part of its interface
 */

/** Start Python, import all but the calculators, and pack what is then in its memory. */
async function remember() {
  const { instantiate } = WebAssembly;
  const program = await WebAssembly.compile(await readFile(trimmed));
  Object.assign(WebAssembly, {
    async instantiate(/** @type {WebAssembly.Module} */ source, /** @type {WebAssembly.Imports} */ imports) {
      if (!imports?.env) return instantiate(source, imports); // a small one of the loader's own
      return { module: program, instance: await instantiate(program, imports) };
    },
  });
  const python = /** @type {Inside} */ (await load(loader + sep, {
    stdLibURL: join(bytecode, "python_stdlib.zip"),
    _makeSnapshot: true,
    env: { PYTHONHASHSEED: "0", TZ: "UTC" },
  }));
  WebAssembly.instantiate = instantiate;
  add(python, "calc", calc);
  const first = python.runPython("from calc.stations import index; index.STATIONS[0]");
  addStation(python, first, await read(`stations/${first}.zip`));
  rehearse(python, `work_one(${core})`);
  const memory = python._module.HEAPU8;
  if (memory.length !== HEAP) throw new Error(`Python's memory has grown to ${memory.length} bytes; a browser's begins with ${HEAP}.`);
  return pack(memory, python._api.serializeHiwireState());
}

/**
 * Wake that memory with the marked program, and read the marks of all that readers are known to do: asking
 * before a station is there and then everything; every example, all stations at hand; a station's examples, as its page has them.
 * What runs hangs on what ran before (a table that grows, the hour of a collection), so each begins with a Python newly woken.
 * @param {ArrayBuffer} memory
 */
async function observe(memory) {
  const program = await WebAssembly.compile(await readFile(marked));
  /** @type {Set<number>} */ const seen = new Set();
  const examples = (/** @type {Woken} */ { answer, python }, /** @type {string[]} */ names) => {
    for (const name of names) {
      const ids = /** @type {string[]} */ (JSON.parse(python.runPython(`
        import json; from calc.stations import index; json.dumps(index.station(${JSON.stringify(name)}).CALCULATORS)`)));
      for (const calculator of ids) {
        answer(JSON.stringify({ call: "evaluate", calculator, anchor: calculator, entries: {}, system: "metric" }));
      }
    }
  };
  const order = /** @type {string[]} */ (JSON.parse((await woken(program, memory)).python.runPython("import json; from calc.stations import index; json.dumps(index.STATIONS)")));
  const walks = [
    async (/** @type {Woken} */ { answer, python }) => {
      without(answer, python.runPython("from calc.stations import index; index.ids()[0]"));
      add(python, LIBRARY, library);
      add(python, "calc", calc);
      for (const name of stations) addStation(python, name, await read(`stations/${name}.zip`));
      rehearse(python, "rehearse()");
    },
    async (/** @type {Woken} */ one) => {
      for (const name of stations) addStation(one.python, name, await read(`stations/${name}.zip`));
      examples(one, order);
    },
    ...order.map((name) => async (/** @type {Woken} */ one) => {
      addStation(one.python, name, await read(`stations/${name}.zip`));
      examples(one, [name]);
    }),
  ];
  for (const walk of walks) {
    const one = await woken(program, memory);
    await walk(one);
    for (let i = 0, marks; (marks = one.exports[`seen${i}`]); i++) {
      for (let bit = 0; bit < BITS; bit++) if ((marks.value >>> bit) & 1) seen.add(i * BITS + bit);
    }
  }
  return [...seen].sort((a, b) => a - b);
}

/**
 * @typedef {{answer: (request: string) => string, python: import("pyodide").PyodideInterface, exports: Record<string, WebAssembly.Global>}} Woken
 */

/**
 * A Python newly woken with the marked program, and that program's exports.
 * @param {WebAssembly.Module} program @param {ArrayBuffer} memory
 * @returns {Promise<Woken>}
 */
async function woken(program, memory) {
  const { instantiate } = WebAssembly;
  let exports = /** @type {Record<string, WebAssembly.Global> | null} */ (null);
  Object.assign(WebAssembly, {
    async instantiate(/** @type {WebAssembly.Module} */ source, /** @type {WebAssembly.Imports} */ imports) {
      const made = await instantiate(source, imports);
      if (source === program) exports = /** @type {Record<string, WebAssembly.Global>} */ (made.exports);
      return made;
    },
  });
  const { answer, python } = await wakePython(loader + sep, Promise.resolve(memory), {
    hot: Promise.resolve(program),
    cold() {
      throw new Error("The marked program is whole.");
    },
  });
  WebAssembly.instantiate = instantiate;
  if (!exports) throw new Error("The marked program has not been begun.");
  return { answer, python, exports };
}

/**
 * Ask for a calculator before its station is there, as the page of a job does (worker.mjs): that fails as every
 * import without its file.
 * @param {(request: string) => string} answer @param {string} calculator
 */
function without(answer, calculator) {
  const asked = { call: "evaluate", calculator, entries: {}, system: "metric" };
  try {
    answer(JSON.stringify(asked));
  } catch {
    return;
  }
  throw new Error(`${calculator} is in the memory that every reader gets; it belongs to its station's part.`);
}

/**
 * Call a function of rehearsal.py, and leave nothing of it.
 * @param {import("pyodide").PyodideInterface} python @param {string} call
 */
function rehearse(python, call) {
  const script = `exec(${JSON.stringify(rehearsal)}, here := {}); exec(${JSON.stringify(call)}, here)`;
  python.runPython(`${script}; del here; import gc; gc.collect()`);
}
