/** What was taken back later than within its step, so that it stays in the file. */
import { clockOf, dayOf } from "./clock-text.ts";
import type { BenchEvent, PiecesSaid, Said } from "./event.ts";

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

/** What it said, since nothing else of the file has it; but for people, whom not every edition names. */
export const correctionWords = ({ at, said, why }: Correction, zone: string): string =>
  `first noted at ${clock(at, zone)}: ${inWords(said, zone)}; taken back: ${why}`;

const clock = (at: number, zone: string): string => clockOf(at, dayOf(at, zone), zone) ?? "";

function inWords(said: Said, zone: string): string {
  switch (said.kind) {
    case "joint":
      return `${said.joint} ${said.on ? "chosen" : "not chosen"}`;
    case "scale":
      return `scale ${said.typed}`;
    case "reading":
      return `${said.of} ${said.typed ?? "not read"}`;
    case "prepared":
      return `surfaces finished ${said.at === undefined ? "nobody knows when" : `at ${clock(said.at, zone)}`}`;
    case "timber":
      return `wood ${said.lots.length === 0 ? "not known" : said.lots.join(", ")}`;
    default:
      return "cup" in said ? ofCup(said) : "piece" in said ? ofPiece(said) : ofPage(said);
  }
}

function ofCup(said: Extract<Said, { readonly cup: number }>): string {
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
      return piecesWords(said);
    default:
      return said.kind;
  }
}

export const piecesWords = ({ count, lot, procedure, sizes }: PiecesSaid): string =>
  [`${count} pieces`, lot, procedure, ...Object.values(sizes)].filter(Boolean).join(", ");

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
