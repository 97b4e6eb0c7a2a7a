/** Links and images in Markdown with their places in the text, so that they can be taken out of it. */
import MarkdownIt from "markdown-it";

export interface Bracketed {
  readonly image: boolean;
  readonly words: string;
  /** As typed, in the link itself or in the definition that it refers to. */
  readonly target: string;
  /** Where its words end, at the closing bracket, and where all of it ends. */
  readonly wordsEnd: number;
  readonly end: number;
}

const PARSER = new MarkdownIt({ html: false });
PARSER.validateLink = () => true;
PARSER.normalizeLink = (target) => target;

/** Targets by the labels that are defined for them in a passage. */
export function referencesIn(markdown: string): ReadonlyMap<string, string> {
  if (!markdown.includes("]:")) return new Map();
  const env: { references?: { [label: string]: { href: string } } } = {};
  PARSER.parse(markdown, env);
  return new Map(Object.entries(env.references ?? {}).map(([label, { href }]) => [label, href]));
}

/** A label as it is looked up: blanks and the size of letters do not count. */
export function labelOf(typed: string): string {
  return PARSER.utils.normalizeReference(typed);
}

/** The link or image that begins at a place of a text, if one does. */
export function bracketedAt(text: string, at: number, references: ReadonlyMap<string, string>): Bracketed | undefined {
  const image = text.startsWith("![", at);
  const start = image ? at + 1 : at;
  if (text[start] !== "[") return undefined;
  const wordsEnd = closing(text, start);
  if (wordsEnd === undefined) return undefined;
  const words = text.slice(start + 1, wordsEnd - 1);
  const found = inlineTarget(text, wordsEnd) ?? referred(text, wordsEnd, words, references);
  return found && { image, words, wordsEnd: wordsEnd - 1, ...found };
}

const PAIRS: { readonly [open: string]: string } = { "[": "]", "(": ")", '"': '"', "'": "'", "<": ">" };

/** The place after what closes the bracket or quotation mark at a place, others of its kind within it closed too; undefined if its paragraph ends before. */
export function closing(text: string, at: number): number | undefined {
  const open = text[at] ?? "";
  const close = PAIRS[open];
  let depth = 0;
  for (let here = at; here < text.length; here++) {
    const char = text[here];
    if (char === "\\") here += 1;
    else if (char === "\n" && /^[ \t]*\n/.test(text.slice(here + 1, here + 80))) return undefined;
    else if (char === close && (open !== close || here > at)) {
      depth -= open === close ? 0 : 1;
      if (depth <= 0) return here + 1;
    } else if (char === open && open !== close) depth += 1;
  }
  return undefined;
}

type Found = { readonly target: string; readonly end: number } | undefined;

/** `(target "title")` */
function inlineTarget(text: string, at: number): Found {
  if (text[at] !== "(") return undefined;
  const start = at + 1 + blanks(text, at + 1);
  const angled = text[start] === "<";
  const end = angled ? closing(text, start) : start + bare(text, start);
  if (end === undefined) return undefined;
  const target = angled ? text.slice(start + 1, end - 1) : text.slice(start, end);
  const titleAt = end + blanks(text, end);
  const titleEnd = titleAt > end && /["'(]/.test(text[titleAt] ?? "") ? closing(text, titleAt) : titleAt;
  if (titleEnd === undefined) return undefined;
  const close = titleEnd + blanks(text, titleEnd);
  return text[close] === ")" ? { target: unescaped(target), end: close + 1 } : undefined;
}

/** `[label]`, `[]`, or nothing: then the words are the label. */
function referred(text: string, at: number, words: string, references: ReadonlyMap<string, string>): Found {
  const end = text[at] === "[" ? closing(text, at) : undefined;
  const typed = end === undefined ? "" : text.slice(at + 1, end - 1);
  const target = references.get(labelOf(typed.trim() === "" ? words : typed));
  if (target !== undefined) return { target, end: end ?? at };
  const short = references.get(labelOf(words));
  return short === undefined ? undefined : { target: short, end: at };
}

function blanks(text: string, at: number): number {
  return /^\s*/.exec(text.slice(at, at + 200))?.[0].length ?? 0;
}

/** Length of a target without blanks, its brackets closed. */
function bare(text: string, at: number): number {
  let depth = 0;
  let here = at;
  for (; here < text.length && !/\s/.test(text[here] ?? ""); here++) {
    if (text[here] === "\\") here += 1;
    else if (text[here] === "(") depth += 1;
    else if (text[here] === ")" && --depth < 0) break;
  }
  return Math.min(here, text.length) - at;
}

function unescaped(target: string): string {
  return target.replace(/\\([!-/:-@[-`{-~])/g, "$1");
}
