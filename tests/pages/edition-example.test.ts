import { describe, expect, test } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf, SOMEONE } from "../../src/editions/edition.ts";
import { visibilityOf } from "../../src/editions/visibility.ts";
import { WITHHELD } from "../../src/facts/visibility.ts";
import { hiddenTargets, redactedBody } from "../../src/editions/redacted-prose.ts";
import type { Passage } from "../../src/facts/types.ts";
import { markdownParser } from "../../src/record/text/markdown.ts";
import { exampleRecord, exampleSite } from "./example.ts";

const open = exampleSite("public").shown;
const inspector = exampleSite("inspector").shown;

describe("what the public edition shows of the example", () => {
  test("has public names, and words for a person marked for the inspector", () => {
    const whos = open.record.entries[0]?.hours.map(({ who }) => open.nameOf(who));
    expect(whos).toEqual(["Ada", SOMEONE]);
    expect(inspector.record.entries[0]?.hours.map(({ who }) => inspector.nameOf(who))).toEqual([
      "Ada Vollmer",
      "Jo Ferrand",
    ]);
  });

  test("leaves out an entry marked for the inspector with its hours, and sums what is left", () => {
    expect(open.record.entries.some(({ id }) => id === "2025-03-28-glue")).toBe(false);
    expect(open.evidence.assemblies.get("fin")?.minutes).toBe(210);
    expect(inspector.evidence.assemblies.get("fin")?.minutes).toBe(300);
  });

  test("keeps the state of a joint whose only batch is hidden, without the batch", () => {
    expect(open.evidence.joints.get("F-J3")).toMatchObject({ state: "not shown", batches: [], lots: [] });
    const findings = open.evidence.joints.get("F-J3")?.findings ?? [];
    expect(findings.map((finding) => [finding.rule, open.say(finding)])).toEqual([
      ["joint-glued", "Rests on something this edition does not show."],
      ["joint-cure", "Rests on something this edition does not show."],
    ]);
  });

  test("leaves a hidden timber lot out of batches, pieces and joints", () => {
    expect(open.evidence.batches.get("B-001")?.batch.timber).toEqual([]);
    expect(open.evidence.pieces.get("B-001/2")?.piece.lot).toBeUndefined();
    expect(open.evidence.joints.get("F-J1")?.lots).toEqual(["R-1", "H-1"]);
    expect(open.shows({ kind: "lot", id: "S-1" })).toBe(false);
  });

  test("tells that a measurement has a departure without telling which", () => {
    expect(open.record.entries.flatMap(({ measurements }) => measurements)[0]?.departure).toBe(WITHHELD);
    expect(open.shows({ kind: "departure", id: WITHHELD })).toBe(false);
  });

  test("has no supplier, certificate, scan or photograph for the inspector, where the inspector has them", () => {
    const told = (shown: typeof open): (string | undefined)[] => [
      shown.record.lots.get("R-1")?.supplier,
      shown.record.lots.get("R-1")?.certificate,
      shown.evidence.holdPoints.get("F-H1")?.inspections[0]?.scan,
      shown.record.entries[0]?.photos[1]?.file,
    ];
    expect(told(open)).toEqual([undefined, undefined, undefined, undefined]);
    expect(told(inspector)).toEqual(["Kettle Lane Stores", "certificates/r-1.pdf", "scans/visit.pdf", "photos/jo.jpg"]);
  });

  test("is dated by its own last entry, unless a date was given", () => {
    const record = exampleRecord();
    const last = record.entries.at(-1);
    if (last === undefined) throw new Error("no entries");
    const hidden = { ...record, entries: [...record.entries.slice(0, -1), { ...last, audience: "archive" as const }] };
    const dated = (day: string): string => editionOf({ ...hidden, day }, reckon(hidden), "inspector").record.day;
    expect(dated(last.day)).toBe("2025-03-28");
    expect(dated("2025-12-31")).toBe("2025-12-31");
  });
});

