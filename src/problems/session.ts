/** What a gluing session says in few words: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const SESSION = {
  "mix-said-twice": {
    title: "The mix said twice",
    happened: "`mix` gives a time or an amount that stands in the batch beside it as well.",
    why: "Of two that differ nobody could say which was meant.",
    mend: "Keep one of the two.",
    example: ["@ entries/2025-03-08-caps.md", "- scale: 0.1 g", "+ scale: 0.1 g", '+     mix: { at: "14:20" }'],
  },
  "in-use-hidden": {
    title: "What is in use, in a hidden entry",
    happened: "`in_use` stands in an entry with `for`, which not every edition shows.",
    why: "Batches that everyone sees would rest on what not everyone may see.",
    mend: "Say it in an entry that all may read.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "- date: 2025-03-08",
      "+ date: 2025-03-08",
      "+ for: archive",
      "+ in_use: { scale: 0.1 g }",
    ],
  },
  "in-use-no-adhesive": {
    title: "A lot in use, of no adhesive",
    happened: "`in_use` names a lot of a part of an adhesive, and neither it nor an earlier one names the adhesive.",
    why: "A batch takes the lots in use for its adhesive and for no other.",
    mend: "Name the adhesive that the lot is a part of.",
    example: ["@ entries/2025-03-08-caps.md", "- date: 2025-03-08", "+ date: 2025-03-08", "+ in_use: { resin: R-1 }"],
  },
  "in-use-on-another-day": {
    title: "Another day, and what was in use",
    happened: "An amendment moves an entry to another day, and a batch in it stands by what was in use on the first.",
    why: "What was in use on one day need not have been on the other.",
    mend: "State in the same amendment what the batch was made with.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "- date: 2025-03-08",
      "+ date: 2025-03-08",
      "+ in_use: { scale: 0.1 g }",
      "-     scale: 0.1 g",
      "-     resin",
      "+     resin",
      "@ entries/2025-03-15-pieces.md",
      "- date: 2025-03-15",
      "+ date: 2025-03-15",
      "+ amends: [{ entry: 2025-03-08-caps, why: It was the day before, date: 2025-03-07 }]",
    ],
  },
  "wrong-procedure": {
    title: "A procedure of another kind",
    happened: "A glue-up names a procedure of test pieces, or a piece one of glue-ups.",
    why: "What is done and how a piece is judged would be read from the wrong page.",
    mend: "Name the procedure that was followed.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "-     scale: 0.1 g",
      "+     scale: 0.1 g",
      "+     glue_up: { by: three-leg }",
    ],
  },
  "glue-up-out-of-order": {
    title: "Times of a glue-up out of order",
    happened: "Surfaces were finished, spread, clamped or let go before what comes before that.",
    why: "How long a surface waited and a joint stood under clamps cannot be reckoned from it.",
    mend: "Correct the time, or say on which day it was.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "-     scale: 0.1 g",
      "+     scale: 0.1 g",
      '+     glue_up: { spread: "14:30", on: "14:25" }',
    ],
  },
  "heated-when": {
    title: "A heating that ends when it cannot have",
    happened: "Joints are said to have been heated until before they were warm, or until after the day of the entry.",
    why: "How long they were warm is reckoned from the one to the other.",
    mend: "Correct the times, or note it in the entry of the day on which it ended.",
    example: [
      "@ entries/2025-03-15-pieces.md",
      "- tests:",
      "+ post_cures:",
      '+   - { joints: [SP-J01], temperature: 60 °C, from: "2025-03-15 09:00", to: "2025-03-14 09:00" }',
      "+ tests:",
    ],
  },
} as const satisfies Explained;
