// Python's memory, as it stands once everything is imported, kept from one visit to the next: waking it
// takes a fraction of a start. It is made on the device, by a worker of its own, of a Python that never saw
// a reader's entry; that costs a second and a dozen megabytes once for each edition.
//
// Only the pages of memory that hold something are kept (about half): first their numbers, then they.

const PAGE = 4096; // bytes
const CACHE = "sizebook memory"; // named apart from the editions, which the service worker tidies away
const PLACE = new URL("memory", import.meta.url).href; // two copies of the handbook may share a host

/** @returns {Promise<Uint8Array>}  rejects where there is none, or another build's */
export async function read(build) {
  const kept = await (await caches.open(CACHE)).match(PLACE);
  if (kept?.headers.get("build") !== build) throw new Error("no memory is kept of this build");
  return expand(await kept.arrayBuffer());
}

/** Keep a memory in place of the older one. */
export async function write(build, memory) {
  await (await caches.open(CACHE)).put(PLACE, new Response(compact(memory), { headers: { build } }));
}

export function compact(memory) {
  const words = new Uint32Array(memory.buffer, memory.byteOffset, memory.byteLength / 4);
  const pages = [];
  for (let start = 0; start < words.length; start += PAGE / 4) {
    const end = Math.min(start + PAGE / 4, words.length);
    for (let at = start; at < end; at++) {
      if (words[at]) {
        pages.push(start / (PAGE / 4));
        break;
      }
    }
  }
  const head = Uint32Array.from([memory.byteLength, pages.length, ...pages]);
  return new Blob([head, ...pages.map((page) => memory.subarray(page * PAGE, (page + 1) * PAGE))]);
}

export function expand(buffer) {
  const [size, count] = new Uint32Array(buffer, 0, 2);
  const pages = new Uint32Array(buffer, 8, count);
  const memory = new Uint8Array(size);
  let from = 8 + count * 4;
  for (const page of pages) {
    const length = Math.min(PAGE, size - page * PAGE);
    memory.set(new Uint8Array(buffer, from, length), page * PAGE);
    from += length;
  }
  return memory;
}
