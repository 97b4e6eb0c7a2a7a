/**
 * Where the marks of joints stand on a drawing: on the joint itself, or moved off another mark with a line back to
 * it.
 */
import { tenth } from "./frame.ts";

export interface Spot {
  readonly id: string;
  /** Shares of the drawing's width and height from the top left. */
  readonly x: number;
  readonly y: number;
}

export interface PlacedMark {
  readonly id: string;
  /** Middle of the mark, in percent of width and height. */
  readonly left: number;
  readonly top: number;
  /** The joint itself, in percent, where the mark had to be moved away from it. */
  readonly of?: { readonly left: number; readonly top: number };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** How many half marks away a place is looked for, to each side. */
const REACH = 12;

/** Places about a joint, the nearest first; above before below, left before right. */
function offsetsFor(mark: { readonly width: number; readonly height: number }): Point[] {
  const steps = Array.from({ length: 2 * REACH + 1 }, (_, step) => step - REACH);
  const points = steps.flatMap((down) =>
    steps.map((across) => ({ x: (across * mark.width) / 2, y: (down * mark.height) / 2 })),
  );
  const far = ({ x, y }: Point): number => x * x + y * y;
  return points.sort((a, b) => far(a) - far(b) || a.y - b.y || a.x - b.x);
}

/**
 * Places marks of `mark` by `mark` on a drawing of `width` by `height` (any one unit), in the order given.
 * Each takes the free place nearest to its joint; where there is none it stays on its joint.
 */
export function placedMarks(
  spots: readonly Spot[],
  width: number,
  height: number,
  mark: { readonly width: number; readonly height: number },
): PlacedMark[] {
  const taken: Point[] = [];
  const offsets = offsetsFor(mark);
  const free = ({ x, y }: Point): boolean =>
    x >= mark.width / 2 &&
    x <= width - mark.width / 2 &&
    y >= mark.height / 2 &&
    y <= height - mark.height / 2 &&
    taken.every((other) => Math.abs(other.x - x) >= mark.width || Math.abs(other.y - y) >= mark.height);
  return spots.map(({ id, x, y }) => {
    const joint = { x: x * width, y: y * height };
    const at = offsets.map((offset) => ({ x: joint.x + offset.x, y: joint.y + offset.y })).find(free) ?? joint;
    taken.push(at);
    const placed = { id, left: tenth((at.x / width) * 100), top: tenth((at.y / height) * 100) };
    if (at.x === joint.x && at.y === joint.y) return placed;
    return { ...placed, of: { left: tenth(x * 100), top: tenth(y * 100) } };
  });
}
