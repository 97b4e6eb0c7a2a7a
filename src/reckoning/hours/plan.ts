/**
 * Work that is left by the builder's own plan, in minutes.
 *
 * A plan is for an assembly itself, without those within it. Work on assemblies that have no plan is `unplanned`.
 *
 *   factor = ∑ worked/∑ planned of the finished parts, 1 where none is finished or nothing was noted on them
 *   left of an unfinished part = max(0, planned·factor − worked)
 *
 * A part is finished when it, or one that it lies within, is. From the definition of the forecast; no source.
 */
import type { Worked } from "./hours.ts";
import { sumBy, total } from "./hours.ts";

export interface Part {
  readonly id: string;
  readonly parent?: string;
  /** Minutes. */
  readonly planned?: number;
  readonly finished: boolean;
}

interface PlannedPart {
  readonly id: string;
  readonly planned: number;
  readonly worked: number;
  readonly finished: boolean;
  /** Minutes left, 0 where finished or where as much as the corrected plan has been worked. */
  readonly left: number;
}

export interface Plan {
  readonly parts: readonly PlannedPart[];
  readonly factor: number;
  /** Whether the factor comes from finished parts. */
  readonly corrected: boolean;
  readonly left: number;
  readonly unplanned: number;
}

export function planOf(parts: readonly Part[], work: readonly (Worked & { readonly assembly?: string })[]): Plan {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const worked = sumBy(work, ({ assembly }) => assembly ?? "");
  const planned = parts
    .flatMap((part) => (part.planned === undefined ? [] : [{ part, planned: part.planned }]))
    .map(({ part, planned }) => ({
      id: part.id,
      planned,
      worked: worked.get(part.id) ?? 0,
      finished: isFinished(part, byId),
    }));
  const done = planned.filter(({ finished }) => finished);
  const ratio = sum(done.map((part) => part.worked)) / sum(done.map((part) => part.planned));
  const corrected = Number.isFinite(ratio) && ratio > 0;
  const factor = corrected ? ratio : 1;
  const withLeft = planned.map((part) => ({
    ...part,
    left: part.finished ? 0 : Math.max(0, part.planned * factor - part.worked),
  }));
  return {
    parts: withLeft,
    factor,
    corrected,
    left: sum(withLeft.map(({ left }) => left)),
    unplanned: total(work) - sum(planned.map((part) => part.worked)),
  };
}

function isFinished(part: Part, byId: ReadonlyMap<string, Part>): boolean {
  const above = part.parent === undefined ? undefined : byId.get(part.parent);
  return part.finished || (above !== undefined && isFinished(above, byId));
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
