/** What templates make, as plain elements: read from the very tree that is written as HTML, so that both say the same. */
import { DomUtils, parseDocument } from "htmlparser2";
import { isValidElement, type ComponentChildren, type VNode } from "preact";
import { Plate } from "../../../layouts/parts/drawing.tsx";
import { Mark } from "../../../layouts/parts/mark.tsx";
import { Image, Photo } from "../../../layouts/parts/picture.tsx";

export interface Element {
  readonly tag: string;
  readonly attributes: { readonly [name: string]: unknown };
  readonly children: readonly Tree[];
  /** As it was in the template, for what is written as SVG. */
  readonly source?: VNode;
}

export type Tree = string | Element;

/** Components that paper shows in a way of its own: they stay, with what they were given. */
const KEPT: ReadonlyMap<unknown, string> = new Map<unknown, string>([
  [Mark, "mark"],
  [Plate, "plate"],
  [Photo, "photo"],
  [Image, "photo"],
]);

type Props = { readonly [name: string]: unknown } & { readonly children?: ComponentChildren };

/** Elements with their texts; components are called, and what draws nothing is left out. */
export function treeOf(made: ComponentChildren): Tree[] {
  const trees: Tree[] = [];
  addTo(trees, made);
  return trees;
}

function addTo(trees: Tree[], made: ComponentChildren): void {
  if (made === null || made === undefined || typeof made === "boolean") return;
  if (typeof made === "string" || typeof made === "number" || typeof made === "bigint") trees.push(String(made));
  else if (Array.isArray(made)) for (const one of made as readonly ComponentChildren[]) addTo(trees, one);
  else if (isValidElement(made)) addElement(trees, made as VNode<Props>);
}

function addElement(trees: Tree[], node: VNode<Props>): void {
  const { type, props } = node;
  const kept = KEPT.get(type);
  if (kept !== undefined) trees.push({ tag: kept, attributes: props, children: [] });
  else if (typeof type === "function") addTo(trees, (type as unknown as (props: Props) => ComponentChildren)(props));
  else {
    const { children, dangerouslySetInnerHTML: raw, ...attributes } = props;
    const html = (raw as { readonly __html?: string } | undefined)?.__html;
    if (type === "svg") trees.push({ tag: type, attributes, children: [], source: node });
    else trees.push({ tag: type, attributes, children: html === undefined ? treeOf(children) : parsed(html) });
  }
}

type ParsedNode = ReturnType<typeof parseDocument>["children"][number];

/** Prose, which the site's own Markdown has made. */
function parsed(html: string): Tree[] {
  return parseDocument(html).children.flatMap(fromParsed);
}

function fromParsed(node: ParsedNode): Tree[] {
  if (DomUtils.isText(node)) return [node.data];
  if (!DomUtils.isTag(node)) return [];
  return [{ tag: node.name, attributes: node.attribs, children: node.children.flatMap(fromParsed) }];
}

/** Words of its classes. */
export function classesOf({ attributes }: Element): readonly string[] {
  const names = attributes.class ?? attributes.className;
  return typeof names === "string" ? names.split(/\s+/) : [];
}

/** All elements below, in their order, that a question is answered with yes for; none within one that was taken. */
export function findAll(nodes: readonly Tree[], is: (element: Element) => boolean): Element[] {
  const found: Element[] = [];
  const look = (among: readonly Tree[]): void => {
    for (const node of among) {
      if (typeof node === "string") continue;
      if (is(node)) found.push(node);
      else look(node.children);
    }
  };
  look(nodes);
  return found;
}

export function textOf(nodes: readonly Tree[]): string {
  return nodes
    .map((node) => (typeof node === "string" ? node : node.tag === "mark" ? markWord(node) : textOf(node.children)))
    .join("");
}

export function markWord({ attributes }: Element): string {
  return String(attributes.word ?? attributes.of);
}
