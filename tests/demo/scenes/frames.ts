import { WASH } from "../ink/colour.ts";
import { ash, birch, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2, type V3 } from "../ink/space.ts";
import { side } from "./ribs.ts";
import { figure } from "../shop/people.ts";
import { stage, torn } from "../shop/stage.ts";
import { bench, clamp } from "../shop/tools.ts";

type On = ReturnType<typeof stage>;

/** A square frame with corner blocks in the plane of u and v; each is the length of one side. */
export function frame(on: On, at: V3, u: V3, v: V3, w: V3, cross: boolean): void {
  const bar = 0.11;
  if (cross)
    for (const [a, b] of [
      [
        [0.1, 0.1],
        [0.9, 0.9],
      ],
      [
        [0.1, 0.9],
        [0.9, 0.1],
      ],
    ] as const) {
      const n: P2 = a[1] < b[1] ? [-0.035, 0.035] : [0.035, 0.035];
      on.prism(
        at,
        u,
        v,
        w,
        [
          [a[0] - n[0], a[1] - n[1]],
          [b[0] - n[0], b[1] - n[1]],
          [b[0] + n[0], b[1] + n[1]],
          [a[0] + n[0], a[1] + n[1]],
        ],
        spruce(u),
      );
    }
  for (const y of [1 - bar, 0])
    on.prism(
      at,
      u,
      v,
      w,
      [
        [0, y],
        [1, y],
        [1, y + bar],
        [0, y + bar],
      ],
      spruce(u),
    );
  for (const x of [0, 1 - bar])
    on.prism(
      at,
      u,
      v,
      w,
      [
        [x, bar],
        [x + bar, bar],
        [x + bar, 1 - bar],
        [x, 1 - bar],
      ],
      spruce(v),
    );
  for (const [x, y, sx, sy] of [
    [bar, bar, 1, 1],
    [1 - bar, bar, -1, 1],
    [bar, 1 - bar, 1, -1],
    [1 - bar, 1 - bar, -1, -1],
  ] as const) {
    on.prism(
      at,
      u,
      v,
      w,
      sx * sy > 0
        ? [
            [x, y],
            [x + sx * 0.12, y],
            [x, y + sy * 0.12],
          ]
        : [
            [x, y],
            [x, y + sy * 0.12],
            [x + sx * 0.12, y],
          ],
      plain("#e2c486"),
    );
  }
}

function firewall(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.9, -1.9, 2.3], target: [0.05, 0.1, 0], zoom: 1230, bench: [-1.6, 2] });
  on.boxShadow([-1.1, -0.75, 0], [2.2, 1.75, 0.05], 0);
  on.box([-1.1, -0.75, 0], [2.2, 1.75, 0.05], birch([0, 1, 0]));
  sketch.line(
    on.to([
      [-1, -0.66, 0.055],
      [1, -0.66, 0.055],
      [1, 0.9, 0.055],
      [-1, 0.9, 0.055],
      [-1, -0.66, 0.055],
    ]),
    { width: 2 },
  );
  on.boxShadow([-0.85, -0.5, 0.05], [1.7, 1.3, 0.16], 0.05);
  frame(on, [-0.85, -0.5, 0.05], [1.7, 0, 0], [0, 1.3, 0], [0, 0, 0.16], true);
  on.round([0.9, -1.1, 0.04], [0.6, 0.2, 0], 0.03, 0.03, plain("#b4492f", 1.8));
}

