// Tables of the prose: one that says so is sorted by its heads, and one too wide for the screen is reached and moved by keyboard.

// A button in each head sorts the rows by that column, in the units that the reader sees; once more turns the order round.
// Without this script the table stands in the order of the page.
for (const table of document.querySelectorAll("table[data-sortable]")) {
  const body = table.tBodies[0];
  const heads = table.tHead?.rows[0]?.cells;
  if (!body || !heads) continue;
  for (const head of heads) {
    const button = document.createElement("button");
    button.type = "button";
    button.append(...head.childNodes);
    head.append(button);
    button.addEventListener("click", () => {
      const turned = head.getAttribute("aria-sort") === "ascending";
      for (const other of heads) other.removeAttribute("aria-sort");
      head.setAttribute("aria-sort", turned ? "descending" : "ascending");
      const rows = [...body.rows].sort((a, b) => compare(textOf(a.cells[head.cellIndex]), textOf(b.cells[head.cellIndex])));
      body.append(...(turned ? rows.reverse() : rows));
    });
  }
}

/** @param {HTMLTableCellElement} [cell] */
const textOf = (cell) => cell?.innerText ?? "";

/** @param {string} text */
const numberOf = (text) => parseFloat(text.replace("−", "-"));

/** @param {string} a @param {string} b */
function compare(a, b) {
  const [x, y] = [numberOf(a), numberOf(b)];
  return Number.isNaN(x) || Number.isNaN(y) ? a.localeCompare(b) : x - y;
}

// A table stands in a box that scrolls where it has to; only there is the box worth a stop, and a name.
function reach() {
  for (const box of document.querySelectorAll(".md-typeset__scrollwrap, .table-box")) {
    const wide = box.scrollWidth > box.clientWidth;
    if (wide) box.tabIndex = 0;
    else box.removeAttribute("tabindex");
    if (wide && !box.role) {
      box.role = "group";
      box.ariaLabel = "Table";
    }
  }
}

addEventListener("load", reach);
addEventListener("resize", reach);
document.addEventListener("sizebook:units", reach);
