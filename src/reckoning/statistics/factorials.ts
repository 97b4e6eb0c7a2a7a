/** The factorials 0! to n!, exact, as big integers. Domain: n whole, from 0, else none. By definition. */
import { isCount } from "../domain.ts";

export function factorials(n: number): bigint[] {
  if (!isCount(n)) return [];
  const all = [1n];
  for (let k = 1; k <= n; k += 1) all.push((all[k - 1] ?? 1n) * BigInt(k));
  return all;
}
