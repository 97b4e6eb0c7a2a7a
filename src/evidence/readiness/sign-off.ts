/**
 * What has changed since a hold point was signed. What stands in entries after the one that holds the signature counts; what stands in that
 * entry itself counts as seen. A joint that is not accepted now counts whenever that came about, so that a signature never outlives its ground.
 */
import { ended, list } from "../../words/figure.ts";
import type {
  Batch,
  Departure,
  Inspection,
  Measurement,
  OpenItem,
  PieceTest,
  Recall,
  Ref,
  Rejection,
  Rework,
} from "../../facts/types.ts";
import { changeSentence, changesOf, restsOnChange } from "../amended.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import { distinct } from "../finding.ts";
import { askedOf, measurementFile } from "../measures/measurement.ts";
import type { BatchFile, Change, JointFile, PairFile } from "../types.ts";

/** What the hold point is about: its joints, and what lies in its assembly and within. */
export interface Scope {
  readonly joints: readonly JointFile[];
  readonly batches: ReadonlyMap<string, BatchFile>;
  readonly openItems: readonly OpenItem[];
  readonly departures: readonly Departure[];
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
    ...failedLater(scope).filter(({ fact }) => isLater(fact)),
    ...amendedLater(index, scope).filter(({ fact }) => isLater(fact)),
    ...putLater(scope).filter(({ fact }) => isLater(fact)),
    ...measuredOut(index, scope).filter(({ fact }) => isLater(fact)),
  ];
  const inOrder = told
    .map(({ fact, change }) => ({ at: orderOf(index, fact.entry), change }))
    .sort((a, b) => a.at - b.at);
  return [...inOrder.map(({ change }) => change), ...scope.joints.flatMap(notAccepted)];
}

interface Told {
  readonly fact: { readonly entry: string };
  readonly change: Change;
}

function told(about: Ref, fact: { readonly entry: string }, sentence: string, alsoOn: readonly Ref[] = []): Told {
  return {
    fact,
    change: { about, sentence, restsOn: distinct([about, { kind: "entry", id: fact.entry }, ...alsoOn]) },
  };
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

const named = (joints: readonly string[]): string => `${joints.length === 1 ? "joint" : "joints"} ${list(joints)}`;

function gluedLater(index: RecordIndex, { joints }: Scope): Told[] {
  const batches = byThing<Batch>(joints, ({ joint }) => index.batchesOfJoint.get(joint.id) ?? []);
  return [...batches].map(([batch, into]) =>
    told({ kind: "batch", id: batch.id }, batch, `Batch ${batch.id} was glued into ${named(into)} on ${batch.day}.`),
  );
}

function openedLater(index: RecordIndex, { joints }: Scope): Told[] {
  const reworks = byThing<Rework>(joints, ({ joint }) => index.reworks.get(joint.id) ?? []);
  return [...reworks].map(([rework, of]) =>
    told(
      { kind: "entry", id: rework.entry },
      rework,
      `Glue was taken out of ${named(of)} on ${rework.day}: ${ended(rework.why)}`,
    ),
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
        `Lot ${recall.lot}, which is in ${named(of)}, was recalled on ${recall.day}: ${ended(recall.why)}`,
        ways(index, recall.lot, of),
      ),
    ),
    ...[...rejections].map(([rejection, of]) =>
      told(
        { kind: "batch", id: rejection.batch },
        rejection,
        `Batch ${rejection.batch}, which is in ${named(of)}, was rejected on ${rejection.day}: ${ended(rejection.why)}`,
      ),
    ),
  ];
}

/** The batches by which a lot came into joints: an edition that hides one must not tell that the lot is in them. */
function ways(index: RecordIndex, lot: string, joints: readonly string[]): Ref[] {
  const batches = joints
    .flatMap((id) => index.batchesOfJoint.get(id) ?? [])
    .filter(({ resin, hardener, timber }) => [resin?.lot, hardener?.lot, ...timber].includes(lot));
  return batches.map(({ id }) => ({ kind: "batch", id }));
}

