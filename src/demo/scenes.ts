import type { Scene } from "./paint.ts";
import * as first from "./scenes-first.ts";

/** Every picture by the name of its file. */
export const scenes: { readonly [name: string]: Scene } = Object.fromEntries(
  Object.entries({ ...first }).map(([name, draw]) => [name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), draw]),
);
