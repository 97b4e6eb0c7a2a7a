/** Vectors and a perspective camera. Lengths are in whatever unit a scene thinks in; z is up. */
export type V3 = readonly [number, number, number];
export type P2 = readonly [number, number];

export const add = (a: V3, b: V3): V3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: V3, b: V3): V3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: V3, k: number): V3 => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: V3, b: V3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const unit = (a: V3): V3 => times(a, 1 / Math.hypot(a[0], a[1], a[2]));
export const mean = (points: readonly V3[]): V3 => times(points.reduce(add, [0, 0, 0]), 1 / points.length);

export interface Camera {
  readonly eye: V3;
  /** To the picture, in its pixels. */
  readonly to: (point: V3) => P2;
}

/** A camera at `eye` that puts `target` at `centre` of the picture; `zoom` is pixels at unit distance. */
export function cameraAt(eye: V3, target: V3, zoom: number, centre: P2 = [800, 540]): Camera {
  const forward = unit(sub(target, eye));
  const right = unit(cross(forward, [0, 0, 1]));
  const up = cross(right, forward);
  const to = (point: V3): P2 => {
    const ray = sub(point, eye);
    const away = Math.max(dot(ray, forward), 0.02);
    return [centre[0] + (zoom * dot(ray, right)) / away, centre[1] - (zoom * dot(ray, up)) / away];
  };
  return { eye, to };
}

/** Smallest convex outline round points, counter-clockwise in the plane of x and y. */
export function hull(points: readonly P2[]): P2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: readonly P2[]): P2[] => {
    const out: P2[] = [];
    for (const point of list) {
      while (out.length > 1 && turn(out.at(-2), out.at(-1), point) <= 0) out.pop();
      out.push(point);
    }
    return out.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function turn(a: P2 = [0, 0], b: P2 = [0, 0], c: P2): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Points on an ellipse from one angle to another, in degrees. */
export function arc(centre: P2, rx: number, ry: number, from = 0, to = 360, steps = 40): P2[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [centre[0] + rx * Math.cos(angle), centre[1] + ry * Math.sin(angle)];
  });
}
