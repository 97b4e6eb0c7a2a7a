import type { Token } from "markdown-it";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { Image } from "../../layouts/parts/picture.tsx";
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
  const { rules } = markdown.renderer;
  rules.link_open = (tokens, at, options, env: Env, renderer) => {
    const token = tokens[at];
    const href = token === undefined ? undefined : targets.link(String(token.attrGet("href")), env.from);
    env.links.push(href !== undefined);
    if (token === undefined || href === undefined) return "";
    token.attrSet("href", href);
    return renderer.renderToken(tokens, at, options);
  };
  rules.link_close = (_tokens, _at, _options, env: Env) => (env.links.pop() === true ? "</a>" : "");
  rules.image = (tokens, at, _options, env: Env) => imageIn(tokens[at], env);
  const imageIn = (token: Token | undefined, { from }: Env): string => {
    const photo = token === undefined ? undefined : targets.photo(String(token.attrGet("src")), from);
    if (token === undefined || photo === undefined) return "";
    return renderToString(
      h(Image, {
        site,
        from,
        photo: { file: photo.file, alt: token.content === "" ? photo.alt : token.content },
        sizes: "(min-width: 45rem) 42rem, 100vw",
      }),
    );
  };
  markdown.core.ruler.push("heading_ranks", ({ tokens }) => shiftHeadings(tokens));
  return (text, from) => markdown.render(text, { from, links: [] } satisfies Env);
}

function shiftHeadings(tokens: readonly Token[]): void {
  const headings = tokens.filter(({ type }) => type === "heading_open" || type === "heading_close");
  const ranks = headings.map(({ tag }) => Number(tag.slice(1)));
  const shift = FIRST_RANK - Math.min(...ranks);
  headings.forEach((heading, at) => (heading.tag = `h${Math.min(LAST_RANK, (ranks[at] ?? FIRST_RANK) + shift)}`));
}
