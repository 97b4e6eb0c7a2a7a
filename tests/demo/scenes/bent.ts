import { WASH } from "../ink/colour.ts";
import { letters } from "../ink/lettering.ts";
import { ash, birch, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2, type V3 } from "../ink/space.ts";
import { figure } from "../shop/people.ts";
import { band, stage } from "../shop/stage.ts";
import { clamp, stick } from "../shop/tools.ts";

type On = ReturnType<typeof stage>;

/** Strips bent round a centre in the plane of u and v, inside first. */
function bow(
  on: On,
  at: V3,
  u: V3,
  v: V3,
  w: V3,
  radius: number,
  strips: number,
  from: number,
  to: number,
  thick = 0.045,
): void {
  for (let k = 0; k < strips; k += 1) {
    on.prism(at, u, v, w, band([0, 0], radius + k * thick, radius + (k + 0.92) * thick, from, to), {
      colour: k % 2 === 0 ? WASH.spruce : "#e9c98a",
      line: 0.5,
    });
    for (const r of [radius + k * thick, radius + (k + 0.92) * thick]) {
      on.sketch.line(
        on.to(
          arc([0, 0], r, r, from, to, 40).map(
            ([x, y]): V3 => [
              at[0] + u[0] * x + v[0] * y + w[0],
              at[1] + u[1] * x + v[1] * y + w[1],
              at[2] + u[2] * x + v[2] * y + w[2],
            ],
          ),
        ),
        { width: 1.9 },
      );
    }
  }
}

function hoopFormer(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.2, -2, 2.7], target: [0, 0.15, 0], zoom: 1200, bench: [-1.9, 2.3] });
  const former: readonly P2[] = [[-0.95, -0.75], [0.95, -0.75], ...arc([0, 0], 0.95, 0.95, 0, 180, 30)];
  on.shadow(
    former.map(([x, y]): V3 => [x, y, 0.16]),
    0,
    0.35,
  );
  on.prism([0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 0.16], former, plain("#d9c29a"), [
    ...[-45, 0, 45].map((a): P2[] =>
      arc([0.62 * Math.sin(a / 57.3), 0.62 * Math.cos(a / 57.3)], 0.11, 0.11, 0, 360, 16),
    ),
    arc([0, -0.3], 0.25, 0.2, 0, 360, 20),
  ]);
  for (let k = 0; k < 7; k += 1)
    on.prism(
      [0, 0, 0.02],
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 0.18],
      [
        [0.95 + k * 0.03, -0.9],
        [0.98 + k * 0.03, -0.9],
        ...arc([0, 0], 0.978 + k * 0.03, 0.978 + k * 0.03, 0, 180, 30),
        [-0.98 - k * 0.03, -0.9],
        [-0.95 - k * 0.03, -0.9],
        ...arc([0, 0], 0.95 + k * 0.03, 0.95 + k * 0.03, 180, 0, 30),
      ],
      { colour: k % 2 === 0 ? WASH.spruce : "#e6c88c", line: 0.8 },
    );
  for (const a of [165, 140, 115, 90, 65, 40, 15]) radialClamp(on, a, 0.55, 1.32);
}

function radialClamp(on: On, degrees: number, inner: number, outer: number): void {
  const r = degrees / 57.2958;
  const [u, v]: readonly [V3, V3] = [
    [Math.cos(r), Math.sin(r), 0],
    [-Math.sin(r) * 0.05, Math.cos(r) * 0.05, 0],
  ];
  const at: V3 = [Math.cos(r) * inner, Math.sin(r) * inner, 0.24];
  on.prism(
    at,
    [u[0] * (outer - inner), u[1] * (outer - inner), 0],
    v,
    [0, 0, 0.05],
    [
      [0, -0.5],
      [1, -0.5],
      [1, 0.5],
      [0, 0.5],
    ],
    plain(WASH.steel),
  );
  on.prism(
    at,
    [u[0] * 0.07, u[1] * 0.07, 0],
    v,
    [0, 0, 0.09],
    [
      [0, -1],
      [1, -1],
      [1, 1],
      [0, 1],
    ],
    plain(WASH.iron),
  );
  on.prism(
    [Math.cos(r) * (outer - 0.08), Math.sin(r) * (outer - 0.08), 0.1],
    [u[0] * 0.09, u[1] * 0.09, 0],
    v,
    [0, 0, 0.24],
    [
      [0, -1],
      [1, -1],
      [1, 1],
      [0, 1],
    ],
    plain(WASH.iron),
  );
  on.round(
    [Math.cos(r) * outer, Math.sin(r) * outer, 0.27],
    [u[0] * 0.3, u[1] * 0.3, 0],
    0.045,
    0.055,
    plain("#a9743f"),
  );
}

