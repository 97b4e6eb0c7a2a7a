/** Clamps count as on no longer than the record goes: what is still to come has not been seen. */
import { expect, it } from "vitest";
import type { Moment } from "../../src/facts/types.ts";
import { DAY } from "./make.ts";
import { fileOf } from "./one-batch.ts";
import { min, moment } from "./quantities.ts";

const HOUR = 3600;

/** The record's last day is the 20th, on which the piece was broken. */
it.each<[string, Moment | undefined, Moment, number | undefined]>([
  ["on its last day", moment(DAY, "14:00"), moment("2025-03-20", "12:00"), (9 * 24 + 22) * HOUR],
  ["as that day ends", moment(DAY, "14:00"), moment("2025-03-21", "00:00"), (10 * 24 + 10) * HOUR],
  [
    "after it, and on for long when it began",
    moment(DAY, "14:00"),
    moment("2025-03-21", "00:01"),
    (9 * 24 + 10) * HOUR,
  ],
  ["after it, and on only since", moment("2025-03-19", "20:00"), moment("2025-03-25", "12:00"), undefined],
  ["after it, and on since nobody knows when", undefined, moment("2025-03-25", "12:00"), undefined],
])("Clamps that came off %s were on as far as is seen", (_, on, off, seconds) => {
  const glueUp = { drop: [], beaded: [], off, ...(on !== undefined && { on }) };
  const found = fileOf({ glueUp }, { asks: { clamped: min("600") } }).findings.filter(({ rule }) => rule === "glue-up");
  expect(found.map(({ code, values }) => [code, (values as { found?: unknown }).found])).toEqual([
    seconds === undefined ? ["glue-up/not-noted", undefined] : ["glue-up/as-asked", { seconds }],
  ]);
});
