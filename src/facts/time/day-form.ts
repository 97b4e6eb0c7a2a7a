/** Days of the form that a builder states of a table, such as `D.M.YY`; without a day in it, months. */
import { type Reading, shown } from "../reading.ts";
import { readSpan, type Span } from "./span.ts";

const FIGURES = { YYYY: "(\\d{4})", YY: "(\\d{2})", MM: "(\\d{2})", M: "(\\d{1,2})", DD: "(\\d{2})", D: "(\\d{1,2})" };

type Token = keyof typeof FIGURES;
const isToken = (token: string): token is Token => Object.hasOwn(FIGURES, token);

/** What a cell says by one form; undefined where it is not of that form. */
export type DayReader = (typed: string) => Reading<Span> | undefined;

/** The reader; undefined where the form leaves a day open: it must hold a year and a month once, and a day at most once. */
export function dayReader(form: string): DayReader | undefined {
  const tokens: Token[] = [];
  const pattern = form.trim().replaceAll(/YYYY|YY|MM?|DD?|\s+|\S/gu, (token) => {
    if (token.trim() === "") return "\\s+";
    if (!isToken(token)) return token.replace(/[.*+?^${}()|[\]\\/]/u, "\\$&");
    tokens.push(token);
    return FIGURES[token];
  });
  const letters = tokens.map((token) => token[0]);
  if (new Set(letters).size !== letters.length || !letters.includes("Y") || !letters.includes("M")) return undefined;
  const whole = new RegExp(`^${pattern}$`, "u");
  return (typed) => {
    const found = whole.exec(typed.trim());
    return found === null ? undefined : spanOf(typed.trim(), tokens, found.slice(1));
  };
}

/** A year of two figures is one of this century. */
function spanOf(typed: string, tokens: readonly Token[], figures: readonly string[]): Reading<Span> {
  const figure = (letter: string): string => figures[tokens.findIndex((token) => token[0] === letter)] ?? "";
  const parts = [figure("Y").padStart(4, "20"), ...["M", "D"].map(figure).filter((part) => part !== "")];
  const read = readSpan(parts.map((part) => part.padStart(2, "0")).join("-"));
  return "value" in read ? read : { fault: { ...read.fault, found: shown(typed) } };
}

/** What a cell says, by the forms that are stated and those that name the year first; what two of them say differently is said by none. */
export function spanBy(forms: readonly string[], typed: string): Reading<Span> {
  const usual = readSpan(typed);
  const read = forms.flatMap((form) => {
    const found = dayReader(form)?.(typed);
    return found === undefined ? [] : [{ form, found }];
  });
  const spans = new Map(
    [...read.map(({ found }) => found), usual].flatMap((one) =>
      "value" in one ? [[`${one.value.from} ${one.value.to}`, one.value] as const] : [],
    ),
  );
  const [span, ...others] = spans.values();
  if (span === undefined) return read[0]?.found ?? usual;
  if (others.length === 0) return { value: span };
  return {
    fault: {
      code: "no-date",
      message: `this is ${[span, ...others].map((one) => one.typed).join(" or ")}, by one form or another`,
      expected: "days of which each is one day by all forms that are stated",
      found: shown(typed),
      mend: "state the one form of `days` that is meant beside the table",
    },
  };
}