function hoopTwo(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.6, -3.6, 1.4],
    target: [0.1, 0.2, 1.05],
    zoom: 1180,
    wall: 1.6,
    bench: [-1, 1.4],
  });
  const hoop = (at: V3, scale: number, strips: number): void => {
    for (let k = 0; k < strips; k += 1) {
      const r = (0.82 + k * 0.035) * scale;
      const R = r + 0.033 * scale;
      on.prism(
        at,
        [1, 0, 0],
        [0, 0, 1],
        [0, 0.24 * scale, 0],
        [
          [R, -1.05 * scale],
          ...arc([0, 0], R, R, 0, 180, 28),
          [-R, -1.05 * scale],
          [-r, -1.05 * scale],
          ...arc([0, 0], r, r, 180, 0, 28),
          [r, -1.05 * scale],
        ],
        { colour: k % 2 === 0 ? WASH.spruce : "#e6c88c", line: 0.8 },
      );
    }
  };
  hoop([1.75, 1.4, 1.75], 0.62, 4);
  sketch.line(
    on.to([
      [1.75, 1.35, 2.55],
      [1.6, 1.35, 2.3],
      [1.72, 1.35, 2.2],
    ]),
    { width: 5, colour: "#b4492f" },
  );
  on.boxShadow([-1, 0, 0], [2, 0.3, 0.3], 0, 0.3);
  hoop([-0.25, 0.1, 1.08], 1, 5);
  for (const z of [0.15, 0.5, 0.85])
    for (const x of [-1.2, 0.55]) {
      on.box([x, 0.02, z], [0.42, 0.07, 0.07], plain(WASH.steel));
      on.round([x + (x < 0 ? 0 : 0.42), 0.055, z + 0.035], [x < 0 ? -0.26 : 0.26, 0, 0], 0.05, 0.06, plain("#a9743f"));
    }
}

function beamClamps(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-2, -2.1, 1.5],
    target: [0.2, 0.25, 0.35],
    zoom: 1180,
    wall: 2.2,
    bench: [-1.2, 1.6],
  });
  on.boxShadow([-1.1, 0, 0], [3.2, 0.5, 0.8], 0);
  on.box([-1.15, -0.03, 0], [3.3, 0.56, 0.14], plain("#a8875a"));
  for (let k = 0; k < 5; k += 1) on.box([-1.1, 0, 0.14 + k * 0.115], [3.2, 0.5, 0.11], ash([1, 0, 0]));
  for (let k = 1; k < 5; k += 1)
    for (let i = 0; i < 9; i += 1) {
      const [p = [0, 0]] = on.to([[-1 + i * 0.33 + sketch.between(0, 0.2), -0.005, 0.135 + k * 0.115]]);
      sketch.tint(arc(p as P2, 7, 11), "#d9a04a", 0.95);
    }
  on.box([-1.15, -0.03, 0.72], [3.3, 0.56, 0.12], plain("#a8875a"));
  for (const x of [1.75, 1.2, 0.65, 0.1, -0.45, -1]) clamp(on, [x, -0.14, 0.02], 1.15, [0, 0.46, 0], 0.18);
}

