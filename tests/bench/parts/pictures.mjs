/** Derivatives of photographs against vipsthumbnail making the same six files of each; then the same site built with its pictures kept. */
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { byTurns, inFolder, measuredNode, measuredProgram, root } from "../measure.mjs";
import { declarePhotos, writeRecord } from "../record.mjs";
import { TIMES, times } from "../table.mjs";
import { hasTool } from "../tools.mjs";

const VIPS = "vipsthumbnail";
const OURS = "scarfline build";
const UNCHANGED = "the same site anew, its pictures kept";
const WIDTHS = [480, 960, 1600];
const ENDINGS = ["webp[Q=76,effort=2,strip]", "jpg[Q=80,strip]"];
const PER_ENTRY = 8;

export async function pictures({ photos, rounds, dir }) {
  const { took, yardstick, alone } = await measurePictures(photos, rounds, dir);
  return {
    title: `${photos} photographs of 12 megapixels, six files of each, medians of ${rounds} rounds by turns`,
    heads: ["", ...TIMES],
    rows: [
      ...[...took].map(([name, each]) => [name, ...times(each, yardstick)]),
      ["the pictures of it alone", ...times(alone, yardstick)],
    ],
    notes: [
      "Ours reads, checks and writes the record and its site as well; its pictures alone are what a build of the same site does not take where they are kept. Ratios are to vipsthumbnail where it is there.",
    ],
  };
}

/** What each took; `look` is shown the folder of it all before that is gone. */
export function measurePictures(photos, rounds, dir, look = () => undefined) {
  return inFolder(dir, async (work) => {
    const files = await writePhotos(work, photos);
    const ours = (round) =>
      measuredNode(
        [join(root, ".build/cli.js"), "build", "--fresh", "--content", join(work, "content")],
        folderOf(work, round),
      );
    const contestants = [
      { name: OURS, run: ours },
      ...(hasTool(VIPS) ? [{ name: VIPS, run: (round) => measuredProgram(thumbnails(files, work, round), work) }] : []),
      { name: UNCHANGED, run: ours },
      {
        name: "walk of the record",
        run: () => measuredNode([join(root, "tests/bench/walk.mjs"), join(work, "content")], work),
      },
    ];
    const took = byTurns(contestants, rounds);
    const without = (ours, again) => ({ seconds: ours.seconds - again.seconds, cpu: ours.cpu - again.cpu });
    const runs = took.get(OURS).runs.map((run, round) => without(run, took.get(UNCHANGED).runs[round]));
    const alone = { ...without(took.get(OURS), took.get(UNCHANGED)), runs };
    return { took, yardstick: took.get(VIPS) ?? took.get(OURS), alone, seen: await look(work, files) };
  });
}

/** To run in, with a cache and a site of its own: empty the first time in a round. */
function folderOf(work, round) {
  const folder = join(work, `run-${round}`);
  mkdirSync(folder, { recursive: true });
  return folder;
}

function thumbnails(files, work, round) {
  mkdirSync(join(work, `vips-${round}`));
  return WIDTHS.flatMap((width) =>
    ENDINGS.map((ending) => [
      VIPS,
      "--size",
      `${width}x`,
      "-o",
      join(work, `vips-${round}`, `%s-${width}.${ending}`),
      ...files,
    ]),
  );
}

/** Photographs with as much in them as a camera's: soft forms under grain. */
async function writePhotos(work, count) {
  const content = join(work, "content");
  const entries = writeRecord(content, Math.max(24, Math.ceil(count / PER_ENTRY)));
  mkdirSync(join(content, "photos"));
  const noise = (width, height, sigma) =>
    sharp({ create: { width, height, channels: 3, noise: { type: "gaussian", mean: 128, sigma } } });
  for (let at = 0; at < count; at += 1) {
    const forms = await noise(20, 15, 60).png().toBuffer();
    const grain = await noise(1000, 750, 12).png().toBuffer();
    const large = await sharp(forms)
      .resize(4000, 3000, { kernel: "cubic" })
      .composite([{ input: grain, tile: true, blend: "soft-light" }])
      .jpeg({ quality: 90 })
      .toBuffer();
    writeFileSync(join(content, `photos/${at}.jpg`), large);
  }
  declarePhotos(content, entries, count, PER_ENTRY, "jpg");
  return readdirSync(join(content, "photos")).map((name) => join(content, "photos", name));
}
