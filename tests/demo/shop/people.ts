/** People, as few lines as a hand that knows them would need. */
import { mix } from "../ink/colour.ts";
import type { Sketch } from "../ink/sketch.ts";
import { arc, type P2 } from "../ink/space.ts";

const SKIN = "#e2bd9b";
const TROUSERS = "#5d5a60";
const SHOES = "#3f3733";

/** A smooth line through points, round to the first again. */
function rounded(points: readonly P2[], steps = 6): P2[] {
  const at = (i: number): P2 => points[(i + points.length) % points.length] ?? [0, 0];
  return points.flatMap((_, i) => {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return Array.from({ length: steps }, (__, k): P2 => {
      const t = k / steps;
      const along = (p: number, q: number, r: number, s: number): number =>
        0.5 * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - s) * t * t + (3 * q - p - 3 * r + s) * t * t * t);
      return [along(a[0], b[0], c[0], d[0]), along(a[1], b[1], c[1], d[1])];
    });
  });
}

/** An arm or a leg: so wide at each of its joints. */
function limb(joints: readonly (readonly [at: P2, wide: number])[]): P2[] {
  const sides = joints.map(([at, wide], i) => {
    const before = joints[i - 1]?.[0] ?? at;
    const after = joints[i + 1]?.[0] ?? at;
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
    const k = wide / 2 / Math.hypot(dx, dy);
    return [
      [at[0] - dy * k, at[1] + dx * k],
      [at[0] + dy * k, at[1] - dx * k],
    ] as const satisfies readonly P2[];
  });
  return rounded([...sides.map(([one]): P2 => one), ...sides.map(([, other]): P2 => other).reverse()]);
}

/** How somebody looks whose feet are at `[x, y]`, `tall` pixels high, and who leans by a share of the height toward `way`. */
interface Body {
  readonly sketch: Sketch;
  readonly tall: number;
  readonly way: 1 | -1;
  readonly hip: P2;
  readonly shoulder: P2;
  readonly coat: string;
}

function legs({ sketch, tall: t, way, hip }: Body, [x, y]: P2): void {
  for (const side of [-way, way]) {
    const [from, foot]: [P2, P2] = [
      [hip[0] + side * t * 0.045, hip[1]],
      [x + side * t * 0.06, y - t * 0.03],
    ];
    const knee: P2 = [(from[0] + foot[0]) / 2 + way * t * 0.014, (from[1] + foot[1]) / 2];
    sketch.face(
      [
        limb([
          [from, t * 0.125],
          [knee, t * 0.095],
          [foot, t * 0.075],
        ]),
      ],
      side === way ? TROUSERS : mix(TROUSERS, "#2c2830", 0.25),
    );
    const toe = foot[0] + way * t * 0.075;
    sketch.face(
      [
        rounded(
          [
            [foot[0] - way * t * 0.035, y - t * 0.035],
            [foot[0] + way * t * 0.03, y - t * 0.04],
            [toe, y - t * 0.014],
            [toe, y],
            [foot[0] - way * t * 0.04, y],
          ],
          4,
        ),
      ],
      SHOES,
    );
  }
}

function coatOf({ sketch, tall: t, way, hip, shoulder, coat }: Body, hem: number): void {
  const low = hip[1] + hem * t;
  const [hx, hy] = hip;
  const [sx, sy] = shoulder;
  sketch.face(
    [
      rounded([
        [sx - way * t * 0.035, sy - t * 0.035],
        [sx - way * t * 0.115, sy + t * 0.01],
        [(sx + hx) / 2 - way * t * 0.125, (sy + hy) / 2],
        [hx - way * t * (0.105 + hem * 0.1), low],
        [hx + way * t * (0.1 + hem * 0.12), low],
        [(sx + hx) / 2 + way * t * 0.1, (sy + hy) / 2],
        [sx + way * t * 0.1, sy + t * 0.03],
        [sx + way * t * 0.045, sy - t * 0.03],
      ]),
    ],
    coat,
  );
  const fold = { width: Math.max(1, t / 330), opacity: 0.55 };
  for (const [from, to] of [
    [-0.05, -0.062],
    [0.03, 0.028],
  ] as const)
    sketch.line(
      [
        [hx + way * from * t, hy - t * 0.05],
        [hx + way * to * t, low - t * 0.02],
      ],
      fold,
    );
  sketch.line(
    [
      [sx - way * t * 0.06, sy + t * 0.09],
      [sx - way * t * 0.075, sy + t * 0.16],
    ],
    fold,
  );
}

