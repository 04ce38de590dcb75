// The runtime's program, in two parts (scripts/runtime/split.py): `hot` with the functions that calculators
// were seen to run, and `cold` with all of them, fetched when the first of the others is called.

// A module that gives a function of JavaScript's a place in a table: (import "a" "a" (func)) (export "a" (func 0)).
const PLACED = Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 2, 7, 1, 1, 97, 1, 97, 0, 0, 7, 5, 1, 1, 97, 0, 0);

/**
 * @param {WebAssembly.Module} hot
 * @param {() => BufferSource} cold  gets the other part while the program stands still
 * @returns {Promise<WebAssembly.Instance>}
 */
export async function instantiate(hot, imports, cold) {
  const { exports } = await WebAssembly.instantiate(hot, imports).then((instance) => instance);
  const place = placer();
  // A function that is not in the hot part calls the first of this table, and then itself in it.
  exports.cold.set(0, place(() => {
    new WebAssembly.Instance(new WebAssembly.Module(cold()), { ...imports, parts: exports });
    exports.cold.set(0, place(() => {}));
  }));
  return { exports };
}

function placer() {
  const module = new WebAssembly.Module(PLACED);
  return (a) => new WebAssembly.Instance(module, { a: { a } }).exports.a;
}
