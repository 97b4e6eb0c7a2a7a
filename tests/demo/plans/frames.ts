/** What stands across the fuselage: bulkheads, cabin frame, undercarriage beam. Sizes are those of the record, in mm, at a scale of its own each. */
import { Plan } from "./plan.ts";
import { arc, type P2 } from "../ink/space.ts";

const WOOD = "#efdcae";
const PLY = "#f3e9cd";
const BLOCK = "#e2cf9b";
const PAPER = "#fbf7ec";

const rectangle = (x: number, y: number, wide: number, high: number): P2[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];

/** px for a mm of the bulkheads. */
const FRAME = 0.28;

interface Frame {
  readonly name: string;
  /** Of its upper left corner. */
  readonly x: number;
  readonly y: number;
  /** mm */
  readonly wide: number;
  readonly high: number;
  readonly rim: number;
}

/** A triangle in a corner, `dx` and `dy` towards the inside. */
const corner = (x: number, y: number, dx: number, dy: number): P2[] => [
  [x, y],
  [x + 22 * dx, y],
  [x, y + 22 * dy],
];

/** The rim, a block in each corner, and the middle of the aircraft. */
function frame(plan: Plan, { name, x, y, wide, high, rim }: Frame, within: (plan: Plan, at: Inside) => void): void {
  const [w, h, r] = [wide * FRAME, high * FRAME, rim * FRAME];
  const inside = { left: x + r, right: x + w - r, top: y + r, low: y + h - r };
  plan.box(x, y, w, h, WOOD, 2).box(inside.left, inside.top, w - 2 * r, h - 2 * r, PAPER, 1.3);
  within(plan, inside);
  for (const [cx, cy, dx, dy] of [
    [inside.left, inside.top, 1, 1],
    [inside.right, inside.top, -1, 1],
    [inside.left, inside.low, 1, -1],
    [inside.right, inside.low, -1, -1],
  ] as const)
    plan.outline(corner(cx, cy, dx, dy), BLOCK, 1.2);
  plan.centre([x + w / 2, y - 16], [x + w / 2, y + h + 16]).letter(name, x - 4, y - 26, 13);
}

interface Inside {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly low: number;
}

/** Two sticks that cross, with a block in each angle between them. */
function cross(plan: Plan, { left, right, top, low }: Inside): void {
  const [mx, my] = [(left + right) / 2, (top + low) / 2];
  const stick = (x0: number, x1: number): P2[] => [
    [x0, top + 2],
    [x0 + (x1 > x0 ? 9 : -9), top],
    [x1, low - 2],
    [x1 + (x1 > x0 ? -9 : 9), low],
  ];
  plan.outline(stick(left, right), WOOD, 1.3).outline(stick(right, left), WOOD, 1.3);
  for (const [dx, dy] of [
    [-1, 0],
    [1, 0],
    [0, -1],
    [0, 1],
  ] as const)
    plan.outline(
      [
        [mx + dx * 5, my + dy * 4],
        [mx + dx * 26 + dy * 26, my + dy * 14 + dx * 12],
        [mx + dx * 26 - dy * 26, my + dy * 14 - dx * 12],
      ],
      BLOCK,
      1.2,
    );
}

/** A rail of panel or spar right across, and what passes below it. */
function rail(plan: Plan, { left, right }: Inside, y: number, high: number): void {
  plan.outline(rectangle(left, y, right - left, high), WOOD, 1.4);
}

function bulkheads(): string {
  const plan = new Plan();
  const spar = (name: string, x: number, y: number): void =>
    frame(plan, { name, x, y, wide: 900, high: 420, rim: 25 }, (on, at) => {
      rail(on, at, at.low - 62, 12.6);
      on.phantom([...rectangle(at.left - 7, at.low - 49.4, at.right - at.left + 14, 47), [at.left - 7, at.low - 49.4]]);
    });
  frame(plan, { name: "B1", x: 96, y: 116, wide: 900, high: 420, rim: 20 }, cross);
  frame(plan, { name: "B2", x: 400, y: 116, wide: 900, high: 420, rim: 20 }, (on, at) => {
    rail(on, at, at.top + 36, 6);
    for (const [x, dx] of [
      [at.left, 1],
      [at.right, -1],
    ] as const)
      for (const [y, dy] of [
        [at.top + 36, -1],
        [at.top + 42, 1],
      ] as const)
        on.outline(
          [
            [x, y],
            [x + 14 * dx, y],
            [x, y + 14 * dy],
          ],
          BLOCK,
          1.1,
        );
  });
  spar("B3", 704, 116);
  spar("B4", 96, 340);
  frame(plan, { name: "B5", x: 425, y: 345, wide: 720, high: 380, rim: 20 }, () => undefined);
  plan
    .outline(rectangle(760, 345, 11.2, 106.4), WOOD, 2)
    .centre([765.6, 329], [765.6, 468])
    .letter("B6", 740, 319, 13)
    .leader("PLY ON BOTH FACES", [810, 356], [768, 366])
    .leader("CROSS OF B1", [84, 264], [150, 210])
    .leader("PANEL RAIL", [452, 264], [480, 160])
    .leader("SOLID OVER THE SPAR", [740, 264], [800, 170])
    .leader("SPAR", [366, 396], [316, 424])
    .extension(96, 458, 496)
    .extension(348, 458, 496)
    .dimension(96, 348, 492, "900 mm")
    .reach(340, 96, 66)
    .reach(457.6, 96, 66)
    .upright(72, 340, 457.6, "420")
    .extension(425, 452, 496)
    .extension(626.6, 452, 496)
    .dimension(425, 626.6, 492, "720 mm")
    .reach(345, 771, 800)
    .reach(451.4, 771, 800)
    .upright(796, 345, 451.4, "380");
  return plan.svg("Bulkheads, from the front", "Sheets 25 and 26");
}

