/** Looks at a hold point: which count, and what is told of them. One that was not signed counts whoever looked. */
import type { HoldPoint, Inspection, Ref } from "../../facts/types.ts";
import { orderOf, type RecordIndex } from "../record-index.ts";
import { distinct } from "../finding.ts";
import type { Need, Remark } from "../types.ts";
import { refused } from "./answering.ts";

export interface Looks {
  /** Those that count, in the order of the record. */
  readonly counted: readonly Inspection[];
  /** Of signatures since the last that counts: why they do not. */
  readonly needs: readonly Need[];
  readonly remarks: readonly Remark[];
}

/** `assemblies`: all that is looked at. */
export function looksOf(index: RecordIndex, holdPoint: HoldPoint, assemblies: ReadonlySet<string>): Looks {
  const all = (index.inspections.get(holdPoint.id) ?? []).map((look) => ({
    look,
    no: look.result === "signed" ? refused(index, look.by, assemblies) : undefined,
  }));
  const counted = all.filter(({ no }) => no === undefined).map(({ look }) => look);
  const since = all.slice(all.findLastIndex(({ no }) => no === undefined) + 1);
  const needs = since.map(({ look, no }): Need => {
    const about: Ref = { kind: "hold point", id: holdPoint.id };
    return {
      about,
      code: no?.because === "worked" ? "need/signed-worked" : "need/signed-role",
      values: { day: look.day },
      takes: { code: "take/inspector", values: {} },
      blocks: false,
      restsOn: distinct([about, { kind: "entry", id: look.entry }, ...(no?.restsOn ?? [])]),
    };
  });
  return { counted, needs, remarks: remarksOn(counted.at(-1)) };
}

function remarksOn(last: Inspection | undefined): Remark[] {
  if (last?.result !== "signed" || last.reference !== undefined || last.scan !== undefined) return [];
  const about: Ref = { kind: "hold point", id: last.holdPoint };
  return [
    { code: "remark/no-paper", values: { day: last.day }, about, restsOn: [about, { kind: "entry", id: last.entry }] },
  ];
}

/** The last that counts up to a place in the order of the record. */
export const lastLook = (
  index: RecordIndex,
  { counted }: Looks,
  until = Number.POSITIVE_INFINITY,
): Inspection | undefined => counted.findLast(({ entry }) => orderOf(index, entry) <= until);
