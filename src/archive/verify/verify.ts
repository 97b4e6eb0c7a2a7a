import type { Findings } from "../finding.ts";
import { type BagsFound, openBag } from "../source/open.ts";
import { verifyBag } from "./bag.ts";
import { type BagAt, tellGroup } from "./group.ts";

export interface BagsVerified {
  readonly bags: readonly BagAt[];
  readonly files: number;
  readonly bytes: number;
}

/** Verifies one bag, or the parts of one and whether they are all there. With several, each place has the bag's name before it. */
export async function verifyBags(
  { paths, folder, beside }: BagsFound,
  findings: Findings,
  progress: (done: number, of: number) => void,
): Promise<BagsVerified> {
  const bags: BagAt[] = [];
  let before = 0;
  for (const path of paths) {
    const source = await openBag(path);
    const onward = (done: number, of: number): void => progress(before + done, before + of);
    try {
      bags.push({ ...(await verifyBag(source, paths.length > 1 ? findings.within(path) : findings, onward)), path });
    } finally {
      await source.close();
    }
    before += bags.at(-1)?.bytes ?? 0;
  }
  await tellGroup(bags, folder !== undefined, findings);
  for (const name of beside)
    findings.note("not checked", name, "this lies beside the bags and is none; it was not looked at");
  return {
    bags,
    files: bags.reduce((sum, { members }) => sum + members.length, 0),
    bytes: bags.reduce((sum, { bytes }) => sum + bytes, 0),
  };
}
