/** What findings are held against, and the warmths that stand in for readings. */
import { dateWords } from "../dates.ts";
import type { LimitValues, WarmthValues } from "../../evidence/codes/limits.ts";
import { counted } from "../lists.ts";
import { percent } from "../numbers.ts";
import { temperatureText } from "../quantities.ts";
import type { Sentences } from "./catalogue.ts";
import { ASKS } from "./gluing.ts";

const lowered = (words: string): string => `${words.slice(0, 1).toLowerCase()}${words.slice(1)}`;

export const LIMITS: Sentences<LimitValues & WarmthValues> = {
  "limit/mix-ratio": ({ parts, ratio, tolerance }) => `${parts[1]} over ${parts[0]} ${ratio}, ${tolerance}`,
  "limit/mix-doubt": ({ tolerance }) => `error and doubt of the scale together at most ${percent(tolerance, 1)}`,
  "limit/working-life": ({ life, mass, temperature }) =>
    `closed within ${life}, as ${mass === undefined ? "" : `for ${mass} `}at ${temperature}`,
  "limit/shop": ({ asked }) => `shop ${asked}`,
  "limit/spread": ({ asked }) => `${asked} over the area of the joints`,
  "limit/measured": ({ asked, isSlope }) => (isSlope ? `no steeper than ${asked}` : asked),
  "limit/glue-up": ({ ask, asked }) => `${lowered(ASKS[ask][0])}: ${ASKS[ask][1](asked)}`,
  "limit/timber-asked": ({ what, asked }) =>
    what === "grain slope" ? `slope of grain no more than ${asked}` : `${what} ${asked}`,
  "limit/grain-slope": ({ length }) => `slope of grain of spruce no more than 1 in ${length}`,
  "limit/storage": ({ asked }) => `kept at ${asked}`,
  "limit/post-cure": ({ temperature, time }) => `heated at ${temperature} for at least ${time}`,
  "limit/service": ({ asked }) => `at most ${asked} once it is cured`,
  "limit/recoat-after": ({ asked }) => `no sooner than ${asked} after the coat before`,
  "limit/recoat-within": ({ asked }) => `no later than ${asked} after the coat before`,
  "limit/drying": ({ asked }) => `${asked} to dry`,
  "limit/humidity": ({ asked }) => `humidity ${asked}`,
  "limit/wood-moisture": ({ asked }) => `wood moisture ${asked}`,
  "limit/dew-point": ({ least }) => `surfaces at least ${least} K above the dew point`,
  "limit/expiry": ({ day }) => `used by ${dateWords(day)}`,
  "limit/shelf-life": ({ life, received }) => `shelf life ${life} from ${dateWords(received)}`,
  "limit/test-pieces": ({ pieces }) =>
    `${counted(pieces, "test piece")} from each batch, broken and passed, and none failed`,
  "limit/least-cure": ({ time, temperature, counted }, { units, say }) => {
    const text = `at least ${time ?? "3 d"} of cure`;
    if (temperature !== undefined) return `${text} at ${temperature}`;
    return counted === undefined
      ? text
      : `${text}, counted at ${temperatureText(counted.reference, units)} (${say(counted.from)})`;
  },
  "limit/joint-cure": ({ time, temperature }) =>
    `${time ?? "3 d"} of cure${temperature === undefined ? "" : ` at ${temperature}`} before it may be loaded`,
  "limit/doubling": () => "the rate doubling for every 10 K",
  "limit/sheet-times": ({ times }) => `the rate by the sheet's ${times} at several temperatures`,
  "limit/overlap": ({ asked }) => `overlap ${asked}`,
  "limit/usual-overlap": ({ least, most }) => `overlap ${least} to ${most} thicknesses`,
  "limit/wood-failure": ({ asked }) => `at least ${asked} wood failure`,
  "limit/stress": ({ asked }) => `at least ${asked} on the glue faces`,

  "warmth/noted": ({ temperature }) => `the ${temperature} noted when it was glued`,
  "warmth/asked": ({ temperature }) => `the ${temperature} that the procedure asks at least`,
  "warmth/last-logged": ({ celsius }, { units }) =>
    `the ${temperatureText(celsius, units)} that the shop fell to when it was last logged`,
};
