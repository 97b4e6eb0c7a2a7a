/** What hold points ask of coats, each question asked by itself. */
import { describe, expect, it } from "vitest";
import { coatFiles } from "../../src/evidence/coats/coat.ts";
import { coatNeeds, coatsLater, coatsThen } from "../../src/evidence/readiness/coats.ts";
import { orderOf, recordIndexOf } from "../../src/evidence/record-index.ts";
import { Seconded } from "../../src/evidence/seconded.ts";
import type { CoatFile, Evidence, Need } from "../../src/evidence/types.ts";
import type { Coat, Entry, Finish, HoldKind, PlannedCoat } from "../../src/facts/types.ts";
import { assembly, departure, entry, lot, record } from "./make.ts";
import { celsius, d, epochOf, moment, pc, range } from "./quantities.ts";

const place = { file: "", line: 1, column: 1 };
const sheet = (id: string, change: Partial<Finish> = {}): Finish => ({
  id,
  place,
  title: `Some ${id}`,
  kind: "varnish",
  sheet: "Sheet C",
  temperature: range("15 to 30 °C", 15, 30),
  humidity: range("at most 70 %", undefined, 0.7),
  body: [],
  ...change,
});
const SHEETS = [
  sheet("ages", { dry: d("365") }),
  sheet("clear"),
  sheet("dope", { kind: "dope" }),
  sheet("twice", { coats: 2 }),
  sheet("slow", { dry: d("2") }),
];
const V1 = lot("V-1", { material: "finish", adhesive: undefined, finish: "clear", expiry: "2026-12-31" });
const puts = (day: string, ...coats: readonly Partial<Coat>[]): Entry =>
  entry(`${day}-coat`, {
    coats: coats.map((change) => ({
      place,
      entry: `${day}-coat`,
      day,
      assembly: "wing",
      where: "Inside",
      finish: "clear",
      lots: ["V-1"],
      coat: 1,
      at: moment(day, "10:00"),
      temperature: celsius("20"),
      humidity: pc("50"),
      ...change,
    })),
  });
const BAD = { temperature: celsius("14") };
const recalls = (day: string): Entry =>
  entry(`${day}-recalls`, { recalls: [{ place, entry: `${day}-recalls`, day, lot: "V-1", why: "soft" }] });
const LAST = entry("2025-12-30-last");

interface Asked {
  readonly plan?: readonly PlannedCoat[];
  readonly kind?: HoldKind;
  readonly assemblies?: readonly string[];
}
function looked(entries: readonly Entry[], { plan = [], kind = "covering", assemblies = ["wing", "rib"] }: Asked = {}) {
  const index = recordIndexOf(
    record({
      assemblies: [assembly("wing", { coats: plan }), assembly("rib"), assembly("fin")],
      finishes: SHEETS,
      lots: [V1],
      entries: [...entries, LAST],
    }),
  );
  const files = coatFiles(index).filter(({ coat }) => assemblies.includes(coat.assembly));
  return { index, coated: { kind, assemblies, files } };
}
const brief = ({ code, values, restsOn, blocks, about, takes }: Need) => ({
  code,
  values,
  blocks,
  takes: takes.code,
  about: `${about.kind} ${about.id}`,
  restsOn: restsOn.map(({ kind, id }) => `${kind} ${id}`),
});
const needs = (entries: readonly Entry[], asked: Asked = {}, signed?: string) => {
  const { index, coated } = looked(entries, asked);
  return coatNeeds(index, coated, signed === undefined ? undefined : orderOf(index, signed)).map(brief);
};
const DAY = "2025-04-01";
const ID = `entry ${DAY}-coat`;
const INSIDE = { coat: 1, where: "Inside", finish: "Some clear" };

