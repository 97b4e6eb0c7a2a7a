import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { reckon } from "../evidence/reckoned.ts";
import { readRecord } from "../../src/record/read.ts";
import type { Change, Entry, Record } from "../../src/facts/types.ts";
import { TODAY, withSmall } from "../problems/cases.ts";

/** The small record with entries added, whole texts by their names. */
async function withEntries(entries: { readonly [id: string]: string }): Promise<Record> {
  return withSmall(async (folder) => {
    for (const [id, text] of Object.entries(entries))
      writeFileSync(
        join(folder, `entries/${id}.md`),
        `---\ndate: ${id.slice(0, 10)}\ntitle: Put right\nassembly: spar\n${text}\n---\n`,
      );
    const read = await readRecord(folder, { today: TODAY });
    if ("problems" in read) throw new Error(JSON.stringify(read.problems, undefined, 1));
    return read.record;
  });
}

const CAPS = "2025-03-08-caps";
const named = (record: Record, id: string): Entry => {
  const entry = record.entries.find((one) => one.id === id);
  if (entry === undefined) throw new Error(`no ${id}`);
  return entry;
};
const words = ({ fact, value, was, is }: Change): string => {
  const text = (said: Change["was"]): string =>
    said?.map((part) => (typeof part === "string" ? part : `<${part.kind} ${part.id}>`)).join("") ?? "–";
  return `${fact} | ${value ?? ""} | ${text(was)} | ${text(is)}`;
};
const changesIn = (record: Record, id: string): string[] =>
  named(record, id).amendments.flatMap(({ changes }) => changes.map(words));

