/** Which looks at a hold point count, who may answer for work, and what a hold point is about. */
import { describe, expect, it } from "vitest";
import { refused, standingOf } from "../../src/evidence/readiness/answering.ts";
import { lastLook, looksOf } from "../../src/evidence/readiness/looks.ts";
import { insideOf, jointsOf, openItemsOf, othersWithin } from "../../src/evidence/readiness/order.ts";
import { recordIndexOf, type RecordIndex } from "../../src/evidence/record-index.ts";
import type { Departure, Entry, HoldPoint, Inspection, OpenItem, Person } from "../../src/facts/types.ts";
import { assembly, departure, entry, holdPoint, inspection, joint, measurement, openItem, record } from "./make.ts";
import { ref } from "./signed.ts";

const place = { file: "made.md", line: 1, column: 1 };
const person = (id: string, role: Person["role"]): [string, Person] => [
  id,
  { id, place, name: id, publicName: id, role, audience: "public" },
];
const PEOPLE = new Map([
  person("bob", "builder"),
  person("eve", "helper"),
  person("ins", "inspector"),
  person("also", "inspector"),
]);
const hours = (who: string, assemblyId: string) => ({
  place,
  who,
  task: "gluing",
  minutes: 60,
  typed: "1:00",
  assembly: assemblyId,
});

const POINTS = {
  wing: [
    holdPoint("SKIN", { kind: "next skin" }),
    holdPoint("CLOSE"),
    holdPoint("ALSO"),
    holdPoint("COVER", { kind: "covering" }),
  ],
  rib: [holdPoint("RIB", { assembly: "rib" }), holdPoint("RIB-LOAD", { assembly: "rib", kind: "first load" })],
  fin: [holdPoint("FIN", { assembly: "fin" })],
  aircraft: [holdPoint("LOAD", { assembly: "aircraft", kind: "first load" })],
};
const FLY = holdPoint("FLY", { assembly: "aircraft", kind: "flight" });
const ALL = [...Object.values(POINTS).flat(), FLY];
const TREE = [
  assembly("aircraft", { holdPoints: [...POINTS.aircraft, FLY] }),
  assembly("wing", { parent: "aircraft", joints: [joint("W-1")], holdPoints: POINTS.wing }),
  assembly("rib", { parent: "wing", joints: [joint("R-1", "rib")], holdPoints: POINTS.rib }),
  assembly("fin", { parent: "aircraft", joints: [joint("F-1", "fin")], holdPoints: POINTS.fin }),
  assembly("jig", { joints: [joint("J-1", "jig")] }),
];
function indexOf(entries: readonly Entry[]): RecordIndex {
  const made = record({ assemblies: TREE, entries });
  return recordIndexOf({ ...made, aircraft: { ...made.aircraft, people: PEOPLE } });
}
const pointOf = (id: string): HoldPoint => {
  const found = ALL.find((one) => one.id === id);
  if (!found) throw new Error(id);
  return found;
};

describe("Who may answer for work", () => {
  const index = indexOf([
    entry("2025-03-01-a", { hours: [hours("ins", "rib"), hours("eve", "wing")] }),
    entry("2025-03-02-b", { hours: [hours("ins", "rib")] }),
  ]);

  it("is an inspector who has not worked there, whenever that was", () => {
    const role = { because: "role", restsOn: [] };
    expect(refused(index, "bob", new Set(["wing"]))).toEqual(role);
    expect(refused(index, "eve", new Set(["fin"]))).toEqual(role);
    expect(refused(index, "nobody", new Set(["fin"]))).toEqual(role);
    expect(refused(index, "ins", new Set(["wing", "rib"]))).toEqual({
      because: "worked",
      restsOn: [ref("entry", "2025-03-01-a")],
    });
    expect(refused(index, "ins", new Set(["wing"]))).toBeUndefined();
    expect(refused(index, "also", new Set(["wing", "rib"]))).toBeUndefined();
  });

  it("is nobody who worked before the record was kept, on who knows which assembly", () => {
    const line = {
      ...hours("ins", "rib"),
      span: { typed: "2021", from: "2021-01-01", to: "2021-12-31" },
      source: "log",
    };
    const earlier = (assemblyId: string | undefined) => {
      const lines = [{ ...line, assembly: assemblyId }];
      const file = {
        id: "before",
        place,
        file: "before.md",
        audience: "public" as const,
        title: "",
        lines,
        setAside: 0,
        body: [],
      };
      const made = record({ assemblies: TREE, entries: [] });
      const of = recordIndexOf({ ...made, earlier: [file], aircraft: { ...made.aircraft, people: PEOPLE } });
      return refused(of, "ins", new Set(["wing"]));
    };
    expect(earlier(undefined)).toEqual({ because: "worked", restsOn: [ref("earlier hours", "before")] });
    expect([earlier("rib"), earlier("wing")?.because]).toEqual([undefined, "worked"]);
  });

  it("of a departure is one who worked neither on its assembly nor where a measurement names it", () => {
    const standing = (change: Partial<Departure>, of = index) =>
      standingOf(of, departure("D-1", { reference: "letter 4", ...change }));
    expect(standing({})).toBe("not accepted");
    expect(standing({ acceptedBy: "bob" })).toBe("accepted by no inspector");
    expect(standing({ acceptedBy: "ins" })).toBe("accepted by one who worked on it");
    expect(standing({ acceptedBy: "ins", assembly: "rib" })).toBe("accepted by one who worked on it");
    expect(standing({ acceptedBy: "ins", assembly: "fin" })).toBe("accepted");
    expect(standing({ acceptedBy: "also" })).toBe("accepted");
    expect(standing({ acceptedBy: "also", condition: "yearly" })).toBe("accepted on a condition");
    expect(standing({ acceptedBy: "also", condition: "yearly", reference: undefined })).toBe("told by the builder");
    const named = measurement({ entry: "2025-03-02-b", assembly: "rib", departure: "D-1" });
    const measured = indexOf([
      entry("2025-03-01-a", { hours: [hours("ins", "rib")] }),
      entry("2025-03-02-b", { measurements: [named] }),
    ]);
    expect(standing({ acceptedBy: "ins", assembly: "fin" }, measured)).toBe("accepted by one who worked on it");
  });
});