describe("What is needed of coats", () => {
  it("is that each that stands is as its sheet asks", () => {
    expect(needs([puts(DAY, {})])).toEqual([]);
    const [bad] = needs([puts(DAY, BAD)]);
    expect(bad).toMatchObject({
      code: "need/coat",
      values: { ...INSIDE, verdict: "rejected" },
      blocks: true,
      takes: "take/coat-again",
      about: ID,
      restsOn: [ID],
    });
    expect(needs([puts(DAY, BAD), puts("2025-04-05", { stripped: "sanded" })])).toEqual([]);
    expect(needs([puts(DAY, { ...BAD, departure: "D-1" })])).toEqual([]);
    expect(needs([puts(DAY, { departure: "D-1" }), recalls("2025-04-02")]).map(({ code }) => code)).toEqual([
      "need/coat",
    ]);
    expect(needs([puts(DAY, { ...BAD, departure: "D-1" }), recalls("2025-04-02")]).map(({ code }) => code)).toEqual([
      "need/coat",
    ]);
  });

  it("names the departure that was accepted before the coat was put on", () => {
    const id = "2025-03-30-letter";
    const letter = departure("D-1", { entry: id, acceptedBy: "ins", acceptedIn: id, reference: "letter 4" });
    const all = [entry(id, { departures: [letter] }), puts(DAY, { ...BAD, departure: "D-1" })];
    expect(needs(all)[0]).toMatchObject({ values: { departures: ["D-1"] }, restsOn: [ID, "departure D-1"] });
  });

  it("is that it has dried, where such a coat is asked before", () => {
    const wet = puts("2025-12-29", { finish: "slow" });
    expect(needs([wet])).toMatchObject([
      { code: "need/coat", blocks: false, takes: "take/let-dry", values: { verdict: "pending" } },
    ]);
    expect(needs([puts("2025-12-29", { finish: "slow", ...BAD })]).map(({ takes }) => takes)).toEqual([
      "take/coat-again",
    ]);
    const plan = [{ where: "Inside", finish: "slow", before: "flight" }] as const;
    expect(needs([wet], { plan })).toEqual([]);
    expect(needs([wet], { plan, kind: "flight" })).toHaveLength(1);
    expect(needs([wet], {}, LAST.id)).toHaveLength(1);
    expect(needs([entry("2025-12-01-look"), wet], {}, "2025-12-01-look")).toEqual([]);
    expect(needs([entry("2025-12-01-look"), puts("2025-12-29", BAD)], {}, "2025-12-01-look")).toHaveLength(1);
  });

  it("is as many as the plan, the sheet or the number of one there asks", () => {
    const missing = (there: number, asked: number, more: object = {}) => ({
      code: "need/coats-missing",
      values: { where: "Inside", finish: "Some clear", asked, there, ...more },
      blocks: false,
      takes: "take/put-on",
      about: "assembly wing",
      restsOn: there === 0 ? ["assembly wing"] : ["assembly wing", ID],
    });
    const plan = [{ where: "Inside", finish: "clear", coats: 3, before: "covering" }] as const;
    expect(needs([], { plan })).toEqual([missing(0, 3)]);
    expect(needs([puts(DAY, {})], { plan })).toEqual([missing(1, 3)]);
    expect(needs([puts(DAY, {}, { coat: 1 })], { plan })).toEqual([missing(1, 3)]);
    expect(needs([puts(DAY, {}, { coat: 2 }, { coat: 3 })], { plan })).toEqual([]);
    expect(needs([puts(DAY, { finish: "twice" })])).toEqual([missing(1, 2, { finish: "Some twice" })]);
    expect(needs([puts(DAY, { coat: 3, departure: "D-1" }, {})])).toEqual([missing(2, 3)]);
    expect(needs([puts(DAY, { coat: 4, departure: "D-1" }, { coat: 2, departure: "D-1" })])).toEqual([missing(2, 4)]);
    expect(needs([], { plan: [{ where: "Inside", finish: "clear", before: "flight" }] })).toEqual([]);
    expect(needs([], { plan: [{ where: "Inside", finish: "clear", before: "next skin" }] })).toEqual([missing(0, 1)]);
  });

  it("is asked once of what is planned, and of the rest by what kind of finish it is", () => {
    const plan = [{ where: "Inside", finish: "clear", coats: 1, before: "flight" }] as const;
    expect(needs([puts(DAY, { coat: 2, departure: "D-1" })], { plan })).toEqual([]);
    expect(needs([puts(DAY, { coat: 2, departure: "D-1" })], { plan, kind: "flight" })).toHaveLength(1);
    const doped = puts(DAY, { finish: "dope", coat: 2, departure: "D-1" });
    expect(needs([doped])).toEqual([]);
    expect(needs([doped], { kind: "first load" })).toHaveLength(1);
  });

  it("of those put on after a signature is only whether all are there now", () => {
    const plan = [{ where: "Inside", finish: "clear", coats: 2, before: "covering" }] as const;
    const entries = [puts(DAY, {}), entry("2025-04-05-look"), puts("2025-04-09", { coat: 2 })];
    expect(needs(entries, { plan }, "2025-04-05-look")).toEqual([]);
    expect(needs(entries.slice(0, 2), { plan }, "2025-04-05-look")).toMatchObject([{ values: { there: 1, asked: 2 } }]);
    expect(needs([puts(DAY, {})], { plan }, `${DAY}-coat`)).toMatchObject([{ values: { there: 1, asked: 2 } }]);
  });
});

