// A part of a page that is folded is unfolded by whoever jumps to it.

function unfold() {
  const at = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
  const fold = at?.closest("details");
  if (fold) fold.open = true;
}

addEventListener("hashchange", unfold);
document.addEventListener("click", ({ target }) => target.closest("a[href*='#']") && setTimeout(unfold)); // to where the address is already
unfold();
