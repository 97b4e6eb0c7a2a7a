/** Test pieces. */
import { dateWords, hourWords } from "../dates.ts";
import type { PieceValues, WarmthBy } from "../../evidence/codes/pieces.ts";
import type { Say } from "../../evidence/saying.ts";
import { reached, span } from "../durations.ts";
import { counted, listed } from "../lists.ts";
import { apart, figure, percent } from "../numbers.ts";
import { type Units, stressText, temperatureText } from "../quantities.ts";
import type { Sentences, Telling } from "./catalogue.ts";

export const PIECES: Sentences<PieceValues> = {
  "test-pieces/failed": ({ pieces }) => `${listed(pieces)} failed.`,
  "test-pieces/none": () => "No test piece was made from it.",
  "test-pieces/no-sample": ({ asked }) =>
    `None of its pieces is a sample of the joint; ${counted(asked, "test piece")} ${asked === 1 ? "is" : "are"} asked.`,
  "test-pieces/mixed-unmeasured": ({ pieces }) =>
    `${listed(pieces)} broke partly in the glue line, and how much of it in the wood is not noted: it may have failed.`,
  "test-pieces/glued-late": ({ pieces }) =>
    `${listed(pieces)} ${pieces.length === 1 ? "was" : "were"} not shown to be glued while the cup could still be worked.`,
  "test-pieces/gap": ({ pieces }) =>
    `The numbers of its pieces leave out ${listed(pieces)}: nothing says what became of ${pieces.length === 1 ? "it" : "them"}.`,
  "test-pieces/before-sheet": ({ pieces }) =>
    `${listed(pieces)} passed after the least cure and before the sheet's own: that stands, and the joint waits for the sheet's.`,
  "test-pieces/declared-later": ({ piece, day, glued }) =>
    `${piece} was glued on ${dateWords(glued)} and written down only by an amendment of ${dateWords(day)}: a piece is declared the day it is glued.`,
  "sample-wood/nothing-noted": () =>
    "What wood was glued is not noted, so nothing shows that the pieces are samples of it.",
  "sample-wood/no-lot": ({ pieces }) =>
    `Of what lot ${listed(pieces)} ${pieces.length === 1 ? "is" : "are"} is not noted, so ${pieces.length === 1 ? "it counts" : "they count"} for nothing.`,
  "sample-wood/other-wood": ({ pieces }) =>
    `${listed(pieces)} ${pieces.length === 1 ? "is" : "are"} not of wood that was glued, or nothing says so, and ${pieces.length === 1 ? "counts" : "count"} for nothing.`,
  "sample-wood/covered": ({ lots }) =>
    lots.length === 0
      ? "The pieces are said to be of scraps of the parts."
      : `A piece of the wood of ${listed(lots)} passed.`,
  "sample-wood/lacking": ({ lots }) => `No piece of the wood of ${listed(lots)} has passed.`,
  "sample-wood/other-lot": ({ lots }) =>
    `No piece is of ${lots.length === 1 ? "lot" : "lots"} ${listed(lots)}; those that passed are of other lots of the same wood.`,
  "piece-wood/leg-of-lot": ({ lot, leg, of, material }) =>
    of === undefined
      ? `How thick lot ${lot} is, of ${material}, is not noted, so nothing shows that a leg of ${leg ?? "its size"} can be of it.`
      : `A leg of ${leg ?? "its size"} cannot be of lot ${lot}, which is ${of} thick.`,
  "test-pieces/too-few-made": (v) => `${counted(v.made, "test piece")} of the ${v.asked} asked: ${tally(v)}.`,
  "test-pieces/passed": (v) => `${counted(v.passed, "test piece")} passed of the ${v.asked} asked: ${tally(v)}.`,
  "test-pieces/not-all-broken": (v) =>
    `Of the ${counted(v.asked, "test piece")} asked not all are broken: ${tally(v)}.`,
  "test-pieces/too-few-left": (v) =>
    `Fewer than the ${counted(v.asked, "test piece")} asked can still pass: ${tally(v)}.`,
  "trial-pieces/not-counted": ({ pieces }) =>
    `${counted(pieces, "piece")} made for a trial ${pieces === 1 ? "is" : "are"} not counted.`,
  "piece-broken/waits": (v, { say }) =>
    `It has not been broken yet. Its least cure is reached by ${hourWords(v.until)}, ${readyBy(v, say)}.`,
  "piece-glued/within": (v) => `${gluedAt(v)}.`,
  "piece-glued/too-late": (v) => `${gluedAt(v)}: it shows nothing of the joint's glue.`,
  "piece-glued/not-known": ({ glued }) =>
    `It was glued at ${glued}; whether the cup could still be worked then is not known, so it shows nothing.`,
  "failure-mode/held": (v) => `${broke(v)}.`,
  "failure-mode/glue-line": (v) => `${broke(v)}, which fails in any shape and after any cure.`,
  "failure-mode/not-the-bond": (v) => `${broke(v)}, which shows nothing of the glue line.`,
  "failure-mode/face-ply": (v) =>
    `${broke(v)}, and the procedure does not say that this counts: it shows nothing of the glue line.`,
  "failure-mode/too-little-wood": (v) => `${broke(v)}, and the procedure asks at least ${v.asked}.`,
  "failure-mode/estimate": (v) =>
    `${broke(v)}, which is only an estimate and shows nothing${v.asked === undefined ? "" : `; the procedure asks at least ${v.asked}`}.`,
  "failure-mode/no-share": (v) =>
    `${broke(v)}, with no percentage noted${v.asked === undefined ? "" : `, and the procedure asks at least ${v.asked}`}.`,
  "failure-mode/no-limit": (v) => `${broke(v)}, and the procedure does not say how much wood failure is enough.`,
  "full-cure/reached": (v, telling) => `${cured(v, telling)}.`,
  "full-cure/before-sheet": ({ time, temperature }) =>
    `The sheet's own cure, ${time} at ${temperature}, had not been reached yet: what it showed stands for its least cure.`,
  "full-cure/too-early": (v, telling) =>
    `${cured(v, telling)}, and ${span(v.least)} are asked: broken too early, it proves nothing.`,
  "cure-warmth/unknown": ({ reference }, { units }) =>
    `No temperature of the cure is known, so only the days count; the least cure is for ${temperatureText(reference, units)}.`,
  "cure-warmth/reckoned": (v, { units, say }) =>
    `What its days of cure are worth at ${temperatureText(v.reference, units)} is reckoned with ${say(v.law)}, from ${warmth(v, say)}.`,
  "overlap/not-noted": ({ missing }) =>
    `No ${missing.length > 0 ? missing.join(" and no ") : "usable overlap"} is noted, so nothing shows that a weak glue line would have been seen.`,
  "overlap/thin-outer": ({ outer, thickness }) =>
    `An outer leg of ${outer} is less than half as thick as the pressed one of ${thickness} and gives way first, ` +
    "so nothing shows that a weak glue line would have been seen.",
  "overlap/within": (v) => `${sizes(v)} is ${figure(v.ratio, 2)} thicknesses.`,
  "overlap/too-long": (v, { say }) =>
    `${sizes(v)} is ${apart(v.ratio, v.bound, 2)} thicknesses, too long to show a weak glue line${lets(v, say)}.`,
  "overlap/wood-not-known": (v) =>
    `${sizes(v)} is ${figure(v.ratio, 2)} thicknesses; of what wood it is, or how strong, is not noted, so nothing shows that a weak glue line would have been seen.`,
  "overlap/below-floor": (v, { say }) =>
    `${sizes(v)} is ${figure(v.ratio, 2)} thicknesses: it would let pass a glue line with ${percent(v.revealing, 0)} of the wood's own shear strength, and ${percent(v.floor, 0)}, what three thicknesses show, is the least that counts whatever a procedure allows (strengths of the wood: ${say(v.wood)}).`,
  "overlap/too-short": (v) =>
    `${sizes(v)} is ${apart(v.ratio, v.bound, 2)} thicknesses, shorter than the limit allows.`,
  "piece-load/not-read": ({ asked }) => `No load is noted, so the ${asked} of the procedure could not be checked.`,
  "piece-load/estimate": ({ load, asked }) =>
    `The load is only an estimate (${load}), which does not show the ${asked} of the procedure.`,
  "piece-load/no-stress": ({ load, missing }) =>
    `${load} was read, but without ${missing.length > 0 ? missing.join(" and ") : "usable sizes"} it gives no stress.`,
  "piece-load/cannot-be": (v, { units, say }) =>
    `${v.load} would press the leg with ${stressText(v.stress, v.limit, units)}, far above the ${stressText(v.limit, v.stress, units)} at which its wood is crushed (${say(v.wood)}): the load or its unit is noted wrong.`,
  "piece-load/no-wood-so-weak": (v, { units, say }) =>
    `${v.load} put ${stressText(v.stress, v.limit, units)} on the glue faces, less than half of the ${stressText(v.limit, v.stress, units)} that its wood bears in shear (${say(v.wood)}): the load is noted wrong, or the wood was not sound.`,
  "piece-load/reached": (v, { units }) => `${stressed(v, units)}.`,
  "piece-load/too-low": (v, { units }) =>
    `${stressed(v, units)}, less than ${v.asked}: the wood gave way early and the glue line was not tried.`,
};

