import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { command } from "./command.ts";

const scratch = scratchFolders();

describe("scarfline check", () => {
  it("finds nothing wrong with a good record", async () => {
    const content = scratch();
    writeAll(content, await smallRecord());
    const { code, out, err } = await command(["check", "--content", content]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/\nNo problems in the record\.\nWithout `address:` in aircraft\.md .*\n$/);
    expect(await command(["check", "--content", content, "--json"])).toEqual({ code: 0, out: "[]\n", err: "" });
  });

  it("gives the problems as JSON with file, line and column", async () => {
    const content = scratch();
    writeAll(content, {
      ...(await smallRecord()),
      "entries/2021-03-10-wrong.md": "---\ndate: 2021-03-10\ntitle: Wrong\nassembly: find\n---\n",
    });
    const { code, out } = await command(["check", "--content", content, "--json"]);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toEqual([
      expect.objectContaining({
        file: "entries/2021-03-10-wrong.md",
        line: 4,
        column: 11,
        mend: expect.stringContaining("fin"),
      }),
    ]);
  });

  it("tells notes, and beside JSON apart from it; a record with notes alone is good", async () => {
    const content = scratch();
    writeAll(content, { ...(await smallRecord()), "entries/2021-03-10.odt": "text" });
    const note = "entries/2021-03-10.odt:1:1  note: nothing reads this file, and nothing in the record names it\n";
    const { code, out, err } = await command(["check", "--content", content]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain(`\n${note}No problems in the record.\n`);
    expect(await command(["check", "--content", content, "--json"])).toEqual({ code: 0, out: "[]\n", err: note });
  });

  it("changes nothing in the record", async () => {
    const content = scratch();
    writeAll(content, { ...(await smallRecord()), "entries/2021-03-10-wrong.md": "no front matter\n" });
    const before = contentOf(content);
    await command(["check", "--content", content]);
    expect(contentOf(content)).toEqual(before);
  });
});

describe("Help", () => {
  it.each([[[]], [["build"]], [["check"]], [["preview"]], [["schemas"]]])(
    "of %j has examples and exit codes",
    async (words) => {
      const { code, out } = await command([...words, "--help"]);
      expect(code).toBe(0);
      expect(out).toMatch(/Examples:\n {2}scarfline/);
      expect(out).toMatch(/Exit codes:\n {2}0 /);
    },
  );
});

const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

it("A check by what an earlier build read tells the same as one that knows of nothing, and keeps nothing where nothing was built", async () => {
  const [content, knows] = [scratch(), scratch()];
  writeAll(content, await smallRecord());
  const run = (cwd: string, ...words: string[]): { stdout: string; status: number | null } => {
    const { stdout, status } = spawnSync(process.execPath, [COMMAND, ...words, "--content", content], {
      cwd,
      encoding: "utf8",
    });
    return { stdout, status };
  };
  const readings = (folder: string): string[] =>
    [...contentOf(folder).keys()].filter((path) => path.startsWith(".cache/scarfline/readings/"));
  expect(run(knows, "build").status).toBe(0);
  expect(readings(knows)).toHaveLength(1);
  const file = join(content, "entries/2021-03-08-second.md");
  const sound = readFileSync(file, "utf8");
  for (const text of [sound, sound.replace("\ntitle:", "\ntitel:"), `${sound}\n::: inspektor\n`, sound]) {
    writeFileSync(file, text);
    const clean = scratch();
    const found = run(clean, "check", "--json");
    expect(readings(clean)).toEqual([]);
    expect(run(knows, "check", "--json")).toEqual(found);
    expect(found.status).toBe(text === sound ? 0 : 1);
  }
});
