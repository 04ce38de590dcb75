// Makes the handbook work without signal: hands it to the service worker (sw.js) once the page has no
// more urgent wish, says where that stands, and offers a new edition without ever forcing it.

import { runtime } from "./runtime.mjs";

const GETTING = "Getting ready to work without signal…";
const PARTLY = "Calculators, the bench and the pages that you open work without signal. The other pages wait for a line that is not a mobile one. ";
const READY = "Ready to work without signal.";
const FAILED = "Not ready to work without signal: not everything could be fetched. The next visit tries again.";
const NEEDS_HTTPS = "Not available offline here: needs https.";
const NOT_OFFERED = "Not available offline in this browser.";
const HOURLY = 3_600_000; // ms

const place = document.querySelector("[data-offline-status]") ?? appendPlace();
let controlled = Boolean(navigator.serviceWorker?.controller);

if (!isSecureContext) tell(NEEDS_HTTPS);
else if (!navigator.serviceWorker) tell(NOT_OFFERED);
else keep().catch(() => (navigator.serviceWorker.controller ? settled(navigator.serviceWorker.controller) : tell(FAILED))); // no signal just now, most often

async function keep() {
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (controlled) reload();
    controlled = true;
  });
  if (!controlled) tell(GETTING);
  await quiet();
  const registration = await navigator.serviceWorker.register(new URL("../../sw.js", import.meta.url), { updateViaCache: "none" });
  follow(registration);
  registration.addEventListener("updatefound", () => follow(registration));
  let asked = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || Date.now() - asked < HOURLY) return;
    asked = Date.now();
    registration.update().catch(() => {}); // no signal: the edition at hand goes on
  });
}

/** Resolves when the page is loaded and the calculators have what they need of a slow line. */
async function quiet() {
  if (document.readyState !== "complete") await new Promise((go) => addEventListener("load", go, { once: true }));
  if (runtime.startsByItself) await runtime.settled();
}

/** @param {ServiceWorkerRegistration} registration */
function follow(registration) {
  const { installing, waiting, active } = registration;
  if (waiting) offer(registration);
  if (active) settled(active);
  installing?.addEventListener("statechange", () => {
    if (installing.state === "installed" && registration.active) offer(registration);
    if (installing.state === "activated") settled(installing);
    if (installing.state === "redundant" && !registration.active) tell(FAILED);
  });
}

/** Everything that calculates is kept; the other pages come while the device has nothing else to do, over a line that costs nothing. @param {ServiceWorker} worker */
async function settled(worker) {
  claim(worker);
  if ((await said(worker, "missing")) === 0) return tell(READY);
  if (navigator.connection?.saveData || navigator.connection?.type === "cellular") {
    tell(PARTLY);
    place.append(button("Fetch them now", () => rest(worker)));
  } else {
    await new Promise((go) => (globalThis.requestIdleCallback ?? setTimeout)(go));
    await rest(worker);
  }
}

/** @param {ServiceWorker} worker */
async function rest(worker) {
  tell(GETTING);
  tell((await said(worker, "rest")) === 0 ? READY : FAILED);
}

/** How many files are not kept, as the worker says after it was asked. @param {ServiceWorker} worker @param {"missing" | "rest"} call @returns {Promise<number>} */
function said(worker, call) {
  const { port1, port2 } = new MessageChannel();
  worker.postMessage({ call, page: location.href }, [port2]);
  return new Promise((go) => (port1.onmessage = ({ data }) => go(data)));
}

/** @param {ServiceWorker} worker */
function claim(worker) {
  if (!controlled) worker.postMessage({ call: "claim", build: document.querySelector('meta[name="sizebook-build"]')?.content });
}

/** @param {ServiceWorkerRegistration} registration */
function offer(registration) {
  if (document.querySelector("[data-new-edition]")) return;
  const box = document.createElement("div");
  box.dataset.newEdition = "";
  box.setAttribute("role", "status");
  const words = document.createElement("p");
  words.textContent = "A new edition of this handbook is ready.";
  box.append(
    words,
    button("Change to it", () => registration.waiting?.postMessage({ call: "activate" })),
    button("Later", () => box.remove()),
  );
  document.body.append(box);
}

/** @param {string} words @param {() => void} press */
function button(words, press) {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.addEventListener("click", press);
  return made;
}

/** Every open page came from the edition that has just gone: all of them reload, with their entries kept. */
function reload() {
  dispatchEvent(new Event("sizebook:before-reload"));
  location.reload();
}

/** @param {string} words */
function tell(words) {
  if (place.textContent !== words) place.textContent = words;
}

function appendPlace() {
  const made = document.createElement("p");
  made.dataset.offlineStatus = "";
  made.setAttribute("role", "status");
  (document.querySelector("footer") ?? document.body).append(made);
  return made;
}
