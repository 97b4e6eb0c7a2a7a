import { mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contentOf } from "../../publish/scratch.ts";
import { bagged, found, foundIn, hex } from "../make.ts";

/** Numbers that look like chance and are the same on each run: which byte is changed, and to what. */
function* numbers(): Generator<number, never> {
  for (let index = 0; ; index += 1) yield Number.parseInt(hex("sha256", `${index}`).slice(0, 12), 16);
}

describe("A bag of some two hundred files", { timeout: 600_000 }, () => {
  let folder: string;
  let bag: string;
  let files: Map<string, string>;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "scarfline-test-"));
    bag = await bagged(
      folder,
      Object.fromEntries(
        Array.from({ length: 140 }, (_, index) => [`papers/note-${index}.txt`, `Note ${index}, of some length\n`]),
      ),
    );
    files = contentOf(bag);
    expect(files.size).toBeGreaterThan(200);
    expect(await found(bag)).toEqual([]);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  /** The bag's files, all as they are but for one. */
  const but = (path: string, bytes: Buffer): Map<string, Buffer> =>
    new Map([...files].map(([each, text]) => [each, each === path ? bytes : Buffer.from(text, "latin1")]));
  const putBack = (path: string): void => writeFileSync(join(bag, path), Buffer.from(files.get(path) ?? "", "latin1"));

  it("is found out when any byte of any one file is changed", async () => {
    const random = numbers();
    const unseen: string[] = [];
    for (const [path, bytes] of files) {
      if (bytes.length === 0) continue;
      const changed = Buffer.from(bytes, "latin1");
      const at = random.next().value % bytes.length;
      changed[at] = ((changed[at] ?? 0) + 1 + (random.next().value % 255)) % 256;
      if (!(await foundIn(but(path, changed))).some((each) => each.includes(path))) unseen.push(`${path}, byte ${at}`);
    }
    expect(unseen).toEqual([]);
  });

  it("is found out when any byte of a tag manifest is changed, which nothing else vouches for", async () => {
    const path = "tagmanifest-sha256.txt";
    const bytes = Buffer.from(files.get(path) ?? "", "latin1");
    const unseen: string[] = [];
    for (let at = 0; at < bytes.length; at += 1) {
      const changed = Buffer.from(bytes);
      // The changes that are hardest to see: a capital for a small letter, another kind of blank, another end of line.
      changed[at] = (bytes[at] ?? 0) ^ (at % 2 === 0 ? 0x20 : 0x01);
      if ((await foundIn(but(path, changed))).length === 0)
        unseen.push(`byte ${at}: ${JSON.stringify(changed.toString("latin1", at - 5, at + 5))}`);
    }
    expect(unseen).toEqual([]);
  });

  it("is found out when any one file loses its end, or all it holds", async () => {
    const unseen: string[] = [];
    for (const [path, bytes] of files) {
      for (const length of new Set([0, bytes.length - 1])) {
        if (
          length < bytes.length &&
          (await foundIn(but(path, Buffer.from(bytes.slice(0, length), "latin1")))).length === 0
        )
          unseen.push(`${path} cut to ${length}`);
      }
    }
    expect(unseen).toEqual([]);
  });

  it("is found out in the same way on the disk", async () => {
    for (const [index, [path, bytes]] of [...files].entries()) {
      if (index % 10 !== 0 || bytes.length === 0) continue;
      truncateSync(join(bag, path), bytes.length - 1);
      expect(await found(bag), path).toEqual(await foundIn(but(path, Buffer.from(bytes.slice(0, -1), "latin1"))));
      putBack(path);
    }
  });

  it("is found out when any one file is taken away", async () => {
    const unseen: string[] = [];
    for (const path of files.keys()) {
      rmSync(join(bag, path));
      const told = await found(bag);
      if (told.length === 0) unseen.push(path);
      putBack(path);
    }
    expect(unseen).toEqual([]);
  });

  it("is found out when a file is added to any of its folders", async () => {
    const unseen: string[] = [];
    for (const place of new Set([...files.keys()].map((path) => dirname(path)))) {
      for (const name of ["added.txt", ".hidden", "Thumbs.db"]) {
        const path = join(bag, place, name);
        writeFileSync(path, "");
        if (!(await found(bag)).some((each) => each.includes(name))) unseen.push(join(place, name));
        rmSync(path);
      }
    }
    expect(unseen).toEqual([]);
  });
});
