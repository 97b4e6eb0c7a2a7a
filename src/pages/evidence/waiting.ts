/** Test pieces that are not broken yet, and from when on they may be. */
import type { PieceFile } from "../../evidence/types.ts";
import type { Cure } from "../../evidence/types/cure.ts";
import type { Say } from "../../evidence/saying.ts";
import { LocalTime } from "../../reckoning/time/local-time.ts";
import { dayAt } from "../forecast/chart.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { dateShort } from "../../words/dates.ts";

export interface WaitingRow {
  readonly batch: string;
  readonly pieces: readonly string[];
  /** `20 Nov 2026, 03:00`: by this hour its least cure is reached; and whether that is so by the record's date. */
  readonly from: string;
  readonly sortBy: string;
  readonly now: boolean;
  readonly by: string;
  readonly readyBy: Cure["readyBy"];
}

/** By batch and least cure, the first that may be broken first. */
export function waiting(shown: Shown): WaitingRow[] {
  const { record, evidence } = shown;
  const clock = new LocalTime(record.aircraft.timeZone);
  const end = clock.midnight(dayAt(record.day) + 1);
  const files = traceIndex(shown)
    .batches.flatMap(({ id }) => evidence.batches.get(id)?.pieces ?? [])
    .filter(({ verdict, test }) => verdict === "not broken" && test === undefined);
  const groups = new Map<string, PieceFile[]>();
  for (const file of files) {
    const key = `${file.piece.batch}\u0000${untilOf(file.cure)}`;
    groups.set(key, [...(groups.get(key) ?? []), file]);
  }
  const rows = [...groups.values()].flatMap((group) =>
    group[0] === undefined ? [] : [rowOf(shown, group[0], group, { clock, end })],
  );
  return rows.sort((a, b) => (a.sortBy < b.sortBy ? -1 : a.sortBy > b.sortBy ? 1 : 0));
}

const untilOf = ({ readyAt, from, least }: Cure): number => readyAt ?? from + least;

function rowOf(
  { say }: Shown,
  { piece, cure }: PieceFile,
  group: readonly PieceFile[],
  { clock, end }: { readonly clock: LocalTime; readonly end: number },
): WaitingRow {
  const hour = clock.hourBy(untilOf(cure));
  return {
    batch: piece.batch,
    pieces: group.map((file) => file.piece.id),
    sortBy: hour,
    now: cure.readyBy !== "withheld" && untilOf(cure) < end,
    by: byWords(say, cure),
    readyBy: cure.readyBy,
    from: `${dateShort(hour.slice(0, 10))}, ${hour.slice(11)}`,
  };
}

function byWords(say: Say, { readyBy, assumed }: Cure): string {
  if (readyBy === "withheld")
    return "at the earliest, by days alone; how warm it was rests on something this edition does not show";
  if (readyBy === "logged") return "by the shop’s logger";
  if (assumed !== undefined && readyBy === "too cold")
    return `by days alone, and at ${say(assumed)} it does not cure: the sheet asks more`;
  if (assumed === undefined || readyBy === "unknown") return "by days alone, no temperature being known";
  return readyBy === "assumed"
    ? `at ${say(assumed)}`
    : `by the shop’s logger, and from its last reading on at ${say(assumed)}`;
}
