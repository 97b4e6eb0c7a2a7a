import { WASH } from "../ink/colour.ts";
import { birch, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2, type V3 } from "../ink/space.ts";
import { section, stage } from "../shop/stage.ts";
import { clamp, stick, wall } from "../shop/tools.ts";

type On = ReturnType<typeof stage>;

const POSTS = [0.2, 0.36, 0.52, 0.68, 0.82] as const;

function depthAt(share: number): readonly [number, number] {
  const half = 0.26 * (Math.sqrt(share) * (1 - share) + 0.05 * share * (1 - share));
  return [-0.55 * half, half];
}

/** A rib as an open frame of strips: in the plane of u and v, pushed along w. */
function rib(on: On, at: V3, u: V3, v: V3, w: V3): void {
  const outer = section(0.14);
  const scale = 0.9;
  const inner = section(0.17).map(([x, y]): P2 => [x * 0.985, y * scale - 0.002]);
  on.prism(at, u, v, w, outer, { colour: WASH.spruce, line: 1.7 }, [inner]);
  const bar = (a: P2, b: P2, wide: number): void => {
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const k = wide / Math.hypot(dx, dy) / 2;
    on.prism(
      at,
      u,
      v,
      w,
      [
        [a[0] - dy * k, a[1] + dx * k],
        [a[0] + dy * k, a[1] - dx * k],
        [b[0] + dy * k, b[1] - dx * k],
        [b[0] - dy * k, b[1] + dx * k],
      ],
      { colour: WASH.spruce, line: 1.5 },
    );
  };
  POSTS.forEach((x, i) => {
    const [low, high] = depthAt(x);
    bar([x, low * scale], [x, high * scale], 0.011);
    const next = POSTS[i + 1];
    if (next !== undefined) bar([x + 0.01, low * scale], [next - 0.01, depthAt(next)[1] * scale], 0.011);
  });
}

function ribJig(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.3, -1.9, 2.2], target: [0.05, 0.05, 0], zoom: 1250, bench: [-1.6, 1.8] });
  on.boxShadow([-1.5, -0.6, 0], [3.1, 1.35, 0.08], 0);
  on.box([-1.5, -0.6, 0], [3.1, 1.35, 0.08], { colour: "#e9d9b4", line: 2.4 });
  const [at, u, v]: readonly [V3, V3, V3] = [
    [-1.35, 0.05, 0.08],
    [2.8, 0, 0],
    [0, 2.8, 0],
  ];
  const outline = section(0);
  sketch.line(on.to(outline.map(([a, b]): V3 => [at[0] + a * 2.8, at[1] + b * 2.8, 0.082])), {
    width: 1.4,
    opacity: 0.7,
  });
  const blocks = (above: boolean): void => {
    for (let i = 0; i < 16; i += 1) {
      const x = 0.16 + i * 0.052;
      const y = above ? depthAt(x)[1] + 0.012 : depthAt(x)[0] - 0.032;
      on.box([at[0] + x * 2.8, at[1] + y * 2.8, 0.08], [0.07, 0.055, 0.09], plain("#b98f5c", 1.8));
    }
  };
  blocks(true);
  rib(on, at, u, v, [0, 0, 0.075]);
  for (const x of POSTS)
    for (const y of depthAt(x))
      on.box(
        [at[0] + x * 2.8 - 0.06, at[1] + y * 2.55 - (y > 0 ? 0.06 : 0.02), 0.155],
        [0.12, 0.08, 0.012],
        birch([1, 0, 0]),
      );
  blocks(false);
  for (const x of [-0.9, 0.2]) on.round([x, -0.75, 0.02], [0.5, 0.08, 0], 0.02, 0.02, plain("#b4492f", 1.6));
}

function ribRow(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.5, -3.4, 0.7], target: [0.2, 0.8, 1.42], zoom: 1900 });
  wall(on, 4.6, -5, 8, 6, "#e6decb", 22);
  hangRibs(on, 7, () => false);
}

