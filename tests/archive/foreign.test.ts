import bagitFs from "bagit-fs";
import { verify } from "bagit-tools";
import { appendFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";
import { setTimeout as pause } from "node:timers/promises";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";
import { bagged, bagIn, found } from "./make.ts";

const scratch = scratchFolders();

/** What another author's validator says of a bag; undefined for one that it finds valid. */
async function saidByOthers(folder: string, version = "1.0"): Promise<string | undefined> {
  return new Promise((resolve, reject) =>
    verify(folder, { version, test: true }, (error, isValid, results) => {
      if (error !== null) return reject(error);
      resolve(
        isValid
          ? undefined
          : results
              .filter(({ ok }) => ok === false)
              .map(({ name }) => name)
              .join("; "),
      );
    }),
  );
}

/** A bag that another author's library writes. */
async function byOthers(folder: string, algorithm: string, files: { readonly [path: string]: string }): Promise<void> {
  const bag = bagitFs(folder, algorithm, { "Contact-Name": "Ansa Example" });
  for (const [path, text] of Object.entries(files)) {
    const parent = path.split("/").slice(0, -1).join("/");
    if (parent !== "")
      await new Promise<void>((resolve, reject) =>
        bag.mkdir(parent, { recursive: true }, (error) => (error ? reject(error) : resolve())),
      );
    await pipeline([text], bag.createWriteStream(path));
    // The library tells the end of a file before it has written the line for it.
    while (
      !readdirSync(folder).includes(`manifest-${algorithm}.txt`) ||
      !readFileSync(join(folder, `manifest-${algorithm}.txt`), "utf8").includes(`data/${path}\n`) ||
      readFileSync(join(folder, "data", path), "utf8") !== text
    )
      await pause(5);
  }
  await promisify(bag.finalize.bind(bag))();
}

describe("A bag of ours, to another author's validator", () => {
  it("is valid, and is not with a byte changed, a file gone or a file added", async () => {
    const path = await bagged(scratch());
    expect(await saidByOthers(path)).toBeUndefined();
    const rules = readFileSync(join(path, "data/rules.json"));
    appendFileSync(join(path, "data/rules.json"), " ");
    expect(await saidByOthers(path)).toContain("no verification errors");
    writeFileSync(join(path, "data/rules.json"), rules);
    writeFileSync(join(path, "data/added.txt"), "");
    expect(await saidByOthers(path)).toContain("entries match file count");
    rmSync(join(path, "data/added.txt"));
    rmSync(join(path, "bagit.txt"));
    expect(await saidByOthers(path)).not.toBeUndefined();
  });

  it("is valid in every part", async () => {
    const path = await bagged(scratch(), {}, ["--split", "400 kB"]);
    for (const part of readdirSync(path)) expect(await saidByOthers(join(path, part))).toBeUndefined();
  });

  it("is judged as ours judges it, which the validator's own idea of a bag shows", async () => {
    const bag = bagIn(join(scratch(), "bag"), {
      files: { "data/a.txt": "a" },
      algorithms: ["md5", "sha512"],
      tagAlgorithms: ["sha1"],
    });
    expect([await saidByOthers(bag), (await found(bag)).filter((text) => text.startsWith("fault"))]).toEqual([
      undefined,
      [],
    ]);
  });
});

describe("A bag of another author's library", () => {
  it.each(["md5", "sha1", "sha256", "sha512"])(
    "is without a fault by %s, and with one when it was changed",
    async (algorithm) => {
      const folder = join(scratch(), "bag");
      await byOthers(folder, algorithm, {
        "a.txt": "one\n",
        "deep/er/b.txt": "two\n",
        "d\u00e9j\u00e0 vu.txt": "three",
      });
      expect(await saidByOthers(folder, "0.97")).toBeUndefined();
      const faults = async (): Promise<string[]> => (await found(folder)).filter((text) => text.startsWith("fault"));
      expect(await faults()).toEqual([]);
      appendFileSync(join(folder, "data/deep/er/b.txt"), "!");
      expect(await faults()).toEqual([
        `fault data/deep/er/b.txt: changed: its bytes are not those that manifest-${algorithm}.txt vouches for`,
      ]);
      rmSync(join(folder, "data/a.txt"));
      writeFileSync(join(folder, "data/new.txt"), "");
      expect(await faults()).toHaveLength(3);
    },
  );
});