function newFirewall(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1, -3.4, 1.5], target: [0.1, 0, 0.85], zoom: 1230, wall: 1, floor: 0 });
  on.shadow(
    [
      [-1.3, 0.6, 0],
      [0.3, 0.6, 0],
      [0.3, 0.9, 1.6],
      [-1.3, 0.9, 1.6],
    ],
    0,
    0.3,
  );
  frame(on, [-1.5, 0.55, 0], [1.6, 0, 0], [0, 0.35, 1.6], [0, -0.14, 0.03], true);
  sketch.line(
    on.to([
      [-1.5, 0.5, 0.9],
      [-1.3, 0.5, 0.94],
      [-1.2, 0.5, 0.85],
      [-1.34, 0.5, 0.8],
    ]),
    { width: 5, colour: "#b4492f" },
  );
  sketch.line(
    on.to([
      [-0.6, 0.6, 1.66],
      [-0.66, 0.5, 1.2],
      [-0.55, 0.5, 1.15],
    ]),
    { width: 5 },
  );
  sketch.line(
    on.to([
      [-1.2, 0.68, 1.75],
      [-0.9, 0.66, 1.72],
      [-0.7, 0.66, 1.75],
      [-0.7, 0.66, 1.58],
      [-1.2, 0.68, 1.58],
      [-1.2, 0.68, 1.75],
    ]),
    { width: 5, colour: "#b4492f" },
  );
  on.shadow(
    [
      [0, -0.1, 0],
      [1.6, -0.1, 0],
      [1.6, 0.2, 1.5],
      [0, 0.2, 1.5],
    ],
    0,
    0.3,
  );
  frame(on, [-0.1, -0.3, 0], [1.6, 0, 0], [0, 0.35, 1.6], [0, -0.14, 0.03], true);
}

function cradle(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.5, -2.7, 1.8],
    target: [0.1, 0.1, 0.45],
    zoom: 1250,
    wall: 1.8,
    wallColour: "#e9ddc6",
    bench: [-1.3, 1.5],
  });
  on.boxShadow([-0.9, -0.3, 0], [1.9, 0.8, 0.6], 0);
  const end = (x: number): void =>
    on.prism(
      [x, -0.4, 0.08],
      [0, 1, 0],
      [0, 0, 1],
      [0.07, 0, 0],
      [
        ...arc([0.45, 0.6], 0.42, 0.32, 0, 180, 16),
        [0.1, 0.06],
        ...arc([0.45, 0.25], 0.5, 0.25, 200, 340, 14),
        [0.8, 0.06],
      ],
      spruce([0, 0, 1]),
    );
  end(0.95);
  on.prism(
    [-0.9, 0.3, 0.22],
    [1.9, 0, 0],
    [0, 0.12, 0.5],
    [0, 0.04, 0],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([1, 0, 0]),
  );
  sketch.face(
    [
      on.to([
        [-0.85, -0.2, 0.5],
        [0.95, -0.2, 0.5],
        [0.95, 0.34, 0.5],
        [-0.85, 0.34, 0.5],
      ]),
    ],
    "#f4efe2",
  );
  sketch.face(
    [
      on.to([
        [-0.85, -0.15, 0.53],
        [-0.35, -0.15, 0.53],
        [-0.35, 0.3, 0.53],
        [-0.85, 0.3, 0.53],
      ]),
    ],
    "#fffdf6",
  );
  sketch.face(
    [
      on.to([
        [-0.2, -0.22, 0.53],
        [0.95, -0.22, 0.53],
        [0.95, 0.34, 0.53],
        [-0.2, 0.34, 0.53],
      ]),
    ],
    "#a9bcc4",
  );
  for (let i = 0; i < 5; i += 1)
    sketch.line(
      on.to([
        [-0.1 + i * 0.22, -0.2, 0.54],
        [-0.06 + i * 0.22, 0.32, 0.54],
      ]),
      { width: 1.3, opacity: 0.6 },
    );
  on.prism(
    [-0.9, -0.28, 0.22],
    [1.9, 0, 0],
    [0, -0.1, 0.4],
    [0, 0.04, 0],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([1, 0, 0]),
  );
  end(-0.95);
  for (let k = 0; k < 12; k += 1) {
    const [x, y, r] = [sketch.between(-1.6, 1.6), sketch.between(-1.1, -0.6), sketch.between(0.03, 0.07)];
    const c = Array.from(
      { length: 14 },
      (_, i): V3 => [x + r * Math.cos(i * 0.6) + i * 0.01, y, r + r * Math.sin(i * 0.6)],
    );
    sketch.brush(on.to(c), "#f7e6bb", 9);
    sketch.line(on.to(c), { width: 1.6 });
  }
}

