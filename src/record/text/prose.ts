/** Links, pictures and hidden comments in Markdown, each with its place. */
import type { Token } from "markdown-it";
import { LIMITS } from "../../facts/limits.ts";
import { markdownParser } from "./markdown.ts";

export interface Mention {
  /** `beyond` is a link or picture after as many as are read. */
  readonly kind: "link" | "image" | "comment" | "beyond";
  /** The target as typed. */
  readonly target: string;
  /** Characters from the start of the passage. */
  readonly offset: number;
}

const PARSER = markdownParser();

/** Two hyphens may have become a dash. */
const COMMENT = /<!(?:--|–|—)/;

/** Whether a passage can hold any at all; most do not, and parsing is slow. */
const MAY_HOLD = /\]\(|\]:|\]\[|<[a-zA-Z!]/;

export function mentionsIn(markdown: string): Mention[] {
  if (!MAY_HOLD.test(markdown)) return [];
  const starts = [0];
  for (let end = markdown.indexOf("\n"); end >= 0; end = markdown.indexOf("\n", end + 1)) starts.push(end + 1);
  let line = 0;
  const mentions: Mention[] = [];
  for (const token of PARSER.parse(markdown, {})) {
    // Cells have no lines of their own, their rows have.
    line = token.map?.[0] ?? line;
    if (token.type === "inline") mentions.push(...inlineMentions(token, markdown, starts[line] ?? 0, mentions.length));
    if (mentions.at(-1)?.kind === "beyond") break;
  }
  return mentions;
}

/** `before` is how many the passage has before this block. */
function inlineMentions(block: Token, markdown: string, blockStart: number, before: number): Mention[] {
  const mentions: Mention[] = [];
  let from = blockStart;
  const add = (what: Mention["kind"], target: string): void => {
    if (before + mentions.length > LIMITS.links) return;
    const found = markdown.indexOf(target, from);
    const kind = before + mentions.length === LIMITS.links ? "beyond" : what;
    mentions.push({ kind, target, offset: found < 0 ? blockStart : found });
    if (found >= 0) from = found + target.length;
  };
  const visit = (tokens: readonly Token[]): void => {
    for (const token of tokens) {
      if (token.type === "link_open") add("link", String(token.attrGet("href") ?? ""));
      else if (token.type === "image") add("image", String(token.attrGet("src") ?? ""));
      else if (token.type === "text" && COMMENT.test(token.content)) add("comment", "<!--");
      if (token.children && token.type !== "image") visit(token.children);
    }
  };
  visit(block.children ?? []);
  return mentions;
}
