/** Which style sheets a page takes: no more than it shows, so that the first page a visitor opens comes fast. */
import type { PageKind } from "./page-kind.ts";

const RECORDS = ["evidence", "statistics", "charts"] as const;

const OWN: { readonly [kind in PageKind]: readonly string[] } = {
  archive: ["about", "evidence", "story", "archive"],
  home: ["story", "home"],
  entries: ["story"],
  entry: ["entry", "gallery"],
  assemblies: ["story"],
  assembly: ["story", "assembly", "charts"],
  hours: ["story", "charts", "statistics"],
  search: ["search"],
  tags: ["tags"],
  about: ["about", "story"],
  evidence: RECORDS,
  batch: ["evidence"],
  joint: ["evidence", "trace", "gallery"],
  lot: ["evidence", "trace"],
  trial: ["evidence"],
  "hold points": ["story", "evidence"],
  "hold point": ["story", "evidence", "assembly", "gallery", "hold-point"],
  "open items": ["evidence"],
  departures: ["evidence"],
  appendix: [...RECORDS, "assembly", "gallery", "appendix"],
};

/** Names of the sheets in `assets/`, in the order in which later rules outdo earlier ones. */
export function sheetsOf(kind: PageKind): readonly string[] {
  const own = OWN[kind];
  return ["style", ...own, "print", ...(own.includes("evidence") ? ["evidence-print"] : [])];
}

/** Whether a sheet is asked for in print alone: a screen does not wait for it. */
export function isForPaper(sheet: string): boolean {
  return sheet.endsWith("print");
}
