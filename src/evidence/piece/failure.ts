/** Where the piece broke. Fails in the glue line or below the procedure's share of wood failure, whatever its shape and cure. */
import { atLeast } from "../../reckoning/compare.ts";
import type { PieceTest, Procedure } from "../../facts/types.ts";
import type { Limit } from "../finding.ts";
import { procedureOf } from "../sources.ts";
import type { Check, PieceCase } from "./case.ts";

export function failureMode(c: PieceCase, test: PieceTest): Check {
  const limit = limitOf(c.procedure);
  const said = (sentence: string) => ({ sentence, ...(limit ? { limit } : {}) });
  const { verdict, why } = judge(test, c.procedure);
  const severity = verdict === "fail" ? "rejects" : verdict === "inconclusive" ? "unproven" : "meets";
  const finding = c.find("failure-mode", severity, said(`${broke(test)}${why}.`));
  return verdict ? { finding, verdict } : { finding };
}

function judge(test: PieceTest, procedure: Procedure): { verdict?: "fail" | "inconclusive"; why: string } {
  const asked = procedure.woodFailure;
  const noted = test.woodFailure;
  if (test.failure === "glue line") return { verdict: "fail", why: ", which fails in any shape and after any cure" };
  if (noted && asked && !atLeast(noted.value, asked.value))
    return { verdict: "fail", why: `, and the procedure asks at least ${asked.typed}` };
  if (asked && !noted)
    return {
      verdict: "inconclusive",
      why: `, with no percentage noted, and the procedure asks at least ${asked.typed}`,
    };
  if (!asked && test.failure === "mixed")
    return { verdict: "inconclusive", why: noted ? NO_LIMIT : ", with no percentage noted" };
  if (!asked && noted && !atLeast(noted.value, 1)) return { verdict: "inconclusive", why: NO_LIMIT };
  return { why: "" };
}

// A share of wood failure that no limit of the builder's own says is enough proves nothing; none is borrowed from other products.
const NO_LIMIT = ", and the procedure does not say how much wood failure is enough";

function broke(test: PieceTest): string {
  const share = test.woodFailure ? `, ${test.woodFailure.typed} wood failure` : "";
  if (test.failure === "mixed") return `It broke partly in the wood and partly in the glue line${share}`;
  return `It broke in the ${test.failure}${share}`;
}

function limitOf(procedure: Procedure): Limit | undefined {
  if (!procedure.woodFailure) return undefined;
  return { text: `at least ${procedure.woodFailure.typed} wood failure`, from: procedureOf(procedure) };
}
