/** What the page on one batch says. */
import { defined } from "../../defined.ts";
import type { BatchFile, JointFile, PieceFile } from "../../evidence/types.ts";
import { type AdhesivePart, isLotPart, MADE, partsNoted } from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Batch, Component, Entry, Lot, Noted, Range } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { byDefault } from "./by-default.ts";
import { glueUpRows } from "./glue-up.ts";
import { traceIndex } from "./trace-index.ts";
import { dateWords } from "../../words/dates.ts";
import { durationWords } from "../../words/durations.ts";
import { percent, signedPercent } from "../../words/numbers.ts";
import { inUnits, quantityWords } from "../../words/quantities.ts";

export const NOT_NOTED = "not noted";

/** A fact with what it is held against; `limit` names nothing where the record gives no limit. */
export interface FactRow {
  readonly word: string;
  readonly noted: string;
  readonly limit?: string;
  /** By what it was reckoned, and where that comes from. */
  readonly by?: string;
}

interface ComponentRow {
  readonly part: AdhesivePart;
  readonly amount: string;
  readonly lot?: Lot;
  /** Best before, or why that is not known. */
  readonly keeps: string;
  /** `, by default from …`, where the lot is the one that was in use. */
  readonly usual: string;
}

export interface BatchPage {
  readonly file: BatchFile;
  readonly adhesive: Adhesive | undefined;
  readonly entry: Entry | undefined;
  /** People who put in hours on that day, by the names the edition shows. */
  readonly people: readonly string[];
  readonly components: readonly ComponentRow[];
  readonly mix: readonly FactRow[];
  readonly climate: readonly FactRow[];
  readonly times: readonly FactRow[];
  readonly glueUp: readonly FactRow[];
  readonly timber: readonly Lot[];
  readonly joints: readonly { readonly file: JointFile; readonly now: boolean }[];
  readonly counting: readonly PieceFile[];
  readonly forTrials: readonly PieceFile[];
}

export function batchPage(shown: Shown, file: BatchFile): BatchPage {
  const { record, evidence } = shown;
  const { batch } = file;
  const adhesive = record.adhesives.get(batch.adhesive);
  const entry = traceIndex(shown).entries.get(batch.entry);
  return {
    file,
    adhesive,
    entry,
    people: peopleAt(shown, entry),
    components: partsOf(batch, adhesive).map((part) => componentRow(shown, part, batch, adhesive)),
    mix: [...mixRows(shown, file, adhesive), ...leftRows(shown, file)],
    climate: climateRows(shown, file, adhesive),
    times: timeRows(file, adhesive),
    glueUp: glueUpRows(shown, batch),
    timber: batch.timber.flatMap((id) => record.lots.get(id) ?? []),
    joints: batch.joints
      .flatMap((id) => evidence.joints.get(id) ?? [])
      .map((joint) => ({ file: joint, now: joint.batches.includes(batch.id) })),
    counting: file.pieces.filter(({ piece }) => piece.trial === undefined),
    forTrials: file.pieces.filter(({ piece }) => piece.trial !== undefined),
  };
}

export function peopleAt(shown: Shown, entry: Entry | undefined): string[] {
  return [...new Set(entry?.hours.map(({ who }) => shown.nameOf(who)))];
}

/** Those of its adhesive, and whatever else is noted. */
function partsOf(batch: Batch, adhesive: Adhesive | undefined): AdhesivePart[] {
  const known = adhesive ? MADE[adhesive.kind].parts : [];
  const noted = partsNoted<Component>(batch).map(({ part }) => part);
  return [...new Set([...known, ...noted])];
}

function componentRow(
  shown: Shown,
  part: ComponentRow["part"],
  batch: Batch,
  adhesive: Adhesive | undefined,
): ComponentRow {
  const component: Component | undefined = batch[part];
  const lot = component?.lot === undefined ? undefined : shown.record.lots.get(component.lot);
  const amount = component?.mass ?? component?.volume;
  return defined({
    part,
    amount: amount === undefined ? NOT_NOTED : quantityWords(amount, shown.record.aircraft.units),
    lot,
    keeps: part === "water" ? "" : lot === undefined ? "not known" : keeps(lot, adhesive),
    usual: isLotPart(part) ? byDefault(shown, batch, `lot of ${part}`) : "",
  });
}

function keeps(lot: Lot, adhesive: Adhesive | undefined): string {
  if (lot.expiry !== undefined) return `until ${dateWords(lot.expiry)}`;
  if (adhesive?.shelfLife !== undefined)
    return `${adhesive.shelfLife.typed} from ${dateWords(lot.received)}, by the data sheet`;
  return "not stated";
}

