/** Reasons why a field is not where fields are. */

/** A reason, and the fields it is given for: paths, or their ends or beginnings with `*` for the rest. */
export type Because = readonly [reason: string, ...fields: readonly string[]];

const fits = (pattern: string, field: string): boolean =>
  pattern.startsWith("*")
    ? field.endsWith(pattern.slice(1))
    : pattern.endsWith("*")
      ? field.startsWith(pattern.slice(0, -1))
      : field === pattern;

/** Fields for which a reason stands, and patterns that fit none of `missing`: what they excuse is no longer so. */
export function excused(missing: readonly string[], because: readonly Because[]) {
  const patterns = because.flatMap(([, ...fields]) => fields);
  return {
    unexplained: missing.filter((field) => !patterns.some((pattern) => fits(pattern, field))),
    outdated: patterns.filter((pattern) => !missing.some((field) => fits(pattern, field))),
  };
}

export const NONE = { unexplained: [], outdated: [] };
