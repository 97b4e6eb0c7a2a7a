/**
 * What the page at the bench is given of a record. Each kind of fact states which of its fields go with it: no full
 * name, supplier, certificate, cost, prose or picture, and no evidence of joints that are glued.
 */
import type {
  Adhesive,
  Assembly,
  Batch,
  ClimateLog,
  Day,
  Entry,
  JointSpec,
  Lot,
  Person,
  Piece,
  Procedure,
  Recall,
  Thermometer,
} from "../facts/types.ts";
import type { NextByLetter } from "../desk/entry/next-id.ts";
import type { AdhesivePart, LotPart } from "../facts/build/adhesive-kind.ts";

export const ADHESIVE = [
  "id",
  "title",
  "kind",
  "sheet",
  "byMass",
  "byVolume",
  "density",
  "workingLife",
  "temperature",
  "humidity",
  "cure",
  "service",
  "postCure",
  "storage",
  "shelfLife",
  "woodMoisture",
  "spread",
  "asks",
] as const satisfies readonly (keyof Adhesive)[];

export const LOT = [
  "id",
  "title",
  "material",
  "adhesive",
  "received",
  "expiry",
  "species",
  "thickness",
  "moisture",
  "grainSlope",
  "rings",
  "density",
  "asked",
  "audience",
] as const satisfies readonly (keyof Lot)[];

export const PROCEDURE = [
  "id",
  "title",
  "form",
  "overlap",
  "pieces",
  "leastCure",
  "leastTemperature",
  "woodFailure",
  "facePlyCounts",
  "stress",
  "wood",
] as const satisfies readonly (keyof Procedure)[];

export const JOINT = [
  "id",
  "title",
  "assembly",
  "area",
  "structure",
  "asks",
] as const satisfies readonly (keyof JointSpec)[];
export const PERSON = ["id", "publicName", "role"] as const satisfies readonly (keyof Person)[];
export const RECALL = ["entry", "day", "lot"] as const satisfies readonly (keyof Recall)[];
export const THERMOMETER = [
  "entry",
  "from",
  "to",
  "least",
  "greatest",
] as const satisfies readonly (keyof Thermometer)[];
export const ENTRY = ["id", "day", "dayStart", "dayEnd"] as const satisfies readonly (keyof Entry)[];

/** Of a batch with pieces that wait to be broken: what their cure and their wood are judged by, and nothing of its joints. */
export const WAITING = [
  "id",
  "entry",
  "day",
  "adhesive",
  "mixed",
  "closed",
  "temperature",
  "timber",
] as const satisfies readonly (keyof Batch)[];

export const PIECE = [
  "id",
  "batch",
  "procedure",
  "lot",
  "legs",
  "scraps",
  "glued",
  "thickness",
  "width",
  "overlap",
  "trial",
  "preparation",
] as const satisfies readonly (keyof Piece)[];

export type Given<T, K extends readonly (keyof T)[]> = Pick<T, K[number]>;

/** How a cup of an adhesive was mixed last: tins, scale, and how much of each part, as typed. */
export interface Tins {
  readonly adhesive: string;
  readonly lots: { readonly [part in LotPart]?: string };
  readonly scale?: string;
  readonly amounts: { readonly [part in AdhesivePart]?: string };
}

/** Sizes of pieces as they were cut last, as typed. */
export interface Sizes {
  readonly thickness?: string;
  readonly width?: string;
  readonly overlap?: string;
}

/** Of a phone at the bench; empty for the first. */
export type Letter = keyof NextByLetter;

/** A piece that waits to be broken: from when on it may be, s since 1970-01-01T00:00Z. */
export interface Due {
  readonly piece: string;
  readonly assembly?: string;
  readonly from: number;
  /** Whether no temperature is known by which it has cured, so that broken it may prove nothing. */
  readonly byDaysAlone: boolean;
}

export interface GivenBatch extends Given<Batch, typeof WAITING> {
  readonly pieces: readonly Given<Piece, typeof PIECE>[];
  /** Only where a piece was glued at a time of its own, which is held against the cup's working life. */
  readonly parts?: Pick<Batch, AdhesivePart>;
}

export interface GivenEntry extends Given<Entry, typeof ENTRY> {
  readonly batches: readonly GivenBatch[];
  readonly thermometer: readonly Given<Thermometer, typeof THERMOMETER>[];
  readonly recalls: readonly Given<Recall, typeof RECALL>[];
}

/** What stands by amendments that no second person saw, so that what stood before them is reckoned too. */
export interface Unseconded {
  /** Days of the entries that amend. */
  readonly days: readonly Day[];
  /** Each as `Snapshot.entries`, where it is another. */
  readonly before: readonly (readonly GivenEntry[])[];
}

/** Readings of a logger; null where one was missing. */
export interface GivenLog extends Pick<ClimateLog, "id" | "gap" | "gapIsDefault"> {
  readonly times: readonly number[];
  readonly temperatures: readonly (number | null)[];
  readonly humidities: readonly (number | null)[];
}

export interface Snapshot {
  /** The date of the record, and when the page was made of it, s since 1970-01-01T00:00Z. */
  readonly day: Day;
  readonly made: number;
  readonly start: Day;
  readonly units: "metric" | "imperial";
  readonly timeZone: string;
  readonly tasks: readonly string[];
  readonly people: readonly Given<Person, typeof PERSON>[];
  readonly adhesives: readonly Given<Adhesive, typeof ADHESIVE>[];
  readonly lots: readonly Given<Lot, typeof LOT>[];
  readonly procedures: readonly Given<Procedure, typeof PROCEDURE>[];
  readonly assemblies: readonly (Pick<Assembly, "id" | "title"> & {
    readonly joints: readonly Given<JointSpec, typeof JOINT>[];
  })[];
  readonly entries: readonly GivenEntry[];
  readonly unseconded?: Unseconded;
  readonly climate: readonly GivenLog[];
  /** What is not this page's to write: joints that are glued in stages, by their ids. */
  readonly staged: readonly string[];
  readonly due: readonly Due[];
  readonly nextBatch: string;
  /** For phones with a letter of their own. */
  readonly nextByLetter: NextByLetter;
  readonly tins: readonly Tins[];
  /** As noted for the last batch, as typed. */
  readonly readings: { readonly temperature?: string; readonly humidity?: string; readonly moisture?: string };
  readonly sizes: { readonly [procedure: string]: Sizes };
  /** Of the last test by each procedure, as typed. */
  readonly loads: { readonly [procedure: string]: string };
  /** Wood of the last batch. */
  readonly timber: readonly string[];
  readonly task: { readonly gluing?: string; readonly breaking?: string };
}
