import { isGrave, type Marked } from "../../../layouts/parts/mark.tsx";
import { shapeName } from "../../../layouts/parts/shapes.tsx";
import type { Inline } from "./blocks.ts";
import { classesOf, type Element, findAll, markWord, type Tree } from "./tree.ts";
import { contained, wordsOf } from "./words.ts";

/** Where a link leads within the paper, if it does. */
export type Leads = (href: string) => string | undefined;

export const INLINE = new Set([
  "a",
  "b",
  "br",
  "code",
  "del",
  "em",
  "i",
  "ins",
  "mark",
  "small",
  "span",
  "strong",
  "sub",
  "sup",
  "time",
]);

const LOOKS = { strong: "strong", b: "strong", em: "emph", i: "emph", code: "code", del: "was", ins: "is" } as const;

/** Whether nothing within it is a block. */
export function isLine(node: Element): boolean {
  return findAll(node.children, ({ tag }) => !INLINE.has(tag) && tag !== "svg").length === 0;
}

/** Words of a line, with whatever lies in them. Pictures and blocks are no part of a line. */
export function inlinesOf(nodes: readonly Tree[], leads: Leads): Inline[] {
  const line: Inline[] = [];
  for (const node of nodes)
    for (const part of typeof node === "string" ? wordsOf(node) : inlineOf(node, leads)) {
      const before = line.at(-1);
      if (typeof part === "string" && typeof before === "string") line[line.length - 1] = before + part;
      else line.push(part);
    }
  return line;
}

function inlineOf(node: Element, leads: Leads): Inline[] {
  const { tag, attributes, children } = node;
  if (tag === "mark") return [markOf(node)];
  if (tag === "br") return [{ i: "break" }];
  if (tag === "svg" || attributes["aria-hidden"] === "true" || classesOf(node).includes("unseen")) return [];
  const c = inlinesOf(children, leads);
  if (tag in LOOKS) return [{ i: LOOKS[tag as keyof typeof LOOKS], c }];
  if (tag === "a") return linked(String(attributes.href ?? ""), c, leads);
  if (classesOf(node).includes("quiet")) return [{ i: "quiet", c }];
  return c;
}

function linked(href: string, c: readonly Inline[], leads: Leads): Inline[] {
  const to = leads(href);
  return to === undefined ? [...c] : [{ i: "to", to, c }];
}

function markOf(node: Element): Inline & { readonly i: "mark" } {
  const of = node.attributes.of as Marked;
  return { i: "mark", shape: shapeName(of), word: contained(markWord(node)), grave: isGrave(of) };
}
