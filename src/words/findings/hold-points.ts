/** What hold points need, what that takes, and what changed after they were signed. */
import { dateWords } from "../dates.ts";
import type { ChangeValues, NeedValues, RemarkValues, TakeValues } from "../../evidence/codes/hold-points.ts";
import { counted, ended, listed } from "../lists.ts";
import type { Sentences } from "./catalogue.ts";
import { amended, stands } from "./joints.ts";

const named = (joints: readonly string[]): string => `${joints.length === 1 ? "joint" : "joints"} ${listed(joints)}`;

const coated = ({ where, finish, coat }: Pick<NeedValues["then/coat"], "where" | "finish" | "coat">): string =>
  `${where}: coat ${coat} of ${finish}`;

/** What was found on both sides and how far they may differ. */
function pairOut({ pair, sides, tolerance }: ChangeValues["change/pair-out"]): string {
  const found = sides.map((one) => `${one.side} ${one.found}`).join(", ");
  return `The sides of ${pair} differ by more than they may: ${found}${tolerance === undefined ? "" : `, where ${tolerance} is allowed`}.`;
}

const unnamed = (beside: readonly string[]): string =>
  beside.length === 0
    ? ""
    : ` It names no departure: ${listed(beside)}, noted the same day, ${beside.length === 1 ? "does" : "do"} not count for it.`;

const before = (departures: readonly string[]): string =>
  departures.length === 0
    ? ""
    : [
        ` ${listed(departures)} ${departures.length === 1 ? "was" : "were"} accepted before that was noted or amended,`,
        `and ${departures.length === 1 ? "does" : "do"} not answer for it.`,
      ].join(" ");

