/**
 * A 32-bit seed, from 0 to 2³² − 1, made of a text, so that the same record draws the same lots everywhere: FNV-1a
 * over its UTF-16 units.
 * Source: the FNV-1a hash with its published offset 2166136261 and prime 16777619 (memory).
 */
export function seedOf(text: string): number {
  let hash = 2166136261;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 16777619);
  return hash >>> 0;
}
