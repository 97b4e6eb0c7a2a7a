import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { handedOver } from "../../src/desk/hand-over/aircraft.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { isSeconded } from "../../src/facts/entry/amendment.ts";
import { readRecord } from "../../src/record/read.ts";
import { hex, tool } from "../archive/make.ts";
import { command as commandThen } from "../cli/command.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";

const scratch = scratchFolders();
/** On a day after the last of the record’s. */
const command: typeof commandThen = (words) => commandThen(words, { now: () => new Date("2026-11-27T12:00:00") });
const NEXT = { id: "jonah", name: 'Jonah "Joe" Example', publicName: "Jonah" };

/** A record, its archive and the one that goes on, each in a folder of its own. */
async function handed(...words: string[]) {
  const folder = scratch();
  const [content, next, out] = [join(folder, "content"), join(folder, "next"), join(folder, "archive")];
  cpSync("tests/attacks/base", content, { recursive: true });
  const before = contentOf(content);
  const said = await command([
    "hand-over",
    next,
    "--to",
    "Jonah Example",
    "--content",
    content,
    "--out",
    out,
    ...words,
  ]);
  return { content, next, out, before, said };
}

const verdictsIn = async (content: string) => {
  const read = await readRecord(content, { today: "2026-11-27" });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  const { batches, joints, holdPoints } = reckon(read.record);
  return {
    people: [...read.record.aircraft.people.values()].map(({ id, name, role }) => `${id} ${name} ${role}`),
    verdicts: [
      ...[...batches.values()].map(({ batch, verdict }) => `${batch.id} ${verdict}`),
      ...[...joints.values()].map(({ joint, state }) => `${joint.id} ${state}`),
      ...[...holdPoints.values()].map(({ holdPoint, state }) => `${holdPoint.id} ${state}`),
    ],
  };
};

describe("scarfline hand-over", () => {
  it("leaves the former record as it was, and takes all of it along word for word but for the people", async () => {
    const { content, next, before, said } = await handed();
    expect(said).toMatchObject({ code: 0, err: "" });
    expect(contentOf(content)).toEqual(before);
    const after = contentOf(next);
    for (const [path, text] of before) if (path !== "aircraft.md") expect(after.get(path), path).toBe(text);
    const added = [...after.keys()].filter((path) => !before.has(path));
    expect(added.filter((path) => !/^seals(?:\.txt$|\/)/.test(path))).toEqual([]);
    const lines = (text: string): string[] => text.split("\n");
    const fresh = lines(after.get("aircraft.md") ?? "").filter(
      (line) => !lines(before.get("aircraft.md") ?? "").includes(line),
    );
    expect(fresh).toEqual([
      expect.stringContaining('id: jonah, name: "Jonah Example", public: "Jonah", role: builder'),
      expect.stringContaining("role: former builder"),
    ]);
  });

  it("seals what was handed over in its first line, which is the digest of the former record, and itself in the second", async () => {
    const { content, next, said } = await handed();
    const [first = "", second = "", ...more] = readFileSync(join(next, "seals.txt"), "utf8").split("\n");
    expect(more).toEqual([""]);
    await command(["seal", content]);
    const [former = ""] = readFileSync(join(content, "seals.txt"), "utf8").split("\n");
    expect(first).toBe(former);
    expect(said.out).toContain(first);
    const manifest = first.split(" ")[4] ?? "";
    expect(first.split(" ")[1]).toBe(hex("sha256", readFileSync(join(next, manifest))));
    expect(tool("sha256sum", ["-c", "--quiet", manifest], next).out).toMatch(/^aircraft\.md: FAILED\n/);
    expect(tool("sha256sum", ["-c", "--quiet", second.split(" ")[4] ?? ""], next)).toEqual({ code: 0, out: "" });
    expect(await command(["verify", next])).toMatchObject({ code: 0, err: "" });
  });

  it("keeps seals that were set before, after which the archive and the record that goes on agree", async () => {
    const folder = scratch();
    const [content, next] = [join(folder, "content"), join(folder, "next")];
    cpSync("tests/attacks/base", content, { recursive: true });
    await command(["seal", content, "--date", "2025-04-01"]);
    const { code } = await command([
      "hand-over",
      next,
      "--to",
      "Jo Example",
      "--content",
      content,
      "--out",
      join(folder, "archive"),
    ]);
    expect(code).toBe(0);
    const [first, ...own] = readFileSync(join(next, "seals.txt"), "utf8").trimEnd().split("\n");
    expect(`${first}\n`).toBe(readFileSync(join(content, "seals.txt"), "utf8"));
    expect(own).toHaveLength(1);
  });

  it("judges nothing otherwise, and has the former builder by name beside the next", async () => {
    const { content, next } = await handed();
    const [before, after] = [await verdictsIn(content), await verdictsIn(next)];
    expect(after.verdicts).toEqual(before.verdicts);
    expect(before.verdicts.length).toBeGreaterThan(7);
    const [writer = "", ...others] = before.people;
    expect(after.people).toEqual([
      "jonah Jonah Example builder",
      writer.replace(/builder$/, "former builder"),
      ...others,
    ]);
  });

  it("writes an archive that is whole, and nothing over a folder that is there, nor where the record has a problem", async () => {
    const { content, next, out } = await handed();
    expect(await command(["verify", join(out, tool("ls", [out], out).out.trim())])).toMatchObject({ code: 0 });
    const before = contentOf(next);
    const words = ["--to", "Eve Example", "--content", content, "--out", out];
    expect(await command(["hand-over", next, ...words])).toMatchObject({ code: 2 });
    expect(contentOf(next)).toEqual(before);
    mkdirSync(join(content, "entries"), { recursive: true });
    writeFileSync(join(content, "entries/2025-03-26-odd.md"), "---\ntitle: Odd\n---\n");
    expect(await command(["hand-over", `${next}-2`, ...words])).toMatchObject({ code: 1 });
    expect(existsSync(`${next}-2`)).toBe(false);
  });

  it("is refused where the next builder would have the id of someone in the record", async () => {
    const { said, next } = await handed("--id", "me");
    expect(said.code).not.toBe(0);
    expect(said.err).toContain("me is the id of someone in the record already; give another: --id");
    expect(existsSync(next)).toBe(false);
  });
});

