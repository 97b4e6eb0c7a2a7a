/**
 * Adds to long tables a filter, a choice of rows of one kind, and sorting. The page holds everything already: this only hides and reorders
 * rows. What is chosen stands in the address, behind its `#`, so that it can be shared and is there again after Back:
 * `#batches-rejected`, and with more `#batches-rejected?find=oak&sort=2&down`.
 */

interface Choice {
  /** As in `data-group`; nothing for rows of all kinds. */
  group: string;
  find: string;
  /** Column, from 1; 0 for the order of the page. */
  sort: number;
  down: boolean;
}

interface List {
  readonly name: string;
  readonly table: HTMLTableElement;
  readonly body: HTMLTableSectionElement;
  /** In the order of the page. */
  readonly rows: readonly HTMLTableRowElement[];
  readonly texts: readonly string[];
  readonly heads: readonly HTMLTableCellElement[];
  readonly caption: string;
  readonly find: HTMLInputElement;
  readonly groups: HTMLSelectElement;
  readonly order: HTMLSelectElement;
  readonly told: HTMLOutputElement;
}

const LONG = 7;
const ALL: Choice = { group: "", find: "", sort: 0, down: false };

const chosen = new Map<List, Choice>();
const lists = [...document.querySelectorAll<HTMLTableElement>("table[data-list]")].flatMap((table) => {
  const body = table.tBodies[0];
  return body !== undefined && body.rows.length > LONG ? [listOf(table, body)] : [];
});
fromAddress();
addEventListener("hashchange", fromAddress);

function listOf(table: HTMLTableElement, body: HTMLTableSectionElement): List {
  const rows = [...body.rows];
  const list: List = {
    name: table.dataset["list"] ?? "",
    table,
    body,
    rows,
    texts: rows.map((row) => plain(row.textContent ?? "")),
    heads: [...(table.tHead?.rows[0]?.cells ?? [])],
    caption: table.caption?.textContent ?? "",
    find: Object.assign(document.createElement("input"), { type: "search", autocomplete: "off" }),
    groups: document.createElement("select"),
    order: document.createElement("select"),
    told: document.createElement("output"),
  };
  addBar(list);
  list.heads.forEach((_, column) => addSorter(list, column));
  return list;
}

function addBar(list: List): void {
  const { table, find, groups, order, told, rows, heads } = list;
  const bar = document.createElement("div");
  bar.className = "filter";
  const kinds = [...new Set(rows.flatMap((row) => row.dataset["group"] ?? []))];
  if (kinds.length > 1) {
    groups.append(new Option(`all, ${rows.length}`, ""));
    for (const kind of kinds)
      groups.append(new Option(`${kind}, ${rows.filter((row) => row.dataset["group"] === kind).length}`, kind));
    bar.append(labelled("Show", groups));
    groups.addEventListener("change", () => choose(list, { group: groups.value }, "as a step"));
  }
  order.append(new Option("as listed", "0"));
  heads.forEach((head, at) => {
    const words = (head.textContent ?? "").trim();
    order.append(new Option(`${words}, rising`, `${at + 1}`), new Option(`${words}, falling`, `-${at + 1}`));
  });
  const sorting = labelled("Order", order);
  sorting.className = "filter__order";
  order.addEventListener("change", () => {
    const at = Number(order.value);
    choose(list, { sort: Math.abs(at), down: at < 0 });
  });
  find.addEventListener("input", () => choose(list, { find: find.value }));
  told.setAttribute("aria-live", "polite");
  bar.append(labelled("Show rows with", find), sorting, told);
  (table.closest(".scroll") ?? table).before(bar);
}

function labelled(words: string, control: HTMLElement): HTMLLabelElement {
  const label = document.createElement("label");
  label.append(`${words} `, control);
  return label;
}

function addSorter(list: List, column: number): void {
  const head = list.heads[column];
  if (head === undefined) return;
  const button = document.createElement("button");
  button.type = "button";
  button.className = "sorter";
  button.append(...head.childNodes);
  head.append(button);
  button.addEventListener("click", () => {
    choose(list, { sort: column + 1, down: head.getAttribute("aria-sort") === "ascending" });
  });
}

/** `as a step`: Back leads to what was shown before. */
function choose(list: List, change: Partial<Choice>, how?: "as a step"): void {
  const choice = { ...(chosen.get(list) ?? ALL), ...change };
  const hash = hashOf(list.name, choice);
  if (how === "as a step" && hash !== location.hash) history.pushState(null, "", hash);
  else history.replaceState(null, "", hash);
  show(list, choice);
}

