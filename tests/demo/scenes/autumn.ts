import { WASH } from "../ink/colour.ts";
import { birch, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { add, arc, times, type P2, type V3 } from "../ink/space.ts";
import { frame } from "./frames.ts";
import { side } from "./ribs.ts";
import { stage } from "../shop/stage.ts";
import { clamp, cup, threeLegs } from "../shop/tools.ts";

type On = ReturnType<typeof stage>;

/** Six frames along the wall, the largest in front: B1 with its cross to B6, a post. */
function smallFrames(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.35, -3.6, 1.35], target: [0.55, 0.6, 0.62], zoom: 1400, wall: 1.25, floor: 0 });
  const frames: readonly (readonly [x: number, wide: number, high: number])[] = [
    [3.1, 0.14, 0.62],
    [2.2, 0.66, 0.9],
    [1.25, 0.84, 1.24],
    [0.3, 0.88, 1.34],
    [-0.65, 0.88, 1.3],
    [-1.6, 0.84, 1.2],
  ];
  for (const [i, [x, wide, high]] of frames.entries()) {
    const at: V3 = [x, 0.75, 0];
    const [u, v, w]: [V3, V3, V3] = [
      [wide, 0, 0],
      [0, 0.24, high],
      [0, -0.09, 0.02],
    ];
    on.shadow([at, add(at, u), add(at, [wide, 0.3, high]), add(at, [0, 0.3, high])], 0, 0.26);
    if (i === 0) on.prism(at, u, v, w, SQUARE, spruce(v));
    else frame(on, at, u, v, w, i === frames.length - 1);
  }
  for (const [k, [x, wide]] of frames.entries())
    on.letter(`B${6 - k}`, [x + wide / 2 - 0.09, 0.32, 0.005], [0.11, 0, 0], [0, -0.11, 0], 3);
}

const SQUARE: readonly P2[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** One aileron hanging by its spar: ribs downward, the trailing edge below. */
function hanging(on: On, x: number): void {
  const [wide, high] = [1.5, 1.02];
  const bar = (at: V3, size: V3, grain: V3): void => on.box(at, size, spruce(grain));
  on.shadow(
    [
      [x, 1.1, 1.8],
      [x + wide, 1.1, 1.8],
      [x + wide, 1.1, 0.8],
      [x, 1.1, 0.8],
    ],
    0,
    0.16,
  );
  bar([x, 0.5, 1.82 - high], [wide, 0.05, 0.08], [1, 0, 0]);
  for (const share of [0, 0.25, 0.5, 0.75, 1])
    bar([x + share * (wide - 0.05), 0.5, 1.9 - high], [0.05, 0.05, high - 0.16], [0, 0, 1]);
  for (const share of [0, 0.25, 0.5, 0.75])
    on.sketch.line(
      on.to([
        [x + share * (wide - 0.05) + 0.05, 0.49, 1.9 - high],
        [x + (share + 0.25) * (wide - 0.05), 0.49, 1.72],
      ]),
      { width: 2, colour: "#7d5a33" },
    );
  bar([x, 0.46, 1.74], [wide, 0.12, 0.15], [1, 0, 0]);
  for (const share of [0.22, 0.72]) {
    on.box([x + share * wide, 0.48, 1.89], [0.09, 0.08, 0.1], plain(WASH.brass));
    on.sketch.line(
      on.to([
        [x + share * wide + 0.045, 0.52, 1.99],
        [x + share * wide + 0.045, 0.52, 2.24],
      ]),
      { width: 4, colour: "#5c5348" },
    );
  }
}

function hungLevel(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.1, -3.7, 1.5], target: [0.1, 0.5, 1.42], zoom: 1420, wall: 1.4, floor: 0 });
  hanging(on, -1.75);
  hanging(on, 0.35);
  on.round([-2.35, 0.52, 2.26], [4.9, 0, 0], 0.035, 0.035, plain("#a9743f"));
  for (const x of [-2.3, 2.4]) {
    on.box([x, 0.44, 2.18], [0.16, 0.16, 0.05], plain(WASH.iron));
    on.box([x + 0.05, 0.9, 2.1], [0.06, 0.5, 0.16], plain(WASH.dark));
  }
  on.box([-0.3, 0.4, 2.31], [0.8, 0.1, 0.1], plain(WASH.red));
  on.round([0.02, 0.38, 2.36], [0.16, 0, 0], 0.035, 0.035, plain(WASH.glass));
}

