/** Prose as an edition shows it: whole passages left out, and no link or image that names what is hidden. */
import type { Passage } from "../record/types.ts";
import type { Veil } from "./veil.ts";

const INLINE = /(!?)\[((?:[^[\]]|\[[^\]]*\])*)\]\(\s*<?([^)\s>]+)>?(?:\s+(?:"[^"]*"|'[^']*'))?\s*\)/g;
const DEFINITION = /^ {0,3}\[[^\]]+\]:\s*<?([^\s>]+)>?.*$/gm;

/** `hides` is asked of each link's target, as typed. */
export function veiledBody(body: readonly Passage[], veil: Veil, hides: (target: string) => boolean): Passage[] {
  return body
    .filter((passage) => veil.sees(passage.audience))
    .map((passage) => ({ ...passage, markdown: unlinked(passage.markdown, hides) }));
}

function unlinked(markdown: string, hides: (target: string) => boolean): string {
  if (!markdown.includes("](") && !markdown.includes("]:")) return markdown;
  return markdown
    .replace(INLINE, (all: string, image: string, text: string, target: string) => {
      const inner = text.includes("](") ? unlinked(text, hides) : text;
      if (hides(target)) return image === "" ? inner : "";
      return all.replace(text, () => inner);
    })
    .replace(DEFINITION, (all: string, target: string) => (hides(target) ? "" : all));
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
