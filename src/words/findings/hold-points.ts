/** What hold points need, what that takes, and what changed after they were signed. */
import type { ChangeValues, NeedValues, TakeValues } from "../../evidence/codes/hold-points.ts";
import { ended, list } from "../figure.ts";
import type { Sentences } from "./catalogue.ts";
import { amended, stands } from "./joints.ts";

const named = (joints: readonly string[]): string => `${joints.length === 1 ? "joint" : "joints"} ${list(joints)}`;

/** What was found on both sides and how far they may differ. */
function pairOut({ pair, sides, tolerance }: ChangeValues["change/pair-out"]): string {
  const found = sides.map((one) => `${one.side} ${one.found}`).join(", ");
  return `The sides of ${pair} differ by more than they may: ${found}${tolerance === undefined ? "" : `, where ${tolerance} is allowed`}.`;
}

export const HOLD_POINTS: Sentences<NeedValues & TakeValues & ChangeValues> = {
  "need/joint": ({ joint, state, told }, { say }) => [`Joint ${joint} is ${state}.`, ...told.map(say)].join(" "),
  "need/open-item": ({ id, day, what }) => `${id} is open since ${day}: ${ended(what)}`,
  "need/departure": ({ id, day, what }) => `Departure ${id} of ${day} is not accepted: ${ended(what)}`,
  "need/measure-out": ({ what, found, asked }) => `${what} measures ${found}, outside ${asked}.`,
  "need/pair-out": pairOut,
  "need/pair-one-side": ({ pair, side }) => `Of ${pair} only the ${side} side is measured.`,
  "need/seconded": stands,
  "need/reopened": ({ day }) => `It was signed on ${day}, and what was looked at has changed since.`,
  "need/not-signed": ({ day, remarks }) =>
    ended(`It was looked at on ${day} and not signed${remarks === undefined ? "" : `: ${remarks}`}`),

  "take/glue": () => "glue it",
  "take/break-pieces": () => "break the test pieces of its batches",
  "take/complete": () => "complete what the record lacks of its batches, or rework it",
  "take/rework": () => "rework it with a batch of its own",
  "take/glue-again": () => "glue it again",
  "take/close-item": () => "do it and close it in an entry",
  "take/acceptance": () => "have it accepted, and note by whom",
  "take/mend-measure": () => "mend it and measure again, or note it as a departure",
  "take/other-side": () => "measure the other side",
  "take/look-again": () => "have it looked at again, with what has changed",
  "take/answer": () => "answer what was found and have it looked at again",
  "take/second": () => "have someone look at the source, and note who under seen_by in an amendment",
  "take/other-edition": () => "Ask for the edition made for the inspector.",

  "change/glued": ({ batch, joints, day }) => `Batch ${batch} was glued into ${named(joints)} on ${day}.`,
  "change/opened": ({ joints, day, why }) => `Glue was taken out of ${named(joints)} on ${day}: ${ended(why)}`,
  "change/recalled": ({ lot, joints, day, why }) =>
    `Lot ${lot}, which is in ${named(joints)}, was recalled on ${day}: ${ended(why)}`,
  "change/rejected": ({ batch, joints, day, why }) =>
    `Batch ${batch}, which is in ${named(joints)}, was rejected on ${day}: ${ended(why)}`,
  "change/failed": ({ piece, joints, day }) => `Test piece ${piece}, for ${named(joints)}, failed on ${day}.`,
  "change/amended": amended,
  "change/departure": ({ id, day, what }) => `Departure ${id} was noted on ${day}: ${ended(what)}`,
  "change/open-item": ({ id, day, what }) =>
    `Open item ${id} was raised on ${day}, to be done before it: ${ended(what)}`,
  "change/measure-out": ({ what, found, asked }) => `${what} was measured as ${found}, outside ${asked}.`,
  "change/pair-out": pairOut,
  "change/joint": ({ joint, state }) => `Joint ${joint} is ${state}.`,
};
