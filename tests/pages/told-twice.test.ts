import { expect, it } from "vitest";
import { jointHistory } from "../../src/pages/archive/history.ts";
import { dayEvents } from "../../src/pages/story/day-events.ts";
import type { Happening } from "../../src/pages/story/day-events.ts";
import type { Rework } from "../../src/facts/types.ts";
import { assembly, batch, entry, holdPoint, inspection, joint, piece, record, test } from "../evidence/make.ts";
import { exampleSite } from "./example.ts";

const ID = "2025-03-25-open";
const on = { place: { file: "made.md", line: 1, column: 1 }, entry: ID, day: "2025-03-25" };
const opened = (stage: number, why: string): Rework => ({ ...on, joints: ["W-1"], stages: [stage], why });
const looked = (reference: string) => inspection("W-H", { ...on, result: "not signed", reference, by: "ins" });

const twice = entry(ID, {
  reworks: [opened(1, "It was dry"), opened(2, "It was hot")],
  inspections: [looked("form 1"), looked("form 2")],
  recalls: ["Letter one", "Letter two"].map((why) => ({ ...on, lot: "R-1", why })),
  rejections: ["It crumbles", "It smells"].map((why) => ({ ...on, batch: "B-1", why })),
  tests: [1, 2].map((n) => test(`B-1/${n}`, { entry: ID, day: "2025-03-25" })),
});

const { shown } = exampleSite(
  "inspector",
  record({
    assemblies: [
      assembly("wing", { joints: [joint("W-1")], holdPoints: [holdPoint("W-H", { title: "Skin", joints: ["W-1"] })] }),
    ],
    entries: [
      entry("2025-03-10-glue", { batches: [batch("B-1", { pieces: [piece("B-1"), piece("B-1", 2)] })] }),
      twice,
    ],
  }),
);

const told = ({ what, word, says = "" }: Pick<Happening, "what" | "word"> & { readonly says?: string }): string =>
  `${what} ${word}: ${says}`;

const FACTS = [
  "Lot R-1 recalled: Letter one",
  "Lot R-1 recalled: Letter two",
  "Batch B-1 rejected by the builder: It crumbles",
  "Batch B-1 rejected by the builder: It smells",
  "Joint W-1, stage 1 of it glue taken out: It was dry",
  "Joint W-1, stage 2 of it glue taken out: It was hot",
  "Skin not signed: Ada Invented, form 1",
  "Skin not signed: Ada Invented, form 2",
];

it("Facts of an entry that are alike are told each for itself, and only pieces together", () => {
  expect(dayEvents(twice, shown).map(told)).toEqual(["2 pieces of B-1 pass: ", ...FACTS]);
});

it("The history of a joint tells each of them with its own reason", () => {
  const lines = jointHistory(shown, "W-1").find(({ entry: of }) => of?.id === ID)?.lines ?? [];
  const words = lines.map(({ what, word = "", says }) => told({ what, word, says }));
  expect(words.filter((line) => FACTS.includes(line)).sort()).toEqual([...FACTS].sort());
  expect(words).toHaveLength(FACTS.length + 1);
});
