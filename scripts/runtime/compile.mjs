// Starts the runtime under Node and lets it make its own bytecode.
//   node compile.mjs <folder of the npm package pyodide> <library> <folder of calc> <folder of segno> <folder for what is made>
import { readFile, writeFile } from "node:fs/promises";
import { pathToFileURL } from "node:url";
import { join, sep } from "node:path";

const [runtime, library, calc, segno, out] = /** @type {[string, string, string, string, string]} */ (process.argv.slice(2));
const { loadPyodide } = /** @type {typeof import("pyodide")} */ (await import(pathToFileURL(join(runtime, "pyodide.mjs")).href));

// The order inside sets is part of the bytecode: a fixed seed makes two builds the same.
const python = await loadPyodide({ indexURL: runtime + sep, stdLibURL: library, env: { PYTHONHASHSEED: "0" } });
python.mountNodeFS("/source/calc", calc);
python.mountNodeFS("/source/segno", segno);
python.mountNodeFS("/out", out);
python.FS.writeFile("/source/rehearsal.py", await readFile(new URL("rehearsal.py", import.meta.url)));
python.runPython(await readFile(new URL("inside.py", import.meta.url), "utf8"));
try {
  python.globals.get("make")("/source/calc", "/out");
} catch (error) {
  console.error(/** @type {Error} */ (error).message);
  process.exit(1);
}

// The runtime asks for its list of packages at every start; none of them is used here.
const { info } = JSON.parse(await readFile(join(runtime, "pyodide-lock.json"), "utf8"));
await writeFile(join(out, "pyodide-lock.json"), JSON.stringify({ info, packages: {} }));
process.exit(0); // nothing runs any more, but the runtime may hold Node open
