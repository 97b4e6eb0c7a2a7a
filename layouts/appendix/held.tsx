/** Which rules were held: what most batches of a part have in common is said once, at its head. */
import type { JSX } from "preact";
import { indexBy } from "../../src/evidence/record-index.ts";
import type { Say } from "../../src/evidence/saying.ts";
import type { BatchFile } from "../../src/evidence/types.ts";
import { ruleTitle } from "../../src/words/findings/told.ts";
import { listed } from "../../src/words/lists.ts";

/** Of fewer it would be told as often as it is said. */
const FEWEST = 3;

/** Their names, each once: what was found and its limit stand beside, and the sources with the rules. */
export const heldTitles = (say: Say, findings: BatchFile["findings"]): readonly string[] => [
  ...new Set(findings.flatMap(({ severity, rule }) => (severity === "meets" ? [ruleTitle(say, rule)] : []))),
];

/** What the most of these batches held, to the last rule; nothing where no three did. */
export function usuallyHeld(say: Say, files: readonly BatchFile[]): readonly string[] {
  const held = files.map(({ findings }) => heldTitles(say, findings));
  const alike = [...indexBy(held, (titles) => titles.join("; ")).values()];
  const most = Math.max(FEWEST, ...alike.map(({ length }) => length));
  return alike.find(({ length }) => length === most)?.[0] ?? [];
}

/** `the usual but for Shop humidity; also Timber on arrival`: by what differs where that is shorter. */
export function heldWords(own: readonly string[], usual: readonly string[]): string {
  const lacking = usual.filter((title) => !own.includes(title));
  const more = own.filter((title) => !usual.includes(title));
  if (usual.length === 0 || lacking.length + more.length >= own.length) return own.join("; ");
  const but = lacking.length === 0 ? "" : ` but for ${listed(lacking)}`;
  return `the usual${but}${more.length === 0 ? "" : `; also ${listed(more)}`}`;
}

export function UsuallyHeld({ titles }: { readonly titles: readonly string[] }): JSX.Element | null {
  return titles.length === 0 ? null : (
    <p class="small">
      <span class="quiet">Most of these batches held, which is called the usual below:</span> {titles.join("; ")}.
    </p>
  );
}
