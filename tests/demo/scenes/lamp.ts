import { WASH } from "../ink/colour.ts";
import { spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2, type V3 } from "../ink/space.ts";
import { stage } from "../shop/stage.ts";

/** How far it swings, in radians, and the length of its cord. */
const SWING = 0.26;
const CORD = 2.1;
const HOOK: V3 = [0.35, 0.35, 3];

/** A lamp on a cord above a plank with the marks of a plane; it swings to and fro once while `phase` goes from 0 to 1. */
export function lampAt(sketch: Sketch, phase: number): void {
  const on = stage(sketch, {
    eye: [-0.5, -3.2, 1.35],
    target: [0.35, 0.4, 0.62],
    zoom: 1180,
    wall: 1.9,
    wallColour: "#cbbfa8",
    bench: [-0.9, 1.3],
  });
  sketch.tint(
    [
      [0, 0],
      [1600, 0],
      [1600, 1067],
      [0, 1067],
    ],
    "#4b4a5e",
    0.42,
    6,
  );
  const angle = SWING * Math.cos(2 * Math.PI * phase);
  const lamp: V3 = [HOOK[0] + CORD * Math.sin(angle), HOOK[1], HOOK[2] - CORD * Math.cos(angle)];
  on.boxShadow([-1.3, 0, 0], [3.2, 0.55, 0.14], 0.01, 0.3);
  on.box([-1.3, 0, 0], [3.2, 0.55, 0.14], spruce([1, 0, 0]));
  const lit = HOOK[0] + 1.25 * (lamp[0] - HOOK[0]);
  sketch.tint(on.to(arc([lit, 0.25], 1.05, 0.62, 0, 360, 40).map(([x, y]): V3 => [x, y, 0.15])), "#ffdf8a", 0.62, 30);
  sketch.tint(on.to(arc([lit, 0.25], 0.5, 0.32, 0, 360, 40).map(([x, y]): V3 => [x, y, 0.15])), "#fff3c4", 0.75, 30);
  for (let mark = 0; mark < 16; mark += 1) {
    const x = -1.15 + mark * 0.19;
    const near = Math.max(0, 1 - Math.abs(x - lit) / 1.1);
    sketch.line(
      on.to([
        [x, 0.06, 0.142],
        [x + 0.05, 0.5, 0.142],
      ]),
      { width: 1.2 + 2.2 * near, opacity: 0.12 + 0.5 * near, colour: "#7c5a2f" },
    );
  }
  shade(sketch, on.to([HOOK, lamp]) as [P2, P2], angle);
}

/** The cord from above, and the shade in line with it. */
function shade(sketch: Sketch, [hook, [x, y]]: [P2, P2], angle: number): void {
  const turned = (across: number, along: number): P2 => [
    x + across * Math.cos(angle) + along * Math.sin(angle),
    y - across * Math.sin(angle) + along * Math.cos(angle),
  ];
  sketch.line([hook, turned(0, -92)], { width: 4 });
  sketch.tint(arc(turned(0, 20), 150, 90), "#ffe49a", 0.6, 30);
  sketch.face([arc([0, 0], 34, 34).map(([across, along]) => turned(across, along + 22))], "#fff4cd", { width: 2 });
  sketch.face([[turned(-26, -92), turned(26, -92), turned(118, 18), turned(-118, 18)]], WASH.blue, { width: 3.4 });
  sketch.line([turned(-118, 18), turned(118, 18)], { width: 5 });
}