function syringes(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.1, -2.2, 2], target: [-0.15, -0.02, 0.1], zoom: 1180, bench: [-1.4, 1.7] });
  on.boxShadow([0.35, 0.15, 0], [0.95, 0.65, 0.14], 0);
  on.box([0.35, 0.15, 0], [0.95, 0.65, 0.14], plain("#8f999e"));
  sketch.face(
    [
      on.to([
        [0.42, 0.35, 0.145],
        [1.22, 0.35, 0.145],
        [1.22, 0.74, 0.145],
        [0.42, 0.74, 0.145],
      ]),
    ],
    "#cfd6d8",
  );
  sketch.face(
    [
      on.to([
        [0.62, 0.2, 0.145],
        [1.02, 0.2, 0.145],
        [1.02, 0.31, 0.145],
        [0.62, 0.31, 0.145],
      ]),
    ],
    "#a6b09a",
  );
  on.round([1.15, -0.25, 0], [0, 0, 0.03], 0.12, 0.12, plain(WASH.steel));
  for (const [y, fill, colour, text] of [
    [-0.15, 0.78, "#e3b562", "40"],
    [-0.6, 0.4, "#d4c07a", "20"],
  ] as const) {
    const [x0, x1]: readonly [number, number] = [-1.35, 0.15];
    on.boxShadow([x0, y - 0.1, 0], [1.9, 0.2, 0.2], 0, 0.22);
    on.round([x0 + 1.5, y, 0.13], [0.55, 0, 0], 0.035, 0.035, plain("#dfe3e2"));
    on.round([x0 + 2.03, y, 0.13], [0.04, 0, 0], 0.12, 0.12, plain("#dfe3e2"));
    on.round([x0, y, 0.13], [x1 - x0, 0, 0], 0.13, 0.13, plain("#eef2f0"));
    sketch.tint(
      on.to([
        [x0, y - 0.12, 0.06],
        [x0 + 1.5 * fill, y - 0.12, 0.06],
        [x0 + 1.5 * fill, y - 0.02, 0.25],
        [x0, y - 0.02, 0.25],
      ]),
      colour,
      0.85,
    );
    on.round([x0 - 0.22, y, 0.13], [0.22, 0, 0], 0.02, 0.05, plain("#eef2f0"));
    for (let i = 0; i < 15; i += 1)
      sketch.line(
        on.to([
          [x0 + 0.1 + i * 0.09, y - 0.13, 0.13],
          [x0 + 0.1 + i * 0.09, y - (i % 5 === 0 ? 0.08 : 0.11), i % 5 === 0 ? 0.23 : 0.2],
        ]),
        { width: 2 },
      );
    on.letter(text, [x0 + 1.5 * fill - 0.05, y - 0.1, 0.33], [0.09, 0, 0], [0, -0.02, -0.09], 2.6);
  }
}

