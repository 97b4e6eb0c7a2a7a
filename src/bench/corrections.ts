/** What was taken back later than within its step, so that it stays in the file. */
import type { BenchEvent, Said } from "./event.ts";

export interface Correction {
  /** When it was first noted, s since 1970-01-01T00:00Z. */
  readonly at: number;
  readonly words: string;
}

/** What was undone with a reason given, in words. */
export function correctionsIn(events: readonly BenchEvent[]): readonly Correction[] {
  const byId = new Map(events.map((event) => [event.id, event]));
  return events.flatMap(({ said }) => {
    if (said.kind !== "undone" || said.why === undefined) return [];
    const taken = byId.get(said.event);
    return taken === undefined
      ? []
      : [{ at: Math.floor(taken.instant / 1000), words: `${saidInWords(taken.said)}; taken back: ${said.why}` }];
  });
}

function saidInWords(said: Said): string {
  if (said.kind === "reading") return `${said.of} ${said.typed}`;
  if (said.kind === "amount") return `${said.part} ${said.typed}`;
  if (said.kind === "closed") return `${said.joint} closed`;
  if (said.kind === "broke") return `${said.piece} broke: ${said.failure}`;
  if (said.kind === "share" || said.kind === "load") return `${said.piece}: ${said.typed ?? "no load"}`;
  return said.kind;
}
