/**
 * What has changed since a hold point was signed. What stands in entries after the one that holds the signature
 * counts; what stands in that entry itself counts as seen. Where anything changed, joints that are not shown now are
 * told too.
 */
import type {
  Batch,
  Departure,
  HoldPoint,
  Inspection,
  Measurement,
  OpenItem,
  PieceTest,
  Recall,
  Ref,
  Rejection,
  Rework,
} from "../../facts/types.ts";
import { amendedValues, type Changed, changesOf, changesOfGlue, isNothingChanged, restsOnChange } from "../amended.ts";
import { lotsOf } from "../batch/lots.ts";
import { amendedStages } from "../joint-stages.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { Stood } from "../lots/fitted.ts";
import { askedOf, measurementFact, measurementFile } from "../measures/measurement.ts";
import { entriesOf, pairValues } from "../measures/pair.ts";
import type { BatchFile, Change, JointFile, PairFile } from "../types.ts";
import { coatFact } from "../coats/coat.ts";
import { type Coated, coatsLater } from "./coats.ts";
import { fittedLater } from "./fitted.ts";
import { type Told, told } from "./told.ts";

/** What the hold point is about: its joints, and what lies in its assembly and within. */
export interface Scope {
  readonly holdPoint: HoldPoint;
  readonly joints: readonly JointFile[];
  readonly batches: ReadonlyMap<string, BatchFile>;
  readonly openItems: readonly OpenItem[];
  readonly departures: readonly Departure[];
  /** Parts bought in, those taken out again too. */
  readonly fitted: readonly Stood[];
  readonly coated: Coated;
  readonly measurements: readonly Measurement[];
  readonly pairs: readonly PairFile[];
}

export function changesSince(index: RecordIndex, signed: Inspection, scope: Scope): Change[] {
  const at = orderOf(index, signed.entry);
  const isLater = ({ entry }: { readonly entry: string }): boolean => orderOf(index, entry) > at;
  const told = [
    ...gluedLater(index, scope).filter(({ fact }) => isLater(fact)),
    ...openedLater(index, scope).filter(({ fact }) => isLater(fact)),
    ...takenBack(index, scope).filter(({ fact }) => isLater(fact)),
    ...fittedLater(index, scope.fitted, isLater),
    ...coatsLater(index, scope.coated, isLater),
    ...failedLater(scope).filter(({ fact }) => isLater(fact)),
    ...amendedLater(index, scope).filter(({ fact }) => isLater(fact)),
    ...putLater(scope).filter(({ fact }) => isLater(fact)),
    ...measuredOut(index, scope).filter(({ fact }) => isLater(fact)),
  ];
  const inOrder = told
    .map(({ fact, change }) => ({ at: orderOf(index, fact.entry), change }))
    .sort((a, b) => a.at - b.at);
  return inOrder.length === 0 ? [] : [...inOrder.map(({ change }) => change), ...scope.joints.flatMap(notAccepted)];
}

/** Things of the scope's joints, each once, with the joints that it touches. */
function byThing<T>(joints: readonly JointFile[], of: (joint: JointFile) => readonly T[]): Map<T, string[]> {
  const found = new Map<T, string[]>();
  for (const file of joints) {
    for (const thing of of(file)) {
      const touched = found.get(thing);
      if (touched === undefined) found.set(thing, [file.joint.id]);
      else touched.push(file.joint.id);
    }
  }
  return found;
}

function gluedLater(index: RecordIndex, scope: Scope): Told[] {
  const batches = byThing<Batch>(scope.joints, ({ joint }) => index.batchesOfJoint.get(joint.id) ?? []);
  return [...batches].map(([batch, joints]) =>
    told({ kind: "batch", id: batch.id }, batch, {
      code: "change/glued",
      values: { batch: batch.id, joints, day: batch.day },
    }),
  );
}

function openedLater(index: RecordIndex, scope: Scope): Told[] {
  const reworks = byThing<Rework>(scope.joints, ({ joint }) => index.reworks.get(joint.id) ?? []);
  return [...reworks].map(([rework, joints]) =>
    told({ kind: "entry", id: rework.entry }, rework, {
      code: "change/opened",
      values: { joints, day: rework.day, why: rework.why },
    }),
  );
}

function takenBack(index: RecordIndex, { joints }: Scope): Told[] {
  const recalls = byThing<Recall>(joints, ({ lots }) => lots.flatMap((lot) => index.recalls.get(lot) ?? []));
  const rejections = byThing<Rejection>(joints, ({ batches }) =>
    batches.flatMap((batch) => index.rejections.get(batch) ?? []),
  );
  return [
    ...[...recalls].map(([recall, of]) =>
      told(
        { kind: "lot", id: recall.lot },
        recall,
        { code: "change/recalled", values: { lot: recall.lot, joints: of, day: recall.day, why: recall.why } },
        ways(index, recall.lot, of),
      ),
    ),
    ...[...rejections].map(([rejection, of]) =>
      told({ kind: "batch", id: rejection.batch }, rejection, {
        code: "change/rejected",
        values: { batch: rejection.batch, joints: of, day: rejection.day, why: rejection.why },
      }),
    ),
  ];
}

