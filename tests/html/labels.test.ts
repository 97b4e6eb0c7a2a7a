/** Every label of the demo in one list that people read: of all pages of the widest edition, and of each kind of page in the others. What is called two ways stands in it twice. */
import { readFileSync } from "node:fs";
import { parse } from "node-html-parser";
import { expect, it } from "vitest";
import { builtDemo, onePageOfEachKind } from "../browser/demo.ts";
import { demo } from "../demo-truth/told.ts";

/** Where labels stand, and what they are called here. What names a thing of the record there has a link, a number or an id in it. */
const PLACES = {
  "Ways at the head of a page": "header nav a",
  "Headings of parts": "main h2, main h3",
  "Names of tables": "caption",
  "Heads of columns": "thead th",
  "Words for facts": "dt",
  "How things stand": ".mark__word",
  "Buttons, filters and what is folded": "button, label, option, summary, legend",
} as const;

const OF_THE_RECORD = /\d|[A-Z]{2}-/;

/** What the builder called things and people by: in a label they are the record's words and not ours. */
function wordsOfTheRecord(): readonly string[] {
  const { aircraft, assemblies, adhesives, finishes, procedures, trials, earlier } = demo;
  const titled = [assemblies, adhesives, finishes, procedures, trials].flatMap((things) => [...things.values()]);
  return [
    aircraft.name,
    ...[...aircraft.people.values()].flatMap(({ name }) => [name, name.split(" ")[0] ?? name]),
    ...[...titled, ...earlier].map(({ title }) => title),
    ...[...assemblies.values()].flatMap(({ holdPoints, tasks }) => [...holdPoints, ...tasks].map(({ title }) => title)),
    ...[...trials.values()].flatMap(({ preparations }) => preparations.map(({ what }) => what)),
  ];
}

it("Labels are the words that people read here, and no others", async () => {
  const ofTheRecord = wordsOfTheRecord();
  const found = new Map(Object.keys(PLACES).map((place) => [place, new Set<string>()]));
  for (const edition of ["public", "inspector", "archive"] as const) {
    const site = builtDemo(edition);
    const { folder } = site;
    for (const path of edition === "archive" ? site.pages : onePageOfEachKind(site)) {
      const page = parse(readFileSync(`${folder}/${path}`, "utf8"));
      for (const [place, where] of Object.entries(PLACES))
        for (const label of page.querySelectorAll(where)) {
          const words = label.text.replace(/\s+/g, " ").trim();
          const isOfRecord =
            OF_THE_RECORD.test(words) || (place !== "Ways at the head of a page" && label.querySelector("a") !== null);
          const isNamed = ofTheRecord.some((name) => words.includes(name));
          if (words !== "" && !isOfRecord && !isNamed) found.get(place)?.add(words);
        }
    }
  }
  const list = [...found].map(
    ([place, labels]) =>
      `${place}\n${[...labels]
        .sort()
        .map((words) => `  ${words}\n`)
        .join("")}`,
  );
  await expect(list.join("\n")).toMatchFileSnapshot("labels.txt");
}, 600_000);
