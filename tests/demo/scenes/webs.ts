import { WASH } from "../ink/colour.ts";
import { birch, plain, spruce } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2, type V3 } from "../ink/space.ts";
import { figure } from "../shop/people.ts";
import { glossy, stage, torn } from "../shop/stage.ts";
import { weight } from "../shop/tools.ts";

const ply = (grain: V3): ReturnType<typeof birch> => birch(grain);

function plyScarf(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.2, -2.2, 1.5], target: [0.1, 0.4, 0.15], zoom: 1250, bench: [-1.4, 2] });
  on.boxShadow([-3, 0, 0], [4.3, 1.3, 0.3], 0);
  for (let k = 0; k < 4; k += 1) {
    const [x, z] = [1.5 - k * 0.42, k * 0.11];
    on.prism(
      [-4, 0, z],
      [1, 0, 0],
      [0, 0, 1],
      [0, 1.3, 0],
      [
        [0, 0],
        [x + 4, 0],
        [x + 3.58, 0.105],
        [0, 0.105],
      ],
      plain("#f2e2b8"),
    );
    for (const share of [0.34, 0.67])
      sketch.line(
        on.to([
          [x - 0.42 * share, 0, z + 0.105 * share],
          [x - 0.42 * share, 1.3, z + 0.105 * share],
        ]),
        { width: 4, colour: "#7c5327", opacity: 0.8 },
      );
  }
  on.box([-0.9, 0.3, 0.43], [0.9, 0.3, 0.2], { colour: "#b5834c", grain: [1, 0, 0] });
  on.round([-0.1, 0.45, 0.63], [0, 0, 0.12], 0.06, 0.08, plain("#8c5f35"));
  on.prism(
    [-0.85, 0.4, 0.63],
    [0.16, 0, 0],
    [0, 0, 0.25],
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
}

function webWeights(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-2.4, -2.4, 2.2],
    target: [1.1, 0.3, 0.15],
    zoom: 1180,
    wall: 3,
    bench: [-1.1, 1.8],
  });
  on.boxShadow([-1.6, 0, 0], [9, 0.8, 0.25], 0);
  on.box([-1.6, 0, 0], [9, 0.16, 0.2], spruce([1, 0, 0]));
  on.box([-1.6, 0.64, 0], [9, 0.16, 0.2], spruce([1, 0, 0]));
  on.box([-1.6, 0, 0.2], [9, 0.8, 0.05], ply([1, 1, 0]));
  for (const y of [0.66, 0.04]) on.box([-1.6, y, 0.25], [9, 0.1, 0.03], plain("#d8b777"));
  for (let x = 6; x > -1.5; x -= 0.3)
    for (const y of [0.71, 0.09])
      sketch.line(
        on.to([
          [x, y, 0.285],
          [x + 0.07, y, 0.285],
        ]),
        { width: 3 },
      );
  for (const [x, y] of [
    [4.6, 0.25],
    [3.1, 0.3],
    [1.7, 0.2],
  ] as const)
    sandbag(on, [x, y, 0.26]);
  for (const [x, y] of [
    [3.9, 0.2],
    [2.5, 0.15],
    [1, 0.25],
    [-0.9, 0.2],
  ] as const)
    weight(on, [x, y, 0.26], 0.34);
  for (let k = 0; k < 4; k += 1)
    on.box(
      [0.05 + k * 0.02, 0.15, 0.26 + k * 0.09],
      [0.5, 0.36, 0.085],
      plain(["#7d4a3c", "#557d98", "#8a9468", "#a88746"][k] ?? "#888888"),
    );
}

