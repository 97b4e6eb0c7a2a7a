/**
 * What was open when a hold point was signed. What stands in the entry of the signature counts as seen. Something
 * that is open still has its own need and is only counted here; what was settled after the signature is said.
 */
import type { Batch, Inspection, Ref } from "../../facts/types.ts";
import { changesOf } from "../amended.ts";
import { distinct } from "../finding.ts";
import { heldBy } from "../held.ts";
import { isWhole } from "../joint-stages.ts";
import { asAnswered, askedOf, measurementFile } from "../measures/measurement.ts";
import { entriesOf, isPairAnswered, pairFile } from "../measures/pair.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { BatchFile, HoldPointFile, JointFile, Need } from "../types.ts";
import { isAnswered, standingOf } from "./answering.ts";
import { coatsThen } from "./coats.ts";
import { fittedThen } from "./fitted.ts";
import { lastCure } from "./joint-cure.ts";
import { lastLook, type Looks } from "./looks.ts";
import { takes } from "./takes.ts";
import type { Scope } from "./sign-off.ts";

export interface Opening {
  readonly need?: Need;
}

interface First {
  readonly file: HoldPointFile;
  readonly looks: Looks;
}

interface Moment {
  readonly index: RecordIndex;
  /** Place of the signature in the order of the record. */
  readonly at: number;
  /** When its day began, s since 1970-01-01T00:00Z. */
  readonly day: number;
  readonly isLater: (entry: string) => boolean;
}

export function openThen(index: RecordIndex, signed: Inspection, scope: Scope, first: readonly First[]): Opening[] {
  const at = orderOf(index, signed.entry);
  const day = lookUp(index.entries, signed.entry).dayStart;
  const moment: Moment = { index, at, day, isLater: (id) => orderOf(index, id) > at };
  return [
    ...jointsThen(moment, scope),
    ...piecesThen(moment, scope),
    ...itemsThen(moment, scope),
    ...departuresThen(moment, scope),
    ...measuresThen(moment, scope),
    ...pairsThen(moment, scope),
    ...coatsThen(index, scope.coated, moment),
    ...fittedThen(index, scope.fitted, at),
    ...first.flatMap((one) => holdPointThen(moment, one)),
  ];
}

type ThenSaying = Extract<Need, { readonly code: `then/${string}` }>;

function settled(about: Ref, saying: Pick<ThenSaying, "code" | "values">, entries: readonly string[]): Opening {
  const restsOn = distinct([about, ...entries.map((id): Ref => ({ kind: "entry", id }))]);
  return { need: { ...saying, about, takes: takes("take/look-again"), blocks: true, restsOn } as Need };
}

/** Joints that held nothing, or glue or lots that were known not to be good, or that had not cured. */
function jointsThen(moment: Moment, { joints, batches }: Scope): Opening[] {
  return joints.flatMap((file): Opening[] => {
    const isOpen = wasOpen(moment, file, batches);
    if (!isOpen && hadCured(moment, file)) return [];
    const { id } = file.joint;
    if (file.state !== SHOWN) return [{}];
    return [settled({ kind: "joint", id }, { code: isOpen ? "then/joint" : "then/cure", values: { joint: id } }, [])];
  });
}

/** By the beginning of the day on which it was signed. */
function hadCured({ index, at, day }: Moment, { joint }: JointFile): boolean {
  const cured = lastCure(index, joint, heldBy(index, joint, at).batches)?.at;
  return (cured ?? Number.POSITIVE_INFINITY) <= day;
}

const SHOWN: JointFile["state"] = "shown";

function wasOpen({ index, at, isLater }: Moment, { joint }: JointFile, files: ReadonlyMap<string, BatchFile>): boolean {
  const held = heldBy(index, joint, at);
  if (held.batches.length === 0 || !isWhole(index, joint, at)) return true;
  const recalls = held.lots.flatMap((lot) => index.recalls.get(lot) ?? []);
  if (recalls.some(({ entry }) => !isLater(entry))) return true;
  return held.batches.some((batch) => wasNotGood(index, lookUp(files, batch.id), isLater));
}

