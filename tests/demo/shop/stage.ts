import { WASH } from "../ink/colour.ts";
import { Solids } from "../ink/solids.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, cameraAt, type P2, type V3 } from "../ink/space.ts";
import { bench, wall } from "./tools.ts";

export interface View {
  readonly eye: V3;
  readonly target: V3;
  readonly zoom: number;
  readonly centre?: P2;
  /** Distance of the wall behind; none without it. */
  readonly wall?: number;
  readonly wallColour?: string;
  /** A bench top from its near to its far edge. */
  readonly bench?: readonly [number, number];
  readonly floor?: number;
}

/** A scene's ground: a soft wash over the paper, then floor, wall and bench if asked for. */
export function stage(sketch: Sketch, view: View): Solids {
  const on = new Solids(sketch, cameraAt(view.eye, view.target, view.zoom, view.centre));
  sketch.tint(
    [
      [90, 70],
      [800, 40],
      [1520, 80],
      [1550, 560],
      [1500, 1000],
      [700, 1030],
      [80, 990],
      [50, 500],
    ],
    "#e6dcc6",
    0.55,
    30,
  );
  if (view.floor !== undefined)
    sketch.tint(
      on.to([
        [-9, -1.2, view.floor],
        [9, -1.2, view.floor],
        [9, 9, view.floor],
        [-9, 9, view.floor],
      ]),
      WASH.floor,
      0.6,
      6,
    );
  if (view.wall !== undefined) wall(on, view.wall, -7, 8, 4, view.wallColour ?? WASH.wall, 26);
  if (view.bench !== undefined) bench(on, [-7, view.bench[0]], 15, view.bench[1] - view.bench[0], 5);
  return on;
}

/** A glue face with torn fibre: corners in order, the grain from the first to the second. */
export function torn(on: Solids, corners: readonly [V3, V3, V3, V3], count = 130): void {
  const { sketch } = on;
  const [a, b, c, d] = on.to(corners) as [P2, P2, P2, P2];
  sketch.face([[a, b, c, d]], "#f6e6bd", { width: 1.6 });
  const at = (i: number, j: number): P2 => [
    mixed(mixed(a[0], b[0], i), mixed(d[0], c[0], i), j),
    mixed(mixed(a[1], b[1], i), mixed(d[1], c[1], i), j),
  ];
  for (let k = 0; k < count; k += 1) {
    const [i, j, long] = [sketch.between(-0.06, 0.95), sketch.between(0, 1), sketch.between(0.05, 0.22)];
    const bend = sketch.between(-0.05, 0.05);
    const line: P2[] = [at(i, j), at(i + long / 2, j + bend), at(i + long, j + bend * sketch.between(0, 3))];
    if (k % 3 === 0) sketch.brush(line, k % 2 === 0 ? "#fff8e2" : "#d1a662", 3.5, 0.9);
    sketch.line(line, { width: sketch.between(0.8, 2), colour: k % 2 === 0 ? "#5d4226" : "#8a673c", opacity: 0.75 });
  }
}

/** A glue face that let go: a bright film with the lamp in it. */
export function glossy(on: Solids, corners: readonly [V3, V3, V3, V3], colour: string = WASH.amber): void {
  const { sketch } = on;
  const face = on.to(corners) as [P2, P2, P2, P2];
  sketch.face([face], colour, { width: 1.6 });
  const [cx, cy] = [0.25 * face.reduce((s, p) => s + p[0], 0), 0.25 * face.reduce((s, p) => s + p[1], 0)];
  const size = Math.hypot((face[1]?.[0] ?? 0) - cx, (face[1]?.[1] ?? 0) - cy);
  sketch.within([face], () => {
    sketch.tint(arc([cx - size * 0.15, cy - size * 0.05], size * 0.5, size * 0.2), "#ffe9b0", 0.85, 10);
    sketch.tint(arc([cx - size * 0.2, cy - size * 0.08], size * 0.22, size * 0.07), "#ffffff", 0.95, 6);
    for (let i = 0; i < 3; i += 1)
      sketch.brush(
        [
          [cx + size * (0.3 + i * 0.12), cy - size * 0.3],
          [cx + size * (0.22 + i * 0.12), cy + size * 0.3],
        ],
        "#fff3cf",
        3,
        0.7,
      );
  });
}

function mixed(a: number, b: number, share: number): number {
  return a + (b - a) * share;
}

/** Outline of a wing section with unit chord, from the trailing edge over the top to the nose and back below. */
export function section(from = 0, thick = 1): P2[] {
  const shares = Array.from({ length: 22 }, (_, i) => from + (1 - from) * (i / 21) ** 1.6);
  const half = (x: number): number => 0.26 * thick * (Math.sqrt(x) * (1 - x) + 0.05 * x * (1 - x));
  return [...shares.map((x): P2 => [x, -0.55 * half(x)]), ...shares.reverse().map((x): P2 => [x, half(x)])];
}

/** A band between two radii about a centre, as the outline of a laminated bow. */
export function band(centre: P2, inner: number, outer: number, from: number, to: number, steps = 28): P2[] {
  return [...arc(centre, outer, outer, from, to, steps), ...arc(centre, inner, inner, to, from, steps)];
}
