import type { EditorLink } from "./editor.ts";
import { inOrder, type Problem, problemCount, problemText } from "../problem.ts";

/** How the last build went: with problems, or with a failure of the program. */
export interface Trouble {
  /** Where a problem's place leads, if anywhere. */
  readonly link?: EditorLink;
  readonly problems: readonly Problem[];
  readonly failure?: string;
}

const STYLE = `
.scarfline-trouble{position:fixed;inset:auto 0 0 0;z-index:1000;max-height:60vh;overflow:auto;margin:0;padding:1rem 1.25rem;
background:#20211e;color:#f4efe4;border-top:.4rem solid #b4552d;font:.9375rem/1.5 system-ui,sans-serif}
.scarfline-trouble a{color:inherit}
.scarfline-trouble summary{font-weight:700;cursor:pointer}
.scarfline-trouble pre{white-space:pre-wrap;margin:.75rem 0 0;font:.875rem/1.5 ui-monospace,monospace}`;

/** A page with a panel of what is wrong laid over it. It is never written into the site. */
export function withTrouble(page: string, trouble: Trouble): string {
  const at = page.lastIndexOf("</body>");
  return at === -1 ? page + panel(trouble) : page.slice(0, at) + panel(trouble) + page.slice(at);
}

/** What is served where there has been no good build yet. */
export function onlyTrouble(trouble: Trouble): string {
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"/><title>No site yet</title></head><body><p>There has been no build without problems yet. This page will change by itself.</p>${panel(trouble)}</body></html>\n`;
}

function panel({ problems, failure, link }: Trouble): string {
  const summary =
    failure === undefined
      ? `${problemCount(problems)} in the record. The site below is the last good one.`
      : "The site could not be built. Below is the last good one.";
  const text =
    failure === undefined
      ? inOrder(problems)
          .map((problem) => linked(problem, link))
          .join("\n\n")
      : escaped(failure);
  return `<style>${STYLE}</style><details open class="scarfline-trouble" role="alert"><summary>${summary}</summary><pre>${text}</pre></details>`;
}

function linked(problem: Problem, link: EditorLink | undefined): string {
  const text = escaped(problemText(problem));
  if (link === undefined) return text;
  return text.replace(/^\S+/u, (place) => `<a href="${escaped(link(problem))}">${place}</a>`);
}

export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
