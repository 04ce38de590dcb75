// The jobs on this device, in IndexedDB: what is kept here survives a reload, a crash, two tabs at once and a
// new edition of the handbook. A job is a text that only Python reads (calc/job/record.py); here it is carried
// and stored, with what the device itself knows of it:
//
//     {key, kind: "job" | "sheet", text, rev, kept: time, origin, exported: {rev, at} | null}
//
// `key` is this device's own, so that a sheet from elsewhere stands beside the job that it tells of, whatever
// names it bears. `rev` counts the changes: whoever changes a text names the one that the change was made from.

import { openDB } from "./idb.mjs";
import { runtime } from "./runtime.mjs";
import { system } from "./units.mjs";

const NAME = "sizebook";
const FORM = 1; // of the database; the jobs in it have forms of their own
const CURRENT = "sizebook:job"; // in localStorage: which job is worked on, for all tabs
const INITIALS = "sizebook:by";

/** What the device could not do, in a sentence; `text` is the job that it could not keep. */
export class StoreError extends Error {
  /** @param {string} message @param {"full" | "newer" | "unreadable" | "closed" | "gone" | "unkept"} code */
  constructor(message, code, text = "") {
    super(message);
    this.code = code;
    this.text = text;
  }
}

// Tells other parts of this page, and other tabs, which job has changed (`detail` is its key).
export const changes = new EventTarget();
const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel("sizebook:jobs") : null;
if (channel) channel.onmessage = ({ data }) => changes.dispatchEvent(new CustomEvent("change", { detail: data }));
addEventListener("storage", ({ key }) => (key === CURRENT || key === null) && changes.dispatchEvent(new CustomEvent("change", { detail: null })));

/** @param {string | null} key */
function tell(key) {
  channel?.postMessage(key);
  changes.dispatchEvent(new CustomEvent("change", { detail: key }));
}

/**
 * @typedef {{jobs: {key: string, value: Held}, parts: {key: string, value: {code: string, kept: string}}}} Device
 */

/** @type {Promise<import("idb").IDBPDatabase<Device>> | null} */
let opened = null;

function database() {
  opened ??= /** @type {NonNullable<typeof opened>} */ (openDB(NAME, FORM, {
    // It waits by itself, and goes on once that tab is closed.
    blocked: () => changes.dispatchEvent(new CustomEvent("blocked", { detail: "Another tab of this handbook, of an older edition, holds the jobs on this device. Close the other tabs; this page then goes on by itself." })),
    upgrade(db) {
      db.createObjectStore("jobs", { keyPath: "key" });
      db.createObjectStore("parts", { keyPath: "code" }); // of a sheet that needs several codes, until all are there
    },
    // A newer edition in another tab waits for this one to let go; the browser may also cut us off (a phone asleep).
    blocking: (_, __, { target }) => (/** @type {IDBDatabase} */ (target).close(), (opened = null)),
    terminated: () => void (opened = null),
  }).catch((error) => {
    opened = null;
    throw error;
  }));
  return opened;
}

/**
 * Do something with the database; once more where the browser had cut the connection without a word.
 * @template T @param {(db: import("idb").IDBPDatabase<Device>) => Promise<T>} work
 */
async function using(work) {
  try {
    try {
      return await work(await database());
    } catch (error) {
      if (/** @type {Error} */ (error).name !== "InvalidStateError") throw error;
      opened = null;
      return await work(await database());
    }
  } catch (error) {
    throw plainly(/** @type {Error & {inner?: Error}} */ (error));
  }
}

/** @param {Error & {inner?: Error}} error */
function plainly(error) {
  if (error instanceof StoreError) return error;
  if (error.name === "QuotaExceededError" || error.inner?.name === "QuotaExceededError")
    return new StoreError("This device has no room left, so this was not kept. What was kept before is still there. Export the job now, make room on the device, then try again.", "full");
  if (error.name === "VersionError")
    return new StoreError("The jobs on this device were stored by a newer edition of this handbook. They are untouched; reload the page to get that edition.", "newer");
  if (["UnknownError", "DataError", "NotReadableError", "EncodingError"].includes(error.name))
    return new StoreError(`What this browser keeps for the handbook cannot be read or written just now (${error.message || error.name}). Close the browser and open it again. If it stays so, what was kept here is lost, and jobs are brought in again from their files.`, "unreadable");
  return new StoreError(`This browser does not let the handbook keep anything (${error.message || error.name}). Private windows and strict settings do that.`, "closed");
}

/**
 * Write in one transaction that is on the disk when it is done.
 * @template {keyof Device} S @template T
 * @param {S} store @param {(store: import("idb").IDBPObjectStore<Device, [S], S, "readwrite">) => Promise<T>} work
 */
async function write(store, work) {
  return using(async (db) => {
    const transaction = db.transaction(store, "readwrite", { durability: "strict" });
    const [done] = await Promise.all([work(transaction.store), transaction.done]).catch(async (error) => {
      throw transaction.error ?? error;
    });
    return done;
  });
}

export const all = () => using((db) => db.getAll("jobs"));
/** @param {string} key */
export const get = (key) => using((db) => db.get("jobs", key));

/**
 * Keep a text as a new job or sheet; returns its key. `once`: where the same came here before, that one stays
 * and its key is returned.
 * @param {Kind} kind @param {string} text
 */
