/**
 * Draws the frames of the demonstration record's clip and has them coded: `npm run demo:film`. It needs `ffmpeg`; what it makes is kept with the record,
 * so that nothing else does.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { paint } from "./ink/paint.ts";
import { lampAt } from "./scenes/lamp.ts";

const FRAMES = 30;
const RATE = 12;
const [WIDE, HIGH] = [640, 426];

const out = fileURLToPath(new URL("../../content/clips/lamp.mp4", import.meta.url));
mkdirSync(join(out, ".."), { recursive: true });
const frames = mkdtempSync(join(tmpdir(), "scarfline-film-"));
try {
  for (let at = 0; at < FRAMES; at += 1) {
    // The same name each time: the hand that draws trembles alike in all of them.
    const drawn = await paint("lamp", (sketch) => lampAt(sketch, at / FRAMES));
    await sharp(drawn)
      .resize(WIDE, HIGH, { fit: "fill" })
      .png()
      .toFile(join(frames, `${String(at).padStart(3, "0")}.png`));
  }
  const coding = [
    "-c:v",
    "libx264",
    "-preset",
    "veryslow",
    "-crf",
    "30",
    "-pix_fmt",
    "yuv420p",
    "-threads",
    "1",
    "-fflags",
    "+bitexact",
    "-flags",
    "+bitexact",
    "-map_metadata",
    "-1",
  ];
  execFileSync("ffmpeg", [
    "-v",
    "error",
    "-y",
    "-framerate",
    String(RATE),
    "-i",
    join(frames, "%03d.png"),
    ...coding,
    out,
  ]);
} finally {
  rmSync(frames, { recursive: true });
}
console.log(`lamp.mp4  ${Math.round(statSync(out).size / 1000)} kB`);