function sandbag(on: ReturnType<typeof stage>, [x, y, z]: V3): void {
  on.boxShadow([x, y, z], [0.62, 0.4, 0.2], z, 0.25);
  const outline = on.to([
    [x, y, z],
    [x + 0.3, y - 0.03, z],
    [x + 0.64, y, z],
    [x + 0.66, y + 0.1, z + 0.12],
    [x + 0.6, y + 0.3, z + 0.22],
    [x + 0.3, y + 0.34, z + 0.26],
    [x + 0.04, y + 0.3, z + 0.22],
    [x - 0.05, y + 0.1, z + 0.12],
  ]);
  on.sketch.face([outline], "#cdb993");
  on.sketch.line(
    on.to([
      [x + 0.06, y + 0.05, z + 0.12],
      [x + 0.3, y + 0.1, z + 0.15],
      [x + 0.58, y + 0.06, z + 0.12],
    ]),
    { width: 1.4, opacity: 0.6 },
  );
  on.sketch.line(
    on.to([
      [x + 0.62, y + 0.2, z + 0.14],
      [x + 0.72, y + 0.2, z + 0.16],
    ]),
    { width: 5 },
  );
}

/** A piece opened like a book: two sticks side by side, their glue faces up. */
function opened(
  on: ReturnType<typeof stage>,
  left: "torn" | "glossy" | "bare",
  right: "torn" | "glossy" | "bare",
): void {
  for (const [x, kind] of [
    [-0.95, left],
    [0.15, right],
  ] as const) {
    on.boxShadow([x, -1.3, 0], [0.72, 2.6, 0.5], 0, 0.38);
    on.box([x, -1.3, 0], [0.72, 2.6, 0.5], spruce([0, 1, 0]));
    const face: readonly [V3, V3, V3, V3] = [
      [x, -0.75, 0.505],
      [x, 0.75, 0.505],
      [x + 0.72, 0.75, 0.505],
      [x + 0.72, -0.75, 0.505],
    ];
    if (kind === "torn") torn(on, face, 260);
    else if (kind === "glossy") glossy(on, face);
    else {
      on.sketch.face([on.to(face)], "#f6ead0", { width: 1.6 });
      for (let i = 0; i < 6; i += 1)
        on.sketch.line(
          on.to([
            [x + 0.1 + i * 0.1, 0.6, 0.51],
            [x + 0.12 + i * 0.1, 0.7, 0.51],
          ]),
          { width: 1.4 },
        );
    }
  }
}

function shinyLine(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.7, -2.3, 2.5], target: [-0.03, 0, 0.3], zoom: 1300, bench: [-2, 2.6] });
  opened(on, "bare", "glossy");
}

function hair(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.5, -2.1, 2.1], target: [0, 0, 0.3], zoom: 1330, bench: [-2, 2.6] });
  opened(on, "torn", "torn");
}

function fibres(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0, -1.9, 2.9], target: [0, 0.1, 0.3], zoom: 1380 });
  sketch.face(
    [
      on.to([
        [-1.9, -1.6, 0],
        [1.9, -1.6, 0],
        [1.9, 1.9, 0],
        [-1.9, 1.9, 0],
      ]),
    ],
    "#50596a",
  );
  sketch.tint(arc([800, 520], 620, 420), "#8d97a8", 0.6, 30);
  opened(on, "glossy", "torn");
  on.letter("4", [-0.7, -1.38, 0.02], [0.2, 0, 0], [0, -0.22, 0], 5);
  on.letter("11", [0.36, -1.38, 0.02], [0.2, 0, 0], [0, -0.22, 0], 5);
}

