/** Links, pictures and hidden comments in Markdown, each with its place. */
import type { Token } from "markdown-it";
import { markdownParser } from "./markdown.ts";

export interface Mention {
  readonly kind: "link" | "image" | "comment";
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
  return PARSER.parse(markdown, {}).flatMap((token) => {
    // Cells have no lines of their own, their rows have.
    line = token.map?.[0] ?? line;
    return token.type === "inline" ? inlineMentions(token, markdown, starts[line] ?? 0) : [];
  });
}

function inlineMentions(block: Token, markdown: string, blockStart: number): Mention[] {
  const mentions: Mention[] = [];
  let from = blockStart;
  const add = (kind: Mention["kind"], target: string): void => {
    const found = markdown.indexOf(target, from);
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
