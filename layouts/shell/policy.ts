import { createHash } from "node:crypto";
import { placedRules } from "../parts/placed.ts";
import type { Parted } from "./parted.ts";

/**
 * What any page may: show and run what lies in the site itself, and nothing else. No page connects, frames, sends or
 * embeds anything.
 */
const RULES = {
  "default-src": "'none'",
  "script-src": "'self'",
  "style-src": "'self'",
  "img-src": "'self'",
  "media-src": "'self'",
  "connect-src": "'none'",
  "frame-src": "'none'",
  "object-src": "'none'",
  "base-uri": "'none'",
  "form-action": "'none'",
} as const;

type Directive = keyof typeof RULES;

/** What a page may beyond what any may. */
export type Allowed = { readonly [directive in Directive]?: readonly string[] };

const OPENING = '<meta http-equiv="Content-Security-Policy" content="';
const CHARSET = '<meta charset="utf-8"/>';
const STYLE = /<style>([\s\S]*?)<\/style>/g;

/** The element that states a policy; `more` is added to what a directive allows. */
function policyTag(more: Allowed = {}): string {
  const rules = Object.entries(RULES).map(([directive, usual]) => {
    const added = more[directive as Directive] ?? [];
    return [directive, ...(added.length > 0 && usual === "'none'" ? [] : [usual]), ...added].join(" ");
  });
  return `${OPENING}${rules.join("; ")}"/>`;
}

/**
 * A whole page with the rules of the classes called in it, and its policy ahead of all else. Sheets within it are named
 * by their hash.
 */
export function withPolicy({ head, rest }: Parted, more: Allowed): Parted {
  const rules = placedRules(head, rest);
  const styled = rules === "" ? head : `${head}<style>${rules}</style>`;
  return { head: policed(styled, [styled, rest], more), rest };
}

/** A page that was given its policy, allowed more; sheets within it are found anew. */
export function policedAnew(page: string, more: Allowed): string {
  const from = page.indexOf(OPENING);
  const end = page.indexOf("/>", from) + 2;
  const bare = from < 0 ? page : page.slice(0, from) + page.slice(end);
  return policed(bare, [bare], more);
}

/** `whole` is all that may have sheets within it. */
function policed(head: string, whole: readonly string[], more: Allowed): string {
  const sheets = whole.flatMap((part) => [...part.matchAll(STYLE)].map(([, css = ""]) => hashOf(css)));
  return head.replace(CHARSET, () => CHARSET + policyTag({ ...more, "style-src": sheets }));
}

/** Hashes of the sheets within pages that were asked for last: those of cards are the same on most. */
const hashed = new Map<string, string>();
const MOST = 200;

/** As a policy names what may run or style within a page. */
export function hashOf(text: string): string {
  const hash = hashed.get(text) ?? `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
  if (hashed.size === MOST) hashed.clear();
  hashed.set(text, hash);
  return hash;
}
