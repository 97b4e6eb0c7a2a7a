/** What was open when a hold point was signed: of each kind what counts as open, what was settled since, and what is seen in the entry itself. */
import { describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { openThen } from "../../src/evidence/readiness/open-then.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { Batch, Entry, Inspection, JointSpec, Record } from "../../src/facts/types.ts";
import {
  assembly,
  batch,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  openItem,
  piece,
  record,
  test,
} from "./make.ts";
import { g, mm, moment } from "./quantities.ts";
import { amends, measures, OUT, recall, ref, reject, rework } from "./signed.ts";

const SIGNED = "2025-05-01-look";
const GLUED = "2025-03-10-glue";
const glued = (...batches: readonly Batch[]) => entry(GLUED, { batches });
const one = (change: Partial<Batch> = {}, id = "B-1") => batch(id, { entry: GLUED, ...change });
const TESTS = entry("2025-03-20-tests", { tests: [test("B-1/1"), test("B-2/1")] });
const SOUND = [glued(one(), one({ joints: ["W-2"] }, "B-2")), TESTS];
const END = entry("2025-12-01-end");
const sign = (more: Partial<Entry> = {}, id = SIGNED) =>
  entry(id, { inspections: [inspection("CLOSE", { entry: id, day: id.slice(0, 10) })], ...more });

/** A wing of two joints, signed for as a whole; `NEXT` comes before it. */
function recordOf(entries: readonly Entry[], change: Partial<JointSpec>): Record {
  const joints = [{ ...joint("W-1"), ...change }, joint("W-2")];
  const points = [holdPoint("CLOSE"), holdPoint("NEXT", { kind: "next skin" })];
  return record({ assemblies: [assembly("wing", { joints, holdPoints: points })], entries: [...entries, END] });
}

/** For each thing that was open by then: what is told of it and rests on, or `open` where it still is. */
function open(entries: readonly Entry[], asked = ["W-1"], change: Partial<JointSpec> = {}): unknown[] {
  const made = recordOf(entries, change);
  const [evidence, index] = [reckon(made), recordIndexOf(made)];
  const signed = index.inspections.get("CLOSE")?.at(-1);
  const point = index.holdPoints.get("CLOSE");
  if (!signed || !point) throw new Error("nobody signed");
  const scope = {
    holdPoint: point,
    joints: asked.flatMap((id) => evidence.joints.get(id) ?? []),
    batches: evidence.batches,
    openItems: [...index.openItems.values()],
    departures: [...index.departures.values()],
    measurements: made.entries.flatMap(({ measurements }) => measurements),
    pairs: [...evidence.pairs.values()],
    fitted: [],
    coated: { kind: "close-up" as const, assemblies: [], files: [] },
  };
  const file = evidence.holdPoints.get("NEXT");
  const counted = index.inspections.get("NEXT") ?? [];
  const first = file && counted.length > 0 ? [{ file, looks: { counted, needs: [] } }] : [];
  return openThen(index, signed, scope, first).map(({ need }) => {
    if (need === undefined) return "open";
    expect(need).toMatchObject({ takes: { code: "take/look-again", values: {} }, blocks: true });
    const rests = need.restsOn.map(({ kind, id }) => `${kind} ${id}`);
    expect(rests[0]).toBe(`${need.about.kind} ${need.about.id}`);
    return [need.code, need.values, ...rests];
  });
}
const early = (id: string, more: (id: string, day: string) => Partial<Entry>) =>
  entry(`2025-04-0${id}`, more(`2025-04-0${id}`, `2025-04-0${id.slice(0, 1)}`));
const late = (id: string, more: (id: string, day: string) => Partial<Entry>) =>
  entry(`2025-06-0${id}`, more(`2025-06-0${id}`, `2025-06-0${id.slice(0, 1)}`));

describe("A joint", () => {
  const thenJoint = (id = "W-1") => ["then/joint", { joint: id }, `joint ${id}`];

  it("that held sound and cured glue was not open", () => {
    expect(open([...SOUND, sign()], ["W-1", "W-2"])).toEqual([]);
  });

  it("that was glued only later was open: settled where it is shown now, and else still open", () => {
    const now = [glued(one({ joints: ["W-2"] }, "B-2")), TESTS, sign()];
    expect(open(now)).toEqual(["open"]);
    const id = "2025-06-01-glue";
    const again = entry(id, { batches: [batch("B-9", { entry: id }, "2025-06-01")] });
    const broken = entry("2025-06-20-tests", { tests: [test("B-9/1", { entry: "2025-06-20-tests" }, "2025-06-20")] });
    expect(open([...now, again])).toEqual(["open"]);
    expect(open([...now, again, broken])).toEqual([thenJoint()]);
    expect(open([...SOUND, early("1", rework("W-1")), sign(), again, broken])).toEqual([thenJoint()]);
  });

  it("that held a lot recalled by then was open, and not one recalled later", () => {
    expect(open([...SOUND, early("1", recall("R-1")), sign()])).toEqual(["open"]);
    expect(open([...SOUND, sign(recall("R-1")(SIGNED, "2025-05-01"))])).toEqual(["open"]);
    expect(open([...SOUND, sign(), late("1", recall("R-1"))])).toEqual([]);
    expect(open([...SOUND, early("1", recall("R-1")), sign(), late("1", recall("S-1"))])).toEqual(["open"]);
    expect(open([...SOUND, early("1", recall("R-2")), sign()])).toEqual([]);
  });

  it("that held a batch which is not good was open, one bad among good ones too", () => {
    const bad = one({ hardener: { lot: "H-1", mass: g("30.0") } });
    expect(open([glued(bad), TESTS, sign()])).toEqual(["open"]);
    expect(open([glued(bad, one({}, "B-2")), TESTS, sign()])).toEqual(["open"]);
    expect(open([glued(one({}), one({ joints: ["W-2"], hardener: bad.hardener }, "B-2")), TESTS, sign()])).toEqual([]);
  });

  it("is taken by what stood then: a batch or piece that was amended only later was as sound as nobody knew", () => {
    const bad = glued(one({ hardener: { lot: "H-1", mass: g("30.0") } }));
    const amended = amends(ref("batch", "B-1"), GLUED);
    const ofPiece = amends(ref("piece", "B-1/1"), GLUED);
    expect(open([bad, TESTS, sign(), late("1", amended)])).toEqual([]);
    expect(open([bad, TESTS, sign(), late("1", ofPiece)])).toEqual([]);
    expect(open([bad, TESTS, early("1", amended), sign()])).toEqual(["open"]);
    expect(open([bad, TESTS, sign(amended(SIGNED, "2025-05-01"))])).toEqual(["open"]);
    expect(open([bad, TESTS, early("1", amended), sign(), late("1", ofPiece)])).toEqual([]);
    expect(open([bad, TESTS, sign(), late("1", amends(ref("batch", "B-2"), GLUED))])).toEqual(["open"]);
  });

  it("was open for the builder's rejection where that came before, and not where it came after", () => {
    expect(open([...SOUND, early("1", reject("B-1")), sign()])).toEqual(["open"]);
    expect(open([...SOUND, sign(), late("1", reject("B-1"))])).toEqual([]);
    expect(open([...SOUND, early("1", reject("B-1")), sign(), late("1", reject("B-1"))])).toEqual(["open"]);
    expect(open([...SOUND, early("1", reject("B-2")), sign()])).toEqual([]);
  });

  it("had to have cured by the beginning of that day", () => {
    const midnight = glued(one({ mixed: moment("2025-03-09", "23:50"), closed: moment("2025-03-10", "00:00") }));
    const tests = (day: string) => entry(`${day}-a`, { tests: [test("B-1/1", { entry: `${day}-a` }, day)] });
    const thenCure = ["then/cure", { joint: "W-1" }, "joint W-1"];
    const thenPiece = (day: string) => ["then/piece", { piece: "B-1/1", day }, "piece B-1/1", `entry ${day}-a`];
    const looked = (day: string) => sign({}, `${day}-look`);
    expect(open([midnight, looked("2025-03-13"), tests("2025-03-14")])).toEqual([thenPiece("2025-03-14")]);
    expect(open([midnight, looked("2025-03-12"), tests("2025-03-14")])).toEqual([thenCure, thenPiece("2025-03-14")]);
    expect(open([glued(one()), looked("2025-03-13"), tests("2025-03-14")])).toEqual([
      thenCure,
      thenPiece("2025-03-14"),
    ]);
    expect(open([glued(one()), tests("2025-03-14"), looked("2025-03-14")])).toEqual([]);
  });

  it("of which nothing shows that it had cured was open", () => {
    const sheet = { structure: "primary" as const };
    expect(open([...SOUND, sign()], ["W-1"], sheet)).toEqual(["open"]);
    expect(open([...SOUND, sign()], ["W-2"], sheet)).toEqual([]);
  });
});

describe("A test piece", () => {
  const pieces = [piece("B-1", 1), piece("B-1", 2), piece("B-1", 3, { trial: "T" })];
  const whole = [glued(one({ joints: ["W-1", "W-2"], pieces })), TESTS];
  const breaks = (id: string, of: string) => entry(id, { tests: [test(of, { entry: id }, id.slice(0, 10))] });

  it("was open where it was never broken, or only later, once for all of its joints; not one of a trial", () => {
    expect(open([...whole, sign()], ["W-1", "W-2"])).toContain("open");
    expect(open([...whole, sign(), breaks("2025-06-01-t", "B-1/2")], ["W-1", "W-2"])).toEqual([
      ["then/piece", { piece: "B-1/2", day: "2025-06-01" }, "piece B-1/2", "entry 2025-06-01-t"],
    ]);
    expect(open([...whole, breaks("2025-04-01-t", "B-1/2"), sign()])).toEqual([]);
    const inIt = sign({ tests: [test("B-1/2", { entry: SIGNED }, "2025-05-01")] });
    expect(open([...whole, inIt])).toEqual([]);
    expect(open([...whole, breaks("2025-04-01-t", "B-1/2"), sign(), breaks("2025-06-01-t", "B-1/3")])).toEqual([]);
  });

  it("is counted beside the joint that waits for it", () => {
    expect(open([...whole, sign()])).toEqual(["open", "open"]);
    expect(open([glued(one({ pieces: [] })), sign()])).toEqual(["open"]);
  });
});

describe("An open item", () => {
  const raised = (id: string, closedIn?: string) => ({
    raised: [openItem("O-1", { entry: id, day: "2025-04-01", closedIn })],
  });
  const of = (...entries: Entry[]) => open([...SOUND, ...entries]);

  it("was open from its entry on until it was closed", () => {
    expect(
      of(
        early("1", (id) => raised(id)),
        sign(),
      ),
    ).toEqual(["open"]);
    expect(
      of(
        early("1", (id) => raised(id, "2025-06-01")),
        sign(),
        late("1", () => ({})),
      ),
    ).toEqual([
      [
        "then/open-item",
        { id: "O-1", day: "2025-04-01", what: "corner block" },
        "open item O-1",
        "entry 2025-04-01",
        "entry 2025-06-01",
      ],
    ]);
    expect(
      of(
        early("1", (id) => raised(id, "2025-04-02")),
        early("2", () => ({})),
        sign(),
      ),
    ).toEqual([]);
    expect(
      of(
        sign(),
        late("1", (id) => raised(id)),
      ),
    ).toEqual([]);
  });

  it("was open where the entry of the signature raised it, and closed where that entry closed it", () => {
    expect(of(sign(raised(SIGNED)))).toEqual(["open"]);
    expect(
      of(
        early("1", (id) => raised(id, SIGNED)),
        sign(),
      ),
    ).toEqual([]);
  });
});

describe("A departure", () => {
  const departs =
    (change: object = {}) =>
    (id: string): Partial<Entry> => ({ departures: [departure("D-1", { entry: id, day: "2025-04-01", ...change })] });
  const accepted = (acceptedIn?: string) => departs({ acceptedBy: "ins", reference: "letter 4", acceptedIn });
  const of = (...entries: Entry[]) => open([...SOUND, ...entries]);

  it("was open until an inspector accepted it", () => {
    expect(of(early("1", departs()), sign())).toEqual(["open"]);
    expect(of(early("1", accepted()), sign())).toEqual([]);
    expect(
      of(
        early("1", accepted("2025-04-02")),
        early("2", () => ({})),
        sign(),
      ),
    ).toEqual([]);
    expect(of(early("1", accepted(SIGNED)), sign())).toEqual([]);
    expect(
      of(
        early("1", accepted("2025-06-01")),
        sign(),
        late("1", () => ({})),
      ),
    ).toEqual([
      [
        "then/departure",
        { id: "D-1", day: "2025-04-01", what: "another packer" },
        "departure D-1",
        "entry 2025-04-01",
        "entry 2025-06-01",
      ],
    ]);
    expect(of(sign(), late("1", departs()))).toEqual([]);
    expect(of(sign(departs()(SIGNED)))).toEqual(["open"]);
  });
});

describe("A measurement", () => {
  const of = (...entries: Entry[]) => open([...SOUND, ...entries]);
  const again = { ...OUT, found: mm("61.2") };

  it("was open where it was out, until it was measured again within", () => {
    expect(of(early("1", measures(OUT)), sign())).toEqual(["open"]);
    expect(of(early("1", measures(again)), sign())).toEqual([]);
    expect(of(early("1", measures(OUT)), early("2", measures(again)), sign())).toEqual([]);
    expect(of(early("1", measures(OUT)), sign(measures(again)(SIGNED, "2025-05-01")))).toEqual([]);
    expect(of(early("1", measures(OUT)), sign(), late("1", measures(again)))).toEqual([
      [
        "then/measure-out",
        { what: "rib height", found: "62.0 mm", asked: "61.0 mm ±0.5 mm" },
        "entry 2025-04-01",
        "entry 2025-06-01",
      ],
    ]);
    expect(of(sign(), late("1", measures(OUT)))).toEqual([]);
    expect(of(early("1", measures({ ...OUT, departure: "D-7" })), sign())).toEqual([]);
  });
});

describe("A pair of sides", () => {
  const side = (which: "left" | "right", found: string, change: object = {}) =>
    measures({ what: which, pair: "P", side: which, found: mm(found), ...change });
  const LEFT = side("left", "62.0", { pairTolerance: mm("0.5") });
  const of = (...entries: Entry[]) => open([...SOUND, ...entries]);
  const thenPair = (...rests: string[]) => ["then/pair", { pair: "P" }, ...rests.map((id) => `entry ${id}`)];
  const both = [early("1", LEFT), early("2", side("right", "63.0"))];

  it("was open while its sides differed by more than they may, or one was not measured", () => {
    expect(of(...both, sign())).toEqual(["open"]);
    expect(of(early("1", LEFT), sign())).toEqual(["open"]);
    expect(of(early("1", LEFT), early("2", side("right", "62.3")), sign())).toEqual([]);
    expect(of(early("1", side("left", "62.0")), early("2", side("right", "63.0")), sign())).toEqual([]);
    expect(of(sign(), late("1", LEFT), late("2", side("right", "63.0")))).toEqual([]);
  });

  it("was settled by what was measured since", () => {
    expect(of(...both, sign(), late("1", side("right", "62.3")))).toEqual([
      thenPair("2025-04-01", "2025-04-02", "2025-06-01"),
    ]);
    expect(of(early("1", LEFT), sign(), late("1", side("right", "62.3")))).toEqual([
      thenPair("2025-04-01", "2025-06-01"),
    ]);
    expect(of(early("1", LEFT), sign(side("right", "62.3")(SIGNED, "2025-05-01")))).toEqual([]);
  });

  it("was answered for by a departure that either side names", () => {
    const named = { departure: "D-7" };
    expect(of(early("1", LEFT), early("2", side("right", "63.0", named)), sign())).toEqual([]);
    const tolerance = { pairTolerance: mm("0.5"), ...named };
    expect(of(early("1", side("left", "62.0", tolerance)), early("2", side("right", "63.0")), sign())).toEqual([]);
  });
});

describe("A hold point that comes first", () => {
  const looked = (result: Inspection["result"]) => (id: string, day: string) => ({
    inspections: [inspection("NEXT", { entry: id, day, result })],
  });
  const of = (...entries: Entry[]) => open([...SOUND, ...entries]);

  it("was open where it was not signed by then, settled since where it is passed now", () => {
    expect(of(early("1", looked("signed")), sign())).toEqual([]);
    expect(of(early("1", looked("not signed")), sign())).toEqual(["open"]);
    const settled = ["then/hold-point", { holdPoint: "NEXT" }, "hold point NEXT", "entry 2025-06-01"];
    expect(of(early("1", looked("not signed")), sign(), late("1", looked("signed")))).toEqual([settled]);
    expect(of(sign(), late("1", looked("signed")))).toEqual([settled]);
    expect(of(early("1", looked("signed")), early("2", looked("not signed")), sign())).toEqual(["open"]);
  });
});
