/** How near derivatives come to their photographs, by SSIMULACRA: 0 where nobody sees a difference. */
import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import sharp from "sharp";
import { median } from "./measure.mjs";
import { told } from "./table.mjs";
import { hasTool } from "./tools.mjs";

const MEASURE = "ssimulacra_main";
const WIDTH = 1600;
const ENOUGH = 8;

/** A sentence on the widest pictures of the first round in `work`, ours and those of vipsthumbnail, held against the photographs made as small without loss. */
export async function likeness(work, files) {
  if (!hasTool(MEASURE)) return [];
  const found = { ours: [], theirs: [] };
  for (const file of files.slice(0, ENOUGH)) {
    const reference = join(work, "reference.png");
    await sharp(file).resize({ width: WIDTH }).png().toFile(reference);
    const digest = createHash("sha256").update(readFileSync(file)).digest("hex").slice(0, 20);
    for (const ending of ["webp", "jpg"]) {
      found.ours.push(await unlike(work, reference, join(work, `run-0/site/photos/${digest}-${WIDTH}.${ending}`)));
      const theirs = join(work, "vips-0", `${basename(file, ".jpg")}-${WIDTH}.${ending}`);
      if (hasTool("vipsthumbnail")) found.theirs.push(await unlike(work, reference, theirs));
    }
  }
  const [ours, theirs] = [median(found.ours), median(found.theirs)].map((value) => told(value, 4));
  return [
    `By SSIMULACRA, 0 being no difference that is seen, the widest of ours are ${ours} from their photographs, those of vipsthumbnail ${theirs}.`,
  ];
}

async function unlike(work, reference, file) {
  const decoded = join(work, "decoded.png");
  await sharp(file).png().toFile(decoded);
  return Number(execFileSync(MEASURE, [reference, decoded], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }));
}
