/** Hours of work: `2:45`, `2.75`, `2h45`, `2 h 45 min`, `165 min`. */
import { hasTooManyDigits, LIMITS } from "../limits.ts";
import { tooManyDigits, tooLarge } from "../quantity/faults.ts";
import { type Mending, onlyYouKnow, type Reading, shown, writes } from "../reading.ts";

export interface Worked {
  readonly minutes: number;
  readonly typed: string;
}

const FORMS: readonly (readonly [RegExp, (parts: readonly string[]) => number | "minutes"])[] = [
  [/^(\d+):(\d{2})(?:\s*h)?$/, ([h, m]) => (Number(m) > 59 ? "minutes" : Number(h) * 60 + Number(m))],
  [/^(\d+)\s*h\s*(\d{1,2})(?:\s*min)?$/i, ([h, m]) => (Number(m) > 59 ? "minutes" : Number(h) * 60 + Number(m))],
  [/^(\d+(?:\.\d+)?|\.\d+)(?:\s*h(?:ours?)?)?$/i, ([h]) => withoutNoise(Number(h) * 60)],
  [/^(\d+)\s*min(?:utes)?$/i, ([m]) => Number(m)],
];

/** Rids a product of the noise of binary fractions, and of no more than that. */
function withoutNoise(minutes: number): number {
  const whole = Math.round(minutes);
  return Math.abs(minutes - whole) <= Math.max(1, whole) * 4 * Number.EPSILON ? whole : minutes;
}

export function readHours(typed: string, most?: number): Reading<Worked> {
  const text = typed.normalize("NFC").trim();
  if (hasTooManyDigits(text)) return { fault: tooManyDigits(typed) };
  for (const [form, reckon] of FORMS) {
    const match = form.exec(text);
    if (match) return checked(typed, reckon(match.slice(1)), most);
  }
  return wrong(typed, "this is not a length of time", mendFor(text));
}

function checked(typed: string, minutes: number | "minutes", most: number | undefined): Reading<Worked> {
  if (minutes === "minutes")
    return wrong(typed, "an hour has only 60 minutes", onlyYouKnow("give hours and minutes, minutes up to 59"));
  if (minutes * 60 > LIMITS.magnitude) return tooLarge(typed, "s");
  if (minutes <= 0)
    return wrong(typed, "no time has passed", onlyYouKnow("say how long it took, or leave the line out"));
  if (!Number.isInteger(minutes)) {
    return wrong(
      typed,
      `this is ${toldMinutes(minutes)} minutes, and hours are kept in whole minutes`,
      onlyYouKnow(`give it in whole minutes, as in ${asHours(Math.round(minutes))} if it was that`),
    );
  }
  if (most !== undefined && minutes > most) return wrong(typed, "this is more than a day", onlyYouKnow(tooLong(typed)));
  return { value: { minutes, typed } };
}

function toldMinutes(minutes: number): number {
  const rounded = Math.round(minutes * 10) / 10;
  return Number.isInteger(rounded) ? minutes : rounded;
}

function tooLong(typed: string): string {
  return /^\d+$/.test(typed.trim())
    ? `if minutes were meant, write ${typed.trim()} min`
    : "write the hours of this one day";
}

/** `80` → `1:20` */
export function asHours(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

/** The word for hours in other languages, and its abbreviations. */
const OTHER_HOURS = /\s*(?:std|stunden?|hrs?|heures?|horas?|ore|uur)\.?$/i;

/** Hours with the word for them as it is read here. */
export function withOurHours(text: string): string {
  return text.replace(OTHER_HOURS, " h");
}

function mendFor(typed: string): Mending {
  const text = withOurHours(typed);
  if (text !== typed && /^\d+(?:\.\d+)?\s*h$/.test(text)) return writes(text);
  if (/^[1-9]\d{0,2},\d{3}(?:\s*h)?$/.test(text))
    return onlyYouKnow(`write ${text.replace(",", "")} or ${text.replace(",", ".")}, as it was meant`);
  if (/^\d+,\d+(?:\s*h)?$/.test(text)) return writes(text.replace(",", "."));
  const single = /^(\d+):(\d)$/.exec(text);
  if (single) return onlyYouKnow(`write ${single[1]}:0${single[2]} or ${single[1]}:${single[2]}0, as it was meant`);
  return onlyYouKnow("give hours as in 2:45, 2.75, 2h45 or 165 min");
}

function wrong(typed: string, message: string, mending: Mending): Reading<Worked> {
  return {
    fault: {
      code: "no-hours",
      message,
      expected: "hours, such as 2:45, 2.75, 2h45 or 165 min",
      found: shown(typed),
      ...mending,
    },
  };
}