function redStrings(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-2.5, -3, 2], target: [0.1, 0.8, 1.25], zoom: 1720 });
  wall(on, 5.2, -6, 9, 6, "#dfe2df", 22);
  hangRibs(on, 7, (i) => i < 5);
}

function hangRibs(on: On, count: number, strung: (i: number) => boolean): void {
  const { sketch } = on;
  for (let i = count - 1; i >= 0; i -= 1) {
    const y = -0.4 + i * 0.62;
    const long = 2.3 - i * 0.07;
    const turn = Math.sin(i * 1.7) * 0.14;
    const at: V3 = [-0.95, y, 1.35];
    on.round([-0.1, y + 0.62, 1.78], [0, -0.62, 0], 0.035, 0.035, plain("#a9743f", 1.6));
    rib(on, at, [long * Math.cos(turn), long * Math.sin(turn), -0.12], [0.1, 0, long], [0, 0.06, 0]);
    sketch.line(
      on.to([
        [-0.1, y - 0.02, 1.8],
        [-0.1, y - 0.02, 1.62],
      ]),
      { width: 2.4 },
    );
    if (strung(i)) tag(on, at[0] + 0.42, y);
  }
  on.round([-0.1, -0.4, 1.78], [0, -0.5, 0], 0.035, 0.035, plain("#a9743f"));
}

function tag(on: On, x: number, y: number): void {
  const { sketch } = on;
  sketch.line(on.to(arc([0, 0], 0.07, 0.4, 0, 360, 20).map(([a, c]): V3 => [x + a, y - 0.02, 1.42 + c])), {
    width: 5,
    colour: "#b4492f",
  });
  const [knot = [0, 0]] = on.to([[x, y - 0.02, 1.02]]);
  sketch.line(
    [
      [knot[0], knot[1]],
      [knot[0] - 14, knot[1] + 50],
    ],
    { width: 4, colour: "#b4492f" },
  );
  sketch.face(
    [
      [
        [knot[0] - 34, knot[1] + 48],
        [knot[0] + 10, knot[1] + 52],
        [knot[0] + 6, knot[1] + 110],
        [knot[0] - 38, knot[1] + 106],
      ],
    ],
    WASH.card,
    { width: 2 },
  );
}

function tooEarly(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-0.5, -3.2, 1.3],
    target: [0.25, 0, 0.75],
    zoom: 1250,
    wall: 1.3,
    bench: [-1.2, 1.2],
  });
  on.boxShadow([-1.2, -0.1, 0], [1.2, 0.5, 0.2], 0);
  on.box([-1.3, -0.1, 0], [1.3, 0.5, 0.16], plain(WASH.iron));
  for (const [x, bend] of [
    [-0.35, 0],
    [-1.05, 0],
  ] as const)
    on.box([x, 0.05, 0.16], [0.2, 0.2, 0.72 + bend], spruce([0, 0, 1]));
  const path: readonly P2[] = [
    [-0.7, 0.52],
    [-0.72, 0.8],
    [-0.66, 1.02],
    [-0.52, 1.2],
    [-0.42, 1.42],
  ];
  on.prism(
    [0, 0.05, 0],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.2, 0],
    [...path.map(([x, z]): P2 => [x - 0.1, z]), ...[...path].reverse().map(([x, z]): P2 => [x + 0.11, z + 0.04])],
    spruce([0.2, 0, 1]),
  );
  for (const x of [-0.84, -0.36])
    for (let i = 0; i < 5; i += 1)
      sketch.brush(
        on.to([
          [x, 0.04, 0.56 + i * 0.07],
          [x + 0.05, 0.04, 0.59 + i * 0.07],
        ]),
        "#d98f2b",
        7,
      );
  on.prism(
    [-0.9, 0, 1.36],
    [1.2, 0, 0.12],
    [0, 0, 0.22],
    [0, 0.3, 0],
    [
      [0, 0],
      [3, 0],
      [3, 1],
      [0, 1],
    ],
    { colour: WASH.ash, grain: [1, 0, 0.1] },
  );
  const page = on.to([
    [0.75, 1.25, 0.55],
    [2, 1.25, 0.55],
    [2, 1.25, 1.75],
    [0.75, 1.25, 1.75],
  ]);
  sketch.face([page], WASH.card);
  on.letter("AUG", [0.85, 1.24, 1.68], [0.14, 0, 0], [0, 0, -0.16], 3);
  for (let i = 0; i < 28; i += 1) {
    const [x, z] = [0.86 + (i % 7) * 0.16, 1.34 - Math.floor(i / 7) * 0.19];
    on.letter(String(i + 1), [x, 1.24, z], [0.05, 0, 0], [0, 0, -0.07], 1.6);
  }
  for (const i of [23, 24]) {
    const [x, z] = [0.89 + (i % 7) * 0.16, 1.3 - Math.floor(i / 7) * 0.19];
    sketch.line(
      on.to([
        [x - 0.07, 1.235, z + 0.08],
        [x + 0.08, 1.235, z - 0.08],
      ]),
      { width: 5, colour: "#b4492f" },
    );
  }
}

