/**
 * An amendment that no second person saw, or of the wood of a piece that had been broken, may worsen a verdict, and
 * never better it. Of a thing the worst verdict counts that it has with what stands now or with what stood before
 * such an amendment.
 */
import { isSeconded } from "../facts/entry/amendment.ts";
import type { Amendment, Departure, Person, Record, Ref } from "../facts/types.ts";
import type { Place } from "../problem.ts";
import type { Stands } from "./codes/joints.ts";
import { distinct, finder } from "./finding.ts";
import { BATCH, COAT, DEPARTURE, gravest, HOLD, JOINT, MEASURE, PAIR, PIECE } from "./gravity.ts";
import { indexBy } from "./record-index.ts";
import type {
  AssemblyFile,
  BatchFile,
  BatchVerdict,
  CoatFile,
  Evidence,
  Finding,
  HoldPointFile,
  JointFile,
  JointState,
  MeasurementFile,
  PairFile,
  PieceFile,
  Severity,
  Standing,
} from "./types.ts";

/** Where a thing that has no id was typed first: that stays, whatever of it is amended. */
const placeOf = ({ file, line, column }: Place): string => `${file} ${line} ${column}`;

/** Evidence of the record as it stood before, and what of it has no id by the places that it stands at. */
interface Before {
  readonly evidence: Evidence;
  readonly coats: ReadonlyMap<string, CoatFile>;
  readonly measurements: ReadonlyMap<string, MeasurementFile>;
  readonly pairs: ReadonlyMap<string, readonly PairFile[]>;
}

function beforeOf(evidence: Evidence): Before {
  const measurements = [...evidence.assemblies.values()].flatMap((file) => file.measurements);
  return {
    evidence,
    coats: new Map(evidence.coats.map((file) => [placeOf(file.coat.place), file])),
    measurements: new Map(measurements.map((file) => [placeOf(file.measurement.place), file])),
    pairs: indexBy([...evidence.pairs.values()], namesOfPair),
  };
}

/** It may be another pair's measurement that was amended into this one. */
const namesOfPair = ({ id, now, before }: PairFile): string[] => [
  id,
  ...[...now, ...before].map(({ place }) => placeOf(place)),
];

const FORCES: { readonly [state in BatchVerdict | JointState]: Severity } = {
  rejected: "rejects",
  quarantined: "rejects",
  "not shown": "unproven",
  opened: "waits",
  "not glued": "waits",
  pending: "waits",
  "in no joint": "caution",
  "thrown away": "caution",
  shown: "caution",
};

/** Holds each file against those of the record as it stood before. */
export class Seconded {
  readonly #before: readonly Before[];
  readonly #amendments: readonly Amendment[];
  readonly #people: readonly Person[];

