// Markup in the place of other markup that is mostly the same: a key changes a few numbers of an answer. Only those are
// touched: what stays is not laid out and painted again, and keeps the focus and how far it was scrolled.

/**
 * Make an element hold what `html` says, its folds (details with data-keep) as the reader left them; `left` says how,
 * of those that were gone for a while.
 * @param {HTMLElement} part @param {string} html @param {Record<string, boolean>} left
 */
export function swap(part, html, left = {}) {
  const folds = () => part.querySelectorAll("details[data-keep]");
  const open = new Map([...folds()].map((fold) => [fold.dataset.keep, fold.open]));
  const focused = part.contains(document.activeElement) && document.activeElement?.closest("[data-keep]")?.dataset.keep;
  const template = document.createElement("template");
  template.innerHTML = html;
  fill(part, template.content);
  for (const fold of folds()) {
    const { keep } = fold.dataset;
    fold.open = open.get(keep) ?? left[keep ?? ""] ?? fold.open;
    if (keep === focused && !part.contains(document.activeElement)) fold.querySelector("summary")?.focus({ preventScroll: true });
  }
}

/**
 * What is of one kind from the beginning on, or back from the end, becomes the same; of what lies between, the old goes and the new comes.
 * @param {Node} here @param {Node} there
 */
function fill(here, there) {
  const [old, next] = [[...here.childNodes], [...there.childNodes]];
  const most = Math.min(old.length, next.length);
  let before = 0;
  while (before < most && became(old[before], next[before])) before++;
  let behind = 0;
  while (behind < most - before && became(old.at(-1 - behind), next.at(-1 - behind))) behind++;
  const following = old[old.length - behind] ?? null;
  for (const node of old.slice(before, old.length - behind)) node.remove();
  for (const node of next.slice(before, next.length - behind)) here.insertBefore(node, following);
}

/**
 * Make a node the same as another; false where that is of another kind.
 * @param {ChildNode | undefined} node @param {ChildNode | undefined} other
 */
function became(node, other) {
  if (!node || !other || node.nodeName !== other.nodeName) return false;
  if (node instanceof Element && other instanceof Element) {
    if (node.getAttribute("data-keep") !== other.getAttribute("data-keep")) return false;
    for (const name of new Set([...node.getAttributeNames(), ...other.getAttributeNames()])) {
      const value = other.getAttribute(name);
      if (node.getAttribute(name) === value || (name === "open" && node.hasAttribute("data-keep"))) continue;
      if (value === null) node.removeAttribute(name);
      else node.setAttribute(name, value);
    }
    fill(node, other);
  } else if (node.nodeValue !== other.nodeValue) {
    node.nodeValue = other.nodeValue;
  }
  return true;
}
