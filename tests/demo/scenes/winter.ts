import { WASH } from "../ink/colour.ts";
import { letters } from "../ink/lettering.ts";
import { ash, birch, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2, type V3 } from "../ink/space.ts";
import { stage, torn } from "../shop/stage.ts";
import { clamp, cup, stick, threeLegs } from "../shop/tools.ts";

function shavings(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.3, -2.4, 1.5],
    target: [0.2, 0.1, 0.2],
    zoom: 1300,
    wall: 2.2,
    bench: [-1.2, 1.2],
  });
  stick(on, [-4, 0, 0], [9, 0.4, 0.16]);
  on.boxShadow([-0.3, 0.05, 0.16], [0.95, 0.28, 0.22], 0.16);
  on.box([-0.3, 0.06, 0.16], [0.95, 0.28, 0.2], { colour: "#b5834c", grain: [1, 0, 0] });
  on.prism(
    [0.12, 0.1, 0.36],
    [-0.2, 0, 0.3],
    [0.1, 0, 0.06],
    [0, 0.2, 0],
    [
      [0, 0],
      [1, 0],
      [1, 0.4],
      [0, 0.4],
    ],
    plain(WASH.steel),
  );
  on.prism(
    [-0.26, 0.16, 0.36],
    [0.16, 0, 0],
    [0, 0, 0.28],
    [0, 0.07, 0],
    [
      [0, 0],
      [1, 0],
      [0.6, 0.5],
      [0.8, 1],
      [0.1, 1],
    ],
    plain("#8c5f35"),
  );
  on.round([0.52, 0.2, 0.36], [0, 0, 0.14], 0.06, 0.09, plain("#8c5f35"));
  for (let k = 0; k < 17; k += 1) curl(on, [sketch.between(0.5, 2.1), 0.1 - k * 0.06, 0], sketch.between(0.09, 0.2), k);
}

function curl(on: ReturnType<typeof stage>, at: V3, r: number, turn: number): void {
  const wide = 0.16;
  const points = Array.from({ length: 22 }, (_, i): V3 => {
    const a = turn + i * 0.42;
    const k = r * (1 - i / 34);
    return [at[0] + k * Math.cos(a) + i * 0.004, at[1], at[2] + r + k * Math.sin(a)];
  });
  on.shadow(points, 0, 0.18);
  points.slice(1).forEach((point, i) => {
    const last = points[i] ?? point;
    on.sketch.face(
      [on.to([last, point, [point[0] + 0.03, point[1] + wide, point[2]], [last[0] + 0.03, last[1] + wide, last[2]]])],
      i % 8 < 4 ? "#f8e4b4" : "#dcbd83",
      "none",
    );
  });
  on.sketch.line(on.to(points), { width: 1.8 });
  on.sketch.line(on.to(points.map(([x, y, z]): V3 => [x + 0.03, y + wide, z])), { width: 1.2, opacity: 0.5 });
}

function scaleDial(sketch: Sketch, [x, y]: P2, r: number, angle: number): void {
  sketch.face([arc([x, y], r, r)], "#fbf6e6", { width: 4 });
  for (let i = 0; i < 30; i += 1) {
    const a = (-220 + i * 9) * (Math.PI / 180);
    const long = i % 5 === 0 ? 0.8 : 0.88;
    sketch.line(
      [
        [x + r * long * Math.cos(a), y + r * long * Math.sin(a)],
        [x + r * 0.94 * Math.cos(a), y + r * 0.94 * Math.sin(a)],
      ],
      { width: i % 5 === 0 ? 3 : 1.6 },
    );
  }
  const a = angle * (Math.PI / 180);
  sketch.line(
    [
      [x - r * 0.2 * Math.cos(a), y - r * 0.2 * Math.sin(a)],
      [x + r * 0.78 * Math.cos(a), y + r * 0.78 * Math.sin(a)],
    ],
    { width: 6, colour: "#b4492f" },
  );
  sketch.face([arc([x, y], r * 0.07, r * 0.07, 0, 360, 16)], WASH.iron);
}

