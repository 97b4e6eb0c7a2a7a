import type { OutputInfo, Sharp, SharpOptions } from "sharp";
import { RECIPE, widthsFor } from "./recipe.ts";

/** A derivative in memory. `name` is its file name in the cache. */
interface Derivative {
  readonly name: string;
  readonly bytes: Buffer;
}

/** `width` and `height` are those of the upright original; `colour` is a CSS colour. */
export interface Derived {
  readonly width: number;
  readonly height: number;
  readonly colour: string;
  readonly widths: readonly number[];
  readonly files: readonly Derivative[];
}

interface Raw {
  readonly data: Buffer;
  readonly info: OutputInfo;
}

type MakeSharp = (input: Buffer, options?: SharpOptions) => Sharp;

const MINIATURE = 64;

let loaded: Promise<MakeSharp> | undefined;

/** sharp is large: it is loaded only where there is a picture to decode. */
function sharpOnce(): Promise<MakeSharp> {
  loaded ??= import("sharp").then(({ default: sharp }) => {
    sharp.concurrency(1);
    sharp.cache(false);
    return sharp;
  });
  return loaded;
}

const reading = { failOn: "error", limitInputPixels: RECIPE.mostPixels } as const satisfies SharpOptions;

/**
 * All widths and formats of a picture, from one decoding: upright, in sRGB, on white, without metadata.
 * Throws sharp's own error for what it cannot decode.
 */
export async function derivePicture(original: Buffer): Promise<Derived> {
  const sharp = await sharpOnce();
  const { width, height } = await uprightSize(sharp, original);
  const widths = widthsFor(width);
  const widest = await raw(
    sharp(original, reading)
      .autoOrient()
      .resize({ width: widths[widths.length - 1], withoutEnlargement: true }),
  );
  const files: Derivative[] = [];
  for (const each of widths) {
    const sized = each === widest.info.width ? widest : await raw(again(sharp, widest).resize({ width: each }));
    files.push({ name: `${each}.webp`, bytes: await again(sharp, sized).webp(RECIPE.webp).toBuffer() });
    files.push({ name: `${each}.jpg`, bytes: await again(sharp, sized).jpeg(RECIPE.jpeg).toBuffer() });
  }
  return { width, height, colour: await colourOf(sharp, widest), widths, files };
}

/** One JPEG of a picture that is offered as a document: readable, upright, without metadata. */
export async function deriveDocument(original: Buffer): Promise<Buffer> {
  const sharp = await sharpOnce();
  const { longest, quality } = RECIPE.document;
  const upright = sharp(original, reading)
    .autoOrient()
    .resize({ width: longest, height: longest, fit: "inside", withoutEnlargement: true });
  return upright.flatten({ background: "#ffffff" }).toColourspace("srgb").jpeg({ quality }).toBuffer();
}

async function uprightSize(sharp: MakeSharp, original: Buffer): Promise<{ width: number; height: number }> {
  const { autoOrient } = await sharp(original, reading).metadata();
  return autoOrient;
}

function raw(image: Sharp): Promise<Raw> {
  return image.flatten({ background: "#ffffff" }).toColourspace("srgb").raw().toBuffer({ resolveWithObject: true });
}

function again(sharp: MakeSharp, { data, info }: Raw): Sharp {
  return sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } });
}

/** Of a miniature: statistics of the whole picture cost as much as decoding it. */
async function colourOf(sharp: MakeSharp, image: Raw): Promise<string> {
  const small = await raw(again(sharp, image).resize({ width: MINIATURE }));
  const { dominant } = await again(sharp, small).stats();
  return `#${[dominant.r, dominant.g, dominant.b].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}
