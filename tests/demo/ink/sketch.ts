import { INK, mix } from "./colour.ts";
import { randomOf, between, type Random } from "./random.ts";
import type { P2 } from "./space.ts";

export const WIDE = 1600;
export const HIGH = 1067;

export interface Stroke {
  readonly width?: number;
  readonly colour?: string;
  readonly opacity?: number;
}

const n = (value: number): string => value.toFixed(1);

export function pathOf(points: readonly P2[], closed = false): string {
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${n(x)} ${n(y)}`).join("") + (closed ? "Z" : "");
}

/**
 * A picture in the making: a layer of washes and a layer of ink that lies over it. A face goes into both, in the ink
 * as white, so that what stands in front hides the lines behind it while the two layers keep their own wobble.
 */
export class Sketch {
  readonly random: Random;
  private readonly wash: string[] = [];
  private readonly ink: string[] = [];
  private readonly defs: string[] = [];
  private ids = 0;

  constructor(readonly name: string) {
    this.random = randomOf(name);
  }

  between(least: number, most: number): number {
    return between(this.random, least, most);
  }

  /** An area with a wash, uneven as a brush leaves it; several outlines make holes. */
  face(outlines: readonly (readonly P2[])[], colour: string, stroke?: Stroke | "none"): void {
    const d = outlines.map((outline) => pathOf(outline, true)).join("");
    const id = this.id("g");
    const [x, y] = [this.between(0, 1), this.between(0, 1)];
    this.defs.push(
      `<linearGradient id="${id}" x1="${n(x)}" y1="${n(y)}" x2="${n(1 - x)}" y2="${n(1 - y)}"><stop stop-color="${mix(colour, "#ffffff", 0.13)}"/>` +
        `<stop offset="1" stop-color="${mix(colour, "#4a3f3a", 0.1)}"/></linearGradient>`,
    );
    this.wash.push(`<path d="${d}" fill="url(#${id})" fill-rule="evenodd"/>`);
    const line =
      stroke === "none"
        ? ""
        : ` stroke="${stroke?.colour ?? INK}" stroke-width="${stroke?.width ?? 2.4}" stroke-linejoin="round"`;
    this.ink.push(`<path d="${d}" fill="#fff" fill-rule="evenodd"${line}/>`);
  }

  /** Hides what lies behind, in the ink only. */
  mask(outline: readonly P2[]): void {
    this.ink.push(`<path d="${pathOf(outline, true)}" fill="#fff"/>`);
  }

  /** A wash without a line: a shadow, a glow, a stain. */
  tint(outline: readonly P2[], colour: string, opacity: number, soft = 0): void {
    const filter = soft > 0 ? ` filter="url(#soft${soft > 12 ? "er" : ""})"` : "";
    this.wash.push(`<path d="${pathOf(outline, true)}" fill="${colour}" opacity="${opacity}"${filter}/>`);
  }

  line(points: readonly P2[], stroke: Stroke = {}): void {
    this.ink.push(
      `<path d="${pathOf(points)}" fill="none" stroke="${stroke.colour ?? INK}" stroke-width="${n(stroke.width ?? 2)}"` +
        ` stroke-linecap="round" stroke-linejoin="round" opacity="${stroke.opacity ?? 1}"/>`,
    );
  }

  /** A coloured brush line, in the washes. */
  brush(points: readonly P2[], colour: string, width: number, opacity = 1): void {
    this.wash.push(
      `<path d="${pathOf(points)}" fill="none" stroke="${colour}" stroke-width="${n(width)}" stroke-linecap="round" opacity="${opacity}"/>`,
    );
  }

  /** Draws into the inside of an outline only. */
  within(outlines: readonly (readonly P2[])[], draw: () => void): void {
    const id = this.id("c");
    const d = outlines.map((outline) => pathOf(outline, true)).join("");
    this.defs.push(`<clipPath id="${id}"><path d="${d}" clip-rule="evenodd"/></clipPath>`);
    for (const layer of [this.wash, this.ink]) layer.push(`<g clip-path="url(#${id})">`);
    draw();
    for (const layer of [this.wash, this.ink]) layer.push("</g>");
  }

  private id(kind: string): string {
    this.ids += 1;
    return `${kind}${this.ids}`;
  }

  svg(): string {
    const seed = Math.floor(this.random() * 90) + 1;
    const wobble = (id: string, frequency: number, scale: number, k: number): string =>
      `<filter id="${id}" x="0" y="0" width="${WIDE}" height="${HIGH}" filterUnits="userSpaceOnUse">` +
      `<feTurbulence type="fractalNoise" baseFrequency="${frequency}" numOctaves="2" seed="${seed + k}"/>` +
      `<feDisplacementMap in="SourceGraphic" scale="${scale}" xChannelSelector="R" yChannelSelector="G"/></filter>`;
    const soft = (id: string, deviation: number): string =>
      `<filter id="${id}" x="-30%" y="-30%" width="160%" height="160%"><feGaussianBlur stdDeviation="${deviation}"/></filter>`;
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDE} ${HIGH}" width="${WIDE}" height="${HIGH}"><defs>${this.defs.join("")}` +
      wobble("loose", 0.012, 13, 0) +
      wobble("hand", 0.02, 5, 40) +
      soft("soft", 6) +
      soft("softer", 26) +
      "</defs>" +
      `<rect width="${WIDE}" height="${HIGH}" fill="#fdf9ee"/><g filter="url(#loose)">${this.wash.join("")}</g>` +
      `<g style="mix-blend-mode:multiply" filter="url(#hand)"><rect width="${WIDE}" height="${HIGH}" fill="#fff"/>${this.ink.join("")}</g></svg>`
    );
  }
}
