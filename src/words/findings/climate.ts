/** The shop, the surfaces and the wood. */
import type { ClimateValues } from "../../evidence/codes/climate.ts";
import { span } from "../durations.ts";
import { listed } from "../lists.ts";
import { apart, figure, percent } from "../numbers.ts";
import { type Units, temperatureText } from "../quantities.ts";
import type { Sentences } from "./catalogue.ts";

export const CLIMATE: Sentences<ClimateValues> = {
  "service-heat/below": (v, { units }) => `${heat(v, units)}.`,
  "service-heat/below-in-part": (v, { units }) => `${heat(v, units)} where it was logged; the rest is not known.`,
  "service-heat/above": ({ greatest, limit, asked }) =>
    `Since it was closed the shop was logged at ${apart(greatest, limit, 1)} °C, above the ${asked} that the sheet lets cured adhesive see, if the part stood where the logger hangs.`,
  "post-cure/not-noted": ({ joint, temperature, time }) =>
    `That ${joint} was heated after gluing is not noted; the sheet asks ${temperature} for ${time}.`,
  "post-cure/pieces": ({ pieces }) =>
    `Nothing shows that ${listed(pieces)} ${pieces.length === 1 ? "was" : "were"} heated as the sheet asks, together with a joint and before it was broken: no ${pieces.length === 1 ? "sample" : "samples"} of the joint.`,
  "post-cure/pieces-alone": ({ pieces }) =>
    `${listed(pieces)} ${pieces.length === 1 ? "was" : "were"} heated before being broken, and no joint of the batch ` +
    `is said to have been in that heat: no ${pieces.length === 1 ? "sample" : "samples"} of the joint.`,
  "post-cure/done": (v) => `${heated(v)}.`,
  "post-cure/estimate": (v) =>
    `${heated(v)}, which is only an estimate; the sheet asks ${v.temperature} for ${v.time}.`,
  "post-cure/outside": (v) => `${heated(v)}; the sheet asks ${v.temperature} for ${v.time}.`,
  "post-cure/while-it-cured": (v) =>
    `${heated(v)} before it had cured, for which the sheet asks nothing above ${v.asked}.`,
  "post-cure/above-service": (v) => `${heated(v)}, above the ${v.asked} that the sheet lets cured adhesive see.`,
  "shop-temperature/not-noted": () => "The temperature of the shop is not noted.",
  "shop-temperature/estimate": ({ found }) =>
    `The temperature of the shop is only an estimate (${found}), which shows nothing.`,
  "shop-temperature/no-limits": ({ found }) => `The shop was at ${found}; the data sheet as entered gives no limits.`,
  "shop-temperature/within": ({ found }) => `The shop was at ${found}.`,
  "shop-temperature/outside": ({ found, asked }) => `The shop was at ${found}; the sheet asks ${asked}.`,
  "shop-temperature/part-outside": ({ of, found, asked }) =>
    `The ${of} ${of === "wood" ? "was" : "were"} at ${found}; the sheet asks ${asked}.`,
  "shop-temperature/logged": (v, { units }) =>
    `${loggedWarmth(v, units)}; ${v.estimate === undefined ? "no temperature is noted" : `${v.estimate} is only an estimate`}.`,
  "shop-temperature/logged-outside": (v, { units }) => `${loggedWarmth(v, units)}; the sheet asks ${v.asked}.`,
  "shop-temperature/witnesses": (v, { units }) =>
    `The shop is noted at ${v.found}, and ${lower(loggedWarmth(v, units))}: two witnesses that differ by more than both instruments explain, and the worse of them counts.`,
  "shop-humidity/logged": (v) =>
    `${loggedDamp(v)}; ${v.estimate === undefined ? "no humidity is noted" : `${v.estimate} is only an estimate`}.`,
  "shop-humidity/logged-outside": (v) => `${loggedDamp(v)}; the sheet asks ${v.asked}.`,
  "shop-humidity/witnesses": (v) =>
    `Humidity is noted as ${v.found}, and ${lower(loggedDamp(v))}: two witnesses that differ by more than both instruments explain, and the worse of them counts.`,
  "shop-humidity/not-noted": () => "The humidity of the shop is not noted.",
  "shop-humidity/estimate": ({ found }) =>
    `The humidity of the shop is only an estimate (${found}), which shows nothing.`,
  "shop-humidity/no-limits": ({ found }) => `Humidity was ${found}; the data sheet as entered gives no limits.`,
  "shop-humidity/within": ({ found }) => `Humidity was ${found}.`,
  "shop-humidity/outside": ({ found, asked }) => `Humidity was ${found}; the sheet asks ${asked}.`,
  "dew-point/clear": (v, { units }) => `${dewPoint(v, units)}.`,
  "dew-point/near": (v, { units }) => `${dewPoint(v, units)}: water may have settled on them.`,
  "wood-moisture/by-meter": ({ found }) => `The wood was at ${found} by meter.`,
  "wood-moisture/by-meter-outside": ({ found, where, asked }) =>
    `The wood was at ${found} by meter, ${where} ${asked}.`,
  "wood-moisture/part-outside": ({ lot, found, where, asked }) =>
    `The part of lot ${lot} was read at ${found}, ${where} ${asked}.`,
  "wood-moisture/estimate": ({ found }) =>
    `The moisture of the wood is only an estimate (${found}), which shows nothing.`,
  "wood-moisture/no-climate": () =>
    "No meter reading of the wood is noted, and no temperature and humidity to estimate one from.",
  "wood-moisture/no-estimate": ({ temperature, humidity }) =>
    `No meter reading of the wood is noted, and at ${temperature} and ${humidity} none can be estimated.`,
  "wood-moisture/estimated": (v) => `${estimated(v)}; the air of one moment shows nothing of the wood.`,
  "wood-moisture/estimated-outside": (v) => `${estimated(v)}, ${v.where} ${v.asked}.`,
  "wood-moisture/logged": (v) => `${logged(v)}.`,
  "wood-moisture/no-timber": (v) =>
    `${logged(v)}; what wood was glued is not noted, so nothing shows that it had been there.`,
  "wood-moisture/came-late": (v) =>
    `${logged(v)}; ${v.lots.length === 1 ? "lot" : "lots"} ${listed(v.lots)} came less than two weeks before, ` +
    `so this shows nothing of ${v.lots.length === 1 ? "it" : "them"}.`,
  "wood-moisture/logged-outside": (v) => `${logged(v)}, ${v.where} ${v.asked}.`,
  "cure-temperature/assumed": ({ over }) =>
    `Neither logger nor thermometer shows the temperature of ${cureOf(over)}: it is assumed.`,
  "cure-temperature/to-come": ({ over }) =>
    `The ${span(over)} of its least cure are still to come, or not read out yet.`,
  "cure-temperature/so-far": (v, { units }) => `${range(v, units)}; the rest is still to come, or not read out yet.`,
  "cure-temperature/above": (v, { units }) => `${range(v, units)}, above the sheet's ${v.asked}.`,
  "cure-temperature/above-later": ({ over, greatest, limit, asked }) =>
    `After ${cureOf(over)}, while its joints still cured, the shop's logger or thermometer ` +
    `shows ${apart(greatest, limit, 1)} °C, above the sheet's ${asked}.`,
  "wood-moisture/logged-in-part": (v) => `${logged(v)}, as far as it was logged, ${v.where} ${v.asked}.`,
  "cure-temperature/no-limit": (v, { units }) =>
    `${range(v, units)}; the data sheet as entered gives no least temperature.`,
  "cure-temperature/below": (v, { units }) => `${range(v, units)}, below the sheet's ${v.asked}.`,
  "cure-temperature/within": (v, { units }) => `${range(v, units)}.`,
  "cure-temperature/within-in-part": (v, { units }) => `${range(v, units)}, and nothing of the rest.`,
};

