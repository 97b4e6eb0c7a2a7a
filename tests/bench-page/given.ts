/** A record as it is read, and what the page at the bench is given of it. */
import type { Said } from "../../src/bench/event.ts";
import { type Session, sessionOf } from "../../src/bench/session.ts";
import { snapshotOf } from "../../src/bench/snapshot-of.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Record } from "../../src/facts/types.ts";
import { readRecord } from "../../src/record/read.ts";
import { writeAll } from "../publish/scratch.ts";

/** When the page was made, s since 1970-01-01T00:00Z. */
export const MADE = Date.parse("2021-06-01T10:00:00Z") / 1000;

/** Written into `folder` and read the day after. Throws where it has problems. */
export async function recordOf(folder: string, files: { readonly [path: string]: string }): Promise<Record> {
  writeAll(folder, files);
  const read = await readRecord(folder, { today: "2021-06-02" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return read.record;
}

/** Taps a number of seconds apart, the first at `at`, s since 1970-01-01T00:00Z, and what they come to. */
export function sessionOfTaps(said: readonly Said[], at: number, apart: number): Session {
  const session = sessionOf(
    said.map((one, seq) => ({
      session: "s",
      id: `e${seq}`,
      seq,
      instant: (at + seq * apart) * 1000,
      offset: 0,
      said: one,
      record: "r",
    })),
  );
  if (session === undefined) throw new Error("nothing began");
  return session;
}

export const givenOf = (record: Record) =>
  snapshotOf(editionOf(record, reckon(record), "archive"), MADE, record.before);
