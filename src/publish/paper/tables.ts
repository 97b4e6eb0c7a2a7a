import type { Block, Inline } from "./blocks.ts";
import { inlinesOf, isLine, type Leads } from "./inlines.ts";
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

/** Rows that say the same of something say it once above them; of fewer it takes no less room. */
const FEWEST_ALIKE = 3;

/** A table with its caption; one without rows is left out. A column whose cells all say the same is told once above it. */
export function tableOf(node: Element, making: Making): Block[] {
  const rows = findAll(node.children, ({ tag }) => tag === "tr").map((row) => ({ row, cells: cellsOf(row) }));
  const head = rows.filter(isHead).flatMap(({ cells }) => cells);
  const body = rows.filter((one) => !isHead(one));
  if (body.length === 0) return [];
  const caption = findAll(node.children, ({ tag }) => tag === "caption");
  const once = columnsAlike(
    head,
    body.map(({ cells }) => cells),
    making.leads,
  );
  const differing = <T>(of: readonly T[]): T[] => of.filter((_, at) => !once.has(at));
  return [
    {
      b: "table",
      caption: caption.flatMap((one) => inlinesOf([one], making.leads)),
      alike: [...once].map(([at, said]) => [inlinesOf(head[at]?.children ?? [], making.leads), said]),
      columns: columnsOf(
        differing(head),
        body.map(({ cells }) => differing(cells)),
      ),
      head: differing(head).map(({ children }): readonly Inline[] => inlinesOf(children, making.leads)),
      rows: body.map(({ row, cells }) => rowOf(row, differing(cells), making)),
    },
  ];
}

/** Those that are lines and the same in each of three rows or more; the first column names its row, and another stays beside it. */
function columnsAlike(
  head: readonly Element[],
  rows: readonly (readonly Element[])[],
  leads: Leads,
): ReadonlyMap<number, readonly Inline[]> {
  const [first, ...others] = rows;
  if (first === undefined || rows.length < FEWEST_ALIKE || rows.some(({ length }) => length !== head.length))
    return new Map();
  const alike = first.flatMap((cell, at) => {
    if (at === 0 || !isPlain(cell)) return [];
    const words = textOf(cell.children);
    if (words.trim() === "" || others.some((row) => textOf(row[at]?.children ?? []) !== words)) return [];
    const said = inlinesOf(cell.children, leads);
    const isSame = (other: Element): boolean =>
      isPlain(other) && JSON.stringify(inlinesOf(other.children, leads)) === JSON.stringify(said);
    return others.every((row) => row.slice(at, at + 1).every(isSame)) ? [[at, said] as const] : [];
  });
  return new Map(alike.length > head.length - 2 ? alike.slice(1) : alike);
}

const isPlain = (cell: Element): boolean =>
  isLine(cell) && findAll(cell.children, ({ tag }) => tag === "svg").length === 0;

const isHead = ({ cells }: { readonly cells: readonly Element[] }): boolean =>
  cells.every(({ tag, attributes }) => tag === "th" && attributes.scope === "col");

const cellsOf = (row: Element): Element[] => findAll(row.children, ({ tag }) => tag === "td" || tag === "th");

function rowOf(row: Element, cells: readonly Element[], making: Making): Table["rows"][number] {
  const { id } = row.attributes;
  return {
    ids: typeof id === "string" ? making.first(id) : [],
    cells: cells.map((cell) => cellOf(cell, making)),
    long: textOf(cells).length > LONG,
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
