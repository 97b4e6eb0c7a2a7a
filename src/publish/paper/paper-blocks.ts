import { plateMarks, type PlateProps } from "../../../layouts/parts/drawing.tsx";
import type { PhotoProps } from "../../../layouts/parts/picture.tsx";
import { isGrave } from "../../../layouts/parts/mark.tsx";
import { shapeName } from "../../../layouts/parts/shapes.tsx";
import { defined } from "../../defined.ts";
import type { FilePath } from "../../facts/types.ts";
import type { Block } from "./blocks.ts";
import { INLINE, inlinesOf, isLine, type Leads } from "./inlines.ts";
import { tableOf } from "./tables.ts";
import { wordsOf } from "./words.ts";
import { classesOf, type Element, findAll, textOf, type Tree } from "./tree.ts";

/** What blocks need to know of where they stand. */
export interface Making {
  readonly leads: Leads;
  /** Of what stands in tables: a table with links is set as often as Typst looks for places, and there may be very many. */
  readonly leadsInTables: Leads;
  /** An id that no place before has taken; nothing for any other. */
  readonly first: (id: string) => readonly string[];
  /** What a drawing made in a page is called as a file of the paper. */
  readonly drawn: (svg: Element) => string;
  /** What a picture of the record is called as a file of the paper; undefined where it has none that can be set. */
  readonly picture: (file: FilePath) => string | undefined;
}

const HEADINGS: { readonly [tag: string]: number } = { h1: 0, h2: 1, h3: 2, h4: 3 };
/** What is of use on a screen alone, or is told otherwise on paper. */
const NOT_ON_PAPER = ["screen-only", "unseen", "chart__table", "chart__narrow", "chart__live", "skip"];
/** Looks of paragraphs by their classes; the first that fits counts. */
const LOOKS = [
  ["label", "label"],
  ["title__lead", "lead"],
  ["appendix__name", "lead"],
  ["appendix__opens", "opens"],
  ["quiet", "quiet"],
  ["small", "small"],
] as const;
const NOT_SET = new Set(["nav", "script", "style", "template", "button"]);

/** Elements as blocks; words between blocks are a block of their own. */
export function blocksOf(nodes: readonly Tree[], making: Making): Block[] {
  const blocks: Block[] = [];
  let line: Tree[] = [];
  const end = (): void => {
    if (textOf(line).trim() !== "" || line.some((node) => typeof node !== "string" && node.tag === "mark"))
      blocks.push({ b: "text", look: "plain", c: inlinesOf(line, making.leads) });
    line = [];
  };
  for (const node of nodes) {
    if (typeof node === "string" || (INLINE.has(node.tag) && isLine(node))) line.push(node);
    else {
      end();
      blocks.push(...blockOf(node, making));
    }
  }
  end();
  return blocks;
}

function blockOf(node: Element, making: Making): Block[] {
  const { tag, attributes, children } = node;
  const classes = classesOf(node);
  if (NOT_SET.has(tag) || classes.some((name) => NOT_ON_PAPER.includes(name))) return [];
  const own = made(node, classes, making);
  return withId(attributes.id, own ?? blocksOf(children, making), making);
}

/** So many things that want the same stay on the page of the words that say what; more would leave too much of one bare. */
const MOST_TOGETHER = 20;

/** What an element itself becomes; undefined for one that only holds others. */
function made(node: Element, classes: readonly string[], making: Making): Block[] | undefined {
  const { tag, children } = node;
  const level = HEADINGS[tag];
  if (level !== undefined) return [headingOf(node, level, making)];
  if (tag === "table") return tableMade(node, making);
  if (classes.includes("appendix__index")) return [indexOf(node, making)];
  if (tag === "ul" || tag === "ol") return [listOf(node, classes, making)];
  if (tag === "dl") return [factsOf(node, making)];
  if (tag === "svg") return attributesHidden(node) ? [] : [drawnOf(node, making)];
  if (tag === "photo") return photoOf(node, making);
  if (classes.includes("signoff"))
    return [{ b: "signoff", words: findAll(children, ({ tag: t }) => t === "p").map(({ children: c }) => textOf(c)) }];
  if (tag === "plate") return plateOf(node, making);
  if (classes.includes("alike") && findAll(children, ({ tag: t }) => t === "li").length <= MOST_TOGETHER)
    return [{ b: "whole", framed: false, c: blocksOf(children, making) }];
  if (classes.includes("plates")) return [{ b: "pictures", items: blocksOf(children, making) }];
  if (classes.includes("verdict") || tag === "figure")
    return [{ b: "whole", framed: classes.includes("verdict"), c: sideBySide(blocksOf(children, making)) }];
  return tag === "p" ? paragraphOf(node, classes, making) : undefined;
}