function calliper(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.5, -2, 1.9], target: [0.05, 0.1, 0.2], zoom: 1250, bench: [-1.5, 1.8] });
  on.boxShadow([-3, -0.3, 0], [7, 0.9, 0.3], 0);
  on.box([-3, -0.3, 0], [7, 0.9, 0.3], ash([1, 0, 0]));
  for (const [x, y] of [
    [-0.75, 0.02],
    [-0.75, 0.38],
    [0.42, 0.38],
    [0.46, 0.02],
  ] as const)
    sketch.face([on.to(arc([x, y], 0.085, 0.085, 0, 360, 24).map(([a, b]): V3 => [a, b, 0.302]))], "#4c4035", {
      width: 2.6,
    });
  for (const [x, y] of [[0.4, 0.02]] as const) {
    for (const grow of [0.15, 0.165])
      sketch.line(on.to(arc([x + 0.04, y], grow, grow, 10, 380, 28).map(([a, b]): V3 => [a, b, 0.304])), {
        width: 4.5,
        colour: "#b4492f",
      });
    sketch.line(
      on.to([
        [x, y - 0.25, 0.304],
        [x, y + 0.25, 0.304],
      ]),
      { width: 1.4 },
    );
    sketch.line(
      on.to([
        [x - 0.25, y, 0.304],
        [x + 0.25, y, 0.304],
      ]),
      { width: 1.4 },
    );
  }
  on.prism(
    [-1.05, -0.46, 0.34],
    [2.6, 0, 0],
    [0, 0.13, 0],
    [0, 0, 0.03],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    plain("#c3ccd0"),
  );
  for (const x of [-1.02, 0.42])
    on.prism(
      [x, -0.36, 0.33],
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 0.03],
      x < 0
        ? [
            [0, 0],
            [0.24, 0],
            [0.3, 0.36],
            [0.2, 0.36],
          ]
        : [
            [0, 0],
            [0.34, 0],
            [0.1, 0.36],
            [0, 0.36],
          ],
      plain("#b3bec3"),
    );
  on.prism(
    [0.36, -0.5, 0.37],
    [0.6, 0, 0],
    [0, 0.2, 0],
    [0, 0, 0.03],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    plain("#b3bec3"),
  );
  for (let i = 0; i < 26; i += 1)
    sketch.line(
      on.to([
        [-0.95 + i * 0.05, -0.45, 0.372],
        [-0.95 + i * 0.05, i % 5 === 0 ? -0.37 : -0.4, 0.372],
      ]),
      { width: 1.5 },
    );
  on.letter("87.1", [0.75, -0.75, 0.01], [0.15, 0, 0], [0, -0.18, 0], 4);
}

function bowFormer(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.2, -2.6, 2.4], target: [0.2, 0.3, 0], zoom: 1150 });
  for (let i = 0; i < 8; i += 1)
    on.box([-3, -1.5 + i * 0.55, -0.08], [7, 0.53, 0.08], { colour: WASH.floor, grain: [1, 0, 0], line: 1.5 });
  const former: readonly P2[] = [[-1.1, -0.6], [0.75, -0.6], ...arc([-0.55, -0.6], 1.3, 1.5, 0, 90, 24), [-1.1, 0.9]];
  on.shadow(
    former.map(([x, y]): V3 => [x, y, 0.2]),
    0,
    0.35,
  );
  on.prism([0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 0.2], former, plain("#d9c29a"));
  for (let a = 4; a <= 90; a += 12) {
    const [p = [0, 0]] = arc([-0.55, -0.6], 1.42, 1.62, a, a, 1);
    on.round([p[0], p[1], 0], [0, 0, 0.32], 0.035, 0.035, plain("#a9743f"));
  }
  const strip = [...arc([-0.55, -0.6], 1.34, 1.54, 90, 35, 20), [1.25, 0.35], [1.95, -0.05]] as readonly P2[];
  strip.slice(1).forEach(([x, y], i) => {
    const [px, py] = strip[i] ?? [x, y];
    sketch.face(
      [
        on.to([
          [px, py, 0.03],
          [x, y, 0.03],
          [x, y, 0.22],
          [px, py, 0.22],
        ]),
      ],
      "#f3d592",
      "none",
    );
  });
  for (const z of [0.03, 0.22]) sketch.line(on.to(strip.map(([x, y]): V3 => [x, y, z])), { width: 2.4 });
  on.box([-1.35, -0.9, 0], [0.5, 0.18, 0.1], plain("#a9743f"));
}

function bowClamped(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.3, -1.5, 3.1], target: [0.25, 0.25, 0], zoom: 1250 });
  for (let i = 0; i < 8; i += 1)
    on.box([-3, -1.7 + i * 0.55, -0.08], [7, 0.53, 0.08], { colour: WASH.floor, grain: [1, 0, 0], line: 1.5 });
  const former: readonly P2[] = [
    [-0.85, -0.75],
    [0.35, -0.75],
    ...arc([-0.75, -0.75], 1.1, 1.1, 0, 90, 24),
    [-0.85, 0.35],
  ];
  on.prism([0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 0.16], former, plain("#d9c29a"));
  bow(on, [-0.75, -0.75, 0.02], [1, 0, 0], [0, 1, 0], [0, 0, 0.18], 1.11, 6, -6, 98, 0.05);
  for (const a of [88, 76, 64, 52, 40, 28, 16, 4]) shiftedClamp(on, a);
}

