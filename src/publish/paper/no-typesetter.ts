import { TYPESETTER } from "../../pages/appendix/typesetter.ts";
import type { Problem } from "../../problem.ts";

/** Of the command and not of the record: its place is the option that asks for PDFs. */
export const NO_TYPESETTER: Problem = {
  file: "--paper",
  line: 1,
  column: 1,
  code: "no-typesetter",
  message: "PDFs cannot be made: Typst is not here",
  expected: `the package ${TYPESETTER.join(" ")} beside Scarfline`,
  found: "none that this machine can load",
  mend: `npm install ${TYPESETTER.join("@")} where Scarfline is installed; or leave --paper out, and print appendix.html`,
};
