/** The same record, said otherwise: no verdict may change. */
import { join } from "node:path";
import { readdirSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { alter } from "./alter.ts";
import { attacksIn } from "./attack.ts";
import { aYearEarlier, inOtherUnits, shuffled, UNIT_NAMES, withTestsApart, withUnrelatedBatch } from "./metamorphic.ts";
import { Chance } from "./search/chance.ts";
import { verdictsOf } from "./search/verdicts.ts";
import { type Texts, Workbench } from "./workbench.ts";

const CASES = new URL("cases", import.meta.url).pathname;
const bench = new Workbench();
afterAll(() => bench.close());

const attacks = readdirSync(CASES)
  .sort()
  .flatMap((name) => attacksIn(join(CASES, name)))
  .filter(({ expected }) => !(expected[0] ?? "").startsWith("problem"));

/** Some attacks, by chance and always the same. */
const SOME = 8;
const chosen = (seed: number): { readonly title: string; readonly texts: Texts }[] =>
  new Chance(seed)
    .shuffled(attacks)
    .slice(0, SOME)
    .map(({ title, changes }) => ({ title, texts: bench.changed((folder) => alter(folder, changes)) }));

async function verdicts(texts: Texts): Promise<{ readonly [thing: string]: string }> {
  const read = await bench.read(texts);
  if ("problems" in read) return { problem: read.problems.map(({ code, file }) => `${code} in ${file}`).join(", ") };
  return Object.fromEntries([...verdictsOf(read.record)].map(([thing, { state }]) => [thing, state]));
}

async function staysTheSame(seed: number, said: (texts: Texts) => Texts): Promise<void> {
  for (const { title, texts } of chosen(seed)) {
    const other = said(texts);
    expect(await verdicts(other), title).toMatchObject(await verdicts(texts));
  }
}

describe("Verdicts stay the same", () => {
  it("in whatever order keys and facts of a day stand", () =>
    staysTheSame(1, (texts) => shuffled(texts, new Chance(texts.size))));

  it("with the tests of a day in one entry or in several, in whatever order", () =>
    staysTheSame(2, (texts) => withTestsApart(texts, new Chance(texts.size))));

  it.each(UNIT_NAMES)("with %s", (name) =>
    staysTheSame(3 + UNIT_NAMES.indexOf(name), (texts) => inOtherUnits(texts, name)),
  );

  it("52 weeks earlier", () => staysTheSame(20, aYearEarlier));

  it("beside a batch that has nothing to do with them", () => staysTheSame(21, withUnrelatedBatch));

  it("in all three editions", async () => {
    for (const { title, texts } of chosen(22)) {
      const read = await bench.read(texts);
      if ("problems" in read) throw new Error(title);
      const evidence = reckon(read.record);
      const [archive, ...others] = (["archive", "inspector", "public"] as const).map((edition) => {
        const { batches, joints, holdPoints } = editionOf(read.record, evidence, edition).evidence;
        return {
          batches: [...batches].map(([id, { verdict }]) => `${id} ${verdict}`),
          joints: [...joints].map(([id, { state }]) => `${id} ${state}`),
          holdPoints: [...holdPoints].map(([id, { state }]) => `${id} ${state}`),
        };
      });
      for (const other of others) expect(other, title).toEqual(archive);
    }
  });
});
