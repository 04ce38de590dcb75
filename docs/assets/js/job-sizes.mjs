// Beside the sizes of a data sheet, in its tables and in sentences: what the job that is worked on holds of them. Loaded only while there is a job (live.mjs).

import { ask, changes, current, get } from "./jobs.mjs";
import { show as showEngine } from "./sizes.mjs";

const places = [...document.querySelectorAll("[data-job-size], [data-job-said]")];

const look = document.createElement("link");
Object.assign(look, { rel: "stylesheet", href: new URL("../css/job.css", import.meta.url).href });
document.head.append(look);

let turn = 0; // of the showings; only the last one counts

async function show() {
  const own = ++turn;
  const key = current();
  const held = key && (await get(key).catch(() => null));
  const reply = held ? await ask("job-sizes", { job: held.text }, "job-sizes") : null;
  if ((held && !reply) || own !== turn) return;
  const has = reply?.ok ? reply : null;
  showEngine(has?.engine);
  for (const place of places) {
    const { engine, jobSize = "", jobSaid = "" } = place.dataset;
    place.innerHTML = (engine === has?.engine && (has?.html[jobSize] || has?.said[jobSaid])) || "";
  }
}

changes.addEventListener("change", show);
show();