function kitchenScale(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [0, -3, 1.1],
    target: [0, 0, 0.75],
    zoom: 1500,
    wall: 1.5,
    wallColour: "#cfc9b4",
    bench: [-1.2, 1.2],
    centre: [800, 500],
  });
  on.boxShadow([-0.55, -0.25, 0], [1.1, 0.6, 1], 0);
  on.prism(
    [-0.6, -0.2, 0],
    [1.2, 0, 0],
    [0, 0, 0.95],
    [0, 0.5, 0],
    [
      [0, 0],
      [1, 0],
      [0.86, 1],
      [0.14, 1],
    ],
    plain("#a8b7b0"),
  );
  const [centre = [800, 600]] = on.to([[0, -0.21, 0.47]]);
  scaleDial(sketch, centre as P2, 178, -98);
  for (const [text, dx, dy] of [
    ["10", -74, -96],
    ["15", 20, -118],
    ["20", 94, -50],
  ] as const)
    for (const run of letters(text, 26))
      sketch.line(
        run.map(([a, b]): P2 => [centre[0] + dx + a, centre[1] + dy + b]),
        { width: 2.4 },
      );
  on.box([-0.08, 0, 0.95], [0.16, 0.12, 0.1], plain(WASH.iron));
  on.round([0, 0.05, 1.05], [0, 0, 0.06], 0.5, 0.62, plain(WASH.steel));
  cup(on, [0, 0.05, 1.1], 0.26, 0.42, "2");
}

function scarfClamped(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.4, -2.3, 1.9],
    target: [0.3, 0.1, 0.1],
    zoom: 1250,
    bench: [-1.4, 1.6],
    wall: 3,
  });
  on.boxShadow([-4, 0, 0.1], [9, 0.5, 0.3], 0);
  on.box([-1.6, -0.08, 0], [3.4, 0.66, 0.1], plain("#c0a274"));
  on.prism(
    [-4, 0, 0.1],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.5, 0],
    [
      [0, 0],
      [5, 0],
      [2.6, 0.22],
      [0, 0.22],
    ],
    spruce([1, 0, 0]),
  );
  on.prism(
    [-4, 0, 0.1],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.5, 0],
    [
      [5, 0],
      [9, 0],
      [9, 0.22],
      [2.6, 0.22],
    ],
    spruce([1, 0, 0]),
  );
  for (let i = 0; i < 26; i += 1) {
    const s = i / 25;
    const [p = [0, 0]] = on.to([[-1.4 + 2.4 * s, -0.005, 0.32 - 0.22 * s]]);
    sketch.tint(arc(p as P2, sketch.between(5, 11), sketch.between(6, 14), 0, 360, 12), "#c98a2e", 0.95);
    sketch.line(arc(p as P2, 6, 8, 20, 160, 6), { width: 1.3 });
  }
  on.box([-1.5, -0.02, 0.33], [3.1, 0.54, 0.09], plain("#c9ac7d"));
  for (const x of [1.15, 0.6, 0.05, -0.5, -1.05]) clamp(on, [x, -0.06, 0.06], 0.82, [0, 0.36, 0], 0.24);
}

function twoCups(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [0.4, -2.5, 1.7],
    target: [0.1, 0.15, 0.25],
    zoom: 1350,
    wall: 1.8,
    wallColour: "#d4cab8",
    bench: [-1.3, 1.3],
  });
  on.boxShadow([0.4, 0.5, 0], [1.3, 0.5, 0.14], 0);
  on.prism(
    [0.3, 0.5, 0],
    [1.4, 0, 0],
    [0, 0, 0.16],
    [0, 0.5, 0],
    [
      [0, 0],
      [1, 0],
      [1.05, 1],
      [-0.05, 1],
    ],
    plain("#9fb0b5"),
  );
  on.round([0.5, 0.75, 0.24], [0.7, 0, 0], 0.1, 0.1, plain("#efe2c4"));
  sketch.line(
    on.to([
      [1.2, 0.75, 0.24],
      [1.4, 0.75, 0.24],
      [1.4, 0.4, 0.24],
      [1.4, 0.1, 0.2],
    ]),
    { width: 5 },
  );
  cup(on, [-0.75, 0.1, 0], 0.34, 0.58, "5");
  cup(on, [0.35, -0.15, 0], 0.34, 0.58, "6");
  const [top = [0, 0]] = on.to([[-0.75, 0.1, 0.56]]);
  sketch.tint(arc(top as P2, 120, 34), "#f0e4c2", 0.9);
  sketch.line(
    [
      [top[0] - 80, top[1] - 6],
      [top[0] - 20, top[1] + 12],
      [top[0] + 70, top[1] - 8],
    ],
    { width: 3, colour: "#a5702a" },
  );
  on.prism(
    [-0.75, 0.1, 0.3],
    [-0.3, 0.1, 0.7],
    [0.1, 0, 0.04],
    [0, 0.03, 0],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([-0.3, 0.1, 0.7]),
  );
  for (const x of [-1.5, -0.3, 0.9])
    for (const k of [0, 1, 2])
      on.box([x + (k === 1 ? 0.12 : 0), -0.85 + k * 0.06, 0], [0.34, 0.055, 0.06], spruce([1, 0, 0]));
}

