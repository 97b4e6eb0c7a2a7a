import { area, line } from "d3-shape";
import { framed, tenth } from "./frame.ts";
import type { Frame, Room } from "./frame.ts";

type At = readonly [day: number, value: number];

/**
 * What may come on a day: the least and the most within which so many futures lie, from the widest band to the
 * narrowest, and the middle.
 */
interface Ahead {
  readonly day: number;
  readonly bands: readonly (readonly [low: number, high: number])[];
  readonly middle: number;
}

export interface FanInput {
  readonly past: readonly At[];
  readonly ahead: readonly Ahead[];
  /** The sum at which the work is done. */
  readonly goal: number;
  /** Days by which it is done in so many futures. */
  readonly marks: readonly number[];
}

export interface FanDrawing {
  readonly frame: Frame;
  readonly past: string;
  readonly bands: readonly string[];
  readonly middle: string;
  readonly goal: number;
  /** Where the past ends. */
  readonly now: number;
  readonly marks: readonly number[];
}

/** The past as a line and the futures as bands that widen from its end up to the goal. */
export function fanDrawing({ past, ahead, goal, marks }: FanInput, room: Room): FanDrawing {
  const from = past[0]?.[0] ?? 0;
  const now = past[past.length - 1] ?? [from, 0];
  const to = Math.max(now[0], ...ahead.map(({ day }) => day), ...marks);
  const { x, y, frame } = framed(room, from, to, Math.max(goal, now[1]));
  const path = line<At>()
    .x(([day]) => x(day))
    .y(([, value]) => y(value))
    .digits(1);
  const bands = (ahead[0]?.bands ?? []).map((_, at) => {
    const ends = [
      [now[0], now[1], now[1]] as const,
      ...ahead.map(({ day, bands: all }) => [day, all[at]?.[0] ?? 0, all[at]?.[1] ?? 0] as const),
    ];
    return (
      area<(typeof ends)[number]>()
        .x(([day]) => x(day))
        .y0(([, low]) => y(low))
        .y1(([, , high]) => y(high))
        .digits(1)(ends) ?? ""
    );
  });
  return {
    frame,
    bands,
    past: path(past) ?? "",
    middle: path([now, ...ahead.map(({ day, middle }): At => [day, middle])]) ?? "",
    goal: tenth(y(goal)),
    now: tenth(x(now[0])),
    marks: marks.map((day) => tenth(x(day))),
  };
}
