// Answers requests (a JSON list on stdin) as the reader's browser would, but under Node: the same start,
// the same bytecode.   node answers.mjs <python.mjs> <folder of the runtime> <calc.zip>
import { readFile } from "node:fs/promises";
import { text } from "node:stream/consumers";

const [start, runtime, calc] = process.argv.slice(2);
const { startPython } = await import(start);
const answer = await startPython(`${runtime}/`, readFile(calc).then((buffer) => new Uint8Array(buffer)));
const requests = JSON.parse(await text(process.stdin));
await new Promise((written) => process.stdout.write(JSON.stringify(requests.map((request) => answer(JSON.stringify(request)))), written));
process.exit(0);
