import fc from "fast-check";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { plantedRecord, type Planted } from "./record.ts";
import { filesIn, found } from "./search.ts";
import { mayShow, type Word } from "./words.ts";

const scratch = scratchFolders();
const EDITIONS = ["public", "inspector", "archive"] as const;
/** Many of them in `npm run leaks`. */
const RECORDS = Number(process.env["LEAK_RECORDS"] ?? 3);
const MINUTES = 60_000;

/** An own page that writes down whatever it is given, and whatever hangs on that, but for where the record lies. */
const TELLS_ALL = `export const data = { permalink: "own/all.json" };
export function render(data) {
  const seen = new Set();
  const told = [];
  const tell = (key, value) => {
    if (typeof value !== "object" || value === null) return void told.push(key + ": " + String(value));
    if (seen.has(value)) return;
    seen.add(value);
    if (value instanceof Map || value instanceof Set) [...value].forEach((one) => tell(key, one));
    for (const own of Reflect.ownKeys(value)) {
      try {
        tell(String(own), value[own]);
      } catch (error) {
        told.push(String(own) + " throws " + error);
      }
    }
  };
  tell("data", data);
  tell("this", this);
  tell("process", globalThis.process.argv.slice(2));
  return JSON.stringify(told).replaceAll(globalThis.process.cwd(), "");
}
`;
/** One that writes down all of the record that it is given: what Eleventy adds has the time of day in it. */
const TELLS_RECORD = `export const data = { permalink: "own/all.json" };
export const render = ({ edition, collections }) => JSON.stringify([edition, collections.all.map(({ url }) => url)]);
`;

/** Writes a record and builds editions of it by the command. */
async function built({ files }: Planted, edition = "all", own = TELLS_ALL): Promise<{ content: string; site: string }> {
  const folder = scratch();
  const [content, site] = [join(folder, "content"), join(folder, "site")];
  writeAll(content, { ...files, "pages/all.11ty.js": own });
  const { code, err } = await command(["build", "--content", content, "--out", site, "--edition", edition], {
    now: () => new Date("2025-06-01T12:00:00"),
  });
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return { content, site };
}

/** Files and folders of a site of which the guide says why nothing hidden shows in them. */
const SEAMS = new Set(
  [
    ...(readFileSync(new URL("../../DEVELOPERS.md", import.meta.url), "utf8")
      .split("## Seams of editions")[1]
      ?.split("\n## ")[0]
      ?.matchAll(/^\| (`[^|]*) \|/gm) ?? []),
  ].flatMap(([, names = ""]) => names.match(/[a-z\d][a-z\d.-]*/g) ?? []),
);

const told = ({ where, text }: Word, paths: readonly string[] = []): string =>
  `${where} (${text}) ${paths.slice(0, 3).join(" ")}`.trim();

/** Where two texts begin to differ, with what stands around. */
function differing(path: string, one: string, other: string): string[] {
  if (one === other) return [];
  const at = [...one].findIndex((char, index) => char !== other[index]);
  return [`${path}: ${one.slice(Math.max(0, at - 100), at + 60)} ≠ ${other.slice(Math.max(0, at - 20), at + 60)}`];
}

type Pick = Parameters<typeof plantedRecord>[0];

/** The same choices each time it is asked for: `choices` one after the other, round and round. */
const picker = (choices: readonly number[]) => (): Pick => {
  let at = 0;
  return (...from) => from[(choices[at++ % choices.length] ?? 0) % from.length] as (typeof from)[number];
};

/** Holds for records in which chance chooses who may see what, which lots were used, what forms pictures have. */
async function holds(claim: (pick: () => Pick) => Promise<void>): Promise<void> {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.nat({ max: 5039 }), { minLength: 97, maxLength: 97 }), (choices) =>
      claim(picker(choices)),
    ),
    { numRuns: RECORDS, endOnFailure: true },
  );
}

describe("Of a record with a word in every place where one can be", () => {
  it(
    "no edition holds a word in any byte that it withholds, each tells every word that is for its readers",
    async () => {
      await holds(async (pick) => {
        const planted = await plantedRecord(pick());
        const { content, site } = await built(planted);
        const inRecord = found(content, planted.words);
        expect(
          planted.words.filter((word) => word.typed && !inRecord.has(word)).map((word) => told(word)),
          "not found by the search in the record itself",
        ).toEqual([]);
        for (const edition of EDITIONS) {
          const hits = found(join(site, edition), planted.words);
          expect(readFileSync(join(site, edition, "own/all.json"), "utf8"), "own pages are given much").toMatch(
            /^.{9999}/,
          );
          expect(readFileSync(join(site, edition, "appendix.html"), "utf8"), `${edition} names the seal`).toContain(
            "The last seal on this record is number 1",
          );
          const shown = (word: Word): boolean => word.told && mayShow(word, edition, planted.publicShows);
          expect(
            [...hits].filter(([word]) => !shown(word)).map(([word, paths]) => told(word, paths)),
            `${edition} leaks`,
          ).toEqual([]);
          expect(
            planted.words
              .filter((word) => shown(word) && word.optional !== true && !hits.has(word))
              .map((word) => told(word)),
            `${edition} lacks`,
          ).toEqual([]);
        }
      });
    },
    RECORDS * MINUTES,
  );

  it.each(["public", "inspector"] as const)(
    "the %s edition is the same byte for byte whatever it hides: other words, other numbers, and more of them",
    async (edition) => {
      await holds(async (pick) => {
        const one = await built(await plantedRecord(pick(), { edition }), edition, TELLS_RECORD);
        const other = await built(
          await plantedRecord(pick(), { salt: "longer", extra: true, edition }),
          edition,
          TELLS_RECORD,
        );
        const read = (folder: string, path: string): string => readFileSync(join(folder, path), "latin1");
        const [here, there] = [one.site, other.site];
        expect(filesIn(there)).toEqual(filesIn(here));
        const kinds = new Set(filesIn(here).map((path) => path.split("/")[0] ?? ""));
        expect([...kinds].filter((kind) => kind !== ".scarfline" && !SEAMS.has(kind))).toEqual([]);
        expect(filesIn(here).flatMap((path) => differing(path, read(here, path), read(there, path)))).toEqual([]);
      });
    },
    RECORDS * 2 * MINUTES,
  );
});
