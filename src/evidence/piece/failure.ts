/** Where the piece broke. Fails in the glue line or below the procedure's share of wood failure, whatever its shape and cure. */
import { atLeast } from "../../reckoning/compare.ts";
import { isEstimate, saidEnds } from "../../facts/quantity/ends.ts";
import type { PieceTest, Procedure } from "../../facts/types.ts";
import { procedureOf } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Check, PieceCase } from "./case.ts";

/** Where the procedure says so, and a leg is of plywood. */
const facePlyCounts = ({ procedure, lots }: PieceCase): boolean =>
  procedure.facePlyCounts === true && lots.some(({ material }) => material === "plywood");

export function failureMode(c: PieceCase, test: PieceTest): Check {
  const { find, procedure } = c;
  const beside = { limit: limitOf(procedure) };
  const { woodFailure: asked } = procedure;
  const { failure, woodFailure: noted } = test;
  const values = { failure, share: noted?.typed };
  if (failure === "crushed" || failure === "not opened")
    return { finding: find("failure-mode/not-the-bond", "unproven", values, beside), verdict: "inconclusive" };
  if (failure === "face ply" && !facePlyCounts(c))
    return { finding: find("failure-mode/face-ply", "unproven", values, beside), verdict: "inconclusive" };
  if (failure === "glue line")
    return { finding: find("failure-mode/glue-line", "rejects", values, beside), verdict: "fail" };
  const least = noted && saidEnds(noted).least;
  if (least !== undefined && asked && !atLeast(least, asked.value)) {
    const few = { ...values, asked: asked.typed };
    return { finding: find("failure-mode/too-little-wood", "rejects", few, beside), verdict: "fail" };
  }
  if (noted && isEstimate(noted) && (asked || failure === "mixed"))
    return {
      finding: find("failure-mode/estimate", "unproven", { ...values, asked: asked?.typed }, beside),
      verdict: "inconclusive",
    };
  if (least !== undefined ? isWithoutLimit(asked, failure, least) : asked || failure === "mixed") {
    const finding = noted
      ? find("failure-mode/no-limit", "unproven", values, beside)
      : find("failure-mode/no-share", "unproven", { ...values, asked: asked?.typed }, beside);
    return { finding, verdict: "inconclusive" };
  }
  return { finding: find("failure-mode/held", "meets", values, beside) };
}

/** A share of wood failure that no limit of the builder's own says is enough proves nothing; none is borrowed from other products. */
function isWithoutLimit(asked: Procedure["woodFailure"], failure: PieceTest["failure"], noted: number): boolean {
  return !asked && (failure === "mixed" || !atLeast(noted, 1));
}

function limitOf(procedure: Procedure): Limit | undefined {
  const asked = procedure.woodFailure?.typed;
  return asked === undefined
    ? undefined
    : { code: "limit/wood-failure", values: { asked }, from: procedureOf(procedure) };
}
