/** Which facts of an entry can be amended, and by what each is found. */
import type { Kind } from "../../facts/types.ts";
import type { Path } from "../text/yaml.ts";

/** A list whose facts are found by their keys. */
export interface Keyed {
  readonly path: Path;
  /** The first always tells which; the others where the first alone would fit several. */
  readonly keys: readonly [string, ...string[]];
  /** What the first key is the id of, if it is one. */
  readonly kind?: Kind;
  /** Whether the fact has an id that other files may lead to: then it is never struck out as a whole. */
  readonly named: boolean;
  /** The fact in words, with the first key after them. */
  readonly word: string;
}

export const PIECES: Keyed = { path: ["pieces"], keys: ["id"], kind: "piece", named: true, word: "Piece" };

const BATCHES: Keyed = { path: ["batches"], keys: ["id"], kind: "batch", named: true, word: "Batch" };
const TESTS: Keyed = { path: ["tests"], keys: ["piece"], kind: "piece", named: false, word: "Test of" };

/** Facts of which much depends on the day: they are told one by one where it is amended. */
export const OF_THE_DAY = [BATCHES, TESTS] as const;

export const KEYED: readonly Keyed[] = [
  BATCHES,
  TESTS,
  { path: ["cut"], keys: ["lot"], kind: "lot", named: false, word: "Cut from lot" },
  { path: ["measurements"], keys: ["what", "assembly", "side"], named: false, word: "Measurement:" },
  { path: ["weighed"], keys: ["part", "assembly"], named: false, word: "Weighing:" },
  { path: ["departures"], keys: ["id"], kind: "departure", named: true, word: "Departure" },
  { path: ["accepts"], keys: ["departure"], kind: "departure", named: false, word: "Acceptance of" },
  { path: ["open_items", "raise"], keys: ["id"], kind: "open item", named: true, word: "Open item" },
  { path: ["recalls"], keys: ["lot"], kind: "lot", named: false, word: "Recall of lot" },
  { path: ["rejects"], keys: ["batch"], kind: "batch", named: false, word: "Rejection of" },
  { path: ["inspections"], keys: ["hold_point"], kind: "hold point", named: false, word: "Inspection of" },
];

/** Lists without ids, which are stated anew as a whole. */
export const ANEW: readonly { readonly path: Path; readonly word: string }[] = [
  { path: ["hours"], word: "Hours" },
  { path: ["open_items", "close"], word: "Open items closed" },
  { path: ["reworks"], word: "Joints opened" },
];

/** The day of all that an entry holds. */
export const DATE: Path = ["date"];

/** What is found by itself. */
export const SCALES: Path = ["scales"];