describe("The text of aircraft.md", () => {
  const FACTS = `name: Heron # a name\npeople:\n  - id: me\n    name: Ana\n    role: "builder" # writes\n  - { id: bo, name: Bo, role: builder }\ntasks: [gluing]\n`;

  it("keeps every comment, quotation mark and line end, and the second of two builders a builder", () => {
    const text = `---\n${FACTS}---\nBuilt in a barn.\n`;
    const expected = text
      .replace(
        "  - id: me",
        `  - { id: jonah, name: "Jonah \\"Joe\\" Example", public: "Jonah", role: builder }\n  - id: me`,
      )
      .replace('"builder" # writes', "former builder # writes");
    expect(handedOver(text, NEXT)).toBe(expected);
    expect(handedOver(text.replaceAll("\n", "\r\n"), NEXT)).toBe(expected.replaceAll("\n", "\r\n"));
    expect(handedOver(`\uFEFF${text}`, NEXT)).toBe(`\uFEFF${expected}`);
  });

  it("takes people in brackets, and no other than a list of them", () => {
    expect(handedOver("---\npeople: [{ id: me, role: builder }]\n---\n", NEXT)).toBe(
      `---\npeople: [ { id: jonah, name: "Jonah \\"Joe\\" Example", public: "Jonah", role: builder },{ id: me, role: former builder }]\n---\n`,
    );
    expect(() => handedOver("---\npeople: me\n---\n", NEXT)).toThrow("no list");
    expect(() => handedOver("---\npeople: [me]\n---\n", NEXT)).toThrow("no block");
    expect(() => handedOver("no facts\n", NEXT)).toThrow("no facts on top");
  });
});

it("Nobody who wrote the record, before or after it was handed over, seconds an amendment", () => {
  const people = [
    { id: "jonah", role: "builder" },
    { id: "ana", role: "former builder" },
    { id: "bo", role: "builder" },
    { id: "ins", role: "inspector" },
  ];
  const by = (seenBy: string) => isSeconded({ seenBy, changes: [] }, people);
  expect(["jonah", "ana", "bo", "ins", "nobody"].map(by)).toEqual([false, false, false, true, false]);
});
