// The runtime's program, in two parts (scripts/runtime/split.py): `hot` with the functions that calculators
// were seen to run, and `cold` with all of them, fetched when the first of the others is called.

// A module that gives a function of JavaScript's a place in a table: (import "a" "a" (func)) (export "a" (func 0)).
const PLACED = Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 2, 7, 1, 1, 97, 1, 97, 0, 0, 7, 5, 1, 1, 97, 0, 0);

/**
 * @typedef {{memory: WebAssembly.Memory, cold: WebAssembly.Table, table1: WebAssembly.Table, table2: WebAssembly.Table}} Tables  what python.mjs and this one know of the program
 * @param {WebAssembly.Module} hot
 * @param {WebAssembly.Imports} imports
 * @param {() => BufferSource} cold  gets the other part while the program stands still
 */
export async function instantiate(hot, imports, cold) {
  const instance = await WebAssembly.instantiate(hot, imports).then((instance) => instance);
  const exports = /** @type {WebAssembly.Exports & Tables} */ (instance.exports);
  const place = placer();
  // A function that is not in the hot part calls the first of this table, and then itself in it.
  exports.cold.set(0, place(() => {
    new WebAssembly.Instance(new WebAssembly.Module(cold()), { ...imports, parts: exports });
    exports.cold.set(0, place(() => {}));
  }));
  return { exports };
}

/** @returns {(a: () => void) => unknown} */
function placer() {
  const module = new WebAssembly.Module(PLACED);
  return (a) => new WebAssembly.Instance(module, { a: { a } }).exports.a;
}
