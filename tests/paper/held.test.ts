/** What was held of batches is said by what they have in common, and each still tells all that it held. */
import { expect, it } from "vitest";
import { heldTitles, heldWords, usuallyHeld } from "../../layouts/appendix/held.tsx";
import { appendixSheet } from "../../layouts/appendix/appendix.tsx";
import { apart, sheetsOf } from "../../src/pages/appendix/sheets.ts";
import { findAll, textOf, treeOf } from "../../src/publish/paper/tree.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { longSite } from "./long.ts";

const scratch = scratchFolders();

const USUAL = ["Mix ratio", "Lots known", "Shop humidity", "Dew point"];

it.each([
  { own: USUAL, words: "the usual" },
  { own: ["Mix ratio", "Lots known", "Dew point"], words: "the usual but for Shop humidity" },
  { own: ["Mix ratio", "Dew point"], words: "Mix ratio; Dew point" },
  { own: [...USUAL, "Timber on arrival"], words: "the usual; also Timber on arrival" },
  {
    own: ["Mix ratio", "Lots known", "Shop humidity", "Timber on arrival"],
    words: "the usual but for Dew point; also Timber on arrival",
  },
  { own: ["Timber on arrival"], words: "Timber on arrival" },
])("Of rules that were held a batch says $words", ({ own, words }) => {
  expect(heldWords(own, USUAL)).toBe(words);
});

it("Where nothing is usual a batch names each rule that it held", () => {
  expect(heldWords(USUAL, [])).toBe(USUAL.join("; "));
});

it("What a sheet of the evidence calls usual stands before its batches, and with what each says it makes what that one held", async () => {
  const site = await longSite(scratch(), "nested");
  const { say } = site.shown;
  let shortened = 0;
  for (const sheet of sheetsOf(site.shown).slice(1)) {
    const trees = treeOf(appendixSheet(site, sheet).body);
    const sections = findAll(trees, ({ attributes }) => attributes.class === "appendix__batch");
    for (const files of Object.values(apart(sheet.groups.flatMap(({ batches }) => batches)))) {
      const usual = usuallyHeld(say, files);
      if (usual.length > 0) expect(textOf(trees)).toContain(`which is called the usual below: ${usual.join("; ")}.`);
      for (const { batch, findings } of files) {
        const text = textOf(sections.filter(({ attributes }) => attributes.id === `batch-${batch.id}`));
        const told = /Held: (?<words>[^.]*)\./.exec(text)?.groups?.words ?? "";
        expect(namedBy(told, usual).sort(), batch.id).toEqual([...heldTitles(say, findings)].sort());
        if (told.startsWith("the usual")) shortened += 1;
      }
    }
  }
  expect(shortened).toBeGreaterThan(200);
}, 60_000);

/** The rules that are meant by what stands after a batch's `Held:`. */
function namedBy(told: string, usual: readonly string[]): string[] {
  const { but, also } = /^the usual(?: but for (?<but>[^;]*))?(?:; also (?<also>.*))?$/.exec(told)?.groups ?? {};
  const names = (words = "", between = /, | and /): string[] => words.split(between).filter((one) => one !== "");
  if (!told.startsWith("the usual")) return names(told, /; /);
  return [...usual.filter((title) => !names(but).includes(title)), ...names(also)];
}
