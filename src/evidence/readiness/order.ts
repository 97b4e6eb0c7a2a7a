/**
 * Hold points stand on one another: before next skin, before close-up, before covering, before first load, before
 * flight.
 */
import { HOLD_KINDS, type HoldKind } from "../../facts/build/hold-point.ts";
import type { Assembly, HoldPoint, OpenItem } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import { within } from "./within.ts";

/** Of kinds, in the order in which they happen. */
const rank = (kind: HoldKind): number => HOLD_KINDS.indexOf(kind);

const isKind = (before: string): before is HoldKind => (HOLD_KINDS as readonly string[]).includes(before);

/**
 * What a hold point is about: its assembly and all within it; before flight the whole aircraft, its own assembly
 * first.
 */
export function insideOf(index: RecordIndex, { kind, assembly }: HoldPoint): Assembly[] {
  const own = within(index, assembly);
  return kind === "flight" ? [...new Set([...own, ...index.record.assemblies.values()])] : own;
}

/** Joints that must be shown. Only before a skin or a closing may a hold point ask for fewer than all of them, and never for none. */
export function jointsOf({ kind, joints }: HoldPoint, inside: readonly Assembly[]): readonly string[] {
  if (joints !== undefined && joints.length > 0 && (kind === "next skin" || kind === "close-up")) return joints;
  return [...new Set([...inside.flatMap((one) => one.joints.map(({ id }) => id)), ...(joints ?? [])])];
}

interface Others {
  /** Those that must be passed first: of an earlier kind, or of the same in an assembly within. */
  readonly earlier: readonly HoldPoint[];
  readonly others: readonly HoldPoint[];
}

export function othersWithin(index: RecordIndex, holdPoint: HoldPoint, inside: readonly Assembly[]): Others {
  const own = new Set(within(index, holdPoint.assembly).map(({ id }) => id));
  const all = inside.flatMap((assembly) => assembly.holdPoints).filter(({ id }) => id !== holdPoint.id);
  const isEarlier = (one: HoldPoint): boolean => comesFirst(one, holdPoint, own);
  return { earlier: all.filter(isEarlier), others: all.filter((one) => !isEarlier(one)) };
}

/** Whether another hold point inside one must be passed before it; `own` are its assembly and those within it. */
export function comesFirst(other: HoldPoint, holdPoint: HoldPoint, own: ReadonlySet<string>): boolean {
  if (other.id === holdPoint.id) return false;
  if (rank(other.kind) < rank(holdPoint.kind)) return true;
  return other.kind === holdPoint.kind && other.assembly !== holdPoint.assembly && own.has(other.assembly);
}

/**
 * Open items that a hold point asks for, closed or not: those that name it, and from within it those to be done
 * before nothing in particular, before its kind or an earlier one, or before a hold point of such a kind. Before
 * flight all there are.
 */
export function openItemsOf(index: RecordIndex, holdPoint: HoldPoint, inside: readonly Assembly[]): OpenItem[] {
  if (holdPoint.kind === "flight") return [...index.openItems.values()];
  const named = index.openItemsBefore.get(holdPoint.id) ?? [];
  const isAsked = (item: OpenItem): boolean => isAskedBy(holdPoint, item, index.holdPoints);
  return [...new Set([...named, ...inside.flatMap(({ id }) => (index.openItemsOf.get(id) ?? []).filter(isAsked))])];
}

/** Whether a hold point asks for an open item of an assembly inside it. */
export function isAskedBy(
  { kind }: HoldPoint,
  { before }: OpenItem,
  holdPoints: ReadonlyMap<string, HoldPoint>,
): boolean {
  if (before === undefined) return true;
  const asked = isKind(before) ? before : holdPoints.get(before)?.kind;
  return asked === undefined || rank(asked) <= rank(kind);
}
