/** What cannot be read as text, YAML or prose: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const TEXT = {
  encoding: {
    title: "The file is not UTF-8",
    happened: "The bytes of the file are no UTF-8 text, and do not begin with a mark that says what else they are.",
    why: "Read in a wrong encoding, letters and signs such as ° and ± become others.",
    mend: "Open the file in the encoding it was saved in, and save it as UTF-8.",
    example: "An entry saved as ANSI by an editor of Windows, with a ° in it.",
  },
  "control-character": {
    title: "A character that no editor shows",
    happened: "A NUL, a carriage return alone or another control character stands in the text.",
    why: "What nobody sees can hide what is written, or cut it off.",
    mend: "Take it out; save the file with line ends of one kind.",
    example: ["@ entries/2025-03-08-caps.md", "- More next week.", "+ More next week.\u0007"],
  },
  limit: {
    title: "More than is read",
    happened: "Something in the record is larger, longer, deeper or more than the program reads, or of another age.",
    why: "Beyond such limits a slip or a broken file would stop the whole program.",
    mend: "Make it shorter, or part it; if it is right as it is, say so to those who keep the program.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "- More next week.",
      "+ > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > > More next week.",
    ],
  },
  fence: {
    title: "The front matter does not begin or end",
    happened:
      "The facts of a file stand between two lines of --- alone, and one of the two is missing, late or not alone.",
    why: "Without both lines nothing tells the facts from the prose.",
    mend: "Put --- alone on the first line, and again alone on the line after the last fact.",
    example: ["@ new lots/S-2.md", "+ title: Spruce"],
  },
  "yaml-syntax": {
    title: "The facts cannot be read as YAML",
    happened: "A colon, a bracket, a quotation mark or the indentation is not as YAML has it.",
    why: "A guess at what was meant could state another fact.",
    mend: "Mend the line; where text has a colon or # in it, put it in quotation marks; where several keys stand on one line, put braces around them.",
    example: [
      "@ entries/2025-03-15-pieces.md",
      "- { who: builder, task: testing, time: 45 min }",
      "+ who: builder, task: testing, time: 45 min",
    ],
  },
  "yaml-feature": {
    title: "A feature of YAML that is not used here",
    happened: "A reference, a name or a tag stands where a value belongs.",
    why: "Values are read as they are typed; what points elsewhere could change without being seen.",
    mend: "Write the value itself, or put the text in quotation marks.",
    example: ["@ entries/2025-03-08-caps.md", "- title: Spar caps glued", "+ title: !!str Spar caps glued"],
  },
  "lost-comment": {
    title: "# would cut this text",
    happened: "A # follows a blank, and what follows it is a comment for YAML.",
    why: "The rest of the text would be lost without a word.",
    mend: "Put the whole text in quotation marks.",
    example: ["@ entries/2025-03-08-caps.md", "- title: Spar caps glued", "+ title: Spar cap #2 glued"],
  },
  "decimal-comma": {
    title: "A comma in a number",
    happened: "A comma can part thousands, decimals, or two values of a line.",
    why: "Read one way or the other, the number differs a thousandfold.",
    mend: "Write decimals with a point, and thousands without a mark.",
    example: ["@ entries/2025-03-08-caps.md", "- scale: 0.1 g", "+ scale: 0,1 g"],
  },
  "duplicate-key": {
    title: "A key stands there twice",
    happened: "Two values are given under one key of one block.",
    why: "Only one of them can be true, and nothing tells which.",
    mend: "Keep the one that is right.",
    example: ["@ entries/2025-03-08-caps.md", "- moisture: 10.5 %", "+ moisture: 10.5 %", "+     moisture: 11.5 %"],
  },
  passage: {
    title: "A passage for certain readers is not clear",
    happened: "A line with ::: does not open or close a passage, or names readers that are unknown.",
    why: "Where it is not clear for whom a passage is, it could be published to everybody.",
    mend: "Write ::: inspector or ::: archive on a line alone before it, and ::: on a line alone after it.",
    example: ["@ entries/2025-03-08-caps.md", "- ::: inspector", "+ ::: inspecter"],
  },
  "html-comment": {
    title: "A comment in HTML",
    happened: "Prose is shown as it is typed, and so this comment would be, too.",
    why: "What was meant for nobody would be published.",
    mend: "Take it out, or put it into a passage for the archive.",
    example: ["@ entries/2025-03-08-caps.md", "- More next week.", "+ More next week. <!-- ask Odo first -->"],
  },
  "prose-link": {
    title: "A link that leads nowhere",
    happened: "A link in prose names nothing that the record has, or an address that is not shown.",
    why: "A reader who follows it finds nothing.",
    mend: "Write an id, an entry's file name, a declared file, or a web address.",
    example: ["@ entries/2025-03-08-caps.md", "- [the spruce](S-1)", "+ [the spruce](S-9)"],
  },
  "prose-picture": {
    title: "A picture that is not declared",
    happened: "Prose shows a picture that does not stand under `photos`, or that is elsewhere.",
    why: "Only what is declared has a text for those who cannot see it, and is known for whom it is.",
    mend: "Declare it under `photos` with its `alt`.",
    example: ["@ entries/2025-03-08-caps.md", "- ![](../photos/jig.jpg)", "+ ![](../drawings/spar.svg)"],
  },
} as const satisfies Explained;
