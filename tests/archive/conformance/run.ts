/** `npm run conformance -- FOLDER`: judges the bags of a conformance suite; fails where one is not as expected and no words of RFC 8493 say why. */
import { judged } from "./judge.ts";

const [folder] = process.argv.slice(2);
if (folder === undefined) {
  process.stderr.write("Give the suite's folder, which holds v0.93 to v1.0: npm run conformance -- FOLDER\n");
  process.exit(2);
}
const all = await judged(folder);
for (const { bag, verdict, why } of all) process.stdout.write(`${verdict}: ${bag}\n    ${why}\n`);
const count = (verdict: string): number => all.filter((each) => each.verdict === verdict).length;
const sums = ["as expected", "differs, by RFC 8493", "unexplained"].map((verdict) => `${count(verdict)} ${verdict}`);
process.stdout.write(`${all.length} bags: ${sums.join("; ")}\n`);
process.exitCode = all.length === 0 || count("unexplained") > 0 ? 1 : 0;
