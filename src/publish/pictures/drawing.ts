/** Why a drawing cannot be published as it is, and where in its file. */
export interface Objection {
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly why: string;
}

export interface Drawing {
  /** CSS pixels, from `viewBox` or from width and height. */
  readonly width: number;
  readonly height: number;
  readonly svg: string;
}

interface Tag {
  readonly text: string;
  readonly at: number;
  /** With its prefix, as written; empty for comments, instructions and document types. */
  readonly name: string;
  readonly closes: boolean;
  readonly empty: boolean;
}

const MARKUP =
  /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>|<!DOCTYPE[^[>]*(?:\[[\s\S]*?\]\s*)?>|<\/?([A-Za-z_][\w:.-]*)(?:"[^"]*"|'[^']*'|[^"'>])*>/g;
const ATTRIBUTE = /\s+([A-Za-z_][\w:.-]*)\s*=\s*("[^"]*"|'[^']*')/g;
const KNOWN_PREFIXES = new Set(["svg", "xlink", "xml", "xmlns"]);
const RUNS_CODE = new Set(["script", "foreignObject", "handler", "listener"]);
const OUTSIDE = /url\(\s*["']?(?!["']?#)|@import|javascript:/i;

/**
 * A drawing fit to be published: what drawing programs note beside the picture (paths on a disk, names, settings) is
 * left out.
 * Code, and references to anything outside the file, are objections, all of them told.
 */
export function readDrawing(text: string): Drawing | readonly Objection[] {
  const source = text.replace(/^\uFEFF/, "");
  const tags = tagsOf(source);
  const root = tags.find((tag) => tag.name !== "");
  if (root === undefined || localName(root.name) !== "svg")
    return [objection(source, 0, "", "this is no SVG drawing: its first element is not <svg>")];
  const objections = tags.flatMap((tag) => objectionsTo(source, tag));
  const size = sizeOf(root.text);
  if (size === undefined)
    objections.push(
      objection(
        source,
        root.at,
        root.text,
        "the drawing says neither viewBox nor width and height, so a page cannot keep its place",
      ),
    );
  return objections.length > 0 || size === undefined ? objections : { ...size, svg: withoutNotes(source, tags) };
}

function tagsOf(source: string): Tag[] {
  return [...source.matchAll(MARKUP)].map((match) => ({
    text: match[0],
    at: match.index,
    name: match[1] ?? "",
    closes: match[0].startsWith("</"),
    empty: match[0].endsWith("/>"),
  }));
}

function objectionsTo(source: string, tag: Tag): Objection[] {
  if (tag.text.startsWith("<!DOCTYPE") && tag.text.includes("<!ENTITY"))
    return [objection(source, tag.at, "<!ENTITY", "the drawing defines entities")];
  if (tag.name === "" || tag.closes) return [];
  if (localName(tag.name) === "style" && OUTSIDE.test(styleText(source, tag)))
    return [objection(source, tag.at, tag.text, "the drawing's styles fetch something from outside itself")];
  if (RUNS_CODE.has(localName(tag.name)))
    return [objection(source, tag.at, `<${tag.name}>`, "the drawing holds code or a page of its own")];
  const bad = attributesOf(tag.text).filter(({ name, value }) => isBad(name, value));
  return bad.map(({ name, value }) =>
    objection(
      source,
      tag.at,
      `${name}="${value.slice(0, 60)}"`,
      "the drawing runs code or fetches something from outside itself",
    ),
  );
}

function styleText(source: string, tag: Tag): string {
  const from = tag.at + tag.text.length;
  return tag.empty ? "" : source.slice(from, source.indexOf("</", from));
}

function isBad(name: string, value: string): boolean {
  if (/^on/i.test(name)) return true;
  if (localName(name) === "href") return !value.trim().startsWith("#");
  return !name.startsWith("xmlns") && OUTSIDE.test(value);
}

function attributesOf(tag: string): { name: string; value: string }[] {
  return [...tag.matchAll(ATTRIBUTE)].map(([, name = "", quoted = ""]) => ({ name, value: quoted.slice(1, -1) }));
}

function sizeOf(root: string): { width: number; height: number } | undefined {
  const attributes = new Map(attributesOf(root).map(({ name, value }) => [name, value]));
  const [, , width, height] = (attributes.get("viewBox") ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const size = { width: width ?? pixels(attributes.get("width")), height: height ?? pixels(attributes.get("height")) };
  const whole = (length: number): number => Math.max(1, Math.round(length));
  return size.width > 0 && size.height > 0 ? { width: whole(size.width), height: whole(size.height) } : undefined;
}

function pixels(length: string | undefined): number {
  return length !== undefined && /^\d+(\.\d+)?(px)?$/.test(length.trim()) ? Number.parseFloat(length) : Number.NaN;
}

function withoutNotes(source: string, tags: readonly Tag[]): string {
  let out = "";
  let from = 0;
  let inside = 0;
  let inStyles = false;
  const shown = (text: string): string => (inStyles ? text.replace(/\/\*[\s\S]*?\*\//g, "") : text);
  for (const tag of tags) {
    if (inside === 0) out += shown(source.slice(from, tag.at));
    from = tag.at + tag.text.length;
    const isNote =
      tag.name === "" ? !tag.text.startsWith("<![CDATA[") && !tag.text.startsWith("<?xml ") : isNoteElement(tag.name);
    if (inside === 0 && !isNote) out += shown(withoutForeignAttributes(tag.text));
    if (localName(tag.name) === "style") inStyles = !tag.closes && !tag.empty;
    if (tag.name !== "" && (inside > 0 || isNote) && !tag.empty) inside += tag.closes ? -1 : 1;
  }
  return out + source.slice(from);
}

function isNoteElement(name: string): boolean {
  return localName(name) === "metadata" || !hasKnownPrefix(name);
}

function withoutForeignAttributes(tag: string): string {
  return tag.replace(ATTRIBUTE, (all, name: string) => {
    const foreign = name.startsWith("xmlns:") ? !KNOWN_PREFIXES.has(localName(name)) : !hasKnownPrefix(name);
    return foreign || name.startsWith("data-") ? "" : all;
  });
}

function hasKnownPrefix(name: string): boolean {
  return !name.includes(":") || KNOWN_PREFIXES.has(name.slice(0, name.indexOf(":")));
}

function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

function objection(source: string, at: number, found: string, why: string): Objection {
  const before = source.slice(0, at).split("\n");
  return { line: before.length, column: (before[before.length - 1]?.length ?? 0) + 1, found: found.slice(0, 80), why };
}
