/** Of what was noted twice of a glue-up the worse counts. */
import { describe, expect, it } from "vitest";
import type { Batch, GlueUp, Noted } from "../../src/facts/types.ts";
import { DAY } from "./make.ts";
import { fileOf } from "./one-batch.ts";
import { min, moment, pc } from "./quantities.ts";

const at = (time: string) => moment(DAY, time);
const found = (asks: object, glueUp: Partial<GlueUp>, change: Partial<Batch> = {}) =>
  fileOf({ ...change, glueUp: { drop: [], beaded: [], ...glueUp } }, { asks, woodMoisture: undefined })
    .findings.filter(({ rule }) => rule === "glue-up")
    .map(({ code, values }) => [code, (values as { found?: unknown }).found]);

describe("What a glue-up is held to", () => {
  it("lasts until the last face was spread or the joint closed, whichever was later", () => {
    const open = (spreadTo: string) => found({ openTime: min("60") }, { spread: at("14:05"), spreadTo: at(spreadTo) });
    expect(open("14:25")).toEqual([["glue-up/as-asked", { seconds: 20 * 60 }]]);
    expect(open("14:15")).toEqual([["glue-up/as-asked", { seconds: 15 * 60 }]]);
    const assembly = (on: string) => found({ assemblyTime: min("60") }, { spread: at("14:05"), on: at(on) });
    expect(assembly("14:10")).toEqual([["glue-up/as-asked", { seconds: 15 * 60 }]]);
  });

  it("counts a moisture read of the wood beside those of its parts, unless it was only estimated", () => {
    const parts = ["10", "9"].map((moisture) => ({ lot: "S-1", moisture: pc(moisture) }));
    const apart = (moisture?: Noted) => found({ moistureDifference: pc("2") }, { parts }, { moisture });
    const close = (share: number) => ({ share: expect.closeTo(share, 9) as number });
    expect(apart()).toEqual([["glue-up/as-asked", close(0.01)]]);
    expect(apart(pc("11"))).toEqual([["glue-up/as-asked", close(0.02)]]);
    expect(apart(pc("13"))).toEqual([["glue-up/not-as-asked", close(0.04)]]);
    const about: Noted = { typed: "about 13 %", about: { least: 0.12, most: 0.14 }, unit: "%", step: 0 };
    expect(apart(about)).toEqual([["glue-up/as-asked", close(0.01)]]);
  });
});
