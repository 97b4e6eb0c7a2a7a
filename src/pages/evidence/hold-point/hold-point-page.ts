/** What the page of one hold point says: all that the record has of what is inside it. */
import { defined } from "../../../defined.ts";
import { comesFirst, isAskedBy } from "../../../evidence/readiness/order.ts";
import type { Change, HoldPointFile, JointFile, JointState, MeasurementFile } from "../../../evidence/types.ts";
import type { Assembly, Departure, Noted, OpenItem } from "../../../facts/types.ts";
import type { Shown } from "../../../editions/shown.ts";
import { toldNeed, type ToldNeed } from "../../../words/findings/told.ts";
import { type CoatRow, coatRows } from "../../ledgers/coats.ts";
import { type FittedRow, fittedRows } from "../../ledgers/fitted.ts";
import { departures, openItems, type PairRow, pairs } from "../evidence-lists.ts";
import { traceIndex } from "../trace-index.ts";
import { JOINT_STATES } from "../verdict-words.ts";
import { bondedIn, type Bonded } from "./bonded.ts";
import { photosInside, type PhotosInside } from "./photos-inside.ts";

export interface HoldPointPage {
  readonly file: HoldPointFile;
  /** Its own assembly first, then those within it; before flight all others too. */
  readonly inside: readonly Assembly[];
  /** Those that must be passed first. */
  readonly earlier: readonly HoldPointFile[];
  /** The worst first; `needs` are the lines that speak of the joint. */
  readonly joints: readonly JointLine[];
  /** Of what is inside and has no glue now: one of them is what closes. */
  readonly toClose: readonly JointFile[];
  /** All needs but those of a joint that stands in `joints`. */
  readonly needs: readonly ToldNeed[];
  readonly changes: readonly Change[];
  readonly bonded: Bonded;
  readonly departures: readonly Departure[];
  readonly openItems: readonly OpenItem[];
  readonly measurements: readonly MeasurementFile[];
  readonly scarfs: readonly MeasurementFile[];
  readonly pairs: readonly PairRow[];
  readonly coats: readonly CoatRow[];
  readonly fitted: readonly FittedRow[];
  /** The last moisture of wood that was noted inside, and where. */
  readonly moisture?: { readonly noted: Noted; readonly batch: string; readonly entry: string };
  readonly photos: PhotosInside;
}

interface JointLine {
  readonly file: JointFile;
  readonly needs: readonly ToldNeed[];
}

export function holdPointPage(shown: Shown, file: HoldPointFile): HoldPointPage {
  const { evidence } = shown;
  const { holdPoint } = file;
  const inside = insideOf(shown, file);
  const within = new Set(inside.map(({ id }) => id));
  const needs = file.needs.map((need) => toldNeed(shown.say, need));
  const joints = jointLines(shown, file, needs);
  const told = new Set(joints.flatMap((line) => line.needs));
  const own = new Set(evidence.assemblies.get(holdPoint.assembly)?.within);
  const measured = traceIndex(shown).measurements.filter(({ measurement }) => within.has(measurement.assembly));
  const sides = pairs(shown).filter(({ pair }) => pair.now.some(({ assembly }) => within.has(assembly)));
  const coats = coatRows(shown, ({ assembly }) => within.has(assembly));
  const bonded = bondedIn(
    shown,
    joints.map((line) => line.file),
  );
  return defined({
    file,
    inside,
    joints,
    bonded,
    coats,
    earlier: [...evidence.holdPoints.values()].filter(
      (other) => within.has(other.holdPoint.assembly) && comesFirst(other.holdPoint, holdPoint, own),
    ),
    toClose: inside
      .flatMap((assembly) => assembly.joints)
      .flatMap(({ id }) => evidence.joints.get(id) ?? [])
      .filter(({ state }) => state === "not glued" || state === "opened"),
    needs: needs.filter((need) => !told.has(need)),
    changes: file.changes,
    departures: departuresIn(shown, within, [
      ...measured.map(({ measurement }) => measurement),
      ...sides.flatMap(({ pair }) => pair.now),
      ...coats.map((row) => row.file.coat),
    ]),
    openItems: openItems(shown).filter((item) => isAsked(shown, file, within, item)),
    measurements: measured.filter(({ measurement }) => measurement.dimension !== "slope"),
    scarfs: measured.filter(({ measurement }) => measurement.dimension === "slope"),
    pairs: sides,
    fitted: fittedRows(shown, ({ assembly }) => within.has(assembly)),
    moisture: lastMoisture(shown, bonded),
    photos: photosInside(shown, within),
  });
}

function insideOf({ record, evidence }: Shown, { holdPoint }: HoldPointFile): Assembly[] {
  const own = evidence.assemblies.get(holdPoint.assembly)?.within ?? [];
  const ids = holdPoint.kind === "flight" ? new Set([...own, ...record.assemblies.keys()]) : own;
  return [...ids].flatMap((id) => record.assemblies.get(id) ?? []);
}

const worst = (state: JointState): number => JOINT_STATES.indexOf(state);

function jointLines({ evidence }: Shown, { joints }: HoldPointFile, needs: readonly ToldNeed[]): JointLine[] {
  return joints
    .flatMap((id) => evidence.joints.get(id) ?? [])
    .sort((a, b) => worst(a.state) - worst(b.state))
    .map((file) => ({
      file,
      needs: needs.filter(({ about }) => about.kind === "joint" && about.id === file.joint.id),
    }));
}

/** Those of what is inside, and those that a measure, a pair or a coat there names. */
function departuresIn(
  shown: Shown,
  within: ReadonlySet<string>,
  naming: readonly { readonly departure?: string }[],
): Departure[] {
  const named = new Set(naming.flatMap(({ departure }) => departure ?? []));
  return departures(shown).filter(({ id, assembly }) => within.has(assembly) || named.has(id));
}

function isAsked(
  { evidence }: Shown,
  { holdPoint }: HoldPointFile,
  within: ReadonlySet<string>,
  item: OpenItem,
): boolean {
  if (holdPoint.kind === "flight" || item.before === holdPoint.id) return true;
  const points = new Map([...evidence.holdPoints].map(([id, file]) => [id, file.holdPoint]));
  return within.has(item.assembly) && isAskedBy(holdPoint, item, points);
}

function lastMoisture({ evidence }: Shown, { batches }: Bonded): HoldPointPage["moisture"] {
  const last = [...batches]
    .flatMap(({ batch }) => evidence.batches.get(batch.id)?.batch ?? [])
    .filter(({ moisture }) => moisture !== undefined)
    .at(-1);
  return last?.moisture && { noted: last.moisture, batch: last.id, entry: last.entry };
}
