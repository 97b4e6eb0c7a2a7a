/** Figures that the story tells in words, by the facts that stand beside it. */
import { describe, expect, it } from "vitest";
import { demo, entries, batches, joints, lotOf, prose } from "./told.ts";

const hours = (is: (day: string, who: string, task: string) => boolean): number =>
  entries.reduce(
    (sum, { day, hours: worked }) =>
      sum + worked.reduce((some, { who, task, minutes }) => some + (is(day, who, task) ? minutes / 60 : 0), 0),
    0,
  );

function expectWords(entry: string, ...words: readonly string[]): void {
  expect(words.filter((one) => !prose(entry).includes(one))).toEqual([]);
}

describe("Hours in the story", () => {
  it("of the first autumn, by hand and by what for", () => {
    const until = (day: string): boolean => day <= "2024-11-28";
    const [mine, others] = [true, false].map((me) => hours((day, who) => until(day) && (who === "builder") === me));
    expectWords("2024-11-28-sticky-arithmetic", "not quite sixty hours from me, eighteen from the others");
    expect([mine, Math.round(others ?? 0)]).toEqual([57.5, 18]);
    const told = [["lofting", "jigging", "housekeeping"], ["shaping"], ["gluing"], ["testing"]].map((tasks) =>
      Math.round(hours((day, _who, task) => until(day) && tasks.includes(task))),
    );
    expect(told).toEqual([25, 23, 23, 5]);
    expectWords(
      "2024-11-28-sticky-arithmetic",
      "straight | 25 |",
      "thinner | 23 |",
      "gluing | 23 |",
      "breaking what was glued | 5 |",
    );
  });

  it("of the second autumn, a week", () => {
    const weeks = (Date.parse("2025-10-15") - Date.parse("2024-08-19")) / (7 * 86_400_000);
    const each = [hours((day) => day <= "2025-10-15"), hours((day, who) => day <= "2025-10-15" && who === "builder")];
    expectWords("2025-10-15-an-honest-forecast", "a bit over five a week", "not four of those were mine");
    expect(each.map((all) => Number((all / weeks).toFixed(1)))).toEqual([5.3, 3.8]);
  });
});

describe("Numbers in the story", () => {
  it("of slips on the nail, one for each cup and each stick", () => {
    const before = entries.filter(({ day }) => day < "2026-01-21");
    const slips = before.reduce((sum, { tests, batches: cups }) => sum + tests.length + cups.length, 0);
    expectWords("2026-01-21-in-my-own-hand", "A hundred and thirty-seven of them");
    expect(slips).toBe(137);
  });

  it("of square metres that somebody will hang from", () => {
    expectWords("2024-10-05-first-breaks", "eleven square metres");
    expect(Math.round([...joints.values()].reduce((sum, { area }) => sum + (area?.value ?? 0), 0))).toBe(11);
  });

  it("of what the recalled hardener went into, and of the Saturdays that it cost", () => {
    const from = batches.filter(({ hardener }) => hardener?.lot === "H-3");
    expectWords("2026-02-14-a-letter", "seven batches, ten joints, three of them on the wing");
    const into = new Set(from.flatMap((batch) => batch.joints));
    expect([from.length, into.size, [...into].filter((id) => id.startsWith("WR-")).length]).toEqual([7, 10, 3]);
    const saturdays = entries.filter(
      ({ day }) => day > "2026-02-14" && day <= "2026-05-10" && new Date(day).getUTCDay() === 6,
    );
    expectWords("2026-05-10-mostly-waiting", "eleven Saturdays");
    expect(saturdays).toHaveLength(11);
  });
});

/** m */
const BOARD = 4.6;
const STICK = 3.2;

