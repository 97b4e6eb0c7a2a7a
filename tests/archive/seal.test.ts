import { appendFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readRecord } from "../../src/record/read.ts";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { hex, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const sealOn = (content: string, date: string, ...more: string[]) =>
  command(["seal", "--content", content, "--date", date, ...more]);
const verify = (content: string, ...more: string[]) => command(["verify", content, ...more]);
const ENTRY = "entries/2021-03-08-second.md";

describe("scarfline seal", () => {
  it("adds one line to seals.txt and a manifest that sha256sum checks, and changes nothing else", async () => {
    const content = await recordIn(scratch());
    const before = contentOf(content);
    const { code, err } = await sealOn(content, "2021-04-01");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const manifest = readFileSync(join(content, "seals/2021-04-01.sha256"), "utf8");
    expect(readFileSync(join(content, "seals.txt"), "utf8")).toBe(
      `2021-04-01 ${hex("sha256", manifest)} ${hex("sha256", "")} ${before.size} seals/2021-04-01.sha256 form=2 rules=2\n`,
    );
    expect(
      manifest
        .trimEnd()
        .split("\n")
        .map((line) => line.slice(66)),
    ).toEqual([...before.keys()].sort());
    expect(tool("sha256sum", ["-c", "--quiet", "--strict", "seals/2021-04-01.sha256"], content)).toEqual({
      code: 0,
      out: "",
    });
    const after = contentOf(content);
    for (const added of ["seals.txt", "seals/2021-04-01.sha256"]) after.delete(added);
    expect(after).toEqual(before);
  });

  it("says so when nothing changed, and sets no other seal", async () => {
    const content = await recordIn(scratch());
    await sealOn(content, "2021-04-01");
    const before = contentOf(content);
    expect((await sealOn(content, "2021-05-01")).out).toContain(
      "Nothing changed since the seal of 2021-04-01; no other was set.\n",
    );
    expect(contentOf(content)).toEqual(before);
  });

  it("chains each seal to all lines before it, as head and sha256sum show", async () => {
    const content = await recordIn(scratch());
    for (const [index, date] of ["2021-04-01", "2021-04-01", "2021-05-02"].entries()) {
      writeFileSync(join(content, `papers/${index}.txt`), `${index}`);
      await sealOn(content, date);
    }
    const lines = readFileSync(join(content, "seals.txt"), "utf8").trimEnd().split("\n");
    expect(lines.map((line) => line.split(" ")[4])).toEqual([
      "seals/2021-04-01.sha256",
      "seals/2021-04-01-2.sha256",
      "seals/2021-05-02.sha256",
    ]);
    for (const [index, line] of lines.entries()) {
      expect(tool("sh", ["-c", `head -n ${index} seals.txt | sha256sum`], content).out.slice(0, 64)).toBe(
        line.split(" ")[2],
      );
    }
  });

  it("seals no record with problems, on no day to come, and none before the last", async () => {
    const content = await recordIn(scratch());
    await sealOn(content, "2021-04-01");
    const before = contentOf(content);
    expect((await sealOn(content, "2022-01-01")).code).toBe(2);
    appendFileSync(join(content, ENTRY), "\n[nowhere](nothing-here)\n");
    expect(await sealOn(content, "2021-05-01")).toMatchObject({
      code: 1,
      err: expect.stringContaining("Nothing was sealed."),
    });
    writeFileSync(join(content, ENTRY), before.get(ENTRY) ?? "", "latin1");
    writeFileSync(join(content, "papers/new.txt"), "new");
    expect(await sealOn(content, "2021-03-20")).toMatchObject({
      code: 2,
      err: "The last seal is of 2021-04-01; one of 2021-03-20 cannot come after it.\n",
    });
    rmSync(join(content, "papers/new.txt"));
    expect(contentOf(content)).toEqual(before);
  });

  it("leaves the reader of the record blind to seals", async () => {
    const content = await recordIn(scratch());
    const before = await readRecord(content);
    await sealOn(content, "2021-04-01");
    writeFileSync(join(content, "seals/entries.md"), "---\nnot: a record\n---\n");
    expect(await readRecord(content)).toEqual(before);
  });
});

describe("scarfline verify of a record", () => {
  it("says plainly that a record without a seal cannot be held against anything", async () => {
    const content = await recordIn(scratch());
    expect((await verify(content)).out).toBe(
      `There is no seal in ${content}, so nothing can be said of it. Set one: scarfline seal\n`,
    );
  });

  it.each([
    [
      "a digit of a digest",
      (text: string) => text.replace(/ [0-9a-f]/, " x"),
      "seals.txt:1: this line is no seal: it is not as the program wrote it",
    ],
    [
      "a date",
      (text: string) => text.replace("2021-04-01 ", "2021-04-02 "),
      "seals.txt:2: the lines before this seal are not those it was set after",
    ],
    [
      "a line taken away",
      (text: string) => text.slice(text.indexOf("\n") + 1),
      "seals.txt:1: the lines before this seal are not those it was set after",
    ],
    ["a line end", (text: string) => text.replace("\n", "\r\n"), "seals.txt:1: this line is no seal"],
  ])("finds that the list of seals was changed: %s", async (_what, change, says) => {
    const content = await recordIn(scratch());
    await sealOn(content, "2021-04-01");
    writeFileSync(join(content, "papers/new.txt"), "new");
    await sealOn(content, "2021-05-01");
    const path = join(content, "seals.txt");
    writeFileSync(path, change(readFileSync(path, "utf8")));
    expect(await verify(content)).toMatchObject({ code: 1, err: expect.stringContaining(says) });
    writeFileSync(join(content, "papers/other.txt"), "new");
    expect(await sealOn(content, "2021-05-02")).toMatchObject({
      code: 2,
      err: expect.stringContaining("The seals so far are not whole"),
    });
  });

  it("finds that a manifest of a seal was changed or taken away", async () => {
    const content = await recordIn(scratch());
    await sealOn(content, "2021-04-01");
    const path = join(content, "seals/2021-04-01.sha256");
    appendFileSync(path, "\n");
    expect((await verify(content)).err).toBe(
      "seals/2021-04-01.sha256: changed: its SHA-256 is not the one that the seal of 2021-04-01 has in seals.txt\n",
    );
    rmSync(path);
    expect((await verify(content)).err).toBe(
      "seals/2021-04-01.sha256: missing: the manifest of the seal of 2021-04-01\n",
    );
  });
});

describe("A seal that is signed", () => {
  function keyIn(folder: string, name: string): string {
    mkdirSync(folder, { recursive: true });
    const key = join(folder, name);
    expect(tool("ssh-keygen", ["-q", "-t", "ed25519", "-N", "", "-C", name, "-f", key], folder).code).toBe(0);
    return key;
  }

  it("is checked by ssh-keygen and by verify, against a list of signers and without one", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    const key = keyIn(folder, "builder");
    await sealOn(content, "2021-04-01");
    writeFileSync(join(content, "papers/new.txt"), "new");
    expect((await sealOn(content, "2021-05-01", "--sign", key)).code).toBe(0);
    const signers = join(folder, "signers");
    writeFileSync(signers, `ansa@example.org ${readFileSync(`${key}.pub`, "utf8")}`);
    const checked = tool(
      "sh",
      [
        "-c",
        `head -n 2 seals.txt | ssh-keygen -Y verify -f '${signers}' -I ansa@example.org -n scarfline-seal -s seals/2021-05-01.sig`,
      ],
      content,
    );
    expect(checked).toEqual({
      code: 0,
      out: expect.stringContaining('Good "scarfline-seal" signature for ansa@example.org'),
    });
    expect(await verify(content, "--signers", signers)).toMatchObject({
      code: 1,
      err: `seals/2021-04-01.sig: missing: the seal of 2021-04-01 is not signed by one of those in ${signers}. Whoever set it can still sign it: head -n 1 seals.txt | ssh-keygen -Y sign -n scarfline-seal -f KEY > seals/2021-04-01.sig\n`,
      out: expect.stringContaining(
        "seals/2021-05-01.sig: the seal of 2021-05-01 is signed by ansa@example.org with ED25519 key SHA256:",
      ),
    });
    expect(await verify(content)).toMatchObject({
      code: 0,
      out: expect.stringMatching(/is signed with ED25519 key SHA256:\S+; whose key that is was not checked/),
    });
  });

  it("does not hold for another list of seals, another signer or another use of the key", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    const key = keyIn(folder, "builder");
    const signers = join(folder, "signers");
    await sealOn(content, "2021-04-01", "--sign", key);
    writeFileSync(signers, `other@example.org ${readFileSync(`${keyIn(folder, "other")}.pub`, "utf8")}`);
    expect(await verify(content, "--signers", signers)).toMatchObject({
      code: 1,
      err: `seals/2021-04-01.sig: the signature of the seal of 2021-04-01 does not hold: the key is none of those in ${signers}\n`,
    });
    const list = readFileSync(join(content, "seals.txt"), "utf8");
    const forged = tool("ssh-keygen", ["-Y", "sign", "-f", key, "-n", "file"], folder, list).out;
    writeFileSync(join(content, "seals/2021-04-01.sig"), forged);
    expect(await verify(content)).toMatchObject({
      code: 1,
      err: expect.stringContaining("the signature of the seal of 2021-04-01 does not hold"),
    });
    writeFileSync(
      join(content, "seals/2021-04-01.sig"),
      tool("ssh-keygen", ["-Y", "sign", "-f", key, "-n", "scarfline-seal"], folder, `${list} `).out,
    );
    expect(await verify(content)).toMatchObject({ code: 1, err: expect.stringContaining("does not hold") });
  });

  it("is not set at all where the key cannot sign", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    expect(await sealOn(content, "2021-04-01", "--sign", join(folder, "no-such-key"))).toMatchObject({
      code: 2,
      err: expect.stringContaining("ssh-keygen did not sign with"),
    });
    expect(existsSync(join(content, "seals.txt"))).toBe(false);
  });
});
