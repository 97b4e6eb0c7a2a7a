/** The file that goes out: an entry as the desk writes one, with the session that it is of in a comment. */
import { fileText } from "../desk/front-matter.ts";
import { pathOf } from "../desk/entry/text.ts";
import { type DayFacts, dayFacts } from "./entry-facts.ts";
import type { Session } from "./session.ts";
import type { Snapshot } from "./snapshot.ts";

export interface BenchFile extends DayFacts {
  /** In the record's folder. */
  readonly path: string;
  readonly text: string;
}

/** One for each day of the session; `digest` names the record that the page was made of. */
export function benchFiles(session: Session, given: Snapshot, digest: string): readonly BenchFile[] {
  return dayFacts(session, given).map((one) => ({
    ...one,
    path: pathOf(one.day, one.title),
    text: `${fileText(one.facts, [
      `Written at the bench: session ${session.id}, revision ${session.revision}`,
      `By the record of ${given.day}, ${digest.slice(0, 16)}`,
    ])}${one.body === undefined ? "" : `\n${one.body}\n`}`,
  }));
}
