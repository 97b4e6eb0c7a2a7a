/** A copy of an object without the keys that hold nothing. */
export function defined<T extends object>(fields: T): T {
  const held: { [key: string]: unknown } = {};
  for (const [key, value] of Object.entries(fields)) if (value !== undefined) held[key] = value;
  return held as T;
}
