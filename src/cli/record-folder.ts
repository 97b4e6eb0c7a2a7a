/** Which record a command is about, and what every command that reads one needs. */
import { existsSync, realpathSync, statSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { defined } from "../defined.ts";
import { localDay } from "../facts/time/local-day.ts";
import type { Day } from "../facts/types.ts";
import { cameInBag, NOT_RUN } from "../record/own.ts";
import { type Surroundings, WrongUse } from "./surroundings.ts";

/** As it was typed: after the command, or after `--content`. */
export interface RecordNamed {
  readonly content?: string;
  readonly record?: string | undefined;
}

export interface RecordOptions extends RecordNamed {
  readonly date?: Day;
  /** Whether own pages, layouts and sheet are left out; where it is not said, they are for a record that came in a bag. */
  readonly plain?: boolean;
}

export interface RecordRequest {
  readonly content: string;
  readonly today: Day;
  readonly day?: Day;
  readonly plain?: boolean;
  readonly cache: string;
  readonly program: string;
}

export function recordRequest({ date, plain, ...named }: RecordOptions, surroundings: Surroundings): RecordRequest {
  const content = recordFolder(named, surroundings);
  const isUntrusted = plain === undefined && cameInBag(content);
  if (isUntrusted)
    surroundings.err(
      `The record in ${content} came in a bag, so its pages/, layouts/ and style.css, which are code, are not run. If you trust who made them: --no-plain, or delete ${join(content, NOT_RUN)}\n`,
    );
  return defined({
    content,
    today: localDay(surroundings.now()),
    cache: cacheFor(content),
    program: fileURLToPath(surroundings.program),
    day: date,
    plain: isUntrusted || plain,
  });
}

/**
 * The folder that was named; else the one the command runs in, or one above it, that is a record or holds one as `content/`.
 * The demo that comes with the program is taken only where it was named. Throws WrongUse where there is none.
 */
export function recordFolder({ content, record }: RecordNamed, { program }: Surroundings): string {
  if (content !== undefined && record !== undefined && content !== record)
    throw new WrongUse("The record is named twice: once after the command, once after --content. Leave one out.");
  const named = content ?? record;
  if (named !== undefined) {
    if (statSync(named, { throwIfNoEntry: false })?.isDirectory() === true) return named;
    throw new WrongUse(`There is no folder ${named} here. Say where the record is: --content DIR`);
  }
  const found = recordAbove(resolve("."));
  if (found === undefined)
    throw new WrongUse(
      "No record is here or in a folder above: none holds aircraft.md, or content/aircraft.md. Say where the record is: --content DIR",
    );
  const demo = resolve(fileURLToPath(program), "content");
  if (existsSync(demo) && realpathSync(found) === realpathSync(demo))
    throw new WrongUse("The record here is the demo that comes with Scarfline. To take it, say so: --content content");
  return found;
}

/** Where what a command writes goes without being told: beside a record that was found, else into the folder it runs in. */
export function outBeside(content: string, named: RecordNamed, name: string): string {
  return named.content === undefined && named.record === undefined
    ? shown(join(dirname(resolve(content)), name))
    : name;
}

function recordAbove(folder: string): string | undefined {
  for (const place of [folder, join(folder, "content")])
    if (existsSync(join(place, "aircraft.md"))) return shown(place);
  const above = dirname(folder);
  return above === folder ? undefined : recordAbove(above);
}

/** As it is told: from the folder the command runs in. */
const shown = (path: string): string => relative(".", path) || ".";

/** In the folder the command runs in, but never inside the record: there it is beside it. */
function cacheFor(content: string): string {
  const record = realpathSync(content);
  const here = realpathSync(".");
  const isInside = here === record || here.startsWith(record + sep);
  return join(isInside ? dirname(record) : resolve("."), ".cache", "scarfline");
}
