/** What evidence says, as data: a code and its values. Sentences are made of it where it is shown. */
import type { Coded } from "./codes/coded.ts";
import type { FindingValues } from "./codes/findings.ts";
import type { ChangeValues, NeedValues, RemarkValues, TakeValues } from "./codes/hold-points.ts";
import type { LimitValues, WarmthValues } from "./codes/limits.ts";
import type { NoValues } from "./codes/no-values.ts";
import type { RuleValues } from "./codes/rules.ts";
import type { SourceValues } from "./codes/sources.ts";
import type { CautionValues, ConclusionValues, StandingValues } from "./codes/trials.ts";

/** What an edition says in place of what it withholds. */
interface WithheldValues {
  withheld: NoValues;
}

/** Every code with its values. */
export interface Values
  extends FindingValues,
    LimitValues,
    WarmthValues,
    NeedValues,
    TakeValues,
    ChangeValues,
    RemarkValues,
    CautionValues,
    ConclusionValues,
    StandingValues,
    SourceValues,
    RuleValues,
    WithheldValues {}

export type Code = keyof Values;
export type FindingCode = keyof FindingValues;

export type Saying<C extends Code = Code> = Coded<Values, C>;

/** Makes the sentence. */
export type Say = (saying: Saying) => string;