function hashOf(name: string, { group, find, sort, down }: Choice): string {
  const more = new URLSearchParams();
  if (find.trim() !== "") more.set("find", find.trim());
  if (sort > 0) more.set("sort", String(sort));
  if (down) more.set("down", "");
  const asked = more.toString();
  return `#${name}${group === "" ? "" : `-${group.replaceAll(" ", "-")}`}${asked === "" ? "" : `?${asked}`}`;
}

/** Shows what the address asks for; a list that it does not name is shown whole. */
function fromAddress(): void {
  const [anchor = "", asked = ""] = decodeURIComponent(location.hash.slice(1)).split("?");
  const more = new URLSearchParams(asked);
  let named: List | undefined;
  for (const list of lists) {
    const groups = new Set(list.rows.map((row) => row.dataset["group"] ?? ""));
    const group = [...groups].find((one) => one !== "" && anchor === `${list.name}-${one.replaceAll(" ", "-")}`);
    const isNamed = group !== undefined || anchor === list.name;
    if (isNamed) named = list;
    show(
      list,
      isNamed
        ? { group: group ?? "", find: more.get("find") ?? "", sort: Number(more.get("sort")), down: more.has("down") }
        : ALL,
    );
  }
  if (named !== undefined && anchor !== named.name) (named.table.closest("section") ?? named.table).scrollIntoView();
  showTarget(anchor);
}

function show(list: List, choice: Choice): void {
  const { rows, texts, body, groups, find, order, told } = list;
  const { group, sort, down } = choice;
  chosen.set(list, choice);
  const words = plain(choice.find).split(/\s+/);
  let shown = 0;
  rows.forEach((row, at) => {
    const isOfKind = group === "" || row.dataset["group"] === group;
    row.hidden = !isOfKind || !words.every((word) => texts[at]?.includes(word));
    if (!row.hidden) shown += 1;
  });
  body.append(...sorted(rows, sort, down));
  groups.value = group;
  order.value = String(down ? -sort : sort);
  if (document.activeElement !== find) find.value = choice.find;
  const isAll = group === "" && choice.find.trim() === "";
  const counted = isAll ? "" : `${shown} of ${rows.length}`;
  told.textContent = [counted, ...tellOrder(list, choice)].filter((words) => words !== "").join(", ");
}

function sorted(rows: readonly HTMLTableRowElement[], sort: number, down: boolean): HTMLTableRowElement[] {
  if (sort === 0) return [...rows];
  return rows
    .map((row) => ({ row, key: keyOf(row.cells[sort - 1]) }))
    .sort((a, b) => compare(a.key, b.key) * (down ? -1 : 1))
    .map(({ row }) => row);
}

/** The heads, and the caption, say the order that there is. */
function tellOrder({ table, heads, caption }: List, { sort, down }: Choice): string[] {
  heads.forEach((head, column) => {
    if (column + 1 === sort) head.setAttribute("aria-sort", down ? "descending" : "ascending");
    else head.removeAttribute("aria-sort");
  });
  const head = heads[sort - 1];
  const words =
    head === undefined ? "" : `by ${(head.textContent ?? "").trim().toLowerCase()}, ${down ? "falling" : "rising"}`;
  if (table.caption !== null)
    table.caption.textContent = words === "" ? caption : `${caption.split(",")[0] ?? ""}, ${words}`;
  return words === "" ? [] : [words];
}

type Key = string | number | { readonly unit: string; readonly figure: number };

function keyOf(cell: HTMLTableCellElement | undefined): Key {
  const text = (cell?.dataset["sort"] ?? cell?.textContent ?? "").trim();
  const [, figure, unit] = /^(-?[\d.]+(?:e[+-]?\d+)?) (\S+)$/.exec(text) ?? [];
  if (cell?.dataset["sort"] !== undefined && figure !== undefined && unit !== undefined)
    return { unit, figure: Number(figure) };
  const number = Number(text);
  return text !== "" && Number.isFinite(number) ? number : text;
}

/** Numbers before figures with a unit, those of one unit together, before words; words by the numbers in them, as in `B-9`, `B-10`. */
function compare(a: Key, b: Key): number {
  const rank = (key: Key): number => (typeof key === "number" ? 0 : typeof key === "object" ? 1 : 2);
  if (typeof a === "number" && typeof b === "number") return a - b;
  if (typeof a === "object" && typeof b === "object") return a.unit.localeCompare(b.unit, "en") || a.figure - b.figure;
  if (typeof a === "string" && typeof b === "string") return a.localeCompare(b, "en", { numeric: true });
  return rank(a) - rank(b);
}

function plain(text: string): string {
  return text.toLowerCase();
}

/** A link to a row leads to it even while a filter hides it. */
function showTarget(anchor: string): void {
  const row = anchor === "" ? null : document.getElementById(anchor);
  if (row instanceof HTMLTableRowElement && row.hidden) {
    row.hidden = false;
    row.scrollIntoView();
  }
}
