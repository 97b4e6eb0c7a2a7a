/** What the record waits for on a day: from the same evidence, and told in the same words, as the pages of the site. */
import { defined } from "../../defined.ts";
import type { Shown } from "../../editions/shown.ts";
import { reckonStock } from "../../evidence/lots/stock.ts";
import type { HoldPointFile } from "../../evidence/types.ts";
import type { Departure, Lot, OpenItem } from "../../facts/types.ts";
import { acceptedWords, before, departures, openItems } from "../../pages/evidence/evidence-lists.ts";
import { needsTogether, type NeedTogether } from "../../pages/evidence/needs.ts";
import { HOLD_MEANS } from "../../pages/evidence/verdict-words.ts";
import { waiting, type WaitingRow } from "../../pages/evidence/waiting.ts";
import { type StockRow, stockPage } from "../../pages/ledgers/stock.ts";
import { homeView } from "../../pages/story/home.ts";
import { atMost } from "../../reckoning/compare.ts";
import { toldNeed } from "../../words/findings/told.ts";

export interface Due {
  /**
   * Pieces that may be broken by the end of the day; those of which only the days are over, so that broken then they
   * may prove nothing; and those that still cure.
   */
  readonly now: readonly WaitingRow[];
  readonly byDaysAlone: readonly WaitingRow[];
  readonly later: readonly WaitingRow[];
  /** Of those that may be broken by the end of the day: which were not in the heat that the sheet asks for. */
  readonly unheated: readonly WaitingRow[];
  /** Lots that are recalled, past their last day or near it, of which something may be left. */
  readonly lots: readonly (Pick<StockRow, "keeps" | "left"> & { readonly lot: Lot })[];
  /** Within how many days of which day a lot is near its last. */
  readonly soon: string;
  readonly holdPoint?: {
    readonly file: HoldPointFile;
    readonly assembly: string;
    readonly means: string;
    readonly needs: readonly NeedTogether[];
  };
  readonly open: readonly { readonly item: OpenItem; readonly before: string }[];
  /** Departures not accepted yet, and how far they are. */
  readonly departures: readonly { readonly departure: Departure; readonly standing: string }[];
}

export function dueOf(shown: Shown): Due {
  const all = waiting(shown);
  const pieces = split(all, (id) => !isUnheated(shown, id));
  const stock = stockPage(shown);
  return defined({
    now: pieces.filter((row) => row.now && isWarmthTold(row)),
    byDaysAlone: pieces.filter((row) => row.now && !isWarmthTold(row)),
    later: all.filter(({ now }) => !now),
    unheated: split(all, (id) => isUnheated(shown, id)).filter(({ now }) => now),
    lots: lotsOf(shown, [...stock.adhesives.flatMap(({ lots }) => lots), ...stock.others, ...stock.finishes]),
    soon: stock.soon,
    holdPoint: holdPointOf(shown),
    open: openItems(shown)
      .filter(({ closedIn }) => closedIn === undefined)
      .map((item) => ({ item, before: beforeWords(shown, item) })),
    departures: departures(shown)
      .filter(({ id }) => shown.evidence.standings.get(id) !== "accepted")
      .map((departure) => ({ departure, standing: acceptedWords(shown, departure) })),
  });
}

/** Rows with those of their pieces alone of which it holds. */
const split = (rows: readonly WaitingRow[], holds: (piece: string) => boolean): WaitingRow[] =>
  rows.map((row) => ({ ...row, pieces: row.pieces.filter(holds) })).filter(({ pieces }) => pieces.length > 0);

/** As its batch's findings say: the sheet asks for heat after gluing, and the piece has not lain in it with a joint. */
function isUnheated({ record, evidence }: Shown, piece: string): boolean {
  const of = record.entries
    .flatMap(({ batches }) => batches)
    .find(({ pieces }) => pieces.some(({ id }) => id === piece));
  return (evidence.batches.get(of?.id ?? "")?.findings ?? []).some(
    (finding) => finding.code === "post-cure/pieces" && finding.values.pieces.includes(piece),
  );
}

/** Of a cure by days alone the record shows no warmth, or one at which nothing cures. */
const isWarmthTold = ({ readyBy }: WaitingRow): boolean =>
  readyBy === "logged" || readyBy === "logged in part" || readyBy === "assumed";

function lotsOf({ record, evidence }: Shown, rows: readonly StockRow[]): readonly StockRow[] {
  const lots = reckonStock(record, evidence).lots;
  const gone = new Set(lots.flatMap(({ lot, left }) => (left !== undefined && atMost(left, 0) ? [lot.id] : [])));
  return rows.filter(({ urgent, lot }) => urgent && !gone.has(lot.id));
}

function holdPointOf(shown: Shown): Due["holdPoint"] {
  const file = homeView(shown).next;
  if (file === undefined) return undefined;
  return {
    file,
    assembly: shown.record.assemblies.get(file.holdPoint.assembly)?.title ?? file.holdPoint.assembly,
    means: HOLD_MEANS[file.state],
    needs: needsTogether(file.needs.map((need) => toldNeed(shown.say, need))),
  };
}

function beforeWords(shown: Shown, item: OpenItem): string {
  const told = before(shown, item);
  if (told === undefined) return "";
  return "words" in told ? told.words : `before ${told.holdPoint}`;
}
