/** What is found of coats. What was noted as typed; what was logged in °C and shares, times between in s. */
import type { Day } from "../../facts/types.ts";

export type AirOf = "temperature" | "humidity";

interface Air {
  readonly what: AirOf;
}

interface Noted extends Air {
  readonly found: string;
}

interface Logged extends Air {
  readonly least: number;
  readonly greatest: number;
}

/** Between two coats: the least and the most that the record leaves open. */
interface Between {
  readonly coat: number;
  readonly least: number;
  readonly greatest: number;
}

interface Asked {
  readonly asked: string;
}

interface LotUsed {
  readonly lot: string;
  readonly used: Day;
  readonly until: Day;
}

export interface CoatValues {
  "coat-lots/not-noted": { readonly finish: string };
  "coat-lots/noted": { readonly lots: readonly string[] };
  "coat-lots/no-date": { readonly lot: string };
  "coat-lots/good": LotUsed;
  "coat-lots/past": LotUsed;
  "coat-lots/recalled": { readonly lot: string; readonly day: Day; readonly why: string };
  "coat-air/no-limits": Air;
  "coat-air/not-noted": Air;
  /** By an estimate alone. */
  "coat-air/estimate": Noted;
  "coat-air/within": Noted;
  "coat-air/outside": Noted & Asked;
  "coat-air/logged": Logged;
  "coat-air/logged-outside": Logged & Asked;
  /** What the logger read that day, where no time is noted. */
  "coat-air/day-outside": Noted & Logged & Asked;
  "coat-air/witnesses": Noted & Logged;
  /** A coat of which the one before is not noted. */
  "coat-interval/none-before": { readonly coat: number };
  "coat-interval/within": Between;
  "coat-interval/too-soon": Between & Asked;
  "coat-interval/too-late": Between & Asked;
  "coat-interval/not-known": Between & Asked;
  "coat-drying/dried": Asked;
  "coat-drying/drying": Asked;
  /** When it was found dry. */
  "coat-drying/slow": Asked & { readonly found: string };
  /** A joint that was glued where something had been put on before. */
  "coated-faces/not-bare": {
    readonly batch: string;
    readonly where: string;
    readonly finish: string;
    readonly day: Day;
  };
}
