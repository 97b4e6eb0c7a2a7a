/** Whether the piece had cured for long enough, by days and by warmth, when it was broken; and when it may be. */
import { DAY_MINUTES } from "../../facts/quantity/conversions.ts";
import { atLeast } from "../../reckoning/compare.ts";
import type { PieceTest } from "../../facts/types.ts";
import type { FindingValues } from "../codes/findings.ts";
import type { WarmthBy } from "../codes/pieces.ts";
import { provenAge } from "../../reckoning/cure/proven-age.ts";
import { lookUp } from "../record-index.ts";
import { sheetCure } from "../cure/joint-cure.ts";
import { lawSource } from "../cure/reference.ts";
import { procedureOf, sheetOf, USUAL_CURE_SOURCE } from "../sources.ts";
import type { Limit } from "../types/source.ts";
import type { Check, PieceCase } from "./case.ts";

type Worth = NonNullable<FindingValues["full-cure/reached"]["worth"]>;

/** Both the days that passed and the equivalent age must reach the least cure: warmth never makes up for days. */
export function fullCure(c: PieceCase, test: PieceTest, worth: Worth | undefined): Check {
  const { least, age, restsOn } = c.cure;
  const cured = c.curedFor ?? 0;
  const beside = { limit: limitOf(c), alsoOn: restsOn };
  const values = {
    cured,
    closedNoted: c.batch.closed !== undefined || c.piece.glued !== undefined,
    ownTime: c.piece.glued !== undefined,
    brokenNoted: test.at !== undefined,
    worth,
  };
  if (atLeast(cured, least) && (age === undefined || atLeast(age, least)))
    return { finding: c.find("full-cure/reached", "meets", values, beside) };
  return { finding: c.find("full-cure/too-early", "unproven", { ...values, least }, beside), verdict: "too early" };
}

/** A pass before the sheet's own cure stands, and says so: by what the piece's days were worth, as for its least cure. */
export function beforeSheet(c: PieceCase): Check | undefined {
  const { from, stated, age, restsOn } = c.cure;
  const adhesive = lookUp(c.index.record.adhesives, c.batch.adhesive);
  const sheet = c.index.memo.once(adhesive, sheetCure);
  if (sheet === undefined) return undefined;
  const cured = c.curedFor ?? 0;
  const clock = c.index.shop.clock(sheet.law, sheet.reference);
  const worth = age === undefined ? cured : provenAge(clock, from, from + cured, stated?.temperature);
  if (atLeast(cured, sheet.time) && atLeast(worth, sheet.time)) return undefined;
  const limit: Limit = { code: "limit/joint-cure", values: sheet.row, from: sheetOf(adhesive) };
  return { finding: c.find("full-cure/before-sheet", "caution", sheet.row, { limit, alsoOn: restsOn }) };
}

/** What the days are worth at the temperature that the least cure is counted at, where that tells more than the days themselves. */
export function worthOf(c: PieceCase): Worth | undefined {
  const { age, reference, warmth } = c.cure;
  if (age === undefined || (warmth === "assumed" && asTold(age) === asTold(c.curedFor ?? 0))) return undefined;
  return { ...warmthBy(c), age, reference };
}

/** As finely as times are told: in whole minutes, from a day on in whole hours. */
function asTold(seconds: number): number {
  const minutes = Math.floor(seconds / 60 + 1e-9);
  return minutes < DAY_MINUTES ? minutes : Math.floor(minutes / 60) * 60;
}

const warmthBy = ({ cure: { warmth, stated } }: PieceCase): WarmthBy => ({ warmth, stated });

function limitOf(c: PieceCase): Limit {
  const { leastCure } = c.procedure;
  const { reference, referenceFrom, age } = c.cure;
  const temperature = leastCure?.temperature?.typed;
  const counted = temperature === undefined && age !== undefined ? { reference, from: referenceFrom } : undefined;
  return {
    code: "limit/least-cure",
    values: { time: leastCure?.time.typed, temperature, counted },
    from: leastCure ? procedureOf(c.procedure) : USUAL_CURE_SOURCE,
  };
}

/** How the warmth of the cure was counted, so that nobody takes the figure for more than it is. */
export function cureWarmth(c: PieceCase, worth: Worth | undefined): Check | undefined {
  const { age, law, reference, restsOn } = c.cure;
  if (age === undefined) return { finding: c.find("cure-warmth/unknown", "caution", { reference }) };
  if (worth === undefined) return undefined;
  const limit = lawSource(law, lookUp(c.index.record.adhesives, c.batch.adhesive));
  const values = { ...warmthBy(c), reference, law: limit };
  return { finding: c.find("cure-warmth/reckoned", "meets", values, { limit, alsoOn: restsOn }) };
}

/** A piece that waits says from when on it may be broken. */
export function notBroken(c: PieceCase): Check {
  const { readyAt, readyBy: by, from, least, assumed, restsOn } = c.cure;
  const until = c.index.clock.hourBy(readyAt ?? from + least);
  const beside = { limit: limitOf(c), alsoOn: restsOn };
  return { finding: c.find("piece-broken/waits", "waits", { until, by, assumed }, beside), verdict: "not broken" };
}
