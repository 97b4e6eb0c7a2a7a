/** Adds a filter and sorting to long tables. The page holds everything already: this only hides and reorders rows. */

for (const table of document.querySelectorAll<HTMLTableElement>("table[data-list]")) {
  const body = table.tBodies[0];
  if (body !== undefined && body.rows.length > 7) {
    addFilter(table, body);
    [...(table.tHead?.rows[0]?.cells ?? [])].forEach((head, column) => addSort(table, body, head, column));
  }
}
showTarget();
addEventListener("hashchange", showTarget);

function addFilter(table: HTMLTableElement, body: HTMLTableSectionElement): void {
  const label = document.createElement("label");
  const input = document.createElement("input");
  const count = document.createElement("output");
  input.type = "search";
  input.autocomplete = "off";
  label.append("Show rows with ", input);
  const bar = document.createElement("div");
  bar.className = "filter";
  bar.append(label, count);
  (table.closest(".scroll") ?? table).before(bar);
  const rows = [...body.rows];
  const texts = rows.map((row) => plain(row.textContent ?? ""));
  input.addEventListener("input", () => {
    const words = plain(input.value).split(/\s+/);
    let shown = 0;
    rows.forEach((row, at) => {
      row.hidden = !words.every((word) => texts[at]?.includes(word));
      if (!row.hidden) shown += 1;
    });
    count.textContent = input.value.trim() === "" ? "" : `${shown} of ${rows.length}`;
  });
}

function addSort(
  table: HTMLTableElement,
  body: HTMLTableSectionElement,
  head: HTMLTableCellElement,
  column: number,
): void {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "sorter";
  button.append(...head.childNodes);
  head.append(button);
  button.addEventListener("click", () => {
    const down = head.getAttribute("aria-sort") === "ascending";
    for (const other of table.tHead?.rows[0]?.cells ?? []) other.removeAttribute("aria-sort");
    head.setAttribute("aria-sort", down ? "descending" : "ascending");
    const sorted = [...body.rows]
      .map((row) => ({ row, key: keyOf(row.cells[column]) }))
      .sort((a, b) => compare(a.key, b.key) * (down ? -1 : 1));
    body.append(...sorted.map(({ row }) => row));
  });
}

function keyOf(cell: HTMLTableCellElement | undefined): string | number {
  const text = (cell?.dataset["sort"] ?? cell?.textContent ?? "").trim();
  const number = Number(text);
  return text !== "" && Number.isFinite(number) ? number : text;
}

/** Numbers before words; words with numbers in them by those numbers, as in `B-9`, `B-10`. */
function compare(a: string | number, b: string | number): number {
  if (typeof a === "number" && typeof b === "number") return a - b;
  if (typeof a === "number") return -1;
  if (typeof b === "number") return 1;
  return a.localeCompare(b, "en", { numeric: true });
}

function plain(text: string): string {
  return text.toLowerCase();
}

/** A link to a row leads to it even while a filter hides it. */
function showTarget(): void {
  const row = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
  if (row instanceof HTMLTableRowElement && row.hidden) {
    row.hidden = false;
    row.scrollIntoView();
  }
}