function letter(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.2, -1.8, 2], target: [0, 0.05, 0.1], zoom: 1230, bench: [-1.5, 2] });
  on.shadow(
    [
      [-1.2, -0.8, 0.05],
      [0.35, -0.9, 0.05],
      [0.5, 0.75, 0.05],
      [-1.1, 0.85, 0.05],
    ],
    0,
    0.35,
  );
  const page = (a: number, b: number): V3 => [
    -1.2 + a * 1.55 + b * 0.1,
    -0.8 - a * 0.1 + b * 1.6,
    0.03 + 0.06 * Math.sin(b * 9.4) * (b > 0.6 ? 1 : 0.3),
  ];
  for (const [b0, b1, colour] of [
    [0.66, 1, "#f4ecd8"],
    [0.33, 0.66, "#fbf6e6"],
    [0, 0.33, "#f6efdd"],
  ] as const)
    sketch.face([on.to([page(0, b0), page(1, b0), page(1, b1), page(0, b1)])], colour, { width: 2 });
  for (let i = 0; i < 13; i += 1) {
    const b = 0.82 - i * 0.055;
    let a = 0.1;
    while (a < 0.85) {
      const long = sketch.between(0.03, 0.11);
      sketch.line(on.to([page(a, b), page(Math.min(a + long, 0.9), b)]), { width: 3, opacity: 0.75 });
      a += long + 0.03;
    }
  }
  const line = on.to([page(0.08, 0.752), page(0.62, 0.752)]);
  sketch.brush(line, "#e9b7a4", 26, 0.9);
  on.letter("TH-2508-19", [-0.95, 0.42, 0.05], [0.07, -0.005, 0], [-0.005, -0.09, 0], 2.6);
  on.shadow(
    [
      [0.7, 0, 0.7],
      [1.3, 0, 0.7],
      [1.3, 0.5, 0.7],
      [0.7, 0, 0],
      [1.3, 0, 0],
    ],
    0,
    0.3,
  );
  on.round([1, 0.25, 0], [0, 0, 0.62], 0.32, 0.32, plain("#9fb0a6"));
  on.round([1, 0.25, 0.62], [0, 0, 0.06], 0.22, 0.22, plain(WASH.steel));
  on.letter("H-3", [0.82, -0.08, 0.42], [0.14, 0, 0], [0, 0, -0.17], 4);
  for (const z of [0.5, 0.52])
    sketch.line(on.to(arc([1, 0.25], 0.325, 0.325, 175, 365, 24).map(([x, y]): V3 => [x, y, z])), {
      width: 4.5,
      colour: "#b4492f",
    });
  sketch.line(
    on.to([
      [0.85, -0.05, 0.5],
      [0.76, -0.12, 0.3],
      [0.82, -0.14, 0.18],
    ]),
    { width: 4, colour: "#b4492f" },
  );
  for (const x of [-0.45, -0.02])
    sketch.line(on.to(arc([x, -0.35], 0.18, 0.13, 0, 360, 26).map(([a, b]): V3 => [a, b, 0.09])), {
      width: 5.5,
      colour: "#4d4038",
    });
  sketch.line(
    on.to([
      [-0.27, -0.35, 0.1],
      [-0.23, -0.31, 0.12],
      [-0.2, -0.35, 0.1],
    ]),
    { width: 5 },
  );
  sketch.line(
    on.to([
      [0.16, -0.33, 0.1],
      [0.5, -0.7, 0.06],
    ]),
    { width: 4.5 },
  );
}

