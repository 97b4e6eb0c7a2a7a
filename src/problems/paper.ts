/** Papers: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const PAPER = {
  "no-typesetter": {
    title: "PDFs are asked for, and Typst is not there",
    happened: "With --paper PDFs are set by Typst, which is no part of Scarfline and was not found beside it.",
    why: "It takes some 50 MB, and most builds need none.",
    mend: "Install it once where Scarfline is installed, or leave --paper out and print appendix.html.",
    example: "`scarfline build --edition inspector --paper` where only Scarfline itself is installed",
  },
} as const satisfies Explained;
