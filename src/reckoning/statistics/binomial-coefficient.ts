/**
 * Binomial coefficient C(n, k): the ways to take k of n things. Exact, as a big integer.
 *
 * Domain: n and k whole, 0 ≤ k ≤ n, else 0n. By definition.
 */
export function choose(n: number, k: number): bigint {
  if (!(Number.isInteger(n) && Number.isInteger(k) && k >= 0 && k <= n)) return 0n;
  let ways = 1n;
  for (let i = 1; i <= Math.min(k, n - k); i += 1) ways = (ways * BigInt(n - i + 1)) / BigInt(i);
  return ways;
}