function sidesApart(sketch: Sketch): void {
  const on = stage(sketch, { eye: [1, -2.4, 3.2], target: [1.9, 0.05, 0], zoom: 1180, centre: [800, 520] });
  bench(on, [-2, -1.5], 9, 3, 5);
  side(on, [0.2, 0.35, 0.02], [0.85, 0, 0], [0, 0.85, 0], [0, 0, 0.08], 3);
  for (let i = 0; i < 5; i += 1) {
    const x = 2.4 + i * 0.34;
    on.boxShadow([x, -0.6, 0], [0.09, 0.8, 0.08], 0);
    on.box([x, -0.62 + i * 0.02, 0.02], [0.09, 0.8 - i * 0.07, 0.08], spruce([0, 1, 0]));
    on.letter(String(i + 4), [x, -0.72, 0.01], [0.09, 0, 0], [0, -0.11, 0], 3);
  }
  for (let k = 0; k < 26; k += 1) {
    const [x, y, a] = [0.9 + sketch.between(-0.5, 0.5), -0.75 + sketch.between(-0.28, 0.28), sketch.between(0, 6)];
    const tri = [0, 2.2, 4].map((d): V3 => [x + 0.13 * Math.cos(a + d), y + 0.13 * Math.sin(a + d), 0.02 + k * 0.006]);
    sketch.face([on.to(tri)], k % 4 === 0 ? "#dfae62" : "#f0dfb4", { width: 2 });
  }
  on.prism(
    [3.7, 0.35, 0.12],
    [0.75, -0.28, 0],
    [0.05, 0.14, 0],
    [0, 0, 0.02],
    [
      [0, 0],
      [1, 0.2],
      [1, 0.8],
      [0, 1],
    ],
    plain(WASH.steel),
  );
  on.prism(
    [3.5, 0.36, 0.1],
    [0.24, -0.06, 0],
    [0.06, 0.2, 0],
    [0, 0, 0.06],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    plain("#8c5f35"),
  );
}

function sparFrame(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.6, -2.8, 1.7],
    target: [0, 0.1, 0.75],
    zoom: 1180,
    wall: 1.9,
    bench: [-1.3, 1.5],
  });
  on.boxShadow([-1, 0, 0], [2, 0.35, 1.5], 0, 0.26);
  on.box([-0.9, 0.35, 0.35], [0.01, 0.9, 0.4], spruce([0, 1, 0]));
  on.box([-0.35, 0.3, 0.42], [0.75, 1, 0.34], spruce([0, 1, 0]));
  on.prism(
    [-1.05, 0, 0],
    [2.1, 0, 0],
    [0, 0, 1.55],
    [0, 0.3, 0],
    [
      [0, 0.06],
      [0.06, 0],
      [0.94, 0],
      [1, 0.06],
      [1, 0.86],
      [0.8, 1],
      [0.2, 1],
      [0, 0.86],
    ],
    birch([0, 0, 1]),
    [
      [
        [0.33, 0.27],
        [0.33, 0.49],
        [0.69, 0.49],
        [0.69, 0.27],
      ],
      [
        [0.2, 0.62],
        [0.2, 0.84],
        [0.8, 0.84],
        [0.8, 0.62],
      ],
    ],
  );
  on.box([-0.35, -0.75, 0.42], [0.75, 0.9, 0.34], spruce([0, 1, 0]));
  for (const x of [0.85, 0.5, -0.55, -0.9]) clamp(on, [x, -0.1, 1.2], 0.6, [0, 0.42, 0], 0.14);
}