function mixRows(shown: Shown, { batch, ratio }: BatchFile, adhesive: Adhesive | undefined): FactRow[] {
  const pair = MADE[adhesive?.kind ?? "two-part"].pair;
  if (pair === undefined) return [];
  const nominal = ratio?.by === "volume" ? adhesive?.byVolume : (adhesive?.byMass ?? adhesive?.byVolume);
  const limit =
    nominal === undefined
      ? {}
      : {
          limit: `${nominal.typed}${nominal.tolerance === undefined ? ", no tolerance given" : ` ${tolerance(nominal.tolerance.typed)}`}, ${pair.join(" to ")}`,
        };
  const scale: FactRow = {
    word: "Scale reads in steps of",
    noted:
      batch.scale === undefined
        ? "not noted; the last digit as typed is taken"
        : quantityWords(batch.scale, shown.record.aircraft.units) + byDefault(shown, batch, "scale"),
  };
  if (ratio === undefined)
    return [{ word: "Ratio as mixed", noted: "cannot be reckoned from what was noted", ...limit }, scale];
  return [
    { word: `Ratio as mixed, by ${ratio.by}`, noted: `100 : ${(ratio.found * 100).toFixed(1)}`, ...limit },
    defined({
      word: "Off the stated ratio by",
      noted: signedPercent(ratio.error),
      limit: ratio.tolerance === undefined ? undefined : `±${percent(ratio.tolerance, 1)}`,
    }),
    {
      word: "The scale alone leaves in doubt",
      noted: ratio.doubt === undefined ? "cannot be reckoned" : `±${percent(ratio.doubt, 1)}`,
    },
    scale,
  ];
}

function leftRows(shown: Shown, { batch: { waste, note } }: BatchFile): FactRow[] {
  const left = waste && quantityWords(waste, shown.record.aircraft.units);
  return [
    ...(left === undefined ? [] : [{ word: "Left over, not spread", noted: left }]),
    ...(note === undefined ? [] : [{ word: "Note", noted: note }]),
  ];
}

function tolerance(typed: string): string {
  return /^[±+]/.test(typed) ? typed : `±${typed}`;
}

function climateRows(shown: Shown, file: BatchFile, adhesive: Adhesive | undefined): FactRow[] {
  const { units } = shown.record.aircraft;
  const { batch } = file;
  const noted = (quantity: Noted | undefined): string =>
    quantity === undefined ? NOT_NOTED : quantityWords(quantity, units);
  const limit = (range: Range | undefined): { limit?: string } => (range === undefined ? {} : { limit: range.typed });
  const rows: FactRow[] = [
    { word: "Shop temperature", noted: noted(batch.temperature), ...limit(adhesive?.temperature) },
    { word: "Relative humidity", noted: noted(batch.humidity), ...limit(adhesive?.humidity) },
    { word: "Surface temperature", noted: noted(batch.surface) },
    ...(batch.wood === undefined ? [] : [{ word: "Wood temperature", noted: noted(batch.wood) }]),
    { word: "Wood moisture, by meter", noted: noted(batch.moisture), ...limit(adhesive?.woodMoisture) },
  ];
  if (file.moistureEstimate !== undefined)
    rows.push({
      word: "Wood moisture that this climate leads to",
      noted: percent(file.moistureEstimate, 1),
      by: ", an estimate for wood that has had time to settle (Wood Handbook FPL-GTR-190, equation 4-5, second-hand: by a copy that cites FPL-RN-0268)",
    });
  if (file.dewPoint !== undefined)
    rows.push({
      word: "Dew point",
      noted: inUnits(file.dewPoint, "°C", units),
      by: " (Magnus form with the coefficients of WMO-No. 8, Annex 4.B, second-hand)",
    });
  return rows;
}

function timeRows({ batch, openFor, workingLife }: BatchFile, adhesive: Adhesive | undefined): FactRow[] {
  return [
    {
      word: MADE[adhesive?.kind ?? "two-part"].mixed ? "Mixed at" : "First spread at",
      noted: batch.mixed?.typed ?? NOT_NOTED,
    },
    { word: "Last joint closed at", noted: batch.closed?.typed ?? NOT_NOTED },
    {
      word: "Working life used",
      noted: openFor === undefined ? "not known" : durationWords(openFor),
      limit:
        workingLife === undefined ? "the data sheet gives none for so warm or so much" : durationWords(workingLife),
    },
  ];
}