function shiftedClamp(on: On, degrees: number): void {
  const r = degrees / 57.2958;
  const at = (k: number, z: number): V3 => [-0.75 + Math.cos(r) * k, -0.75 + Math.sin(r) * k, z];
  const v: V3 = [-Math.sin(r) * 0.06, Math.cos(r) * 0.06, 0];
  const along = (long: number): V3 => [Math.cos(r) * long, Math.sin(r) * long, 0];
  const square: readonly P2[] = [
    [0, -0.5],
    [1, -0.5],
    [1, 0.5],
    [0, 0.5],
  ];
  on.prism(at(0.72, 0.24), along(0.86), v, [0, 0, 0.05], square, plain(WASH.steel));
  on.prism(at(0.7, 0.16), along(0.09), v, [0, 0, 0.16], square, plain(WASH.iron));
  on.prism(at(1.45, 0.06), along(0.09), v, [0, 0, 0.26], square, plain(WASH.iron));
  on.round(at(1.55, 0.19), along(0.34), 0.045, 0.055, plain("#a9743f"));
}

function springBack(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.1, -1.1, 3.2], target: [0.1, 0, 0], zoom: 1300, bench: [-2, 2.2] });
  sketch.face(
    [
      on.to([
        [-1.5, -1, 0.005],
        [1.75, -1, 0.005],
        [1.75, 1.1, 0.005],
        [-1.5, 1.1, 0.005],
      ]),
    ],
    WASH.card,
  );
  for (const k of [0, 0.3])
    sketch.line(on.to(arc([-1.1, -0.8], 1.6 + k, 1.6 + k, -2, 92, 40).map(([x, y]): V3 => [x, y, 0.01])), {
      width: 1.8,
      colour: "#47606e",
    });
  on.shadow(
    arc([-1.05, -0.8], 1.9, 1.9, 0, 90, 30).map(([x, y]): V3 => [x, y, 0.05]),
    0,
    0.02,
  );
  bow(on, [-1.13, -0.86, 0.01], [1.02, -0.03, 0], [-0.03, 1.02, 0], [0, 0, 0.1], 1.62, 6, 2, 88, 0.05);
  bow(on, [-1.1, -0.84, 0.12], [1.045, -0.06, 0], [-0.06, 1.045, 0], [0, 0, 0.1], 1.62, 6, 3, 87, 0.05);
  on.letter("3 MM", [0.95, -0.72, 0.012], [0.12, 0, 0], [0, -0.15, 0], 3.4);
  on.letter("2 MM", [-1.42, 0.62, 0.012], [0.12, 0, 0], [0, -0.15, 0], 3.4);
}

