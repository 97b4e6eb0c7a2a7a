/** What speaks against mixing a cup, before it is mixed: what the build would say of it afterwards. */
import type { Finding } from "../evidence/types.ts";
import type { Record } from "../facts/types.ts";
import { dayFacts } from "./entry-facts.ts";
import { foretell } from "./judged.ts";
import type { Cup, Session } from "./session.ts";
import type { Snapshot } from "./snapshot.ts";
import { partsOf } from "./step.ts";
import { bandFor, leastCup } from "./sums.ts";

const AGAINST: readonly Finding["code"][] = ["lot-recalled/recalled", "working-life/no-row"];

/** Sentences; `now` in s since 1970-01-01T00:00Z. Nothing is refused of what has happened. */
export function refusals(
  session: Session,
  at: number,
  given: Snapshot,
  record: Record,
  now: number,
): readonly string[] {
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
  const rejected = batches.flatMap((file) =>
    told(file)
      .filter((_, n) => {
        const { severity, code } = file.findings[n] ?? {};
        return severity === "rejects" || AGAINST.some((one) => one === code);
      })
      .map(({ sentence }) => sentence),
  );
  return [...tooCoarse(session, at, given, record), ...rejected];
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
