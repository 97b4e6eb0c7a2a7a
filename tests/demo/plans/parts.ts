/** Parts of the wing: ribs, ailerons, bows, tank bay. Sizes are those of the record, in mm, at a scale of its own each. */
import { Plan } from "./plan.ts";
import { arc, type P2 } from "../ink/space.ts";

const WOOD = "#efdcae";
const PLY = "#f3e9cd";
const BLOCK = "#e2cf9b";
const PAPER = "#fbf7ec";
const FUEL = "#e8eef0";

const rectangle = (x: number, y: number, wide: number, high: number): P2[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];

/** How far the edge of the section stands from its chord, as a share of its greatest depth, at a share of the chord. */
const rise = (share: number): number => 2.2 * Math.sqrt(share) * (1 - share) + 0.18 * share * (1 - share);

function airfoil(x: number, y: number, chord: number, up: number, down: number, from = 0): P2[] {
  const at = (share: number, k: number): P2 => [x + share * chord, y - k * rise(share)];
  const shares = Array.from({ length: 41 }, (_, i) => from + (1 - from) * (i / 40) ** 2);
  return [...shares.map((share) => at(share, up)), ...shares.reverse().map((share) => at(share, -down))];
}

const RIB = { left: 60, chord: 880, level: 240, up: 110, down: 50 };
const upper = (x: number): number => RIB.level - RIB.up * rise((x - RIB.left) / RIB.chord);
const lower = (x: number): number => RIB.level + RIB.down * rise((x - RIB.left) / RIB.chord);

/** A gusset below the edge that it is glued along, `deep` towards the inside. */
function gusset(plan: Plan, x: number, edge: (x: number) => number, deep: number): void {
  const [from, to] = [x - 20, x + 20];
  const side = Math.sign(deep) * 2;
  plan.outline(
    [
      [from, edge(from) + side],
      [to, edge(to) + side],
      [to, edge(to) + deep],
      [from, edge(from) + deep],
    ],
    PLY,
    1,
  );
}

function lattice(plan: Plan): void {
  const posts = [240, 360, 490, 630, 760];
  for (const x of posts) plan.box(x - 5, upper(x) + 6, 10, lower(x) - upper(x) - 12, WOOD, 1.3);
  for (const [i, x] of posts.entries()) {
    const next = posts[i + 1];
    if (next !== undefined)
      plan.outline(
        [
          [x + 5, lower(x) - 8],
          [x + 15, lower(x) - 8],
          [next - 5, upper(next) + 8],
          [next - 15, upper(next) + 8],
        ],
        WOOD,
        1.2,
      );
  }
  for (const x of posts) {
    gusset(plan, x, upper, 22);
    gusset(plan, x, lower, -19);
  }
  plan.outline(
    [
      [868, upper(868) + 2],
      [914, upper(914) + 1],
      [914, lower(914) - 1],
      [868, lower(868) - 2],
    ],
    PLY,
    1,
  );
}

function wingRibs(): string {
  const plan = new Plan();
  plan
    .outline(airfoil(60, 240, 880, 110, 50), PLY, 1)
    .outline(airfoil(60, 240, 880, 110, 50, 0.17), WOOD, 2.2)
    .outline(airfoil(72, 240, 850, 100, 41, 0.19), PAPER, 1.3);
  lattice(plan);
  for (const [x, name] of [
    [150, "NOSE, LEFT"],
    [360, "NOSE, RIGHT"],
  ] as const)
    plan
      .outline([...arc([x, 450], 92, 54, 90, 270, 20), [x + 46, 396], [x + 46, 504]], WOOD)
      .outline([...arc([x, 450], 82, 45, 90, 270, 20), [x + 38, 405], [x + 38, 495]], PLY, 1)
      .circle(x - 14, 450, 24, PAPER)
      .centre([x - 50, 450], [x + 22, 450])
      .centre([x - 14, 414], [x - 14, 486])
      .letter(name, x - 44, 370, 9);
  const doubler = rectangle(600, 410, 200, 72);
  plan
    .outline(doubler, PLY)
    .hatchWithin(doubler, 16, -1, 0.5)
    .letter("DOUBLER, RIB 1", 600, 388, 9)
    .reach(410, 800, 838)
    .reach(482, 800, 838)
    .upright(832, 410, 482, "90")
    .extension(600, 482, 518)
    .extension(800, 482, 518)
    .dimension(600, 800, 513, "250 mm")
    .leader("22 GUSSETS, 11 A SIDE", [430, 96], [372, 156])
    .leader("CAP STRIP", [680, 118], [590, 161])
    .leader("NOSE, PLY", [60, 96], [130, 200]);
  return plan.svg("Wing rib", "Sheets 7 and 8");
}