function notebook(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.1, -1.5, 2.4], target: [0, 0.05, 0], zoom: 1350, bench: [-1.6, 1.8] });
  on.shadow(
    [
      [-1.1, -0.75, 0.06],
      [1.15, -0.75, 0.06],
      [1.15, 0.8, 0.06],
      [-1.1, 0.8, 0.06],
    ],
    0,
    0.4,
  );
  for (const [x0, x1] of [
    [-1.1, 0],
    [0, 1.1],
  ] as const)
    sketch.face(
      [
        on.to([
          [x0, -0.75, 0.03],
          [x1, -0.75, 0.03],
          [x1, 0.75, 0.03],
          [x0, 0.75, 0.03],
        ]),
      ],
      WASH.card,
    );
  for (let i = 0; i < 13; i += 1)
    for (const x of [-1, 0.1])
      sketch.line(
        on.to([
          [x, 0.62 - i * 0.1, 0.035],
          [x + 0.9, 0.62 - i * 0.1, 0.035],
        ]),
        { width: 1, colour: "#8aa0ad", opacity: 0.7 },
      );
  const rows = [
    ["B-007", "95.0", "41.9"],
    ["B-008", "95.0", "37.2"],
  ] as const;
  rows.forEach((row, i) =>
    row.forEach((cell, j) =>
      on.letter(cell, [0.14 + j * 0.32, 0.58 - i * 0.2, 0.036], [0.055, 0, 0], [0, -0.075, 0], 2.4),
    ),
  );
  on.letter("95 × 0.44 =", [0.14, 0.1, 0.036], [0.055, 0, 0], [0, -0.075, 0], 2.2);
  on.letter("41.8 ?", [0.62, -0.02, 0.036], [0.075, 0, 0], [0, -0.1, 0], 3);
  for (const grow of [0, 0.015])
    sketch.line(on.to(arc([0.93, 0.34], 0.17 + grow, 0.085 + grow, 20, 395, 30).map(([x, y]): V3 => [x, y, 0.04])), {
      width: 4.5,
      colour: "#b4492f",
    });
  ["LOWER CAP R", "17.0 ° 51 %", "10:22 - 10:44"].forEach((text, i) =>
    on.letter(text, [-0.98, 0.58 - i * 0.2, 0.036], [0.058, 0, 0], [0, -0.075, 0], 2),
  );
  on.round([-0.7, -0.62, 0.08], [1.5, 0.3, 0], 0.03, 0.03, plain("#b98a3c"));
  on.prism(
    [0.8, -0.32, 0.05],
    [0.14, 0.03, 0],
    [0, 0.05, 0],
    [0, 0, 0.05],
    [
      [0, 0],
      [1, 0.5],
      [0, 1],
    ],
    plain("#efd49b"),
  );
}

