/** What was asked at the bench and nobody has read, and what was taken back: neither becomes a fact that holds, and neither is lost. */
import { describe, expect, it } from "vitest";
import { benchFiles } from "../../src/bench/bench-file.ts";
import { dayFacts } from "../../src/bench/entry-facts.ts";
import type { Said } from "../../src/bench/event.ts";
import { foretell } from "../../src/bench/judged.ts";
import { conditionWords } from "../../src/bench/refusals.ts";
import { restored } from "../../src/bench/restored.ts";
import type { Session } from "../../src/bench/session.ts";
import { stepOf } from "../../src/bench/step.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { givenOf, MADE, recordOf, sessionOfTaps } from "./given.ts";
import { ASKING_RECORD, BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
const BEGUN: Said = {
  kind: "began",
  of: "gluing",
  tins: { adhesive: "two-part", lots: { resin: "R-1", hardener: "H-1" }, scale: "0.1 g" },
  firstBatch: "B-002",
};
const TO_READINGS: readonly Said[] = [BEGUN, { kind: "joint", joint: "RD-J02", on: true }, { kind: "joints chosen" }];
const CUP: readonly Said[] = [
  { kind: "timber", lots: ["S-1"] },
  { kind: "amount", cup: 0, part: "resin", typed: "40.0 g" },
  { kind: "mixed", cup: 0 },
  { kind: "poured", cup: 0 },
  { kind: "amount", cup: 0, part: "hardener", typed: "17.6 g" },
  { kind: "closed", cup: 0, joint: "RD-J02" },
];
const UNREAD: readonly Said[] = [
  { kind: "reading", of: "temperature" },
  { kind: "reading", of: "humidity" },
  { kind: "reading", of: "moisture" },
  { kind: "prepared" },
];
const BREAKING: Said = { kind: "began", of: "breaking", pieces: ["B-001/1", "B-001/2"] };

const sessionAfter = (said: readonly Said[]): Session => sessionOfTaps(said, MADE, 30);

async function builtWith(files: { readonly [path: string]: string }, said: readonly Said[]) {
  const given = givenOf(await recordOf(scratch(), files));
  const written = benchFiles(sessionAfter(said), given, "r");
  const record = await recordOf(scratch(), {
    ...files,
    ...Object.fromEntries(written.map(({ path, text }) => [path, text])),
  });
  return { given, record, evidence: reckon(record), text: written.map(({ text }) => text).join("") };
}

describe("What nobody has read at the bench", () => {
  it("is asked once, and the next question follows", async () => {
    const given = givenOf(await recordOf(scratch(), ASKING_RECORD));
    const asked = UNREAD.map((_, n) =>
      stepOf(sessionAfter([...TO_READINGS, ...UNREAD.slice(0, n)]), given, () => true),
    );
    expect(asked).toEqual([
      { step: "reading", of: "temperature" },
      { step: "reading", of: "humidity" },
      { step: "reading", of: "moisture" },
      { step: "prepared" },
    ]);
    expect(stepOf(sessionAfter([...TO_READINGS, ...UNREAD]), given, () => true)).toEqual({ step: "timber" });
  });

  it("stands in no file, and holds for nothing: the build says of each that it is not noted, as the page foretells", async () => {
    const said = [...TO_READINGS, ...UNREAD, ...CUP];
    const { given, record, evidence, text } = await builtWith(ASKING_RECORD, said);
    expect(text).not.toMatch(/shop:|temperature|humidity|moisture|prepared/);
    const batch = evidence.batches.get("B-002");
    const limits = ["shop-temperature", "shop-humidity", "wood-moisture", "glue-up"];
    const holds = batch?.findings.filter(
      ({ rule, code, severity }) => limits.includes(rule) && severity === "meets" && !code.endsWith("/no-limits"),
    );
    expect(holds).toEqual([]);
    expect(batch?.findings.map(({ code }) => code)).toContain("shop-temperature/not-noted");
    const session = sessionAfter(said);
    const { batches } = foretell(restored(given), dayFacts(session, given));
    expect(batches.map(({ verdict }) => verdict)).toEqual([batch?.verdict]);
    expect(batch?.verdict).not.toBe("shown");
    expect(conditionWords(session, given, restored(given), MADE).filter(({ isAgainst }) => isAgainst).length).toBe(3);
    expect(record.entries.flatMap(({ batches }) => batches).find(({ id }) => id === "B-002")?.temperature).toBe(
      undefined,
    );
  });

  it("of a broken piece is no share: that piece shows nothing where a share is asked", async () => {
    const { evidence, text } = await builtWith(BENCH_RECORD, [
      BREAKING,
      { kind: "broke", piece: "B-001/1", failure: "wood" },
      { kind: "share", piece: "B-001/1" },
      { kind: "load", piece: "B-001/1", typed: "331 lbf" },
      { kind: "not broken", piece: "B-001/2" },
    ]);
    expect(text).not.toContain("wood_failure");
    expect(evidence.pieces.get("B-001/1")?.verdict).toBe("inconclusive");
  });
});

describe("What was taken back with a reason", () => {
  const back = (event: number, why = "tapped by mistake"): Said => ({ kind: "undone", event: `e${event}`, why });

  it("stays in words in the file of a day on which nothing was broken in the end", async () => {
    const { record, text } = await builtWith(BENCH_RECORD, [
      BREAKING,
      { kind: "broke", piece: "B-001/1", failure: "glue line" },
      back(1),
      { kind: "not broken", piece: "B-001/1" },
      { kind: "not broken", piece: "B-001/2" },
    ]);
    const words = "first noted at 11:00:30: B-001/1 broke: glue line; taken back: tapped by mistake";
    expect(text.endsWith(`---\n\n${words}\n`)).toBe(true);
    const entry = record.entries.find(({ title }) => title === "No piece was broken");
    expect(entry?.body.map(({ markdown }) => markdown).join("")).toContain(words);
  });

  it("stays with the value that it had, whatever was asked", async () => {
    const given = givenOf(await recordOf(scratch(), ASKING_RECORD));
    const said: readonly Said[] = [
      ...TO_READINGS,
      { kind: "reading", of: "temperature", typed: "12.0 °C" },
      back(3, "read wrongly"),
      { kind: "reading", of: "temperature", typed: "18.0 °C" },
      { kind: "reading", of: "humidity" },
      { kind: "reading", of: "moisture", typed: "10.0 %" },
      { kind: "prepared", at: MADE - 36_000 },
      back(8, "it changed"),
      { kind: "prepared", at: MADE },
      ...CUP,
    ];
    const [file] = benchFiles(sessionAfter(said), given, "r");
    expect(file?.text).toContain("first noted at 11:01:30: temperature 12.0 °C; taken back: read wrongly");
    expect(file?.text).toContain("first noted at 11:04: surfaces finished at 01:00; taken back: it changed");
  });

  it.each<{ shows: string; marked: { readonly [path: string]: string }; words: string; pieces: string }>([
    { shows: "everyone", marked: {}, words: "wood S-1", pieces: "2 pieces, S-1, three-leg" },
    {
      shows: "the archive alone",
      marked: { "lots/S-1.md": (BENCH_RECORD["lots/S-1.md"] ?? "").replace(/^---\n/, "---\nfor: archive\n") },
      words: "wood a lot that not every edition names",
      pieces: "2 pieces, a lot that not every edition names, three-leg",
    },
  ])("names a lot that is for $shows as every edition may", async ({ marked, words, pieces }) => {
    const given = givenOf(await recordOf(scratch(), { ...BENCH_RECORD, ...marked }));
    const said: readonly Said[] = [
      ...TO_READINGS,
      { kind: "timber", lots: ["S-1"] },
      back(3, "read wrongly"),
      { kind: "timber", lots: [] },
      ...CUP.slice(1),
      { kind: "pieces", cup: 0, count: 2, procedure: "three-leg", lot: "S-1", sizes: {}, now: false },
      back(11, "it changed"),
      { kind: "pieces", cup: 0, count: 0, sizes: {}, now: false },
    ];
    const text = benchFiles(sessionAfter(said), given, "r")[0]?.text;
    expect(text).toContain(`first noted at 11:01:30: ${words}; taken back: read wrongly`);
    expect(text).toContain(`: ${pieces}; taken back: it changed`);
    expect(text?.includes("S-1")).toBe(words === "wood S-1");
  });
});