function skinTape(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1, -3, 2], target: [0.3, 0.2, 0.35], zoom: 1150, wall: 2.6, bench: [-1.1, 1.6] });
  on.boxShadow([-1.6, -0.3, 0], [4, 1.2, 0.1], 0);
  for (const y of [0.75, -0.3]) on.box([-1.6, y, 0], [4, 0.1, 0.1], spruce([1, 0, 0]));
  for (const x of [2.1, 1, -0.1, -1.3]) on.box([x, -0.2, 0], [0.09, 0.95, 0.1], spruce([0, 1, 0]));
  const sheet = (k: number, y: number): V3 => [
    -1.6 + k * 4,
    -0.3 + y * 0.75,
    0.12 + y * 1.02 + 0.1 * Math.sin(k * 3.1) * y,
  ];
  for (let i = 0; i < 8; i += 1)
    sketch.face(
      [on.to([sheet(i / 8, 0), sheet((i + 1) / 8, 0), sheet((i + 1) / 8, 1), sheet(i / 8, 1)])],
      "#f2e2b8",
      "none",
    );
  sketch.line(on.to([sheet(0, 0), ...Array.from({ length: 9 }, (_, i) => sheet(i / 8, 1)), sheet(1, 0), sheet(0, 0)]), {
    width: 2.6,
  });
  for (let i = 1; i < 16; i += 1)
    sketch.line(on.to([sheet(i / 16, 0.05), sheet(i / 16 + 0.01, 0.95)]), {
      width: 1,
      colour: "#7d5a33",
      opacity: 0.4,
    });
  sketch.brush(
    on.to([
      [-1.6, -0.31, 0.12],
      [2.4, -0.31, 0.12],
    ]),
    "#7f9fb0",
    17,
    0.9,
  );
  for (const [k, coat] of [
    [0.16, "#557d98"],
    [0.84, "#b4694a"],
  ] as const) {
    const [[x, y] = [0, 0]] = on.to([sheet(k, 1)]);
    const lean = k < 0.5 ? -1 : 1;
    sketch.face(
      [
        [
          [x - 26, y - 20],
          [x + 26, y - 20],
          [x + 90 * lean + 40, y - 210],
          [x + 90 * lean - 40, y - 210],
        ],
      ],
      coat,
    );
    sketch.face(
      [
        [
          [x - 27, y - 28],
          [x + 27, y - 28],
          [x + 24, y + 22],
          [x + 9, y + 36],
          [x - 6, y + 36],
          [x - 24, y + 22],
        ],
      ],
      "#e0b995",
    );
    for (const dx of [-12, 0, 12])
      sketch.line(
        [
          [x + dx, y + 8],
          [x + dx, y + 32],
        ],
        { width: 1.6 },
      );
  }
  for (const y of [-0.75, -0.9]) stick(on, [-0.6, y, 0], [2.2, 0.07, 0.03]);
}

function tankBay(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.4, -2.2, 2.1], target: [0.1, 0.15, 0.15], zoom: 1200, bench: [-1.5, 2] });
  on.boxShadow([-1.2, -0.4, 0], [1.9, 1.2, 0.4], 0);
  on.box([-1.2, -0.4, 0], [1.9, 1.2, 0.05], birch([1, 0, 0]));
  on.box([-1.2, 0.74, 0.05], [1.9, 0.08, 0.42], spruce([1, 0, 0]));
  on.box([0.64, -0.4, 0.05], [0.07, 1.14, 0.36], birch([0, 1, 0]));
  for (const [x, y] of [
    [0.48, 0.58],
    [-1.12, 0.58],
  ] as const)
    on.box([x, y, 0.05], [0.16, 0.16, 0.3], spruce([0, 0, 1]));
  on.box([-1.2, -0.4, 0.05], [0.07, 1.14, 0.36], birch([0, 1, 0]));
  for (const x of [0.48, -1.12]) on.box([x, -0.32, 0.05], [0.16, 0.16, 0.3], spruce([0, 0, 1]));
  sketch.face([on.to(arc([-0.85, -0.2], 0.06, 0.06, 0, 360, 18).map(([a, b]): V3 => [a, b, 0.055]))], "#4c4035");
  on.box([-1.2, -0.4, 0.05], [1.9, 0.07, 0.2], spruce([1, 0, 0]));
  on.boxShadow([0.95, -0.3, 0], [0.8, 0.75, 0.55], 0);
  on.box([0.95, -0.3, 0], [0.8, 0.75, 0.55], plain("#c6a676"));
  sketch.line(
    on.to([
      [0.95, 0.07, 0.552],
      [1.75, 0.07, 0.552],
    ]),
    { width: 2 },
  );
  on.letter("TANK", [1.02, -0.31, 0.38], [0.13, 0, 0], [0, 0, -0.16], 4);
}

