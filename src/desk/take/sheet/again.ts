/** Lines of a table that say what a table of the record says already: an export that has grown since has all of the one before. */
import type { EarlierHours, EarlierLine } from "../../../facts/build/earlier-hours.ts";

export interface Again {
  /** The table of the record, and how many lines of the new one stand in it. */
  readonly file: string;
  readonly lines: number;
}

const saying = ({ span, who, task, minutes, assembly }: EarlierLine): string =>
  JSON.stringify([span.from, span.to, who, task, minutes, assembly]);

/** Tables with such lines, each line held against as many as there are of it. */
export function againIn({ lines }: EarlierHours, standing: readonly EarlierHours[]): readonly Again[] {
  return standing.flatMap((table) => {
    const left = new Map<string, number>();
    for (const line of table.lines) left.set(saying(line), (left.get(saying(line)) ?? 0) + 1);
    const again = new Set<number>();
    for (const line of lines) {
      const count = left.get(saying(line)) ?? 0;
      left.set(saying(line), count - 1);
      if (count > 0) again.add(line.place.line);
    }
    return again.size === 0 ? [] : [{ file: table.file, lines: again.size }];
  });
}
