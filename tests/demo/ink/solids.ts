import { lit, WASH } from "./colour.ts";
import { letters } from "./lettering.ts";
import type { Sketch } from "./sketch.ts";
import { add, cross, dot, hull, mean, sub, times, unit, type Camera, type P2, type V3 } from "./space.ts";

const LIGHT = unit([-0.45, -0.6, 1]);

export interface Look {
  readonly colour: string;
  /** Direction of the grain, if it has any. */
  readonly grain?: V3;
  /** Plies seen on the edges. */
  readonly plies?: number;
  readonly line?: number;
}

export const spruce = (grain: V3): Look => ({ colour: WASH.spruce, grain });
export const ash = (grain: V3): Look => ({ colour: WASH.ash, grain });
export const birch = (grain: V3): Look => ({ colour: WASH.birch, grain, plies: 3 });
export const plain = (colour: string, line?: number): Look => (line === undefined ? { colour } : { colour, line });

interface Face {
  readonly outlines: readonly (readonly V3[])[];
  readonly normal: V3;
  readonly cap: boolean;
}

/** Solids drawn into a sketch as seen by a camera. Draw what is far first. */
export class Solids {
  constructor(
    readonly sketch: Sketch,
    readonly camera: Camera,
  ) {}

  to(points: readonly V3[]): P2[] {
    return points.map((point) => this.camera.to(point));
  }

  /** A box with one corner at `at` and sides along the axes. */
  box(at: V3, size: V3, look: Look): void {
    this.prism(
      at,
      [size[0], 0, 0],
      [0, size[1], 0],
      [0, 0, size[2]],
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      look,
    );
  }

  /** An outline in the plane of u and v, pushed along w; outlines after the first are holes through it. */
  prism(at: V3, u: V3, v: V3, w: V3, profile: readonly P2[], look: Look, holes: readonly (readonly P2[])[] = []): void {
    const place = ([a, b]: P2, k: number): V3 => add(at, add(add(times(u, a), times(v, b)), times(w, k)));
    const sense = Math.sign(dot(cross(u, v), w)) * Math.sign(area(profile));
    const faces: Face[] = [profile, ...holes].flatMap((outline, which) =>
      sides(outline, place, w, which === 0 ? sense : -sense * Math.sign(area(outline)) * Math.sign(area(profile))),
    );
    for (const k of [0, 1]) {
      faces.push({
        outlines: [profile, ...holes].map((outline) => outline.map((point) => place(point, k))),
        normal: unit(times(w, k === 1 ? 1 : -1)),
        cap: true,
      });
    }
    const far = (face: Face): number => {
      const ray = sub(mean(face.outlines[0] ?? []), this.camera.eye);
      return dot(ray, ray);
    };
    const seen = faces.filter((face) => dot(face.normal, sub(face.outlines[0]?.[0] ?? at, this.camera.eye)) < 0);
    for (const face of seen.sort((a, b) => Number(a.cap) - Number(b.cap) || far(b) - far(a))) this.face(face, look);
  }

  /** A round bar, cup or cone from `at` along `axis`. */
  round(at: V3, axis: V3, r0: number, r1: number, look: Look): void {
    const along = unit(axis);
    const u = unit(cross(along, Math.abs(along[2]) > 0.9 ? [1, 0, 0] : [0, 0, 1]));
    const v = cross(along, u);
    const ring = (centre: V3, r: number): V3[] =>
      Array.from({ length: 28 }, (_, i) => {
        const angle = (i / 28) * 2 * Math.PI;
        return add(centre, add(times(u, r * Math.cos(angle)), times(v, r * Math.sin(angle))));
      });
    const [low, high] = [ring(at, r0), ring(add(at, axis), r1)];
    this.sketch.face([hull([...this.to(low), ...this.to(high)])], lit(look.colour, 0.6), { width: look.line ?? 2.2 });
    low.forEach((point, i) => {
      const j = (i + 1) % 28;
      const normal = unit(sub(point, at));
      if (dot(normal, sub(point, this.camera.eye)) >= 0) return;
      const quad = this.to([point, low[j] ?? point, high[j] ?? point, high[i] ?? point]);
      this.sketch.tint(quad, lit(look.colour, 0.42 + 0.5 * dot(normal, LIGHT)), 1);
    });
    const top = dot(along, sub(add(at, axis), this.camera.eye)) < 0;
    this.sketch.face([this.to(top ? high : low)], lit(look.colour, top ? 0.95 : 0.5), { width: look.line ?? 2 });
  }

  /** Shadow of points on a level surface. */
  shadow(points: readonly V3[], level = 0, opacity = 0.3): void {
    const ground = points.map((p): P2 => [p[0] + (p[2] - level) * 0.62, p[1] + (p[2] - level) * 0.4]);
    this.sketch.tint(this.to(hull(ground).map(([x, y]): V3 => [x, y, level])), "#4a4258", opacity, 6);
  }

  /** Shadow of a box. */
  boxShadow(at: V3, size: V3, level = 0, opacity = 0.3): void {
    const corners = [0, 1].flatMap((i) =>
      [0, 1].flatMap((j) => [0, 1].map((k): V3 => [at[0] + i * size[0], at[1] + j * size[1], at[2] + k * size[2]])),
    );
    this.shadow(corners, level, opacity);
  }

  /** Lettering on a plane: `u` runs along the line, `v` downward, both of the length of one letter's height. */
  letter(text: string, at: V3, u: V3, v: V3, width = 2): void {
    for (const run of letters(text, 1))
      this.sketch.line(this.to(run.map(([a, b]) => add(at, add(times(u, a), times(v, b))))), { width });
  }

