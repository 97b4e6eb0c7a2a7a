/** Whether work may go on past a hold point, and what it still needs, as a list that can be worked down. */
import type { Assembly, Departure, HoldPoint, Inspection } from "../../facts/types.ts";
import { amendedValues, restsOnChange } from "../amended.ts";
import { distinct } from "../finding.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import { amendedIn, changesSince, type Scope } from "./sign-off.ts";
import type {
  BatchFile,
  Change,
  CoatFile,
  HoldPointFile,
  HoldState,
  JointFile,
  Need,
  PairFile,
  Remark,
} from "../types.ts";
import { flownNeed, isAskedByReturn } from "./in-service.ts";
import { stoodIn } from "../lots/fitted.ts";
import { coatNeeds } from "./coats.ts";
import { fittedNeed } from "./fitted.ts";
import { lastLook, type Looks, looksOf } from "./looks.ts";
import * as need from "./needs.ts";
import { type Opening, openThen } from "./open-then.ts";
import { insideOf, jointsOf, openItemsOf, othersWithin } from "./order.ts";

interface Known {
  readonly joints: ReadonlyMap<string, JointFile>;
  readonly batches: ReadonlyMap<string, BatchFile>;
  readonly pairs: ReadonlyMap<string, PairFile>;
  readonly coats: readonly CoatFile[];
}

/** Each after those that it stands on, given back in the order of the record. */
export function holdPointFiles(index: RecordIndex, known: Known): Map<string, HoldPointFile> {
  const points = [...index.holdPoints.values()];
  const looks = new Map(
    points.map((point) => [point.id, looksOf(index, point, new Set(insideOf(index, point).map(({ id }) => id)))]),
  );
  const made = new Map<string, HoldPointFile>();
  const fileOf = (point: HoldPoint): HoldPointFile => {
    const file = made.get(point.id) ?? holdPointFile(index, point, { ...known, looks, fileOf });
    made.set(point.id, file);
    return file;
  };
  return new Map(points.map((point) => [point.id, fileOf(point)]));
}

interface Others {
  readonly looks: ReadonlyMap<string, Looks>;
  readonly fileOf: (point: HoldPoint) => HoldPointFile;
}

function holdPointFile(index: RecordIndex, holdPoint: HoldPoint, known: Known & Others): HoldPointFile {
  const inside = insideOf(index, holdPoint);
  const joints = jointsOf(holdPoint, inside);
  const looks = lookUp(known.looks, holdPoint.id);
  const last = lastLook(index, looks);
  const signed = last?.result === "signed" ? last : undefined;
  const scope = scopeOf(index, holdPoint, inside, { ...known, asked: joints });
  const { earlier, others } = othersWithin(index, holdPoint, inside);
  const first = earlier
    .map((point) => ({ file: known.fileOf(point), looks: lookUp(known.looks, point.id) }))
    .filter(({ file }) => !isAskedByReturn(index, holdPoint, file));
  const changes = signed ? changesSince(index, signed, scope) : [];
  const then = signed ? openThen(index, signed, scope, first) : [];
  const now = [
    ...needsNow(index, scope),
    ...coatNeeds(index, scope.coated, signed && orderOf(index, signed.entry)),
    ...first.flatMap(({ file }) => need.holdPointNeed(file)),
    ...others.flatMap((point) => need.withinNeed(lastLook(index, lookUp(known.looks, point.id)))),
    ...need.inspectionNeed(last),
    ...flownNeed(index, holdPoint, looks),
  ];
  const state = signed ? signedState(then, changes, now) : openState(now);
  const again = signed ? againNeeds(signed, state, then) : [];
  const needs = [...now, ...again, ...looks.needs];
  const remarks = amendedRemarks(index, scope, signed);
  return { holdPoint, state, joints, needs, changes, remarks, signed, inspections: inspectionsOf(index, holdPoint) };
}

const inspectionsOf = (index: RecordIndex, { id }: HoldPoint): readonly Inspection[] => index.inspections.get(id) ?? [];

/** What was amended of what it asks for, but for what is told as changed since it was signed. */
function amendedRemarks(index: RecordIndex, scope: Scope, signed: Inspection | undefined): Remark[] {
  const at = signed === undefined ? Number.POSITIVE_INFINITY : orderOf(index, signed.entry);
  return amendedIn(index, scope)
    .filter(({ amendment }) => orderOf(index, amendment.by) <= at)
    .map((changed) => ({
      code: "remark/amended",
      values: amendedValues(changed),
      about: { kind: "hold point", id: scope.holdPoint.id },
      restsOn: distinct([changed.change.about, ...restsOnChange(changed)]),
    }));
}

function needsNow(index: RecordIndex, scope: Scope): Need[] {
  return [
    ...scope.joints.flatMap((file) => index.memo.once(file, need.jointNeed)),
    ...scope.openItems.filter((item) => item.closedIn === undefined).map(need.openItemNeed),
    ...scope.departures.flatMap((departure) => need.departureNeed(index, departure)),
    ...scope.measurements.flatMap((one) => need.measurementNeed(index, one)),
    ...scope.pairs.flatMap((pair) => need.pairNeed(index, pair)),
    ...scope.fitted.flatMap((one) => fittedNeed(index, one)),
  ];
}

function signedState(then: readonly Opening[], changes: readonly Change[], now: readonly Need[]): HoldState {
  if (then.length > 0) return "signed with things open";
  if (changes.length > 0) return "reopened";
  return now.length > 0 ? "signed with things open" : "passed";
}

function openState(now: readonly Need[]): HoldState {
  if (now.some(({ blocks }) => blocks)) return "blocked";
  return now.length > 0 ? "ahead" : "ready";
}

function againNeeds(signed: Inspection, state: HoldState, then: readonly Opening[]): Need[] {
  if (state === "passed") return [];
  if (state === "reopened") return [need.reopenedNeed(signed)];
  return [...then.flatMap((opening) => opening.need ?? []), need.signedOpenNeed(signed)];
}

function scopeOf(
  index: RecordIndex,
  holdPoint: HoldPoint,
  inside: readonly Assembly[],
  known: Known & { readonly asked: readonly string[] },
): Scope {
  const measurements = inside.flatMap((assembly) => index.measurementsOf.get(assembly.id) ?? []);
  const pairs = [...new Set(measurements.flatMap(({ pair }) => pair ?? []))].flatMap((id) => known.pairs.get(id) ?? []);
  const own = new Set(inside.map(({ id }) => id));
  const files = known.coats.filter(({ coat }) => own.has(coat.assembly));
  return {
    holdPoint,
    coated: { kind: holdPoint.kind, assemblies: [...own], files },
    measurements,
    pairs,
    joints: known.asked.map((id) => lookUp(known.joints, id)),
    batches: known.batches,
    openItems: openItemsOf(index, holdPoint, inside),
    fitted: inside.flatMap(({ id }) => stoodIn(index, id)),
    departures: departuresIn(index, inside, [
      ...measurements,
      ...pairs.flatMap(({ now }) => now),
      ...files.map(({ coat }) => coat),
    ]),
  };
}

/**
 * Departures of these assemblies, and those that their measurements, the other sides of these or their coats name, accepted or
 * not.
 */
function departuresIn(
  index: RecordIndex,
  inside: readonly Assembly[],
  naming: readonly { readonly departure?: string }[],
): Departure[] {
  const own = inside.flatMap((assembly) => index.departuresOf.get(assembly.id) ?? []);
  const named = naming.flatMap(({ departure }) =>
    departure === undefined ? [] : (index.departures.get(departure) ?? []),
  );
  return [...new Set([...own, ...named])];
}
