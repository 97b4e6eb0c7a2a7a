/** Looks at a hold point: which count, and what is told of them. One that was not signed counts whoever looked. */
import type { HoldPoint, Inspection, Ref } from "../../facts/types.ts";
import { orderOf, type RecordIndex } from "../record-index.ts";
import { distinct } from "../finding.ts";
import type { Need } from "../types.ts";
import { refused } from "./answering.ts";
import { isPaper } from "./paper.ts";

export interface Looks {
  /** Those that count, in the order of the record. */
  readonly counted: readonly Inspection[];
  /** Of signatures since the last that counts: why they do not. */
  readonly needs: readonly Need[];
}

const REFUSED = {
  role: { code: "need/signed-role", takes: { code: "take/inspector", values: {} } },
  worked: { code: "need/signed-worked", takes: { code: "take/inspector", values: {} } },
  told: { code: "need/signed-told", takes: { code: "take/signed-paper", values: {} } },
} as const;

/** `assemblies`: all that is looked at. */
export function looksOf(index: RecordIndex, holdPoint: HoldPoint, assemblies: ReadonlySet<string>): Looks {
  const all = (index.inspections.get(holdPoint.id) ?? []).map((look) => ({
    look,
    no: look.result === "signed" ? refusedLook(index, holdPoint, look, assemblies) : undefined,
  }));
  const counted = all.filter(({ no }) => no === undefined).map(({ look }) => look);
  const since = all.slice(all.findLastIndex(({ no }) => no === undefined) + 1);
  const about: Ref = { kind: "hold point", id: holdPoint.id };
  const needs = since.flatMap(({ look, no }): Need[] => {
    if (no === undefined) return [];
    const restsOn = distinct([about, { kind: "entry", id: look.entry }, ...no.restsOn]);
    return [{ about, values: { day: look.day }, ...REFUSED[no.because], blocks: false, restsOn }];
  });
  return { counted, needs };
}

/**
 * Why a signature does not count. On no paper, by number or as a scan, it is the builder's word. Who is said to be allowed to return the aircraft
 * to service may do so after own work too.
 */
function refusedLook(
  index: RecordIndex,
  { kind }: HoldPoint,
  { by, reference, scan }: Inspection,
  assemblies: ReadonlySet<string>,
) {
  const may = kind === "return to service" && index.record.aircraft.people.get(by)?.mayReturn !== undefined;
  const no = may ? undefined : refused(index, by, assemblies);
  if (no || isPaper(reference) || scan !== undefined) return no;
  return { because: "told", restsOn: [] } as const;
}

/** The last that counts up to a place in the order of the record; of one day nothing tells which came last, and the worst counts. */
export function lastLook(
  index: RecordIndex,
  { counted }: Looks,
  until = Number.POSITIVE_INFINITY,
): Inspection | undefined {
  const seen = counted.filter(({ entry }) => orderOf(index, entry) <= until);
  const last = seen.at(-1);
  return seen.findLast(({ day, result }) => day === last?.day && result === "not signed") ?? last;
}