  private face(face: Face, look: Look): void {
    const outlines = face.outlines.map((outline) => this.to(outline));
    this.sketch.face(outlines, lit(look.colour, 0.5 + 0.5 * dot(face.normal, LIGHT)), { width: look.line ?? 2.4 });
    if (look.grain !== undefined) this.grain(face, outlines, look.grain);
    if (look.plies !== undefined && !face.cap) this.plies(face, look.plies);
    if (dot(face.normal, LIGHT) < -0.1) this.hatch(outlines);
  }

  private grain(face: Face, outlines: readonly (readonly P2[])[], grain: V3): void {
    const corners = face.outlines[0] ?? [];
    const along = sub(grain, times(face.normal, dot(unit(grain), face.normal)));
    if (Math.hypot(...along) < 0.3) return this.rings(outlines);
    const direction = unit(along);
    const across = cross(face.normal, direction);
    const [a, b] = [corners.map((c) => dot(c, direction)), corners.map((c) => dot(c, across))];
    const [a0, a1, b0, b1] = [Math.min(...a), Math.max(...a), Math.min(...b), Math.max(...b)];
    const lift = times(face.normal, dot(corners[0] ?? [0, 0, 0], face.normal));
    const at = (i: number, j: number): V3 => add(lift, add(times(direction, i), times(across, j)));
    const box = outlines[0] ?? [];
    const tall =
      Math.hypot((box[1]?.[0] ?? 0) - (box[0]?.[0] ?? 0), (box[1]?.[1] ?? 0) - (box[0]?.[1] ?? 0)) +
      Math.hypot((box[2]?.[0] ?? 0) - (box[1]?.[0] ?? 0), (box[2]?.[1] ?? 0) - (box[1]?.[1] ?? 0));
    const count = Math.max(2, Math.min(11, Math.round(tall / 40)));
    this.sketch.within(outlines, () => {
      for (let i = 0; i < count; i += 1)
        this.grainLine(at, [a0, a1], b0 + (b1 - b0) * ((i + this.sketch.between(0.2, 0.8)) / count), (b1 - b0) / count);
    });
  }

  private grainLine(
    at: (i: number, j: number) => V3,
    [from, to]: readonly [number, number],
    b: number,
    room: number,
  ): void {
    const [start, end, bend] = [
      this.sketch.between(-0.05, 0.35),
      this.sketch.between(0.55, 1.05),
      this.sketch.between(-0.3, 0.3) * room,
    ];
    const points = Array.from({ length: 7 }, (_, i) => {
      const share = start + ((end - start) * i) / 6;
      return at(from + (to - from) * share, b + bend * Math.sin(share * 5));
    });
    this.sketch.line(this.to(points), { width: 1.1, colour: "#7d5a33", opacity: 0.5 });
  }

  private rings(outlines: readonly (readonly P2[])[]): void {
    const outline = outlines[0] ?? [];
    const [x, y] = outline.reduce(([sx, sy], [px, py]): P2 => [sx + px / outline.length, sy + py / outline.length], [
      0, 0,
    ] as P2);
    const size = Math.max(...outline.map(([px, py]) => Math.hypot(px - x, py - y)));
    const tilt = this.sketch.between(1, 2.4);
    this.sketch.within(outlines, () => {
      for (let r = size * 0.5; r < size * 3; r += Math.max(5, size / 5)) {
        const points = Array.from(
          { length: 9 },
          (_, i): P2 => [
            x + Math.cos(tilt) * size * 1.5 + r * Math.cos(tilt + 2.2 + i * 0.22),
            y + Math.sin(tilt) * size * 1.5 + r * Math.sin(tilt + 2.2 + i * 0.22),
          ],
        );
        this.sketch.line(points, { width: 1.2, colour: "#7d5a33", opacity: 0.65 });
      }
    });
  }

  private plies(face: Face, count: number): void {
    const [a, b, c, d] = face.outlines[0] ?? [];
    if (a === undefined || b === undefined || c === undefined || d === undefined) return;
    for (let i = 1; i < count; i += 1) {
      this.sketch.line(this.to([add(a, times(sub(d, a), i / count)), add(b, times(sub(c, b), i / count))]), {
        width: 1.2,
        colour: "#6b4a28",
        opacity: 0.8,
      });
    }
  }

  private hatch(outlines: readonly (readonly P2[])[]): void {
    const all = outlines.flat();
    const [x0, x1, y0, y1] = [
      Math.min(...all.map((p) => p[0])),
      Math.max(...all.map((p) => p[0])),
      Math.min(...all.map((p) => p[1])),
      Math.max(...all.map((p) => p[1])),
    ];
    this.sketch.within(outlines, () => {
      for (let x = x0 - (y1 - y0); x < x1; x += 9)
        this.sketch.line(
          [
            [x, y1],
            [x + (y1 - y0) * 0.8, y0],
          ],
          { width: 1.1, opacity: 0.45 },
        );
    });
  }
}

function area(profile: readonly P2[]): number {
  return profile.reduce((sum, [x, y], i) => {
    const [X, Y] = profile[(i + 1) % profile.length] ?? [0, 0];
    return sum + x * Y - X * y;
  }, 0);
}

function sides(outline: readonly P2[], place: (point: P2, k: number) => V3, w: V3, sense: number): Face[] {
  return outline.map((point, i) => {
    const next = outline[(i + 1) % outline.length] ?? point;
    const [a, b, c, d] = [place(point, 0), place(next, 0), place(next, 1), place(point, 1)];
    return { outlines: [[a, b, c, d]], normal: unit(times(cross(sub(b, a), w), sense)), cap: false };
  });
}