/** The two sides drawn in to the firewall, from in front of the nose; straps round them, a sandbag where the seat will be. */
function frontEnd(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.15, -3.7, 2.2], target: [0.1, 0.7, 0.66], zoom: 1420, wall: 3.6, floor: 0 });
  for (const y of [1.6, -0.55]) on.box([-0.85, y, 0.1], [1.85, 0.22, 0.22], plain(WASH.dark));
  side(on, [0.75, -0.7, 0.34], [0.3, 3.2, 0], [0, 0, 0.95], [0.06, 0, 0], 6);
  frame(on, [-0.62, 0.75, 0.36], [1.44, 0, 0], [0, 0, 0.92], [0, -0.08, 0], false);
  on.shadow(
    arc([0.1, 0.5], 0.36, 0.24).map(([x, y]): V3 => [x, y, 0.42]),
    0.3,
    0.3,
  );
  sack(on, [0.1, 0.42, 0.34]);
  frame(on, [-0.6, -0.66, 0.36], [1.38, 0, 0], [0, 0, 0.9], [0, -0.08, 0], true);
  side(on, [-0.66, -0.72, 0.34], [-0.24, 3.2, 0], [0, 0, 0.95], [-0.06, 0, 0], 6);
  for (const z of [0.55, 1.06])
    sketch.line(
      on.to([
        [0.86, -0.5, z],
        [0.8, -0.8, z],
        [-0.76, -0.8, z + 0.02],
        [-0.8, -0.5, z],
        [-0.84, 0.1, z],
      ]),
      { width: 9, colour: "#b4492f" },
    );
  on.box([0.02, -0.86, 0.52], [0.16, 0.06, 0.1], plain(WASH.steel));
  on.box([0.02, -0.86, 1.03], [0.16, 0.06, 0.1], plain(WASH.steel));
}

function sack(on: On, at: V3): void {
  const outline = on.to(
    arc([0, 0], 0.36, 0.3, 0, 360, 30).map(([x, z]): V3 => add(at, [x, 0, 0.3 + z * (z > 0 ? 0.9 : 0.55)])),
  );
  on.sketch.face([outline], WASH.sail, { width: 2.6 });
  for (const x of [-0.2, -0.04, 0.14])
    on.sketch.line(on.to([add(at, [x, -0.01, 0.5]), add(at, [x * 1.3, -0.01, 0.2])]), { width: 1.4, opacity: 0.5 });
  on.round(add(at, [0, 0, 0.55]), [0.02, 0, 0.12], 0.07, 0.1, plain(WASH.sail));
}

/** A corner of a bay by the light of a lamp, with a small printed label. */
function labels(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.5, -2.3, 1.5], target: [0.25, 0.2, 0.42], zoom: 1420 });
  on.box([-1.6, -0.4, -0.08], [3.4, 1.3, 0.08], birch([1, 0, 0]));
  on.box([-1.6, 0.85, 0], [3.4, 0.1, 1.5], birch([0, 0, 1]));
  sketch.tint(on.to(arc([0.2, 0.85], 0.95, 0.62).map(([x, z]): V3 => [x, 0.84, 0.1 + z])), "#fff3c9", 0.75, 26);
  on.box([-1.6, 0.72, 0], [3.4, 0.13, 0.16], spruce([1, 0, 0]));
  on.boxShadow([1.15, 0.1, 0], [0.16, 0.75, 1.5], 0, 0.24);
  on.box([1.15, -0.4, 0], [0.16, 1.25, 1.5], spruce([0, 0, 1]));
  on.prism(
    [1.15, 0.72, 0],
    [-0.5, 0, 0],
    [0, 0, 0.5],
    [0, -0.03, 0],
    [
      [0, 0],
      [1, 0],
      [0, 1],
    ],
    birch([1, 0, 0]),
  );
  const at: V3 = [-0.42, 0.84, 0.86];
  on.prism(at, [1.02, 0.0, 0.03], [0, 0, -0.46], [0, -0.008, 0], SQUARE, plain(WASH.card, 1.6));
  on.letter("FIREWALL B1", add(at, [0.09, -0.012, -0.1]), [0.085, 0, 0.0025], [0, 0, -0.085], 2.6);
  for (const [k, long] of [0.82, 0.6].entries())
    sketch.line(on.to([add(at, [0.09, -0.012, -0.28 - k * 0.08]), add(at, [0.09 + long, -0.012, -0.255 - k * 0.08])]), {
      width: 3,
      colour: "#557d98",
    });
  cup(on, [-1.05, -0.05, 0], 0.15, 0.26);
  on.round([-0.72, -0.12, 0.03], [0.55, 0.16, 0.03], 0.03, 0.02, plain("#a9743f"));
  on.round([-0.19, 0.035, 0.06], [0.14, 0.04, 0], 0.05, 0.03, plain(WASH.dark));
}

