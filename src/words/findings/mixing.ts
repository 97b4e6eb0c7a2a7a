/** The mix, and the time until the joint was closed. */
import type { MixingValues } from "../../evidence/codes/mixing.ts";
import { dateWords } from "../dates.ts";
import { span } from "../durations.ts";
import { listed } from "../lists.ts";
import { apart, figure, percent, percentApart } from "../numbers.ts";
import type { Sentences } from "./catalogue.ts";

const stood = ({ began, mixed, closed }: MixingValues["working-life/closed-first"]): string =>
  `${began === "mixed" ? "Mixed" : "First spread"} at ${mixed} and closed at ${closed}`;

export const MIXING: Sentences<MixingValues> = {
  "by-default/in-use": ({ day, what, pieces }) =>
    `Typed nowhere in the batch, and taken as in use from ${dateWords(day)} on: ${listed(what)}${pieces.length === 0 ? "" : ` (sizes of ${listed(pieces)})`}.`,
  "mix-ratio/not-noted": ({ parts }) =>
    `The amounts of ${parts.join(" and ")} are not noted, so the ratio of the mix is not known.`,
  "mix-ratio/not-in-one-measure": ({ parts }) =>
    `The amounts of ${parts.join(" and ")} are not both noted in one measure, so the ratio of the mix is not known.`,
  "mix-ratio/applied-apart": () =>
    "Its parts are not mixed but applied apart, each on its face, and the sheet as entered gives no ratio of them: none was asked.",
  "mix-ratio/no-usable-ratio": ({ by }) =>
    `The data sheet gives no usable ratio by ${by}, and none that its densities could turn into one.`,
  "mix-ratio/no-tolerance": (v) =>
    `${mix(v)}, ${off(v)}; the data sheet as entered gives no tolerance to hold that against.`,
  "mix-ratio/estimate": (v) =>
    `${mix(v)}, ${off(v, v.tolerance)}; but ${listed(v.estimates)} ${v.estimates.length === 1 ? "is only an estimate" : "are only estimates"}, so the ratio is not shown.`,
  "mix-ratio/within": (v) => `${mix(v)}, ${off(v, v.tolerance)}.`,
  "mix-ratio/outside": (v) => `${mix(v)}, ${off(v, v.tolerance)}; more than ${v.asked}.`,
  "mix-doubt/no-step": () =>
    "The scale's reading step is not noted, so nothing shows how far the amounts can be trusted.",
  "mix-doubt/within": (v) => `${doubt(v)}.`,
  "mix-doubt/too-close": (v) => `${doubt(v)}; so close to the limit the scale cannot show that the mix was within it.`,
  "mix-doubt/too-coarse": (v) =>
    `${doubt(v)}; the scale is too coarse for so little: it could not show any mix to be within the limit.`,
  "spread/not-known": () =>
    "How much was mixed, or the area that was glued with it, is not noted, so nothing shows that there was enough to spread.",
  "spread/estimate": () =>
    "How much was mixed, or left of it, is only estimated, so nothing shows that there was enough to spread.",
  "spread/enough": (v) => `${spread(v)}.`,
  "spread/too-little": (v) =>
    `${spread(v)}, less than ${v.asked}${v.byWorseEnd ? "" : ` even if nothing ${v.waste === undefined ? "" : "more "}stayed in the cup`}: the joint may be starved.`,
  "working-life/no-times": ({ began }) =>
    `Neither when it was ${BEGAN[began]} nor when the joint was closed is noted, so the time it stood is not known.`,
  "working-life/no-closing": () => "When the joint was closed is not noted, so the time it stood is not known.",
  "working-life/no-mixing": ({ began }) =>
    `When it was ${BEGAN[began]} is not noted, so the time it stood is not known.`,
  "working-life/closed-first": (v) => `${stood(v)}: closed before it was ${BEGAN[v.began]}.`,
  "working-life/no-temperature": (v) =>
    `${stood(v)}, ${span(v.openFor)}; without a temperature no working life can be looked up.`,
  "working-life/no-mass": (v) =>
    `${stood(v)}, ${span(v.openFor)}; the mass of the mix is not known, so no working life can be looked up.`,
  "working-life/no-row": (v) =>
    `${stood(v)}, ${span(v.openFor)}; the data sheet gives no working life ${v.mass === undefined ? "" : `for ${figure(v.mass * 1000, 1)} g `}at ${v.temperature}.`,
  "working-life/estimate": (v) =>
    `${stood(v)}: ${span(v.openFor)} of ${v.life}; but ${listed(v.estimates)} ${v.estimates.length === 1 ? "is only an estimate" : "are only estimates"}, so that working life is not shown.`,
  "working-life/within": (v) => `${stood(v)}: ${span(v.openFor)} of ${v.life}.`,
  "working-life/clamped-later": (v) =>
    `The clamps were tight at ${v.on}, ${span(v.waited)} after it was ${BEGAN[v.began]}: longer than ${v.life}, to which only the closing of the joint is held.`,
  "working-life/exceeded": (v) => `${stood(v)}: ${span(v.openFor)}, more than ${v.life}.`,
};

const BEGAN = { mixed: "mixed", spread: "first spread" } as const;

const spread = ({ mass, waste, area, byWorseEnd, spread: found, limit }: MixingValues["spread/enough"]): string =>
  `${figure(mass * 1000, 1)} g mixed${waste === undefined ? "" : ` less ${figure(waste * 1000, 1)} g of waste`} over ${figure(area * 1e4, 0)} cm² of joints is ${byWorseEnd ? "" : "at most "}${apart(found * 1000, limit * 1000, 0)} g/m²${byWorseEnd ? " by the worse ends of what was noted" : ""}`;

function mix({
  parts: [first, second],
  amounts,
  found,
  asTyped,
  nominal,
  convertedTo,
}: MixingValues["mix-ratio/no-tolerance"]): string {
  const converted =
    convertedTo === undefined ? "" : `, turned into a ratio by ${convertedTo} with the sheet's densities`;
  return `${amounts[1]} of ${second} to ${amounts[0]} of ${first} is ${figure(found, 3)}, and the sheet's ${asTyped} is ${figure(nominal, 3)}${converted}`;
}

function off({ error, parts }: MixingValues["mix-ratio/no-tolerance"], tolerance?: number): string {
  const size = Math.abs(error);
  const shown = tolerance === undefined ? percent(size, 1) : percentApart(size, tolerance);
  if (Number.parseFloat(shown) === 0) return "on the ratio";
  return `${shown} too ${error > 0 ? "much" : "little"} ${parts[1]}`;
}

function doubt({ step, doubt: alone, sum, tolerance }: MixingValues["mix-doubt/within"]): string {
  const from =
    step === undefined
      ? "the last digit as typed, coarser than the scale's reading step,"
      : `the noted reading step of ${step}`;
  return `By ${from} the scale alone leaves ±${percentApart(alone, tolerance)} of doubt, ${percentApart(sum, tolerance)} with the error`;
}
