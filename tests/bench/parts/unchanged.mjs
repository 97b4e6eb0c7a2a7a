/** Builds of a record with very many photographs of which none changed since the last. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { byTurns, inFolder, measuredNode, root } from "../measure.mjs";
import { declarePhotos, writeRecord } from "../record.mjs";
import { TIMES, times, told } from "../table.mjs";

const PER_ENTRY = 8;
export const AGAIN = "a build with nothing changed";
export const WALK = "walk of the record";

export async function unchanged({ many, rounds, dir }) {
  const { took, entries, first, decoders } = await measureUnchanged(many, rounds, dir);
  return {
    title: `${many} photographs in ${entries} entries, medians of ${rounds} rounds by turns`,
    heads: ["", ...TIMES],
    rows: [AGAIN, WALK].map((name) => [name, ...times(took.get(name), took.get(WALK))]),
    notes: [
      `The first build, which decoded them all, took ${told(first.cpu, 1)} s of processor time; of ${rounds} builds after it ${decoders} loaded the library that decodes pictures.`,
    ],
  };
}

/** What the first build took, then builds with nothing changed and walks by turns; how many of those builds could decode. */
export function measureUnchanged(many, rounds, dir) {
  return inFolder(dir, async (work) => {
    const content = join(work, "content");
    const entries = writeRecord(content, Math.ceil(many / PER_ENTRY));
    await writeSmallPhotos(join(content, "photos"), many);
    declarePhotos(content, entries, many, PER_ENTRY, "png");
    const build = () => measuredNode([join(root, ".build/cli.js"), "build", "--content", content], work);
    const first = build();
    if (!first.decodes) throw new Error("the first build decoded nothing: what is measured here would prove nothing");
    let decoders = 0;
    const again = () => {
      const took = build();
      if (took.decodes) decoders += 1;
      return took;
    };
    const took = byTurns(
      [
        { name: AGAIN, run: again },
        { name: WALK, run: () => measuredNode([join(root, "tests/bench/walk.mjs"), content], work) },
      ],
      rounds,
    );
    return { took, entries: entries.length, first, decoders };
  });
}

/** Each of another colour, so that each has derivatives of its own. */
async function writeSmallPhotos(folder, count) {
  mkdirSync(folder);
  for (let at = 0; at < count; at += 1) {
    const background = { r: at % 256, g: Math.floor(at / 256) * 5, b: 99 };
    writeFileSync(
      join(folder, `${at}.png`),
      await sharp({ create: { width: 48, height: 36, channels: 3, background } })
        .png()
        .toBuffer(),
    );
  }
}
