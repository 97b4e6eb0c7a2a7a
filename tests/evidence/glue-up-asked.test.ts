import { describe, expect, it } from "vitest";
import type { Asks, Batch, GlueUp, Procedure } from "../../src/facts/types.ts";
import { adhesive, assembly, batch, DAY, glued, joint, lot, LOTS, procedure } from "./make.ts";
import { mm, pc } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

type Said = Partial<GlueUp>;
const said = (own: Said): GlueUp => ({ drop: [], beaded: [], ...own });

describe("A drop of water is asked of the plywood that is glued", () => {
  const PLY = lot("P-1", { material: "plywood", adhesive: undefined });
  const PLY2 = lot("P-2", { material: "plywood", adhesive: undefined });
  function tried(timber: readonly string[], ...batches: readonly (readonly [string, string, Said | undefined])[]) {
    const all = batches.map(([id, day, own], n) =>
      batch(
        id,
        {
          day,
          entry: `${day}-glue`,
          joints: [n === 0 ? "W-1" : "W-2"],
          timber: n === 0 ? timber : ["S-1"],
          ...(own && { glueUp: said(own) }),
        },
        day,
      ),
    );
    const file = reckon(
      glued(all, [], { adhesives: [adhesive({ asks: { waterDrop: "yes" } })], lots: [...LOTS, PLY, PLY2] }),
    ).batches.get("B-1");
    return file?.findings
      .filter(({ rule }) => rule === "glue-up")
      .map((one) => [
        one.code.replace("glue-up/", ""),
        one.severity,
        (one.values as { found?: unknown }).found,
        one.restsOn.map(({ kind, id }) => `${kind} ${id}`),
      ]);
  }
  const SELF = ["batch B-1", `entry ${DAY}-glue`];

  it("and not where none is glued", () => {
    expect(tried(["S-1"], ["B-1", DAY, {}])).toEqual([]);
  });

  it("and shown by a drop on that day, in its own batch or another's", () => {
    const met = ["as-asked", "meets", { lots: ["P-1"], beaded: false }];
    expect(tried(["S-1", "P-1"], ["B-1", DAY, { drop: ["P-1"] }])).toEqual([[...met, [...SELF, "lot P-1"]]]);
    expect(tried(["S-1", "P-1"], ["B-1", DAY, undefined], ["B-2", DAY, { drop: ["P-2", "P-1"] }])).toEqual([
      [...met, [...SELF, "lot P-1", "batch B-2"]],
    ]);
  });

  it("and not shown by one on another day, or on another lot, or on one lot of two", () => {
    const open = ["not-noted", "unproven", undefined];
    expect(tried(["P-1"], ["B-1", DAY, {}], ["B-2", "2025-03-11", { drop: ["P-1"] }])).toEqual([[...open, SELF]]);
    expect(tried(["P-1"], ["B-1", DAY, { drop: ["P-2"] }])).toEqual([[...open, SELF]]);
    expect(tried(["P-1", "P-2"], ["B-1", DAY, { drop: ["P-1"] }])).toEqual([[...open, SELF]]);
  });

  it("and rests on the batches of that day that tried one of its lots, and on no other", () => {
    expect(
      tried(["P-1"], ["B-1", DAY, undefined], ["B-2", DAY, { drop: ["P-2"] }], ["B-3", DAY, { drop: ["P-1"] }]),
    ).toEqual([["as-asked", "meets", { lots: ["P-1"], beaded: false }, [...SELF, "lot P-1", "batch B-3"]]]);
  });

  it("and told against where it stood in a bead, whatever the drop on others did", () => {
    expect(tried(["P-1"], ["B-1", DAY, { drop: ["P-1"], beaded: ["P-1"] }])).toEqual([
      ["not-as-asked", "rejects", { lots: ["P-1"], beaded: true }, [...SELF, "lot P-1"]],
      ["beaded", "unproven", undefined, [...SELF, "lot P-1"]],
    ]);
  });
});

it("A lot that stood in a bead is told where it is not glued too, and of others' drops those on lots that are", () => {
  const P1 = lot("P-1", { material: "plywood", adhesive: undefined });
  const drops = (timber: readonly string[], own: Said, other: Said) => {
    const two = [
      batch("B-1", { timber, glueUp: said(own) }),
      batch("B-2", { joints: ["W-2"], timber: ["S-1"], glueUp: said(other) }),
    ];
    const lots = [...LOTS, P1, { ...P1, id: "P-2" }];
    const file = reckon(glued(two, [], { adhesives: [adhesive({ asks: { waterDrop: "yes" } })], lots })).batches.get(
      "B-1",
    );
    return file?.findings
      .filter(({ code }) => code === "glue-up/not-as-asked")
      .map(({ values, restsOn }) => [(values as { found?: unknown }).found, restsOn.slice(2).map(({ id }) => id)]);
  };
  expect(drops(["S-1"], { beaded: ["P-2"] }, {})).toEqual([[{ lots: ["P-2"], beaded: true }, ["P-2"]]]);
  expect(drops(["P-1"], { drop: ["P-1"] }, { beaded: ["P-2", "P-1"] })).toEqual([
    [{ lots: ["P-1"], beaded: true }, ["P-1", "B-2"]],
  ]);
  expect(drops(["P-1"], { drop: ["P-1"] }, { beaded: ["P-2"] })).toEqual([]);
});

