// What the pages' markup holds. Python writes it (calc/page/), so only there is it seen whether an attribute stands on what is said here.

declare global {
  /** A field of a calculator's form. */
  type Entry = HTMLInputElement | HTMLSelectElement;

  /** What a selector of ours finds, where it does not begin with the element's name. */
  interface Marked {
    "[data-entry]": Entry;
    "[data-form]": HTMLFormElement;
    "[data-which]": HTMLSelectElement;
    "[data-engine-choice]": HTMLSelectElement;
    "[data-hint]": HTMLOptionElement;
    "[data-grid] tr": HTMLTableRowElement;
    "[data-job-form]": HTMLFormElement;
    "[data-job-initials]": HTMLInputElement;
    "[data-job-part]": HTMLInputElement;
    "[data-job-check][open]": HTMLDetailsElement;
    "[data-find]": HTMLInputElement;
    "[data-panel]": HTMLTemplateElement;
    "[data-place]": HTMLSelectElement;
    "[name=initials]": HTMLInputElement;
    "[name=why]:checked": HTMLInputElement;
    "[name=engine] option": HTMLOptionElement;
  }

  interface HTMLElementTagNameMap {
    "live-calculator": import("../../docs/assets/js/live.mjs").LiveCalculator;
    "job-view": import("../../docs/assets/js/job.mjs").JobView;
  }

  /** The element's name, where a selector begins with one. */
  type Begun<S extends string> = S extends `${infer T}[${string}` | `${infer T}:${string}` | `${infer T}#${string}` | `${infer T}.${string}` ? Begun<T> : S;
  /** Whatever else is looked for is HTML: no selector of ours names a part of a drawing. */
  type Found<S extends string> = S extends keyof Marked ? Marked[S]
    : S extends `${string} ${string}` ? HTMLElement
    : Begun<S> extends keyof HTMLElementTagNameMap ? HTMLElementTagNameMap[Begun<S>] : HTMLElement;

  interface ParentNode {
    querySelector<S extends string>(selectors: S): Found<S> | null;
    querySelectorAll<S extends string>(selectors: S): NodeListOf<Found<S>>;
  }
  interface Element {
    closest<S extends string>(selectors: S): Found<S> | null;
    matches<S extends string>(selectors: HTMLElement extends Found<S> ? never : S): this is Found<S>;
  }

  // Presses, keys, folds and pastes are of elements; only what comes of itself has other targets.
  interface UIEvent {
    readonly target: HTMLElement;
  }
  interface ToggleEvent {
    readonly target: HTMLElement;
  }
  interface ClipboardEvent {
    readonly target: HTMLElement;
  }
  interface SubmitEvent {
    readonly target: HTMLFormElement;
  }

  /** What our own modules tell each other, on the document. */
  interface DocumentEventMap {
    "sizebook:units": CustomEvent<System>;
    "sizebook:engine": Event;
    "sizebook:place": Event;
  }

  /** Listens until an element leaves the page. What reaches an element of ours came from one in it. */
  type Listen = <T extends EventTarget, K extends string>(target: T, event: K, handler: (event: T extends Node | Window | typeof globalThis ? Heard<K> : CustomEvent) => void) => void;
  type Heard<K extends string> = K extends keyof DocumentEventMap ? DocumentEventMap[K] & (K extends "input" | "change" ? { readonly target: HTMLElement } : unknown)
    : K extends keyof WindowEventMap ? WindowEventMap[K] : CustomEvent;

  interface Navigator {
    /** Network Information API, where a browser has it. */
    readonly connection?: { readonly saveData: boolean; readonly type?: string };
  }
}

export {};
