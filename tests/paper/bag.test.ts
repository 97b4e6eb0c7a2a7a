import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const scratch = scratchFolders();
const NOW = { now: () => new Date("2021-06-01T12:00:00") };

it("A bag with PDFs says by what they were set, and verifies; one without has no such line and no PDF", async () => {
  const content = scratch();
  const small = await smallRecord();
  const fin = String(small["assemblies/fin.md"]);
  const holding = fin.replace(
    "\n---\n",
    '\nhold_points:\n  - { id: F-H1, title: "Fin before covering", kind: covering }\n---\n',
  );
  writeAll(content, { ...small, "assemblies/fin.md": holding });
  const bagged = async (...more: string[]): Promise<string> => {
    const out = scratch();
    const { code, err } = await command(["bag", "--content", content, "--out", out, ...more], NOW);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    return join(out, readdirSync(out)[0] ?? "");
  };
  const [plain, paper] = [await bagged(), await bagged("--paper")];
  const info = (bag: string): string => readFileSync(join(bag, "bag-info.txt"), "utf8");
  expect(info(paper)).toMatch(
    /^Scarfline-Paper-Maker: Typst \d+\.\d+\.\d+, by @myriaddreamin\/typst-ts-node-compiler 0\.7\.0$/m,
  );
  expect(info(plain)).not.toContain("Paper-Maker");
  expect(existsSync(join(plain, "data/site/paper"))).toBe(false);
  expect(readdirSync(join(paper, "data/site/paper"))).toContain("evidence.pdf");
  expect((await command(["verify", paper], NOW)).code).toBe(0);
  expect(readFileSync(join(paper, "data/site/appendix.html"), "utf8")).toContain('href="paper/evidence.pdf"');
  const read = (bag: string, path: string): string => readFileSync(join(bag, path), "utf8");
  const points = readdirSync(join(paper, "data/site/hold-point"));
  expect(points.length).toBeGreaterThan(0);
  for (const point of points) {
    const pdf = `../paper/hold-point-${point.replace(".html", ".pdf")}`;
    expect(read(paper, `data/site/hold-point/${point}`)).toContain(`href="${pdf}"`);
    expect(existsSync(join(paper, "data/site/hold-point", pdf))).toBe(true);
    expect(read(plain, `data/site/hold-point/${point}`)).not.toContain(".pdf");
  }
  for (const path of ["README.txt", "data/site/index.html"]) {
    expect(read(paper, path)).toContain("site/paper/");
    expect(read(plain, path)).not.toContain("site/paper/");
  }
});