function doublers(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-0.9, -2.8, 1.5],
    target: [0.1, 0.3, 0.65],
    zoom: 1180,
    wall: 1.7,
    bench: [-1.3, 1.5],
  });
  for (const y of [0.45, 0.2]) rib(on, [-1.5, y, 0.35], [3.2, 0, 0], [0, 0, 3.2], [0, 0.07, 0]);
  on.prism(
    [-0.9, 0.14, 0.12],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.04, 0],
    [
      [0, 0.02],
      [1.2, 0.02],
      [1.2, 0.66],
      [0.6, 0.75],
      [0, 0.7],
    ],
    birch([0, 0, 1]),
  );
  for (const x of [0.05, -0.55, -0.85]) clamp(on, [x, 0.02, 0.3], 0.75, [0, 0.5, 0], 0.12);
  const [hub = [0, 0]] = on.to([[-1.35, 1.68, 1.65]]);
  sketch.face([arc(hub as P2, 92, 92)], WASH.card, { width: 5 });
  for (let i = 0; i < 12; i += 1) {
    const a = i * 0.5236;
    sketch.line(
      [
        [hub[0] + 76 * Math.cos(a), hub[1] + 76 * Math.sin(a)],
        [hub[0] + 86 * Math.cos(a), hub[1] + 86 * Math.sin(a)],
      ],
      { width: 3 },
    );
  }
  sketch.line(
    [
      [hub[0], hub[1]],
      [hub[0] + 30, hub[1] + 38],
    ],
    { width: 6 },
  );
  sketch.line(
    [
      [hub[0], hub[1]],
      [hub[0], hub[1] + 68],
    ],
    { width: 3.5 },
  );
  const [nail = [0, 0]] = on.to([[1.35, 1.68, 1.72]]);
  sketch.face(
    [
      [
        [nail[0] - 80, nail[1] - 6],
        [nail[0] + 80, nail[1] - 6],
        [nail[0] + 80, nail[1] + 200],
        [nail[0] - 80, nail[1] + 200],
      ],
    ],
    "#f4eee0",
    "none",
  );
  sketch.line(
    [
      [nail[0] - 4, nail[1]],
      [nail[0] + 14, nail[1] - 10],
    ],
    { width: 7 },
  );
}

function longeronScarf(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.9, -1.7, 1.1], target: [0.15, 0.1, 0.2], zoom: 1280, bench: [-1.2, 1.4] });
  on.box([-3, 0.42, 0], [7, 0.14, 0.34], plain("#c7a878"));
  on.boxShadow([-4, 0, 0], [9, 0.36, 0.34], 0, 0.2);
  on.prism(
    [-4, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.36, 0],
    [
      [0, 0],
      [4.9, 0],
      [3.1, 0.36],
      [0, 0.36],
    ],
    spruce([1, 0, 0]),
  );
  on.prism(
    [-4, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
    [0, 0.36, 0],
    [
      [4.9, 0],
      [9, 0],
      [9, 0.36],
      [3.1, 0.36],
    ],
    spruce([1, 0, 0]),
  );
  sketch.line(
    on.to([
      [-3, 0.2, 0.362],
      [4, 0.2, 0.362],
    ]),
    { width: 3.2, colour: "#3f4a58" },
  );
  sketch.line(
    on.to([
      [-0.9, 0, 0.362],
      [-0.9, 0.36, 0.362],
    ]),
    { width: 2.4 },
  );
  sketch.brush(
    on.to([
      [-0.9, -0.006, 0.355],
      [0.88, -0.006, 0.01],
    ]),
    "#c98a2e",
    7,
  );
  on.box([-3, -0.14, 0], [7, 0.12, 0.16], plain("#cdb083"));
  on.round([0.5, -0.5, 0.05], [0.9, 0.1, 0], 0.035, 0.035, plain("#4f6f86", 1.8));
}

