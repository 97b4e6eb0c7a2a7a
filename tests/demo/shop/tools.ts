import { WASH } from "../ink/colour.ts";
import { plain, spruce, type Solids } from "../ink/solids.ts";
import { add, arc, times, type P2, type V3 } from "../ink/space.ts";

/** A bench top of planks from one corner, its surface at height 0. */
export function bench(on: Solids, at: P2, long: number, deep: number, planks = 4): void {
  for (let i = planks - 1; i >= 0; i -= 1) {
    on.box([at[0], at[1] + (deep * i) / planks, -0.12], [long, (deep / planks) * 0.985, 0.12], {
      colour: WASH.bench,
      grain: [1, 0, 0],
      line: 1.8,
    });
  }
}

/** A screw clamp: its bar stands at `at`, its upper jaw reaches over the work, its lower one (unless hidden) under it. */
export function clamp(on: Solids, at: V3, high: number, reach: V3, gap: number, lower = false): void {
  const s = high * 0.07;
  const across: V3 = Math.abs(reach[0]) > Math.abs(reach[1]) ? [0, s, 0] : [s, 0, 0];
  const jaw = (from: V3): void =>
    on.prism(
      from,
      reach,
      [0, 0, s * 1.6],
      across,
      [
        [-0.1, 0],
        [1, 0.15],
        [1, 0.85],
        [-0.1, 1],
      ],
      plain(WASH.iron),
    );
  const tip = add(add(add(at, [0, 0, high - s * 2]), times(reach, 0.85)), times(across, 0.5));
  const bar = (): void =>
    on.prism(
      at,
      times(reach, 0.12),
      [0, 0, high],
      across,
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      plain(WASH.steel),
    );
  const screw = (): void => {
    on.round(add(tip, [0, 0, -gap]), [0, 0, gap], s * 0.28, s * 0.28, plain(WASH.steel));
    on.round(add(tip, [0, 0, -gap - s * 0.4]), [0, 0, s * 0.4], s * 0.7, s * 0.7, plain(WASH.iron));
  };
  if (lower) jaw(at);
  if (reach[1] > 0 || reach[0] < 0) screw();
  jaw(add(at, [0, 0, high - s * 2]));
  bar();
  if (!(reach[1] > 0 || reach[0] < 0)) screw();
  on.round(add(tip, [0, 0, s * 1.6]), [0, 0, s * 0.9], s * 0.3, s * 0.3, plain(WASH.steel));
  on.round(add(tip, [0, 0, s * 2.4]), [0, 0, high * 0.36], s * 0.75, s * 0.9, plain("#a9743f"));
}

/** A paper cup with something in it up to a share of its height, and a number. */
export function cup(on: Solids, at: V3, r: number, high: number, number = ""): void {
  on.shadow(
    [add(at, [-r, 0, 0]), add(at, [r, 0, 0]), add(at, [0, r, high]), add(at, [r, 0, high]), add(at, [-r, 0, high])],
    at[2],
  );
  on.round(at, [0, 0, high], r * 0.78, r, plain(WASH.card));
  const inside = (z: number, k: number): P2[] =>
    on.to(arc([0, 0], r * k, r * k, 0, 360, 26).map(([x, y]): V3 => add(at, [x, y, z])));
  on.sketch.face([inside(high * 0.985, 0.88)], WASH.amber, { width: 1.4 });
  on.letter(
    number,
    add(at, [-r * 0.2 * number.length, -r * 0.93, high * 0.66]),
    [r * 0.42, 0, 0],
    [0, 0, -r * 0.42],
    3,
  );
}

/** A lead weight with a handle. */
export function weight(on: Solids, at: V3, size: number): void {
  on.boxShadow(at, [size, size * 0.6, size * 0.5], at[2]);
  on.box(at, [size, size * 0.6, size * 0.5], plain(WASH.lead));
  const grip = arc([size / 2, 0], size * 0.22, size * 0.2, 0, 180, 12).map(
    ([x, z]): V3 => add(at, [x, size * 0.3, size * 0.5 + z]),
  );
  on.sketch.line(on.to(grip), { width: 5 });
}

/** A stick of timber with its shadow. */
export function stick(on: Solids, at: V3, size: V3, level = 0): void {
  on.boxShadow(at, size, level, 0.26);
  on.box(
    at,
    size,
    spruce(size[0] >= size[1] && size[0] >= size[2] ? [1, 0, 0] : size[1] >= size[2] ? [0, 1, 0] : [0, 0, 1]),
  );
}

/** A wall of boards behind a scene, at `y`. */
export function wall(
  on: Solids,
  y: number,
  from: number,
  to: number,
  high: number,
  colour: string = WASH.wall,
  boards = 12,
): void {
  const wide = (to - from) / boards;
  for (let i = 0; i < boards; i += 1)
    on.prism(
      [from + i * wide, y, -0.6],
      [wide * 0.98, 0, 0],
      [0, 0, high + 0.6],
      [0, 0.02, 0],
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      { colour, line: 1.2 },
    );
}

/** A three-leg test piece standing on its outer legs; shares of a thickness. `open` leaves the middle leg pulled up. */
export function threeLegs(on: Solids, at: V3, t: number, overlap: number, rise = 0): void {
  const leg = t * 4.2;
  on.boxShadow(at, [t * 3, t, leg], at[2]);
  stickUp(on, add(at, [2 * t, 0, 0]), t, leg);
  stickUp(on, add(at, [t, 0, leg - overlap * t + rise]), t, leg);
  stickUp(on, at, t, leg);
}

function stickUp(on: Solids, at: V3, t: number, high: number): void {
  on.box(at, [t, t, high], spruce([0, 0, 1]));
}
