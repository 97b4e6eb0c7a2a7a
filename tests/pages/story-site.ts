/** A small build for the story pages: two assemblies, a gluing day, a day at the press, an inspection. */
import { reckon } from "../../src/evidence/evidence.ts";
import { sayIn } from "../../src/words/findings/catalogue.ts";
import { ENGLISH } from "../../src/words/findings/english.ts";
import type { Shown, Site } from "../../src/editions/shown.ts";
import { Memo } from "../../src/memo.ts";
import type { Aircraft, Record, Ref } from "../../src/facts/types.ts";
import { assembly, batch, entry, holdPoint, inspection, joint, openItem, record, test } from "../evidence/make.ts";

const place = { file: "made.md", line: 1, column: 1 };
const photo = (name: string) => ({
  place,
  file: `photos/${name}.jpg`,
  alt: `Drawing of ${name}`,
  caption: `The ${name}`,
  audience: "public" as const,
});
const line = (who: string, task: string, minutes: number, on = "wing") => ({
  place,
  who,
  task,
  minutes,
  typed: String(minutes),
  assembly: on,
});
const passage = (markdown: string) => ({ audience: "public" as const, markdown, line: 9 });

const AIRCRAFT: Partial<Aircraft> = {
  name: "Sandmartin <&>",
  type: "a test of wood",
  targetPerWeek: 480,
  start: "2025-03-01",
  people: new Map([
    ["builder", { id: "builder", place, name: "Ada Full", publicName: "Ada", role: "builder", audience: "public" }],
    [
      "ins",
      { id: "ins", place, name: "Ines Inspector", publicName: "the inspector", role: "inspector", audience: "public" },
    ],
  ]),
  body: [passage("An introduction.")],
};

function smallRecord(): Record {
  const made = record({
    assemblies: [
      assembly("wing", {
        title: "Wing",
        planned: 6000,
        drawing: { file: "drawings/wing.svg", alt: "Plan of the wing" },
        joints: [
          { ...joint("W-1"), title: "Rib to <spar>", at: { x: 0.3, y: 0.4 } },
          { ...joint("W-2"), at: { x: 0.32, y: 0.4 } },
        ],
        holdPoints: [holdPoint("W-H1", { title: "Before the skin" })],
      }),
      assembly("tip", { title: "Tip", parent: "wing" }),
    ],
    entries: [
      entry("2025-03-10-glue", {
        title: "Glue & clamps",
        batches: [batch("B-1")],
        photos: [photo("clamps"), photo("bench")],
        raised: [openItem("O-1", { entry: "2025-03-10-glue", before: "W-H1" })],
        hours: [line("builder", "gluing", 165), line("ghost", "jigging", 45, "tip")],
        body: [passage("We clamped it. See the bench:\n\n![bench](../photos/bench.jpg)")],
      }),
      entry("2025-03-20-tests", {
        title: "At the press",
        tests: [test("B-1/1", { witness: "ins" })],
        hours: [line("builder", "testing", 30)],
      }),
      entry("2025-04-02-looked", {
        title: "The inspector looked",
        inspections: [inspection("W-H1", { entry: "2025-04-02-looked", day: "2025-04-02", result: "not signed" })],
      }),
    ],
  });
  return { ...made, aircraft: { ...made.aircraft, ...AIRCRAFT } };
}

/** A site that shows all but what `hidden` says. */
export function storySite(hidden: (ref: Ref) => boolean = () => false): Site {
  const made = smallRecord();
  const shown: Shown = {
    edition: "public",
    record: made,
    evidence: reckon(made),
    leavesOut: ["full names"],
    shows: (ref) => !hidden(ref),
    nameOf: (id) => made.aircraft.people.get(id)?.publicName ?? "someone",
    say: sayIn(ENGLISH, made.aircraft.units),
    memo: new Memo(),
  };
  const jpeg = (name: string) => ({
    width: 1600,
    height: 1000,
    colour: "#887766",
    sources: [
      { type: "image/webp", files: [{ path: `photos/${name}-400.webp`, width: 400 }] },
      {
        type: "image/jpeg",
        files: [
          { path: `photos/${name}-400.jpg`, width: 400 },
          { path: `photos/${name}-800.jpg`, width: 800 },
        ],
      },
    ],
  });
  return {
    shown,
    files: new Map([["drawings/wing.svg", "files/wing.svg"]]),
    clips: new Map(),
    pictures: new Map([
      ["photos/clamps.jpg", jpeg("clamps")],
      ["photos/bench.jpg", jpeg("bench")],
    ]),
    prose: ({ markdown }) => `<p>${markdown.replaceAll("&", "&amp;").replaceAll("<", "&lt;")}</p>`,
  };
}

/** The page at a path of some pages. */
export function made(pages: readonly { path: string; make: () => string }[], path: string): string {
  const page = pages.find((one) => one.path === path);
  if (page === undefined) throw new Error(`no page ${path}; there are ${pages.map((one) => one.path).join(", ")}`);
  return page.make();
}
