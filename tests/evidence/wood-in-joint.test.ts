/** Wood that a joint holds and no batch that is in it names is tried too. */
import { describe, expect, it } from "vitest";
import { assembly, batch, entry, joint, lot, piece, procedure, record, test } from "./make.ts";
import { mpa } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const wood = (id: string, species: string, material: "timber" | "plywood" = "timber") =>
  lot(id, { material, adhesive: undefined, species });
const LOTS = [
  lot("R-1"),
  lot("H-1", { material: "hardener" }),
  wood("S-1", "spruce"),
  wood("S-2", "Spruce"),
  wood("A-1", "ash"),
  wood("P-1", "spruce", "plywood"),
];

interface Glued {
  readonly first?: readonly string[];
  readonly replaced?: readonly { readonly lot: string; readonly with: string }[];
  readonly again: readonly string[];
  readonly legs?: readonly string[];
  readonly trial?: string;
  readonly broken?: boolean;
}

/** J-0 of spruce, opened and glued again: what is told of its wood, and its state. */
function of({ first = ["S-1"], replaced, again, legs = again, trial, broken = true }: Glued) {
  const place = { file: "", line: 1, column: 1 };
  const opened = { place, entry: "2025-04-01-open", day: "2025-04-01", joints: ["J-0"], why: "a gap", replaced };
  const pieces = [piece("B-2", 1, { lot: undefined, legs: legs.map((one) => ({ lot: one })), trial })];
  const [one, two] = [
    batch("B-1", { joints: ["J-0"], timber: first }, "2025-03-10"),
    batch("B-2", { joints: ["J-0"], timber: again, pieces }, "2025-04-02"),
  ];
  const entries = [
    entry("2025-03-10-glue", { batches: [{ ...one, entry: "2025-03-10-glue" }] }),
    entry("2025-04-01-open", { reworks: [opened] }),
    entry("2025-04-02-glue", { batches: [{ ...two, entry: "2025-04-02-glue" }] }),
    entry("2025-12-01-tests", { tests: broken ? [test("B-2/1", {}, "2025-12-01")] : [] }),
  ];
  const file = reckon(
    record({ lots: LOTS, assemblies: [assembly("wing", { joints: [joint("J-0")] })], entries }),
  ).joints.get("J-0");
  const told = file?.findings.find(({ code }) => code === "joint-glued/wood-lacking");
  const rests = told?.restsOn.filter(({ kind }) => kind === "lot").map(({ id }) => id);
  expect(rests).toEqual(told && (told.values as { lots: string[] }).lots);
  return [file?.state, told && [told.severity, told.values]];
}
const lacking = (severity: string, ...lots: string[]) => [severity, { lots }];

describe("Wood in a joint that was glued again", () => {
  it("that no new batch names has a piece of its kind, or the joint is not shown", () => {
    expect(of({ again: ["S-1"] })).toEqual(["shown", undefined]);
    expect(of({ again: ["S-2"] })).toEqual(["shown", undefined]);
    expect(of({ again: ["A-1"] })).toEqual(["not shown", lacking("unproven", "S-1")]);
    expect(of({ again: ["P-1"] })).toEqual(["not shown", lacking("unproven", "S-1")]);
    expect(of({ first: ["S-1", "P-1"], again: ["S-2"] })).toEqual(["not shown", lacking("unproven", "P-1")]);
  });

  it("is what a rework put in too, and not what it took out", () => {
    const ash = [{ lot: "S-1", with: "A-1" }];
    expect(of({ again: ["S-1"], replaced: ash })).toEqual(["not shown", lacking("unproven", "A-1")]);
    expect(of({ again: ["A-1"], replaced: ash })[1]).toBeUndefined();
    expect(of({ again: ["A-1"] })[1]).toEqual(lacking("unproven", "S-1"));
    expect(of({ again: ["S-2"], replaced: [{ lot: "S-1", with: "S-2" }] })).toEqual(["shown", undefined]);
  });

  it("waits for a piece that is not broken, and is not tried by one of a trial", () => {
    expect(of({ again: ["S-2"], broken: false })).toEqual(["pending", lacking("waits", "S-1")]);
    expect(of({ again: ["S-2"], trial: "T" })).toEqual(["not shown", lacking("unproven", "S-1")]);
  });

  it("is not asked for where the earlier glue names none", () => {
    expect(of({ first: [], again: ["S-1"] })).toEqual(["shown", undefined]);
  });
});

