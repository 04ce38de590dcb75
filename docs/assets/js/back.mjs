// Back and forward: a browser may have kept the page whole, and shows it as it was left. It has slept through
// what other pages stored meanwhile (not every browser tells it afterwards), and is told so as another tab would
// be: by a "storage" event, with no key since it may have been anything.

addEventListener("pageshow", ({ persisted }) => persisted && dispatchEvent(new StorageEvent("storage", { key: null })));
