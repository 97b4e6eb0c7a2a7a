/** What the page on weight says: sums and moments, in the aircraft's units. */
import { INCH, POUND } from "../../facts/quantity/conversions.ts";
import { defined } from "../../defined.ts";
import type { Balance } from "../../reckoning/weight/centre-of-gravity.ts";
import { weightOf, type WeightFile } from "../../evidence/measures/weight.ts";
import type { OnScales, Weighing } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { grouped, percent } from "../../words/numbers.ts";
import { quantityWords } from "../../words/quantities.ts";

type Units = "metric" | "imperial";

export interface WeightRow {
  readonly weighing: Weighing;
  readonly assembly: string;
  readonly mass: string;
  readonly arm: string;
  readonly moment: string;
  /** Why it counts no more. */
  readonly replacedBy?: Weighing;
}

export interface Sum {
  readonly word: string;
  readonly value: string;
}

export interface ScaleRow {
  readonly on: OnScales;
  readonly readings: readonly Sum[];
  readonly sums: readonly Sum[];
}

export interface WeightPage {
  readonly file: WeightFile;
  readonly datum?: string;
  readonly rows: readonly WeightRow[];
  readonly sums: readonly Sum[];
  readonly scales: readonly ScaleRow[];
}

export function weightPage(shown: Shown): WeightPage {
  const { aircraft, assemblies } = shown.record;
  const { units, datum } = aircraft;
  const file = weightOf(shown.record);
  return defined({
    file,
    datum,
    rows: file.parts.map(({ weighing, moment, replacedBy }) =>
      defined({
        weighing,
        assembly: assemblies.get(weighing.assembly)?.title ?? weighing.assembly,
        mass: quantityWords(weighing.mass, units),
        arm: weighing.arm === undefined ? "not noted" : quantityWords(weighing.arm, units),
        moment: moment === undefined ? "" : momentWords(moment, units),
        replacedBy,
      }),
    ),
    sums: file.parts.length === 0 ? [] : sumsOf(shown, file),
    scales: file.scales.map(({ on, balance }) => ({
      on,
      readings: readingsOf(on, units),
      sums: balance === undefined ? [] : balanceRows(balance, units, "All that the scales show"),
    })),
  });
}

function sumsOf({ record: { aircraft } }: Shown, { mass, massWithoutArm, balance, share }: WeightFile): Sum[] {
  const { units, designWeight } = aircraft;
  return [
    { word: "Weighed so far", value: massWords(mass, units) },
    ...(share === undefined || designWeight === undefined
      ? []
      : [{ word: `Of the design’s empty weight of ${quantityWords(designWeight, units)}`, value: percent(share, 1) }]),
    ...(massWithoutArm === 0
      ? []
      : [{ word: "Of which without an arm, and so in no moment", value: massWords(massWithoutArm, units) }]),
    ...(balance === undefined ? [] : balanceRows(balance, units, "With an arm")),
  ];
}

function balanceRows({ mass, moment, arm }: Balance, units: Units, word: string): Sum[] {
  return [
    { word, value: massWords(mass, units) },
    { word: "Moment about the datum", value: momentWords(moment, units) },
    { word: "Centre of gravity of that", value: armWords(arm, units) },
  ];
}

function readingsOf({ left, right, third, at, mains, wheelbase }: OnScales, units: Units): Sum[] {
  const rows = [
    ["Left main wheel", left],
    ["Right main wheel", right],
    [at === "nose" ? "Nose wheel" : "Tail wheel", third],
    ["Main wheels behind the datum, D", mains],
    [`From main wheels to ${at} wheel, L`, wheelbase],
  ] as const;
  return rows.map(([word, quantity]) => ({ word, value: quantityWords(quantity, units) }));
}

/** kg with three decimals where it is light, lb with two. */
function massWords(kg: number, units: Units): string {
  return units === "metric" ? `${grouped(kg, kg < 10 ? 3 : 1)} kg` : `${grouped(kg / POUND, kg < 10 ? 2 : 1)} lb`;
}

function momentWords(kgm: number, units: Units): string {
  return units === "metric" ? `${grouped(kgm, 2)} kg m` : `${grouped(kgm / POUND / INCH, 1)} lb in`;
}

function armWords(metres: number, units: Units): string {
  const size = Math.abs(metres);
  const words = units === "metric" ? `${grouped(size * 1000, 0)} mm` : `${grouped(size / INCH, 1)} in`;
  return /[1-9]/.test(words) ? `${words} ${metres < 0 ? "ahead of" : "behind"} the datum` : "at the datum";
}
