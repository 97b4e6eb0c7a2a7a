import type { Token } from "markdown-it";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { Image, Large } from "../../layouts/parts/picture.tsx";
import type { Site } from "../editions/shown.ts";
import { markdownParser } from "../record/text/markdown.ts";
import { targetsIn } from "./targets.ts";

interface Env {
  readonly from: string;
  /** For each open link whether it is shown as one. */
  readonly links: boolean[];
}

/** The title of a page is its only heading of the first rank, whatever the builder begins with. */
const FIRST_RANK = 2;
const LAST_RANK = 6;

/**
 * Renders the Markdown of a record for one edition. Raw HTML is shown as typed. Links to ids, entries and files of the
 * record become links within the site, and plain words where the edition does not show what they lead to.
 */
export function proseOf(site: Site): Site["prose"] {
  const targets = targetsIn(site);
  const markdown = markdownParser();
  const { renderer, options } = markdown;
  const { rules } = renderer;
  rules.link_open = (tokens, at, _options, env: Env) => {
    const token = tokens[at];
    const href = token === undefined ? undefined : targets.link(String(token.attrGet("href")), env.from);
    env.links.push(href !== undefined);
    if (token === undefined || href === undefined) return "";
    token.attrSet("href", href);
    return renderer.renderToken(tokens, at, options);
  };
  rules.link_close = (_tokens, _at, _options, env: Env) => (env.links.pop() === true ? "</a>" : "");
  rules.image = (tokens, at, _options, env: Env) => imageIn(tokens[at], env);
  const imageIn = (token: Token | undefined, env: Env): string => {
    const photo = token === undefined ? undefined : targets.photo(String(token.attrGet("src")), env.from);
    if (token === undefined || photo === undefined) return "";
    const alt = renderer.renderInlineAsText(token.children ?? [], options, env);
    const image = h(Image, {
      site,
      from: env.from,
      photo: { file: photo.file, alt: alt === "" ? photo.alt : alt },
      sizes: "(min-width: 45rem) 42rem, 100vw",
    });
    // A link within a link is none.
    const isLinked = env.links.includes(true);
    return isLinked
      ? renderToString(image)
      : renderToString(h(Large, { site, from: env.from, file: photo.file }, image));
  };
  return (passage, from, part) => {
    const tokens = passage.blocks?.map(copyOf) ?? markdown.parse(passage.markdown, {});
    shiftHeadings(tokens);
    const shown = part === undefined ? tokens : firstParagraph(tokens);
    return renderer.render(shown, options, { from, links: [] } satisfies Env);
  };
}

/** Blocks that an edition holds are rendered for many pages, and rendering changes them. */
function copyOf(token: Token): Token {
  return Object.assign(Object.create(Object.getPrototypeOf(token) as object) as Token, token, {
    attrs: token.attrs?.map(([name, value]) => [name, value]) ?? null,
    children: token.children?.map(copyOf) ?? null,
  });
}

/** The first paragraph that does not begin with a picture. */
function firstParagraph(tokens: readonly Token[]): Token[] {
  const at = tokens.findIndex(
    ({ type, level }, index) =>
      type === "paragraph_open" && level === 0 && tokens[index + 1]?.children?.[0]?.type !== "image",
  );
  return at < 0 ? [] : tokens.slice(at, at + 3);
}

function shiftHeadings(tokens: readonly Token[]): void {
  const headings = tokens.filter(({ type }) => type === "heading_open" || type === "heading_close");
  const ranks = headings.map(({ tag }) => Number(tag.slice(1)));
  const shift = FIRST_RANK - Math.min(...ranks);
  headings.forEach((heading, at) => (heading.tag = `h${Math.min(LAST_RANK, (ranks[at] ?? FIRST_RANK) + shift)}`));
}
