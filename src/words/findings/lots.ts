/** Lots, and what was taken of them. */
import { dateWords } from "../dates.ts";
import type { LotValues } from "../../evidence/codes/lots.ts";
import { counted, ended, listed } from "../lists.ts";
import { apart, figure } from "../numbers.ts";
import { type Units, temperatureText } from "../quantities.ts";
import type { Sentences } from "./catalogue.ts";

export const LOTS: Sentences<LotValues> = {
  "lot-known/not-noted": ({ material }) => `The lot of the ${material} is not noted.`,
  "lot-known/noted": ({ material, lot }) => `The ${material} is of lot ${lot}.`,
  "lot-known/timber": ({ lots }) => `The parts are of ${lots.length === 1 ? "lot" : "lots"} ${listed(lots)}.`,
  "lot-known/no-timber": () =>
    "The timber that was glued is not noted, so a recall of timber would not find this batch.",
  "lot-in-date/no-date": ({ lot }) =>
    `Lot ${lot} has no expiry date and the data sheet gives no shelf life: nothing shows that it was in date.`,
  "lot-in-date/good": ({ lot, used, until }) =>
    `Lot ${lot} was used on ${dateWords(used)} and is good until ${dateWords(until)}.`,
  "lot-in-date/past": ({ lot, used, until }) =>
    `Lot ${lot} was used on ${dateWords(used)} but was good only until ${dateWords(until)}.`,
  "timber-grade/slope-within": ({ lot, slope }) => `The grain of lot ${lot} slopes ${slope}.`,
  "timber-grade/slope-steep": ({ lot, slope }) => `The grain of lot ${lot} slopes ${slope}, steeper than is allowed.`,
  "timber-grade/within": (v) => `Of lot ${v.lot} ${GRADED[v.what]} ${v.found}.`,
  "timber-grade/outside": (v) => `Of lot ${v.lot} ${GRADED[v.what]} ${v.found}, outside what its drawings ask.`,
  "timber-grade/not-noted": ({ lot, what }) => `Of lot ${lot} nothing is noted of ${what}, for which its drawings ask.`,
  "timber-grade/slope-not-noted": ({ lot }) =>
    `How steep the grain of lot ${lot} is, is not noted, so nothing shows that it is fit for the part.`,
  "lot-storage/not-known": ({ lot }) => `How lot ${lot} was kept until it was used is not known: no logger had it.`,
  "lot-storage/kept": (v, { units }) => `${logged(v, units)}, as the sheet keeps it.`,
  "lot-storage/kept-in-part": (v, { units }) => `${logged(v, units)} where it was logged; the rest is not known.`,
  "lot-storage/outside": ({ lot, where, found, limit }) =>
    `Between the day lot ${lot} came and its use the shop was logged at ${apart(found, limit, 1)} °C, ${where} what the sheet keeps it at, if it stood where the logger hangs. See what the sheet says of one that was kept so.`,
  "lot-recalled/none": ({ lots }) =>
    lots === 1 ? "The lot noted is not recalled." : `None of the ${counted(lots, "lot")} noted is recalled.`,
  "lot-recalled/recalled": ({ lot, day, why }) => `Lot ${lot} was recalled on ${dateWords(day)}: ${ended(why)}`,
  "piece-timber/recalled": ({ lot, day, why }) =>
    `It was made from lot ${lot}, recalled on ${dateWords(day)}: ${ended(why)}`,
  "stock/overdrawn": (v) =>
    `By the ${v.by} noted ${v.by === "cuts" ? sawn(v) : mixed(v)} of lot ${v.lot} were used, and ${v.came} came: an amount or a lot is noted wrong.`,
  "stock/left-agrees": (v) =>
    `On ${dateWords(v.day)} ${v.left} of lot ${v.lot} were weighed as left, and ${due(v)} should be, by what the batches took.`,
  "stock/left-differs": (v) =>
    `On ${dateWords(v.day)} ${v.left} of lot ${v.lot} were weighed as left, where ${due(v)} should be by what the batches took: ${
      v.where === "less"
        ? "more went out of it than is noted"
        : "less went out of it than is noted, or it came out of another"
    }.`,
  "stock/left-not-known": ({ lot, day, left }) =>
    `On ${dateWords(day)} ${left} of lot ${lot} were weighed as left. What should be is not known: what came, or what a batch took, is not noted as one figure.`,
};

function due({ least, most, unit }: LotValues["stock/left-agrees"]): string {
  const [scale, word] = unit === "kg" ? [1000, "g"] : [1e6, "ml"];
  const [low, high] = [least, most].map((value) => figure(value * scale, 1));
  return low === high ? `${low} ${word}` : `${low} to ${high} ${word}`;
}

const GRADED = { rings: "the rings are", density: "the density is", moisture: "the moisture on arrival was" } as const;

const logged = ({ lot, least, greatest }: LotValues["lot-storage/kept"], units: Units): string =>
  `From the day lot ${lot} came until it was used the shop was logged at ${temperatureText(least, units)} to ${temperatureText(greatest, units)}`;

const mixed = ({ used, unit }: LotValues["stock/overdrawn"]): string =>
  unit === "kg" ? `${figure(used * 1000, 1)} g` : `${figure(used * 1e6, 1)} ml`;

const sawn = ({ used, amount, unit }: LotValues["stock/overdrawn"]): string =>
  unit === "m³" ? `${apart(used * 1000, amount * 1000, 2)} dm³` : `${apart(used, amount, 2)} ${unit}`;
