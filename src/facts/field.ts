/** The forms that values take in front matter: each is text, read by one function, with a description and examples for editors. */
import * as z from "zod";
import { readDrawn } from "./quantity/drawn.ts";
import type { Wanted } from "./quantity/faults.ts";
import { readNoted, readNotedOrScarf } from "./quantity/noted.ts";
import { type Measured, readQuantity } from "./quantity/quantity.ts";
import { readPlusMinus, readRange, readRatio, readSlope, readTolerance } from "./quantity/range.ts";
import { readTenths } from "./quantity/tenths.ts";
import { DIMENSIONS } from "./quantity/units.ts";
import { LIMITS, tooLong } from "./limits.ts";
import { type Fault, isFault, type Reading, shown } from "./reading.ts";
import { readLanguage } from "./language.ts";
import { readMoney } from "./quantity/money.ts";
import { readClock, wholeMinutes } from "./time/clock.ts";
import { readDay } from "./time/day.ts";
import { readHours } from "./time/hours.ts";
import { readInstant } from "./time/instant.ts";
import { readZone } from "./time/zone.ts";
import { readWebAddress } from "./web-address.ts";
import { AUDIENCES, type Dimension } from "./values.ts";

const BLANK: Fault = {
  code: "empty",
  message: "there is nothing within the quotation marks",
  mend: "write what it is, or take the line away",
};

/** What a text of a form is, in words: `a mass`. */
const TOLD = z.registry<{ readonly as: string }>();

export const toldAs = (form: z.core.$ZodType): string | undefined => TOLD.get(form)?.as;

/** A text that `read` turns into a value, told `as` what it is; its fault becomes an issue of the schema. */
export function field<T>(
  read: (typed: string) => Reading<T>,
  as: string,
  description: string,
  examples: readonly string[],
  { pattern, most = LIMITS.valueLength }: { readonly pattern?: string; readonly most?: number } = {},
) {
  const text = z.string().meta({ ...(pattern !== undefined && { pattern }), maxLength: most });
  return text
    .transform((typed, context): T => {
      const long = tooLong(typed, most);
      const reading = long ? { fault: long } : typed.trim() === "" ? { fault: BLANK } : read(typed);
      if (!isFault(reading)) return reading.value;
      context.addIssue({ code: "custom", message: reading.fault.message, params: { fault: reading.fault } });
      return z.NEVER;
    })
    .meta({ description, examples: [...examples] })
    .register(TOLD, { as });
}

/** The fault that {@link field} put into an issue. */
export function faultOf(params: unknown): Fault | undefined {
  return typeof params === "object" && params !== null && "fault" in params ? (params.fault as Fault) : undefined;
}

export function words(description: string, example: string) {
  return field((typed) => ({ value: typed }), "words", description, [example], { most: LIMITS.textLength });
}

export function quantity(
  { dimension, ...wanted }: Omit<Wanted, "dimensions"> & { readonly dimension: Dimension },
  description: string,
) {
  const { name, example } = DIMENSIONS[dimension];
  return field((typed) => readQuantity(typed, { dimensions: [dimension], ...wanted }), name, description, [
    wanted.example ?? example,
  ]);
}

const asRead = (name: string): string => `${name}, a range or an estimate`;
const among = (dimensions: readonly Dimension[]): string => dimensions.map((one) => DIMENSIONS[one].name).join(" or ");

/** What was read: one value, a range, or an estimate. */
export function noted(
  { dimension, ...wanted }: Omit<Wanted, "dimensions"> & { readonly dimension: Dimension },
  description: string,
  more: readonly string[] = [],
) {
  const example = wanted.example ?? DIMENSIONS[dimension].example;
  return field(
    (typed) => readNoted(typed, { dimensions: [dimension], ...wanted }),
    asRead(DIMENSIONS[dimension].name),
    description,
    [example, ...more, `about ${example}`],
  );
}

/** A percentage from 0 to 100 % that was read. */
export function notedShare(description: string, example: string, more: readonly string[] = []) {
  return noted({ dimension: "share", sign: "not negative", most: 1, example }, description, more);
}

export function measured(description: string, example: string) {
  return field((typed) => readNotedOrScarf(typed, { sign: "any", example }), asRead("a measure"), description, [
    example,
    "1 in 12",
    "about 62 mm",
  ]);
}

/** What a drawing asks: a nominal value or limits, of any dimension. */
export function drawn(description: string, examples: readonly string[]) {
  return field((typed) => readDrawn(typed, examples[0]), "a measure or its limits", description, examples);
}

/** How far two measures may differ, the same to both sides. */
export function difference(description: string, example: string) {
  return field((typed) => readPlusMinus(typed, undefined, example), "a measure after ±", description, [example]);
}

