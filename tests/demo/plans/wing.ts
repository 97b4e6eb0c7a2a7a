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
  for (let rib = 0; rib < 10; rib += 1)
    for (const side of [-1, 1]) {
      const x = 500 + side * (34 + rib * 45);
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
    .box(376, 276, 90, 74, "#e8eef0")
    .letter("TANK", 396, 306, 11);
  for (const [from, to] of [
    [150, 330],
    [670, 850],
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

function airfoil(x: number, y: number, chord: number, up: number, down: number, from = 0): P2[] {
  const at = (share: number, k: number): P2 => [
    x + share * chord,
    y - k * (2.2 * Math.sqrt(share) * (1 - share) + 0.18 * share * (1 - share)),
  ];
  const shares = Array.from({ length: 41 }, (_, i) => from + (1 - from) * (i / 40) ** 2);
  return [...shares.map((share) => at(share, up)), ...shares.reverse().map((share) => at(share, -down))];
}

function wingRibs(): string {
  const plan = new Plan();
  plan
    .outline(airfoil(60, 240, 880, 110, 50), PLY, 1)
    .outline(airfoil(60, 240, 880, 110, 50, 0.17), "none", 4)
    .outline(airfoil(72, 240, 850, 96, 38, 0.2), "#fbf7ec", 1.4);
  const posts: readonly (readonly [number, number, number])[] = [
    [240, 152, 278],
    [360, 142, 284],
    [490, 148, 282],
    [630, 166, 274],
    [760, 190, 262],
  ];
  for (const [x, top, low] of posts) plan.box(x - 5, top, 10, low - top, WOOD, 1.3);
  for (let i = 0; i + 1 < posts.length; i += 1) {
    const [a, b] = [posts[i], posts[i + 1]];
    if (a !== undefined && b !== undefined)
      plan.outline(
        [
          [a[0] + 5, a[2] - 4],
          [a[0] + 15, a[2] - 4],
          [b[0] - 5, b[1] + 4],
          [b[0] - 15, b[1] + 4],
        ],
        WOOD,
        1.2,
      );
  }
  for (const [x, top, low] of posts) plan.box(x - 20, top - 3, 40, 20, PLY, 1).box(x - 20, low - 17, 40, 20, PLY, 1);
  for (const x of [150, 360]) {
    plan
      .outline([...arc([x, 450], 92, 54, 90, 270, 20), [x + 46, 396], [x + 46, 504]], PLY)
      .outline([...arc([x, 450], 82, 45, 90, 270, 20), [x + 38, 405], [x + 38, 495]], "none", 1)
      .circle(x - 14, 450, 24, "#fbf7ec");
  }
  plan.letter("NOSE, LEFT", 106, 374, 9).letter("NOSE, RIGHT", 310, 374, 9);
  plan
    .box(540, 400, 160, 100, PLY)
    .line(
      [
        [540, 400],
        [700, 500],
      ],
      0.8,
    )
    .line(
      [
        [540, 500],
        [700, 400],
      ],
      0.8,
    )
    .letter("DOUBLER, RIB 1", 716, 446, 9);
  return plan.svg("Wing rib", "Sheets 7 and 8");
}

function aileron(): string {
  const plan = new Plan();
  for (const [x0, sense] of [
    [60, 1],
    [940, -1],
  ] as const) {
    const x = (share: number): number => x0 + sense * share * 400;
    plan
      .outline(
        [
          [x(0), 140],
          [x(1), 150],
          [x(1), 172],
          [x(0), 172],
        ],
        WOOD,
      )
      .outline(
        [
          [x(0), 400],
          [x(1), 380],
          [x(1), 394],
          [x(0), 416],
        ],
        WOOD,
      );
    for (const share of [0.03, 0.26, 0.5, 0.74, 0.97]) plan.box(x(share) - 6, 172, 12, 228 - share * 18, PLY, 1.4);
    for (const share of [0.03, 0.26, 0.5, 0.74])
      plan.line(
        [
          [x(share), 390],
          [x(share + 0.23), 176],
        ],
        1,
        "8 4",
      );
    for (const share of [0.26, 0.74])
      plan.box(x(share) - 18, 118, 36, 30, "#e2cf9b").hatch(x(share) - 18, 118, 36, 30, 6);
  }
  plan.box(484, 118, 32, 30, "#e2cf9b").hatch(484, 118, 32, 30, 6).letter("HINGE BLOCK", 452, 98, 9);
  plan
    .letter("LEFT", 230, 450, 12)
    .letter("RIGHT", 720, 450, 12)
    .dimension(60, 460, 490, "1,940 mm")
    .dimension(540, 940, 490, "1,940 mm");
  return plan.svg("Ailerons", "Sheets 15 and 16");
}

function tipBow(): string {
  const plan = new Plan();
  for (const [x, sense] of [
    [130, 1],
    [870, -1],
  ] as const) {
    for (let strip = 0; strip <= 6; strip += 1) {
      const grow = strip * 7;
      plan.line(
        arc([x, 430], 250 + grow, 230 + grow, sense === 1 ? 0 : 180, sense === 1 ? -92 : 272, 40).map(
          ([a, b]): P2 => [a, b],
        ),
        strip === 0 || strip === 6 ? 2.4 : 1,
      );
    }
    plan.box(x - 20, 418, 40, 36, WOOD).hatch(x - 20, 418, 40, 36, 6);
  }
  plan.letter("SIX STRIPS OF 3 MM", 412, 90, 11).letter("TIP BLOCK", 84, 470, 10).letter("TIP BLOCK", 832, 470, 10);
  return plan.svg("Wing-tip bows", "Sheet 13");
}

function tankBay(): string {
  const plan = new Plan();
  plan
    .box(120, 120, 760, 340, PLY)
    .box(90, 90, 30, 400, WOOD)
    .box(880, 90, 30, 400, WOOD)
    .box(120, 96, 760, 24, WOOD)
    .box(120, 460, 760, 24, WOOD);
  plan
    .box(190, 160, 620, 260, "#e8eef0", 1.4)
    .line(
      [
        [190, 160],
        [810, 420],
      ],
      0.7,
      "8 5",
    )
    .line(
      [
        [190, 420],
        [810, 160],
      ],
      0.7,
      "8 5",
    )
    .outline(
      [
        [456, 270],
        [544, 270],
        [544, 310],
        [456, 310],
      ],
      "#e8eef0",
      0,
    )
    .letter("TANK", 470, 282, 16);
  for (const [x, y] of [
    [120, 120],
    [844, 120],
    [120, 424],
    [844, 424],
  ] as const)
    plan.box(x, y, 36, 36, "#e2cf9b").hatch(x, y, 36, 36, 6);
  for (const x of [330, 640])
    plan.box(x, 124, 28, 332, WOOD, 1.4).line(
      [
        [x + 14, 130],
        [x + 14, 450],
      ],
      0.8,
    );
  plan
    .box(160, 134, 680, 312, "none", 1)
    .letter("RIB 1", 80, 68, 11)
    .letter("RIB 3", 872, 68, 11)
    .letter("MAIN SPAR", 454, 68, 11)
    .circle(500, 440, 7);
  return plan.svg("Tank bay, from above", "Sheets 20 and 21");
}

export const wingPlans = { wing, wingSpar, wingRibs, aileron, tipBow, tankBay };
