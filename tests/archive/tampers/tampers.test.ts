/**
 * `npm run tampers` tries 3,000 tampers, a plain test run 150: of a bag's files, of zips and tar.gz, of parts, and of a record with seals
 * that are signed and stamped. What verify lets pass must give a reader the same as before, by readers that are not ours.
 */
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { command } from "../../cli/command.ts";
import { contentOf } from "../../publish/scratch.ts";
import { authorityIn } from "../authority.ts";
import { bagged, found, foundIn, hex, recordIn, tool } from "../make.ts";
import { Chance } from "./chance.ts";
import { tarTampered, zipTampered } from "./containers.ts";
import { type Files, OF_BAGS, OF_RECORDS } from "./edits.ts";

const TAMPERS = Number(process.env["SCARFLINE_TAMPERS"] ?? "150");
const share = (of: number): number[] => Array.from({ length: Math.ceil(TAMPERS * of) }, (_, index) => index);
const SPLIT = ["--split", "400 kB"];

let folder: string;
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), "scarfline-test-"))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const filesOf = (path: string): Files =>
  new Map([...contentOf(path)].map(([name, text]) => [name, Buffer.from(text, "latin1")]));
const isFaultless = (told: readonly string[]): boolean => !told.some((each) => each.startsWith("fault"));

/** Whether a reader gets all of this, and nothing more; tag manifests are no part of what is read. */
function isSame(now: Files, before: Files): boolean {
  const read = (files: Files): string =>
    [...files]
      .filter(([path]) => !/(^|\/)tagmanifest-\w+\.txt$/.test(path))
      .map(([path, bytes]) => `${path} ${hex("sha256", bytes)}`)
      .sort()
      .join("\n");
  return read(now) === read(before);
}

function written(at: string, files: Files): boolean {
  rmSync(at, { recursive: true, force: true });
  try {
    for (const [path, bytes] of files) {
      mkdirSync(dirname(join(at, path)), { recursive: true });
      writeFileSync(join(at, path), bytes);
    }
    return true;
  } catch {
    // A file and a folder of one name cannot both be on a disk.
    return false;
  }
}

describe("None of these tampers passes and changes what a reader gets", { timeout: 3_600_000 }, () => {
  it("of a bag's files", async () => {
    const before = filesOf(await bagged(join(folder, "plain")));
    expect(await foundIn(before)).toEqual([]);
    const passed: string[] = [];
    for (const index of share(0.5)) {
      const chance = new Chance(`bag ${index}`);
      const files = new Map(before);
      const what = chance.of(OF_BAGS)(files, chance);
      if (isFaultless(await foundIn(files)) && !isSame(files, before)) passed.push(`${index}: ${what}`);
    }
    expect(passed).toEqual([]);
  });

  it.each([
    ["zip", zipTampered, (file: string, to: string) => tool("unzip", ["-qq", "-o", file, "-d", to], folder)],
    ["tar.gz", tarTampered, (file: string, to: string) => tool("tar", ["-xzf", file, "-C", to], folder)],
  ] as const)("of a %s", async (form, tampered, unpack) => {
    const path = await bagged(join(folder, form), {}, ["--serialise", form]);
    const whole = readFileSync(path);
    const unpacked = (file: string): Files => {
      const to = join(folder, `${form}-unpacked`);
      rmSync(to, { recursive: true, force: true });
      mkdirSync(to);
      unpack(file, to);
      return filesOf(to);
    };
    const before = unpacked(path);
    expect(before.size).toBeGreaterThan(20);
    const passed: string[] = [];
    for (const index of share(0.2)) {
      const { bytes, what } = tampered(whole, new Chance(`${form} ${index}`));
      const file = join(folder, `tampered.${form}`);
      writeFileSync(file, bytes);
      const told = await found(file).catch((error: Error) => [`fault: ${error.message}`]);
      if (isFaultless(told) && !isSame(unpacked(file), before)) passed.push(`${index}: ${what}`);
    }
    expect(passed).toEqual([]);
  });

  it("of parts", async () => {
    const path = await bagged(join(folder, "parts"), { "papers/long.txt": "1".repeat(300_000) }, SPLIT);
    const other = await bagged(join(folder, "others"), { "papers/long.txt": "2".repeat(300_000) }, SPLIT);
    const before = filesOf(path);
    const names = readdirSync(path).sort();
    const passed: string[] = [];
    for (const index of share(0.05)) {
      const chance = new Chance(`parts ${index}`);
      const [at, part] = [join(folder, "tampered-parts"), chance.of(names)];
      rmSync(at, { recursive: true, force: true });
      cpSync(path, at, { recursive: true });
      const kind = chance.of(["gone", "of another bag", "twice", "only"]);
      if (kind === "gone") rmSync(join(at, part), { recursive: true });
      if (kind === "of another bag") cpSync(join(other, part), join(at, part), { recursive: true });
      if (kind === "twice") cpSync(join(at, part), join(at, `${part}-again`), { recursive: true });
      if (kind === "only")
        for (const name of names.filter((each) => each !== part)) rmSync(join(at, name), { recursive: true });
      if (isFaultless(await found(at)) && !isSame(filesOf(at), before)) passed.push(`${index}: ${part} ${kind}`);
    }
    expect(passed).toEqual([]);
  });

  it("of a record with seals, signatures and a stamp, where the signer, the authority and the last seal are known", async () => {
    const content = await recordIn(join(folder, "record"));
    const key = join(folder, "key");
    tool("ssh-keygen", ["-q", "-t", "ed25519", "-N", "", "-C", "builder", "-f", key], folder);
    const signers = join(folder, "signers");
    writeFileSync(signers, `ansa@example.org ${readFileSync(`${key}.pub`, "utf8")}`);
    const authority = authorityIn(folder, "example");
    await command(["seal", "--content", content, "--date", "2021-04-01", "--sign", key, "--stamp"]);
    const reply = authority.reply(join(content, "seals/2021-04-01.tsq"), "2021-04-02 09:00:00");
    await command(["seal", "--content", content, "--reply", reply, "--authority", authority.root]);
    writeFileSync(join(content, "papers/new.txt"), "new");
    await command(["seal", "--content", content, "--date", "2021-05-01", "--sign", key]);
    const known = hex("sha256", readFileSync(join(content, "seals.txt")));
    const before = filesOf(content);
    // A signature may be written in other lines and still be the same; verify asks for each.
    const read = (files: Files): Files => new Map([...files].filter(([path]) => !path.endsWith(".sig")));
    const at = join(folder, "tampered-record");
    const verified = () =>
      command(["verify", at, "--signers", signers, "--authority", authority.root, "--seal", known]);
    written(at, before);
    expect(await verified()).toMatchObject({ code: 0, err: "" });
    const passed: string[] = [];
    for (const index of share(0.05)) {
      const chance = new Chance(`record ${index}`);
      const files = new Map(before);
      const what = chance.of(OF_RECORDS)(files, chance);
      if (!written(at, files)) continue;
      const { code } = await verified();
      if (code === 0 && !isSame(read(files), read(before))) passed.push(`${index}: ${what}`);
    }
    expect(passed).toEqual([]);
  });
});
