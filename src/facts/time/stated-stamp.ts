/** Stamps of the form that a builder states, such as `DD/MM/YY hh:mm A`. */
import { LIMITS } from "../limits.ts";
import { hourOf, type StampReader, wallOf } from "./stamp.ts";

const FIGURES = {
  YYYY: "(\\d{4})",
  YY: "(\\d{2})",
  MM: "(\\d{2})",
  M: "(\\d{1,2})",
  DD: "(\\d{2})",
  D: "(\\d{1,2})",
  HH: "(\\d{2})",
  H: "(\\d{1,2})",
  hh: "(\\d{2})",
  h: "(\\d{1,2})",
  mm: "(\\d{2})",
  ss: "(\\d{2}(?:[.,]\\d+)?)",
  A: "([AaPp])\\.?[Mm]\\.?",
} as const;

type Token = keyof typeof FIGURES;

/** Forms that count from 1970-01-01T00:00Z, in which no zone is left open; how many a second has. */
const EPOCHS: { readonly [form: string]: number } = { "epoch s": 1, "epoch ms": 1000 };

function epochReader(each: number): StampReader {
  return (typed) => {
    if (!/^\d{1,14}(?:\.\d+)?$/u.test(typed)) return undefined;
    const second = Number(typed) / each;
    return second <= LAST ? { wall: second, offset: 0 } : undefined;
  };
}

const LAST = Date.UTC(LIMITS.years.last + 1, 0, 1) / 1000 - 1;

/**
 * The reader; undefined where the form leaves a moment open: it must hold year, month, day, minutes and `HH`, or `hh`
 * with `A`.
 */
export function statedReader(form: string): StampReader | undefined {
  const epoch = EPOCHS[form.trim().toLowerCase()];
  if (epoch !== undefined) return epochReader(epoch);
  const tokens: Token[] = [];
  const pattern = form.trim().replaceAll(/YYYY|YY|MM?|DD?|HH?|hh?|mm|ss|A|\s+|\S/gu, (token) => {
    if (token.trim() === "") return "\\s+";
    if (!isToken(token)) return token.replace(/[.*+?^${}()|[\]\\/]/u, "\\$&");
    tokens.push(token);
    return FIGURES[token];
  });
  const at = (letter: string): number => tokens.findIndex((token) => token[0] === letter) + 1;
  const places = {
    year: at("Y"),
    month: at("M"),
    day: at("D"),
    hour: at("H"),
    half: at("h"),
    minute: at("m"),
    second: at("s"),
    mark: at("A"),
  };
  const letters = tokens.map((token) => token[0]);
  const whole =
    places.year > 0 &&
    places.month > 0 &&
    places.day > 0 &&
    places.minute > 0 &&
    places.hour > 0 !== (places.half > 0 && places.mark > 0);
  if (!whole || new Set(letters).size !== letters.length || places.half > 0 !== places.mark > 0) return undefined;
  return readerOf(new RegExp(`^${pattern}$`, "u"), places);
}

type Places = { readonly [part in "year" | "month" | "day" | "hour" | "half" | "minute" | "second" | "mark"]: number };

function readerOf(pattern: RegExp, places: Places): StampReader {
  return (typed) => {
    const found = pattern.exec(typed);
    if (found === null) return undefined;
    const figure = (at: number): number => (at === 0 ? 0 : Number((found[at] ?? "").replace(",", ".")));
    const year = figure(places.year);
    const hour = places.hour > 0 ? figure(places.hour) : hourOf(figure(places.half), found[places.mark]);
    const century = found[places.year]?.length === 2 ? 2000 : 0;
    const wall = wallOf(
      century + year,
      figure(places.month),
      figure(places.day),
      hour,
      figure(places.minute),
      figure(places.second),
    );
    return wall === undefined ? undefined : { wall };
  };
}

const isToken = (token: string): token is Token => Object.hasOwn(FIGURES, token);
