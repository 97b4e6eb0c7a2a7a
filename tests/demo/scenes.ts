import type { Scene } from "./paint.ts";
import * as bent from "./scenes-bent.ts";
import * as first from "./scenes-first.ts";
import * as frames from "./scenes-frames.ts";
import { lampAt } from "./scenes-lamp.ts";
import * as ribs from "./scenes-ribs.ts";
import * as webs from "./scenes-webs.ts";
import * as winter from "./scenes-winter.ts";

const { rib: _rib, side: _side, ...ribScenes } = ribs;

const lamp: Scene = (sketch) => lampAt(sketch, 0);

/** Every picture by the name of its file. */
export const scenes: { readonly [name: string]: Scene } = Object.fromEntries(
  Object.entries({ lamp, ...first, ...winter, ...webs, ...ribScenes, ...frames, ...bent }).map(([name, draw]) => [
    name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
    draw,
  ]),
);
