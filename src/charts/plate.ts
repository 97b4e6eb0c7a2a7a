/**
 * Where the marks of joints stand on a drawing: beside their joints, each with a line to its own. No mark covers a
 * joint or another mark, and no line runs through a mark or across another line while there is another place.
 */
import { tenth } from "./frame.ts";

export interface Spot {
  readonly id: string;
  /** Shares of the drawing's width and height from the top left. */
  readonly x: number;
  readonly y: number;
  /** Of its mark, in the drawing's units. */
  readonly width: number;
}

export interface PlacedMark {
  readonly id: string;
  /** Middle of the mark, in percent of width and height. */
  readonly left: number;
  readonly top: number;
  /** The joint itself, in percent. */
  readonly of: { readonly left: number; readonly top: number };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

interface Placed {
  readonly box: Box;
  readonly joint: Point;
}

/** Between marks, and between a mark and any joint, in the drawing's units. */
export const CLEAR = { mark: 3, joint: 7 } as const;

/** How far a place is looked for, and how many directions are tried. */
const RINGS = { first: 26, step: 10, last: 420 } as const;
const DIRECTIONS = 24;

/** Places about a joint, the nearest first; a wide mark must go farther to the side than up or down. */
function places({ x, y }: Point, width: number): Point[] {
  const found: Point[] = [];
  for (let far = RINGS.first; far <= RINGS.last; far += RINGS.step) {
    for (let at = 0; at < DIRECTIONS; at += 1) {
      // Slanted before level or upright: most lines of a drawing are one or the other.
      const angle = ((at * 7 + 3) % DIRECTIONS) * ((2 * Math.PI) / DIRECTIONS) + Math.PI / DIRECTIONS;
      const across = Math.cos(angle) * far;
      found.push({ x: x + across + (Math.sign(across) * width) / 4, y: y + Math.sin(angle) * far });
    }
  }
  return found;
}

const holds = ({ x, y, width, height }: Box, point: Point, clear: number): boolean =>
  Math.abs(point.x - x) < width / 2 + clear && Math.abs(point.y - y) < height / 2 + clear;

const overlap = (one: Box, other: Box): boolean =>
  Math.abs(one.x - other.x) < (one.width + other.width) / 2 + CLEAR.mark &&
  Math.abs(one.y - other.y) < (one.height + other.height) / 2 + CLEAR.mark;

const side = (a: Point, b: Point, c: Point): number => Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));

/** Whether two lines cross each other. */
export const cross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

function runsThrough(from: Point, to: Point, { x, y, width, height }: Box): boolean {
  const [left, right, top, bottom] = [x - width / 2, x + width / 2, y - height / 2, y + height / 2];
  return (
    cross(from, to, { x: left, y: top }, { x: right, y: bottom }) ||
    cross(from, to, { x: right, y: top }, { x: left, y: bottom })
  );
}

/**
 * Places marks as high as `height` on a drawing of `size`, in the order given. Each takes the nearest place that keeps
 * all that is promised; else the nearest where it covers nothing; else one at its joint.
 */
export function placedMarks(
  spots: readonly Spot[],
  size: { readonly width: number; readonly height: number },
  height: number,
): PlacedMark[] {
  const joints = spots.map(({ x, y }): Point => ({ x: x * size.width, y: y * size.height }));
  const taken: Placed[] = [];
  const within = ({ x, y, width }: Box): boolean =>
    x >= width / 2 && x <= size.width - width / 2 && y >= height / 2 && y <= size.height - height / 2;
  const free = (box: Box): boolean =>
    within(box) &&
    joints.every((joint) => !holds(box, joint, CLEAR.joint)) &&
    taken.every((other) => !overlap(box, other.box));
  const clean = (box: Box, joint: Point): boolean =>
    taken.every(
      (other) =>
        !runsThrough(box, joint, other.box) &&
        !runsThrough(other.box, other.joint, box) &&
        !cross(box, joint, other.box, other.joint),
    );
  return spots.map(({ id, width }, at) => {
    const joint = joints[at] ?? { x: 0, y: 0 };
    const open = places(joint, width)
      .map(({ x, y }): Box => ({ x, y, width, height }))
      .filter(free);
    const box = open.find((each) => clean(each, joint)) ?? open[0] ?? { ...joint, width, height };
    taken.push({ box, joint });
    const percent = (point: Point) => ({
      left: tenth((point.x / size.width) * 100),
      top: tenth((point.y / size.height) * 100),
    });
    return { id, ...percent(box), of: percent(joint) };
  });
}