export const tenths = (description: string, example: string) => field(readTenths, "tenths", description, [example]);

/** A quantity of one of several dimensions. */
export function either(
  dimensions: readonly [Dimension, ...Dimension[]],
  description: string,
  examples: readonly string[],
) {
  return field(
    (typed): Reading<Measured> => readQuantity(typed, { dimensions, example: examples.join(" or ") }),
    among(dimensions),
    description,
    examples,
  );
}

/** The same of what was read. */
export function eitherNoted(
  dimensions: readonly [Dimension, ...Dimension[]],
  description: string,
  examples: readonly string[],
) {
  return field(
    (typed) => readNoted(typed, { dimensions, example: examples.join(" or ") }),
    asRead(among(dimensions)),
    description,
    examples,
  );
}

/** A percentage from 0 to 100 %. */
export function share(description: string, example: string) {
  return quantity({ dimension: "share", sign: "not negative", most: 1, example }, description);
}

export function range(dimension: Dimension, description: string, example: string, sign: Wanted["sign"] = "positive") {
  const most = dimension === "share" ? { most: 1 } : {};
  return field(
    (typed) => readRange(typed, { dimensions: [dimension], sign, example, ...most }),
    `limits of ${DIMENSIONS[dimension].name}`,
    description,
    [example],
  );
}

export function plusMinusShare(description: string) {
  return field((typed) => readPlusMinus(typed, ["share"], "±5 %"), "a percentage after ±", description, ["±5 %"]);
}

export const tolerance = () =>
  field((typed) => readTolerance(typed), "a tolerance", "How far the measure may lie from the drawing's.", [
    "±0.5 mm",
    "+0.5 mm -0 mm",
  ]);
export const ratio = (description: string, example: string) => field(readRatio, "a ratio", description, [example]);
export const slope = () => field(readSlope, "a slope", "Slope of the grain: rise to length.", ["1 : 18"]);
export const day = (description: string, example = "2025-03-08") =>
  field(readDay, "a day", description, [example], { pattern: "^\\d{4}-\\d{2}-\\d{2}$" });
export const clock = (description: string, latest = 24) =>
  field((typed) => readClock(typed, latest), "a time of day", description, ["14:20"]);
/** Of hours of work, which are kept in whole minutes. */
export const wholeClock = (description: string, latest = 24) =>
  field((typed) => wholeMinutes(typed, readClock(typed, latest)), "a time of day", description, ["14:20"]);
export const instant = (description: string) =>
  field(readInstant, "a day and a time", description, ["2025-03-08 15:00"]);
export const worked = (description: string, example: string, most?: number) =>
  field((typed) => readHours(typed, most), "hours", description, [example]);
export const language = () =>
  field(readLanguage, "a tag", "The language that you write in, by its tag.", ["de", "pt-BR"]);
export const webAddress = (description: string) =>
  field(readWebAddress, "an address on the web", description, ["https://example.org/heron/"]);
export const money = (description: string) => field(readMoney, "an amount in a currency", description, ["84.50 EUR"]);
export const zone = () =>
  field(readZone, "a time zone", "The time zone of the workshop.", ["Europe/Lisbon", "America/Chicago"]);

export function count(description: string, example: string, of = "pieces") {
  return field(
    (typed): Reading<number> => {
      if (/^[1-9]\d{0,3}$/.test(typed)) return { value: Number(typed) };
      return {
        fault: {
          code: "no-count",
          message: `this is not a number of ${of}`,
          expected: `a whole number, such as ${example}`,
          found: shown(typed),
          mend: "give digits only, 1 or more",
        },
      };
    },
    "a whole number",
    description,
    [example],
  );
}

export function choice<const T extends readonly [string, ...string[]]>(values: T, description: string) {
  return z.enum(values).meta({ description });
}

/** Of any fact. */
export const note = () => words("Whatever else is to be said of it.", "The light was poor").optional();

export const audience = () => choice(AUDIENCES, "The narrowest edition that shows this; without it all do.");

export function list<T extends z.ZodType>(item: T, description: string) {
  return z.array(item).meta({ description });
}

const SHORT = z.registry<{ readonly short: unknown }>();

/** A form that may be typed in a shorter one, which is spelled out before it is held against the form. */
export function shortly<T extends z.ZodType>(form: T, short: z.ZodType): T {
  SHORT.add(form, { short });
  return form;
}

export const shortFormOf = (form: z.core.$ZodType): z.ZodType | undefined =>
  SHORT.get(form)?.short as z.ZodType | undefined;

export function block<T extends z.ZodRawShape>(shape: T) {
  return z.strictObject(shape);
}
