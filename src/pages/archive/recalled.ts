/** Recalled lots, each with what became of the joints that held it, of parts of it and of coats. */
import { lotsOf } from "../../evidence/batch/lots.ts";
import { opens } from "../../evidence/held.ts";
import type { JointFile } from "../../evidence/types.ts";
import type { Batch, Recall, Rework } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { dateWords } from "../../words/dates.ts";
import { listed } from "../../words/lists.ts";
import { traceIndex } from "../evidence/trace-index.ts";
import { type CoatRow, coatRows } from "../ledgers/coats.ts";
import { type FittedRow, fittedRows } from "../ledgers/fitted.ts";
import { storyOf } from "../story/story.ts";

export interface RecalledLot {
  readonly lot: string;
  readonly recall: Recall;
  /** Each joint that holds or held it, and what became of it. */
  readonly joints: readonly { readonly file: JointFile; readonly became: string }[];
  /** Where parts of it were fitted, and coats of it put on. */
  readonly fitted: readonly FittedRow[];
  readonly coats: readonly CoatRow[];
}

/** In the order of recalls; a lot that was recalled twice stands once, by its first. */
export function recalledLots(shown: Shown): RecalledLot[] {
  const { record, evidence } = shown;
  const first = new Map(
    record.entries
      .flatMap(({ recalls }) => recalls)
      .reverse()
      .map((recall) => [recall.lot, recall] as const),
  );
  return [...first].reverse().map(([lot, recall]) => {
    const held = evidence.lots.get(lot);
    const now = new Set(held?.joints);
    const all = [...now, ...(held?.formerJoints ?? []).filter((id) => !now.has(id))];
    return {
      lot,
      recall,
      fitted: fittedRows(shown, (fitting) => fitting.lot === lot),
      coats: coatRows(shown, (coat) => coat.lots.includes(lot)),
      joints: all
        .flatMap((id) => evidence.joints.get(id) ?? [])
        .map((file) => ({ file, became: now.has(file.joint.id) ? "It holds it still." : becameOf(shown, file, lot) })),
    };
  });
}

/** `Its glue was taken out on 8 March 2026; glued again with B-047 of 14 March 2026.` */
function becameOf(shown: Shown, file: JointFile, lot: string): string {
  const { position } = storyOf(shown);
  const at = ({ entry }: { readonly entry: string }): number => position.get(entry) ?? position.size;
  const batches = [...file.batches, ...file.superseded]
    .flatMap((id) => shown.evidence.batches.get(id)?.batch ?? [])
    .sort((a, b) => at(a) - at(b));
  const stages = traceIndex(shown).stagesOf.get(file.joint.id) ?? [];
  const takes = (rework: Rework, batch: Batch): boolean =>
    at(rework) > at(batch) &&
    (batch.timber.includes(lot)
      ? rework.replaced?.some((one) => one.lot === lot) === true
      : opens(rework, batch, stages));
  const [out] = batches
    .filter((batch) => lotsOf({ batch }).includes(lot))
    .flatMap((batch) => file.reworks.find((rework) => takes(rework, batch)) ?? [])
    .sort((a, b) => at(b) - at(a));
  if (out === undefined) return "It holds it no longer.";
  const isAgain = (batch: Batch): boolean => {
    const of = stages.filter((stage) => stage.batches.includes(batch.id));
    return at(batch) >= at(out) && (of.length === 0 || of.some(({ stage }) => out.stages?.includes(stage) !== false));
  };
  const after = batches.filter(isAgain).map(({ id, day }) => {
    const isGone = file.superseded.includes(id);
    return `${id} of ${dateWords(day)}${isGone ? " (taken out since)" : ""}`;
  });
  const again = after.length === 0 ? "it has not been glued since" : `glued again with ${listed(after)}`;
  return `${outWords(out, lot)}; ${again}.`;
}

function outWords({ day, stages, replaced = [] }: Rework, lot: string): string {
  const where =
    stages === undefined ? "" : ` of ${stages.length === 1 ? "stage" : "stages"} ${listed(stages.map(String))}`;
  const put = replaced.flatMap((one) => (one.lot === lot ? [one.with] : []));
  const instead = put.length === 0 ? "" : `, and ${listed(put)} put in the place of ${lot}`;
  return `Its glue${where} was taken out on ${dateWords(day)}${instead}`;
}
