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

function tell(key) {
  channel?.postMessage(key);
  changes.dispatchEvent(new CustomEvent("change", { detail: key }));
}

let opened = null;

function database() {
  opened ??= openDB(NAME, FORM, {
    // It waits by itself, and goes on once that tab is closed.
    blocked: () => changes.dispatchEvent(new CustomEvent("blocked", { detail: "Another tab of this handbook, of an older edition, holds the jobs on this device. Close the other tabs; this page then goes on by itself." })),
    upgrade(db) {
      db.createObjectStore("jobs", { keyPath: "key" });
      db.createObjectStore("parts", { keyPath: "code" }); // of a sheet that needs several codes, until all are there
    },
    // A newer edition in another tab waits for this one to let go; the browser may also cut us off (a phone asleep).
    blocking: (_, __, { target }) => (target.close(), (opened = null)),
    terminated: () => (opened = null),
  }).catch((error) => {
    opened = null;
    throw error;
  });
  return opened;
}

/** Do something with the database; once more where the browser had cut the connection without a word. */
async function using(work) {
  try {
    try {
      return await work(await database());
    } catch (error) {
      if (error.name !== "InvalidStateError") throw error;
      opened = null;
      return await work(await database());
    }
  } catch (error) {
    throw plainly(error);
  }
}

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

/** Write in one transaction that is on the disk when it is done. */
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
export const get = (key) => using((db) => db.get("jobs", key));

/** Keep a text as a new job or sheet; returns its key. `once`: where the same came here before, that one stays and its key is returned. */
export async function keep(kind, text, origin = "", { once = false } = {}) {
  let key = crypto.randomUUID?.() ?? [...crypto.getRandomValues(new Uint32Array(4))].map((n) => n.toString(36)).join("");
  try {
    await write("jobs", async (jobs) => {
      const twin = once && (await jobs.getAll()).find((held) => held.kind === kind && held.origin === origin);
      if (twin) key = twin.key;
      else await jobs.add({ key, kind, text, rev: 1, kept: now(), origin, exported: null });
    });
  } catch (error) {
    if (error.code === "full") error.text = text;
    throw error;
  }
  tell(key);
  return key;
}

/**
 * Change a job: `make(text)` gives the new text, or null where nothing is to be changed. Where another tab was
 * faster, it is made anew from what that tab stored: of two additions neither is lost.
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
        if (there?.rev !== before.rev) return false;
        await jobs.put({ ...there, text, rev: there.rev + 1 });
        return true;
      });
      if (stored) {
        tell(key);
        return text;
      }
    } catch (error) {
      if (error.code === "full") error.text = text;
      throw error;
    }
  }
}

/** Remember that a job was exported. The file is there whether or not there is room for that. */
export async function exported(key, rev) {
  await write("jobs", async (jobs) => {
    const there = await jobs.get(key);
    if (there) await jobs.put({ ...there, exported: { rev, at: now() } });
  }).catch((error) => {
    if (error.code !== "full") throw error;
  });
  tell(key);
}

export async function remove(key) {
  await write("jobs", (jobs) => jobs.delete(key));
  if (current() === key) makeCurrent(null);
  tell(key);
}

// A sheet may need several codes, each of which opens a page of its own: kept until all are there.
export const parts = () => using(async (db) => (await db.getAll("parts")).map(({ code }) => code));
export const keepPart = (code) => write("parts", (parts) => parts.put({ code, kept: now() }));
export const forgetParts = (codes) => write("parts", (parts) => Promise.all(codes.map((code) => parts.delete(code))));

// --- Which job is worked on, and by whom --------------------------------------------------------

export const current = () => remembered(CURRENT) || null;

export function makeCurrent(key) {
  remember(CURRENT, key ?? "");
  tell(null);
}

export const initials = () => remembered(INITIALS);
export const setInitials = (text) => remember(INITIALS, text.trim());

function remembered(name) {
  try {
    return localStorage.getItem(name) ?? "";
  } catch {
    return "";
  }
}

function remember(name, text) {
  try {
    if (text) localStorage.setItem(name, text);
    else localStorage.removeItem(name);
  } catch {
    // Storage may be forbidden: then nothing can be kept, and the store says so.
  }
}

// --- Asking Python ------------------------------------------------------------------------------

/**
 * Ask for anything about a job. What changes one has a lane of its own, so that no later request overtakes it.
 * @returns {Promise<object|null>} null where a later request of the same lane overtook this one
 */
export function ask(call, fields, lane = Symbol(call)) {
  return runtime.ask({ call, system: system(), now: now(), by: initials(), needs: [], ...fields }, lane);
}

/** The time here, with its distance from UTC, to the minute. */
export function now() {
  const time = new Date();
  const two = (n) => String(Math.trunc(Math.abs(n))).padStart(2, "0");
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

/** Hand a text to the reader as a file. */
export function download(name, text) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