describe("Cured adhesive that is bonded again", () => {
  const EARLIER = "2025-03-08";
  function again(own: Said | undefined, earlier: readonly Partial<Batch>[] = [{}]) {
    const before = earlier.map((change, n) =>
      batch(`A-${n + 1}`, { day: EARLIER, entry: `${EARLIER}-glue`, ...change }, change.day ?? EARLIER),
    );
    const file = reckon(
      glued([...before, batch("B-1", { ...(own && { glueUp: said(own) }) })], [], {
        adhesives: [adhesive({ asks: { overCured: "yes" } })],
        assemblies: [assembly("wing", { joints: ["W-1", "W-2"].map((id) => joint(id)) })],
      }),
    ).batches.get("B-1");
    return file?.findings
      .filter(({ rule }) => rule === "glue-up")
      .map((one) => [
        one.code.replace("glue-up/", ""),
        one.severity,
        (one.values as { found?: unknown }).found,
        one.restsOn.map(({ id }) => id),
      ]);
  }
  const SELF = ["B-1", `${DAY}-glue`];

  it("is not asked of where none of its joints was glued on an earlier day", () => {
    expect(again({}, [])).toEqual([]);
    expect(again({}, [{ joints: ["W-2"] }])).toEqual([]);
    expect(again(undefined, [{ day: DAY, entry: `${DAY}-glue` }])).toEqual([]);
  });

  it("is not noted where one was, and names what was glued before", () => {
    expect(again({})).toEqual([["not-noted", "unproven", undefined, [...SELF, "A-1", `${EARLIER}-glue`]]]);
    expect(again(undefined, [{ joints: ["W-2"] }, {}])).toEqual([
      ["not-noted", "unproven", undefined, [...SELF, "A-2", `${EARLIER}-glue`]],
    ]);
  });

  it.each([
    [["washed", "abraded"], "as-asked", "meets"],
    [["abraded", "washed"], "as-asked", "meets"],
    [["washed"], "not-as-asked", "rejects"],
    [["abraded"], "not-as-asked", "rejects"],
  ] as const)("is washed and abraded before, where it is said to be %j: %s", (overCured, code, severity) => {
    expect(again({ overCured })).toEqual([[code, severity, { typed: overCured.join(", ") }, SELF]]);
    expect(again({ overCured }, [])).toEqual([[code, severity, { typed: overCured.join(", ") }, SELF]]);
  });

  it("is told where it was neither, and where it is said to be both and neither", () => {
    const told = ["over-cured", "unproven", undefined, SELF];
    expect(again({ overCured: ["neither"] })).toEqual([["not-as-asked", "rejects", { typed: "neither" }, SELF], told]);
    expect(again({ overCured: ["washed", "abraded", "neither"] })).toEqual([
      ["not-as-asked", "rejects", { typed: "washed, abraded, neither" }, SELF],
      told,
    ]);
  });
});