function stearate(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0.2, -2.4, 2], target: [0.05, 0.05, 0.1], zoom: 1250, bench: [-1.5, 1.8] });
  const sheet = (x: number, colour: string, grit: string): void => {
    for (let i = 0; i < 10; i += 1) {
      const a = (k: number): V3 => [x + k * 0.11, 0, 0.02 + 0.5 * ((k - 5) / 6) ** 2 * (k > 5 ? 1 : 0.25)];
      const [p, q] = [a(i), a(i + 1)];
      sketch.face(
        [
          on.to([
            [p[0], -0.5, p[2]],
            [q[0], -0.5, q[2]],
            [q[0], 0.75, q[2]],
            [p[0], 0.75, p[2]],
          ]),
        ],
        colour,
        i === 0 || i === 9 ? { width: 1.4 } : "none",
      );
    }
    for (let i = 0; i < 160; i += 1) {
      const [p = [0, 0]] = on.to([[x + sketch.between(0.05, 0.6), sketch.between(-0.45, 0.7), 0.06]]);
      sketch.line([p as P2, [p[0] + 1.5, p[1] + 1]], { width: 2, opacity: 0.5 });
    }
    on.letter(grit, [x + 0.08, -0.3, 0.06], [0.13, 0, 0], [0, -0.16, 0], 3.2);
  };
  sheet(-1.6, "#b9bdc0", "150");
  sheet(0.75, "#b5563a", "120");
  sketch.tint(
    on.to([
      [-1.4, 0.6, 0.06],
      [-1.1, 0.65, 0.06],
      [-1, -0.2, 0.06],
      [-1.2, -0.3, 0.06],
    ]),
    "#ffffff",
    0.5,
    10,
  );
  on.boxShadow([-0.35, 0, 0], [0.85, 0.1, 0.45], 0);
  on.prism(
    [-0.32, 0.1, 0.02],
    [0.8, 0.05, 0],
    [0, -0.12, 0.5],
    [0, 0.03, 0.006],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    plain(WASH.steel),
  );
  for (let k = 0; k < 10; k += 1) {
    const [x, y, r] = [sketch.between(-0.5, 0.6), sketch.between(-0.85, -0.15), sketch.between(0.03, 0.07)];
    const c = Array.from(
      { length: 14 },
      (_, i): V3 => [x + r * Math.cos(i * 0.6) + i * 0.008, y, 0.02 + r + r * Math.sin(i * 0.6)],
    );
    sketch.brush(on.to(c), "#f7e6bb", 8);
    sketch.line(on.to(c), { width: 1.6 });
  }
}

function trialRows(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0, -0.9, 3.1], target: [0, 0.02, 0], zoom: 1420, bench: [-2, 2] });
  sketch.face(
    [
      on.to([
        [-1.35, -0.8, 0.01],
        [1.05, -0.8, 0.01],
        [1.05, 0.85, 0.01],
        [-1.35, 0.85, 0.01],
      ]),
    ],
    WASH.card,
  );
  for (let i = 0; i < 25; i += 1) {
    sketch.line(
      on.to([
        [-1.35 + i * 0.1, -0.8, 0.012],
        [-1.35 + i * 0.1, 0.85, 0.012],
      ]),
      { width: 1, colour: "#7f9fb0", opacity: 0.55 },
    );
    if (i < 17)
      sketch.line(
        on.to([
          [-1.35, -0.8 + i * 0.1, 0.012],
          [1.05, -0.8 + i * 0.1, 0.012],
        ]),
        { width: 1, colour: "#7f9fb0", opacity: 0.55 },
      );
  }
  const order = [7, 2, 11, 5, 9, 1, 12, 4, 10, 3, 8, 6];
  order.forEach((name, i) => {
    const [x, y] = [-1.15 + (i % 4) * 0.56, 0.5 - Math.floor(i / 4) * 0.52];
    on.boxShadow([x, y - 0.12, 0.01], [0.36, 0.3, 0.09], 0.01, 0.25);
    for (const k of [2, 1, 0])
      on.box(
        [x + (k === 1 ? 0.12 : 0), y - 0.14 + k * 0.085, 0.01],
        [0.32, 0.08, 0.08],
        k === 1 ? spruce([1, 0, 0]) : birch([1, 0, 0]),
      );
    on.letter(String(name), [x - 0.02, y - 0.17, 0.014], [0.07, 0, 0], [0, -0.085, 0], 2.2);
  });
  sketch.face(
    [
      on.to([
        [1.15, -0.5, 0.03],
        [1.8, -0.4, 0.03],
        [1.72, 0.1, 0.03],
        [1.07, 0, 0.03],
      ]),
    ],
    "#e9ddbf",
  );
  sketch.line(
    on.to([
      [1.07, 0, 0.035],
      [1.5, -0.2, 0.035],
      [1.72, 0.1, 0.035],
    ]),
    { width: 2 },
  );
  sketch.tint(arc(on.to([[1.48, -0.2, 0.04]])[0] ?? [0, 0], 18, 18), "#b4492f", 0.95);
}