function tableMade(node: Element, making: Making): Block[] {
  const inTable = { ...making, leads: making.leadsInTables };
  return tableOf(node, { ...inTable, blocks: (nodes) => blocksOf(nodes, inTable) });
}

/** Drawings that follow each other stand beside each other. */
function sideBySide(blocks: readonly Block[]): Block[] {
  const drawn = blocks.filter(({ b }) => b === "drawn");
  if (drawn.length < 2) return [...blocks];
  const [first] = drawn;
  return blocks.flatMap((block): Block[] =>
    block === first ? [{ b: "drawings", items: drawn }] : block.b === "drawn" ? [] : [block],
  );
}

const attributesHidden = ({ attributes }: Element): boolean => attributes["aria-hidden"] === "true";

function withId(id: unknown, blocks: Block[], making: Making): Block[] {
  const ids = typeof id === "string" ? making.first(id) : [];
  if (ids.length === 0) return blocks;
  const [first, ...rest] = blocks;
  return first?.b === "heading"
    ? [{ ...first, ids: [...ids, ...first.ids] }, ...rest]
    : [{ b: "anchors", ids }, ...blocks];
}

/** Headings of batches are bookmarks, and in the index rather than the contents. */
function headingOf(node: Element, level: number, { leads }: Making): Block {
  const told = !classesOf(node).includes("appendix__untold");
  return { b: "heading", level, told, ids: [], c: inlinesOf(node.children, leads) };
}

function paragraphOf({ children }: Element, classes: readonly string[], making: Making): Block[] {
  if (findAll(children, ({ tag }) => tag === "photo" || tag === "p").length > 0) return blocksOf(children, making);
  const look = LOOKS.find(([name]) => classes.includes(name))?.[1] ?? "plain";
  const c = inlinesOf(children, making.leads);
  return c.length === 0 ? [] : [{ b: "text", look, c }];
}

function listOf(node: Element, classes: readonly string[], making: Making): Block {
  const sign = classes.includes("checklist") ? "box" : classes.includes("bare") ? "none" : "point";
  const items = node.children.flatMap((item) => (typeof item === "string" ? [] : [blocksOf(item.children, making)]));
  return { b: "list", sign, short: classes.includes("checklist--alike"), items };
}

function indexOf({ children }: Element, { leads }: Making): Block {
  const rows = findAll(children, ({ tag }) => tag === "a").flatMap((link) => {
    const to = leads(String(link.attributes.href));
    return to === undefined ? [] : [{ id: textOf(link.children), to }];
  });
  return { b: "index", rows };
}

function factsOf({ children }: Element, { leads }: Making): Block {
  const terms = findAll(children, ({ tag }) => tag === "dt" || tag === "dd");
  const rows = terms.flatMap((term, at) =>
    term.tag === "dt"
      ? [[inlinesOf(term.children, leads), inlinesOf(terms[at + 1]?.children ?? [], leads)] as const]
      : [],
  );
  return { b: "facts", rows };
}

function drawnOf(svg: Element, making: Making): Block {
  const { attributes, children } = svg;
  const words = attributes["aria-label"] ?? textOf(findAll(children, ({ tag }) => tag === "title"));
  return { b: "drawn", file: making.drawn(svg), alt: String(words), wide: classesOf(svg).includes("chart__wide") };
}

function photoOf({ attributes }: Element, making: Making): Block[] {
  const { photo } = attributes as unknown as PhotoProps;
  const file = making.picture(photo.file);
  const caption = wordsOf(photo.caption ?? "");
  return file === undefined
    ? [{ b: "text", look: "quiet", c: wordsOf(photo.alt) }]
    : [{ b: "picture", file, alt: photo.alt, caption }];
}

/** A drawing with the marks that stand on it, and what each state is counted. */
function plateOf({ attributes }: Element, making: Making): Block[] {
  const { site, assembly, joints } = attributes as unknown as PlateProps;
  const { drawing } = assembly;
  if (drawing === undefined) return [];
  const file = making.picture(drawing.file);
  if (file === undefined) return [];
  const marks = plateMarks(site, drawing.file, joints).map(({ left, top, of, words, state }) =>
    defined({
      left,
      top,
      of: of && ([of.left, of.top] as const),
      word: words,
      shape: shapeName(state),
      grave: isGrave(state),
    }),
  );
  return [{ b: "plate", file, alt: drawing.alt, marks }];
}