/** By what is found of it now, but for what was only said later. */
function wasNotGood(index: RecordIndex, file: BatchFile, isLater: Moment["isLater"]): boolean {
  const about: Ref[] = [
    { kind: "batch", id: file.batch.id },
    ...file.batch.pieces.map(({ id }): Ref => ({ kind: "piece", id })),
  ];
  if (about.flatMap((ref) => changesOf(index, ref)).some(({ amendment }) => isLater(amendment.by))) return false;
  const rejections = index.rejections.get(file.batch.id) ?? [];
  const earlier = rejections.some(({ entry }) => !isLater(entry));
  return file.findings.some(
    ({ rule, severity }) =>
      severity !== "meets" && severity !== "caution" && (rule !== "builders-rejection" || earlier),
  );
}

/** Pieces that count and were broken only later, or never. */
function piecesThen({ index, at, isLater }: Moment, { joints, batches }: Scope): Opening[] {
  const glue = new Set<Batch>(joints.flatMap(({ joint }) => heldBy(index, joint, at).batches));
  return [...glue]
    .flatMap(({ id }) => lookUp(batches, id).pieces)
    .filter(({ piece, test }) => piece.trial === undefined && (test === undefined || isLater(test.entry)))
    .map(({ piece, test }) =>
      test === undefined
        ? {}
        : settled({ kind: "piece", id: piece.id }, { code: "then/piece", values: { piece: piece.id, day: test.day } }, [
            test.entry,
          ]),
    );
}

function itemsThen({ isLater }: Moment, { openItems }: Scope): Opening[] {
  return openItems
    .filter(({ entry, closedIn }) => !isLater(entry) && (closedIn === undefined || isLater(closedIn)))
    .map(({ id, day, what, entry, closedIn }) =>
      closedIn === undefined
        ? {}
        : settled({ kind: "open item", id }, { code: "then/open-item", values: { id, day, what } }, [entry, closedIn]),
    );
}

function departuresThen({ index, at, isLater }: Moment, { departures }: Scope): Opening[] {
  return departures
    .filter(({ entry }) => !isLater(entry))
    .flatMap((one): Opening[] => {
      const { id, day, what, entry, acceptedIn } = one;
      if (standingOf(index, one, at) !== "accepted") return [{}];
      if (acceptedIn === undefined || !isLater(acceptedIn)) return [];
      return [
        settled({ kind: "departure", id }, { code: "then/departure", values: { id, day, what } }, [entry, acceptedIn]),
      ];
    });
}

function measuresThen({ index, at, isLater }: Moment, { measurements }: Scope): Opening[] {
  return measurements
    .filter((one) => !isLater(one.entry) && !isAnswered(index, asAnswered(one), at))
    .flatMap((one): Opening[] => {
      const { verdict, again } = measurementFile(index, one);
      if (verdict !== "out" && verdict !== "estimated") return [];
      if (again === undefined) return [{}];
      if (!isLater(again.entry)) return [];
      const values = { what: one.what, found: one.found.typed, asked: askedOf(one) };
      const code = verdict === "out" ? "then/measure-out" : "then/measure-estimated";
      return [settled({ kind: "entry", id: one.entry }, { code, values }, [again.entry])];
    });
}

function pairsThen({ index, at, isLater }: Moment, { pairs }: Scope): Opening[] {
  return pairs.flatMap((pair): Opening[] => {
    const seen = (index.pairs.get(pair.id) ?? []).filter(({ entry }) => !isLater(entry));
    const then = pairFile(index, pair.id, seen);
    const [last] = then.now;
    const isOpen = ["out", "one side", "estimated"].includes(then.verdict);
    if (last === undefined || !isOpen || isPairAnswered(index, then, at)) return [];
    if (pair.verdict === then.verdict) return [{}];
    const entries = [...entriesOf(then), ...entriesOf(pair)].map(({ id }) => id);
    return [settled({ kind: "entry", id: last.entry }, { code: "then/pair", values: { pair: pair.id } }, entries)];
  });
}

/** One that comes first was signed by then, or stays open. */
function holdPointThen({ index, at }: Moment, { file, looks }: First): Opening[] {
  const { id } = file.holdPoint;
  if (lastLook(index, looks, at)?.result === "signed") return [];
  if (file.state !== "passed") return [{}];
  const later = file.signed === undefined ? [] : [file.signed.entry];
  return [settled({ kind: "hold point", id }, { code: "then/hold-point", values: { holdPoint: id } }, later)];
}
