import { hex } from "../make.ts";

/** Numbers that look like chance and are the same on each run. */
export class Chance {
  #index = 0;
  readonly #seed: string;

  constructor(seed: string) {
    this.#seed = seed;
  }

  /** From 0 to `below`, which is not among them. */
  below(below: number): number {
    return Number.parseInt(hex("sha256", `${this.#seed} ${(this.#index += 1)}`).slice(0, 12), 16) % below;
  }

  of<T>(items: readonly T[]): T {
    const item = items[this.below(items.length)];
    if (item === undefined) throw new Error("nothing to choose from");
    return item;
  }
}
