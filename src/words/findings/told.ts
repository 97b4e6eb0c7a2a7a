/** Evidence in words, for where it is shown. */
import { RULES } from "../../evidence/rules.ts";
import type { RuleId } from "../../evidence/codes/rules.ts";
import type { Say, Saying } from "../../evidence/saying.ts";
import type { Source } from "../../evidence/types/source.ts";
import type { Change, Finding, Need, Severity } from "../../evidence/types.ts";
import type { Ref } from "../../facts/types.ts";

/** Where a limit or a rule comes from, in words, and how its text was known. */
export interface ToldSource {
  readonly text: string;
  readonly known: Source["known"];
}

export interface ToldFinding {
  readonly rule: RuleId;
  /** The rule's. */
  readonly title: string;
  readonly severity: Severity;
  readonly about: Ref;
  readonly sentence: string;
  readonly limit?: { readonly text: string; readonly from: ToldSource };
  readonly restsOn: readonly Ref[];
}

export interface ToldRule {
  readonly id: RuleId;
  readonly title: string;
  readonly says: string;
  readonly source: ToldSource;
}

/** `needs` is what it takes. */
export interface ToldNeed extends Pick<Need, "about" | "blocks" | "restsOn"> {
  readonly sentence: string;
  readonly needs: string;
}

export interface ToldChange extends Pick<Change, "about" | "restsOn"> {
  readonly sentence: string;
}

export const toldSource = (say: Say, source: Source): ToldSource => ({ text: say(source), known: source.known });

/** The compiler does not follow so many codes at once; each of them has no values. */
const ofRule = (part: "title" | "rule", id: RuleId): Saying => ({ code: `${part}/${id}`, values: {} }) as Saying;

/** What a rule is called. */
export const ruleTitle = (say: Say, id: RuleId): string => say(ofRule("title", id));

export function toldFinding(say: Say, finding: Finding): ToldFinding {
  const { rule, severity, about, limit, restsOn } = finding;
  const title = ruleTitle(say, rule);
  const told = { rule, title, severity, about, sentence: say(finding), restsOn };
  return limit === undefined ? told : { ...told, limit: { text: say(limit), from: toldSource(say, limit.from) } };
}

export function toldNeed(say: Say, need: Need): ToldNeed {
  const { about, blocks, restsOn, takes } = need;
  return { about, blocks, restsOn, sentence: say(need), needs: say(takes) };
}

export function toldChange(say: Say, change: Change): ToldChange {
  return { about: change.about, restsOn: change.restsOn, sentence: say(change) };
}

/** Every rule, in the order of the table. */
export function toldRules(say: Say): ToldRule[] {
  return (Object.keys(RULES) as RuleId[]).map((id) => ({
    id,
    title: ruleTitle(say, id),
    says: say(ofRule("rule", id)),
    source: toldSource(say, RULES[id]),
  }));
}
