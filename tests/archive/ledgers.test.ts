import { join } from "node:path";
import { Package } from "datapackage";
import { beforeAll, describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Shown } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Record } from "../../src/facts/types.ts";
import { filledLedgers, ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { layOut } from "../../src/publish/publish.ts";
import { readRecord } from "../../src/record/read.ts";
import { hoursWords } from "../../src/words/durations.ts";
import { planted } from "../pages/planted.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { tool } from "./make.ts";

const scratch = scratchFolders();
const DESCRIPTOR = "data/datapackage.json";
const demo = new Map<Edition, Shown>();

beforeAll(async () => {
  const read = await readRecord("content", { today: "2026-11-26" });
  if ("problems" in read) throw new Error("the demo has problems");
  const evidence = reckon(read.record);
  for (const edition of ["inspector", "archive"] as const) demo.set(edition, editionOf(read.record, evidence, edition));
});

const shownOf = (record: Record, edition: Edition = "archive"): Shown => editionOf(record, reckon(record), edition);
const demoShown = (edition: Edition = "archive"): Shown => {
  const shown = demo.get(edition);
  if (shown === undefined) throw new Error("no demo");
  return shown;
};
const plantedShown = (at: number): Shown =>
  shownOf(planted((...from) => from[at % from.length] as (typeof from)[number]).record);

/** The ledgers in a folder, with changes. */
function written(shown: Shown, changed: { readonly [path: string]: string } = {}): string {
  const folder = scratch();
  writeAll(folder, { ...Object.fromEntries(ledgersOf(shown).map(({ path, text }) => [path, text])), ...changed });
  return folder;
}

/** What the library of the standard’s own authors finds wrong, and how many rows it read. */
async function validated(folder: string): Promise<{ readonly faults: readonly string[]; readonly rows: number }> {
  const pack = await Package.load(join(folder, DESCRIPTOR), { basePath: join(folder, "data") });
  const faults = pack.errors.map(({ message }) => message);
  let rows = 0;
  for (const resource of pack.resources) {
    try {
      rows += (await resource.read({ relations: true })).length;
    } catch (error) {
      const { message, errors = [] } = error as Error & { errors?: readonly Error[] };
      faults.push(`${resource.name}: ${message} ${errors.map((each) => each.message).join("; ")}`);
    }
  }
  return { faults, rows };
}

const rowsIn = (shown: Shown): number => filledLedgers(shown).reduce((sum, { count }) => sum + count, 0);

describe("The data package beside the ledgers", () => {
  it("holds by the library of Frictionless Data, and every row of every ledger of the demo by its schema", async () => {
    const shown = demoShown();
    expect(await validated(written(shown))).toEqual({ faults: [], rows: rowsIn(shown) });
    expect(rowsIn(shown)).toBeGreaterThan(2000);
  });

  it.each([0, 1, 2, 3])("holds so of records with every kind of fact, %i", async (at) => {
    const shown = plantedShown(at);
    expect(await validated(written(shown))).toEqual({ faults: [], rows: rowsIn(shown) });
  });

  it("is told by that library where a cell, a column or a key is not as it says", async () => {
    const shown = demoShown();
    const texts = new Map(ledgersOf(shown).map(({ path, text }) => [path, text]));
    const batches = texts.get("data/batches.csv") ?? "";
    const [heads = "", first = "", ...more] = batches.split("\r\n");
    const spoilt = [
      [heads, first.replace(/,(\d{4}-\d\d-\d\d),/, ",someday,"), ...more],
      [heads.replace("verdict", "judged"), first, ...more],
      [heads, first, first, ...more],
    ];
    for (const lines of spoilt)
      expect((await validated(written(shown, { "data/batches.csv": lines.join("\r\n") }))).faults).toHaveLength(1);
    const bare = JSON.parse(texts.get(DESCRIPTOR) ?? "") as { resources: unknown[] };
    bare.resources.push({ name: "No Name" });
    expect((await validated(written(shown, { [DESCRIPTOR]: JSON.stringify(bare) }))).faults).not.toEqual([]);
  });

  it("names of each ledger all columns in their order, what they say, and the field of the record or that it was reckoned", () => {
    const shown = demoShown();
    const { resources } = JSON.parse(ledgersOf(shown).find(({ path }) => path === DESCRIPTOR)?.text ?? "") as {
      resources: { path: string; schema: { fields: { name: string; description: string; source: string }[] } }[];
    };
    for (const { path, schema } of resources) {
      const csv = ledgersOf(shown).find((file) => file.path === `data/${path}`)?.text ?? "";
      expect(schema.fields.map(({ name }) => name).join(",")).toBe(csv.split("\r\n")[0]);
    }
    const fields = resources.flatMap(({ schema }) => schema.fields);
    expect(fields.filter(({ description }) => !/^[A-Za-z].{3,}\.$/.test(description))).toEqual([]);
    expect(fields).toContainEqual(
      expect.objectContaining({
        name: "load_typed",
        description: "The load at which it broke.",
        source: "entry: tests[].load",
      }),
    );
  });

  it("is in the archive alone", () => {
    expect(ledgersOf(demoShown("inspector")).some(({ path }) => path.includes("datapackage"))).toBe(false);
    const open = planted((...from) => from[0] as (typeof from)[number]).record;
    const files = ledgersOf(shownOf({ ...open, aircraft: { ...open.aircraft, publicShows: ["ledgers"] } }, "public"));
    expect(files.length).toBeGreaterThan(10);
    expect(files.some(({ path }) => path.includes("datapackage"))).toBe(false);
  });
});

it("A batch weighed and one measured by volume each have the step of their scale in the CSV, whichever came first", () => {
  const csv = ledgersOf(demoShown()).find(({ path }) => path === "data/batches.csv")?.text ?? "";
  expect(
    csv
      .split("\r\n")[0]
      ?.split(",")
      .filter((name) => /^(?:scale|waste)_/.test(name)),
  ).toEqual(["scale_typed", "scale_kg", "scale_m3", "waste_typed", "waste_kg", "waste_m3"]);
});

describe("sqlite3 opens every ledger by its own import of CSV, and", () => {
  const asked = (folder: string, query: string): string[] => {
    const names = filledLedgers(demoShown()).map(({ ledger: { name } }) => name);
    const imports = names.flatMap((name) => ["-cmd", `.import --csv "${join(folder, `data/${name}.csv`)}" "${name}"`]);
    const { code, out } = tool("sqlite3", [":memory:", ...imports, query], folder);
    if (code !== 0) throw new Error(out);
    return out.trim().split("\n");
  };
  const pages = (): ((path: string) => string) => {
    const { pages: all } = layOut(demoShown(), { pictures: new Map(), documents: new Map(), clips: new Map() });
    return (path) => all.find((page) => page.path === path)?.make() ?? "";
  };

  it("has their rows and columns", () => {
    const shown = demoShown();
    const folder = written(shown);
    const counts = filledLedgers(shown).map(
      ({ ledger: { name, columns }, count }) => `${name}|${count}|${columns.length}`,
    );
    const query = filledLedgers(shown)
      .map(
        ({ ledger: { name } }) =>
          `select '${name}', (select count(*) from "${name}"), count(*) from pragma_table_info('${name}')`,
      )
      .join(" union all ");
    expect(asked(folder, query)).toEqual(counts);
  });

  it("finds sums equal to those of the pages: hours in all and of each person, batches by verdict, what was weighed", () => {
    const folder = written(demoShown());
    const page = pages();
    const both = `(select name, minutes from hours union all select name, minutes from "earlier-hours")`;
    const [all = ""] = asked(folder, `select sum(minutes) from ${both}`);
    expect(page("hours.html")).toContain(hoursWords(Number(all)));
    const people = asked(folder, `select name, sum(minutes) from ${both} group by name`);
    expect(people.length).toBeGreaterThan(2);
    for (const [name = "", minutes] of people.map((line) => line.split("|"))) {
      expect(page("credit.html")).toContain(name);
      expect(page("credit.html")).toContain(hoursWords(Number(minutes)));
    }
    const verdicts = asked(folder, "select verdict, count(*) from batches group by verdict").map((line) =>
      line.split("|"),
    );
    const [, tally = ""] = /aria-label="Batches by verdict">(.*?)<\/section>/u.exec(page("evidence.html")) ?? [];
    for (const verdict of ["shown", "not shown", "rejected"]) {
      const count = verdicts.find(([word]) => word === verdict)?.[1] ?? "";
      expect(tally).toMatch(new RegExp(`mark__word">${verdict}<.*?figures">${count}<`));
    }
    const [mass = ""] = asked(folder, "select round(sum(mass_kg), 1) from weights where counts = 'yes'");
    expect(page("weight.html")).toContain(`${Number(mass).toFixed(1)} kg`);
  });
});
