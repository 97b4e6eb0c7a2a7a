import { lit, WASH } from "../ink/colour.ts";
import { Solids, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, cameraAt, type P2, type V3 } from "../ink/space.ts";
import { bench, clamp, cup, wall } from "../shop/tools.ts";

function netStore(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-5, -13, 3.2], [1.5, 0, 2], 1500, [820, 560]));
  sketch.tint(
    [
      [0, 0],
      [1600, 0],
      [1600, 560],
      [0, 620],
    ],
    "#7b86a6",
    0.75,
    30,
  );
  sketch.tint(
    [
      [0, 330],
      [1600, 260],
      [1600, 560],
      [0, 600],
    ],
    "#e0a77a",
    0.55,
    30,
  );
  sketch.tint(
    [
      [0, 560],
      [1600, 540],
      [1600, 800],
      [0, 760],
    ],
    "#8fa3ab",
    0.8,
    10,
  );
  sketch.tint(
    [
      [0, 740],
      [1600, 720],
      [1600, 1067],
      [0, 1067],
    ],
    "#8d8467",
    0.85,
    6,
  );
  on.shadow(
    [
      [-2, 0, 2.6],
      [7, 0, 2.6],
      [7, 4, 2.6],
      [-2, 4, 0],
      [-2, 0, 0],
    ],
    0,
    0.4,
  );
  on.box([-2, 0, 0], [9, 4, 2.4], { colour: "#8b7d6c", grain: [0, 0, 1] });
  on.prism(
    [-2.3, -0.3, 2.4],
    [0, 4.6, 0],
    [0, 0, 1.9],
    [9.6, 0, 0],
    [
      [0, 0],
      [1, 0],
      [0.5, 1],
    ],
    { colour: "#6d6660", grain: [0, 1, 0.8] },
  );
  for (let i = 0; i < 30; i += 1)
    sketch.line(
      on.to([
        [-2 + i * 0.3, -0.01, 0],
        [-2 + i * 0.3, -0.01, 2.4],
      ]),
      { width: 1.3, opacity: 0.6 },
    );
  on.box([3.2, -0.03, 0], [1.6, 0.03, 2.1], { colour: "#544a41", grain: [0, 0, 1] });
  const pane = on.to([
    [-0.9, -0.04, 1],
    [1.1, -0.04, 1],
    [1.1, -0.04, 1.9],
    [-0.9, -0.04, 1.9],
  ]);
  sketch.tint(
    pane.map(([x, y]): P2 => [x, y + 8]),
    "#f2b54a",
    0.8,
    30,
  );
  sketch.face([pane], "#f7c868", { width: 4 });
  sketch.line(
    on.to([
      [0.1, -0.05, 1],
      [0.1, -0.05, 1.9],
    ]),
    { width: 4 },
  );
  sketch.line(
    on.to([
      [-0.9, -0.05, 1.45],
      [1.1, -0.05, 1.45],
    ]),
    { width: 3 },
  );
  sketch.line(
    on.to([
      [0.5, -0.05, 1.9],
      [0.5, -0.05, 1.7],
    ]),
    { width: 2 },
  );
  sketch.face(
    [
      on.to([
        [0.38, -0.05, 1.6],
        [0.62, -0.05, 1.6],
        [0.55, -0.05, 1.72],
        [0.45, -0.05, 1.72],
      ]),
    ],
    "#5c5348",
  );
  for (let i = 0; i < 46; i += 1) {
    const x = sketch.between(0, 1600);
    const y = sketch.between(880, 1050);
    sketch.line(
      [
        [x, y],
        [x + sketch.between(-8, 8), y - sketch.between(20, 60)],
      ],
      { width: 1.6, opacity: 0.7 },
    );
  }
  for (let i = 0; i < 9; i += 1) {
    const y = 600 + i * 17;
    const x = sketch.between(0, 500);
    sketch.line(
      [
        [x, y],
        [x + sketch.between(60, 200), y],
      ],
      { width: 1.4, opacity: 0.5 },
    );
  }
}