describe("What is needed of coats, at the edges of a signature", () => {
  const plan = [{ where: "Inside", finish: "clear", coats: 2, before: "covering" }] as const;

  it("counts none beyond those that are asked, and has what its own entry put on", () => {
    const third = puts("2025-04-09", { coat: 3, departure: "D-1" });
    const entries = [puts(DAY, {}), entry("2025-04-05-look"), third];
    expect(needs(entries, { plan }, "2025-04-05-look")).toMatchObject([{ values: { there: 1, asked: 2 } }]);
    expect(needs([puts("2025-12-29", { finish: "slow" })], {}, "2025-12-29-coat")).toHaveLength(1);
  });
});

describe("What was open of coats when it was signed", () => {
  const LOOK = "2025-04-05-look";
  const then = (entries: readonly Entry[], asked: Asked = {}) => {
    const { index, coated } = looked([...entries, entry(LOOK)], asked);
    return coatsThen(index, coated, { at: orderOf(index, LOOK), day: epochOf("2025-04-05") }).map(
      ({ need }) => need && brief(need),
    );
  };
  const off = puts("2025-04-09", { stripped: "sanded" });

  it("has its own need where it still is, and one where it was settled since", () => {
    expect(then([puts(DAY, {})])).toEqual([]);
    expect(then([puts(DAY, BAD)])).toEqual([undefined]);
    expect(then([puts(DAY, BAD), off])).toEqual([
      {
        code: "then/coat",
        values: INSIDE,
        blocks: true,
        takes: "take/look-again",
        about: ID,
        restsOn: [ID, "entry 2025-04-09-coat"],
      },
    ]);
    expect(then([puts(DAY, BAD), puts("2025-04-04", { stripped: "sanded" })])).toEqual([]);
    expect(then([puts("2025-04-09", BAD)])).toEqual([]);
    expect(then([puts(DAY, {}), recalls("2025-04-09")])).toEqual([]);
    expect(then([puts(DAY, {}), recalls("2025-04-04")])).toEqual([undefined]);
  });

  it("is what had not dried by the beginning of that day", () => {
    const wet = (day: string) => puts(day, { finish: "slow", at: moment(day, "00:00") });
    expect(then([wet("2025-04-03")])).toEqual([]);
    expect(then([puts("2025-04-03", { finish: "slow", at: moment("2025-04-03", "00:01") })])).toEqual([
      {
        code: "then/coat-drying",
        values: { ...INSIDE, finish: "Some slow" },
        blocks: true,
        takes: "take/look-again",
        about: "entry 2025-04-03-coat",
        restsOn: ["entry 2025-04-03-coat"],
      },
    ]);
    expect(then([puts("2025-04-04", {})])).toEqual([]);
    expect(
      then([puts("2025-04-04", { finish: "slow" })], { plan: [{ where: "Inside", finish: "slow", before: "flight" }] }),
    ).toEqual([]);
    const stripped = puts("2025-12-29", { finish: "slow", stripped: "sanded" });
    expect(then([puts("2025-04-04", { finish: "slow" }), stripped])).toMatchObject([
      { code: "then/coat-drying", restsOn: ["entry 2025-04-04-coat", "entry 2025-12-29-coat"] },
    ]);
  });

  it("that still dries has its own need, unless it was taken off", () => {
    const ages = puts("2025-04-04", { finish: "ages" });
    expect(then([ages])).toEqual([undefined]);
    expect(then([ages, puts("2025-04-09", { finish: "ages", stripped: "sanded" })])).toMatchObject([
      { code: "then/coat-drying" },
    ]);
  });

  it("is not there now where it was taken off again", () => {
    const plan = [{ where: "Inside", finish: "clear", coats: 2, before: "covering" }] as const;
    const entries = [puts(DAY, {}), puts("2025-04-09", { coat: 2 }), puts("2025-04-12", { stripped: "sanded" })];
    expect(then(entries, { plan })).toEqual([undefined]);
  });

  it("has what its own entry put on", () => {
    const { index, coated } = looked([puts(DAY, BAD)]);
    const at = orderOf(index, `${DAY}-coat`);
    expect(coatsThen(index, coated, { at, day: epochOf(DAY) })).toEqual([{}]);
    expect(coatsThen(index, coated, { at: at - 1, day: epochOf(DAY) })).toEqual([]);
  });

  it("is what was not there yet, where it is now", () => {
    const plan = [{ where: "Inside", finish: "clear", coats: 2, before: "covering" }] as const;
    const late = puts("2025-04-09", { coat: 2 });
    expect(then([puts(DAY, {})], { plan })).toEqual([undefined]);
    expect(then([puts(DAY, {}), late], { plan })).toEqual([
      {
        code: "then/coats-missing",
        values: { where: "Inside", finish: "Some clear", asked: 2 },
        blocks: true,
        takes: "take/look-again",
        about: "assembly wing",
        restsOn: ["assembly wing", ID, "entry 2025-04-09-coat"],
      },
    ]);
    expect(then([puts(DAY, {}, { coat: 2 })], { plan })).toEqual([]);
    expect(then([late, puts("2025-04-10", {})], { plan })).toMatchObject([{ code: "then/coats-missing" }]);
  });
});

