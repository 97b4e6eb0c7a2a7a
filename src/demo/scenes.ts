import type { Scene } from "./paint.ts";
import * as first from "./scenes-first.ts";
import * as webs from "./scenes-webs.ts";
import * as winter from "./scenes-winter.ts";

/** Every picture by the name of its file. */
export const scenes: { readonly [name: string]: Scene } = Object.fromEntries(
  Object.entries({ ...first, ...winter, ...webs }).map(([name, draw]) => [name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), draw]),
);
