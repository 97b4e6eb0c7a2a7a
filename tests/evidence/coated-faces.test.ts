import { describe, expect, it } from "vitest";
import { coatedFaces } from "../../src/evidence/coats/faces.ts";
import { finder } from "../../src/evidence/finding.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Batch, Coat, Finish } from "../../src/facts/types.ts";
import { batch, entry, joint, lot, LOTS, record } from "./make.ts";
import { moment } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const KINDS = ["primer", "varnish", "dope", "paint", "fabric"] as const;
const finish = (kind: Finish["kind"]): Finish => ({
  id: kind,
  place,
  title: `Some ${kind}`,
  kind,
  sheet: "Sheet",
  body: [],
});
const V1 = lot("V-1", { material: "finish", adhesive: undefined, finish: "varnish" });

interface Happens {
  readonly day: string;
  readonly coats?: readonly Partial<Coat>[];
  readonly batches?: readonly Partial<Batch>[];
}

/** In the order given, an entry each; B-1 is the batch looked at unless others are named. */
function told(happens: readonly Happens[], looked = ["B-1"]) {
  const all: Batch[] = [];
  const entries = happens.map(({ day, coats = [], batches = [] }, at) => {
    const id = `${day}-${at}`;
    const made = batches.map((change, n) => batch(change.id ?? `B-${n + 1}`, { ...change, entry: id, day }, day));
    all.push(...made);
    return entry(id, {
      batches: made,
      coats: coats.map((change) => ({
        place,
        entry: id,
        day,
        assembly: "wing",
        where: "Inside",
        finish: "varnish",
        lots: [],
        coat: 1,
        ...change,
      })),
    });
  });
  const index = recordIndexOf(record({ finishes: KINDS.map(finish), lots: [...LOTS, V1], entries }));
  const found = coatedFaces(
    index,
    joint("W-1"),
    all.filter(({ id }) => looked.includes(id)),
    finder({ kind: "joint", id: "W-1" }, []),
  );
  return found.map(({ code, severity, values, restsOn }) => [
    code,
    severity,
    values,
    restsOn.map(({ kind, id }) => `${kind} ${id}`),
  ]);
}
const BEFORE = "2025-04-01";
const AFTER = "2025-04-10";
const one = (coat: Partial<Coat>, glued: Partial<Batch> = {}) =>
  told([
    { day: BEFORE, coats: [coat] },
    { day: AFTER, batches: [glued] },
  ]);
const caution = (where = "Inside", product = "varnish", at = `${BEFORE}-0`) => [
  "coated-faces/not-bare",
  "caution",
  { batch: "B-1", where, finish: `Some ${product}`, day: at.slice(0, 10) },
  ["joint W-1", "batch B-1", `entry ${at}`],
];

describe("Faces that may have been coated before they were glued", () => {
  it("are told of each product that keeps glue from wood, and not of cloth", () => {
    expect(Object.fromEntries(KINDS.map((kind) => [kind, one({ finish: kind })]))).toEqual({
      primer: [caution("Inside", "primer")],
      varnish: [caution()],
      dope: [caution("Inside", "dope")],
      paint: [caution("Inside", "paint")],
      fabric: [],
    });
  });

  it("are told once a place, by its first coat", () => {
    const coats = [{}, { coat: 2 }, { where: "Outside" }];
    expect(
      told([
        { day: BEFORE, coats },
        { day: AFTER, batches: [{}] },
      ]),
    ).toEqual([caution(), caution("Outside")]);
  });

  it("are told of every batch for itself", () => {
    const found = told(
      [
        { day: BEFORE, coats: [{}] },
        { day: AFTER, batches: [{}, {}] },
      ],
      ["B-1", "B-2"],
    );
    expect(found.map(([, , values]) => (values as { batch: string }).batch)).toEqual(["B-1", "B-2"]);
  });

  it("are not those that were kept bare, nor those glued before", () => {
    expect(one({ bare: "margins" })).toEqual([]);
    expect(
      told([
        { day: BEFORE, batches: [{}] },
        { day: AFTER, coats: [{}] },
      ]),
    ).toEqual([]);
    expect(
      told([
        { day: BEFORE, batches: [{}] },
        { day: BEFORE, coats: [{}] },
      ]),
    ).toEqual([]);
    expect(
      told([
        { day: BEFORE, coats: [{}] },
        { day: BEFORE, batches: [{}] },
      ]),
    ).toEqual([caution()]);
  });

  it("are bare again once all was taken off, on that day's entry too, and not before", () => {
    const off = { stripped: "sanded", bare: "margins" };
    const coats = [{}];
    expect(
      told([
        { day: BEFORE, coats },
        { day: "2025-04-05", coats: [off] },
        { day: AFTER, batches: [{}] },
      ]),
    ).toEqual([]);
    expect(
      told([
        { day: BEFORE, coats },
        { day: AFTER, coats: [off], batches: [{}] },
      ]),
    ).toEqual([]);
    expect(
      told([
        { day: BEFORE, coats },
        { day: AFTER, batches: [{}] },
        { day: "2025-04-11", coats: [off] },
      ]),
    ).toEqual([caution()]);
  });

  it("are told where both were done by one entry, unless the times tell that it was put on later", () => {
    const same = (coat: Partial<Coat>, glued: Partial<Batch> = {}) =>
      told([{ day: BEFORE, coats: [coat], batches: [glued] }]);
    const at = (time: string) => ({ at: moment(BEFORE, time) });
    expect(same(at("14:19"))).toEqual([caution()]);
    expect(same(at("14:20"))).toEqual([]);
    expect(same(at("15:00"))).toEqual([]);
    expect(same({})).toEqual([caution()]);
    expect(same(at("13:59"), { closed: undefined })).toEqual([caution()]);
    expect(same(at("14:00"), { closed: undefined })).toEqual([]);
    expect(same(at("15:00"), { closed: undefined, mixed: undefined })).toEqual([caution()]);
  });
});
