import { describe, expect, it } from "vitest";
import type { Adhesive, Batch, Noted, Piece, PieceTest, PostCure } from "../../src/facts/types.ts";
import { adhesive, batch, DAY, entry, glued, piece, test } from "./make.ts";
import { celsius, d, min, moment, range } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const place = { file: "", line: 1, column: 1 };
const ASKED = { temperature: range("60 to 70 °C", 60, 70), time: min("120") };
const HEATED = "2025-03-12";
const at = (day: string, time: string) => moment(day, time);
const about = (typed: string, least: number, most: number) =>
  ({ typed, about: { least, most }, unit: "°C", step: 1 }) as Noted;

/** W-1 and its piece two hours at 65 °C, two days after they were glued. */
const heating = (change: Partial<PostCure> = {}, id = `${HEATED}-heat`): PostCure => ({
  place,
  entry: id,
  joints: ["W-1"],
  pieces: ["B-1/1"],
  temperature: celsius("65"),
  from: at(HEATED, "10:00"),
  to: at(HEATED, "12:00"),
  ...change,
});

interface Made {
  readonly batch?: Partial<Batch>;
  readonly piece?: Partial<Piece>;
  readonly test?: Partial<PieceTest> | "none";
  readonly asked?: typeof ASKED | undefined;
  readonly sheet?: Partial<Adhesive>;
}

function fileOf(heatings: readonly PostCure[], { batch: change, piece: own, test: broken, ...made }: Made = {}) {
  const ids = [...new Set(heatings.map((one) => one.entry))];
  const entries = ids.map((id) => entry(id, { postCures: heatings.filter((one) => one.entry === id) }));
  const sheet = adhesive({ ...made.sheet, postCure: "asked" in made ? made.asked : ASKED });
  const record = glued(
    [batch("B-1", { pieces: [piece("B-1", 1, own)], ...change })],
    broken === "none" ? [] : [test("B-1/1", broken)],
    { adhesives: [sheet], entries },
  );
  const file = reckon(record).batches.get("B-1");
  if (!file) throw new Error("no batch");
  return file;
}
const told = (...of: Parameters<typeof fileOf>) =>
  fileOf(...of)
    .findings.filter(({ rule }) => rule === "post-cure")
    .map(({ code, severity, values, limit, restsOn }) => ({
      code,
      severity,
      values,
      limit: limit && [limit.code, limit.values, limit.from.code],
      restsOn: restsOn.map(({ kind, id }) => `${kind} ${id}`),
    }));
const codes = (...of: Parameters<typeof fileOf>) => told(...of).map(({ code }) => code);

const SELF = ["batch B-1", `entry ${DAY}-glue`];
const LIMIT = ["limit/post-cure", { temperature: "60 to 70 °C", time: "120 min" }, "source/sheet"];
const WANTED = { temperature: "60 to 70 °C", time: "120 min" };
const found = (typed: string, hours: number) => ({ joint: "W-1", found: typed, lasted: hours * 3600 });
const onHeat = [...SELF, "joint W-1", `entry ${HEATED}-heat`];
const PIECES = { code: "post-cure/pieces", severity: "caution", values: { pieces: ["B-1/1"] }, limit: undefined };

