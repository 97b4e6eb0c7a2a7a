/** What the build would say of a cup afterwards, said before it is mixed: what speaks against it, and how air and wood stand. */
import type { RuleId } from "../evidence/codes/rules.ts";
import type { Finding } from "../evidence/types.ts";
import type { Record } from "../facts/types.ts";
import type { ToldFinding } from "../words/findings/told.ts";
import { dayFacts } from "./entry-facts.ts";
import { foretell } from "./judged.ts";
import type { Cup, Session } from "./session.ts";
import type { Snapshot } from "./snapshot.ts";
import { partsOf } from "./step.ts";
import { bandFor, leastCup } from "./sums.ts";

const AGAINST: readonly Finding["code"][] = ["lot-recalled/recalled", "working-life/no-row"];

/** Rules on air and wood. */
const CONDITIONS: readonly RuleId[] = ["shop-temperature", "shop-humidity", "dew-point", "wood-moisture"];

/** Sentences; `now` in s since 1970-01-01T00:00Z. Nothing is refused of what has happened. */
export function refusals(
  session: Session,
  at: number,
  given: Snapshot,
  record: Record,
  now: number,
): readonly string[] {
  if (session.cups[at] === undefined) return [];
  const rejected = saidIfMixed(session, at, given, record, now)
    .filter(({ severity, code }) => severity === "rejects" || AGAINST.some((one) => one === code))
    .map(({ sentence }) => sentence);
  return [...tooCoarse(session, at, given, record), ...rejected];
}

/** Sentences of the build on the shop and the wood as they were noted, those that hold too; `now` as above. */
export function conditionWords(session: Session, given: Snapshot, record: Record, now: number): readonly Condition[] {
  return saidIfMixed(session, 0, given, record, now)
    .filter(({ rule }) => CONDITIONS.includes(rule))
    .map(({ sentence, severity, code }) => ({
      sentence,
      isAgainst: severity !== "meets" && !code.endsWith("/no-limits"),
    }));
}

interface Condition {
  readonly sentence: string;
  /** Whether it speaks against gluing; that the sheet gives no limit does not. */
  readonly isAgainst: boolean;
}

interface Coded extends ToldFinding {
  readonly code: Finding["code"];
}

/** Of a cup that were mixed, and all of the joints closed, at this moment. */
function saidIfMixed(session: Session, at: number, given: Snapshot, record: Record, now: number): readonly Coded[] {
  const cup = session.cups[at];
  if (cup === undefined) return [];
  const amounts = leastMixOf(session, at, given, record);
  const closed = session.joints.map((joint) => ({ joint, at: now, clock: session.clock }));
  const asIf: Session = {
    ...session,
    began: now,
    cups: [{ ...cup, amounts, mixed: now, clock: session.clock, closed }],
    wentBack: 0,
  };
  const { batches, told } = foretell(record, dayFacts(asIf, given));
  return batches.flatMap((file) => {
    const sentences = told(file);
    return file.findings.flatMap(({ code }, n) => (sentences[n] === undefined ? [] : [{ ...sentences[n], code }]));
  });
}

/** With the least of the second part that passes: what speaks against that speaks against any. */
function leastMixOf(session: Session, at: number, given: Snapshot, record: Record): Cup["amounts"] {
  const [first, second] = partsOf(session, given);
  const adhesive = record.adhesives.get(session.tins?.adhesive ?? "");
  const amounts = session.cups[at]?.amounts ?? {};
  const read = first && amounts[first];
  if (!adhesive || read === undefined || second === undefined || amounts[second] !== undefined) return amounts;
  const band = bandFor(adhesive, read, session.tins?.scale ?? "");
  return band === undefined ? amounts : { ...amounts, [second]: band.least };
}

function tooCoarse(session: Session, at: number, given: Snapshot, record: Record): readonly string[] {
  const [first, second] = partsOf(session, given);
  const adhesive = record.adhesives.get(session.tins?.adhesive ?? "");
  const { scale } = session.tins ?? {};
  const amount = first && session.cups[at]?.amounts[first];
  const hasRatio = adhesive?.byMass?.tolerance !== undefined || adhesive?.byVolume?.tolerance !== undefined;
  if (!adhesive || !hasRatio || second === undefined || amount === undefined || scale === undefined) return [];
  if (bandFor(adhesive, amount, scale) !== undefined) return [];
  const least = leastCup(adhesive, scale);
  const enough = least === undefined ? "" : ` From ${least} of ${first} on it can.`;
  return [`A scale that reads in ${scale} cannot show the ratio of so small a mix: ${amount} of ${first}.${enough}`];
}
