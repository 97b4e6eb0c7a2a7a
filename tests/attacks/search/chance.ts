/** Chance that is the same for the same seed: 32 bits of a counter, mixed; good enough to choose edits with. */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = Math.imul(seed + 1, 0x9e37_79b1);
  }

  /** 0 to `n` − 1. */
  below(n: number): number {
    this.#state = (this.#state + 0x6d2b_79f5) | 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * n);
  }

  /** Undefined of nothing. */
  of<T>(things: readonly T[]): T | undefined {
    return things[this.below(things.length)];
  }

  shuffled<T>(things: readonly T[]): T[] {
    const left = [...things];
    return things.flatMap(() => left.splice(this.below(left.length), 1));
  }
}
