// Python's memory as a file: only the pages that hold something, which is half of them. `pack` is called when
// the site is built, `pour` in the browser.
//
//     8 bytes   the head of a WebAssembly module, and with it of a file that static hosts compress
//     6         section 0, its size in five bytes
//     10        its name, 9 bytes long: "of Python"
//     then numbers of 4 bytes: count of pages, length of the state, number of each page
//     then the state as JSON, and the pages

const PAGE = 4096; // bytes
const HEAD = 24;

/** @param {Uint8Array} memory @param {object} state @returns {Uint8Array[]}  parts of the file */
export function pack(memory, state) {
  const words = new Uint32Array(memory.buffer, memory.byteOffset, memory.byteLength / 4);
  /** @type {number[]} */
  const pages = [];
  for (let at = 0; at < words.length; at += PAGE / 4) {
    if (words.subarray(at, at + PAGE / 4).some(Boolean)) pages.push(at / (PAGE / 4));
  }
  const json = new TextEncoder().encode(JSON.stringify(state));
  const numbers = new Uint8Array(Uint32Array.of(pages.length, json.length, ...pages).buffer);
  const content = [numbers, json, ...pages.map((page) => memory.subarray(page * PAGE, (page + 1) * PAGE))];
  const size = 10 + content.reduce((total, part) => total + part.length, 0);
  const head = Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 0, ...five(size), 9, ...new TextEncoder().encode("of Python"));
  return [head, ...content];
}

/**
 * Fill the memory of a program that has just begun; returns the state.
 * @param {ArrayBuffer} file @param {Uint8Array} memory
 */
export function pour(file, memory) {
  const [count = 0, length = 0] = new Uint32Array(file, HEAD, 2);
  const pages = new Uint32Array(file, HEAD + 8, count);
  const json = HEAD + 8 + 4 * count;
  let from = json + length;
  for (let at = 0, next; at < count; at = next) {
    const first = /** @type {number} */ (pages[at]);
    next = at + 1;
    while (next < count && pages[next] === first + next - at) next++;
    memory.set(new Uint8Array(file, from, (next - at) * PAGE), first * PAGE);
    from += (next - at) * PAGE;
  }
  return JSON.parse(new TextDecoder().decode(new Uint8Array(file, json, length)));
}

/** A number as LEB128, in five bytes whatever it is. @param {number} number */
const five = (number) => [0, 7, 14, 21, 28].map((shift) => ((number >>> shift) & 0x7f) | (shift < 28 ? 0x80 : 0));