describe("What became of coats after it was signed", () => {
  const later = (entries: readonly Entry[]) => {
    const { index, coated } = looked(entries);
    return coatsLater(index, coated, ({ entry: id }) => id > "2025-04-05").map(({ fact, change }) => ({
      fact: fact.entry,
      code: change.code,
      values: change.values,
      about: `${change.about.kind} ${change.about.id}`,
      restsOn: change.restsOn.map(({ kind, id }) => `${kind} ${id}`),
    }));
  };

  it("is told of one that was put on badly, and of no good one", () => {
    expect(later([puts("2025-04-09", {})])).toEqual([]);
    expect(later([puts("2025-04-09", BAD)])).toMatchObject([
      {
        fact: "2025-04-09-coat",
        code: "change/coat-out",
        values: { ...INSIDE, verdict: "rejected" },
        about: "entry 2025-04-09-coat",
        restsOn: ["entry 2025-04-09-coat"],
      },
    ]);
    expect(later([puts("2025-04-09", BAD), puts("2025-04-10", { stripped: "sanded" })])).toEqual([]);
    expect(later([puts(DAY, BAD)])).toEqual([]);
  });

  it("is told of one that was recalled, but not of one recalled before", () => {
    expect(later([puts(DAY, {}), recalls("2025-04-09")])).toEqual([
      {
        fact: "2025-04-09-recalls",
        code: "change/coat-recalled",
        values: { ...INSIDE, lot: "V-1", day: "2025-04-09", why: "soft" },
        about: "lot V-1",
        restsOn: ["lot V-1", "entry 2025-04-09-recalls", ID],
      },
    ]);
    expect(later([puts(DAY, {}), recalls("2025-04-02")])).toEqual([]);
  });

  it("is told of one that was taken off", () => {
    expect(later([puts(DAY, {}), puts("2025-04-09", { stripped: "sanded" })])).toEqual([
      {
        fact: "2025-04-09-coat",
        code: "change/coat-off",
        values: { ...INSIDE, day: "2025-04-09", how: "sanded" },
        about: "entry 2025-04-09-coat",
        restsOn: ["entry 2025-04-09-coat", ID],
      },
    ]);
    expect(later([puts(DAY, {}), puts("2025-04-04", { stripped: "sanded" })])).toEqual([]);
    expect(later([puts("2025-04-08", {}), puts("2025-04-09", { stripped: "sanded" })])).toEqual([]);
  });
});