describe("an amendment", () => {
  it("changes the values that it states and no others, and leaves the batch on its day", async () => {
    const [before, after] = [
      await withEntries({}),
      await withEntries({
        "2025-04-01-right": `amends: [{ entry: ${CAPS}, why: Tare, batches: [{ id: B-001, hardener: { mass: 35.0 g }, mixed: "14:25" }] }]`,
      }),
    ];
    const [was, is] = [named(before, CAPS).batches[0], named(after, CAPS).batches[0]];
    expect(is).toEqual({
      ...was,
      hardener: { lot: "H-1", mass: { typed: "35.0 g", value: 0.035, unit: "kg", step: 0.0001 } },
      mixed: { typed: "14:25", epoch: (was?.mixed?.epoch ?? 0) + 300 },
    });
    expect({ day: is?.day, entry: is?.entry }).toEqual({ day: "2025-03-08", entry: CAPS });
    expect(changesIn(after, "2025-04-01-right")).toEqual([
      "Batch B-001 | hardener mass | 35.1 g | 35.0 g",
      "Batch B-001 | mixed | 14:20 | 14:25",
    ]);
    expect(named(after, CAPS).hours).toEqual(named(before, CAPS).hours);
  });

  it("changes tests, measurements, departures, open items, hours and pieces, each found by its id or words", async () => {
    const record = await withEntries({
      "2025-04-01-right": `amends:
  - entry: ${CAPS}
    why: Read again from the notebook
    hours: [{ who: builder, task: gluing, time: 3:00 }]
    batches: [{ id: B-001, joints: [SP-J02, SP-J01, SP-J03], pieces: [{ id: B-001/1, thickness: 6.0 mm }] }]
    measurements: [{ what: Depth at the root, found: 162.7 mm }]
    departures: [{ id: D-1, why: The stock was full }]
    open_items: { raise: [{ id: O-1, before: covering }] }
  - entry: 2025-03-15-pieces
    why: The other half was looked at
    tests: [{ piece: B-001/1, wood_failure: 90 %, witness: builder }]
    open_items: { close: [] }`,
    });
    expect(changesIn(record, "2025-04-01-right")).toMatchInlineSnapshot(`
      [
        "Batch B-001 | joints | <joint SP-J01>, <joint SP-J02> | <joint SP-J02>, <joint SP-J01>, <joint SP-J03>",
        "Piece B-001/1 | thickness | 1/4 in | 6.0 mm",
        "Measurement: Depth at the root | found | 162.6 mm | 162.7 mm",
        "Departure D-1 | why | Cap stock was full | The stock was full",
        "Open item O-1 | before | close-up | covering",
        "Hours |  | <person builder>, gluing, 2:45; <person helper>, gluing, 1.5, assembly <assembly wing> | <person builder>, gluing, 3:00",
        "Test of B-001/1 | wood failure | 100 % | 90 %",
        "Test of B-001/1 | witness | <person helper> | <person builder>",
        "Open items closed |  | <open item O-1> | none",
      ]
    `);
    expect(named(record, CAPS)).toMatchObject({
      hours: [{ minutes: 180, assembly: "spar" }],
      measurements: [{ found: { typed: "162.7 mm" }, drawing: { typed: "162.0 mm" } }],
      raised: [{ before: "covering", what: "Round the cap's end" }],
    });
    expect(named(record, CAPS).raised[0]).not.toHaveProperty("closedIn");
    expect(named(record, "2025-03-15-pieces").tests[0]).toMatchObject({
      day: "2025-03-15",
      woodFailure: { value: 0.9 },
      failure: "wood",
    });
  });

  it("strikes out single values, and facts that nothing leads to", async () => {
    const record = await withEntries({
      "2025-04-01-right": `amends:
  - { entry: ${CAPS}, why: Not read, batches: [{ id: B-001, struck: [shop.humidity, closed] }] }
  - { entry: 2025-03-15-pieces, why: Another piece, tests: [{ piece: B-001/2, struck: [all] }] }`,
    });
    expect(named(record, CAPS).batches[0]).not.toHaveProperty("humidity");
    expect(named(record, CAPS).batches[0]).not.toHaveProperty("closed");
    expect(named(record, "2025-03-15-pieces").tests.map(({ piece }) => piece)).toEqual(["B-001/1"]);
    expect(changesIn(record, "2025-04-01-right")).toEqual([
      "Batch B-001 | shop humidity | 52 % | –",
      "Batch B-001 | closed | 14:55 | –",
      "Test of B-001/2 |  | failure mixed | –",
    ]);
  });

  it("changes what was cut from a lot, found by the lot, and strikes out a whole cut", async () => {
    const sawn = "cut: [{ lot: S-1, amount: 1.2 m }]";
    const record = await withEntries({
      "2025-03-29-sawn": sawn,
      "2025-03-30-sawn": sawn,
      "2025-04-01-right": `amends:
  - { entry: 2025-03-29-sawn, why: The offcut was forgotten, date: 2025-03-28, cut: [{ lot: S-1, amount: 4' 6" }] }
  - { entry: 2025-03-30-sawn, why: It was the day before's, cut: [{ lot: S-1, struck: [all] }] }`,
    });
    expect(named(record, "2025-03-29-sawn").cuts).toMatchObject([
      {
        entry: "2025-03-29-sawn",
        day: "2025-03-28",
        lot: "S-1",
        amount: { typed: "4' 6\"", value: 1.3716, unit: "m" },
      },
    ]);
    expect(named(record, "2025-03-30-sawn").cuts).toEqual([]);
    expect(changesIn(record, "2025-04-01-right")).toEqual([
      "Date |  | 2025-03-29 | 2025-03-28",
      "Cut from lot S-1 | amount | 1.2 m | 4' 6\"",
      "Cut from lot S-1 |  | lot <lot S-1>, amount 1.2 m | –",
    ]);
  });

  it("adds a piece that was left out, where its procedure is given", async () => {
    const record = await withEntries({
      "2025-04-01-right": `amends: [{ entry: ${CAPS}, why: A third was made, batches: [{ id: B-001, pieces: [{ id: B-001/3, procedure: three-leg }] }] }]`,
    });
    expect(named(record, CAPS).batches[0]?.pieces.map(({ id }) => id)).toEqual(["B-001/1", "B-001/2", "B-001/3"]);
    expect(changesIn(record, "2025-04-01-right")).toEqual(["Piece B-001/3 |  | – | procedure <procedure three-leg>"]);
  });

  it("may itself be amended: the last counts, and both say what they changed", async () => {
    const amends = (mass: string): string =>
      `amends: [{ entry: ${CAPS}, why: Tare, batches: [{ id: B-001, hardener: { mass: ${mass} } }] }]`;
    const record = await withEntries({ "2025-04-01-right": amends("34.0 g"), "2025-04-02-right": amends("35.0 g") });
    expect(named(record, CAPS).batches[0]?.hardener?.mass?.typed).toBe("35.0 g");
    expect([...changesIn(record, "2025-04-01-right"), ...changesIn(record, "2025-04-02-right")]).toEqual([
      "Batch B-001 | hardener mass | 35.1 g | 34.0 g",
      "Batch B-001 | hardener mass | 34.0 g | 35.0 g",
    ]);
  });

  it("that states no facts strikes out the prose, and changes nothing that is reckoned", async () => {
    const [before, after] = [
      await withEntries({}),
      await withEntries({ "2025-04-01-right": `amends: [{ entry: ${CAPS}, why: It was another day's }]` }),
    ];
    expect(named(after, "2025-04-01-right").amendments).toMatchObject([{ prose: true, changes: [] }]);
    expect(named(after, CAPS)).toEqual(named(before, CAPS));
    expect([...reckon(after).batches.values()].map(({ verdict }) => verdict)).toEqual(
      [...reckon(before).batches.values()].map(({ verdict }) => verdict),
    );
  });

  it("is told in a finding for each value, which decides nothing", async () => {
    const record = await withEntries({
      "2025-04-01-right": `amends: [{ entry: ${CAPS}, why: The cup's tare was in it, batches: [{ id: B-001, hardener: { mass: 20.0 g } }] }]`,
    });
    const file = reckon(record).batches.get("B-001");
    expect(
      file?.findings.filter(({ rule }) => rule === "amended").map(({ severity, sentence }) => [severity, sentence]),
    ).toEqual([
      [
        "caution",
        "Amended on 1 April 2025: Batch B-001, hardener mass: was 35.1 g, is 20.0 g, because: The cup's tare was in it.",
      ],
    ]);
    expect(file?.findings.find(({ rule }) => rule === "mix-ratio")?.severity).toBe("rejects");
  });

  it("of the day moves all that happened on it, and is told of each batch and test; the entry keeps its name", async () => {
    const [before, after] = [
      await withEntries({}),
      await withEntries({
        "2025-04-01-right": `amends:
  - { entry: ${CAPS}, why: The Sunday it was, date: 2025-03-16 }
  - { entry: 2025-03-15-pieces, why: The week after, date: 2025-03-24 }`,
      }),
    ];
    expect(after.entries.map(({ id, day }) => `${day} ${id}`)).toEqual([
      "2025-03-16 2025-03-08-caps",
      "2025-03-22 2025-03-22-looked",
      "2025-03-24 2025-03-15-pieces",
      "2025-04-01 2025-04-01-right",
    ]);
    const [was, is] = [named(before, CAPS).batches[0], named(after, CAPS).batches[0]];
    expect({ day: is?.day, later: (is?.mixed?.epoch ?? 0) - (was?.mixed?.epoch ?? 0) }).toEqual({
      day: "2025-03-16",
      later: 8 * 86_400,
    });
    expect(changesIn(after, "2025-04-01-right")).toEqual([
      "Date |  | 2025-03-08 | 2025-03-16",
      "Batch B-001 | date | 2025-03-08 | 2025-03-16",
      "Date |  | 2025-03-15 | 2025-03-24",
      "Test of B-001/1 | date | 2025-03-15 | 2025-03-24",
      "Test of B-001/2 | date | 2025-03-15 | 2025-03-24",
    ]);
    const [early, late] = [before, after].map((record) => reckon(record).pieces.get("B-001/1")?.curedFor);
    expect((late ?? 0) - (early ?? 0)).toBe(86_400);
    expect(
      reckon(after)
        .batches.get("B-001")
        ?.findings.filter(({ rule }) => rule === "amended")
        .map(({ sentence }) => sentence),
    ).toEqual([
      "Amended on 1 April 2025: Batch B-001, date: was 2025-03-08, is 2025-03-16, because: The Sunday it was.",
    ]);
  });

  it("of the day can take a verdict away: a piece that was broken sooner than written down", async () => {
    const verdict = async (date: string): Promise<string | undefined> =>
      reckon(
        await withEntries({
          "2025-04-01-right": `amends: [{ entry: 2025-03-15-pieces, why: Wrong leaf of the calendar, date: ${date} }]`,
        }),
      ).pieces.get("B-001/1")?.verdict;
    expect([await verdict("2025-03-16"), await verdict("2025-03-10")]).toEqual(["pass", "too early"]);
  });
});
