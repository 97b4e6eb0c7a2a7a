import { letters } from "../ink/lettering.ts";
import { pathOf } from "../ink/sketch.ts";
import type { P2 } from "../ink/space.ts";

const PLAN_WIDE = 1000;
const PLAN_HIGH = 560;

/** A line drawing of an assembly on light paper, so that it can be read on a dark page too. */
export class Plan {
  private readonly parts: string[] = [];

  outline(points: readonly P2[], fill = "none", width = 2): this {
    return this.add(
      `<path d="${pathOf(points, true)}" fill="${fill}" stroke="#2c2723" stroke-width="${width}" stroke-linejoin="round"/>`,
    );
  }

  line(points: readonly P2[], width = 1.4, dash = ""): this {
    return this.add(
      `<path d="${pathOf(points)}" fill="none" stroke="#2c2723" stroke-width="${width}"${dash === "" ? "" : ` stroke-dasharray="${dash}"`}/>`,
    );
  }

  box(x: number, y: number, wide: number, high: number, fill = "none", width = 2): this {
    return this.outline(
      [
        [x, y],
        [x + wide, y],
        [x + wide, y + high],
        [x, y + high],
      ],
      fill,
      width,
    );
  }

  circle(x: number, y: number, r: number, fill = "none"): this {
    return this.add(`<circle cx="${x}" cy="${y}" r="${r}" fill="${fill}" stroke="#2c2723" stroke-width="1.6"/>`);
  }

  /** Slanting lines within a box, as for cut timber. */
  hatch(x: number, y: number, wide: number, high: number, step = 8): this {
    for (let at = x - high + step; at < x + wide; at += step) {
      const [from, to] = [Math.max(at, x), Math.min(at + high, x + wide)];
      this.line(
        [
          [from, y + high - (from - at)],
          [to, y + high - (to - at)],
        ],
        0.7,
      );
    }
    return this;
  }

  /** A dimension between two points on one level. */
  dimension(x0: number, x1: number, y: number, text: string): this {
    this.line(
      [
        [x0, y],
        [x1, y],
      ],
      0.9,
    )
      .line(
        [
          [x0 - 4, y + 5],
          [x0 + 4, y - 5],
        ],
        1.2,
      )
      .line(
        [
          [x1 - 4, y + 5],
          [x1 + 4, y - 5],
        ],
        1.2,
      );
    return this.letter(text, (x0 + x1) / 2 - text.length * 5, y - 16, 10);
  }

  /** A dimension between two heights, read from the right. */
  upright(x: number, y0: number, y1: number, text: string): this {
    for (const y of [y0, y1])
      this.line(
        [
          [x - 5, y + 4],
          [x + 5, y - 4],
        ],
        1.2,
      );
    this.line(
      [
        [x, y0],
        [x, y1],
      ],
      0.9,
    );
    const middle = (y0 + y1) / 2 + text.length * 4.75;
    for (const run of letters(text, 10))
      this.line(
        run.map(([a, b]): P2 => [x - 16 + b, middle - a]),
        1.2,
      );
    return this;
  }

  /** Dash and dot: the middle of something. */
  centre(from: P2, to: P2): this {
    return this.line([from, to], 0.8, "14 5 3 5");
  }

  /** Two dots and a dash: what stands there and is drawn elsewhere. */
  phantom(points: readonly P2[]): this {
    return this.line(points, 0.9, "16 4 3 4 3 4");
  }

  /** A name beside what it names, with a line that leads there and ends in a dot. */
  leader(text: string, [x, y]: P2, to: P2, high = 9): this {
    const wide = text.length * 0.95 * high;
    const middle = y + high / 2;
    const from: P2 =
      to[0] < x - 8
        ? [x - 6, middle]
        : to[0] > x + wide + 8
          ? [x + wide + 6, middle]
          : [x + wide / 2, to[1] > y ? y + high + 5 : y - 5];
    return this.letter(text, x, y, high)
      .line([from, to], 0.7)
      .add(`<circle cx="${to[0]}" cy="${to[1]}" r="2.4" fill="#2c2723"/>`);
  }

  /** Slanting lines within any outline: of cut timber, or the grain of ply. */
  hatchWithin(points: readonly P2[], step: number, way: 1 | -1 = 1, width = 0.6): this {
    const across = ([x, y]: P2): number => x + way * y;
    const all = points.map(across);
    for (let at = Math.min(...all) + step / 2; at < Math.max(...all); at += step) {
      const crossed = points.flatMap((a, i): P2[] => {
        const b = points[(i + 1) % points.length] ?? a;
        const [from, to] = [across(a) - at, across(b) - at];
        if (from < 0 === to < 0) return [];
        const share = from / (from - to);
        return [[a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])]];
      });
      crossed.sort((a, b) => a[0] - b[0]);
      for (let i = 0; i + 1 < crossed.length; i += 2) this.line(crossed.slice(i, i + 2), width);
    }
    return this;
  }

  /** The thin line from an edge of what is drawn past its dimension. */
  extension(x: number, from: number, to: number): this {
    return this.line(
      [
        [x, from + (to > from ? 6 : -6)],
        [x, to],
      ],
      0.6,
    );
  }

  /** The same from the side. */
  reach(y: number, from: number, to: number): this {
    return this.line(
      [
        [from + (to > from ? 6 : -6), y],
        [to, y],
      ],
      0.6,
    );
  }

  letter(text: string, x: number, y: number, high = 12): this {
    for (const run of letters(text, high))
      this.line(
        run.map(([a, b]): P2 => [x + a, y + b]),
        high > 14 ? 1.7 : 1.2,
      );
    return this;
  }

  svg(title: string, sheet: string): string {
    this.letter(title, 24, 18, 17).letter(`${sheet} · not to scale`.replace("·", "-"), 24, 532, 10);
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${PLAN_WIDE} ${PLAN_HIGH}" role="img"><title>${title}</title>` +
      `<rect width="${PLAN_WIDE}" height="${PLAN_HIGH}" fill="#fbf7ec"/><rect x="8" y="8" width="984" height="544" fill="none" stroke="#b9ad94"/>${this.parts.join("")}</svg>\n`
    );
  }

  private add(part: string): this {
    this.parts.push(part);
    return this;
  }
}