function brokenTrio(on: ReturnType<typeof stage>, y: number, x0: number): void {
  for (let k = 0; k < 3; k += 1) {
    const x = x0 + k * 1.05;
    stick(on, [x, y, 0], [0.66, 0.1, 0.1]);
    torn(
      on,
      [
        [x + 0.36, y, 0.102],
        [x + 0.66, y, 0.102],
        [x + 0.66, y + 0.1, 0.102],
        [x + 0.36, y + 0.1, 0.102],
      ],
      46,
    );
    stick(on, [x + 0.26, y - 0.2, 0], [0.62, 0.1, 0.1]);
    torn(
      on,
      [
        [x + 0.26, y - 0.2, 0.102],
        [x + 0.56, y - 0.2, 0.102],
        [x + 0.56, y - 0.1, 0.102],
        [x + 0.26, y - 0.1, 0.102],
      ],
      46,
    );
  }
}

function firstBreaks(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.2, -1.9, 1.7], target: [0.2, -0.03, 0.05], zoom: 1230, bench: [-1.6, 2.2] });
  sketch.face(
    [
      on.to([
        [-1.5, -0.62, 0.004],
        [1.9, -0.7, 0.004],
        [2, 0.5, 0.004],
        [-1.6, 0.6, 0.004],
      ]),
    ],
    "#4c5360",
  );
  brokenTrio(on, 0.1, -1.3);
}

function leanCup(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.5, -2.3, 2.2], target: [0.2, 0.05, 0], zoom: 1180, bench: [-1.6, 2.2] });
  sketch.face(
    [
      on.to([
        [-1.6, -0.75, 0.004],
        [2.2, -0.75, 0.004],
        [2.2, 0.85, 0.004],
        [-1.6, 0.85, 0.004],
      ]),
    ],
    WASH.card,
  );
  sketch.line(
    on.to([
      [-1.5, 0.06, 0.006],
      [2.1, 0.06, 0.006],
    ]),
    { width: 2 },
  );
  brokenTrio(on, 0.45, -1.05);
  brokenTrio(on, -0.3, -1.05);
  on.letter("8", [-1.5, 0.58, 0.01], [0.22, 0, 0], [0, -0.26, 0], 5);
  on.letter("9", [-1.5, -0.2, 0.01], [0.22, 0, 0], [0, -0.26, 0], 5);
}

function ashStrips(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.6, -2, 1.9],
    target: [0.2, 0.15, 0.1],
    zoom: 1300,
    wall: 2.6,
    bench: [-1.5, 1.8],
  });
  for (let k = 0; k < 8; k += 1) {
    const angle = 0.55 - k * 0.11;
    const u: V3 = [2.4 * Math.cos(angle), 2.4 * Math.sin(angle), 0];
    const v: V3 = [-0.2 * Math.sin(angle), 0.2 * Math.cos(angle), 0];
    on.shadow(
      [
        [-1.2 + k * 0.05, -0.25, 0.2],
        [-1.2 + u[0], -0.25 + u[1], 0.2],
      ],
      0,
      0.2,
    );
    on.prism(
      [-1.3 + k * 0.06, -0.2 - k * 0.05, k * 0.035],
      u,
      v,
      [0, 0, 0.07],
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      ash(u),
    );
  }
  on.box([0.1, -0.6, 0.3], [0.16, 0.36, 0.14], { colour: "#8c5f35", grain: [0, 1, 0] });
  on.box([-0.35, -0.45, 0.34], [1, 0.06, 0.06], { colour: "#a9743f", grain: [1, 0, 0] });
  on.round([0.18, -0.42, 0.44], [0, 0, 0.1], 0.04, 0.05, plain(WASH.brass));
}

