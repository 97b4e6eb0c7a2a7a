/** Washes. A colour is `#rrggbb`. */
export const WASH = {
  spruce: "#f3d592",
  birch: "#f2e2b8",
  ash: "#dcc7a0",
  bench: "#c9b08a",
  steel: "#aeb9be",
  iron: "#74797c",
  card: "#fbf6e6",
  amber: "#d98f2b",
  red: "#b4492f",
  blue: "#557d98",
  wall: "#e6decb",
  floor: "#b3a58d",
  night: "#5b6274",
  leaf: "#8a9468",
  sail: "#e6dfcb",
  brass: "#c9a24f",
  lead: "#8d9096",
  glass: "#dfe8e6",
  dark: "#5c5348",
  grey: "#c9c5ba",
} as const;

export const INK = "#2c2723";
const SHADE = "#3b3450";

function parts(colour: string): [number, number, number] {
  const at = (i: number): number => Number.parseInt(colour.slice(i, i + 2), 16);
  return [at(1), at(3), at(5)];
}

/** `share` of the second colour in the first. */
export function mix(first: string, second: string, share: number): string {
  const [r, g, b] = parts(first);
  const [R, G, B] = parts(second);
  const hex = (from: number, to: number): string =>
    Math.round(from + (to - from) * share)
      .toString(16)
      .padStart(2, "0");
  return `#${hex(r, R)}${hex(g, G)}${hex(b, B)}`;
}

/** A wash as it looks in light from 0 (turned away) to 1 (full). */
export function lit(colour: string, light: number): string {
  return light > 0.75 ? mix(colour, "#fffdf4", (light - 0.75) * 0.9) : mix(colour, SHADE, (0.75 - light) * 0.62);
}
