/** Whether as many test pieces as asked were made, broken and passed. Trial pieces never count. */
import { count, list } from "../../words/figure.ts";
import type { Ref } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import type { Limit } from "../finding.ts";
import { AC_43_13_SAMPLE, procedureOf } from "../sources.ts";
import type { Finding, PieceFile, PieceVerdict, Severity } from "../types.ts";
import { entryRef, type BatchCase } from "./case.ts";

export function testPieces(c: BatchCase): Finding[] {
  const counting = c.pieces.filter((file) => file.piece.trial === undefined);
  return [...outcome(c, counting), ...trials(c, c.pieces.length - counting.length)];
}

function outcome(c: BatchCase, counting: readonly PieceFile[]): Finding[] {
  const { asked, limit } = askedOf(c, counting);
  const say = (severity: Severity, sentence: string): Finding[] => [
    c.find("test-pieces", severity, { sentence, limit, alsoOn: counting.flatMap(restsOn) }),
  ];
  const failed = counting.filter((file) => file.verdict === "fail").map((file) => file.piece.id);
  if (failed.length > 0) return say("rejects", `${list(failed)} failed.`);
  if (c.batch.joints.length === 0) return [];
  if (counting.length === 0) return say("unproven", "No test piece was made from it.");
  const tally = tallyOf(counting);
  if (counting.length < asked)
    return say("unproven", `${count(counting.length, "test piece")} of the ${asked} asked: ${tally}.`);
  const passed = counting.filter((file) => file.verdict === "pass").length;
  const unbroken = counting.filter((file) => file.verdict === "not broken").length;
  // A failing test that was left out would stand as a piece not broken: so enough passes do not settle it while one waits.
  if (passed >= asked)
    return say(
      unbroken > 0 ? "waits" : "meets",
      `${count(passed, "test piece")} passed of the ${asked} asked: ${tally}.`,
    );
  if (passed + unbroken >= asked)
    return say("waits", `Of the ${count(asked, "test piece")} asked not all are broken: ${tally}.`);
  return say("unproven", `Fewer than the ${count(asked, "test piece")} asked can still pass: ${tally}.`);
}

function askedOf(c: BatchCase, counting: readonly PieceFile[]): { asked: number; limit: Limit } {
  const procedures = counting.map((file) => lookUp(c.index.record.procedures, file.piece.procedure, "procedure"));
  const most = procedures.filter((p) => p.pieces !== undefined).sort((a, b) => (b.pieces ?? 0) - (a.pieces ?? 0))[0];
  const asked = Math.max(1, most?.pieces ?? 1);
  const text = `${count(asked, "test piece")} from each batch, broken and passed, and none failed`;
  return { asked, limit: { text, from: most ? procedureOf(most) : AC_43_13_SAMPLE } };
}

// Where one failed there is no tally.
const ORDER: readonly PieceVerdict[] = ["pass", "inconclusive", "too early", "not broken"];

function tallyOf(files: readonly PieceFile[]): string {
  const counts = ORDER.map((verdict) => ({ verdict, n: files.filter((file) => file.verdict === verdict).length }));
  return list(counts.filter(({ n }) => n > 0).map(({ verdict, n }) => `${n} ${verdict}`));
}

const restsOn = ({ piece, test }: PieceFile): Ref[] => [
  { kind: "piece", id: piece.id },
  ...(test ? [entryRef(test.entry)] : []),
];

function trials(c: BatchCase, n: number): Finding[] {
  if (n === 0) return [];
  const pieces = c.pieces.filter((file) => file.piece.trial !== undefined);
  const sentence = `${count(n, "piece")} made for a trial ${n === 1 ? "is" : "are"} not counted.`;
  return [
    c.find("trial-pieces", "caution", {
      sentence,
      alsoOn: pieces.map(({ piece }) => ({ kind: "piece", id: piece.id })),
    }),
  ];
}
