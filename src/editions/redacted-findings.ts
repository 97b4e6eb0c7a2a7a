/** What is said of evidence with only what an edition shows in it: findings, needs and changes. */
import type { Change, Finding, HoldPointFile, Need } from "../evidence/types.ts";
import { same } from "../facts/decisions.ts";
import type { Ref } from "../facts/types.ts";
import { isShown } from "../facts/visibility.ts";
import type { Ground } from "./ground.ts";

/** All that is said of what rests on hidden things: neither its code nor its values. */
export const WITHHELD = { code: "withheld", values: {} } as const;
const ELSEWHERE = { code: "take/other-edition", values: {} } as const;

/** Findings about hidden things are gone; those that rest on hidden things say only that they do, once however many they are. */
export function findings(all: readonly Finding[], ground: Ground): readonly Finding[] {
  const said = new Set<string>();
  return same(
    all,
    all
      .filter(({ about }) => isShown(about, ground))
      .map((finding) => redactedFinding(finding, ground))
      .filter((finding) => {
        if (finding.code !== "withheld") return true;
        const key = `${finding.about.kind} ${finding.about.id} ${finding.rule} ${finding.severity}`;
        if (said.has(key)) return false;
        said.add(key);
        return true;
      }),
  );
}

function redactedFinding(finding: Finding, ground: Ground): Finding {
  const { rule, severity, about } = finding;
  const open = ground.tells(about) && finding.restsOn.every(ground.tells);
  return open ? finding : { ...WITHHELD, rule, severity, about, restsOn: [] };
}

/** Hidden needs become at most one line that blocks and one that does not, after all others, so that neither their number nor their place among them is told. */
export function needs(all: readonly Need[], ground: Ground, file: HoldPointFile): readonly Need[] {
  const isOpen = (need: Need): boolean => ground.tells(need.about) && need.restsOn.every(ground.tells);
  const hidden = new Set(all.filter((need) => !isOpen(need)).map(({ blocks }) => blocks));
  const about: Ref = { kind: "hold point", id: file.holdPoint.id };
  const told = [true, false]
    .filter((blocks) => hidden.has(blocks))
    .map((blocks): Need => ({ ...WITHHELD, about, takes: ELSEWHERE, blocks, restsOn: [] }));
  return same(all, [...all.filter(isOpen), ...told]);
}

/** Hidden changes become one line, however many they are. */
export function changes(all: readonly Change[], ground: Ground, file: HoldPointFile): readonly Change[] {
  const open = all.filter((change) => ground.tells(change.about) && change.restsOn.every(ground.tells));
  if (open.length === all.length) return all;
  return [...open, { ...WITHHELD, about: { kind: "hold point", id: file.holdPoint.id }, restsOn: [] }];
}