/** What is at stake, between a screw clamp and a staple gun. */
function cake(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-0.4, -3, 1.9],
    target: [0, 0.15, 0.32],
    zoom: 1330,
    bench: [-1.3, 1.7],
    wall: 1.9,
  });
  const plate: V3 = [0, 0.35, 0];
  on.shadow(
    arc([0, 0.35], 0.74, 0.74).map(([x, y]): V3 => [x, y, 0.06]),
    0,
  );
  on.round(plate, [0, 0, 0.05], 0.62, 0.78, plain(WASH.glass));
  on.round(add(plate, [0, 0, 0.05]), [0, 0, 0.34], 0.56, 0.56, plain("#b98245"));
  on.round(add(plate, [0, 0, 0.39]), [0, 0, 0.07], 0.58, 0.55, plain("#f7ecd2"));
  for (let i = 0; i < 9; i += 1) {
    const turn = (i / 9) * 2 * Math.PI;
    on.round(
      add(plate, [0.4 * Math.cos(turn), 0.4 * Math.sin(turn), 0.46]),
      [0, 0, 0.06],
      0.05,
      0.035,
      plain(WASH.red),
    );
  }
  clamp(on, [-1.35, 0.1, 0], 0.95, [0.5, 0, 0], 0.42, true);
  for (const x of [-1.2, -1.02]) threeLegs(on, [x + 0.05, -0.72, 0], 0.06, 1.8);
  staples(on);
}

function staples(on: On): void {
  on.boxShadow([0.95, -0.35, 0], [0.75, 0.14, 0.3]);
  on.prism(
    [0.9, -0.32, 0.05],
    [0.82, 0, 0],
    [0, 0, 0.36],
    [0, 0.14, 0],
    [
      [0, 0],
      [1, 0],
      [1, 0.34],
      [0.2, 0.62],
      [0, 0.62],
    ],
    plain(WASH.blue),
  );
  on.prism(
    [0.96, -0.3, 0.3],
    [0.78, 0, 0],
    [0, 0, 0.2],
    [0, 0.1, 0],
    [
      [0, 0],
      [0.95, 0.55],
      [1, 0.8],
      [0, 0.35],
    ],
    plain(WASH.steel),
  );
  for (let i = 0; i < 7; i += 1) {
    const [x, y] = [on.sketch.between(0.75, 1.6), on.sketch.between(-0.95, -0.55)];
    on.sketch.line(
      on.to([
        [x, y, 0.002],
        [x - 0.02, y + 0.05, 0.002],
        [x + 0.07, y + 0.07, 0.002],
        [x + 0.09, y + 0.02, 0.002],
      ]),
      { width: 2.4, colour: "#6d7376" },
    );
  }
}

/** A bearer at the firewall with its knee block and two clamps. */
function kneeBlocks(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.15, -3, 1.0], target: [0.2, 0, 0.52], zoom: 1330, wall: 1.9, floor: -0.5 });
  on.box([1.1, -0.9, -0.45], [0.09, 2.1, 1.9], birch([0, 0, 1]));
  for (const y of [0.55, -0.35]) {
    for (let i = 0; i < 5; i += 1)
      on.box([-1.5, y, 0.62 + i * 0.06], [2.6, 0.26, 0.06], { colour: WASH.ash, grain: [1, 0, 0], line: 1.5 });
    on.prism(
      [1.1, y + 0.02, 0.62],
      [-0.62, 0, 0],
      [0, 0, -0.62],
      [0, 0.22, 0],
      [
        [0, 0],
        [1, 0],
        [0.82, 0.2],
        [0.2, 0.86],
        [0, 1],
      ],
      { colour: WASH.ash, grain: [1, 0, -1] },
    );
    sketch.brush(
      on.to([
        [0.5, y - 0.01, 0.615],
        [1.08, y - 0.01, 0.615],
      ]),
      WASH.amber,
      7,
      0.85,
    );
  }
  clamp(on, [0.28, -0.24, 0.16], 0.98, [0.42, 0, 0], 0.16, true);
  const bulb = on.to([[-0.9, 0.9, 1.3]])[0] ?? [0, 0];
  sketch.tint(arc(bulb, 210, 160), "#fff0c2", 0.7, 26);
}

