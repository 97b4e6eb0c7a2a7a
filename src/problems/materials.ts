/** What is bought in and put on: what is told of each problem. */
import type { Explained } from "./explained.ts";

const BOLTS = [
  "@ new lots/BO-1.md",
  "+ ---",
  "+ title: Bolts",
  "+ material: part",
  "+ received: 2025-01-20",
  "+ ---",
  "@ new entries/2025-04-01-bolts.md",
  "+ ---",
  "+ date: 2025-04-01",
  "+ title: Bolts",
  "+ assembly: spar",
  "+ fitted:",
];

export const MATERIALS = {
  "fitted-over": {
    title: "A part where another stands",
    happened: "A part is fitted where another stands by an earlier line, and nothing says that it was taken out.",
    why: "What is in the aircraft stays until it is said to be out: a recalled part would be lost under the new one.",
    mend: "Say under `replaces` which lot was taken out there, or call the place by words of its own.",
    example: [...BOLTS, "+   - { where: Hinge, lot: BO-1 }", "+   - { where: Hinge, lot: BO-1 }", "+ ---"],
  },
  "nothing-to-replace": {
    title: "A part in place of nothing",
    happened: "A part is said to replace one, and no earlier line has one at that place.",
    why: "What it replaced would still stand where its own line says.",
    mend: "Give the words of the earlier line, or take `replaces` away if nothing stood there.",
    example: [...BOLTS, "+   - { where: Hinge, lot: BO-1, replaces: BO-1 }", "+ ---"],
  },
} as const satisfies Explained;
