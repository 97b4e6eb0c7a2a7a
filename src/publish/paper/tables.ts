import type { Block, Inline } from "./blocks.ts";
import { inlinesOf, type Leads } from "./inlines.ts";
import { classesOf, type Element, findAll, textOf, type Tree } from "./tree.ts";
import { columnWidths } from "./widths.ts";

type Table = Extract<Block, { readonly b: "table" }>;

/** How what stands in a cell is set. */
interface Making {
  readonly leads: Leads;
  readonly first: (id: string) => readonly string[];
  readonly blocks: (nodes: readonly Tree[]) => Block[];
}

/** Letters beyond which a row may go on overleaf: some eight lines. */
const LONG = 600;

/** A table with its caption; one without rows is left out. */
export function tableOf(node: Element, making: Making): Block[] {
  const rows = findAll(node.children, ({ tag }) => tag === "tr");
  const head = rows.filter(isHead).flatMap(cellsOf);
  const body = rows.filter((row) => !isHead(row));
  if (body.length === 0) return [];
  const caption = findAll(node.children, ({ tag }) => tag === "caption");
  return [
    {
      b: "table",
      caption: caption.flatMap((one) => inlinesOf([one], making.leads)),
      columns: columnsOf(head, body.map(cellsOf)),
      head: head.map(({ children }): readonly Inline[] => inlinesOf(children, making.leads)),
      rows: body.map((row) => rowOf(row, making)),
    },
  ];
}

const isHead = (row: Element): boolean =>
  cellsOf(row).every(({ tag, attributes }) => tag === "th" && attributes.scope === "col");

const cellsOf = (row: Element): Element[] => findAll(row.children, ({ tag }) => tag === "td" || tag === "th");

function rowOf(row: Element, making: Making): Table["rows"][number] {
  const { id } = row.attributes;
  return {
    ids: typeof id === "string" ? making.first(id) : [],
    cells: cellsOf(row).map((cell) => cellOf(cell, making)),
    long: textOf(row.children).length > LONG,
  };
}

function cellOf(cell: Element, making: Making): readonly Block[] {
  const blocks = making.blocks(cell.children);
  if (cell.tag !== "th" || classesOf(cell).includes("plainly")) return blocks;
  return blocks.map((block) => (block.b === "text" ? { ...block, c: [{ i: "strong", c: block.c }] } : block));
}

function columnsOf(head: readonly Element[], rows: readonly (readonly Element[])[]): Table["columns"] {
  const count = Math.max(head.length, ...rows.map((row) => row.length));
  const columns = Array.from({ length: count }, (_, at) => rows.flatMap((row) => row[at] ?? []));
  const titles = Array.from({ length: count }, (_, at) => textOf(head[at]?.children ?? []));
  const widths = columnWidths(
    titles,
    rows.map((row) => row.map(lettersOf)),
  );
  return columns.map((cells, at) => ({
    share: widths[at] ?? 1,
    right: [...head.slice(at, at + 1), ...cells].some((cell) => classesOf(cell).includes("number")),
  }));
}

/** A mark takes the room of some letters beside its word. */
const lettersOf = ({ children }: Element): string =>
  textOf(children) + "m".repeat(2 * findAll(children, ({ tag }) => tag === "mark").length);
