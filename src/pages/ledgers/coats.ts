/** What pages say of coats: where each is, how it was put on, and what the record shows of it. */
import type { CoatFile } from "../../evidence/types.ts";
import type { Shown } from "../../editions/shown.ts";
import type { Coat } from "../../facts/types.ts";
import { groupBy } from "../../reckoning/hours/hours.ts";
import { dateWords } from "../../words/dates.ts";
import { quantityWords } from "../../words/quantities.ts";

export interface CoatRow {
  readonly file: CoatFile;
  readonly product: string;
  /** Time of day and air, as far as they are noted. */
  readonly how: string;
  /** What is neither met nor told by its columns. */
  readonly told: readonly string[];
  /** When it was taken off; nothing while it is there. */
  readonly off: string;
}

/** All that the edition shows of which `isMeant`, by place, each place in the order of the record. */
export function coatRows(shown: Shown, isMeant: (coat: Coat) => boolean = () => true): CoatRow[] {
  const files = shown.evidence.coats.filter(({ coat }) => isMeant(coat));
  return [...groupBy(files, ({ coat }) => placeOf(coat)).values()].flat().map((file) => rowOf(shown, file));
}

const placeOf = ({ assembly, where }: Coat): string => JSON.stringify([assembly, where]);

function rowOf(shown: Shown, file: CoatFile): CoatRow {
  const { coat, findings, off } = file;
  const told = findings.filter(({ severity, code }) => severity !== "meets" && code !== "coat-air/no-limits");
  return {
    file,
    product: productOf(shown, coat),
    how: howWords(shown, coat),
    told: told.map(shown.say),
    off: off === undefined ? "" : `${dateWords(off.day)}: ${off.stripped ?? ""}`,
  };
}

export const productOf = ({ record }: Shown, { finish }: Pick<Coat, "finish">): string =>
  record.finishes.get(finish)?.title ?? finish;

/** `at 10:00, 19 °C, 48 %, found dry 15:30`. */
export function howWords({ record }: Shown, { at, dry, temperature, humidity }: Coat): string {
  const { units } = record.aircraft;
  return [
    ...(at === undefined ? [] : [`at ${at.typed}`]),
    ...[temperature, humidity].flatMap((noted) => (noted === undefined ? [] : [quantityWords(noted, units)])),
    ...(dry === undefined ? [] : [`found dry ${dry.typed}`]),
  ].join(", ");
}
