/** What `verify` finds by a file of signers. */
import { appendFileSync, cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const ENTRY = "entries/2021-03-08-second.md";
const sealOn = (content: string, date: string, ...more: string[]) =>
  command(["seal", "--content", content, "--date", date, ...more]);

describe("verify --signers", () => {
  /** A record whose one seal is signed, the key, and the file of its signer. */
  async function signed(): Promise<{ content: string; signers: string; key: string; folder: string }> {
    const folder = scratch();
    const content = await recordIn(folder);
    const key = keyIn(folder, "builder");
    const signers = join(folder, "signers");
    writeFileSync(signers, `ansa@example.org ${readFileSync(`${key}.pub`, "utf8")}`);
    await sealOn(content, "2021-04-01", "--sign", key);
    return { content, signers, key, folder };
  }

  function keyIn(folder: string, name: string): string {
    const key = join(folder, name);
    tool("ssh-keygen", ["-q", "-t", "ed25519", "-N", "", "-C", name, "-f", key], folder);
    return key;
  }

  const checked = (content: string, signers: string) => command(["verify", content, "--signers", signers]);

  it("holds a signed record for what it is", async () => {
    const { content, signers } = await signed();
    expect(await checked(content, signers)).toMatchObject({
      code: 0,
      err: "",
      out: expect.stringContaining(
        `what was sealed is as it was, and each seal is signed by one of those in ${signers}.`,
      ),
    });
  });

  it("finds out the record that was sealed anew without a key after a change", async () => {
    const { content, signers } = await signed();
    rmSync(join(content, "seals"), { recursive: true });
    rmSync(join(content, "seals.txt"));
    appendFileSync(join(content, ENTRY), "\nIt weighed less.\n");
    await sealOn(content, "2021-04-01");
    expect(await checked(content, signers)).toMatchObject({
      code: 1,
      err: expect.stringMatching(
        /^seals\/2021-04-01\.sig: missing: the seal of 2021-04-01 is not signed by one of those in /,
      ),
    });
  });

  it("finds out seals that are gone, a signature that is gone, and seals after the signed one that are not signed", async () => {
    const { content, signers, folder } = await signed();
    const bare = join(folder, "bare");
    cpSync(content, bare, { recursive: true });
    rmSync(join(bare, "seals"), { recursive: true });
    rmSync(join(bare, "seals.txt"));
    expect(await checked(bare, signers)).toMatchObject({
      code: 1,
      err: `seals.txt: there is no seal, so none is signed by one of those in ${signers}\n`,
    });
    appendFileSync(join(content, ENTRY), "\nMore.\n");
    await sealOn(content, "2021-05-01");
    expect((await checked(content, signers)).err).toMatch(/^seals\/2021-05-01\.sig: missing/);
    rmSync(join(content, "seals/2021-04-01.sig"));
    expect((await checked(content, signers)).err.split("\n")).toHaveLength(3);
  });

  it("finds out a seal signed by another key, for another use, or of another text", async () => {
    const { content, signers, key, folder } = await signed();
    const file = join(content, "seals/2021-04-01.sig");
    const list = readFileSync(join(content, "seals.txt"), "utf8");
    const other = keyIn(folder, "other");
    for (const [by, use, text] of [
      [other, "scarfline-seal", list],
      [key, "file", list],
      [key, "scarfline-seal", `${list}\n`],
    ] as const) {
      writeFileSync(file, tool("ssh-keygen", ["-Y", "sign", "-f", by, "-n", use], folder, text).out);
      expect(await checked(content, signers)).toMatchObject({ code: 1, err: expect.stringContaining("does not hold") });
    }
  });

  it("lets whoever holds the key sign a seal afterwards, by the very line it says", async () => {
    const { content, signers, key } = await signed();
    appendFileSync(join(content, ENTRY), "\nMore.\n");
    await sealOn(content, "2021-05-01");
    const { err } = await checked(content, signers);
    const line = err.slice(err.indexOf("head -n"), -1).replace("KEY", key);
    expect(tool("sh", ["-c", line], content).code).toBe(0);
    expect(await checked(content, signers)).toMatchObject({ code: 0, err: "" });
  });

  it("says when the file of signers is not there or names nobody", async () => {
    const { content, folder } = await signed();
    expect(await checked(content, join(folder, "none"))).toMatchObject({
      code: 2,
      err: expect.stringContaining("The file of allowed signers cannot be read"),
    });
    writeFileSync(join(folder, "empty"), "# nobody yet\n\n");
    expect(await checked(content, join(folder, "empty"))).toMatchObject({
      code: 2,
      err: expect.stringContaining("names no signer"),
    });
  });
});