describe("Heat that the sheet asks after gluing", () => {
  it("is shown by a heating that is long and warm enough, of the joint and the piece together", () => {
    expect(told([heating()])).toEqual([
      { code: "post-cure/done", severity: "meets", values: found("65 °C", 2), limit: LIMIT, restsOn: onHeat },
    ]);
    expect(fileOf([heating()]).verdict).toBe("shown");
    expect(codes([heating({ temperature: celsius("60") })])).toEqual(["post-cure/done"]);
    expect(codes([heating({ temperature: celsius("70") })])).toEqual(["post-cure/done"]);
  });

  it("is not asked by a sheet that asks none, nor of a batch in no joint", () => {
    expect(told([], { asked: undefined })).toEqual([]);
    expect(fileOf([], { asked: undefined }).verdict).toBe("shown");
    expect(told([heating()], { batch: { joints: [] } })).toEqual([]);
  });

  it("is not noted of each joint that was not in it", () => {
    expect(told([heating()], { batch: { joints: ["W-1", "W-2"] } })[1]).toEqual({
      code: "post-cure/not-noted",
      severity: "unproven",
      values: { joint: "W-2", ...WANTED },
      limit: LIMIT,
      restsOn: [...SELF, "joint W-2"],
    });
    expect(fileOf([]).verdict).toBe("not shown");
  });

  it("is not shown by one that is too short, too cool or too hot, or only estimated", () => {
    const outside = (typed: string, hours: number) => ({
      code: "post-cure/outside",
      severity: "unproven",
      values: { ...found(typed, hours), ...WANTED },
      limit: LIMIT,
      restsOn: onHeat,
    });
    expect(told([heating({ to: at(HEATED, "11:59") })])[0]).toEqual(outside("65 °C", 2 - 1 / 60));
    expect(told([heating({ temperature: celsius("59") })])[0]).toEqual(outside("59 °C", 2));
    expect(told([heating({ temperature: celsius("71") })])[0]).toEqual(outside("71 °C", 2));
    expect(told([heating({ temperature: celsius("71"), to: at(HEATED, "10:01") })])[0]).toEqual(
      outside("71 °C", 1 / 60),
    );
    expect(told([heating({ temperature: about("about 65 °C", 62, 68) })])[0]).toEqual({
      ...outside("about 65 °C", 2),
      code: "post-cure/estimate",
    });
  });

  it("is mended by another heating where it was too little or only estimated, and not where it was too hot", () => {
    const again = heating({}, "2025-03-13-again");
    const first = (change: Partial<PostCure>) => told([heating(change), again])[0];
    expect(first({ temperature: celsius("50") })).toEqual({
      code: "post-cure/done",
      severity: "meets",
      values: found("65 °C", 2),
      limit: LIMIT,
      restsOn: [...onHeat, "entry 2025-03-13-again"],
    });
    expect(first({ temperature: about("about 65 °C", 62, 68) })?.code).toBe("post-cure/done");
    expect(first({ temperature: celsius("80") })?.code).toBe("post-cure/outside");
    const estimate = { temperature: about("about 65 °C", 62, 68) };
    expect(told([heating({ temperature: celsius("50") }), heating(estimate, "2025-03-13-again")])[0]?.code).toBe(
      "post-cure/estimate",
    );
  });

  it("has no upper end where the sheet names none", () => {
    const asked = { ...ASKED, temperature: range("at least 60 °C", 60) };
    expect(codes([heating({ temperature: celsius("90") })], { asked })).toEqual(["post-cure/done"]);
  });

  it("counts from the last joint closed, and from the end of that day where that is not noted", () => {
    const of = (time: string, change: Partial<Batch> = {}) =>
      codes([heating({ from: at(DAY, time), to: at(HEATED, "12:00") })], { batch: change })[0];
    expect(of("14:19")).toBe("post-cure/not-noted");
    expect(of("14:20")).toBe("post-cure/done");
    expect(of("23:58", { closed: undefined })).toBe("post-cure/not-noted");
  });
});

describe("Heat that the sheet does not ask", () => {
  const heats = (heatings: readonly PostCure[], sheet: Partial<Adhesive>) =>
    told(heatings, { asked: undefined, sheet, test: "none" }).map(({ code, severity, values, limit }) => [
      severity,
      code,
      values,
      limit?.[0],
    ]);
  const cure = [{ temperature: celsius("20"), time: d("5") }];
  const asked = { temperature: range("15 °C to 30 °C", 15, 30), cure };
  const hot = (typed: string, more: Partial<PostCure> = {}) => heating({ temperature: celsius(typed), ...more });
  const cured = { from: at("2025-03-18", "10:00"), to: at("2025-03-18", "12:00"), entry: "2025-03-18-heat" };

  it("rejects where it was above the sheet's temperatures before the joint had cured", () => {
    const rejected = (typed: string) => [
      ["rejects", "post-cure/while-it-cured", { ...found(typed, 2), asked: "15 °C to 30 °C" }, "limit/shop"],
    ];
    expect(heats([hot("31")], asked)).toEqual(rejected("31 °C"));
    expect([heats([hot("30")], asked), heats([hot("31", cured)], asked)]).toEqual([[], []]);
    const until = (time: string) => heats([hot("31", { from: at(DAY, "10:00"), to: at(DAY, time) })], asked).length;
    expect([until("12:00"), until("14:00"), until("14:01")]).toEqual([0, 0, 1]);
    const from = (time: string) =>
      heats([hot("31", { from: at("2025-03-15", time), to: at("2025-03-18", "12:00") })], asked).length;
    expect([from("14:19"), from("14:20")]).toEqual([1, 0]);
    const [rests] = told([hot("31")], { asked: undefined, sheet: asked, test: "none" });
    expect(rests?.restsOn).toEqual(onHeat);
    expect(heats([hot("40")], { ...asked, cure: [...cure, { temperature: celsius("40"), time: d("1") }] })).toEqual([]);
    expect(heats([hot("31")], { temperature: undefined, cure })).toEqual([]);
  });

  it("is a caution above what cured adhesive may see", () => {
    const service = celsius("50");
    expect(heats([hot("51", cured)], { ...asked, service })).toEqual([
      ["caution", "post-cure/above-service", { ...found("51 °C", 2), asked: "50 °C" }, "limit/service"],
    ]);
    expect(heats([hot("50", cured)], { ...asked, service })).toEqual([]);
    const [first] = told([hot("51", cured)], { asked: undefined, sheet: { ...asked, service }, test: "none" });
    expect(first?.limit).toEqual(["limit/service", { asked: "50 °C" }, "source/sheet"]);
  });
});

