/** Where Typst is not installed: said with its mend, and nothing else is different. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const scratch = scratchFolders();
const NOW = { now: () => new Date("2021-06-01T12:00:00") };

vi.mock("../../src/publish/paper/typst.ts", async (original) => {
  const { openMaker } = await original<typeof import("../../src/publish/paper/typst.ts")>();
  return { openMaker: () => openMaker("@myriaddreamin/that-is-not-installed") };
});

describe("Without Typst", () => {
  it.each(["build", "bag"])("%s --paper is a problem that says how to get it, and nothing is written", async (name) => {
    const [content, out] = [scratch(), join(scratch(), "out")];
    writeAll(content, await smallRecord());
    const edition = name === "build" ? ["--edition", "inspector"] : [];
    const { code, err } = await command([name, "--content", content, "--out", out, "--paper", ...edition], NOW);
    expect(code).toBe(1);
    expect(err).toContain("PDFs cannot be made: Typst is not here  [no-typesetter]");
    expect(err).toContain(
      "mend      npm install @myriaddreamin/typst-ts-node-compiler@0.7.0 where Scarfline is installed",
    );
    expect(existsSync(join(out, "index.html"))).toBe(false);
  });

  it("a build without --paper is as ever, and its printable page says how to have a PDF", async () => {
    const [content, out] = [scratch(), join(scratch(), "out")];
    writeAll(content, await smallRecord());
    expect((await command(["build", "--content", content, "--out", out, "--edition", "inspector"], NOW)).code).toBe(0);
    const page = readFileSync(join(out, "appendix.html"), "utf8");
    expect(page).toContain("npm install @myriaddreamin/typst-ts-node-compiler@0.7.0");
    expect(existsSync(join(out, "paper"))).toBe(false);
  });

  it("the public edition is refused before anything is read", async () => {
    const { code, err } = await command(["build", "--content", "content", "--paper"], NOW);
    expect(code).toBe(2);
    expect(err).toContain("--edition inspector");
  });
});