/** px for a mm of the hoop. */
const HOOP = 0.36;
const STRIPS = 14;

function hoop(plan: Plan, middle: number, foot: number): void {
  const [half, leg] = [(1060 / 2) * HOOP, 416 * HOOP];
  const line = (inward: number): P2[] => [
    [middle - half + inward, foot],
    ...arc([middle, foot - leg], half - inward, half - inward, 180, 360, 48),
    [middle + half - inward, foot],
  ];
  const deep = 28;
  plan.outline([...line(0), ...line(deep).reverse()], WOOD, 2);
  for (let strip = 1; strip < STRIPS; strip += 1) plan.line(line((strip * deep) / STRIPS), 0.5);
  for (const x of [middle - half, middle + half - deep])
    for (const cheek of [rectangle(x - 11, foot - 54, 11, 54), rectangle(x + deep, foot - 54, 11, 54)])
      plan.outline(cheek, BLOCK, 1.4).hatchWithin(cheek, 6);
  plan.centre([middle, foot - leg - half - 26], [middle, foot + 18]);
}

function cabinFrame(): string {
  const plan = new Plan();
  const [middle, foot] = [290, 440];
  const half = (1060 / 2) * HOOP;
  const crown = foot - 416 * HOOP - half;
  hoop(plan, middle, foot);
  const arch = (inward: number): P2[] => arc([730, 238], 150 - inward, 128 - inward, 180, 360, 40) as P2[];
  plan.outline([...arch(0), ...arch(15).reverse()], WOOD, 2);
  for (const at of [5, 10]) plan.line(arch(at), 0.7);
  plan.centre([730, 92], [730, 256]);
  const back = (grow: number): P2[] => [
    [592 + grow, 330 + grow],
    [868 - grow, 330 + grow],
    [874 - grow, 440 - grow],
    [586 + grow, 440 - grow],
  ];
  plan.outline(back(0), WOOD, 2).outline(back(11), PLY, 1.3).hatchWithin(back(11), 13, -1, 0.4);
  plan.box(725, 341, 10, 88, WOOD, 1.3);
  for (const x of [604, 713, 735, 844]) for (const y of [341, 417]) plan.box(x, y, 12, 12, BLOCK, 1.1);
  for (const x of [598, 852]) for (const y of [379]) plan.box(x, y, 12, 12, BLOCK, 1.1);
  plan
    .centre([730, 316], [730, 456])
    .leader("14 STRIPS OF 3 MM", [60, 86], [164, 166])
    .leader("CHEEKS OF ASH", [160, 396], [133, 420])
    .leader("WINDSCREEN ARCH, 3 STRIPS", [620, 270], [606, 190])
    .leader("SEAT BACK", [896, 300], [812, 372])
    .extension(middle - half, foot, 500)
    .extension(middle + half, foot, 500)
    .dimension(middle - half, middle + half, 494, "1,060 mm")
    .reach(crown, middle, 530)
    .reach(foot, middle + half + 12, 530)
    .upright(524, crown, foot, "946 mm")
    .extension(588, 440, 500)
    .extension(872, 440, 500)
    .dimension(588, 872, 494, "940 mm");
  return plan.svg("Cabin frame, from the front", "Sheets 28 and 29");
}

/** From the front, half of the ply taken away, and from above. */
function undercarriageBeam(): string {
  const plan = new Plan();
  const [left, right, torn] = [100, 940, 470];
  plan.outline(rectangle(left, 120, right - left, 92), WOOD);
  for (let line = 1; line < 5; line += 1)
    plan.line(
      [
        [torn - 8, 120 + line * 18.4],
        [right, 120 + line * 18.4],
      ],
      1,
    );
  const face: P2[] = [
    [left, 120],
    [torn, 120],
    [torn - 14, 143],
    [torn + 6, 166],
    [torn - 10, 189],
    [torn, 212],
    [left, 212],
  ];
  plan.outline(face, PLY, 1.4).hatchWithin(face, 24, -1, 0.5);
  plan.outline(rectangle(left, 330, right - left, 72), WOOD);
  for (const y of [330, 399]) plan.box(left, y, right - left, 3, PLY, 0.9);
  for (const x of [160, 806]) {
    plan.outline(rectangle(x, 337, 74, 58), BLOCK, 1.6);
    for (const dx of [18, 56])
      for (const y of [352, 380]) plan.circle(x + dx, y, 6, PAPER).centre([x + dx - 11, y], [x + dx + 11, y]);
    for (const dx of [18, 56]) plan.centre([x + dx, 326], [x + dx, 406]);
  }
  plan
    .centre([520, 102], [520, 424])
    .letter("FROM THE FRONT", 100, 94, 10)
    .letter("FROM ABOVE", 100, 302, 10)
    .leader("FACING PLY, BOTH SIDES", [180, 244], [250, 190])
    .leader("5 × 20 mm, ASH", [640, 244], [660, 176])
    .leader("BOLT PLATE BLOCK", [250, 432], [214, 388])
    .reach(120, left, 62)
    .reach(212, left, 62)
    .upright(68, 120, 212, "100")
    .reach(330, left, 62)
    .reach(402, left, 62)
    .upright(68, 330, 402, "78")
    .extension(left, 402, 498)
    .extension(right, 402, 498)
    .dimension(left, right, 492, "1,100 mm");
  return plan.svg("Undercarriage beam", "Sheet 27");
}

export const framePlans = { bulkheads, cabinFrame, undercarriageBeam };