function webOff(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.8, -2.3, 1.6],
    target: [0.5, 0.2, 0.3],
    zoom: 1180,
    wall: 2.6,
    bench: [-1.2, 1.6],
  });
  on.boxShadow([-1.8, 0, 0], [9, 0.8, 0.3], 0);
  on.box([-1.8, 0.62, 0], [9, 0.18, 0.22], spruce([1, 0, 0]));
  for (const x of [4, 2.6, 1.2, -0.2]) on.box([x, 0.18, 0], [0.2, 0.44, 0.22], spruce([0, 1, 0]));
  on.box([-1.8, 0, 0], [9, 0.18, 0.22], spruce([1, 0, 0]));
  glossy(
    on,
    [
      [-1.8, 0, 0.225],
      [2.2, 0, 0.225],
      [2.2, 0.18, 0.225],
      [-1.8, 0.18, 0.225],
    ],
    "#e0b060",
  );
  const z = (x: number): number => 0.24 + 0.17 * Math.max(0, 2.4 - x) ** 1.6 * 0.42;
  for (let i = 20; i >= 0; i -= 1) {
    const [x0, x1] = [-1.3 + i * 0.3, -1.3 + (i + 1) * 0.3];
    sketch.face(
      [
        on.to([
          [x0, 0, z(x0)],
          [x1, 0, z(x1)],
          [x1, 0.8, z(x1)],
          [x0, 0.8, z(x0)],
        ]),
      ],
      x0 < 1 ? "#e3c184" : "#f2e2b8",
      "none",
    );
  }
  for (const y of [0, 0.8])
    sketch.line(on.to(Array.from({ length: 22 }, (_, i): V3 => [-1.3 + i * 0.3, y, z(-1.3 + i * 0.3)])), {
      width: 2.6,
    });
  sketch.line(
    on.to([
      [-1.3, 0, z(-1.3)],
      [-1.3, 0.8, z(-1.3)],
    ]),
    { width: 3 },
  );
  on.prism(
    [-1.75, -0.25, 0.28],
    [1.1, 0.2, 0.14],
    [-0.03, 0.16, 0],
    [0, 0, 0.035],
    [
      [0, 0],
      [1, 0.1],
      [1, 0.9],
      [0, 1],
    ],
    plain(WASH.steel),
  );
  on.round([-1.75, -0.17, 0.3], [-0.55, -0.1, -0.07], 0.07, 0.09, plain("#a9743f"));
}

function mirror(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-1.9, 0.28, 0.42], target: [3, 0.42, 0.36], zoom: 900, centre: [800, 540] });
  sketch.face(
    [
      [
        [0, 0],
        [1600, 0],
        [1600, 1067],
        [0, 1067],
      ],
    ],
    "#6a5f58",
    "none",
  );
  const tunnel = (x: number): readonly V3[] => [
    [x, 0, 0],
    [x, 0.9, 0],
    [x, 0.9, 0.8],
    [x, 0, 0.8],
  ];
  for (const [x0, x1, light] of [
    [3.4, 5, "#f3d68f"],
    [2.1, 3.4, "#dcb878"],
    [0.9, 2.1, "#bd9760"],
    [-0.4, 0.9, "#94744c"],
    [-1.6, -0.4, "#6f583f"],
  ] as const) {
    const [a, b, c, d] = tunnel(x0) as [V3, V3, V3, V3];
    const [e, f, g, h] = tunnel(x1) as [V3, V3, V3, V3];
    for (const quad of [
      [a, b, f, e],
      [b, c, g, f],
      [c, d, h, g],
      [d, a, e, h],
    ])
      sketch.face([on.to(quad)], light, { width: 1.6 });
  }
  sketch.face([on.to(tunnel(5))], "#fff1c4");
  sketch.tint(arc(on.to([[5, 0.45, 0.4]])[0] ?? [0, 0], 190, 150), "#fff3cf", 0.85, 30);
  for (const x of [3.4, 2.1, 0.9]) {
    on.box([x, 0, 0], [0.16, 0.2, 0.8], spruce([0, 0, 1]));
    on.box([x, 0.7, 0], [0.16, 0.2, 0.8], spruce([0, 0, 1]));
  }
  sketch.line(
    [
      [1180, 1067],
      [930, 720],
    ],
    { width: 13 },
  );
  sketch.line(
    [
      [1180, 1067],
      [930, 720],
    ],
    { width: 6, colour: "#c9c5ba" },
  );
  sketch.face([arc([880, 640], 150, 120)], "#dfe8e6", { width: 6 });
  sketch.within([arc([880, 640], 140, 110)], () => {
    sketch.face(
      [
        [
          [740, 520],
          [880, 540],
          [880, 760],
          [740, 780],
        ],
      ],
      "#e6c37c",
      { width: 2 },
    );
    sketch.face(
      [
        [
          [880, 540],
          [1040, 500],
          [1040, 790],
          [880, 760],
        ],
      ],
      "#b98f56",
      { width: 2 },
    );
    for (let i = 0; i < 6; i += 1)
      sketch.line(
        [
          [760 + i * 20, 540],
          [764 + i * 20, 770],
        ],
        { width: 1.4, opacity: 0.6 },
      );
    sketch.brush(
      [
        [880, 545],
        [880, 755],
      ],
      "#d98f2b",
      10,
    );
  });
}

