// Answers one request (JSON on stdin) with a wheel in the stock runtime:   node wheel.mjs <pyodide> <wheel>
import { readFile } from "node:fs/promises";
import { text } from "node:stream/consumers";

const [runtime, wheel] = /** @type {[string, string]} */ (process.argv.slice(2));
const { loadPyodide } = /** @type {typeof import("pyodide")} */ (await import(`${runtime}/pyodide.mjs`));
const python = await loadPyodide({ indexURL: `${runtime}/` });
python.unpackArchive(new Uint8Array(await readFile(wheel)), "wheel");
const reply = python.pyimport("calc.page.live").answer(await text(process.stdin));
await new Promise((written) => process.stdout.write(reply, written));
process.exit(0);
