/** What the page on one lot says: its particulars and everywhere it went. */
import { isLotPart } from "../../facts/build/adhesive-kind.ts";
import type { BatchFile, HoldPointFile, JointFile, LotFile, PieceFile } from "../../evidence/types.ts";
import type { Cut, Lot } from "../../facts/types.ts";
import { defined } from "../../defined.ts";
import { type FactRow, NOT_NOTED } from "./batch-page.ts";
import type { Shown } from "../../editions/shown.ts";
import { type CoatRow, coatRows } from "../ledgers/coats.ts";
import { type FittedRow, fittedRows } from "../ledgers/fitted.ts";
import { type Remains, remainsIn } from "../ledgers/remains.ts";
import { foundOfLot } from "../ledgers/stock.ts";
import type { ToldFinding } from "../../words/findings/told.ts";
import { traceIndex } from "./trace-index.ts";
import { dateWords } from "../../words/dates.ts";
import { counted } from "../../words/lists.ts";
import { quantityWords, timberInUnits } from "../../words/quantities.ts";

export interface LotUse {
  readonly batch: BatchFile;
  readonly joints: readonly {
    readonly file: JointFile;
    readonly now: boolean;
    readonly holdPoints: readonly HoldPointFile[];
  }[];
}

interface CutRow {
  readonly entry: string;
  readonly title: string;
  readonly amount: string;
  /** This and all cuts before it. */
  readonly sum: string;
}

export interface LotPage {
  readonly file: LotFile;
  readonly particulars: readonly FactRow[];
  /** What was cut from it, in the order of entries; and all of it in a sentence. */
  readonly cuts: readonly CutRow[];
  readonly cutWords: string;
  readonly remains: Remains;
  /** That more was used of it than came. */
  readonly overdrawn: readonly ToldFinding[];
  readonly fitted: readonly FittedRow[];
  readonly coats: readonly CoatRow[];
  readonly uses: readonly LotUse[];
  readonly pieces: readonly PieceFile[];
  readonly holdPoints: readonly HoldPointFile[];
}

export function lotPage(shown: Shown, file: LotFile): LotPage {
  const { evidence } = shown;
  const now = new Set(file.joints);
  const ever = new Set([...file.joints, ...file.formerJoints]);
  const uses = file.batches
    .flatMap((id) => evidence.batches.get(id) ?? [])
    .map((batch) => ({
      batch,
      joints: batch.batch.joints
        .filter((id) => ever.has(id))
        .flatMap((id) => evidence.joints.get(id) ?? [])
        .map((joint) => ({
          file: joint,
          now: now.has(joint.joint.id) && joint.batches.includes(batch.batch.id),
          holdPoints: (traceIndex(shown).holdPointsOf.get(joint.joint.id) ?? []).flatMap(
            (id) => evidence.holdPoints.get(id) ?? [],
          ),
        })),
    }));
  const cuts = traceIndex(shown).cutsOf.get(file.lot.id) ?? [];
  const fitted = fittedRows(shown, ({ lot }) => lot === file.lot.id);
  const coats = coatRows(shown, ({ lots }) => lots.includes(file.lot.id));
  const points = new Set([...file.holdPoints, ...pointsOver(shown, standingIn(fitted, coats))]);
  return {
    file,
    uses,
    fitted,
    coats,
    remains: remainsIn(shown, (id) => id === file.lot.id),
    overdrawn: foundOfLot(shown, file.lot.id),
    particulars: particulars(shown, file),
    cuts: cutRows(shown, cuts),
    cutWords: cutWords(shown, file, cuts),
    pieces: file.pieces.flatMap((id) => evidence.pieces.get(id) ?? []),
    holdPoints: [...points].flatMap((id) => evidence.holdPoints.get(id) ?? []),
  };
}