const loggedWarmth = ({ least, greatest }: ClimateValues["shop-temperature/logged"], units: Units): string =>
  `The logger read ${temperatureText(least, units)} to ${temperatureText(greatest, units)} while it was glued`;

const loggedDamp = ({ least, greatest }: ClimateValues["shop-humidity/logged"]): string =>
  `The logger read ${percent(least, 0)} to ${percent(greatest, 0)} while it was glued`;

const heated = ({ joint, found, lasted }: ClimateValues["post-cure/done"]): string =>
  `${joint} was heated at ${found} for ${span(lasted)}`;

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

function dewPoint({ dewPoint: dew, warmth, of, apart: k }: ClimateValues["dew-point/clear"], units: Units): string {
  const what = of === "surfaces" ? "the surfaces were" : "the shop, for want of a reading of the surfaces, was";
  return `The dew point was ${temperatureText(dew, units)} and ${what} at ${warmth}, ${figure(k, 1)} K from it`;
}

function estimated({ temperature, humidity, shortLog, estimate }: ClimateValues["wood-moisture/estimated"]): string {
  const short = shortLog ? ", the logger not having the two weeks before whole," : "";
  return `No meter reading of the wood is noted; at ${temperature} and ${humidity}${short} wood settles at about ${percent(estimate, 1)} (an estimate, for wood that has had time)`;
}

const logged = ({ estimate }: ClimateValues["wood-moisture/logged"]): string =>
  `No meter reading of the wood is noted; by the logger's two weeks before, wood in the shop settled at about ${percent(estimate, 1)} (an estimate, for wood that has had time)`;

const cureOf = (seconds: number): string => `the ${span(seconds)} of its least cure`;

function range(
  { over, known, least, greatest, limit }: ClimateValues["cure-temperature/within"],
  units: Units,
): string {
  // Never rounded onto or over the sheet's least.
  const warmth = (celsius: number): string =>
    units === "metric" && limit !== undefined ? `${apart(celsius, limit, 1)} °C` : temperatureText(celsius, units);
  const time = known === undefined ? cureOf(over) : `${span(known)} of ${cureOf(over)}`;
  return `The shop's logger or thermometer shows ${warmth(least)} to ${warmth(greatest)} over ${time}`;
}

const heat = ({ greatest }: ClimateValues["service-heat/below"], units: Units): string =>
  `Since it was closed the shop was logged at ${temperatureText(greatest, units)} at most`;
