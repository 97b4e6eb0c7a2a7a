/** What the page at the bench has of a record, and that no edition has anything of the page. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { plantedRecord } from "../leaks/record.ts";
import { found } from "../leaks/search.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { BENCH_RECORD } from "./record.ts";
import { buildBench } from "./phone.ts";

const scratch = scratchFolders();
const NOW = { now: () => new Date("2025-06-01T12:00:00"), timeZone: "Europe/Lisbon" };

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => statSync(join(folder, name)).isFile());

describe("The page at the bench", () => {
  it("is in no edition: no file of its name, no byte of its script, style or worker", async () => {
    const folder = scratch();
    const [content, site, bench] = ["content", "site", "bench"].map((name) => join(folder, name)) as [
      string,
      string,
      string,
    ];
    writeAll(content, BENCH_RECORD);
    await buildBench(content, bench);
    expect(await command(["build", content, "--edition", "all", "--out", site], NOW)).toMatchObject({
      code: 0,
      err: "",
    });
    expect(filesIn(bench).sort()).toEqual([
      ".scarfline",
      "icon.svg",
      "index.html",
      "manifest.webmanifest",
      "worker.js",
    ]);
    const page = readFileSync(join(bench, "index.html"), "utf8");
    const marks = ["scarfline-bench", "data-settling", "data-digest", 'id="bench"', "PAGE_DIGEST"];
    expect(marks.filter((mark) => !page.includes(mark) && mark !== "PAGE_DIGEST")).toEqual([]);
    // Sentences of findings stand in both; code of the page stands in it alone.
    const chunks = Array.from({ length: 600 }, (_, at) => page.slice(3000 + at * 1000, 3300 + at * 1000)).filter(
      (chunk) => chunk.split("=>").length > 4,
    );
    expect(chunks.length).toBeGreaterThan(20);
    const files = filesIn(site);
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter((name) => /(?:^|[/-])(?:bench|worker|manifest|page\.(?:js|css))/.test(name))).toEqual([]);
    const holding = files.filter((name) => {
      const text = readFileSync(join(site, name), "latin1");
      return [...marks, ...chunks].some((mark) => text.includes(mark));
    });
    expect(holding).toEqual([]);
  });

  it("has no full name, supplier, certificate, cost, prose, caption or file of a record with a word in every place", async () => {
    const planted = await plantedRecord((...from) => from[0] as (typeof from)[number]);
    const folder = scratch();
    const [content, bench] = [join(folder, "content"), join(folder, "bench")];
    writeAll(content, planted.files);
    await buildBench(content, bench, NOW);
    const hits = [...found(bench, planted.words).keys()].map(({ where }) => where.replace(/\d+/g, "#"));
    expect([...new Set(hits)].sort()).toMatchInlineSnapshot(`
      [
        "adhesive: name of the sheet",
        "adhesive: title",
        "entry of #-#-#: amended load",
        "entry of #-#-#: humidity of the air",
        "entry of #-#-#: mass of glue",
        "entry of #-#-#: mass of hardener",
        "entry of #-#-#: mass of powder",
        "entry of #-#-#: mass of resin",
        "entry of #-#-#: mass of water",
        "entry of #-#-#: moisture of the wood",
        "entry of #-#-#: overlap of a piece",
        "entry of #-#-#: temperature of the air",
        "entry of #-#-#: thickness of a piece",
        "entry of #-#-#: width of a piece",
        "hidden log: temperature",
        "lot of glue for inspector: id",
        "lot of glue for inspector: species",
        "lot of glue for inspector: title",
        "lot of glue for public: species",
        "lot of glue for public: title",
        "lot of hardener for inspector: id",
        "lot of hardener for inspector: species",
        "lot of hardener for inspector: title",
        "lot of hardener for public: species",
        "lot of hardener for public: title",
        "lot of powder for inspector: id",
        "lot of powder for inspector: species",
        "lot of powder for inspector: title",
        "lot of powder for public: species",
        "lot of powder for public: title",
        "lot of resin for inspector: id",
        "lot of resin for inspector: species",
        "lot of resin for inspector: title",
        "lot of resin for public: species",
        "lot of resin for public: title",
        "lot of timber for inspector: density",
        "lot of timber for inspector: density asked",
        "lot of timber for inspector: grain slope",
        "lot of timber for inspector: grain slope asked",
        "lot of timber for inspector: id",
        "lot of timber for inspector: moisture",
        "lot of timber for inspector: moisture asked",
        "lot of timber for inspector: rings",
        "lot of timber for inspector: rings asked",
        "lot of timber for inspector: species",
        "lot of timber for inspector: title",
        "lot of timber for public: density",
        "lot of timber for public: density asked",
        "lot of timber for public: grain slope",
        "lot of timber for public: grain slope asked",
        "lot of timber for public: moisture",
        "lot of timber for public: moisture asked",
        "lot of timber for public: rings",
        "lot of timber for public: rings asked",
        "lot of timber for public: species",
        "lot of timber for public: title",
        "one-part: name of the sheet",
        "one-part: title",
        "person #: id",
        "person #: public name",
        "powder-and-water: name of the sheet",
        "powder-and-water: title",
        "procedure: title",
      ]
    `);
  });
});
