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
  own: ["story"],
};

export const PAGE_KINDS = Object.keys(OWN) as readonly PageKind[];

/** Where the sheet of the builder's own lies. */
export const OWN_SHEET_PATH = "assets/own.css";

/**
 * Pages that it reaches, and that have own pages among their ways: those of the story. Nobody gives a verdict another look, nor what says
 * how verdicts are reached.
 */
const TAKES_OWN: { readonly [kind in PageKind]: boolean } = {
  archive: false,
  home: true,
  entries: true,
  entry: true,
  assemblies: true,
  assembly: false,
  hours: true,
  search: true,
  tags: false,
  about: false,
  evidence: false,
  batch: false,
  joint: false,
  lot: false,
  trial: false,
  "hold points": false,
  "hold point": false,
  "open items": false,
  departures: false,
  appendix: false,
  own: true,
};

export const takesOwn = (kind: PageKind): boolean => TAKES_OWN[kind];

/** Names of the sheets in `assets/`, in the order in which later rules outdo earlier ones. */
export function sheetsOf(kind: PageKind): readonly string[] {
  const own = OWN[kind];
  return ["style", ...own, "print", ...(own.includes("evidence") ? ["evidence-print"] : [])];
}

/**
 * The page that a visitor opens first: with its sheets in it, that for paper too, its picture is asked for as soon as the page is there, and shares
 * the line with nothing else.
 */
const FIRST: PageKind = "home";

export const carriesSheets = (kind: PageKind): boolean => kind === FIRST;

/** Names of the sheets of the page that carries them, in their order. */
export const FIRST_SHEETS: readonly string[] = sheetsOf(FIRST);

/** Whether a sheet is asked for in print alone: a screen does not wait for it. */
export function isForPaper(sheet: string): boolean {
  return sheet.endsWith("print");
}