function beamFitted(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-2.2, -2.7, 0.1], target: [0.1, 0.2, 1], zoom: 1150, centre: [800, 620] });
  on.box([-1.5, 0.5, 1.25], [3.1, 0.25, 0.9], birch([1, 0, 0]));
  on.box([-1.5, 0.1, 1.3], [0.1, 0.4, 0.9], spruce([0, 0, 1]));
  on.box([1.5, 0.1, 1.3], [0.1, 0.4, 0.9], spruce([0, 0, 1]));
  for (let k = 4; k >= 0; k -= 1) on.box([-1.4, 0.15, 0.75 + k * 0.1], [2.9, 0.42, 0.096], ash([1, 0, 0]));
  for (const x of [-1.05, -0.75, 0.85, 1.15]) {
    on.round([x, 0.12, 0.5], [0, 0, 0.28], 0.035, 0.035, plain(WASH.steel));
    on.round([x, 0.12, 0.47], [0, 0, 0.06], 0.075, 0.075, plain(WASH.iron));
  }
  for (const x of [-0.35, 0.4]) {
    on.box([x, 0.02, 0.42], [0.1, 0.07, 1.85], plain(WASH.steel));
    on.box([x - 0.03, 0.02, 0.6], [0.16, 0.5, 0.14], plain(WASH.iron));
    on.box([x - 0.03, 0.02, 2.1], [0.16, 0.5, 0.14], plain(WASH.iron));
    on.round([x + 0.05, 0.3, 0.6], [0, 0, -0.4], 0.06, 0.07, plain("#a9743f"));
  }
}

function squeeze(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-0.2, -2.5, 1.9],
    target: [0.1, 0.1, 0.2],
    zoom: 1080,
    wall: 1.9,
    bench: [-1.3, 1.6],
  });
  for (let i = 0; i < 8; i += 1) {
    const x = -1.55 + i * 0.44;
    on.boxShadow([x, -0.2, 0], [0.26, 0.75, 0.2], 0, 0.25);
    on.box([x, -0.2, 0], [0.26, 0.75, 0.16], spruce([0, 1, 0]));
    on.box([x, -0.2, 0.16], [0.26, 0.75, 0.04], birch([0, 1, 0]));
    on.letter(String([3, 8, 1, 6, 5, 2, 7, 4][i] ?? 0), [x + 0.06, -0.42, 0.01], [0.11, 0, 0], [0, -0.13, 0], 3);
    if (i < 4) {
      on.box([x + 0.06, -0.2, 0.2], [0.13, 0.75, 0.03], plain("#d0ad6d"));
      for (const y of [-0.1, 0.12, 0.34])
        sketch.line(
          on.to([
            [x + 0.07, y, 0.235],
            [x + 0.18, y, 0.235],
          ]),
          { width: 4.5, colour: "#59636a" },
        );
    } else {
      for (const dy of [-0.15, 0, 0.15]) {
        const [p = [0, 0]] = on.to([[x + 0.13 + dy * 0.6, -0.205, 0.15]]);
        sketch.tint(arc(p as P2, 8, 12), "#d9942f", 0.95);
      }
      clamp(on, [x + 0.1, -0.3, 0.02], 0.72, [0, 0.46, 0], 0.16);
    }
  }
}

