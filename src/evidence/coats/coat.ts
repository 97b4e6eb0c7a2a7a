/** What the record shows of each coat: the worst that any finding forces. */
import type { Answered } from "../readiness/answering.ts";
import type { Coat } from "../../facts/types.ts";
import { amendedFinding, changesOf } from "../amended.ts";
import { worstOf } from "../batch/verdict.ts";
import type { RecordIndex } from "../record-index.ts";
import type { CoatFile, Finding } from "../types.ts";
import { airRule } from "./air.ts";
import { type CoatCase, coatCase } from "./case.ts";
import { lotsRule } from "./lots.ts";
import { coatsBefore, coatsStood } from "./standing.ts";
import { dryFrom, dryingRule, intervalRule } from "./times.ts";

const RULES: readonly ((c: CoatCase) => Finding[])[] = [lotsRule, airRule, intervalRule, dryingRule, amendedRule];

/** In the order of the record, assembly by assembly. */
export function coatFiles(index: RecordIndex): CoatFile[] {
  return [...index.coatsOn.keys()].flatMap((assembly) => {
    const all = coatsStood(index, assembly);
    const before = coatsBefore(all);
    return all.map((one): CoatFile => {
      const { coat, off } = one;
      const c = coatCase(index, coat, before.get(one));
      const findings = RULES.flatMap((rule) => rule(c));
      return {
        coat,
        verdict: worstOf(findings),
        findings,
        ...(c.finish.dry && { dryFrom: dryFrom(c) }),
        ...(off && { off }),
      };
    });
  });
}

/** What an amendment calls it. */
export const coatFact = ({ where }: Coat): string => `Coat: ${where}`;

export const coatAnswered = (coat: Coat): Answered => ({ ...coat, fact: coatFact(coat) });

function amendedRule({ index, coat, find }: CoatCase): Finding[] {
  return changesOf(index, { kind: "entry", id: coat.entry })
    .filter(({ change }) => change.fact === coatFact(coat))
    .map((changed) => amendedFinding(changed, find));
}
