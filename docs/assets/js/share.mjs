// A result that leaves this device, and one that comes in: the link of what stands in a calculator, and a link that the page
// was opened with. What a link holds is written and read in Python (calc/page/link.py). Loaded when it is needed (live.mjs).

import { runtime } from "./runtime.mjs";
import { chooseEngine } from "./standing.mjs";
import { choose } from "./units.mjs";

/** @import { LiveCalculator } from "./live.mjs" */

const SITE = new URL("../../", import.meta.url);
const FINDS = "check-a-number/"; // leads to every calculator's page

const COPIED = "The link of this result is copied.";
const COPY = "The link of this result:";

/**
 * Give the device, or else the clipboard, or else the reader, the link of what stands in a calculator.
 * @param {LiveCalculator} live
 */
export async function share(live) {
  const reply = await runtime.ask(live.asShared, Symbol("share"));
  if (!reply?.ok) return say(live, reply?.errors[0].message ?? "");
  const { title, text } = reply;
  const url = addressOf(live, reply.fragment);
  if (navigator.share) {
    try {
      return await navigator.share({ title, text: `${title}. ${text}`, url });
    } catch (error) {
      if (/** @type {DOMException} */ (error).name === "AbortError") return; // the reader thought better of it
    }
  }
  try {
    await navigator.clipboard.writeText(url);
    say(live, COPIED).scrollIntoView({ block: "nearest" });
  } catch {
    show(live, url);
  }
}

/** Where others open it: on the shop's own address, if it has said it. @param {LiveCalculator} live @param {string} fragment */
function addressOf(live, fragment) {
  const others = document.querySelector('meta[name="sizebook-address"]')?.content.replace(/\/*$/, "/");
  const here = live.closest("job-view") ? FINDS : location.pathname.slice(SITE.pathname.length);
  return `${new URL(here, others ?? SITE)}#${fragment}`;
}

/**
 * What is said of a link that was made holds until an entry changes.
 * @param {LiveCalculator} live @param {string} words
 */
function say(live, words) {
  live.querySelector("[data-shared]")?.remove();
  const place = document.createElement("p");
  place.dataset.shared = "";
  place.setAttribute("role", "status");
  live.querySelector("[data-share]")?.parentElement?.after(place);
  place.textContent = words;
  live.addEventListener("input", () => place.remove(), { once: true });
  live.addEventListener("reset", () => place.remove(), { once: true });
  return place;
}

/** @param {LiveCalculator} live @param {string} url */
function show(live, url) {
  const label = document.createElement("label");
  const field = document.createElement("input");
  Object.assign(field, { value: url, readOnly: true });
  label.append(COPY, field);
  say(live, "").append(label);
  field.focus();
  field.select();
}

/**
 * What the page's address brings for a calculator, once the page shows its units and engine; null, and said why, where it brings
 * nothing.
 * @param {LiveCalculator} live
 */
export async function open(live) {
  const [arrival] = /** @type {PerformanceNavigationTiming[]} */ (performance.getEntriesByType("navigation"));
  if (arrival?.type === "navigate") live.scrollIntoView();
  const reply = await runtime.ask({ call: "link", fragment: location.hash.slice(1) }, "link");
  if (!reply?.ok) {
    live.querySelector(".calc-head")?.after(refusal(reply));
    return null;
  }
  const note = said(reply.html.link);
  note.querySelector("[data-leave-link]")?.addEventListener("click", () => leave(live));
  live.querySelector(".calc-head")?.after(note);
  choose(reply.system);
  chooseEngine(reply.engine);
  return reply;
}

/** All of the reader's own comes back: entries, units, engine, part and job. @param {LiveCalculator} live */
function leave(live) {
  live.giveBack();
  history.replaceState(history.state, "", `#${live.id}`);
  location.reload();
}

/** @param {string} html */
function said(html) {
  const note = document.createElement("div");
  note.dataset.linked = "";
  note.setAttribute("role", "status");
  note.innerHTML = html;
  return note;
}

/** @param {Reply<"link"> | null} reply */
function refusal(reply) {
  const note = said("");
  note.dataset.linked = "refused";
  note.textContent = reply?.errors?.[0]?.message ?? "";
  return note;
}

/** To the page of the link's calculator, which is not this one. @param {string} id */
export async function forward(id) {
  const known = /** @type {HTMLAnchorElement | null} */ (document.querySelector(`article a[href$="#${id}"]`));
  if (known && new URL(known.href).pathname !== location.pathname) return location.replace(new URL(location.hash, known.href));
  if (location.pathname !== SITE.pathname + FINDS) return location.replace(new URL(FINDS + location.hash, SITE));
  const reply = await runtime.ask({ call: "link", fragment: location.hash.slice(1) }, "link");
  document.querySelector("article h1")?.after(refusal(reply));
}
