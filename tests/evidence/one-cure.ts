/** One batch and its test piece in a shop with a logger, and what is found of their cure. */
import { reckon } from "./reckoned.ts";
import type { SaidEvidence, SaidFinding } from "./reckoned.ts";
import type { Adhesive, Batch, ClimateLog, PieceTest, Procedure } from "../../src/facts/types.ts";
import { log } from "./logs.ts";
import { adhesive, batch, glued, procedure, test } from "./make.ts";
import { celsius, d, moment } from "./quantities.ts";

export interface Case {
  readonly climate: readonly ClimateLog[];
  readonly batch?: Partial<Batch>;
  readonly test?: Partial<PieceTest> | "none";
  readonly procedure?: Partial<Procedure>;
  readonly adhesive?: Partial<Adhesive>;
}

/** Mixed at 14:00 on 10 March and closed at 14:20, at 20 °C as noted; least cure 3 d at 20 °C unless another is given. */
export function reckoned(c: Case): SaidEvidence {
  const tests = c.test === "none" ? [] : [test("B-1/1", c.test, c.test?.day)];
  const leastCure = { time: d("3"), temperature: celsius("20") };
  const made = glued([batch("B-1", c.batch)], tests, {
    procedures: [procedure({ leastCure, ...c.procedure })],
    adhesives: [adhesive(c.adhesive)],
  });
  return reckon({ ...made, climate: c.climate });
}

/** By a sheet that cures at any temperature, unless another is given. */
const atAnyWarmth = (c: Case): Case => ({ ...c, adhesive: { temperature: undefined, ...c.adhesive } });

export const pieceOf = (c: Case) => reckoned(atAnyWarmth(c)).pieces.get("B-1/1");
export const found = (findings: readonly SaidFinding[] | undefined, rule: string) =>
  findings
    ?.filter((one) => one.rule === rule)
    .map(({ severity, sentence }) => `${severity}: ${sentence}`)
    .join(" | ");
export const ofPiece = (c: Case, rule: string) => found(pieceOf(c)?.findings, rule);
export const ofBatch = (c: Case, rule: string) => found(reckoned(c).batches.get("B-1")?.findings, rule);
export const broken = (day: string, time: string) => ({ day, at: moment(day, time) });

export const steady = (temperature: number) => [log("shop", "2025-03-01", 24 * 30, () => ({ temperature }))];