/** Assemblies in which a part of it stands, or a coat of it is, as far as this edition shows. */
const standingIn = (fitted: readonly FittedRow[], coats: readonly CoatRow[]): ReadonlySet<string> =>
  new Set([
    ...fitted.filter(({ stood }) => stood.out === undefined).map(({ stood }) => stood.fitting.assembly),
    ...coats.filter(({ off }) => off === "").map(({ file }) => file.coat.assembly),
  ]);

/** Hold points that look at any of these: of the assembly or of one that it is within, and before flight all. */
function pointsOver({ record, evidence }: Shown, assemblies: ReadonlySet<string>): string[] {
  const around = new Set<string>();
  for (const id of assemblies)
    for (
      let at = record.assemblies.get(id);
      at !== undefined;
      at = at.parent === undefined ? undefined : record.assemblies.get(at.parent)
    )
      around.add(at.id);
  return [...evidence.holdPoints.values()]
    .filter(({ holdPoint }) => around.has(holdPoint.assembly) || (around.size > 0 && holdPoint.kind === "flight"))
    .map(({ holdPoint }) => holdPoint.id);
}

const isAdhesive = ({ material }: Lot): boolean => isLotPart(material);

function cutRows(shown: Shown, cuts: readonly Cut[]): CutRow[] {
  const { units } = shown.record.aircraft;
  let sum = 0;
  return cuts.map(({ entry, amount }) => {
    sum += amount.value;
    return {
      entry,
      title: traceIndex(shown).entries.get(entry)?.title ?? entry,
      amount: quantityWords(amount, units, timberInUnits),
      sum: timberInUnits(sum, amount.unit, units),
    };
  });
}

function cutWords(shown: Shown, { lot }: LotFile, cuts: readonly Cut[]): string {
  const { units } = shown.record.aircraft;
  const unit = cuts[0]?.amount.unit ?? "m";
  const together = timberInUnits(
    cuts.reduce((sum, { amount }) => sum + amount.value, 0),
    unit,
    units,
  );
  const came =
    lot.amount === undefined
      ? "How much came of it is not noted."
      : `${quantityWords(lot.amount, units, timberInUnits)} came.`;
  return `${together} in ${counted(cuts.length, "cut")}${shown.edition === "archive" ? "" : " that this edition shows"}. ${came}`;
}

function materialWords({ record }: Shown, { material, adhesive, finish }: Lot): string {
  const product = record.finishes.get(finish ?? "");
  if (product !== undefined) return `${product.kind}: ${product.title}`;
  const of = record.adhesives.get(adhesive ?? "")?.title ?? adhesive;
  return of === undefined ? material : `${material} of ${of}`;
}

function particulars(shown: Shown, { lot }: LotFile): FactRow[] {
  const { aircraft } = shown.record;
  const { asked } = lot;
  const rows: (readonly [string, string | undefined, string?])[] = [
    ["Material", materialWords(shown, lot)],
    ["Maker’s number", lot.number],
    ["Supplier", lot.supplier],
    ["Received", dateWords(lot.received)],
    ["Good until", lot.expiry === undefined ? undefined : dateWords(lot.expiry)],
    [
      "Amount",
      lot.amount === undefined
        ? undefined
        : quantityWords(lot.amount, aircraft.units, isAdhesive(lot) ? undefined : timberInUnits),
    ],
    ["Cost", lot.cost?.typed],
    ["Species", lot.species],
    ["Thickness", lot.thickness === undefined ? undefined : quantityWords(lot.thickness, aircraft.units)],
    ["Moisture when received", lot.moisture?.typed, asked?.moisture?.typed],
    ["Slope of grain", lot.grainSlope, asked?.grainSlope && `no more than ${asked.grainSlope}`],
    ["Rings", lot.rings?.typed, asked?.rings?.typed],
    [
      "Density",
      lot.density === undefined ? undefined : quantityWords(lot.density, aircraft.units),
      asked?.density?.typed,
    ],
  ];
  return rows.flatMap(([word, noted, limit]) =>
    noted === undefined && limit === undefined ? [] : [defined({ word, noted: noted ?? NOT_NOTED, limit })],
  );
}
