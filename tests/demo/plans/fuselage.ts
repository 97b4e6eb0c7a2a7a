import { Plan } from "./plan.ts";
import type { P2 } from "../ink/space.ts";

const WOOD = "#efdcae";
const PLY = "#f3e9cd";

/** px for a mm along the fuselage; across it everything is drawn deeper, as on the sheet. */
const ALONG = 740 / 4880;

function cabin(plan: Plan): void {
  plan
    .outline(
      [
        [468, 92],
        [475, 92],
        [475, 374],
        [468, 374],
      ],
      "#ead5a2",
      1.6,
    )
    .line(
      [
        [332, 198],
        [382, 122],
        [471, 92],
      ],
      3.2,
    )
    .phantom([
      [475, 96],
      [700, 178],
      [922, 260],
    ])
    .centre([471.5, 76], [471.5, 392]);
}

function undercarriage(plan: Plan): void {
  const beam: P2[] = [
    [394, 378],
    [428, 378],
    [428, 400],
    [394, 400],
  ];
  plan
    .outline(beam, "#e2cf9b")
    .hatchWithin(beam, 6)
    .outline(
      [
        [406, 400],
        [416, 400],
        [413, 446],
        [409, 446],
      ],
      WOOD,
      1.4,
    )
    .circle(411, 450, 31)
    .circle(411, 450, 5, "#fbf7ec")
    .centre([411, 410], [411, 488])
    .centre([372, 450], [450, 450]);
}

function fuselage(): string {
  const plan = new Plan();
  plan.outline(
    [
      [180, 210],
      [330, 196],
      [560, 196],
      [920, 268],
      [920, 310],
      [560, 370],
      [330, 380],
      [180, 352],
    ],
    PLY,
  );
  plan
    .line(
      [
        [184, 219],
        [330, 205],
        [560, 205],
        [920, 277],
      ],
      1.2,
    )
    .line(
      [
        [184, 343],
        [330, 371],
        [560, 361],
        [920, 301],
      ],
      1.2,
    );
  for (const [x, top, low, name] of [
    [180, 210, 352, "B1"],
    [326, 196, 379, "B2"],
    [408, 196, 376, "B3"],
    [490, 196, 373, "B4"],
    [660, 216, 353, "B5"],
    [912, 267, 311, "B6"],
  ] as const)
    plan.box(x, top, 8, low - top, WOOD, 1.6).letter(name, x + (x < 900 ? 14 : 16), 286, 11);
  cabin(plan);
  undercarriage(plan);
  for (const y of [244, 306]) plan.box(74, y, 106, 15, "#ead5a2", 1.6).centre([60, y + 7.5], [196, y + 7.5]);
  plan
    .leader("HOOP", [530, 84], [474, 112])
    .leader("WINDSCREEN ARCH", [212, 112], [363, 150])
    .leader("TURTLE DECK", [704, 138], [690, 174])
    .leader("FLOOR", [560, 408], [548, 366])
    .leader("BEAM, END ON", [232, 412], [394, 392])
    .leader("BEARERS", [74, 206], [110, 246])
    .leader("TAIL POST", [830, 356], [917, 309])
    .extension(180, 352, 510)
    .extension(180 + ALONG * 4880, 311, 510)
    .dimension(180, 180 + ALONG * 4880, 504, "4,880 mm");
  return plan.svg("Fuselage, side view", "Sheet 24");
}

function fuselageSides(): string {
  const plan = new Plan();
  for (const [y, name] of [
    [70, "LEFT"],
    [310, "RIGHT"],
  ] as const) {
    plan.outline(
      [
        [50, y + 30],
        [420, y + 26],
        [950, y + 84],
        [950, y + 124],
        [420, y + 190],
        [50, y + 170],
      ],
      PLY,
      1,
    );
    plan
      .outline(
        [
          [50, y + 30],
          [420, y + 26],
          [950, y + 84],
          [950, y + 95],
          [420, y + 38],
          [50, y + 42],
        ],
        WOOD,
      )
      .outline(
        [
          [50, y + 158],
          [420, y + 178],
          [950, y + 113],
          [950, y + 124],
          [420, y + 190],
          [50, y + 170],
        ],
        WOOD,
      );
    const posts: readonly (readonly [number, number, number])[] = [
      [70, 42, 160],
      [190, 40, 166],
      [300, 39, 172],
      [400, 38, 176],
      [540, 51, 164],
      [680, 66, 147],
      [810, 80, 131],
      [930, 92, 117],
    ];
    posts.forEach(([x, top, low], i) => {
      plan.box(x - 6, y + top, 12, low - top, WOOD, 1.3);
      const next = posts[i + 1];
      if (next !== undefined && i > 2)
        plan.line(
          [
            [x + 4, y + low],
            [next[0] - 4, y + next[1]],
          ],
          4,
        );
      const size = Math.min(1, (low - top) / 60);
      for (const [edge, way] of [
        [y + top, 1],
        [y + low, -1],
      ] as const)
        plan.outline(
          [
            [x - 20 * size, edge],
            [Math.min(x + 20 * size, 948), edge],
            [x + 6, edge + way * 20 * size],
            [x - 6, edge + way * 20 * size],
          ],
          "#e6d3a0",
          1,
        );
    });
    plan
      .line(
        [
          [330, y + 28],
          [390, y + 38],
        ],
        2,
      )
      .line(
        [
          [330, y + 173],
          [390, y + 187],
        ],
        2,
      )
      .letter(name, 60, y + 4, 11)
      .line(
        [
          [430, y + 28],
          [430, y + 188],
        ],
        1,
        "7 4",
      );
  }
  return plan.svg("Fuselage sides", "Sheets 22 and 23");
}

function engineBearers(): string {
  const plan = new Plan();
  for (const y of [120, 252]) {
    plan.outline(
      [
        [90, y],
        [820, y],
        [820, y + 58],
        [90, y + 40],
      ],
      "#ead5a2",
    );
    for (let line = 1; line < 5; line += 1)
      plan.line(
        [
          [90, y + line * 8],
          [820, y + line * 11.6],
        ],
        1,
      );
    plan.outline(
      [
        [735, y + 56],
        [820, y + 58],
        [820, y + 104],
      ],
      "#e2cf9b",
      1.6,
    );
    for (const x of [160, 300]) plan.circle(x, y + 22, 8, "#fbf7ec");
  }
  plan
    .box(820, 84, 22, 292, PLY)
    .letter("FIREWALL B1", 852, 220, 9)
    .letter("KNEE BLOCK", 640, 326, 9)
    .letter("LEFT", 40, 132, 11)
    .letter("RIGHT", 32, 264, 11)
    .letter("EITHER, FROM ABOVE", 90, 388, 9)
    .box(90, 408, 730, 40, "#ead5a2");
  for (const x of [160, 300])
    plan.line(
      [
        [x, 402],
        [x, 454],
      ],
      0.8,
      "9 3 2 3",
    );
  plan.extension(90, 448, 494).extension(820, 448, 494).dimension(90, 820, 488, "700 mm");
  return plan.svg("Engine bearers, from the side", "Sheet 32");
}

export const fuselagePlans = { fuselage, fuselageSides, engineBearers };
