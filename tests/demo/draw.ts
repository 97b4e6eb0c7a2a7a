/** Draws every picture of the demonstration record: `npm run demo:draw [name …]`. The same names give the same pictures. */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { paint } from "./ink/paint.ts";
import { framePlans } from "./plans/frames.ts";
import { fuselagePlans } from "./plans/fuselage.ts";
import { partPlans } from "./plans/parts.ts";
import { wingPlans } from "./plans/wing.ts";
import { scenes } from "./scenes/scenes.ts";

const content = fileURLToPath(new URL("../../content/", import.meta.url));

function drawPlans(): void {
  mkdirSync(`${content}drawings`, { recursive: true });
  for (const [name, draw] of Object.entries({ ...wingPlans, ...fuselagePlans, ...framePlans, ...partPlans })) {
    const file = name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    writeFileSync(`${content}drawings/${file}.svg`, draw());
  }
}

async function drawScenes(wanted: readonly string[]): Promise<void> {
  mkdirSync(`${content}photos`, { recursive: true });
  for (const [name, draw] of Object.entries(scenes)) {
    if (wanted.length > 0 && !wanted.includes(name)) continue;
    const bytes = await paint(name, draw);
    writeFileSync(`${content}photos/${name}.jpg`, bytes);
    console.log(`${name}.jpg  ${Math.round(bytes.length / 1000)} kB`);
  }
}

drawPlans();
await drawScenes(process.argv.slice(2));