const tally = (v: PieceValues["test-pieces/not-all-broken"]): string =>
  listed(v.tally.map(({ verdict, n }) => `${n} ${verdict}`));

function broke({ failure, share }: PieceValues["failure-mode/held"]): string {
  const wood = share === undefined ? "" : `, ${share} wood failure`;
  if (failure === "mixed") return `It broke partly in the wood and partly in the glue line${wood}`;
  if (failure === "crushed") return "A leg was crushed";
  if (failure === "not opened") return "It was not opened";
  return `It broke in the ${failure === "face ply" ? "face veneer of the plywood" : failure}${wood}`;
}

const gluedAt = ({ began, mixed, glued, stood, life }: PieceValues["piece-glued/within"]): string =>
  `The cup was ${began === "mixed" ? "mixed" : "first spread"} at ${mixed} and the piece glued at ${glued}, ${span(stood)} of ${life}`;

function cured(v: PieceValues["full-cure/reached"], { units, say }: Telling): string {
  const worth =
    v.worth === undefined
      ? ""
      : `, worth ${reached(v.worth.age)} at ${temperatureText(v.worth.reference, units)} by ${warmth(v.worth, say)}`;
  const by = v.worth?.warmth === "assumed" ? ", assumed to have lasted" : "";
  return `${span(v.cured)} passed between ${v.ownTime ? "gluing" : "closing"} and breaking${countedFrom(v)}${worth}${by}`;
}