function inspectorLamp(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-2.6, -4.2, 1.9],
    target: [0.4, 0, 1],
    zoom: 1250,
    wall: 2.6,
    wallColour: "#dcd6c8",
    floor: -0.02,
  });
  for (const x of [4, 1.2]) for (const y of [0.1, 0.75]) on.box([x, y, 0], [0.1, 0.1, 0.85], spruce([0, 0, 1]));
  on.box([-0.6, 0, 0.85], [8, 0.95, 0.1], { colour: WASH.bench, grain: [1, 0, 0] });
  on.box([-0.5, 0.25, 0.95], [8, 0.4, 0.08], spruce([1, 0, 0]));
  on.box([-0.5, 0.6, 1.03], [8, 0.05, 0.34], ply([1, 0, 1]));
  for (const x of [4, 2.6, 1.2, -0.1]) on.box([x, 0.3, 1.03], [0.14, 0.3, 0.34], spruce([0, 0, 1]));
  on.box([-0.5, 0.25, 1.37], [8, 0.4, 0.08], spruce([1, 0, 0]));
  const [lamp = [0, 0], feet = [0, 0]] = on.to([
    [-0.62, 0.35, 1.22],
    [-1.35, 0.3, 0],
  ]);
  sketch.tint(arc(lamp as P2, 210, 150), "#ffe3a0", 0.75, 30);
  figure(sketch, feet as P2, 760, 0.17, lamp as P2, "#6b7384", "long");
  sketch.face([arc(lamp as P2, 17, 17)], "#fff1c4", { width: 3 });
  on.box([-2.6, 0.5, 0], [0.5, 0.4, 0.45], plain("#a98a5d"));
}

function drainHoles(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-1.7, -2, 0.95],
    target: [0.4, 0, 0.36],
    zoom: 1280,
    wall: 2.4,
    bench: [-1.2, 1.2],
  });
  on.boxShadow([-3, 0, 0], [9, 0.3, 0.8], 0);
  on.box([-3, 0.04, 0], [9, 0.36, 0.16], spruce([1, 0, 0]));
  on.box([-3, 0.04, 0.78], [9, 0.36, 0.2], spruce([1, 0, 0]));
  on.box([-3, 0, 0], [9, 0.045, 0.98], ply([1, 0, 1]));
  for (const x of [3.6, 2.6, 1.6, 0.6, -0.4]) {
    sketch.face([on.to(arc([x, 0.24], 0.045, 0.045, 0, 360, 20).map(([a, c]): V3 => [a, -0.004, c]))], "#5a4a3a", {
      width: 2.6,
    });
    sketch.line(
      on.to([
        [x + 0.5, -0.004, 0.02],
        [x + 0.5, -0.004, 0.96],
      ]),
      { width: 1.2, opacity: 0.5 },
    );
    sketch.brush(
      on.to([
        [x, -0.004, 0.19],
        [x + 0.01, -0.004, 0.05],
      ]),
      "#b98a4a",
      4,
      0.6,
    );
  }
  on.boxShadow([-0.3, -0.75, 0], [0.9, 0.2, 0.2], 0);
  on.round([-0.3, -0.6, 0.12], [0.62, 0, 0], 0.12, 0.1, plain("#5d7f6d"));
  on.round([0.32, -0.6, 0.12], [0.18, 0, 0], 0.06, 0.04, plain(WASH.iron));
  on.round([0.5, -0.6, 0.12], [0.42, 0, 0], 0.018, 0.018, plain(WASH.steel));
  on.prism(
    [-0.32, -0.66, 0.02],
    [-0.16, 0, 0],
    [-0.05, -0.3, 0],
    [0, 0, 0.14],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    plain("#5d7f6d"),
  );
}

