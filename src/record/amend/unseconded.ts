/**
 * The record as it would stand with only some of its amendments. One that no second person saw may worsen a verdict and never better it: so what
 * stood before it is reckoned too.
 */
import type { Amendment } from "../../facts/types.ts";
import { isSeconded } from "../../facts/entry/amendment.ts";
import type { Draft, Files } from "../filed.ts";
import { amend, type Amended } from "./amend.ts";

/** With only the amendments that were seconded first; then, in the order of the record, with those of one more entry that were not, but for the last. */
export function filesBefore(asWritten: Draft, { amendments }: Amended): Files[] {
  const people = asWritten.files.aircraft[0]?.spec?.people ?? [];
  const unseconded = [...amendments].flatMap(([by, made]) =>
    made.some((one) => isUnseconded(one, people)) ? [by] : [],
  );
  return unseconded.map((_, step) => {
    const put = new Set(unseconded.slice(0, step));
    const counts = (by: string, entry: string): boolean =>
      put.has(by) || !(amendments.get(by) ?? []).some((one) => one.entry === entry && isUnseconded(one, people));
    return sound(asWritten.files, amend(asWritten, counts).draft.files);
  });
}

const isUnseconded = (amendment: Amendment, people: Parameters<typeof isSeconded>[1]): boolean =>
  amendment.changes.length > 0 && !isSeconded(amendment, people);

/** An entry that some of its amendments alone leave unsound stands as it was first written. */
function sound(first: Files, files: Files): Files {
  const written = new Map(first.entry.map((filed) => [filed.id, filed]));
  const entry = files.entry.map((filed) => (filed.whole ? filed : (written.get(filed.id) ?? filed)));
  return { ...files, entry };
}
