/** Writes what the builder now sees into files of cases: `npx tsx tests/problems/renew.ts tests/problems/cases/times.txt`. Read the diff line by line. */
import { writeFileSync } from "node:fs";
import { caseText, casesIn, saidOfCase } from "./cases.ts";

for (const path of process.argv.slice(2)) {
  const texts: string[] = [];
  for (const one of casesIn(path)) texts.push(caseText(one, await saidOfCase(one)));
  writeFileSync(path, `${texts.join("").trimEnd()}\n`);
}