function benchLevel(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-2.2, -3.4, 2.3], [2.9, 0.6, 0.1], 1050, [760, 560]));
  wall(on, 2.6, -3, 12, 2.2);
  sketch.tint(
    on.to([
      [-3, 2.5, -1.2],
      [12, 2.5, -1.2],
      [12, -4, -1.2],
      [-3, -3, -1.2],
    ]),
    WASH.floor,
    0.8,
    10,
  );
  for (let i = 7; i >= 0; i -= 1) {
    on.box([i * 1.25, 0.85, -1], [0.1, 0.1, 0.9], spruce([0, 0, 1]));
    on.box([i * 1.25, 0, -1], [0.1, 0.1, 0.9], spruce([0, 0, 1]));
  }
  bench(on, [-0.3, -0.1], 9.6, 1.1);
  for (const x of [8.8, 0.2]) {
    on.round([x, 0.5, 0], [0, 0, 0.34], 0.12, 0.12, plain(WASH.glass));
    sketch.brush(
      on.to([
        [x - 0.11, 0.4, 0.2],
        [x + 0.11, 0.4, 0.2],
      ]),
      WASH.blue,
      9,
      0.8,
    );
  }
  const hose = Array.from({ length: 60 }, (_, i): V3 => {
    const s = i / 59;
    return [0.2 + 8.6 * s, 0.5 + 0.22 * Math.sin(s * 14), 0.34 * (1 - Math.min(1, Math.min(s, 1 - s) * 12)) + 0.02];
  });
  sketch.brush(on.to(hose), "#86a9b4", 11, 0.9);
  sketch.line(on.to(hose.map(([x, y, z]): V3 => [x, y, z + 0.02])), { width: 2 });
  sketch.line(on.to(hose.map(([x, y, z]): V3 => [x, y - 0.05, z])), { width: 1.6, opacity: 0.7 });
  on.letter("31 MM", [1.6, -0.12, -0.14], [0.2, 0, 0], [0, 0, -0.2], 3);
}

function spruceStack(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-1.1, -2.6, 1.5], [0.75, 0.9, 0.45], 1150, [800, 560]));
  wall(on, 4.4, -3, 4, 2, "#cfc3ab");
  sketch.tint(
    [
      [0, 700],
      [1600, 640],
      [1600, 1067],
      [0, 1067],
    ],
    WASH.floor,
    0.75,
    10,
  );
  on.boxShadow([0, 0, 0], [1.6, 4, 0.9], 0, 0.4);
  for (let row = 0; row < 4; row += 1) {
    const z = row * 0.24;
    for (const y of [3.4, 1.8, 0.25]) on.box([-0.05, y, z], [1.7, 0.12, 0.08], plain("#a98a5d"));
    for (let k = row === 3 ? 1 : 2; k >= 0; k -= 1)
      on.box([k * 0.54, 0, z + 0.08], [0.5, 4.2, 0.16], spruce([0, 1, 0]));
  }
  for (const [x, z] of [
    [0.02, 0.82],
    [0.56, 0.82],
  ] as const)
    for (const flip of [0, 1]) {
      sketch.line(
        on.to([
          [x + 0.12, -0.01, z + flip * 0.12],
          [x + 0.38, -0.01, z + (1 - flip) * 0.12],
        ]),
        { width: 7, colour: "#b4492f", opacity: 0.9 },
      );
    }
}

function loftPaper(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-0.6, -2.3, 2.5], [0.9, 0.35, 0], 1150, [800, 520]));
  bench(on, [-2.5, -1], 8, 2.6, 5);
  on.shadow(
    [
      [-2.4, -0.45, 0.04],
      [5, -0.45, 0.04],
      [5, 0.95, 0.04],
      [-2.4, 0.95, 0.04],
    ],
    0,
    0.25,
  );
  sketch.face(
    [
      on.to([
        [-2.4, -0.5, 0.01],
        [5, -0.5, 0.01],
        [5, 0.95, 0.01],
        [-2.4, 0.95, 0.01],
      ]),
    ],
    WASH.card,
  );
  sketch.line(
    on.to([
      [-2.4, 0.55, 0.012],
      [5, 0.42, 0.012],
    ]),
    { width: 3 },
  );
  sketch.line(
    on.to([
      [-2.4, -0.15, 0.012],
      [5, 0, 0.012],
    ]),
    { width: 3 },
  );
  for (const dy of [0.09, 0.18]) {
    sketch.line(
      on.to([
        [-2.4, 0.55 - dy, 0.012],
        [5, 0.42 - dy, 0.012],
      ]),
      { width: 1.3 },
    );
    sketch.line(
      on.to([
        [-2.4, -0.15 + dy, 0.012],
        [5, dy, 0.012],
      ]),
      { width: 1.3 },
    );
  }
  for (let rib = -4; rib < 9; rib += 1) {
    const x = rib * 0.5 + 0.2;
    sketch.line(
      on.to([
        [x, -0.25, 0.012],
        [x, 0.66, 0.012],
      ]),
      { width: 1.6 },
    );
    on.letter(String(Math.abs(rib) + 1), [x + 0.03, -0.3, 0.012], [0.09, 0, 0], [0, -0.09, 0], 2.2);
  }
  sketch.line(on.to(arc([0.72, -0.3], 0.16, 0.1, 0, 360, 24).map(([x, y]): V3 => [x, y, 0.012])), {
    width: 4,
    colour: "#b4492f",
  });
  on.box([-2.2, 0.57, 0.01], [6.6, 0.05, 0.05], spruce([1, 0, 0]));
  for (const x of [2.6, 1.5, 0.35, -0.6]) {
    on.boxShadow([x, 0.62, 0.01], [0.22, 0.16, 0.14], 0.01);
    on.box([x, 0.6, 0.01], [0.22, 0.16, 0.14], plain(WASH.lead));
  }
  on.round([0.3, -0.75, 0.03], [0.7, 0.15, 0], 0.022, 0.022, plain("#b4492f", 1.6));
}