function boxShut(sketch: Sketch): void {
  const on = stage(sketch, {
    eye: [-2.2, -3, 2],
    target: [0.7, 0.5, 0.55],
    zoom: 1150,
    wall: 1.7,
    wallColour: "#e4dcca",
    bench: [-1, 1.6],
  });
  sketch.face(
    [
      on.to([
        [0.6, 1.68, 1],
        [2.4, 1.68, 1],
        [2.4, 1.68, 2.1],
        [0.6, 1.68, 2.1],
      ]),
    ],
    "#bcd3df",
    { width: 4 },
  );
  for (const x of [1.2, 1.8])
    sketch.line(
      on.to([
        [x, 1.67, 1],
        [x, 1.67, 2.1],
      ]),
      { width: 4 },
    );
  on.box([0.5, 1.55, 0.93], [2, 0.13, 0.07], plain("#cbb68f"));
  const [w = [0, 0]] = on.to([[1.5, 1.5, 1.08]]);
  sketch.face([arc([w[0], w[1]], 24, 18)], "#8b6a48");
  sketch.face([arc([w[0] - 22, w[1] - 14], 12, 11)], "#8b6a48");
  sketch.line(
    [
      [w[0] + 20, w[1] - 6],
      [w[0] + 36, w[1] - 34],
    ],
    { width: 6 },
  );
  sketch.line(
    [
      [w[0] - 34, w[1] - 14],
      [w[0] - 46, w[1] - 12],
    ],
    { width: 3 },
  );
  on.boxShadow([-1.8, 0, 0], [9, 0.9, 0.35], 0);
  on.box([-1.8, 0, 0], [9, 0.9, 0.3], spruce([1, 0, 0]));
  on.box([-1.8, 0, 0.3], [9, 0.9, 0.05], ply([1, -1, 0]));
  for (const y of [0.76, 0.04]) on.box([-1.8, y, 0.35], [9, 0.1, 0.05], plain("#d8b777"));
  for (const x of [4.4, 3.5, 2.6, 1.7, 0.8, -0.1, -1]) {
    sandbag(on, [x, 0.38, 0.36]);
    weight(on, [x + 0.45, 0.08, 0.4], 0.28);
  }
}