const SIDE: readonly (readonly [number, number, number])[] = [
  [0, -0.5, 0.55],
  [0.8, -0.52, 0.6],
  [1.5, -0.56, 0.62],
  [2.2, -0.55, 0.6],
  [3.1, -0.44, 0.48],
  [4, -0.3, 0.36],
  [4.9, -0.14, 0.22],
];

/** A fuselage side as longerons and uprights: in the plane of u and v from `at`, as far as the given station. */
export function side(on: On, at: V3, u: V3, v: V3, w: V3, uprights = 7): void {
  const longeron = (k: 1 | 2): void =>
    on.prism(
      at,
      u,
      v,
      w,
      [
        ...SIDE.map((s): P2 => [s[0], s[k]]),
        ...[...SIDE].reverse().map((s): P2 => [s[0], s[k] + (k === 1 ? 0.08 : -0.08)]),
      ],
      spruce(u),
    );
  longeron(2);
  SIDE.slice(0, uprights).forEach(([x, low, high], i) => {
    on.prism(
      at,
      u,
      v,
      w,
      [
        [x - 0.04, low + 0.08],
        [x + 0.04, low + 0.08],
        [x + 0.04, high - 0.08],
        [x - 0.04, high - 0.08],
      ],
      spruce(v),
    );
    const next = SIDE[i + 1];
    if (next !== undefined && i >= 2 && i + 1 < uprights)
      on.prism(
        at,
        u,
        v,
        w,
        [
          [x + 0.04, low + 0.08],
          [x + 0.13, low + 0.08],
          [next[0] - 0.04, next[2] - 0.08],
          [next[0] - 0.13, next[2] - 0.08],
        ],
        spruce(u),
      );
  });
  longeron(1);
}

function sidePattern(sketch: Sketch): void {
  const on = stage(sketch, { eye: [2.1, -1.8, 4.6], target: [2.3, 0.05, 0], zoom: 1150, centre: [800, 500] });
  for (let i = 0; i < 6; i += 1)
    on.box([-1.5, -1.6 + i * 0.6, -0.1], [8.5, 0.58, 0.1], { colour: WASH.floor, grain: [1, 0, 0], line: 1.5 });
  sketch.face(
    [
      on.to([
        [-0.5, -0.85, 0.005],
        [5.4, -0.85, 0.005],
        [5.4, 0.95, 0.005],
        [-0.5, 0.95, 0.005],
      ]),
    ],
    WASH.card,
    { width: 1.6 },
  );
  for (const [x, low, high] of SIDE) {
    on.box([x - 0.1, high + 0.02, 0], [0.2, 0.1, 0.12], plain("#b98f5c"));
    sketch.line(
      on.to([
        [x, low - 0.2, 0.01],
        [x, high + 0.2, 0.01],
      ]),
      { width: 1.3, opacity: 0.6 },
    );
  }
  side(on, [0, 0, 0.01], [1, 0, 0], [0, 1, 0], [0, 0, 0.08], 4);
  for (const [x, low] of SIDE) on.box([x - 0.1, low - 0.13, 0], [0.2, 0.1, 0.12], plain("#b98f5c"));
  for (const x of [3.2, 3.9]) stick(on, [x, 0.02, 0.02], [0.5, 0.07, 0.07]);
  sketch.brush(
    on.to([
      [0.3, -1.05, 0.02],
      [3.6, -1.12, 0.02],
    ]),
    "#e0b64a",
    16,
  );
  for (let i = 0; i < 34; i += 1)
    sketch.line(
      on.to([
        [0.3 + i * 0.1, -1.08, 0.02],
        [0.3 + i * 0.1, -1.02, 0.02],
      ]),
      { width: 1.2 },
    );
  for (const x of [1170, 1360]) {
    sketch.face(
      [
        [
          [x - 84, 1067],
          [x - 66, 890],
          [x - 20, 850],
          [x + 40, 862],
          [x + 74, 920],
          [x + 88, 1067],
        ],
      ],
      "#6f7f94",
    );
    sketch.line(
      [
        [x - 40, 890],
        [x - 4, 872],
        [x + 40, 896],
      ],
      { width: 1.6 },
    );
  }
}

