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

// Pages and what finds them, and what draws a size sheet's code: kept as they are opened, and all of them once the page says that the line
// may be used for it (offline.mjs).
/** @param {string} path */
const isLater = (path) => /.\/index\.html$|^search\/|\/codes\.zip$/.test(path);

worker.addEventListener("install", (event) => event.waitUntil(fill((path) => !isLater(path))));
worker.addEventListener("activate", (event) => event.waitUntil(clear()));
worker.addEventListener("message", (event) => {
  // Only the reader's word makes a new build take the place of the one that the open pages came from.
  if (event.data.call === "activate") worker.skipWaiting();
  // What is not kept yet, in files, with the page that asks among those kept; and the same once all has been fetched that can be.
  if (event.data.call === "missing") event.waitUntil(keepPage(event.data.page).catch(() => {}).then(missing).then((count) => event.ports[0]?.postMessage(count)));
  if (event.data.call === "rest") event.waitUntil(fill(() => true).catch(() => {}).then(missing).then((count) => event.ports[0]?.postMessage(count)));
  // A page that came from the network before this worker stood ready may use it, if it is of the same build.
  if (event.data.call === "claim" && BUILD.startsWith(`${event.data.build}-`)) event.waitUntil(worker.clients.claim());
});
worker.addEventListener("fetch", (event) => {
  const { method, url, mode } = event.request;
  if (method !== "GET" || !url.startsWith(SCOPE)) return;
  const address = new URL(url);
  address.hash = ""; // a browser keeps it by itself where it is sent on
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
  if (kept || !(SELDOM.test(path) || isLater(path))) return kept ?? fetch(request);
  try {
    const response = await load(path);
    await cache.put(SCOPE + path, response.clone()).catch(() => {}); // it serves though it cannot be kept
    return response;
  } catch (error) {
    if (request.mode !== "navigate") throw error;
    worker.registration.update().catch(() => {});
    return new Response(NOT_HERE, { status: 503, headers: { "Content-Type": "text/html; charset=utf-8", "Content-Security-Policy": "default-src 'none'; style-src 'unsafe-inline'" } });
  }
}

// No page of another edition is shown in the place of one that is not here: its numbers might be others.
const NOT_HERE = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<meta name="color-scheme" content="light dark"><title>Not on this device yet</title>
<body style="font: 1.1rem/1.5 system-ui; max-width: 34rem; margin: 2rem auto; padding: 0 1rem"><h1>Not on this device yet</h1>
<p>This page was never opened here, and could not be fetched just now: there is no signal, or a new edition of the handbook is out.</p>
<p>Pages that you have opened before work. <a href="${SCOPE}">Go to the bench</a>: it offers the new edition where there is one.</p></body></html>`;

/** @param {string} url  of a page that was there before this worker */
async function keepPage(url) {
  const path = pathOf(url.replace(/[?#].*/, ""));
  const cache = await caches.open(CACHE);
  if (isLater(path) && path in FILES && !(await cache.match(SCOPE + path))) await cache.put(SCOPE + path, await load(path));
}

/** How many files of this edition are not kept. */
async function missing() {
  const there = new Set((await (await caches.open(CACHE)).keys()).map(({ url }) => url));
  return Object.keys(FILES).filter((path) => !there.has(SCOPE + path) && !SELDOM.test(path)).length;
}

/**
 * Bring files of this build into its cache, or fail; the browser tries again at a later visit. What an older build holds costs no line, and comes along.
 * @param {(path: string) => boolean} wanted  what is worth asking the line for
 */
async function fill(wanted) {
  const cache = await caches.open(CACHE);
  const older = await olderFiles();
  await cache.put(LIST, new Response(JSON.stringify(FILES)));
  const there = new Set((await cache.keys()).map(({ url }) => url));
  const missing = Object.keys(FILES).filter((path) => !there.has(SCOPE + path) && !SELDOM.test(path));
  const work = async () => {
    for (let path; (path = missing.pop()); ) {
      // A device that had all of the older edition is to have all of this one before it is offered.
      const response = (await older.get(FILES[path])?.()) ?? ((wanted(path) || older.size) && (await load(path)));
      if (response) await cache.put(SCOPE + path, response);
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
