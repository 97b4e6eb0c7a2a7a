/** Whether the shop stayed warm enough while the adhesive cured, by the logger. */
import { atLeast } from "../../reckoning/compare.ts";
import { USUAL_CURE } from "../../reckoning/cure/cure-time.ts";
import { apart, span, temperatureText } from "../../words/figure.ts";
import { spanOf } from "../../reckoning/climate/span-of-track.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";
import { closedAtLatest } from "../cure/cure.ts";

export function cureTemperature(c: BatchCase): Finding[] {
  const { index, batch, adhesive, pieces } = c;
  if (!index.shop.isLogged) return [];
  const least = Math.max(...pieces.map(({ cure }) => cure.least), pieces.length === 0 ? USUAL_CURE : 0);
  const closed = closedAtLatest(index, batch);
  const [from, to] = [batch.mixed?.epoch ?? closed, closed + least];
  const logged = spanOf(index.shop.tracks.temperature, from, to);
  const limit = adhesive.temperature && { text: `shop ${adhesive.temperature.typed}`, from: sheetOf(adhesive) };
  const alsoOn = index.shop.logs(from, to);
  const over = `the ${span(to - from)} of its least cure`;
  if (!logged)
    return [
      c.find("cure-temperature", "caution", { sentence: `The shop's logger has no readings of ${over}.`, limit }),
    ];
  const range = `The shop's logger shows ${warmth(c, logged.least)} to ${warmth(c, logged.greatest)} over ${logged.whole ? over : `${span(logged.known)} of ${over}`}`;
  const asked = adhesive.temperature;
  if (asked?.least === undefined)
    return [
      c.find("cure-temperature", "caution", {
        sentence: `${range}; the data sheet as entered gives no least temperature.`,
        limit,
        alsoOn,
      }),
    ];
  if (!atLeast(logged.least, asked.least))
    return [
      c.find("cure-temperature", "rejects", { sentence: `${range}, below the sheet's ${asked.typed}.`, limit, alsoOn }),
    ];
  const severity = logged.whole ? "meets" : "caution";
  return [
    c.find("cure-temperature", severity, {
      sentence: `${range}${logged.whole ? "" : ", and nothing of the rest"}.`,
      limit,
      alsoOn,
    }),
  ];
}

/** Never rounded onto or over the sheet's least. */
function warmth({ adhesive, units }: BatchCase, celsius: number): string {
  const least = adhesive.temperature?.least;
  return units === "metric" && least !== undefined ? `${apart(celsius, least, 1)} °C` : temperatureText(celsius, units);
}
