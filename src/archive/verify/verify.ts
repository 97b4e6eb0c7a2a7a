import type { Findings } from "../finding.ts";
import { openBag } from "../source/open.ts";
import { verifyBag, type BagVerified } from "./bag.ts";
import { type Info, INFO, infoOf } from "./info.ts";

export interface BagsVerified {
  readonly bags: readonly (BagVerified & { readonly path: string })[];
  readonly files: number;
  readonly bytes: number;
}

/** Verifies one bag, or the parts of one and whether they are all there. With several, each place has the bag's name before it. */
export async function verifyBags(
  paths: readonly string[],
  findings: Findings,
  progress: (done: number, of: number) => void,
): Promise<BagsVerified> {
  const bags: (BagVerified & { path: string })[] = [];
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
  tellGroup(bags, findings);
  return {
    bags,
    files: bags.reduce((sum, { members }) => sum + members.length, 0),
    bytes: bags.reduce((sum, { bytes }) => sum + bytes, 0),
  };
}

/** `Bag-Count: 2 of 5` says that there are others. */
function tellGroup(bags: readonly { readonly path: string; readonly info: Info }[], findings: Findings): void {
  const counted = bags.flatMap(({ path, info }) => {
    const [, part, of] = /^(\d+) of (\d+)$/.exec(infoOf(info, "Bag-Count") ?? "") ?? [];
    return part === undefined || of === undefined
      ? []
      : [{ path, part: Number(part), of: Number(of), group: infoOf(info, "Bag-Group-Identifier") ?? "" }];
  });
  for (const group of new Set(counted.map((each) => each.group))) {
    const parts = counted.filter((each) => each.group === group);
    const of = Math.min(Math.max(...parts.map((each) => each.of)), 10_000);
    const lacking = Array.from({ length: of }, (_, index) => index + 1).filter(
      (part) => !parts.some((each) => each.part === part),
    );
    if (lacking.length > 0)
      findings.note(
        "group",
        INFO,
        `${parts.length === 1 ? "this is one part" : `these are ${parts.length} parts`} of ${of}; not here: ${lacking.slice(0, 20).join(", ")}${lacking.length > 20 ? ", …" : ""}`,
      );
  }
}