function sparShoulders(sketch: Sketch): void {
  const on = stage(sketch, { eye: [0, -7, 1.7], target: [0, 0, 1.5], zoom: 1450, centre: [800, 600] });
  sketch.face(
    [
      [
        [0, 0],
        [1600, 0],
        [1600, 960],
        [0, 960],
      ],
    ],
    "#8a7d6d",
    "none",
  );
  sketch.face(
    [
      [
        [380, 130],
        [1230, 130],
        [1230, 900],
        [380, 900],
      ],
    ],
    "#f6e9c4",
    { width: 6 },
  );
  sketch.tint(
    [
      [380, 560],
      [1230, 530],
      [1230, 700],
      [380, 700],
    ],
    "#a9c2c6",
    0.9,
    6,
  );
  sketch.tint(
    [
      [380, 680],
      [1230, 680],
      [1230, 900],
      [380, 900],
    ],
    "#b8b183",
    0.9,
    6,
  );
  sketch.face(
    [
      [
        [0, 900],
        [1600, 900],
        [1600, 1067],
        [0, 1067],
      ],
    ],
    "#9c8a70",
    "none",
  );
  sketch.tint(
    [
      [380, 900],
      [1230, 900],
      [1500, 1067],
      [120, 1067],
    ],
    "#efdfb6",
    0.7,
    10,
  );
  for (let x = 30; x < 1600; x += 62)
    if (x < 380 || x > 1230)
      sketch.line(
        [
          [x, 0],
          [x, 900],
        ],
        { width: 1.6, opacity: 0.6 },
      );
  const spar = on.to([
    [-4.2, 0, 1.72],
    [4.4, 0, 1.72],
    [4.4, 0, 1.94],
    [-4.2, 0, 1.94],
  ]);
  for (const [x, coat, tall] of [
    [330, "#557d98", 560],
    [800, "#b4694a", 520],
    [1270, "#6b7a5a", 550],
  ] as const)
    figure(sketch, [x, 985], tall, 0.02, [x + 74, 985 - tall * 0.9], coat);
  sketch.face([spar], "#f3d592");
  for (let i = 0; i < 5; i += 1)
    sketch.line(
      on.to([
        [-4.2, -0.01, 1.76 + i * 0.035],
        [4.4, -0.01, 1.76 + i * 0.035],
      ]),
      { width: 1.2, colour: "#7d5a33", opacity: 0.6 },
    );
}

function sparScales(sketch: Sketch): void {
  const on = stage(sketch, { eye: [-0.4, -5.4, 1.6], target: [0, 0, 1.55], zoom: 1500, wall: 1.8, centre: [800, 540] });
  on.box([-3.4, 0.1, 2.75], [6.8, 0.25, 0.28], { colour: "#9c7f5a", grain: [1, 0, 0] });
  for (const x of [-1.7, 1.7]) {
    sketch.line(
      on.to([
        [x, 0.2, 2.75],
        [x, 0.2, 2.5],
      ]),
      { width: 5 },
    );
    on.round([x, 0.24, 2.3], [0, -0.08, 0], 0.22, 0.22, plain(WASH.brass));
    sketch.face([on.to(arc([x, 2.3], 0.17, 0.17).map(([a, c]): V3 => [a, 0.13, c]))], WASH.card, { width: 1.6 });
    sketch.line(
      on.to([
        [x, 0.12, 2.3],
        [x + 0.1, 0.12, 2.21],
      ]),
      { width: 4, colour: "#b4492f" },
    );
    sketch.line(
      on.to([
        [x - 0.12, 0.2, 1.42],
        [x, 0.2, 2.08],
        [x + 0.12, 0.2, 1.42],
      ]),
      { width: 4 },
    );
  }
  on.prism(
    [-3.3, 0, 1],
    [6.6, 0, 0],
    [0, 0, 0.44],
    [0, 0.3, 0],
    [
      [0, 0.2],
      [0.5, 0],
      [1, 0.2],
      [1, 0.8],
      [0.5, 1],
      [0, 0.8],
    ],
    spruce([1, 0, 0]),
  );
  sketch.line(
    on.to([
      [0, -0.02, 2.75],
      [0, -0.02, 0.5],
    ]),
    { width: 2 },
  );
  on.round([0, -0.02, 0.5], [0, 0, -0.22], 0.07, 0.01, plain(WASH.brass));
  on.letter("12.5", [-1.36, 0.1, 2.4], [0.15, 0, 0], [0, 0, -0.2], 4);
  on.letter("12.6", [2.02, 0.1, 2.4], [0.15, 0, 0], [0, 0, -0.2], 4);
}

export const websScenes = {
  plyScarf,
  webWeights,
  shinyLine,
  hair,
  fibres,
  stearate,
  trialRows,
  webOff,
  mirror,
  inspectorLamp,
  drainHoles,
  boxShut,
  sparShoulders,
  sparScales,
};
