/**
 * Fisher's exact test of a table of two rows and two columns [[a, b], [c, d]]: p, the chance of a table at least as
 * far from alike as this one,
 * its margins given, if both rows were alike.
 *
 *   P(a) = C(a+b, a)·C(c+d, c) / C(n, a+c)
 *
 * `greater`: tables with so many in the first cell or more; `less`: so many or fewer; `twoSided`: tables no likelier
 * than this one.
 * Reckoned in whole numbers, so that tables as likely as this one are counted for certain.
 * Source: Fisher 1935, as in R's fisher.test, whose examples [[3,1],[1,3]] and [[2,15],[10,3]] are seen.
 * Domain: whole numbers ≥ 0, 1 ≤ n ≤ 2,000, else undefined. A table with an empty row or column gives 1.
 */
import { choose } from "./binomial-coefficient.ts";
import { isCount } from "../domain.ts";
import { exactShare } from "./exact-share.ts";

export type TwoByTwo = readonly [readonly [number, number], readonly [number, number]];

export interface FisherP {
  readonly greater: number;
  readonly less: number;
  readonly twoSided: number;
}

const MOST_PIECES = 2000;

export function fisherExact([[a, b], [c, d]]: TwoByTwo): FisherP | undefined {
  const n = a + b + c + d;
  if (!([a, b, c, d].every(isCount) && n >= 1 && n <= MOST_PIECES)) return undefined;
  const firstColumn = a + c;
  const ways = (x: number): bigint => choose(a + b, x) * choose(c + d, firstColumn - x);
  const seen = ways(a);
  const sums = { greater: 0n, less: 0n, twoSided: 0n };
  // A table that cannot be has no ways.
  for (let x = 0; x <= firstColumn; x += 1) {
    const these = ways(x);
    if (x >= a) sums.greater += these;
    if (x <= a) sums.less += these;
    if (these <= seen) sums.twoSided += these;
  }
  const p = (part: bigint): number => exactShare(part, choose(n, firstColumn)) ?? 1;
  return { greater: p(sums.greater), less: p(sums.less), twoSided: p(sums.twoSided) };
}