function firstCup(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-0.3, -2.7, 1.5], [0.35, 0.1, 0.35], 1350, [760, 560]));
  wall(on, 1.6, -3, 4, 2, "#d8cdb6");
  bench(on, [-3, -1.2], 7, 2.6);
  on.shadow(
    [
      [-0.8, 0, 0.9],
      [-0.1, 0, 0.9],
      [-0.1, 0.5, 0.9],
      [-0.8, 0.5, 0],
      [-0.2, 0, 0],
    ],
    0,
    0.28,
  );
  on.round([-0.45, 0.3, 0], [0, 0, 0.95], 0.34, 0.34, plain(WASH.glass));
  sketch.tint(
    on.to([
      [-0.78, 0.1, 0.03],
      [-0.12, 0.1, 0.03],
      [-0.12, 0.1, 0.42],
      [-0.78, 0.1, 0.42],
    ]),
    WASH.amber,
    0.75,
  );
  sketch.line(on.to(arc([-0.45, 0.3], 0.34, 0.34, 180, 360, 20).map(([x, y]): V3 => [x, y, 0.42])), { width: 2.4 });
  for (let i = 1; i < 9; i += 1)
    sketch.line(
      on.to([
        [-0.5, -0.04, i * 0.1],
        [-0.5 + (i % 2 === 0 ? 0.17 : 0.1), -0.04, i * 0.1],
      ]),
      { width: 2.4 },
    );
  on.letter("40", [-0.28, -0.04, 0.86], [0.1, 0, 0], [0, 0, -0.1], 2.4);
  cup(on, [0.75, 0.25, 0], 0.36, 0.62, "1");
  on.prism(
    [0.72, 0.2, 0.5],
    [0.45, 0.1, 0.75],
    [0.09, 0, -0.03],
    [0, 0.03, 0],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([0.45, 0.1, 0.75]),
  );
  for (const x of [0.15, -0.4, -0.95]) {
    on.boxShadow([x, -0.75, 0], [0.5, 0.16, 0.1], 0);
    for (const k of [2, 1, 0])
      on.box([x + (k === 1 ? 0.2 : 0), -0.75 + k * 0.07, 0], [0.42, 0.065, 0.07], spruce([1, 0, 0]));
  }
}

function leverPress(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-1.6, -3.1, 1.7], [0.7, 0.2, 0.55], 1180, [800, 560]));
  wall(on, 1.5, -2.5, 5, 2.4, "#d2c7b2");
  bench(on, [-2, -0.6], 6, 1.8);
  on.boxShadow([-0.75, 0.15, 0], [0.3, 0.4, 1.2], 0, 0.35);
  on.box([-0.75, 0.42, 0], [0.28, 0.1, 1.25], spruce([0, 0, 1]));
  on.boxShadow([-0.7, 0.2, 0.7], [3.1, 0.2, 0.1], 0, 0.3);
  on.box([0.15, 0.12, 0], [0.34, 0.34, 0.16], plain(WASH.iron));
  for (const k of [2, 1, 0])
    on.box([0.2 + k * 0.08, 0.24, k === 1 ? 0.34 : 0.16], [0.075, 0.08, 0.3], spruce([0, 0, 1]));
  on.prism(
    [-0.8, 0.2, 0.66],
    [3.2, 0, 0.32],
    [0, 0, 0.2],
    [0, 0.2, 0],
    [
      [0, 0],
      [1, 0.2],
      [1, 0.8],
      [0, 1],
    ],
    { colour: WASH.ash, grain: [3.2, 0, 0.32] },
  );
  on.box([-0.75, 0.08, 0], [0.28, 0.1, 1.25], spruce([0, 0, 1]));
  on.round([-0.61, 0.02, 0.8], [0, -0.06, 0], 0.06, 0.06, plain(WASH.iron));
  const mesh = on.to([
    [0.02, -0.05, 0],
    [0.72, -0.05, 0],
    [0.72, -0.05, 0.66],
    [0.02, -0.05, 0.66],
  ]);
  sketch.within([mesh], () => {
    for (let i = 0; i < 26; i += 1) {
      sketch.line(
        on.to([
          [i * 0.03, -0.05, 0],
          [i * 0.03, -0.05, 0.7],
        ]),
        { width: 1, opacity: 0.6 },
      );
      sketch.line(
        on.to([
          [0, -0.05, i * 0.03],
          [0.8, -0.05, i * 0.03],
        ]),
        { width: 1, opacity: 0.6 },
      );
    }
  });
  sketch.line([...mesh, mesh[0] ?? [0, 0]], { width: 4 });
  sketch.line(
    on.to([
      [2.3, 0.3, 0.95],
      [2.3, 0.3, 0.72],
    ]),
    { width: 4 },
  );
  on.round([2.3, 0.26, 0.55], [0, -0.08, 0], 0.19, 0.19, plain(WASH.brass));
  sketch.face([on.to(arc([2.3, 0.55], 0.15, 0.15).map(([x, z]): V3 => [x, 0.17, z]))], WASH.card, { width: 1.4 });
  sketch.line(
    on.to([
      [2.3, 0.16, 0.55],
      [2.38, 0.16, 0.65],
    ]),
    { width: 3, colour: "#b4492f" },
  );
  sketch.line(
    on.to([
      [2.3, 0.25, 0.36],
      [2.3, 0.25, 0.2],
      [2.36, 0.25, 0.14],
      [2.28, 0.25, 0.1],
    ]),
    { width: 5 },
  );
}

