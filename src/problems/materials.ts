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

const CLEAR = [
  "@ new finishes/clear.md",
  "+ ---",
  "+ title: Clear varnish",
  "+ kind: varnish",
  "+ sheet: Sheet C, revision 1",
];

const COATS = [
  ...CLEAR,
  "+ ---",
  "@ new entries/2025-04-01-varnish.md",
  "+ ---",
  "+ date: 2025-04-01",
  "+ title: Varnish",
  "+ assembly: spar",
  "+ coats:",
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
  "coat-twice": {
    title: "A coat that is there already",
    happened:
      "Two lines have the same coat of the same product at the same place, and nothing was taken off between them.",
    why: "How many coats there are, and how long after one the next was put on, is told by their numbers.",
    mend: "Say which coat it was, or under `stripped` how what stood there was taken off.",
    example: [...COATS, "+   - { where: Bay 1, finish: clear }", "+   - { where: Bay 1, finish: clear }", "+ ---"],
  },
  "dry-before-coat": {
    title: "Dry before it was put on",
    happened: "A coat was found dry at a time before it was put on.",
    why: "A slipped digit would make a coat dry that was not.",
    mend: "Correct one of the two times; 24:20 is twenty past midnight.",
    example: [...COATS, '+   - { where: Bay 1, finish: clear, at: "14:00", dry: "9:00" }', "+ ---"],
  },
  "recoat-never": {
    title: "No time for the next coat",
    happened:
      "By the sheet as entered the next coat may come no sooner than some time, and no later than an earlier one.",
    why: "No coat could be as the sheet asks.",
    mend: "Look at both times on the sheet.",
    example: [...CLEAR, "+ recoat: { after: 24 h, within: 4 h }", "+ ---"],
  },
  "lot-without-product": {
    title: "A lot of finish without its product",
    happened: "It is not said of which product the lot is.",
    why: "What is put on is held against the sheet of its product.",
    mend: "Add `finish:` with the product that it is of.",
    example: [
      "@ new lots/V-1.md",
      "+ ---",
      "+ title: Varnish",
      "+ material: finish",
      "+ received: 2025-01-20",
      "+ ---",
    ],
  },
} as const satisfies Explained;
