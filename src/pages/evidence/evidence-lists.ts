/** What the lists of open items, departures, measurements and hold points say. */
import type { HoldPointFile, MeasurementFile, PairFile, Standing } from "../../evidence/types.ts";
import type { Departure, Measurement, OpenItem } from "../../facts/types.ts";
import { askedOf, isUsualScarf } from "../../evidence/measures/measurement.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { HOLD_KIND } from "./verdict-words.ts";
import { inUnits, quantityWords } from "../../words/quantities.ts";

/** Still open before closed; the oldest first. */
export function openItems(shown: Shown): OpenItem[] {
  const items = [...shown.evidence.openItems.values()].sort(byDay);
  return [
    ...items.filter(({ closedIn }) => closedIn === undefined),
    ...items.filter(({ closedIn }) => closedIn !== undefined),
  ];
}

/** Not yet accepted before accepted; the oldest first. */
export function departures(shown: Shown): Departure[] {
  const all = [...shown.evidence.departures.values()].sort(byDay);
  return [
    ...all.filter(({ id }) => shown.evidence.standings.get(id) !== "accepted"),
    ...all.filter(({ id }) => shown.evidence.standings.get(id) === "accepted"),
  ];
}

const STANDING: { readonly [standing in Standing]: (name: string) => string } = {
  "not accepted": () => "not accepted yet",
  "accepted by no inspector": (name) => `not accepted: ${name}, who is named, is no inspector`,
  "accepted by one who worked on it": (name) => `not accepted: ${name}, who is named, has hours on it`,
  "told by the builder": (name) => `not accepted: told by the builder of ${name}, on no paper that is named`,
  "accepted on a condition": (name) => `accepted by ${name} on a condition that is still open`,
  "changed since it was accepted": (name) => `not accepted: it was changed after ${name} had accepted it`,
  accepted: (name) => `accepted by ${name}`,
};

/** How far a departure is accepted, by whom, on which paper and on what condition. */
export function acceptedWords(
  { evidence, nameOf }: Shown,
  { id, acceptedBy, reference, condition }: Departure,
): string {
  const standing = STANDING[evidence.standings.get(id) ?? "not accepted"](nameOf(acceptedBy ?? ""));
  const paper = reference === undefined ? "" : `, paper: ${reference}`;
  return `${standing}${paper}${condition === undefined ? "" : `, the condition: ${condition}`}`;
}

function byDay(
  a: { readonly day: string; readonly id: string },
  b: { readonly day: string; readonly id: string },
): number {
  return a.day < b.day ? -1 : a.day > b.day ? 1 : a.id < b.id ? -1 : 1;
}

/**
 * What an open item must be done before: a hold point of its own, or every one of a kind; undefined where it says
 * neither.
 */
export function before(
  shown: Shown,
  item: OpenItem,
): { readonly holdPoint: string } | { readonly words: string } | undefined {
  if (item.before === undefined) return undefined;
  if (shown.evidence.holdPoints.has(item.before)) return { holdPoint: item.before };
  return { words: item.before in HOLD_KIND ? HOLD_KIND[item.before as keyof typeof HOLD_KIND] : item.before };
}

export function measurements(shown: Shown): readonly MeasurementFile[] {
  return traceIndex(shown).measurements;
}

export const NOT_GIVEN = "not given";

/** What the drawing asks: a measure, or limits. */
export function drawingWords(shown: Shown, measurement: Measurement): string {
  const { drawing, limits } = measurement;
  if (isUsualScarf(measurement)) return `not given; by common practice ${askedOf(measurement)}`;
  if (drawing !== undefined) return quantityWords(drawing, shown.record.aircraft.units);
  return limits?.typed ?? NOT_GIVEN;
}

export interface SideTold {
  readonly side: string;
  readonly found: string;
  readonly entry: string;
}

export interface PairRow {
  readonly pair: PairFile;
  /** Titles of the assemblies that the sides stand on. */
  readonly assemblies: readonly string[];
  /** What counts of the one and of the other. */
  readonly sides: readonly [readonly SideTold[], readonly SideTold[]];
  readonly difference: string;
  /** Departures that a side names. */
  readonly departures: readonly string[];
}

/** Pairs of sides, those that differ by too much first. */
export function pairs(shown: Shown): PairRow[] {
  const order: { readonly [verdict in PairFile["verdict"]]: number } = {
    out: 0,
    "one side": 1,
    estimated: 2,
    "no tolerance": 3,
    within: 4,
  };
  return [...shown.evidence.pairs.values()]
    .sort((a, b) => order[a.verdict] - order[b.verdict])
    .map((pair) => ({
      pair,
      assemblies: [
        ...new Set(pair.now.map(({ assembly }) => shown.record.assemblies.get(assembly)?.title ?? assembly)),
      ],
      sides: sidesOf(shown, pair),
      departures: [...new Set(pair.now.flatMap(({ departure }) => departure ?? []))],
      difference: pair.difference === undefined ? "" : signed(pair.difference, pair.now[0]?.found.unit ?? "m", shown),
    }));
}

function sidesOf(shown: Shown, { now }: PairFile): PairRow["sides"] {
  const told = now.map(({ side = "left", found, entry }) => ({
    side,
    found: quantityWords(found, shown.record.aircraft.units),
    entry,
  }));
  const isOne = ({ side }: SideTold): boolean => side === told[0]?.side;
  return [told.filter(isOne), told.filter((one) => !isOne(one))];
}

/** How far off the drawing, with a sign and in the aircraft's units. */
export function offWords(shown: Shown, { measurement, off }: MeasurementFile): string {
  return off === undefined ? "" : signed(off, measurement.found.unit, shown);
}

function signed(value: number, unit: string, shown: Shown): string {
  const words = inUnits(value, unit, shown.record.aircraft.units);
  return value > 0 && /[1-9]/.test(words) ? `+${words}` : words;
}

const ORDER: { readonly [state in HoldPointFile["state"]]: number } = {
  reopened: 0,
  "signed with things open": 1,
  blocked: 2,
  ready: 3,
  ahead: 4,
  passed: 5,
};

export function holdPoints(shown: Shown): HoldPointFile[] {
  return [...shown.evidence.holdPoints.values()].sort((a, b) => ORDER[a.state] - ORDER[b.state]);
}
