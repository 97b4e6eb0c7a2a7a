/** What was taken back later than within its step, so that it stays in the file. */
import { clockOf, dayOf } from "./clock-text.ts";
import type { BenchEvent, PiecesSaid, Said } from "./event.ts";
import type { Snapshot } from "./snapshot.ts";

export interface Correction {
  /** When it was first noted, s since 1970-01-01T00:00Z. */
  readonly at: number;
  readonly said: Said;
  readonly why: string;
}

/** What was undone with a reason given. */
export function correctionsIn(events: readonly BenchEvent[]): readonly Correction[] {
  const byId = new Map(events.map((event) => [event.id, event]));
  return events.flatMap(({ said }) => {
    if (said.kind !== "undone" || said.why === undefined) return [];
    const taken = byId.get(said.event);
    return taken === undefined ? [] : [{ at: Math.floor(taken.instant / 1000), said: taken.said, why: said.why }];
  });
}

/** What is asked of a record, so that words which every edition has name nothing that one withholds. */
type Named = Pick<Snapshot, "timeZone" | "lots">;

/** What it said, since nothing else of the file has it; but for people, and for lots, that not every edition names. */
export const correctionWords = ({ at, said, why }: Correction, given: Named): string =>
  `first noted at ${clock(at, given.timeZone)}: ${inWords(said, given)}; taken back: ${why}`;

function lotWords(lot: string, { lots }: Named): string {
  const isPublic = lots.some(({ id, audience }) => id === lot && audience === "public");
  return isPublic ? lot : "a lot that not every edition names";
}

const clock = (at: number, zone: string): string => clockOf(at, dayOf(at, zone), zone) ?? "";

function inWords(said: Said, given: Named): string {
  switch (said.kind) {
    case "joint":
      return `${said.joint} ${said.on ? "chosen" : "not chosen"}`;
    case "scale":
      return `scale ${said.typed}`;
    case "reading":
      return `${said.of} ${said.typed ?? "not read"}`;
    case "prepared":
      return `surfaces finished ${said.at === undefined ? "nobody knows when" : `at ${clock(said.at, given.timeZone)}`}`;
    case "timber":
      return `wood ${said.lots.length === 0 ? "not known" : said.lots.map((lot) => lotWords(lot, given)).join(", ")}`;
    default:
      return "cup" in said ? ofCup(said, given) : "piece" in said ? ofPiece(said) : ofPage(said);
  }
}

function ofCup(said: Extract<Said, { readonly cup: number }>, given: Named): string {
  switch (said.kind) {
    case "amount":
      return `${said.part} ${said.typed}`;
    case "again":
      return `${said.part} noted anew`;
    case "closed":
      return `${said.joint} closed`;
    case "discarded":
      return `thrown away: ${said.why}`;
    case "pieces":
      return piecesWords(said, given);
    default:
      return said.kind;
  }
}

export const piecesWords = ({ count, lot, procedure, sizes }: PiecesSaid, given: Named): string =>
  [`${count} pieces`, lot && lotWords(lot, given), procedure, ...Object.values(sizes)].filter(Boolean).join(", ");

function ofPiece(said: Extract<Said, { readonly piece: string }>): string {
  switch (said.kind) {
    case "broke":
      return `${said.piece} broke: ${said.failure}`;
    case "share":
      return `${said.piece}: ${said.typed ?? "share not estimated"}`;
    case "load":
      return `${said.piece}: ${said.typed ?? "no load"}`;
    case "not broken":
      return `${said.piece} not broken`;
  }
}

type OfPage = Exclude<Said, { readonly cup: number } | { readonly piece: string }>;

function ofPage(said: OfPage): string {
  if (said.kind === "shows") return `on a photograph: ${said.what}`;
  return said.kind;
}
