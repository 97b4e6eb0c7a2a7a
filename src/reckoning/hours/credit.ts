/**
 * Major portion: the share of the tasks that amateurs fabricated or assembled, %:
 *
 *   share = 100·(assembly + fabrication)/(maker + paid + assembly + fabrication), over the tasks that apply
 *
 * Each task is one point, credited in tenths; everything is reckoned in whole tenths, so that nothing is lost to
 * binary fractions.
 * Source: the amateur-built fabrication and assembly checklist of FAA AC 20-27G (its columns and tenths: seen; its
 * line of totals: memory).
 * Domain: tasks whose tenths are whole, not negative and add up to ten, at least one of them; else undefined.
 */
import { isCount } from "../domain.ts";

/** Tenths of one task, or of all, by who did the work. */
export interface Tenths {
  readonly maker: number;
  readonly paid: number;
  readonly assembly: number;
  readonly fabrication: number;
}

export const WHOLE_TASK = 10;

/** The share that the amateurs' part must exceed, %; equal to it is not enough (AC 20-27G; seen). */
export const MAJOR = 50;

export interface Portion {
  readonly tasks: number;
  readonly sums: Tenths;
  /** % */
  readonly share: number;
  readonly major: boolean;
}

export const sumOfTenths = ({ maker, paid, assembly, fabrication }: Tenths): number =>
  maker + paid + assembly + fabrication;

export function majorPortion(tasks: readonly Tenths[]): Portion | undefined {
  if (tasks.length === 0 || !tasks.every(isWhole)) return undefined;
  const sums = tasks.reduce(added);
  const all = sumOfTenths(sums);
  const own = sums.assembly + sums.fabrication;
  return { tasks: tasks.length, sums, share: (100 * own) / all, major: 100 * own > MAJOR * all };
}

function isWhole(task: Tenths): boolean {
  return [task.maker, task.paid, task.assembly, task.fabrication].every(isCount) && sumOfTenths(task) === WHOLE_TASK;
}

function added(a: Tenths, b: Tenths): Tenths {
  return {
    maker: a.maker + b.maker,
    paid: a.paid + b.paid,
    assembly: a.assembly + b.assembly,
    fabrication: a.fabrication + b.fabrication,
  };
}
