// In a table of limits: what the job that is worked on holds of each size. Loaded only while there is a job (live.mjs).

import { ask, changes, current, get } from "./jobs.mjs";

const places = [...document.querySelectorAll("[data-job-size]")];

const look = document.createElement("link");
Object.assign(look, { rel: "stylesheet", href: new URL("../css/job.css", import.meta.url).href });
document.head.append(look);

async function show() {
  const key = current();
  const held = key && (await get(key).catch(() => null));
  const reply = held ? await ask("job-sizes", { job: held.text }, "job-sizes") : { ok: false };
  if (!reply) return;
  for (const place of places) place.innerHTML = (reply.ok && place.dataset.engine === reply.engine && reply.html[place.dataset.jobSize]) || "";
}

changes.addEventListener("change", show);
show();