describe("A look at a hold point", () => {
  const worked = entry("2025-03-01-a", { hours: [hours("ins", "wing")] });
  const look = (n: number, change: Partial<Inspection> = {}) => {
    const id = `2025-05-0${n}-look`;
    return entry(id, {
      inspections: [inspection("CLOSE", { entry: id, day: id.slice(0, 10), by: "also", ...change })],
    });
  };
  const looks = (...entries: Entry[]) => {
    const { counted, needs } = looksOf(indexOf([worked, ...entries]), pointOf("CLOSE"), new Set(["wing", "rib"]));
    return [
      counted.map(({ day }) => day),
      needs.map(({ code, takes, values, blocks, about, restsOn }) => ({ code, takes, values, blocks, about, restsOn })),
    ];
  };
  const about = ref("hold point", "CLOSE");
  const needed = (code: string, takes: string, n: number, ...more: unknown[]) => ({
    code,
    takes: { code: takes, values: {} },
    values: { day: `2025-05-0${n}` },
    blocks: false,
    about,
    restsOn: [about, ref("entry", `2025-05-0${n}-look`), ...more],
  });

  it("counts as a signature where an inspector who did not work there signed on a paper", () => {
    expect(looks(look(1))).toEqual([["2025-05-01"], []]);
    expect(looks(look(1, { reference: undefined, scan: "form.pdf" }))).toEqual([["2025-05-01"], []]);
    expect(looks(look(1, { reference: undefined }))).toEqual([
      [],
      [needed("need/signed-told", "take/signed-paper", 1)],
    ]);
    expect(looks(look(1, { by: "bob" }))).toEqual([[], [needed("need/signed-role", "take/inspector", 1)]]);
    expect(looks(look(1, { by: "bob", reference: undefined }))[1]).toEqual([
      needed("need/signed-role", "take/inspector", 1),
    ]);
    expect(looks(look(1, { by: "ins" }))).toEqual([
      [],
      [needed("need/signed-worked", "take/inspector", 1, ref("entry", "2025-03-01-a"))],
    ]);
  });

  it("counts where it was not signed, whoever looked", () => {
    for (const by of ["bob", "ins", "also"])
      expect(looks(look(1, { by, result: "not signed", reference: undefined }))).toEqual([["2025-05-01"], []]);
  });

  it("tells why signatures do not count since the last that does", () => {
    expect(looks(look(1, { by: "bob" }), look(2), look(3, { by: "bob" }), look(4, { reference: undefined }))).toEqual([
      ["2025-05-02"],
      [needed("need/signed-role", "take/inspector", 3), needed("need/signed-told", "take/signed-paper", 4)],
    ]);
    expect(looks(look(1), look(2))).toEqual([["2025-05-01", "2025-05-02"], []]);
    expect(looks()).toEqual([[], []]);
  });

  it("is the last up to a place in the order of the record", () => {
    const index = indexOf([worked, look(1), look(2), look(3, { result: "not signed" })]);
    const all = looksOf(index, pointOf("CLOSE"), new Set(["wing"]));
    const day = (until?: number) => lastLook(index, all, until)?.day;
    expect([day(), day(3), day(2), day(1), day(0)]).toEqual([
      "2025-05-03",
      "2025-05-03",
      "2025-05-02",
      "2025-05-01",
      undefined,
    ]);
  });
});

