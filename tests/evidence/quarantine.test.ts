/** Quarantine against a brute search, and recall followed by rework. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { Evidence } from "../../src/evidence/types.ts";
import type { Entry, Record } from "../../src/facts/types.ts";
import { dayText } from "../../src/reckoning/time/calendar.ts";
import { assembly, batch, entry, joint, lot, piece, procedure, record, test } from "./make.ts";
import { g, mpa } from "./quantities.ts";

const JOINTS = ["J-0", "J-1", "J-2", "J-3", "J-4"];
const RESINS = ["R-1", "R-2", "R-3"];
const HARDENERS = ["H-1", "H-2"];
const TIMBER = ["S-1", "S-2", "S-3"];
const LOTS = [
  ...RESINS.map((id) => lot(id, { expiry: undefined })),
  ...HARDENERS.map((id) => lot(id, { material: "hardener" })),
  ...[...TIMBER, "S-9"].map((id) => lot(id, { material: "timber" })),
];
const FRAME = assembly("frame", { joints: JOINTS.map((id) => joint(id, "frame")) });
const place = { file: "", line: 1, column: 1 };

type Act =
  | {
      readonly do: "glue";
      readonly joints: string[];
      readonly resin: string;
      readonly hardener: string;
      readonly timber: string[];
      readonly off: boolean;
      readonly tested: boolean;
    }
  | { readonly do: "rework" | "rework and glue"; readonly joints: string[]; readonly resin: string }
  | { readonly do: "recall"; readonly lot: string }
  | { readonly do: "reject"; readonly which: number };

const someJoints = fc.subarray(JOINTS, { minLength: 1 });
const someAct: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constant("glue" as const),
      joints: someJoints,
      resin: fc.constantFrom(...RESINS),
      hardener: fc.constantFrom(...HARDENERS),
      timber: fc.subarray(TIMBER),
      off: fc.boolean(),
      tested: fc.boolean(),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constantFrom("rework" as const, "rework and glue" as const),
      joints: someJoints,
      resin: fc.constantFrom(...RESINS),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant("recall" as const),
      lot: fc.constantFrom(...RESINS, ...HARDENERS, ...TIMBER),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("reject" as const), which: fc.nat({ max: 10 }) }) },
);

function entryOf(act: Act, i: number): Entry[] {
  const day = dayText(20_160 + i * 10);
  const id = `${day}-act`;
  const later = dayText(20_160 + i * 10 + 9);
  const glued = (change: object) => batch(`B-${i}`, { entry: id, ...change }, day);
  if (act.do === "recall") return [entry(id, { recalls: [{ place, entry: id, day, lot: act.lot, why: "notice" }] })];
  if (act.do === "reject")
    return [entry(id, { rejections: [{ place, entry: id, day, batch: `B-${act.which}`, why: "doubt" }] })];
  if (act.do === "glue") {
    const made = glued({
      joints: act.joints,
      timber: act.timber,
      resin: { lot: act.resin, mass: g(act.off ? "30.0" : "40.0") },
      hardener: { lot: act.hardener, mass: g("20.0") },
    });
    return [
      entry(id, { batches: [made] }),
      ...(act.tested ? [entry(`${later}-tests`, { tests: [test(`B-${i}/1`, {}, later)] })] : []),
    ];
  }
  const reworks = [{ place, entry: id, day, joints: act.joints, why: "gap" }];
  return [
    entry(id, {
      reworks,
      batches:
        act.do === "rework"
          ? []
          : [glued({ joints: act.joints, timber: [], resin: { lot: act.resin, mass: g("40.0") } })],
    }),
  ];
}

/** Pieces are said to be of scraps, of wood whose strengths the procedure gives, so that glue alone decides. */
const PROCEDURES = [procedure({ wood: { crushing: mpa("40"), shear: mpa("8") } })];
const recordOf = (entries: readonly Entry[]): Record =>
  record({ assemblies: [FRAME], lots: LOTS, entries, procedures: PROCEDURES });