function gussets(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.5, -1.7, 1.7], target: [0.15, 0.05, 0], zoom: 1350, bench: [-1.8, 1.8] });
  on.boxShadow([-2.4, -0.5, 0], [6, 0.3, 0.24], 0);
  on.prism(
    [0, -0.35, 0],
    [0.24, 0, 0],
    [0, 2.4, 0],
    [0, 0, 0.24],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([0, 1, 0]),
  );
  on.prism(
    [0.26, -0.3, 0],
    [0.22, -0.02, 0],
    [1.5, 1.9, 0],
    [0, 0, 0.24],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([1.5, 1.9, 0]),
  );
  on.box([-2.4, -0.6, 0], [6, 0.28, 0.24], spruce([1, 0, 0]));
  on.prism(
    [-0.5, -0.6, 0.24],
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 0.03],
    [
      [0.02, 0],
      [1.5, 0],
      [1.56, 0.06],
      [0.75, 0.86],
      [0.4, 0.86],
      [0, 0.06],
    ],
    birch([1, 0, 0]),
  );
  for (const [x, y] of [
    [-0.3, -0.5],
    [0, -0.5],
    [0.3, -0.5],
    [0.6, -0.5],
    [0.8, -0.5],
    [0.02, -0.2],
    [0.02, 0.1],
    [0.42, -0.2],
    [0.25, 0.05],
  ] as const)
    sketch.line(
      on.to([
        [x, y, 0.275],
        [x + 0.09, y + 0.02, 0.275],
      ]),
      { width: 4.5, colour: "#59636a" },
    );
  on.boxShadow([-1.5, 0.2, 0], [0.8, 0.3, 0.3], 0);
  on.round([-1.5, 0.35, 0.15], [0.5, 0.15, 0], 0.15, 0.15, plain("#b5834c"));
  on.round([-1.25, 0.3, 0.15], [0.35, -0.75, -0.05], 0.045, 0.05, plain("#c9a06a"));
}

function twoSides(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-2.2, -1.6, 1.9], target: [1.3, 0.35, 0.5], zoom: 1100, wall: 3.4, floor: -0.05 });
  on.boxShadow([0, 0, 0], [4.9, 0.6, 0.6], 0, 0.22);
  side(on, [0, 0.62, 0.62], [1, 0, 0], [0, 0, 1], [0, 0.08, 0]);
  for (const x of [4, 2.2, 0.05]) on.box([x, 0.1, 0.1], [0.12, 0.5, 0.16], plain("#c0a274"));
  side(on, [0, 0, 0.62], [1, 0, 0], [0, 0, 1], [0, 0.08, 0]);
  for (let k = 0; k < 3; k += 1)
    on.prism(
      [3, -0.05, 0.9],
      [-0.5 + k * 0.2, -0.1, 0.5],
      [0.05, 0, 0.02],
      [0, 0.01, 0],
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      plain(WASH.steel, 1.8),
    );
}

export const ribsScenes = {
  ribJig,
  ribRow,
  redStrings,
  tooEarly,
  doublers,
  longeronScarf,
  sidePattern,
  gussets,
  twoSides,
};
