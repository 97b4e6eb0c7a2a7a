/** Numbers in [0, 1) that are the same for the same name, so that a picture drawn twice is the same picture. */
export type Random = () => number;

export function randomOf(name: string): Random {
  let state = 2166136261;
  for (const letter of name) state = Math.imul(state ^ letter.charCodeAt(0), 16777619);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A number between `least` and `most`. */
export function between(random: Random, least: number, most: number): number {
  return least + (most - least) * random();
}
