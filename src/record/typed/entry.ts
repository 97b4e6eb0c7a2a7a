/** An entry, from what was read to what may be trusted. */
import type { Spec } from "../../facts/kinds.ts";
import type { FileIndex } from "../file-index.ts";
import type { Zone } from "../../facts/time/zone.ts";
import type {
  Amendment,
  Batch,
  Clip,
  Component,
  Departure,
  Entry,
  Inspection,
  Measurement,
  OnScales,
  OpenItem,
  Photo,
  Piece,
  PieceTest,
  Quantity,
  Weighing,
} from "../../facts/types.ts";
import { defined } from "../../defined.ts";
import { pathOf, quantityOf, type Sound } from "./settings.ts";

type EntrySpec = Spec<"entry">;
type Items<K extends keyof EntrySpec> = NonNullable<EntrySpec[K]> extends readonly (infer T)[] ? T : never;
type BatchSpec = Items<"batches">;

/** What later entries say about things of earlier ones. */
export interface Later {
  readonly accepted: ReadonlyMap<string, { readonly by: string; readonly entry: string }>;
  readonly closedIn: ReadonlyMap<string, string>;
  /** By the entries that make them. */
  readonly amendments: ReadonlyMap<string, readonly Amendment[]>;
}

export class EntryTyper {
  readonly #filed: Sound<EntrySpec>;
  readonly #fileIndex: FileIndex;
  readonly #zone: Zone;
  readonly #later: Later;

  constructor(filed: Sound<EntrySpec>, fileIndex: FileIndex, zone: Zone, later: Later) {
    this.#filed = filed;
    this.#fileIndex = fileIndex;
    this.#zone = zone;
    this.#later = later;
  }

