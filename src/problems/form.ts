/** Keys and words: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const FORM = {
  "unknown-key": {
    title: "A key that is not known",
    happened: "A key stands where the form of the file has none of that name.",
    why: "A fact under a misspelt key would be lost in silence.",
    mend: "Write the key that was meant, or tell it in the prose.",
    example: ["@ entries/2025-03-08-caps.md", "- moisture: 10.5 %", "+ moisure: 10.5 %"],
  },
  "missing-key": {
    title: "A key is missing",
    happened: "Something that every fact of this kind has is not stated.",
    why: "Without it the fact says too little to be held against anything.",
    mend: "Add the key with what is so in your build.",
    example: ["@ assemblies/spar.md", "- , alt: The spar from the front", "+"],
  },
  empty: {
    title: "A key with nothing after it",
    happened: "A value is missing where one belongs.",
    why: "Nothing is guessed for it.",
    mend: "Write what it is, or take the line away.",
    example: ["@ entries/2025-03-08-caps.md", "- title: Spar caps glued", "+ title:"],
  },
  "unknown-word": {
    title: "A word that is not one of those known",
    happened: "Here one of a few words belongs, and another stands there.",
    why: "Rules go by these words; another could mean anything.",
    mend: "Use one of the words that are listed.",
    example: ["@ aircraft.md", "- units: metric", "+ units: SI"],
  },
  "unknown-task": {
    title: "A task that the aircraft does not have",
    happened: "A line of hours names a task that does not stand under `tasks` in aircraft.md.",
    why: "Hours are counted by task, and a slip would start another.",
    mend: "Use one of the tasks, or add this one to `tasks`.",
    example: ["@ entries/2025-03-08-caps.md", "- who: builder, task: gluing", "+ who: builder, task: glueing"],
  },
  "wrong-form": {
    title: "Text, a list or a block in the wrong place",
    happened: "A list stands where text belongs, or the other way round.",
    why: "The value cannot be read as what it should be.",
    mend: "Write it in the form of the example.",
    example: ["@ entries/2025-03-08-caps.md", "- timber: [S-1]", "+ timber: S-1"],
  },
  "no-assembly": {
    title: "A fact of no part",
    happened:
      "A measurement, a weighing, a departure or an open item stands in an entry of no assembly, and names none itself.",
    why: "It stands in the way of the hold points of its part: without one nobody would find it.",
    mend: "Add `assembly:` to it, or to the entry.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "- assembly: spar",
      "- hours:",
      "+ hours:",
      "- found: 162.6 mm, departure: D-1",
      "+ found: 162.6 mm, assembly: spar, departure: D-1",
      "- for: inspector }",
      "+ assembly: spar, for: inspector }",
    ],
  },
} as const satisfies Explained;