function aileronFrame(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.1, -2.2, 2], target: [0.1, 0.1, 0], zoom: 1180, bench: [-1.6, 1.9] });
  for (const z of [0, 0.2]) {
    if (z > 0)
      sketch.face(
        [
          on.to([
            [-1.6, -0.75, 0.14],
            [1.8, -0.75, 0.14],
            [1.8, 0.8, 0.14],
            [-1.6, 0.8, 0.14],
          ]),
        ],
        "#f3efdf",
        { width: 1.4 },
      );
    else on.boxShadow([-1.5, -0.6, 0], [3.1, 1.25, 0.2], 0);
    on.box([-1.5, 0.5, z], [3.1, 0.16, 0.13], spruce([1, 0, 0]));
    for (const x of [1.5, 0.75, 0, -0.75, -1.5])
      on.prism(
        [x, -0.5, z],
        [0, 1, 0],
        [0, 0, 0.13],
        [0.06, 0, 0],
        [
          [0, 0.35],
          [1, 0],
          [1, 1],
          [0, 0.65],
        ],
        birch([0, 1, 0]),
      );
    on.box([-1.5, -0.62, z + 0.03], [3.1, 0.13, 0.07], spruce([1, 0, 0]));
  }
  for (let i = 0; i < 4; i += 1) {
    const x = -1.44 + i * 0.75;
    sketch.brush(
      on.to([
        [x, -0.48, 0.33],
        [x + 0.75, 0.52, 0.34],
      ]),
      "#fff9ea",
      13,
    );
    for (const d of [0, 0.04])
      sketch.line(
        on.to([
          [x + d, -0.48, 0.33],
          [x + 0.75 + d, 0.52, 0.34],
        ]),
        { width: 1.6 },
      );
  }
  for (const x of [-0.9, 0.6]) {
    on.box([x, 0.64, 0.2], [0.26, 0.16, 0.14], ash([1, 0, 0]));
  }
}

function hingeBlock(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.1, -1.9, 1.3], target: [0.05, 0.05, 0.22], zoom: 1300, bench: [-1.3, 1.5] });
  on.boxShadow([-3, 0, 0], [7, 0.36, 0.5], 0);
  on.box([-3, 0, 0], [7, 0.36, 0.12], spruce([1, 0, 0]));
  on.box([-3, 0.28, 0.12], [7, 0.06, 0.34], birch([1, 0, 0]));
  on.box([-0.45, 0, 0.12], [0.95, 0.28, 0.34], ash([1, 0, 0]));
  on.box([-3, 0, 0.46], [7, 0.36, 0.12], spruce([1, 0, 0]));
  on.prism(
    [-0.16, -0.04, 0.1],
    [0.36, 0, 0],
    [0, 0, 0.62],
    [0, 0.03, 0],
    [
      [0, 0.1],
      [0.1, 0],
      [0.9, 0],
      [1, 0.1],
      [1, 0.9],
      [0.7, 1.25],
      [0.3, 1.25],
      [0, 0.9],
    ],
    plain(WASH.brass),
  );
  for (const [x, z] of [
    [0.02, 0.22],
    [0.02, 0.58],
    [0.02, 0.8],
  ] as const) {
    sketch.face([on.to(arc([x, z], 0.05, 0.05, 0, 360, 18).map(([a, c]): V3 => [a, -0.045, c]))], "#5b4c39", {
      width: 2,
    });
  }
  on.prism(
    [0.75, -0.75, 0.02],
    [0.7, 0.1, 0],
    [-0.06, 0.42, 0],
    [0, 0, 0.03],
    [
      [0, 0],
      [1, 0],
      [1, 0.2],
      [0.15, 0.2],
      [0.15, 1],
      [0, 1],
    ],
    plain(WASH.steel),
  );
  on.round([-1.3, -0.5, 0.03], [0.85, -0.2, 0], 0.03, 0.03, plain("#b4492f", 1.8));
}

