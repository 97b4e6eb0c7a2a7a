import { createHash } from "node:crypto";
import { placedRules } from "../parts/placed.ts";

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
export function withPolicy(page: string, more: Allowed): string {
  const rules = placedRules(page);
  const styled = rules === "" ? page : page.replace("</head>", () => `<style>${rules}</style></head>`);
  return policed(styled, more);
}

/** A page that was given its policy, allowed more; sheets within it are found anew. */
export function policedAnew(page: string, more: Allowed): string {
  const from = page.indexOf(OPENING);
  const end = page.indexOf("/>", from) + 2;
  return from < 0 ? policed(page, more) : policed(page.slice(0, from) + page.slice(end), more);
}

function policed(page: string, more: Allowed): string {
  const sheets = [...page.matchAll(STYLE)].map(([, css = ""]) => hashOf(css));
  return page.replace(CHARSET, () => CHARSET + policyTag({ ...more, "style-src": sheets }));
}

/** As a policy names what may run or style within a page. */
export function hashOf(text: string): string {
  return `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
}
