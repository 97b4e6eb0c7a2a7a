/**
 * The text of an entry that begins: what was answered as facts, and all else as comments that wait for whoever was
 * there.
 */
import type { Day, Record } from "../../facts/types.ts";
import { dateWords } from "../../words/dates.ts";
import { type Facts, fileText } from "../front-matter.ts";
import { idFrom } from "../id-from.ts";
import type { Now } from "./now.ts";
import { type EntryAnswers, idsIn } from "./questions.ts";

export const pathOf = (day: Day, title: string): string => `entries/${day}-${idFrom(title, "entry")}.md`;

/** `now` and `record` are not known where the record has problems. */
export function entryText(
  date: Day,
  { title = "", assembly, joints, adhesive }: EntryAnswers,
  known: { readonly now: Now; readonly record: Record } | undefined,
): string {
  const glued = joints === undefined ? [] : idsIn(joints);
  const batch: Facts = {
    ...(known !== undefined && { id: known.now.nextBatch }),
    ...(adhesive !== undefined && { adhesive }),
    joints: glued,
  };
  const facts: Facts = {
    date,
    title,
    ...(assembly !== undefined && { assembly }),
    ...(glued.length > 0 && { batches: [batch] }),
  };
  const ofBatch = glued.length > 0 && known !== undefined ? batchRemarks(known.now, known.record) : [];
  return fileText(facts, known === undefined ? PLAIN : remarks(known.now, known.record, glued.length > 0), ofBatch);
}

const PLAIN = ["All that may stand here, and how it is written: scarfline fields entry"];

/** Keys of the batch, without a word that nobody said. */
function batchRemarks({ nextBatch, lastBatch, climate }: Now, { procedures }: Record): string[] {
  const [procedure] = [...procedures.values()].filter(({ form }) => form !== "glue-up");
  const pieces = Array.from({ length: procedure?.pieces ?? 1 }, (_, at) => `${nextBatch}/${at + 1}`);
  return [
    'mixed: ""',
    'closed: ""',
    ...(lastBatch === undefined ? [] : lotLines(lastBatch)),
    `shop: { temperature: , humidity: }${climate === undefined ? "" : `  # the logger has ${climate} around now; yours is what you read`}`,
    "moisture:",
    "timber: []",
    ...(procedure === undefined
      ? []
      : [`pieces: { ids: [${pieces.join(", ")}], procedure: ${procedure.id}, lot: }  # those that were glued`]),
  ].map((line) => `    # ${line}`);
}

/** The lots of the batch before: whether they were taken again is for the builder to say. */
function lotLines(last: Now["lastBatch"] & object): string[] {
  const parts = ["resin", "hardener", "glue", "powder"] as const;
  return parts.flatMap((part) => {
    const lot = last[part]?.lot;
    return lot === undefined ? [] : [`${part}: { lot: , mass: }  # ${last.id} took ${lot}`];
  });
}

function remarks(now: Now, { aircraft }: Record, hasBatch: boolean): string[] {
  const { lots, pieces, nextBatch, nextItem, nextDeparture, lastBatch, climate } = now;
  return [
    `Free ids: batch ${hasBatch ? `${nextBatch} is this one's` : nextBatch}, open item ${nextItem}, departure ${nextDeparture}`,
    ...(lastBatch === undefined
      ? []
      : [`The batch before: ${lastBatch.id}, ${lastBatch.adhesive}, ${dateWords(lastBatch.day)}`]),
    ...(lots.length === 0 ? [] : [`Lots in date: ${lots.map(({ id, title }) => `${id} ${title}`).join("; ")}`]),
    ...(climate === undefined || hasBatch ? [] : [`The logger has ${climate} around now`]),
    "hours:",
    `  - { who: ${[...aircraft.people.values()][0]?.id ?? ""}, task: , time: }  # tasks: ${aircraft.tasks.join(", ")}`,
    ...(pieces.length === 0 ? [] : ["tests:  # these may be broken"]),
    ...pieces.map((piece) => `  - { piece: ${piece}, at: "", failure: , wood_failure: , load: }`),
    ...PLAIN,
  ];
}
