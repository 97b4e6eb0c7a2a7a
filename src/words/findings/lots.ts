/** Lots, and what was taken of them. */
import type { LotValues } from "../../evidence/codes/lots.ts";
import { apart, count, ended, figure, list } from "../figure.ts";
import type { Sentences } from "./catalogue.ts";

export const LOTS: Sentences<LotValues> = {
  "lot-known/not-noted": ({ material }) => `The lot of the ${material} is not noted.`,
  "lot-known/noted": ({ material, lot }) => `The ${material} is of lot ${lot}.`,
  "lot-known/timber": ({ lots }) => `The parts are of ${lots.length === 1 ? "lot" : "lots"} ${list(lots)}.`,
  "lot-known/no-timber": () =>
    "The timber that was glued is not noted, so a recall of timber would not find this batch.",
  "lot-in-date/no-date": ({ lot }) =>
    `Lot ${lot} has no expiry date and the data sheet gives no shelf life: nothing shows that it was in date.`,
  "lot-in-date/good": ({ lot, used, until }) => `Lot ${lot} was used on ${used} and is good until ${until}.`,
  "lot-in-date/past": ({ lot, used, until }) => `Lot ${lot} was used on ${used} but was good only until ${until}.`,
  "lot-recalled/none": ({ lots }) =>
    lots === 1 ? "The lot noted is not recalled." : `None of the ${count(lots, "lot")} noted is recalled.`,
  "lot-recalled/recalled": ({ lot, day, why }) => `Lot ${lot} was recalled on ${day}: ${ended(why)}`,
  "piece-timber/recalled": ({ lot, day, why }) => `It was made from lot ${lot}, recalled on ${day}: ${ended(why)}`,
  "stock/overdrawn": (v) =>
    `By the ${v.by} noted ${v.by === "cuts" ? sawn(v) : mixed(v)} of lot ${v.lot} were used, and ${v.came} came: an amount or a lot is noted wrong.`,
};

const mixed = ({ used, unit }: LotValues["stock/overdrawn"]): string =>
  unit === "kg" ? `${figure(used * 1000, 1)} g` : `${figure(used * 1e6, 1)} ml`;

const sawn = ({ used, amount, unit }: LotValues["stock/overdrawn"]): string =>
  unit === "m³" ? `${apart(used * 1000, amount * 1000, 2)} dm³` : `${apart(used, amount, 2)} ${unit}`;