describe("A coat that was amended by someone alone", () => {
  const amendment = {
    place,
    entry: `${DAY}-coat`,
    by: "2025-04-09-mends",
    day: "2025-04-09",
    why: "misread",
    prose: false,
    withheld: false,
    changes: [
      {
        place,
        about: { kind: "entry", id: `${DAY}-coat` } as const,
        fact: "Coat: Inside",
        value: "temperature",
        is: ["20 °C"],
        needs: [],
        audience: "public" as const,
      },
    ],
  };
  const entries = (change: Partial<Coat>, ...more: Partial<Coat>[]) => [
    puts(DAY, change, ...more),
    entry("2025-04-09-mends", { amendments: [amendment] }),
  ];
  const filesOf = (change: Partial<Coat>, ...more: Partial<Coat>[]) => looked(entries(change, ...more)).coated.files;
  const stands = (now: readonly CoatFile[], ...before: (readonly CoatFile[])[]) => {
    const seconded = new Seconded(
      record({ entries: entries({}) }),
      before.map((coats) => ({ coats, assemblies: new Map(), pairs: new Map() }) as unknown as Evidence),
    );
    return now.map((file) => seconded.coat(file));
  };
  const told = (files: readonly CoatFile[]) =>
    files.map(({ verdict, findings }) => [
      verdict,
      findings
        .filter(({ code }) => code === "seconded/stands")
        .map(({ severity, values, restsOn }) => [severity, values, restsOn.map(({ id }) => id)]),
    ]);

  it("stands as the worst of all that was said of it", () => {
    const mended = stands(filesOf({}), filesOf(BAD));
    expect(told(mended)).toEqual([
      [
        "rejected",
        [
          [
            "rejects",
            { as: "shown", stands: "rejected", entries: ["2025-04-09-mends"], broken: false },
            [`${DAY}-coat`, "2025-04-09-mends"],
          ],
        ],
      ],
    ]);
    expect(mended[0]?.findings.length).toBe((filesOf({})[0]?.findings.length ?? 0) + 1);
    expect(told(stands(filesOf({}), filesOf({ lots: [] }), filesOf({})))[0]?.[0]).toBe("not shown");
    expect(told(stands(filesOf({}), filesOf({ lots: [] }), filesOf(BAD)))[0]?.[0]).toBe("rejected");
    expect(told(stands(filesOf(BAD), filesOf({})))).toEqual([["rejected", []]]);
    expect(told(stands(filesOf({}), filesOf({})))).toEqual([["shown", []]]);
    expect(told(stands(filesOf({}), []))).toEqual([["shown", []]]);
  });

  it("is held against the one at the same place, whatever else of it was amended", () => {
    for (const other of [{}, { where: "Outside" }, { assembly: "rib" }, { finish: "twice" }, { coat: 2 }])
      expect(told(stands(filesOf({}), filesOf({ ...BAD, ...other })))[0]?.[0]).toBe("rejected");
    for (const other of [{ file: "entries/other.md" }, { line: 50 }, { column: 50 }])
      expect(told(stands(filesOf({}), filesOf({ ...BAD, place: { ...place, ...other } })))).toEqual([["shown", []]]);
  });
});
