/**
 * Fisher's exact test (Freeman and Halton) of a table of any number of rows and columns: p, the chance of a table no
 * likelier than this one, its
 * margins given, if all rows were alike.
 *
 *   P(table) = ∏ rows (rᵢ! / ∏ cells nᵢⱼ!) / (n! / ∏ columns cⱼ!)
 *
 * Every table with these margins is gone through, in whole numbers; with two rows and two columns it is the two-sided
 * p of fisherExact.
 * Source: Freeman and Halton, Biometrika 38 (1951) 141, as in R's fisher.test; memory.
 * Domain: a rectangle of whole numbers ≥ 0, 1 ≤ n ≤ 2,000, at most 100,000 tables with these margins, else undefined.
 */
import { isCount } from "../domain.ts";
import { exactShare } from "./exact-share.ts";
import { factorials } from "./factorials.ts";

const MOST_PIECES = 2000;
const MOST_TABLES = 100_000;

export function fisherTable(rows: readonly (readonly number[])[]): number | undefined {
  const n = sum(rows.flat());
  const [first = []] = rows;
  if (!(rows.every((row) => row.length === first.length && row.every(isCount)) && n >= 1 && n <= MOST_PIECES))
    return undefined;
  const columns = first.map((_, j) => sum(rows.map((row) => row[j] ?? 0)));
  const arrangements = arranger(n);
  const seen = rows.reduce((ways, row) => ways * arrangements(row), 1n);
  let asFar = 0n;
  let left = MOST_TABLES;
  const within = eachTable(rows.map(sum), columns, arrangements, 1n, (ways) => {
    if (ways <= seen) asFar += ways;
    left -= 1;
    return left >= 0;
  });
  return within ? exactShare(asFar, arrangements(columns)) : undefined;
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

type Arrangements = (counts: readonly number[]) => bigint;

/** The ways to set out things of these kinds in a row, (∑k)! / ∏ k!, for up to `most` things. */
function arranger(most: number): Arrangements {
  const factorial = factorials(most);
  const of = (n: number): bigint => factorial[n] ?? 1n;
  return (counts) => of(sum(counts)) / counts.reduce((product, k) => product * of(k), 1n);
}

/** Calls `visit` with the ways of each table, until it says false; then gives false. */
function eachTable(
  rowSums: readonly number[],
  left: readonly number[],
  arrangements: Arrangements,
  ways: bigint,
  visit: (ways: bigint) => boolean,
): boolean {
  const [first = 0, ...rest] = rowSums;
  if (rest.length === 0) return visit(ways * arrangements(left));
  return eachRow(first, left, [], (row) => {
    const remaining = left.map((space, j) => space - (row[j] ?? 0));
    return eachTable(rest, remaining, arrangements, ways * arrangements(row), visit);
  });
}

/** Calls `visit` with each way to share `n` out over columns that have so much room, until it says false. */
function eachRow(
  n: number,
  room: readonly number[],
  row: readonly number[],
  visit: (row: readonly number[]) => boolean,
): boolean {
  const here = room[row.length];
  if (here === undefined) return visit(row);
  const later = sum(room.slice(row.length + 1));
  for (let k = Math.max(0, n - later); k <= Math.min(n, here); k += 1) {
    if (!eachRow(n - k, room, [...row, k], visit)) return false;
  }
  return true;
}
