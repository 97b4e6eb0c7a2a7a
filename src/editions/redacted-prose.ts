/** Prose as an edition shows it: whole passages left out, and no link or image that names what is hidden. */
import type { Token } from "markdown-it";
import { same } from "../facts/decisions.ts";
import type { Passage, Record } from "../facts/types.ts";
import { isShown, type Visibility } from "../facts/visibility.ts";
import { targetOf } from "../record/links.ts";
import { markdownParser } from "../record/text/markdown.ts";
import { withBlocks } from "./texts.ts";

type Hides = (target: string) => boolean;

const PARSER = markdownParser();
/** Without one of these there is no link and no image; most passages have none, and parsing is slow. */
const MAY_LINK = /\]|<[a-z]/i;

/** `hides` is asked of each link's target, as typed. */
export function redactedBody(
  body: readonly Passage[],
  { sees }: Pick<Visibility, "sees">,
  hides: Hides,
): readonly Passage[] {
  return same(
    body,
    body
      .filter((passage) => sees(passage.audience))
      .map((passage) =>
        withBlocks(passage, (markdown) => (MAY_LINK.test(markdown) ? cut(markdown, hides) : undefined)),
      ),
  );
}

/**
 * Nothing where a passage names nothing that is hidden; else only its blocks, in which a hidden image is gone with its words and of a
 * hidden link the words are left. What labels stand for is in none of them.
 */
function cut(markdown: string, hides: Hides): readonly Token[] | undefined {
  const env: { references?: object } = {};
  const blocks = PARSER.parse(markdown, env);
  const shown = blocks.map((block) => withoutHidden(block, hides));
  if (env.references === undefined && same(blocks, shown) === blocks) return undefined;
  return shown.map(withoutSource);
}

/** `token` itself where nothing in it is hidden. The words of a picture may hold links too. */
function withoutHidden(token: Token, hides: Hides): Token {
  if (token.children === null) return token;
  const isShown: boolean[] = [];
  const kept = token.children.filter((child) => {
    if (child.type === "image") return !hides(String(child.attrGet("src")));
    if (child.type === "link_close") return isShown.pop() === true;
    if (child.type !== "link_open") return true;
    isShown.push(!hides(String(child.attrGet("href"))));
    return isShown.at(-1) === true;
  });
  const children = kept.map((child) => withoutHidden(child, hides));
  return same(token.children, children) === token.children ? token : changed(token, { children });
}

/** The parser keeps beside the words of a paragraph and of a picture what they were read from. */
function withoutSource(token: Token): Token {
  if (token.children === null) return token;
  return changed(token, { content: "", children: token.children.map(withoutSource) });
}

function changed(token: Token, change: Partial<Token>): Token {
  return Object.assign(Object.create(Object.getPrototypeOf(token) as object) as Token, token, change);
}

/**
 * Whether a link's target names something that the edition hides, as the record itself reads links. What leads to nothing that the record
 * knows is hidden too.
 */
export function hiddenTargets(
  whole: Record,
  visibility: Omit<Visibility, "prose">,
): (folder: string, target: string) => boolean {
  return (folder, target) => {
    const found = targetOf(whole, folder === "" ? "-.md" : `${folder}/-.md`, target);
    if (found === undefined) return true;
    if ("web" in found) return false;
    return "file" in found ? visibility.hiddenFiles.has(found.file) : !isShown(found.ref, visibility);
  };
}
