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

/** Joints that must be shown. Only before a skin or a closing may a hold point ask for fewer than all of them. */
export function jointsOf({ kind, joints }: HoldPoint, inside: readonly Assembly[]): readonly string[] {
  if (joints !== undefined && (kind === "next skin" || kind === "close-up")) return joints;
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
  const isEarlier = ({ kind, assembly }: HoldPoint): boolean =>
    rank(kind) < rank(holdPoint.kind) ||
    (kind === holdPoint.kind && assembly !== holdPoint.assembly && own.has(assembly));
  return { earlier: all.filter(isEarlier), others: all.filter((one) => !isEarlier(one)) };
}

/**
 * Open items that a hold point asks for, closed or not: those that name it, and from within it those to be done
 * before nothing in particular, before its kind or an earlier one, or before a hold point of such a kind. Before
 * flight all there are.
 */
export function openItemsOf(index: RecordIndex, holdPoint: HoldPoint, inside: readonly Assembly[]): OpenItem[] {
  if (holdPoint.kind === "flight") return [...index.openItems.values()];
  const named = index.openItemsBefore.get(holdPoint.id) ?? [];
  const isAsked = ({ before }: OpenItem): boolean => {
    if (before === undefined) return true;
    const kind = isKind(before) ? before : index.holdPoints.get(before)?.kind;
    return kind === undefined || rank(kind) <= rank(holdPoint.kind);
  };
  return [...new Set([...named, ...inside.flatMap(({ id }) => (index.openItemsOf.get(id) ?? []).filter(isAsked))])];
}
