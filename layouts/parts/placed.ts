/**
 * What a picture alone can say of its look: its colour before it comes, its place, its shape. A page's policy lets no
 * `style` attribute do it,
 * so that each is a class that says it in its name, and a page has the rules of those that stand in it.
 */

/** Of a window's height, so that a clip filmed upright can be seen whole. */
const TALLEST = 85;

const CALLED = /\b(?:tint-[\da-f]{6}|spot-m?[\d_]+-m?[\d_]+|frame-\d+-\d+)\b/g;

/** `colour` as `#84243a`; any other colour has no class. */
export function tintClass(colour: string | undefined): string | undefined {
  return colour !== undefined && /^#[\da-f]{6}$/i.test(colour) ? `tint-${colour.slice(1).toLowerCase()}` : undefined;
}

/** Both in percent of what it stands in. */
export function spotClass(left: number, top: number): string {
  return `spot-${named(left)}-${named(top)}`;
}

/** Of something so many pixels wide and high. */
export function frameClass(width: number, height: number): string {
  return `frame-${width}-${height}`;
}

/** Rules for all that is called in parts of a page. Each outdoes what the sheets say, as a `style` attribute would. */
export function placedRules(...parts: readonly string[]): string {
  const names = [...new Set(parts.flatMap((part) => part.match(CALLED) ?? []))].sort();
  return names.map((name) => `.${name}.${name}{${declarations(name.split("-"))}}`).join("");
}

function declarations([kind, first = "", second = ""]: readonly string[]): string {
  if (kind === "tint") return `background-color:#${first}`;
  if (kind === "spot") return `left:${value(first)}%;top:${value(second)}%`;
  return `aspect-ratio:${first}/${second};max-width:${Math.round((TALLEST * Number(first)) / Number(second))}vh`;
}

function named(percent: number): string {
  return String(percent).replace("-", "m").replace(".", "_");
}

function value(name: string): string {
  return name.replace("m", "-").replace("_", ".");
}
