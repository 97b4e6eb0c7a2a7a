/** How grave each of a kind's verdicts is against its others. The type asks for every one, so that none can pass for the best. */
export type Gravity<T extends string> = { readonly [verdict in T]: number };

/** Of those given the one that is gravest. */
export function gravest<T extends string>(gravity: Gravity<T>, one: T, others: readonly T[]): T {
  return others.reduce((a, b) => (gravity[b] > gravity[a] ? b : a), one);
}
