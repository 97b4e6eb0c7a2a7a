/** What was put on: primer, varnish, dope, paint, fabric and tape. */
import { dateWords } from "../dates.ts";
import type { CoatValues } from "../../evidence/codes/coats.ts";
import { toTheMinute } from "../durations.ts";
import { ended, listed } from "../lists.ts";
import { percent } from "../numbers.ts";
import { type Units, temperatureText } from "../quantities.ts";
import type { Sentences } from "./catalogue.ts";

export const COATS: Sentences<CoatValues> = {
  "coat-lots/not-noted": ({ finish }) => `Of which lot the ${finish} is, is not noted.`,
  "coat-lots/noted": ({ lots }) => `It is of ${lots.length === 1 ? "lot" : "lots"} ${listed(lots)}.`,
  "coat-lots/no-date": ({ lot }) =>
    `Lot ${lot} has no expiry date and the sheet gives no shelf life: nothing shows that it was in date.`,
  "coat-lots/good": ({ lot, used, until }) =>
    `Lot ${lot} was put on on ${dateWords(used)} and is good until ${dateWords(until)}.`,
  "coat-lots/past": ({ lot, used, until }) =>
    `Lot ${lot} was put on on ${dateWords(used)} but was good only until ${dateWords(until)}.`,
  "coat-lots/recalled": ({ lot, day, why }) => `Lot ${lot} was recalled on ${dateWords(day)}: ${ended(why)}`,
  "coat-air/no-limits": ({ what }) => `The sheet as entered gives no limits of ${what}.`,
  "coat-air/not-noted": ({ what }) => `The ${what} when it was put on is not noted, and no logger knows it.`,
  "coat-air/estimate": ({ what, found }) =>
    `The ${what} is only estimated, as ${found}, and no logger knows it: nothing shows that it was as the sheet asks.`,
  "coat-air/within": ({ what, found }) => `It was put on at a ${what} of ${found}.`,
  "coat-air/outside": ({ what, found, asked }) => `It was put on at a ${what} of ${found}; the sheet asks ${asked}.`,
  "coat-air/logged": (v, { units }) => `${logged(v, units)}; no ${v.what} was read beside it.`,
  "coat-air/logged-outside": (v, { units }) => `${logged(v, units)}; the sheet asks ${v.asked}.`,
  "coat-air/day-outside": (v, { units }) =>
    `The ${v.what} is noted as ${v.found}, but at no time of day, and the logger read ${ends(v, units)} that day; the sheet asks ${v.asked}.`,
  "coat-air/witnesses": (v, { units }) =>
    `The ${v.what} is noted as ${v.found}, and ${lower(logged(v, units))}: two witnesses that differ by more than both instruments explain, and the worse of them counts.`,
  "coat-interval/none-before": ({ coat }) =>
    `Coat ${coat - 1} is not noted, so nothing shows what coat ${coat} was put on, and how long after.`,
  "coat-interval/within": (v) => `${apart(v)}.`,
  "coat-interval/too-soon": (v) => `${apart(v)}; the sheet asks for ${v.asked} at least.`,
  "coat-interval/too-late": (v) => `${apart(v)}; the sheet allows ${v.asked} at most.`,
  "coat-interval/not-known": (v) =>
    `${apart(v)}, as far as the times noted tell, which does not show the sheet's ${v.asked}.`,
  "coat-drying/dried": ({ asked }) => `The sheet's ${asked} of drying have passed.`,
  "coat-drying/drying": ({ asked }) => `The sheet's ${asked} of drying have not passed by the day of the record.`,
  "coat-drying/slow": ({ asked, found }) => `It was found dry only at ${found}, later than the sheet's ${asked}.`,
  "coated-faces/not-bare": ({ batch, where, finish, day }) =>
    `Batch ${batch} was glued on an assembly that had ${finish} on it since ${dateWords(day)} (${where}), and nothing says that the glue faces were kept bare.`,
};

const logged = (v: CoatValues["coat-air/logged"], units: Units): string =>
  `The logger read ${ends(v, units)} when it was put on`;

function ends({ what, least, greatest }: CoatValues["coat-air/logged"], units: Units): string {
  const text = (value: number): string => (what === "humidity" ? percent(value, 0) : temperatureText(value, units));
  return `${text(least)} to ${text(greatest)}`;
}

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

function apart({ coat, least, greatest }: CoatValues["coat-interval/within"]): string {
  const what = `Coat ${coat} was put on`;
  if (greatest < 0) return `${what} before the one before it`;
  if (greatest - least < 60) return `${what} ${toTheMinute(greatest)} after the one before it`;
  return least <= 0
    ? `${what} up to ${toTheMinute(greatest)} after the one before it`
    : `${what} ${toTheMinute(least)} to ${toTheMinute(greatest)} after the one before it`;
}
