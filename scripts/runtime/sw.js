// Keeps one whole build of the handbook on the device, and serves that build and nothing else: pages,
// scripts and runtime of two builds are never mixed. `offline.py` fills in the next two lines.
const BUILD = "";
/** @type {Record<string, string>} */
const FILES = {}; // path → integrity ("sha256-…"); a page by its index.html

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
const SCOPE = worker.registration.scope;
const OURS = `sizebook ${SCOPE} `; // two copies of the handbook may share a host
const CACHE = OURS + BUILD;
const LIST = `${SCOPE}files of this build`; // what a cache holds, kept in it for the next build to compare
const AT_ONCE = 6;
// Needed only by a browser that Python's memory cannot be woken in: kept when it has been asked for.
const SELDOM = Object.keys(FILES).some((path) => path.endsWith("/memory.wasm")) ? /^runtime\/[^/]+\/pyodide\.asm\.wasm$/ : /^$/;

worker.addEventListener("install", (event) => event.waitUntil(fill()));
worker.addEventListener("activate", (event) => event.waitUntil(clear()));
worker.addEventListener("message", (event) => {
  // Only the reader's word makes a new build take the place of the one that the open pages came from.
  if (event.data.call === "activate") worker.skipWaiting();
  // A page that came from the network before this worker stood ready may use it, if it is of the same build.
  if (event.data.call === "claim" && BUILD.startsWith(`${event.data.build}-`)) event.waitUntil(worker.clients.claim());
});
worker.addEventListener("fetch", (event) => {
  const { method, url, mode } = event.request;
  if (method !== "GET" || !url.startsWith(SCOPE)) return;
  const address = new URL(url);
  if (mode === "navigate") address.search = "";
  const path = pathOf(address.href);
  if (path in FILES) event.respondWith(serve(path, event.request));
  else if (mode === "navigate" && `${path}/index.html` in FILES) event.respondWith(Response.redirect(`${address.href}/`));
});

/** @param {string} url */
const pathOf = (url) => url.slice(SCOPE.length).replace(/#.*/, "").replace(/(^|\/)$/, "$1index.html");
// Asked for as a reader's link asks for it: some hosts redirect from index.html to its folder.
/** @param {string} path */
const addressOf = (path) => SCOPE + path.replace(/(^|\/)index\.html$/, "$1");

/** @type {Promise<Cache> | null} */
let opened = null; // once for the thirty files of a page

/** @param {string} path @param {Request} request */
async function serve(path, request) {
  let cache, kept;
  try {
    cache = await (opened ??= caches.open(CACHE));
    kept = await cache.match(SCOPE + path);
  } catch {
    opened = null; // a full or broken disk: what is kept cannot be read just now, but there may be a line
    return fetch(request);
  }
  if (kept || !SELDOM.test(path)) return kept ?? fetch(request);
  const response = await load(path);
  await cache.put(SCOPE + path, response.clone()).catch(() => {}); // it serves though it cannot be kept
  return response;
}

/** Bring every file of this build into its cache, or fail; the browser tries again at a later visit. */
async function fill() {
  const cache = await caches.open(CACHE);
  const older = await olderFiles();
  await cache.put(LIST, new Response(JSON.stringify(FILES)));
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const missing = Object.keys(FILES).filter((path) => !there.has(SCOPE + path) && !SELDOM.test(path));
  const work = async () => {
    for (let path; (path = missing.pop()); ) {
      await cache.put(SCOPE + path, (await older.get(FILES[path])?.()) ?? (await load(path)));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

/**
 * Integrity → how to read that content from a cache of an older build.
 * @returns {Promise<Map<string | undefined, () => Promise<Response | undefined>>>}
 */
async function olderFiles() {
  const older = new Map();
  for (const name of await caches.keys()) {
    if (!name.startsWith(OURS) || name === CACHE) continue;
    const cache = await caches.open(name);
    const files = (await (await cache.match(LIST))?.json()) ?? {};
    for (const [path, integrity] of Object.entries(files)) older.set(integrity, () => cache.match(SCOPE + path));
  }
  return older;
}

/**
 * Fetch a file of this very build: the browser refuses one whose content has another digest.
 * @param {string} path
 */
async function load(path) {
  const ask = (/** @type {RequestCache} */ cache) => fetch(new Request(addressOf(path), { integrity: FILES[path], cache }));
  // The runtime lies under names that change with its content, so what the page has just loaded will do.
  const response = path.startsWith("runtime/") ? await ask("default").catch(() => ask("reload")) : await ask("reload");
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  // A redirected response may not answer a navigation: keep its content only.
  return response.redirected ? new Response(response.body, { headers: response.headers }) : response;
}

async function clear() {
  for (const name of await caches.keys()) {
    if (name.startsWith(OURS) && name !== CACHE) await caches.delete(name);
  }
}
