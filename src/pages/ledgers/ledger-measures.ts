/** The rows of the ledgers of measures, hold points, weights and tasks. */
import { figureRead } from "../../facts/quantity/ends.ts";
import { creditOf } from "../../evidence/credit.ts";
import { weightOf } from "../../evidence/measures/weight.ts";
import { WHOLE_TASK } from "../../reckoning/hours/credit.ts";
import type { Quantity } from "../../facts/types.ts";
import type { Row } from "./ledger-rows.ts";
import type { Shown } from "../../editions/shown.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { traceIndex } from "../evidence/trace-index.ts";

export const UNITS: { readonly [unit: string]: string } = {
  "m²": "m2",
  "m³": "m3",
  N: "n",
  Pa: "pa",
  "°C": "degc",
  "1": "share",
  "kg/m³": "kg_m3",
  "kg/m²": "kg_m2",
  "1/m": "per_m",
};

/** Measures of any kind stand in one column, with their unit beside them. */
export function measurementRows(shown: Shown): Row[] {
  const { pairs } = shown.evidence;
  return traceIndex(shown).measurements.map(({ measurement: m, off, verdict, again }) => ({
    entry: m.entry,
    day: m.entry.slice(0, 10),
    what: m.what,
    assembly: m.assembly,
    unit: UNITS[m.found.unit] ?? m.found.unit,
    drawing_typed: m.drawing?.typed ?? m.limits?.typed ?? null,
    drawing: m.drawing?.value ?? null,
    limit_least: m.limits?.least ?? null,
    limit_most: m.limits?.most ?? null,
    tolerance_typed: m.tolerance?.typed ?? null,
    tolerance_minus: m.tolerance?.minus ?? null,
    tolerance_plus: m.tolerance?.plus ?? null,
    found_typed: m.found.typed,
    found: figureRead(m.found) ?? null,
    off: off ?? null,
    verdict,
    again_entry: again?.entry ?? null,
    departure: m.departure === WITHHELD ? "withheld" : (m.departure ?? null),
    joint: m.joint ?? null,
    pair: m.pair ?? null,
    side: m.side ?? null,
    pair_tolerance_typed: m.pairTolerance?.typed ?? null,
    pair_tolerance: m.pairTolerance?.value ?? null,
    pair_difference: (m.pair === undefined ? undefined : pairs.get(m.pair)?.difference) ?? null,
    pair_verdict: (m.pair === undefined ? undefined : pairs.get(m.pair)?.verdict) ?? null,
  }));
}

export function holdPointRows({ evidence, nameOf, say }: Shown): Row[] {
  return [...evidence.holdPoints.values()].map(({ holdPoint, state, joints, needs, changes, remarks, signed }) => ({
    hold_point: holdPoint.id,
    title: holdPoint.title,
    kind: holdPoint.kind,
    assembly: holdPoint.assembly,
    joints_named: holdPoint.joints ?? [],
    state,
    joints,
    blocked_by: needs
      .filter(({ blocks }) => blocks)
      .map(say)
      .join(" "),
    to_do: needs
      .filter(({ blocks }) => !blocks)
      .map(say)
      .join(" "),
    signed_entry: signed?.entry ?? null,
    signed_day: signed?.day ?? null,
    signed_by: signed === undefined ? null : nameOf(signed.by),
    signed_reference: signed?.reference ?? null,
    changed_since: changes.map(say).join(" "),
    remarks: remarks.map(say).join(" "),
  }));
}

export function weightRows({ record }: Shown): Row[] {
  return weightOf(record).parts.map(({ weighing: w, moment, replacedBy }) => ({
    entry: w.entry,
    day: w.day,
    part: w.part,
    assembly: w.assembly,
    ...typed("mass", "kg", w.mass),
    ...typed("arm", "m", w.arm),
    moment_kg_m: moment ?? null,
    counts: replacedBy === undefined ? "yes" : "no",
    replaced_by: replacedBy?.part ?? null,
    replaced_by_entry: replacedBy?.entry ?? null,
  }));
}

export function scaleRows({ record }: Shown): Row[] {
  return weightOf(record).scales.map(({ on, balance }) => ({
    entry: on.entry,
    day: on.day,
    what: on.what ?? null,
    ...typed("left", "kg", on.left),
    ...typed("right", "kg", on.right),
    third_wheel: on.at,
    ...typed("third", "kg", on.third),
    ...typed("mains", "m", on.mains),
    ...typed("wheelbase", "m", on.wheelbase),
    mass_kg: balance?.mass ?? null,
    moment_kg_m: balance?.moment ?? null,
    centre_m: balance?.arm ?? null,
  }));
}

/** Tasks that apply and tasks that do not; parts are points of one. */
export function taskRows({ record }: Shown): Row[] {
  const { tasks, notApplicable } = creditOf(record);
  const point = (tenths: number | undefined): number | null => (tenths === undefined ? null : tenths / WHOLE_TASK);
  return [...tasks, ...notApplicable].map(({ id, title, assembly, credit }) => ({
    task: id,
    title,
    assembly,
    applicable: credit === undefined ? "no" : "yes",
    maker: point(credit?.maker),
    paid: point(credit?.paid),
    amateur_assembly: point(credit?.assembly),
    amateur_fabrication: point(credit?.fabrication),
  }));
}

function typed(word: string, unit: string, noted: Quantity | undefined): Row {
  return { [`${word}_typed`]: noted?.typed ?? null, [`${word}_${unit}`]: noted?.value ?? null };
}
