// Shapes that several modules share, known to all of them by name. Their words are in calc/page/live.py and calc/page/job,
// which give what is typed here.

declare global {
  /** One of several shapes, told apart by what it has. */
  type OneOf<T, K extends PropertyKey = T extends unknown ? keyof T : never> = T extends unknown ? T & { [other in Exclude<K, keyof T>]?: undefined } : never;

  type System = "metric" | "inch";
  /** Text by name: what is typed, by entry; markup, by part of a page. */
  type Texts = Record<string, string>;

  // --- Between page and worker ------------------------------------------------------------------------------

  /** Asked of Python: by its call, what goes with it, and what comes back where it is not refused. */
  interface Calls {
    evaluate: {
      asked: { calculator: string; anchor: string; first: true; entries: Texts; standing: StandingAsked | null; system: System; working: boolean };
      told: { html: Texts; notes: Texts; origins: Origins };
    };
    rest: { asked: {}; told: Calls["evaluate"]["told"] };
    sizes: { asked: { engine: string; sizes: string[] }; told: { html: Texts } };
    share: {
      asked: { calculator: string; entries: Texts; system: System; standing: StandingAsked | null; engine: string; which: string };
      told: { title: string; text: string; fragment: string };
    };
    link: { asked: { fragment: string }; told: { calculator: string; entries: Texts; system: System; engine: string; which: string; html: { link: string } } };
    size: {
      asked: { engine: string; feature: string; stage: "" | "received" | "finished"; text: string; system: System };
      told: { html: Texts; note: string };
    };
    bench: { asked: { engine: string }; told: { html: { bench: string } } };
    "job-bench": { asked: OfJob; told: { html: { unread: string }; name: string; engine: string } };
    "job-size": { asked: OfJob & { kind: Kind; feature: string; place: string; stages: string[] }; told: { html: { job: string }; name: string } };
    "job-new": { asked: Form & { id: string }; told: Made };
    "job-add": { asked: OfJob & Form; told: Made & { html?: { kept: string } } };
    "job-take-back": Calls["job-add"];
    "job-done": Calls["job-add"];
    "job-tick": Calls["job-add"];
    "job-strike": Calls["job-add"];
    "job-unstrike": Calls["job-add"];
    "job-change": Calls["job-add"];
    "job-read": { asked: { text: string }; told: Made };
    "job-open": { asked: { code: string; others: string[] }; told: OneOf<(Made & { code: string; used: string[] }) | { html: { view: string } }> };
    "job-take-over": { asked: OfJob & { sheet: string; kept: string }; told: Made };
    "job-keep": {
      asked: OfJob & { calculator: string; place: string; stage: string; why: string; typed: string[]; entries: Texts; features: Texts };
      told: Made;
    };
    "job-fields": {
      asked: OfJob & { kind: Kind; calculator: string; place: string; features: Texts; stages: string[]; root: string };
      told: { html: Texts & { strip: string }; fill: Record<string, Fill>; results: Record<string, string[]>; place: string; engine: string; said: Said; placed: string[] };
    };
    "job-sizes": { asked: OfJob; told: { html: Texts; said: Texts; engine: string } };
    "job-write": { asked: OfJob & Form; told: { html: { write: string } } };
    "job-check": { asked: OfJob & { check: string; root: string; writing: Texts }; told: { html: { check: string } } };
    "job-view": {
      asked: { root: string; jobs: ToldOf[]; key: string | null; engines: string[]; safety: string; writing: Texts };
      told: { html: { view: string }; name: string };
    };
    "job-sheet": { asked: OfJob & { root: string; key: string | null }; told: { html: { view: string }; name: string } };
    "job-received": {
      asked: { root: string; job: string | null; key: string | null; kept: string; sheets: Pick<Held, "key" | "text" | "kept">[]; mine: Pick<Held, "key" | "text">[] };
      told: { html: { view: string }; name?: string };
    };
  }
  type Call = keyof Calls;
  /** What the forms on the pages of a job hold. */
  type Form = {
    [name in "name" | "engine" | "received" | "shop" | "initials" | "feature" | "place" | "stage" | "text" | "why" | "reason" | "shown" | "line" | "check" | "form" | "stages" | "only"]?: string;
  };
  /** What goes with every call about a job (jobs.mjs). */
  type ByWhom = { system: System; now: string; by: string };
  type OfJob = { job: string };
  type Made = { job: string; name: string; origin: string };

  /** A request: what it `needs` are packages that no start brings. */
  type Asked<C extends Call = Call> = C extends Call ? { call: C; needs?: string[] } & Calls[C]["asked"] : never;
  type Reply<C extends Call = Call> = OneOf<({ ok: true; errors: []; more?: boolean } & Calls[C]["told"]) | Refused>;
  /** `notes`: what is to be said of an entry all the same. */
  type Refused = { ok: false; html: Texts; notes?: Texts; errors: [Wrong, ...Wrong[]] };
  /** What is wrong, and with which field; `suggestion` may have been meant. */
  type Wrong = { field: string | null; code?: string; message: string; suggestion?: string };

  /** What a page says to the worker: whose calculators it holds, then its requests, one after the other; and that it goes. */
  type ToWorker = OneOf<{ come: string[] } | { gone: true } | Numbered>;
  type Numbered = Asked & { turn: number };
  type FromWorker = OneOf<{ here: true } | { state: "ready"; woken: boolean } | { state: "failed"; why: string } | { turn: number; begun: true } | { turn: number; reply: Reply } | { turn: number; fault: string }>;

  /** Where each field's value comes from; `held` and `state` say what limits of its own it keeps. */
  type Origins = Record<string, { from: string; words: string; shown: string; held?: string; state?: string }>;
  /** What a job filled in, by entry. */
  type Said = Record<string, { words: string; stage: string }>;
  /** What entries stand on; `job` is what still stands as a job filled it in. */
  type StandingAsked = { engine: string; which: string; job: Said };

  // --- Jobs -------------------------------------------------------------------------------------------------

  type Kind = "job" | "sheet";
  /** A job or sheet as the device keeps it (jobs.mjs). */
  type Held = { key: string; kind: Kind; text: string; rev: number; kept: string; origin: string; exported: { rev: number; at: string } | null };
  /** What Python is told of it. */
  type ToldOf = { key: string; kind: Kind; text: string; kept: string; exported: string; changed: boolean };
  /** What a job has for a field: the texts of its entries, and whether they are filled in without being asked. */
  type Fill = { texts: Texts; at_once: boolean };
}

export {};