function box(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-3.3, -3.9, 2.6], target: [1.6, 0.45, 0.7], zoom: 1230, wall: 3.2, floor: -0.55 });
  for (const x of [3.7, 0.4]) {
    on.box([x, -0.2, -0.55], [0.1, 0.1, 0.5], spruce([0, 0, 1]));
    on.box([x, 1.1, -0.55], [0.1, 0.1, 0.5], spruce([0, 0, 1]));
    on.box([x, -0.25, -0.08], [0.1, 1.5, 0.09], spruce([0, 1, 0]));
  }
  const outline: readonly P2[] = [
    [0, 1.15],
    [1.5, 1.24],
    [2.2, 1.22],
    [4.9, 0.84],
    [4.9, 0.48],
    [2.2, 0.05],
    [1.5, 0.02],
    [0, 0.1],
  ];
  const skin = (y0: number, y1: number): void =>
    sketch.face([on.to(outline.map(([x, z]): V3 => [x, y0 + (y1 - y0) * Math.max(0, (x - 2.4) / 2.5), z]))], "#efdcab");
  skin(1.05, 0.7);
  side(on, [0, 1.02, 0.62], [1, 0, 0], [0, 0, 1], [0, 0.05, 0], 5);
  for (const x of [2.25, 1.5]) {
    on.prism(
      [x, 0, 0.04],
      [0, 1.05, 0],
      [0, 0, 1.2],
      [0.14, 0, 0],
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      birch([0, 0, 1]),
      [
        [
          [0.16, 0.5],
          [0.16, 0.88],
          [0.84, 0.88],
          [0.84, 0.5],
        ],
      ],
    );
  }
  skin(0, 0.35);
  for (const x of [0.05, 0.8, 1.5, 2.25, 3.1, 4, 4.85])
    sketch.line(
      on.to([
        [x, 0.35 * Math.max(0, (x - 2.4) / 2.5) - 0.01, 0.12 + 0.35 * Math.max(0, (x - 2.2) / 2.7)],
        [x, 0.35 * Math.max(0, (x - 2.4) / 2.5) - 0.01, 1.14 - 0.3 * Math.max(0, (x - 2.2) / 2.7)],
      ]),
      { width: 1.4, opacity: 0.5 },
    );
  for (const x of [0.6, 1.62, 2.4, 3.3]) {
    const y = 0.35 * Math.max(0, (x - 2.4) / 2.5) - 0.02;
    sketch.line(
      on.to([
        [x, y, 0.04],
        [x, y, 1.2],
        [x, 1.08, 1.22],
      ]),
      { width: 7, colour: "#c2662f" },
    );
  }
  sketch.line(
    on.to([
      [1.86, 0.5, 3.2],
      [1.86, 0.5, 1.5],
    ]),
    { width: 2 },
  );
  on.round([1.86, 0.5, 1.5], [0, 0, -0.2], 0.06, 0.01, plain(WASH.brass));
  figure(sketch, [330, 1010], 560, 0.06, [470, 690], "#557d98");
}

function ashBlock(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.3, -2.3, 1.7], target: [0, 0.05, 0.3], zoom: 1250, bench: [-1.5, 1.7] });
  on.boxShadow([-0.9, -0.3, 0], [0.9, 0.75, 0.6], 0);
  on.prism(
    [-0.95, -0.35, 0],
    [0.95, 0, 0],
    [0, 0, 0.7],
    [0, 0.75, 0],
    [
      [0, 0],
      [1, 0],
      [1, 0.55],
      [0.62, 0.55],
      [0.62, 1],
      [0, 1],
    ],
    ash([0, 0, 1]),
  );
  torn(
    on,
    [
      [-0.36, -0.35, 0.386],
      [0, -0.35, 0.386],
      [0, 0.4, 0.386],
      [-0.36, 0.4, 0.386],
    ],
    90,
  );
  for (let i = 0; i < 26; i += 1) {
    const x = sketch.between(-0.34, -0.02);
    const y = sketch.between(-0.3, 0.35);
    sketch.line(
      on.to([
        [x, y, 0.39],
        [x + sketch.between(-0.05, 0.05), y, 0.39 + sketch.between(0.06, 0.22)],
      ]),
      { width: 2.4, colour: "#7c5c37" },
    );
  }
  on.boxShadow([0.4, -0.5, 0], [0.75, 0.75, 0.3], 0);
  on.prism(
    [0.4, -0.5, 0],
    [0.75, 0.1, 0],
    [0, 0, 0.42],
    [-0.1, 0.75, 0],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    ash([0.75, 0.1, 0]),
  );
  torn(
    on,
    [
      [0.42, -0.48, 0.425],
      [1.12, -0.39, 0.425],
      [1.03, 0.32, 0.425],
      [0.32, 0.23, 0.425],
    ],
    150,
  );
}

export const framesScenes = {
  firewall,
  newFirewall,
  cradle,
  letter,
  sidesApart,
  sparFrame,
  aileronFrame,
  hingeBlock,
  box,
  ashBlock,
};
