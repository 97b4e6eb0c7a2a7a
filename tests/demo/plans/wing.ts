import { Plan } from "./plan.ts";
import { arc, type P2 } from "../ink/space.ts";

const WOOD = "#efdcae";
const PLY = "#f3e9cd";

/** How far the edges of the wing stand apart from the level of its spar at `x`: from the root to where the bows begin. */
const leading = (x: number): number => 200 - 35 * (1 - Math.abs(x - 500) / 440);
const trailing = (x: number): number => 380 + 35 * (1 - Math.abs(x - 500) / 440);

function wing(): string {
  const plan = new Plan();
  plan.outline(
    [
      [60, 200],
      [500, 165],
      [940, 200],
      ...arc([940, 290], 36, 90, -90, 90, 24),
      [500, 415],
      ...arc([60, 290], 36, 90, 90, 270, 24),
    ],
    PLY,
  );
  for (let rib = 0; rib < 9; rib += 1)
    for (const side of [-1, 1]) {
      const x = 500 + side * (34 + rib * 50.5);
      plan.line(
        [
          [x, leading(x)],
          [x, trailing(x)],
        ],
        rib === 0 ? 3 : 1.6,
      );
    }
  plan
    .outline(
      [
        [50, 250],
        [500, 246],
        [950, 250],
        [950, 266],
        [500, 272],
        [50, 266],
      ],
      WOOD,
    )
    .box(60, 352, 880, 10, WOOD)
    .box(365, 276, 101, 74, "#e8eef0")
    .letter("TANK", 393, 306, 11);
  for (const [from, to] of [
    [112.5, 314.5],
    [685.5, 887.5],
  ] as const)
    plan
      .outline(
        [
          [from, 364],
          [to, 364],
          [to, trailing(to)],
          [from, trailing(from)],
        ],
        "#fbf7ec",
      )
      .letter("AILERON", (from + to) / 2 - 36, 371, 9);
  plan
    .line(
      [
        [500, 120],
        [500, 440],
      ],
      0.8,
      "14 5 3 5",
    )
    .extension(50, 272, 486)
    .extension(950, 272, 486)
    .dimension(50, 950, 480, "8,200 mm");
  return plan.svg("Wing, plan", "Sheet 9");
}

/** The edge of a tapering cap at a share of its depth, from its upper edge down. */
function capLine(y: number, dip: number, deep: number, share: number): P2[] {
  const tip = y + dip + deep * 0.7 * share;
  return [
    [50, tip],
    [500, y + deep * share],
    [950, tip],
  ];
}

const TWELVE = 16;

/** A cap of so many laminations, in each of them one scarf, and no two of these above each other. */
function cap(plan: Plan, y: number, dip: number, deep: number, scarfs: readonly number[]): void {
  const count = scarfs.length;
  plan.outline([...capLine(y, dip, deep, 0), ...capLine(y, dip, deep, 1).reverse()], WOOD);
  for (let i = 1; i < count; i += 1) plan.line(capLine(y, dip, deep, i / count), 0.8);
  for (const [i, x] of scarfs.entries())
    plan.line(
      [
        [x, y + (deep * (i + 1)) / count],
        [x + TWELVE, y + (deep * i) / count],
      ],
      1.6,
    );
}

/** Both halves of a web: four panels each, scarfed, their grain at 45° and mirrored at the root. */
function web(plan: Plan, y: number, name: string, slant: 1 | -1): void {
  plan.outline(
    [
      [50, y + 14],
      [500, y],
      [950, y + 14],
      [950, y + 72],
      [500, y + 82],
      [50, y + 72],
    ],
    PLY,
  );
  for (let x = 62; x < 448; x += 26) {
    const [low, top] = slant > 0 ? [x, x + 46] : [x + 46, x];
    for (const mirrored of [false, true])
      plan.line(
        [
          [mirrored ? 1000 - low : low, y + 65],
          [mirrored ? 1000 - top : top, y + 19],
        ],
        0.6,
      );
  }
  const edge = (x: number): number => (14 * (500 - x)) / 450;
  const low = (x: number): number => 82 - (10 * (500 - x)) / 450;
  for (const x of [162, 275, 387])
    for (const at of [x, 1000 - x])
      plan.line(
        [
          [at, y + edge(x)],
          [at, y + low(x)],
        ],
        1.4,
        "6 4",
      );
  plan
    .line(
      [
        [500, y],
        [500, y + 82],
      ],
      1.4,
    )
    .letter(name, 60, y - 12, 10);
}

function wingSpar(): string {
  const plan = new Plan();
  cap(plan, 130, 14, 28, [461, 479, 505, 523]);
  cap(plan, 210, -6, 24, [464, 492, 520]);
  plan.box(440, 158, 120, 52, WOOD).hatch(440, 158, 120, 52);
  for (let rib = 1; rib < 9; rib += 1)
    for (const side of [-1, 1]) plan.box(500 + side * (60 + rib * 44) - 9, 160, 18, 47, WOOD, 1.4);
  plan.box(50, 161, 26, 43, WOOD).box(924, 161, 26, 43, WOOD);
  web(plan, 290, "FRONT WEB", 1);
  web(plan, 408, "REAR WEB", -1);
  plan.dimension(50, 950, 108, "8,200 mm").line(
    [
      [500, 116],
      [500, 284],
    ],
    0.8,
    "14 5 3 5",
  );
  return plan.svg("Main spar", "Sheets 4 to 6");
}

export const wingPlans = { wing, wingSpar };
