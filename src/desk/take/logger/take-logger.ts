/** A logger's file: kept as it is under `climate/`; what it leaves open is asked in one question, and kept beside it. */
import * as z from "zod";
import { workshopOf } from "../../../climate/read.ts";
import type { Workshop } from "../../../climate/log.ts";
import { defined } from "../../../defined.ts";
import { HOUR_SECONDS } from "../../../facts/quantity/conversions.ts";
import { idFrom } from "../../id-from.ts";
import { type Facts, fileText } from "../../front-matter.ts";
import { added, keep, readWith } from "../../keep.ts";
import type { Answers, Question } from "../../question.ts";
import type { Given } from "../given.ts";
import { type Desk, left, type Outcome } from "../outcome.ts";
import { type Way, waysToRead, type Ways } from "./ways.ts";

const loggerWorkshop = ({ record, today }: Desk): Workshop | undefined => workshopOf(record.aircraft.timeZone, today);

/** In which ways a table can be read as a logger's. */
export const loggerWays = (text: string, desk: Desk): Ways => {
  const workshop = loggerWorkshop(desk);
  return workshop === undefined ? { ways: [], problems: [] } : waysToRead(text, workshop);
};

export async function takeLogger(
  given: Given,
  text: string,
  { ways }: Pick<Ways, "ways">,
  said: Answers,
  desk: Desk,
): Promise<Outcome> {
  const id = idFrom(given.name.replace(/\.[^.]+$/u, ""), "logger");
  const paths = { csv: `climate/${id}.csv`, md: `climate/${id}.md` };
  const taken = [paths.csv, paths.md].find((path) => desk.files.includes(path));
  if (taken !== undefined)
    return left(given.path, [
      `${taken} is there already and tells of something else. Give the file a name of its own.`,
    ]);
  const way = await wayMeant(given, text, ways, said, desk);
  const facts = factsOf(way);
  const files = new Map<string, Uint8Array>([[paths.csv, given.bytes]]);
  if (Object.keys(facts).length > 0)
    files.set(paths.md, Buffer.from(fileText({ file: `${id}.csv`, ...facts }, REMARKS)));
  const problems = await added(desk.content, files, desk.today);
  if (problems.length > 0) return left(given.path, [`It cannot be read as ${paths.csv}.`], problems);
  await keep(desk.content, files);
  const read = await readWith(desk.content, new Map(), desk.today);
  const log = "record" in read ? read.record.climate.find((one) => one.id === id) : undefined;
  const span = [log?.times[0], log?.times.at(-1)].map(
    (time = 0) => `${new Date(time * 1000).toISOString().slice(0, 16)}Z`,
  );
  return {
    from: given.path,
    became: "taken",
    says: [...files.keys(), `${log?.times.length ?? 0} readings from ${span.join(" to ")}`],
  };
}

const REMARKS = ["What the logger's file leaves open: scarfline fields climate"];

/** One question at most: each answer is a way to read the whole file. */
async function wayMeant(given: Given, text: string, ways: readonly Way[], said: Answers, desk: Desk): Promise<Way> {
  const typed = said["logger"];
  const [only, ...others] = ways;
  if (only !== undefined && others.length === 0) return only;
  const byWords = new Map(ways.map((way) => [wayWords(way), way]));
  const meant = typed === undefined ? [] : [...byWords].filter(([words]) => saysAll(words, typed));
  const [[chosen] = []] = meant;
  const answers = await desk.ask(
    [wayQuestion(given, text, [...byWords.keys()])],
    defined({ logger: meant.length === 1 ? chosen : typed }) as Answers,
  );
  const way = byWords.get(answers["logger"] ?? "");
  if (way === undefined) throw new Error("an answer was taken that was none of the choices");
  return way;
}

const saysAll = (words: string, typed: string): boolean => {
  const parts = new Set(words.split("; "));
  return typed.split(";").every((part) => parts.has(part.trim()));
};

function wayQuestion({ name }: Given, text: string, choices: readonly string[]): Question {
  const example = text.split("\n").find((line) => /\d\d:\d\d|\d{10}/u.test(line)) ?? "";
  return {
    key: "logger",
    flag: "--logger <words>",
    asks: `How ${name} is to be read, which has lines such as ${example.trim()}`,
    form: z.string(),
    example: choices[0] ?? "",
    choices,
  };
}

/** `zone: local; time: D/M/YYYY H:mm; temperature: Ch 1 / °C` */
function wayWords(way: Way): string {
  const column = ({ column, of, unit }: NonNullable<Way["temperature"] | Way["humidity"]>): string =>
    [of, column, unit].filter((part) => part !== undefined).join(" / ");
  const { zone, time, timeColumn, sensorColumn, temperature, humidity, doubledHour, gap, delimiter } = way;
  const parts = {
    zone,
    time,
    "time column": timeColumn,
    "sensor column": sensorColumn,
    temperature: temperature && column(temperature),
    humidity: humidity && column(humidity),
    "doubled hour": doubledHour,
    gap: gap && `${gap / HOUR_SECONDS} h`,
    delimiter,
  };
  return Object.entries(parts)
    .flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`]))
    .join("; ");
}

function factsOf({
  zone,
  time,
  timeColumn,
  sensorColumn,
  temperature,
  humidity,
  doubledHour,
  gap,
  delimiter,
}: Way): Facts {
  return defined({
    time,
    time_column: timeColumn,
    sensor_column: sensorColumn,
    zone,
    doubled_hour: doubledHour,
    temperature: temperature as Facts | undefined,
    humidity: humidity as Facts | undefined,
    delimiter: delimiter === "\t" ? "tab" : delimiter,
    gap: gap && `${gap / HOUR_SECONDS} h`,
  }) as Facts;
}
