import { expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Entry, Record } from "../../src/facts/types.ts";
import { Reckoned } from "../../src/preview/reckoned.ts";
import { readRecord } from "../../src/record/read.ts";

const content = new URL("../../content", import.meta.url).pathname;

async function demo(): Promise<Record> {
  const read = await readRecord(content);
  if ("problems" in read) throw new Error("the demonstration record has problems");
  return read.record;
}

/** With other entries, in what it stood before as well. */
const withEntries = (record: Record, other: (entry: Entry) => Entry): Record => ({
  ...record,
  entries: record.entries.map(other),
  ...(record.before !== undefined && { before: record.before.map((one) => withEntries(one, other)) }),
});

const unreadable = (entry: Entry): Entry =>
  Object.defineProperty({ ...entry }, "body", {
    get: (): never => {
      throw new Error(`the text of ${entry.id} was read`);
    },
  });

it("The reckoning reads the text of no entry", async () => {
  const record = await demo();
  expect(record.before?.length).toBeGreaterThan(0);
  expect(reckon(withEntries(record, unreadable))).toEqual(reckon(record));
});

it("What a record proves stands while only texts of entries change", async () => {
  const record = await demo();
  const reckoned = new Reckoned();
  const first = reckoned.of(record);
  expect(first).toEqual(reckon(record));
  expect(reckoned.of(await demo())).toBe(first);
  const body = [{ audience: "public", markdown: "Other words, and **B-012** was shown.", line: 9 } as const];
  expect(reckoned.of(withEntries(record, (entry) => ({ ...entry, body })))).toBe(first);
});

it("It is reckoned anew where anything else is other than before", async () => {
  const record = await demo();
  const [first, ...rest] = record.entries;
  const [log, ...logs] = record.climate;
  if (first === undefined || log === undefined) throw new Error("there is nothing to change");
  const read = log.temperatures.slice();
  read[7] = 3;
  const others: { readonly [what: string]: Record } = {
    "a later day": { ...record, day: "2031-01-01" },
    "a figure of one entry": { ...record, entries: [{ ...first, title: `${first.title}.` }, ...rest] },
    "one entry less": { ...record, entries: rest },
    "one reading": { ...record, climate: [{ ...log, temperatures: read }, ...logs] },
    "a text that is not an entry's": {
      ...record,
      lots: new Map([...record.lots].map(([id, lot], at) => [id, at === 0 ? { ...lot, title: "Other" } : lot])),
    },
    "what stood before": { ...record, before: [] },
    "the order of people": {
      ...record,
      aircraft: { ...record.aircraft, people: new Map([...record.aircraft.people].reverse()) },
    },
  };
  for (const [what, other] of Object.entries(others)) {
    const reckoned = new Reckoned();
    const before = reckoned.of(record);
    const after = reckoned.of(other);
    expect(after, what).not.toBe(before);
    expect(after, what).toEqual(reckon(other));
  }
});
