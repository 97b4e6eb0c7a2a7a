import { capital } from "../../words/capital.ts";
import type { ToldNeed } from "../../words/findings/told.ts";
import type { Ref } from "../../facts/types.ts";

/** What a hold point needs, told once for all that need the same. */
export interface NeedTogether {
  readonly about: readonly Ref[];
  readonly sentence: string;
  readonly needs: string;
  readonly blocks: boolean;
}

/**
 * Needs that differ only in which joint they speak of are said together; what blocks comes first. Else the order is
 * kept.
 */
export function needsTogether(needs: readonly ToldNeed[]): NeedTogether[] {
  const groups = new Map<string, ToldNeed[]>();
  for (const need of needs) {
    const key = `${need.blocks} ${need.about.kind} ${wordsBeside(need)} ${need.needs}`;
    groups.set(key, [...(groups.get(key) ?? []), need]);
  }
  const together = [...groups.values()].flatMap((group): NeedTogether[] => {
    const [first] = group;
    if (first === undefined) return [];
    return [
      {
        about: group.map(({ about }) => about),
        sentence: wordsBeside(first),
        needs: capital(first.needs),
        blocks: first.blocks,
      },
    ];
  });
  return [...together.filter(({ blocks }) => blocks), ...together.filter(({ blocks }) => !blocks)];
}

/** The sentence without the id it begins with, which stands beside it as a link. */
export function wordsBeside({ about, sentence }: ToldNeed): string {
  for (const start of [`Joint ${about.id} `, `${about.id} `]) {
    if (
      sentence.startsWith(`${start}is `) ||
      sentence.startsWith(`${start}was `) ||
      sentence.startsWith(`${start}has `)
    )
      return capital(sentence.slice(start.length).replace(/^is /, ""));
  }
  return sentence;
}
