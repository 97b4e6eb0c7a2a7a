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

  /** The thin line from an edge of what is drawn down past its dimension. */
  extension(x: number, from: number, to: number): this {
    return this.line(
      [
        [x, from + 6],
        [x, to],
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
