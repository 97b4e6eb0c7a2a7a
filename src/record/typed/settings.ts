/** Files that stand for the whole build, from what was read to what may be trusted. */
import type { Filed } from "../filed.ts";
import type { Spec } from "../../facts/kinds.ts";
import { isFault } from "../../facts/reading.ts";
import type { FileIndex } from "../file-index.ts";
import type {
  Adhesive,
  Aircraft,
  Assembly,
  BuildTask,
  Lot,
  MixRatio,
  Person,
  Procedure,
  Quantity,
  Trial,
} from "../../facts/types.ts";
import { defined } from "../../defined.ts";

/** A file in which no problem was found. */
export interface Sound<S> extends Filed<S> {
  readonly spec: S;
}

export function pathOf(fileIndex: FileIndex, from: string, typed: string): string {
  const found = fileIndex.find(from, typed);
  return isFault(found) ? typed : found.value;
}

/** A quantity without what only its reading needed. */
export function quantityOf<T extends Quantity>(measured: T): Quantity {
  return { typed: measured.typed, value: measured.value, unit: measured.unit, step: measured.step };
}

function maybe<T extends Quantity>(measured: T | undefined): Quantity | undefined {
  return measured && quantityOf(measured);
}

export function aircraftOf(filed: Sound<Spec<"aircraft">>, fileIndex: FileIndex): Aircraft {
  const { spec, at, file } = filed;
  const people = spec.people.map((person, index): [string, Person] => [
    person.id,
    defined({
      id: person.id,
      place: at(["people", index]),
      name: person.name,
      publicName: person.public,
      role: person.role,
      audience: person.for ?? "public",
      authority: person.authority,
    }),
  ]);
  const photo =
    spec.photo &&
    defined({
      place: at(["photo"]),
      file: pathOf(fileIndex, file, spec.photo.file),
      alt: spec.photo.alt,
      caption: spec.photo.caption,
      audience: "public" as const,
    });
  return defined({
    place: { file, line: 1, column: 1 },
    name: spec.name,
    type: spec.type,
    units: spec.units,
    timeZone: spec.time_zone,
    start: spec.start,
    targetPerWeek: spec.target?.minutes,
    people: new Map(people),
    tasks: spec.tasks,
    publicShows: spec.public_shows ?? [],
    datum: spec.datum,
    designWeight: maybe(spec.design_weight),
    visit: spec.visit,
    photo,
    body: filed.body,
  });
}

type Credit = NonNullable<NonNullable<Spec<"assembly">["tasks"]>[number]["credit"]>;

function creditOf(credit: Credit | undefined): BuildTask["credit"] {
  const tenths = (part: Credit["maker"]): number => part?.tenths ?? 0;
  return (
    credit && {
      maker: tenths(credit.maker),
      paid: tenths(credit.paid),
      assembly: tenths(credit.assembly),
      fabrication: tenths(credit.fabrication),
    }
  );
}

export function assemblyOf(filed: Sound<Spec<"assembly">>, fileIndex: FileIndex): Assembly {
  const { spec, at, file, id } = filed;
  return defined({
    id,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    parent: spec.parent,
    planned: spec.planned?.minutes,
    finished: spec.finished,
    drawing: spec.drawing && { file: pathOf(fileIndex, file, spec.drawing.file), alt: spec.drawing.alt },
    joints: (spec.joints ?? []).map((joint, index) =>
      defined({
        id: joint.id,
        place: at(["joints", index]),
        title: joint.title,
        assembly: id,
        at: joint.at && { x: joint.at.x.value, y: joint.at.y.value },
        area: maybe(joint.area),
        drawing: joint.drawing,
      }),
    ),
    holdPoints: (spec.hold_points ?? []).map((point, index) =>
      defined({
        id: point.id,
        place: at(["hold_points", index]),
        title: point.title,
        kind: point.kind,
        assembly: id,
        joints: point.joints,
      }),
    ),
    tasks: (spec.tasks ?? []).map(
      (task, index): BuildTask =>
        defined({
          id: task.id,
          place: at(["tasks", index]),
          title: task.title,
          assembly: id,
          credit: task.applicable === "no" ? undefined : creditOf(task.credit),
        }),
    ),
    body: filed.body,
  });
}

export function adhesiveOf(filed: Sound<Spec<"adhesive">>, fileIndex: FileIndex): Adhesive {
  const { spec, file, id } = filed;
  const ratio = (mix: { ratio: MixRatio; tolerance?: Quantity | undefined } | undefined): MixRatio | undefined =>
    mix && defined({ ...mix.ratio, tolerance: maybe(mix.tolerance) });
  return defined({
    id,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    sheet: spec.sheet,
    sheetFile: spec.sheet_file === undefined ? undefined : pathOf(fileIndex, file, spec.sheet_file),
    byMass: ratio(spec.by_mass),
    byVolume: ratio(spec.by_volume),
    density: spec.density && { resin: quantityOf(spec.density.resin), hardener: quantityOf(spec.density.hardener) },
    workingLife: (spec.working_life ?? []).map((row) => ({
      temperature: quantityOf(row.temperature),
      mass: quantityOf(row.mass),
      time: quantityOf(row.time),
    })),
    temperature: spec.temperature,
    humidity: spec.humidity,
    cure: (spec.cure ?? []).map((row) => ({ temperature: quantityOf(row.temperature), time: quantityOf(row.time) })),
    shelfLife: maybe(spec.shelf_life),
    woodMoisture: spec.wood_moisture,
    spread: maybe(spec.spread),
    body: filed.body,
  });
}

export function procedureOf({ spec, file, id, body }: Sound<Spec<"procedure">>): Procedure {
  return defined({
    id,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    form: spec.form,
    overlap: spec.overlap,
    pieces: spec.pieces,
    leastCure:
      spec.least_cure &&
      defined({ time: quantityOf(spec.least_cure.time), temperature: maybe(spec.least_cure.temperature) }),
    leastTemperature: maybe(spec.least_temperature),
    woodFailure: maybe(spec.wood_failure),
    stress: maybe(spec.stress),
    wood: spec.wood && { crushing: quantityOf(spec.wood.crushing), shear: quantityOf(spec.wood.shear) },
    body,
  });
}

export function lotOf({ spec, file, id, body }: Sound<Spec<"lot">>, fileIndex: FileIndex): Lot {
  return defined({
    id,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    material: spec.material,
    adhesive: spec.adhesive,
    number: spec.number,
    supplier: spec.supplier,
    received: spec.received,
    expiry: spec.expiry,
    certificate: spec.certificate === undefined ? undefined : pathOf(fileIndex, file, spec.certificate),
    amount: maybe(spec.amount),
    species: spec.species,
    moisture: maybe(spec.moisture),
    grainSlope: spec.grain_slope,
    rings: maybe(spec.rings),
    density: maybe(spec.density),
    audience: spec.for ?? "public",
    body,
  });
}

export function trialOf({ spec, file, id, body }: Sound<Spec<"trial">>): Trial {
  return {
    id,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    question: spec.question,
    stated: spec.stated,
    expectation: spec.expectation,
    preparations: spec.preparations,
    audience: spec.for ?? "public",
    body,
  };
}
