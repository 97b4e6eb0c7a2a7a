/** Everything that is told of a few batches, word for word. Renew with `vitest -u`, and read what changed. */
import { expect, it } from "vitest";
import { reckon } from "./reckoned.ts";
import type { SaidFinding } from "./reckoned.ts";
import type { Record } from "../../src/facts/types.ts";
import { adhesive, batch, DAY, entry, glued, lot, LOTS, piece, procedure, test } from "./make.ts";
import { celsius, d, fahrenheit, g, inches, ml, mm, moment, newton, pc } from "./quantities.ts";

const line = ({ about, rule, severity, sentence, limit }: SaidFinding): string =>
  [
    `${about.id}  ${rule}  ${severity}`,
    `    ${sentence}`,
    ...(limit ? [`    limit: ${limit.text}`, `    from: ${limit.from.text} (${limit.from.known})`] : []),
  ].join("\n");

function told(record: Record): string {
  const evidence = reckon(record);
  const verdicts = [...evidence.batches.values()].map((file) => `${file.batch.id} is ${file.verdict}`);
  const joints = [...evidence.joints.values()].map((file) => `${file.joint.id} is ${file.state}`);
  return `${[...verdicts, ...joints].join("\n")}\n\n${evidence.findings.map(line).join("\n")}\n`;
}

const bare = {
  resin: undefined,
  hardener: undefined,
  scale: undefined,
  mixed: undefined,
  closed: undefined,
  temperature: undefined,
  humidity: undefined,
  surface: undefined,
  moisture: undefined,
  timber: [],
  pieces: [],
};
const silent = {
  byMass: undefined,
  density: undefined,
  workingLife: [],
  temperature: undefined,
  humidity: undefined,
  shelfLife: undefined,
  woodMoisture: undefined,
};

const CASES: { readonly [name: string]: () => Record } = {
  "in-order": () => glued([batch("B-1")], [test("B-1/1", { load: newton("1500") })]),
  "nothing-noted": () => glued([batch("B-1", bare)], []),
  "nothing-noted-and-sheet-silent": () => glued([batch("B-1", bare)], [], { adhesives: [adhesive(silent)] }),
  "sheet-silent": () =>
    glued([batch("B-1")], [test("B-1/1")], {
      adhesives: [adhesive(silent)],
      lots: [lot("R-1", { expiry: undefined }), ...LOTS.slice(1)],
    }),
  "everything-broken": () =>
    glued(
      [
        batch("B-1", {
          hardener: { lot: "H-1", mass: g("30.0") },
          temperature: celsius("12"),
          humidity: pc("90"),
          surface: celsius("11"),
          moisture: pc("18"),
          closed: moment(DAY, "15:30"),
          pieces: [
            piece("B-1", 1),
            piece("B-1", 2, { overlap: mm("24.0") }),
            piece("B-1", 3, { overlap: mm("6.0") }),
            piece("B-1", 4, { thickness: undefined }),
            piece("B-1", 5, { trial: "T" }),
          ],
        }),
      ],
      [
        test("B-1/1", { failure: "glue line", woodFailure: pc("10") }),
        test("B-1/2", { woodFailure: undefined }),
        test("B-1/3", { failure: "mixed", woodFailure: pc("60") }),
        test("B-1/4", { at: undefined, load: newton("700") }, "2025-03-12"),
        test("B-1/5", { failure: "mixed", woodFailure: undefined, load: newton("700") }),
      ],
      {
        lots: [
          lot("R-1", { expiry: "2025-03-01" }),
          lot("H-1", { material: "hardener", expiry: undefined, received: "2024-01-10" }),
          ...LOTS.slice(4),
        ],
        procedures: [procedure({ leastCure: { time: d("3"), temperature: celsius("20") } })],
      },
    ),
  "by-volume-in-imperial": () =>
    glued(
      [
        batch("B-1", {
          resin: { lot: "R-1", volume: ml("40") },
          hardener: { lot: "H-1", volume: ml("24") },
          scale: undefined,
          temperature: fahrenheit("68"),
          surface: undefined,
          moisture: undefined,
          pieces: [
            piece("B-1", 1, { thickness: inches(1, 4), width: inches(1, 4), overlap: inches(1, 1) }),
            piece("B-1", 2, { width: undefined }),
            piece("B-1", 3),
          ],
        }),
      ],
      [test("B-1/1", { load: newton("1500") }), test("B-1/2", { load: newton("1500") })],
      { units: "imperial", procedures: [procedure({ pieces: 3, overlap: undefined })] },
    ),
  "recalled-reworked-rejected": () => {
    const day = "2025-04-01";
    const id = `${day}-notices`;
    const place = { file: "", line: 1, column: 1 };
    const notices = entry(id, {
      recalls: [
        { place, entry: id, day, lot: "R-1", why: "The maker's own notice." },
        { place, entry: id, day, lot: "S-1", why: "brash" },
      ],
      rejections: [{ place, entry: id, day, batch: "B-2", why: "lumpy" }],
      reworks: [{ place, entry: id, day, joints: ["W-2"], why: "off ratio" }],
    });
    const second = batch("B-2", { joints: ["W-1", "W-2"], resin: { lot: "R-2", mass: g("40.0") }, timber: [] });
    return glued(
      [batch("B-1", { pieces: [piece("B-1", 1, { lot: "S-1" })] }), second],
      [test("B-1/1"), test("B-2/1")],
      { entries: [notices] },
    );
  },
};

it.each(Object.keys(CASES))("What is told of a batch with %s is as the golden has it", async (name) => {
  await expect(told((CASES[name] as () => Record)())).toMatchFileSnapshot(`goldens/${name}.txt`);
});
