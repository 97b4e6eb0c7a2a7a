import type { Shown } from "../../editions/shown.ts";

/**
 * Minutes planned for an assembly and for all within it, as the hours shown for it are: the record gives each its own.
 * undefined where none of them has a plan.
 */
export function plannedWithin({ record, evidence }: Shown, id: string): number | undefined {
  const plans = (evidence.assemblies.get(id)?.within ?? []).flatMap(
    (part) => record.assemblies.get(part)?.planned ?? [],
  );
  return plans.length === 0 ? undefined : plans.reduce((sum, minutes) => sum + minutes, 0);
}