  constructor(record: Record, before: readonly Evidence[]) {
    this.#before = before.map(beforeOf);
    this.#people = [...record.aircraft.people.values()];
    this.#amendments = record.entries
      .flatMap((entry) => entry.amendments)
      .filter((one) => one.changes.length > 0 && !isSeconded(one, this.#people));
  }

  piece(file: PieceFile): PieceFile {
    const { id } = file.piece;
    const verdict = gravest(
      PIECE,
      file.verdict,
      this.#of(({ evidence }) => evidence.pieces.get(id)?.verdict),
    );
    if (verdict === file.verdict) return file;
    const severity = verdict === "fail" ? "rejects" : "unproven";
    const found = this.#finding({ kind: "piece", id }, severity, file.verdict, verdict, [id, file.piece.batch]);
    return { ...file, verdict, findings: [...file.findings, found] };
  }

  batch(file: BatchFile): BatchFile {
    const { id, pieces } = file.batch;
    const verdict = gravest(
      BATCH,
      file.verdict,
      this.#of(({ evidence }) => evidence.batches.get(id)?.verdict),
    );
    if (verdict === file.verdict) return file;
    const names = [id, ...pieces.map((piece) => piece.id)];
    const found = this.#finding({ kind: "batch", id }, FORCES[verdict], file.verdict, verdict, names);
    return { ...file, verdict, findings: [...file.findings, found] };
  }

  joint(file: JointFile): JointFile {
    const { id } = file.joint;
    const before = this.#of(({ evidence }) => evidence.joints.get(id));
    const state = gravest(
      JOINT,
      file.state,
      before.map((one) => one.state),
    );
    if (state === file.state) return file;
    const names = [file, ...before].flatMap(({ batches, superseded }) => [...batches, ...superseded]);
    const found = this.#finding({ kind: "joint", id }, FORCES[state], file.state, state, names);
    return { ...file, state, findings: [...file.findings, found] };
  }

  coat(file: CoatFile): CoatFile {
    const before = this.#of(({ coats }) => coats.get(placeOf(file.coat.place)));
    const verdict = gravest(
      COAT,
      file.verdict,
      before.map((one) => one.verdict),
    );
    if (verdict === file.verdict) return file;
    const about: Ref = { kind: "entry", id: file.coat.entry };
    const found = this.#finding(about, FORCES[verdict], file.verdict, verdict, [file.coat.entry]);
    return { ...file, verdict, findings: [...file.findings, found] };
  }

  #measurement(file: MeasurementFile): MeasurementFile {
    const before = this.#of(({ measurements }) => measurements.get(placeOf(file.measurement.place)));
    const verdict = gravest(
      MEASURE,
      file.verdict,
      before.map((one) => one.verdict),
    );
    const isMended =
      file.again === undefined || before.every((one) => one.verdict !== "out" || one.again !== undefined);
    if (verdict === file.verdict && isMended) return file;
    const { again: _, ...rest } = file;
    return { ...rest, verdict, stands: this.#entries() };
  }

  assembly(file: AssemblyFile): AssemblyFile {
    return { ...file, measurements: file.measurements.map((one) => this.#measurement(one)) };
  }

  pair(file: PairFile): PairFile {
    const before = this.#before.flatMap(({ pairs }) => namesOfPair(file).flatMap((name) => pairs.get(name) ?? []));
    const verdict = gravest(
      PAIR,
      file.verdict,
      before.map((one) => one.verdict),
    );
    return verdict === file.verdict ? file : { ...file, verdict, stands: this.#entries() };
  }

  departure({ id }: Departure, now: Standing): Standing {
    return gravest(
      DEPARTURE,
      now,
      this.#of(({ evidence }) => evidence.standings.get(id)),
    );
  }

  holdPoint(file: HoldPointFile): HoldPointFile {
    const { id } = file.holdPoint;
    const state = gravest(
      HOLD,
      file.state,
      this.#of(({ evidence }) => evidence.holdPoints.get(id)?.state),
    );
    if (state === file.state) return file;
    const about: Ref = { kind: "hold point", id };
    const need = {
      about,
      code: "need/seconded",
      values: this.#values(this.#amendments, file.state, state),
      takes: { code: "take/second", values: {} },
      blocks: state === "blocked" || state === "reopened",
      restsOn: distinct([about, ...this.#amendments.flatMap(restsOn)]),
    } as const;
    return { ...file, state, needs: [...file.needs, need] };
  }

  #entries(): string[] {
    return [...new Set(this.#amendments.map(({ by }) => by))];
  }

  #of<T>(get: (before: Before) => T | undefined): T[] {
    return this.#before.flatMap((before) => get(before) ?? []);
  }

  /** Names the amendments of those things; where none is of them directly, all. */
  #finding(about: Ref, severity: Severity, as: string, stands: string, names: readonly string[]): Finding {
    const own = this.#amendments.filter(({ changes }) => changes.some((change) => names.includes(change.about.id)));
    const amendments = own.length > 0 ? own : this.#amendments;
    const alsoOn = amendments.flatMap(restsOn);
    return finder(about, [])("seconded/stands", severity, this.#values(amendments, as, stands), { alsoOn });
  }

  #values(amendments: readonly Amendment[], as: string, stands: string): Stands {
    const broken = amendments.every(({ seenBy }) => isSeconded({ seenBy, changes: [] }, this.#people));
    return { as, stands, entries: [...new Set(amendments.map(({ by }) => by))], broken };
  }
}

const restsOn = ({ entry, by, changes }: Amendment): Ref[] => [
  { kind: "entry", id: entry },
  { kind: "entry", id: by },
  ...changes.flatMap(({ needs }) => needs),
];
