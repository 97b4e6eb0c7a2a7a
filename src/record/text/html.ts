/** HTML in Markdown, which pages show as it is typed. */
import MarkdownIt, { type Token } from "markdown-it";
import { shown } from "../../facts/reading.ts";

export interface Html {
  readonly shown: string;
  /** Characters from the start of the passage. */
  readonly offset: number;
}

/** Only asked what is HTML; nothing is rendered by it. */
const PARSER = new MarkdownIt({ html: true });
const MAY_HOLD = /<[a-z/?![]/i;

/** Tags and blocks of HTML by the rules of CommonMark. Comments are left out: they are problems. */
export function htmlIn(markdown: string): Html[] {
  if (!MAY_HOLD.test(markdown)) return [];
  const starts = [0];
  for (let end = markdown.indexOf("\n"); end >= 0; end = markdown.indexOf("\n", end + 1)) starts.push(end + 1);
  let line = 0;
  return PARSER.parse(markdown, {}).flatMap((token) => {
    line = token.map?.[0] ?? line;
    const start = starts[line] ?? 0;
    const end = starts[token.map?.[1] ?? line + 1] ?? markdown.length;
    return tagsIn(token, markdown.slice(start, end)).map(({ tag, at }) => ({ shown: shown(tag), offset: start + at }));
  });
}

function tagsIn(block: Token, text: string): { readonly tag: string; readonly at: number }[] {
  const tags = (block.type === "html_block" ? [block] : (block.children ?? []).filter(isTag)).map(
    ({ content }) => content.trim().split("\n", 1)[0] ?? "",
  );
  let from = 0;
  return tags.flatMap((tag) => {
    const found = text.indexOf(tag, from);
    if (found >= 0) from = found + tag.length;
    return tag.startsWith("<!--") ? [] : [{ tag, at: Math.max(0, found) }];
  });
}

const isTag = ({ type }: Token): boolean => type === "html_inline";