describe("A glue-up is asked by its sheet, by the procedure it follows and by the drawing of each joint", () => {
  const METHOD = procedure({
    id: "cold",
    title: "Cold glue-up",
    form: "glue-up",
    method: { faces: "both", filler: "none" },
  });
  interface Made {
    readonly sheet?: Asks;
    readonly by?: Asks;
    readonly drawn?: Asks;
    readonly method?: Procedure["method"];
  }
  function asked(own: Said, made: Made = {}) {
    const file = reckon(
      glued([batch("B-1", { glueUp: said(own) })], [], {
        adhesives: [adhesive({ asks: made.sheet })],
        procedures: [procedure(), { ...METHOD, ...(made.method && { method: made.method }), asks: made.by }],
        assemblies: [
          assembly("wing", { joints: [{ ...joint("W-1"), title: "Rib to spar", asks: made.drawn }, joint("W-2")] }),
        ],
      }),
    ).batches.get("B-1");
    return file?.findings.filter(({ rule }) => rule === "glue-up");
  }
  const sentences = (...of: Parameters<typeof asked>) => asked(...of)?.map(({ sentence }) => sentence);

  it("each of them for itself, the sheet first", () => {
    const found = asked(
      { by: "cold", gap: mm("0.4") },
      { sheet: { gap: mm("0.5") }, by: { gap: mm("0.3") }, drawn: { gap: mm("0.4") } },
    );
    expect(found?.map(({ code, limit, restsOn }) => [code, limit?.from.code, restsOn.map(({ id }) => id)])).toEqual([
      ["glue-up/as-asked", "source/sheet", ["B-1", `${DAY}-glue`]],
      ["glue-up/not-as-asked", "source/procedure", ["B-1", `${DAY}-glue`]],
      ["glue-up/as-asked", "source/joint-drawing", ["B-1", `${DAY}-glue`, "W-1"]],
    ]);
    expect(found?.map(({ limit }) => [limit?.from.text, limit?.from.known])).toEqual([
      ["Resorcin data sheet, revision 4", "record"],
      ["procedure: Cold glue-up", "record"],
      ["drawing of the joint: Rib to spar", "record"],
    ]);
    expect(found?.map(({ limit }) => limit?.text)).toEqual([
      "greatest gap when tried dry: at most 0.5 mm",
      "greatest gap when tried dry: at most 0.3 mm",
      "greatest gap when tried dry: at most 0.4 mm",
    ]);
  });

  it("by what the procedure says was done, and says so, but not where the session says itself", () => {
    expect(sentences({ by: "cold" }, { sheet: { faces: "both", fillers: ["cotton"], fillerMass: pc("5") } })).toEqual([
      "Faces wetted: both, as Cold glue-up says; asked: both.",
      "Filler: none, as Cold glue-up says; asked: none, or cotton.",
      "Filler, of the mass of the mix: none, as Cold glue-up says; asked: at most 5 %.",
    ]);
    expect(
      sentences({ by: "cold", faces: "one", filler: "flour" }, { sheet: { faces: "both", fillers: ["cotton"] } }),
    ).toEqual([
      "Faces wetted: one, and not both.",
      "Filler: flour, and not none, or cotton.",
      "Only one face of the joint was wetted with adhesive.",
    ]);
    expect(sentences({ faces: "both" }, { sheet: { faces: "both" }, by: { gap: mm("0.1") } })).toEqual([
      "Faces wetted: both; asked: both.",
    ]);
    expect(sentences({ by: "cold", gap: mm("0.4") }, { sheet: { gap: mm("0.5") } })).toEqual([
      "Greatest gap when tried dry: 0.4 mm; asked: at most 0.5 mm.",
    ]);
  });

  it("by whatever else the procedure says was done, word for word", () => {
    const sheet: Asks = { endGrain: "twice", staples: "pulled", scraped: "yes", secondCup: "yes" };
    const method = { endGrain: "twice", staples: "pulled", scraped: "yes", secondCup: "yes" } as const;
    expect(sentences({ by: "cold" }, { sheet, method })).toEqual([
      "End grain wetted: twice, as Cold glue-up says; asked: twice.",
      "Staples: pulled, as Cold glue-up says; asked: pulled.",
      "Sides and bottom of the cup scraped while mixing: yes, as Cold glue-up says; asked: yes.",
      "Mixed again in a second cup: yes, as Cold glue-up says; asked: yes.",
    ]);
    expect(sentences({ by: "cold", ...method, staples: "left" }, { sheet, method })).toEqual([
      "End grain wetted: twice; asked: twice.",
      "Staples: left, and not pulled.",
      "Sides and bottom of the cup scraped while mixing: yes; asked: yes.",
      "Mixed again in a second cup: yes; asked: yes.",
    ]);
  });

  it("for the moistures of two parts, though both are of the one lot that was glued", () => {
    const parts = ["10", "9"].map((moisture) => ({ lot: "S-1", moisture: pc(moisture) }));
    expect(sentences({ parts }, { sheet: { moistureDifference: pc("2") } })).toEqual([
      "Moistures of the parts apart by: 1.0 %; asked: at most 2 %.",
    ]);
  });

  it("by none of them what tells against it by itself", () => {
    expect(sentences({ drySpots: "at the root", squeezeOut: "none", faces: "one" })).toEqual([
      "Dry spots seen: at the root.",
      "Adhesive was seen to be squeezed out nowhere.",
      "Only one face of the joint was wetted with adhesive.",
    ]);
    expect(sentences({ squeezeOut: "in part" })).toEqual(["Adhesive was seen to be squeezed out in part only."]);
    expect(sentences({ squeezeOut: "all along", faces: "both", overCured: ["washed"] })).toEqual([]);
  });
});