function lanterns(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0, -6, 1.7], target: [0, 0, 1.5], zoom: 1400, centre: [800, 520] });
  sketch.face(
    [
      [
        [0, 0],
        [1600, 0],
        [1600, 1067],
        [0, 1067],
      ],
    ],
    "#4a5068",
    "none",
  );
  sketch.tint(
    [
      [0, 640],
      [1600, 610],
      [1600, 1067],
      [0, 1067],
    ],
    "#3f4150",
    0.9,
    10,
  );
  sketch.face(
    [
      [
        [940, 250],
        [1600, 160],
        [1600, 830],
        [940, 780],
      ],
    ],
    "#5a5049",
  );
  sketch.face(
    [
      [
        [900, 260],
        [1270, 60],
        [1600, 90],
        [1600, 170],
        [940, 256],
      ],
    ],
    "#463f3d",
  );
  sketch.face(
    [
      [
        [1080, 400],
        [1300, 386],
        [1300, 806],
        [1080, 790],
      ],
    ],
    "#f8d181",
    { width: 5 },
  );
  sketch.tint(
    [
      [1080, 790],
      [1300, 806],
      [1240, 1000],
      [760, 960],
    ],
    "#f1bd62",
    0.55,
    30,
  );
  sketch.face(
    [
      [
        [1110, 590],
        [1270, 580],
        [1270, 640],
        [1110, 650],
      ],
    ],
    "#9a7748",
    { width: 3 },
  );
  sketch.line(
    on.to([
      [-6, 0, 0.55],
      [6, 0, 0.6],
    ]),
    { width: 1.6, opacity: 0.4, colour: "#222222" },
  );
  for (let i = 0; i < 9; i += 1) {
    const [x, y, tall] = [70 + i * 104, 900 - i * 9 + sketch.between(-10, 10), 205 - i * 6 + sketch.between(-25, 20)];
    figure(
      sketch,
      [x, y],
      tall,
      0.04,
      [x + 52, y - tall * 0.66],
      ["#8a5a52", "#5f6f8a", "#7a7d58", "#6d5a75"][i % 4] ?? "#555555",
    );
    const [lx, ly] = [x + 56, y - tall * 0.66 + 34];
    sketch.tint(arc([lx, ly], 62, 62), "#f5c56a", 0.6, 30);
    sketch.line(
      [
        [lx - 4, ly - 34],
        [lx, ly - 20],
      ],
      { width: 2 },
    );
    sketch.face([arc([lx, ly], 19, 22)], i % 2 === 0 ? "#ffd98a" : "#f2a65e", { width: 2.4 });
  }
  for (const run of letters("11 NOV", 24))
    sketch.line(
      run.map(([a, b]): P2 => [1420 + a, 1000 + b]),
      { width: 2.4, colour: "#221f26" },
    );
}

function hoopFeet(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.7, -2.4, 1.4],
    target: [0, 0.1, 0.55],
    zoom: 1200,
    wall: 1.9,
    bench: [-1.3, 1.5],
  });
  on.prism(
    [0.75, 1.2, 0],
    [1.1, 0, 0],
    [0, 0.25, 1.3],
    [0, -0.06, 0],
    [
      [0.08, 0],
      [0.92, 0],
      [1, 1],
      [0, 1],
    ],
    spruce([0, 0, 1]),
    [
      [
        [0.2, 0.1],
        [0.14, 0.88],
        [0.86, 0.88],
        [0.8, 0.1],
      ],
    ],
  );
  on.boxShadow([-0.7, -0.25, 0], [1, 0.75, 0.5], 0);
  on.box([-0.7, 0.35, 0], [0.95, 0.2, 0.5], ash([1, 0, 0]));
  for (let k = 5; k >= 0; k -= 1)
    on.prism(
      [0, 0, 0.06],
      [1, 0, 0],
      [0, 0, 1],
      [0, 0.4, 0],
      [
        [-0.3 + k * 0.07, 0],
        [-0.235 + k * 0.07, 0],
        [-0.235 + k * 0.07, 1.3],
        [-0.1 + k * 0.07, 2.1],
        [-0.165 + k * 0.07, 2.1],
        [-0.3 + k * 0.07, 1.3],
      ],
      { colour: k % 2 === 0 ? WASH.spruce : "#e6c88c", line: 1.8 },
    );
  on.box([-0.7, -0.25, 0], [0.95, 0.25, 0.5], ash([1, 0, 0]));
  clamp(on, [-0.15, -0.4, 0.05], 0.85, [0, 0.5, 0], 0.26);
  for (const x of [-0.55, 0.1])
    sketch.face([on.to(arc([x, 0.28], 0.05, 0.05, 0, 360, 18).map(([a, c]): V3 => [a, -0.255, c]))], "#4c4035");
}

export const bentScenes = {
  hoopFormer,
  hoopTwo,
  beamClamps,
  syringes,
  calliper,
  bowFormer,
  bowClamped,
  springBack,
  skinTape,
  tankBay,
  beamFitted,
  squeeze,
  lanterns,
  hoopFeet,
};