function aileron(): string {
  const plan = new Plan();
  for (const [x0, sense, name] of [
    [60, 1, "LEFT"],
    [940, -1, "RIGHT"],
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
    for (const share of [0.03, 0.26, 0.5, 0.74, 0.97]) plan.box(x(share) - 6, 172, 12, 228 - share * 20, PLY, 1.4);
    for (const share of [0.03, 0.26, 0.5, 0.74])
      plan.line(
        [
          [x(share) + sense * 8, 386],
          [x(share + 0.23) - sense * 8, 178],
        ],
        1,
        "8 4",
      );
    for (const share of [0.12, 0.5, 0.88]) {
      const block = rectangle(x(share) - 18, 116, 36, 30);
      plan.outline(block, BLOCK).hatchWithin(block, 7);
    }
    plan.centre([x(-0.03), 131], [x(1.03), 131]).letter(name, (x(0) + x(1)) / 2 - name.length * 5.5, 440, 12);
  }
  plan
    .leader("HINGE BLOCK", [450, 84], [412, 124])
    .leader("HINGE LINE", [690, 84], [640, 131])
    .leader("TRAILING EDGE", [320, 424], [420, 390])
    .extension(60, 416, 502)
    .extension(460, 394, 502)
    .extension(540, 394, 502)
    .extension(940, 416, 502)
    .dimension(60, 460, 496, "1,940 mm")
    .dimension(540, 940, 496, "1,940 mm");
  return plan.svg("Ailerons", "Sheets 15 and 16");
}

/** px for a mm of the bows; their thickness is drawn larger. */
const BOW = 0.42;
const THICK = 26;

/** A bow that stands on its ends, the scarf to the tip block at that towards the root. */
function bow(plan: Plan, middle: number, root: 1 | -1): void {
  const half = (610 / 2) * BOW;
  const [foot, deep] = [420, 627 * BOW];
  const line = (out: number): P2[] => arc([middle, foot], half + out, deep + out, 180, 360, 60) as P2[];
  plan.outline([...line(THICK), ...line(0).reverse()], WOOD, 2);
  for (let strip = 1; strip < 6; strip += 1) plan.line(line((strip * THICK) / 6), 0.8);
  const [inner, outer] = [middle + root * half, middle + root * (half + THICK)];
  const block: P2[] = [
    [inner, foot],
    [outer, foot - 42],
    [outer, foot + 40],
    [inner, foot + 40],
  ];
  plan.outline(block, BLOCK, 1.6).hatchWithin(block, 7);
  plan
    .centre([middle, foot - deep - THICK - 16], [middle, foot + 14])
    .extension(middle - half, foot + (root === -1 ? 40 : 0), 502)
    .extension(middle + half, foot + (root === 1 ? 40 : 0), 502)
    .dimension(middle - half, middle + half, 496, "610 mm");
}

function tipBow(): string {
  const plan = new Plan();
  bow(plan, 250, 1);
  bow(plan, 750, -1);
  plan
    .letter("LEFT", 60, 84, 12)
    .letter("RIGHT", 872, 84, 12)
    .leader("6 STRIPS OF 3 mm", [432, 120], [330, 196])
    .leader("TIP BLOCK", [462, 440], [396, 440])
    .leader("SCARF", [474, 350], [392, 398]);
  return plan.svg("Wing-tip bows", "Sheet 13");
}

/** px for a mm of the tank bay: its plan is square. */
const BAY = 0.62;

function tankBay(): string {
  const plan = new Plan();
  const [x, y, side] = [320, 112, 520 * BAY];
  const [rib, strip] = [30 * BAY, 20 * BAY];
  plan
    .box(x, y, side, side, PLY)
    .box(x, y, rib, side, WOOD, 1.6)
    .box(x + side - rib, y, rib, side, WOOD, 1.6)
    .box(x + rib, y, side - 2 * rib, strip, WOOD, 1.4)
    .box(x + rib, y + side - strip, side - 2 * rib, strip, WOOD, 1.4);
  for (const [cx, cy] of [
    [x + rib, y + strip],
    [x + side - rib - 28, y + strip],
    [x + rib, y + side - strip - 19],
    [x + side - rib - 28, y + side - strip - 19],
  ] as const) {
    const block = rectangle(cx, cy, 28, 19);
    plan.outline(block, BLOCK, 1.3).hatchWithin(block, 6);
  }
  const middle: P2 = [x + side / 2, y + side / 2];
  const [long, wide] = [300 * BAY, 25 * BAY];
  plan.box(middle[0] - 108, middle[1] - 108, 216, 216, FUEL, 1.2);
  for (const dx of [-58, 58])
    plan
      .box(middle[0] + dx - wide / 2, middle[1] - long / 2, wide, long, WOOD, 1.4)
      .centre([middle[0] + dx, middle[1] - long / 2 - 10], [middle[0] + dx, middle[1] + long / 2 + 10]);
  const [lidWide, lidHigh, edge] = [360 * BAY, 290 * BAY, 20 * BAY];
  for (const inward of [0, edge])
    plan.phantom([
      ...rectangle(
        middle[0] - lidWide / 2 + inward,
        middle[1] - lidHigh / 2 + inward,
        lidWide - 2 * inward,
        lidHigh - 2 * inward,
      ),
      [middle[0] - lidWide / 2 + inward, middle[1] - lidHigh / 2 + inward],
    ]);
  plan
    .circle(x + side - rib - 44, y + side - strip - 12, 6, PAPER)
    .letter("TANK", middle[0] - 29, middle[1] - 8, 14)
    .leader("RIB 1", [196, 150], [x + 9, 190])
    .leader("RIB 3", [712, 150], [x + side - 9, 190])
    .leader("MAIN SPAR SIDE", [410, 76], [482, y + 6])
    .leader("CORNER BLOCK", [712, 112], [x + side - rib - 10, y + strip + 8])
    .leader("STRAP BEARER", [712, 250], [middle[0] + 60, 240])
    .leader("LID FRAME, ABOVE", [712, 300], [middle[0] + lidWide / 2 - 6, 310])
    .leader("DRAIN", [712, 392], [x + side - rib - 44, y + side - strip - 12])
    .leader("FLOOR, 2 mm PLY", [712, 346], [x + side - 32, 350])
    .reach(y, x, 276)
    .reach(y + side, x, 276)
    .upright(282, y, y + side, "520 mm")
    .extension(x, y + side, 500)
    .extension(x + side, y + side, 500)
    .dimension(x, x + side, 494, "520 mm");
  return plan.svg("Tank bay, from above", "Sheets 20 and 21");
}

export const partPlans = { wingRibs, aileron, tipBow, tankBay };
