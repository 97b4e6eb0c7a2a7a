import { defined } from "../defined.ts";
import { realpathSync, statSync } from "node:fs";
import { dirname, join, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { Day } from "../facts/types.ts";
import { type Surroundings, WrongUse } from "./surroundings.ts";

export interface RecordOptions {
  readonly content: string;
  readonly date?: Day;
}

export interface RecordRequest {
  readonly content: string;
  readonly today: Day;
  readonly day?: Day;
  readonly cache: string;
  readonly program: string;
}

/** What every command that reads a record needs. */
export function recordRequest({ content, date }: RecordOptions, { now, program }: Surroundings): RecordRequest {
  if (statSync(content, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new WrongUse(`There is no folder ${content} here. Say where the record is: --content DIR`);
  }
  return defined({
    content,
    today: localDay(now()),
    cache: cacheFor(content),
    program: fileURLToPath(program),
    day: date,
  });
}

/** In the folder the command runs in, but never inside the record: there it is beside it. */
function cacheFor(content: string): string {
  const record = realpathSync(content);
  const here = realpathSync(".");
  const isInside = here === record || here.startsWith(record + sep);
  return join(isInside ? dirname(record) : resolve("."), ".cache", "scarfline");
}

function localDay(time: Date): Day {
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
}
