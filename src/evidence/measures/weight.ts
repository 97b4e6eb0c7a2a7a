/** What was weighed on the way and on the scales: sums, moments and centres of gravity, and nothing that goes beyond arithmetic. */
import { defined } from "../../defined.ts";
import { balance, balanceOnScales, type Balance } from "../../reckoning/weight/centre-of-gravity.ts";
import type { OnScales, Record, Weighing } from "../../facts/types.ts";

interface WeighedPart {
  readonly weighing: Weighing;
  /** kg·m; undefined without an arm. */
  readonly moment?: number;
  /** The later weighing that counts in its place: of the same part again, or of one that holds it. */
  readonly replacedBy?: Weighing;
}

export interface WeightFile {
  /** In the order of the record. */
  readonly parts: readonly WeighedPart[];
  /** Of the parts that count: kg, with and without an arm. */
  readonly mass: number;
  readonly massWithoutArm: number;
  /** Of those that count and have an arm. */
  readonly balance?: Balance;
  /** All that was weighed as a share of the design weight. */
  readonly share?: number;
  readonly scales: readonly { readonly on: OnScales; readonly balance?: Balance }[];
}

export function weightOf({ aircraft, entries }: Record): WeightFile {
  const parts = partsOf(entries.flatMap((entry) => entry.weighed));
  const counting = parts.filter(({ replacedBy }) => replacedBy === undefined).map(({ weighing }) => weighing);
  const armed = counting.flatMap(({ mass, arm }) => (arm === undefined ? [] : [{ mass: mass.value, arm: arm.value }]));
  const sum = (some: readonly Weighing[]): number => some.reduce((kg, { mass }) => kg + mass.value, 0);
  const mass = sum(counting);
  const balanced = balance(armed);
  return defined({
    parts,
    mass,
    massWithoutArm: sum(counting.filter(({ arm }) => arm === undefined)),
    balance: balanced,
    share: aircraft.designWeight ? mass / aircraft.designWeight.value : undefined,
    scales: entries.flatMap(({ scales }) => (scales === undefined ? [] : [onScales(scales)])),
  });
}

/** Each weighing takes the place of the one before it of the same words, and of the parts that it names. */
function partsOf(weighings: readonly Weighing[]): WeighedPart[] {
  const counting = new Map<string, Weighing>();
  const replaced = new Map<Weighing, Weighing>();
  for (const weighing of weighings) {
    for (const part of [weighing.part, ...weighing.insteadOf]) {
      const before = counting.get(part);
      if (before) replaced.set(before, weighing);
      counting.delete(part);
    }
    counting.set(weighing.part, weighing);
  }
  return weighings.map((weighing) => {
    const replacedBy = replaced.get(weighing);
    return defined({
      weighing,
      moment: weighing.arm ? weighing.mass.value * weighing.arm.value : undefined,
      replacedBy,
    });
  });
}

function onScales(on: OnScales): WeightFile["scales"][number] {
  const found = balanceOnScales({
    left: on.left.value,
    right: on.right.value,
    third: on.third.value,
    at: on.at,
    mains: on.mains.value,
    wheelbase: on.wheelbase.value,
  });
  return defined({ on, balance: found });
}