/** By going through the whole record once for each joint, with nothing kept in between. */
function holdsWhatIsNotTrusted(made: Record, evidence: Evidence, id: string): boolean {
  let inIt: string[] = [];
  const timber: string[] = [];
  for (const one of made.entries) {
    if (one.reworks.some((rework) => rework.joints.includes(id))) inIt = [];
    const glued = one.batches.filter((made) => made.joints.includes(id));
    inIt.push(...glued.map((made) => made.id));
    timber.push(...glued.flatMap((made) => made.timber));
  }
  if (made.entries.some((one) => one.recalls.some((recall) => timber.includes(recall.lot)))) return true;
  return inIt.some((of) => {
    const made_ = made.entries.flatMap((one) => one.batches).find((one) => one.id === of);
    const lots = [made_?.resin?.lot, made_?.hardener?.lot, ...(made_?.timber ?? [])];
    return (
      evidence.batches.get(of)?.verdict === "rejected" ||
      made.entries.some((one) => one.recalls.some((recall) => lots.includes(recall.lot)))
    );
  });
}

describe("Quarantine", () => {
  it("is exactly what a search of the whole record reaches from rejected batches and recalled lots", () => {
    let quarantined = 0;
    fc.assert(
      fc.property(fc.array(someAct, { maxLength: 14 }), (acts) => {
        const made = recordOf(acts.flatMap(entryOf));
        const evidence = reckon(made);
        for (const id of JOINTS) {
          const isIn = evidence.joints.get(id)?.state === "quarantined";
          quarantined += isIn ? 1 : 0;
          expect(isIn).toBe(holdsWhatIsNotTrusted(made, evidence, id));
        }
        for (const id of [...RESINS, ...HARDENERS, ...TIMBER]) {
          const joints = [...(evidence.lots.get(id)?.joints ?? [])].sort();
          expect(joints).toEqual(JOINTS.filter((one) => evidence.joints.get(one)?.lots.includes(id)));
        }
      }),
      { numRuns: 400 },
    );
    expect(quarantined).toBeGreaterThan(100);
  });

  it("ends by rework with an accepted batch of its own, whatever happened before", () => {
    fc.assert(
      fc.property(fc.array(someAct, { maxLength: 10 }), fc.constantFrom(...JOINTS), (acts, id) => {
        const story = acts
          .filter((act) => !(act.do === "recall" && (act.lot === "R-3" || act.lot === "H-2")))
          .flatMap(entryOf);
        const day = "2027-01-10";
        const replaced = TIMBER.map((lot) => ({ lot, with: "S-9" }));
        const again = `${day}-rework`;
        const made = batch(
          "B-new",
          {
            entry: again,
            joints: [id],
            timber: [],
            pieces: [piece("B-new", 1, { lot: undefined, scraps: true })],
            resin: { lot: "R-3", mass: g("40.0") },
            hardener: { lot: "H-2", mass: g("20.0") },
          },
          day,
        );
        const inDate = LOTS.map((one) => ({ ...one, expiry: "2030-01-01" }));
        const end = [
          entry(again, {
            reworks: [{ place, entry: again, day, joints: [id], why: "recalled", replaced }],
            batches: [made],
          }),
          entry("2027-02-01-tests", { tests: [test("B-new/1", {}, "2027-02-01")] }),
        ];
        const whole = { ...recordOf([...story, ...end]), lots: new Map(inDate.map((one) => [one.id, one])) };
        const file = reckon(whole).joints.get(id);
        expect([file?.state, file?.batches]).toEqual(["shown", ["B-new"]]);
      }),
      { numRuns: 200 },
    );
  });

  it("leaves every joint that the lot never reached as it was", () => {
    fc.assert(
      fc.property(fc.array(someAct, { maxLength: 12 }), fc.constantFrom(...RESINS, ...TIMBER), (acts, id) => {
        const story = acts.flatMap(entryOf);
        const before = reckon(recordOf(story));
        const after = reckon(
          recordOf([
            ...story,
            entry("2027-01-01-recall", {
              recalls: [{ place, entry: "2027-01-01-recall", day: "2027-01-01", lot: id, why: "notice" }],
            }),
          ]),
        );
        const reached = new Set(before.lots.get(id)?.joints);
        for (const one of JOINTS)
          expect(after.joints.get(one)?.state).toBe(reached.has(one) ? "quarantined" : before.joints.get(one)?.state);
      }),
      { numRuns: 200 },
    );
  });
});
