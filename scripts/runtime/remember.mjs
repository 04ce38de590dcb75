// Makes the memory that readers' browsers wake Python from, and finds which functions of its program run then.
//   node remember.mjs <folder of the loader> <folder of the bytecode> <trimmed program> <marked program> <folder for what is made>
// Writes memory.wasm (docs/assets/js/memory.mjs tells its form) and seen.json, the numbers of those functions.
import chance from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join, sep } from "node:path";
import { pathToFileURL } from "node:url";

const [loader, bytecode, trimmed, marked, out] = process.argv.slice(2);
const scripts = new URL("../../docs/assets/js/", import.meta.url);
const { LIBRARY, add, load, wakePython } = await import(new URL("python.mjs", scripts));
const { pack } = await import(new URL("memory.mjs", scripts));

// What the browser's memory begins with; one that has grown is not what the program expects to find.
const HEAP = 31_457_280; // bytes
const BITS = 32;
const rehearsal = await readFile(new URL("rehearsal.py", import.meta.url), "utf8");
const [library, calc] = await Promise.all(["python_stdlib.zip", "calc.zip"].map(async (name) => new Uint8Array(await readFile(join(bytecode, name)))));

// The same sources give the same memory: nothing in it may come from the hour or from chance.
process.env.TZ = "UTC";
Date.now = () => 946_728_000_000; // 2000-01-01, noon
performance.now = () => 0;
Math.random = () => 0.5;
crypto.getRandomValues = chance.randomFillSync = (array) => array.fill(1);

try {
  const file = Buffer.concat(await remember());
  const seen = await observe(file.buffer.slice(file.byteOffset, file.byteOffset + file.length));
  await writeFile(join(out, "memory.wasm"), file);
  await writeFile(join(out, "seen.json"), JSON.stringify(seen));
} catch (error) {
  console.error(error.message);
  process.exit(1);
}
process.exit(0); // nothing runs any more, but the runtime may hold Node open

/** Start Python, import every calculator, and pack what is then in its memory. */
async function remember() {
  const { instantiate } = WebAssembly;
  const program = await WebAssembly.compile(await readFile(trimmed));
  WebAssembly.instantiate = async (source, imports) => {
    if (!imports?.env) return instantiate(source, imports); // a small one of the loader's own
    return { module: program, instance: await instantiate(program, imports) };
  };
  const python = await load(loader + sep, {
    stdLibURL: join(bytecode, "python_stdlib.zip"),
    _makeSnapshot: true,
    env: { PYTHONHASHSEED: "0", TZ: "UTC" },
  });
  WebAssembly.instantiate = instantiate;
  add(python, "calc", calc);
  rehearse(python, "work_one");
  const memory = python._module.HEAPU8;
  if (memory.length !== HEAP) throw new Error(`Python's memory has grown to ${memory.length} bytes; a browser's begins with ${HEAP}.`);
  return pack(memory, python._api.serializeHiwireState());
}

/** Wake that memory with the marked program, rehearse all that calculators can be asked, and read the marks. */
async function observe(memory) {
  const program = await WebAssembly.compile(await readFile(marked));
  const { instantiate } = WebAssembly;
  let exports;
  WebAssembly.instantiate = async (source, imports) => {
    const made = await instantiate(source, imports);
    if (source === program) ({ exports } = made);
    return made;
  };
  const { python } = await wakePython(loader + sep, Promise.resolve(memory), {
    hot: Promise.resolve(program),
    cold() {
      throw new Error("The marked program is whole.");
    },
  });
  add(python, LIBRARY, library);
  add(python, "calc", calc);
  rehearse(python, "rehearse");
  const seen = [];
  for (let i = 0; `seen${i}` in exports; i++) {
    for (let bit = 0; bit < BITS; bit++) if ((exports[`seen${i}`].value >>> bit) & 1) seen.push(i * BITS + bit);
  }
  return seen;
}

/** Run a function of rehearsal.py, and leave nothing of it. */
function rehearse(python, name) {
  python.runPython(`exec(${JSON.stringify(rehearsal)}, here := {}); here["${name}"](); del here; import gc; gc.collect()`);
}