function failedLater({ joints, batches }: Scope): Told[] {
  const tests = byThing<PieceTest>(joints, (file) =>
    file.batches
      .flatMap((id) => lookUp(batches, id, "batch").pieces)
      .flatMap(({ piece, test, verdict }) => (test && verdict === "fail" && piece.trial === undefined ? [test] : [])),
  );
  return [...tests].map(([test, of]) =>
    told({ kind: "piece", id: test.piece }, test, `Test piece ${test.piece}, for ${named(of)}, failed on ${test.day}.`),
  );
}

/** Facts that the signature rested on and that were written down anew, whatever came of it. */
function amendedLater(
  { record }: RecordIndex,
  { joints, batches, departures, openItems, measurements }: Scope,
): Told[] {
  const glue = [...byThing(joints, (file) => file.batches.map((id) => lookUp(batches, id, "batch"))).keys()];
  const things: Ref[] = [
    ...glue.flatMap(({ batch, pieces }): Ref[] => [
      { kind: "batch", id: batch.id },
      ...pieces.map(({ piece }): Ref => ({ kind: "piece", id: piece.id })),
    ]),
    ...departures.map(({ id }): Ref => ({ kind: "departure", id })),
    ...openItems.map(({ id }): Ref => ({ kind: "open item", id })),
  ];
  const measured = new Set(measurements.map(({ entry, what }) => `${entry} Measurement: ${what}`));
  const entries = [...new Set(measurements.map(({ entry }) => entry))];
  return [
    ...things.flatMap((thing) => changesOf(record, thing)),
    ...entries.flatMap((id) =>
      changesOf(record, { kind: "entry", id }).filter(({ change }) => measured.has(`${id} ${change.fact}`)),
    ),
  ].map((changed) => {
    const { amendment, change } = changed;
    return told(
      change.about,
      { entry: amendment.by },
      `Amended on ${amendment.day}: ${changeSentence(change)}, because: ${ended(amendment.why)}`,
      restsOnChange(changed),
    );
  });
}

function putLater({ departures, openItems }: Scope): Told[] {
  return [
    ...departures.map((one) =>
      told({ kind: "departure", id: one.id }, one, `Departure ${one.id} was noted on ${one.day}: ${ended(one.what)}`),
    ),
    ...openItems.map((one) =>
      told(
        { kind: "open item", id: one.id },
        one,
        `Open item ${one.id} was raised on ${one.day}, to be done before it: ${ended(one.what)}`,
      ),
    ),
  ];
}

function measuredOut(index: RecordIndex, { measurements, pairs }: Scope): Told[] {
  const out = measurements.filter((one) => measurementFile(index, one).verdict === "out");
  const apart = pairs.filter(({ verdict }) => verdict === "out");
  return [
    ...out.map((one) =>
      told(
        { kind: "entry", id: one.entry },
        one,
        `${one.what} was measured as ${one.found.typed}, outside ${askedOf(one)}.`,
      ),
    ),
    ...apart.flatMap((pair) => {
      const [last] = [...pair.now].sort((a, b) => orderOf(index, b.entry) - orderOf(index, a.entry));
      return last ? [told({ kind: "entry", id: last.entry }, last, pairSentence(pair), entriesOf(pair))] : [];
    }),
  ];
}

/** The entries that a sentence on a pair rests on. */
export function entriesOf({ now, tolerance }: PairFile): Ref[] {
  return [...now.map(({ entry }) => entry), ...(tolerance ? [tolerance.entry] : [])].map((id) => ({
    kind: "entry",
    id,
  }));
}

/** What was found on both sides and how far they may differ. */
export function pairSentence({ id, now, tolerance }: PairFile): string {
  const sides = now.map(({ side, found }) => `${side} ${found.typed}`).join(", ");
  return `The sides of ${id} differ by more than they may: ${sides}${tolerance === undefined ? "" : `, where ${tolerance.typed} is allowed`}.`;
}

function notAccepted(file: JointFile): Change[] {
  if (file.state === "accepted") return [];
  const about: Ref = { kind: "joint", id: file.joint.id };
  return [{ about, sentence: `Joint ${file.joint.id} is ${file.state}.`, restsOn: [about] }];
}
