/** A record with only what an edition shows in it, built field by field. */
import { type Decisions, each, eachOf, part, redacted } from "../facts/decisions.ts";
import { adhesiveShown } from "../facts/build/adhesive.ts";
import { aircraftShown } from "../facts/build/aircraft.ts";
import { assemblyShown } from "../facts/build/assembly.ts";
import { climateLogShown, isLogShown } from "../facts/build/climate-log.ts";
import { areEarlierShown, earlierHoursShown } from "../facts/build/earlier-hours.ts";
import { finishShown } from "../facts/build/finish.ts";
import { isLotShown, lotShown } from "../facts/build/lot.ts";
import { procedureShown } from "../facts/build/procedure.ts";
import { isTrialShown, trialShown } from "../facts/build/trial.ts";
import { entryShown, isEntryShown } from "../facts/entry/entry.ts";
import type { Record } from "../facts/types.ts";
import type { Visibility } from "../facts/visibility.ts";

export const recordShown: Decisions<Record> = {
  aircraft: part(aircraftShown),
  assemblies: eachOf(assemblyShown),
  adhesives: eachOf(adhesiveShown),
  finishes: eachOf(finishShown),
  procedures: eachOf(procedureShown),
  lots: eachOf(lotShown, isLotShown),
  trials: eachOf(trialShown, isTrialShown),
  entries: each(entryShown, isEntryShown),
  climate: each(climateLogShown, isLogShown),
  earlier: each(earlierHoursShown, areEarlierShown),
  day: dayOf,
  // What stood before amendments is for the reckoning alone.
  before: () => undefined,
};

export function redactedRecord(whole: Record, visibility: Visibility): Record {
  return redacted(whole, recordShown, visibility);
}

/** The date of a record that is its last entry's would tell of that entry, were it hidden. */
function dayOf(day: string, visibility: Visibility, whole: Record): string {
  if (whole.entries.at(-1)?.day !== day) return day;
  return whole.entries.findLast((entry) => isEntryShown(entry, visibility))?.day ?? whole.aircraft.start;
}
