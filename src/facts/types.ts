/**
 * The record once it has been read and found without problems. Everything here may be trusted:
 * ids resolve, files exist, dates are real, quantities carry units. What the builder typed is kept.
 */
import type { Adhesive } from "./build/adhesive.ts";
import type { Aircraft } from "./build/aircraft.ts";
import type { Assembly } from "./build/assembly.ts";
import type { ClimateLog } from "./build/climate-log.ts";
import type { EarlierHours } from "./build/earlier-hours.ts";
import type { Finish } from "./build/finish.ts";
import type { Lot } from "./build/lot.ts";
import type { Procedure } from "./build/procedure.ts";
import type { Trial } from "./build/trial.ts";
import type { Entry } from "./entry/entry.ts";
import type { Day } from "./values.ts";

export type { Adhesive } from "./build/adhesive.ts";
export type { Aircraft } from "./build/aircraft.ts";
export type { Assembly } from "./build/assembly.ts";
export type { BuildTask } from "./build/build-task.ts";
export type { ClimateLog } from "./build/climate-log.ts";
export type { EarlierHours, EarlierLine } from "./build/earlier-hours.ts";
export type { Finish, FinishKind } from "./build/finish.ts";
export type { HoldKind, HoldPoint } from "./build/hold-point.ts";
export type { JointSpec } from "./build/joint.ts";
export type { Lot, Material } from "./build/lot.ts";
export type { Person } from "./build/person.ts";
export type { PlannedCoat } from "./build/planned-coat.ts";
export type { Procedure } from "./build/procedure.ts";
export type { Preparation, Trial } from "./build/trial.ts";
export type { Amendment, Change, Said } from "./entry/amendment.ts";
export type { Clip } from "./entry/clip.ts";
export type { Entry } from "./entry/entry.ts";
export type { Photo } from "./entry/photo.ts";
export type { Batch } from "./glue/batch.ts";
export type { Component } from "./glue/component.ts";
export type { Cut } from "./glue/cut.ts";
export type { Remainder } from "./glue/remainder.ts";
export type { ByDefault } from "./glue/by-default.ts";
export type { Ask, Asks } from "./glue/asks.ts";
export type { GlueUp } from "./glue/glue-up.ts";
export type { InUse } from "./glue/in-use.ts";
export type { Method } from "./glue/method.ts";
export type { Piece } from "./glue/piece.ts";
export type { PostCure } from "./glue/post-cure.ts";
export type { Recall } from "./glue/recall.ts";
export type { Rejection } from "./glue/rejection.ts";
export type { Rework } from "./glue/rework.ts";
export type { Stage } from "./glue/stage.ts";
export type { FailureMode, PieceTest } from "./glue/test.ts";
export type * from "./values.ts";
export type { Coat } from "./work/coat.ts";
export type { Departure } from "./work/departure.ts";
export type { Fitting } from "./work/fitting.ts";
export type { HoursLine } from "./work/hours.ts";
export type { Inspection } from "./work/inspection.ts";
export type { Measurement, Side } from "./work/measurement.ts";
export type { OpenItem } from "./work/open-item.ts";
export type { OnScales } from "./work/scales.ts";
export type { Thermometer } from "./work/thermometer.ts";
export type { Weighing } from "./work/weighing.ts";

export interface Record {
  readonly aircraft: Aircraft;
  readonly assemblies: ReadonlyMap<string, Assembly>;
  readonly adhesives: ReadonlyMap<string, Adhesive>;
  readonly finishes: ReadonlyMap<string, Finish>;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly lots: ReadonlyMap<string, Lot>;
  readonly trials: ReadonlyMap<string, Trial>;
  /** By day, then by file name. */
  readonly entries: readonly Entry[];
  /** Logger files, by their first reading. */
  readonly climate: readonly ClimateLog[];
  /** Tables of hours from before the record was kept, by their names. */
  readonly earlier: readonly EarlierHours[];
  /** The date of the record: that of its last entry, or the one given. */
  readonly day: Day;
  /** As it stood before amendments that no second person saw: evidence looks at it, an edition never holds it. */
  readonly before?: readonly Record[];
}