/** Pieces of scraps are of wood whose strengths it gives. */
const GIVEN = procedure({ wood: { crushing: mpa("40"), shear: mpa("8") } });

/** J-0 of spruce, opened and glued again by two batches, each of one wood and with a piece of it, or of scraps. */
function ofTwo(
  batches: readonly (readonly [timber: string[], broken: boolean, failure?: "glue line"])[],
  scraps = false,
) {
  const place = { file: "", line: 1, column: 1 };
  const opened = { place, entry: "2025-04-01-open", day: "2025-04-01", joints: ["J-0"], why: "a gap" };
  const [own, again] = ["2025-03-10-glue", "2025-04-02-glue"];
  const made = batches.map(([timber], at) => {
    const id = `B-${at + 2}`;
    const wood = timber.length === 0 || scraps ? { scraps: true } : { legs: timber.map((lot) => ({ lot })) };
    return batch(
      id,
      { joints: ["J-0"], timber, entry: again, pieces: [piece(id, 1, { lot: undefined, ...wood })] },
      "2025-04-02",
    );
  });
  const tests = batches.flatMap(([, broken, failure], at) =>
    broken
      ? [test(`B-${at + 2}/1`, failure === undefined ? {} : { failure, woodFailure: undefined }, "2025-12-01")]
      : [],
  );
  const entries = [
    entry(own, { batches: [batch("B-1", { joints: ["J-0"], timber: ["S-1"], entry: own }, "2025-03-10")] }),
    entry("2025-04-01-open", { reworks: [opened] }),
    entry(again, { batches: made }),
    entry("2025-12-01-tests", { tests }),
  ];
  const assemblies = [assembly("wing", { joints: [joint("J-0")] })];
  const told = reckon(record({ lots: LOTS, assemblies, entries, procedures: [GIVEN] }))
    .joints.get("J-0")
    ?.findings.find(({ code }) => code === "joint-glued/wood-lacking");
  return told && [told.severity, told.values];
}

describe("Wood in a joint that two batches glued again", () => {
  it("is tried by either of them", () => {
    expect(
      ofTwo([
        [["S-2"], true],
        [["A-1"], true],
      ]),
    ).toBeUndefined();
    expect(
      ofTwo([
        [["A-1"], true],
        [["S-2"], true],
      ]),
    ).toBeUndefined();
    expect(
      ofTwo([
        [["A-1"], true],
        [["P-1"], true],
      ]),
    ).toEqual(lacking("unproven", "S-1"));
  });

  it("is tried by the scraps of one that names no wood, and by no others", () => {
    expect(ofTwo([[[], true]])).toBeUndefined();
    expect(ofTwo([[[], false]])).toEqual(lacking("waits", "S-1"));
    expect(ofTwo([[[], true, "glue line"]])).toEqual(lacking("unproven", "S-1"));
    expect(ofTwo([[["A-1"], true]])).toEqual(lacking("unproven", "S-1"));
    expect(ofTwo([[["A-1"], true]], true)).toEqual(lacking("unproven", "S-1"));
  });
});

it("Wood of two kinds waits only where a piece of each is still to be broken", () => {
  const first = ["S-1", "P-1"];
  expect(of({ first, again: ["A-1"], broken: false })[1]).toEqual(lacking("unproven", "S-1", "P-1"));
  expect(of({ first, again: ["S-2"], broken: false })[1]).toEqual(lacking("unproven", "S-1", "P-1"));
});
