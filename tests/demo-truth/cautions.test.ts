/** Where the story does what is dangerous it says so, and the page about the record has all of it as cautions. */
import { expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { layOut } from "../../src/publish/publish.ts";
import { demo, entries, prose } from "./told.ts";

/** What is dangerous in a workshop that glues, by the words it is told in; and those words beside it by which the story tells of the danger. */
const DANGERS: readonly (readonly [danger: RegExp, caution: RegExp])[] = [
  [
    /\b(?:child(?:ren)?|sling|cradle|baby)\b.*\b(?:glued?|glue-up|cup|cleaned)\b/isu,
    /not for anybody of her size|touching nothing|no touching|at home|there is no glue in it|before anybody had wetted a brush|not during/u,
  ],
  [/\bon their way to the stove\b/u, /for nobody to breathe/u],
  [/\bwarm(?:ed)? (?:it|glue)\b/u, /warmed glue breathes out/u],
  [/\brash\b/u, /no solvent on skin/u],
  [/\btoo warm to hold\b/u, /set out on the doorstone/u],
  [/\b(?:Oiled the planes|coats of varnish)\b/u, /as warm as it likes|known to light itself/u],
  [/\bbefore it is hard\b|\bnot hard\b/u, /Nobody sands glue that is not hard|not hard yet/u],
];

it("Whatever is dangerous in the story is told as that, in the same entry", () => {
  const told = entries.map(({ id }) => ({ id, text: prose(id) }));
  const found = DANGERS.map(([danger]) => told.filter(({ text }) => danger.test(text)));
  // A danger of which the story has nothing is tested by nothing.
  expect(DANGERS.filter((_, i) => found[i]?.length === 0).map(([danger]) => danger.source)).toEqual([]);
  const untold = DANGERS.flatMap(([, caution], i) => (found[i] ?? []).filter(({ text }) => !caution.test(text)));
  expect(untold.map(({ id }) => id)).toEqual([]);
});

it("The page about the record has the cautions that the story needs", () => {
  const shown = editionOf(demo, reckon(demo), "public");
  const { pages } = layOut(shown, { pictures: new Map(), documents: new Map(), clips: new Map() });
  const about = (pages.find(({ path }) => path === "about.html")?.make() ?? "").replace(/\s+/gu, " ");
  const cautions = /<ul class="cautions">(.*?)<\/ul>/su.exec(about)?.[1] ?? "";
  for (const words of [
    "No children near adhesive that has not cured",
    "Do not burn it",
    "goes outdoors, on stone and not on wood",
    "Do not sand it before it is hard",
    "soap and water, never solvent",
    "An eyewash",
    "Stop at the first rash",
    "Rags with oil",
  ])
    expect(cautions).toContain(words);
});
