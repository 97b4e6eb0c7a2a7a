/** Fields of which those that may hold nothing are optional, and hold something where they are there. */
export type Defined<F> = { [K in keyof F as undefined extends F[K] ? never : K]: F[K] } & {
  [K in keyof F as undefined extends F[K] ? K : never]?: Exclude<F[K], undefined>;
};

/** A copy of an object without the keys that hold nothing. */
export function defined<const F extends object>(fields: F): Defined<F> {
  const held: { [key: string]: unknown } = {};
  for (const key of Object.keys(fields)) {
    const value = (fields as { readonly [key: string]: unknown })[key];
    if (value !== undefined) held[key] = value;
  }
  return held as Defined<F>;
}
