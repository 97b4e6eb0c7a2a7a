import fc from "fast-check";
import { parse } from "yaml";
import { expect, it } from "vitest";
import { FOLDERS } from "../../src/facts/kinds.ts";
import { excused, NONE } from "../facts/because.ts";
import { isChoice, textsIn, typedFields } from "../facts/forms.ts";
import { plantedRecord, type Planted } from "./record.ts";
import { UNPLANTED } from "./unplanted.ts";

/** Front matter of every file, by the kind of file. */
function typedIn({ files }: Planted): (readonly [path: string, text: string])[] {
  return Object.entries(files).flatMap(([path, text]) => {
    const kind = path === "aircraft.md" ? "aircraft" : FOLDERS[path.split("/")[0] ?? ""];
    if (kind === undefined || typeof text !== "string" || !path.endsWith(".md")) return [];
    return textsIn(parse(/^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? "", { schema: "failsafe" }), kind);
  });
}

it("A word is planted in every field of every kind of file, or it is said why not", async () => {
  const planted = await Promise.all(
    fc
      .sample(fc.infiniteStream(fc.nat({ max: 5039 })), { numRuns: 2, seed: 1 })
      .map((chance) => plantedRecord((...from) => from[chance.next().value % from.length] as (typeof from)[number])),
  );
  const texts = planted.flatMap(typedIn);
  const words = planted.flatMap(({ words: all }) => all.map(({ text }) => text));
  const given = new Set(texts.map(([path]) => path));
  const worded = new Set(texts.filter(([, text]) => words.some((word) => text.includes(word))).map(([path]) => path));
  const missing = [...typedFields()].filter(([path, form]) => !(isChoice(form) ? given : worded).has(path));
  expect(
    excused(
      missing.map(([path]) => path),
      UNPLANTED,
    ),
  ).toEqual(NONE);
}, 60_000);