/** The batches by which a lot came into joints: an edition that hides one must not tell that the lot is in them. */
function ways(index: RecordIndex, lot: string, joints: readonly string[]): Ref[] {
  const batches = joints
    .flatMap((id) => index.batchesOfJoint.get(id) ?? [])
    .filter((batch) => lotsOf({ batch }).includes(lot));
  return batches.map(({ id }) => ({ kind: "batch", id }));
}

function failedLater({ joints, batches }: Scope): Told[] {
  const tests = byThing<PieceTest>(joints, (file) =>
    file.batches
      .flatMap((id) => lookUp(batches, id).pieces)
      .flatMap(({ piece, test, verdict }) => (test && verdict === "fail" && piece.trial === undefined ? [test] : [])),
  );
  return [...tests].map(([test, of]) =>
    told({ kind: "piece", id: test.piece }, test, {
      code: "change/failed",
      values: { piece: test.piece, joints: of, day: test.day },
    }),
  );
}

/** Facts that the signature rested on and that were written down anew, whatever came of it. */
function amendedLater(index: RecordIndex, scope: Scope): Told[] {
  return amendedIn(index, scope).map((changed) =>
    told(
      changed.change.about,
      { entry: changed.amendment.by },
      { code: "change/amended", values: amendedValues(changed) },
      restsOnChange(changed),
    ),
  );
}

/** Whatever was written down anew of what a hold point asks for, in the order of the record; measurements come last. */
export function amendedIn(
  index: RecordIndex,
  { joints, batches, departures, openItems, measurements, fitted, coated }: Scope,
): Changed[] {
  if (isNothingChanged(index)) return [];
  const glue = [...new Set(joints.flatMap((file) => file.batches))];
  const things: Ref[] = [
    ...departures.map(({ id }): Ref => ({ kind: "departure", id })),
    ...openItems.map(({ id }): Ref => ({ kind: "open item", id })),
  ];
  const told = [
    ...measurements.map((one) => ({ entry: one.entry, fact: measurementFact(one) })),
    ...coated.files.map(({ coat }) => ({ entry: coat.entry, fact: coatFact(coat) })),
    ...fitted.map(({ fitting: { entry, where } }) => ({ entry, fact: `Fitted: ${where}` })),
  ];
  const amended = new Set(told.map(({ entry, fact }) => `${entry} ${fact}`));
  const entries = [...new Set(told.map(({ entry }) => entry))];
  return [
    ...glue.flatMap((id) => changesOfGlue(index, lookUp(batches, id).batch)),
    ...things.flatMap((thing) => changesOf(index, thing)),
    ...new Set(joints.flatMap(({ joint }) => amendedStages(index, joint))),
    ...entries.flatMap((id) =>
      changesOf(index, { kind: "entry", id }).filter(({ change }) => amended.has(`${id} ${change.fact}`)),
    ),
    ...departures.flatMap(({ id, acceptedIn }) =>
      changesOf(index, { kind: "entry", id: acceptedIn ?? "" }).filter(
        ({ change }) => change.fact === `Acceptance of ${id}`,
      ),
    ),
  ];
}

/** An item to be done before nothing in particular, or before another, counts only while it is open. */
function putLater({ holdPoint, departures, openItems }: Scope): Told[] {
  const items = openItems.filter(
    ({ before, closedIn }) => closedIn === undefined || before === holdPoint.id || before === holdPoint.kind,
  );
  return [
    ...departures.map((one) =>
      told({ kind: "departure", id: one.id }, one, {
        code: "change/departure",
        values: { id: one.id, day: one.day, what: one.what },
      }),
    ),
    ...items.map((one) =>
      told({ kind: "open item", id: one.id }, one, {
        code: "change/open-item",
        values: { id: one.id, day: one.day, what: one.what },
      }),
    ),
  ];
}

function measuredOut(index: RecordIndex, { measurements, pairs }: Scope): Told[] {
  const out = measurements.filter((one) => measurementFile(index, one).verdict === "out");
  const apart = pairs.filter(({ verdict }) => verdict === "out");
  return [
    ...out.map((one) =>
      told({ kind: "entry", id: one.entry }, one, {
        code: "change/measure-out",
        values: { what: one.what, found: one.found.typed, asked: askedOf(one) },
      }),
    ),
    ...apart.flatMap((pair) => {
      const [last] = [...pair.now].sort((a, b) => orderOf(index, b.entry) - orderOf(index, a.entry));
      const saying = { code: "change/pair-out", values: pairValues(pair) } as const;
      return last ? [told({ kind: "entry", id: last.entry }, last, saying, entriesOf(pair))] : [];
    }),
  ];
}

function notAccepted(file: JointFile): Change[] {
  if (file.state === "shown") return [];
  const about: Ref = { kind: "joint", id: file.joint.id };
  return [{ code: "change/joint", values: { joint: file.joint.id, state: file.state }, about, restsOn: [about] }];
}