/** Seen from the side and a little from behind: hair, an ear, the tip of a nose. */
function head({ sketch, tall: t, way, shoulder, hip }: Body): void {
  const lean = (shoulder[0] - hip[0]) * 0.28;
  const [cx, cy]: P2 = [shoulder[0] + lean + way * t * 0.012, shoulder[1] - t * 0.105];
  sketch.face(
    [
      limb([
        [[shoulder[0] + lean * 0.2, shoulder[1]], t * 0.062],
        [[cx - way * t * 0.006, cy + t * 0.03], t * 0.056],
      ]),
    ],
    SKIN,
  );
  const r = t * 0.058;
  sketch.face(
    [
      rounded([
        [cx - way * r, cy - r * 0.1],
        [cx - way * r * 0.5, cy - r * 1.1],
        [cx + way * r * 0.5, cy - r * 1.05],
        [cx + way * r * 0.98, cy - r * 0.2],
        [cx + way * r * 1.22, cy + r * 0.22],
        [cx + way * r * 0.96, cy + r * 0.4],
        [cx + way * r * 0.75, cy + r * 1.12],
        [cx - way * r * 0.2, cy + r * 0.98],
        [cx - way * r * 0.8, cy + r * 0.6],
      ]),
    ],
    SKIN,
  );
  sketch.face(
    [
      rounded([
        [cx - way * r * 1.06, cy + r * 0.5],
        [cx - way * r * 1.12, cy - r * 0.5],
        [cx - way * r * 0.5, cy - r * 1.28],
        [cx + way * r * 0.6, cy - r * 1.2],
        [cx + way * r * 0.98, cy - r * 0.5],
        [cx + way * r * 0.35, cy - r * 0.55],
        [cx - way * r * 0.15, cy - r * 0.1],
        [cx - way * r * 0.45, cy + r * 0.62],
      ]),
    ],
    "#5a4c40",
  );
  sketch.face([arc([cx - way * r * 0.06, cy + r * 0.18], r * 0.17, r * 0.26, 0, 360, 12)], SKIN, { width: 1.4 });
}

function arm({ sketch, tall: t, way, shoulder, coat }: Body, hand: P2, isNear: boolean): void {
  const from: P2 = [shoulder[0] + way * t * (isNear ? 0.01 : 0.05), shoulder[1] + t * 0.035];
  const reach = Math.hypot(hand[0] - from[0], hand[1] - from[1]);
  // What an arm is too long for, it bends by: the elbow hangs, or points forward where the hand is raised.
  const bend = Math.sqrt(Math.max(0, (t * 0.2) ** 2 - (reach / 2) ** 2));
  const isRaised = hand[1] < from[1];
  const elbow: P2 = [
    (from[0] + hand[0]) / 2 + way * bend * (isRaised ? 0.7 : -0.3),
    (from[1] + hand[1]) / 2 + bend * (isRaised ? 0.5 : 0.9),
  ];
  const cloth = isNear ? coat : mix(coat, "#2c2830", 0.22);
  const span = Math.hypot(hand[0] - elbow[0], hand[1] - elbow[1]) || 1;
  const wrist: P2 = [hand[0] + (elbow[0] - hand[0]) * 0.14, hand[1] + (elbow[1] - hand[1]) * 0.14];
  const [ux, uy] = [(hand[0] - elbow[0]) / span, (hand[1] - elbow[1]) / span];
  sketch.face(
    [
      limb([
        [wrist, t * 0.036],
        [[hand[0] + ux * t * 0.01, hand[1] + uy * t * 0.01], t * 0.05],
        [[hand[0] + ux * t * 0.045, hand[1] + uy * t * 0.045], t * 0.03],
      ]),
    ],
    SKIN,
    { width: Math.max(1.2, t / 300) },
  );
  const upper = [
    [from, t * 0.092],
    [elbow, t * 0.072],
  ] as const;
  const lower = [[wrist, t * 0.056]] as const;
  // A sleeve that is folded back upon itself is two.
  if (reach > t * 0.24) sketch.face([limb([...upper, ...lower])], cloth);
  else {
    sketch.face([limb(upper)], cloth);
    sketch.face([limb([[elbow, t * 0.074], ...lower])], cloth);
  }
}

/** A person: feet at `[x, y]`, `tall` pixels high, leaning by a share of the height; the near hand at `hand`. A coat may come down to the knees. */
export function figure(
  sketch: Sketch,
  feet: P2,
  tall: number,
  lean: number,
  hand: P2,
  coat: string,
  hem: "short" | "long" = "short",
): void {
  const way = hand[0] < feet[0] ? -1 : 1;
  const hip: P2 = [feet[0], feet[1] - tall * 0.5];
  const shoulder: P2 = [feet[0] + way * Math.abs(lean) * tall, feet[1] - tall * (0.83 - Math.abs(lean) * 0.35)];
  const body: Body = { sketch, tall, way, hip, shoulder, coat };
  sketch.tint(arc([feet[0] + tall * 0.06, feet[1]], tall * 0.2, tall * 0.032), "#4a4258", 0.3, 6);
  legs(body, feet);
  arm(body, [hand[0] + way * tall * 0.03, hand[1] + tall * 0.05], false);
  coatOf(body, hem === "long" ? 0.22 : 0.07);
  head(body);
  arm(body, hand, true);
}