describe("What a hold point is about", () => {
  const index = indexOf([]);
  const inside = (id: string) => insideOf(index, pointOf(id)).map((one) => one.id);

  it("is its assembly and all within it, before flight the whole aircraft, its own first", () => {
    expect(inside("CLOSE")).toEqual(["wing", "rib"]);
    expect(inside("LOAD")).toEqual(["aircraft", "wing", "rib", "fin"]);
    expect(inside("FLY")).toEqual(["aircraft", "wing", "rib", "fin", "jig"]);
  });

  it("is fewer joints than all of them only before a skin or a closing", () => {
    const joints = (kind: HoldPoint["kind"], named?: string[]) => {
      const point = holdPoint("X", { kind, joints: named });
      return jointsOf(point, insideOf(index, point));
    };
    for (const kind of ["next skin", "close-up"] as const) expect(joints(kind, ["R-1"])).toEqual(["R-1"]);
    for (const kind of ["covering", "first load"] as const) {
      expect(joints(kind, ["R-1"])).toEqual(["W-1", "R-1"]);
      expect(joints(kind, ["F-1"])).toEqual(["W-1", "R-1", "F-1"]);
    }
    expect(joints("flight", ["R-1"])).toEqual(["W-1", "R-1", "F-1", "J-1"]);
    for (const kind of ["next skin", "covering"] as const) expect(joints(kind)).toEqual(["W-1", "R-1"]);
  });

  it("stands on those of an earlier kind, and of the same kind within its own assembly", () => {
    const earlier = (id: string) => {
      const point = pointOf(id);
      const { earlier: first, others } = othersWithin(index, point, insideOf(index, point));
      return [first, others].map((some) => some.map((one) => one.id));
    };
    expect(earlier("SKIN")).toEqual([[], ["CLOSE", "ALSO", "COVER", "RIB", "RIB-LOAD"]]);
    expect(earlier("CLOSE")).toEqual([
      ["SKIN", "RIB"],
      ["ALSO", "COVER", "RIB-LOAD"],
    ]);
    expect(earlier("LOAD")).toEqual([["SKIN", "CLOSE", "ALSO", "COVER", "RIB", "RIB-LOAD", "FIN"], ["FLY"]]);
    expect(earlier("FLY")).toEqual([["LOAD", "SKIN", "CLOSE", "ALSO", "COVER", "RIB", "RIB-LOAD", "FIN"], []]);
  });

  it("before flight does not wait for the flight of an assembly that is not within its own", () => {
    const other = holdPoint("OTHER", { assembly: "jig", kind: "flight" });
    const made = recordIndexOf(record({ assemblies: [...TREE.slice(0, 4), assembly("jig", { holdPoints: [other] })] }));
    const { earlier, others } = othersWithin(made, FLY, insideOf(made, FLY));
    expect([earlier.map(({ id }) => id).includes("OTHER"), others.map(({ id }) => id)]).toEqual([false, ["OTHER"]]);
  });

  it("asks for open items that name it, and from within for those before nothing, its kind, an earlier, or such a point", () => {
    const items = (id: string, change: Partial<OpenItem>) => {
      const of = indexOf([entry("2025-03-10-other", { raised: [openItem("O-1", change)] })]);
      const point = pointOf(id);
      return openItemsOf(of, point, insideOf(of, point)).length;
    };
    const asked = (before: string | undefined, assemblyId = "wing") =>
      ["SKIN", "CLOSE", "COVER"].map((id) => items(id, { before, assembly: assemblyId }));
    expect(asked(undefined)).toEqual([1, 1, 1]);
    expect(asked(undefined, "rib")).toEqual([1, 1, 1]);
    expect(asked(undefined, "fin")).toEqual([0, 0, 0]);
    expect(asked("next skin")).toEqual([1, 1, 1]);
    expect(asked("close-up")).toEqual([0, 1, 1]);
    expect(asked("covering", "rib")).toEqual([0, 0, 1]);
    expect(asked("flight")).toEqual([0, 0, 0]);
    expect(asked("RIB", "rib")).toEqual([0, 1, 1]);
    expect(asked("ALSO")).toEqual([0, 1, 1]);
    expect(asked("COVER")).toEqual([0, 0, 1]);
    expect(asked("CLOSE", "fin")).toEqual([0, 1, 0]);
    const both = [openItem("O-1", { assembly: "jig" }), openItem("O-2", { before: "close-up" })];
    const of = indexOf([entry("2025-03-10-other", { raised: both })]);
    expect(openItemsOf(of, FLY, insideOf(of, FLY)).map(({ id }) => id)).toEqual(["O-1", "O-2"]);
    for (const before of [undefined, "flight", "FIN"]) expect(items("FLY", { before, assembly: "jig" })).toBe(1);
  });
});
