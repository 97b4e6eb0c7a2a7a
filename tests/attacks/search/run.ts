/** `npm run attacks -- 20000 [FIRST]`: searches for edits that better a verdict and may not, and says what it found. */
import { Workbench } from "../workbench.ts";
import { unlisted } from "./listed.ts";
import { type Found, search } from "./search.ts";

const [runs = "20000", first = "0"] = process.argv.slice(2);

const said = ({ seed, edit, from, better }: Found): string =>
  `\n${edit.kind} ${edit.name} (seed ${seed}, from "${from}")\n  ${edit.says}\n  ${better.join("\n  ")}\n`;

async function run(): Promise<void> {
  const bench = new Workbench();
  const { tried, found } = await search(bench, Number(runs), Number(first), (one) => {
    if (unlisted([one]).length > 0) process.stdout.write(said(one));
  });
  bench.close();
  for (const [kind, n] of tried)
    process.stdout.write(`${kind}: ${n} tried, ${found.filter(({ edit }) => edit.kind === kind).length} better\n`);
  const bad = unlisted(found);
  process.stdout.write(`\n${bad.length} that no list allows\n`);
  process.exitCode = bad.length === 0 ? 0 : 1;
}

void run();