function thermometer(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-0.3, -3.2, 1.6],
    target: [0.15, 0, 1.3],
    zoom: 1500,
    wall: 0.2,
    wallColour: "#bfc3c2",
    centre: [800, 520],
  });
  const pane = (x: number, z: number): P2[] =>
    on.to([
      [x, 0.1, z],
      [x + 0.5, 0.1, z],
      [x + 0.5, 0.1, z + 0.55],
      [x, 0.1, z + 0.55],
    ]);
  sketch.face(
    [
      on.to([
        [-1.55, 0.12, 0.72],
        [-0.35, 0.12, 0.72],
        [-0.35, 0.12, 2.02],
        [-1.55, 0.12, 2.02],
      ]),
    ],
    "#a3927a",
  );
  for (const [x, z] of [
    [-1.5, 0.78],
    [-0.92, 0.78],
    [-1.5, 1.4],
    [-0.92, 1.4],
  ] as const) {
    sketch.face([pane(x, z)], "#aebfd0");
    sketch.within([pane(x, z)], () => {
      for (let i = 0; i < 34; i += 1) {
        const [p = [0, 0]] = on.to([[x + sketch.between(0, 0.5), 0.09, z + sketch.between(0, 1) ** 2 * 0.4]]);
        for (let b = 0; b < 6; b += 1) {
          const a = (b / 6) * 6.28 + i;
          const r = sketch.between(8, 26);
          sketch.line([p as P2, [p[0] + r * Math.cos(a), p[1] + r * Math.sin(a)]], { width: 1, opacity: 0.5 });
          sketch.brush([p as P2, [p[0] + r * Math.cos(a), p[1] + r * Math.sin(a)]], "#f4f8fb", 3, 0.8);
        }
      }
    });
  }
  on.box([0.1, 0.05, 0.55], [0.42, 0.08, 1.55], { colour: "#dcc08a", grain: [0, 0, 1] });
  on.round([0.31, 0.02, 0.78], [0, 0, 1.15], 0.035, 0.035, plain("#f4f4ee", 1.8));
  sketch.brush(
    on.to([
      [0.31, -0.02, 0.78],
      [0.31, -0.02, 1.28],
    ]),
    "#b4492f",
    13,
  );
  on.round([0.31, 0.04, 0.72], [0, -0.05, 0], 0.075, 0.075, plain("#b4492f"));
  for (let t = 0; t <= 30; t += 1)
    sketch.line(
      on.to([
        [0.37, 0.02, 0.88 + t * 0.032],
        [t % 5 === 0 ? 0.46 : 0.42, 0.02, 0.88 + t * 0.032],
      ]),
      { width: t % 5 === 0 ? 2.6 : 1.3 },
    );
  for (const t of [0, 10, 20, 30])
    on.letter(String(t), [0.14, 0.02, 0.92 + t * 0.032], [0.05, 0, 0], [0, 0, -0.06], 2.2);
  sketch.line(
    on.to([
      [0.52, 0.03, 1.28],
      [0.72, 0.03, 1.28],
    ]),
    { width: 2.6, colour: "#b4492f" },
  );
  on.letter("12.5", [0.76, 0.1, 1.36], [0.11, 0, 0], [0, 0, -0.15], 4);
  on.round([1.55, 0, 0], [0, 0, 3], 0.16, 0.16, plain("#6d6a68"));
  on.round([1.55, 0, 1.6], [0, 0, 0.1], 0.19, 0.19, plain("#5b5856"));
}

function fillerBlocks(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-2, -2.2, 1.6],
    target: [0.5, 0.2, 0.35],
    zoom: 1250,
    wall: 2.6,
    bench: [-1.3, 1.5],
  });
  on.boxShadow([-1.4, 0, 0], [7, 0.35, 1], 0);
  on.box([-1.4, 0, 0], [7, 0.42, 0.2], spruce([1, 0, 0]));
  for (const x of [4.4, 3.4, 2.4]) on.box([x, 0.05, 0.2], [0.22, 0.32, 0.62], spruce([0, 0, 1]));
  on.prism(
    [-0.9, 0.04, 0.2],
    [2.6, 0, 0],
    [0, 0, 0.62],
    [0, 0.34, 0],
    [
      [0, 0],
      [1, 0],
      [0.9, 0.16],
      [0.9, 0.84],
      [1, 1],
      [0, 1],
    ],
    spruce([1, 0, 0]),
  );
  for (let k = 0; k < 3; k += 1) on.box([-1.4, 0, 0.82 + k * 0.085], [7, 0.42, 0.08], spruce([1, 0, 0]));
  for (const [x, z] of [
    [-0.5, 0.4],
    [0.1, 0.62],
    [0.7, 0.4],
    [1.2, 0.6],
  ] as const) {
    sketch.line(on.to(arc([x, z], 0.06, 0.06).map(([a, c]): V3 => [a, 0.035, c])), { width: 2.4 });
    sketch.line(
      on.to([
        [x - 0.1, 0.035, z],
        [x + 0.1, 0.035, z],
      ]),
      { width: 1.2 },
    );
    sketch.line(
      on.to([
        [x, 0.035, z - 0.1],
        [x, 0.035, z + 0.1],
      ]),
      { width: 1.2 },
    );
  }
}

