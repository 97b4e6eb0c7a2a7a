import { Plan } from "./plan.ts";
import { arc, type P2 } from "../ink/space.ts";

const WOOD = "#efdcae";
const PLY = "#f3e9cd";

function fuselage(): string {
  const plan = new Plan();
  plan.outline(
    [
      [180, 210],
      [330, 196],
      [560, 196],
      [930, 268],
      [930, 310],
      [560, 370],
      [330, 380],
      [180, 352],
    ],
    PLY,
  );
  plan
    .line(
      [
        [180, 226],
        [560, 212],
        [930, 276],
      ],
      3,
    )
    .line(
      [
        [180, 338],
        [330, 364],
        [560, 356],
        [930, 303],
      ],
      3,
    );
  for (const [x, top, low, name] of [
    [184, 210, 352, "B1"],
    [330, 198, 378, "B2"],
    [410, 196, 376, "B3"],
    [490, 196, 373, "B4"],
    [660, 216, 352, "B5"],
    [922, 268, 310, "B6"],
  ] as const) {
    plan
      .box(x - 5, top, 10, low - top, WOOD, 1.6)
      .letter(name, x < 900 ? x + 9 : x - 9, x < 900 ? top + 44 : top - 22, 11);
  }
  plan.outline([...arc([460, 200], 110, 92, 180, 360, 24), ...arc([460, 200], 98, 80, 360, 180, 24)], WOOD).outline(
    [
      [330, 198],
      [352, 150],
      [366, 140],
      [346, 198],
    ],
    "#e8eef0",
  );
  plan
    .box(378, 378, 74, 20, "#e2cf9b")
    .hatch(378, 378, 74, 20, 6)
    .circle(414, 440, 34)
    .line(
      [
        [414, 398],
        [414, 440],
      ],
      3,
    );
  plan
    .box(70, 244, 112, 14, "#e2cf9b")
    .box(70, 306, 112, 14, "#e2cf9b")
    .line(
      [
        [560, 196],
        [930, 268],
      ],
      1,
      "8 5",
    );
  plan.letter("TURTLE DECK", 680, 186, 10).letter("FLOOR", 520, 394, 10).dimension(184, 922, 492, "4,880 mm");
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

function bulkheads(): string {
  const plan = new Plan();
  const frames: readonly (readonly [string, number, number, number, number])[] = [
    ["B1", 60, 140, 130, 190],
    ["B2", 225, 150, 140, 210],
    ["B3", 400, 150, 140, 220],
    ["B4", 570, 160, 140, 210],
    ["B5", 738, 190, 108, 150],
    ["B6", 890, 210, 40, 96],
  ];
  for (const [name, x, y, wide, high] of frames) {
    plan.box(x, y, wide, high, PLY, 1).box(x, y, wide, high, "none", 2.4);
    if (wide > 60) plan.box(x + 16, y + 16, wide - 32, high - 32, "#fbf7ec", 1.6);
    if (name === "B3" || name === "B4") plan.box(x, y + high - 60, wide, 34, WOOD).hatch(x, y + high - 60, wide, 34, 9);
    if (name === "B1")
      plan
        .line(
          [
            [x + 16, y + 16],
            [x + wide - 16, y + high - 16],
          ],
          5,
        )
        .line(
          [
            [x + wide - 16, y + 16],
            [x + 16, y + high - 16],
          ],
          5,
        );
    if (name === "B2") plan.box(x + 16, y + 60, wide - 32, 14, WOOD, 1.4);
    for (const [cx, cy] of [
      [x, y],
      [x + wide - 22, y],
      [x, y + high - 22],
      [x + wide - 22, y + high - 22],
    ] as const)
      if (wide > 60) plan.box(cx, cy, 22, 22, "#e2cf9b", 1.2);
    plan.letter(name, x + wide / 2 - 10, y + high + 18, 13);
  }
  return plan.svg("Bulkheads, from the front", "Sheets 25 and 26");
}

function cabinFrame(): string {
  const plan = new Plan();
  for (let strip = 0; strip <= 6; strip += 1)
    plan.line(
      [
        [220 + strip * 6, 440],
        ...arc([500, 240], 280 - strip * 6, 160 - strip * 6, 180, 360, 40),
        [780 - strip * 6, 440],
      ] as P2[],
      strip === 0 || strip === 6 ? 2.4 : 0.9,
    );
  plan
    .box(206, 410, 62, 60, "#e2cf9b")
    .hatch(206, 410, 62, 60, 8)
    .box(732, 410, 62, 60, "#e2cf9b")
    .hatch(732, 410, 62, 60, 8);
  plan.line(arc([500, 300], 190, 86, 180, 360, 30), 5).line(arc([500, 300], 178, 76, 180, 360, 30), 1.4);
  plan
    .outline(
      [
        [330, 340],
        [670, 340],
        [690, 460],
        [310, 460],
      ],
      PLY,
    )
    .outline(
      [
        [350, 356],
        [650, 356],
        [664, 444],
        [336, 444],
      ],
      "#fbf7ec",
      1.4,
    )
    .line(
      [
        [500, 340],
        [500, 460],
      ],
      4,
    );
  plan.dimension(220, 780, 500, "1,060 mm").letter("WINDSCREEN ARCH", 424, 250, 10).letter("SEAT BACK", 520, 396, 10);
  return plan.svg("Cabin frame, from the front", "Sheets 28 and 29");
}

function undercarriageBeam(): string {
  const plan = new Plan();
  plan.outline(
    [
      [60, 130],
      [940, 130],
      [940, 232],
      [60, 232],
    ],
    WOOD,
  );
  for (let line = 1; line < 5; line += 1)
    plan.line(
      [
        [60, 130 + line * 20.4],
        [940, 130 + line * 20.4],
      ],
      1.2,
    );
  plan.outline(
    [
      [60, 350],
      [940, 350],
      [940, 440],
      [60, 440],
    ],
    PLY,
  );
  for (let x = 80; x < 900; x += 34)
    plan.line(
      [
        [x, 430],
        [x + 44, 360],
      ],
      0.6,
    );
  for (const x of [130, 760]) {
    plan.box(x, 350, 110, 90, "#e2cf9b").hatch(x, 350, 110, 90, 10);
    for (const dx of [26, 84]) plan.circle(x + dx, 376, 7, "#fbf7ec").circle(x + dx, 414, 7, "#fbf7ec");
  }
  plan.letter("FIVE LAMINATIONS", 420, 100, 11).letter("FROM ABOVE", 440, 320, 11).dimension(60, 940, 492, "1,100 mm");
  return plan.svg("Undercarriage beam", "Sheet 27");
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
    .letter("KNEE BLOCK", 640, 194, 9)
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

export const fuselagePlans = { fuselage, fuselageSides, bulkheads, cabinFrame, undercarriageBeam, engineBearers };
