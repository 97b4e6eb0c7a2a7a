import { appendFileSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { hex, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const sealOn = (content: string, date: string, ...more: string[]) =>
  command(["seal", "--content", content, "--date", date, ...more]);
const verify = (content: string, ...more: string[]) => command(["verify", content, ...more]);
const ENTRY = "entries/2021-03-08-second.md";

/** A record with a seal for each date, and before each but the first a change. */
async function sealed(
  changes: readonly (readonly [date: string, change: (content: string) => void])[],
): Promise<string> {
  const content = await recordIn(scratch());
  for (const [date, change] of changes) {
    change(content);
    expect(await sealOn(content, date)).toMatchObject({ code: 0, err: "" });
  }
  return content;
}

const nothing = (): void => undefined;
const paper =
  (text: string) =>
  (content: string): void =>
    writeFileSync(join(content, "papers/letter.txt"), text);

describe("scarfline verify says what became of a file since which seal", () => {
  it("what changed, is missing and was added since the last one; what was added is no fault", async () => {
    const content = await sealed([["2021-04-01", nothing]]);
    writeFileSync(join(content, "entries/2021-04-02-later.md"), "later");
    expect(await verify(content)).toEqual({
      code: 0,
      err: "",
      out: "entries/2021-04-02-later.md: added since the seal of 2021-04-01; not sealed yet\n10 files held against the seal up to 2021-04-01: what was sealed is as it was.\n",
    });
    appendFileSync(join(content, ENTRY), " ");
    rmSync(join(content, "papers/letter.txt"));
    expect(await verify(content)).toMatchObject({
      code: 1,
      err: `${ENTRY}: changed since the seal of 2021-04-01\npapers/letter.txt: missing since the seal of 2021-04-01\n`,
      out: expect.stringContaining("9 files held against the seal up to 2021-04-01: 2 faults.\n"),
    });
  });

  it("since when a file had been the same, and to which seal's state it was put back", async () => {
    const content = await sealed([
      ["2021-04-01", paper("one")],
      ["2021-04-01", paper("two")],
      ["2021-05-01", (folder) => appendFileSync(join(folder, ENTRY), "More.\n")],
      ["2021-06-01", paper("three")],
    ]);
    rmSync(join(content, "aircraft.md"));
    appendFileSync(join(content, ENTRY), "Yet more.\n");
    paper("two")(content);
    expect((await verify(content)).err).toBe(
      [
        "aircraft.md: missing since the seal of 2021-06-01; it had been the same since the seal of 2021-04-01",
        `${ENTRY}: changed since the seal of 2021-06-01; it had been the same since the seal of 2021-05-01`,
        "papers/letter.txt: changed since the seal of 2021-06-01; it is as it was at the seal of 2021-05-01",
        "",
      ].join("\n"),
    );
    paper("one")(content);
    expect((await verify(content)).err).toContain(
      "papers/letter.txt: changed since the seal of 2021-06-01; it is as it was at the seal of 2021-04-01\n",
    );
  });

  it("what was renamed, where the same bytes are at one new place", async () => {
    const content = await sealed([["2021-04-01", nothing]]);
    renameSync(join(content, ENTRY), join(content, "entries/2021-03-09-second.md"));
    const { err, out } = await verify(content);
    expect(err).toBe(
      `${ENTRY}: renamed since the seal of 2021-04-01: the same bytes are at entries/2021-03-09-second.md now\n`,
    );
    expect(out).not.toContain("added");
    writeFileSync(
      join(content, "entries/2021-03-10-second.md"),
      readFileSync(join(content, "entries/2021-03-09-second.md")),
    );
    expect((await verify(content)).err).toBe(`${ENTRY}: missing since the seal of 2021-04-01\n`);
  });

  it("what was changed, renamed and taken away between two seals, those of one day too", async () => {
    const content = await sealed([
      ["2021-04-01", (folder) => writeAll(folder, { "papers/kept.txt": "kept", "papers/gone.txt": "gone" })],
      ["2021-04-01", paper("two")],
      [
        "2021-05-01",
        (folder) => {
          renameSync(join(folder, "papers/kept.txt"), join(folder, "papers/moved.txt"));
          rmSync(join(folder, "papers/gone.txt"));
        },
      ],
    ]);
    expect(await verify(content)).toEqual({
      code: 0,
      err: "",
      out: [
        "papers/letter.txt: changed between the seal of 2021-04-01 and the seal of 2021-04-01 (number 2 of that day)",
        "papers/gone.txt: taken away between the seal of 2021-04-01 (number 2 of that day) and the seal of 2021-05-01",
        "papers/kept.txt: renamed to papers/moved.txt between the seal of 2021-04-01 (number 2 of that day) and the seal of 2021-05-01",
        "10 files held against all 3 seals up to 2021-05-01: what was sealed is as it was.",
        "",
      ].join("\n"),
    });
  });

  it("an entry that a later one amends is as it was, and only the amending one was added", async () => {
    const content = await sealed([["2021-04-01", nothing]]);
    writeFileSync(
      join(content, "entries/2021-04-02-amends.md"),
      "---\ndate: 2021-04-02\ntitle: Put right\nassembly: fin\namends: [{ entry: 2021-03-08-second, why: misread }]\n---\n",
    );
    expect(await verify(content)).toMatchObject({
      code: 0,
      out: expect.stringMatching(
        /^entries\/2021-04-02-amends\.md: added since the seal of 2021-04-01; not sealed yet\n10 files held/,
      ),
    });
    expect(await sealOn(content, "2021-05-01")).toMatchObject({ code: 0 });
    expect(await verify(content)).toMatchObject({
      code: 0,
      out: "10 files held against all 2 seals up to 2021-05-01: what was sealed is as it was.\n",
    });
  });

  it("against the last seal that can be read, where the manifest of a later one is gone", async () => {
    const content = await sealed([
      ["2021-04-01", nothing],
      ["2021-05-01", paper("two")],
    ]);
    rmSync(join(content, "seals/2021-05-01.sha256"));
    expect((await verify(content)).err).toBe(
      "seals/2021-05-01.sha256: missing: the manifest of the seal of 2021-05-01\npapers/letter.txt: changed since the seal of 2021-04-01\n",
    );
  });
});

describe("A list of seals that lost its end", () => {
  const cut = (content: string, lines: number): string => {
    const path = join(content, "seals.txt");
    const list = readFileSync(path, "utf8");
    writeFileSync(
      path,
      list
        .split("\n")
        .slice(0, lines)
        .map((line) => `${line}\n`)
        .join(""),
    );
    return list;
  };

  it("is a fault while the manifests are there, and verify says the very lines that are lost", async () => {
    const content = await sealed([
      ["2021-04-01", nothing],
      ["2021-05-01", paper("two")],
      ["2021-05-01", paper("three")],
    ]);
    for (const kept of [1, 0]) {
      const list = cut(content, kept);
      const { code, err, out } = await verify(content);
      expect({ code, err }).toEqual({
        code: 1,
        err: expect.stringContaining(
          "seals/2021-05-01.sha256: no line of seals.txt names it: the list has lost its end, or someone put this file there\n",
        ),
      });
      expect(
        [...out.matchAll(/: as a seal after those in the list its line would be: (.*)\n/g)]
          .map(([, line]) => `${line}\n`)
          .join(""),
      ).toBe(list.split("\n").slice(kept).join("\n"));
      writeFileSync(join(content, "seals.txt"), list);
    }
    expect((await verify(content)).code).toBe(0);
  });

  it("lets no other seal be set, and loses nothing", async () => {
    const content = await sealed([
      ["2021-04-01", nothing],
      ["2021-05-01", paper("two")],
    ]);
    cut(content, 1);
    paper("three")(content);
    const before = contentOf(content);
    for (const date of ["2021-05-01", "2021-06-01"])
      expect(await sealOn(content, date)).toMatchObject({
        code: 2,
        err: "No line of seals.txt names seals/2021-05-01.sha256, so no other seal is set: the list seems to have lost its end. See what it was: scarfline verify\n",
      });
    expect(contentOf(content)).toEqual(before);
  });

  it("is proven by a signature that holds for the lost line", async () => {
    const content = await sealed([["2021-04-01", nothing]]);
    const keys = scratch();
    expect(
      tool("ssh-keygen", ["-q", "-t", "ed25519", "-N", "", "-C", "builder", "-f", join(keys, "builder")], keys).code,
    ).toBe(0);
    paper("two")(content);
    await sealOn(content, "2021-05-01", "--sign", join(keys, "builder"));
    cut(content, 1);
    expect((await verify(content)).err).toMatch(
      /seals\/2021-05-01\.sig: this signature by ED25519 key SHA256:\S+ holds for the list with that line: such a seal was signed, and the list has lost it\n/,
    );
    appendFileSync(join(content, "seals/2021-05-01.sha256"), `${"0".repeat(64)}  more.txt\n`);
    expect(await verify(content)).toMatchObject({
      code: 1,
      out: expect.stringContaining("seals/2021-05-01.sig: this signature is not of the list with that line\n"),
    });
  });

  it("is found out by a digest that is known from elsewhere when its manifests are gone too", async () => {
    const content = await sealed([
      ["2021-04-01", nothing],
      ["2021-05-01", paper("two")],
    ]);
    const known = hex("sha256", readFileSync(join(content, "seals.txt")));
    expect(await verify(content, "--seal", known)).toMatchObject({
      code: 0,
      out: expect.stringContaining(
        `seals.txt:2: this is the seal with the digest ${known}, the seal of 2021-05-01, the last\n`,
      ),
    });
    cut(content, 1);
    const first = hex("sha256", readFileSync(join(content, "seals.txt")));
    rmSync(join(content, "seals/2021-05-01.sha256"));
    paper("one")(content);
    await sealOn(content, "2021-05-02");
    expect((await verify(content)).code).toBe(0);
    expect(await verify(content, "--seal", known.slice(0, 16).toUpperCase())).toMatchObject({
      code: 1,
      err: `seals.txt: no seal here has the digest ${known.slice(0, 16)}: the list has lost seals, was written anew, or is of another record\n`,
    });
    expect(await verify(content, "--seal", first)).toMatchObject({
      code: 0,
      out: expect.stringContaining("the seal of 2021-04-01; 1 more came after it\n"),
    });
    expect(await verify(content, "--seal", "9f86")).toMatchObject({
      code: 2,
      err: expect.stringContaining("A digest is written as 16 to 64 of the digits"),
    });
  });
});

describe("A seal that was broken off before its line was written", () => {
  it("is no fault, is in no bag, and is cleared away by the next one on whatever day", async () => {
    const content = await sealed([["2021-04-01", nothing]]);
    writeAll(content, {
      "seals/.unfinished": "seals/2021-04-20.sha256\n",
      "seals/2021-04-20.sha256": `${"0".repeat(64)}  a.txt\n`,
      "seals/2021-04-20.sig": "half",
    });
    paper("two")(content);
    expect((await verify(content)).out).toContain(
      "seals/2021-04-20.sha256: of a seal that was broken off before it was set; the next seal clears it away\n",
    );
    const out = scratch();
    mkdirSync(join(out, "archive"));
    expect(await command(["bag", "--content", content, "--out", join(out, "archive")])).toMatchObject({ code: 0 });
    expect([...contentOf(out).keys()].filter((path) => path.includes("record/seals"))).toEqual([
      expect.stringMatching(/record\/seals\.txt$/),
      expect.stringMatching(/record\/seals\/2021-04-01\.sha256$/),
    ]);
    expect(await sealOn(content, "2021-05-01")).toMatchObject({ code: 0 });
    expect([...contentOf(content).keys()].filter((path) => path.startsWith("seals"))).toEqual([
      "seals.txt",
      "seals/2021-04-01.sha256",
      "seals/2021-05-01.sha256",
    ]);
    expect(await verify(content)).toMatchObject({ code: 0, err: "" });
  });
});