describe("Lengths", () => {
  it("of the caps come out of the boards, scarfed, sawn apart and scarfed again, with no two scarfs of one above each other", () => {
    const scarf = 12 * 0.012;
    const spar = 8.2;
    expectWords("2024-10-12-scarfs-on-the-kitchen-scale", `The boards are ${BOARD} m and the caps are ${spar}`);
    const left = BOARD - scarf;
    expectWords("2024-10-26-the-same-scarfs-again", "lost 290 mm from each lamination");
    expect(Math.round((2 * BOARD - 2 * left) * 100) / 100).toBe(0.29);
    expect(2 * left - scarf).toBeGreaterThan(spar);
    expect(left - (spar - left)).toBeGreaterThan(4 * scarf);
  });

  it("of a longeron too, with its tail left long", () => {
    const scarf = 12 * 0.02;
    const first = 2 * STICK - scarf;
    const again = first - 2 * scarf;
    const side = entries
      .flatMap(({ measurements }) => measurements)
      .find(({ what }) => what.startsWith("Length of the left side"));
    expectWords("2026-02-28-two-sides-come-apart", "half a metre a stick", "six metres and a bit");
    expect([first, again].map((one) => Number(one.toFixed(2)))).toEqual([6.16, 5.68]);
    expect(again).toBeGreaterThan(4.881);
    expect(side?.found.typed).toBe("4881 mm");
  });

  /** What an entry's cut went into, in the unit of the lot. */
  const NEEDED: readonly (readonly [entry: string, lot: string, needed: number])[] = [
    ["2025-01-11-out-of-order", "A-1", 8 * 0.044 * 0.015 * 0.7],
    ["2025-02-22-bearers-again", "A-1", 2 * 0.044 * 0.012 * 0.7],
    ["2026-01-24-a-former-for-the-hoop", "S-4", (14 * 2.5) / 2],
    ["2026-05-02-the-hoop-twice", "S-4", (14 * 2.5) / 2],
    ["2026-05-16-the-beam", "A-1", 5 * 0.02 * 0.078 * 1.1],
    ["2026-05-30-two-syringes", "P-3", 2 * 1.1 * 0.1],
    ["2026-06-27-left-bow", "S-4", 6 * 1.55],
    ["2026-07-04-right-bow-in-the-heat", "S-4", 6 * 1.55],
    ["2026-08-08-skins", "P-3", 4 * 2.44 * 0.376],
  ];

  it("and volumes that were cut are enough for what was made, and no more than twice as much", () => {
    const off = NEEDED.filter(([id, lot, needed]) => {
      const cut = entries.find((entry) => entry.id === id)?.cuts.find((one) => one.lot === lot)?.amount.value ?? 0;
      return cut < needed - 1e-9 || cut > 2 * needed;
    });
    expect(off).toEqual([]);
  });
});

/** Length of a scarf beside its sheet, by the thickness of what is scarfed; mm. */
const SCARFED: readonly (readonly [joint: string, thickness: number])[] = [
  ["WS-J05", 12],
  ["WS-J12", 3],
  ["FS-J01", 20],
  ["FS-J02", 20],
];

describe("Scarfs", () => {
  it("are twelve times as long as what they join is thick, in ply too", () => {
    const slopes = SCARFED.map(([id, thickness]) => {
      const [, length = Number.NaN] = /\d+ of (\d+) ×/u.exec(joints.get(id)?.drawing ?? "")?.map(Number) ?? [];
      return [id, Math.round(length / thickness)];
    });
    expect(slopes).toEqual(SCARFED.map(([id]) => [id, 12]));
    const scarfed = [...joints.values()].filter(({ title }) => title.startsWith("Scarfs"));
    expect(scarfed.map(({ id }) => id).sort()).toEqual(SCARFED.map(([id]) => id).sort());
  });
});

describe("What was promised", () => {
  it("to be on file is on file: sticks of a drawer, wax before it is closed in, and a line that was measured", () => {
    const sticks = batches.find(({ id }) => id === "B-026")?.pieces ?? [];
    expectWords("2026-02-24-old-sticks", "four spare sticks");
    expect(sticks).toHaveLength(7);
    expectWords("2025-08-16-ribs-one-to-four", "got its drop of water");
    expectWords("2025-04-26-the-envelope", "Spruce is planed, or scraped, and not sanded at all");
    expect(prose("2026-06-20-a-curve-to-live-with")).toContain("I measured it for the file");
    const curve = entries
      .find(({ id }) => id === "2026-06-20-a-curve-to-live-with")
      ?.measurements.map(({ found }) => found.typed);
    expect(curve).toEqual(["3 mm"]);
  });
});

describe("Orders", () => {
  it("come after what they were ordered for, and on the day that the story says", () => {
    const told: readonly (readonly [lot: string, after: string, said: string, words: string])[] = [
      ["R-2", "2025-04-05", "2025-05-03-the-web-again-scraped", "First cup from the new tins"],
      ["OR-1", "2025-05-03", "2025-05-10-hair", "A parcel came on Thursday with the slow adhesive"],
      ["R-3", "2025-08-30", "2025-09-06-the-jar-is-opened", "A delivery came"],
      ["R-4", "2026-02-14", "2026-02-28-two-sides-come-apart", "The replacement came yesterday"],
    ];
    const off = told.filter(([lot, after, said, words]) => {
      const { received } = lotOf(lot);
      return !(received > after && received <= said.slice(0, 10) && prose(said).includes(words));
    });
    expect(off).toEqual([]);
    expect(new Date(lotOf("OR-1").received).getUTCDay()).toBe(4);
    expect([...demo.lots.values()].filter(({ received }) => received > demo.day)).toEqual([]);
  });
});
