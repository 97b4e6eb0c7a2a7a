/** What the typing of a fact needs to know of the file that it stands in. */
import { defined } from "../defined.ts";
import type { Place } from "../problem.ts";
import type { Amendment } from "./entry/amendment.ts";
import type { Clock } from "./time/clock.ts";
import type { MeasuredNoted } from "./quantity/noted.ts";
import type { Day, FilePath, Moment, Noted, Passage, Path, Quantity } from "./values.ts";

/** A file in which no problem was found. */
export interface SoundFile<S> {
  readonly spec: S;
  readonly file: FilePath;
  /** The file's name without `.md`. */
  readonly id: string;
  readonly body: readonly Passage[];
  /** Where the value at a path of `spec` stands. */
  readonly at: (path: Path) => Place;
  /** The entry whose `in_use` put the value at a path there, where nothing was typed. */
  readonly usualFrom: (path: Path) => string | undefined;
  /** The file that a path typed here leads to. */
  readonly path: (typed: string) => FilePath;
}

/** The entry that a fact stands in. */
export interface InEntry {
  readonly entry: string;
  readonly day: Day;
  /** The assembly that the entry is about, if it is about one. */
  readonly assembly: string | undefined;
  readonly at: (path: Path) => Place;
  readonly usualFrom: (path: Path) => string | undefined;
  readonly path: (typed: string) => FilePath;
  /** A time of that day, or of another; of one that comes twice the earlier or the later. */
  readonly moment: (clock: Clock, which: "earlier" | "later", day?: Day) => Moment | undefined;
  readonly later: Later;
}

/** By whom a departure was accepted, in which entry, on what paper and on what condition. */
export interface Accepted {
  readonly by: string;
  readonly entry: string;
  readonly reference?: string | undefined;
  readonly condition?: string | undefined;
}

/** What the rest of the record says about an entry: who only looks on, and what later entries say about its things. */
export interface Later {
  readonly visitors: ReadonlySet<string>;
  readonly accepted: ReadonlyMap<string, Accepted>;
  readonly closedIn: ReadonlyMap<string, string>;
  /** By the entries that make them. */
  readonly amendments: ReadonlyMap<string, readonly Amendment[]>;
}

/** That of the fact, else of its entry: the checks ask for one or the other. */
export const assemblyIn = (own: string | undefined, { assembly }: InEntry): string => own ?? assembly ?? "";

/** A quantity without what only its reading needed. */
export function quantityOf<T extends Quantity>(measured: T): Quantity {
  return { typed: measured.typed, value: measured.value, unit: measured.unit, step: measured.step };
}

export function maybe<T extends Quantity>(measured: T | undefined): Quantity | undefined {
  return measured && quantityOf(measured);
}

/** Every field of a fact, those that it may lack as well. */
type Every<T> = {
  readonly [K in keyof Required<T>]: object extends Pick<T, K> ? T[K] | undefined : T[K];
};

/** What was noted without what only its reading needed. */
export function notedOf(measured: MeasuredNoted): Noted {
  const { dimension: _, ...noted } = measured;
  return noted;
}

export function maybeNoted(measured: MeasuredNoted | undefined): Noted | undefined {
  return measured && notedOf(measured);
}

/** A fact from all its fields, without the keys that hold nothing. A field that is not stated does not compile. */
export function factOf<T extends object>(fields: Every<T>): T {
  return defined(fields) as T;
}
