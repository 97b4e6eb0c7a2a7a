/** Prose as an edition shows it: whole passages left out, and no link or image that names what is hidden. */
import { bracketedAt, closing, labelOf, referencesIn } from "../record/text/brackets.ts";
import type { Passage } from "../facts/types.ts";
import { unchanged } from "./unchanged.ts";
import type { Visibility } from "./visibility.ts";

type Hides = (target: string) => boolean;

/** `hides` is asked of each link's target, as typed. */
export function redactedBody(body: readonly Passage[], visibility: Visibility, hides: Hides): Passage[] {
  return body
    .filter((passage) => visibility.sees(passage.audience))
    .map((passage) => unchanged(passage, { ...passage, markdown: unlinked(passage.markdown, hides) }));
}

/** A hidden image goes with its words, of a hidden link the words stay; and of both what they refer to elsewhere in the passage. */
function unlinked(markdown: string, hides: Hides): string {
  if (!/\](?:\(|:|\[|)/.test(markdown)) return markdown;
  const references = referencesIn(markdown);
  const isHidden = (target: string | undefined): boolean => target !== undefined && hides(target);
  const open = (text: string): string => {
    let out = "";
    let at = 0;
    while (at < text.length) {
      const found = bracketedAt(text, at, references);
      if (found === undefined) {
        const length = text[at] === "\\" ? 2 : 1;
        out += text.slice(at, at + length);
        at += length;
        continue;
      }
      const { image, words, target, end, wordsEnd } = found;
      if (!isHidden(target)) out += `${image ? "!" : ""}[${open(words)}${text.slice(wordsEnd, end)}`;
      else if (!image) out += open(words);
      at = end;
    }
    return out;
  };
  return open(withoutDefinitions(markdown, (label) => isHidden(references.get(label))));
}

const DEFINITION = /^ {0,3}\[((?:\\.|[^\\[\]])+)\]:[ \t]*\n?[ \t]*(?:<[^<>\n]*>|\S+)/gm;
const TITLE = /^(?:[ \t]+|[ \t]*\n[ \t]*)(?=["'(])/;

function withoutDefinitions(markdown: string, isHidden: (label: string) => boolean): string {
  let out = "";
  let from = 0;
  for (const match of markdown.matchAll(DEFINITION)) {
    if (match.index < from || !isHidden(labelOf(match[1] ?? ""))) continue;
    out += markdown.slice(from, match.index);
    from = match.index + match[0].length;
    const before = TITLE.exec(markdown.slice(from))?.[0].length;
    const end = before === undefined ? undefined : closing(markdown, from + before);
    if (end !== undefined && /^[ \t]*(?:\n|$)/.test(markdown.slice(end))) from = end;
  }
  return out + markdown.slice(from);
}

/** A target as a path relative to the record's folder, from a file in `folder`; without fragment or query. */
export function resolved(folder: string, target: string): string {
  const parts = folder === "" ? [] : folder.split("/");
  for (const part of decoded(target).split(/[?#]/)[0]?.split("/") ?? []) {
    if (part === "..") parts.pop();
    else if (part !== "." && part !== "") parts.push(part);
  }
  return parts.join("/");
}

function decoded(target: string): string {
  try {
    return decodeURIComponent(target);
  } catch {
    return target;
  }
}
