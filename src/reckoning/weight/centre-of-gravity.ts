/**
 * Centre of gravity of things weighed, by the law of the lever.
 *
 * Units: masses in any one unit, arms in any one unit of length; an arm is positive behind the datum and negative
 * ahead of it.
 */
import { notNegative, positive } from "../domain.ts";

export interface Weighed {
  readonly mass: number;
  readonly arm: number;
}

export interface Balance {
  readonly mass: number;
  /** Σ m·a */
  readonly moment: number;
  /** Σ m·a / Σ m, behind the datum. */
  readonly arm: number;
}

/**
 * Sum, moment and centre of gravity. Domain: at least one thing, masses positive, arms finite; else undefined.
 * Definition of the moment.
 */
export function balance(things: readonly Weighed[]): Balance | undefined {
  if (things.length === 0 || !things.every(({ mass, arm }) => positive(mass) && Number.isFinite(arm))) return undefined;
  const mass = things.reduce((sum, thing) => sum + thing.mass, 0);
  const moment = things.reduce((sum, thing) => sum + thing.mass * thing.arm, 0);
  return { mass, moment, arm: moment / mass };
}

type ThirdWheel = "nose" | "tail";

export interface Scales {
  /** Net readings under both main wheels and under the third. */
  readonly left: number;
  readonly right: number;
  readonly third: number;
  readonly at: ThirdWheel;
  /** Arm of the main wheels from the datum, D. */
  readonly mains: number;
  /** Distance from the main wheels to the third, without a sign, L. */
  readonly wheelbase: number;
}

/**
 * Centre of gravity of an aircraft on three scales: D − F·L/W with a nose wheel, D + R·L/W with a tail wheel, W all
 * that the scales show, F or R what the third shows. Source: FAA-H-8083-1, weighing the aircraft (second-hand:
 * reprints). With D negative it is also its form for a datum behind the main wheels. Domain: main wheels positive,
 * third not negative, wheelbase positive, D finite; else undefined.
 */
export function balanceOnScales({ left, right, third, at, mains, wheelbase }: Scales): Balance | undefined {
  if (!positive(left, right, wheelbase) || !notNegative(third) || !Number.isFinite(mains)) return undefined;
  const mass = left + right + third;
  const lever = (third * wheelbase) / mass;
  const arm = at === "nose" ? mains - lever : mains + lever;
  return { mass, moment: mass * arm, arm };
}