export async function keep(kind, text, origin = "", { once = false } = {}) {
  let key = /** @type {string} */ (crypto.randomUUID?.()) ?? [...crypto.getRandomValues(new Uint32Array(4))].map((n) => n.toString(36)).join("");
  try {
    await write("jobs", async (jobs) => {
      const twin = once && (await jobs.getAll()).find((held) => held.kind === kind && held.origin === origin);
      if (twin) key = twin.key;
      else await jobs.add({ key, kind, text, rev: 1, kept: now(), origin, exported: null });
    });
  } catch (error) {
    throw withText(error, text);
  }
  tell(key);
  return key;
}

/** A job that found no room goes with what says so. @param {unknown} error @param {string} text */
function withText(error, text) {
  if (error instanceof StoreError && error.code === "full") error.text = text;
  return error;
}

/**
 * Change a job: `make(text)` gives the new text, or null where nothing is to be changed. Where another tab was
 * faster, it is made anew from what that tab stored: of two additions neither is lost.
 * @param {string} key @param {(text: string) => Promise<string | null>} make
 */
export async function change(key, make) {
  for (;;) {
    const before = await get(key);
    if (!before) throw new StoreError("This job is no longer on this device; it was removed in another tab.", "gone");
    const text = await make(before.text);
    if (text === null || text === before.text) return text;
    try {
      const stored = await write("jobs", async (jobs) => {
        const there = await jobs.get(key);
        if (!there || there.rev !== before.rev) return false;
        await jobs.put({ ...there, text, rev: there.rev + 1 });
        return true;
      });
      if (stored) {
        tell(key);
        return text;
      }
    } catch (error) {
      throw withText(error, text);
    }
  }
}

/**
 * Remember that a job was exported. The file is there whether or not there is room for that.
 * @param {string} key @param {number} rev
 */
export async function exported(key, rev) {
  await write("jobs", async (jobs) => {
    const there = await jobs.get(key);
    if (there) await jobs.put({ ...there, exported: { rev, at: now() } });
  }).catch((error) => {
    if (error.code !== "full") throw error;
  });
  tell(key);
}

/** @param {string} key */
export async function remove(key) {
  await write("jobs", (jobs) => jobs.delete(key));
  if (current() === key) makeCurrent(null);
  tell(key);
}

// A sheet may need several codes, each of which opens a page of its own: kept until all are there.
export const parts = () => using(async (db) => (await db.getAll("parts")).map(({ code }) => code));
/** @param {string} code */
export const keepPart = (code) => write("parts", (parts) => parts.put({ code, kept: now() }));
/** @param {string[]} codes */
export const forgetParts = (codes) => write("parts", (parts) => Promise.all(codes.map((code) => parts.delete(code))));

// --- Which job is worked on, and by whom --------------------------------------------------------

export const current = () => remembered(CURRENT) || null;

/** @param {string | null} key */
export function makeCurrent(key) {
  remember(CURRENT, key ?? "");
  tell(null);
}

export const initials = () => remembered(INITIALS);
/** @param {string} text */
export const setInitials = (text) => remember(INITIALS, text.trim());

/** @param {string} name */
function remembered(name) {
  try {
    return localStorage.getItem(name) ?? "";
  } catch {
    return "";
  }
}

/** @param {string} name @param {string} text */
function remember(name, text) {
  try {
    if (text) localStorage.setItem(name, text);
    else localStorage.removeItem(name);
  } catch {
    // Storage may be forbidden: then nothing can be kept, and the store says so.
  }
}

// --- Asking Python ------------------------------------------------------------------------------

/** @template {Call} C @typedef {Calls[C]["asked"] & {needs?: string[]}} Fields */

/**
 * Ask for anything about a job. What changes one has a lane of its own, so that no later request overtakes it.
 * @template {Call} C
 * @overload
 * @param {C} call @param {Fields<C>} fields
 * @returns {Promise<Reply<C>>}
 */
/**
 * @template {Call} C
 * @overload
 * @param {C} call @param {Fields<C>} fields @param {string} lane
 * @returns {Promise<Reply<C> | null>} null where a later request of the same lane overtook this one
 */
/** @param {Call} call @param {object} fields @param {unknown} lane */
export function ask(call, fields, lane = Symbol(call)) {
  const request = { call, system: system(), now: now(), by: initials(), needs: [], ...fields };
  return runtime.ask(/** @type {Asked} */ (/** @type {unknown} */ (request)), lane);
}

/** The time here, with its distance from UTC, to the minute. */
export function now() {
  const time = new Date();
  const two = (/** @type {number} */ n) => String(Math.trunc(Math.abs(n))).padStart(2, "0");
  const off = -time.getTimezoneOffset();
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}T${two(time.getHours())}:${two(time.getMinutes())}${off < 0 ? "-" : "+"}${two(off / 60)}:${two(off % 60)}`;
}

// --- How safe it is -----------------------------------------------------------------------------

/** Ask the browser to keep what is here even when it wants room; some ask the reader. */
export async function askToPersist() {
  try {
    return await navigator.storage.persist();
  } catch {
    return false;
  }
}

/** "persistent", "may-be-cleared", or "unknown" where the browser does not say. */
export async function safety() {
  try {
    return (await navigator.storage.persisted()) ? "persistent" : "may-be-cleared";
  } catch {
    return "unknown";
  }
}

/** A button that hands over what could not be kept. @param {string} words @param {string} text */
export function exportButton(words, text) {
  const button = document.createElement("button");
  Object.assign(button, { type: "button", textContent: words });
  button.addEventListener("click", () => download("sizebook-job.json", text));
  return button;
}

/** Hand a text to the reader as a file. @param {string} name @param {string} text */
export function download(name, text) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
