/** How verdicts that were judged anew are told on a terminal. */
import type { Difference, Judgement } from "../archive/judged/compare.ts";
import type { JudgedAnew } from "../archive/judged/judged.ts";
import { printable } from "../archive/finding.ts";
import { RULES_VERSION } from "../evidence/version.ts";
import { dateWords } from "../words/dates.ts";
import { counted } from "../words/lists.ts";
import type { Surroundings } from "./surroundings.ts";
import { problemWords } from "./teller.ts";

/** Each thing that is judged otherwise with both reasons, then what is only called otherwise, then the sum of it. */
export function tellJudged(judged: JudgedAnew, line: (text: string) => void, surroundings: Surroundings): void {
  const by = `by the rules of version ${RULES_VERSION} as of ${dateWords(judged.day)}; it was published by those of version ${judged.rules}`;
  if ("problems" in judged) {
    surroundings.err(`${problemWords(judged.problems, surroundings.hasColours)}\n`);
    line(`The record could not be judged anew ${by}: these rules cannot read it. What was published stands as it was.`);
    return;
  }
  for (const difference of judged.differences) for (const text of differenceLines(difference)) line(printable(text));
  for (const { word, now, count } of judged.renamed)
    line(
      `${counted(count, "verdict")} of ${word} ${count === 1 ? "is" : "are"} now called ${now}: only the word is another.`,
    );
  const { differences, judged: all } = judged;
  line(
    differences.length === 0
      ? `Judged anew ${by}: ${counted(all, "verdict")}, and none is another.`
      : `Judged anew ${by}: of ${counted(all, "verdict")} ${differences.length === 1 ? "1 is another" : `${differences.length} are others`}. What was published stands as it was.`,
  );
}

function differenceLines({ thing, id, published, present }: Difference): string[] {
  return [
    `${thing} ${id}: published as ${published?.verdict ?? "nothing"}, now ${present?.verdict ?? "not in the record"}`,
    ...reasonLines("published", published),
    ...reasonLines("now", present),
  ];
}

function reasonLines(when: string, judgement: Judgement | undefined): string[] {
  if (judgement === undefined) return [];
  if (judgement.reasons.length === 0) return [`    ${when}: nothing told against it`];
  return judgement.reasons.map((reason) => `    ${when}: ${reason}`);
}