  entry(): Entry {
    const { spec, file, id, at, body } = this.#filed;
    const scales = spec.scales && this.#scales(spec.scales);
    const day = spec.date;
    const noted = <T extends object>(key: "recalls" | "reworks" | "rejects", list: readonly T[] | undefined) =>
      (list ?? []).map((item, index) => defined({ place: at([key, index]), entry: id, day, ...item }));
    return {
      id,
      place: { file, line: 1, column: 1 },
      file,
      day,
      dayStart: this.#zone.start(day),
      dayEnd: this.#zone.end(day),
      title: spec.title,
      assembly: spec.assembly,
      audience: spec.for ?? "public",
      hours: (spec.hours ?? []).map((line, index) => ({
        place: at(["hours", index]),
        who: line.who,
        task: line.task,
        minutes: line.time.minutes,
        typed: line.time.typed,
        assembly: line.assembly ?? spec.assembly,
      })),
      cuts: (spec.cut ?? []).map(({ lot, amount }, index) => ({
        place: at(["cut", index]),
        entry: id,
        day,
        lot,
        amount: quantityOf(amount),
      })),
      batches: (spec.batches ?? []).map((batch, index) => this.#batch(batch, index)),
      tests: (spec.tests ?? []).map((test, index) => this.#test(test, index)),
      measurements: (spec.measurements ?? []).map((line, index) => this.#measurement(line, index)),
      weighed: (spec.weighed ?? []).map((line, index) => this.#weighing(line, index)),
      ...(scales && { scales }),
      departures: (spec.departures ?? []).map((item, index) => this.#departure(item, index)),
      raised: (spec.open_items?.raise ?? []).map(
        (item, index): OpenItem =>
          defined({
            id: item.id,
            place: at(["open_items", "raise", index]),
            entry: id,
            day,
            assembly: item.assembly ?? spec.assembly,
            what: item.what,
            before: item.before,
            closedIn: this.#later.closedIn.get(item.id),
            audience: item.for ?? "public",
          }),
      ),
      closed: spec.open_items?.close ?? [],
      photos: (spec.photos ?? []).map(
        (photo, index): Photo =>
          defined({
            place: at(["photos", index]),
            file: this.#path(photo.file),
            alt: photo.alt,
            caption: photo.caption,
            audience: photo.for ?? "public",
          }),
      ),
      clips: (spec.clips ?? []).map((clip, index) => this.#clip(clip, index)),
      attachments: (spec.attachments ?? []).map((item, index) => ({
        place: at(["attachments", index]),
        file: this.#path(item.file),
        title: item.title,
        audience: item.for ?? "public",
      })),
      recalls: noted("recalls", spec.recalls),
      reworks: noted("reworks", spec.reworks),
      rejections: noted("rejects", spec.rejects),
      inspections: (spec.inspections ?? []).map((item, index) => this.#inspection(item, index)),
      amendments: this.#later.amendments.get(id) ?? [],
      body,
    };
  }

  #path(typed: string): string {
    return pathOf(this.#fileIndex, this.#filed.file, typed);
  }

  #clip(spec: Items<"clips">, index: number): Clip {
    const { file, poster, alt, caption } = spec;
    return defined({
      place: this.#filed.at(["clips", index]),
      file: this.#path(file),
      poster: this.#path(poster),
      alt,
      caption,
      audience: spec.for ?? "public",
    });
  }

  #batch(spec: BatchSpec, index: number): Batch {
    const { id: entry, at } = this.#filed;
    const day = this.#filed.spec.date;
    const path = ["batches", index];
    return defined({
      id: spec.id,
      place: at(path),
      entry,
      day,
      adhesive: spec.adhesive,
      resin: component(spec.resin),
      hardener: component(spec.hardener),
      scale: maybe(spec.scale),
      mixed: spec.mixed && this.#zone.moment(day, spec.mixed, "earlier"),
      closed: spec.closed && this.#zone.moment(day, spec.closed, "later"),
      temperature: maybe(spec.shop?.temperature),
      humidity: maybe(spec.shop?.humidity),
      surface: maybe(spec.shop?.surface),
      moisture: maybe(spec.moisture),
      joints: spec.joints ?? [],
      timber: spec.timber ?? [],
      pieces: (spec.pieces ?? []).map(
        (piece, number): Piece =>
          defined({
            id: piece.id,
            place: at([...path, "pieces", number]),
            batch: spec.id,
            procedure: piece.procedure,
            lot: piece.lot,
            thickness: maybe(piece.thickness),
            width: maybe(piece.width),
            overlap: maybe(piece.overlap),
            trial: piece.trial,
            preparation: piece.preparation,
          }),
      ),
    });
  }

  #test(spec: Items<"tests">, index: number): PieceTest {
    const day = this.#filed.spec.date;
    return defined({
      place: this.#filed.at(["tests", index]),
      entry: this.#filed.id,
      day,
      piece: spec.piece,
      at: spec.at && this.#zone.moment(day, spec.at, "earlier"),
      failure: spec.failure,
      woodFailure: maybe(spec.wood_failure),
      load: maybe(spec.load),
      photo: spec.photo === undefined ? undefined : this.#path(spec.photo),
      witness: spec.witness,
      note: spec.note,
    });
  }

  #measurement(spec: Items<"measurements">, index: number): Measurement {
    return defined({
      place: this.#filed.at(["measurements", index]),
      entry: this.#filed.id,
      what: spec.what,
      assembly: spec.assembly ?? this.#filed.spec.assembly,
      dimension: spec.found.dimension,
      drawing: maybe(spec.drawing?.nominal),
      limits: spec.drawing?.limits,
      tolerance: spec.tolerance && {
        typed: spec.tolerance.typed,
        minus: spec.tolerance.minus,
        plus: spec.tolerance.plus,
      },
      found: quantityOf(spec.found),
      pair: spec.pair,
      side: spec.side,
      pairTolerance: maybe(spec.pair_tolerance),
      departure: spec.departure,
    });
  }

  #weighing(spec: Items<"weighed">, index: number): Weighing {
    return defined({
      place: this.#filed.at(["weighed", index]),
      entry: this.#filed.id,
      day: this.#filed.spec.date,
      assembly: spec.assembly ?? this.#filed.spec.assembly,
      part: spec.part,
      mass: quantityOf(spec.mass),
      arm: maybe(spec.arm),
      insteadOf: spec.instead_of ?? [],
    });
  }

  #scales(spec: NonNullable<EntrySpec["scales"]>): OnScales | undefined {
    const third = spec.nose ?? spec.tail;
    return (
      third &&
      defined({
        place: this.#filed.at(["scales"]),
        entry: this.#filed.id,
        day: this.#filed.spec.date,
        what: spec.what,
        left: quantityOf(spec.left),
        right: quantityOf(spec.right),
        third: quantityOf(third),
        at: spec.nose === undefined ? ("tail" as const) : ("nose" as const),
        mains: quantityOf(spec.mains),
        wheelbase: quantityOf(spec.wheelbase),
      })
    );
  }

  #departure(spec: Items<"departures">, index: number): Departure {
    const { id: entry, at } = this.#filed;
    const accepted =
      spec.accepted_by === undefined ? this.#later.accepted.get(spec.id) : { by: spec.accepted_by, entry };
    return defined({
      id: spec.id,
      place: at(["departures", index]),
      entry,
      day: this.#filed.spec.date,
      assembly: spec.assembly ?? this.#filed.spec.assembly,
      what: spec.what,
      why: spec.why,
      acceptedBy: accepted?.by,
      acceptedIn: accepted?.entry,
      audience: spec.for ?? "public",
    });
  }

  #inspection(spec: Items<"inspections">, index: number): Inspection {
    return defined({
      place: this.#filed.at(["inspections", index]),
      entry: this.#filed.id,
      day: this.#filed.spec.date,
      holdPoint: spec.hold_point,
      by: spec.by,
      result: spec.result,
      reference: spec.reference,
      scan: spec.scan === undefined ? undefined : this.#path(spec.scan),
      remarks: spec.remarks,
    });
  }
}

function maybe<T extends Quantity>(measured: T | undefined): Quantity | undefined {
  return measured && quantityOf(measured);
}

function component(spec: BatchSpec["resin"]): Component | undefined {
  return spec && defined({ lot: spec.lot, mass: maybe(spec.mass), volume: maybe(spec.volume) });
}