describe("A test piece of a sheet that asks no heat", () => {
  const ALONE = { ...PIECES, code: "post-cure/pieces-alone" };
  const apart = heating({ joints: ["W-2"] });
  const asked = undefined;

  it("is told where it was heated, and no joint of its batch in that heat", () => {
    const rests = [...SELF, "piece B-1/1", "entry 2025-03-20-tests", `entry ${HEATED}-heat`];
    expect(told([apart], { asked })).toEqual([{ ...ALONE, restsOn: rests }]);
    expect(fileOf([apart], { asked }).verdict).toBe("not shown");
    expect(codes([heating({ joints: [] })], { asked, test: "none" })).toEqual(["post-cure/pieces-alone"]);
    const once = heating({ temperature: celsius("30") }, "2025-03-13-with");
    expect(codes([once, apart], { asked })).toEqual(["post-cure/pieces-alone"]);
    expect(codes([once], { asked })).toEqual([]);
    expect(fileOf([once], { asked }).verdict).toBe("shown");
  });

  it("is told of heat between gluing and breaking alone", () => {
    const wood = (time: string) => heating({ joints: [], from: at(DAY, "08:00"), to: at(DAY, time) });
    expect(codes([wood("09:00")], { asked })).toEqual([]);
    expect(codes([wood("23:00")], { asked })).toEqual(["post-cure/pieces-alone"]);
    expect(codes([wood("23:00")], { asked, piece: { glued: at(DAY, "23:00") } })).toEqual([]);
    const broken = (time: string) => codes([apart], { asked, test: { day: HEATED, at: at(HEATED, time) } });
    expect(broken("10:00")).toEqual([]);
    expect(broken("10:01")).toEqual(["post-cure/pieces-alone"]);
    expect(codes([apart], { asked, test: { day: HEATED, at: undefined } })).toEqual(["post-cure/pieces-alone"]);
  });

  it("is not told of one that is of a trial, nor of a batch in no joint", () => {
    expect(codes([apart], { asked, piece: { trial: "T" } })).toEqual([]);
    expect(codes([apart], { asked, batch: { joints: [] } })).toEqual([]);
  });
});

describe("A test piece of a sheet that asks heat", () => {
  const unheated = (...more: string[]) => ({ ...PIECES, restsOn: [...SELF, "piece B-1/1", ...more] });

  it("is told where nothing shows that it lay in the heat with a joint of its batch", () => {
    expect(told([heating({ pieces: [] })])[1]).toEqual(unheated("entry 2025-03-20-tests"));
    expect(told([heating({ pieces: [] })], { test: "none" })[1]).toEqual(unheated());
    const apart = heating({ joints: [] }, "2025-03-13-pieces");
    expect(told([heating({ pieces: [] }), apart])[1]).toEqual(
      unheated("entry 2025-03-20-tests", "entry 2025-03-13-pieces"),
    );
    expect(codes([heating(), heating({ joints: ["W-2"] }, "2025-03-13-pieces")])).toEqual(["post-cure/done"]);
  });

  it("is told where its heat was too little, too hot or only estimated", () => {
    for (const change of [{ temperature: celsius("50") }, { temperature: about("about 65 °C", 62, 68) }])
      expect(codes([heating(), heating({ ...change, joints: ["W-1"] }, "2025-03-13-more")])).toEqual([
        "post-cure/done",
      ]);
    expect(codes([heating({ pieces: [] }), heating({ temperature: celsius("50") }, "2025-03-13-more")])).toEqual([
      "post-cure/done",
      "post-cure/pieces",
    ]);
    const hot = heating({ temperature: celsius("80"), joints: ["W-2"] }, "2025-03-13-more");
    expect(codes([heating(), hot])).toEqual(["post-cure/done", "post-cure/pieces"]);
  });

  it("is told where it was heated before it was glued, or after it was broken", () => {
    const early = heating({ from: at(DAY, "14:20"), to: at(DAY, "16:20") });
    expect(codes([early])).toEqual(["post-cure/done"]);
    expect(codes([early], { piece: { glued: at(DAY, "14:30") } })).toEqual(["post-cure/done", "post-cure/pieces"]);
    const broken = (time: string, change: Partial<PieceTest> = {}) =>
      codes([heating()], { test: { day: HEATED, at: at(HEATED, time), ...change } });
    expect(broken("12:00")).toEqual(["post-cure/done"]);
    expect(broken("11:59")).toEqual(["post-cure/done", "post-cure/pieces"]);
    expect(broken("23:00", { at: undefined })).toEqual(["post-cure/done", "post-cure/pieces"]);
  });

  it("that nobody has broken yet was heated before it is", () => {
    expect(codes([heating()], { test: "none" })).toEqual(["post-cure/done"]);
  });

  it("is not told of one that is of a trial", () => {
    expect(codes([heating({ pieces: [] })], { piece: { trial: "T" } })).toEqual(["post-cure/done"]);
  });

  it("that was not heated shows nothing of its batch", () => {
    expect(fileOf([heating({ pieces: [] })]).verdict).toBe("not shown");
  });
});
