import sharp from "sharp";
import { HIGH, Sketch, WIDE } from "./sketch.ts";

export type Scene = (sketch: Sketch) => void;

const paper = sharp(
  Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDE}" height="${HIGH}"><defs><filter id="p" x="0" y="0" width="100%" height="100%">` +
      '<feTurbulence type="fractalNoise" baseFrequency="0.035 0.05" numOctaves="4" seed="7" result="n"/><feDiffuseLighting in="n" surfaceScale="1.1" lighting-color="#ffffff">' +
      '<feDistantLight azimuth="225" elevation="58"/></feDiffuseLighting><feColorMatrix type="matrix" values="0.5 0 0 0 0.57 0 0.5 0 0 0.565 0 0 0.5 0 0.55 0 0 0 0 1"/></filter></defs>' +
      '<rect width="100%" height="100%" filter="url(#p)"/></svg>',
  ),
)
  .png()
  .toBuffer();

/** A scene as the bytes of a JPEG on textured paper. */
export async function paint(name: string, draw: Scene): Promise<Buffer> {
  const sketch = new Sketch(name);
  draw(sketch);
  const { data, info } = await sharp(Buffer.from(sketch.svg())).raw().toBuffer({ resolveWithObject: true });
  return sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } })
    .composite([{ input: await paper, blend: "multiply" }])
    .flatten({ background: "#fdf9ee" })
    .jpeg({ quality: 68, mozjpeg: true })
    .toBuffer();
}
