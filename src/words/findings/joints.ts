/** Joints, and what was amended or rejected. */
import { dateWords, hourWords } from "../dates.ts";
import type { Amended, JointValues, Stands } from "../../evidence/codes/joints.ts";
import { reached, span } from "../durations.ts";
import { counted, ended, listed } from "../lists.ts";
import type { Sentences } from "./catalogue.ts";

const glued = ({ batch, day, verdict }: JointValues["joint-glued/batch"]): string =>
  `Batch ${batch}, glued on ${dateWords(day)}, is ${verdict}.`;

const tooSoon = ({ batch, until }: { readonly batch: string; readonly until?: string }): string =>
  `before ${until === undefined ? "the record shows that batch" : "batch"} ${batch} had cured${until === undefined ? "" : `, by ${hourWords(until)}`}`;

const stagesNamed = (stages: readonly number[]): string =>
  `${stages.length === 1 ? "Stage" : "Stages"} ${listed(stages.map(String))}`;

export const JOINTS: Sentences<JointValues> = {
  "in-service/hold-point": ({ day, holdPoint }) =>
    `It was glued or opened on ${dateWords(day)}, after the first flight; ${holdPoint}, before return to service, asks for it.`,
  "in-service/no-hold-point": ({ day }) =>
    `It was glued or opened on ${dateWords(day)}, after the first flight, and no hold point before return to service asks for it.`,
  "joint-measured/estimate": ({ what, found }) => `${what}: ${found}, an estimate, which shows nothing.`,
  "joint-measured/within": ({ what, found }) => `${what}: ${found}.`,
  "joint-measured/out": ({ what, found }) => `${what}: ${found}, outside what is asked.`,
  "joint-measured/accepted": ({ what, found, departure }) =>
    `${what}: ${found}, outside what is asked, and accepted as departure ${departure}.`,
  "joint-measured/accepted-before": ({ what, found, departure }) =>
    [
      `${what}: ${found}, outside what is asked; departure ${departure} was accepted before that was noted or amended,`,
      "and does not answer for it until it is accepted again.",
    ].join(" "),
  "joint-measured/not-accepted": ({ what, found, departure }) =>
    `${what}: ${found}, outside what is asked; departure ${departure}, which stands for it, is not accepted.`,
  "joint-glued/reworked": ({ day, why, stages }) =>
    `${stages === undefined ? "Opened" : `${stagesNamed(stages)} opened`} for rework on ${dateWords(day)}: ${ended(why)}`,
  "joint-glued/never": () => "No batch has gone into it.",
  "joint-glued/not-again": () => "It has not been glued again since it was opened.",
  "joint-glued/batch": glued,
  "joint-glued/wood-lacking": ({ lots }) =>
    `Wood of ${lots.length === 1 ? "lot" : "lots"} ${listed(lots)} is in it, which no batch that is in it names, ` +
    "and no test piece of such wood from these batches has passed.",
  "joint-stages/to-come": ({ stages, of }) =>
    `${stagesNamed(stages)} of ${of} ${stages.length === 1 ? "is" : "are"} not glued, and it is not said to be complete.`,
  "joint-stages/left-out": ({ stages, of, day }) =>
    `${stagesNamed(stages)} of ${of} ${stages.length === 1 ? "holds" : "hold"} no batch, though it was said to be complete on ${dateWords(day)}.`,
  "joint-stages/unsaid": ({ batches }) =>
    `It is glued in stages, and nothing says of which ${listed(batches)} ${batches.length === 1 ? "is" : "are"}.`,
  "joint-stages/not-said-complete": ({ of }) =>
    `${of === 1 ? "Its stage is glued" : `All ${of} stages said of it are glued`}, and it is not said to be complete.`,
  "joint-stages/complete": ({ of, day }) =>
    `Glued in ${counted(of, "stage")}, and said to be complete on ${dateWords(day)}.`,
  "joint-cure/reached": ({ batch, until, assumed }, { say }) => {
    if (assumed === undefined) return `The record shows that batch ${batch} had cured by ${hourWords(until)}.`;
    return assumed === "days"
      ? `By days alone batch ${batch} had cured by ${hourWords(until)}; no temperature is known.`
      : `Batch ${batch} had cured by ${hourWords(until)}, if the shop stayed at ${say(assumed)}: that is assumed.`;
  },
  "joint-cure/waits": ({ batch, until }) =>
    until === undefined
      ? `Batch ${batch} has not cured for so long yet, and nothing says when it will have: nothing may load the joint.`
      : `Batch ${batch} has not cured for so long yet. If the shop stays as it was it will have by ${hourWords(until)}; until then nothing may load the joint.`,
  "joint-cure/not-shown": ({ batch, shown, asked }) =>
    `Of the ${span(asked)} that batch ${batch} has to cure the record shows ${reached(shown)}.`,
  "joint-cure/signed": (v) => `${v.holdPoint}, before ${v.kind}, was signed on ${dateWords(v.day)}, ${tooSoon(v)}.`,
  "joint-cure/reworked": (v) =>
    `${v.joints.length === 1 ? "Joint" : "Joints"} ${listed(v.joints)} above it ${v.joints.length === 1 ? "was" : "were"} opened on ${dateWords(v.day)}, ${tooSoon(v)}.`,
  "joint-cure/weighed": (v) =>
    `${v.part === undefined ? "The aircraft stood on the scales" : `It was weighed (${v.part})`} on ${dateWords(v.day)}, ${tooSoon(v)}.`,
  "joint-quarantine/batch": glued,
  "joint-quarantine/recalled": ({ lot, batches, day, why }) =>
    `It holds lot ${lot} by ${batches.join(", ")}, and that lot was recalled on ${dateWords(day)}: ${ended(why)}`,
  "joint-quarantine/left-in": ({ lot, batches, day, why }) =>
    `Timber of lot ${lot} came into it by ${batches.join(", ")} and is not said to be replaced, and that lot was recalled on ${dateWords(day)}: ${ended(why)}`,
  "joint-quarantine/put-in": ({ lot, put, day, why }) =>
    `Lot ${lot} was put into it on ${dateWords(put)}, and that lot was recalled on ${dateWords(day)}: ${ended(why)}`,
  "builders-rejection/rejected": ({ day, why }) => `Rejected by the builder on ${dateWords(day)}: ${ended(why)}`,
  "amended/changed": amended,
  "amended/fixed": (values) =>
    `${amended(values)} This does not count: the piece had been broken, and what it is a piece of was fixed then.`,
  "amended/worsens": (values) =>
    `${amended(values)} The piece had been broken: that can worsen a verdict and never better it, whoever saw it.`,
  "seconded/stands": stands,
};

/** Both verdicts, and what is lacking. */
export function stands({ as, stands: stays, entries, broken }: Stands): string {
  const lacks = broken
    ? "the wood of a piece is bettered by nobody once it is broken"
    : "no second person who saw the source is named there";
  return `It stays ${stays}. By what was amended in ${listed(entries)} it would be ${as}, and ${lacks}.`;
}

/** `Amended on 2025-04-01: hardener mass: was 35.1 g, is 17.6 g, because: misread.` */
export function amended({ day, why, fact, value, was, is }: Amended): string {
  const what = value === undefined ? fact : `${fact}, ${value}`;
  return `Amended on ${dateWords(day)}: ${what}: was ${was ?? "not written down"}, is ${is ?? "struck out"}, because: ${ended(why)}`;
}
