import type { Scene } from "../ink/paint.ts";
import { autumnScenes } from "./autumn.ts";
import { bentScenes } from "./bent.ts";
import { firstScenes } from "./first.ts";
import { framesScenes } from "./frames.ts";
import { lampAt } from "./lamp.ts";
import { ribsScenes } from "./ribs.ts";
import { websScenes } from "./webs.ts";
import { winterScenes } from "./winter.ts";

const lamp: Scene = (sketch) => lampAt(sketch, 0);

/** Every picture by the name of its file. */
export const scenes: { readonly [name: string]: Scene } = Object.fromEntries(
  Object.entries({
    lamp,
    ...firstScenes,
    ...winterScenes,
    ...websScenes,
    ...ribsScenes,
    ...framesScenes,
    ...bentScenes,
    ...autumnScenes,
  }).map(([name, draw]) => [name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), draw]),
);
