import { EXPLANATIONS, isProblemCode, PROBLEM_CODES, type ProblemCode } from "../problems/codes.ts";
import { nearest } from "../facts/nearest.ts";
import { plainly } from "../problem.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";

/**
 * Tells of one kind of problem, or lists them all.
 * @throws WrongUse where no problem has the code
 */
export async function explainCommand(code: string | undefined, { out }: Surroundings): Promise<number> {
  const word = code?.replace(/^\[(.*)\]$/, "$1").toLowerCase();
  if (word === undefined) out(listed());
  else if (isProblemCode(word)) out(explained(word));
  else {
    const meant = nearest(word, PROBLEM_CODES);
    throw new WrongUse(
      `No problem has the code ${word}. ${meant === undefined ? "" : `Did you mean ${meant}? `}List them all: scarfline explain`,
    );
  }
  return EXIT.fine;
}

function listed(): string {
  const width = Math.max(...PROBLEM_CODES.map((code) => code.length));
  return PROBLEM_CODES.map((code) => `${code.padEnd(width)}  ${EXPLANATIONS[code].title}\n`).join("");
}

function explained(code: ProblemCode): string {
  const { title, happened, why, mend, example } = EXPLANATIONS[code];
  return `${title}  [${code}]

What happened   ${happened}
Why it matters  ${why}
What to do      ${mend}

${typeof example === "string" ? `For example: ${example}` : `For example\n${example.map(shownLine).join("\n")}`}
`;
}

/** What stands there after - and what is written in its place after +, as in a comparison of two texts. */
function shownLine(line: string): string {
  const [, verb, file] = /^@ (new |delete |link )?(.+)$/.exec(line) ?? [];
  if (file === undefined) return `    ${plainly(line)}`;
  const said = { "new ": "a new file", "delete ": "without its file", "link ": "a symbolic link" }[verb ?? ""];
  return `  ${said === undefined ? "in" : said} ${file}`;
}