export const HOLD_POINTS: Sentences<NeedValues & TakeValues & ChangeValues & RemarkValues> = {
  "need/joint": ({ joint, state, told }, { say }) => [`Joint ${joint} is ${state}.`, ...told.map(say)].join(" "),
  "need/fitted-recalled": ({ where, lot, day, why, count, left }) =>
    left === count
      ? `${where} is of lot ${lot}, recalled on ${dateWords(day)}, and nothing says what took its place: ${ended(why)}`
      : [
          `${where}: ${count} of lot ${lot}, recalled on ${dateWords(day)}, were fitted,`,
          `and nothing says what took the place of ${left} of them: ${ended(why)}`,
        ].join(" "),
  "need/coat": (v, { say }) =>
    `${[`${coated(v)} is ${v.verdict}.`, ...v.told.map(say)].join(" ")}${before(v.departures)}`,
  "need/coats-missing": ({ where, finish, asked, there }) =>
    `${where}: ${there} of ${counted(asked, "coat")} of ${finish} ${there === 1 ? "is" : "are"} noted.`,
  "need/open-item": ({ id, day, what }) => `${id} is open since ${dateWords(day)}: ${ended(what)}`,
  "need/departure": ({ id, day, what }) => `Departure ${id} of ${dateWords(day)} is not accepted: ${ended(what)}`,
  "need/departure-told": ({ id, day, what }) =>
    `Departure ${id} of ${dateWords(day)} is said to be accepted, but on no paper that is named: that is the builder's word. ${ended(what)}`,
  "need/departure-role": ({ id, day, what }) =>
    `Departure ${id} of ${dateWords(day)} was accepted by someone who is no inspector, which does not count: ${ended(what)}`,
  "need/departure-worked": ({ id, day, what }) =>
    `Departure ${id} of ${dateWords(day)} was accepted by someone with hours on that assembly, which does not count: ${ended(what)}`,
  "need/departure-changed": ({ id, day, what }) =>
    `Departure ${id} of ${dateWords(day)} was changed after it was accepted, and is not as accepted: ${ended(what)}`,
  "need/departure-condition": ({ id, day, condition }) =>
    `Departure ${id} of ${dateWords(day)} is accepted on a condition that is still open: ${ended(condition)}`,
  "need/measure-out": ({ what, found, asked, beside }) =>
    `${what} measures ${found}, outside ${asked}.${unnamed(beside)}`,
  "need/measure-estimated": ({ what, found, asked }) =>
    `${what} is only estimated, as ${found}: nothing shows that it is within ${asked}.`,
  "need/pair-out": (v) => `${pairOut(v)}${unnamed(v.beside)}`,
  "need/measure-after": ({ what, found, asked, departures }) =>
    `${what} measures ${found}, outside ${asked}.${before(departures)}`,
  "need/pair-after": (v) => `${pairOut(v)}${before(v.departures)}`,
  "need/pair-estimated": ({ pair }) => `A side of ${pair} is only estimated.`,
  "need/pair-one-side": ({ pair, side }) => `Of ${pair} only the ${side} side is measured.`,
  "need/seconded": stands,
  "need/reopened": ({ day }) => `It was signed on ${dateWords(day)}, and what was looked at has changed since.`,
  "need/not-signed": ({ day, remarks }) =>
    ended(`It was looked at on ${dateWords(day)} and not signed${remarks === undefined ? "" : `: ${remarks}`}`),

  "need/signed-role": ({ day }) =>
    `It was signed on ${dateWords(day)} by someone who is no inspector: that signature does not count.`,
  "need/signed-worked": ({ day }) =>
    `It was signed on ${dateWords(day)} by someone with hours on what was looked at: that signature does not count.`,
  "need/signed-told": ({ day }) =>
    `It is said to have been signed on ${dateWords(day)}, on no paper that is named or scanned: the builder's word does not count.`,
  "need/hold-point": ({ holdPoint, state }) => `${holdPoint} comes first and is not passed: it is ${state}.`,
  "need/within-not-signed": ({ holdPoint, day }) => `${holdPoint} was looked at on ${dateWords(day)} and not signed.`,
  "need/flown": ({ day }) => `It first flew on ${dateWords(day)}, and no signature that counts was there by then.`,
  "need/signed-open": ({ day }) => `It was signed on ${dateWords(day)} with things open.`,
  "then/joint": ({ joint }) => `Joint ${joint} was not shown yet when it was signed.`,
  "then/cure": ({ joint }) => `Joint ${joint} had not cured as its sheet asks yet when it was signed.`,
  "then/piece": ({ piece, day }) => `Test piece ${piece} was broken on ${dateWords(day)}, after it was signed.`,
  "then/fitted-recalled": ({ where, lot, day, why }) =>
    `${where} was of lot ${lot}, recalled on ${dateWords(day)}, when it was signed: ${ended(why)}`,
  "then/coat": (v) => `${coated(v)} was not as its sheet asks when it was signed.`,
  "then/coat-drying": (v) => `${coated(v)} had not dried as its sheet asks yet when it was signed.`,
  "then/coats-missing": ({ where, finish, asked }) =>
    `${where}: not all of ${counted(asked, "coat")} of ${finish} ${asked === 1 ? "was" : "were"} there yet when it was signed.`,
  "then/open-item": ({ id, day, what }) =>
    `${id}, raised on ${dateWords(day)}, was still open when it was signed: ${ended(what)}`,
  "then/departure": ({ id, day, what }) =>
    `Departure ${id} of ${dateWords(day)} was not accepted yet when it was signed: ${ended(what)}`,
  "then/measure-out": ({ what, found, asked }) => `${what} measured ${found}, outside ${asked}, when it was signed.`,
  "then/measure-estimated": ({ what, asked }) =>
    `${what} was only estimated when it was signed: nothing showed that it was within ${asked}.`,
  "then/pair": ({ pair }) => `The sides of ${pair} were not shown to be alike yet when it was signed.`,
  "then/hold-point": ({ holdPoint }) => `${holdPoint}, which comes first, was not signed yet when it was signed.`,

  "remark/amended": amended,

  "take/glue": () => "glue it",
  "take/break-pieces": () => "break the test pieces of its batches",
  "take/glue-stages": () => "glue the stages that are to come, and say with the last that the joint is complete",
  "take/let-cure": () => "let it cure, and note how warm it was",
  "take/complete": () => "complete what the record lacks of its batches, or rework it",
  "take/rework": () => "rework it with a batch of its own, and say by which lot recalled timber was replaced",
  "take/replace-part": () => "fit another in its place, and say which lot that replaces",
  "take/coat-again": () =>
    "complete what the record lacks of it; or take it off, put it on again and say under stripped how, or have it accepted as a departure that the coat names",
  "take/let-dry": () => "let it dry",
  "take/put-on": () => "put it on, and note it",
  "take/glue-again": () => "glue it again",
  "take/close-item": () => "do it and close it in an entry",
  "take/acceptance": () => "have an inspector accept it, and note by whom and on what paper",
  "take/accept-again": () => "have an inspector accept it again as it is now, and note that in a later entry",
  "take/mend-measure": () => "mend it and measure again, or note it as a departure",
  "take/measure-pair": () => "measure what was estimated",
  "take/measure-estimated": () => "measure it, and note that in the same words against the same limits",
  "take/other-side": () => "measure the other side",
  "take/look-again": () => "have it looked at again, with what has changed or was open",
  "take/inspector": () => "have it looked at by an inspector who has not worked on it",
  "take/paper": () => "have it accepted on a paper, and note its number",
  "take/signed-paper": () => "have it signed on a paper, and note its number or add a scan of it",
  "take/meet-condition": () => "meet it, and have the departure accepted without it",
  "take/pass-first": () => "have that one passed first",
  "take/answer": () => "answer what was found and have it looked at again, on a later day",
  "take/second": () => "have someone look at the source, and note who under seen_by in an amendment",
  "take/other-edition": () => "Ask for the edition made for the inspector.",

  "change/glued": ({ batch, joints, day }) => `Batch ${batch} was glued into ${named(joints)} on ${dateWords(day)}.`,
  "change/opened": ({ joints, day, why }) =>
    `Glue was taken out of ${named(joints)} on ${dateWords(day)}: ${ended(why)}`,
  "change/recalled": ({ lot, joints, day, why }) =>
    `Lot ${lot}, which is in ${named(joints)}, was recalled on ${dateWords(day)}: ${ended(why)}`,
  "change/fitted-recalled": ({ where, lot, day, why }) =>
    `${where} is of lot ${lot}, which was recalled on ${dateWords(day)}: ${ended(why)}`,
  "change/fitted": ({ where, lot, replaced, day }) =>
    `On ${dateWords(day)} ${where} of lot ${replaced} was replaced by one of lot ${lot}.`,
  "change/coat-out": (v, { say }) =>
    `${[`${coated(v)} was put on, and is ${v.verdict}.`, ...v.told.map(say)].join(" ")}${before(v.departures)}`,
  "change/coat-recalled": ({ lot, day, why, ...v }) =>
    `${coated(v)} is of lot ${lot}, which was recalled on ${dateWords(day)}: ${ended(why)}`,
  "change/coat-off": ({ day, how, ...v }) => `${coated(v)} was taken off on ${dateWords(day)}: ${ended(how)}`,
  "change/rejected": ({ batch, joints, day, why }) =>
    `Batch ${batch}, which is in ${named(joints)}, was rejected on ${dateWords(day)}: ${ended(why)}`,
  "change/failed": ({ piece, joints, day }) =>
    `Test piece ${piece}, for ${named(joints)}, failed on ${dateWords(day)}.`,
  "change/amended": amended,
  "change/departure": ({ id, day, what }) => `Departure ${id} was noted on ${dateWords(day)}: ${ended(what)}`,
  "change/open-item": ({ id, day, what }) =>
    `Open item ${id} was raised on ${dateWords(day)}, to be done before it: ${ended(what)}`,
  "change/measure-out": ({ what, found, asked }) => `${what} was measured as ${found}, outside ${asked}.`,
  "change/pair-out": pairOut,
  "change/joint": ({ joint, state }) => `Joint ${joint} is ${state}.`,
};