function scarfCut(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-0.2, -2.9, 1.7], [0.4, 0, 0.22], 1350, [780, 560]));
  bench(on, [-3.5, -1.2], 8, 2.8, 4);
  on.boxShadow([-2.4, 0, 0], [3.8, 0.5, 0.24], 0, 0.35);
  on.prism(
    [-2.6, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.55, 0],
    [
      [0, 0],
      [4.1, 0],
      [1.5, 0.26],
      [0, 0.26],
    ],
    spruce([1, 0, 0]),
  );
  on.prism(
    [-0.95, -0.02, 0.42],
    [1, 0, 0.08],
    [-0.04, 0, 0.5],
    [0, 0.55, 0],
    [
      [0, 0.52],
      [2.6, 0],
      [4.6, 0],
      [4.6, 0.52],
    ],
    spruce([1, 0, 0.08]),
  );
  const level: readonly V3[] = [
    [-1.1, -0.12, 0],
    [1.5, -0.12, 0],
  ];
  sketch.line(
    on.to([
      [-1.1, -0.35, 0],
      [1.5, -0.35, 0],
    ]),
    { width: 1.8 },
  );
  for (const [x] of level) {
    sketch.line(
      on.to([
        [x, -0.1, 0],
        [x, -0.42, 0],
      ]),
      { width: 1.6 },
    );
    sketch.line(
      on.to([
        [x - 0.04, -0.38, 0],
        [x + 0.04, -0.32, 0],
      ]),
      { width: 3 },
    );
  }
  on.letter("12 : 1", [-0.1, -0.44, 0], [0.16, 0, 0], [0, -0.16, 0], 3);
}

function capClamps(sketch: Sketch): void {
  const on = new Solids(sketch, cameraAt([-1.05, -1.5, 1.35], [2.6, 0.75, 0.1], 1120, [700, 500]));
  wall(on, 2.6, -2, 14, 2.6, "#cdbfa6", 18);
  bench(on, [-1.2, -0.5], 14, 2);
  on.boxShadow([-0.6, 0.1, 0], [9, 0.3, 0.3], 0, 0.35);
  for (let k = 0; k < 4; k += 1) on.box([-0.6, 0.12, 0.04 + k * 0.085], [9, 0.3, 0.08], spruce([1, 0, 0]));
  for (let i = 15; i >= 0; i -= 1) {
    const x = -0.1 + i * 0.55;
    on.box([x + 0.2, -0.08, 0], [0.16, 0.16, 0.16], plain("#c2a574"));
    clamp(on, [x, 0.03, 0.02], 0.66, [0, 0.42, 0], 0.16);
  }
  for (let i = 0; i < 24; i += 1) {
    const p = on.to([[sketch.between(-0.5, 4), 0.115, 0.12 + 0.085 * Math.floor(sketch.between(0, 3))]])[0];
    if (p !== undefined) sketch.tint(arc(p, 7, 5, 0, 360, 10), lit(WASH.amber, 0.7), 0.9);
  }
}

export const firstScenes = { netStore, benchLevel, spruceStack, loftPaper, firstCup, leverPress, scarfCut, capClamps };