describe("a target in prose", () => {
  const whole = exampleRecord();
  const [first, ...others] = whole.entries;
  if (first === undefined) throw new Error("no entries");
  const photo = (file: string, audience: "public" | "archive") => ({ place: first.place, file, alt: "", audience });
  const photos = [photo("photos/a#b?c é.jpg", "archive"), photo("photos/jig.jpg", "public")];
  const record = { ...whole, entries: [{ ...first, photos }, ...others] };
  const hides = hiddenTargets(record, visibilityOf(record, "public"));

  test.each([
    ["a hidden photograph, its marks written as in an address", "../photos/a%23b%3Fc%20e%CC%81.jpg", true],
    ["the same by a longer way", "../entries/../photos/a%23b%3Fc %C3%A9.jpg", true],
    ["a hidden entry by its file", "2025-03-28-glue.md", true],
    ["a hidden entry by its id", "2025%2D03-28-glue", true],
    ["what the record does not know", "../photos/gone.jpg", true],
    ["a photograph that is shown", "../photos/jig.jpg", false],
    ["an address of the web", "https://example.org/photos/a%23b", false],
  ])("that is %s is hidden or not as the record reads it", (_what, target, is) => {
    expect(hides("entries", target)).toBe(is);
  });
});

describe("prose in an edition", () => {
  const made = exampleRecord();
  const visibility = visibilityOf(made, "public");
  const parser = markdownParser();
  const redacted = (markdown: string): readonly Passage[] =>
    redactedBody([{ audience: "public", line: 1, markdown }], visibility, (target) => target.includes("hidden"));
  /** As it would be on a page, but for where links lead. */
  const seen = (markdown: string): string =>
    redacted(markdown)
      .map(({ blocks, ...passage }) => {
        const tokens = blocks === undefined ? parser.parse(passage.markdown, {}) : [...blocks];
        return parser.renderer.render(tokens, parser.options, {}).replaceAll(/<\/?p>\n?/g, "");
      })
      .join("|");

  test.each([
    ["a link to a hidden thing becomes its words", "see [that day](2025-01-01-hidden.md) here", "see that day here"],
    ["a hidden image goes with its words", 'so ![a face](../photos/hidden.jpg "title") it was', "so  it was"],
    [
      "a hidden image in a link goes too",
      "[![a face](hidden.jpg)](https://example.org)",
      '<a href="https://example.org"></a>',
    ],
    ["brackets in the words of a link are kept", "[a [b] c](hidden)", "a [b] c"],
    ["the place of a hidden reference goes", '[x]: hidden.jpg "t"\nnext', "next"],
    [
      "a title goes with it, in whatever marks and on whatever line",
      "[x]: <hidden.jpg>\n  'a \\' t'\n[y]: hidden (t)\nnext ![a](hidden.jpg (t \\) t))",
      "next ",
    ],
    ["a place that is given twice goes", "[x]: ok\n[x]: hidden\n\n[a][x]", '<a href="ok">a</a>'],
    [
      "a hidden image by reference goes with its words",
      "![a face][x] ![x][] ![x] ![b [c] d][ X ]\n\n[x]: ../photos/hidden.jpg",
      "   ",
    ],
    [
      "a hidden link by reference becomes its words",
      "see [that *day*][x], [x][], [x].\n\n[x]: hidden.md 'on it'",
      "see that <em>day</em>, x, x.",
    ],
    [
      "a hidden image in a shown link goes, and one in a hidden link too",
      "[![a face][x]][y] [![a face](ok.jpg)][x]\n\n[y]: ok\n[x]: hidden",
      '<a href="ok"></a> <img src="ok.jpg" alt="a face">',
    ],
    ["an image keeps the words of a hidden link in it", "![see [b](hidden)](ok.jpg)", '<img src="ok.jpg" alt="see b">'],
    ["a target in disguise is hidden too", "[a](&#104;idden) [b](\\hidden) [c](<hidden x>)", "a b c"],
    ["an address between angles goes too", "see <tel:hidden>", "see tel:hidden"],
    ["code is shown as it was typed", "`[a](hidden)`", "<code>[a](hidden)</code>"],
  ])("%s", (_, typed, shown) => {
    expect(seen(typed)).toBe(shown);
  });

  test.each([
    '\\[a](hidden [b] [c][d] ![e] [f](ok "x',
    "[B-1](B-1) and ![x](../photos/y.jpg)",
    "[a][b] and a < b",
    "plain",
  ])("what names nothing hidden is left as it is: %s", (markdown) => {
    expect(redacted(markdown)).toEqual([{ audience: "public", line: 1, markdown }]);
  });

  test("nothing is kept of what a hidden target was read from", () => {
    const kept = redacted(
      "> - ![see [b](hidden.md)](ok.jpg) [a](hidden.md 'hidden.md') [c]\n\n[c]: ok\n[c]: hidden.md",
    );
    expect(JSON.stringify(kept)).not.toContain("hidden.md");
  });
});