function noses(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.3, -3.6, 1.3], target: [0, 0, 1.35], zoom: 1530, wall: 0.3, centre: [800, 560] });
  on.round([-1.9, -0.02, 1.72], [3.9, 0, 0], 0.03, 0.03, plain("#a9743f"));
  for (let k = 8; k >= 0; k -= 1) {
    const size = 0.62 - k * 0.035;
    const x = -1.85 + k * 0.43;
    const outline: P2[] = [...arc([0.5, 0.5], 0.5, 0.5, 90, 270, 20), [0.75, 0], [0.75, 1]];
    on.shadow(
      [
        [x, 0.28, 1],
        [x + size * 0.8, 0.28, 1.6],
      ],
      1,
      0.01,
    );
    sketch.tint(
      on.to(outline.map(([a, b]): V3 => [x + a * size + 0.05, 0.27, 1.76 - size * 1.25 + b * size * 1.25])),
      "#4a4258",
      0.28,
      6,
    );
    on.prism([x, 0, 1.8 - size * 1.25], [size, 0, 0], [0, 0, size * 1.25], [0, 0.04, 0], outline, birch([0, 0, 1]), [
      arc([0.42, 0.62], 0.2, 0.2, 360, 0, 18),
    ]);
    const edge = [
      ...outline.map(
        ([a, b]): V3 => [x + (a * 0.88 + 0.05) * size, -0.005, 1.8 - size * 1.25 + (b * 0.88 + 0.06) * size * 1.25],
      ),
    ];
    sketch.line(on.to([...edge, edge[0] ?? [0, 0, 0]]), { width: 1.6 });
  }
  sketch.brush(
    on.to([
      [-1.7, -0.03, 1.1],
      [-1.45, -0.03, 1.1],
    ]),
    "#f8f0d8",
    26,
  );
  on.letter("?", [-1.63, -0.04, 1.17], [0.1, 0, 0], [0, 0, -0.14], 4);
}

function longOverlap(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [0.1, -3.4, 1.3],
    target: [0.1, 0, 0.72],
    zoom: 1180,
    wall: 2,
    wallColour: "#d6ccb8",
    bench: [-1.2, 1.4],
    centre: [800, 520],
  });
  threeLegs(on, [-1.35, 0, 0], 0.3, 2.5, 0.02);
  threeLegs(on, [0.62, 0, 0], 0.3, 4, 0.02);
  torn(
    on,
    [
      [-1.05, -0.005, 0.54],
      [-1.05, -0.005, 1.24],
      [-1, -0.005, 1.24],
      [-1, -0.005, 0.54],
    ],
    40,
  );
  for (let i = 0; i < 7; i += 1) {
    const z = 1.1 + i * 0.035;
    sketch.line(
      on.to([
        [0.92, -0.01, z],
        [1, -0.01, z + 0.03],
        [1.1, -0.01, z - 0.01],
        [1.22, -0.01, z + 0.025],
      ]),
      { width: 3 },
    );
  }
  for (const [x, from, to, text] of [
    [-1.55, 0.53, 1.26, "2 1/2"],
    [1.75, 0.06, 1.26, "4"],
  ] as const) {
    sketch.line(
      on.to([
        [x, 0, from],
        [x, 0, to],
      ]),
      { width: 2.2 },
    );
    for (const z of [from, to])
      sketch.line(
        on.to([
          [x - 0.08, 0, z],
          [x + 0.08, 0, z],
        ]),
        { width: 2.2 },
      );
    on.letter(text, [x + (x < 0 ? -0.62 : 0.14), 0, (from + to) / 2 + 0.1], [0.15, 0, 0], [0, 0, -0.2], 3.4);
  }
}

export const winterScenes = {
  shavings,
  kitchenScale,
  scarfClamped,
  twoCups,
  notebook,
  firstBreaks,
  leanCup,
  ashStrips,
  thermometer,
  fillerBlocks,
  noses,
  longOverlap,
};
