import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { historyPath } from "../../src/pages/archive/history.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Ref } from "../../src/facts/types.ts";

/** To the history of a part, in the edition that has it. */
export function HistoryLink({
  site,
  from,
  of,
  words = "Its history by date, from timber to signature",
}: {
  readonly site: Site;
  readonly from: string;
  readonly of: Ref;
  readonly words?: string;
}): JSX.Element | null {
  return site.shown.edition === "archive" ? <a href={relative(from, historyPath(of))}>{words}</a> : null;
}
