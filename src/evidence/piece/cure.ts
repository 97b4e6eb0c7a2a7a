/** Whether the piece had cured for long enough, by days and by warmth, when it was broken; and when it may be. */
import { atLeast } from "../../reckoning/compare.ts";
import { span, temperatureText } from "../../words/figure.ts";
import type { PieceTest } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import { lawSource } from "../cure/reference.ts";
import type { Limit } from "../finding.ts";
import { procedureOf, USUAL_CURE_SOURCE } from "../sources.ts";
import type { Check, PieceCase } from "./case.ts";

/** Both the days that passed and the equivalent age must reach the least cure: warmth never makes up for days. */
export function fullCure(c: PieceCase, test: PieceTest): Check {
  const { least, age, logs } = c.cure;
  const cured = c.curedFor ?? 0;
  const limit = limitOf(c);
  const enough = atLeast(cured, least) && (age === undefined || atLeast(age, least));
  const shown = `The record shows ${span(cured)} of cure${counted(c, test)}${worth(c)}`;
  if (enough) return { finding: c.find("full-cure", "meets", { sentence: `${shown}.`, limit, alsoOn: logs }) };
  const sentence = `${shown}, and ${span(least)} are asked: broken too early, it proves nothing.`;
  return { finding: c.find("full-cure", "unproven", { sentence, limit, alsoOn: logs }), verdict: "too early" };
}

function counted(c: PieceCase, test: PieceTest): string {
  if (c.batch.closed && test.at) return "";
  if (c.batch.closed) return ", counted to the start of the day on which it was broken since no time is noted";
  if (test.at) return ", counted from the end of the day on which it was glued since no time is noted";
  return ", counted from the end of the day on which it was glued to the start of the day on which it was broken since no times are noted";
}

/** What the days are worth at the temperature that the least cure is counted at, where that tells more than the days themselves. */
function worth({ cure, curedFor = 0, units }: PieceCase): string {
  const { age, reference, warmth } = cure;
  if (age === undefined || (warmth === "assumed" && span(age) === span(curedFor))) return "";
  return `, worth ${span(age)} at ${temperatureText(reference, units)} by ${warmthWords(cure)}`;
}

function warmthWords({ warmth, stated }: PieceCase["cure"]): string {
  if (warmth === "logged") return "the shop's logger";
  const noted = stated?.words ?? "nothing";
  return warmth === "logged in part"
    ? `the shop's logger and, where it has a gap, ${stated ? "at most " : ""}${noted}`
    : noted;
}

function limitOf(c: PieceCase): Limit {
  const { leastCure } = c.procedure;
  const { reference, referenceFrom, age } = c.cure;
  const own = leastCure ? procedureOf(c.procedure) : USUAL_CURE_SOURCE;
  if (leastCure?.temperature)
    return { text: `at least ${leastCure.time.typed} of cure at ${leastCure.temperature.typed}`, from: own };
  const text = `at least ${leastCure ? leastCure.time.typed : "3 d"} of cure`;
  if (age === undefined) return { text, from: own };
  return { text: `${text}, counted at ${temperatureText(reference, c.units)} (${referenceFrom.text})`, from: own };
}

/** How the warmth of the cure was counted, so that nobody takes the figure for more than it is. */
export function cureWarmth(c: PieceCase): Check | undefined {
  const { age, law, reference, logs } = c.cure;
  const at = temperatureText(reference, c.units);
  if (age === undefined) {
    const sentence = `No temperature of the cure is known, so only the days count; the least cure is for ${at}.`;
    return { finding: c.find("cure-warmth", "caution", { sentence }) };
  }
  if (worth(c) === "") return undefined;
  const { words, from } = lawSource(law, lookUp(c.index.record.adhesives, c.batch.adhesive, "adhesive"));
  const sentence = `What its days of cure are worth at ${at} is reckoned with ${words}, from ${warmthWords(c.cure)}.`;
  return { finding: c.find("cure-warmth", "meets", { sentence, limit: { text: words, from }, alsoOn: logs }) };
}

/** A piece that waits says from when on it may be broken. */
export function notBroken(c: PieceCase): Check {
  const { readyAt, readyBy, from, least, assumed, logs } = c.cure;
  const until = readyAt ?? from + least;
  const shop = assumed?.words ?? "nothing";
  const why =
    readyBy === "logged"
      ? "by the shop's logger"
      : readyBy === "unknown"
        ? "by days alone, since no temperature is known"
        : readyBy === "assumed"
          ? `if the shop is at ${shop}`
          : `by the shop's logger and, where it has no readings, at ${shop}`;
  const sentence = `It has not been broken yet. Its least cure is reached by ${c.index.clock.hourBy(until)}, ${why}.`;
  return {
    finding: c.find("piece-broken", "waits", { sentence, limit: limitOf(c), alsoOn: logs }),
    verdict: "not broken",
  };
}
