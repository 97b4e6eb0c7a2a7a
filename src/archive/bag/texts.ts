/** Texts that tell a stranger what a bag is. */
import { RULES_VERSION } from "../../evidence/version.ts";
import { sayIn } from "../../words/findings/catalogue.ts";
import { ENGLISH } from "../../words/findings/english.ts";
import { toldRules } from "../../words/findings/told.ts";

/** The rules that verdicts were reached by, with the source of each. */
export function rulesText(version: string): string {
  const rules = toldRules(sayIn(ENGLISH, "metric"));
  return `${JSON.stringify({ program: "Scarfline", version, rulesVersion: RULES_VERSION, rules }, undefined, 2)}\n`;
}
