/**
 * The record as it would stand with only some of its amendments. One that no second person saw may worsen a verdict and never better it: so what
 * stood before it is reckoned too.
 */
import type { Amendment } from "../../facts/types.ts";
import { isSeconded } from "../../facts/entry/amendment.ts";
import type { Draft, Files } from "../filed.ts";
import { amend, type Amended } from "./amend.ts";

/** With only the amendments that were seconded first; then, where several that were not amend one entry, with one more of them each time. */
export function filesBefore(asWritten: Draft, { amendments }: Amended): Files[] {
  const people = asWritten.files.aircraft[0]?.spec?.people ?? [];
  const depths = depthsOf([...amendments.values()].flat(), people);
  return Array.from({ length: Math.max(0, ...depths.values()) }, (_, depth) => {
    const counts = (by: string, entry: string): boolean => (depths.get(`${by} ${entry}`) ?? 0) <= depth;
    return sound(asWritten.files, amend(asWritten, counts).draft.files);
  });
}

/** Of each amendment of facts that nobody seconded, the how manieth of its entry it is, from 1. */
function depthsOf(all: readonly Amendment[], people: Parameters<typeof isSeconded>[1]): Map<string, number> {
  const depths = new Map<string, number>();
  const of = new Map<string, number>();
  for (const amendment of all) {
    if (amendment.changes.length === 0 || isSeconded(amendment, people)) continue;
    const depth = (of.get(amendment.entry) ?? 0) + 1;
    of.set(amendment.entry, depth);
    depths.set(`${amendment.by} ${amendment.entry}`, depth);
  }
  return depths;
}

/** An entry that some of its amendments alone leave unsound stands as it was first written. */
function sound(first: Files, files: Files): Files {
  const written = new Map(first.entry.map((filed) => [filed.id, filed]));
  const entry = files.entry.map((filed) => (filed.whole ? filed : (written.get(filed.id) ?? filed)));
  return { ...files, entry };
}
