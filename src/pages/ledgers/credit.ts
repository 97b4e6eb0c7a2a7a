/**
 * What the page on the major portion says. Two ledgers: tasks, and beside them hours, which are no part of the share.
 */
import { defined } from "../../defined.ts";
import { creditOf, type CreditFile } from "../../evidence/credit.ts";
import { WHOLE_TASK, type Tenths } from "../../reckoning/hours/credit.ts";
import type { Shown } from "../../editions/shown.ts";
import { assemblyPath } from "../evidence/trace-index.ts";
import { hoursWords } from "../../words/durations.ts";
import { grouped, percent } from "../../words/numbers.ts";

export const PARTS: readonly (readonly [part: keyof Tenths, word: string])[] = [
  ["maker", "Kit maker"],
  ["paid", "Paid help"],
  ["assembly", "Amateurs, assembly"],
  ["fabrication", "Amateurs, fabrication"],
];

interface CreditRow {
  readonly id: string;
  readonly title: string;
  readonly assembly: string;
  /** In the order of {@link PARTS}; empty where nothing is credited. */
  readonly parts: readonly string[];
}

export interface CreditPage {
  readonly file: CreditFile;
  readonly rows: readonly CreditRow[];
  readonly notApplicable: readonly Omit<CreditRow, "parts">[];
  readonly sums: readonly string[];
  /** The share in words, rounded so that it never seems to lie on the other side of a half; undefined without tasks. */
  readonly share?: string;
  readonly hours: readonly { readonly name: string; readonly time: string; readonly share: string }[];
}

export function creditPage(shown: Shown): CreditPage {
  const { record } = shown;
  const file = creditOf(record);
  const { portion } = file;
  const minutes = [...file.hours];
  const all = minutes.reduce((sum, [, each]) => sum + each, 0);
  return defined({
    file,
    rows: [...file.tasks]
      .sort(byId)
      .map(({ id, title, assembly, credit }) => ({
        id,
        title,
        assembly: assemblyPath(record, assembly),
        parts: PARTS.map(([part]) => points(credit[part])),
      })),
    notApplicable: [...file.notApplicable]
      .sort(byId)
      .map(({ id, title, assembly }) => ({ id, title, assembly: assemblyPath(record, assembly) })),
    sums: portion === undefined ? [] : PARTS.map(([part]) => points(portion.sums[part]) || "0"),
    share: portion === undefined ? undefined : shareWords(portion.share),
    hours: byName(shown, minutes)
      .sort((a, b) => b.minutes - a.minutes)
      .map(({ name, minutes: each }) => ({ name, time: hoursWords(each), share: percent(all === 0 ? 0 : each / all) })),
  });
}

/** Ids with their numbers by size: T-9 before T-10. */
function byId(a: { readonly id: string }, b: { readonly id: string }): number {
  const key = ({ id }: { readonly id: string }): string => id.replace(/\d+/g, (digits) => digits.padStart(8, "0"));
  return key(a) < key(b) ? -1 : 1;
}

/** Whole tenths as points: 27 → `2.7`. */
function points(tenths: number): string {
  return tenths === 0 ? "" : grouped(tenths / WHOLE_TASK, 1);
}

/** One decimal, cut and not rounded, so that 49.96 does not read as 50.0. */
function shareWords(share: number): string {
  return `${grouped(Math.floor(share * 10 + 1e-9) / 10, 1)} %`;
}

/** People whom the edition calls by one name are told as one. */
function byName(shown: Shown, minutes: readonly (readonly [string, number])[]): { name: string; minutes: number }[] {
  const sums = new Map<string, number>();
  for (const [id, each] of minutes) sums.set(shown.nameOf(id), (sums.get(shown.nameOf(id)) ?? 0) + each);
  return [...sums].map(([name, each]) => ({ name, minutes: each }));
}