/** The first instrument, upright on the bench before the open door, and the longer bolts. */
function instrument(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [0.1, -3, 1.25],
    target: [0.1, 0.3, 0.72],
    zoom: 1330,
    bench: [-1.2, 1.4],
    wall: 1.7,
  });
  on.prism([0.95, 1.69, 0], [1.5, 0, 0], [0, 0, 2.6], [0, 0.01, 0], SQUARE, plain("#cfdcdc", 2.4));
  sketch.tint(
    on.to([
      [0.4, 0.2, 0.002],
      [1.8, 0.2, 0.002],
      [2.5, 1.4, 0.002],
      [1.1, 1.4, 0.002],
    ]),
    "#fff6d8",
    0.6,
    20,
  );
  const at: V3 = [-1.15, 0.55, 0];
  on.boxShadow(at, [2.1, 0.1, 1.42], 0, 0.3);
  on.prism(at, [2.1, 0, 0], [0, 0.2, 1.42], [0, -0.07, 0.01], PANEL, birch([1, 0, 0]));
  const [cx, cy, cz]: V3 = [-0.1, 0.585, 0.78];
  const ring = (r: number): P2[] =>
    on.to(arc([0, 0], r, r, 0, 360, 48).map(([x, z]): V3 => [cx + x, cy + z * 0.14, cz + z]));
  const facing = (r: number, turn: number): V3 => [
    cx + r * Math.sin(turn),
    cy + 0.14 * r * Math.cos(turn),
    cz + r * Math.cos(turn),
  ];
  sketch.face([ring(0.5)], "#3a3633", { width: 3 });
  sketch.face([ring(0.43)], "#24211f", { width: 1.6 });
  for (let i = 0; i < 50; i += 1) {
    const turn = (i / 50) * 2 * Math.PI;
    sketch.brush(on.to([facing(0.41, turn), facing(i % 5 === 0 ? 0.34 : 0.38, turn)]), "#f6efdd", i % 5 === 0 ? 4 : 2);
  }
  for (let i = 0; i < 10; i += 1) {
    const [x, y, z] = facing(0.27, (i / 10) * 2 * Math.PI);
    const [[px, py] = [0, 0]] = on.to([[x, y, z]]);
    sketch.brush(
      [
        [px - 1, py - 8],
        [px + 1, py + 8],
      ],
      "#f6efdd",
      5,
      0.9,
    );
  }
  sketch.brush(on.to([facing(-0.08, 0.24), facing(0.36, 0.24)]), "#f6efdd", 9);
  sketch.brush(on.to([facing(-0.06, 0.05), facing(0.22, 0.05)]), "#f6efdd", 13);
  sketch.face([ring(0.045)], WASH.steel, { width: 1.6 });
  for (const y of [-0.55, -0.8]) bolt(on, [0.65, y, 0.05]);
}

const PANEL: readonly P2[] = [[0, 0], [1, 0], [1, 0.72], ...arc([0.5, 0.72], 0.5, 0.28, 0, 180, 20), [0, 0.72]];

function bolt(on: On, at: V3): void {
  on.boxShadow(add(at, [0, -0.03, -0.05]), [0.6, 0.06, 0.06], 0, 0.25);
  on.round(at, [0.6, 0, 0], 0.032, 0.032, plain(WASH.steel));
  on.round(add(at, times([1, 0, 0], -0.09)), [0.09, 0, 0], 0.07, 0.07, plain(WASH.steel));
  for (let i = 0; i < 7; i += 1)
    on.sketch.line(on.to([add(at, [0.42 + i * 0.026, -0.03, -0.03]), add(at, [0.43 + i * 0.026, -0.03, 0.03])]), {
      width: 1.2,
    });
}

export const autumnScenes = { smallFrames, hungLevel, frontEnd, labels, cake, kneeBlocks, instrument };
