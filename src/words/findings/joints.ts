/** Joints, and what was amended or rejected. */
import type { Amended, JointValues, Stands } from "../../evidence/codes/joints.ts";
import { ended, list } from "../figure.ts";
import type { Sentences } from "./catalogue.ts";

const glued = ({ batch, day, verdict }: JointValues["joint-glued/batch"]): string =>
  `Batch ${batch}, glued on ${day}, is ${verdict}.`;

export const JOINTS: Sentences<JointValues> = {
  "joint-glued/reworked": ({ day, why }) => `Opened for rework on ${day}: ${ended(why)}`,
  "joint-glued/never": () => "No batch has gone into it.",
  "joint-glued/not-again": () => "It has not been glued again since it was opened.",
  "joint-glued/batch": glued,
  "joint-quarantine/batch": glued,
  "joint-quarantine/recalled": ({ lot, batches, day, why }) =>
    `It holds lot ${lot} by ${batches.join(", ")}, and that lot was recalled on ${day}: ${ended(why)}`,
  "joint-quarantine/left-in": ({ lot, batches, day, why }) =>
    `Timber of lot ${lot} came into it by ${batches.join(", ")} and is not said to be replaced, and that lot was recalled on ${day}: ${ended(why)}`,
  "joint-quarantine/put-in": ({ lot, put, day, why }) =>
    `Lot ${lot} was put into it on ${put}, and that lot was recalled on ${day}: ${ended(why)}`,
  "builders-rejection/rejected": ({ day, why }) => `Rejected by the builder on ${day}: ${ended(why)}`,
  "amended/changed": amended,
  "amended/fixed": (values) =>
    `${amended(values)} This does not count: the piece had been broken, and what it is a piece of was fixed then.`,
  "seconded/stands": stands,
};

/** Both verdicts, and what is lacking. */
export function stands({ as, stands: stays, entries }: Stands): string {
  return `It stays ${stays}. By what was amended in ${list(entries)} it would be ${as}, and no second person who saw the source is named there.`;
}

/** `Amended on 2025-04-01: hardener mass: was 35.1 g, is 17.6 g, because: misread.` */
export function amended({ day, why, fact, value, was, is }: Amended): string {
  const what = value === undefined ? fact : `${fact}, ${value}`;
  return `Amended on ${day}: ${what}: was ${was ?? "not written down"}, is ${is ?? "struck out"}, because: ${ended(why)}`;
}
