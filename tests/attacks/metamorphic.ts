/** Other ways of saying the same record. */
import { changedFiles, type Value } from "./search/sites.ts";
import type { Chance } from "./search/chance.ts";
import type { Texts } from "./workbench.ts";

type Said = (text: string) => string;

/** Every text of the front matter of every file said otherwise. */
const resaid = (texts: Texts, say: Said): Texts =>
  changedFiles(texts, (front) => deep(front, (value) => (typeof value === "string" ? say(value) : value)));

function deep(value: Value, change: (value: Value) => Value): Value {
  if (Array.isArray(value)) return change(value.map((item) => deep(item, change)));
  if (typeof value === "string") return change(value);
  return change(Object.fromEntries(Object.entries(value).map(([key, part]) => [key, deep(part, change)])));
}

/** Lists whose order says nothing. */
const UNORDERED = new Set([
  "hours",
  "batches",
  "pieces",
  "tests",
  "timber",
  "joints",
  "working_life",
  "cure",
  "thermometer",
  "recalls",
  "rejects",
  "hold_points",
  "people",
  "departures",
]);

/** Keys of every block, and lists whose order says nothing, in another order. */
export function shuffled(texts: Texts, chance: Chance): Texts {
  return changedFiles(texts, (front) =>
    deep(front, (value) => {
      if (typeof value === "string" || Array.isArray(value)) return value;
      const parts = Object.entries(value).map(([key, part]): [string, Value] => [
        key,
        Array.isArray(part) && UNORDERED.has(key) ? chance.shuffled(part) : part,
      ]);
      return Object.fromEntries(chance.shuffled(parts));
    }),
  );
}

/** `52.30` and 3 places to `0.05230`: no digit is lost, and none is won. */
function movedPoint(typed: string, places: number): string {
  const [whole = "", part = ""] = typed.split(".");
  const digits = whole.padStart(places + 1, "0") + part;
  const at = digits.length - part.length - places;
  return `${digits.slice(0, at)}.${digits.slice(at)}`;
}

const NUMBER = "(\\d+(?:\\.\\d+)?)";
const exactly = (value: number, digits: number): string => value.toFixed(digits);
const digitsOf = (typed: string): number => typed.split(".")[1]?.length ?? 0;

const fahrenheit = (c: string): string => exactly((Number(c) * 9) / 5 + 32, digitsOf(c) + 1);

/** Quantities in another unit, each by a factor that is exact by definition. */
const UNITS: readonly (readonly [unit: string, pattern: RegExp, said: (...typed: string[]) => string])[] = [
  ["g in kg", new RegExp(`^${NUMBER} g$`), (g) => `${movedPoint(g, 3)} kg`],
  [
    "°C in °F",
    new RegExp(`(?:${NUMBER} to )?${NUMBER} °C`, "g"),
    (least, most) => `${least === undefined ? "" : `${fahrenheit(least)} to `}${fahrenheit(most ?? "")} °F`,
  ],
  ["inches in mm", /^(\d+)\/(\d+) in$/, (over, under) => `${(Number(over) / Number(under)) * 25.4} mm`],
  ["pounds in newtons", new RegExp(`^${NUMBER} lbf$`), (lbf) => `${Number(lbf) * 4.4482216152605} N`],
  ["days in hours", new RegExp(`^${NUMBER} d$`), (d) => `${Number(d) * 24} h`],
  ["MPa in kPa", new RegExp(`^${NUMBER} MPa$`), (mpa) => `${Number(mpa) * 1000} kPa`],
];

export const UNIT_NAMES = UNITS.map(([name]) => name);

export function inOtherUnits(texts: Texts, name: string): Texts {
  const [, pattern, said] = UNITS.find(([one]) => one === name) ?? [];
  if (pattern === undefined || said === undefined) return texts;
  return resaid(texts, (text) => text.replace(pattern, (_, ...typed: string[]) => said(...typed)));
}

/** 52 weeks: clocks change on the same day of the same week. */
const YEAR = 364 * 86_400_000;

const earlier: Said = (text) =>
  text.replace(/\b20\d\d-\d\d-\d\d/g, (day) => new Date(Date.parse(day) - YEAR).toISOString().slice(0, 10));

export const aYearEarlier = (texts: Texts): Texts =>
  new Map([...texts].map(([file, text]) => [earlier(file), earlier(text)]));

/** A batch of the same day as the last entry, in no joint, of lots of its own. */
export function withUnrelatedBatch(texts: Texts): Texts {
  const last =
    [...texts.keys()]
      .filter((file) => file.startsWith("entries/"))
      .sort()
      .at(-1) ?? "";
  const day = last.slice("entries/".length, "entries/".length + 10);
  const lot = (material: string): string =>
    `---\n${JSON.stringify({ title: "Apart", material, adhesive: "apart", received: "2025-01-04" })}\n---\n`;
  const batch = {
    id: "Z-900",
    adhesive: "apart",
    resin: { lot: "Z-R", mass: "10 g" },
    hardener: { lot: "Z-H", mass: "9 g" },
  };
  const entry = { date: day, assembly: "aircraft", title: "Apart", batches: [batch] };
  return new Map([
    ...texts,
    ["adhesives/apart.md", `---\n${JSON.stringify({ title: "Apart", sheet: "Apart" })}\n---\n`],
    ["lots/Z-R.md", lot("resin")],
    ["lots/Z-H.md", lot("hardener")],
    [`entries/${day}-apart.md`, `---\n${JSON.stringify(entry)}\n---\n`],
  ]);
}

/** The tests of a day, each in an entry of its own, in the order of chance; of a record whose entries others amend, nothing. */
export function withTestsApart(texts: Texts, chance: Chance): Texts {
  const apart: [string, string][] = [];
  if ([...texts.values()].some((text) => text.includes("amends:"))) return texts;
  const rest = changedFiles(texts, (front, file) => {
    if (typeof front === "string" || Array.isArray(front) || !Array.isArray(front["tests"]) || front["inspections"])
      return front;
    const { tests, ...others } = front;
    for (const test of chance.shuffled(tests as Value[])) {
      const entry = { date: front["date"] ?? "", assembly: front["assembly"] ?? "", title: "Apart", tests: [test] };
      apart.push([
        `${file.slice(0, "entries/2025-03-20".length)}-z${apart.length}.md`,
        `---\n${JSON.stringify(entry)}\n---\n`,
      ]);
    }
    return others;
  });
  return new Map([...rest, ...apart]);
}