function countedFrom({ closedNoted, brokenNoted }: PieceValues["full-cure/reached"]): string {
  if (closedNoted && brokenNoted) return "";
  if (closedNoted) return ", counted to the start of the day on which it was broken since no time is noted";
  if (brokenNoted) return ", counted from the end of the day on which it was glued since no time is noted";
  return ", counted from the end of the day on which it was glued to the start of the day on which it was broken since no times are noted";
}

function warmth({ warmth: by, stated }: WarmthBy, say: Say): string {
  if (by === "logged") return "the shop's logger";
  const noted = stated === undefined ? "nothing" : say(stated);
  return by === "logged in part"
    ? `the shop's logger and, where it has a gap, ${stated === undefined ? "" : "at most "}${noted}`
    : noted;
}

function readyBy({ by, assumed }: PieceValues["piece-broken/waits"], say: Say): string {
  const shop = assumed === undefined ? "nothing" : say(assumed);
  if (by === "logged") return "by the shop's logger";
  if (by === "too cold") return `by days alone, and at ${shop} it does not cure: the sheet asks more`;
  if (by === "unknown") return "by days alone, since no temperature is known";
  return by === "assumed"
    ? `if the shop is at ${shop}`
    : `by the shop's logger and, where it has no readings, at ${shop}`;
}

const sizes = ({ overlap, thickness }: PieceValues["overlap/within"]): string =>
  `An overlap of ${overlap} at a thickness of ${thickness}`;

function lets({ lets: found }: PieceValues["overlap/too-long"], say: Say): string {
  if (found === undefined) return "";
  return `: by statics it would let pass one with ${percent(found.share, 0)} of the wood's own shear strength (strengths of the wood: ${say(found.wood)})`;
}

const stressed = ({ load, stress, limit }: PieceValues["piece-load/reached"], units: Units): string =>
  `${load} put ${stressText(stress, limit, units)} on the glue faces`;
