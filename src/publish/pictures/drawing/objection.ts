/** Why a drawing cannot be published as it is, and where in its file. */
export interface Objection {
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly why: string;
  readonly mend: string;
  /** `unreadable`: no XML, or cut short. `large`: beyond a bound. `unsafe`: it asks for more than a drawing may. */
  readonly kind: "unreadable" | "large" | "unsafe";
}

export type Told = Omit<Objection, "line" | "column">;

const SHOWN = 80;

/** An objection still without its place. */
export function told(kind: Objection["kind"], found: string, why: string, mend: string): Told {
  return { kind, found: found.replace(/\s+/g, " ").slice(0, SHOWN), why, mend };
}
