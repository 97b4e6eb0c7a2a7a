/** What is kept of each tap. Nothing is ever taken out: a tap that was undone is followed by one that says so. */
import type { AdhesivePart } from "../facts/build/adhesive-kind.ts";
import type { FailureMode } from "../facts/types.ts";
import type { Sizes, Tins } from "./snapshot.ts";

export type Reading = "temperature" | "humidity" | "moisture";

/** What a tap said. Quantities are as they stand in the file; instants in s since 1970-01-01T00:00Z. What was asked and nobody knows is left out. */
export type Said =
  | { readonly kind: "began"; readonly of: "gluing"; readonly tins: Omit<Tins, "amounts">; readonly firstBatch: string }
  | { readonly kind: "began"; readonly of: "breaking"; readonly pieces: readonly string[] }
  | { readonly kind: "joint"; readonly joint: string; readonly on: boolean }
  | { readonly kind: "joints chosen" }
  | { readonly kind: "scale"; readonly typed: string }
  | { readonly kind: "reading"; readonly of: Reading; readonly typed?: string }
  | { readonly kind: "prepared"; readonly at?: number }
  | { readonly kind: "timber"; readonly lots: readonly string[] }
  | { readonly kind: "amount"; readonly cup: number; readonly part: AdhesivePart; readonly typed: string }
  | { readonly kind: "mixed"; readonly cup: number }
  | { readonly kind: "poured"; readonly cup: number }
  | { readonly kind: "again"; readonly cup: number; readonly part: AdhesivePart }
  | { readonly kind: "left as it is"; readonly cup: number }
  | { readonly kind: "another cup" }
  | { readonly kind: "closed"; readonly cup: number; readonly joint: string }
  | { readonly kind: "discarded"; readonly cup: number; readonly why: string }
  | { readonly kind: "nothing more" }
  | ({ readonly kind: "pieces"; readonly cup: number } & PiecesSaid)
  | { readonly kind: "broke"; readonly piece: string; readonly failure: FailureMode }
  | { readonly kind: "share"; readonly piece: string; readonly typed?: string }
  | { readonly kind: "load"; readonly piece: string; readonly typed?: string }
  | { readonly kind: "not broken"; readonly piece: string }
  | { readonly kind: "photographed"; readonly name: string }
  | { readonly kind: "shows"; readonly photo: string; readonly what: string }
  | { readonly kind: "watched"; readonly who?: string }
  | { readonly kind: "worked"; readonly who: readonly string[]; readonly task?: string }
  | { readonly kind: "out"; readonly way: "shared" | "downloaded" | "copied" }
  | { readonly kind: "arrived" }
  | { readonly kind: "undone"; readonly event: string; readonly why?: string };

export interface PiecesSaid {
  readonly count: number;
  readonly procedure?: string;
  readonly lot?: string;
  readonly sizes: Sizes;
  /** Whether they were glued at the moment of the tap, and not with the last joint of their cup. */
  readonly now: boolean;
}

/** One tap as it is kept. */
export interface BenchEvent {
  readonly session: string;
  readonly id: string;
  /** From 0 in each session. */
  readonly seq: number;
  /** What the phone's clock said, ms since 1970-01-01T00:00Z, and how far east of Greenwich it stood, min. */
  readonly instant: number;
  readonly offset: number;
  readonly said: Said;
  /** Digest of the record that the page was made of. */
  readonly record: string;
}

export const inOrder = (events: readonly BenchEvent[]): readonly BenchEvent[] =>
  [...events].sort((a, b) => a.seq - b.seq);

/** Events that still count, in their order: without those undone and without what undid them. */
export function liveEvents(events: readonly BenchEvent[]): readonly BenchEvent[] {
  const undone = new Set(events.flatMap(({ said }) => (said.kind === "undone" ? [said.event] : [])));
  return inOrder(events).filter(({ id, said }) => said.kind !== "undone" && !undone.has(id));
}
